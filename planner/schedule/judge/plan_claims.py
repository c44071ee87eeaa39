"""Definitions 25 to 28: what a plan says of itself."""

from __future__ import annotations

from collections.abc import Iterator

from planner.schedule.judge.ruling import Ruling
from planner.schedule.judge.verdict import Violation
from planner.values.plan import BenchKind, Cost, Status
from planner.values.project import Project


def levels(ruling: Ruling) -> tuple[str, ...]:
    """Return the levels of the cost in the person's order."""
    return ("unplaced", *(level.value for level in ruling.case.book.preferences.order))


def finishes_of(ruling: Ruling) -> tuple[tuple[str, int], ...]:
    """Return the finish of each active project (definition 26).

    The latest end of its work and late dry-to-handle of its films.  A film
    that is never dry to handle counts to its end of work; of a project
    without any work the finish is ``now``.
    """
    latest: dict[str, int] = {
        project.name: ruling.case.plan.now
        for project in ruling.case.book.projects
        if project.active
    }
    found: dict[str, list[int]] = {name: [] for name in latest}
    for key, span in ruling.case.spans.items():
        found[key.project].append(span.end)
    for coats in ruling.films.coats.values():
        for coat in coats:
            if coat.handled is not None:
                found[coat.key.project].append(coat.handled)
    latest.update((name, max(minutes)) for name, minutes in found.items() if minutes)
    return tuple(latest.items())


def cost_of(ruling: Ruling) -> Cost:
    """Return the cost of a plan (definition 27), as `_cost` finds it."""
    return ruling.once(_cost)


def _cost(ruling: Ruling) -> Cost:
    """Return the cost of a plan; ``moved`` is the plan's own.

    Every pass that is not placed counts as unplaced, named or not.  What
    has finished before now finishes 0 min from now.
    """
    case = ruling.case
    finishes = dict(finishes_of(ruling))
    late = 0
    for project in case.book.projects:
        if project.active:
            late += _late(ruling, project)
    stretches = {
        stretch.interval.start
        for interval, _ in case.hands
        if (stretch := ruling.premises.calendar.stretch_at(interval.start))
    }
    return Cost(
        unplaced=len(ruling.premises.passes) - len(case.spans),
        late=late,
        finish=max(0, max(finishes.values(), default=case.plan.now) - case.plan.now),
        stretches=len(stretches),
        setup_minutes=sum(
            work.interval.minutes for work in case.bench if work.kind is not BenchKind.PREPARE
        ),
        moved=case.plan.cost.moved,
    )


def _late(ruling: Ruling, project: Project) -> int:
    """Return Σ weight × minutes late of a project, each model counted once (definition 26)."""
    calendar, now = ruling.premises.calendar, ruling.case.plan.now
    ends = ruling.once(_ends)
    late, rest = 0, 0
    others = False
    for model in project.models:
        day = model.target or (project.target if model.weight > 1 else None)
        end = ends.get((project.name, model.name), 0)
        if day is None and not model.early:
            rest, others = max(rest, end), True
            continue
        due = now if model.early or day is None else calendar.day_end(day)
        late += project.weight * model.weight * max(0, (end or now) - due)
    if others and project.target is not None:
        late += project.weight * max(0, (rest or now) - calendar.day_end(project.target))
    return late


def _ends(ruling: Ruling) -> dict[tuple[str, str], int]:
    """Return the latest end of work or late dry-to-handle of each model that has any."""
    found: dict[tuple[str, str], int] = {}
    for key, span in ruling.case.spans.items():
        found[key[:2]] = max(found.get(key[:2], 0), span.end)
    for coats in ruling.films.coats.values():
        for coat in coats:
            if coat.handled is not None:
                found[coat.key[:2]] = max(found.get(coat.key[:2], 0), coat.handled)
    return found


def model_finishes_of(ruling: Ruling) -> tuple[tuple[str, str, int], ...]:
    """Return the finish of each model of an active project (definition 26)."""
    ends, now = ruling.once(_ends), ruling.case.plan.now
    return tuple(
        (project.name, model.name, ends.get((project.name, model.name), 0) or now)
        for project in ruling.case.book.projects
        if project.active
        for model in project.models
    )


