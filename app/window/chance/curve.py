"""The cumulative curve: what share of all runs is finished by when."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window import words
from app.window.chance_band import paint_band
from app.window.palette import LIGHT, Colours

if TYPE_CHECKING:
    from planner.chance.odds import FinishOdds

SHARES = (0.5, 0.8, 0.95)
HIGH = 150
BAND = 8
LAST_SHARE = 0.98  # the few runs after it would only press the rest together


class CurveWidget(QWidget):
    """A small curve with its guides at even odds, four in five and 19 in 20."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._odds: FinishOdds | None = None
        self._zone: ZoneInfo | None = None
        self._now = 0
        self.colours: Colours = LIGHT
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("How many of all runs are finished by when"))

    def sizeHint(self) -> QSize:
        """Return a small height."""
        return QSize(240, HIGH + 3 * self.fontMetrics().height())

    def show_odds(self, odds: FinishOdds, now: int, zone: ZoneInfo) -> None:
        """Show another finish."""
        self._odds, self._now, self._zone = odds, now, zone
        told = [
            self.tr("{percent} % by {day}").format(
                percent=round(100 * share), day=words.day_of(minute - 1, zone, long=True)
            )
            for share in SHARES
            if (minute := odds.by(share)) is not None
        ]
        self.setAccessibleDescription("; ".join(told))
        self.setToolTip("\n".join(told))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint guides, curve, band and days."""
        event.accept()
        odds, zone = self._odds, self._zone
        end = odds.by(LAST_SHARE) if odds else None
        if odds is None or zone is None or end is None:
            return
        begin = min(int(odds.minutes[0]), end - 1)
        begin -= max(60, (end - begin) // 12)
        letter = self.fontMetrics()
        left = letter.horizontalAdvance("95 %") + 8
        field = QRectF(left, 8, self.width() - left - 10, HIGH - 16)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)

        def x(minute: int) -> float:
            return field.left() + field.width() * (minute - begin) / (end - begin)

        def y(share: float) -> float:
            return field.bottom() - field.height() * share

        self._guides(painter, field, y)
        self._curve(painter, field, odds, begin, end)
        marks = [odds.by(share) for share in SHARES]
        xs = [x(min(minute, end)) for minute in marks if minute is not None]
        if len(xs) == len(SHARES):
            paint_band(painter, self.colours, (xs[0], xs[1], xs[2]), field.bottom() + 6, BAND)
        if odds.target is not None and begin < odds.target < end:
            painter.setPen(QPen(self.colours.colour("closing"), 1.4, Qt.PenStyle.DashLine))
            at = x(odds.target)
            painter.drawLine(QPointF(at, field.top()), QPointF(at, field.bottom()))
        self._days(painter, field, xs, [minute for minute in marks if minute is not None], zone)
        painter.end()

    def _guides(self, painter: QPainter, field: QRectF, y: Callable[[float], float]) -> None:
        painter.setPen(QPen(self.colours.colour("frame"), 1, Qt.PenStyle.DotLine))
        for share in SHARES:
            high = y(share)
            painter.drawLine(QPointF(field.left(), high), QPointF(field.right(), high))
        painter.setPen(self.colours.colour("soft"))
        half = self.fontMetrics().height() / 2
        for share in SHARES:
            high = y(share)
            box = QRectF(0, high - half, field.left() - 6, 2 * half)
            told = words.fill("{n} %", n=round(100 * share))
            painter.drawText(box, Qt.AlignmentFlag.AlignRight, told)

    def _curve(
        self, painter: QPainter, field: QRectF, odds: FinishOdds, begin: int, end: int
    ) -> None:
        path = QPainterPath(QPointF(field.left(), field.bottom()))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        steps = int(max(2, field.width() // 2))
        for step in range(1, steps + 1):
            minute = begin + (end - begin) * step // steps
            across = field.left() + field.width() * step / steps
            path.lineTo(across, field.bottom() - field.height() * odds.chance_by(minute))
        painter.setPen(QPen(self.colours.colour("ink"), 1.8))
        painter.drawPath(path)

    def _days(
        self, painter: QPainter, field: QRectF, xs: list[float], minutes: list[int], zone: ZoneInfo
    ) -> None:
        """Write the days of the three marks, each on a line of its own where they would meet."""
        painter.setPen(self.colours.colour("ink"))
        letter = self.fontMetrics()
        taken = [field.left() - 1e6] * len(SHARES)
        for across, minute in zip(xs, minutes, strict=True):
            told = words.day_of(minute - 1, zone)
            wide = letter.horizontalAdvance(told)
            start = min(max(0.0, across - wide / 2), self.width() - wide - 1.0)
            line = next((at for at, until in enumerate(taken) if until < start), len(taken) - 1)
            taken[line] = start + wide + 6
            top = field.bottom() + 18 + line * letter.height()
            painter.drawText(QRectF(start, top, wide + 1, letter.height()), told)
