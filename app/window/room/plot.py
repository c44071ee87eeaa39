"""One film's course through the night, drawn."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window import mark_drawing, words
from app.window.palette import LIGHT, Colours
from app.window.room.drying_times import FilmCourse
from planner.values.moment import moment_of

LEFT, RIGHT, TOP, BOTTOM = 18.0, 210.0, 16.0, 30.0
VCENTRE = Qt.AlignmentFlag.AlignVCenter


def spread(wanted: list[float], gap: float, top: float, bottom: float) -> list[float]:
    """Return places near the wanted ones, in the same order, at least ``gap`` apart."""
    placed: list[float] = []
    for at in wanted:
        placed.append(max(at, placed[-1] + gap if placed else top))
    over = (placed[-1] - bottom) if placed else 0.0
    if over > 0:
        limit = bottom
        for index in range(len(placed) - 1, -1, -1):
            placed[index] = min(placed[index], limit)
            limit = placed[index] - gap
    return placed


class CoursePlot(QWidget):
    """The curve, its states as rings, closings as brackets, and the temperature beside it."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._colours = LIGHT
        self._course: FilmCourse | None = None
        self._zone = ZoneInfo("UTC")
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(190)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.update()

    def show_course(self, course: FilmCourse | None, zone: ZoneInfo) -> None:
        """Show another film."""
        self._course, self._zone = course, zone
        self.setAccessibleName(self.sentence())
        self.update()

    def sentence(self) -> str:
        """Return the course in words."""
        course = self._course
        if course is None:
            return self.tr("No coating is chosen.")
        told = [
            self.tr("{state} {time}").format(
                state=words.state_word(state.state.value),
                time=self.tr("never")
                if state.nominal is None
                else words.when(state.nominal, self._zone, course.laid),
            )
            for state in course.states
        ]
        told += [
            self.tr("recoat window closes {time}").format(
                time=words.when(at, self._zone, course.laid)
            )
            for at in course.closes
        ]
        return self.tr("{coating}: {states}").format(
            coating=course.coating.name, states=", ".join(told)
        )

    def sizeHint(self) -> QSize:
        """Return a size for a night."""
        return QSize(760, 280)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the course."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        area = QRectF(LEFT, TOP, self.width() - LEFT - RIGHT, self.height() - TOP - BOTTOM)
        if self._course is not None and area.width() > 60 and area.height() > 60:
            font = QFont(self.font())
            font.setPointSizeF(font.pointSizeF() * 0.9)
            painter.setFont(font)
            _Drawing(painter, self._course, self._colours, self._zone, area).draw()
        painter.end()
        event.accept()


