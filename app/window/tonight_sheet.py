"""Where the run sheet's rows lie, below each other."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.window.tonight_rows import Row, WorkLine


class Sheet(QWidget):
    """Heading, rows and last word below each other; rows given again are not made anew."""

    def __init__(self) -> None:
        super().__init__()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(6, 14, 10, 20)
        self._column.setSpacing(0)

    def show_lines(self, heading: QWidget, rows: list[Row], last: QWidget) -> None:
        """Show a heading, rows, and a last word if a caution was given."""
        staying = set(rows)
        while (item := self._column.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None and widget not in staying:
                widget.hide()
                widget.deleteLater()
        self._column.addWidget(heading)
        for row in rows:
            self._column.addWidget(row)
            row.update()
        if any(isinstance(row, WorkLine) and row.row.cautions for row in rows):
            last.setContentsMargins(10, 12, 10, 0)
            self._column.addWidget(last)
        self._column.addStretch(1)

    def show_all(self) -> None:
        """Show what has just come; a layout counts only what is shown."""
        for at in range(self._column.count()):
            item = self._column.itemAt(at)
            widget = item.widget() if item is not None else None
            if widget is not None:
                widget.show()
