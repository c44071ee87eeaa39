"""Films that may dry in several locations, as if each always had the best of them.

A proof that no plan places everything must hold wherever they dry.  So each
such step gets a location that there is not, in which a film is ready as soon
as in the quickest of those open to it, and closes as late as in the slowest.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from planner.cure import Band, Cure, Film
from planner.schedule.drying_locations import choices
from planner.values.book import Book
from planner.values.book_changes import with_every_step
from planner.values.coating import Mark, State
from planner.values.room import Room
from planner.values.step import Step

UNNAMED = "anywhere {number}"


class Anywhere(Cure):
    """A cure that knows locations which stand for the best of several."""

    def __init__(self, real: Cure, room: Room, open_to: Mapping[str, tuple[str, ...]]) -> None:
        super().__init__(room, real.zone)
        self._real = real
        self._open_to = open_to

    def ready_at(self, film: Film, state: State, band: Band = Band.LATE) -> int | None:
        """Return when a film is ready in the quickest of its locations; None is never."""
        return _least([self._real.ready_at(film, state, band) for film in self._films(film)])

    def opens_at(self, film: Film, mark: Mark, band: Band = Band.LATE) -> int | None:
        """Return the first minute after a mark in the quickest location; None is never."""
        return _least([self._real.opens_at(film, mark, band) for film in self._films(film)])

    def closes_at(self, film: Film, mark: Mark, start: int, band: Band = Band.EARLY) -> int | None:
        """Return when a mark closes in the slowest location; None is never."""
        found = [self._real.closes_at(film, mark, start, band) for film in self._films(film)]
        return None if None in found else max(index for index in found if index is not None)

    def _films(self, film: Film) -> list[Film]:
        places = self._open_to.get(film.location)
        return [film] if places is None else [replace(film, location=place) for place in places]


def anywhere(book: Book, cure: Cure) -> tuple[Book, Cure]:
    """Return a book in which no step leaves a choice of location, and the cure for it.

    Whatever holds of every plan of that book holds of every plan of ``book``.
    """
    open_to = choices(book)
    if not open_to:
        return book, cure
    known = {location.name: location for location in book.room.locations}
    names: dict[tuple[str, ...], str] = {}
    extra = []
    for places in dict.fromkeys(open_to.values()):
        real = tuple(book.room.location(place).name for place in places)
        names[places] = _new_name(len(names), known)
        stands = sum(known[name].drying_places for name in real)
        extra.append(replace(known[real[0]], name=names[places], drying_places=min(stands, 10_000)))
    room = replace(book.room, locations=(*book.room.locations, *extra))
    anywhere = with_every_step(
        replace(book, room=room), lambda key, step: _there(step, names.get(open_to.get(key, ())))
    )
    best = {
        name: tuple(book.room.location(p).name for p in places) for places, name in names.items()
    }
    return anywhere, Anywhere(cure, room, best)


def _there(step: Step, name: str | None) -> Step:
    return step if name is None else replace(step, dries_in=name, or_in=())


def _new_name(number: int, known: Mapping[str, object]) -> str:
    name = UNNAMED.format(number=number)
    while name in known:
        name += "'"
    return name


def _least(found: list[int | None]) -> int | None:
    return min((index for index in found if index is not None), default=None)
