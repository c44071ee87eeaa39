"""The overview of the plan: one lane a model, all sessions side by side, nothing to scroll."""

from __future__ import annotations

from collections.abc import Mapping
from zoneinfo import ZoneInfo

from PySide6.QtCore import (
    QEasingCurve,
    QEvent,
    QPoint,
    QPointF,
    QRectF,
    QSize,
    Qt,
    QVariantAnimation,
    Signal,
)
from PySide6.QtGui import (
    QContextMenuEvent,
    QFontMetricsF,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPixmap,
    QResizeEvent,
)
from PySide6.QtWidgets import QApplication, QSizePolicy, QToolTip, QWidget

from app.service.model_faces import Face
from app.window import reasons
from app.window.palette import LIGHT, Colours
from app.window.strip_content import Strip, StripColumn
from app.window.target_size import TARGET
from app.window.timeline import arrow_keys, overview_paint
from app.window.timeline.overview_layout import (
    LEAST_LANE,
    ModelAt,
    Overview,
    column_at,
    least_width,
    overview_of,
)
from app.window.timeline.overview_scene import Edges, OverviewScene, edges_of
from app.window.timeline.strip_boxes import Box
from planner.values.plan import PassKey

SLIDE_MS = 200


def motion_is_reduced() -> bool:
    """Tell whether a person wants no movement on the screen."""
    return not QApplication.isEffectEnabled(Qt.UIEffect.UI_General)


