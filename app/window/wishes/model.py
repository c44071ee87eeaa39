"""The wishes as a table: whose, what, and whether the plan keeps it."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from app.service.pins import Wish
from app.window import words
from app.window.wishes.wish_wording import kept_word, whose, wish_line

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()


class WishModel(QAbstractTableModel):
    """A thin adapter over a tuple of wishes."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._wishes: tuple[Wish, ...] = ()
        self._zone = ZoneInfo("UTC")

    def show_wishes(self, wishes: tuple[Wish, ...], zone: ZoneInfo) -> None:
        """Show other wishes."""
        self.beginResetModel()
        self._wishes, self._zone = wishes, zone
        self.endResetModel()

    def wish(self, row: int) -> Wish | None:
        """Return the wish of a row."""
        return self._wishes[row] if 0 <= row < len(self._wishes) else None

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of wishes."""
        return 0 if parent.isValid() else len(self._wishes)

    def columnCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of columns."""
        return 0 if parent.isValid() else 3

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        wish = self.wish(index.row()) if index.isValid() else None
        if wish is None or role not in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return None
        told = (
            words.capital(whose(wish)),
            wish_line(wish.pin, self._zone, wish.project),
            kept_word(wish),
        )
        return told[index.column()]

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return (self.tr("Piece of work"), self.tr("Wish"), self.tr("In the plan"))[section]
        return None
