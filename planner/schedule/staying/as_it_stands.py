"""The plan before, to the minute, on the table of today."""

from __future__ import annotations

from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.problem import Problem
from planner.schedule.staying.kept import KeptPiece, KeptPlan
from planner.values.plan import Placement, Plan


def as_it_stands(
    problem: Problem, last: Plan, facts: PartialSchedule, kept: KeptPlan
) -> PartialSchedule | None:
    """Return the table with all of a plan done as it says, whether that holds or not.

    What it left out is left out again.  None where that is not even a
    question: something is new, or should have begun by now.  Only the judge
    can tell whether it holds.
    """
    done = {*facts.end, *kept.lost}
    open_ = [activity for activity in problem.activities if activity.index not in done]
    if any(activity.index not in kept.pieces for activity in open_):
        return None
    if any(piece.begin < problem.now for piece in kept.events if isinstance(piece, KeptPiece)):
        return None
    if any(activity.pass_.minutes != _minutes(kept, activity.index) for activity in open_):
        return None
    known = {activity.pass_.key for activity in problem.activities}
    if any(placement.key not in known for placement in last.placements):
        return None
    table = facts.clone()
    airbrushes = {placed.key: placed.airbrush for placed in last.placements}
    own = {brush.name for brush in problem.book.gear.airbrushes}
    for index in sorted(kept.pieces, key=lambda i: (kept.pieces[i][0].start, i)):
        key, pieces = problem.activities[index].pass_.key, kept.pieces[index]
        if airbrushes[key] not in own | {""}:
            return None
        if any(before not in table.end for before in problem.activities[index].before):
            return None
        table.pieces[index] = pieces
        table.placements.append(Placement(key, pieces, airbrushes[key]))
        table.lay(index, pieces[0].start, pieces[-1].end)
    table.bench = [work for work in last.bench if work.interval.start >= problem.now]
    return table


def _minutes(kept: KeptPlan, index: int) -> int:
    return sum(piece.minutes for piece in kept.pieces[index])
