"""Work done out of its order: where it really stands, and what the stack says to that."""

from __future__ import annotations

from dataclasses import dataclass

from planner.evening.log_entries import begun, model_of, step_of
from planner.evening.split_steps import split_after, touched
from planner.layers.findings import Finding, find
from planner.layers.named_mends import Move
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.lookup import project_of
from planner.values.plan import PassKey
from planner.values.step import UNDONE_BY, Stage


@dataclass(frozen=True)
class OutOfOrder:
    """A step that was done before others that the working order puts ahead of it.

    Attributes
    ----------
    book
        The book with the step where it was really done.
    before
        Ids of the steps that it overtook.
    findings
        What the order of coats is found to be unsound in, and was not before.
    """

    book: Book
    before: tuple[str, ...]
    findings: tuple[Finding, ...]


def out_of_order(book: Book, key: PassKey) -> OutOfOrder | None:
    """Return what doing a step before its turn leads to; None if it was its turn.

    It may be asked before the step is noted, or after.
    """
    overtaken = _overtaken(book, key)
    if not overtaken:
        return None
    before = {(finding.key, finding.places) for finding in find(book)}
    moved = as_done(book, key)
    fresh = tuple(finding for finding in find(moved) if (finding.key, finding.places) not in before)
    return OutOfOrder(moved, overtaken, fresh)


def as_done(book: Book, key: PassKey) -> Book:
    """Return the book with a step where it was done: ahead of those that it overtook.

    It is untied from them.  Coats of it that are not begun stay where they were;
    what a mask would cover by that comes once it is off (definition 22).
    """
    overtaken = _overtaken(book, key)
    if not overtaken:
        return book
    book, _ = split_after(book, key._replace(coat=1))
    for name in overtaken:
        book, _ = split_after(book, key._replace(step=name, coat=1))
    left = _overtaken(book, key)
    spot = ModelKey(key.project, key.model)
    book = Move(spot, key.step, left[0], before=True).apply(book)
    for name, unmask in reversed(_kept_out(book, key, left)):
        book = Move(spot, name, unmask, before=False).apply(book)
    return book


def _kept_out(book: Book, key: PassKey, left: tuple[str, ...]) -> list[tuple[str, str]]:
    """Return which of the steps left a mask covers, and the step that takes it off."""
    model, mask = model_of(book, key), step_of(book, key)
    if mask.stage is not Stage.MASK:
        return []
    places = touched(project_of(book, key.project), model)
    found = []
    for name in left:
        step = next(step for step in model.steps if step.id == name)
        covered = places[name] & places[mask.id] if step.applications else set()
        off = [
            other.id
            for other in model.steps
            if other.stage is Stage.UNMASK and places[other.id] & covered
        ]
        if off:
            found.append((name, off[-1]))
    return found


def _overtaken(book: Book, key: PassKey) -> tuple[str, ...]:
    """Return the steps written ahead of one, not wholly begun, that it depends on.

    What it takes off was there, noted or not (definition 22).
    """
    model, step = model_of(book, key), step_of(book, key)
    project = project_of(book, key.project)
    places = touched(project, model)
    named = {*step.after, *(gate.after for gate in step.gates)}
    at = [step.id for step in model.steps].index(step.id)
    return tuple(
        other.id
        for other in model.steps[:at]
        if not (UNDONE_BY.get(other.stage) is step.stage and places[step.id] & places[other.id])
        and len(begun(project, key.model, other.id)) < other.coats
        and (other.id in named or places[step.id] & places[other.id])
    )
