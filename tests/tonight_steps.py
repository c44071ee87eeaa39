"""Working in Tonight by keys, for tests: a window with a clock of its own."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QPushButton
from small_book import PROJECT
from window_steps import settle

from app.window.evening.brake_dialog import BrakeDialog
from app.window.main_window import MainWindow
from app.window.tonight_rows import WorkLine
from planner.values.plan import PassKey
from planner.values.project import Logged

Key = Qt.Key


def row_of(window: MainWindow, wanted: PassKey) -> WorkLine:
    """Return the row of a pass."""
    return next(
        row for row in window.tonight.rows if isinstance(row, WorkLine) and row.key == wanted
    )


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
        box = row_of(self.window, wanted).boxes[number]
        box.setFocus()
        self.qtbot.keyClick(box, Key.Key_Space)
        settle(self.app)

    def done(self, wanted: PassKey) -> None:
        row = row_of(self.window, wanted)
        button = next(each for each in row.findChildren(QPushButton) if each.text() == "Done")
        button.setFocus()
        self.qtbot.keyClick(button, Key.Key_Space)
        settle(self.app)

    def press(self, pressed: Qt.Key) -> None:
        self.qtbot.keyClick(self.app.focusWidget(), pressed)
        self.settle()

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
