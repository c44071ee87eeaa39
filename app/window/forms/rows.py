"""Rows of plain values as a table, thin enough for any list that a view shows."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QFont, QIcon

from app.window.labels import swatch_icon

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
EN_SPACE = "\u2002"
LEFT = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
T = TypeVar("T")


@dataclass(frozen=True)
class Column(Generic[T]):
    """One column: its name, what it says of a row, and how.

    ``tip`` says more; ``swatch`` is a colour to show beside it, "" for none; ``heading`` says
    more of its name, ``spoken`` is read out in place of what is shown.
    """

    name: str
    text: Callable[[T], str]
    right: bool = False
    tip: Callable[[T], str] | None = None
    swatch: Callable[[T], str] | None = None
    font: Callable[[T], QFont | None] | None = None
    spoken: Callable[[T], str] | None = None
    heading: str = ""


class RowsModel(QAbstractTableModel, Generic[T]):
    """Values down, columns across."""

    def __init__(self, columns: Sequence[Column[T]], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._columns = tuple(columns)
        self._rows: tuple[T, ...] = ()
        self._icons: dict[str, QIcon] = {}

    @property
    def rows(self) -> tuple[T, ...]:
        """What is shown."""
        return self._rows

    def show_rows(self, rows: Sequence[T], *, same: bool | None = None) -> None:
        """Show other values; ``same`` tells whether they are of the same things, line by line.

        Where nobody says so, as many lines count as the same.
        """
        if len(rows) == len(self._rows) if same is None else same:
            self._rows = tuple(rows)
            self.tell_changed()
            return
        self.beginResetModel()
        self._rows = tuple(rows)
        self.endResetModel()

    def tell_changed(self) -> None:
        """Let every cell be read anew: the lines are the same, what is said of them is not."""
        if self._rows:
            last = self.index(len(self._rows) - 1, len(self._columns) - 1)
            self.dataChanged.emit(self.index(0, 0), last)

    def row_at(self, index: Index) -> T | None:
        """Return the value of a line."""
        return self._rows[index.row()] if index.isValid() else None

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of values."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of columns."""
        return 0 if parent.isValid() else len(self._columns)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        if not index.isValid():
            return None
        row, column = self._rows[index.row()], self._columns[index.column()]
        if role == Qt.ItemDataRole.DisplayRole:
            return column.text(row)
        if role == Qt.ItemDataRole.ToolTipRole:
            return column.tip(row) if column.tip else column.text(row)
        if role == Qt.ItemDataRole.TextAlignmentRole and column.right:
            return RIGHT
        if role == Qt.ItemDataRole.DecorationRole and column.swatch:
            return self._icon(column.swatch(row))
        if role == Qt.ItemDataRole.FontRole and column.font:
            return column.font(row)
        if role == Qt.ItemDataRole.AccessibleTextRole and column.spoken:
            return column.spoken(row)
        return None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is not Qt.Orientation.Horizontal:
            return None
        column = self._columns[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return column.name + EN_SPACE if column.right else column.name
        if role == Qt.ItemDataRole.TextAlignmentRole and column.right:
            return RIGHT
        if role == Qt.ItemDataRole.ToolTipRole:
            return column.heading or None
        return None

    def _icon(self, swatch: str) -> QIcon | None:
        if not swatch:
            return None
        if swatch not in self._icons:
            self._icons[swatch] = swatch_icon(swatch)
        return self._icons[swatch]
