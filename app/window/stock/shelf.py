"""Coatings as bottles on a shelf: one tile each below the heading of its family."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QPoint,
    Qt,
    Signal,
)
from PySide6.QtGui import QKeyEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QListView, QWidget

from app.window import words
from app.window.stock.coating_rows import StockRow
from app.window.stock.tiles import TilePainter
from app.window.stock.tree import NEEDED, cell, family_word, ml, needed_words, to_buy

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
ROW = Qt.ItemDataRole.UserRole
Shown = str | StockRow
ARROWS = (Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Down)


class ShelfModel(QAbstractListModel):
    """Headings and bottles in the order of the list of coatings."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[Shown, ...] = ()
        self.zone = ZoneInfo("UTC")

    def show_rows(self, rows: tuple[Shown, ...]) -> None:
        """Show other bottles; where the same stand in the same places, they stay chosen."""
        if [_name(row) for row in rows] == [_name(row) for row in self._rows]:
            self._rows = rows
            if rows:
                self.dataChanged.emit(self.index(0), self.index(len(rows) - 1))
            return
        self.beginResetModel()
        self._rows = rows
        self.endResetModel()

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of headings and bottles."""
        return 0 if parent.isValid() else len(self._rows)

    def bottle(self, index: Index) -> StockRow | None:
        """Return the coating of a tile, None for a heading."""
        row = self._rows[index.row()] if index.isValid() else None
        return row if isinstance(row, StockRow) else None

    def index_of(self, name: str) -> QModelIndex:
        """Return the tile of a coating, an invalid index if there is none."""
        for at, row in enumerate(self._rows):
            if isinstance(row, StockRow) and row.coating.name == name:
                return self.index(at)
        return QModelIndex()

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Return that a bottle can be chosen, and a heading not."""
        if self.bottle(index) is None:
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the name of a bottle or family, and all that is said of it."""
        if not index.isValid():
            return None
        row = self._rows[index.row()]
        if role == ROW:
            return row
        if isinstance(row, str):
            return row if role == Qt.ItemDataRole.DisplayRole else None
        if role == Qt.ItemDataRole.DisplayRole:
            return row.coating.name
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
            return "\n".join((row.coating.name, *told_of(row, self.zone)))
        return None


class Shelf(QListView):
    """Tiles side by side; the arrow keys go from bottle to bottle.

    Signals
    -------
    chosen(str)
        Another coating is the current one, by its name.
    """

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.shelf = ShelfModel(self)
        self.tiles = TilePainter(self)
        self.setModel(self.shelf)
        self.setItemDelegate(self.tiles)
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(True)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setMovement(QListView.Movement.Static)
        self.setFrameShape(QListView.Shape.NoFrame)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOn)
        self.setMouseTracking(True)
        self.viewport().setAutoFillBackground(False)
        self.selectionModel().currentChanged.connect(self._tell)

    def show_rows(self, rows: tuple[Shown, ...], zone: ZoneInfo) -> None:
        """Show other bottles."""
        self.shelf.zone = self.tiles.zone = zone
        self.shelf.show_rows(rows)

    def choose(self, name: str) -> None:
        """Make a coating the current one, and bring it in sight."""
        index = self.shelf.index_of(name)
        if index.isValid() and index != self.currentIndex():
            self.setCurrentIndex(index)

    def _tell(self, new: QModelIndex, _old: QModelIndex) -> None:
        row = self.shelf.bottle(new)
        if row is not None:
            self.chosen.emit(row.coating.name)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go to the bottle beside, above or below; headings are passed over."""
        if event.key() not in ARROWS or event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier:
            super().keyPressEvent(event)
            return
        found = self._beside(Qt.Key(event.key()))
        if found.isValid():
            self.setCurrentIndex(found)
        event.accept()

    def _beside(self, key: Qt.Key) -> QModelIndex:
        here = self.currentIndex()
        every = [self.shelf.index(at) for at in range(self.shelf.rowCount())]
        bottles = [index for index in every if self.shelf.bottle(index) is not None]
        if not here.isValid() or here not in bottles:
            return bottles[0] if bottles else QModelIndex()
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            at = bottles.index(here) + (1 if key == Qt.Key.Key_Right else -1)
            return bottles[at] if 0 <= at < len(bottles) else QModelIndex()
        spot = self.visualRect(here).center()
        down = 1 if key == Qt.Key.Key_Down else -1
        centres = [(index, self.visualRect(index).center()) for index in bottles]
        beyond = [(index, at) for index, at in centres if (at.y() - spot.y()) * down > 0]
        if not beyond:
            return QModelIndex()
        nearest = min(abs(at.y() - spot.y()) for _, at in beyond)
        line = [(index, at) for index, at in beyond if abs(at.y() - spot.y()) == nearest]
        return min(line, key=lambda each: _across(each[1], spot))[0]

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Let headings take the whole width anew."""
        super().resizeEvent(event)
        self.tiles.width = self.viewport().width()
        self.scheduleDelayedItemsLayout()


def told_of(row: StockRow, zone: ZoneInfo) -> list[str]:
    """Return what is said of a bottle: left, taken by the plan, to buy, and its age."""
    told = [words.tr("{amount} left").format(amount=ml(row.stock.left_ml))]
    if row.line is not None and cell(row, NEEDED):
        told.append(words.tr("the plan takes {amount}").format(amount=needed_words(row.line)))
    if row.short:
        told.append(words.tr("buy {amount}").format(amount=to_buy(row, zone)))
    if row.coating.opened:
        opened = row.coating.opened
        told.append(words.tr("opened {day} {year}").format(day=words.day(opened), year=opened.year))
    return told


def _across(one: QPoint, other: QPoint) -> int:
    return abs(one.x() - other.x())


def _name(row: Shown) -> str:
    return row if isinstance(row, str) else f"/{row.coating.name}"


def heading(family: str, count: int) -> str:
    """Return what stands above the bottles of a family."""
    return words.tr("{family} ({n})").format(family=words.capital(family_word(family)), n=count)
