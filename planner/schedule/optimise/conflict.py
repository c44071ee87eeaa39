"""Why no plan can place everything: a least set of things that cannot hold together.

`contradicts` proves that a book has no full plan, or does not know.  What a
person could give way on are `Demand`s; of those a least set is sought that
still contradicts: with any one of them given up, nothing is proven any more.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.optimise.contradiction import contradicts
from planner.schedule.optimise.demands import Demand, demands, only
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.plan import Bound, Clash, Plan, Status
from planner.values.said import row, say


def explain(book: Book, now: int, cure: Cure) -> tuple[Clash, ...]:
    """Return a least set of demands that cannot hold together; empty if nothing is proven."""
    return tuple(one.clash for one in least_conflict(book, now, cure))


def infeasible(plan: Plan, clashes: tuple[Clash, ...]) -> Plan:
    """Return a plan with passes left over that says why no plan can do without."""
    if not clashes or not plan.unplaced:
        return plan
    proof = say("cannot hold together: {what}", what=row((one.what for one in clashes), "; "))
    bounds = (Bound("unplaced", 1, proof),)
    return replace(plan, status=Status.INFEASIBLE, bounds=bounds, conflict=clashes)


def least_conflict(book: Book, now: int, cure: Cure) -> tuple[Demand, ...]:
    """Return the demands of a least conflict, in the order of the book.

    What contradicts even with every demand given up (an order of steps that
    cannot be) comes as demands of its own, which only an edit can mend.
    """
    if not contradicts(book, now, cure):
        return ()
    fixed = tuple(_structural(book))
    if fixed:
        return fixed[:1]
    kept = list(demands(book))
    for one in list(kept):
        fewer = [other for other in kept if other is not one]
        if contradicts(only(book, fewer), now, cure):
            kept = fewer
    return tuple(kept)


def _structural(book: Book) -> Iterator[Demand]:
    """Yield what no wish given up would mend: an order of steps that cannot be done."""
    problem = Problem(book, 0, cure=_no_cure(book), calendar=calendar_of(book.bench_time))
    for activity in problem.activities:
        if activity.blocked:
            key = activity.one.key
            text = say(
                "{model}: {step}: {why}", model=key.model, step=key.step, why=activity.blocked
            )
            yield Demand(Clash(text, say("change the order of the steps")), lambda old: old)


def _no_cure(book: Book) -> Cure:
    return Cure(book.room, calendar_of(book.bench_time).zone)
