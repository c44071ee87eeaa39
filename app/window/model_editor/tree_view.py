"""The tree on screen: it keeps what is open and chosen when the book is another."""

from __future__ import annotations

from PySide6.QtCore import (
    QItemSelection,
    QItemSelectionModel,
    QModelIndex,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QPainter, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QLineEdit,
    QStyleOptionViewItem,
    QTreeView,
    QWidget,
)

from app.service.model_faces import Face
from app.window.chosen_rows import ChosenRows
from app.window.model_editor.nodes import Key, NodeKind, words_of
from app.window.model_editor.tree_model import FACE, BuildModel
from app.window.model_faces import paint_ribbon
from app.window.palette import LIGHT, Colours
from app.window.target_size import TARGET
from planner.values.keys import ModelKey

WIDTHS = (214, 176, 92, 140)
FACE_WIDE, STAGE_WIDE, RIBBON_TALL = 48, 14, 9  # a model's picture, a stage of its ribbon [pixels]
WITH, WAITS = 1, 3  # the columns whose words are often longer
Flag = QItemSelectionModel.SelectionFlag
MOST_NAME, LEAST_NAME = 460, 160  # the widest and the narrowest names [pixels]
FLOAT_ROOM = 100  # the column that tells what can wait [pixels]
OPEN_AT_ONCE = 4  # models of which the steps are seen when a book is first shown


