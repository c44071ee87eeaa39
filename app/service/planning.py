"""Planning: the heuristic's plan, shown only if the judge accepts it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from app.service.planning_errors import Stopped, Unsound
from planner.bench import BenchCalendar, Stretch, calendar_of
from planner.cure import Cure
from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.greedy import plan_book
from planner.schedule.judge import Premises, Verdict, judge
from planner.schedule.priority_rules import RULES
from planner.values.book import Book
from planner.values.plan import Plan
from planner.values.plausible_dates import in_reach
from storage.exchange import digest


class _Watched(BenchCalendar):
    """A calendar that whoever searches looks into again and again, and so can be stopped at."""

    def __init__(self, calendar: BenchCalendar, stop: Callable[[], bool]) -> None:
        # All that it has expanded is shared: no second one is built.
        self.__dict__.update(calendar.__dict__)
        self._stop = stop

    def next_stretch(self, minute: int) -> Stretch | None:
        """Return the first stretch that ends after ``minute``; raise `Stopped` if told so."""
        if self._stop():
            raise Stopped
        return super().next_stretch(minute)


@dataclass(frozen=True)
class Planned:
    """A plan that the judge accepted, the judge's word on it, and the tables it was read from.

    ``book`` is the one planned, films drying where the plan has chosen.
    """

    plan: Plan
    verdict: Verdict
    cure: Cure
    calendar: BenchCalendar
    book: Book


def plan(
    book: Book,
    now: int,
    *,
    last: Plan | None = None,
    quick: bool = False,
    stop: Callable[[], bool] | None = None,
) -> Planned:
    """Plan every active project of a book from ``now`` on.

    Parameters
    ----------
    last
        The plan before it; steps that leave its stretch are counted.
    quick
        Try one rule only: sound, found in a fraction of the time, and often a
        little dearer; for showing something while the rest is tried.  It names
        no input (its digest is empty).
    stop
        Asked all the time while a plan is searched, from this very thread.

    Raises
    ------
    Stopped
        As soon as ``stop`` says so.
    Refused
        If something of the book lies so far ahead that no plan reaches it.
    Unsound
        If the judge refuses what the heuristic made.
    """
    in_reach(book, now)
    rules = RULES[:1] if quick else RULES
    # Both read the same tables of rates and bench time; each computes its own times.
    premises = Premises(book, calendar=calendar_of(book.bench_time))
    cure, calendar = premises.cure, premises.calendar
    if stop is not None:
        calendar = _Watched(calendar, stop)
    found = plan_book(book, now, cure=cure, calendar=calendar, rules=rules, last=last)
    made = found if quick else replace(found, digest=digest(book))
    verdict = judge(book, made, premises=premises)
    if not verdict.accepted:
        raise Unsound(verdict)
    there = settled(book, chosen_in(book, made))
    return Planned(made, verdict, premises.cure, premises.calendar, there)
