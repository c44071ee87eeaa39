"""Edits of a book: pure functions that return what it is called and what it leads to.

Whoever applies one to a bench book hands its name to the journal.
Everything that would not be sound is refused by the values themselves.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta

from planner.bench import DAY, LONGEST_DAYS, BenchCalendar, Stretch, calendar_of, recurring_on
from planner.values.bench_time import BenchTime, Extra, Recurring
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.lookup import project_of
from planner.values.message import called
from planner.values.moment import Interval, moment_of
from planner.values.refusal import Refused, number_in, unknown
from planner.values.room import AirPoint, Location, Reading

WEEKDAYS = ("MO", "TU", "WE", "TH", "FR", "SA", "SU")


@dataclass(frozen=True)
class Edit:
    """A book after an edit, and what the journal calls the edit.

    Edits with the same ``merge`` that follow each other within seconds are
    undone as one; "" is merged with none.  ``verb`` is what the journal is
    asked for later (`BenchBook.after_edits`).
    """

    name: str
    book: Book
    merge: str = ""
    verb: str = ""


def set_air(book: Book, location: str, temperature_c: float, humidity_pct: float) -> Edit:
    """Give a location the same air all day: [°C] and [% RH]."""
    air = (AirPoint(at="00:00", temperature_c=temperature_c, humidity_pct=humidity_pct),)

    def still(old: Location) -> Location:
        return replace(old, workdays=air, weekends=())

    changed = _with_location(book, location, still)
    where = book.room.location(location).name
    name = called(
        "air of {where}: {temperature_c:g} °C, {humidity_pct:g} %",
        where=where,
        temperature_c=temperature_c,
        humidity_pct=humidity_pct,
    )
    return Edit(name, changed, f"air/{where}")


def add_reading(book: Book, reading: Reading) -> Edit:
    """Note what a gauge shows; it corrects that day's air."""
    room = replace(book.room, readings=(*book.room.readings, reading))
    name = called(
        "reading: {temperature_c:g} °C, {humidity_pct:g} %",
        temperature_c=reading.temperature_c,
        humidity_pct=reading.humidity_pct,
    )
    return Edit(name, replace(book, room=room))


def set_stretches(book: Book, stretches: Iterable[Recurring]) -> Edit:
    """Replace the recurring stretches of bench time."""
    return _bench_time(book, called("bench time"), stretches=tuple(stretches))


def skip_date(book: Book, day: date) -> Edit:
    """Be away on a date: no recurring stretch begins then."""
    if day in book.bench_time.skipped:
        return Edit(called("away on {day}", day=day), book)
    skipped = tuple(sorted({*book.bench_time.skipped, day}))
    return _bench_time(book, called("away on {day}", day=day), skipped=skipped)


def unskip_date(book: Book, day: date) -> Edit:
    """Be back on a date that was skipped."""
    skipped = tuple(other for other in book.bench_time.skipped if other != day)
    return _bench_time(book, called("back on {day}", day=day), skipped=skipped)


def add_stretch(book: Book, start: datetime, end: datetime, people: int = 1) -> Edit:
    """Add one stretch beside the rules."""
    extra = Extra(start=start, end=end, people=people)
    everything = tuple(sorted({*book.bench_time.extra, extra}, key=lambda extra: extra.start))
    name = called("extra bench time {start:%Y-%m-%d %H:%M}–{end:%H:%M}", start=start, end=end)
    return _bench_time(book, name, extra=everything)


def remove_stretch(book: Book, extra: Extra) -> Edit:
    """Take an added stretch away."""
    left = tuple(other for other in book.bench_time.extra if other != extra)
    return _bench_time(
        book, called("no bench time {start:%Y-%m-%d %H:%M}", start=extra.start), extra=left
    )


def only_minutes(book: Book, now: int, minutes: int) -> Edit:
    """Make the stretch around ``now``, if any, last ``minutes`` from now.

    Other stretches stay as they are; quiet hours too.

    Raises
    ------
    Refused
        If ``minutes`` is not in 1 to 1440.
    """
    number_in(minutes, 1, 1440, "minutes", "min")
    calendar = calendar_of(book.bench_time)
    running = calendar.stretch_at(now)
    people = running.people if running else 1
    wanted = _extra(Interval(now, now + minutes), people, calendar)
    ended = ended_at(book.bench_time, now)
    name = called("{minutes} min from now", minutes=minutes)
    return _bench_time(book, name, skipped=ended.skipped, extra=_sorted((*ended.extra, wanted)))


