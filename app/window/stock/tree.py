"""Coatings by family as a tree, thin over plain values, and the filter before it."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from PySide6.QtCore import (
    QAbstractItemModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    QSortFilterProxyModel,
    Qt,
)
from PySide6.QtGui import QFont, QIcon

from app.window import words
from app.window.forms.rows import EN_SPACE, RIGHT
from app.window.palette import LIGHT
from app.window.stock.bottles import PICTURE, bottle_icon
from app.window.stock.coating_rows import MOST_ROLES, FamilyRows, StockRow
from app.window.tree_nodes import COUNTED
from planner.quantity import ShoppingLine

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
SAID = (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole)
LEAST_ML = 0.05  # what would be told as nothing
NAME, FINISH, ROLE, LEFT, NEEDED, BUY, BOTTLE, OPENED = range(8)
NUMBERS = (LEFT, NEEDED, BOTTLE)


class _Family:
    """A line of the tree; the lines below it know it."""

    def __init__(self, value: FamilyRows, row: int) -> None:
        self.value, self.row, self.number = value, row, next(COUNTED)
        self.below = [_Coating(stock_row, at, self) for at, stock_row in enumerate(value.rows)]


class _Coating:
    """A coating with its way up, and all of its words for whoever looks for one."""

    def __init__(self, value: StockRow, row: int, above: _Family) -> None:
        self.row, self.above, self.number = row, above, next(COUNTED)
        self.take(value)

    def take(self, value: StockRow) -> None:
        self.value = value
        self._words = ""

    @property
    def words(self) -> str:
        if not self._words:  # most are never looked for
            told = [cell(self.value, column) for column in range(OPENED + 1)]
            family = family_word(self.value.coating.family.value)
            self._words = " ".join([*told, *map(role_word, self.value.roles), family]).casefold()
        return self._words


class StockModel(QAbstractItemModel):
    """Families, and below each its coatings."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._families: list[_Family] = []
        self._numbered: dict[int, _Family | _Coating] = {}
        self._icons: dict[tuple[object, ...], QIcon] = {}
        self.colours = LIGHT
        self.zone = ZoneInfo("UTC")

    def show_families(self, families: tuple[FamilyRows, ...]) -> None:
        """Show other coatings; lines that stay keep their indexes."""
        if _names(families) == _names(tuple(family.value for family in self._families)):
            for family, value in zip(self._families, families, strict=True):
                family.value = value
                for each, row in zip(family.below, value.rows, strict=True):
                    each.take(row)
                above = self.index(family.row, 0)
                self.dataChanged.emit(
                    self.index(0, 0, above), self.index(len(family.below) - 1, OPENED, above)
                )
            return
        self.beginResetModel()
        self._families = [_Family(value, row) for row, value in enumerate(families)]
        self._numbered = {family.number: family for family in self._families}
        self._numbered |= {
            other.number: other for family in self._families for other in family.below
        }
        self.endResetModel()

    def entry(self, index: Index) -> _Family | _Coating | None:
        """Return the line of an index, None for one that is older than what is shown."""
        return self._numbered.get(index.internalId()) if index.isValid() else None

    def _index_of(self, entry: _Family | _Coating, column: int = 0) -> QModelIndex:
        return self.createIndex(entry.row, column, entry.number)

    def row_at(self, index: Index) -> StockRow | None:
        """Return the coating of a line, None for a family."""
        entry = self.entry(index)
        return entry.value if isinstance(entry, _Coating) else None

    def index_of(self, name: str) -> QModelIndex:
        """Return the line of a coating, an invalid index if there is none."""
        for family in self._families:
            for other in family.below:
                if other.value.coating.name == name:
                    return self._index_of(other)
        return QModelIndex()

    def index(self, row: int, column: int, parent: Index = NO_INDEX) -> QModelIndex:
        """Return the index of a cell."""
        siblings = self._below(parent)
        if not (0 <= row < len(siblings) and 0 <= column <= OPENED):
            return QModelIndex()
        return self._index_of(siblings[row], column)

    def parent(self, index: Index = NO_INDEX) -> QModelIndex:  # type: ignore[override]
        """Return the family of a coating."""
        entry = self.entry(index)
        if not isinstance(entry, _Coating):
            return QModelIndex()
        return self._index_of(entry.above)

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return how many lines are below a line."""
        return 0 if parent.column() > 0 else len(self._below(parent))

    def columnCount(self, _parent: Index = NO_INDEX) -> int:
        """Return the number of columns."""
        return OPENED + 1

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        entry = self.entry(index)
        if isinstance(entry, _Family):
            return self._of_family(entry.value, index.column(), role)
        if not isinstance(entry, _Coating):
            return None
        row = entry.value
        if index.column() == BUY and role in SAID:
            return to_buy(row, self.zone)
        if role == Qt.ItemDataRole.DisplayRole:
            return cell(row, index.column())
        if role == Qt.ItemDataRole.ToolTipRole:
            return tip(row, index.column())
        if role == Qt.ItemDataRole.TextAlignmentRole and index.column() in (LEFT, NEEDED, BOTTLE):
            return RIGHT
        if role == Qt.ItemDataRole.DecorationRole and index.column() == NAME:
            return self._bottle(row)
        return None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is not Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            name = (
                self.tr("Coating"),
                self.tr("Finish"),
                self.tr("For"),
                self.tr("Left"),
                self.tr("Plan needs"),
                self.tr("To buy"),
                self.tr("Bottle"),
                self.tr("Opened"),
            )[section]
            return name + EN_SPACE if section in NUMBERS else name
        if role == Qt.ItemDataRole.TextAlignmentRole and section in NUMBERS:
            return RIGHT
        return None

    def _bottle(self, row: StockRow) -> QIcon:
        size = max(row.coating.bottle_ml, 0.1)
        left = round(min(1.0, row.stock.left_ml / size), 2)
        taken = round(min(1.0, (row.line.needed_ml if row.line else 0.0) / size), 2)
        known = (row.coating.swatch, left, taken, bool(row.old), self.colours.dark)
        if known not in self._icons:
            self._icons[known] = bottle_icon(
                row.coating.swatch, left, taken, old=bool(row.old), colours=self.colours
            )
        return self._icons[known]

    def _of_family(self, value: FamilyRows, column: int, role: int) -> Any:
        if column == NAME and role == Qt.ItemDataRole.DisplayRole:
            return self.tr("{family} ({n})").format(
                family=family_word(value.family.value), n=len(value.rows)
            )
        if role == Qt.ItemDataRole.SizeHintRole:  # all lines are as high as the first
            return QSize(1, PICTURE[1] // 2)
        if role == Qt.ItemDataRole.FontRole:
            font = QFont()
            font.setWeight(QFont.Weight.DemiBold)
            return font
        return None

    def _below(self, parent: Index) -> list[Any]:
        entry = self.entry(parent)
        if isinstance(entry, _Coating):
            return []
        return entry.below if isinstance(entry, _Family) else self._families


class StockFilter(QSortFilterProxyModel):
    """Lines that hold every word asked for; a family that does brings all of its own."""

    def __init__(self, lines: StockModel, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._lines = lines
        self._words: tuple[str, ...] = ()
        self.setRecursiveFilteringEnabled(True)
        self.setSourceModel(lines)

    def look_for(self, asked: str) -> None:
        """Show only lines that hold these words, anywhere."""
        self._words = tuple(asked.casefold().split())
        self.invalidate()

    def filterAcceptsRow(self, row: int, parent: Index) -> bool:
        """Tell whether a line holds every word, its family's name counted in."""
        if not parent.isValid():
            return not self._words  # a family is there for its coatings alone
        entry = self._lines.entry(self._lines.index(row, 0, parent))
        return isinstance(entry, _Coating) and all(word in entry.words for word in self._words)


