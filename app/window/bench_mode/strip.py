"""The stretch of bench time as one strip: strokes of work, shaded up to now."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window import mark_drawing
from app.window.palette import Colours
from planner.tonight import RunSheet, WorkRow


class StretchStrip(QWidget):
    """What is done when in this stretch; now is where the shade ends.

    The clock, the minutes left and the job beside it say the same in words.
    """

    def __init__(self, colours: Colours, scale: float, sheet: RunSheet, now: int) -> None:
        super().__init__()
        self._colours, self._scale, self._sheet, self.now = colours, scale, sheet, now
        self.setFixedHeight(round(26 * scale))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def _x(self, minute: int) -> float:
        whole = self._sheet.interval
        share = (minute - whole.start) / max(1, whole.minutes)
        return self.width() * min(1.0, max(0.0, share))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint thread, strokes and shade."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours, height = self._colours, self.height()
        painter.fillRect(self.rect(), colours.colour("gutter"))
        painter.setPen(QPen(colours.colour("soft", 0.7), 1.6 * self._scale))
        painter.drawLine(0, height // 2, self.width(), height // 2)
        for row in self._sheet.rows:
            left, right = self._x(row.start), self._x(row.free)
            if isinstance(row, WorkRow):
                swatch = row.coats[0].swatch if row.coats else ""
                if row.goes_alone:
                    tail = QRectF(right, 5, self._x(row.end) - right, height - 10)
                    mark_drawing.paint_tail(painter, tail, colours, swatch=swatch)
                rect = QRectF(left + 1, 5, max(4.0, right - left - 2), height - 10)
                mark_drawing.paint_work(
                    painter,
                    rect,
                    colours,
                    swatch=swatch,
                    tool=row.tool,
                    stage=row.stage,
                    name=str(row.key),
                )
            else:
                painter.setPen(QPen(colours.colour("soft"), 1.2 * self._scale))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawEllipse(QRectF((left + right) / 2 - 4, height / 2 - 4, 8, 8))
        past = self._x(self.now)
        if past > 0:
            mark_drawing.paint_past(painter, QRectF(0, 0, past, height), colours)
        painter.end()
        event.accept()
