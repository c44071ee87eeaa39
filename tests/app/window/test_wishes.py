"""Wishes on the timeline: by key and by hand, tried first, refused by name."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication
from small_book import CART, NOW, PROJECT, at, key, small_book
from window_steps import MakeWindow, replan

from app.service import pins
from app.window.main_window import MainWindow
from app.window.timeline.drop_targets import slots
from planner.bench import calendar_of
from planner.values.plan import PassKey


@pytest.fixture
def window(make_window: MakeWindow) -> MainWindow:
    made = make_window(small_book(), NOW)
    made.show_page("timeline")
    made.timeline.strip.setFocus()
    QApplication.processEvents()
    return made


def start_of(window: MainWindow, step: str) -> int:
    picture = window.session.picture
    assert picture is not None
    placed = picture.plan.placement(key(step))
    assert placed is not None
    return placed.start


def pins_of(window: MainWindow):
    assert window.session.book is not None
    return window.session.book.project(PROJECT).pins


def refused(qtbot, window: MainWindow, act) -> str:
    """Do something that is refused; return why.  Neither book nor journal has changed."""
    book, undo = window.session.book, window.session.undo_name()
    with qtbot.waitSignal(window.timeline.wishes.trial.refused, timeout=20_000) as signal:
        act()
    assert window.session.book == book
    assert window.session.undo_name() == undo
    assert window.timeline.message.isVisible()
    assert window.timeline.message.text() == signal.args[0]
    return signal.args[0]


def test_a_key_pins_the_piece_a_stretch_later_and_the_plan_follows(qtbot, window) -> None:
    strip = window.timeline.strip
    strip.choose(key("prime"))
    before = {step: start_of(window, step) for step in ("prime", "sand", "gloss")}
    replan(qtbot, window, lambda: qtbot.keyClick(strip, "]"))
    (pin,) = pins_of(window)
    assert (pin.model, pin.step, pin.on) == (CART, "prime", date(2031, 3, 13))
    assert start_of(window, "prime") >= at("2031-03-13 19:30")
    assert all(start_of(window, step) > start for step, start in before.items())
    assert "pin prime" in window.session.undo_name()
    piece = next(p for p in strip.arrangement.strip.pieces if p.key == key("prime"))
    assert piece.pinned
    scene = strip.scene()
    assert scene.left <= scene.x(start_of(window, "prime")) <= scene.area.right()
    assert any("pinned" in text.text for text in strip.arrangement.names)
    replan(qtbot, window, lambda: qtbot.keyClick(strip, "P", Qt.KeyboardModifier.ShiftModifier))
    assert pins_of(window) == ()
    assert start_of(window, "prime") == before["prime"]


def test_the_same_wish_from_the_list(qtbot, window) -> None:
    page = window.timeline
    page.tree.setCurrentIndex(page.model.index_of(key("prime")))
    page.tree.setFocus()
    replan(qtbot, window, lambda: qtbot.keyClick(page.tree, "P"))
    assert [pin.on for pin in pins_of(window)] == [date(2031, 3, 6)]


def test_too_early_is_refused_at_once_by_the_name_of_the_gate(qtbot, window) -> None:
    strip = window.timeline.strip
    strip.choose(key("wash"))
    assert start_of(window, "wash") > at("2031-03-06 21:30")
    why = refused(
        qtbot,
        window,
        lambda: window.timeline.wishes.drop_on(
            key("wash"), slots(strip.arrangement.strip, strip.arrangement.scale)[0].interval
        ),
    )
    assert "Dark wash into the corners · cart cannot be done on Thu 6 Mar" in why
    assert "gloss · cart" in why  # the oil wash waits for the gloss coat to be hard


def test_wiping_back_next_week_is_refused_for_the_window_closes(qtbot, window) -> None:
    strip = window.timeline.strip
    week = at("2031-03-06 19:30") + 6 * 7 * 1440
    strip.choose(key("wash"))
    replan(qtbot, window, lambda: qtbot.keyClick(strip, "P"))
    strip.choose(key("wipe"))
    assert start_of(window, "wipe") < week
    why = refused(qtbot, window, lambda: qtbot.keyClick(strip, "]"))
    assert "must have ended by then, counted from dark wash into the corners · cart" in why


def test_the_past_and_what_is_done_are_refused(qtbot, window) -> None:
    past = pins.next_stretch(
        calendar_of(small_book().bench_time), at("2031-03-13 20:00"), -1, at("2031-03-01 00:00")
    )
    assert past is not None
    window.session.set_clock(lambda: at("2031-03-07 12:00"))
    why = refused(
        qtbot, window, lambda: window.timeline.wishes.drop_on(key("prime"), past.interval)
    )
    assert why == "Thu 6 Mar 19:30–21:30 is past."


def middle_of(window: MainWindow, wanted: PassKey) -> QPoint:
    strip = window.timeline.strip
    scene = strip.scene()
    box = next(
        box
        for box in strip.arrangement.boxes
        if strip.arrangement.strip.pieces[box.piece].key == wanted
    )
    x = scene.shift((box.left + box.right) / 2)
    return QPoint(round(x), round(scene.top + box.middle - scene.down))


def drag(qtbot, window: MainWindow, wanted: PassKey, x: float) -> None:
    """Carry a piece along its lane to an x of the viewport, and let go."""
    port, start = window.timeline.strip.viewport(), middle_of(window, wanted)
    qtbot.mousePress(port, Qt.MouseButton.LeftButton, pos=start)
    for share in (0.2, 0.6, 1.0):
        qtbot.mouseMove(port, QPoint(round(start.x() + (x - start.x()) * share), start.y()))
        QApplication.processEvents()
    qtbot.mouseRelease(port, Qt.MouseButton.LeftButton, pos=QPoint(round(x), start.y()))


def slot_x(window: MainWindow, number: int) -> float:
    strip = window.timeline.strip
    found = slots(strip.arrangement.strip, strip.arrangement.scale)[number]
    return strip.scene().shift((found.left + found.right) / 2)


def test_dragging_to_another_stretch_pins_there(qtbot, window) -> None:
    window.timeline.strip.zoom_to_fit()
    window.timeline.strip.horizontalScrollBar().setValue(0)
    wanted = slots(
        window.timeline.strip.arrangement.strip, window.timeline.strip.arrangement.scale
    )[1]
    replan(qtbot, window, lambda: drag(qtbot, window, key("prime"), slot_x(window, 1)))
    assert wanted.interval.start <= start_of(window, "prime") < wanted.interval.end
    assert len(pins_of(window)) == 1


def test_dragging_onto_a_forbidden_place_changes_nothing(qtbot, window) -> None:
    window.timeline.strip.zoom_to_fit()
    window.timeline.strip.horizontalScrollBar().setValue(0)
    why = refused(qtbot, window, lambda: drag(qtbot, window, key("wash"), slot_x(window, 0)))
    assert "cannot be done on" in why
    assert pins_of(window) == ()


def test_letting_go_where_it_stands_or_with_escape_wishes_nothing(qtbot, window) -> None:
    strip = window.timeline.strip
    strip.zoom_to_fit()
    start = middle_of(window, key("prime"))
    drag(qtbot, window, key("prime"), start.x() + 25)
    port = strip.viewport()
    qtbot.mousePress(port, Qt.MouseButton.LeftButton, pos=start)
    qtbot.mouseMove(port, QPoint(round(slot_x(window, 1)), start.y()))
    qtbot.keyClick(strip, Qt.Key.Key_Escape)
    qtbot.mouseRelease(
        port, Qt.MouseButton.LeftButton, pos=QPoint(round(slot_x(window, 1)), start.y())
    )
    window.timeline.wishes.trial.wait()
    QApplication.processEvents()
    assert pins_of(window) == ()
    assert window.session.undo_name() == ""


def test_as_early_as_it_can_be_is_said_of_its_model(qtbot, window) -> None:
    strip = window.timeline.strip
    strip.choose(key("sand"))
    with qtbot.waitSignal(window.timeline.wishes.trial.kept, timeout=20_000):
        qtbot.keyClick(strip, "F")
    assert window.session.book.project(PROJECT).model(CART).early
    assert window.session.book.project(PROJECT).pilot == ""
    assert window.timeline.wishes.early.isChecked()


def test_one_vehicle_first_is_said_of_its_model(qtbot, window) -> None:
    strip = window.timeline.strip
    strip.choose(key("sand"))
    with qtbot.waitSignal(window.timeline.wishes.trial.kept, timeout=20_000):
        qtbot.keyClick(strip, "F", Qt.KeyboardModifier.ShiftModifier)
    assert window.session.book.project(PROJECT).pilot == CART
    assert window.timeline.wishes.first.isChecked()
