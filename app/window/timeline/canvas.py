"""The timeline as a drawing that scrolls and zooms, and knows what lies where."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from zoneinfo import ZoneInfo

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractScrollArea, QWidget

from app.window import words
from app.window.palette import LIGHT, Colours
from app.window.strip_content import Piece, Strip
from app.window.timeline.drag_piece import Carried, paint_carried
from app.window.timeline.geometry import Scale, fitting_scale
from app.window.timeline.labels import label_of
from app.window.timeline.paint import StripScene
from app.window.timeline.strip_boxes import Box, Sizes
from app.window.timeline.strip_layout import Arrangement, arrange
from app.window.timeline.tiles import Tiles
from planner.values.plan import PassKey

ZOOM = 1.25
FIRST_SCALE = 3.2  # an evening of 2½ hours is some 480 pixels wide


class StripCanvas(QAbstractScrollArea):
    """The strip without the hands on it.

    Signals
    -------
    chosen(PassKey | None)
        Another piece of work was chosen.
    picked()
        One was chosen by a hand on it: by pointer or arrow key.
    """

    chosen = Signal(object)
    picked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QAbstractScrollArea.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Timeline"))
        self.setAccessibleDescription(
            self.tr("A drawing of the plan. The list below it says the same in words.")
        )
        self._colours = LIGHT
        self._strip = Strip(now=0, zone="UTC")
        self._now = 0
        self._pixels = FIRST_SCALE
        self._chosen: PassKey | None = None
        self._box: Box | None = None
        self._pointed: PassKey | None = None
        self._carried: Carried | None = None
        self._before: dict[PassKey, int] = {}
        self._zone = ZoneInfo("UTC")
        self._tiles = Tiles()
        self._idle = QTimer(self)
        self._idle.setSingleShot(True)
        self._idle.setInterval(0)
        self._idle.timeout.connect(self._paint_ahead)
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

    def scene(self) -> StripScene:
        """Return everything that a repaint needs."""
        return StripScene(
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

    def sizeHint(self) -> QSize:
        """Return a size that shows an evening."""
        return QSize(900, 420)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the strip."""
        painter = QPainter(self.viewport())
        scene = self.scene()
        self._tiles.paint(painter, scene)
        if self._carried is not None and self._carried.far:
            paint_carried(painter, scene, self._carried)
        painter.end()
        self._idle.start()
        event.accept()

    def _paint_ahead(self) -> None:
        """Paint what will be wanted next, a square at a time, while nobody waits."""
        if self.isVisible() and self._tiles.paint_ahead(self.scene(), self.devicePixelRatio()):
            self._idle.start()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Fit the scroll bars."""
        super().resizeEvent(event)
        self._set_bars()

    def changeEvent(self, event: QEvent) -> None:
        """Lay out anew in another font."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._rearrange()

    def scrollContentsBy(self, _across: int, _down: int) -> None:
        """Repaint; the edges stay where they are."""
        self.viewport().update()

    def choice_spot(self) -> QPoint:
        """Return where the chosen piece is on the viewport, its middle where it is not."""
        box, scene = self._box_of_choice(), self.scene()
        if box is None:
            return self.viewport().rect().center()
        spot = QPointF(scene.shift(box.left), scene.top + box.middle - scene.down)
        return spot.toPoint() if scene.lanes_area.contains(spot) else QPoint(40, 40)

    def _choose(self, key: PassKey | None, box: Box | None = None) -> None:
        self._box = box
        if key != self._chosen:
            self._chosen = key
            self.chosen.emit(key)
        if box is not None:
            self.picked.emit()
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

    def _sprayed_under(self, spot: QPointF, scene: StripScene) -> Box | None:
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

    def _put_down(self) -> None:
        """Forget what is carried."""
        self._carried = None
