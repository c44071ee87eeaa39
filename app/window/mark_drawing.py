"""Marks of our own: strokes, tape, drops, brackets, wedges.

What was sprayed ends in mist, what was brushed ends in bristle lines, what
was sponged is a row of dabs, tape is tape; so the tool can be told without
its colour.
"""

from __future__ import annotations

import math
import zlib
from functools import lru_cache
from typing import NamedTuple
from weakref import WeakKeyDictionary

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QImage,
    QPaintEngine,
    QPainter,
    QPainterPath,
    QPen,
    QPolygonF,
)

from app.window.palette import Colours, contrast
from planner.values.step import Stage, Tool

SPRAYED = frozenset({Tool.AIRBRUSH, Tool.CAN})
FAINT, FIRM = 0.45, 1.0  # how opaque outlines are that need not, and that must, be seen
OUTLINE = 1.4  # of a wedge: a sloping line of one pixel is half as dark in places [px]
NARROW = 8.0  # narrower pieces have room for the shape of a stroke's ends, not for more [px]
TAPE = frozenset({Stage.MASK, Stage.UNMASK})
STAMPED = 400.0  # longer pieces are few, and their pictures would be large [px]
MOST_STAMPED = 8_000_000  # bytes of the pictures that are kept, several screens of them
EDGE = 2  # room for an outline around a picture [px]
WIDE = 64.0  # the slope of longer wedges is so gentle that only their edge need be smooth [px]


class _Stamps:
    """Pictures that are kept, the first of them forgotten where all are too large."""

    def __init__(self) -> None:
        self._kept: dict[tuple[object, ...], QImage] = {}
        self._bytes = 0

    def __len__(self) -> int:
        return len(self._kept)

    def get(self, key: tuple[object, ...]) -> QImage | None:
        return self._kept.get(key)

    def keep(self, key: tuple[object, ...], image: QImage) -> None:
        self._kept[key] = image
        self._bytes += image.sizeInBytes()
        while self._bytes > MOST_STAMPED:
            self._bytes -= self._kept.pop(next(iter(self._kept))).sizeInBytes()


_STAMPS = _Stamps()
_RATIOS: WeakKeyDictionary[QPainter, float] = WeakKeyDictionary()


@lru_cache(maxsize=1024)
def pen_of(hue: str, alpha: float, width: float) -> QPen:
    """Return a pen to paint with, which nobody may change: hundreds a repaint are the same."""
    colour = QColor(hue)
    colour.setAlphaF(alpha)
    return QPen(colour, width)


@lru_cache(maxsize=1024)
def brush_of(hue: str, alpha: float) -> QBrush:
    """Return a brush to paint with, which nobody may change."""
    colour = QColor(hue)
    colour.setAlphaF(alpha)
    return QBrush(colour)


@lru_cache(maxsize=8192)
def phase_of(name: str) -> float:
    """Return an angle that is always the same for a name, so that strokes keep their shape."""
    return zlib.crc32(name.encode()) % 6283 / 1000


def brush_path(rect: QRectF, phase: float) -> QPainterPath:
    """Return a stroke of a flat brush, laid from left to right."""
    wobble = min(1.6, rect.height() * 0.07)
    teeth = 5
    depth = min(rect.width() * 0.35, rect.height() * 0.5)
    left, right = rect.left(), rect.right()
    path = QPainterPath(QPointF(left + wobble, rect.top() + rect.height() * 0.15))
    steps = max(2, int(rect.width() / 9))
    for at in range(1, steps + 1):
        x = left + (rect.width() - depth) * at / steps
        path.lineTo(x, rect.top() + wobble * (1 + math.sin(x / 8 + phase)))
    for tooth in range(teeth):
        y = rect.top() + rect.height() * (tooth + 0.5) / teeth
        reach = 0.45 + 0.55 * abs(math.sin(phase * (tooth + 2) + tooth))
        path.lineTo(right - depth * (1 - reach), y - rect.height() * 0.08)
        path.lineTo(right - depth * (1.1 - 0.4 * reach), y + rect.height() * 0.08)
    for at in range(steps, -1, -1):
        x = left + (rect.width() - depth) * at / steps
        path.lineTo(x, rect.bottom() - wobble * (1 + math.sin(x / 11 + 2 * phase)))
    path.quadTo(left - wobble, rect.center().y(), left + wobble, rect.top() + rect.height() * 0.15)
    path.closeSubpath()
    return path


