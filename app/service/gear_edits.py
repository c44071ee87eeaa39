"""Edits of gear: airbrushes and what they cost in minutes and millilitres."""

from __future__ import annotations

from dataclasses import replace

from app.service.edits import Edit
from planner.values.book import Book
from planner.values.book_changes import with_log, with_projects
from planner.values.gear import Airbrush, Cleaned
from planner.values.message import called
from planner.values.project import Logged
from planner.values.refusal import Refused, unknown


def put_airbrush(book: Book, was: str, airbrush: Airbrush) -> Edit:
    """Put an airbrush in place of the one called ``was``, or beside the others if "".

    Raises
    ------
    Refused
        If there is none called ``was``, or another has the new name.
    """
    owned = list(book.gear.airbrushes)
    if was:
        owned[_index(book, was)] = airbrush
    else:
        owned.append(airbrush)
    name = (
        called("airbrush {airbrush}", airbrush=airbrush.name)
        if was
        else called("add airbrush {airbrush}", airbrush=airbrush.name)
    )
    renamed = _named_anew(book, was, airbrush.name) if was not in ("", airbrush.name) else book
    return _with_airbrushes(renamed, name, tuple(owned))


def remove_airbrush(book: Book, name: str) -> Edit:
    """Take an airbrush out of the gear.

    Raises
    ------
    Refused
        If there is none of that name, or it is the last and steps are sprayed.
    """
    at = _index(book, name)
    left = (*book.gear.airbrushes[:at], *book.gear.airbrushes[at + 1 :])
    return _with_airbrushes(book, called("remove airbrush {name}", name=name), left)


def _named_anew(book: Book, was: str, name: str) -> Book:
    """Return the book whose logbook calls an airbrush by its new name."""

    def entry(old: Logged) -> Logged:
        return replace(old, airbrush=name) if old.airbrush == was else old

    def fact(old: Cleaned) -> Cleaned:
        return replace(old, airbrush=name) if old.airbrush == was else old

    logged = with_projects(book, lambda project: with_log(project, entry))
    return replace(logged, cleaned=tuple(fact(cleaning) for cleaning in book.cleaned))


def _index(book: Book, name: str) -> int:
    known = [airbrush.name for airbrush in book.gear.airbrushes]
    if name not in known:
        raise Refused("gear.airbrushes", unknown("airbrush", name, known))
    return known.index(name)


def _with_airbrushes(book: Book, name: str, owned: tuple[Airbrush, ...]) -> Edit:
    return Edit(name, replace(book, gear=replace(book.gear, airbrushes=owned)))
