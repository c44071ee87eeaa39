"""Keys as a person presses them, counted."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget


class Keys:
    """Presses keys wherever the window has them, and counts."""

    def __init__(self) -> None:
        self.count = 0

    def press(
        self, key: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier
    ) -> None:
        self.count += 1
        QTest.keyClick(self._focused(), key, held)
        QApplication.processEvents()

    def type(self, text: str) -> None:
        self.count += len(text)
        QTest.keyClicks(self._focused(), text)
        QApplication.processEvents()

    def name(self, text: str) -> None:
        """Type a name; its letters are not counted."""
        QTest.keyClicks(self._focused(), text)

    def tab(self) -> None:
        self.press(Qt.Key.Key_Tab)

    def enter(self) -> None:
        self.press(Qt.Key.Key_Return)

    def space(self) -> None:
        self.press(Qt.Key.Key_Space)

    def _focused(self) -> QWidget:
        widget = QApplication.focusWidget()
        assert widget is not None
        return widget
