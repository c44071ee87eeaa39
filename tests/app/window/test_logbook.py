"""The logbook on screen: lines to find, entries to correct and take back, photos, pace."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QAbstractItemModel, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QAbstractItemModelTester
from small_book import BRUSH, CART, NOW, PROJECT, ZONE, key, small_book
from window_steps import MakeWindow, replan

from app.service import logbook
from app.window.logbook.lines import Sort, lines
from app.window.logbook.table import MINUTES, TIME, WORK, LinesModel
from app.window.logbook.view import LogbookView
from app.window.main_window import MainWindow
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import moment_of
from planner.values.project import Event, Happened, Logged, Observed, Used


def worked_book() -> Book:
    """Return the small book after an evening: a coat, a look, a note, and one under way."""
    primed = Logged(
        model=CART,
        step="prime",
        start=moment_of(NOW + 3, ZONE),
        end=moment_of(NOW + 17, ZONE),
        minutes=14,
        planned=10,
        temperature_c=21.5,
        humidity_pct=48,
        used=(Used(coating="grey primer", ml=2.5),),
        note="ran at the edge",
    )
    sanded = Logged(model=CART, step="sand", start=moment_of(NOW + 90, ZONE))
    look = Observed(
        model=CART,
        step="prime",
        at=moment_of(NOW + 60, ZONE),
        state=State.TACK_FREE,
        reached=True,
    )
    told = Happened(
        at=moment_of(NOW + 20, ZONE), event=Event.DROPPED, model=CART, step="prime", text="a wheel"
    )
    book = small_book()
    project = replace(book.project(PROJECT), log=(primed, sanded), observed=(look,), diary=(told,))
    return replace(book, projects=(project,))


@pytest.fixture
def window(make_window: MakeWindow) -> MainWindow:
    window: MainWindow = make_window(worked_book(), NOW + 95)
    window.show_page("logbook")
    return window


def view(window: MainWindow) -> LogbookView:
    found: LogbookView = window.view("logbook")
    return found


def cells(window: MainWindow, column: int) -> list[str]:
    model = view(window).model
    return [str(model.data(model.index(row, column))) for row in range(model.rowCount())]


def choose(window: MainWindow, text: str) -> None:
    view(window).table.selectRow(
        next(at for at, told in enumerate(cells(window, WORK)) if text == told)
    )


def test_lines_of_all_sorts_the_newest_first() -> None:
    found = lines(worked_book())
    assert [line.sort for line in found] == [Sort.WORK, Sort.LOOK, Sort.EVENT, Sort.WORK]
    assert [line.at - NOW for line in found] == [90, 60, 20, 3]
    assert found[-1].key == key("prime")


def test_the_table_model_is_sound() -> None:
    model = LinesModel()
    model.show_lines(lines(worked_book()), ZONE)
    tester = QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    assert isinstance(tester.model(), QAbstractItemModel)
    assert model.rowCount(model.index(0, 0)) == 0


def test_what_was_done_stands_there_with_its_numbers(window: MainWindow) -> None:
    assert cells(window, TIME) == ["21:00, under way", "20:30", "19:50", "19:33–19:47"]
    assert cells(window, MINUTES)[-1] == "14 (10 planned)"
    choose(window, "Prime · cart")
    form = view(window).form
    assert form.used["grey primer"].value() == 2.5
    assert form.note.toPlainText() == "ran at the edge"


def test_lines_are_found_by_words_and_by_sort(window: MainWindow) -> None:
    here = view(window)
    here.search.setText("EDGE")
    assert len(cells(window, WORK)) == 1
    here.search.setText("")
    here.kind.setCurrentIndex(here.kind.findData(Sort.EVENT))
    assert cells(window, WORK) == ["Dropped: prime · cart"]
    assert "a wheel" in here.told.text()


def test_an_entry_is_corrected_and_taken_back(qtbot, window: MainWindow) -> None:
    choose(window, "Prime · cart")
    form = view(window).form
    form.end.setDateTime(form.end.dateTime().addSecs(120))
    form.minutes.setValue(16)
    form.humidity.setValue(55)
    form.used["grey primer"].setValue(3.25)
    form.note.setPlainText("all fine")
    before = worked_book().project(PROJECT).log[0]
    replan(qtbot, window, form.save.click)
    book = window.session.book
    assert book is not None
    fact = next(fact for fact in book.project(PROJECT).log if fact.step == "prime")
    assert before.end is not None
    assert fact == replace(
        before,
        end=before.end + timedelta(minutes=2),
        minutes=16,
        humidity_pct=55,
        used=(Used(coating="grey primer", ml=3.25),),
        note="all fine",
    )
    choose(window, "Sand · cart")
    replan(qtbot, window, view(window).form.back.click)
    book = window.session.book
    assert book is not None
    assert {fact.step for fact in book.project(PROJECT).log} == {"prime"}


def test_an_end_before_the_beginning_is_told_and_nothing_is_lost(window: MainWindow) -> None:
    choose(window, "Prime · cart")
    form = view(window).form
    form.note.setPlainText("still here")
    form.end.setDateTime(form.start.dateTime().addSecs(-60))
    form.save.click()
    assert "must lie after start" in form.time_message.text()
    assert not form.time_message.isHidden()
    assert form.time_message.y() > form.end.y()  # by the field
    assert not form.message.text()
    assert form.note.toPlainText() == "still here"
    assert window.session.book == worked_book()


def test_a_photo_is_kept_with_the_book(qtbot, window: MainWindow, tmp_path: Path) -> None:
    picture = tmp_path / "bench photo.png"
    image = QImage(400, 300, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.darkYellow)
    assert image.save(str(picture))
    choose(window, "Prime · cart")
    replan(qtbot, window, lambda: view(window).add_photo(picture))
    picture.unlink()  # the original may go
    strip = view(window).photos
    assert strip.count() == 1
    assert not strip.item(0).icon().isNull()
    view(window).add_photo(tmp_path / "nothing.png")
    assert "cannot be read" in view(window).form.message.text()


def test_pace_is_shown_with_numbers_and_applied_when_agreed(qtbot, window: MainWindow) -> None:
    panel = view(window).pace
    before = window.session.book
    assert panel.buttons
    assert not panel.every.isEnabled()  # one pass makes nobody sure
    replan(qtbot, window, panel.buttons[0].click)
    after = window.session.book
    assert before is not None
    assert after is not None
    assert after.pace.learned
    # 14 min were worked where 10 were planned, so what is learned is more than 1.
    assert all(one.factor > 1 for one in after.pace.learned)
    replan(qtbot, window, window.commands.undo.trigger)
    assert window.session.book == before


def test_the_airbrush_of_an_entry_is_corrected(window: MainWindow) -> None:
    here, session = view(window), window.session
    assert session.book is not None
    rows = here.model.rows
    here.table.selectRow(next(at for at, row in enumerate(rows) if row.fact and row.fact.end))
    assert here.form.airbrush.isVisible()
    assert here.form.airbrush.currentText() == "not noted"
    here.form.airbrush.setCurrentIndex(here.form.airbrush.findData(BRUSH))
    here.form.save.click()
    entry = next(fact for fact in session.book.project(PROJECT).log if fact.step == "prime")
    assert entry.airbrush == BRUSH
    assert entry.note == "ran at the edge"


def test_a_cleaning_is_a_line_and_is_taken_back(window: MainWindow) -> None:
    here, session = view(window), window.session
    assert session.attempt(lambda book: logbook.cleaned(book, BRUSH, NOW + 94)) is None
    (line,) = [row for row in here.model.rows if row.sort is Sort.CLEANED]
    here.table.selectRow(here.model.rows.index(line))
    assert here.model.data(here.model.index(0, WORK)) == "Fine brush cleaned"
    assert here.back.isVisible()
    assert not here.form.isVisible()
    here.back.click()
    assert session.book is not None
    assert session.book.cleaned == ()
