"""A layout that sets small controls side by side and breaks the line where it is full.

Its items are made here and not by Qt: only what Python made tells Python when it is deleted, and
Qt must never be handed the item of a control that is gone.
"""

from __future__ import annotations

from PySide6.QtCore import QPoint, QRect, QSize, Qt
from PySide6.QtWidgets import QLayout, QLayoutItem, QWidget, QWidgetItem
from shiboken6 import Shiboken


class FlowLayout(QLayout):
    """Lines of controls, as words in a paragraph."""

    def __init__(self, parent: QWidget | None = None, across: int = 14, down: int = 4) -> None:
        super().__init__(parent)
        self._items: list[QLayoutItem] = []
        self._across, self._down = across, down
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:
        """Take another control by an item of our own."""
        widget = item.widget()
        if widget is not None and not Shiboken.createdByPython(item):
            Shiboken.delete(item)
            item = QWidgetItem(widget)
        self._items.append(item)

    def count(self) -> int:
        """Return the number of controls."""
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        """Return a control's item."""
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        """Give a control's item away."""
        return self._items.pop(index) if 0 <= index < len(self._items) else None

    def expandingDirections(self) -> Qt.Orientation:
        """Return that it never asks for more."""
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        """Return that fewer pixels across mean more lines."""
        return True

    def heightForWidth(self, width: int) -> int:
        """Return the height at a width."""
        return self._lay(QRect(0, 0, width, 0), move=False)

    def setGeometry(self, rect: QRect) -> None:
        """Put the controls in their places."""
        super().setGeometry(rect)
        self._lay(rect, move=True)

    def sizeHint(self) -> QSize:
        """Return the least size."""
        return self.minimumSize()

    def minimumSize(self) -> QSize:
        """Return the size of the largest control."""
        size = QSize()
        for item in self._items:
            size = size.expandedTo(item.minimumSize())
        return size

    def _lay(self, rect: QRect, *, move: bool) -> int:
        x, y, line = rect.x(), rect.y(), 0
        for item in self._items:
            if item.isEmpty():  # hidden
                continue
            hint = item.sizeHint()
            if rect.width() > 0:  # what is too wide for a line of its own gets the line
                hint.setWidth(min(hint.width(), max(rect.width(), item.minimumSize().width())))
            if x > rect.x() and x + hint.width() > rect.right() + 1:
                x, y, line = rect.x(), y + line + self._down, 0
            if move:
                item.setGeometry(QRect(QPoint(x, y), hint))
            x += hint.width() + self._across
            line = max(line, hint.height())
        return y + line - rect.y()
