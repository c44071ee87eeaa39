"""Parts and places: adding, changing, taking away, painting apart and gluing first."""

from __future__ import annotations

from collections.abc import Callable, Collection
from dataclasses import replace

from app.service.build_edits.locate import (
    logged,
    model_of,
    references,
    waits,
    with_model,
    without_pins,
)
from app.service.build_edits.names import (
    follow_ticks,
    fresh_name,
    rename_part,
    rename_place,
    step_id,
)
from app.service.edits import Edit
from planner.layers.named_mends import kept
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.lookup import part_of, project_of
from planner.values.message import called, message, titled
from planner.values.model import Model, Part, Place
from planner.values.refusal import Refused
from planner.values.step import Minutes, Stage, Step, Tool

GLUING = Minutes(fixed=5)  # assumed; the person says better


def add_part(book: Book, at: ModelKey, part: Part) -> Edit:
    """Add a part to a model."""
    changed = with_model(book, at, lambda model: replace(model, parts=(*model.parts, part)))
    return Edit(called("{model}: add {part}", model=at.model, part=part.name), changed)


def set_part(book: Book, at: ModelKey, name: str, part: Part) -> Edit:
    """Put a part in the place of another; what names it follows."""
    part_of(model_of(book, at), name)
    if part.name != name:
        book = rename_part(book, at, name, part.name).book

    def change(model: Model) -> Model:
        parts = (part if other.name == part.name else other for other in model.parts)
        return replace(model, parts=tuple(parts))

    return Edit(
        called("{model}: change {part}", model=at.model, part=part.name),
        with_model(book, at, change),
    )


def add_place(book: Book, at: ModelKey, part: str, place: Place) -> Edit:
    """Add a place to a part; steps on the whole part reach it at once."""
    changed = _with_part(book, at, part, lambda part: replace(part, places=(*part.places, place)))
    return Edit(
        called("{model}: add {part}/{place}", model=at.model, part=part, place=place.name), changed
    )


def set_place(book: Book, at: ModelKey, part: str, name: str, place: Place) -> Edit:
    """Put a place in the place of another; what names it follows."""
    known = [place.name for place in part_of(model_of(book, at), part).places]
    if place.name != name or name not in known:
        book = rename_place(book, at, part, name, place.name).book

    def change(part: Part) -> Part:
        places = (place if each.name == place.name else each for each in part.places)
        return replace(part, places=tuple(places))

    return Edit(
        called("{model}: change {part}/{place}", model=at.model, part=part, place=place.name),
        _with_part(book, at, part, change),
    )


def remove_places(book: Book, at: ModelKey, names: Collection[str]) -> Edit:
    """Take places away, "part/place" each, or whole parts, "part" each.

    Steps that worked on nothing else, and joins with less than two parts
    left, go with them.

    Raises
    ------
    Refused
        If such a step stands in the logbook, or nothing of the model is left.
    """
    model = model_of(book, at)
    gone = {place for name in names for place in _places(model, name)}
    parts = []
    for part in model.parts:
        left = tuple(place for place in part.places if f"{part.name}/{place.name}" not in gone)
        if left:
            parts.append(part if left == part.places else replace(part, places=left))
    if not parts:
        raise Refused(
            "parts",
            message("{model} would have no part left; remove the model instead", model=at.model),
        )
    steps = [step for other in model.steps if (step := _left(model, other, gone))]
    lost = {step.id for step in model.steps} - {step.id for step in steps}
    for name in lost:
        if logged(project_of(book, at.project), at.model, name):
            raise Refused(
                "", message("“{name}” worked on nothing else and is already logged", name=name)
            )
    untied = tuple(waits(step, lambda name: () if name in lost else (name,)) for step in steps)
    changed = with_model(
        book,
        at,
        lambda model: replace(model, parts=tuple(parts), steps=untied),
        lambda project: without_pins(project, at.model, lost),
    )
    return Edit(called("{model}: remove {names}", model=at.model, names=", ".join(names)), changed)


def paint_apart(book: Book, at: ModelKey, part: str, place: str) -> Edit:
    """Make a part of its own of a place, to be joined at the end of the order.

    Every step goes on reaching what it reached.
    """
    model = model_of(book, at)
    old = part_of(model, part)
    taken = next((other for other in old.places if other.name == place), None)
    if taken is None or len(old.places) < 2:
        raise Refused(
            "places",
            message(
                "{part} has no place beside others that is called “{place}”", part=part, place=place
            ),
        )
    name = fresh_name(place, [part.name for part in model.parts])
    new = replace(old, name=name, places=(taken,))
    rest = replace(old, places=tuple(place for place in old.places if place is not taken))

    def follow(reference: str) -> tuple[str, ...]:
        if reference == part:
            return (part, name)
        return (f"{name}/{place}",) if reference == f"{part}/{place}" else (reference,)

    join = _joining(model, (part, name))

    def change(model: Model) -> Model:
        parts: list[Part] = []
        for each in model.parts:
            parts += [rest, new] if each.name == part else [each]
        steps = tuple(references(step, follow) for step in model.steps)
        return replace(model, parts=tuple(parts), steps=(*steps, join))

    changed = with_model(
        book,
        at,
        change,
        lambda project: follow_ticks(project, at.model, lambda tick: follow(tick)[-1]),
    )
    return Edit(called("{model}: paint {name} apart", model=at.model, name=name), changed)


