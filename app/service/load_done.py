"""A whole load noted as done at once: every model that took the colour, one after the other."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from app.service import air_readings, film_brake, logbook
from app.service.edits import Edit
from planner.values.book import Book
from planner.values.message import called
from planner.values.moment import minute_of
from planner.values.plan import PassKey, Plan


@dataclass(frozen=True)
class LoadDone:
    """What came of noting a load.

    Attributes
    ----------
    edit
        All that could be noted, as one edit; None where nothing could.
    held
        Passes that meet a film that is not ready: somebody has to say how they went on.
    """

    edit: Edit | None
    held: tuple[PassKey, ...]


def load_done(book: Book, plan: Plan, keys: Sequence[PassKey], now: int) -> LoadDone:
    """Note each pass of a load as done, the last one now.

    Two hands do one model at a time, so each ends where the next one begins
    (assumed: that nobody paused in between).  One whose films were not ready
    by then ends now.

    Parameters
    ----------
    keys
        The passes, none of them done, in the order in which they are done.

    Raises
    ------
    Refused
        If one of them is done already; then nothing is noted.
    """
    known = [key for key in keys if logbook.knows(book, key)]
    air = air_readings.last_read(book, now)
    made: Edit | None = None
    held, number = [], 0
    for key, end in zip(known, _ends(book, plan, known, now), strict=True):
        before = made.book if made else book
        planned = logbook.planned_minutes(book, plan, key)
        at = end
        if end < now and film_brake.at_end(before, key, end, planned=planned) is not None:
            at = now
        if film_brake.at_end(before, key, at, planned=planned) is not None:
            held.append(key)
            continue
        begun = logbook.entry_of(before, key) is not None
        made = logbook.finish(
            before,
            key,
            at,
            None if begun else film_brake.likely_minutes(before, key, at, planned),
            planned,
            used=logbook.usual_use(before, key, plan),
            air=air,
            airbrush=logbook.usual_airbrush(before, key, plan),
        )
        number += 1
    if made is not None and number > 1:
        made = Edit(called("done: {n} at once", n=number), made.book)
    return LoadDone(made, tuple(held))


def _ends(book: Book, plan: Plan, keys: Sequence[PassKey], now: int) -> list[int]:
    """Return when each of some passes ended that were done one after the other [minute]."""
    ends: list[int] = []
    end = now
    for key in reversed(keys):
        entry = logbook.entry_of(book, key)
        start = end - logbook.planned_minutes(book, plan, key)
        if entry is not None:
            start = minute_of(entry.start, up=False)
        ends.append(max(end, start + 1))
        end = min(end, start)
    return ends[::-1]
