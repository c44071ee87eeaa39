"""The table as a tree of Qt's: a thin adapter over the nodes, with drag and drop of steps."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Sequence
from typing import Any

from PySide6.QtCore import (
    QMimeData,
    QModelIndex,
    QObject,
    Qt,
    Signal,
)
from PySide6.QtGui import QFont, QIcon

from app.service.model_faces import Face
from app.window import words
from app.window.labels import swatch_icon
from app.window.message_translation import translated
from app.window.model_editor.nodes import EditorNode, Key, Known, NodeKind
from app.window.model_faces import stages_words
from app.window.stack.model import SIGNS
from app.window.tree_nodes import EntriesModel, Index, TreeNode, entries_of
from planner.layers.overcoat_table import LayerVerdict

MIME = "application/x-tackfree-steps"
NAMED = frozenset({NodeKind.PROJECT, NodeKind.MODEL, NodeKind.PART, NodeKind.PLACE, NodeKind.STEP})
MOVABLE = frozenset({NodeKind.MODEL, NodeKind.STEP})
WAITS, FLOAT = 3, 4
KEY = Qt.ItemDataRole.UserRole
FACE = KEY + 1
TOLD = (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole)


class BuildModel(EntriesModel):
    """Projects, models, parts, places and steps.

    Signals
    -------
    renamed(Key, str)
        A line shall be called otherwise.
    dropped(list, Key, int)
        Lines, given by their keys, shall stand under a line at a row.
    """

    columns = 5

    renamed = Signal(object, str)
    dropped = Signal(object, object, int)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._entries: dict[Key, TreeNode] = {}
        self._known = Known()
        self._waits: Callable[[Key], str] = lambda _key: ""
        self._icons: dict[str, QIcon] = {}
        # Whoever knows the book sets these.
        self.face: Callable[[Key], Face | None] = lambda _key: None
        self.picture: Callable[[Face], QIcon | None] = lambda _face: None

    def show_nodes(self, nodes: Sequence[EditorNode], waits: Callable[[Key], str]) -> bool:
        """Show other nodes; ``waits`` says what a step waits for.

        Where the same lines stand in the same places, only what is other
        is told, and False is returned.
        """
        self._waits = waits
        top = entries_of(nodes)
        entries: dict[Key, TreeNode] = {}
        _enter(top, entries)
        if list(entries) == list(self._entries):
            for key, entry in self._entries.items():
                node = entries[key].node
                if node is not entry.node:  # an edit leaves most as they are
                    entry.node = node
                    self._tell(entry)
            return False
        self.beginResetModel()
        self._put(top)
        self._entries = entries
        self.endResetModel()
        return True

    def show_known(self, known: Known) -> None:
        """Show what a plan adds; the view paints its lines anew."""
        self._known = known
        for entry in self._top:
            self._tell(entry)

    def key_at(self, index: Index) -> Key | None:
        """Return what a line speaks of."""
        entry = self._entry(index)
        return entry.node.key if entry else None

    def node_at(self, index: Index) -> EditorNode | None:
        """Return the node of a line."""
        entry = self._entry(index)
        return entry.node if entry else None

    def index_of(self, key: Key, column: int = 0) -> QModelIndex:
        """Return the line of a key, an invalid index if there is none."""
        entry = self._entries.get(key)
        return self._index_of(entry, column) if entry else QModelIndex()

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Return what can be done with a cell."""
        flags = super().flags(index)
        key = self.key_at(index)
        if key is None:
            return flags | Qt.ItemFlag.ItemIsDropEnabled
        if key.kind in MOVABLE:
            flags |= Qt.ItemFlag.ItemIsDragEnabled
        if key.kind in (NodeKind.PROJECT, NodeKind.MODEL, NodeKind.STEP):
            flags |= Qt.ItemFlag.ItemIsDropEnabled
        if key.kind in NAMED and index.column() == 0:
            flags |= Qt.ItemFlag.ItemIsEditable
        return flags

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        entry = self._entry(index)
        if entry is None:
            return None
        key, node, column = entry.node.key, entry.node, index.column()
        if role == Qt.ItemDataRole.DisplayRole:
            return self._cell(node, column)
        if key.kind is NodeKind.MODEL and column == WAITS and role in (FACE, *TOLD):
            face = self.face(key)
            return stages_words(face) if face is not None and role in TOLD else face
        if role == Qt.ItemDataRole.EditRole and column == 0:
            return node.name
        if role == Qt.ItemDataRole.ToolTipRole:
            return self._tip(node, column)
        if role == Qt.ItemDataRole.DecorationRole and column == 1 and any(node.swatches):
            return self._icon(next(swatch for swatch in node.swatches if swatch))
        if role == Qt.ItemDataRole.DecorationRole and column == 1 and key.kind is NodeKind.MODEL:
            face = self.face(key)
            return self.picture(face) if face is not None else None
        if role == Qt.ItemDataRole.FontRole and self._bold(key, column):
            font = QFont()
            font.setWeight(QFont.Weight.DemiBold)
            return font
        return key if role == KEY else None

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Ask for another name; the book answers."""
        node = self.node_at(index)
        text = str(value).strip()
        if node is None or role != Qt.ItemDataRole.EditRole or text in ("", node.name):
            return False
        self.renamed.emit(node.key, text)
        return False

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is not Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        return (
            self.tr("What"),
            self.tr("With"),
            self.tr("At the bench"),
            self.tr("Waits for"),
            self.tr("Can wait"),
        )[section]

    # -- drag and drop ----------------------------------------------------------------------

    def supportedDropActions(self) -> Qt.DropAction:
        """Return that lines are moved, or copied to another model."""
        return Qt.DropAction.MoveAction | Qt.DropAction.CopyAction

    def mimeTypes(self) -> list[str]:
        """Return the one type that is dragged."""
        return [MIME]

    def mimeData(self, indexes: Iterable[QModelIndex]) -> QMimeData:
        """Return the lines as they are dragged: all steps, or all models."""
        keys = [self.key_at(index) for index in indexes if index.column() == 0]
        movable = [key for key in keys if key is not None and key.kind in MOVABLE]
        kind = movable[0].kind if movable else NodeKind.STEP
        packed = [
            [key.kind.name, key.project, key.model, key.step] for key in movable if key.kind is kind
        ]
        mime = QMimeData()
        mime.setData(MIME, json.dumps(packed).encode())
        return mime

    def dropMimeData(
        self, data: QMimeData, action: Qt.DropAction, row: int, _column: int, parent: Index
    ) -> bool:
        """Ask for the lines to stand there; the book answers, and nothing moves here."""
        if action == Qt.DropAction.IgnoreAction or not data.hasFormat(MIME):
            return False
        packed = json.loads(bytes(data.data(MIME).data()).decode())
        keys = [Key(NodeKind[kind], *names) for kind, *names in packed]
        target = self.key_at(parent)
        if not keys or target is None:
            return False
        if target.kind is NodeKind.STEP:  # dropped upon a step: ahead of it
            entry = self._entries[target]
            assert entry.parent is not None
            target, row = entry.parent.node.key, entry.row
        wanted = NodeKind.MODEL if keys[0].kind is NodeKind.STEP else NodeKind.PROJECT
        if target.kind is wanted:
            self.dropped.emit(keys, target, row)
        return False

    # -- cells ------------------------------------------------------------------------------

    def _cell(self, node: EditorNode, column: int) -> str:
        key = node.key
        if column == 0:
            worst = self._worst(key)
            return f"{SIGNS[worst]} {node.name}" if worst is not None else node.name
        if column == WAITS:
            return self._waits(key) if key.kind is NodeKind.STEP else ""
        if column == FLOAT:
            return self._float(key) if key.kind is NodeKind.STEP else ""
        return (node.with_, node.minutes)[column - 1]

    def _float(self, key: Key) -> str:
        wait = self._known.float_of(key)
        if wait is None:
            return ""
        return words.tr("sets the end") if wait <= 0 else words.span(wait)

    def _worst(self, key: Key) -> LayerVerdict | None:
        ranks = [finding.verdict for finding in self._known.of(key)]
        return max(ranks, key=lambda rank: rank.rank, default=None)

    def _tip(self, node: EditorNode, column: int) -> str:
        found = self._known.of(node.key) if column == 0 else ()
        if found and node.key.kind is NodeKind.STEP:
            return "\n".join(translated(finding.message) for finding in found)
        return self._cell(node, column)

    def _bold(self, key: Key, column: int) -> bool:
        if key.kind in (NodeKind.PROJECT, NodeKind.MODEL):
            return column == 0
        return key.kind is NodeKind.STEP and column in (0, FLOAT) and self._known.critical(key)

    def _tell(self, entry: TreeNode) -> None:
        self.dataChanged.emit(self._index_of(entry), self._index_of(entry, self.columns - 1))

    def _icon(self, swatch: str) -> QIcon:
        if swatch not in self._icons:
            self._icons[swatch] = swatch_icon(swatch)
        return self._icons[swatch]


def _enter(entries: list[TreeNode], into: dict[Key, TreeNode]) -> None:
    for entry in entries:
        into[entry.node.key] = entry
        _enter(entry.below, into)
