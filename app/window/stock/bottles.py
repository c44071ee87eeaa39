"""Bottles as pictures: how full, what the plan takes, and the colour, large enough to be seen."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QIcon, QPainter, QPen, QPixmap

from app.window.palette import Colours

WIDE, HIGH = 34, 52  # of a drawn bottle, its pennant counted in
PICTURE = (66, 48)  # a bottle and its swatch, twice as fine as they are shown [pixels]


def bottle_icon(swatch: str, left: float, taken: float, *, old: bool, colours: Colours) -> QIcon:
    """Return a bottle filled as far as it is, hatched as far as the plan takes, and its swatch.

    ``left`` and ``taken`` are shares of a full bottle; an old one bears a pennant.
    """
    pixmap = QPixmap(*PICTURE)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    across, down = PICTURE[0] / 72, PICTURE[1] / 52
    bottle = QRectF(0, 0, WIDE * across, HIGH * down)
    paint_bottle(painter, bottle, swatch, left, taken, old=old, colours=colours)
    painter.scale(across, down)
    painter.setPen(QPen(QColor(colours.frame), 2))
    painter.setBrush(QColor(swatch))
    painter.drawRoundedRect(QRectF(34, 13, 36, 36), 4, 4)
    painter.end()
    icon = QIcon(pixmap)
    icon.addPixmap(pixmap, QIcon.Mode.Selected)
    return icon


def paint_bottle(
    painter: QPainter,
    rect: QRectF,
    swatch: str,
    left: float,
    taken: float,
    *,
    old: bool,
    colours: Colours,
) -> None:
    """Paint a bottle filled as far as it is, hatched as far as the plan takes, into ``rect``."""
    painter.save()
    painter.translate(rect.topLeft())
    painter.scale(rect.width() / WIDE, rect.height() / HIGH)
    edge = QPen(QColor(colours.frame), 2 / max(1.0, rect.height() / HIGH))
    glass, full = QRectF(3, 13, 24, 36), 34.0
    painter.setPen(edge)
    painter.setBrush(QColor(colours.soft))
    painter.drawRoundedRect(QRectF(9, 3, 12, 9), 2, 2)
    painter.setBrush(QColor(colours.sheet))
    painter.drawRoundedRect(glass, 4, 4)
    high = full * min(1.0, max(0.0, left))
    level = QRectF(4, 48 - high, 22, high)
    painter.fillRect(level, QColor(swatch))
    gone = min(high, full * max(0.0, taken))
    upper = QRectF(4, 48 - high, 22, gone)
    painter.fillRect(upper, QColor(colours.sheet))
    painter.fillRect(upper, QBrush(QColor(swatch), Qt.BrushStyle.BDiagPattern))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(glass, 4, 4)
    if high > 0:
        painter.drawLine(QPointF(4, 48 - high), QPointF(26, 48 - high))
    if old:
        painter.setPen(QPen(QColor(colours.closing), 2))
        painter.setBrush(QColor(colours.sheet))
        points = [QPointF(20, 2), QPointF(32, 2), QPointF(32, 18), QPointF(26, 13), QPointF(20, 18)]
        painter.drawPolygon(points)
    painter.restore()
