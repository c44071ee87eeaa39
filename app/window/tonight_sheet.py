"""Where the run sheet's rows lie, below each other."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.window.emptying import empty
from app.window.tonight_rows import TonightRow, WorkLine


class Sheet(QWidget):
    """Heading, rows and last word below each other; rows given again are not made anew."""

    def __init__(self) -> None:
        super().__init__()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(6, 14, 10, 20)
        self._column.setSpacing(0)
        self._lines: list[QWidget] = []

    def show_lines(self, heading: QWidget, rows: list[TonightRow], last: QWidget) -> None:
        """Show a heading, rows, and a last word if a caution was given."""
        empty(self._column, keep=set(rows))
        self._lines = [heading, *rows]
        if any(isinstance(row, WorkLine) and row.row.cautions for row in rows):
            last.setContentsMargins(10, 12, 10, 0)
            self._lines.append(last)
        for at, line in enumerate(self._lines):
            self._column.insertWidget(at, line)
            line.update()
        if self._column.count() == len(self._lines):
            self._column.addStretch(1)  # stays below whatever is shown later

    def show_all(self) -> None:
        """Show what has just come; a layout counts only what is shown."""
        for line in self._lines:
            line.show()
