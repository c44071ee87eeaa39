"""The weeks ahead, day by day: bench time, what is planned in it, quiet hours and daylight."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from zoneinfo import ZoneInfo

from app.service.bench_time_edits import days_off
from planner.bench import BenchCalendar, Stretch
from planner.passes import expand_all
from planner.values.bench_time import BenchTime
from planner.values.book import Book
from planner.values.moment import Interval, moment_of
from planner.values.plan import Plan

DAY = 1440
LEAST_HOURS = 6  # a scale shorter than that would make short slots look long
WHOLE = 16 * 60  # a stretch up to this is drawn on the day it begins, a longer one day by day [min]


@dataclass(frozen=True)
class Bar:
    """One stretch; ``planned`` is how much of it hands are at work [min].

    ``quiet`` is how much of it lies in quiet hours [min].
    """

    interval: Interval
    people: int
    planned: int
    quiet: int
    extra: bool

    @property
    def free(self) -> int:
        """Minutes that nothing is planned in."""
        return self.interval.minutes - self.planned


@dataclass(frozen=True)
class Day:
    """A local date, and the minute at which it begins."""

    on: date
    start: int
    bars: tuple[Bar, ...]
    away: bool
    quiet: tuple[Interval, ...]
    daylight: tuple[Interval, ...]
    zone: ZoneInfo

    def wall(self, minute: int) -> int:
        """Return a minute on this day's wall clock [min since its midnight]."""
        local = moment_of(minute, self.zone)
        return (local.date() - self.on).days * DAY + local.hour * 60 + local.minute

    @property
    def minutes(self) -> int:
        """Length of its bench time [min]."""
        return sum(bar.interval.minutes for bar in self.bars)

    @property
    def planned(self) -> int:
        """Minutes of work planned on it."""
        return sum(bar.planned for bar in self.bars)


@dataclass(frozen=True)
class Weeks:
    """Whole weeks from a Monday on; ``scale`` is the hours that all days are drawn to.

    The scale counts minutes on the wall clock; it may run into the next day.
    """

    days: tuple[Day, ...]
    scale: tuple[int, int]

    @property
    def rows(self) -> int:
        """Number of weeks."""
        return len(self.days) // 7


def monday_of(day: date) -> date:
    """Return the Monday of a date's week."""
    return day - timedelta(days=day.weekday())


def busy(plan: Plan | None, book: Book | None = None) -> tuple[Interval, ...]:
    """Return when hands are at work by the plan, logged facts left out, each minute once.

    ``book``, for which it is, tells what goes on alone; without it nothing does.
    """
    if plan is None:
        return ()
    alone = {pass_.key: pass_ for pass_ in expand_all(book) if pass_.alone} if book else {}
    work = [
        alone[placement.key].attended(piece) if placement.key in alone else piece
        for placement in plan.placements
        if not placement.logged
        for piece in placement.pieces
    ]
    return _union([*work, *(work.interval for work in plan.bench)])


def weeks_of(
    bench_time: BenchTime, plan: Plan | None, monday: date, rows: int, book: Book | None = None
) -> Weeks:
    """Return the days of some weeks, with what a plan of ``book`` takes of them."""
    calendar = BenchCalendar(bench_time)
    work = busy(plan, book)
    extra = {extra.interval for extra in bench_time.extra}
    days = tuple(
        _day(calendar, bench_time, monday + timedelta(days=after), work, extra)
        for after in range(7 * rows)
    )
    return Weeks(days, _scale(days))


def _day(
    calendar: BenchCalendar,
    bench_time: BenchTime,
    on: date,
    work: Sequence[Interval],
    extra: set[Interval],
) -> Day:
    start = calendar.day_end(on - timedelta(days=1))
    end = calendar.day_end(on)
    quiet = calendar.quiet(start, end + DAY)
    pieces = [
        (_of_day(stretch, on, start, end), stretch) for stretch in calendar.stretches(start, end)
    ]
    bars = tuple(
        Bar(
            interval=piece,
            people=stretch.people,
            planned=_shared(piece, work),
            quiet=_shared(piece, quiet),
            extra=any(each.within(stretch.interval) for each in extra),
        )
        for piece, stretch in pieces
        if piece is not None
    )
    return Day(
        on=on,
        start=start,
        bars=bars,
        away=on in days_off(bench_time),
        quiet=quiet,
        daylight=calendar.daylight(start, end + DAY) or (),
        zone=calendar.zone,
    )


def _of_day(stretch: Stretch, on: date, start: int, end: int) -> Interval | None:
    """Return what of a stretch belongs to a day; None if it belongs to the day before."""
    whole = stretch.interval
    if whole.minutes <= WHOLE:
        return whole if stretch.on == on else None
    return Interval(max(whole.start, start), min(whole.end, end))


def _scale(days: Sequence[Day]) -> tuple[int, int]:
    """Return whole hours around every stretch, at least some hours of the evening."""
    starts = [day.wall(bar.interval.start) for day in days for bar in day.bars]
    ends = [day.wall(bar.interval.end) for day in days for bar in day.bars]
    first = min(starts, default=18 * 60) // 60 * 60
    last = -(-max(ends, default=DAY) // 60) * 60
    first = max(0, min(first, last - LEAST_HOURS * 60))
    return first, max(last, first + LEAST_HOURS * 60)


def _union(pieces: Iterable[Interval]) -> tuple[Interval, ...]:
    found: list[Interval] = []
    for piece in sorted(pieces):
        if found and piece.start <= found[-1].end:
            found[-1] = Interval(found[-1].start, max(found[-1].end, piece.end))
        else:
            found.append(piece)
    return tuple(found)


def _shared(interval: Interval, others: Iterable[Interval]) -> int:
    """Return how many minutes an interval shares with others that do not overlap."""
    return sum(
        max(0, min(interval.end, other.end) - max(interval.start, other.start)) for other in others
    )
