"""Rows of plain values as a table, thin enough for any list that a view shows."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QIcon

from app.window.labels import swatch_icon

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
EN_SPACE = "\u2002"
RIGHT = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
T = TypeVar("T")


@dataclass(frozen=True)
class Column(Generic[T]):
    """One column: its name, what it says of a row, and how.

    ``tip`` says more; ``swatch`` is a colour to show beside it, "" for none.
    """

    name: str
    text: Callable[[T], str]
    right: bool = False
    tip: Callable[[T], str] | None = None
    swatch: Callable[[T], str] | None = None


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

    def show_rows(self, rows: Sequence[T]) -> None:
        """Show other values."""
        if len(rows) == len(self._rows):
            self._rows = tuple(rows)
            if rows:
                last = self.index(len(rows) - 1, len(self._columns) - 1)
                self.dataChanged.emit(self.index(0, 0), last)
            return
        self.beginResetModel()
        self._rows = tuple(rows)
        self.endResetModel()

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
        row = self.row_at(index)
        if row is None:
            return None
        column = self._columns[index.column()]
        if role == Qt.ItemDataRole.DisplayRole:
            return column.text(row)
        if role == Qt.ItemDataRole.ToolTipRole:
            return column.tip(row) if column.tip else column.text(row)
        if role == Qt.ItemDataRole.TextAlignmentRole and column.right:
            return RIGHT
        if role == Qt.ItemDataRole.DecorationRole and column.swatch:
            return self._icon(column.swatch(row))
        return None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is not Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            column = self._columns[section]
            return column.name + EN_SPACE if column.right else column.name
        if role == Qt.ItemDataRole.TextAlignmentRole and self._columns[section].right:
            return RIGHT
        return None

    def _icon(self, swatch: str) -> QIcon | None:
        if not swatch:
            return None
        if swatch not in self._icons:
            self._icons[swatch] = swatch_icon(swatch)
        return self._icons[swatch]
