"""The strip on a painter, back to front: grounds, past, drying, work, names, edges."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from zoneinfo import ZoneInfo

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QFont, QPainter, QPen, QPixmap

from app.window import mark_drawing
from app.window.palette import Colours
from app.window.strip_content import Bracket, Piece, Wedge
from app.window.timeline import text_cache
from app.window.timeline.geometry import PixelSpan
from app.window.timeline.spatial_index import SquareItems
from app.window.timeline.strip_boxes import Box, Ghost, Text
from app.window.timeline.strip_layout import Arrangement
from app.window.wedge_geometry import wedge_outline
from planner.values.plan import PassKey

BEYOND = 6.0  # what is cut off is cut so far out of sight [px]
REPEATED = 8  # lines of the ground that are painted; the others are the same [px]
FRAME = 2.0  # from a piece of work to its frame; more would touch its name [px]
DOT, DOT_SIZE = 5.4, 1.6  # from one dot to the next, and across one [px]


@dataclass(frozen=True)
class StripScene:
    """Everything that one repaint needs.

    ``area`` is the viewport; ``across`` and ``down`` are how far it is
    scrolled.
    """

    at: Arrangement
    colours: Colours
    font: QFont
    zone: ZoneInfo
    now: int
    area: QRectF
    across: float
    down: float
    chosen: PassKey | None = None
    pointed: PassKey | None = None
    focused: bool = False

    @cached_property
    def small(self) -> QFont:
        """Font of labels."""
        font = QFont(self.font)
        font.setPointSizeF(self.font.pointSizeF() * 0.86)
        return font

    @cached_property
    def bold(self) -> QFont:
        """Font of headings and dates."""
        font = QFont(self.font)
        font.setWeight(QFont.Weight.DemiBold)
        return font

    @cached_property
    def top(self) -> float:
        """Where the lanes begin, below dates and airbrushes."""
        sizes = self.at.sizes
        return sizes.head + sizes.airbrush * len(self.at.strip.airbrushes)

    @cached_property
    def left(self) -> float:
        """Where the strip begins, beside the names of the lanes."""
        return self.at.sizes.left

    @property
    def lanes_area(self) -> QRectF:
        """Where the lanes are seen."""
        return QRectF(
            self.left, self.top, self.area.right() - self.left, self.area.bottom() - self.top
        )

    def x(self, minute: int) -> float:
        """Return where a minute lies in the viewport."""
        return self.left + self.at.scale.x(minute) - self.across

    def shift(self, x: float) -> float:
        """Return where an x of the strip lies in the viewport."""
        return self.left + x - self.across

    def lane(self, number: int) -> float:
        """Return where the strokes of a lane run in the viewport."""
        return self.top + self.at.middle(number) - self.down

    def sees(self, left: float, right: float) -> bool:
        """Tell whether some of [left, right) is on screen."""
        return right >= self.left and left <= self.area.right()

    def spans(self) -> list[tuple[PixelSpan, float, float]]:
        """Return the spans on screen with their edges in the viewport."""
        found = []
        for span in self.at.scale.spans:
            left, right = self.shift(span.left), self.shift(span.right)
            if self.sees(left, right):
                found.append((span, left, right))
        return found


def paint_square(painter: QPainter, scene: StripScene, items: SquareItems) -> None:
    """Paint the lanes, with all that does not follow the pointer and the keys."""
    lanes = scene.lanes_area
    strip = scene.at.strip
    _grounds(painter, scene, lanes)
    _past(painter, scene, lanes)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for number in items.wedges:
        _wedge(painter, scene, strip.wedges[number], strong=False)
    for number in items.ghosts:
        _ghost(painter, scene, scene.at.ghosts[number])
    painter.setPen(QPen(scene.colours.colour("soft", 0.6), 1))
    for number in items.ties:
        _tie(painter, scene, strip.pieces[number])
    for number in items.boxes:
        _box(painter, scene, scene.at.boxes[number])
    for number in items.brackets:
        _bracket(painter, scene, strip.brackets[number])
    painter.setFont(scene.small)
    painter.setPen(scene.colours.colour("drying_word"))
    for number in items.openings:
        _text(painter, scene, scene.at.openings[number])
    painter.setPen(scene.colours.colour("ink"))
    for number in items.names:
        _text(painter, scene, scene.at.names[number])


def paint_pointed(painter: QPainter, scene: StripScene, items: SquareItems) -> None:
    """Paint what follows the pointer and the keys: frames, and the films about the choice."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    waiting = set()
    for number in items.wedges:
        wedge = scene.at.strip.wedges[number]
        if scene.chosen is not None and scene.chosen in (wedge.key, wedge.waiting):
            _wedge(painter, scene, wedge, strong=True)
        if wedge.key == scene.chosen:
            waiting.add(wedge.waiting)
    for number in items.boxes:
        box = scene.at.boxes[number]
        key = scene.at.strip.pieces[box.piece].key
        if key in (scene.chosen, scene.pointed):
            chosen = key == scene.chosen
            _frame(painter, scene, box, 2.2 if chosen and scene.focused else 1.2)
        elif key in waiting:
            _frame(painter, scene, box, 1.4, dotted=True)


