"""What every tree of Qt's over plain nodes needs: the way up, and counting.

An index carries the number of its line and not the line: Qt holds what it is given without
keeping it alive, and may ask for an index that is older than what is shown.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import count
from typing import Any
from weakref import ref

from PySide6.QtCore import QAbstractItemModel, QModelIndex, QObject, QPersistentModelIndex

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
COUNTED = count(1)


class TreeNode:
    """A node with its way up, as Qt asks for it; a node has its own ``below`` it.

    It does not hold what is above it: a tree goes at once when another takes its place.
    """

    def __init__(self, node: Any, row: int, parent: TreeNode | None = None) -> None:
        self.node = node
        self.row = row
        self.number = next(COUNTED)
        self._parent = ref(parent) if parent is not None else None
        self.below = [TreeNode(child, at, self) for at, child in enumerate(node.below)]

    @property
    def parent(self) -> TreeNode | None:
        """The entry above."""
        return self._parent() if self._parent is not None else None

    def all(self) -> Iterator[TreeNode]:
        """Yield it and all that is below it."""
        yield self
        for node in self.below:
            yield from node.all()


def entries_of(nodes: Iterable[Any]) -> list[TreeNode]:
    """Return the entries of the topmost nodes, with all that is below them."""
    return [TreeNode(node, row) for row, node in enumerate(nodes)]


class EntriesModel(QAbstractItemModel):
    """A tree of entries; ``columns`` is how many cells a line has."""

    columns = 1

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._top: list[TreeNode] = []
        self._numbered: dict[int, TreeNode] = {}

    def _put(self, top: list[TreeNode]) -> None:
        """Show another tree; between `beginResetModel` and `endResetModel`."""
        self._top = top
        self._numbered = {entry.number: entry for each in top for entry in each.all()}

    def _index_of(self, entry: TreeNode, column: int = 0) -> QModelIndex:
        """Return the index of a line."""
        return self.createIndex(entry.row, column, entry.number)

    def index(self, row: int, column: int, parent: Index = NO_INDEX) -> QModelIndex:
        """Return the index of a cell."""
        siblings = self._below(parent)
        if not (0 <= row < len(siblings) and 0 <= column < self.columns):
            return QModelIndex()
        return self._index_of(siblings[row], column)

    def parent(self, index: Index = NO_INDEX) -> QModelIndex:  # type: ignore[override]
        """Return the line above."""
        entry = self._entry(index)
        above = entry.parent if entry is not None else None
        return QModelIndex() if above is None else self._index_of(above)

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return how many lines are below a line."""
        return 0 if parent.column() > 0 else len(self._below(parent))

    def columnCount(self, _parent: Index = NO_INDEX) -> int:
        """Return the number of columns."""
        return self.columns

    def _entry(self, index: Index) -> TreeNode | None:
        return self._numbered.get(index.internalId()) if index.isValid() else None

    def _below(self, parent: Index) -> list[TreeNode]:
        entry = self._entry(parent)
        return self._top if entry is None else entry.below
