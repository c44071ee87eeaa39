"""Rows of controls below each other: each can be taken away by its ×, and a button adds one."""

from __future__ import annotations

from collections.abc import Callable
from typing import Generic, TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QToolButton, QVBoxLayout, QWidget

from app.window.forms.controls import tool

R = TypeVar("R", bound="FormRow")


class FormRow(QFrame):
    """Controls of one thing.

    Signals
    -------
    changed(), removed()
        Something is other now; the row shall go.
    """

    changed = Signal()
    removed = Signal()

    def cross(self, name: str) -> QToolButton:
        """Return the button that takes the row away; ``name`` says what it does."""
        return tool("×", name, self.removed.emit)

    def across(self, *widgets: QWidget) -> QHBoxLayout:
        """Lay the row's controls beside each other; whoever takes all width is told afterwards."""
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(6)
        for widget in widgets:
            line.addWidget(widget)
        return line


class RowList(QWidget, Generic[R]):
    """Rows, and below them the button that adds one.

    Signals
    -------
    changed()
        A row was added, changed or taken away.

    Parameters
    ----------
    make
        Returns a row that shows nothing yet.
    add
        What the button says, and ``tip`` more of it.
    fill
        Lets a row that was just added show something; absent, the button adds none by itself.
    remove
        What a row's × does, where it is more than taking the row away.
    """

    changed = Signal()

    def __init__(
        self,
        make: Callable[[], R],
        add: str,
        fill: Callable[[R], object] | None = None,
        tip: str = "",
        remove: Callable[[R], object] | None = None,
    ) -> None:
        super().__init__()
        self.rows: list[R] = []
        self._make, self._fill, self._remove = make, fill, remove or self.remove
        self.add = QPushButton(add)
        self.add.setToolTip(tip)
        self.add.setAutoDefault(False)
        if fill is not None:
            self.add.clicked.connect(self._added)
        self._holder = QVBoxLayout()
        self._holder.setSpacing(4)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(self._holder)
        column.addWidget(self.add, 0, Qt.AlignmentFlag.AlignLeft)

    def put(self, count: int) -> list[R]:
        """Have so many rows, and return them; those that are there already stay."""
        while len(self.rows) > count:
            self._drop(self.rows[-1])
        while len(self.rows) < count:
            self.append()
        return self.rows

    def append(self) -> R:
        """Add a row at the end."""
        row = self._make()
        row.changed.connect(self.changed)
        row.removed.connect(lambda: self._remove(row))
        self.rows.append(row)
        self._holder.addWidget(row)
        return row

    def remove(self, row: R) -> None:
        """Take a row away."""
        self._drop(row)
        self.add.setFocus()
        self.changed.emit()

    def _added(self) -> None:
        row = self.append()
        if self._fill is not None:
            self._fill(row)
        row.setFocus()
        self.changed.emit()

    def _drop(self, row: R) -> None:
        self.rows.remove(row)
        self._holder.removeWidget(row)
        row.hide()
        row.deleteLater()
