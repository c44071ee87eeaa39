"""A table of places on screen: click, drag along a row, heading, arrow keys and Space."""

from __future__ import annotations

from PySide6.QtCore import (
    QItemSelectionModel,
    QModelIndex,
    QPoint,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import (
    QAction,
    QKeyEvent,
    QKeySequence,
    QMouseEvent,
    QPainter,
    QPen,
    QPolygonF,
    QResizeEvent,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QHeaderView,
    QLabel,
    QMenu,
    QSizePolicy,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)

from app.window.model_faces import paint_face
from app.window.palette import Colours
from app.window.tonight_cards.places_model import STATE, Cell, Index, PlacesModel

ROW = 32  # pixels
BOX = 24
AROUND = 14  # beside a word of a heading
LEAST = 44  # of a column
NAMES_MOST = 360
FACE = QSize(44, 22)
FACE_ROOM = FACE.width() + 8  # before the time of a row
NARROWEST = 240


class CellPainter(QStyledItemDelegate):
    """Paints a cell as a box to tick: to do, next, done, opens later, begun."""

    def __init__(self, colours: Colours, parent: QWidget) -> None:
        super().__init__(parent)
        self._colours = colours

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint the box in the middle of its cell."""
        colours, state = self._colours, index.data(STATE)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        whole = QRectF(option.rect)
        box = QRectF(0, 0, BOX - 2, BOX - 2)
        box.moveCenter(whole.center())
        table = option.widget
        if isinstance(table, QTableView) and table.hasFocus() and table.currentIndex() == index:
            painter.fillRect(whole, colours.colour("stroke"))
        frame, ink = colours.colour("soft"), colours.colour("ink")
        if state is Cell.DONE:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(ink)
            painter.drawRoundedRect(box, 4, 4)
            painter.setPen(QPen(colours.colour("sheet"), 2.4))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            left, top, side = box.left(), box.top(), box.width()
            painter.drawPolyline(
                QPolygonF(
                    [
                        QPointF(left + side * 0.22, top + side * 0.52),
                        QPointF(left + side * 0.42, top + side * 0.72),
                        QPointF(left + side * 0.78, top + side * 0.28),
                    ]
                )
            )
        else:
            wide = 2.6 if state is Cell.NEXT else 1.3
            edge = colours.colour("focus") if state is Cell.NEXT else frame
            painter.setPen(QPen(edge, wide))
            painter.setBrush(colours.colour("sheet"))
            painter.drawRoundedRect(box, 4, 4)
            if state is Cell.LATER:
                painter.setPen(QPen(colours.colour("drying_word"), 1.2))
                painter.setBrush(colours.colour("drying", 0.5))
                x, y = box.center().x(), box.center().y()
                painter.drawPolygon(
                    QPolygonF(
                        [
                            QPointF(x - 4, y - 5),
                            QPointF(x + 6, y),
                            QPointF(x - 4, y + 5),
                        ]
                    )
                )
            elif state is Cell.BEGUN:
                painter.setPen(QPen(ink, 2.6))
                y = box.center().y()
                painter.drawLine(QPointF(box.left() + 6, y), QPointF(box.right() - 6, y))
        painter.restore()

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Return the size of a cell."""
        return QSize(LEAST, ROW)


class RowHeads(QHeaderView):
    """Heads each row with the outline of its model, then time and name."""

    def __init__(self, places: PlacesModel, colours: Colours, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Vertical, parent)
        self._places, self._colours = places, colours
        self.setSectionsClickable(True)

    def paintSection(self, painter: QPainter, rect: QRect, section: int) -> None:
        """Paint the outline at the left and the words beside it."""
        face = self._places.face_at(section)
        if face is not None:
            spot = QRect(rect.left(), 0, FACE.width(), FACE.height())
            spot.moveTop(rect.center().y() - FACE.height() // 2)
            painter.save()
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            paint_face(painter, QRectF(spot), face, self._colours)
            painter.restore()
        super().paintSection(painter, rect.adjusted(FACE_ROOM, 0, 0, 0), section)


class PlacesTable(QTableView):
    """One block of places; as large as what it shows, it never scrolls.

    Signals
    -------
    beyond(PlacesTable, int)
        The keys go on to the table above (-1) or below (1).
    """

    beyond = Signal(object, int)

    def __init__(self, model: PlacesModel, colours: Colours, parent: QWidget) -> None:
        super().__init__(parent)
        self._places = model
        self._drawn: list[QModelIndex] = []
        self._drawing: bool | None = None
        self.setModel(model)
        self.setVerticalHeader(RowHeads(model, colours, self))
        self.setItemDelegate(CellPainter(colours, self))
        self.setShowGrid(False)
        self.setFrameShape(QTableView.Shape.NoFrame)
        self.setTabKeyNavigation(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self.customContextMenuRequested.connect(self._ask)
        self.viewport().setAutoFillBackground(False)
        self.setStyleSheet(
            "QTableView { background: transparent; } "
            "QHeaderView { background: transparent; } "
            f"QHeaderView::section {{ background: transparent; border: none; "
            f"color: {colours.soft}; padding: 0px; }} "
            f"QHeaderView::section:vertical {{ color: {colours.ink}; }} "
            "QTableCornerButton::section { background: transparent; border: none; }"
        )
        self.corner = QLabel(self)
        self.corner.setTextFormat(Qt.TextFormat.PlainText)
        self.corner.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom)
        font = self.corner.font()
        font.setWeight(font.Weight.DemiBold)
        self.corner.setFont(font)
        self._columns: list[int] = []
        self._natural = QSize(NARROWEST, ROW)
        self._set_up_heads()
        back = QAction(self.tr("Take back"), self)
        back.setShortcut(QKeySequence(QKeySequence.StandardKey.Delete))
        back.setShortcutContext(Qt.ShortcutContext.WidgetShortcut)
        back.triggered.connect(lambda _on=False: model.take_back(self.currentIndex()))
        self.addAction(back)
        self.setCurrentIndex(model.index(0, 0))

    @property
    def places(self) -> PlacesModel:
        """What it shows."""
        return self._places

    def _set_up_heads(self) -> None:
        across, down = self.horizontalHeader(), self.verticalHeader()
        across.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        down.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        across.setDefaultAlignment(Qt.AlignmentFlag.AlignHCenter | Qt.AlignmentFlag.AlignBottom)
        down.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        across.setSectionsClickable(True)
        across.setHighlightSections(False)
        down.setHighlightSections(False)
        down.setTextElideMode(Qt.TextElideMode.ElideMiddle)  # time and coat stay
        across.sectionClicked.connect(self._places.turn_column)
        across.setMinimumSectionSize(24)
        down.setMinimumSectionSize(ROW)

    def fit(self) -> None:
        """Measure what is shown, and take the room for it."""
        across, down = self.horizontalHeader(), self.verticalHeader()
        metrics, orient = self.fontMetrics(), Qt.Orientation
        self._columns, lines = [], 1
        for column in range(self._places.columnCount()):
            above = str(self._places.headerData(column, orient.Horizontal))
            need = max(metrics.horizontalAdvance(line) for line in above.split("\n")) + AROUND
            self._columns.append(max(LEAST, need))
            lines = max(lines, above.count("\n") + 1)
        names = [
            str(self._places.headerData(row, orient.Vertical))
            for row in range(self._places.rowCount())
        ]
        title = self._places.block.title
        bold = self.corner.fontMetrics().horizontalAdvance(title)
        widest = max(metrics.horizontalAdvance(each) for each in names) + AROUND
        name = max(bold + AROUND, min(NAMES_MOST, widest) + FACE_ROOM)
        name = min(NAMES_MOST + FACE_ROOM, name)
        down.setFixedWidth(name)
        for row in range(self._places.rowCount()):
            self.setRowHeight(row, ROW)
        head = lines * metrics.height() + 6
        across.setFixedHeight(head)
        room = name - AROUND // 2
        self.corner.setText(
            self.corner.fontMetrics().elidedText(title, Qt.TextElideMode.ElideRight, room)
        )
        self.corner.setToolTip(title)
        self.corner.setGeometry(0, 0, name, head - 2)
        self._natural = QSize(
            name + sum(self._columns) + 2, head + ROW * self._places.rowCount() + 2
        )
        self.setMaximumWidth(self._natural.width())
        self._squeeze()
        self.updateGeometry()

    def _squeeze(self) -> None:
        """Let it scroll across where a narrow window leaves too little room."""
        for column, need in enumerate(self._columns):
            self.setColumnWidth(column, need)
        narrow = self.width() < self._natural.width()
        bar = self.horizontalScrollBar().sizeHint().height() if narrow else 0
        self.setFixedHeight(self._natural.height() + bar)

    def sizeHint(self) -> QSize:
        """Return the size in which every word has room."""
        return QSize(self._natural.width(), max(self._natural.height(), self.minimumHeight()))

    def minimumSizeHint(self) -> QSize:
        """Return how narrow it may be made."""
        return QSize(min(self._natural.width(), NARROWEST), self._natural.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the columns within the width."""
        super().resizeEvent(event)
        self._squeeze()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Tick by Space, note a whole row by Enter; arrow keys move, and on to the next table."""
        index = self.currentIndex()
        if event.key() in (Qt.Key.Key_PageUp, Qt.Key.Key_PageDown):
            event.ignore()  # the sheet around it scrolls
            return
        ends = {Qt.Key.Key_Up.value: 0, Qt.Key.Key_Down.value: self._places.rowCount() - 1}
        if index.isValid() and ends.get(event.key()) == index.row():
            self.beyond.emit(self, 1 if event.key() == Qt.Key.Key_Down else -1)
            event.accept()
            return
        if event.key() == Qt.Key.Key_Space and index.isValid():
            self._places.turn(index)
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and index.isValid():
            row = self._places.row_at(index)
            if row is not None and not self._places.over(row):
                self._places.turn(self._places.index(index.row(), self._places.all_column))
        else:
            super().keyPressEvent(event)
            return
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Begin to tick where the pointer is."""
        index = self.indexAt(event.position().toPoint())
        if event.button() is not Qt.MouseButton.LeftButton or not index.isValid():
            super().mousePressEvent(event)
            return
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        self.selectionModel().setCurrentIndex(index, QItemSelectionModel.SelectionFlag.NoUpdate)
        self._drawn = [index]
        self._drawing = index.data(STATE) is not Cell.DONE

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Take in what the pointer passes in the same row."""
        index = self.indexAt(event.position().toPoint())
        if self._drawing is None or not index.isValid():
            return
        same = index.row() == self._drawn[0].row()
        if same and index not in self._drawn:
            self._drawn.append(index)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Tick what was passed."""
        drawn, on = self._drawn, self._drawing
        self._drawn, self._drawing = [], None
        if on is None:
            super().mouseReleaseEvent(event)
        elif len(drawn) == 1:
            self._places.turn(drawn[0])
        else:
            self._places.tick(drawn, on=on)

    def _ask(self, spot: QPoint) -> None:
        """Offer what can be done with a row."""
        index = self.indexAt(spot)
        row = self._places.row_at(index if index.isValid() else self.currentIndex())
        if row is None:
            return
        at = self._places.block.rows.index(row)
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        done = menu.addAction(self.tr("&Done"))
        done.setEnabled(self._places.can_be_done(row))
        done.triggered.connect(lambda _on=False: self._places.done.emit(row.key))
        back = menu.addAction(self.tr("&Take back"))
        back.setEnabled(self._places.over(row) or self._places.begun(row))
        back.triggered.connect(lambda _on=False: self._places.take_back(self._places.index(at, 0)))
        menu.popup(self.viewport().mapToGlobal(spot))
