"""The timeline as a tree for everyone who reads rather than looks."""

from __future__ import annotations

from typing import Any
from weakref import ref

from PySide6.QtCore import QAbstractItemModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtGui import QColor, QIcon, QPainter, QPixmap

from app.window.timeline.outline import Node
from planner.values.plan import PassKey

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
COLUMNS = 3


class _Entry:
    """A node with its way up, as Qt asks for it.

    It does not hold what is above it: a tree goes at once when another takes its place.
    """

    def __init__(self, node: Node, row: int, parent: _Entry | None) -> None:
        self.node = node
        self.row = row
        self._parent = ref(parent) if parent is not None else None
        self.below = [_Entry(child, at, self) for at, child in enumerate(node.below)]

    @property
    def parent(self) -> _Entry | None:
        """The entry above."""
        return self._parent() if self._parent is not None else None


class OutlineModel(QAbstractItemModel):
    """A thin adapter over the nodes of `outline`."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._top: list[_Entry] = []
        self._icons: dict[str, QIcon] = {}

    def show_nodes(self, nodes: tuple[Node, ...]) -> None:
        """Show other nodes."""
        self.beginResetModel()
        self._top = [_Entry(node, row, None) for row, node in enumerate(nodes)]
        self.endResetModel()

    def key_at(self, index: Index) -> PassKey | None:
        """Return the pass that a line speaks of."""
        entry = self._entry(index)
        return entry.node.key if entry else None

    def index_of(self, key: PassKey) -> QModelIndex:
        """Return the line of a pass, an invalid index if there is none."""
        for stretch in self._top:
            for entry in stretch.below:
                if entry.node.key == key:
                    return self.createIndex(entry.row, 0, entry)
        return QModelIndex()

    def index(self, row: int, column: int, parent: Index = NO_INDEX) -> QModelIndex:
        """Return the index of a cell."""
        siblings = self._below(parent)
        if not (0 <= row < len(siblings) and 0 <= column < COLUMNS):
            return QModelIndex()
        return self.createIndex(row, column, siblings[row])

    def parent(self, index: Index = NO_INDEX) -> QModelIndex:  # type: ignore[override]
        """Return the line above."""
        entry = self._entry(index)
        above = entry.parent if entry is not None else None
        return QModelIndex() if above is None else self.createIndex(above.row, 0, above)

    def rowCount(self, parent: Index = NO_INDEX) -> int:  # noqa: N802
        """Return how many lines are below a line."""
        return 0 if parent.column() > 0 else len(self._below(parent))

    def columnCount(self, _parent: Index = NO_INDEX) -> int:  # noqa: N802
        """Return the number of columns: when, what, why."""
        return COLUMNS

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        entry = self._entry(index)
        if entry is None:
            return None
        node = entry.node
        text = (node.time, node.what, node.why)[index.column()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            return text
        if role == Qt.ItemDataRole.AccessibleTextRole:
            past = self.tr("past: ") if node.past and index.column() == 0 else ""
            return past + text
        if role == Qt.ItemDataRole.DecorationRole and index.column() == 1 and node.swatch:
            return self._icon(node.swatch)
        return None

    def headerData(  # noqa: N802
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return (self.tr("When"), self.tr("What"), self.tr("Why then"))[section]
        return None

    def _entry(self, index: Index) -> _Entry | None:
        return index.internalPointer() if index.isValid() else None

    def _below(self, parent: Index) -> list[_Entry]:
        entry = self._entry(parent)
        return self._top if entry is None else entry.below

    def _icon(self, swatch: str) -> QIcon:
        if swatch not in self._icons:
            self._icons[swatch] = swatch_icon(swatch)
        return self._icons[swatch]


def swatch_icon(swatch: str, size: int = 28) -> QIcon:
    """Return a round dab of a colour."""
    pixmap = QPixmap(size, size)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QColor("#8a8276"))
    painter.setBrush(QColor(swatch))
    painter.drawEllipse(2, 2, size - 4, size - 4)
    painter.end()
    return QIcon(pixmap)
