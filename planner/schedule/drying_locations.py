"""Where films dry, for steps that leave the choice."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from planner.values.book import Book
from planner.values.keys import StepKey
from planner.values.plan import Plan
from planner.values.step import Step


def choices(book: Book) -> dict[StepKey, tuple[str, ...]]:
    """Return every step not yet begun whose films may dry in several locations, with those."""
    return {
        StepKey(project.name, model.name, step.id): (step.dries_in, *step.or_in)
        for project in book.projects
        if project.active
        for model in project.models
        for step in model.steps
        if step.or_in
        and not any((fact.model, fact.step) == (model.name, step.id) for fact in project.log)
    }


def settled(book: Book, chosen: Mapping[StepKey, str]) -> Book:
    """Return the book with the films of these steps drying where it was chosen."""
    if not chosen:
        return book
    projects = []
    for project in book.projects:
        models = tuple(
            replace(model, steps=tuple(_settled(chosen, project.name, model.name, model.steps)))
            if any(key[:2] == (project.name, model.name) for key in chosen)
            else model
            for model in project.models
        )
        same = all(old is new for old, new in zip(project.models, models, strict=True))
        projects.append(project if same else replace(project, models=models))
    return replace(book, projects=tuple(projects))


def chosen_in(book: Book, plan: Plan) -> dict[StepKey, str]:
    """Return where a plan lets films dry, for steps where it is not the step's own place.

    What names no alternative of its step is left out; definition 10 speaks of it.
    """
    open_to = choices(book)
    found = {}
    for placed in plan.placements:
        key = StepKey(*placed.key[:3])
        if placed.location and placed.location in open_to.get(key, ()):
            found[key] = placed.location
    return found


def told(plan: Plan, chosen: Mapping[StepKey, str]) -> Plan:
    """Return the plan with the chosen locations written on its placements."""
    if not chosen:
        return plan
    placements = tuple(
        replace(placed, location=chosen[StepKey(*placed.key[:3])])
        if StepKey(*placed.key[:3]) in chosen and not placed.logged
        else placed
        for placed in plan.placements
    )
    return replace(plan, placements=placements)


def _settled(
    chosen: Mapping[StepKey, str], project: str, model: str, steps: tuple[Step, ...]
) -> Iterator[Step]:
    for step in steps:
        location = chosen.get(StepKey(project, model, step.id), step.dries_in)
        if location == step.dries_in:
            yield step
        else:
            others = tuple(name for name in (step.dries_in, *step.or_in) if name != location)
            yield replace(step, dries_in=location, or_in=others)
