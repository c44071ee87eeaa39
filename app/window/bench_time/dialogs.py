"""What is asked when recurring hours, holidays or one more stretch are put in."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

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
    whole,
)
from app.window.forms.form import FormDialog, keep
from app.window.forms.moment_fields import ClockField
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


class RuleDialog(FormDialog):
    """Recurring hours: weekdays, from when to when, and how many people."""

    def __init__(
        self, session: Session, hours: DayHours, old: Recurring | None, today: date, parent: QWidget
    ) -> None:
        titles = {
            DayHours.BENCH: words.tr("Bench time every week"),
            DayHours.QUIET: words.tr("Quiet hours every week"),
            DayHours.DAYLIGHT: words.tr("Daylight every week"),
        }
        super().__init__(titles[hours], parent, self._try)
        self._session, self._hours, self._old = session, hours, old
        start, end, days = USUAL[hours]
        self._rule = old or Recurring(
            rule=bench_time_edits.weekly_rule(days), since=today, start=start, end=end
        )
        form = self.page("")
        chosen = bench_time_edits.weekly_days(self._rule)
        self.days = Weekdays(chosen or ())
        if chosen is None:
            form.put(text(self.tr("By the rule {rule}").format(rule=self._rule.rule)))
        else:
            form.add("rule", self.tr("&On"), self.days)
        self.start, self.end = ClockField(self._rule.start), ClockField(self._rule.end)
        self.since = date_edit()
        set_day(self.since, self._rule.since)
        self.people = whole(self._rule.people, 1, 2)
        form.add("start", self.tr("&From"), self.start)
        form.add("end", self.tr("&Until"), self.end, self.tr("Until the next day if not later"))
        form.add("since", self.tr("&Beginning on"), self.since)
        if hours is DayHours.BENCH:
            form.add("people", self.tr("&People at the bench"), self.people)
        self.fit(380)

    def rule(self) -> Recurring:
        """Return what was filled in; `Refused` if it is not sound."""
        rule = self._rule.rule
        if bench_time_edits.weekly_days(self._rule) is not None:
            rule = bench_time_edits.weekly_rule(self.days.chosen())
        return replace(
            self._rule,
            rule=rule,
            since=day_of(self.since),
            start=hours_of(self.start),
            end=hours_of(self.end),
            people=self.people.value(),
        )

    def _try(self) -> Refused | None:
        def make(book: Book) -> Edit:
            if self._old is None:
                return bench_time_edits.add_rule(book, self._hours, self.rule())
            return bench_time_edits.change_rule(book, self._hours, self._old, self.rule())

        return keep(self._session, make)


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


class ExtraDialog(FormDialog):
    """One stretch beside the rules."""

    def __init__(self, session: Session, old: Extra | None, day: date, parent: QWidget) -> None:
        super().__init__(words.tr("One more session"), parent, self._try)
        self._session, self._old = session, old
        zone = session.zone
        start = old.start.astimezone(zone) if old else datetime.combine(day, time(10), zone)
        end = old.end.astimezone(zone) if old else datetime.combine(day, time(12), zone)
        self.day = date_edit()
        set_day(self.day, start.date())
        self.start, self.end = ClockField(f"{start:%H:%M}"), ClockField(f"{end:%H:%M}")
        self.people = whole(old.people if old else 1, 1, 2)
        form = self.page("")
        form.add("day", self.tr("&Day"), self.day)
        form.add("start", self.tr("&From"), self.start)
        form.add("end", self.tr("&Until"), self.end, self.tr("Until the next day if not later"))
        form.add("people", self.tr("&People at the bench"), self.people)
        self.fit(360)

    def filled(self, zone: ZoneInfo) -> Extra:
        """Return what was filled in; `Refused` if it is not sound."""
        day = day_of(self.day)
        after = day if clock_of(self.start) < clock_of(self.end) else day + timedelta(days=1)
        return Extra(
            start=datetime.combine(day, clock_of(self.start), zone),
            end=datetime.combine(after, clock_of(self.end), zone),
            people=self.people.value(),
        )

    def _try(self) -> Refused | None:
        zone = self._session.zone
        return keep(
            self._session,
            lambda book: bench_time_edits.put_extra(book, self._old, self.filled(zone)),
        )
