"""Texts of the strip, laid out once: a repaint writes a hundred, and most of them again."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QStaticText

from app.window import mark_drawing

CUT = Qt.TextElideMode.ElideRight
LEFT = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft


def write(painter: QPainter, left: float, middle: float, text: str, width: float) -> None:
    """Write a text from ``left`` on, cut to a width, in the painter's font and pen."""
    if not mark_drawing.on_screen(painter):  # paper has another measure of a point
        shown = QFontMetricsF(painter.font()).elidedText(text, CUT, width)
        painter.drawText(QRectF(left, middle - 10, width, 20), LEFT, shown)
        return
    laid, high = _laid(text, int(width), painter.font().key())
    painter.drawStaticText(QPointF(left, middle - high / 2), laid)


@lru_cache(maxsize=4096)
def _laid(text: str, width: int, font_key: str) -> tuple[QStaticText, float]:
    font = QFont()
    font.fromString(font_key)
    metrics = QFontMetricsF(font)
    laid = QStaticText(metrics.elidedText(text, CUT, width))
    laid.setTextFormat(Qt.TextFormat.PlainText)
    laid.setPerformanceHint(QStaticText.PerformanceHint.AggressiveCaching)
    laid.prepare(font=font)
    return laid, metrics.height()
