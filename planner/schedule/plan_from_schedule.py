"""From a searched table to a plan: finishes, cost, status and reasons."""

from __future__ import annotations

from dataclasses import replace

from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.schedule.problem import Problem
from planner.schedule.reasons import reasons_of
from planner.values.plan import BenchKind, Cost, PassKey, Placement, Plan, Status, Unplaced

Ends = dict[tuple[str, str], int]


def ends_of(problem: Problem, table: PartialSchedule) -> Ends:
    """Return when each model of an active project is done and dry to handle; 0 without any work.

    A film that is never dry-to-handle does not move the end; what waits for
    it is unplaced and said so.
    """
    found = {
        (project.name, model.name): 0
        for project in problem.book.projects
        if project.active
        for model in project.models
    }
    for index, end in table.end.items():
        key = problem.activities[index].pass_.key
        found[key.project, key.model] = max(found[key.project, key.model], end)
    for (project, model, _), until in table.wet.items():
        if until < FOREVER:
            found[project, model] = max(found[project, model], until)
    return found


def finishes_of(problem: Problem, ends: Ends) -> dict[str, int]:
    """Return the finish of every active project (definition 26); without any work it is now."""
    found: dict[str, int] = {}
    for (project, _), end in ends.items():
        found[project] = max(found.get(project, 0), end)
    return {name: end or problem.now for name, end in found.items()}


def cost_of(problem: Problem, table: PartialSchedule, unplaced: int, last: Plan | None) -> Cost:
    """Return the cost vector of a table (definition 27)."""
    ends = ends_of(problem, table)
    finishes = finishes_of(problem, ends)
    late = 0
    for due in problem.dues:
        end = max(ends[due.project, name] for name in due.models) or problem.now
        late += due.weight * max(0, end - due.at)
    hands = [
        *(
            piece.start
            for placement in table.placements
            if not placement.logged
            for piece in placement.pieces
        ),
        *(work.interval.start for work in table.bench),
    ]
    stretches = {
        stretch.interval.start
        for start in hands
        if (stretch := problem.calendar.stretch_at(start)) is not None
    }
    setup = sum(work.interval.minutes for work in table.bench if work.kind is not BenchKind.PREPARE)
    return Cost(
        unplaced=unplaced,
        late=late,
        finish=max(0, max(finishes.values(), default=problem.now) - problem.now),
        stretches=len(stretches),
        setup_minutes=setup,
        moved=_moved(problem, table, last),
    )


def _moved(problem: Problem, table: PartialSchedule, last: Plan | None) -> int:
    """Count steps that start in another stretch than in the last plan."""
    if last is None:
        return 0
    before = {placed.key: placed.start for placed in last.placements}
    moved: set[tuple[str, str, str]] = set()
    for placed in table.placements:
        was = before.get(placed.key)
        if was is None or was == placed.start or placed.logged:
            continue
        if problem.calendar.stretch_at(was) != problem.calendar.stretch_at(placed.start):
            moved.add((placed.key.project, placed.key.model, placed.key.step))
    return len(moved)


def plan_of(problem: Problem, table: PartialSchedule, unplaced: list[Unplaced], cost: Cost) -> Plan:
    """Return the plan that a table of this ``cost`` holds, a reason on every placement."""
    return reasoned(problem, table, unreasoned(problem, table, unplaced, cost))


def reasoned(problem: Problem, table: PartialSchedule, plan: Plan) -> Plan:
    """Return the plan that was read from a table with a reason on every placement."""
    reasons = reasons_of(problem, table)
    placements = tuple(
        Placement(
            placed.key,
            placed.pieces,
            placed.airbrush,
            reasons[placed.key],
            placed.logged,
            placed.location,
        )
        for placed in plan.placements
    )
    return replace(plan, placements=placements)


def unreasoned(
    problem: Problem, table: PartialSchedule, unplaced: list[Unplaced], cost: Cost
) -> Plan:
    """Return the plan that a table of this ``cost`` holds, to be weighed before it is told."""
    ends = ends_of(problem, table)
    models = ((*spot, end or problem.now) for spot, end in sorted(ends.items()))
    return Plan(
        now=problem.now,
        placements=tuple(sorted(table.placements, key=_by_time)),
        bench=tuple(sorted(table.bench, key=lambda work: work.interval)),
        unplaced=tuple(unplaced),
        status=Status.INCOMPLETE if unplaced else Status.FEASIBLE,
        cost=cost,
        finishes=tuple(sorted(finishes_of(problem, ends).items())),
        model_finishes=tuple(models),
    )


def _by_time(placed: Placement) -> tuple[int, PassKey]:
    return placed.start, placed.key
