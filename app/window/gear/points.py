"""The air of a day, point by point, with its course drawn beside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSignalBlocker, QSize, Qt, QTime
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.window import words
from app.window.forms.controls import hours_of, number
from app.window.forms.moment_fields import HOURS, ClockField
from app.window.forms.row_list import FormRow, RowList
from app.window.labels import text
from app.window.palette import LIGHT, Colours
from planner.values.room import COLDEST_C, HOTTEST_C, AirPoint

DAY = 1440


class DayCurve(QWidget):
    """Temperature and humidity over a day, midnight to midnight."""

    def __init__(self, colours: Colours) -> None:
        super().__init__()
        self._points: tuple[AirPoint, ...] = ()
        self.colours = colours
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFixedHeight(96)
        self.setAccessibleName(self.tr("Course of the air over the day"))

    def sizeHint(self) -> QSize:
        """Return a size in which a day can be read."""
        return QSize(320, 96)

    def show_points(self, points: Sequence[AirPoint]) -> None:
        """Show another day."""
        self._points = tuple(sorted(points, key=lambda point: point.at))
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint both courses with their names."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        rect = QRectF(self.rect()).adjusted(1, 4, -1, -18)
        painter.fillRect(rect, self.colours.colour("gutter"))
        painter.setPen(self.colours.colour("soft"))
        for hour in range(0, 25, 6):
            x = rect.left() + rect.width() * hour / 24
            label = QRectF(x - 20, rect.bottom(), 40, 17)
            label.moveLeft(min(max(0.0, label.left()), self.width() - 40))
            side = {0: Qt.AlignmentFlag.AlignLeft, 24: Qt.AlignmentFlag.AlignRight}
            painter.drawText(label, side.get(hour, Qt.AlignmentFlag.AlignHCenter), str(hour))
        if self._points:
            warm = [(_minute(point.at), point.temperature_c) for point in self._points]
            damp = [(_minute(point.at), point.humidity_pct) for point in self._points]
            self._line(painter, rect, damp, (0, 100), "drying", Qt.PenStyle.DashLine)
            self._line(painter, rect, warm, _span(warm), "closing", Qt.PenStyle.SolidLine)
        painter.end()
        event.accept()

    def _line(
        self,
        painter: QPainter,
        rect: QRectF,
        points: list[tuple[int, float]],
        scale: tuple[float, float],
        colour: str,
        style: Qt.PenStyle,
    ) -> None:
        low, high = scale
        inner = rect.adjusted(0, 6, 0, -6)
        first, last = points[0], points[-1]
        around = [(last[0] - DAY, last[1]), *points, (first[0] + DAY, first[1])]
        drawn = [
            QPointF(
                rect.left() + rect.width() * minute / DAY,
                inner.bottom() - inner.height() * (value - low) / (high - low),
            )
            for minute, value in around
        ]
        painter.save()
        painter.setClipRect(rect)
        painter.setPen(QPen(self.colours.colour(colour), 2, style))
        painter.drawPolyline(drawn)
        painter.restore()


class PointRow(FormRow):
    """The controls of one point."""

    def __init__(self) -> None:
        super().__init__()
        tr = words.tr
        self.at = ClockField("00:00", tr("Time of day"))
        self.warm = number(20, COLDEST_C, HOTTEST_C, decimals=1, suffix=tr(" °C"), step=0.5)
        self.warm.setAccessibleName(tr("Temperature at this time"))
        self.damp = number(50, 0, 100, suffix=tr(" % RH"))
        self.damp.setAccessibleName(tr("Humidity at this time"))
        self.drop = self.cross(tr("Remove this point"))
        self.across(self.at, self.warm, self.damp, self.drop).addStretch(1)
        self.setFocusProxy(self.at)
        self.at.clock_changed.connect(self.changed)
        for box in (self.warm, self.damp):
            box.valueChanged.connect(self.changed)

    def show_point(self, point: AirPoint) -> None:
        """Show a point without telling anybody."""
        blocked = QSignalBlocker(self)
        self.at.setTime(QTime.fromString(point.at, HOURS))
        self.warm.setValue(point.temperature_c)
        self.damp.setValue(point.humidity_pct)
        blocked.unblock()

    def point(self) -> AirPoint:
        """Return what the controls say."""
        return AirPoint(
            at=hours_of(self.at),
            temperature_c=round(self.warm.value(), 1),
            humidity_pct=round(self.damp.value(), 1),
        )


class PointsEditor(RowList[PointRow]):
    """Points of a day's air, one below the other; in between it changes evenly."""

    def __init__(self, points: Sequence[AirPoint], colours: Colours = LIGHT) -> None:
        super().__init__(PointRow, self.tr("Add a point"), self._next)
        self.curve = DayCurve(colours)
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        told = text(self.tr("Full line: temperature. Broken line: humidity."), size=0.9)
        column.insertWidget(0, self.curve)
        column.insertWidget(1, told)
        self.changed.connect(lambda: self.curve.show_points(self.points()))
        self.show_points(points)

    def show_points(self, points: Sequence[AirPoint]) -> None:
        """Show other points."""
        for row, point in zip(self.put(len(points)), points, strict=True):
            row.show_point(point)
        self.changed.emit()

    def points(self) -> tuple[AirPoint, ...]:
        """Return the points in order of time; `Refused` if one is none."""
        return tuple(sorted((row.point() for row in self.rows), key=lambda point: point.at))

    def _next(self, row: PointRow) -> None:
        """Let a point that was added lie six hours after the last."""
        if len(self.rows) > 1:
            last = self.rows[-2].point()
            hour = (_minute(last.at) // 60 + 6) % 24
            row.show_point(replace(last, at=f"{hour:02d}:00"))


def _minute(at: str) -> int:
    return int(at[:2]) * 60 + int(at[3:])


def _span(values: list[tuple[int, float]]) -> tuple[float, float]:
    """Return a scale with room around the values, at least 10 K."""
    low, high = (find(value for _, value in values) for find in (min, max))
    middle, half = (low + high) / 2, max(5.0, (high - low) * 0.7)
    return middle - half, middle + half
