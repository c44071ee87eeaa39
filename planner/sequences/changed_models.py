"""Models whose order is changed: the sequence is given anew, and what a person edited stays."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import replace

from planner.sequences.apply_to_book import fresh, in_logbook, sequence_named, with_model_in
from planner.sequences.apply_to_model import colours_needed
from planner.sequences.difference import still
from planner.sequences.named_changes import changed, still_fitting
from planner.sequences.references import normal
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.lookup import model_named, project_of
from planner.values.message import message
from planner.values.model import Made, Model, NamedChange
from planner.values.refusal import Refused
from planner.values.sequence import Sequence
from planner.values.step import Step

Steps = tuple[Step, ...]
BY_TOOL = re.compile(r"-(airbrush|brush|can)$")  # what ids of the built-in sequences end with


def made_of(model: Model) -> Made:
    """Return what a model was made of; `Refused` if it follows no sequence."""
    if model.made is None:
        raise Refused(
            "made",
            message(
                '"{model}" follows no sequence; give it one, or save its own', model=model.name
            ),
        )
    return model.made


def rechanged(
    book: Book,
    project: str,
    name: str,
    changes: tuple[NamedChange, ...],
    colours: Mapping[str, str] | None = None,
) -> Book:
    """Return the book with other changes made to the order of a model.

    Steps that a person edited, added or took away stay so; what was begun
    keeps its form, whatever tool it would be done with by now.

    Raises
    ------
    Refused
        If the model follows no sequence, a change does not fit it, or work
        in the logbook would be gone.
    """
    home = project_of(book, project)
    model = model_named(home, name)
    made = made_of(model)
    sequence = sequence_named(book, made.sequence)
    options, taken = still(sequence, made)
    before = still_fitting(sequence, options, made.changes)
    base = fresh(book, home, model, sequence, options, taken, before).model.steps
    wanted = _colours(model, (sequence, options), (before, changes), {**taken, **(colours or {})})
    given = fresh(book, home, model, sequence, options, wanted, changes).model
    begun = in_logbook(home, name)
    steps = _with_begun(model, merged(model, base, given.steps), begun)
    steps = _as_written(model, steps)
    _demand_kept(steps, model, begun)
    new = replace(given, steps=steps)
    return with_project(book, project, lambda old: with_model_in(old, new))


def merged(model: Model, base: Steps, new: Steps) -> Steps:
    """Return new steps with what a person changed in those that were given before.

    Parameters
    ----------
    base
        The steps that the model was given.
    new
        Those that it would be given now.
    """
    old, was = {s.id: normal(model, s) for s in model.steps}, {s.id: normal(model, s) for s in base}
    if list(old.items()) == list(was.items()):
        return new
    becomes = {step.id: step for step in new}
    kept: list[Step] = []
    for step in model.steps:
        if step.id in becomes:
            untouched = old[step.id] == was.get(step.id)
            kept.append(becomes[step.id] if untouched else step)
        elif step.id not in was:
            kept.append(step)
    before = ""
    for step in new:
        if step.id not in was and step.id not in old:
            ids = [one.id for one in kept]
            at = ids.index(before) + 1 if before in ids else 0
            kept.insert(at, step)
        if step.id in {one.id for one in kept}:
            before = step.id
    return _in_order(kept)


def _as_written(model: Model, steps: Steps) -> Steps:
    """Return steps with those that stay as they are in the writing that they have."""
    own = {step.id: step for step in model.steps}
    return tuple(
        own[step.id]
        if step.id in own and normal(model, own[step.id]) == normal(model, step)
        else step
        for step in steps
    )


def _in_order(steps: Iterable[Step]) -> Steps:
    """Return steps that wait for nothing but what comes before them."""
    found: list[Step] = []
    for step in steps:
        there = {one.id for one in found}
        found.append(
            replace(
                step,
                after=tuple(name for name in step.after if name in there),
                gates=tuple(gate for gate in step.gates if gate.after in there),
            )
        )
    return tuple(found)


def _with_begun(model: Model, steps: Steps, begun: set[str]) -> Steps:
    """Return the steps with begun ones in the place of the same work with another tool."""
    there = {step.id for step in steps}
    found = {
        BY_TOOL.sub("", step.id): step
        for step in model.steps
        if step.id in begun and step.id not in there
    }
    renamed = {
        step.id: found[stem].id
        for step in steps
        if (stem := BY_TOOL.sub("", step.id)) in found and step.stage is found[stem].stage
    }
    if not renamed:
        return steps
    own = {step.id: step for step in model.steps}

    def follow(step: Step) -> Step:
        step = own[renamed[step.id]] if step.id in renamed else step
        return replace(
            step,
            after=tuple(renamed.get(name, name) for name in step.after),
            gates=tuple(
                replace(gate, after=renamed.get(gate.after, gate.after)) for gate in step.gates
            ),
        )

    return _in_order(map(follow, steps))


def _demand_kept(steps: Steps, model: Model, begun: set[str]) -> None:
    there = {step.id for step in steps}
    lost = [step.title or step.id for step in model.steps if step.id in begun - there]
    if lost:
        mend = message(
            '{steps} of "{name}" is in the logbook and cannot be undone; leave this model as it is',
            steps=", ".join(lost),
            name=model.name,
        )
        raise Refused(model.name, mend)


def _colours(
    model: Model,
    order: tuple[Sequence, tuple[str, ...]],
    changes: tuple[tuple[NamedChange, ...], tuple[NamedChange, ...]],
    chosen: Mapping[str, str],
) -> dict[str, str]:
    """Return the coatings chosen for colours that an order knows with other changes.

    What only a change brought goes when that is taken out.
    """
    before, after = changes
    old, new = (changed(*order, each) for each in (before, after))
    known = {colour.name for colour in new[0].colours}
    needed = [
        {colour.name for colour in colours_needed(sequence, model, options)}
        for sequence, options in (old, new)
    ]
    gone = needed[0] - needed[1] if set(after) < set(before) else set()
    return {name: coating for name, coating in chosen.items() if name in known - gone}