def family_word(family: str) -> str:
    """Return the name of a family."""
    return QCoreApplication.translate("family", family)


def role_word(role: str) -> str:
    """Return what a coating is for: a stage, or a varnish's role."""
    return QCoreApplication.translate("stage", role)


def ml(amount: float) -> str:
    """Return an amount as it is told, "6.4 ml"."""
    if 0 < amount < LEAST_ML:
        return words.tr("under 0.1 ml")
    return words.fill(words.tr("{amount:.1f} ml"), amount=amount)


def cell(row: StockRow, column: int) -> str:
    """Return what a cell of a coating says."""
    coating = row.coating
    if column == NAME:
        return coating.name
    if column == FINISH:
        return QCoreApplication.translate("finish", coating.finish.value)
    if column == ROLE:
        told = [role_word(role) for role in row.roles[:MOST_ROLES]]
        return ", ".join(told) + (" …" if len(row.roles) > MOST_ROLES else "")
    if column == LEFT:
        return ml(row.stock.left_ml)
    if column == NEEDED:
        return needed(row)
    if column == BUY:
        return ml(row.line.buy_ml) if row.line is not None and row.short else ""
    if column == BOTTLE:
        return words.fill(words.tr("{amount:g} ml"), amount=coating.bottle_ml)
    opened = words.day(coating.opened) + f" {coating.opened.year}" if coating.opened else ""
    return f"△ {opened}" if row.old else opened


def needed_words(line: ShoppingLine) -> str:
    """Return what the plan takes of a coating, as far as it is known."""
    if line.complete:
        return ml(line.needed_ml)
    if line.needed_ml <= 0:
        return words.tr("not known")
    return words.tr("over {amount}").format(amount=ml(line.needed_ml))


def needed(row: StockRow) -> str:
    """Return what the plan needs of a coating, with a sign where that is not there."""
    if row.line is None:
        return ""
    told = needed_words(row.line)
    return f"⚠ {told}" if row.short else told


def to_buy(row: StockRow, zone: ZoneInfo) -> str:
    """Return how much is to be bought, and when the bottle runs out by the plan; "" for none."""
    line = row.line
    if line is None or not row.short:
        return ""
    amount = ml(line.buy_ml)
    if line.runs_out is None or line.runs_out.at is None:
        return amount
    day = words.day_of(line.runs_out.at, zone)
    return words.tr("{amount}, by {day}").format(amount=amount, day=day)


def tip(row: StockRow, column: int) -> str:
    """Return what more there is to say of a cell."""
    if column == LEFT:
        return words.tr("about {drops} drops").format(drops=row.stock.drops)
    if column == NEEDED and row.line is not None:
        if row.short:
            return words.tr("{lack} more than there is").format(lack=ml(row.line.buy_ml))
        return words.tr("enough")
    if column == OPENED and row.old:
        return row.old
    if column == ROLE:
        return ", ".join(role_word(role) for role in row.roles)
    return cell(row, column)


def _names(families: tuple[FamilyRows, ...]) -> list[tuple[str, ...]]:
    return [
        (family.family.value, *(row.coating.name for row in family.rows)) for family in families
    ]
