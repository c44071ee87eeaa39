"""Where the cards of Tonight lie, below each other."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.window.emptying import empty


class Sheet(QWidget):
    """Heading, cards and last word below each other; what is given again is not made anew."""

    def __init__(self) -> None:
        super().__init__()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(24, 10, 18, 20)
        self._column.setSpacing(10)
        self.lines: list[QWidget] = []

    def show_lines(self, lines: list[QWidget]) -> None:
        """Show lines in this order."""
        if lines == self.lines:
            return
        empty(self._column, keep=set(lines))
        self.lines = list(lines)
        for at, line in enumerate(lines):
            self._column.insertWidget(at, line)
        if self._column.count() == len(lines):
            self._column.addStretch(1)  # stays below whatever is shown later

    def show_all(self) -> None:
        """Show what has just come; a layout counts only what is shown."""
        for line in self.lines:
            line.show()