class _Drawing:
    """One painting of a course."""

    def __init__(
        self, painter: QPainter, course: FilmCourse, colours: Colours, zone: ZoneInfo, area: QRectF
    ) -> None:
        self.painter, self.course, self.colours = painter, course, colours
        self.zone, self.area = zone, area
        self.taken: list[QRectF] = []  # by words inside the plot

    def x(self, minute: int) -> float:
        course, area = self.course, self.area
        share = (minute - course.laid) / (course.end - course.laid)
        return area.left() + area.width() * min(1.0, max(0.0, share))

    def y(self, progress: float) -> float:
        return self.area.bottom() - self.area.height() * 0.96 * progress

    def draw(self) -> None:
        self.grounds()
        self.hours()
        self.curve()
        self.air()
        self.states()
        self.closings()

    def grounds(self) -> None:
        self.painter.fillRect(self.area, self.colours.colour("gutter"))
        for interval in self.course.bench:
            left, right = self.x(interval.start), self.x(interval.end)
            self.painter.fillRect(
                QRectF(left, self.area.top(), right - left, self.area.height()),
                self.colours.colour("sheet"),
            )

    def hours(self) -> None:
        course, painter = self.course, self.painter
        length = course.end - course.laid
        step = next(s for s in (60, 120, 180, 360, 720, 1440) if length / s <= 9 or s == 1440)
        painter.setPen(self.colours.colour("soft"))
        offset = _local_offset(course.laid, self.zone)
        first = -(-(course.laid + offset) // step) * step - offset
        dates, hours = [], []
        for minute in range(first, course.end + 1, step):
            x = self.x(minute)
            painter.setPen(QPen(self.colours.colour("rule"), 1))
            painter.drawLine(QPointF(x, self.area.top()), QPointF(x, self.area.bottom()))
            name = words.clock(minute, self.zone)
            if name == "00:00":
                dates.append((x, words.day_of(minute, self.zone)))
            else:
                hours.append((x, name))
        self.below([*dates, *hours])

    def below(self, names: list[tuple[float, str]]) -> None:
        """Write names below the plot, the first ones first, where they meet no other."""
        taken: list[QRectF] = []
        metrics = QFontMetricsF(self.painter.font())
        self.painter.setPen(self.colours.colour("soft"))
        for x, name in names:
            wide = metrics.horizontalAdvance(name) + 8
            rect = QRectF(x - wide / 2, self.area.bottom() + 4, wide, 20)
            if not any(rect.intersects(other) for other in taken):
                self.painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, name)
                taken.append(rect)

    def curve(self) -> None:
        points = [
            QPointF(self.x(path_point.minute), self.y(path_point.progress))
            for path_point in self.course.path
        ]
        body = QPainterPath(QPointF(points[0].x(), self.area.bottom()))
        for point in points:
            body.lineTo(point)
        body.lineTo(QPointF(points[-1].x(), self.area.bottom()))
        body.closeSubpath()
        fill = QColor(self.course.coating.swatch)
        fill.setAlphaF(0.55)
        self.painter.fillPath(body, fill)
        self.painter.setPen(QPen(self.colours.colour("ink"), 2))
        self.painter.drawPolyline(points)

    def air(self) -> None:
        """Draw the temperature, dashed, on a scale of its own with its ends written on it."""
        temperatures = [point.temperature_c for point in self.course.air]
        low, high = min(temperatures), max(temperatures)
        room = max(4.0, high - low)
        middle = (low + high) / 2

        def height(value: float) -> float:
            return self.area.top() + self.area.height() * (0.3 - 0.36 * (value - middle) / room)

        points = [
            QPointF(self.x(point.minute), height(point.temperature_c)) for point in self.course.air
        ]
        pen = QPen(self.colours.colour("soft"), 1.5)
        pen.setDashPattern([5, 4])
        self.painter.setPen(pen)
        self.painter.drawPolyline(points)
        ends = {temperatures.index(low): low, temperatures.index(high): high}
        for at, value in ends.items():
            point = points[at]
            text = words.degrees(value)
            width = QFontMetricsF(self.painter.font()).horizontalAdvance(text)
            left = min(max(point.x() - width / 2, self.area.left() + 4), self.area.right() - width)
            below = value == low and high > low
            top = point.y() + 4 if below else point.y() - 20
            rect = self.free(QRectF(left, top, width + 4, 16))
            self.painter.fillRect(rect, self.colours.colour("gutter", 0.8))
            self.painter.drawText(rect, VCENTRE, text)

    def states(self) -> None:
        reached = [
            (self.y(progress), state)
            for state, progress in zip(self.course.states, self.course.progress, strict=True)
            if state.nominal is not None
        ]
        reached.sort(key=lambda pair: (pair[0], -(pair[1].nominal or 0)))
        metrics = QFontMetricsF(self.painter.font())
        gap = metrics.height() + 1
        places = spread([y for y, _ in reached], gap, self.area.top() + 4, self.area.bottom() - 4)
        left = self.area.right() + 14
        for (y, state_times), place in zip(reached, places, strict=True):
            assert state_times.nominal is not None
            shown = state_times.nominal <= self.course.end
            x = self.x(state_times.nominal)
            self.painter.setPen(QPen(self.colours.colour("drying_word", 0.45), 1))
            self.painter.drawLine(QPointF(x, y), QPointF(self.area.right() + 2, y))
            self.painter.drawLine(QPointF(self.area.right() + 2, y), QPointF(left - 2, place))
            if shown and state_times.early is not None and state_times.late is not None:
                self.painter.setPen(QPen(self.colours.colour("drying_word"), 3))
                self.painter.drawLine(
                    QPointF(self.x(state_times.early), y), QPointF(self.x(state_times.late), y)
                )
            if shown:
                mark_drawing.paint_ring(self.painter, x, y, self.colours, 4)
            self.painter.setPen(self.colours.colour("drying_word"))
            name = words.tr("{state} {time}").format(
                state=words.state_word(state_times.state.value),
                time=words.opening(state_times.nominal, self.zone, self.course.laid),
            )
            self.painter.drawText(QRectF(left, place - 9, RIGHT - 16, 18), VCENTRE, name)

    def closings(self) -> None:
        for at in self.course.closes:
            if at > self.course.end:
                continue
            x = self.x(at)
            mark_drawing.paint_bracket(
                self.painter, x, self.area.top() + 2, self.area.bottom() - 2, self.colours
            )
            self.painter.setPen(self.colours.colour("closing_word"))
            name = words.tr("closes {time}").format(
                time=words.closing(at, self.zone, self.course.laid)
            )
            width = QFontMetricsF(self.painter.font()).horizontalAdvance(name)
            left = min(x + 4, self.area.right() - width - 2)
            rect = self.free(QRectF(left, self.area.top() + 1, width + 4, 16))
            self.painter.drawText(rect, VCENTRE, name)

    def free(self, rect: QRectF) -> QRectF:
        """Return room for words, moved down as far as others stand there already."""
        while any(rect.intersects(other) for other in self.taken):
            rect = rect.translated(0, rect.height() / 2)
        self.taken.append(rect)
        return rect


def _local_offset(minute: int, zone: ZoneInfo) -> int:
    """Return how many minutes the wall clock is ahead of UTC."""
    offset = moment_of(minute, zone).utcoffset()
    return 0 if offset is None else int(offset.total_seconds() // 60)
