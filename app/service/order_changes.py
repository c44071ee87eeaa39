"""Named changes of the order of some models, in one edit; what they lay comes from the stock."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass

from app.service.build_edits.names import fresh_name
from app.service.edits import Edit
from app.service.sequences import GIVES, only_needed, save_sequence
from app.service.starter_stock import bottle, with_coatings
from planner.layers.mend_coatings import CHIPPING_FLUID, GLOSS_CLEAR, MATTE_CLEAR, Wanted, provide
from planner.sequences.apply_to_book import fresh, sequence_named, with_model_in
from planner.sequences.apply_to_model import colours_needed
from planner.sequences.built_in.writing import CHIPPING, DECALS, GLOSS, MATTE
from planner.sequences.changed_models import made_of, merged, rechanged
from planner.sequences.difference import still
from planner.sequences.named_changes import changed, offered, still_fitting, with_change
from planner.sequences.parts_apart import apart, together
from planner.sequences.save_from_model import sequence_from
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.coating import Family
from planner.values.keys import ModelKey
from planner.values.lookup import model_named, project_of
from planner.values.message import Translate, called, message
from planner.values.model import Model, NamedChange, PartsChange
from planner.values.refusal import Refused
from planner.values.sequence import Colour, Sequence

Change = NamedChange | PartsChange
OWN_ORDER = "order of {model}"
_SERVES: Mapping[str, Wanted] = {
    CHIPPING.name: CHIPPING_FLUID,
    GLOSS.name: GLOSS_CLEAR,
    MATTE.name: MATTE_CLEAR,
}
_PARTS: Mapping[PartsChange, Callable[[Model], Model]] = {
    PartsChange.APART: apart,
    PartsChange.TOGETHER: together,
}


@dataclass(frozen=True)
class Possible:
    """A change that some of the models chosen can be given, or from which it can be taken.

    ``out`` says that it was made before and would be taken out.
    """

    change: Change
    out: bool
    models: tuple[ModelKey, ...]


def possible(book: Book, keys: Iterable[ModelKey]) -> tuple[Possible, ...]:
    """Return what can be changed in the order of models, each with those that can take it."""
    into: dict[Change, list[ModelKey]] = {}
    out: dict[Change, list[ModelKey]] = {}
    for key in keys:
        model = model_named(project_of(book, key.project), key.model)
        for change in _open_to(book, model):
            into.setdefault(change, []).append(key)
        for made in model.made.changes if model.made else ():
            out.setdefault(made, []).append(key)
    every: tuple[Change, ...] = (*NamedChange, *PartsChange)
    found = [Possible(change, False, tuple(into[change])) for change in every if change in into]
    return (
        *found,
        *(Possible(change, True, tuple(out[change])) for change in every if change in out),
    )


def change_orders(
    book: Book,
    keys: Iterable[ModelKey],
    change: Change,
    *,
    out: bool = False,
    translate: Translate = str,
) -> Edit:
    """Put a change into the order of some models, or take it out again, in one edit.

    What it lays is taken from the stock where that has such, else from the
    starter stock; ``translate`` gives names to what comes.  A model that
    follows no sequence has its own order saved first, and follows that.

    Raises
    ------
    Refused
        If it does not fit one of the models; then none is changed.
    """
    chosen = tuple(keys)
    if not chosen:
        raise Refused("models", "choose at least one model")
    new = book
    for key in chosen:
        try:
            new = _one(new, key, change, out, translate)
        except Refused as refused:
            raise refused.under(key.model) from refused
    new = only_needed(book, new)
    whom = chosen[0].model if len(chosen) == 1 else called("{n} models", n=len(chosen))
    name = (
        called("take {change} out of {whom}", change=change, whom=whom)
        if out
        else called("{change}: {whom}", change=change, whom=whom)
    )
    return Edit(name, new, verb=GIVES)


def _open_to(book: Book, model: Model) -> tuple[Change, ...]:
    if not model.steps:
        return ()
    sequence, options, changes = _order(book, model)
    named = offered(sequence, options, changes)
    if not book.gear.airbrushes:
        named = tuple(one for one in named if one is not NamedChange.AIRBRUSH)
    fits = []
    for change, make in _PARTS.items():
        try:
            make(model)
        except Refused:
            continue
        fits.append(change)
    return (*named, *(fits if model.made else ()))


def _order(book: Book, model: Model) -> tuple[Sequence, tuple[str, ...], tuple[NamedChange, ...]]:
    """Return sequence, options and changes of a model; its own steps where it follows none."""
    if model.made is None:
        return sequence_from(model, model.name, pace=book.pace), (), ()
    sequence = sequence_named(book, model.made.sequence)
    options, _ = still(sequence, model.made)
    return sequence, options, still_fitting(sequence, options, model.made.changes)


def _one(book: Book, key: ModelKey, change: Change, out: bool, translate: Translate) -> Book:
    model = model_named(project_of(book, key.project), key.model)
    if isinstance(change, PartsChange):
        return _with_parts(book, key, _PARTS[change])
    if model.made is None:
        if not model.steps:
            raise Refused("steps", message('"{model}" has no order yet', model=key.model))
        taken = [sequence.name for sequence in book.sequences]
        name = fresh_name(translate(OWN_ORDER).format(model=key.model), taken)
        book = save_sequence(book, key.project, key.model, name).book
        model = model_named(project_of(book, key.project), key.model)
    if change is NamedChange.AIRBRUSH and not book.gear.airbrushes:
        raise Refused("", message("there is no airbrush among the gear; add one first"))
    sequence, options, changes = _order(book, model)
    if out:
        if change not in changes:
            raise Refused("", message("it has not been changed so"))
        changes = tuple(one for one in changes if one is not change)
    else:
        changes = with_change(sequence, options, changes, change)
    book, colours = _stocked(book, model, changes, translate)
    return rechanged(book, key.project, key.model, changes, colours)


def _stocked(
    book: Book, model: Model, changes: tuple[NamedChange, ...], translate: Translate
) -> tuple[Book, dict[str, str]]:
    """Return the book with what a changed order lays, and what is taken for its new colours."""
    made = made_of(model)
    sequence = sequence_named(book, made.sequence)
    options, taken = still(sequence, made)
    order, left = changed(sequence, options, changes)
    colours = {}
    for colour in colours_needed(order, model, left):
        if colour.name not in taken:
            colours[colour.name] = _owned(book, colour) or bottle(book, colour.usual, translate)
    return with_coatings(book, colours.values(), translate), colours


def _owned(book: Book, colour: Colour) -> str:
    """Return what the stock has that serves as a colour of a change, or ""."""
    if colour.name == DECALS.name:
        return next((one.name for one in book.coatings if one.family is Family.DECAL), "")
    wanted = _SERVES.get(colour.name)
    if wanted is None:
        return ""
    same, name = provide(book, wanted)
    return name if same is book else ""


def _with_parts(book: Book, key: ModelKey, make: Callable[[Model], Model]) -> Book:
    home = project_of(book, key.project)
    model = model_named(home, key.model)
    made = made_of(model)
    if any(fact.model == key.model for fact in home.log):
        raise Refused("log", message("it is begun; its parts stay as they are"))
    sequence = sequence_named(book, made.sequence)
    options, colours = still(sequence, made)
    changes = still_fitting(sequence, options, made.changes)
    base = fresh(book, home, model, sequence, options, colours, changes).model.steps
    if merged(model, base, base) != base or {s.id for s in base} != {s.id for s in model.steps}:
        mend = message("its steps were changed by hand; choose “Paint it apart” at the place")
        raise Refused("steps", mend)
    taken = {**colours}
    new = fresh(book, home, make(model), sequence, options, taken, changes).model
    return with_project(book, key.project, lambda old: with_model_in(old, new))
