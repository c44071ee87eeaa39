"""Giving sequences to models of a book, and giving them anew."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from planner.sequences.apply_to_model import colours_needed, steps_for
from planner.sequences.built_in import ALL
from planner.sequences.chosen_options import complete
from planner.sequences.named_changes import changed, still_fitting
from planner.sequences.save_from_model import painted_cm2
from planner.values.book import Book
from planner.values.book_changes import instead_of_its_like, with_project
from planner.values.lookup import model_named, project_of
from planner.values.message import message
from planner.values.model import Chosen, Made, Model, NamedChange
from planner.values.project import Pin, Project
from planner.values.refusal import Refused, unknown
from planner.values.sequence import Sequence
from planner.values.step import Step


@dataclass(frozen=True)
class Given:
    """What a model becomes with a sequence.

    ``lost`` names steps of the logbook that would no longer be there; while
    there is one, the model cannot take the sequence.
    """

    model: Model
    lost: tuple[str, ...]


def every_sequence(book: Book) -> tuple[Sequence, ...]:
    """Return a person's own sequences, then the built-in ones that none of them replaces."""
    own = {sequence.name for sequence in book.sequences}
    return (*book.sequences, *(sequence for sequence in ALL if sequence.name not in own))


def sequence_named(book: Book, name: str) -> Sequence:
    """Return a sequence by its name, a person's own before a built-in one.

    Raises
    ------
    Refused
        If there is none.
    """
    known = {sequence.name: sequence for sequence in every_sequence(book)}
    if name not in known:
        raise Refused("sequence", unknown("sequence", name, known))
    return known[name]


def give(
    book: Book,
    project: str,
    models: Iterable[str],
    sequence: Sequence,
    options: Iterable[str] | None = None,
    colours: Mapping[str, str] | None = None,
    changes: tuple[NamedChange, ...] | None = None,
) -> Book:
    """Return the book with a sequence's steps on some models of a project.

    What was logged stays: a step that was begun keeps its form.  Pins go
    with the steps that they are on.  ``changes`` are made to the sequence
    for these models; absent, a model that follows it already keeps its own.

    Raises
    ------
    Refused
        If a project, model, option, colour or coating is not there, or a
        step that is in the logbook would no longer be.
    """
    home = project_of(book, project)
    for name in models:
        model = model_named(home, name)
        kept, own = _changes_of(model, sequence, options) if changes is None else (changes, {})
        given = fresh(book, home, model, sequence, options, {**own, **(colours or {})}, kept)
        if given.lost:
            steps = ", ".join(given.lost)
            raise Refused(
                f"{project}/{name}",
                message(
                    '{steps} of "{name}" is in the logbook, and "{sequence}" has no such '
                    "step; take it out of the logbook first, or leave this model",
                    steps=steps,
                    name=name,
                    sequence=sequence.name,
                ),
            )
        home = with_model_in(home, given.model)
    return with_project(book, project, lambda _: home)


def _changes_of(
    model: Model, sequence: Sequence, options: Iterable[str] | None
) -> tuple[tuple[NamedChange, ...], dict[str, str]]:
    """Return the changes of a model that follows a sequence, and what it lays for their colours."""
    made = model.made
    if made is None or made.sequence != sequence.name or not made.changes:
        return (), {}
    changes = still_fitting(sequence, options, made.changes)
    order, _ = changed(sequence, complete(sequence, options), changes)
    more = {colour.name for colour in order.colours} - {colour.name for colour in sequence.colours}
    return changes, {one.colour: one.coating for one in made.colours if one.colour in more}


def fresh(
    book: Book,
    project: Project,
    model: Model,
    sequence: Sequence,
    options: Iterable[str] | None,
    colours: Mapping[str, str],
    changes: tuple[NamedChange, ...] = (),
) -> Given:
    """Return what a model would be with a sequence; nothing of the book changes.

    ``changes`` are made to the sequence for this model (`named_changes`).
    """
    chosen = complete(sequence, options)
    order, taken = changed(sequence, chosen, changes)
    area = painted_cm2(model) or None
    made = steps_for(order, model, taken, colours, area_cm2=area, pace=book.pace)
    known = {location.name for location in book.room.locations}
    placed = _where_they_dry(model, tuple(_indoors(step, known) for step in made))
    steps = _as_begun(project, model, placed)
    there = {step.id for step in steps}
    begun = in_logbook(project, model.name)
    lost = tuple(step.id for step in model.steps if step.id in begun - there)
    kept = dict(colours)
    for colour in colours_needed(order, model, taken):
        kept.setdefault(colour.name, colour.usual)
    took = Made(
        sequence=sequence.name,
        options=chosen,
        colours=tuple(Chosen(colour=name, coating=kept[name]) for name in sorted(kept)),
        changes=changes,
    )
    return Given(replace(model, steps=steps, made=took), lost)


def _where_they_dry(model: Model, steps: tuple[Step, ...]) -> tuple[Step, ...]:
    """Return the steps with the drying places of the model's own, where the sequence names none.

    Places belong to a room, and seldom to a finishing order.
    """
    own = {step.id: (step.dries_in, step.or_in) for step in model.steps if step.applications}

    def kept(step: Step) -> Step:
        if step.dries_in or step.or_in or not step.applications or step.id not in own:
            return step
        dries_in, or_in = own[step.id]
        return replace(step, dries_in=dries_in, or_in=or_in)

    return tuple(map(kept, steps))


def _as_begun(project: Project, model: Model, steps: tuple[Step, ...]) -> tuple[Step, ...]:
    """Return the steps with those in the logbook as they were when they were begun."""
    begun = in_logbook(project, model.name)
    there = {step.id for step in steps}
    old = {step.id: step for step in model.steps if step.id in begun}
    return tuple(_among(old[step.id], there) if step.id in old else step for step in steps)


def _among(step: Step, there: set[str]) -> Step:
    """Return a step that waits only for what is there."""
    return replace(
        step,
        after=tuple(name for name in step.after if name in there),
        gates=tuple(gate for gate in step.gates if gate.after in there),
    )


def in_logbook(project: Project, model: str) -> set[str]:
    """Return the steps of a model that were begun, or whose films were looked at."""
    begun = {fact.step for fact in project.log if fact.model == model}
    return begun | {look.step for look in project.observed if look.model == model}


def _indoors(step: Step, locations: set[str]) -> Step:
    """Return a step that dries in locations of this room alone; others are the usual one."""
    dries_in = step.dries_in if step.dries_in in locations else ""
    or_in = tuple(name for name in step.or_in if name in locations and name != dries_in)
    return replace(step, dries_in=dries_in, or_in=or_in)


def with_model_in(project: Project, model: Model) -> Project:
    """Return the project with a model in the place of that of its name; pins go with steps."""
    coats = {step.id: step.coats for step in model.steps}

    def stands(pin: Pin) -> bool:
        beside, _, step = (pin.beside or "").partition("/")
        if beside == model.name and step not in coats:
            return False
        return pin.model != model.name or (pin.coat or 1) <= coats.get(pin.step, 0)

    placed = instead_of_its_like(project, model)
    return replace(placed, pins=tuple(filter(stands, project.pins)))
