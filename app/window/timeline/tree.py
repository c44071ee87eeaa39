"""The timeline as a tree for everyone who reads rather than looks."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QModelIndex, QObject, Qt
from PySide6.QtGui import QIcon

from app.window.labels import swatch_icon
from app.window.timeline.outline import OutlineNode
from app.window.tree_nodes import EntriesModel, Index, entries_of
from planner.values.plan import PassKey


class OutlineModel(EntriesModel):
    """A thin adapter over the nodes of `outline`."""

    columns = 3

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._icons: dict[str, QIcon] = {}

    def show_nodes(self, nodes: tuple[OutlineNode, ...]) -> None:
        """Show other nodes."""
        self.beginResetModel()
        self._put(entries_of(nodes))
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
                    return self._index_of(entry)
        return QModelIndex()

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

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return (self.tr("When"), self.tr("What"), self.tr("Why then"))[section]
        return None

    def _icon(self, swatch: str) -> QIcon:
        if swatch not in self._icons:
            self._icons[swatch] = swatch_icon(swatch)
        return self._icons[swatch]
