"""The evenings ahead as an iCalendar file (RFC 5545), for whichever calendar one keeps.

Each stretch of bench time that the plan uses is one event.  Its name, the
UID, follows from the book and the date alone, so that the same file written
again brings events up to date and doubles none: what has changed counts its
SEQUENCE up, what the plan uses no longer is cancelled.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

from icalendar import Alarm, Calendar, Event

from app.service import run_sheet_text, wording
from app.service.calendar_zone import timezone_of
from app.service.sanitize_text import tame
from planner.bench import DAY, BenchCalendar
from planner.tonight import BenchRow, Closing, RunSheet, run_sheets
from planner.values.book import Book
from planner.values.message import Translate, message
from planner.values.message import row as row_of
from planner.values.moment import moment_of
from planner.values.plan import Plan
from planner.values.refusal import Refused, demand
from planner.values.step import Bound

PRODUCT = "-//Tackfree//Bench evenings//EN"
MOST_BYTES = 32_000_000  # of a file that is read back
BEFORE_EVENING = timedelta(minutes=15)
LEAST_WARNING, MOST_WARNING = 5, 60  # minutes that a closing is told ahead
VERSION_KEYS = ("SEQUENCE", "DTSTAMP", "LAST-MODIFIED", "CREATED")  # not what an event says
MARGIN = timedelta(days=370)  # how far the time zone is written beyond the evenings


@dataclass(frozen=True)
class Written:
    """A calendar file, and how many of its evenings are new, changed, as they were, cancelled."""

    data: bytes
    new: int = 0
    changed: int = 0
    kept: int = 0
    cancelled: int = 0

    def told(self) -> str:
        """Return what became of the evenings: "2 new, 1 changed"."""
        counts = (
            (self.new, message("{n} new", n=self.new)),
            (self.changed, message("{n} changed", n=self.changed)),
            (self.kept, message("{n} as before", n=self.kept)),
            (self.cancelled, message("{n} cancelled", n=self.cancelled)),
        )
        told = [text for n, text in counts if n]
        return row_of(told) if told else message("no evenings")


def calendar_bytes(
    book: Book,
    plan: Plan,
    now: int,
    origin: Path,
    last: bytes = b"",
    *,
    translate: Translate = str,
) -> Written:
    """Return the evenings from ``now`` on as an iCalendar file.

    Parameters
    ----------
    origin
        The bench book or exchange file that is planned; names the calendar.
    last
        What the calendar file held before, empty for a new one.  Its events
        keep their names; those of the past stay as they are.
    translate
        To the language of what the events say.

    Raises
    ------
    Refused
        If ``last`` is no calendar file of this program.
    """
    old = _read(last) if last else None
    name = str(old["UID"]) if old and "UID" in old else _calendar_name(origin)
    stamp = moment_of(now, BenchCalendar(book.bench_time).zone).astimezone(UTC)
    known = {str(event["UID"]): event for event in old.events} if old else {}
    fresh = {str(event["UID"]): event for event in _events(book, plan, now, name, translate)}
    counts = {"new": 0, "changed": 0, "kept": 0, "cancelled": 0}
    events: list[Event] = []
    for uid in known | fresh:
        event, what = _renewed(known.get(uid), fresh.get(uid), stamp)
        events.append(event)
        counts[what] += 1
    whole = _calendar(name, book, stamp, events, translate)
    return Written(whole.to_ical(), **counts)


def _renewed(old: Event | None, new: Event | None, stamp: datetime) -> tuple[Event, str]:
    """Return the event to write, and what became of it since the file was last written."""
    if old is None:
        assert new is not None
        return _stamped(new, 0, stamp), "new"
    number = int(old.get("SEQUENCE", 0))
    if new is None:
        if _ends(old)[1] <= stamp or str(old.get("STATUS", "")) == "CANCELLED":
            return old, "kept"
        return _stamped(_cancelled(old), number + 1, stamp), "cancelled"
    if _says(old) == _says(new):
        return old, "kept"
    return _stamped(new, number + 1, stamp), "changed"


def _stamped(event: Event, number: int, stamp: datetime) -> Event:
    for key in ("SEQUENCE", "DTSTAMP", "LAST-MODIFIED"):
        event.pop(key, None)
    event.add("sequence", number)
    event.add("dtstamp", stamp)
    event.add("last-modified", stamp)
    return event


def _cancelled(event: Event) -> Event:
    gone = Event.from_ical(event.to_ical())
    assert isinstance(gone, Event)
    for key in ("STATUS", "TRANSP"):
        gone.pop(key, None)
    gone.add("status", "CANCELLED")
    gone.add("transp", "TRANSPARENT")
    gone.subcomponents.clear()  # nobody is to be called to it
    return gone


def _says(event: Event) -> bytes:
    """Return what an event says, whenever that was written."""
    plain = Event.from_ical(event.to_ical())
    for key in VERSION_KEYS:
        plain.pop(key, None)
    return bytes(plain.to_ical())


def _read(data: bytes) -> Calendar:
    demand(len(data) <= MOST_BYTES, "", "is too large for a calendar of evenings; choose another")
    try:
        read = Calendar.from_ical(data)
        sound = isinstance(read, Calendar) and str(read.get("PRODID", "")) == PRODUCT
        if sound:
            for event in read.events:
                _ = str(event["UID"]), int(event.get("SEQUENCE", 0)), _ends(event)
    except Exception as problem:  # whatever the library meets in a damaged file
        raise Refused("", "is no calendar that can be read; choose another name") from problem
    demand(sound, "", "is a calendar of another program; choose another name")
    return read


def _calendar(
    name: str, book: Book, stamp: datetime, events: list[Event], translate: Translate
) -> Calendar:
    whole = Calendar()
    whole.add("prodid", PRODUCT)
    whole.add("version", "2.0")
    whole.add("uid", name)  # RFC 7986
    whole.add("name", translate(message("Bench evenings")))
    ends = [end for event in events for end in _ends(event)] or [stamp]
    zone = BenchCalendar(book.bench_time).zone
    whole.add_component(timezone_of(zone, min(ends) - MARGIN, max(ends) + MARGIN))
    for event in sorted(events, key=lambda event: (_ends(event), str(event["UID"]))):
        whole.add_component(event)
    return whole


def _ends(event: Event) -> tuple[datetime, datetime]:
    """Return start and end; `ValueError` for an event of whole days, which we write none of."""
    start, end = event.start, event.end
    if not (isinstance(start, datetime) and isinstance(end, datetime) and start.tzinfo):
        raise ValueError("no moments")
    return start, end


def _calendar_name(origin: Path) -> str:
    return f"{hashlib.sha256(str(origin.resolve()).encode()).hexdigest()[:24]}@tackfree"


def _events(book: Book, plan: Plan, now: int, name: str, translate: Translate) -> Iterator[Event]:
    calendar = BenchCalendar(book.bench_time)
    for number, sheet in enumerate(run_sheets(book, plan, now)):
        event = Event()
        event.add("uid", f"{sheet.on:%Y%m%d}-{_place_in_day(calendar, sheet)}-{name}")
        event.add("dtstart", _written(sheet.interval.start, calendar))
        event.add("dtend", _written(sheet.interval.end, calendar))
        event.add("summary", tame(translate(_summary(sheet)), lines=False))
        event.add("description", tame(_description(sheet, book, translate)))
        event.add("status", "CONFIRMED")
        event.add("transp", "OPAQUE")
        event.add_component(_alarm(translate(_call(sheet, calendar)), -BEFORE_EVENING))
        for closing in sheet.closing:
            # What closes later is called from the evening that laid the film.
            if number == 0 or sheet.interval.start <= closing.since:
                event.add_component(_closing_alarm(closing, calendar, translate))
        yield event


def _description(sheet: RunSheet, book: Book, translate: Translate) -> str:
    """Return the run sheet for a narrow field in letters of any width."""
    lines = run_sheet_text.run_sheet_text(sheet, book, translate).split("\n")
    return "\n".join(("  " if line[:1] == " " else "") + " ".join(line.split()) for line in lines)


def _place_in_day(calendar: BenchCalendar, sheet: RunSheet) -> int:
    """Return whether the stretch is the first, second ... that begins on its date.

    So an evening that is moved by an hour stays the same event.
    """
    day = calendar.stretches(sheet.interval.start - 2 * DAY, sheet.interval.end)
    return [stretch.interval for stretch in day if stretch.on == sheet.on].index(sheet.interval) + 1


def _written(minute: int, calendar: BenchCalendar) -> datetime:
    """Return a moment in local time, in UTC where a local time would mean an earlier one.

    A wall-clock time that occurs twice is the first of the two (RFC 5545
    section 3.3.5); the second can be written in no other way.
    """
    local = moment_of(minute, calendar.zone)
    return local.astimezone(UTC) if local.fold else local


def _summary(sheet: RunSheet) -> str:
    stages = dict.fromkeys(row.stage for row in sheet.work)
    models = dict.fromkeys(row.key.model for row in sheet.work)
    work = row_of(stages) if stages else message("cleaning")
    if len(models) >= 4:
        return message("Bench: {work}", work=work)
    return message("Bench: {work} ({models})", work=work, models=", ".join(models))


def _call(sheet: RunSheet, calendar: BenchCalendar) -> str:
    """Return what is said before an evening: when it begins, and with what."""
    first = sheet.rows[0]
    what = (
        run_sheet_text.bench_text(first)
        if isinstance(first, BenchRow)
        else run_sheet_text.work_title(first)
    )
    at = wording.clock_time(first.start, calendar.zone)
    return message("At the bench at {time}: {work}", time=at, work=what)


def _alarm(text: str, trigger: timedelta | datetime) -> Alarm:
    alarm = Alarm()
    alarm.add("action", "DISPLAY")
    alarm.add("description", tame(text, lines=False))
    # A moment must say that it is one: a trigger is a duration by default.
    value = {"value": "DATE-TIME"} if isinstance(trigger, datetime) else {}
    alarm.add("trigger", trigger, parameters=value)
    return alarm


def _closing_alarm(closing: Closing, calendar: BenchCalendar, translate: Translate) -> Alarm:
    """Return the call before a window closes: a sixth of its length ahead, within reason."""
    ahead = (closing.closes - closing.since) // 6
    minute = closing.closes - min(MOST_WARNING, max(LEAST_WARNING, ahead))
    by = wording.closing(closing.closes, closing.since, calendar.zone)
    work = wording.pass_name(closing.waiting)
    if closing.bound is Bound.END:
        text = message("End {work} before {by}: {why}", work=work, by=by, why=closing.why)
    else:
        text = message("Start {work} before {by}: {why}", work=work, by=by, why=closing.why)
    return _alarm(translate(text), moment_of(minute, calendar.zone).astimezone(UTC))
