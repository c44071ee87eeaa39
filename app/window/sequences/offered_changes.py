"""What a sequence offers to the models that came from it, line by line."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from app.window import words
from app.window.sequences.sequence_wording import (
    changes_text,
    minutes_text,
    titles_of,
    where,
    work_text,
)
from planner.sequences.difference import Given, Offer, difference
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.sequence import Sequence
from planner.values.step import Step


@dataclass(frozen=True)
class OfferLine:
    """One thing that would be other in one model; ``sign`` marks its kind beside the word."""

    project: str
    model: str
    sign: str
    kind: str
    step: str
    what: str
    own: bool = False

    @property
    def spot(self) -> tuple[str, str]:
        """The model, as the edits name it."""
        return (self.project, self.model)


def lines_of(
    book: Book, sequence: Sequence, given: Mapping[ModelKey, Given] | None = None
) -> tuple[OfferLine, ...]:
    """Return every line of what a sequence offers, a person's own edits last in each model."""
    return tuple(
        line
        for offer in difference(book, sequence, given)
        for line in sorted(_of(offer, book, sequence), key=lambda line: line.own)
    )


def _of(offer: Offer, book: Book, sequence: Sequence) -> Iterator[OfferLine]:
    tr = words.tr
    model = book.project(offer.project).model(offer.model)
    titles = titles_of((*model.steps, *(step.step for step in sequence.steps)))

    def line(sign: str, kind: str, step: str, what: str) -> OfferLine:
        own = step in offer.own and step not in offer.lost
        if own:
            kind = tr("your own edit")
            what = tr("taking over undoes it: {change}").format(change=what)
        return OfferLine(offer.project, offer.model, sign, kind, titles.get(step, step), what, own)

    if offer.refused:
        yield line("×", tr("does not fit"), "", offer.refused)
    for name in offer.lost:
        yield line("×", tr("in the logbook"), name, tr("it would be gone, so the model stays"))
    for step in offer.removed:
        if step.id not in offer.lost:
            yield line("−", tr("goes"), step.id, _short(step))
    for step in offer.added:
        yield line("+", tr("comes"), step.id, _short(step))
    for changed in offer.changed:
        yield line("≠", tr("changes"), changed.was.id, changes_text(changed, titles))
    for name in offer.moved:
        yield line("↕", tr("moves"), name, tr("stands elsewhere in the order"))


def _short(step: Step) -> str:
    return words.tr("{work} · {where} · {minutes}").format(
        work=work_text(step), where=where(step), minutes=minutes_text(step.minutes)
    )