def spray_path(rect: QRectF) -> QPainterPath:
    """Return the body of a sprayed stroke; `paint_mist` is its end."""
    path = QPainterPath()
    radius = min(rect.height() / 2, rect.width() / 2)
    path.addRoundedRect(rect, radius, radius)
    return path


def sponge_path(rect: QRectF, phase: float) -> QPainterPath:
    """Return a row of dabs."""
    path = QPainterPath()
    path.setFillRule(Qt.FillRule.WindingFill)
    size = rect.height() * 0.52
    count = max(2, round(rect.width() / (size * 0.72)))
    for at in range(count):
        x = rect.left() + (rect.width() - size) * at / max(1, count - 1)
        y = rect.center().y() - size / 2 + rect.height() * 0.2 * math.sin(phase + at * 2.1)
        path.addEllipse(QRectF(x, y, size, size))
    return path.simplified()


def tape_path(rect: QRectF) -> QPainterPath:
    """Return a strip of tape with torn ends."""
    path = QPainterPath(QPointF(rect.left(), rect.top() + rect.height() * 0.2))
    path.lineTo(rect.right(), rect.top() + rect.height() * 0.2)
    bottom, top = rect.top() + rect.height() * 0.85, rect.top() + rect.height() * 0.2
    tear = min(3.0, rect.width() / 4)
    for part in range(1, 5):
        x = rect.right() - (tear if part % 2 else 0)
        path.lineTo(x, top + (bottom - top) * part / 4)
    path.lineTo(rect.left(), bottom)
    for part in range(3, 0, -1):
        x = rect.left() + (tear if part % 2 else 0)
        path.lineTo(x, top + (bottom - top) * part / 4)
    path.closeSubpath()
    return path


def work_path(rect: QRectF, tool: Tool, stage: Stage, *, lays: bool, phase: float) -> QPainterPath:
    """Return the outline of a piece of work."""
    if stage in (Stage.MASK, Stage.UNMASK):
        return tape_path(rect)
    if not lays:
        path = QPainterPath()
        path.addRoundedRect(rect.adjusted(0, 2, 0, -2), 3, 3)
        return path
    if tool in SPRAYED:
        return spray_path(rect)
    if tool is Tool.SPONGE:
        return sponge_path(rect, phase)
    return brush_path(rect, phase)


def paint_work(
    painter: QPainter,
    rect: QRectF,
    colours: Colours,
    *,
    swatch: str,
    tool: Tool,
    stage: Stage,
    name: object,
    faded: bool = False,
) -> None:
    """Paint a piece of work; what is written of ``name`` gives a stroke its shape."""
    sprayed = bool(swatch) and tool in SPRAYED
    if stage not in TAPE and (sprayed or rect.width() < NARROW):
        dress = _Dress(swatch or colours.sheet, colours, tool in SPRAYED, faded)
        ratio = ratio_on_screen(painter)
        if ratio and rect.width() < STAMPED:
            _stamp_plain(painter, rect, dress, ratio)
        else:
            _paint_plain(painter, rect, dress)
        return
    painter.setPen(edge_pen(swatch or colours.sheet, colours, faded=faded))
    painter.setBrush(brush_of(swatch or colours.sheet, 0.55 if faded else 1.0))
    path = work_path(rect, tool, stage, lays=bool(swatch), phase=phase_of(str(name)))
    painter.drawPath(path)
    if stage in TAPE:
        _hatch(painter, path, colours, forward=stage is Stage.MASK)
    elif not swatch:
        _hatch(painter, path, colours, forward=True)


class _Dress(NamedTuple):
    """What the look of a sprayed or a narrow piece of work hangs on, beside its size."""

    fill: str
    colours: Colours
    sprayed: bool
    faded: bool


def _paint_plain(painter: QPainter, rect: QRectF, dress: _Dress) -> None:
    """Paint a piece of work that looks the same as every other of its colour and size."""
    fill, colours, sprayed, faded = dress
    painter.setPen(edge_pen(fill, colours, faded=faded))
    painter.setBrush(brush_of(fill, 0.55 if faded else 1.0))
    if rect.width() < NARROW:
        round_ = rect.width() / 2 if sprayed else 0.0
        painter.drawRoundedRect(rect, round_, round_)
    else:
        painter.drawPath(spray_path(rect))
        paint_mist(painter, rect, colours)


