"""What goes from exchange files into a book."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from enum import StrEnum
from types import MappingProxyType
from typing import Any

from app.service.clock import current_minute
from app.service.edits import Edit
from app.service.merging import USUAL, Item, ItemKind, MergeChoice, beside, differences, named
from planner.values.book import Book
from planner.values.gear import Cleaned, Gear
from planner.values.message import called
from planner.values.plausible_dates import in_reach
from planner.values.room import Room
from storage.exchange import Exchange


class Household(StrEnum):
    """What a book has of its own, whatever is imported."""

    BENCH_TIME = "bench time"
    ROOM = "room"
    GEAR = "gear"


@dataclass(frozen=True)
class Imported:
    """A book with a file taken in, and all that the person should know of it.

    Attributes
    ----------
    projects, sequences
        (name in the file, name in the book) of each one taken in.
    already
        Projects and sequences that the book had, the very same.
    kept
        What the book describes differently under its name, and keeps.
    replaced
        What the file's took the place of.
    added
        What the file brought beside: coatings, mixes, and locations or
        airbrushes without which its steps could not be done.
    """

    book: Book
    projects: tuple[tuple[str, str], ...]
    sequences: tuple[tuple[str, str], ...]
    already: tuple[str, ...]
    kept: tuple[Item, ...]
    replaced: tuple[Item, ...]
    added: tuple[str, ...]


def import_edit(file: str, imported: Imported) -> Edit:
    """Return what was taken from a file as an edit."""
    return Edit(called("import {file}", file=file), imported.book)


def import_file(
    book: Book,
    exchange: Exchange,
    *,
    theirs: frozenset[Household] = frozenset(),
    choices: Mapping[Item, MergeChoice] = MappingProxyType({}),
    names: Mapping[Item, str] = MappingProxyType({}),
    now: int | None = None,
) -> Imported:
    """Take the projects, sequences, coatings and mixes of an exchange file into a book.

    The book's own bench time, room and gear win.  Of things that differ
    under one name the usual choice holds, for a project to take it beside
    the book's, for the rest to keep the book's.

    Parameters
    ----------
    theirs
        Which of bench time, room and gear to take from the file.
    choices
        What else to do with things that differ.
    names
        New names for what is taken beside; absent, one is made.
    now
        The minute of today; absent, the clock's.

    Raises
    ------
    Refused
        If the two do not go together, or the file speaks of a day that no plan reaches.
    """
    in_reach(exchange.book, current_minute() if now is None else now, idle=True)
    found = differences(book, exchange.book)
    chosen = {
        difference.item: choices.get(difference.item, USUAL[difference.kind])
        for difference in found
    }
    other, given = beside(book, exchange.book, chosen, names)
    merged = {kind: _merged(book, other, kind, chosen) for kind in ItemKind}
    room, new_places = _room(book.room, other, Household.ROOM in theirs)
    gear, new_tools = _gear(book.gear, other, Household.GEAR in theirs)
    whole = replace(
        book,
        coatings=merged[ItemKind.COATING],
        mixes=merged[ItemKind.MIX],
        room=room,
        gear=gear,
        bench_time=other.bench_time if Household.BENCH_TIME in theirs else book.bench_time,
        projects=merged[ItemKind.PROJECT],
        sequences=merged[ItemKind.SEQUENCE],
    )
    whole = replace(whole, cleaned=_cleaned(book, whole, other))
    fresh = {kind: _fresh(book, whole, kind) for kind in ItemKind}
    replaced = tuple(item for item, choice in chosen.items() if choice is MergeChoice.THEIRS)
    came: dict[ItemKind, list[tuple[str, str]]] = {ItemKind.PROJECT: [], ItemKind.SEQUENCE: []}
    already = []
    for kind, taken in came.items():
        for name in named(exchange.book, kind):
            item, new = (kind, name), given.get((kind, name), name)
            if new in fresh[kind] or item in replaced:
                taken.append((name, new))
            elif item not in chosen or item in given:
                already.append(name)
    return Imported(
        book=whole,
        projects=tuple(came[ItemKind.PROJECT]),
        sequences=tuple(came[ItemKind.SEQUENCE]),
        already=tuple(already),
        kept=tuple(item for item, choice in chosen.items() if choice is MergeChoice.MINE),
        replaced=replaced,
        added=(*fresh[ItemKind.COATING], *fresh[ItemKind.MIX], *new_places, *new_tools),
    )


def _merged(
    book: Book, other: Book, kind: ItemKind, chosen: Mapping[Item, MergeChoice]
) -> tuple[Any, ...]:
    """Return the book's things of a kind, with those of the file that come in."""
    kept = named(book, kind)
    for name, its in named(other, kind).items():
        if name not in kept or chosen.get((kind, name)) is MergeChoice.THEIRS:
            kept[name] = its
    return tuple(kept.values())


def _cleaned(book: Book, whole: Book, other: Book) -> tuple[Cleaned, ...]:
    """Return the cleanings of both, of the file's only those of airbrushes that its logs name."""
    came = [project for project in whole.projects if project not in book.projects]
    named_ = {entry.airbrush for project in came for entry in project.log}
    more = (
        cleaning
        for cleaning in other.cleaned
        if cleaning.airbrush in named_ and cleaning not in book.cleaned
    )
    return (*book.cleaned, *more)


def _fresh(book: Book, whole: Book, kind: ItemKind) -> tuple[str, ...]:
    had = named(book, kind)
    return tuple(name for name in named(whole, kind) if name not in had)


def _room(ours: Room, other: Book, take: bool) -> tuple[Room, tuple[str, ...]]:
    """Return the room, with the locations that steps of the file (or ours) still need."""
    first, second = (other.room, ours) if take else (ours, other.room)
    have = {location.name for location in first.locations}
    needed = (
        have | {location.name for location in second.locations}
        if take  # what the book has may be named anywhere in it
        else {
            name
            for step in (
                *(
                    step
                    for project in other.projects
                    for model in project.models
                    for step in model.steps
                ),
                *(step.step for sequence in other.sequences for step in sequence.steps),
            )
            for name in (step.dries_in, *step.or_in)
        }
    )
    # One place each is out of doors and sprayed in: the one of the room that is kept.
    more = tuple(
        replace(
            location,
            outdoors=location.outdoors and first.outdoors is None,
            spraying=location.spraying and first.spraying is None,
        )
        for location in second.locations
        if location.name in needed and location.name not in have
    )
    room = replace(first, locations=(*first.locations, *more))
    return room, () if take else tuple(location.name for location in more)


def _gear(ours: Gear, other: Book, take: bool) -> tuple[Gear, tuple[str, ...]]:
    if take and other.gear.airbrushes:
        return other.gear, ()
    if ours.airbrushes or not other.gear.airbrushes:
        return ours, ()
    return other.gear, tuple(airbrush.name for airbrush in other.gear.airbrushes)
