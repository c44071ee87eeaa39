"""A logger's table before it is taken in: how it is read, what day it makes, what it changes."""

from __future__ import annotations

from collections.abc import Callable
from threading import Event

from PySide6.QtCore import QObject, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QCheckBox, QDialogButtonBox, QWidget

from app.service.air_from_log import Taken, take_air, usual_day
from app.service.air_log import AirLog, LogFormat, read_air_log, winter_time
from app.service.edits import Edit
from app.window import words
from app.window.forms.controls import choice
from app.window.forms.form import FormDialog, keep
from app.window.labels import text
from app.window.message_translation import translated
from app.window.session import Session
from app.window.worker import Worker
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.refusal import Refused
from planner.values.room import AirPoint

DAY_MINUTES = 1440
SHOWN = 4  # films and gaps that are told one by one


class UsualDayCurve(QWidget):
    """The usual day as two lines: temperature above, humidity below."""

    def __init__(self) -> None:
        super().__init__()
        self._points: tuple[AirPoint, ...] = ()
        self.setMinimumHeight(90)
        self.setAccessibleName(self.tr("The usual day"))

    def sizeHint(self) -> QSize:
        """Return a size in which a day is read."""
        return QSize(420, 110)

    def show_day(self, points: tuple[AirPoint, ...]) -> None:
        """Draw another day."""
        self._points = points
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw each line in its own half, with its least and most beside it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        half = self.height() / 2
        lines = (
            ([point.temperature_c for point in self._points], self.tr("°C")),
            ([point.humidity_pct for point in self._points], self.tr("%")),
        )
        said = [_span(values, unit) for values, unit in lines if values]
        wide = max((self.fontMetrics().horizontalAdvance(one) for one in said), default=0) + 12
        for at, (values, _) in enumerate(lines if said else ()):
            rect = QRectF(0, at * half + 4, self.width(), half - 8)
            painter.setPen(self.palette().color(self.foregroundRole()))
            side = Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft
            painter.drawText(QRectF(0, rect.top(), wide, rect.height()), side, said[at])
            painter.setPen(QPen(painter.pen().color(), 2))
            painter.drawPolyline(self._line(rect.adjusted(wide, 0, -8, 0), values))
        painter.end()
        event.accept()

    def _line(self, rect: QRectF, values: list[float]) -> QPolygonF:
        low, high = min(values), max(values)
        span = max(high - low, 0.1)
        line = QPolygonF()
        for point, value in zip(self._points, values, strict=True):
            minute = int(point.at[:2]) * 60 + int(point.at[3:])
            across = rect.left() + rect.width() * minute / DAY_MINUTES
            line.append(QPointF(across, rect.bottom() - (value - low) / span * rect.height()))
        return line


def _span(values: list[float], unit: str) -> str:
    """Return the least and the most of some values."""
    return words.fill(
        words.tr("{low:g} to {high:g} {unit}"), low=min(values), high=max(values), unit=unit
    )


class _Answers(QObject):
    read = Signal(int, object, object)
    came = Signal(int, object)
    failed = Signal(int, str, bool)


