"""The band of a date: from when it is even odds to when it is nearly sure."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter, QPen

from app.window.palette import Colours

EDGE = 1.4  # of the tick that says four in five [px]


def paint_band(
    painter: QPainter, colours: Colours, xs: tuple[float, float, float], top: float, height: float
) -> None:
    """Paint the band of a date between even odds, four in five and 19 in 20.

    It is full until four in five, where a tick stands, and a bare outline from
    there on, so that it can be read without its colour.

    Parameters
    ----------
    xs
        Where the three lie [px].
    """
    half, most, nearly = xs
    painter.save()
    painter.setPen(QPen(colours.colour("focus"), 1))
    painter.drawRect(QRectF(most, top, max(0.0, nearly - most), height))
    painter.setBrush(colours.colour("drying"))
    painter.drawRect(QRectF(half, top, max(0.0, most - half), height))
    painter.setPen(QPen(colours.colour("ink"), EDGE))
    painter.drawLine(QPointF(most, top - 3), QPointF(most, top + height + 3))
    painter.restore()
