"""What is asked before work over a film that is not ready, or after its window, is noted.

Whoever asks, be it the window or the command line, goes on in one of three
ways: all the same, because somebody has looked and the film is ready, or not
at all.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from app.service import bench_events, logbook
from planner.cure import Cure
from planner.evening.film_brake import Miss, Unready, open_from, unready
from planner.values.book import Book
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.refusal import Refused

__all__ = ["Miss", "Unready"]


class GoOn(StrEnum):
    """How work goes on that was held up."""

    ALL_THE_SAME = "all the same"
    LOOKED = "looked"


@dataclass(frozen=True)
class HeldUp:
    """What holds work up.

    ``start`` is when it begins, or is taken to have been begun [minute].
    """

    key: PassKey
    start: int
    found: tuple[Unready, ...]

    @property
    def by_looking(self) -> bool:
        """Tell whether a look alone can say that all of it is ready after all."""
        return all(one.by_looking for one in self.found)

    @property
    def ready(self) -> int | None:
        """The minute by which all films will be ready, None for never."""
        latest = 0
        for one in self.found:
            if one.ready is None:
                return None
            latest = max(latest, one.ready)
        return latest

    @property
    def early(self) -> bool:
        """Tell whether waiting helps: nothing of it is too late."""
        return all(one.side is Miss.EARLY for one in self.found)


def at_beginning(book: Book, key: PassKey, now: int, cure: Cure | None = None) -> HeldUp | None:
    """Return what holds a pass up that is to begin now; None for nothing, or if it is begun."""
    if not logbook.knows(book, key) or logbook.entry_of(book, key) is not None:
        return None
    return _held(key, now, unready(book, key, now, cure=cure))


def at_end(
    book: Book,
    key: PassKey,
    now: int,
    minutes: int | None = None,
    planned: int | None = None,
    cure: Cure | None = None,
) -> HeldUp | None:
    """Return what a pass that ends now has met outside its window, None for nothing.

    Parameters
    ----------
    minutes
        How long it took, where that was told [min].
    planned
        How long it should have taken; absent, as its step says [min].
    """
    if not logbook.knows(book, key):
        return None
    known = logbook.entry_of(book, key)
    if known is not None:
        start = minute_of(known.start, up=False)
    else:
        start = now - (minutes or likely_minutes(book, key, now, planned, cure))
    end = max(now, start + 1)
    return _held(key, start, unready(book, key, start, end, begun=known is not None, cure=cure))


def likely_minutes(
    book: Book, key: PassKey, now: int, planned: int | None = None, cure: Cure | None = None
) -> int:
    """Return how long ago a pass that ends now was likely begun [min].

    As planned, but not before its films were ready, if they are by now.
    """
    usual = planned or logbook.planned_minutes(book, None, key)
    if any(one.side is Miss.EARLY for one in unready(book, key, now, cure=cure)):
        return usual
    return max(1, min(usual, now - open_from(book, key, now, cure=cure)))


def seen_ready(book: Book, held: HeldUp) -> Book:
    """Return the book in which somebody has looked at the films before the work, and found them so.

    Each look sets the pace of its film.

    Raises
    ------
    Refused
        If no look can tell: minutes were asked for, or it is too late.
    """
    for one in held.found:
        if not one.by_looking or one.state is None:
            raise Refused("look", "no look can tell that; wait, or begin all the same")
        entry = logbook.entry_of(book, one.film)
        laid = minute_of(entry.end) if entry is not None and entry.end is not None else 0
        at = max(held.start, laid)
        book = bench_events.looked(book, one.film, at, one.state, reached=True).book
    return book


def gone_on(book: Book, held: HeldUp | None, way: GoOn | None) -> Book:
    """Return the book in which work that was held up goes on in some way."""
    return seen_ready(book, held) if held is not None and way is GoOn.LOOKED else book


def _held(key: PassKey, start: int, found: tuple[Unready, ...]) -> HeldUp | None:
    return HeldUp(key, start, found) if found else None
