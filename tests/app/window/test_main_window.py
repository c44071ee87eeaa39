"""The window as a person uses it: edits, re-planning, files, undo, and what it remembers."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from pathlib import Path

from PySide6.QtCore import QDate, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QScrollArea,
    QWidget,
)
from small_book import NOW, PROJECT, at, key, small_book
from tonight_steps import Shown, row_of
from window_steps import MakeWindow, replan

from app.service import books, demos, edits
from app.window.import_dialog import ImportDialog
from app.window.main_window import MainWindow
from app.window.palette import DARK, LIGHT, Appearance
from planner.schedule.judge import judge
from planner.values.book import Book
from storage.bench_book import BenchBook
from storage.exchange import load

Scene = tuple[Book, int]


def first_row(window: MainWindow) -> Shown:
    return row_of(window, window.tonight.rows[0].key)


def test_tonight_shows_the_plan_that_the_judge_accepts(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    picture = window.session.picture
    assert picture is not None
    assert judge(picture.book, picture.plan).accepted
    shown = [row.key for row in window.tonight.rows]
    assert shown == [row.key for row in picture.sheet.work]
    assert shown[0] == key("prime")
    row = first_row(window)
    assert str(row.model.headerData(row.at, Qt.Orientation.Vertical)).startswith("19:33")


def test_colder_air_plans_anew_and_says_what_moved(qtbot, make_window: MakeWindow) -> None:
    book = demos.read("harbour_tenders").book
    window = make_window(book, demos.first_evening(book))
    before = window.session.picture
    replan(qtbot, window, lambda: window.air.temperature.setValue(14))
    after = window.session.picture
    assert before is not None
    assert after is not None
    assert after.book.room.locations[0].workdays[0].temperature_c == 14
    assert dict(after.plan.finishes) != dict(before.plan.finishes)
    assert window.moved.list.count() > 0
    window.show_page("timeline")
    window.frame.desk.open("moved")
    assert window.moved.summary.isVisible()
    assert not window.moved.list.isVisible()  # until somebody asks
    window.moved.all.click()
    assert window.moved.list.isVisible()
    lines = window.moved.summary.text().splitlines()
    assert len(lines) <= 3
    assert lines[-1].startswith("The end is ")
    assert all(
        step.id not in lines[0] for step in book.projects[0].models[0].steps if "-" in step.id
    )


def test_a_change_of_air_is_one_edit_and_can_be_undone(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    journal = window.session.undo_name()

    def change() -> None:
        for value in (20.0, 18.0, 15.0):  # quick steps of the spin box
            window.air.temperature.setValue(value)

    replan(qtbot, window, change)
    assert "15 °C" in window.commands.undo.text()
    replan(qtbot, window, window.commands.undo.trigger)
    assert window.session.undo_name() == journal
    assert window.air.temperature.value() == 23
    replan(qtbot, window, window.commands.redo.trigger)
    assert window.air.temperature.value() == 15
    assert not window.commands.redo.isEnabled()


def test_where_air_changes_a_reading_is_noted(qtbot, make_window: MakeWindow) -> None:
    book = demos.read("winter_garage").book
    window = make_window(book, demos.first_evening(book))
    assert window.air.scope.currentData() == "reading"
    profile = book.room.locations[0].workdays
    replan(qtbot, window, lambda: window.air.temperature.setValue(4))
    room = window.session.book.room  # type: ignore[union-attr]
    assert room.locations[0].workdays == profile
    assert room.readings[-1].temperature_c == 4


def test_weekdays_and_hours_plan_anew(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    rule = window.evenings.rules[0]
    assert [button.isChecked() for button in rule.days] == [day == 3 for day in range(7)]
    replan(qtbot, window, rule.days[0].click)
    assert window.session.book.bench_time.stretches[0].rule == "FREQ=WEEKLY;BYDAY=MO,TH"  # type: ignore[union-attr]
    rule = window.evenings.rules[0]
    replan(qtbot, window, lambda: rule.end.setTime(rule.end.time().addSecs(3600)))
    assert window.session.book.bench_time.stretches[0].end == "22:30"  # type: ignore[union-attr]


def test_no_day_at_all_is_told_beside_the_days(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    rule = window.evenings.rules[0]
    rule.days[3].click()
    assert "at least one day" in rule.message.text()
    assert rule.message.isVisibleTo(window.evenings)
    assert window.session.book == small_book()


def test_days_off_and_extra_stretches(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    replan(qtbot, window, window.evenings.skip.click)
    book = window.session.book
    assert book is not None
    assert book.bench_time.skipped == (date(2031, 3, 6),)
    replan(qtbot, window, window.evenings.add_extra.click)
    book = window.session.book
    assert book is not None
    (extra,) = book.bench_time.extra
    assert (extra.interval.start, extra.interval.minutes) == (at("2031-03-06 10:00"), 120)
    replan(qtbot, window, lambda: window.session.attempt(lambda b: edits.remove_stretch(b, extra)))
    assert window.session.book.bench_time.extra == ()  # type: ignore[union-attr]


def test_an_extra_stretch_that_ends_before_it_begins_is_told(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    window.evenings.extra_end.setTime(window.evenings.extra_start.time().addSecs(-3600))
    window.evenings.add_extra.click()
    assert "must lie after start" in window.evenings.message.text()
    assert window.session.book == small_book()


def test_a_project_is_set_aside_and_planned_again(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    model = window.projects.model
    role = Qt.ItemDataRole.CheckStateRole
    replan(
        qtbot, window, lambda: model.setData(model.index(0), Qt.CheckState.Unchecked.value, role)
    )
    assert window.stack.currentWidget() is window.empty
    assert "set aside" in window.empty.title.text()
    replan(qtbot, window, lambda: model.setData(model.index(0), Qt.CheckState.Checked.value, role))
    assert window.stack.currentWidget() is window.tonight


def test_the_date_of_a_project_is_an_edit(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    replan(qtbot, window, lambda: window.projects.date.setDate(QDate(2031, 3, 20)))
    assert window.session.book.project(PROJECT).target == date(2031, 3, 20)  # type: ignore[union-attr]
    replan(qtbot, window, lambda: window.projects.dated.setChecked(False))
    assert window.session.book.project(PROJECT).target is None  # type: ignore[union-attr]


def test_an_empty_book_offers_a_way_in(qtbot, make_window: MakeWindow) -> None:
    starter = books.starter_book("Europe/Warsaw", date(2031, 3, 1))
    window = make_window(starter, NOW)
    assert window.stack.currentWidget() is window.empty
    button = next(demo for demo in window.empty.demos if "lamplighter" in demo.text())
    replan(qtbot, window, button.click)
    assert window.stack.currentWidget() is window.tonight
    (project,) = window.session.book.projects  # type: ignore[union-attr]
    assert project.target is not None
    assert project.target > date(2031, 3, 6)  # moved on with the clock
    assert window.tonight.rows


def test_export_and_import_go_round(qtbot, make_window: MakeWindow, tmp_path: Path) -> None:
    window = make_window(small_book(), NOW)
    path = tmp_path / "yard.json"
    window.files.export_to(path)
    assert load(path.read_bytes()).book == small_book()
    other = make_window(books.starter_book("Europe/Warsaw", date(2031, 3, 1)), NOW)
    other.files.import_path(path)
    dialog = other.findChild(ImportDialog)
    assert dialog is not None
    replan(qtbot, other, dialog.accept)
    assert other.session.book.projects == small_book().projects  # type: ignore[union-attr]
    assert other.session.book.room == small_book().room  # type: ignore[union-attr]


def test_a_bad_file_is_refused_with_its_place(make_window: MakeWindow, tmp_path: Path) -> None:
    window = make_window(small_book(), NOW)
    path = tmp_path / "bad.json"
    path.write_text('{"tackfree": 1, "rooom": {}}')
    window.files.import_path(path)
    assert "bad.json" in window._say.text()
    assert "rooom" in window._say.text()
    window.files.import_path(tmp_path / "missing.json")
    assert "cannot be read" in window._say.text()
    assert window.session.book == small_book()


def test_a_second_program_is_noticed_and_its_edit_kept(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    path = window.session.path
    assert path is not None
    with BenchBook.open(path) as other:
        edit = edits.set_target(other.book(), PROJECT, date(2031, 5, 1))
        other.apply(edit.name, edit.book)
    replan(qtbot, window, lambda: window.air.temperature.setValue(15))
    assert "Another program changed the book" in window._say.text()
    assert "15 °C" in window._say.text()  # what was not done
    assert window.air.temperature.value() == 23
    book = window.session.book
    assert book is not None
    assert book.project(PROJECT).target == date(2031, 5, 1)
    assert book.room == small_book().room  # the edit made on old ground was not written


def test_done_goes_into_the_logbook(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    session = window.session
    session.set_clock(lambda: NOW + 20)
    row = first_row(window)
    row.go(row.model.all_column)
    replan(qtbot, window, lambda: qtbot.keyClick(row.table, Qt.Key.Key_Space))
    (fact,) = session.book.project(PROJECT).log  # type: ignore[union-attr]
    assert (fact.model, fact.step) == ("cart", "prime")
    assert fact.end is not None
    assert fact.end - fact.start == timedelta(minutes=17)  # planned from 19:33, done at 19:50
    assert session.picture is not None
    placed = session.picture.plan.placement(key("prime"))
    assert placed is not None
    assert placed.logged


def test_ticks_stay_when_the_plan_changes(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    row = first_row(window)
    row.go(0)
    qtbot.keyClick(row.table, Qt.Key.Key_Space)
    assert row.checked(0)
    replan(qtbot, window, lambda: window.air.temperature.setValue(16))
    window.set_look(Appearance.DARK)  # every row is made anew
    assert first_row(window).checked(0)


def test_time_goes_on_and_unstarted_work_is_planned_anew(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    window.session.set_clock(lambda: NOW + 30)
    replan(qtbot, window, lambda: window._clock.setInterval(1))
    assert window.session.picture is not None
    placed = window.session.picture.plan.placement(key("prime"))
    assert placed is not None
    assert placed.start >= NOW + 30


def test_light_and_dark(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    for number in range(4):
        window.show_view(number)
        for look, colours in ((Appearance.LIGHT, LIGHT), (Appearance.DARK, DARK)):
            window.set_look(look)
            image = window.grab().toImage()
            names = {
                image.pixelColor(x, y).name()
                for x in range(0, image.width(), 23)
                for y in range(0, image.height(), 23)
            }
            assert colours.paper.lower() in names
            assert (LIGHT if colours is DARK else DARK).paper.lower() not in names


def test_views_by_keys_and_what_the_window_remembers(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    qtbot.keyClick(window, Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    assert window.stack.currentWidget() is window.timeline
    window.set_look(Appearance.DARK)
    assert window.frame.inspector.isHidden()  # until something is chosen, or it is asked for
    window.commands.inspector.trigger()
    assert window.frame.inspector.isVisible()
    window.close()
    again = MainWindow(window.session, window.settings)
    assert again.pages[again.shown_view].name == "timeline"
    assert again.look is Appearance.DARK
    again.resize(1280, 800)
    assert again.frame.desk.opened
    again.close()
    again.deleteLater()


def test_a_mend_is_applied_from_the_coat_stack(qtbot, make_window: MakeWindow) -> None:
    book = small_book()
    model = book.projects[0].models[0]
    bare = replace(model, steps=tuple(step for step in model.steps if step.id != "gloss"))
    book = replace(book, projects=(replace(book.projects[0], models=(bare,)),))
    window = make_window(book, NOW)
    window.show_view(3)
    stack = window.view("stack").shown()
    assert stack is not None
    assert stack.worst.rank > 2  # an oil wash over bare paint wants a barrier
    buttons = window.view("stack").findings.buttons
    assert buttons
    replan(qtbot, window, buttons[0].click)
    assert window.session.book != book
    assert len(window.view("stack").findings.buttons) < len(buttons)
    replan(qtbot, window, window.commands.undo.trigger)
    assert window.session.book == book


def test_the_room_shows_each_coating_and_one_course(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    window.show_view(2)
    room = window.view("room")
    assert room.model.rowCount() == 4  # the thinner forms no film
    room.table.selectRow(3)
    assert room.plot.sentence().startswith("dark oil")
    assert "10.8" not in room.margin_line.text()
    # 23 °C and 50 % RH: dew point 12.0 °C, a margin of 11.0 K
    # (psychrolib 2.5: GetTDewPointFromRelHum(23, 0.5) = 12.03).
    assert "11.0 °C" in room.margin_line.text()


def test_whatever_takes_keys_has_a_name(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    for number in range(4):
        window.show_view(number)
        QApplication.processEvents()
        nameless = []
        for control in window.findChildren(QWidget):
            takes_keys = control.focusPolicy() & Qt.FocusPolicy.TabFocus and control.isVisible()
            inside = isinstance(control.parent(), QAbstractSpinBox | QScrollArea | QComboBox)
            if takes_keys and not inside:
                spoken = QAccessible.queryAccessibleInterface(control)
                if not (spoken.text(QAccessible.Text.Name) or control.accessibleName()):
                    nameless.append(control)
        assert nameless == []


def test_no_menu_entry_is_dead(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    entries = [
        action
        for menu in window.menuBar().actions()
        for action in menu.menu().actions()  # type: ignore[union-attr]
        if not action.isSeparator()
    ]
    assert len(entries) >= 16
    for action in entries:
        assert action.receivers("2triggered(bool)") + action.receivers("2toggled(bool)") > 0


def test_about_and_keys_open_and_close(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    for action in (window.commands.keys, window.commands.about):
        action.trigger()
    dialogs = [one for one in window.children() if one.inherits("QDialog")]
    assert {dialog.windowTitle() for dialog in dialogs} == {"Keys", "About Tackfree"}  # type: ignore[attr-defined]
    for dialog in dialogs:
        dialog.reject()  # type: ignore[attr-defined]