def finishes(ruling: Ruling) -> Iterator[Violation]:
    """Definition 26: the finishes stated are those that follow."""
    at = ruling.case.at
    stated = dict(ruling.case.plan.finishes)
    right = dict(finishes_of(ruling))
    for name in dict.fromkeys([*right, *stated]):
        if name not in right:
            yield Violation(26, name, "has a finish, but is no active project")
        elif name not in stated:
            yield Violation(26, name, f"has no finish; it is {at(right[name])}")
        elif stated[name] != right[name]:
            text = f"is said to finish at minute {stated[name]}"
            yield Violation(26, name, f"{text}, but does at {right[name]} ({at(right[name])})")
    if len(stated) != len(ruling.case.plan.finishes):
        yield Violation(26, "finishes", "name a project twice")
    yield from _models(ruling)


def _models(ruling: Ruling) -> Iterator[Violation]:
    """Definition 26 for the models, where a plan tells of them."""
    at = ruling.case.at
    right = {(project, model): end for project, model, end in model_finishes_of(ruling)}
    for project, model, said in ruling.case.plan.model_finishes:
        is_ = right.get((project, model))
        name = f"{project}/{model}"
        if is_ is None:
            yield Violation(26, name, "has a finish, but is no model of an active project")
        elif is_ != said:
            text = f"is said to finish at minute {said}, but does at {is_} ({at(is_)})"
            yield Violation(26, name, text)


def cost(ruling: Ruling) -> Iterator[Violation]:
    """Definition 27: the cost stated is the one that follows."""
    right = cost_of(ruling)
    stated = ruling.case.plan.cost
    for level in levels(ruling):
        said, is_ = getattr(stated, level), getattr(right, level)
        if said != is_:
            yield Violation(27, level, f"is said to be {said}, but is {is_}")
    if stated.moved < 0:
        yield Violation(27, "moved", f"is said to be {stated.moved}, and cannot be negative")


def status(ruling: Ruling) -> Iterator[Violation]:
    """Definition 25: the status claims no more than is shown.

    Optimal: a bound equal to the cost for each level named, from the first
    level on without a gap.  Feasible: everything is placed.  Infeasible:
    something is unplaced, with a bound that proves it.  Incomplete:
    something is unplaced.
    """
    plan, right = ruling.case.plan, cost_of(ruling)
    ordered = levels(ruling)
    value = {level: getattr(right, level) for level in ordered}
    bounds = {bound.level: bound.value for bound in plan.bounds}
    for bound in plan.bounds:
        if bound.level not in value:
            yield Violation(25, bound.level, "has a bound, but is no level of the cost")
        elif _exceeds(ordered, bounds, value, bound.level):
            text = f"has the bound {bound.value}, but this plan costs {value[bound.level]}"
            yield Violation(25, bound.level, text)
    if plan.status is Status.OPTIMAL:
        yield from _optimal(ordered, bounds, value)
    elif plan.status is Status.FEASIBLE and right.unplaced:
        text = f"is called feasible, but {right.unplaced} passes are not placed"
        yield Violation(25, "status", text)
    elif plan.status is Status.INCOMPLETE and not right.unplaced:
        yield Violation(25, "status", "is called incomplete, but everything is placed")
    elif plan.status is Status.INFEASIBLE and not right.unplaced:
        yield Violation(25, "status", "is called infeasible, but everything is placed")
    elif plan.status is Status.INFEASIBLE and bounds.get("unplaced", 0) < 1:
        yield Violation(25, "status", "is called infeasible, but no bound of unplaced proves it")


def _exceeds(
    ordered: tuple[str, ...], bounds: dict[str, int], value: dict[str, int], level: str
) -> bool:
    """Tell whether a bound is refuted: the levels before it are at theirs, and it is above."""
    before = ordered[: ordered.index(level)]
    return bounds[level] > value[level] and all(bounds.get(name) == value[name] for name in before)


def _optimal(
    ordered: tuple[str, ...], bounds: dict[str, int], value: dict[str, int]
) -> Iterator[Violation]:
    claimed = [level for level in ordered if level in bounds]
    if not claimed:
        yield Violation(25, "status", "is called optimal, but no bound proves it")
    elif claimed != list(ordered[: len(claimed)]):
        text = f"is called optimal, with bounds for {', '.join(claimed)} but not the levels before"
        yield Violation(25, "status", text)
    for level in claimed:
        if bounds[level] != value[level]:
            text = f"is called optimal, but {level} is {value[level]} and its bound {bounds[level]}"
            yield Violation(25, "status", text)


def digest(ruling: Ruling) -> Iterator[Violation]:
    """Definition 28: the plan answers the very input that it is held against."""
    expected, given = ruling.case.expected_digest, ruling.case.plan.digest
    if expected is not None and given != expected:
        yield Violation(28, "input", f'was planned for "{given}", but the book is "{expected}"')
