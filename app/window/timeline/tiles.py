"""The strip in painted squares, kept until something about them changes.

Scrolling, choosing and pointing then only lay squares side by side; new
ones are painted as they come into sight.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPixmap

from app.window.timeline import edges, paint
from app.window.timeline.index import SIDE, Items, along, together
from app.window.timeline.paint import Scene

MOST = 96  # squares that are kept, some four screens full


class Tiles:
    """Painted squares of one strip at one zoom, in one set of colours."""

    def __init__(self) -> None:
        self._kept: OrderedDict[tuple[int, int | None], QPixmap] = OrderedDict()

    def forget(self) -> None:
        """Paint everything anew from now on."""
        self._kept.clear()

    def paint(self, painter: QPainter, scene: Scene) -> None:
        """Paint the whole viewport."""
        painter.fillRect(scene.area, scene.colours.colour("gutter"))
        lanes = scene.lanes_area
        columns = along(scene.across, scene.across + lanes.width())
        rows = along(scene.down, scene.down + lanes.height())
        seen = [scene.at.index.at(column, row) for column in columns for row in rows]
        painter.save()
        painter.setClipRect(lanes)
        for column in columns:
            for row in rows:
                spot = QPointF(
                    scene.left + column * SIDE - scene.across,
                    scene.top + row * SIDE - scene.down,
                )
                painter.drawPixmap(spot, self._square(painter, scene, column, row))
        paint.paint_pointed(painter, scene, together(seen))
        painter.restore()
        self._paint_band(painter, scene, columns)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        edges.paint_head(painter, scene)
        edges.paint_names(painter, scene)

    def _paint_band(self, painter: QPainter, scene: Scene, columns: range) -> None:
        if not scene.at.strip.airbrushes:
            return
        painter.save()
        top = scene.at.sizes.head
        painter.setClipRect(
            QRectF(scene.left, top, scene.area.right() - scene.left, scene.top - top)
        )
        for column in columns:
            spot = QPointF(scene.left + column * SIDE - scene.across, top)
            painter.drawPixmap(spot, self._piece_of_band(painter, scene, column))
        seen = together(scene.at.index.of_band(column) for column in columns)
        edges.paint_loads(painter, scene, seen)
        painter.restore()

    def _square(self, painter: QPainter, scene: Scene, column: int, row: int) -> QPixmap:
        inside = replace(
            scene,
            area=QRectF(0, 0, scene.left + SIDE, scene.top + SIDE),
            across=column * SIDE,
            down=row * SIDE,
        )
        items = scene.at.index.at(column, row)
        return self._made(
            painter, (column, row), inside, items, paint.paint_square, (scene.top, SIDE)
        )

    def _piece_of_band(self, painter: QPainter, scene: Scene, column: int) -> QPixmap:
        top = scene.at.sizes.head
        inside = replace(
            scene, area=QRectF(0, 0, scene.left + SIDE, scene.top), across=column * SIDE
        )
        items = scene.at.index.of_band(column)
        place = (top, scene.top - top)
        return self._made(painter, (column, None), inside, items, edges.paint_band, place)

    def _made(
        self,
        painter: QPainter,
        key: tuple[int, int | None],
        inside: Scene,
        items: Items,
        fill: Callable[[QPainter, Scene, Items], None],
        place: tuple[float, float],
    ) -> QPixmap:
        """Return a kept square, or paint it; ``place`` is its top and its height."""
        known = self._kept.get(key)
        if known is not None:
            self._kept.move_to_end(key)
            return known
        top, height = place
        ratio = painter.device().devicePixelRatio()
        pixmap = QPixmap(round(SIDE * ratio), max(1, round(height * ratio)))
        pixmap.setDevicePixelRatio(ratio)
        pixmap.fill(inside.colours.colour("gutter"))
        own = QPainter(pixmap)
        own.translate(-inside.left, -top)
        fill(own, inside, items)
        own.end()
        self._kept[key] = pixmap
        while len(self._kept) > MOST:
            self._kept.popitem(last=False)
        return pixmap
