"""The lines of the list of sequences."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from app.service import sequences
from planner.sequences.apply_to_book import every_sequence
from planner.sequences.difference import Given
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.sequence import Sequence


@dataclass(frozen=True)
class SequenceRow:
    """A sequence with how many models came from it, and how many differ from it now."""

    sequence: Sequence
    own: bool
    models: int
    differ: int


def rows_of(book: Book, given: Mapping[ModelKey, Given]) -> tuple[SequenceRow, ...]:
    """Return a line for every sequence, a person's own first."""
    own = {sequence.name for sequence in book.sequences}
    offered = sequences.offers(book, given)
    return tuple(
        SequenceRow(
            sequence,
            sequence.name in own,
            _followers(book, sequence.name),
            offered.get(sequence.name, 0),
        )
        for sequence in every_sequence(book)
    )


def _followers(book: Book, name: str) -> int:
    models = (model for project in book.projects for model in project.models)
    return sum(model.made is not None and model.made.sequence == name for model in models)
