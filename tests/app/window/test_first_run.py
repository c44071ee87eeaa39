"""The first run as a person has it: an empty home, the keys, and a plan that holds."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from pressed_keys import Keys
from PySide6.QtCore import QSettings, Qt
from PySide6.QtWidgets import QApplication
from window_steps import replan

from app.service import books
from app.window.main_window import MainWindow
from app.window.palette import Appearance
from app.window.session import Session
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.moment import minute_of
from storage.bench_book import BenchBook

NOW = minute_of(datetime(2031, 3, 3, 17, 0, tzinfo=UTC))  # a Monday evening in Warsaw
MOST_KEYS = 60  # beyond the typed names, for four vehicles: our own promise
WEATHERED, QUICK = "full weathered vehicle", "quick table-top"


@pytest.fixture
def window(qtbot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[MainWindow]:
    """Return the window as it opens where nobody has used the program before."""
    for name in ("HOME", "XDG_DATA_HOME", "LOCALAPPDATA", "APPDATA", "USERPROFILE"):
        monkeypatch.setenv(name, str(tmp_path / "home"))
    monkeypatch.setenv("TZ", "Europe/Warsaw")
    assert not books.usual_path().exists()
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    window = MainWindow(Session(lambda: NOW), settings)
    window.set_look(Appearance.LIGHT)
    window.show()
    window.session.open(create=True)
    qtbot.waitUntil(window.empty.first_run.vehicles.lines[0].name.hasFocus)
    yield window
    window.close()
    window.deleteLater()


def opened(window: MainWindow) -> Book:
    book = window.session.book
    assert book is not None
    return book


def answer(keys: Keys) -> None:
    """Tell four vehicles, three evenings and the room, all otherwise than offered."""
    keys.name("Crane Lorry Egret")
    keys.tab()
    keys.type("1:35")
    keys.tab()
    keys.type("fu")
    keys.tab()
    keys.type("t")  # to "two colours"
    keys.space()
    keys.type("n")  # to "no chips"
    keys.space()
    keys.enter()
    keys.name("Tank Wagon Ibis")
    keys.enter()
    keys.name("Dock Cart Stork")
    keys.tab()
    keys.type("1:72")
    keys.tab()
    keys.type("q")
    keys.tab()
    keys.type("d")  # from the dry-brushed edges ...
    keys.space()
    keys.type("d")  # ... to the decals
    keys.space()
    keys.enter()
    keys.name("Yard Bus Crake")
    keys.enter()
    keys.enter()
    keys.type("1234")  # not Tuesday and Thursday, but Monday and Wednesday
    keys.tab()
    keys.type("20-22")
    keys.enter()
    keys.type("6")
    keys.tab()
    keys.type("14-17")
    keys.enter()
    keys.enter()
    keys.type("18")
    keys.tab()
    keys.type("60")
    keys.tab()
    keys.space()  # a warm box


def test_four_vehicles_are_planned_by_sixty_keys_and_the_book_holds_what_was_told(
    qtbot, window: MainWindow
) -> None:
    keys = Keys()
    answer(keys)
    replan(
        qtbot,
        window,
        lambda: keys.press(Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier),
    )
    assert keys.count <= MOST_KEYS

    book = opened(window)
    (project,) = book.projects
    told = [(m.name, m.scale, m.made.sequence if m.made else "") for m in project.models]
    assert told == [
        ("Crane Lorry Egret", "1:35", WEATHERED),
        ("Tank Wagon Ibis", "1:35", WEATHERED),
        ("Dock Cart Stork", "1:72", QUICK),
        ("Yard Bus Crake", "1:72", QUICK),
    ]
    options = [set(m.made.options) if m.made else set() for m in project.models]
    assert options[0] == options[1]
    assert {"airbrush", "two colours", "no chips"} <= options[0]
    assert not {"one colour", "chips by sponge", "chips by fluid"} & options[0]
    assert options[2] == options[3] == {"airbrush", "decals"}
    assert [
        (stretch.rule, stretch.start, stretch.end) for stretch in book.bench_time.stretches
    ] == [
        ("FREQ=WEEKLY;BYDAY=MO,WE", "20:00", "22:00"),
        ("FREQ=WEEKLY;BYDAY=SA", "14:00", "17:00"),
    ]
    assert {stretch.since for stretch in book.bench_time.stretches} == {date(2031, 3, 3)}
    bench, box = book.room.locations
    (air,) = bench.workdays
    assert (air.temperature_c, air.humidity_pct) == (18, 60)
    assert box.name == "warm box"
    assert len(book.gear.airbrushes) == 1

    picture = window.session.picture
    assert picture is not None
    assert picture.plan.cost.unplaced == 0
    verdict = judge(picture.book, picture.plan)
    assert verdict.accepted, verdict.violations
    assert window.stack.currentWidget() is window.tonight
    assert [row.on for row in [picture.sheet]] == [date(2031, 3, 3)]

    path = window.session.path
    window.close()
    assert path == books.usual_path()
    with_fresh_eyes = BenchBook.open(path)
    assert with_fresh_eyes.book() == book
    with_fresh_eyes.close()


def test_it_is_one_edit_and_undone_leads_back_to_the_questions(qtbot, window: MainWindow) -> None:
    before = opened(window)
    keys = Keys()
    keys.name("Ferry Pike")
    replan(
        qtbot,
        window,
        lambda: keys.press(Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier),
    )
    assert [model.name for model in opened(window).projects[0].models] == ["Ferry Pike"]
    window.session.undo()
    assert opened(window) == before
    assert window.stack.currentWidget() is window.empty


def test_what_is_missing_or_wrong_is_told_by_its_field_and_nothing_is_lost(
    window: MainWindow,
) -> None:
    before, keys, asked = opened(window), Keys(), window.empty.first_run
    ctrl = Qt.KeyboardModifier.ControlModifier
    keys.press(Qt.Key.Key_Return, ctrl)
    assert "at least one vehicle" in asked.vehicles.message.text()
    keys.name("Ferry Pike")
    keys.enter()
    keys.name("Ferry Pike")
    keys.press(Qt.Key.Key_Return, ctrl)
    assert "twice" in asked.vehicles.message.text()
    keys.name(" two")
    keys.enter()
    keys.enter()
    keys.tab()
    keys.type("late")
    keys.press(Qt.Key.Key_Return, ctrl)
    assert "19:30-21:30" in asked.hours.lines[0].message.text()
    assert asked.hours.lines[0].hours.hasFocus()
    keys.type("20-22")  # written over what was wrong
    assert asked.hours.lines[0].hours.text() == "20-22"
    assert opened(window) is before
    assert [vehicle.name for vehicle in asked.vehicles.vehicles()] == [
        "Ferry Pike",
        "Ferry Pike two",
    ]


def test_the_key_of_a_page_without_a_plan_leads_to_the_questions(window: MainWindow) -> None:
    keys, questions = Keys(), window.empty.first_run
    keys.name("Ferry Pike")
    keys.enter()
    window.show_page("stock")
    QApplication.processEvents()
    assert not questions.isVisible()
    window.show_page("tonight")
    QApplication.processEvents()
    assert questions.vehicles.lines[1].name.hasFocus()
    window.commands.views[1].trigger()  # again, to a page that has nothing to show either
    QApplication.processEvents()
    assert questions.vehicles.lines[1].name.hasFocus()
    assert [vehicle.name for vehicle in questions.vehicles.vehicles()] == ["Ferry Pike"]


def test_without_an_airbrush_nothing_is_sprayed_with_one(qtbot, window: MainWindow) -> None:
    window.empty.first_run.airbrush.setChecked(False)
    keys = Keys()
    keys.name("Ferry Pike")
    replan(
        qtbot,
        window,
        lambda: keys.press(Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier),
    )
    book = opened(window)
    assert book.gear.airbrushes == ()
    tools = {step.tool.value for step in book.projects[0].models[0].steps}
    assert "airbrush" not in tools
    assert window.session.picture is not None
    assert window.session.picture.plan.cost.unplaced == 0
