"""The run sheet of one stretch, or of every one ahead."""

from __future__ import annotations

from datetime import date
from itertools import zip_longest

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.tonight.drying_films import closing_of, drying_of
from planner.tonight.in_sight import kept_in_sight
from planner.tonight.replayed_plan import ReplayedPlan
from planner.tonight.run_sheet_rows import RunSheet
from planner.tonight.work_rows import rows_of, work_of
from planner.values.book import Book
from planner.values.moment import Interval, moment_of, zone_named
from planner.values.plan import Plan
from planner.values.refusal import number_in

WITHOUT_END = 1440  # minutes shown where no bench time follows


def run_sheet(book: Book, plan: Plan, now: int, minutes: int | None = None) -> RunSheet:
    """Return the run sheet of the stretch in which ``now`` lies, or of the next one.

    Parameters
    ----------
    minutes
        Show so many minutes from ``now`` instead, bench time or not [min].

    Raises
    ------
    Refused
        If ``minutes`` is not in 1 to 1440.
    """
    zone = zone_named(book.bench_time.zone)
    calendar = BenchCalendar(book.bench_time)
    interval, on = _stretch(calendar, now, minutes)
    laid = ReplayedPlan(book, plan, now, calendar, Cure(book.room, zone))
    upcoming = [piece.start for placement in plan.placements for piece in placement.pieces]
    following = min((start for start in upcoming if start >= interval.end), default=None)
    after = calendar.stretch_at(following) if following is not None else None
    next_interval = after.interval if after else None
    return RunSheet(
        now=now,
        interval=interval,
        on=on or moment_of(now, zone).date(),
        rows=tuple(rows_of(laid, interval, kept_in_sight(laid, interval))),
        drying=tuple(drying_of(laid, interval)),
        closing=tuple(closing_of(laid, interval)),
        next_interval=next_interval,
        next_opens=tuple(work_of(laid, next_interval)) if next_interval else (),
    )


def run_sheets(book: Book, plan: Plan, now: int) -> tuple[RunSheet, ...]:
    """Return the run sheet of every stretch from ``now`` on in which the plan has work.

    Each is written as of its own start, the one that runs as of ``now``.
    """
    calendar = BenchCalendar(book.bench_time)
    laid = ReplayedPlan(book, plan, now, calendar, Cure(book.room, calendar.zone))
    starts = [piece.start for placed in laid.placed.values() for piece in placed.pieces]
    starts += [work.interval.start for work in plan.bench]
    used = dict.fromkeys(calendar.stretch_at(start) for start in sorted(starts))
    ahead = [stretch for stretch in used if stretch is not None and stretch.interval.end > now]
    sheets: list[RunSheet] = []
    for stretch, following in zip_longest(ahead, ahead[1:]):
        laid.now = max(now, stretch.interval.start)
        kept = () if sheets else kept_in_sight(laid, stretch.interval)
        sheets.append(
            RunSheet(
                now=laid.now,
                interval=stretch.interval,
                on=stretch.on,
                rows=tuple(rows_of(laid, stretch.interval, kept)),
                drying=tuple(drying_of(laid, stretch.interval)),
                closing=tuple(closing_of(laid, stretch.interval)),
                next_interval=following.interval if following else None,
                next_opens=tuple(work_of(laid, following.interval)) if following else (),
            )
        )
    return tuple(sheets)


def _stretch(
    calendar: BenchCalendar, now: int, minutes: int | None
) -> tuple[Interval, date | None]:
    if minutes is not None:
        number_in(minutes, 1, 1440, "minutes", "min")
        return Interval(now, now + minutes), None
    stretch = calendar.next_stretch(now)
    if stretch is None:
        return Interval(now, now + WITHOUT_END), None
    return stretch.interval, stretch.on
