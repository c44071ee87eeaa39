"""Weeks as rows and days as cells; a stretch is a trough that fills with planned work."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QWheelEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window import mark_drawing, words
from app.window.bench_time.weeks_ahead import Bar, Day, Weeks
from app.window.forms.controls import day_name
from app.window.palette import LIGHT, Colours
from planner.values.moment import Interval

HEAD = 36  # names of the days, and the hours that the strips run over
LEAST_ROW = 43
TROUGH = 17
LEAST_WIDE = 5.0
SUN = 6  # the line of daylight, and what keeps it off the words below it


class WeeksDrawing(QWidget):
    """The weeks as a drawing; arrow keys go from day to day.

    Signals
    -------
    day_chosen(int)
        The number of the day in the weeks shown.
    moved(int)
        So many weeks later, or earlier, are wanted.
    """

    day_chosen = Signal(int)
    moved = Signal(int)

    def __init__(self) -> None:
        super().__init__()
        self._weeks = Weeks((), (0, 1440))
        self._now = 0
        self._chosen = 0
        self.colours = LIGHT
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:
        """Return a size in which every week can be read."""
        return QSize(620, HEAD + max(1, self._weeks.rows) * 62)

    def minimumSizeHint(self) -> QSize:
        """Return the least size in which every week can be read."""
        row = LEAST_ROW + self._sun_room()
        return QSize(360, HEAD + max(1, self._weeks.rows) * row)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.colours = colours
        self.update()

    def show_weeks(self, weeks: Weeks, now: int) -> None:
        """Show other weeks; the chosen day keeps its place."""
        self._weeks, self._now = weeks, now
        self.updateGeometry()
        self.choose(min(self._chosen, max(0, len(weeks.days) - 1)))

    @property
    def chosen(self) -> int:
        """Number of the day with the frame."""
        return self._chosen

    def choose(self, at: int) -> None:
        """Put the frame around a day, and say what is on it."""
        self._chosen = at
        if at < len(self._weeks.days):
            self.setAccessibleDescription(day_line(self._weeks.days[at]))
        self.update()

    def cell(self, at: int) -> QRectF:
        """Return where a day is drawn."""
        wide = self.width() / 7
        tall = (self.height() - HEAD) / max(1, self._weeks.rows)
        return QRectF(at % 7 * wide, HEAD + at // 7 * tall, wide, tall)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go from day to day, and to other weeks beyond the first and last."""
        keys = Qt.Key
        if event.key() in (keys.Key_PageUp, keys.Key_PageDown):
            self.moved.emit(
                self._weeks.rows if event.key() == keys.Key_PageDown else -self._weeks.rows
            )
            return
        step = {keys.Key_Left: -1, keys.Key_Right: 1, keys.Key_Up: -7, keys.Key_Down: 7}
        if event.key() not in step:
            super().keyPressEvent(event)
            return
        wanted = self._chosen + step[keys(event.key())]
        if wanted < 0 or wanted >= len(self._weeks.days):
            weeks = -1 if wanted < 0 else 1
            wanted -= 7 * weeks
            self.moved.emit(weeks)
        self.choose(wanted)
        self.day_chosen.emit(wanted)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose the day under the mouse."""
        for at in range(len(self._weeks.days)):
            if self.cell(at).contains(event.position()):
                self.choose(at)
                self.day_chosen.emit(at)
                return
        super().mousePressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Go a week up or down."""
        if event.angleDelta().y():
            self.moved.emit(-1 if event.angleDelta().y() > 0 else 1)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint heads, days and the frame around the chosen one."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._paint_head(painter)
        for at, day in enumerate(self._weeks.days):
            self._paint_day(painter, self.cell(at).adjusted(1, 1, -1, -1), day)
        if self._weeks.days:
            frame = self.cell(self._chosen).adjusted(1.5, 1.5, -1.5, -1.5)
            pen = QPen(self.colours.colour("focus"), 2.4 if self.hasFocus() else 1.2)
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(frame, 3, 3)
        painter.end()
        event.accept()

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPointSizeF(font.pointSizeF() * 0.88)
        return font

    def _paint_head(self, painter: QPainter) -> None:
        first, last = (clock % 1440 // 60 for clock in self._weeks.scale)
        hours = f"{first}–{last or 24}"
        for column in range(7):
            rect = QRectF(self.cell(column).left(), 0, self.width() / 7, HEAD).adjusted(6, 2, -4, 0)
            painter.setFont(self.font())
            painter.setPen(self.colours.colour("ink"))
            name = day_name(column)
            painter.drawText(rect, Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft, name)
            painter.setFont(self._small())
            painter.setPen(self.colours.colour("soft"))
            told = self.tr("{hours} h").format(hours=hours)
            painter.drawText(rect, Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft, told)

    def _paint_day(self, painter: QPainter, rect: QRectF, day: Day) -> None:
        colours = self.colours
        painter.fillRect(rect, colours.colour("sheet"))
        strip = self._strip(rect)
        for interval in day.quiet:
            self._hatch(painter, strip, day, interval)
        for interval in day.daylight:
            self._sun(painter, strip, day, interval)
        painter.setPen(QPen(colours.colour("rule"), 1))
        painter.drawLine(strip.bottomLeft(), strip.bottomRight())
        for bar in day.bars:
            self._trough(painter, strip, day, bar)
        if day.start + 1440 <= self._now:
            mark_drawing.paint_past(painter, rect, colours)
        elif day.start <= self._now:
            passed = QRectF(strip)
            passed.setRight(self._x(strip, day.wall(self._now)))
            if passed.width() > 0:
                mark_drawing.paint_past(painter, passed, colours)
        self._paint_words(painter, rect, day)

    def _paint_words(self, painter: QPainter, rect: QRectF, day: Day) -> None:
        colours = self.colours
        inner = rect.adjusted(6, 2, -5, -2)
        today = day.start <= self._now < day.start + 1440
        font = QFont(self._small())
        font.setBold(today)
        painter.setFont(font)
        painter.setPen(colours.colour("ink"))
        date = words.day(day.on).split(" ", 1)[1] if day.on.day == 1 or today else str(day.on.day)
        top = Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft
        painter.drawText(inner, top, date)
        painter.setFont(self._small())
        told = load_words(day)
        room = inner.width()
        fits = [
            name for name in told if QFontMetricsF(painter.font()).horizontalAdvance(name) <= room
        ]
        painter.setPen(colours.colour("ink" if day.planned else "soft"))
        if told:
            bottom = Qt.AlignmentFlag.AlignBottom | Qt.AlignmentFlag.AlignLeft
            painter.drawText(inner, bottom, fits[0] if fits else told[-1])

    def _strip(self, rect: QRectF) -> QRectF:
        letters = QFontMetricsF(self._small()).height()
        room = rect.height() - 4 - 2 * letters - self._sun_room()
        middle = rect.top() + 2 + letters + room / 2
        tall = max(8.0, min(TROUGH, room - 4))
        return QRectF(rect.left() + 5, middle - tall / 2, rect.width() - 10, tall)

    def _sun_room(self) -> int:
        """Return the height that the line of daylight takes below the troughs, if there is any."""
        return SUN if any(day.daylight for day in self._weeks.days) else 0

    def _x(self, strip: QRectF, minute: int) -> float:
        first, last = self._weeks.scale
        share = (minute - first) / (last - first)
        return strip.left() + strip.width() * min(1.0, max(0.0, share))

    def _across(self, strip: QRectF, day: Day, interval: Interval) -> QRectF:
        left = self._x(strip, day.wall(interval.start))
        right = self._x(strip, day.wall(interval.end))
        return QRectF(left, strip.top(), right - left, strip.height())

    def _bar(self, strip: QRectF, day: Day, interval: Interval) -> QRectF:
        """Return where a stretch is drawn; the shortest slot is still seen."""
        rect = self._across(strip, day, interval)
        rect.setWidth(max(LEAST_WIDE, rect.width()))
        return rect

    def _hatch(self, painter: QPainter, strip: QRectF, day: Day, interval: Interval) -> None:
        rect = self._across(strip, day, interval)
        painter.fillRect(rect, QBrush(self.colours.colour("soft", 0.7), Qt.BrushStyle.FDiagPattern))

    def _sun(self, painter: QPainter, strip: QRectF, day: Day, interval: Interval) -> None:
        rect = self._across(strip, day, interval)
        if rect.width() > 0:
            painter.setPen(QPen(self.colours.colour("caution"), 3))
            low = strip.bottom() + 3
            painter.drawLine(QPointF(rect.left(), low), QPointF(rect.right(), low))

    def _trough(self, painter: QPainter, strip: QRectF, day: Day, bar: Bar) -> None:
        rect = self._bar(strip, day, bar.interval)
        paint_trough(painter, rect, bar, self.colours)
        for interval in day.quiet:
            shared = self._across(strip, day, interval).intersected(rect)
            if shared.width() > 0:
                painter.fillRect(
                    shared, QBrush(self.colours.colour("ink", 0.55), Qt.BrushStyle.FDiagPattern)
                )


def paint_trough(painter: QPainter, rect: QRectF, bar: Bar, colours: Colours) -> None:
    """Paint one stretch, filled from the bottom as far as it is planned."""
    painter.fillRect(rect, colours.colour("paper"))
    share = min(1.0, bar.planned / bar.interval.minutes)
    full = QRectF(rect)
    full.setTop(rect.bottom() - rect.height() * share)
    painter.fillRect(full, colours.colour("focus", 0.6))
    painter.setPen(QPen(colours.colour("soft"), 1.2))
    painter.drawPolyline([rect.topLeft(), rect.bottomLeft(), rect.bottomRight(), rect.topRight()])
    if bar.people > 1:  # a second rim, for two at the bench
        inner = rect.adjusted(2.5, 0, -2.5, -2.5)
        painter.drawPolyline(
            [inner.topLeft(), inner.bottomLeft(), inner.bottomRight(), inner.topRight()]
        )


def load_words(day: Day) -> list[str]:
    """Return what is planned of a day's bench time, the longest way to say it first."""
    if not day.bars:
        return [words.tr("away")] if day.away else []
    planned, whole = day.planned, day.minutes
    return [
        words.tr("{planned} of {whole} min").format(planned=planned, whole=whole),
        words.tr("{planned}/{whole}").format(planned=planned, whole=whole),
    ]


def day_line(day: Day) -> str:
    """Return all that is drawn of a day in one sentence."""
    told = [words.day(day.on, long=True)]
    if day.away:
        told.append(words.tr("away"))
    told += [
        words.tr("{start}–{end}, {planned} min planned").format(
            start=words.clock(bar.interval.start, day.zone),
            end=words.clock(bar.interval.end, day.zone),
            planned=bar.planned,
        )
        for bar in day.bars
    ]
    return "; ".join(told) if len(told) > 1 else words.tr("{day}: none").format(day=told[0])