class AirLogDialog(FormDialog):
    """How the table is read can be said; what it would change is told before it is taken."""

    def __init__(self, session: Session, data: bytes, name: str, parent: QWidget) -> None:
        super().__init__(words.tr("Air from {file}").format(file=name), parent, self._try)
        self._session, self._data = session, data
        self.log: AirLog | None = None
        self.taken: Taken | None = None
        self._serial = 0
        self._worker = Worker()
        self._stopped = Event()
        self._answers = _Answers()
        self._answers.read.connect(self._show_read)
        self._answers.came.connect(self._show_taken)
        self._answers.failed.connect(self._show_failed)
        book = session.book
        locations = book.room.locations if book else ()
        own = book.bench_time.zone if book else "UTC"
        self.location = choice([(one.name, one.name) for one in locations])
        self.unit = choice(
            [(self.tr("as the file says"), None), (self.tr("°C"), False), (self.tr("°F"), True)]
        )
        self.order = choice(
            [
                (self.tr("as the file tells"), None),
                (self.tr("day first"), True),
                (self.tr("month first"), False),
            ]
        )
        zones = [(own, own), (self.tr("UTC"), "UTC")]
        if (winter := winter_time(zone_named(own), session.now)) is not None:
            zones.insert(1, (self.tr("winter time all year"), winter))
        self.zone = choice(zones)
        self.day = QCheckBox(self.tr("Make the usual day of it"))
        self.films = QCheckBox(self.tr("Keep what it was while films dried"))
        for box in (self.day, self.films):
            box.setChecked(True)
        self.read, self.curve, self.changes = text(""), UsualDayCurve(), text("")
        self._fill()
        self.fit(520, 640)
        self._look()

    def _fill(self) -> None:
        tr = self.tr
        form = self.page(tr("Air"))
        form.add("location", tr("&The logger lay at"), self.location)
        form.add("temperature", tr("Te&mperatures"), self.unit)
        form.add("time", tr("&Dates like 05/03"), self.order)
        form.add("zone", tr("Time &zone, where it gives no offset"), self.zone)
        form.put(self.read)
        form.put(self.curve)
        form.add("day", tr("Usual day"), self.day)
        form.add("films", tr("Films"), self.films)
        form.put(self.changes)
        take = self.buttons.button(QDialogButtonBox.StandardButton.Save)
        take.setText(tr("Ta&ke it"))
        take.setDefault(True)
        for box in (self.location, self.unit, self.order, self.zone):
            box.currentIndexChanged.connect(lambda _at: self._look())
        for tick in (self.day, self.films):
            tick.toggled.connect(lambda _on: self._look())
        self.finished.connect(lambda _result: self._stop())

    def wait(self) -> None:
        """Wait until what it would change is known."""
        self._worker.wait()

    def _stop(self) -> None:
        self._serial += 1
        self._stopped.set()

    def _look(self) -> None:
        """Read the table as is said, and tell what it holds and would change."""
        self._stop()
        self.log = self.taken = None
        self.buttons.button(QDialogButtonBox.StandardButton.Save).setEnabled(False)
        book = self._session.book
        if book is None:
            return
        asked = LogFormat(
            zone_named(str(self.zone.currentData())),
            self.unit.currentData(),
            self.order.currentData(),
        )
        self.read.setText(self.tr("Reading…"))
        self.changes.setText("")
        make, zone = self._take(), self._session.zone
        serial, stopped = self._serial, Event()
        self._stopped = stopped

        def job() -> None:
            if stopped.is_set():
                return
            known = False
            try:
                log = read_air_log(self._data, asked)
                self._answers.read.emit(serial, log, usual_day(log, zone)[0])
                known = True
                if not stopped.is_set():
                    self._answers.came.emit(serial, make(book, log))
            except Refused as refused:
                self._answers.failed.emit(serial, translated(refused.line), known)

        self._worker.start(job)

    def _show_read(self, serial: int, log: AirLog, workdays: tuple[AirPoint, ...]) -> None:
        if serial == self._serial:
            self.log = log
            self.read.setText(self._told(log))
            self.curve.show_day(workdays)
            self.changes.setText(words.tr("Planning…"))

    def _show_failed(self, serial: int, why: str, known: bool) -> None:
        if serial != self._serial:
            return
        if known:
            self.changes.setText(why)
        else:
            self.read.setText(why)
            self.curve.show_day(())

    def _told(self, log: AirLog) -> str:
        zone, now = self._session.zone, self._session.now
        ends = (log.samples[0], log.samples[-1])
        first, last = (words.day(moment_of(one.minute, zone)) for one in ends)
        lines = [
            self.tr("{n} moments from {first} to {last}, one every {minutes} min.").format(
                n=len(log.samples), first=first, last=last, minutes=log.every
            )
        ]
        for gap in log.gaps[:SHOWN]:
            told = self.tr("A gap from {start} to {end}.")
            start, end = (words.when(minute, zone, now) for minute in (gap.start, gap.end))
            lines.append(told.format(start=start, end=end))
        if len(log.gaps) > SHOWN:
            lines.append(self.tr("{n} more gaps.").format(n=len(log.gaps) - SHOWN))
        if log.twice:
            told = self.tr("{n} lines of a minute that was there already.")
            lines.append(told.format(n=log.twice))
        return "\n".join(lines)

    def _take(self) -> Callable[[Book, AirLog], Taken]:
        place, now = str(self.location.currentData()), self._session.now
        day, films = self.day.isChecked(), self.films.isChecked()
        return lambda book, log: take_air(book, log, place, day=day, films=films, now=now)

    def _show_taken(self, serial: int, taken: Taken) -> None:
        if serial != self._serial:
            return
        self.taken = taken
        self.buttons.button(QDialogButtonBox.StandardButton.Save).setEnabled(True)
        lines = [
            words.fill(
                self.tr("The usual day: {c:g} °C, {rh:g} % RH; it was {wc:g} °C, {wrh:g} %."),
                c=taken.becomes[0],
                rh=taken.becomes[1],
                wc=taken.was[0],
                wrh=taken.was[1],
            )
        ]
        if taken.readings:
            told = self.tr("{n} readings are kept, in the place of {old}.")
            lines.append(told.format(n=taken.readings, old=taken.replaced))
        zone, now = self._session.zone, self._session.now
        for moved in taken.moved[:SHOWN]:
            before, after = (
                self.tr("never") if minute is None else words.when(minute, zone, now)
                for minute in (moved.before, moved.after)
            )
            told = self.tr("{model}, {place}: dry to handle {after}, not {before}.")
            lines.append(
                told.format(model=moved.key.model, place=moved.place, after=after, before=before)
            )
        if len(taken.moved) > SHOWN:
            lines.append(self.tr("{n} more films.").format(n=len(taken.moved) - SHOWN))
        self.changes.setText("\n".join(lines))

    def _try(self) -> Refused | None:
        if self.log is None:
            return Refused("", self.read.text())
        log, make = self.log, self._take()

        def edit(book: Book) -> Edit:
            return make(book, log).edit

        return keep(self._session, edit)
