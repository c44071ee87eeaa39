"""What is in the cups when a plan begins: what the logbook leaves in them (definition 15)."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import NamedTuple

from planner.bench import BenchCalendar, Stretch
from planner.passes import expand
from planner.values.book import Book
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Logged

NO_ENDS: Mapping[PassKey, int] = {}


class HeldCoating(NamedTuple):
    """A coating or mix in a cup: first sprayed at ``since``, last until ``used`` [min]."""

    coating: str
    since: int
    used: int


def left_in_cups(
    book: Book, calendar: BenchCalendar, at: int, ends: Mapping[PassKey, int] = NO_ENDS
) -> dict[str, HeldCoating]:
    """Return what each airbrush of the gear holds at a minute, by the logbook; clean ones not.

    Parameters
    ----------
    at
        From when hands are free, or simply now [min].
    ends
        When each pass under way will end; absent, it is sprayed until ``at``.
    """
    stretch = calendar.stretch_at(at)
    own = {airbrush.name: airbrush for airbrush in book.gear.airbrushes}
    if stretch is None or not own:
        return {}
    held: dict[str, HeldCoating] = {}
    for name, other in sorted(_sprayed(book, stretch, at, ends), key=_by_time):
        if name not in own:
            continue
        before = held.get(name)
        since = other.since
        if (
            before is not None
            and before.coating == other.coating
            and since - before.used <= own[name].idle_limit_minutes
        ):
            since = before.since
        held[name] = HeldCoating(other.coating, since, other.used)
    return _in_time(book, calendar, stretch, at, held)


def _by_time(sprayed: tuple[str, HeldCoating]) -> tuple[int, int, str]:
    return sprayed[1].since, sprayed[1].used, sprayed[1].coating


def _sprayed(
    book: Book, stretch: Stretch, at: int, ends: Mapping[PassKey, int]
) -> Iterator[tuple[str, HeldCoating]]:
    """Yield what was sprayed in a stretch and not cleaned away: airbrush, coating, start, end."""
    for project in book.projects:
        for entry in project.log:
            if not entry.airbrush:
                continue
            key = PassKey(project.name, entry.model, entry.step, entry.coat)
            start = minute_of(entry.start, up=False)
            end = ends.get(key, at) if entry.end is None else minute_of(entry.end)
            end = max(end, start + 1)
            if not stretch.interval.start < end <= stretch.interval.end:
                continue
            if cleaned_since(book, entry.airbrush, end):
                continue
            if load := _load(book, project.name, entry):
                yield entry.airbrush, HeldCoating(load, start, end)


def _load(book: Book, project: str, entry: Logged) -> str:
    whole = book.project(project)
    passes = expand(whole, whole.model(entry.model))
    wanted = (entry.step, entry.coat)
    return next((pass_.load for pass_ in passes if (pass_.key.step, pass_.key.coat) == wanted), "")


def cleaned_since(book: Book, airbrush: str, end: int) -> bool:
    """Tell whether a cleaning is logged after a pass, or in the last minute of it."""
    return any(
        cleaning.airbrush == airbrush and minute_of(cleaning.at) >= end - 1
        for cleaning in book.cleaned
    )


def logged_since(book: Book, airbrush: str, at: int) -> bool:
    """Tell whether something sprayed with an airbrush goes on or has ended at a minute or later."""
    return any(
        entry.airbrush == airbrush and (entry.end is None or minute_of(entry.end) >= at)
        for project in book.projects
        for entry in project.log
    )


def _in_time(
    book: Book, calendar: BenchCalendar, stretch: Stretch, at: int, held: dict[str, HeldCoating]
) -> dict[str, HeldCoating]:
    """Return the cups that can be cleaned one after another from ``at`` on, in order of names.

    Whatever stood too long, or cannot be cleaned any more, is not taken to
    be there: who left it must have cleaned it.
    """
    own = {airbrush.name: airbrush for airbrush in book.gear.airbrushes}
    found = {}
    for name in sorted(held):
        end = at + own[name].clean_minutes
        stood = at - held[name].used
        if stood > own[name].idle_limit_minutes or end > stretch.interval.end:
            continue
        if not calendar.quiet(at, end):
            found[name] = held[name]
            at = end
    return found
