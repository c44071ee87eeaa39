"""Five rooms hold every page; the inspector and the strip of air around them."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QApplication, QComboBox, QDialog, QTabBar, QWidget
from small_book import NOW, PROJECT, key, small_book
from window_steps import MakeWindow, replan

from app.service import edits
from app.service.edits import Edit
from app.service.spray_verdict import spray_verdict, to_spray
from app.window import words
from app.window.bench_time.dialogs import AwayDialog, ExtraDialog
from app.window.inspector import BESIDE
from app.window.main_window import MainWindow
from app.window.spray_words import spray_words
from app.window.tab_order import stops_now
from planner.air import Fitness
from planner.cure import Cure
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.room import AirPoint

CTRL = Qt.KeyboardModifier.ControlModifier


def shown(window: MainWindow) -> str:
    return window.pages[window.shown_view].name


class Sizes(QObject):
    """Writes down whose size changes."""

    def __init__(self, window: MainWindow, *names: str) -> None:
        super().__init__(window)
        self.told: list[str] = []
        for name in names:
            view = window.view(name)
            view.setObjectName(name)
            view.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Resize:
            self.told.append(watched.objectName())
        return False


def air_of(book: Book, temperature_c: float, humidity_pct: float) -> Book:
    here = book.room.locations[0]
    point = AirPoint(at="00:00", temperature_c=temperature_c, humidity_pct=humidity_pct)
    still = replace(here, workdays=(point,), weekends=())
    return replace(book, room=replace(book.room, locations=(still, *book.room.locations[1:])))


def test_every_page_is_in_one_room(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    held = [name for workspace in window.workspaces for name in workspace.every]
    assert sorted(held) == sorted(page.name for page in window.pages)
    assert len(window.workspaces) == len(window.navigation.buttons) == 5


def test_a_key_leads_to_each_room_and_others_to_its_further_pages(
    qtbot, make_window: MakeWindow
) -> None:
    window = make_window(small_book(), NOW)
    for number, workspace in enumerate(window.workspaces):
        qtbot.keyClick(window, Qt.Key(Qt.Key.Key_1 + number), CTRL)
        assert shown(window) == workspace.pages[0]
        assert window.navigation.buttons[number].isChecked()
    qtbot.keyClick(window, Qt.Key.Key_3, CTRL)
    qtbot.keyClick(window, Qt.Key.Key_PageDown, CTRL)
    assert shown(window) == "stack"
    qtbot.keyClick(window, Qt.Key.Key_3, CTRL)
    assert shown(window) == "build"  # a key leads to the same page always
    qtbot.keyClick(window, Qt.Key.Key_PageDown, CTRL)
    qtbot.keyClick(window, Qt.Key.Key_4, CTRL)
    qtbot.keyClick(window, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert shown(window) == "stack"  # where one was
    qtbot.keyClick(window, Qt.Key.Key_4, CTRL)
    qtbot.keyClick(window, Qt.Key.Key_3, CTRL)
    assert shown(window) == "build"
    qtbot.keyClick(window, Qt.Key.Key_PageUp, CTRL)
    assert shown(window) == "logbook"


def test_the_switch_turns_the_pages_of_a_room(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    window.show_page("stock")
    switch = window.frame.switch
    assert [switch.tabText(at) for at in range(switch.count())] == [
        window.page(name).plain for name in ("stock", "shopping", "room")
    ]
    switch.setCurrentIndex(1)
    assert window.stack.currentWidget() is window.view("shopping")
    window.show_page("timeline")
    assert switch.isHidden()  # Plan has a single page


@pytest.mark.parametrize("way", [("stock", "gear"), ("gear", "timeline"), ("timeline", "build")])
def test_a_page_is_laid_out_once_where_a_room_is_wider_than_the_last(
    qtbot, make_window: MakeWindow, way: tuple[str, str]
) -> None:
    window = make_window(small_book(), NOW)
    for name in (*way, *way, way[0]):
        window.show_page(name)
        qtbot.wait(1)
    sizes = Sizes(window, *way)
    window.resize(window.width() + 40, window.height())  # only what is on screen is laid out now
    qtbot.wait(1)
    assert set(sizes.told) == {way[0]}
    sizes.told.clear()
    window.show_page(way[1])
    qtbot.wait(1)
    assert sizes.told == [way[1]]
    assert window.view(way[1]).geometry() == window.stack.contentsRect()


def test_what_if_and_wishes_lie_beside_the_plan(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    for name in ("what if", "wishes"):
        window.show_page(name)
        assert window.stack.currentWidget() is window.timeline
        assert window.view(name).isVisible()
        assert shown(window) == name
    assert not window.view("what if").isVisible()
    window.commands.inspector.trigger()
    assert shown(window) == "timeline"
    assert not window.view("wishes").isVisible()


def test_each_room_remembers_whether_its_inspector_is_folded(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    window.resize(BESIDE + 100, 800)
    inspector = window.frame.inspector
    window.show_page("tonight")
    assert inspector.isVisible()
    window.commands.inspector.trigger()
    assert inspector.isHidden()
    window.show_page("bench time")
    assert inspector.isVisible()
    window.show_page("build")  # nothing lies beside it
    assert inspector.isHidden()
    window.show_page("tonight")
    assert inspector.isHidden()
    inspector.fold_wanted.emit()
    assert inspector.isVisible()


def test_in_a_narrow_window_the_inspector_lies_over_the_page(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    window.show_page("timeline")
    window.resize(BESIDE - 1, 700)
    QApplication.processEvents()
    inspector, page = window.frame.inspector, window.stack
    assert inspector.isHidden()  # until it is asked for
    wide = page.width()
    window.show_chosen()
    assert inspector.isVisible()
    assert page.width() == wide
    assert inspector.geometry().right() == window.frame.desk.rect().right()
    window.resize(BESIDE, 700)
    QApplication.processEvents()
    assert page.width() < window.frame.desk.width()


def test_the_inspector_of_the_plan_comes_when_something_is_chosen_and_goes_by_escape(
    qtbot, make_window: MakeWindow
) -> None:
    window = make_window(small_book(), NOW)
    window.show_page("timeline")
    plan, inspector = window.timeline, window.frame.inspector
    plan._call.setInterval(0)
    assert inspector.isHidden()  # the first piece is chosen by itself, and by nobody else
    qtbot.keyClick(plan.overview, Qt.Key.Key_Right)
    qtbot.waitUntil(inspector.isVisible)
    assert plan.details.isVisible()
    assert plan.overview.hasFocus()
    qtbot.keyClick(plan.overview, Qt.Key.Key_Escape)
    assert inspector.isHidden()
    spot = plan.overview.scene().rect(plan.overview._at.boxes[-1]).center().toPoint()
    qtbot.mouseClick(plan.overview, Qt.MouseButton.LeftButton, pos=spot)
    qtbot.waitUntil(inspector.isVisible)
    window.commands.inspector.trigger()  # by hand: from now on it stays away
    qtbot.keyClick(plan.overview, Qt.Key.Key_Left)
    qtbot.wait(1)
    assert inspector.isHidden()
    for keys, name in ((Qt.Key.Key_2, "what if"), (Qt.Key.Key_3, "wishes")):
        qtbot.keyClick(window, keys, CTRL | Qt.KeyboardModifier.ShiftModifier)
        assert window.view(name).isVisible()
    qtbot.keyClick(window.view("wishes"), Qt.Key.Key_Escape)
    assert inspector.isHidden()
    assert QApplication.focusWidget() is plan.overview


def test_enter_on_the_timeline_opens_the_inspector_and_gives_it_the_keys(
    qtbot, make_window: MakeWindow
) -> None:
    window = make_window(small_book(), NOW)
    window.show_page("timeline")
    window.commands.inspector.trigger()
    window.timeline.strip.choose(key("prime"))
    qtbot.keyClick(window.timeline.strip, Qt.Key.Key_Return)
    assert window.timeline.details.isVisible()
    assert QApplication.focusWidget() is window.timeline.details


def test_the_air_is_changed_from_the_strip_by_one_key(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    assert window.air.isHidden()
    qtbot.keyClick(window, Qt.Key.Key_F3)
    assert window.air.temperature.hasFocus()
    replan(qtbot, window, lambda: window.air.temperature.setValue(14))
    assert window.strip.air.text().startswith("14 °C")
    assert window.bench_air.temperature.value() == 14
    assert "14 °C" in window.strip.undone.text()
    qtbot.keyClick(window, Qt.Key.Key_F3)
    assert window.air.isHidden()
    replan(qtbot, window, window.strip.undo.click)
    assert window.strip.air.text().startswith("23 °C")


def test_days_off_and_more_time_are_asked_from_anywhere(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    for press, kind in ((Qt.Key.Key_O, AwayDialog), (Qt.Key.Key_H, ExtraDialog)):
        qtbot.keyClick(window, press, CTRL | Qt.KeyboardModifier.ShiftModifier)
        (dialog,) = [one for one in window.findChildren(QDialog) if one.isVisible()]
        assert isinstance(dialog, kind)
        dialog.reject()
        dialog.deleteLater()


@pytest.mark.parametrize(
    ("temperature_c", "humidity_pct", "fit", "said"),
    [
        # Margins above the dew point by psychrolib 2.5, GetTDewPointFromRelHum: 23 °C, 50 %: 12.0;
        # 20 °C, 90 %: 18.3; 3 K are asked (ISO 8502-4:2017).
        (23, 50, Fitness.GO, "Safe to spray: 11.0 °C above the dew point"),
        (20, 90, Fitness.NO_GO, "Do not spray"),
        # Below 15 °C paint sprays badly: common practice, no source.
        (13, 40, Fitness.CARE, "with care"),
    ],
)
def test_the_verdict_on_spraying_is_that_of_the_planner(
    make_window: MakeWindow, temperature_c: float, humidity_pct: float, fit: Fitness, said: str
) -> None:
    book = air_of(small_book(), temperature_c, humidity_pct)
    window = make_window(book, NOW)
    picture = window.session.picture
    assert picture is not None
    coats = tuple(to_spray(picture.book, picture.plan, NOW))
    assert coats
    verdict = spray_verdict(book, Cure(book.room, zone_named(book.bench_time.zone)), NOW, coats)
    assert verdict.fitness is fit
    assert said in spray_words(verdict)
    assert window.strip.verdict.text() == spray_words(verdict)


def test_a_project_says_its_date_and_whether_it_keeps_it(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    model = window.projects.model
    picture = window.session.picture
    assert picture is not None
    ((_, end),) = picture.plan.finishes
    done = moment_of(end, picture.zone).date()
    in_hand = done + timedelta(days=3)
    replan(qtbot, window, lambda: window.session.attempt(lambda b: target(b, in_hand)))
    assert model.data(model.index(0)).splitlines()[-1] == "3 days in hand"
    assert f"by {words.day(in_hand)}" in model.data(model.index(0))
    assert model.data(model.index(0), Qt.ItemDataRole.DecorationRole) is not None
    missed = done - timedelta(days=2)
    replan(qtbot, window, lambda: window.session.attempt(lambda b: target(b, missed)))
    assert "1 day late" in model.data(model.index(0))  # whole days after the day's end
    replan(qtbot, window, lambda: window.session.attempt(lambda b: target(b, None)))
    assert model.data(model.index(0)).splitlines()[-1].startswith("done ")
    assert model.data(model.index(0), Qt.ItemDataRole.DecorationRole) is None


def target(book: Book, on: date | None) -> Edit:
    return edits.set_target(book, PROJECT, on)


def test_tab_follows_the_eye_where_lines_came_later(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    window.show_page("bench time")
    evenings = window.evenings
    ring = list(stops_now(evenings))
    monday = evenings.rules[0].days[0]
    assert ring.index(monday) < ring.index(evenings.add)
    assert ring.index(evenings.add) < ring.index(evenings.skip) < ring.index(evenings.add_extra)


def test_lists_and_sets_of_leaves_have_names_of_their_own(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    nameless = []
    for page in window.pages:
        window.show_page(page.name)
        QApplication.processEvents()
        for control in page.widget.findChildren(QWidget):
            if not isinstance(control, QTabBar | QComboBox) or not control.isVisible():
                continue
            if not control.accessibleName():
                nameless.append((page.name, type(control.parent()).__name__))
    assert nameless == []
    assert window.frame.switch.accessibleName()
