"""Where a coating or mix is named in a book, and how a new name gets everywhere."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace

from planner.values.book import Book
from planner.values.book_changes import changed, with_log, with_models
from planner.values.coating import Coating
from planner.values.drying_card import DryingCard
from planner.values.mix import Mix, Portion
from planner.values.model import Model
from planner.values.project import Logged, Project
from planner.values.sequence import Sequence
from planner.values.step import Step
from planner.values.supplies import Supplies


def uses_of(book: Book, name: str) -> tuple[str, ...]:
    """Return the path of everything that names a coating or mix, but for the logbook.

    Drying cards do not count: they belong to a coating, and go with it.
    """
    return tuple(_uses(book, name))


def _uses(book: Book, name: str) -> Iterator[str]:
    for at, mix in enumerate(book.mixes):
        for number, portion in enumerate(mix.portions):
            if portion.coating == name:
                yield f"mixes[{at}].portions[{number}].coating"
    for at, project in enumerate(book.projects):
        for position, model in enumerate(project.models):
            for path in _uses_in_model(model, name):
                yield f"projects[{at}].models[{position}].{path}"
    for at, sequence in enumerate(book.sequences):
        for number, colour in enumerate(sequence.colours):
            if colour.usual == name:
                yield f"sequences[{at}].colours[{number}].usual"
    for at, leftover in enumerate(book.supplies.leftovers):
        for number, portion in enumerate(leftover.portions):
            if portion.coating == name:
                yield f"supplies.leftovers[{at}].portions[{number}].coating"
    for at, card in enumerate(book.supplies.cards):
        for number, drops in enumerate(card.drops):
            if drops.coating == name:
                yield f"supplies.cards[{at}].drops[{number}].coating"


def _uses_in_model(model: Model, name: str) -> Iterator[str]:
    for at, step in enumerate(model.steps):
        for number, application in enumerate(step.applications):
            if application.coating == name:
                yield f"steps[{at}].applications[{number}].coating"
    for number, chosen in enumerate(model.made.colours if model.made else ()):
        if chosen.coating == name:
            yield f"made.colours[{number}].coating"


def renamed(
    book: Book,
    was: str,
    name: str,
    *,
    coatings: tuple[Coating, ...] | None = None,
    mixes: tuple[Mix, ...] | None = None,
) -> Book:
    """Return the book with other coatings or mixes, one of which has a new name.

    What does not name it stays the very same object.
    """
    return renamed_all(book, {was: name}, coatings=coatings, mixes=mixes)


def renamed_all(
    book: Book,
    names: Mapping[str, str],
    *,
    coatings: tuple[Coating, ...] | None = None,
    mixes: tuple[Mix, ...] | None = None,
) -> Book:
    """Return the book with other coatings or mixes, some of which have new names; see `renamed`."""
    kept_mixes = book.mixes if mixes is None else mixes
    kept_coatings = book.coatings if coatings is None else coatings
    change = _Renaming({was: new for was, new in names.items() if was != new})
    if not change.names:
        return replace(book, coatings=kept_coatings, mixes=kept_mixes)
    return replace(
        book,
        coatings=kept_coatings,
        mixes=tuple(change.mix(mix) for mix in kept_mixes),
        projects=changed(book.projects, [change.project(project) for project in book.projects]),
        sequences=tuple(change.sequence(sequence) for sequence in book.sequences),
        supplies=change.supplies(book.supplies),
        drying_cards=change.drying_cards(book.drying_cards),
    )


class _Renaming:
    """Some names for others, wherever they stand."""

    def __init__(self, names: Mapping[str, str]) -> None:
        self.names = names

    def name(self, old: str) -> str:
        return self.names.get(old, old)

    def portions(self, old: tuple[Portion, ...]) -> tuple[Portion, ...]:
        return tuple(replace(portion, coating=self.name(portion.coating)) for portion in old)

    def mix(self, old: Mix) -> Mix:
        return replace(old, portions=self.portions(old.portions))

    def project(self, old: Project) -> Project:
        return with_log(with_models(old, self.model), self.entry)

    def model(self, old: Model) -> Model:
        if not any(path for was in self.names for path in _uses_in_model(old, was)):
            return old
        made = old.made
        if made is not None:
            colours = (
                replace(colour, coating=self.name(colour.coating)) for colour in made.colours
            )
            made = replace(made, colours=tuple(colours))
        return replace(old, steps=tuple(self.step(step) for step in old.steps), made=made)

    def step(self, old: Step) -> Step:
        laid = (
            replace(application, coating=self.name(application.coating))
            for application in old.applications
        )
        return replace(old, applications=tuple(laid))

    def entry(self, old: Logged) -> Logged:
        if all(used.coating not in self.names for used in old.used):
            return old
        used = (replace(used, coating=self.name(used.coating)) for used in old.used)
        return replace(old, used=tuple(used))

    def sequence(self, old: Sequence) -> Sequence:
        colours = (replace(colour, usual=self.name(colour.usual)) for colour in old.colours)
        return replace(old, colours=tuple(colours))

    def drying_cards(self, old: tuple[DryingCard, ...]) -> tuple[DryingCard, ...]:
        if all(card.coating not in self.names for card in old):
            return old
        return tuple(replace(card, coating=self.name(card.coating)) for card in old)

    def supplies(self, old: Supplies) -> Supplies:
        leftovers = (
            replace(leftover, portions=self.portions(leftover.portions))
            for leftover in old.leftovers
        )
        cards = tuple(
            replace(
                card,
                drops=tuple(replace(drop, coating=self.name(drop.coating)) for drop in card.drops),
            )
            for card in old.cards
        )
        return replace(old, leftovers=tuple(leftovers), cards=cards)
