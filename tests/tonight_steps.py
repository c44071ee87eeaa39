"""Working in Tonight by keys, for tests: a window with a clock of its own."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton
from small_book import PROJECT
from window_steps import settle

from app.window.evening.brake_dialog import BrakeDialog
from app.window.main_window import MainWindow
from app.window.tonight_cards.places_model import Cell
from app.window.tonight_cards.places_table import PlacesTable
from planner.tonight import WorkRow
from planner.values.plan import PassKey
from planner.values.project import Logged

Key = Qt.Key


class Shown:
    """The row of a pass in its table."""

    def __init__(self, table: PlacesTable, at: int) -> None:
        self.table, self.model, self.at = table, table.places, at

    @property
    def work(self) -> WorkRow:
        """What is done."""
        return self.model.block.rows[self.at]

    @property
    def over(self) -> bool:
        """Tell whether it is shown as done."""
        return self.model.over(self.work)

    def state(self, number: int) -> Cell:
        """Return how a place stands; the one after the last is the whole row."""
        return self.model.cell(self.model.index(self.at, number))

    def checked(self, number: int) -> bool:
        """Tell whether a place is ticked."""
        return self.state(number) is Cell.DONE

    def go(self, number: int) -> None:
        """Let the keys go to a place."""
        self.table.setFocus()
        self.table.setCurrentIndex(self.model.index(self.at, number))


def row_of(window: MainWindow, wanted: PassKey) -> Shown:
    """Return the row of a pass."""
    found = window.tonight.spot(wanted)
    assert found is not None
    return Shown(*found)


def asked(app: QApplication) -> BrakeDialog:
    """Return the question on screen."""
    dialog = app.activeModalWidget()
    assert isinstance(dialog, BrakeDialog)
    return dialog


class Tonight:
    """Tonight in a window with a clock that goes when told."""

    def __init__(self, qtbot: Any, app: QApplication, window: MainWindow, now: int) -> None:
        self.qtbot, self.app, self.window, self.now = qtbot, app, window, now
        window.session.set_clock(lambda: self.now)
        window.session._later.setInterval(0)
        window.session.replan()
        self.settle()

    def settle(self) -> None:
        session = self.window.session
        self.qtbot.waitUntil(
            lambda: session._tried == session._serial and not session._worker.busy, timeout=20_000
        )
        settle(self.app)

    def tick(self, wanted: PassKey, number: int = 0) -> None:
        """Go to a place and press Space."""
        row = row_of(self.window, wanted)
        row.go(number)
        self.qtbot.keyClick(row.table, Key.Key_Space)
        settle(self.app)

    def done(self, wanted: PassKey) -> None:
        """Go to a row and press Enter."""
        row = row_of(self.window, wanted)
        row.go(0)
        self.qtbot.keyClick(row.table, Key.Key_Return)
        settle(self.app)

    def back(self, wanted: PassKey) -> None:
        """Go to a row and press Delete."""
        row = row_of(self.window, wanted)
        row.go(0)
        self.qtbot.keyClick(row.table, Key.Key_Delete)
        settle(self.app)

    def press(self, pressed: Qt.Key) -> None:
        self.qtbot.keyClick(self.app.focusWidget(), pressed)
        self.settle()

    def command(self, pressed: Qt.Key) -> None:
        """Press the keys of a command of the menu: Ctrl, Shift and a letter."""
        held = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
        self.window.activateWindow()
        self.qtbot.keyClick(self.window, pressed, held)

    def answer(self, button: QPushButton) -> None:
        """Go to a button of the question by Tab, and press it by Enter."""
        for _ in range(4):
            if button.hasFocus():
                break
            self.press(Key.Key_Tab)
        assert button.hasFocus()
        self.press(Key.Key_Return)

    @property
    def log(self) -> tuple[Logged, ...]:
        book = self.window.session.book
        assert book is not None
        return book.project(PROJECT).log
