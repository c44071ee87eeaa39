"""What a sequence would change in the models that came from it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, fields, replace
from difflib import SequenceMatcher
from functools import cached_property, lru_cache

from planner.sequences.apply_to_book import fresh, give, in_logbook
from planner.sequences.chosen_options import choices_of, complete
from planner.sequences.named_changes import changed, still_fitting
from planner.sequences.references import normal
from planner.values.book import Book
from planner.values.book_changes import with_every_model
from planner.values.keys import ModelKey
from planner.values.message import message
from planner.values.model import Made, Model
from planner.values.project import Project
from planner.values.refusal import Refused
from planner.values.sequence import Sequence
from planner.values.step import Step

Given = tuple[Step, ...]
Steps = dict[str, Step]


@dataclass(frozen=True)
class ChangedStep:
    """A step that is there before and after; ``fields`` are those that differ."""

    was: Step
    becomes: Step
    fields: tuple[str, ...]


@dataclass(frozen=True)
class Offer:
    """What one model would have otherwise if it took its sequence anew.

    Attributes
    ----------
    moved
        Steps that would stand elsewhere among those that stay.
    lost
        Steps of the logbook that would be gone; the model must stay as it is.
    own
        Steps that differ by the person's own edits alone, where it is known
        what the model was given; the sequence has not changed there.
    refused
        Why the sequence no longer fits the model, or "".
    """

    project: str
    model: str
    added: tuple[Step, ...] = ()
    removed: tuple[Step, ...] = ()
    changed: tuple[ChangedStep, ...] = ()
    moved: tuple[str, ...] = ()
    lost: tuple[str, ...] = ()
    refused: str = ""
    own: frozenset[str] = frozenset()

    @property
    def news(self) -> bool:
        """Tell whether the sequence itself has something new for the model, or to say."""
        differ = {step.id for step in (*self.added, *self.removed)} | set(self.moved)
        differ |= {changed_step.was.id for changed_step in self.changed}
        return bool(self.refused or differ - self.own)

    @property
    def open(self) -> bool:
        """Tell whether there is anything to take over, or to say."""
        return bool(self.added or self.removed or self.changed or self.moved or self.refused)


def difference(
    book: Book, sequence: Sequence, given: Mapping[ModelKey, Given] | None = None
) -> tuple[Offer, ...]:
    """Return what a sequence would change, for each model from it that differs from it now.

    Parameters
    ----------
    given
        The steps that models were given, as far as anybody knows; they tell
        the person's own edits from what has changed in the sequence.
    """
    known = given or {}
    offers = (
        _offer(
            _Asked(book, project, model, sequence, known.get(ModelKey(project.name, model.name)))
        )
        for project in book.projects
        for model in project.models
        if model.made is not None and model.made.sequence == sequence.name
    )
    return tuple(offer for offer in offers if offer.open)


def taken_over(book: Book, sequence: Sequence, spots: Iterable[tuple[str, str]]) -> Book:
    """Return the book with a sequence given anew to models, (project, model) each.

    Options and colours are those that each model took, as far as they are there still.

    Raises
    ------
    Refused
        As `apply_to_book.give` does, or if a model did not come from it.
    """
    for project, name in spots:
        made = book.project(project).model(name).made
        if made is None or made.sequence != sequence.name:
            raise Refused(
                f"{project}/{name}",
                message('does not come from "{sequence}"', sequence=sequence.name),
            )
        options, colours = still(sequence, made)
        changes = still_fitting(sequence, options, made.changes)
        book = give(book, project, (name,), sequence, options, colours, changes)
    return book


def left(book: Book, spots: Iterable[tuple[str, str]]) -> Book:
    """Return the book in which models follow no sequence any more; their steps stay."""
    wanted = set(spots)
    return with_every_model(
        book, lambda key, model: replace(model, made=None) if key in wanted else model
    )


def still(sequence: Sequence, made: Made) -> tuple[tuple[str, ...], dict[str, str]]:
    """Return what a model took of a sequence, as far as the sequence has it still.

    Options that have come to exclude each other are reduced to the first.
    """
    there = [option.name for option in sequence.options]
    options = [name for name in made.options if name in there]
    for group in choices_of(sequence).values():
        both = [name for name in options if name in {option.name for option in group}]
        options = [name for name in options if name not in both[1:]]
    taken = complete(sequence, options)
    order, _ = changed(sequence, taken, still_fitting(sequence, taken, made.changes))
    known = {colour.name for colour in order.colours}
    colours = {colour.colour: colour.coating for colour in made.colours if colour.colour in known}
    return taken, colours


@dataclass(frozen=True, eq=False)
class _Asked:
    """A model and its sequence; equal while nothing that the offer hangs on was replaced.

    It keeps all of it alive, so that an identity is never given out twice.
    """

    book: Book
    project: Project
    model: Model
    sequence: Sequence
    given: Given | None

    @cached_property
    def _key(self) -> tuple[object, ...]:
        project, book = self.project, self.book
        kept = (self.model, self.sequence, project.log, project.observed, book.pace, self.given)
        return (project.name, *map(id, kept), *(location.name for location in book.room.locations))

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Asked) and self._key == other._key

    def __hash__(self) -> int:
        return hash(self._key)


@lru_cache(maxsize=512)
def _offer(asked: _Asked) -> Offer:
    book, project, model, sequence = asked.book, asked.project, asked.model, asked.sequence
    spot, made = Offer(project.name, model.name), model.made
    assert made is not None
    try:
        options, colours = still(sequence, made)
        changes = still_fitting(sequence, options, made.changes)
        given = fresh(book, project, model, sequence, options, colours, changes)
    except Refused as refused:
        return replace(spot, refused=refused.mend)
    old = {step.id: normal(model, step) for step in model.steps}
    begun = in_logbook(project, model.name)  # these are written as the model writes them
    new = {step.id: normal(model, step) if step.id in begun else step for step in given.model.steps}
    both = [(old[name], new[name]) for name in new if name in old]
    there = {} if asked.given is None else {step.id: normal(model, step) for step in asked.given}
    return replace(
        spot,
        own=_own(there, old, new) if asked.given is not None else frozenset(),
        added=tuple(step for name, step in new.items() if name not in old),
        removed=tuple(step for name, step in old.items() if name not in new),
        changed=tuple(
            ChangedStep(was, becomes, unlike)
            for was, becomes in both
            if (unlike := _unlike(was, becomes))
        ),
        moved=_moved([name for name in old if name in new], [name for name in new if name in old]),
        lost=given.lost,
    )


def _own(given: Steps, old: Steps, new: Steps) -> frozenset[str]:
    """Return the steps that a person has changed, and the sequence has not since it was given."""
    same = {name for name in new if name in given and not _unlike(given[name], new[name])}
    kept = [name for name in given if name in new]
    stirred = set(_moved(kept, [name for name in new if name in given]))
    edited = {name for name in same - stirred if name not in old or _unlike(old[name], new[name])}
    edited |= {name for name in old if name not in given and name not in new}
    shifted = _moved([name for name in old if name in new], [name for name in new if name in old])
    return frozenset(edited | (set(shifted) & same - stirred))


def _unlike(was: Step, becomes: Step) -> tuple[str, ...]:
    names = [field.name for field in fields(Step)]
    return tuple(name for name in names if getattr(was, name) != getattr(becomes, name))


def _moved(before: list[str], after: list[str]) -> tuple[str, ...]:
    blocks = SequenceMatcher(None, before, after, autojunk=False).get_matching_blocks()
    still_there = {name for block in blocks for name in before[block.a : block.a + block.size]}
    return tuple(name for name in after if name not in still_there)
