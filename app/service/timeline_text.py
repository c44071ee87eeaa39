"""The timeline of a plan as plain text: one small chart for each stretch of bench time."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from itertools import pairwise
from zoneinfo import ZoneInfo

from app.service import wording
from planner.bench import BenchCalendar, Stretch
from planner.passes import expand_all
from planner.values.book import Book
from planner.values.moment import Interval, zone_named
from planner.values.plan import PassKey, Plan

CELL = 5  # minutes that one character of the timeline stands for, at the least
WIDEST = 96  # characters of a chart
WORK, SETUP, ALONE, FREE = "#", "=", "-", "."


def timeline_text(plan: Plan, book: Book) -> str:
    """Return the plan as one small chart per stretch of bench time.

    Each character is five minutes (more in a very long stretch, and then
    that is said): work, set-up or neither; between the stretches stands how
    long the films are left alone.
    """
    zone = zone_named(book.bench_time.zone)
    stretches = _stretches(plan, BenchCalendar(book.bench_time))
    labels = [f"{key.model}" for placed in plan.placements for key in [placed.key]]
    labels += [work.airbrush for work in plan.bench]
    width = min(28, max(map(len, labels), default=0))
    marks = sorted(_marks(plan, book), key=lambda mark: mark[1])
    lines: list[str] = []
    for before, stretch in pairwise([None, *stretches]):
        if before is not None and stretch is not None:
            gap = stretch.interval.start - before.interval.end
            lines.append(f"  {'':{width}}  ~ {wording.span(gap)} away from the bench ~")
        if stretch is not None:
            lines += _chart(plan, marks, stretch, width, zone)
    alone = f"   {ALONE} goes on alone" if any(mark[2] == ALONE for mark in marks) else ""
    signs = f"{WORK} work{alone}   {SETUP} load, change, clean, prepare"
    lines.append("")
    lines.append(f"{signs}   {CELL} min a character")
    return "\n".join(lines)


def _stretches(plan: Plan, calendar: BenchCalendar) -> list[Stretch]:
    starts = sorted(
        [
            piece.start
            for placement in plan.placements
            for piece in placement.pieces
            if not placement.logged
        ]
        + [work.interval.start for work in plan.bench]
    )
    found = dict.fromkeys(calendar.stretch_at(start) for start in starts)
    return [stretch for stretch in found if stretch is not None]


def _marks(plan: Plan, book: Book) -> Iterator[tuple[str, Interval, str]]:
    """Yield the times of the chart: whose they are, when, and their sign."""
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    for work in plan.bench:
        yield work.airbrush or _model(work.serves), work.interval, SETUP
    for placed in plan.placements:
        for piece in placed.pieces:
            pass_ = passes.get(placed.key)
            hands = pass_.attended(piece) if pass_ else piece
            yield placed.key.model, hands, WORK
            if hands.end < piece.end:
                yield placed.key.model, Interval(hands.end, piece.end), ALONE


def _chart(
    plan: Plan,
    marks: list[tuple[str, Interval, str]],
    stretch: Stretch,
    width: int,
    zone: ZoneInfo,
) -> Iterator[str]:
    within = stretch.interval
    size = CELL * -(-within.minutes // (CELL * WIDEST))
    cells = -(-within.minutes // size)
    bars: dict[str, list[str]] = defaultdict(lambda: [FREE] * cells)
    done: dict[str, list[PassKey]] = defaultdict(list)
    for placed in plan.placements:
        if any(piece.overlaps(within) for piece in placed.pieces):
            done[placed.key.model].append(placed.key)
    for label, interval, sign in marks:
        if interval.overlaps(within):
            first = max(0, interval.start - within.start) // size
            last = -(-(min(interval.end, within.end) - within.start) // size)
            for cell in range(first, last):
                bars[label][cell] = sign
    coarser = f"  ({size} min a character)" if size > CELL else ""
    yield wording.stretch(within, zone) + coarser
    for label, bar in bars.items():
        steps = ", ".join(dict.fromkeys(_short(key) for key in done[label]))
        yield f"  {label[:width]:<{width}}  {''.join(bar)}  {steps}".rstrip()


def _model(key: PassKey | None) -> str:
    return key.model if key else ""


def _short(key: PassKey) -> str:
    return f"{key.step} #{key.coat}" if key.coat > 1 else key.step
