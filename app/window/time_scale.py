"""One scale of time for several films, and their wedges on it."""

from __future__ import annotations

from dataclasses import dataclass
from zoneinfo import ZoneInfo

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window import mark_drawing, words
from app.window.palette import Colours
from app.window.wedge_geometry import wedge_outline

EDGE = 6  # pixels at both ends
STEPS = (60, 120, 180, 360, 720, 1440, 2880, 7 * 1440)  # between two marks [min]


@dataclass(frozen=True)
class TimeScale:
    """From one minute to another, over the width of whatever is painted."""

    start: int
    end: int

    def x(self, minute: int, width: int) -> float:
        """Return where a minute lies; what lies outside is at the edge."""
        return min(width - EDGE, max(float(EDGE), self.beyond(minute, width)))

    def beyond(self, minute: int, width: int) -> float:
        """Return where a minute lies, or would lie outside."""
        share = (minute - self.start) / max(1, self.end - self.start)
        return EDGE + (width - 2 * EDGE) * share

    def step(self, width: int, room: float) -> int:
        """Return how far apart marks of ``room`` pixels can stand [min]."""
        span = max(1, self.end - self.start)
        return next((step for step in STEPS if step / span * width > room), STEPS[-1])


class ScaleLine(QWidget):
    """The hours above wedges."""

    def __init__(self, scale: TimeScale, colours: Colours, zone: ZoneInfo) -> None:
        super().__init__()
        self._scale, self._colours, self._zone = scale, colours, zone
        self.setFixedHeight(self.fontMetrics().height() + 2)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Write "now" and the hours that have room."""
        painter = QPainter(self)
        painter.setPen(self._colours.colour("soft"))
        metrics, scale, reached = painter.fontMetrics(), self._scale, 0.0
        room = metrics.horizontalAdvance("00:00") + 14.0
        step = scale.step(self.width(), room)
        first = -(-scale.start // step) * step
        for at in (scale.start, *range(first, scale.end + 1, step)):
            told = words.tr("now") if at == scale.start else self._told(at)
            wide = metrics.horizontalAdvance(told)
            x = min(max(0.0, scale.x(at, self.width()) - wide / 2), self.width() - wide - 1.0)
            if x < reached:
                continue
            painter.drawText(
                QRectF(x, 0, wide + 2, self.height()), Qt.AlignmentFlag.AlignVCenter, told
            )
            reached = x + wide + 8
        painter.end()
        event.accept()

    def _told(self, minute: int) -> str:
        at = words.clock(minute, self._zone)
        if self._scale.end - self._scale.start <= 1440:
            return at
        return words.when(minute, self._zone, self._scale.start)


class ScaledWedge(QWidget):
    """A film on the scale: from when it was laid, or now, to when it opens; None for never."""

    def __init__(self, scale: TimeScale, colours: Colours, since: int, opens: int | None) -> None:
        super().__init__()
        self._scale, self._colours = scale, colours
        self._since, self._opens = since, opens
        self.setFixedHeight(18)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the line of time, the wedge and its ring."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours, scale, middle = self._colours, self._scale, self.height() / 2
        painter.setPen(QPen(colours.colour("rule"), 1))
        painter.drawLine(EDGE, round(middle), self.width() - EDGE, round(middle))
        right = scale.x(scale.end if self._opens is None else self._opens, self.width())
        left = scale.beyond(self._since, self.width())
        end = right + 8 * self.width() if self._opens is None else right
        corners = wedge_outline(left, end, middle, 13, right, max(left, float(EDGE)))
        mark_drawing.paint_wedge(painter, corners, colours, strong=True)
        if self._opens is not None:
            mark_drawing.paint_ring(painter, right, middle, colours, 4)
        painter.end()
        event.accept()
