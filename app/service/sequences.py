"""Edits of sequences: giving, saving, changing them, and taking changes over."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import replace

from app.service.edits import Edit
from app.service.starter_stock import in_words_of, with_coatings
from planner.sequences.apply_to_book import every_sequence, give, sequence_named
from planner.sequences.chosen_options import complete, without_airbrush
from planner.sequences.difference import Given, difference, left, taken_over
from planner.sequences.save_from_model import sequence_from
from planner.values.book import Book
from planner.values.book_changes import with_model, with_models, with_projects
from planner.values.keys import ModelKey
from planner.values.lookup import model_named, project_of
from planner.values.message import Translate, called, message
from planner.values.model import Chosen, Made, Model
from planner.values.refusal import Refused, unknown
from planner.values.sequence import Sequence
from storage.bench_book import BenchBook

GIVES = "give sequence"
"""The verb of edits after which a model is as its sequence makes it."""
BARE = re.compile(r"give .+ to .+|take over .+ for .+|save .+|begin .+")
"""What older journals, which kept no verb, called such edits."""
Spots = Iterable[tuple[str, str]]
"""Models by (project, model)."""


def usual_options(book: Book, sequence: Sequence) -> tuple[str, ...]:
    """Return the usual options; where nobody owns an airbrush, without it."""
    return complete(sequence) if book.gear.airbrushes else without_airbrush(sequence)


def give_sequence(
    book: Book,
    project: str,
    models: Iterable[str],
    name: str,
    options: Iterable[str] | None = None,
    colours: Mapping[str, str] | None = None,
    translate: Translate = str,
) -> Edit:
    """Give a sequence to models of a project; what the stock lacks comes from the starter stock.

    ``options`` None means the usual ones (`usual_options`); ``translate``
    gives names to what comes.

    Raises
    ------
    Refused
        If something named is not there, or a step in the logbook would vanish.
    """
    sequence = in_words_of(book, sequence_named(book, name), translate)
    chosen = tuple(models)
    if not chosen:
        raise Refused("models", "choose at least one model to give it to")
    taken = usual_options(book, sequence) if options is None else tuple(options)
    named = dict(colours or {})
    stocked = _stocked(book, sequence, named, translate)
    try:
        changed = give(stocked, project, chosen, sequence, taken, named)
    except Refused as refused:
        raise _about_colours(stocked, sequence, named, refused) from refused
    changed = only_needed(book, changed)
    whom = chosen[0] if len(chosen) == 1 else called("{n} models", n=len(chosen))
    return Edit(called("give {name} to {whom}", name=name, whom=whom), changed, verb=GIVES)


def give_to(
    book: Book,
    models: Mapping[str, Iterable[str]],
    name: str,
    options: Iterable[str] | None = None,
    colours: Mapping[str, str] | None = None,
    translate: Translate = str,
) -> Edit:
    """Give a sequence to models of several projects, by project, in one edit.

    Raises
    ------
    Refused
        As `give_sequence` does; then no model gets it.
    """
    chosen = {project: tuple(names) for project, names in models.items()}
    taken = None if options is None else tuple(options)
    changed = book
    for project, names in chosen.items():
        changed = give_sequence(changed, project, names, name, taken, colours, translate).book
    every = [name for names in chosen.values() for name in names]
    whom = every[0] if len(every) == 1 else called("{n} models", n=len(every))
    return Edit(called("give {name} to {whom}", name=name, whom=whom), changed, verb=GIVES)


def save_sequence(book: Book, project: str, model: str, name: str, note: str = "") -> Edit:
    """Save a model's steps as a sequence; the model follows it from now on.

    Raises
    ------
    Refused
        If the name is taken, or the steps make no sequence.
    """
    _free(book, name)
    home = model_named(project_of(book, project), model)
    sequence = sequence_from(home, name, note=note, pace=book.pace)
    colours = tuple(Chosen(colour=colour.name, coating=colour.usual) for colour in sequence.colours)
    follows = replace(home, made=Made(sequence=name, colours=colours))
    changed = _added(with_model(book, ModelKey(project, model), lambda _old: follows), sequence)
    return Edit(called("save {name}", name=name), changed, verb=GIVES)


def save_project(book: Book, project: str, name: str, note: str = "") -> Edit:
    """Save a project's finishing order as a sequence: that of its model with the most steps.

    Raises
    ------
    Refused
        If no model of it has steps, or the name is taken.
    """
    home = next((other for other in book.projects if other.name == project), None)
    if home is None:
        raise Refused(
            "projects", unknown("project", project, [project.name for project in book.projects])
        )
    fullest = max(home.models, key=lambda model: len(model.steps))
    return save_sequence(book, project, fullest.name, name, note)


def duplicate(book: Book, name: str, new: str) -> Edit:
    """Make a person's own copy of a sequence under another name.

    Raises
    ------
    Refused
        If the new name is taken.
    """
    _free(book, new)
    copy = replace(sequence_named(book, name), name=new)
    return Edit(called("duplicate {name}", name=name), _added(book, copy))


def rename(book: Book, old: str, new: str) -> Edit:
    """Give a person's own sequence another name; models that follow it do so still.

    Raises
    ------
    Refused
        If it is built in, or the new name is taken.
    """
    own = _own(book, old)
    if new == old:
        return Edit(called("{old} is now {new}", old=old, new=new), book)
    _free(book, new)
    renamed = _replaced(book, old, replace(own, name=new))
    return Edit(called("{old} is now {new}", old=old, new=new), _following(renamed, old, new))


def remove(book: Book, name: str) -> Edit:
    """Remove a person's own sequence; models keep their steps and follow nothing.

    Where a built-in one of the same name was hidden by it, they follow that.

    Raises
    ------
    Refused
        If it is built in.
    """
    _own(book, name)
    kept = tuple(sequence for sequence in book.sequences if sequence.name != name)
    without = replace(book, sequences=kept)
    known = {sequence.name for sequence in every_sequence(without)}
    return Edit(
        called("remove {name}", name=name),
        without if name in known else _following(without, name, None),
    )


def change(book: Book, name: str, sequence: Sequence) -> Edit:
    """Put another form of a sequence in its place; a built-in one becomes a person's own.

    Models that came from it stay as they are until they take the change over.

    Raises
    ------
    Refused
        If the new form has another name that is taken.
    """
    sequence_named(book, name)
    if sequence.name != name:
        _free(book, sequence.name)
    if name in {sequence.name for sequence in book.sequences}:
        changed = _following(_replaced(book, name, sequence), name, sequence.name)
    else:
        changed = _added(book, sequence)
    return Edit(
        called("change {sequence}", sequence=sequence.name),
        changed,
        merge=f"sequence {name}",
    )


def take_over(book: Book, name: str, spots: Spots, translate: Translate = str) -> Edit:
    """Give a changed sequence anew to models that came from it, with what each had chosen.

    Raises
    ------
    Refused
        If a step in the logbook would vanish, or a new colour has no coating.
    """
    sequence = in_words_of(book, sequence_named(book, name), translate)
    chosen = tuple(spots)
    stocked = _stocked(book, sequence, {}, translate)
    changed = only_needed(book, taken_over(stocked, sequence, chosen))
    told = called("take over {name} for {count}", name=name, count=_count(chosen))
    return Edit(told, changed, verb=GIVES)


def leave(book: Book, spots: Spots) -> Edit:
    """Let models keep their steps as they are and follow no sequence any more."""
    chosen = tuple(spots)
    if len(chosen) == 1:
        name = called("{model} goes its own way", model=chosen[0][1])
    else:
        name = called("{n} models go their own way", n=len(chosen))
    return Edit(name, left(book, chosen))


def offers(book: Book, given: Mapping[ModelKey, Given] | None = None) -> dict[str, int]:
    """Return how many models each sequence has something new for, by its name.

    ``given`` tells what is a person's own edit and nothing new (`given_steps`).
    """
    found = {
        sequence.name: sum(offer.news for offer in difference(book, sequence, given))
        for sequence in every_sequence(book)
    }
    return {name: count for name, count in found.items() if count}


def given_steps(store: BenchBook) -> dict[ModelKey, Given]:
    """Return the steps that each model had when it was last given a sequence.

    The journal knows; of a model that came from a file, or that has another
    name since, nothing is known.
    """
    found: dict[ModelKey, Given] = {}
    for key, model in store.after_edits(GIVES, "model/", _bare_giving).items():
        _, project, name = key.split("/")
        if model is not None:
            found[ModelKey(project, name)] = model.steps
    return found


def _bare_giving(name: str, key: str) -> bool:
    """Tell whether an edit of an older journal gave a model its steps; not what begins with it.

    Edits of a model's steps are called by its name first, and that may be "give way".
    """
    return bool(BARE.fullmatch(name)) and not name.startswith(key.rpartition("/")[2])


def _stocked(
    book: Book, sequence: Sequence, colours: Mapping[str, str], translate: Translate
) -> Book:
    usual = (colour.usual for colour in sequence.colours if colour.name not in colours)
    return with_coatings(book, (*usual, *colours.values()), translate)


def only_needed(before: Book, after: Book) -> Book:
    """Return the book without starter coatings that came in and that nothing lays."""
    if after.coatings is before.coatings and after.mixes is before.mixes:
        return after
    laid = {
        application.coating
        for project in after.projects
        for model in project.models
        for step in model.steps
        for application in step.applications
    }
    old = {mix.name for mix in (*before.mixes,)} | {coating.name for coating in before.coatings}
    mixes = tuple(mix for mix in after.mixes if mix.name in old | laid)
    needed = laid | {portion.coating for mix in mixes for portion in mix.portions}
    coatings = tuple(coating for coating in after.coatings if coating.name in old | needed)
    return replace(after, coatings=coatings, mixes=mixes)


def _about_colours(
    book: Book, sequence: Sequence, colours: Mapping[str, str], refused: Refused
) -> Refused:
    """Return the refusal by the colour that asks for a coating which is not there."""
    known = {coating.name for coating in book.coatings} | {mix.name for mix in book.mixes}
    for colour in sequence.colours:
        coating = colours.get(colour.name) or colour.usual
        if coating and coating not in known and f'"{coating}"' in refused.mend:
            mend = message(
                'the stock has no "{coating}" for "{colour}"; choose another',
                coating=coating,
                colour=colour.name,
            )
            return Refused("colours", mend)
    return refused


def _free(book: Book, name: str) -> None:
    if name in {sequence.name for sequence in every_sequence(book)}:
        raise Refused("name", message('"{name}" is taken; give it another name', name=name))


def _own(book: Book, name: str) -> Sequence:
    for sequence in book.sequences:
        if sequence.name == name:
            return sequence
    sequence_named(book, name)
    raise Refused(
        "sequence",
        message('"{name}" comes with the program; duplicate it and change the copy', name=name),
    )


def _added(book: Book, sequence: Sequence) -> Book:
    return replace(book, sequences=(*book.sequences, sequence))


def _replaced(book: Book, name: str, sequence: Sequence) -> Book:
    changed = tuple(sequence if other.name == name else other for other in book.sequences)
    return replace(book, sequences=changed)


def _following(book: Book, old: str, new: str | None) -> Book:
    """Return the book with models that followed ``old`` following ``new``, or nothing."""

    def changed(model: Model) -> Model:
        if model.made is None or model.made.sequence != old:
            return model
        made = replace(model.made, sequence=new) if new else None
        return replace(model, made=made)

    if old == new:
        return book
    return with_projects(book, lambda project: with_models(project, changed))


def _count(spots: tuple[tuple[str, str], ...]) -> str:
    return spots[0][1] if len(spots) == 1 else called("{n} models", n=len(spots))
