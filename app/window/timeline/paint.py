"""The strip on a painter, back to front: grounds, past, drying, work, names, edges."""

from __future__ import annotations

from dataclasses import dataclass
from zoneinfo import ZoneInfo

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPen

from app.window import strokes
from app.window.palette import Colours
from app.window.timeline import edges
from app.window.timeline.arrange import Arrangement, Box, Text
from app.window.timeline.content import Bracket, Wedge
from app.window.timeline.geometry import Span, wedge_outline
from planner.values.plan import PassKey


@dataclass(frozen=True)
class Scene:
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

    @property
    def small(self) -> QFont:
        """Font of labels."""
        font = QFont(self.font)
        font.setPointSizeF(self.font.pointSizeF() * 0.86)
        return font

    @property
    def top(self) -> float:
        """Where the lanes begin, below dates and airbrushes."""
        sizes = self.at.sizes
        return sizes.head + sizes.airbrush * len(self.at.strip.airbrushes)

    @property
    def left(self) -> float:
        """Where the strip begins, beside the names of the lanes."""
        return self.at.sizes.left

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

    def spans(self) -> list[tuple[Span, float, float]]:
        """Return the spans on screen with their edges in the viewport."""
        found = []
        for span in self.at.scale.spans:
            left, right = self.shift(span.left), self.shift(span.right)
            if self.sees(left, right):
                found.append((span, left, right))
        return found


def paint(painter: QPainter, scene: Scene) -> None:
    """Paint the whole viewport."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.fillRect(scene.area, scene.colours.colour("gutter"))
    painter.setFont(scene.small)
    lanes = QRectF(
        scene.left,
        scene.top,
        scene.area.right() - scene.left,
        scene.area.bottom() - scene.top,
    )
    painter.save()
    painter.setClipRect(lanes)
    _grounds(painter, scene, lanes)
    _past(painter, scene, lanes)
    for wedge in scene.at.strip.wedges:
        _wedge(painter, scene, wedge)
    _ties(painter, scene)
    for box in scene.at.boxes:
        _box(painter, scene, box)
    for bracket in scene.at.strip.brackets:
        _bracket(painter, scene, bracket)
    _texts(painter, scene)
    painter.restore()
    edges.paint_airbrushes(painter, scene)
    edges.paint_head(painter, scene)
    edges.paint_names(painter, scene)


def _grounds(painter: QPainter, scene: Scene, lanes: QRectF) -> None:
    colours = scene.colours
    for span, left, right in scene.spans():
        if span.column is None:
            continue
        painter.fillRect(
            QRectF(left, lanes.top(), right - left, lanes.height()), colours.colour("sheet")
        )
        painter.setPen(QPen(colours.colour("rule", 0.55), 1))
        for minute in scene.at.scale.ticks(span):
            x = round(scene.x(minute)) + 0.5
            painter.drawLine(QPointF(x, lanes.top()), QPointF(x, lanes.bottom()))
    for row in scene.at.rows:
        top, bottom = scene.top + row.top - scene.down, scene.top + row.bottom - scene.down
        if bottom < lanes.top() or top > lanes.bottom():
            continue
        if row.lane is None:
            painter.fillRect(
                QRectF(lanes.left(), top, lanes.width(), bottom - top),
                colours.colour("gutter", 0.75),
            )
        painter.setPen(QPen(colours.colour("rule"), 1))
        y = round(bottom) - 0.5
        painter.drawLine(QPointF(lanes.left(), y), QPointF(lanes.right(), y))


def _past(painter: QPainter, scene: Scene, lanes: QRectF) -> None:
    end = min(scene.x(scene.now), lanes.right())
    if end > lanes.left():
        strokes.paint_past(
            painter,
            QRectF(lanes.left(), lanes.top(), end - lanes.left(), lanes.height()),
            scene.colours,
        )


def _wedge(painter: QPainter, scene: Scene, wedge: Wedge) -> None:
    left = scene.x(wedge.start)
    opens = scene.at.scale.width if wedge.opens is None else scene.at.scale.x(wedge.opens)
    right = scene.shift(opens)
    until = scene.x(wedge.until) if wedge.until is not None else right
    if not scene.sees(left, max(right, until)):
        return
    middle = scene.lane(wedge.lane)
    strong = scene.chosen in (wedge.key, wedge.waiting)
    corners = wedge_outline(left, right, middle, scene.at.sizes.stroke * 0.82, right)
    strokes.paint_wedge(painter, corners, scene.colours, strong=strong)
    if wedge.opens is None:
        return
    if until > right + 6:
        pen = QPen(scene.colours.colour("soft", 1.0 if strong else 0.75), 1.6)
        pen.setDashPattern([0.2, 3.2])
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.drawLine(QPointF(right + 5, middle), QPointF(until - 2, middle))
    if wedge.waiting is not None or strong:
        strokes.paint_ring(painter, right, middle, scene.colours, scene.at.sizes.text * 0.26)


def _ties(painter: QPainter, scene: Scene) -> None:
    """Tie together the lanes that one piece of work lies in."""
    painter.setPen(QPen(scene.colours.colour("soft", 0.6), 1))
    for piece in scene.at.strip.pieces:
        x = scene.x(piece.interval.start) + 3
        if len(piece.lanes) > 1 and scene.sees(x, x):
            painter.drawLine(
                QPointF(x, scene.lane(piece.lanes[0])), QPointF(x, scene.lane(piece.lanes[-1]))
            )


def _box(painter: QPainter, scene: Scene, box: Box) -> None:
    left, right = scene.shift(box.left), scene.shift(box.right)
    if not scene.sees(left, right):
        return
    sizes = scene.at.sizes
    middle = scene.top + box.middle - scene.down
    if middle < scene.top - sizes.lane or middle > scene.area.bottom() + sizes.lane:
        return
    piece = scene.at.strip.pieces[box.piece]
    rect = QRectF(left, middle - sizes.stroke / 2, right - left, sizes.stroke)
    strokes.paint_work(
        painter,
        rect,
        scene.colours,
        swatch=piece.swatch,
        tool=piece.tool,
        stage=piece.stage,
        name=str(piece.key),
        faded=piece.logged,
    )
    if piece.key in (scene.chosen, scene.pointed):
        chosen = piece.key == scene.chosen
        pen = QPen(scene.colours.colour("focus"), 2.2 if chosen and scene.focused else 1.2)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(rect.adjusted(-3, -3, 3, 3), 5, 5)


def _bracket(painter: QPainter, scene: Scene, bracket: Bracket) -> None:
    x = scene.x(bracket.at)
    if not scene.sees(x - 8, x + 60):
        return
    middle, height = scene.lane(bracket.lane), scene.at.sizes.stroke
    strokes.paint_bracket(painter, x, middle - height * 0.72, middle + height * 0.72, scene.colours)


def _texts(painter: QPainter, scene: Scene) -> None:
    metrics = QFontMetricsF(painter.font())
    for texts, colour in ((scene.at.openings, "drying_word"), (scene.at.names, "ink")):
        painter.setPen(scene.colours.colour(colour))
        for text in texts:
            _text(painter, scene, text, metrics)


def _text(painter: QPainter, scene: Scene, text: Text, metrics: QFontMetricsF) -> None:
    left = scene.shift(text.left)
    if not scene.sees(left, left + text.width):
        return
    rect = QRectF(left, scene.top + text.middle - scene.down - 10, text.width, 20)
    shown = metrics.elidedText(text.text, Qt.TextElideMode.ElideRight, text.width)
    painter.drawText(rect, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, shown)
