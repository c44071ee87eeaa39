"""Many places ticked at once: a row, or a column, of the places of an evening."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from app.service import logbook
from app.service.edits import Edit
from planner.values.book import Book
from planner.values.message import called, told
from planner.values.plan import PassKey


def tick_places(
    book: Book,
    spots: Sequence[tuple[PassKey, str]],
    now: int,
    *,
    on: bool,
    planned: Mapping[PassKey, int | None],
    airbrushes: Mapping[PassKey, str | None],
) -> Edit:
    """Tick places off, or not after all, as one edit; the first tick of a pass begins it.

    Raises
    ------
    Refused
        If one of the passes is done already; then nothing is ticked.
    """
    made: Edit | None = None
    for key, place in spots:
        made = logbook.tick(
            made.book if made else book,
            key,
            place,
            now,
            on=on,
            planned=planned.get(key),
            airbrush=airbrushes.get(key),
        )
    assert made is not None
    if len(spots) == 1:
        return made
    word = told("ticked" if on else "not ticked")
    return Edit(called("{word}: {n} places", word=word, n=len(spots)), made.book)
