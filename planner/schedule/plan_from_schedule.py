"""From a searched table to a plan: finishes, cost, status and reasons."""

from __future__ import annotations

from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.schedule.problem import Problem
from planner.schedule.reasons import reasons_of
from planner.values.plan import BenchKind, Cost, PassKey, Placement, Plan, Status, Unplaced


def finishes_of(problem: Problem, table: PartialSchedule) -> dict[str, int]:
    """Return the finish of every active project (definition 26).

    A film that is never dry-to-handle does not move the finish; what waits
    for it is unplaced and said so.  A project without any work placed or
    logged "finishes" now.
    """
    found: dict[str, list[int]] = {
        project.name: [] for project in problem.book.projects if project.active
    }
    for index, end in table.end.items():
        found[problem.activities[index].one.key.project].append(end)
    for (name, _, _), until in table.wet.items():
        if until < FOREVER:
            found[name].append(until)
    return {name: max(ends, default=problem.now) for name, ends in found.items()}


def cost_of(problem: Problem, table: PartialSchedule, unplaced: int, last: Plan | None) -> Cost:
    """Return the cost vector of a table (definition 27)."""
    finishes = finishes_of(problem, table)
    late = 0
    for number, project in enumerate(problem.book.projects):
        target = problem.targets[number]
        if project.active and target is not None:
            late += project.weight * max(0, finishes[project.name] - target)
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
    reasons = reasons_of(problem, table)
    placements: list[Placement] = [
        Placement(
            placement.key,
            placement.pieces,
            placement.airbrush,
            reasons[placement.key],
            placement.logged,
            placement.location,
        )
        for placement in table.placements
    ]
    placements.sort(key=_by_time)
    return Plan(
        now=problem.now,
        placements=tuple(placements),
        bench=tuple(sorted(table.bench, key=lambda work: work.interval)),
        unplaced=tuple(unplaced),
        status=Status.INCOMPLETE if unplaced else Status.FEASIBLE,
        cost=cost,
        finishes=tuple(sorted(finishes_of(problem, table).items())),
    )


def _by_time(placed: Placement) -> tuple[int, PassKey]:
    return placed.start, placed.key
