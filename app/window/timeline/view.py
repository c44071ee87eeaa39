"""The timeline on screen: keys, pointing, and carrying a piece to another stretch."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt, QTimer, Signal
from PySide6.QtGui import QContextMenuEvent, QHelpEvent, QKeyEvent, QMouseEvent, QWheelEvent
from PySide6.QtWidgets import QApplication, QToolTip, QWidget

from app.window import reasons, words
from app.window.strip_content import StripColumn
from app.window.timeline import arrow_keys
from app.window.timeline.canvas import ZOOM, StripCanvas
from app.window.timeline.drag_piece import Carried
from app.window.timeline.overview_layout import column_at
from app.window.timeline.overview_paint import wedge_words
from planner.values.plan import PassKey


class TimelineView(StripCanvas):
    """The strip.

    Signals
    -------
    chosen(PassKey | None)
        Another piece of work was chosen.
    opened(PassKey)
        Its reason and gates were asked for.
    dropped(PassKey, Interval)
        It was carried to another stretch.
    asked(QPoint)
        What can be done with the chosen piece was asked for, at this point
        of the screen.
    day_asked(StripColumn, QPoint)
        What can be done with a session was asked for, away from its work.
    """

    opened = Signal(object)
    dropped = Signal(object, object)
    asked = Signal(QPoint)
    day_asked = Signal(object, QPoint)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.viewport().setMouseTracking(True)
        self._dragged: QPoint | None = None
        self._pull = QTimer(self)
        self._pull.setInterval(40)
        self._pull.timeout.connect(self._scroll_along)
        self.floor_of: Callable[[PassKey], int | None] = lambda _key: None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move between pieces of work, zoom, open."""
        key = event.key()
        moves = {
            Qt.Key.Key_Left: arrow_keys.sooner,
            Qt.Key.Key_Right: arrow_keys.later,
            Qt.Key.Key_Up: arrow_keys.above,
            Qt.Key.Key_Down: arrow_keys.below,
            Qt.Key.Key_Home: arrow_keys.first,
            Qt.Key.Key_End: arrow_keys.last,
        }
        if key in moves and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            box = moves[Qt.Key(key)](self._at.boxes, self._box_of_choice())
            if box is not None:
                self._choose(self._piece(box).key, box)
                self._reveal(box)
        elif key == Qt.Key.Key_Escape and self._carried is not None:
            self._put_down()
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._chosen is not None:
            self.opened.emit(self._chosen)
        elif key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom_in()
        elif key == Qt.Key.Key_Minus:
            self.zoom_out()
        elif key == Qt.Key.Key_0:
            self.zoom_to_fit()
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Zoom with Ctrl, go along the time with Shift, else up and down."""
        step = event.angleDelta().y() or event.angleDelta().x()
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._zoom(ZOOM ** (step / 120), event.position().x())
            event.accept()
        elif event.modifiers() & Qt.KeyboardModifier.ShiftModifier or event.angleDelta().x():
            bar = self.horizontalScrollBar()
            bar.setValue(bar.value() - step)
            event.accept()
        elif self.verticalScrollBar().maximum():
            super().wheelEvent(event)
        else:
            bar = self.horizontalScrollBar()
            bar.setValue(bar.value() - step)
            event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose what was pressed, or begin to drag the strip."""
        if event.button() is not Qt.MouseButton.LeftButton:
            super().mousePressEvent(event)
            return
        box = self._box_under(event.position())
        if box is not None:
            self._choose(self._piece(box).key, box)
            piece, spot = self._piece(box), event.position()
            if not piece.logged:
                self._carried = Carried(piece, box, spot, spot, None)
        else:
            self._dragged = event.position().toPoint()
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag the strip, or point at work."""
        if self._dragged is not None:
            here = event.position().toPoint()
            moved = here - self._dragged
            self._dragged = here
            across, down = self.horizontalScrollBar(), self.verticalScrollBar()
            across.setValue(across.value() - moved.x())
            down.setValue(down.value() - moved.y())
            return
        if self._carried is not None:
            self._carry(event.position())
            return
        box = self._box_under(event.position())
        pointed = self._piece(box).key if box else None
        if pointed != self._pointed:
            self._pointed = pointed
            self.viewport().update()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Stop dragging; let go of what is carried."""
        carried, self._dragged = self._carried, None
        slot = carried.slot(self.scene()) if carried else None
        self._put_down()
        event.accept()
        if carried is not None and slot is not None and not carried.stays(slot):
            self.dropped.emit(carried.key, slot.interval)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Ask for the reason and gates of a piece."""
        box = self._box_under(event.position())
        if box is not None:
            self.opened.emit(self._piece(box).key)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Ask what can be done with a piece, the chosen one by key."""
        if event.reason() is QContextMenuEvent.Reason.Mouse:
            box = self._box_under(QPointF(self.viewport().mapFrom(self, event.pos())))
            column = self._column_under(self.viewport().mapFrom(self, event.pos()).x())
            if box is not None:
                self._choose(self._piece(box).key, box)
            if box is None and column is not None:
                self.day_asked.emit(column, event.globalPos())
            else:
                self.asked.emit(event.globalPos())
        else:
            self.asked.emit(self.viewport().mapToGlobal(self.choice_spot()))

    def _column_under(self, x: float) -> StripColumn | None:
        """Return the session at an x of the viewport."""
        scene = self.scene()
        return column_at(self._strip, self._at.scale, x - scene.left + scene.across)

    def viewportEvent(self, event: QEvent) -> bool:
        """Show what is under the pointer."""
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            text = self.tip_at(QPointF(event.pos()))
            if text:
                QToolTip.showText(event.globalPos(), text, self.viewport())
            else:
                QToolTip.hideText()
            return True
        return super().viewportEvent(event)

    def tip_at(self, spot: QPointF) -> str:
        """Return the words for a point of the viewport, "" for none."""
        box = self._box_under(spot)
        if box is None:
            return self._target_tip(spot) or self._wedge_tip(spot)
        piece = self._piece(box)
        return "\n".join(reasons.piece_lines(piece, self._zone, self._now))

    def _wedge_tip(self, spot: QPointF) -> str:
        """Return what dries under a point of the lanes."""
        scene, half = self.scene(), self._at.sizes.stroke / 2
        near = [
            wedge
            for wedge in self._strip.wedges
            if abs(spot.y() - scene.lane(wedge.lane)) <= half
            and scene.x(wedge.start) <= spot.x()
            and (wedge.opens is None or spot.x() <= scene.x(wedge.opens) + 4)
        ]
        return "" if not near else wedge_words(near[-1], self._zone, self._now)

    def _target_tip(self, spot: QPointF) -> str:
        """Return whose date a flag in the head is."""
        scene = self.scene()
        near = [
            self.tr("{project}: due by the end of {day}").format(
                project=name, day=words.day_of(at - 1, self._zone, long=True)
            )
            for name, at in self._strip.targets
            if spot.y() < self._at.sizes.head and -4 <= spot.x() - scene.x(at) <= 14
        ]
        return "\n".join(near)

    def _carry(self, spot: QPointF) -> None:
        carried = self._carried
        assert carried is not None
        carried.spot = spot
        reach = QApplication.startDragDistance()
        if not carried.far and (spot - carried.lifted).manhattanLength() >= reach:
            carried.far = True
            carried.floor = self.floor_of(carried.key)
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
            self._pull.start()
        if carried.far:
            self.viewport().update()

    def _scroll_along(self) -> None:
        """Scroll while something is carried to an edge."""
        if self._carried is not None:
            bar = self.horizontalScrollBar()
            bar.setValue(bar.value() + self._carried.pull(self.scene()))

    def _put_down(self) -> None:
        """Forget what is carried, and stop scrolling along with it."""
        super()._put_down()
        self._pull.stop()
        self.viewport().unsetCursor()
        self.viewport().update()
