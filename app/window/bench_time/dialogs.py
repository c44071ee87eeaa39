"""What is asked when recurring hours, holidays or one more stretch are put in."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta

from PySide6.QtWidgets import QWidget

from app.service import bench_time_edits
from app.service.bench_time_edits import DayHours
from app.service.edits import Edit
from app.window import words
from app.window.forms.controls import (
    Weekdays,
    clock_of,
    date_edit,
    day_of,
    hours_of,
    set_day,
)
from app.window.forms.form import FormDialog, keep
from app.window.forms.moment_fields import ClockField
from app.window.forms.value_form import ValueDialog
from app.window.labels import text
from app.window.session import Session
from planner.values.bench_time import Extra, Recurring
from planner.values.book import Book
from planner.values.refusal import Refused

USUAL = {
    DayHours.BENCH: ("19:30", "21:30", (2,)),
    DayHours.QUIET: ("22:00", "07:00", tuple(range(7))),
    DayHours.DAYLIGHT: ("09:00", "17:00", tuple(range(7))),
}


class RuleDialog(ValueDialog[Recurring]):
    """Recurring hours: weekdays, from when to when, and how many people."""

    def __init__(
        self, session: Session, hours: DayHours, old: Recurring | None, today: date, parent: QWidget
    ) -> None:
        titles = {
            DayHours.BENCH: words.tr("Bench time every week"),
            DayHours.QUIET: words.tr("Quiet hours every week"),
            DayHours.DAYLIGHT: words.tr("Daylight every week"),
        }
        begin, until, days = USUAL[hours]
        rule = old or Recurring(
            rule=bench_time_edits.weekly_rule(days), since=today, start=begin, end=until
        )

        def make(book: Book, new: Recurring) -> Edit:
            if old is None:
                return bench_time_edits.add_rule(book, hours, new)
            return bench_time_edits.change_rule(book, hours, old, new)

        super().__init__(session, titles[hours], rule, make, parent)
        form = self.page("")
        chosen = bench_time_edits.weekly_days(rule)
        self.days = Weekdays(chosen or ())
        if chosen is None:
            form.put(text(self.tr("By the rule {rule}").format(rule=rule.rule)))
        else:
            self.own(
                form, "rule", self.days, lambda: bench_time_edits.weekly_rule(self.days.chosen())
            )
        start, end = ClockField(rule.start), ClockField(rule.end)
        self.own(form, "start", start, lambda: hours_of(start))
        self.own(form, "end", end, lambda: hours_of(end))
        self.ask(form, "since")
        if hours is DayHours.BENCH:
            self.ask(form, "people")
        self.fit(380)


class AwayDialog(FormDialog):
    """Days on which nobody is at the bench."""

    def __init__(self, session: Session, first: date, parent: QWidget) -> None:
        super().__init__(words.tr("Away from the bench"), parent, self._try)
        self._session = session
        self.first, self.last = date_edit(), date_edit()
        set_day(self.first, first)
        set_day(self.last, first)
        form = self.page("")
        form.add("first", self.tr("&First day"), self.first)
        form.add("last", self.tr("&Last day"), self.last)
        form.put(text(self.tr("Extra sessions on these days stay.")))
        self.first.day_changed.connect(self._follow)
        self.fit(360)

    def _follow(self) -> None:
        if self.last.date() < self.first.date():
            self.last.setDate(self.first.date())

    def _try(self) -> Refused | None:
        first, last = day_of(self.first), day_of(self.last)
        return keep(self._session, lambda book: bench_time_edits.skip_dates(book, first, last))


class ExtraDialog(ValueDialog[Extra]):
    """One stretch beside the rules."""

    def __init__(self, session: Session, old: Extra | None, day: date, parent: QWidget) -> None:
        zone = session.zone
        begin, until = datetime.combine(day, time(10), zone), datetime.combine(day, time(12), zone)
        super().__init__(
            session,
            words.tr("One more session"),
            old or Extra(start=begin, end=until),
            lambda book, new: bench_time_edits.put_extra(book, old, new),
            parent,
        )
        begin, until = self._first.start.astimezone(zone), self._first.end.astimezone(zone)
        self.day = date_edit()
        set_day(self.day, begin.date())
        self.start, self.end = ClockField(f"{begin:%H:%M}"), ClockField(f"{until:%H:%M}")
        form = self.page("")
        form.add("day", self.tr("&Day"), self.day)
        self.own(form, "start", self.start, self._start)
        self.own(form, "end", self.end, self._end)
        self.ask(form, "people")
        self.fit(360)

    def _start(self) -> datetime:
        return datetime.combine(day_of(self.day), clock_of(self.start), self._session.zone)

    def _end(self) -> datetime:
        """Return the end: on the next day if it is not later."""
        more = timedelta(days=clock_of(self.start) >= clock_of(self.end))
        return datetime.combine(day_of(self.day) + more, clock_of(self.end), self._session.zone)
