"""The Wishes view and the list of the last edits, by keyboard."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QAbstractItemModelTester
from PySide6.QtWidgets import QComboBox
from small_book import CART, NOW, PROJECT, key, small_book
from view_steps import shown

from app.service import edits, pins, wishes
from app.window.last_edits import LastEdits
from app.window.wishes.choice_list import Choose
from app.window.wishes.view import WishesView
from planner.bench import calendar_of
from planner.values.book import Book
from planner.values.wishes import Level, Staying

FATAL = QAbstractItemModelTester.FailureReportingMode.Fatal


def with_wishes() -> Book:
    book = small_book()
    stretch = calendar_of(book.bench_time).next_stretch(NOW)
    assert stretch is not None
    book = pins.pin_to(book, key("prime"), stretch).book
    return pins.not_before(book, key("gloss"), NOW + 30).book


@pytest.fixture
def view(qtbot, tmp_path: Path):
    with shown(WishesView, with_wishes(), NOW, tmp_path) as (made, session):
        with qtbot.waitSignal(
            session.planning, timeout=20_000, check_params_cb=lambda busy: not busy
        ):
            pass
        made.show_book()
        yield made, session


def test_every_wish_is_listed_and_can_be_taken_back(qtbot, view) -> None:
    made, session = view
    QAbstractItemModelTester(made.model, FATAL, made.model)
    told = [[made.model.data(made.model.index(row, at)) for at in range(3)] for row in range(2)]
    assert told[0] == ["Prime · cart", "pinned to Thu 6 Mar", "kept"]
    assert told[1] == ["Gloss · cart", "not before Thu 6 Mar 20:00", "kept"]
    assert made.model.rowCount(made.model.index(0, 0)) == 0
    shown_: list[object] = []
    made.show_wanted.connect(shown_.append)
    made.show_it.click()
    assert shown_ == [key("prime")]
    made.table.setFocus()
    qtbot.keyClick(made.table, Qt.Key.Key_Delete)
    assert [pin.step for pin in session.book.project(PROJECT).pins] == ["gloss"]
    made.remove.click()
    assert session.book == small_book()
    assert made.none.isVisible()
    assert not made.table.isVisible()


def test_what_counts_is_put_in_order_by_keys_and_undone_as_one(qtbot, view) -> None:
    made, session = view
    made.order.setFocus()
    made.order.setCurrentRow(3)
    for _ in range(3):
        qtbot.keyClick(made.order, Qt.Key.Key_Up, Qt.KeyboardModifier.AltModifier)
    assert session.book.preferences.order[0] is Level.SETUP
    assert made.order.item(0).text() == "1. Little loading and cleaning"
    assert made.order.currentRow() == 0
    assert not made.up.isEnabled()
    session.undo()
    assert session.book == with_wishes()
    assert made.order.item(0).text() == "1. Nothing late for its date"


def test_one_vehicle_is_chosen_to_go_first(qtbot, view) -> None:
    made, session = view
    box = made.findChild(QComboBox)
    box.setFocus()
    with qtbot.waitSignal(made._trial.kept, timeout=20_000):
        qtbot.keyClick(box, Qt.Key.Key_Down)
        box.activated.emit(box.currentIndex())
    assert session.book.project(PROJECT).model(CART).early  # others fill the gaps
    assert session.book.project(PROJECT).pilot == ""
    box = made.pilots.itemAtPosition(0, 1).widget()
    waited = box.findText(f"{CART}, waited for")
    with qtbot.waitSignal(made._trial.kept, timeout=20_000):
        box.setCurrentIndex(waited)
        box.activated.emit(waited)
    assert session.book.project(PROJECT).pilot == CART
    assert not session.book.project(PROJECT).model(CART).early


def test_the_last_edits_are_listed_and_gone_back_to(qtbot, view) -> None:
    made, session = view
    session.attempt(lambda book: edits.set_weight(book, PROJECT, 3))
    session.attempt(lambda book: wishes.move_level(book, Level.SETUP, -1))
    session.attempt(lambda book: edits.set_target(book, PROJECT, None))
    dialog = LastEdits(session, made)
    dialog.show()
    told = [dialog.list.item(row).text() for row in range(dialog.list.count())]
    assert len(told) == 4
    assert told[0].endswith("yard: no date  (here)")
    assert "weight 3" in told[2]
    assert not dialog.go_there.isEnabled()
    dialog.list.setCurrentRow(2)
    qtbot.keyClick(dialog.list, Qt.Key.Key_Return)
    assert session.book.project(PROJECT).weight == 3
    assert session.book.project(PROJECT).target is not None
    told = [dialog.list.item(row).text() for row in range(dialog.list.count())]
    assert [text.endswith("(undone)") for text in told] == [True, True, False, False]
    dialog.list.setCurrentRow(0)
    dialog.go_there.click()
    assert session.book.project(PROJECT).target is None
    dialog.list.setCurrentRow(3)
    dialog.go_there.click()
    assert session.book == with_wishes()
    dialog.close()


def test_a_long_list_is_narrowed_by_typing(qtbot) -> None:
    dialog = Choose("title", "which?", [("base, cart", 1), ("gloss, cart", 2), ("gloss, van", 3)])
    qtbot.addWidget(dialog)
    qtbot.keyClicks(dialog.narrow, "gl va")
    assert dialog.value() == 3
    dialog.narrow.clear()
    dialog.list.setCurrentRow(0)
    qtbot.keyClick(dialog.narrow, Qt.Key.Key_Down)
    assert dialog.value() == 2
    qtbot.keyClicks(dialog.narrow, "nothing like it")
    assert dialog.value() is None


def test_what_may_move_is_one_stop_of_tab_and_the_arrows_choose(qtbot, view) -> None:
    made, session = view
    # Tab goes to the chosen button of a group and arrows go through it: common practice, no source.
    both = {Staying.CLOSE: made.near, Staying.EARLIEST: made.earliest}
    for staying, press in ((Staying.EARLIEST, Qt.Key.Key_Down), (Staying.CLOSE, Qt.Key.Key_Up)):
        here = next(button for button in both.values() if button.isChecked())
        here.setFocus()
        qtbot.keyClick(here, press)
        assert session.book.preferences.staying is staying
        assert both[staying].hasFocus()
        for each, button in both.items():
            tabbed = bool(button.focusPolicy() & Qt.FocusPolicy.TabFocus)
            assert (tabbed, button.isChecked()) == (each is staying, each is staying)
