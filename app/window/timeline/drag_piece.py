"""A piece of work that is carried over the strip, and the stretch it would be pinned to."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPen

from app.window import mark_drawing, words
from app.window.strip_content import Piece
from app.window.timeline.drop_targets import Slot, slot_at, slots
from app.window.timeline.paint import StripScene
from app.window.timeline.strip_boxes import Box
from planner.values.plan import PassKey

EDGE = 36.0  # nearer to an edge than this the strip scrolls along [px]


@dataclass
class Carried:
    """What was lifted, where the pointer is, and the earliest minute that films allow."""

    piece: Piece
    box: Box
    lifted: QPointF
    spot: QPointF
    floor: int | None
    far: bool = False  # whether it was moved enough to be no click

    @property
    def key(self) -> PassKey:
        """The pass that is carried."""
        return self.piece.key

    def slot(self, scene: StripScene) -> Slot | None:
        """Return the stretch under the pointer, None outside the lanes."""
        if not self.far or not scene.lanes_area.contains(self.spot):
            return None
        strip, scale = scene.at.strip, scene.at.scale
        return slot_at(slots(strip, scale), self.spot.x() - scene.left + scene.across)

    def too_early(self, slot: Slot) -> bool:
        """Tell whether the films are surely not ready by the end of a stretch."""
        return self.floor is not None and self.floor >= slot.interval.end

    def stays(self, slot: Slot) -> bool:
        """Tell whether a stretch is the one that it was lifted from."""
        return slot.interval.start <= self.piece.interval.start < slot.interval.end

    def pull(self, scene: StripScene) -> int:
        """Return how far the strip is to scroll along [px]."""
        lanes = scene.lanes_area
        if not self.far:
            return 0
        if self.spot.x() > lanes.right() - EDGE:
            return 24
        return -24 if self.spot.x() < lanes.left() + EDGE else 0


def paint_carried(painter: QPainter, scene: StripScene, carried: Carried) -> None:
    """Paint the stretch under the pointer, what letting go would do, and the piece."""
    slot = carried.slot(scene)
    colours, sizes, lanes = scene.colours, scene.at.sizes, scene.lanes_area
    painter.save()
    painter.setClipRect(QRectF(lanes.left(), 0, lanes.width(), lanes.bottom()))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    if slot is not None:
        refused = carried.too_early(slot)
        name = "closing" if refused else "focus"
        ground = QRectF(
            scene.shift(slot.left) + 1, 1, slot.right - slot.left - 2, lanes.bottom() - 2
        )
        painter.setPen(QPen(colours.colour(name), 2))
        painter.setBrush(colours.colour(name, 0.1))
        painter.drawRoundedRect(ground, 4, 4)
    width = carried.box.right - carried.box.left
    rect = QRectF(
        carried.spot.x() - width / 2, carried.spot.y() - sizes.stroke / 2, width, sizes.stroke
    )
    painter.setOpacity(0.75)
    mark_drawing.paint_work(
        painter,
        rect,
        colours,
        swatch=carried.piece.swatch,
        tool=carried.piece.tool,
        stage=carried.piece.stage,
        name=str(carried.key),
    )
    painter.setOpacity(1.0)
    if slot is not None:
        _say(painter, scene, said(scene, carried, slot), rect)
    painter.restore()


def said(scene: StripScene, carried: Carried, slot: Slot) -> str:
    """Return what letting go here would do."""
    start, end = slot.interval.start, slot.interval.end
    where = words.tr("{day} {start}–{end}").format(
        day=words.day_of(start, scene.zone),
        start=words.clock(start, scene.zone),
        end=words.clock(end, scene.zone),
    )
    if carried.too_early(slot) and carried.floor is not None:
        at = words.opening(carried.floor, scene.zone, scene.now)
        return words.tr("{stretch}: not ready before {at}").format(stretch=where, at=at)
    if carried.stays(slot):
        return words.tr("{stretch}: stays here").format(stretch=where)
    return words.tr("{stretch}: pin here").format(stretch=where)


def _say(painter: QPainter, scene: StripScene, told: str, rect: QRectF) -> None:
    """Write beside the carried piece, on a ground of its own so that it can be read."""
    metrics = QFontMetricsF(scene.small)
    wide, tall = metrics.horizontalAdvance(told) + 16, metrics.height() + 8
    lanes = scene.lanes_area
    left = min(max(lanes.left() + 4, rect.left()), lanes.right() - wide - 4)
    below = rect.bottom() + 8
    top = below if below + tall < lanes.bottom() else rect.top() - tall - 8
    ground = QRectF(left, top, wide, tall)
    painter.setPen(QPen(scene.colours.colour("rule"), 1))
    painter.setBrush(scene.colours.colour("paper"))
    painter.drawRoundedRect(ground, 4, 4)
    painter.setFont(scene.small)
    painter.setPen(scene.colours.colour("ink"))
    painter.drawText(ground, Qt.AlignmentFlag.AlignCenter, told)
