"""What the marks of the weeks mean."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.window.bench_time.drawing import paint_trough
from app.window.bench_time.weeks_ahead import Bar
from app.window.flow_layout import FlowLayout
from app.window.labels import text
from app.window.palette import LIGHT, Colours
from planner.values.moment import Interval


class Sample(QWidget):
    """One mark as it is drawn in the weeks."""

    def __init__(self, kind: str) -> None:
        super().__init__()
        self.kind = kind
        self.colours = LIGHT
        self.setFixedSize(QSize(30, 18))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        rect = QRectF(self.rect()).adjusted(1, 2, -1, -3)
        colours = self.colours
        if self.kind == "quiet":
            painter.fillRect(rect, QBrush(colours.colour("soft", 0.7), Qt.BrushStyle.FDiagPattern))
        elif self.kind == "daylight":
            painter.setPen(QPen(colours.colour("caution"), 3))
            painter.drawLine(
                QPointF(rect.left(), rect.bottom() - 1), QPointF(rect.right(), rect.bottom() - 1)
            )
        else:
            planned = {"trough": 0, "two": 0}.get(self.kind, 60)
            people = 2 if self.kind == "two" else 1
            bar = Bar(Interval(0, 100), people, planned, 0, extra=False)
            paint_trough(painter, rect, bar, colours)
        painter.end()
        event.accept()


class Legend(QWidget):
    """Marks with their words, in lines that break."""

    def __init__(self) -> None:
        super().__init__()
        self.samples: list[Sample] = []
        flow = FlowLayout(self, across=14, down=2)
        for kind, name in (
            ("trough", self.tr("bench time")),
            ("planned", self.tr("filled as far as planned")),
            ("two", self.tr("two people")),
            ("quiet", self.tr("quiet hours")),
            ("daylight", self.tr("daylight")),
        ):
            holder = QWidget()
            line = QHBoxLayout(holder)
            line.setContentsMargins(0, 0, 0, 0)
            line.setSpacing(5)
            sample = Sample(kind)
            self.samples.append(sample)
            line.addWidget(sample)
            line.addWidget(text(name, size=0.9, wrap=False))
            flow.addWidget(holder)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        for sample in self.samples:
            sample.colours = colours
            sample.update()