def _stamp_plain(painter: QPainter, rect: QRectF, dress: _Dress, ratio: float) -> None:
    """Lay it as a picture, on a quarter of a pixel: ten times as fast as painting it."""
    left, top = math.floor(rect.left()), math.floor(rect.top())
    across, down = round((rect.left() - left) * 4), round((rect.top() - top) * 4)
    wide, high = round(rect.width() * 4), round(rect.height() * 4)
    fill, colours, sprayed, faded = dress
    hues = (fill, colours.soft, colours.sheet, colours.paper)
    key = (hues, sprayed, faded, across, down, wide, high, ratio)
    image = _STAMPS.get(key)
    if image is None:
        inside = QRectF(EDGE + across / 4, EDGE + down / 4, wide / 4, high / 4)
        image = _stamped(inside, dress, ratio)
        _STAMPS.keep(key, image)
    painter.drawImage(QPointF(left - EDGE, top - EDGE), image)


def _stamped(rect: QRectF, dress: _Dress, ratio: float) -> QImage:
    wide, high = (math.ceil((other + EDGE) * ratio) for other in (rect.right(), rect.bottom()))
    image = QImage(wide, high, QImage.Format.Format_ARGB32_Premultiplied)
    image.setDevicePixelRatio(ratio)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _paint_plain(painter, rect, dress)
    painter.end()
    return image


def paint_tail(painter: QPainter, rect: QRectF, colours: Colours, *, swatch: str) -> None:
    """Paint the time in which a piece of work goes on alone: thinner and paler than work."""
    fill = QColor(swatch) if swatch else colours.colour("sheet")
    fill.setAlphaF(0.5)
    painter.setPen(QPen(edge_on(swatch or colours.sheet, colours), 1.0))
    painter.setBrush(fill)
    high = rect.height() * 0.4
    painter.drawRect(QRectF(rect.left(), rect.center().y() - high / 2, rect.width(), high))


def edge_on(swatch: str, colours: Colours) -> QColor:
    """Return an outline for a swatch: faint where it stands out anyway."""
    return colours.colour("soft", _edge(swatch, colours))


def edge_pen(swatch: str, colours: Colours, *, faded: bool = False) -> QPen:
    """Return the pen of an outline for a swatch; a faded one does not stand out by itself."""
    return pen_of(colours.soft, FIRM if faded else _edge(swatch, colours), 1.0)


@lru_cache(maxsize=1024)
def _edge(swatch: str, colours: Colours) -> float:
    """Return how opaque the outline of a swatch is."""
    stands_out = min(contrast(swatch, colours.sheet), contrast(swatch, colours.gutter)) >= 3
    return FAINT if stands_out else FIRM


def on_screen(painter: QPainter) -> bool:
    """Tell whether pixels are painted, where pictures will do; paper is drawn in lines."""
    return ratio_on_screen(painter) > 0


def ratio_on_screen(painter: QPainter) -> float:
    """Return how many pixels a pixel takes where pixels are painted; 0 on paper.

    A painter is asked once: its device stays the same.
    """
    known = _RATIOS.get(painter)
    if known is None:
        raster = painter.paintEngine().type() == QPaintEngine.Type.Raster
        known = _RATIOS[painter] = painter.device().devicePixelRatio() if raster else 0.0
    return known


def paint_mist(painter: QPainter, rect: QRectF, colours: Colours) -> None:
    """Speckle the right end of a sprayed stroke."""
    reach, tall = round(min(rect.width() * 0.5, rect.height())), round(rect.height())
    spot = QPointF(rect.right() - reach, rect.top())
    ratio = ratio_on_screen(painter)
    if ratio:
        painter.drawImage(spot, _stamp(reach, tall, colours.paper, ratio))
    else:
        painter.save()
        painter.translate(spot)
        _speckle(painter, reach, tall, colours.paper)
        painter.restore()


@lru_cache(maxsize=256)
def _stamp(reach: int, tall: int, paper: str, ratio: float) -> QImage:
    """Return the specks as a picture: a screen full of them is laid much sooner than painted."""
    wide, high = max(1, round(reach * ratio)), max(1, round(tall * ratio))
    image = QImage(wide, high, QImage.Format.Format_ARGB32_Premultiplied)
    image.setDevicePixelRatio(ratio)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    _speckle(painter, reach, tall, paper)
    painter.end()
    return image


