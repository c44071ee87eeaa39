"""Bench time in UTC minutes: recurring stretches, exceptions, quiet and daylight hours.

Rules are expanded in local wall time and each end of each stretch is then
converted by itself (definition 1), so that an evening keeps its wall-clock
hours across a change to or from daylight saving.  A wall-clock time that a
change skips is read with the offset before it, one that occurs twice is the
first of the two, as RFC 5545 section 3.3.5 has it.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from functools import lru_cache
from itertools import groupby, pairwise, takewhile
from threading import Lock
from typing import NamedTuple
from zoneinfo import ZoneInfo

from planner.values.bench_time import BenchTime, Extra, Recurring
from planner.values.identity_key import Same
from planner.values.moment import Interval, minute_of, moment_of, zone_named

DAY = 1440
HORIZON = 3 * 366 * DAY  # how far ahead anything is looked for [min]
LONGEST_DAYS = 7  # bench time without end is cut into weeks
CHUNK = 90 * DAY  # how much is expanded at once [min]
AIRED = 60  # minutes that a smell needs to be gone before others are asleep: assumed
MARGIN = (LONGEST_DAYS + 2) * DAY  # what lies outside a chunk and may run into it [min]


@dataclass(frozen=True)
class Stretch:
    """Bench time in one go, with the same number of people.

    ``on`` is the local date on which it begins.
    """

    interval: Interval
    people: int
    on: date


class BenchCalendar:
    """Bench time, quiet hours and daylight, expanded as far as was asked.

    Stretches that touch or overlap are one, unless the number of people
    differs: then they are cut where it changes, and the larger number counts.
    """

    def __init__(self, bench_time: BenchTime) -> None:
        self.zone = zone_named(bench_time.zone)
        self._limited = bool(bench_time.daylight)
        self._bench = _Line(self.zone, bench_time.stretches, bench_time.skipped, bench_time.extra)
        self._quiet = _Line(self.zone, bench_time.quiet)
        self._daylight = _Line(self.zone, bench_time.daylight)

    def share(self, other: BenchCalendar) -> None:
        """Take what another one has expanded, and is going to: no second one is built."""
        self.zone, self._limited = other.zone, other._limited
        self._bench, self._quiet, self._daylight = other._bench, other._quiet, other._daylight

    def stretches(self, start: int, end: int) -> tuple[Stretch, ...]:
        """Return the stretches that share a minute with [start, end), in order."""
        return self._bench.overlapping(start, end)

    def stretch_at(self, minute: int) -> Stretch | None:
        """Return the stretch that holds a minute, or None."""
        found = self._bench.overlapping(minute, minute + 1)
        return found[0] if found else None

    def next_stretch(self, minute: int) -> Stretch | None:
        """Return the first stretch that ends after ``minute``; None if none within three years."""
        return self._bench.first_ending_after(minute)

    def quiet(self, start: int, end: int, early: int = 0) -> tuple[Interval, ...]:
        """Return the quiet hours that share a minute with [start, end), not clipped.

        With ``early`` each begins so many minutes sooner: for a smell that
        must be aired by then, or work that goes on alone after hands.
        """
        if early:
            found = self._quiet.overlapping(start, end + early)
            return tuple(
                Interval(stretch.interval.start - early, stretch.interval.end) for stretch in found
            )
        return tuple(stretch.interval for stretch in self._quiet.overlapping(start, end))

    def daylight(self, start: int, end: int) -> tuple[Interval, ...] | None:
        """Return the hours of daylight that reach into [start, end); None if unlimited."""
        if not self._limited:
            return None
        return tuple(stretch.interval for stretch in self._daylight.overlapping(start, end))

    def day_end(self, day: date) -> int:
        """Return the minute of the local midnight that ends ``day``."""
        return _minute(day + timedelta(days=1), time(), self.zone)


def recurring_on(bench_time: BenchTime, day: date) -> tuple[Stretch, ...]:
    """Return what the rules give on a local date, one stretch a rule; none where it is skipped."""
    if day in bench_time.skipped:
        return ()
    zone = zone_named(bench_time.zone)
    ruled = [rule for rule in bench_time.stretches if day in _dates(rule, day.year)]
    given = [(_on(rule, day, zone), rule.people) for rule in ruled]
    return tuple(Stretch(interval, people, day) for interval, people in given if interval)


def calendar_of(bench_time: BenchTime) -> BenchCalendar:
    """Return the calendar of a bench time, the same one while that is unchanged."""
    return _calendar(Same(bench_time))


@lru_cache(maxsize=32)
def _calendar(bench_time: Same[BenchTime]) -> BenchCalendar:
    return BenchCalendar(bench_time.value)


class _Known(NamedTuple):
    """Stretches of the chunks [first, last), with their starts and ends for searching."""

    first: int
    last: int
    items: tuple[Stretch, ...]
    starts: tuple[int, ...]
    ends: tuple[int, ...]


class _Line:
    """Stretches of one kind, sorted and disjoint, kept for a growing run of chunks."""

    def __init__(
        self,
        zone: ZoneInfo,
        rules: tuple[Recurring, ...],
        skipped: Iterable[date] = (),
        extra: tuple[Extra, ...] = (),
    ) -> None:
        self._zone = zone
        self._rules = rules
        self._skipped = frozenset(skipped)
        self._extra = extra
        self._grows = Lock()
        # Replaced as a whole, so that other threads never see half of it.
        self._known = _Known(0, 0, (), (), ())

    def overlapping(self, start: int, end: int) -> tuple[Stretch, ...]:
        if not (self._rules or self._extra):
            return ()
        known = self._covering(start, end)
        first = bisect_right(known.ends, start)
        return known.items[first : bisect_left(known.starts, end, lo=first)]

    def first_ending_after(self, minute: int) -> Stretch | None:
        if not (self._rules or self._extra):
            return None
        for reach in range(minute + CHUNK, minute + HORIZON + CHUNK, CHUNK):
            known = self._covering(minute, reach)
            index = bisect_right(known.ends, minute)
            if index < len(known.items):
                found = known.items[index]
                return found if found.interval.start < minute + HORIZON else None
        return None

    def _covering(self, start: int, end: int) -> _Known:
        """Return what is known once every stretch that overlaps [start, end) is."""
        first, last = (start - MARGIN) // CHUNK, (end - 1) // CHUNK + 1
        known = self._known
        if known.first <= first and last <= known.last:
            return known
        with self._grows:
            known = self._known
            if known.first == known.last:
                known = _Known(first, first, (), (), ())
            before = [
                stretch for chunk in range(first, known.first) for stretch in self._chunk(chunk)
            ]
            after = [stretch for chunk in range(known.last, last) for stretch in self._chunk(chunk)]
            items = (*before, *known.items, *after)
            self._known = _Known(
                min(first, known.first),
                max(last, known.last),
                items,
                tuple(stretch.interval.start for stretch in items),
                tuple(stretch.interval.end for stretch in items),
            )
            return self._known

    def _chunk(self, number: int) -> Iterator[Stretch]:
        """Yield the stretches that begin in one chunk."""
        start, end = number * CHUNK, (number + 1) * CHUNK
        for interval, people in _merged(self._occurrences(start - MARGIN, end + MARGIN)):
            for piece in _weeks(interval, self._zone):
                if start <= piece.start < end:
                    yield Stretch(piece, people, moment_of(piece.start, self._zone).date())

    def _occurrences(self, start: int, end: int) -> Iterator[tuple[Interval, int]]:
        for extra in self._extra:
            if extra.interval.start < end and start < extra.interval.end:
                yield extra.interval, extra.people
        first, last = moment_of(start, self._zone).date(), moment_of(end, self._zone).date()
        for rule in self._rules:
            days = _dates(rule, last.year)
            for day in days[bisect_left(days, first) : bisect_right(days, last)]:
                interval = None if day in self._skipped else _on(rule, day, self._zone)
                if interval:
                    yield interval, rule.people


@lru_cache(maxsize=256)
def _dates(rule: Recurring, year: int) -> tuple[date, ...]:
    """Return the dates of a rule up to the end of a year."""
    return tuple(takewhile(lambda day: day.year <= year, rule.dates()))


def _minute(day: date, at: time, zone: ZoneInfo, *, up: bool = True) -> int:
    return minute_of(datetime.combine(day, at, zone), up=up)


def _on(rule: Recurring, day: date, zone: ZoneInfo) -> Interval | None:
    """Return what a rule gives on one of its dates.

    A stretch that would begin in the hour that a change skips, and so be over
    before it has begun, begins when that hour is over; None if it ends by then.
    """
    starts, ends = time.fromisoformat(rule.start), time.fromisoformat(rule.end)
    start = _minute(day, starts, zone)
    end_day = day if starts < ends else day + timedelta(days=1)
    end = _minute(end_day, ends, zone, up=False)
    if end <= start:
        earlier = range(end - DAY, start + 1)  # the last is its own answer: nothing is left
        offset = moment_of(start, zone).utcoffset()
        start = earlier[
            bisect_left(earlier, True, key=lambda at: moment_of(at, zone).utcoffset() == offset)
        ]
    return Interval(start, end) if start < end else None


def _merged(pieces: Iterable[tuple[Interval, int]]) -> Iterator[tuple[Interval, int]]:
    """Yield the union of the pieces, cut where the largest number of people changes."""
    changes: list[tuple[int, int, int]] = []
    for interval, people in pieces:
        changes.append((interval.start, people, 1))
        changes.append((interval.end, people, -1))
    present: dict[int, int] = {}
    level = since = 0
    for minute, group in groupby(sorted(changes), key=lambda change: change[0]):
        for _, people, change in group:
            present[people] = present.get(people, 0) + change
        now = max((people for people, count in present.items() if count), default=0)
        if now != level:
            if level:
                yield Interval(since, minute), level
            level, since = now, minute


def _weeks(interval: Interval, zone: ZoneInfo) -> Iterator[Interval]:
    """Yield the interval, cut at each local Monday if it is longer than a week.

    Whoever is always at the bench would else have one stretch without end.
    """
    if interval.minutes <= LONGEST_DAYS * DAY:
        yield interval
        return
    day = moment_of(interval.start, zone).date()
    monday = day + timedelta(days=7 - day.weekday())
    cuts = [interval.start]
    while (cut := _minute(monday, time(), zone)) < interval.end:
        cuts.append(cut)
        monday += timedelta(days=7)
    for start, end in pairwise([*cuts, interval.end]):
        yield Interval(start, end)