def minutes_more(book: Book, now: int, minutes: int) -> Edit:
    """Put minutes behind the stretch that runs, or begin one now; nothing else changes.

    Raises
    ------
    Refused
        If more than a day would be left of it.
    """
    calendar = calendar_of(book.bench_time)
    block = _touching(calendar, now)
    begin, people = (block[-1].interval.end, block[-1].people) if block else (now, 1)
    number_in(begin - now + minutes, 1, 1440, "minutes", "min")
    more = _extra(Interval(begin, begin + minutes), people, calendar)
    extras = list(book.bench_time.extra)
    for extra in extras:  # one line in the list of extra hours, however often it is asked
        if extra.interval.end == begin and extra.people == more.people:
            extras.remove(extra)
            more = replace(more, start=extra.start)
            break
    name = called("{minutes} min more at the bench", minutes=minutes)
    return _bench_time(book, name, extra=_sorted((*extras, more)))


def ended_at(bench_time: BenchTime, now: int) -> BenchTime:
    """Return bench time whose stretch around ``now``, if any, ends then.

    A recurring stretch cannot be cut, so its date is skipped and all that is
    left of that date is put beside the rules.
    """
    calendar = calendar_of(bench_time)
    block = _touching(calendar, now)
    if not block:
        return bench_time
    whole = Interval(block[0].interval.start, block[-1].interval.end)
    first, last = (moment_of(at, calendar.zone).date() for at in (whole.start - DAY, whole.end))
    skipped = set(bench_time.skipped)
    kept = [extra for extra in bench_time.extra if not extra.interval.overlaps(whole)]
    for day in (first + timedelta(days=count) for count in range((last - first).days + 1)):
        recurring = recurring_on(bench_time, day)
        if any(stretch.interval.overlaps(whole) for stretch in recurring):
            skipped.add(day)
            kept += [
                _extra(stretch.interval, stretch.people, calendar)
                for stretch in recurring
                if not stretch.interval.overlaps(whole)
            ]
    for stretch in block:
        if stretch.interval.start < now:
            done = Interval(stretch.interval.start, min(now, stretch.interval.end))
            kept.append(_extra(done, stretch.people, calendar))
    return replace(bench_time, skipped=tuple(sorted(skipped)), extra=_sorted(kept))


def _touching(calendar: BenchCalendar, now: int) -> tuple[Stretch, ...]:
    """Return the stretches around a minute that follow one another without a gap."""
    near = calendar.stretches(now - LONGEST_DAYS * DAY, now + LONGEST_DAYS * DAY)
    here = Interval(now, now + 1)
    index = next((at for at, found in enumerate(near) if here.overlaps(found.interval)), None)
    if index is None:
        return ()
    first = last = index
    while first and near[first - 1].interval.end == near[first].interval.start:
        first -= 1
    while last + 1 < len(near) and near[last].interval.end == near[last + 1].interval.start:
        last += 1
    return near[first : last + 1]


def _sorted(extras: Iterable[Extra]) -> tuple[Extra, ...]:
    return tuple(sorted(set(extras), key=lambda extra: (extra.start, extra.end)))


def _extra(interval: Interval, people: int, calendar: BenchCalendar) -> Extra:
    start, end = (moment_of(at, calendar.zone) for at in (interval.start, interval.end))
    return Extra(start=start, end=end, people=people)


def set_target(book: Book, project: str, target: date | None) -> Edit:
    """Set or remove the date of a project."""
    if target:
        name = called("{project}: finish by {target}", project=project, target=target)
    else:
        name = called("{project}: no date", project=project)
    changed = with_project(book, project, lambda old: replace(old, target=target))
    return Edit(name, changed, f"target/{project}")


def set_weight(book: Book, project: str, weight: int) -> Edit:
    """Set how much a project's lateness weighs."""
    changed = with_project(book, project, lambda old: replace(old, weight=weight))
    return Edit(
        called("{project}: weight {weight}", project=project, weight=weight),
        changed,
        f"weight/{project}",
    )


def activate(book: Book, project: str, active: bool) -> Edit:
    """Plan a project, or keep it aside."""
    changed = with_project(book, project, lambda old: replace(old, active=active))
    return Edit(
        called("{project}: active", project=project)
        if active
        else called("{project}: set aside", project=project),
        changed,
    )


def remove_project(book: Book, project: str) -> Edit:
    """Take a project out of the book."""
    project_of(book, project)
    left = tuple(other for other in book.projects if other.name != project)
    return Edit(called("remove {project}", project=project), replace(book, projects=left))


def _bench_time(book: Book, name: str, **changes: object) -> Edit:
    bench_time: BenchTime = replace(book.bench_time, **changes)  # type: ignore[arg-type]
    return Edit(name, replace(book, bench_time=bench_time))


def _with_location(book: Book, name: str, change: Callable[[Location], Location]) -> Book:
    try:
        wanted = book.room.location(name)
    except KeyError:
        known = [location.name for location in book.room.locations]
        raise Refused("room.locations", unknown("location", name, known)) from None
    changed = tuple(
        change(location) if location == wanted else location for location in book.room.locations
    )
    return replace(book, room=replace(book.room, locations=changed))