class PlanOverview(QWidget):
    """The whole plan in the room there is.

    Signals
    -------
    chosen(PassKey)
        A piece of work was chosen.
    opened(PassKey)
        It is to be seen larger.
    asked(QPoint)
        What can be done with the chosen piece was asked for, at this point of the screen.
    day_asked(StripColumn, QPoint)
        What can be done with a session was asked for.
    """

    chosen = Signal(object)
    opened = Signal(object)
    asked = Signal(QPoint)
    day_asked = Signal(object, QPoint)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Overview of the plan"))
        self.setAccessibleDescription(
            self.tr("One lane a model. The list at the work level says the same in words.")
        )
        self._colours = LIGHT
        self._strip = Strip(now=0, zone="UTC")
        self._zone = ZoneInfo("UTC")
        self._now = 0
        self._faces: Mapping[ModelAt, Face] = {}
        self._ends: Mapping[ModelAt, tuple[int, bool]] = {}
        self._sure: Mapping[ModelAt, tuple[int, int, int]] = {}
        self._before: dict[PassKey, int] = {}
        self._chosen: PassKey | None = None
        self._pointed: PassKey | None = None
        self._ground: QPixmap | None = None
        self._slide = QVariantAnimation(self)
        self._slide.setDuration(SLIDE_MS)
        self._slide.setEasingCurve(QEasingCurve.Type.OutCubic)
        self._slide.setStartValue(0.0)
        self._slide.setEndValue(1.0)
        self._slide.valueChanged.connect(lambda _value: self.forget_painted())
        self._at = self._arranged()

    def show_strip(
        self,
        strip: Strip,
        faces: Mapping[ModelAt, Face],
        ends: Mapping[ModelAt, tuple[int, bool]],
    ) -> None:
        """Show another plan; ``ends`` says when each model is done, and whether that is late."""
        self._strip, self._faces, self._ends = strip, faces, ends
        self._now, self._zone = strip.now, ZoneInfo(strip.zone)
        self._rearrange()

    def show_sure(self, sure: Mapping[ModelAt, tuple[int, int, int]]) -> None:
        """Show how sure the ends are: half, four fifths and 95 % of all runs, by model."""
        if sure != self._sure:
            self._sure = dict(sure)
            self.forget_painted()

    def compare(self, before: Mapping[PassKey, int], *, slide: bool = False) -> None:
        """Show where these stood before, and let them slide from there to where they are."""
        self._before = dict(before)
        if slide and before and not motion_is_reduced():
            if not self.sliding:
                self._slide.start()
        else:
            self._slide.stop()
        self.forget_painted()

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.forget_painted()

    def set_now(self, now: int) -> None:
        """Let the shade reach ``now``."""
        self._now = now
        self.forget_painted()

    def choose(self, key: PassKey | None) -> None:
        """Frame a piece of work; no signal is sent."""
        if key != self._chosen:
            self._chosen = key
            self.update()

    def forget_painted(self) -> None:
        """Paint everything anew."""
        self._ground = None
        self.update()

    @property
    def arrangement(self) -> Overview:
        """What lies where."""
        return self._at

    @property
    def edges(self) -> Edges:
        """How much room names, dates and cups take."""
        metrics = QFontMetricsF(self.font())
        names = [at[1] for at in self._faces]
        return edges_of(metrics, names, len(self._strip.airbrushes))

    def scene(self) -> OverviewScene:
        """Return everything that a repaint needs."""
        moved = self._slide.currentValue() if self.sliding else 1.0
        return OverviewScene(
            at=self._at,
            edges=self.edges,
            colours=self._colours,
            font=self.font(),
            zone=self._zone,
            now=self._now,
            size=self.size(),
            faces=self._faces,
            ends=self._ends,
            before=self._before,
            moved=float(moved),
            sure=self._sure,
        )

    def minimumSizeHint(self) -> QSize:
        """Return the size in which every session and every model can be told apart."""
        edges = self.edges
        lanes = len({(lane.project, lane.model) for lane in self._strip.lanes})
        least = max(LEAST_LANE, QFontMetricsF(self.font()).height() * 1.4)
        return QSize(
            round(edges.left + least_width(self._strip.columns)),
            round(edges.top + least * lanes + edges.foot),
        )

    def sizeHint(self) -> QSize:
        """Return a size for a batch."""
        return self.minimumSizeHint().expandedTo(QSize(900, 420))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Lay the picture of the plan, and over it what follows the pointer."""
        scene = self.scene()
        ratio = self.devicePixelRatio()
        if self._ground is None or self._ground.size() != self.size() * ratio:
            self._ground = QPixmap(self.size() * ratio)
            self._ground.setDevicePixelRatio(ratio)
            own = QPainter(self._ground)
            overview_paint.paint_overview(own, scene)
            own.end()
        painter = QPainter(self)
        painter.drawPixmap(QPoint(0, 0), self._ground)
        for key, wide in ((self._pointed, 1.4), (self._chosen, 2.4)):
            for box in self._boxes_of(key):
                overview_paint.paint_frame(painter, scene, box, wide)
        if self.hasFocus():
            overview_paint.paint_focus(painter, scene)
        painter.end()
        event.accept()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit everything anew."""
        super().resizeEvent(event)
        self._rearrange()

    def changeEvent(self, event: QEvent) -> None:
        """Follow the size of the letters."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._rearrange()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Move between pieces of work; Enter shows the chosen one larger."""
        moves = {
            Qt.Key.Key_Left: arrow_keys.sooner,
            Qt.Key.Key_Right: arrow_keys.later,
            Qt.Key.Key_Up: arrow_keys.above,
            Qt.Key.Key_Down: arrow_keys.below,
            Qt.Key.Key_Home: arrow_keys.first,
            Qt.Key.Key_End: arrow_keys.last,
        }
        key = event.key()
        if key in moves and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            now = next(iter(self._boxes_of(self._chosen)), None)
            self._press(moves[Qt.Key(key)](self._at.boxes, now))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self._chosen is not None:
            self.opened.emit(self._chosen)
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose what was pressed."""
        self._press(self._box_under(event.position()))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Show a piece of work larger."""
        box = self._box_under(event.position())
        if box is not None:
            self.opened.emit(self._strip.pieces[box.piece].key)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Frame what is pointed at."""
        box = self._box_under(event.position())
        pointed = self._strip.pieces[box.piece].key if box else None
        if pointed != self._pointed:
            self._pointed = pointed
            self.update()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """Ask what can be done with a piece of work, or with the session under the pointer."""
        if event.reason() is not QContextMenuEvent.Reason.Mouse:
            spot = next(iter(self._boxes_of(self._chosen)), None)
            scene = self.scene()
            at = scene.rect(spot).center().toPoint() if spot else self.rect().center()
            self.asked.emit(self.mapToGlobal(at))
            return
        under = QPointF(event.pos())
        box, column = self._box_under(under, beside=4.0), self.column_under(under.x())
        if box is not None:
            self._press(box)
            self.asked.emit(event.globalPos())
        elif column is not None:
            self.day_asked.emit(column, event.globalPos())

    def column_under(self, x: float) -> StripColumn | None:
        """Return the session at an x of the widget."""
        return column_at(self._strip, self._at.scale, x - self.edges.left)

    def event(self, event: QEvent) -> bool:
        """Show what is under the pointer."""
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            told = self.tip_at(QPointF(event.pos()))
            if told:
                QToolTip.showText(event.globalPos(), told, self)
            else:
                QToolTip.hideText()
            return True
        return super().event(event)

    def tip_at(self, spot: QPointF) -> str:
        """Return the words for a point of the widget, "" for none."""
        box = self._box_under(spot, beside=4.0)
        if box is not None:
            return "\n".join(
                reasons.piece_lines(self._strip.pieces[box.piece], self._zone, self._now)
            )
        return overview_paint.tip_at(self.scene(), spot)

    def _press(self, box: Box | None) -> None:
        if box is not None:
            self._chosen = self._strip.pieces[box.piece].key
            self.chosen.emit(self._chosen)
            self.update()

    def _boxes_of(self, key: PassKey | None) -> list[Box]:
        if key is None:
            return []
        return [box for box in self._at.boxes if self._strip.pieces[box.piece].key == key]

    def _box_under(self, spot: QPointF, *, beside: float = TARGET) -> Box | None:
        """Return the piece at a point, or the nearest whose mark is no larger than ``beside``."""
        scene = self.scene()
        hits = [box for box in self._at.boxes if _as_target(scene.rect(box), beside).contains(spot)]
        x = spot.x() - self.edges.left
        return min(
            hits,
            key=lambda box: (
                not scene.rect(box).contains(spot),
                box.off(x),
                abs(scene.rect(box).center().y() - spot.y()),
                abs(scene.rect(box).center().x() - spot.x()),
            ),
            default=None,
        )

    @property
    def sliding(self) -> bool:
        """Whether something is on its way to its new place."""
        return self._slide.state() is QVariantAnimation.State.Running

    def _arranged(self) -> Overview:
        edges = self.edges
        return overview_of(
            self._strip,
            self.width() - edges.left,
            self.height() - edges.top - edges.foot,
            QFontMetricsF(self.font()).height(),
        )

    def _rearrange(self) -> None:
        self._at = self._arranged()
        self.setMinimumSize(self.minimumSizeHint())
        self.updateGeometry()
        self.forget_painted()


def _as_target(mark: QRectF, least: float) -> QRectF:
    """Return what a click on a mark has to meet, so large at the least."""
    wide, tall = max(4.0, least - mark.width()), max(4.0, least - mark.height())
    return mark.adjusted(-wide / 2, -tall / 2, wide / 2, tall / 2)