class RoomyTreeLines(ChosenRows):
    """Gives each line some room, and models the ribbon of their stages."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.colours = LIGHT

    def paint(
        self,
        painter: QPainter,
        option: QStyleOptionViewItem,
        index: QModelIndex | QPersistentModelIndex,
    ) -> None:
        """Paint an item, and for a model, which waits for nothing itself, how far it is."""
        super().paint(painter, option, index)
        face = index.data(FACE)
        if not isinstance(face, Face):
            return
        room = QRectF(option.rect).adjusted(4, 0, -6, 0)
        room.setWidth(min(room.width(), len(face.ribbon) * STAGE_WIDE))
        spot = QRectF(
            room.left(), round(room.center().y() - RIBBON_TALL / 2), room.width(), RIBBON_TALL
        )
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if spot.width() > 0:
            paint_ribbon(painter, spot, face.ribbon, self.colours)
        painter.restore()

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the usual size, and a little more height."""
        return (super().sizeHint(option, index) + QSize(0, 6)).expandedTo(
            QSize(0, max(TARGET, FACE_WIDE // 2 + 4))
        )

    def setEditorData(self, editor: QWidget, index: QModelIndex | QPersistentModelIndex) -> None:
        """Leave alone what is being typed, when a plan arrives meanwhile."""
        if not (isinstance(editor, QLineEdit) and editor.isModified()):
            super().setEditorData(editor, index)


class BuildTree(QTreeView):
    """Projects, models, parts, places and steps.

    Signals
    -------
    chosen()
        Other lines are chosen.
    """

    chosen = Signal()

    def __init__(self, model: BuildModel) -> None:
        super().__init__()
        self._model = model
        self.setModel(model)
        self.setAccessibleName(self.tr("Models, parts and steps, in working order"))
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.EditKeyPressed)
        self.setDragDropMode(QAbstractItemView.DragDropMode.DragDrop)
        self.setDefaultDropAction(Qt.DropAction.MoveAction)
        self.setDropIndicatorShown(True)
        self.setUniformRowHeights(True)
        self._lines = RoomyTreeLines(self)
        self.setItemDelegate(self._lines)
        self.setIconSize(QSize(FACE_WIDE, FACE_WIDE // 2))
        self.setAlternatingRowColors(False)
        self.setFrameShape(QTreeView.Shape.NoFrame)
        self.setAllColumnsShowFocus(True)
        self.setIndentation(16)
        header = self.header()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        header.setStretchLastSection(True)
        for column, width in enumerate(WIDTHS):
            self.setColumnWidth(column, width)
        self._own_widths = self._fitting = False
        header.sectionResized.connect(self._resized)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.ActionsContextMenu)
        self._fresh = True
        self.selectionModel().selectionChanged.connect(self._chosen)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._lines.colours = colours
        self.viewport().update()

    def show_only(self, wanted: str) -> None:
        """Show the models that hold every word of ``wanted``, in name, coating or step."""
        parts = wanted.casefold().split()
        for row in range(self._model.rowCount()):
            top = self._model.index(row, 0)
            for at in range(self._model.rowCount(top)):
                node = self._model.node_at(self._model.index(at, 0, top))
                said = words_of(node) if node is not None and parts else ""
                self.setRowHidden(at, top, not all(part in said for part in parts))
        here = self.currentIndex()
        above = here.parent()
        while above.parent().isValid():
            here, above = above, above.parent()
        if above.isValid() and self.isRowHidden(here.row(), above):
            self.setCurrentIndex(above)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Give names what the others leave, and those the rest, until a person has set a width."""
        super().resizeEvent(event)
        if not self._own_widths:
            room = self.viewport().width() - sum(WIDTHS[1:]) - FLOAT_ROOM
            wide = min(MOST_NAME, max(WIDTHS[0], room))
            if self.viewport().width() < WIDTHS[0]:  # better a short name than a cut one
                wide = max(LEAST_NAME, self.viewport().width())
            spare = max(0, room - MOST_NAME)
            self._fitting = True
            self.setColumnWidth(0, wide)
            self.setColumnWidth(WITH, WIDTHS[WITH] + spare // 2)
            self.setColumnWidth(WAITS, WIDTHS[WAITS] + spare - spare // 2)
            self._fitting = False

    def _resized(self, column: int, _old: int, _new: int) -> None:
        if column in (0, WITH, WAITS) and not self._fitting:
            self._own_widths = True

    def current(self) -> Key | None:
        """Return what the line with the keys speaks of."""
        return self._model.key_at(self.currentIndex())

    def chosen_keys(self) -> list[Key]:
        """Return what the chosen lines speak of, from above to below."""
        rows = self.selectionModel().selectedRows()
        found = [key for index in rows if (key := self._model.key_at(index)) is not None]
        return sorted(found, key=self._place)

    def models(self) -> tuple[ModelKey, ...]:
        """Return the models to which the chosen lines belong, each once."""
        return tuple(dict.fromkeys(key.home for key in self.chosen_keys() if key.model))

    def steps(self) -> list[Key]:
        """Return the steps among the chosen lines."""
        return [key for key in self.chosen_keys() if key.kind is NodeKind.STEP]

    def choose(self, *keys: Key) -> None:
        """Choose lines, the first of them with the keys."""
        indexes = [index for key in keys if (index := self._model.index_of(key)).isValid()]
        if not indexes:
            return
        selection = QItemSelection()
        for index in indexes:
            selection.select(index, index)
        picked = self.selectionModel()
        picked.setCurrentIndex(indexes[0], Flag.NoUpdate)
        picked.select(selection, Flag.ClearAndSelect | Flag.Rows)
        self.scrollTo(indexes[0])

    def keep(self) -> tuple[set[Key], list[Key], Key | None]:
        """Return what is open, chosen and has the keys, before another book is shown."""
        return self._opened(), self.chosen_keys(), self.current()

    def restore(self, kept: tuple[set[Key], list[Key], Key | None]) -> None:
        """Open and choose again what still is there; at first open the first models."""
        opened, chosen, current = kept
        if self._fresh:
            opened = self._first()
            self._fresh = not opened
        for key in opened:
            self.setExpanded(self._model.index_of(key), True)
        there = [key for key in chosen if self._model.index_of(key).isValid()]
        if current is not None and current in there:
            there = [current, *(key for key in there if key != current)]
        if there:
            self.choose(*there)
        elif self._model.rowCount():
            self.setCurrentIndex(self._nearest(current))

    def _nearest(self, lost: Key | None) -> QModelIndex:
        if lost is not None and lost.model:
            home = self._model.index_of(Key(NodeKind.MODEL, lost.project, lost.model))
            if home.isValid():
                return home
        top = self._model.index(0, 0)
        first = self._model.index(0, 0, top)
        return first if lost is None and first.isValid() else top

    def _first(self) -> set[Key]:
        opened: set[Key] = set()
        for row in range(self._model.rowCount()):
            top = self._model.index(row, 0)
            key = self._model.key_at(top)
            models = self._model.rowCount(top)
            if key is not None:
                opened.add(key)
            for at in range(models if models <= OPEN_AT_ONCE else 0):
                below = self._model.key_at(self._model.index(at, 0, top))
                if below is not None:
                    opened.add(below)
        return opened

    def _opened(self, parent: QModelIndex | None = None) -> set[Key]:
        parent = QModelIndex() if parent is None else parent
        found: set[Key] = set()
        for row in range(self._model.rowCount(parent)):
            index = self._model.index(row, 0, parent)
            if self.isExpanded(index):
                key = self._model.key_at(index)
                if key is not None:
                    found.add(key)
                found |= self._opened(index)
        return found

    def _place(self, key: Key) -> tuple[int, ...]:
        place: list[int] = []
        index = self._model.index_of(key)
        while index.isValid():
            place.insert(0, index.row())
            index = index.parent()
        return tuple(place)

    def _chosen(self) -> None:
        self.chosen.emit()
