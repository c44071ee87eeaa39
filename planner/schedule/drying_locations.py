"""Where films dry, for steps that leave the choice."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from planner.values.book import Book
from planner.values.book_changes import with_every_model, with_steps
from planner.values.keys import ModelKey, StepKey
from planner.values.model import Model
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
    homes = {key.home for key in chosen}

    def there(key: ModelKey, model: Model) -> Model:
        if key not in homes:
            return model
        return with_steps(model, lambda step: _settled(step, chosen.get(StepKey(*key, step.id))))

    return with_every_model(book, there)


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


def _settled(step: Step, location: str | None) -> Step:
    if location is None or location == step.dries_in:
        return step
    others = tuple(name for name in (step.dries_in, *step.or_in) if name != location)
    return replace(step, dries_in=location, or_in=others)
