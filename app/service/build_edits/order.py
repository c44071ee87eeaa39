"""Moving steps and models, and what keeps a step where it stands in the working order."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import replace

from app.service.build_edits.locate import logged, model_of, with_model
from app.service.edits import Edit
from planner.graph.gates import PassGate, written_gates
from planner.graph.network import check_acyclic
from planner.layers.finding import Finding
from planner.layers.findings import find
from planner.layers.overcoat_table import LayerVerdict
from planner.passes import expand_model
from planner.schedule.impossible_passes import blocked
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.keys import ModelKey
from planner.values.lookup import project_of
from planner.values.message import called, message
from planner.values.model import Model
from planner.values.project import Project
from planner.values.refusal import Refused
from planner.values.step import Stage, Step

FOLLOWERS = frozenset({Stage.WIPE, Stage.PRESS, Stage.CHIP_RUB, Stage.UNMASK})
"""Work that undoes or ends what an earlier step began: it never goes ahead of it."""


def move_steps(book: Book, at: ModelKey, ids: Collection[str], to: int) -> Edit:
    """Put steps, in their own order, before the step that stands at ``to`` now.

    Raises
    ------
    Refused
        Naming the gate, if one forbids it.
    """
    model = model_of(book, at)
    moved = tuple(step for step in model.steps if step.id in ids)
    ahead = tuple(step for step in model.steps[:to] if step.id not in ids)
    behind = tuple(step for step in model.steps[to:] if step.id not in ids)
    steps = (*ahead, *moved, *behind)
    name = called(
        "{model}: move {moved}", model=at.model, moved=", ".join(step.id for step in moved)
    )
    if steps == model.steps:
        return Edit(name, book)
    project = project_of(book, at.project)
    changed = with_model(book, at, lambda model: replace(model, steps=steps))
    demand_gates(book, changed, project, model)
    return Edit(name, changed)


def shift_steps(book: Book, at: ModelKey, ids: Collection[str], down: bool) -> Edit:
    """Move steps one place up or down; at the end of the order nothing happens."""
    steps = model_of(book, at).steps
    places = [number for number, step in enumerate(steps) if step.id in ids]
    to = min(places[-1] + 2, len(steps)) if down else max(places[0] - 1, 0)
    return move_steps(book, at, ids, to)


def move_models(book: Book, project: str, names: Collection[str], to: int) -> Edit:
    """Put models, in their own order, before the model that stands at ``to`` now."""

    def change(old: Project) -> Project:
        moved = [model for model in old.models if model.name in names]
        ahead = [model for model in old.models[:to] if model.name not in names]
        behind = [model for model in old.models[to:] if model.name not in names]
        return replace(old, models=(*ahead, *moved, *behind))

    moved = ", ".join(
        model.name for model in project_of(book, project).models if model.name in names
    )
    return Edit(
        called("{project}: move {moved}", project=project, moved=moved),
        with_project(book, project, change),
    )


def demand_gates(book: Book, changed: Book, project: Project, model: Model) -> None:
    """Demand that another order of a model's steps breaks no gate.

    Raises
    ------
    Refused
        Naming the first gate that it breaks.
    """
    other = changed.project(project.name).model(model.name)
    was, now = _ranks(model.steps), _ranks(other.steps)
    steps = {step.id: step for step in model.steps}
    for gate in written_gates(book, project, model):
        first, then = gate.before.step, gate.after.step
        crossed = was[first] < was[then] and now[first] > now[then]
        if crossed and _binds(gate, steps):
            why = _why(gate, steps[then])
            raise Refused(
                "",
                message(
                    "“{then}” must stay behind “{first}”: {why}", then=then, first=first, why=why
                ),
            )
    _demand_done_first(changed, project, other, now, was)
    check_acyclic(changed)
    _demand_placeable(book, changed, project, model, other)


def _ranks(steps: Sequence[Step]) -> dict[str, int]:
    return {step.id: number for number, step in enumerate(steps)}


def _binds(gate: PassGate, steps: dict[str, Step]) -> bool:
    """Tell whether a gate is about these two steps, not about whichever coat comes first."""
    then = steps[gate.after.step]
    written = (*then.after, *(gate.after for gate in then.gates))
    return (
        gate.before.step in written
        or then.stage in FOLLOWERS
        or steps[gate.before.step].stage is Stage.MASK
    )


def _why(gate: PassGate, then: Step) -> str:
    if gate.before.step in [gate.after for gate in then.gates]:
        return message("its gate counts from there")
    return message("it waits for that") if gate.before.step in then.after else gate.why


def _demand_done_first(
    changed: Book, project: Project, other: Model, now: dict[str, int], was: dict[str, int]
) -> None:
    for gate in written_gates(changed, project, other):
        first, then = gate.before.step, gate.after.step
        if was[first] < was[then] or not logged(project, other.name, then):
            continue
        if now[first] < now[then] and not logged(project, other.name, first):
            raise Refused(
                "",
                message(
                    "“{then}” has been done on these places; nothing goes under it now", then=then
                ),
            )


def _demand_placeable(
    book: Book, changed: Book, project: Project, model: Model, other: Model
) -> None:
    before = blocked(book, model, expand_model(project.name, model))
    known = {key.step for key in before}
    for key, why in blocked(changed, other, expand_model(project.name, other)).items():
        if key.step not in known:
            raise Refused(
                "", message("“{step}” could not be done there: {why}", step=key.step, why=why)
            )
    never = {finding.key for finding in _never(book, project.name, model)}
    for finding in _never(changed, project.name, other):
        if finding.key not in never:
            raise Refused("", finding.message)


def _never(book: Book, project: str, model: Model) -> list[Finding]:
    """Return what may never be in the order of one model."""
    whole = book.project(project)
    log = tuple(entry for entry in whole.log if entry.model == model.name)
    alone = replace(
        whole, models=(model,), active=True, pins=(), observed=(), diary=(), pilot="", log=log
    )
    found = find(replace(book, projects=(alone,)))
    return [finding for finding in found if finding.verdict is LayerVerdict.NEVER and finding.step]
