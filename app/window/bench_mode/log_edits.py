"""Edits of the bench mode: what was begun, ticked off, finished; a longer or shorter stretch."""

from __future__ import annotations

from dataclasses import replace

from app.service import edits
from app.service.edits import Edit
from planner.bench import BenchCalendar
from planner.values.book import Book
from planner.values.moment import minute_of, moment_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Logged
from planner.values.refusal import Refused


def entry_of(book: Book, key: PassKey) -> Logged | None:
    """Return the entry of a pass."""
    wanted = (key.model, key.step, key.coat)
    log = book.project(key.project).log
    return next((one for one in log if (one.model, one.step, one.coat) == wanted), None)


def begin(book: Book, key: PassKey, now: int, planned: int | None) -> Edit:
    """Note that a pass is begun now."""
    if entry_of(book, key) is not None:
        raise Refused("log", f'"{key.step}" stands in the logbook already')
    start = moment_of(now, zone_named(book.bench_time.zone))
    fact = Logged(model=key.model, step=key.step, coat=key.coat, start=start, planned=planned)
    return edits.log_fact(book, key.project, fact)


def finish(book: Book, key: PassKey, now: int, minutes: int) -> Edit:
    """Note that a pass is done now; begun ``minutes`` ago where no beginning was noted."""
    zone = zone_named(book.bench_time.zone)
    known = entry_of(book, key)
    if known is not None and known.end is not None:
        raise Refused("log", f'"{key.step}" is done already')
    if known is None:
        start = moment_of(now - minutes, zone)
        known = Logged(model=key.model, step=key.step, coat=key.coat, start=start, planned=minutes)
    end = max(now, minute_of(known.start, up=False) + 1)
    return edits.log_fact(book, key.project, replace(known, end=moment_of(end, zone)))


def tick(
    book: Book, key: PassKey, place: str, now: int, *, on: bool, planned: int | None = None
) -> Edit:
    """Tick a place off, or not after all; the first tick begins the pass."""
    known = entry_of(book, key)
    if known is None:
        start = moment_of(now, zone_named(book.bench_time.zone))
        known = Logged(model=key.model, step=key.step, coat=key.coat, start=start, planned=planned)
    others = tuple(one for one in known.ticked if one != place)
    ticked = (*others, place) if on else others
    word = "ticked" if on else "not ticked"
    made = edits.log_fact(book, key.project, replace(known, ticked=ticked))
    return Edit(f"{word}: {key.model}/{key.step}, {place}", made.book)


def longer(book: Book, now: int, minutes: int) -> Edit:
    """Make the stretch that runs so much longer, or begin one now."""
    stretch = BenchCalendar(book.bench_time).stretch_at(now)
    left = stretch.interval.end - now if stretch else 0
    made = edits.only_minutes(book, now, min(1440, left + minutes))
    return Edit(f"{minutes} min more at the bench", made.book)


def stop(book: Book, now: int) -> Edit:
    """End the stretch that runs."""
    return Edit("stopped for tonight", edits.only_minutes(book, now, 1).book)
