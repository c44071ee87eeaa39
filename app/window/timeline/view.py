"""The timeline on screen: scrolling, zooming, pointing, and the keys."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import lru_cache
from zoneinfo import ZoneInfo

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import (
    QContextMenuEvent,
    QFont,
    QFontMetricsF,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
    QWheelEvent,
)
from PySide6.QtWidgets import QAbstractScrollArea, QApplication, QToolTip, QWidget

from app.window import reasons, words
from app.window.palette import LIGHT, Colours
from app.window.timeline import steering
from app.window.timeline.arrange import Arrangement, Box, Sizes, arrange
from app.window.timeline.carrying import Carried, paint_carried
from app.window.timeline.content import Piece, Strip
from app.window.timeline.geometry import Scale, fitting_scale
from app.window.timeline.labels import label_of
from app.window.timeline.paint import Scene
from app.window.timeline.tiles import Tiles
from planner.values.plan import PassKey

ZOOM = 1.25
FIRST_SCALE = 3.2  # an evening of 2½ hours is some 480 pixels wide


class TimelineView(QAbstractScrollArea):
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
    """

    chosen = Signal(object)
    opened = Signal(object)
    dropped = Signal(object, object)
    asked = Signal(QPoint)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QAbstractScrollArea.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Timeline"))
        self.setAccessibleDescription(
            self.tr("A drawing of the plan. The list below it says the same in words.")
        )
        self.viewport().setMouseTracking(True)
        self._colours = LIGHT
        self._strip = Strip(now=0, zone="UTC")
        self._now = 0
        self._pixels = FIRST_SCALE
        self._chosen: PassKey | None = None
        self._box: Box | None = None
        self._pointed: PassKey | None = None
        self._dragged: QPoint | None = None
        self._carried: Carried | None = None
        self._before: dict[PassKey, int] = {}
        self._pull = QTimer(self)
        self._pull.setInterval(40)
        self._pull.timeout.connect(self._scroll_along)
        self.floor_of: Callable[[PassKey], int | None] = lambda _key: None
        self._zone = ZoneInfo("UTC")
        self._tiles = Tiles()
        self._at = self._arranged()

    def show_strip(self, strip: Strip) -> None:
        """Show another plan, keeping zoom and choice; at first scrolled to now."""
        first = not self._strip.columns and bool(strip.columns)
        self._put_down()
        self._strip = strip
        self._now = strip.now
        self._zone = ZoneInfo(strip.zone)
        if self._chosen not in {piece.key for piece in strip.pieces}:
            self._choose(None)
        self._rearrange()
        if first:
            self.show_now()

    def compare(self, before: Mapping[PassKey, int]) -> None:
        """Show where these stood before, by their starts; none for no comparison."""
        if dict(before) != self._before:
            self._before = dict(before)
            self._rearrange()

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours from now on."""
        self._colours = colours
        self.forget_painted()

    def set_now(self, now: int) -> None:
        """Let the shade reach ``now``."""
        self._now = now
        self.forget_painted()

    def forget_painted(self) -> None:
        """Paint everything anew, nothing being as it was."""
        self._tiles.forget()
        self.viewport().update()

    @property
    def arrangement(self) -> Arrangement:
        """What is laid out at the current zoom."""
        return self._at

    @property
    def chosen_key(self) -> PassKey | None:
        """The chosen pass."""
        return self._chosen

    def choose(self, key: PassKey | None) -> None:
        """Choose a pass and scroll to it; no signal is sent for the same one."""
        self._choose(key)
        box = next((box for box in self._at.boxes if self._piece(box).key == key), None)
        if box is not None:
            self._reveal(box)

    def zoom_in(self) -> None:
        """Give minutes more room."""
        self._zoom(ZOOM)

    def zoom_out(self) -> None:
        """Give minutes less room."""
        self._zoom(1 / ZOOM)

    def zoom_to_fit(self) -> None:
        """Show the whole plan in the width there is."""
        width = self.viewport().width() - self._at.sizes.left
        self._pixels = fitting_scale(self._strip.columns, width)
        self._rearrange()

    def show_now(self) -> None:
        """Scroll so that now lies near the left edge."""
        self.horizontalScrollBar().setValue(round(self._at.scale.x(self._now) - 60))

    def scene(self) -> Scene:
        """Return everything that a repaint needs."""
        return Scene(
            at=self._at,
            colours=self._colours,
            font=self.font(),
            zone=self._zone,
            now=self._now,
            area=QRectF(self.viewport().rect()),
            across=self.horizontalScrollBar().value(),
            down=self.verticalScrollBar().value(),
            chosen=self._chosen,
            pointed=self._pointed,
            focused=self.hasFocus(),
        )

    def sizeHint(self) -> QSize:  # noqa: N802
        """Return a size that shows an evening."""
        return QSize(900, 420)

    # Qt's own names follow.

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: N802
        """Paint the strip."""
        painter = QPainter(self.viewport())
        scene = self.scene()
        self._tiles.paint(painter, scene)
        if self._carried is not None and self._carried.far:
            paint_carried(painter, scene, self._carried)
        painter.end()
        event.accept()

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802
        """Fit the scroll bars."""
        super().resizeEvent(event)
        self._set_bars()

    def changeEvent(self, event: QEvent) -> None:  # noqa: N802
        """Lay out anew in another font."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._rearrange()

    def scrollContentsBy(self, _across: int, _down: int) -> None:  # noqa: N802
        """Repaint; the edges stay where they are."""
        self.viewport().update()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802
        """Move between pieces of work, zoom, open."""
        key = event.key()
        moves = {
            Qt.Key.Key_Left: steering.sooner,
            Qt.Key.Key_Right: steering.later,
            Qt.Key.Key_Up: steering.above,
            Qt.Key.Key_Down: steering.below,
            Qt.Key.Key_Home: steering.first,
            Qt.Key.Key_End: steering.last,
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

    def wheelEvent(self, event: QWheelEvent) -> None:  # noqa: N802
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

    def mousePressEvent(self, event: QMouseEvent) -> None:  # noqa: N802
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

    def mouseMoveEvent(self, event: QMouseEvent) -> None:  # noqa: N802
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

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Stop dragging; let go of what is carried."""
        carried, self._dragged = self._carried, None
        slot = carried.slot(self.scene()) if carried else None
        self._put_down()
        event.accept()
        if carried is not None and slot is not None and not carried.stays(slot):
            self.dropped.emit(carried.key, slot.interval)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:  # noqa: N802
        """Ask what can be done with a piece, the chosen one by key."""
        if event.reason() is QContextMenuEvent.Reason.Mouse:
            box = self._box_under(QPointF(self.viewport().mapFrom(self, event.pos())))
            if box is not None:
                self._choose(self._piece(box).key, box)
            self.asked.emit(event.globalPos())
        else:
            self.asked.emit(self.viewport().mapToGlobal(self.choice_spot()))

    def choice_spot(self) -> QPoint:
        """Return where the chosen piece is on the viewport, its middle where it is not."""
        box, scene = self._box_of_choice(), self.scene()
        if box is None:
            return self.viewport().rect().center()
        spot = QPointF(scene.shift(box.left), scene.top + box.middle - scene.down)
        return spot.toPoint() if scene.lanes_area.contains(spot) else QPoint(40, 40)

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
        self._carried = None
        self._pull.stop()
        self.viewport().unsetCursor()
        self.viewport().update()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:  # noqa: N802
        """Ask for the reason and gates of a piece."""
        box = self._box_under(event.position())
        if box is not None:
            self.opened.emit(self._piece(box).key)

    def viewportEvent(self, event: QEvent) -> bool:  # noqa: N802
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
            return self._target_tip(spot)
        piece = self._piece(box)
        return "\n".join(reasons.piece_lines(piece, self._zone, self._now))

    def _target_tip(self, spot: QPointF) -> str:
        """Return whose date a flag in the head is."""
        scene = self.scene()
        near = [
            self.tr("{project}: to be finished by the end of {day}").format(
                project=name, day=words.day_of(at - 1, self._zone, long=True)
            )
            for name, at in self._strip.targets
            if spot.y() < self._at.sizes.head and -4 <= spot.x() - scene.x(at) <= 14
        ]
        return "\n".join(near)

    def _choose(self, key: PassKey | None, box: Box | None = None) -> None:
        self._box = box
        if key != self._chosen:
            self._chosen = key
            self.chosen.emit(key)
        self.viewport().update()

    def _piece(self, box: Box) -> Piece:
        return self._strip.pieces[box.piece]

    def _box_of_choice(self) -> Box | None:
        remembered = self._box
        if remembered is not None and remembered in self._at.boxes:
            return remembered
        return next((b for b in self._at.boxes if self._piece(b).key == self._chosen), None)

    def _box_under(self, spot: QPointF) -> Box | None:
        scene = self.scene()
        if spot.x() < scene.left:
            return None
        if spot.y() < scene.top:
            return self._sprayed_under(spot, scene)
        return self._at.box_at(
            spot.x() - scene.left + scene.across, spot.y() - scene.top + scene.down
        )

    def _sprayed_under(self, spot: QPointF, scene: Scene) -> Box | None:
        """Return the piece whose spraying is shown in an airbrush lane."""
        x = spot.x() - scene.left + scene.across
        sizes = self._at.sizes
        number = int((spot.y() - sizes.head) // sizes.airbrush)
        if not 0 <= number < len(self._strip.airbrushes):
            return None
        name = self._strip.airbrushes[number]
        return next(
            (
                box
                for box in self._at.boxes
                if box.main and box.left <= x <= box.right and self._piece(box).airbrush == name
            ),
            None,
        )

    def _reveal(self, box: Box) -> None:
        scene = self.scene()
        across, down = self.horizontalScrollBar(), self.verticalScrollBar()
        width = scene.area.width() - scene.left
        if box.left - 30 < across.value() or box.right + 60 > across.value() + width:
            across.setValue(round(box.left - width / 3))
        height = scene.area.height() - scene.top
        half = self._at.sizes.lane / 2
        if box.middle - half < down.value():
            down.setValue(round(box.middle - half - self._at.sizes.heading))
        elif box.middle + half > down.value() + height:
            down.setValue(round(box.middle + half - height))

    def _zoom(self, factor: float, around: float | None = None) -> None:
        anchor = around if around is not None else self._at.sizes.left + 60
        inside = anchor - self._at.sizes.left
        minute = self._at.scale.minute(inside + self.horizontalScrollBar().value())
        self._pixels = self._at.scale.pixels_per_minute * factor
        self._rearrange()
        self.horizontalScrollBar().setValue(round(self._at.scale.x(minute) - inside))

    def _rearrange(self) -> None:
        self._at = self._arranged()
        self._set_bars()
        self.forget_painted()

    def _arranged(self) -> Arrangement:
        small = QFont(self.font())
        small.setPointSizeF(self.font().pointSizeF() * 0.86)
        metrics = QFontMetricsF(small)
        measure = lru_cache(maxsize=4096)(metrics.horizontalAdvance)
        return arrange(
            self._strip,
            Scale(self._strip.columns, self._pixels),
            Sizes(QFontMetricsF(self.font()).height()),
            measure=measure,
            name_of=label_of,
            time_of=lambda wedge: words.ring_time(wedge.opens or 0, self._zone, wedge.start),
            before=self._before,
        )

    def _set_bars(self) -> None:
        scene_left, sizes = self._at.sizes.left, self._at.sizes
        top = sizes.head + sizes.airbrush * len(self._strip.airbrushes)
        width = self.viewport().width() - scene_left
        height = self.viewport().height() - top
        across, down = self.horizontalScrollBar(), self.verticalScrollBar()
        across.setRange(0, max(0, round(self._at.scale.width - width)))
        across.setPageStep(max(1, round(width)))
        across.setSingleStep(40)
        down.setRange(0, max(0, round(self._at.height - height)))
        down.setPageStep(max(1, round(height)))
        down.setSingleStep(round(sizes.lane))
