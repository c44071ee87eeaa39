"""Looking for a better plan while somebody waits, and for what clashes where not all is placed."""

from __future__ import annotations

import contextlib
from collections.abc import Callable
from dataclasses import replace

from app.service.improving import Task, improvements
from app.service.planning import Planned
from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.judge import Premises, judge
from planner.schedule.optimise.effort import Effort
from planner.schedule.staying.policy import choose, firm_times
from planner.values.book import Book


def looked_into(
    planned: Planned,
    book: Book,
    seconds: float,
    tell: Callable[[str], None],
    *,
    near: bool = False,
) -> Planned:
    """Return the best plan found within some time; Ctrl+C ends it early with what there is.

    Parameters
    ----------
    planned
        The first plan of ``book``, which is the one asked for.  Where it
        leaves passes over, what clashes is looked for first, for as long as
        that takes; where it is proven, nothing else is looked for.
    seconds
        For better plans [s]; 0 for none.
    tell
        Hears of what went wrong, in one line; the plan is kept then.
    near
        The first plan is one that somebody knows: another takes its place
        only as far as definition 27a lets it, and is offered else.
    """
    found = planned.plan
    effort = Effort() if seconds else Effort(rolls=0, proofs=0)
    with contextlib.suppress(KeyboardInterrupt):
        for improvement in improvements(Task(book, found, effort=effort), seconds, tell):
            found = improvement.plan
    if found is planned.plan:
        return planned
    if near and found.placements != planned.plan.placements:
        firm = firm_times(planned.calendar, planned.plan.now, planned.promised)
        choice = choose(book, planned.calendar, planned.plan, [found], firm)
        if choice.taken is planned.plan:
            return replace(planned, offer=choice.offered or planned.offer)
    verdict = judge(book, found, premises=Premises(book, planned.cure, planned.calendar))
    there = settled(book, chosen_in(book, found))
    return replace(planned, plan=found, verdict=verdict, book=there, offer=None)
