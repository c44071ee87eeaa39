"""A step that is left out: it leaves the model, and what it held together is tied anew."""

from __future__ import annotations

from dataclasses import dataclass, replace

from planner.evening.log_entries import begun, model_of, step_of
from planner.evening.split_steps import places_of
from planner.layers.named_mends import kept
from planner.values.book import Book
from planner.values.book_changes import instead_of_its_like, with_project, with_steps
from planner.values.coating import Window
from planner.values.lookup import project_of
from planner.values.message import message
from planner.values.model import Model
from planner.values.plan import PassKey
from planner.values.project import Project
from planner.values.refusal import demand
from planner.values.step import LAYS_NO_FILM, UNDONE_BY, Gate, Stage, Step

FREE = frozenset({Stage.TURN, Stage.MASK, Stage.CLEAN})
"""Lay no film, and yet serve no one coat."""


@dataclass(frozen=True)
class Skipped:
    """The book without a step, and the ids of all that left the model with it."""

    book: Book
    gone: tuple[str, ...]


def skipped(book: Book, key: PassKey) -> Skipped:
    """Return the book without a step, or without those of its coats that are not begun.

    What only serves it (wiping back a wash) goes with it.  What waited for
    it waits for what it waited for.

    Raises
    ------
    Refused
        If all of it is done, or it is under way.
    """
    model, step = model_of(book, key), step_of(book, key)
    entries = begun(project_of(book, key.project), key.model, key.step)
    demand(
        all(entry.end is not None for entry in entries),
        "step",
        message(
            '"{step}" is under way; say what is done of it, or take its beginning back',
            step=step.id,
        ),
    )
    last = max((entry.coat for entry in entries), default=0)
    demand(last < step.coats, "step", message('"{step}" is done already', step=step.id))
    if last:
        return Skipped(_shortened(book, key, step, last), ())
    logged = {entry.step for entry in project_of(book, key.project).log if entry.model == key.model}
    gone = [step.id]
    steps = list(model.steps)
    for number, other in enumerate(steps):
        if other.id in logged or other.id in gone:
            continue
        served = [model.steps[at] for at in range(number) if model.steps[at].id in gone]
        left = _without_service(model, other, served, number)
        if left is None:
            gone.append(other.id)
        else:
            steps[number] = left
    steps = _tied_anew(steps, gone)
    return Skipped(_with_steps(book, key, replace(model, steps=tuple(steps)), gone), tuple(gone))


def _without_service(model: Model, other: Step, served: list[Step], number: int) -> Step | None:
    """Return what is left of a step once some that it may serve are gone; None is nothing."""
    mine = [step for step in served if _serves(model, other, step, number)]
    if not mine:
        return other
    bare = {place for step in mine for place in places_of(model, step)}
    return kept(model, other, lambda place: place not in bare)


def _serves(model: Model, other: Step, step: Step, number: int) -> bool:
    shared = set(places_of(model, other)) & set(places_of(model, step))
    if not shared:
        return False
    if other.stage in LAYS_NO_FILM - FREE and any(gate.after == step.id for gate in other.gates):
        return True
    if other.stage is not UNDONE_BY.get(step.stage):
        return False
    at = [other.id for other in model.steps].index(step.id)
    between = [other for other in model.steps[at + 1 : number] if other.stage is step.stage]
    again = {place for other in between for place in places_of(model, other)}
    return not shared <= again


def _tied_anew(steps: list[Step], gone: list[str]) -> list[Step]:
    """Return the steps without those gone, each tied to what the gone ones were tied to."""
    for name in gone:
        lost = next(step for step in steps if step.id == name)
        steps = [_bridged(step, lost) for step in steps if step.id != name]
    return steps


def _bridged(step: Step, lost: Step) -> Step:
    """Tie a step that waited for ``lost`` to what ``lost`` waited for.

    It takes over the openings: a film that was too fresh for the one is too
    fresh for the other.  Closings and preparations were the lost step's own.
    """
    waited = lost.id in step.after or any(gate.after == lost.id for gate in step.gates)
    if not waited:
        return step
    gates = [gate for gate in step.gates if gate.after != lost.id]
    tied = {gate.after for gate in gates}
    after = [name for name in step.after if name != lost.id]
    for gate in lost.gates:
        opens = gate.windows[0].opens
        if opens is not None and gate.after not in tied and gate.after != step.id:
            gates.append(Gate(after=gate.after, windows=(Window(opens=opens),)))
            tied.add(gate.after)
    after += [*lost.after, *(gate.after for gate in lost.gates)]
    names = dict.fromkeys(name for name in after if name not in tied and name != step.id)
    return replace(step, gates=tuple(gates), after=tuple(names))


def _with_steps(book: Book, key: PassKey, model: Model, gone: list[str]) -> Book:
    """Put the model in the book; wishes and looks that name what is gone go with it."""
    paths = {f"{key.model}/{name}" for name in gone}

    def changed(project: Project) -> Project:
        pins = tuple(
            pin
            for pin in project.pins
            if f"{pin.model}/{pin.step}" not in paths and pin.beside not in paths
        )
        seen = tuple(look for look in project.observed if f"{look.model}/{look.step}" not in paths)
        placed = instead_of_its_like(project, model)
        return replace(placed, pins=pins, observed=seen)

    return with_project(book, key.project, changed)


def _shortened(book: Book, key: PassKey, step: Step, coats: int) -> Book:
    """Leave out the coats of a step behind ``coats``."""
    fewer = tuple(
        replace(application, coats=min(application.coats, coats))
        for application in step.applications
    )
    short = replace(step, applications=fewer)

    def changed(project: Project) -> Project:
        model = project.model(key.model)
        shorter = with_steps(model, lambda other: short if other.id == step.id else other)
        pins = tuple(
            pin
            for pin in project.pins
            if (pin.model, pin.step) != (key.model, key.step) or (pin.coat or 1) <= coats
        )
        return replace(instead_of_its_like(project, shorter), pins=pins)

    return with_project(book, key.project, changed)
