"""The strip in painted squares, kept until something about them changes.

Scrolling, choosing and pointing then only lay squares side by side.  What is
in sight and not kept is painted at once, all of it together and nothing
beyond; its squares, and those next to them, are painted when nobody waits.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import chain

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPixmap, QRegion

from app.window.timeline import edges, paint
from app.window.timeline.paint import StripScene
from app.window.timeline.spatial_index import SIDE, along, together

MOST = 128  # squares that are kept, some five screens full

Place = tuple[int, int | None]  # column and row of a square; None for the airbrushes' band


class Tiles:
    """Painted squares of one strip at one zoom, in one set of colours."""

    def __init__(self) -> None:
        self._kept: OrderedDict[Place, QPixmap] = OrderedDict()

    def forget(self) -> None:
        """Paint everything anew from now on."""
        self._kept.clear()

    def paint(self, painter: QPainter, scene: StripScene) -> None:
        """Paint the whole viewport."""
        painter.fillRect(scene.area, scene.colours.colour("gutter"))
        columns, rows = _in_sight(scene)
        painter.save()
        painter.setClipRect(scene.lanes_area)
        missing = self._lay(painter, scene, ((x, y) for x in columns for y in rows))
        if missing:
            items = together(scene.at.index.at(x, y or 0) for x, y in missing)
            _clip_to(painter, scene, missing)
            # Hatches run on from square to square.
            painter.setBrushOrigin(QPointF(scene.left - scene.across, scene.top - scene.down))
            paint.paint_square(painter, scene, items)
            painter.setClipRect(scene.lanes_area)
        seen = together(scene.at.index.at(x, y) for x in columns for y in rows)
        paint.paint_pointed(painter, scene, seen)
        painter.restore()
        if scene.at.strip.airbrushes:
            self._paint_band(painter, scene, columns)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        edges.paint_head(painter, scene)
        edges.paint_names(painter, scene)

    def paint_ahead(self, scene: StripScene, ratio: float) -> bool:
        """Paint one square that is in sight or next to it; tell whether more are to be painted.

        ``ratio`` is how many pixels of the screen a pixel takes.
        """
        wanted = (place for place in _ahead(scene) if place not in self._kept)
        place = next(wanted, None)
        if place is not None:
            self._keep(place, _painted(scene, place, ratio))
        return next(wanted, None) is not None

    def _paint_band(self, painter: QPainter, scene: StripScene, columns: range) -> None:
        painter.save()
        top = scene.at.sizes.head
        painter.setClipRect(
            QRectF(scene.left, top, scene.area.right() - scene.left, scene.top - top)
        )
        missing = self._lay(painter, scene, ((x, None) for x in columns))
        if missing:
            painter.save()
            _clip_to(painter, scene, missing)
            painter.setBrushOrigin(QPointF(scene.left - scene.across, top))
            edges.paint_band(
                painter, scene, together(scene.at.index.of_band(x) for x, _ in missing)
            )
            painter.restore()
        seen = together(scene.at.index.of_band(column) for column in columns)
        edges.paint_loads(painter, scene, seen)
        painter.restore()

    def _lay(self, painter: QPainter, scene: StripScene, places: Iterable[Place]) -> list[Place]:
        """Lay what is kept of these; return the others."""
        missing = []
        for place in places:
            known = self._kept.get(place)
            if known is None:
                missing.append(place)
            else:
                self._kept.move_to_end(place)
                painter.drawPixmap(_rect(scene, place).topLeft(), known)
        return missing

    def _keep(self, place: Place, pixmap: QPixmap) -> None:
        self._kept[place] = pixmap
        while len(self._kept) > MOST:
            self._kept.popitem(last=False)


def _in_sight(scene: StripScene) -> tuple[range, range]:
    lanes = scene.lanes_area
    columns = along(scene.across, scene.across + lanes.width())
    return columns, along(scene.down, scene.down + lanes.height())


def _ahead(scene: StripScene) -> Iterator[Place]:
    """Yield every square that is in sight, then a page on, a page back, and one up and down."""
    columns, rows = _in_sight(scene)
    band = scene.at.strip.airbrushes
    last, lowest = int(scene.at.scale.width // SIDE), int(scene.at.height // SIDE)
    on = range(columns.stop, min(columns.stop + len(columns), last + 1))
    back = range(max(0, columns.start - len(columns)), columns.start)
    for column in chain(columns, on, back):
        if band:
            yield column, None
        for row in rows:
            yield column, row
    for row in (rows.stop, rows.start - 1):
        if 0 <= row <= lowest:
            for column in columns:
                yield column, row


def _rect(scene: StripScene, place: Place) -> QRectF:
    """Return where a square lies in the viewport."""
    column, row = place
    left = scene.left + column * SIDE - scene.across
    if row is None:
        return QRectF(left, scene.at.sizes.head, SIDE, scene.top - scene.at.sizes.head)
    return QRectF(left, scene.top + row * SIDE - scene.down, SIDE, SIDE)


def _clip_to(painter: QPainter, scene: StripScene, places: Iterable[Place]) -> None:
    """Let only these squares be painted, as far as they are in sight."""
    region = QRegion()
    for place in places:
        region = region.united(_rect(scene, place).toAlignedRect())
    seen = painter.clipBoundingRect().toAlignedRect()
    painter.setClipRegion(region.intersected(seen))


def _painted(scene: StripScene, place: Place, ratio: float) -> QPixmap:
    """Paint one square."""
    column, row = place
    tall = scene.top if row is None else scene.top + SIDE
    inside = replace(
        scene,
        area=QRectF(0, 0, scene.left + SIDE, tall),
        across=column * SIDE,
        down=0 if row is None else row * SIDE,
    )
    rect = _rect(inside, place)
    pixmap = QPixmap(round(SIDE * ratio), max(1, round(rect.height() * ratio)))
    pixmap.setDevicePixelRatio(ratio)
    pixmap.fill(inside.colours.colour("gutter"))
    painter = QPainter(pixmap)
    painter.translate(-rect.left(), -rect.top())
    if row is None:
        edges.paint_band(painter, inside, scene.at.index.of_band(column))
    else:
        paint.paint_square(painter, inside, scene.at.index.at(column, row))
    painter.end()
    return pixmap
