"""What *now* is where the logbook has been further than the clock (definition 23)."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime
from typing import NamedTuple

from planner.values.book import Book
from planner.values.moment import minute_of
from planner.values.plausible_dates import REACH


class Told(NamedTuple):
    """The last moment of a logbook [min], and what it tells: of an airbrush, or model and step."""

    minute: int
    what: str


def last_told(book: Book) -> Told | None:
    """Return the last moment of which the facts of a book tell; None where there is none.

    Work under way tells of its beginning.  Projects set aside tell nothing.
    """
    return max((Told(minute_of(moment), what) for moment, what in _facts(book)), default=None)


def present(book: Book, clock: int) -> int:
    """Return the minute that it is at least: the clock's, or that of the last fact.

    What has happened is not ahead, so a clock that lies before it is wrong,
    or the fact is; either way nothing can be done before it any more.  A fact
    more than 20 years ahead is a mistyped year and moves nothing
    (`planner.values.plausible_dates`).
    """
    told = last_told(book)
    if told is None or told.minute - clock > REACH:
        return clock
    return max(clock, told.minute)


def _facts(book: Book) -> Iterator[tuple[datetime, str]]:
    for project in book.projects:
        if not project.active:
            continue
        for entry in project.log:
            yield entry.end or entry.start, f"{entry.model}/{entry.step}"
        for look in project.observed:
            yield look.at, f"{look.model}/{look.step}"
    for cleaning in book.cleaned:
        yield cleaning.at, cleaning.airbrush
