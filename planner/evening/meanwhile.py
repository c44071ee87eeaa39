"""What fits while a step goes on alone: hands are free, though the plan counts them as busy.

A plan takes a step marked *hands free* as attended work, so that it holds
even for one who stays and watches.  What could be done meanwhile is offered,
never planned; whoever does it gains those minutes.
"""

from __future__ import annotations

from planner.cure import Cure
from planner.evening.films import laid
from planner.evening.instead import Other, keeps_windows, offer
from planner.schedule.fit import fit_in
from planner.tonight import WorkRow
from planner.values.book import Book
from planner.values.plan import Plan
from planner.values.step import Tool, Trait


def meanwhile(
    book: Book, plan: Plan, row: WorkRow, now: int, *, cure: Cure | None = None
) -> tuple[Other, ...]:
    """Return what can be begun and ended while a row marked *hands free* goes on.

    Nothing on the same parts, nothing that sprays, for its set-up and mist
    would not leave what goes on alone in sight; nothing that would make a
    window be missed.
    """
    if Trait.HANDS_FREE not in row.traits:
        return ()
    table = laid(book, max(row.start, now), cure, plan.placements)
    stretch = table.problem.calendar.stretch_at(row.start)
    if stretch is None:
        return ()
    mine = table.problem.index.get(row.key)
    found = []
    for activity in table.problem.activities:
        one = activity.one
        busy = one.key[:2] == row.key[:2] and not set(one.parts).isdisjoint(row.parts)
        if activity.index in table.end or activity.blocked or busy or mine in activity.before:
            continue
        if one.step.tool in (Tool.AIRBRUSH, Tool.CAN):
            continue
        if any(before not in table.end for before in activity.before):
            continue
        fit = fit_in(table, activity.index, stretch, max(row.start, now))
        if fit is None or not fit.last or fit.end > row.end:
            continue
        if keeps_windows(table, fit, stretch):
            found.append(offer(table, fit))
    return tuple(sorted(found, key=lambda one: (one.start, one.key)))
