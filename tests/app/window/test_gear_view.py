"""The Gear view: airbrushes and places where films dry, through their forms."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTime
from PySide6.QtTest import QAbstractItemModelTester, QTest
from small_book import BRUSH, NOW, small_book, small_plan
from view_steps import back_to, dialog_of, shown

from app.service import gear_edits, room_edits
from app.window.gear.airbrush_dialog import AirbrushDialog
from app.window.gear.location_dialog import LocationDialog
from app.window.gear.points import PointsEditor
from app.window.gear.view import GearView, air_line
from app.window.palette import DARK
from app.window.session import Session
from planner.values.gear import Airbrush
from planner.values.refusal import Refused
from planner.values.room import AirPoint
from storage.bench_book import BenchBook

Opened = tuple[GearView, Session]


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[Opened]:
    with shown(GearView, small_book(), NOW, tmp_path) as both:
        yield both


def point(at: str, warm: float = 20, damp: float = 50) -> AirPoint:
    return AirPoint(at=at, temperature_c=warm, humidity_pct=damp)


def test_every_field_of_an_airbrush_goes_through_its_form(opened: Opened) -> None:
    view, session = opened
    view.airbrushes.buttons[0].click()
    form = dialog_of(view, AirbrushDialog)
    form.controls["name"].setText("wide one")
    for box, value in (
        (form.controls["load_minutes"], 4),
        (form.controls["change_same_family"], 7),
        (form.controls["change_other_family"], 12),
        (form.controls["clean_minutes"], 9),
        (form.controls["idle_limit_minutes"], 15),
        (form.controls["least_fill_ml"], 2.5),
        (form.controls["lost_ml"], 0.8),
        (form.controls["transfer"], 45),
    ):
        box.setValue(value)
    form.given["transfer"].box.setChecked(True)
    form.buttons.accepted.emit()
    assert session.book.gear.airbrushes[-1] == Airbrush(
        name="wide one",
        load_minutes=4,
        change_same_family=7,
        change_other_family=12,
        clean_minutes=9,
        idle_limit_minutes=15,
        least_fill_ml=2.5,
        lost_ml=0.8,
        transfer=0.45,
    )
    assert view.airbrushes.model.rowCount() == 2
    QAbstractItemModelTester(view.airbrushes.model)


def test_a_refusal_stands_beside_its_field_and_nothing_is_lost(opened: Opened) -> None:
    view, session = opened
    view.airbrushes.buttons[0].click()
    form = dialog_of(view, AirbrushDialog)
    form.controls["name"].setText("side/feed")
    form.controls["load_minutes"].setValue(0)
    form.tabs.setCurrentIndex(1)
    form.buttons.accepted.emit()
    assert form.isVisible()
    assert form.tabs.currentIndex() == 0
    assert 'must not contain "/"' in form.forms[0].messages["name"].text()
    form.controls["name"].setText("side feed")
    form.buttons.accepted.emit()
    assert not form.forms[0].messages["name"].isVisible()
    assert "outside 1 to 240" in form.forms[0].messages["load_minutes"].text()
    form.controls["name"].setText(BRUSH)
    form.controls["load_minutes"].setValue(3)
    form.buttons.accepted.emit()
    assert "occurs twice" in form.forms[0].messages["name"].text()
    form.reject()
    assert session.book == small_book()


def test_the_last_airbrush_in_use_stays_and_says_why(opened: Opened) -> None:
    view, session = opened
    view.airbrushes.buttons[2].click()
    assert session.book == small_book()
    assert "add one or use a brush" in view.airbrushes.message.text()


def test_a_warm_box_with_air_of_its_own(opened: Opened) -> None:
    view, session = opened
    view.locations.buttons[0].click()
    form = dialog_of(view, LocationDialog)
    form.controls["name"].setText("drying box")
    form.controls["drying_places"].setValue(3)
    form.workdays.show_points((point("08:00", 30, 35), point("20:00", 38, 25)))
    form.same.setChecked(False)
    form.weekends.show_points((point("00:00", 28, 40),))
    form.buttons.accepted.emit()
    made = session.book.room.location("drying box")
    assert made.drying_places == 3
    assert made.workdays == (point("08:00", 30, 35), point("20:00", 38, 25))
    assert made.weekends == (point("00:00", 28, 40),)
    view.locations.choose(1)
    view.locations.buttons[2].click()
    assert [location.name for location in session.book.room.locations] == ["drying box", "bench"]
    assert view.locations.model.index(0, 0).data() == "drying box (the usual)"
    session.undo()
    view.locations.choose(1)
    view.locations.buttons[3].click()
    assert session.book == small_book()


def test_the_usual_place_is_renamed_and_kept_while_steps_dry_there(opened: Opened) -> None:
    view, session = opened
    view.locations.choose(0)
    view.locations.buttons[1].click()
    form = dialog_of(view, LocationDialog)
    form.controls["name"].setText("shelf")
    form.buttons.accepted.emit()
    assert session.book.room.locations[0].name == "shelf"
    view.locations.buttons[3].click()
    assert "the only place" in view.locations.message.text()


def test_points_are_added_sorted_and_two_at_one_time_are_refused(opened: Opened) -> None:
    view, session = opened
    view._ask_location(session.book.room.locations[0])
    form = dialog_of(view, LocationDialog)
    editor = form.workdays
    editor.add.click()
    assert [point.at for point in editor.points()] == ["00:00", "06:00"]
    editor.rows[1].at.setTime(QTime(0, 0))
    form.buttons.accepted.emit()
    assert "occurs twice" in form.forms[1].messages["workdays"].text()
    editor.rows[1].drop.click()
    editor.rows[0].drop.click()
    form.buttons.accepted.emit()
    assert "at least one point" in form.forms[1].messages["workdays"].text()


def test_points_are_read_back_in_order(qtbot) -> None:
    editor = PointsEditor((point("20:00", 17.5), point("06:30", 12.5, 71)), DARK)
    qtbot.addWidget(editor)
    assert editor.points() == (point("06:30", 12.5, 71), point("20:00", 17.5))
    bare = editor.curve.grab().toImage()
    editor.show_points((point("06:30", 12.5, 71), point("12:00", 25, 71)))
    assert editor.curve.grab().toImage() != bare


def test_the_size_of_the_room_is_set_or_refused(opened: Opened) -> None:
    view, session = opened
    view.volume.setValue(22.5)
    assert session.book.room.volume_m3 == 22.5
    view.volume.setValue(0)
    assert session.book.room.volume_m3 == 22.5
    assert "outside 1 to 100000" in view.message.text()


def test_air_is_told_in_short() -> None:
    assert air_line((point("00:00", 21, 50),)) == "21 °C, 50 % RH"
    assert air_line((point("06:00", 8, 80), point("15:00", 16.5, 55))) == "8–16.5 °C, 55–80 % RH"
    with pytest.raises(Refused):
        point("25:00")


def test_enter_changes_and_delete_removes(opened: Opened) -> None:
    view, session = opened
    put = gear_edits.put_airbrush(session.book, "", Airbrush(name="spare"))
    session.apply(put)
    view.airbrushes.choose(1)
    view.airbrushes.table.setFocus()
    QTest.keyClick(view.airbrushes.table, Qt.Key.Key_Return)
    form = dialog_of(view, AirbrushDialog)
    assert form.controls["name"].text() == "spare"
    form.reject()
    back_to(view)
    QTest.keyClick(view.airbrushes.table, Qt.Key.Key_Delete)
    assert session.book == small_book()


def test_what_was_typed_stays_when_another_program_changed_the_book(opened: Opened) -> None:
    view, session = opened
    view.airbrushes.buttons[0].click()
    form = dialog_of(view, AirbrushDialog)
    form.controls["name"].setText("wide one")
    with BenchBook.open(session.path) as other:
        there = other.book()
        other.apply("larger room", room_edits.set_volume(there, 44).book)
    form.buttons.accepted.emit()
    assert form.isVisible()
    assert "has not taken it" in form.message.text()
    form.buttons.accepted.emit()
    assert not form.isVisible()
    assert [airbrush.name for airbrush in session.book.gear.airbrushes] == [BRUSH, "wide one"]
    assert session.book.room.volume_m3 == 44


def test_slow_coats_are_let_into_a_box_or_it_is_said_why_not(opened: Opened) -> None:
    view, session = opened
    view.locations.choose(0)
    view.locations.buttons[-1].click()
    assert "warmer than the usual place" in view.locations.message.text()
    assert session.book == small_book()


def test_parts_on_holders_are_listed_with_what_is_needed_at_once(opened: Opened, qtbot) -> None:
    view, session = opened
    holders = view.holders
    QAbstractItemModelTester(holders.listing.model)
    row = [holders.listing.model.index(0, at).data() for at in range(4)]
    assert row == ["clip on a stick", "tub", "cart", "not planned"]
    assert not holders.most.isVisible()
    holders.show_holders(session.book, small_plan())
    assert holders.listing.model.index(0, 3).data() == "Thu 6 Mar to Thu 13 Mar"
    # by hand: the plan begins with the primer, today at 19:33
    assert holders.most.text() == "Most needed at once: 1 × clip on a stick, from today 19:33 on"
    with qtbot.waitSignal(view.part_wanted) as heard:
        QTest.keyClick(holders.listing.table, Qt.Key.Key_Return)
    assert (heard.args[0].model, heard.args[0].part) == ("cart", "tub")
