"""Changes of bench time: every week, or once."""

from __future__ import annotations

from datetime import date, datetime, time

from PySide6.QtCore import QDate, QLocale, QTime

from app.service import what_if
from app.service.what_if import TriedChange
from app.window import words
from app.window.forms.moment_fields import DateField
from app.window.what_if.change_form import HOURS, ChangeForm
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named


class EveningForm(ChangeForm):
    """Bench time on one more weekday."""

    def __init__(self) -> None:
        super().__init__()
        self.day = self.box(self.tr("Weekday"))
        for day in range(7):
            self.day.addItem(QLocale().dayName(day + 1, QLocale.FormatType.LongFormat), day)
        self.start = self.clock(self.tr("From"), "19:30")
        self.end = self.clock(self.tr("To"), "21:30")
        self._since = date(2026, 1, 1)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("One evening more in the week")

    def show_book(self, book: Book, now: int) -> None:
        """Count from today."""
        self._since = moment_of(now, zone_named(book.bench_time.zone)).date()

    def change(self) -> TriedChange:
        """Return the change that the fields say."""
        return what_if.OneMoreEvening(
            weekday=int(self.day.currentData()),
            start=self.start.time().toString(HOURS),
            end=self.end.time().toString(HOURS),
            since=self._since,
        )

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("bench time every {day} {start}–{end}").format(
            day=self.day.currentText(),
            start=self.start.time().toString(HOURS),
            end=self.end.time().toString(HOURS),
        )


class OnceForm(ChangeForm):
    """One stretch beside the rules."""

    def __init__(self) -> None:
        super().__init__()
        self.day = DateField(self.tr("Date"))
        self.fields.addRow(self.tr("Date"), self.day)
        self.start = self.clock(self.tr("From"), "10:00")
        self.end = self.clock(self.tr("To"), "13:00")
        self._zone = zone_named("UTC")
        self._shown = False

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("One session more")

    def show_book(self, book: Book, now: int) -> None:
        """Begin at tomorrow."""
        self._zone = zone_named(book.bench_time.zone)
        if not self._shown:
            self._shown = True
            tomorrow = moment_of(now + 1440, self._zone)
            self.day.setDate(QDate(tomorrow.year, tomorrow.month, tomorrow.day))

    def _moment(self, at: QTime) -> datetime:
        day = self.day.date()
        on = date(day.year(), day.month(), day.day())
        return datetime.combine(on, time(at.hour(), at.minute()), self._zone)

    def change(self) -> TriedChange:
        """Return the change that the fields say."""
        return what_if.Once(self._moment(self.start.time()), self._moment(self.end.time()))

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("bench time on {day} {start}–{end}").format(
            day=words.day(self._moment(self.start.time())),
            start=self.start.time().toString(HOURS),
            end=self.end.time().toString(HOURS),
        )
