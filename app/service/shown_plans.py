"""What a bench book keeps of the plans that were shown, and evenings that were promised."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from planner.bench import BenchCalendar
from planner.values.book import Book
from planner.values.moment import Interval
from planner.values.plan import Plan
from storage.exchange import digest

if TYPE_CHECKING:
    from storage.bench_book import BenchBook


@dataclass(frozen=True)
class ShownBefore:
    """The plan to begin from; ``exact`` tells that it was shown for this very book."""

    last: Plan | None = None
    exact: bool = False
    promised: tuple[Interval, ...] = ()


def begin_from(known: Sequence[Plan], book: Book) -> tuple[Plan | None, bool]:
    """Return the newest plan that was shown for a book, or else the newest of all."""
    own = digest(book) if known else ""
    for plan in reversed(known):
        if plan.digest == own:
            return plan, True
    return (known[-1] if known else None), False


def shown_before(bench: BenchBook, book: Book) -> ShownBefore:
    """Return what a bench book kept for planning a book: its own, or one like it."""
    last, exact = begin_from(bench.plans.all(), book)
    return ShownBefore(last, exact, bench.plans.promised())


def evenings_of(
    calendar: BenchCalendar, plan: Plan, now: int, *, first_only: bool = False
) -> tuple[Interval, ...]:
    """Return the stretches from ``now`` on in which a plan has work, or the first alone."""
    begun = (
        piece.start for placed in plan.placements if not placed.logged for piece in placed.pieces
    )
    return _stretches(calendar, begun, now)[: 1 if first_only else None]


def _stretches(calendar: BenchCalendar, minutes: Iterable[int], now: int) -> tuple[Interval, ...]:
    found = {calendar.stretch_at(minute) for minute in minutes}
    return tuple(
        sorted(item.interval for item in found if item is not None and item.interval.end > now)
    )
