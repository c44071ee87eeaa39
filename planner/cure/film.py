"""A film on its way through the drying states."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple
from zoneinfo import ZoneInfo

from planner.air import AirCourse, air_course, readings_of
from planner.cure.course import MILLION, Course
from planner.cure.family_times import Status
from planner.cure.kinetics import STAGES, Band
from planner.cure.reference import LABEL_SPREAD, SPREAD, reference_minutes, thickness_exponent
from planner.values.coating import Clock, Coating, Family, Mark, State
from planner.values.refusal import number_in
from planner.values.room import Location, Reading, Room

_Need = tuple[tuple[Course, int], ...]


@dataclass(frozen=True)
class Film:
    """A film of ``coating``.

    Attributes
    ----------
    thickness_um
        Dry thickness; more than the coating's own where coats merged [µm].
    location
        Where it dries; "" is the first location.
    laid
        Minute from which its clock runs: the end of its pass.
    slowness
        What looking at this very film has taught: a factor on its times.

    Raises
    ------
    Refused
        If the thickness is outside 0.1 to 100 000 µm.
    """

    coating: Coating
    thickness_um: float
    location: str
    laid: int
    slowness: float = 1.0

    def __post_init__(self) -> None:
        if not 0.1 <= self.thickness_um <= 1e5:
            number_in(self.thickness_um, 0.1, 1e5, "thickness_um", "µm")


class Wait(NamedTuple):
    """What a mark asks of a film, whenever that was laid: minutes of the clock, or of drying."""

    minutes: int
    need: _Need = ()

    def after(self, start: int, *, up: bool) -> int | None:
        """Return the whole minute by which it is over, counted from ``start``; None is never.

        It is rounded up for what opens and down for what closes (definition 1).
        """
        return _reach(self.need, start + self.minutes, up=up)


class Cure:
    """When films reach their states in the air of a room.

    A waterborne film first loses its water (driven by dryness and warmth),
    until it is tack-free; what is left of a reference time after that is
    hardening.  That split is assumed.  Every other family has one stage.

    Parameters
    ----------
    room
        Its locations, their daily air and the readings.
    zone
        Time zone of the room's clock.
    """

    def __init__(self, room: Room, zone: ZoneInfo) -> None:
        self.room = room
        self.zone = zone
        self._air: dict[str, AirCourse] = {}
        self._courses: dict[tuple[str, str, Band], Course] = {}
        self._needs: dict[tuple[object, ...], _Need] = {}
        self._kept: dict[int, Coating] = {}  # keeps each id that stands in _needs alive

    def air(self, location: str = "") -> AirCourse:
        """Return the course of the air at a location; `KeyError` if there is none."""
        found = self._air.get(location)
        if found is None:
            place = self.room.location(location)
            found = _air_course(place, tuple(readings_of(self.room, place)), self.zone)
            self._air[location] = found
        return found

    def rate(
        self, family: Family, location: str, minute: int, band: Band = Band.NOMINAL, stage: int = 0
    ) -> float:
        """Return equivalent minutes gained in one minute; 0 means that nothing happens.

        ``stage`` counts the family's stages: for waterborne films 0 is
        evaporation and 1 hardening.
        """
        return self._course(location, family, stage, band).rate(minute) / MILLION

    def ready_at(self, film: Film, state: State, band: Band = Band.LATE) -> int | None:
        """Return the first whole minute at which ``film`` has reached ``state``; None is never."""
        return _reach(self._state_need(film, state, band), film.laid, up=True)

    def opens_at(self, film: Film, mark: Mark, band: Band = Band.LATE) -> int | None:
        """Return the first minute at or after ``mark``; None is never (definition 4)."""
        return self.wait(film, mark, band).after(film.laid, up=True)

    def closes_at(self, film: Film, mark: Mark, start: int, band: Band = Band.EARLY) -> int | None:
        """Return the minute at which ``mark`` closes; None is never.

        It counts from ``start``, the start of the pass that laid the film,
        and rounds down (definitions 1 and 4).
        """
        return self.wait(film, mark, band).after(start, up=False)

    def wait(self, film: Film, mark: Mark, band: Band) -> Wait:
        """Return what ``mark`` asks of such a film, whenever it is laid."""
        if mark.state is not None:
            return Wait(0, self._state_need(film, mark.state, band))
        assert mark.minutes is not None
        if mark.clock is Clock.ELAPSED:
            return Wait(mark.minutes)
        return Wait(0, self._minutes_need(film, mark.minutes, band))

    def age(self, film: Film, minute: int, band: Band = Band.NOMINAL) -> float:
        """Return how far a film has come by ``minute`` [equivalent min at 23 °C, 50 % RH].

        On this clock every state lies at its `target`.
        """
        if minute <= film.laid:
            return 0.0
        stages = STAGES[film.coating.family]
        first = self._course(film.location, film.coating.family, 0, band)
        gained = first.between(film.laid, minute)
        if len(stages) == 1:
            return gained / MILLION
        water = round(self._water_minutes(film) * MILLION)
        dry = first.reach(film.laid, water)
        if gained < water or dry is None:
            return gained / MILLION
        second = self._course(film.location, film.coating.family, 1, band)
        return (water + second.between(dry, minute)) / MILLION

    def target(self, film: Film, state: State) -> float:
        """Return the age at which a film of this thickness reaches ``state`` [equivalent min]."""
        figure = reference_minutes(film.coating, state)
        ratio = film.thickness_um / film.coating.dry_film_um
        stretched = float(ratio ** thickness_exponent(film.coating.family, state))
        return figure.minutes * stretched * film.coating.slowness * film.slowness

    def _course(self, location: str, family: Family, stage: int, band: Band) -> Course:
        kinetics = STAGES[family][stage]
        key = (location, kinetics.name, band)
        found = self._courses.get(key)
        if found is None:
            found = self._courses[key] = Course(self.air(location), kinetics, band)
        return found

    def _state_need(self, film: Film, state: State, band: Band) -> _Need:
        coating = film.coating
        key = (id(coating), film.thickness_um, film.location, film.slowness, state, band)
        found = self._needs.get(key)
        if found is None:
            label = reference_minutes(coating, state).status is Status.LABEL
            spread = (LABEL_SPREAD if label else SPREAD)[band]
            found = self._need(film, self.target(film, state), spread, band)
            self._kept[id(coating)] = coating
            self._needs[key] = found
        return found

    def _minutes_need(self, film: Film, minutes: int, band: Band) -> _Need:
        coating = film.coating
        key = (id(coating), film.thickness_um, film.location, film.slowness, minutes, band)
        found = self._needs.get(key)
        if found is None:
            found = self._need(film, minutes, LABEL_SPREAD[band], band)
            self._kept[id(coating)] = coating
            self._needs[key] = found
        return found

    def _need(self, film: Film, minutes: float, spread: float, band: Band) -> _Need:
        """Return what each stage must gain for ``minutes`` of age, in millionths."""
        family = film.coating.family
        first = self._course(film.location, family, 0, band)
        if len(STAGES[family]) == 1:
            return ((first, round(minutes * spread * MILLION)),)
        water = min(minutes, self._water_minutes(film))
        second = self._course(film.location, family, 1, band)
        return (
            (first, round(water * spread * MILLION)),
            (second, round((minutes - water) * spread * MILLION)),
        )

    def _water_minutes(self, film: Film) -> float:
        """Return the part of a waterborne film's age that evaporation takes [min]."""
        return self.target(film, State.TACK_FREE)


@lru_cache(maxsize=32)
def _air_course(place: Location, readings: tuple[Reading, ...], zone: ZoneInfo) -> AirCourse:
    """Return the course of one air; kept, for an edit seldom changes it."""
    return air_course(place, readings, zone)


def _reach(need: _Need, start: int, *, up: bool) -> int | None:
    minute = start
    for course, gain in need:
        reached = course.reach(minute, gain, up=up)
        if reached is None:
            return None
        minute = reached
    return minute
