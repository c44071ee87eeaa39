"""Edits of the room: where films dry, how much fits there, and its usual air."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

from app.service.edits import Edit
from planner.values.book import Book
from planner.values.book_changes import with_models, with_steps
from planner.values.drying_card import DryingCard
from planner.values.message import called, message
from planner.values.project import Project
from planner.values.refusal import Refused, demand, unknown
from planner.values.room import Location
from planner.values.sequence import Sequence
from planner.values.step import Step


def put_location(book: Book, was: str, location: Location) -> Edit:
    """Put a location in place of the one called ``was``, or beside the others if "".

    With another name, steps that dry there and readings follow it.

    Raises
    ------
    Refused
        If there is none called ``was``, or another has the new name.
    """
    places = list(book.room.locations)
    if not was:
        room = replace(book.room, locations=(*places, location))
        return Edit(called("add {location}", location=location.name), replace(book, room=room))
    places[_index(book, was)] = location
    readings = tuple(
        replace(reading, location=location.name) if reading.location == was else reading
        for reading in book.room.readings
    )
    room = replace(book.room, locations=tuple(places), readings=readings)
    if location.name == was:
        return Edit(called("change {was}", was=was), replace(book, room=room))
    projects, sequences = _with_steps(book, lambda step: _renamed(step, was, location.name))
    return Edit(
        called("rename {was} to {location}", was=was, location=location.name),
        replace(
            book,
            room=room,
            projects=projects,
            sequences=sequences,
            drying_cards=_cards_at(book, was, location.name),
        ),
    )


def _cards_at(book: Book, was: str, name: str) -> tuple[DryingCard, ...]:
    """Return the drying cards, those of one location at another."""
    return tuple(
        replace(card, location=name) if card.location == was else card for card in book.drying_cards
    )


def remove_location(book: Book, name: str) -> Edit:
    """Take a location out of the room, with what was read there and the cards that dried there.

    Raises
    ------
    Refused
        If there is none of that name, it is the only one, or a step dries there.
    """
    at = _index(book, name)
    place = f"room.locations[{at}]"
    demand(len(book.room.locations) > 1, place, "is the only place; films must dry somewhere")
    user = next(_users(book, name, usual=at == 0), None)
    if user is not None:
        raise Refused(place, message("{user} dries there; let it dry elsewhere first", user=user))
    left = (*book.room.locations[:at], *book.room.locations[at + 1 :])
    gone = {name, ""} if at == 0 else {name}
    readings = tuple(reading for reading in book.room.readings if reading.location not in gone)
    room = replace(book.room, locations=left, readings=readings)
    cards = tuple(card for card in book.drying_cards if card.location not in gone)
    return Edit(called("remove {name}", name=name), replace(book, room=room, drying_cards=cards))


def make_usual(book: Book, name: str) -> Edit:
    """Let films dry at a location wherever a step names none; `Refused` if it is not there.

    Readings that name no place were taken at the one that was usual until now.
    """
    places = list(book.room.locations)
    old = places[0].name
    places.insert(0, places.pop(_index(book, name)))
    readings = tuple(
        reading if reading.location else replace(reading, location=old)
        for reading in book.room.readings
    )
    if name == old:
        return Edit(called("usual place: {name}", name=name), book)
    room = replace(book.room, locations=tuple(places), readings=readings)
    cards = _cards_at(book, "", old)
    return Edit(
        called("usual place: {name}", name=name), replace(book, room=room, drying_cards=cards)
    )


def set_volume(book: Book, volume_m3: float) -> Edit:
    """Say how large the room is [m³]; it serves the estimate of solvent vapour."""
    room = replace(book.room, volume_m3=volume_m3)
    return Edit(
        called("room of {volume_m3:g} m³", volume_m3=volume_m3), replace(book, room=room), "volume"
    )


def _users(book: Book, name: str, *, usual: bool) -> Iterator[str]:
    """Yield the steps whose films may dry at a location, told for a person."""
    for project in book.projects:
        for model in project.models:
            for step in model.steps:
                if _dries_there(step, name, usual=usual):
                    yield f"{model.name}, step {step.id},"
    for sequence in book.sequences:
        for other in sequence.steps:
            if _dries_there(other.step, name, usual=False):
                yield f"sequence {sequence.name}, step {other.step.id},"


def _dries_there(step: Step, name: str, *, usual: bool) -> bool:
    if name in (step.dries_in, *step.or_in):
        return True
    return usual and not step.dries_in and bool(step.applications)


def _renamed(step: Step, was: str, name: str) -> Step:
    if was not in (step.dries_in, *step.or_in):
        return step
    return replace(
        step,
        dries_in=name if step.dries_in == was else step.dries_in,
        or_in=tuple(name if text == was else text for text in step.or_in),
    )


def _with_steps(
    book: Book, change: Callable[[Step], Step]
) -> tuple[tuple[Project, ...], tuple[Sequence, ...]]:
    """Return projects and sequences with every step changed."""
    projects = tuple(
        with_models(project, lambda model: with_steps(model, change)) for project in book.projects
    )
    sequences = tuple(
        replace(
            sequence, steps=tuple(replace(each, step=change(each.step)) for each in sequence.steps)
        )
        for sequence in book.sequences
    )
    return projects, sequences


def _index(book: Book, name: str) -> int:
    known = [location.name for location in book.room.locations]
    if name not in known:
        raise Refused("room.locations", unknown("location", name, known))
    return known.index(name)