def _speckle(painter: QPainter, reach: float, tall: float, paper: str) -> None:
    painter.setPen(Qt.PenStyle.NoPen)
    speck = QColor(paper)
    speck.setAlphaF(0.85)
    painter.setBrush(speck)
    for at in range(11):
        share = (0.5 + at * 0.754878) % 1  # low-discrepancy points of the plane
        x = reach * (1 - 0.06 - 0.9 * share)
        y = tall * (0.14 + 0.72 * ((0.5 + at * 0.569840) % 1))
        size = 0.5 + 0.8 * (1 - share)
        painter.drawEllipse(QPointF(x, y), size, size)


def _hatch(painter: QPainter, path: QPainterPath, colours: Colours, *, forward: bool) -> None:
    style = Qt.BrushStyle.BDiagPattern if forward else Qt.BrushStyle.FDiagPattern
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QBrush(colours.colour("soft", 0.6), style))
    painter.drawPath(path)


def paint_wedge(
    painter: QPainter, corners: list[tuple[float, float]], colours: Colours, *, strong: bool
) -> None:
    """Paint a drying wedge from its corners."""
    shape = QPolygonF([QPointF(x, y) for x, y in corners])
    pen = pen_of(colours.drying_word, 1.0, OUTLINE)
    fill = brush_of(colours.drying, 1.0 if strong else 0.6)
    wide = corners[1][0] - corners[0][0] > WIDE
    if wide:
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(fill)
        painter.drawPolygon(shape)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush if wide else fill)
    painter.drawPolygon(shape)


def paint_wedge_edge(
    painter: QPainter, corners: list[tuple[float, float]], colours: Colours
) -> None:
    """Paint the outline of a wedge over it, where the wedge is spoken of."""
    painter.setPen(QPen(colours.colour("drying_word"), 1.6))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolygon(QPolygonF([QPointF(x, y) for x, y in corners]))


def paint_pin(painter: QPainter, x: float, middle: float, colours: Colours, *, firm: bool) -> None:
    """Paint a wish: a round-headed pin, hollow where the time is not fixed."""
    painter.setPen(QPen(colours.colour("ink"), 1.4))
    painter.drawLine(QPointF(x, middle), QPointF(x, middle + 14))
    painter.setBrush(colours.colour("pinned" if firm else "sheet"))
    painter.drawEllipse(QPointF(x, middle), 3.8, 3.8)


def paint_ring(painter: QPainter, x: float, y: float, colours: Colours, radius: float) -> None:
    """Paint the moment at which a film opens."""
    painter.setPen(pen_of(colours.drying_word, 1.0, 1.6))
    painter.setBrush(brush_of(colours.sheet, 1.0))
    painter.drawEllipse(QPointF(x, y), radius, radius)


def paint_bracket(painter: QPainter, x: float, top: float, bottom: float, colours: Colours) -> None:
    """Paint the moment at which a window closes."""
    painter.setPen(QPen(colours.colour("closing"), 2.0))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPolyline(
        [QPointF(x - 6, top), QPointF(x, top), QPointF(x, bottom), QPointF(x - 6, bottom)]
    )


def paint_warning(painter: QPainter, rect: QRectF, colours: Colours) -> None:
    """Paint a caution: a triangle with a stroke in it."""
    triangle = QPolygonF(
        [QPointF(rect.center().x(), rect.top()), rect.bottomRight(), rect.bottomLeft()]
    )
    painter.setPen(QPen(colours.colour("caution"), 1.6))
    painter.setBrush(colours.colour("sheet"))
    painter.drawPolygon(triangle)
    middle = rect.center().x()
    painter.setPen(QPen(colours.colour("caution"), 1.6))
    painter.drawLine(
        QPointF(middle, rect.top() + rect.height() * 0.38),
        QPointF(middle, rect.top() + rect.height() * 0.66),
    )
    painter.drawPoint(QPointF(middle, rect.top() + rect.height() * 0.83))


def paint_past(painter: QPainter, rect: QRectF, colours: Colours) -> None:
    """Shade what is past: a veil and a fine hatch; now is where it ends."""
    painter.fillRect(rect, colours.colour("shade", 0.34 if colours.dark else 0.13))
    painter.fillRect(rect, QBrush(colours.colour("soft", 0.16), Qt.BrushStyle.BDiagPattern))
