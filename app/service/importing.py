"""What goes from exchange files into a book, and out again."""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from enum import StrEnum

from planner.values.book import Book
from planner.values.coating import Coating, Mix
from planner.values.gear import Gear
from planner.values.project import Project
from planner.values.room import Room
from storage.exchange import Exchange, dump


class Household(StrEnum):
    """What a book has of its own, whatever is imported."""

    BENCH_TIME = "bench time"
    ROOM = "room"
    GEAR = "gear"


@dataclass(frozen=True)
class Difference:
    """A coating or mix that the book and the file describe differently.

    ``fields`` names what differs, with the book's value and the file's.
    """

    name: str
    ours: Coating | Mix
    theirs: Coating | Mix
    fields: tuple[tuple[str, object, object], ...]
    taken: bool


@dataclass(frozen=True)
class Imported:
    """A book with a file taken in, and all that the person should know of it.

    Attributes
    ----------
    projects
        (name in the file, name in the book) of each project taken in.
    already
        Projects that the book had, the very same.
    differences
        Coatings and mixes of one name that differ.
    added
        What the file brought beside its projects: coatings, mixes, and
        locations or airbrushes without which its steps could not be done.
    """

    book: Book
    projects: tuple[tuple[str, str], ...]
    already: tuple[str, ...]
    differences: tuple[Difference, ...]
    added: tuple[str, ...]


def import_file(
    book: Book,
    exchange: Exchange,
    *,
    theirs: frozenset[Household] = frozenset(),
    take: frozenset[str] = frozenset(),
) -> Imported:
    """Take the projects of an exchange file into a book.

    The book's own bench time, room and gear win, and of coatings that
    differ under one name the book's; nothing that the book has is lost.

    Parameters
    ----------
    theirs
        Which of bench time, room and gear to take from the file.
    take
        Names of differing coatings and mixes to take from the file.

    Raises
    ------
    Refused
        If the two do not go together.
    """
    other = exchange.book
    coatings, new_coatings, coating_clash = _merged(book.coatings, other.coatings, take)
    mixes, new_mixes, mix_clash = _merged(book.mixes, other.mixes, take)
    room, new_places = _room(book.room, other, Household.ROOM in theirs)
    gear, new_tools = _gear(book.gear, other, Household.GEAR in theirs)
    projects, already = _projects(book, other)
    merged = replace(
        book,
        coatings=coatings,
        mixes=mixes,
        room=room,
        gear=gear,
        bench_time=other.bench_time if Household.BENCH_TIME in theirs else book.bench_time,
        projects=(*book.projects, *(project for _, project in projects)),
    )
    return Imported(
        book=merged,
        projects=tuple((name, project.name) for name, project in projects),
        already=already,
        differences=(*coating_clash, *mix_clash),
        added=(*new_coatings, *new_mixes, *new_places, *new_tools),
    )


def export(book: Book, names: tuple[str, ...] = (), note: str = "") -> bytes:
    """Return an exchange file of some projects, or of everything.

    With names, only those projects go out, with the coatings that they
    use; bench time, room and gear always do.
    """
    if not names:
        return dump(Exchange(book, note))
    projects = tuple(project for project in book.projects if project.name in names)
    used = {
        application.coating
        for project in projects
        for model in project.models
        for step in model.steps
        for application in step.applications
    }
    mixes = tuple(mix for mix in book.mixes if mix.name in used)
    used |= {portion.coating for mix in mixes for portion in mix.portions}
    coatings = tuple(coating for coating in book.coatings if coating.name in used)
    part = replace(book, projects=projects, mixes=mixes, coatings=coatings)
    return dump(Exchange(part, note))


def _merged(
    ours: tuple[Coating, ...] | tuple[Mix, ...],
    theirs: tuple[Coating, ...] | tuple[Mix, ...],
    take: frozenset[str],
) -> tuple[tuple, tuple[str, ...], tuple[Difference, ...]]:  # type: ignore[type-arg]
    kept = {one.name: one for one in ours}
    added, differing = [], []
    for one in theirs:
        mine = kept.get(one.name)
        if mine is None:
            kept[one.name] = one
            added.append(one.name)
        elif mine != one:
            taken = one.name in take
            differing.append(Difference(one.name, mine, one, _fields(mine, one), taken))
            kept[one.name] = one if taken else mine
    return tuple(kept.values()), tuple(added), tuple(differing)


def _fields(ours: Coating | Mix, theirs: Coating | Mix) -> tuple[tuple[str, object, object], ...]:
    return tuple(
        (field.name, getattr(ours, field.name), getattr(theirs, field.name))
        for field in fields(ours)
        if getattr(ours, field.name) != getattr(theirs, field.name)
    )


def _room(ours: Room, other: Book, take: bool) -> tuple[Room, tuple[str, ...]]:
    """Return the room, with the locations that steps of the file (or ours) still need."""
    first, second = (other.room, ours) if take else (ours, other.room)
    have = {location.name for location in first.locations}
    needed = (
        have | {location.name for location in second.locations}
        if take  # what the book has may be named anywhere in it
        else {
            step.dries_in
            for project in other.projects
            for model in project.models
            for step in model.steps
        }
    )
    more = tuple(
        location
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


def _projects(book: Book, other: Book) -> tuple[list[tuple[str, Project]], tuple[str, ...]]:
    names = {project.name for project in book.projects}
    fresh: list[tuple[str, Project]] = []
    already = []
    for project in other.projects:
        if project in book.projects:
            already.append(project.name)
            continue
        name, number = project.name, 2
        while name in names:
            name, number = f"{project.name} ({number})", number + 1
        names.add(name)
        fresh.append((project.name, replace(project, name=name)))
    return fresh, tuple(already)