def _grounds(painter: QPainter, scene: StripScene, lanes: QRectF) -> None:
    # Whole pixels, not smoothed at their edges: that would take three times as long.
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    colours = scene.colours
    if mark_drawing.on_screen(painter):
        # Columns look the same all the way down: a few lines of them are laid again and again.
        ratio = painter.device().devicePixelRatio()
        pixmap = QPixmap(math.ceil(lanes.width() * ratio), math.ceil(REPEATED * ratio))
        pixmap.setDevicePixelRatio(ratio)
        pixmap.fill(colours.colour("gutter"))
        own = QPainter(pixmap)
        own.translate(-lanes.topLeft())
        _columns(own, scene, QRectF(lanes.topLeft(), QSizeF(lanes.width(), REPEATED)))
        own.end()
        painter.drawTiledPixmap(lanes, pixmap)
    else:
        _columns(painter, scene, lanes)
    wide, edge = round(lanes.width()), round(lanes.left())
    for row in scene.at.rows:
        above, below = scene.top + row.top - scene.down, scene.top + row.bottom - scene.down
        if below < lanes.top() or above > lanes.bottom():
            continue
        if row.lane is None:
            band = round(below - above)
            painter.fillRect(edge, round(above), wide, band, colours.colour("gutter"))
        painter.fillRect(edge, round(below) - 1, wide, 1, colours.colour("rule"))


def _columns(painter: QPainter, scene: StripScene, area: QRectF) -> None:
    """Paint the grounds of the columns, with a line at each minute that has a label."""
    top, tall = round(area.top()), round(area.height())
    for span, left, right in scene.spans():
        if span.column is None:
            continue
        low, high = max(round(left), round(area.left())), min(round(right), round(area.right()))
        painter.fillRect(low, top, high - low, tall, scene.colours.colour("sheet"))
        line = scene.colours.colour("rule", 0.55)
        for minute in scene.at.scale.ticks(span):
            x = round(scene.x(minute))
            if scene.sees(x, x + 1):
                painter.fillRect(x, top, 1, tall, line)


def _past(painter: QPainter, scene: StripScene, lanes: QRectF) -> None:
    end = min(scene.x(scene.now), lanes.right())
    if end > lanes.left():
        mark_drawing.paint_past(
            painter,
            QRectF(lanes.left(), lanes.top(), end - lanes.left(), lanes.height()),
            scene.colours,
        )


def _wedge(painter: QPainter, scene: StripScene, wedge: Wedge, *, strong: bool) -> None:
    left = scene.x(wedge.start)
    opens = scene.at.scale.width if wedge.opens is None else scene.at.scale.x(wedge.opens)
    right = scene.shift(opens)
    until = scene.x(wedge.until) if wedge.until is not None else right
    if not scene.sees(left, max(right, until)):
        return
    middle = scene.lane(wedge.lane)
    height = scene.at.sizes.stroke * 0.82
    begin, cut = scene.left - BEYOND, scene.area.right() + BEYOND  # long ones paint slowly
    corners = wedge_outline(left, right, middle, height, cut, begin)
    if right <= begin:
        pass  # only the dots behind it are seen
    elif strong:
        mark_drawing.paint_wedge_edge(painter, corners, scene.colours)
    else:
        mark_drawing.paint_wedge(painter, corners, scene.colours, strong=False)
    if wedge.opens is None:
        return
    if until > right + 6:
        _dots(painter, scene, right + 5, until - 2, middle, 1.0 if strong else 0.75)
    if wedge.waiting is not None or strong:
        mark_drawing.paint_ring(painter, right, middle, scene.colours, scene.at.sizes.text * 0.26)


