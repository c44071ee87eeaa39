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
from planner.schedule.optimise.demands import Demand, demands, only
from planner.schedule.optimise.infeasibility_proof import contradicts
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.message import message, row
from planner.values.plan import Clash, Plan, ProvenBound, Status
from planner.values.room import AirPoint

USUAL_AIR = AirPoint(at="00:00", temperature_c=23, humidity_pct=50)  # ISO 3270


def explain(book: Book, now: int, cure: Cure) -> tuple[Clash, ...]:
    """Return a least set of demands that cannot hold together; empty if nothing is proven."""
    return tuple(demand.clash for demand in least_conflict(book, now, cure))


def infeasible(plan: Plan, clashes: tuple[Clash, ...]) -> Plan:
    """Return a plan with passes left over that says why no plan can do without."""
    if not clashes or not plan.unplaced:
        return plan
    proof = message(
        "cannot hold together: {what}", what=row((clash.what for clash in clashes), "; ")
    )
    bounds = (ProvenBound("unplaced", 1, proof),)
    return replace(plan, status=Status.INFEASIBLE, bounds=bounds, conflict=clashes)


def least_conflict(book: Book, now: int, cure: Cure) -> tuple[Demand, ...]:
    """Return the demands of a least conflict, in the order of the book.

    What contradicts even with every demand given up (an order of steps that
    cannot be, air in which a film never dries) comes as a demand of its own.
    """
    if not contradicts(book, now, cure):
        return ()
    fixed = tuple(_structural(book))
    if fixed:
        return fixed[:1]
    kept = list(demands(book))
    for demand in list(kept):
        fewer = [other for other in kept if other is not demand]
        if contradicts(only(book, fewer), now, cure):
            kept = fewer
    return tuple(kept) or _air(only(book, ()), now, cure)


def _air(bare: Book, now: int, cure: Cure) -> tuple[Demand, ...]:
    """Return the film that never gets there, if it does in usual air and all else is given up."""
    mended = _in_usual_air(bare)
    if contradicts(mended, now, Cure(mended.room, cure.zone)):
        return ()
    problem = Problem(bare, now, cure=cure, calendar=calendar_of(bare.bench_time))
    for activity in problem.activities:
        for fit in problem.fit_airs[activity.index]:
            reason = fit.against(now)
            if reason:
                text = message(
                    "{model}: the air is unfit for {step}: {reason}",
                    model=activity.pass_.key.model,
                    step=activity.pass_.key.step,
                    reason=reason,
                )
                relax = message("warm or dry the air, or tick “in any air” on the step")
                return (Demand(Clash(text, relax), _in_usual_air),)
    for number, gate in enumerate(problem.gates):
        opens = gate.windows[-1].opens
        if not gate.watches_film or opens is None:
            continue
        if cure.opens_at(problem.film_of(number, now), opens) is None:
            text = message(
                "{model}: {step} never dries far enough in this air",
                model=gate.before.model,
                step=gate.before.step,
            )
            relax = message("warm or dry the air, or let it dry elsewhere")
            return (Demand(Clash(text, relax), _in_usual_air),)
    return ()


def _in_usual_air(book: Book) -> Book:
    """Return the book with the air of a label in every location."""
    locations = tuple(
        replace(location, workdays=(USUAL_AIR,), weekends=()) for location in book.room.locations
    )
    return replace(book, room=replace(book.room, locations=locations, readings=()))


def _structural(book: Book) -> Iterator[Demand]:
    """Yield what no wish given up would mend: an order of steps that cannot be done."""
    problem = Problem(book, 0, cure=_no_cure(book), calendar=calendar_of(book.bench_time))
    for activity in problem.activities:
        if activity.blocked:
            key = activity.pass_.key
            text = message(
                "{model}: {step}: {why}", model=key.model, step=key.step, why=activity.blocked
            )
            yield Demand(Clash(text, message("change the order of the steps")), lambda old: old)


def _no_cure(book: Book) -> Cure:
    return Cure(book.room, calendar_of(book.bench_time).zone)