def glue_first(book: Book, at: ModelKey, first: str, second: str) -> Edit:
    """Make one part of two, glued before anything is painted; their join goes.

    Every step goes on reaching what it reached.

    Raises
    ------
    Refused
        If the logbook says that they were joined.
    """
    model = model_of(book, at)
    part, two = part_of(model, first), part_of(model, second)
    own = [place.name for place in part.places]
    names = {place.name: fresh_name(place.name, own) for place in two.places}
    more = tuple(replace(place, name=names[place.name]) for place in two.places)
    reached = {
        first: tuple(f"{first}/{name}" for name in own),
        second: tuple(f"{first}/{name}" for name in names.values()),
    }

    def follow(reference: str) -> tuple[str, ...]:
        part, _, place = reference.partition("/")
        if reference in reached:
            return reached[reference]
        return (f"{first}/{names[place]}",) if part == second else (reference,)

    steps = [references(step, follow) for step in model.steps]
    gone = {step.id for step in steps if step.stage is Stage.JOIN and _of_one_part(step)}
    united = replace(
        part,
        places=(*part.places, *more),
        holder=part.holder or two.holder,
        stressed=part.stressed or two.stressed,
    )
    left = [step for step in steps if step.id not in gone]
    return _united(book, at, (united, second), (left, gone), lambda tick: follow(tick)[0])


def _of_one_part(step: Step) -> bool:
    return len({name.partition("/")[0] for name in step.references()}) < 2


def _united(
    book: Book,
    at: ModelKey,
    parts: tuple[Part, str],
    steps: tuple[list[Step], set[str]],
    follow: Callable[[str], str],
) -> Edit:
    united, second = parts
    left, gone = steps
    for name in gone:
        if logged(project_of(book, at.project), at.model, name):
            raise Refused(
                "", message("“{name}” is already logged; they were joined as parts", name=name)
            )
    untied = tuple(waits(step, lambda name: () if name in gone else (name,)) for step in left)

    def change(model: Model) -> Model:
        kept_parts = (
            united if part.name == united.name else part
            for part in model.parts
            if part.name != second
        )
        return replace(model, parts=tuple(kept_parts), steps=untied)

    changed = with_model(
        book,
        at,
        change,
        lambda project: follow_ticks(without_pins(project, at.model, gone), at.model, follow),
    )
    return Edit(
        called(
            "{model}: glue {second} to {united} first",
            model=at.model,
            second=second,
            united=united.name,
        ),
        changed,
    )


def join_parts(book: Book, at: ModelKey, parts: Collection[str], to: int | None = None) -> Edit:
    """Add a step that joins parts, at the end of the order if ``to`` is not given."""
    model = model_of(book, at)
    step = _joining(model, tuple(parts))

    def change(model: Model) -> Model:
        where = len(model.steps) if to is None else to
        return replace(model, steps=(*model.steps[:where], step, *model.steps[where:]))

    return Edit(
        called("{model}: {step}", model=at.model, step=step.id), with_model(book, at, change)
    )


def _joining(model: Model, parts: tuple[str, ...]) -> Step:
    return Step(
        id=step_id(f"join {parts[-1]}", {step.id for step in model.steps}),
        stage=Stage.JOIN,
        title=titled("Join {part}", part=parts[-1]),
        touches=parts,
        tool=Tool.HAND,
        minutes=GLUING,
    )


def _places(model: Model, name: str) -> tuple[str, ...]:
    try:
        return model.places(name)
    except KeyError:
        raise Refused(
            "places", message("{model} has no place called “{name}”", model=model.name, name=name)
        ) from None


def _left(model: Model, step: Step, gone: set[str]) -> Step | None:
    """Return the step without the places that go, or None if it has nothing left to do."""
    if not any(place in gone for name in step.references() for place in model.places(name)):
        return step
    new = kept(model, step, lambda place: place not in gone)
    if new is None or step.stage is not Stage.JOIN:
        return new
    return new if len({name.partition("/")[0] for name in new.references()}) > 1 else None


def _with_part(book: Book, at: ModelKey, name: str, change: Callable[[Part], Part]) -> Book:
    part_of(model_of(book, at), name)

    def changed(model: Model) -> Model:
        parts = (change(part) if part.name == name else part for part in model.parts)
        return replace(model, parts=tuple(parts))

    return with_model(book, at, changed)