def _dots(
    painter: QPainter, scene: StripScene, left: float, right: float, middle: float, alpha: float
) -> None:
    """Dot the time in which nothing is waited for but the bench, where it is seen."""
    first = max(0, math.ceil((scene.left - left) / DOT))
    last = math.floor((min(right, scene.area.right()) - left) / DOT)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(mark_drawing.brush_of(scene.colours.soft, alpha))
    spot = QPointF(left + DOT * first, middle - DOT_SIZE / 2)
    painter.translate(spot)
    painter.drawRects(_dots_in_a_row(last + 1 - first))
    painter.translate(-spot)


_DOTS: list[QRectF] = []  # the longest row so far; every other is its beginning


def _dots_in_a_row(count: int) -> list[QRectF]:
    _DOTS.extend(QRectF(DOT * at, 0.0, DOT_SIZE, DOT_SIZE) for at in range(len(_DOTS), count))
    return _DOTS[:count]


def _tie(painter: QPainter, scene: StripScene, piece: Piece) -> None:
    """Tie together the lanes that one piece of work lies in."""
    x = scene.x(piece.interval.start) + 3
    painter.drawLine(
        QPointF(x, scene.lane(piece.lanes[0])), QPointF(x, scene.lane(piece.lanes[-1]))
    )


def _ghost(painter: QPainter, scene: StripScene, ghost: Ghost) -> None:
    """Paint where a piece of work stood before: an empty outline of dashes."""
    sizes = scene.at.sizes
    middle = scene.top + ghost.middle - scene.down
    rect = QRectF(
        scene.shift(ghost.left), middle - sizes.stroke / 2, ghost.right - ghost.left, sizes.stroke
    )
    pen = QPen(scene.colours.colour("ink", 0.75), 1.2)
    pen.setDashPattern([3.0, 2.5])
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(rect, 4, 4)


def _rect(scene: StripScene, box: Box) -> QRectF:
    sizes = scene.at.sizes
    middle = scene.top + box.middle - scene.down
    return QRectF(
        scene.shift(box.left), middle - sizes.stroke / 2, box.right - box.left, sizes.stroke
    )


def _box(painter: QPainter, scene: StripScene, box: Box) -> None:
    piece = scene.at.strip.pieces[box.piece]
    rect = _rect(scene, box)
    if box.free < box.right:
        tail = rect.adjusted(box.free - box.left, 0, 0, 0)
        mark_drawing.paint_tail(painter, tail, scene.colours, swatch=piece.swatch)
        rect.setWidth(box.free - box.left)
    mark_drawing.paint_work(
        painter,
        rect,
        scene.colours,
        swatch=piece.swatch,
        tool=piece.tool,
        stage=piece.stage,
        name=piece.key,
        faded=piece.logged,
    )
    if piece.wishes:
        x = min(rect.left() + 6, rect.center().x())
        mark_drawing.paint_pin(painter, x, rect.center().y(), scene.colours, firm=piece.pinned)


def _frame(
    painter: QPainter, scene: StripScene, box: Box, width: float, *, dotted: bool = False
) -> None:
    pen = QPen(scene.colours.colour("focus"), width)
    if dotted:
        pen.setDashPattern([1.0, 2.0])
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    out = FRAME
    painter.drawRoundedRect(_rect(scene, box).adjusted(-out, -out, out, out), 5, 5)


def _bracket(painter: QPainter, scene: StripScene, bracket: Bracket) -> None:
    x = scene.x(bracket.at)
    if not scene.sees(x - 8, x + 60):
        return
    middle, height = scene.lane(bracket.lane), scene.at.sizes.stroke
    mark_drawing.paint_bracket(
        painter, x, middle - height * 0.72, middle + height * 0.72, scene.colours
    )


def _text(painter: QPainter, scene: StripScene, text: Text) -> None:
    left = scene.shift(text.left)
    if not scene.sees(left, left + text.width):
        return
    text_cache.write(painter, left, scene.top + text.middle - scene.down, text.text, text.width)
