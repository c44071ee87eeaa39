"""A film on its way through the drying states."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from math import ceil
from typing import NamedTuple
from zoneinfo import ZoneInfo

from planner.air import AirCourse, air_course, readings_of
from planner.cure.assumptions import assumed
from planner.cure.course import MILLION, Course
from planner.cure.family_times import LABEL_SPREAD, Spread
from planner.cure.kinetics import STAGES, Band, Kinetics, clock_of, stages_of
from planner.cure.reference import DEEP, PRESUPPOSES, SURFACE, minutes_at
from planner.cure.stacking import bond_of
from planner.values.coating import Clock, Coating, Family, Mark, State
from planner.values.identity_key import Same
from planner.values.refusal import number_in
from planner.values.room import Location, Reading, Room

_Need = tuple[tuple[Course, int], ...]
_BANDS = tuple(Band)
_SLOTS = tuple((state, band) for state in DEEP for band in _BANDS)
NEVER = -1
"""What `Lower.held` says of what never comes."""
BURIED = assumed("buried")
MOST_WAITS = 50_000  # kept by a `Cure`, whose room may stay while coatings change


@dataclass(slots=True, unsafe_hash=True)  # not frozen: that would cost as much as asking it
class Film:
    """A film of ``coating``; it is never changed.

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
    wet_um
        How much of what lies below it wetted again, and has to dry with it [µm].
    lower
        What lies below and leaves through it; see `Cure.over`.
    buried
        Minute at which the next coat was laid over it; None is none.

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
    wet_um: float = 0.0
    lower: Lower | None = None
    buried: int | None = None

    def __post_init__(self) -> None:
        if not 0.1 <= self.thickness_um <= 1e5:
            number_in(self.thickness_um, 0.1, 1e5, "thickness_um", "µm")


class Lower:
    """A film that leaves through the one laid over it, by ``laid``, and holds that back.

    A part of what it still had to wait for is added.  When that is over is
    worked out where somebody asks: most films wait for fingers and another
    coat alone.
    """

    __slots__ = ("_cure", "_film", "_held", "_laid", "_share_pct")

    def __init__(self, cure: Cure, film: Film, laid: int, share_pct: int) -> None:
        self._cure, self._film, self._laid, self._share_pct = cure, film, laid, share_pct
        self._held: dict[int, int] = {}

    def held(self, state: State, band: Band) -> int:
        """Return the minute from which the film above can harden to a deep state; or `NEVER`."""
        return self.held_at(_slot(state, band))

    def held_at(self, slot: int) -> int:
        """Return the same for the state and band that stand at a `Wait.slot`."""
        found = self._held.get(slot)
        if found is not None:
            return found
        waiting = [self]  # the lowest is asked first: each hangs on the one below it
        while (below := waiting[-1]._film.lower) is not None and slot not in below._held:
            waiting.append(below)
        for one in reversed(waiting):
            ready = one._cure.ready_at(one._film, *_SLOTS[slot])
            found = NEVER
            if ready is not None:
                found = one._laid + max(0, -(-(ready - one._laid) * one._share_pct // 100))
            one._held[slot] = found
        assert found is not None
        return found


class Wait(NamedTuple):
    """What a mark asks of a film, whenever that was laid: minutes of the clock, or of drying.

    ``need`` is what each stage must gain; ``deep``, for a deep state, the same
    told by its two stages, and ``slot`` what `Lower.held_at` is asked, from
    when on the second of them may run.
    """

    minutes: int
    need: _Need = ()
    deep: _Need = ()
    slot: int = -1

    def opens(self, film: Film, buried: int | None = None) -> int | None:
        """Return the first whole minute at which it is over for ``film``; None is never.

        ``buried`` is when another was laid over it, by default as the film has it.
        """
        minutes, need, deep, slot = self
        if slot < 0:
            return _reach(need, film.laid + minutes, up=True)
        minute: int | None
        free = film.laid if film.lower is None else film.lower.held_at(slot)
        if free == NEVER:
            return None
        if free <= film.laid:
            minute = _reach(need, film.laid + minutes, up=True)
        else:
            (first, surface), (second, rest) = deep
            dry = first.reach(film.laid, surface)
            minute = None if dry is None else second.reach(max(dry, free), rest)
        buried = film.buried if buried is None else buried
        if buried is not None and minute is not None and minute > buried:
            return buried + ceil((minute - buried) * BURIED)
        return minute

    def after(self, start: int, *, up: bool) -> int | None:
        """Return the whole minute by which it is over, counted from ``start``; None is never.

        It is rounded up for what opens and down for what closes
        (definition 1); what lies below and above the film does not count.
        """
        return _reach(self.need, start + self.minutes, up=up)


class Cure:
    """When films reach their states in the air of a room.

    A film goes through two stages, one after the other: until fingers may
    hold it and another coat may follow, and from then on until it is hard.
    A waterborne film first loses its water, a lacquer its fast solvent; then
    what is left has to harden, or its slow solvent to leave.

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
        self._waits: dict[tuple[object, ...], Wait] = {}
        self._kept: dict[int, Coating] = {}  # keeps each id that stands in _waits alive

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
        return self._course(location, STAGES[family][stage], band).rate(minute) / MILLION

    def ready_at(self, film: Film, state: State, band: Band = Band.LATE) -> int | None:
        """Return the first whole minute at which ``film`` has reached ``state``; None is never."""
        return self._state_wait(film, state, band).opens(film)

    def opens_at(self, film: Film, mark: Mark, band: Band = Band.LATE) -> int | None:
        """Return the first minute at or after ``mark``; None is never (definition 4)."""
        return self.wait(film, mark, band).opens(film)

    def closes_at(self, film: Film, mark: Mark, start: int, band: Band = Band.EARLY) -> int | None:
        """Return the minute at which ``mark`` closes; None is never.

        It counts from ``start``, the start of the pass that laid the film,
        and rounds down (definitions 1 and 4).  What lies below and above
        makes no window close later.
        """
        alone = replace(film, wet_um=0.0) if film.wet_um else film
        return self.wait(alone, mark, band).after(start, up=False)

    def wait(self, film: Film, mark: Mark, band: Band) -> Wait:
        """Return what ``mark`` asks of such a film, whenever it is laid."""
        if mark.state is not None:
            return self._state_wait(film, mark.state, band)
        assert mark.minutes is not None
        if mark.clock is Clock.ELAPSED:
            return Wait(mark.minutes)
        return self._minutes_wait(film, mark.minutes, band)

    def over(self, film: Film, below: Film) -> Film:
        """Return ``film``, just laid over ``below``, with what it shares with that (definition 11).

        A coat laid later is never ready sooner for it: what is left of the
        wait below shrinks no faster than time goes on.
        """
        bond = bond_of(film.coating.family, below.coating.family)
        if bond is None:
            return film
        wet = min(bond.depth * film.thickness_um, below.thickness_um)
        share = bond.share_pct
        lower = Lower(self, below, film.laid, share) if share else film.lower
        return Film(
            film.coating,
            film.thickness_um,
            film.location,
            film.laid,
            film.slowness,
            wet,
            lower,
            film.buried,
        )

    def age(self, film: Film, minute: int, band: Band = Band.NOMINAL) -> float:
        """Return how far a film has come by ``minute`` [equivalent min at 23 °C, 50 % RH].

        On this clock every state of a film that lies alone is at its `target`.
        """
        if minute <= film.laid:
            return 0.0
        first, second = (self._course(film.location, one, band) for one in stages_of(film.coating))
        surface = round(self._surface(film, band=None) * MILLION)
        gained = first.between(film.laid, minute)
        dry = first.reach(film.laid, surface)
        if gained < surface or dry is None:
            return gained / MILLION
        if film.lower is not None:
            free = film.lower.held(State.DRY_THROUGH, band)
            dry = minute if free == NEVER else max(dry, free)
        return (surface + (second.between(dry, minute) if dry < minute else 0)) / MILLION

    def target(self, film: Film, state: State) -> float:
        """Return the age at which a film of this thickness reaches ``state`` [equivalent min]."""
        figure = minutes_at(film.coating, state, film.thickness_um, film.wet_um)
        return figure.minutes * _slowness(film)

    def _end(self, film: Film, state: State, band: Band | None) -> float:
        """Return the target at one end of the band; no state before one it presupposes."""
        figure = minutes_at(film.coating, state, film.thickness_um, film.wet_um)
        minutes = figure.minutes * _factor(_spread(film.coating, figure.spread), band)
        below = [self._end(film, one, band) for one in PRESUPPOSES.get(state, ())]
        return max([minutes * _slowness(film), *below])

    def _surface(self, film: Film, band: Band | None) -> float:
        """Return the age at which a film has every state of its first stage."""
        return max(self._end(film, state, band) for state in SURFACE)

    def _course(self, location: str, kinetics: Kinetics, band: Band) -> Course:
        key = (location, kinetics.name, band)
        found = self._courses.get(key)
        if found is None:
            found = self._courses[key] = Course(self.air(location), kinetics, band)
        return found

    def _state_wait(self, film: Film, state: State, band: Band) -> Wait:
        coating = film.coating
        key = (
            id(coating),
            film.thickness_um,
            film.wet_um,
            film.location,
            film.slowness,
            state,
            band,
        )
        found = self._waits.get(key)
        if found is None:
            end, surface = self._end(film, state, band), self._surface(film, band)
            found = self._wait(film, stages_of(coating), min(end, surface), end, band)
            if state in DEEP and found.deep:
                found = found._replace(slot=_slot(state, band))
            self._keep(key, coating, found)
        return found

    def _keep(self, key: tuple[object, ...], coating: Coating, wait: Wait) -> None:
        if len(self._waits) > MOST_WAITS:
            self._waits, self._kept = {}, {}
        self._kept[id(coating)] = coating
        self._waits[key] = wait

    def _minutes_wait(self, film: Film, minutes: int, band: Band) -> Wait:
        coating = film.coating
        key = (id(coating), film.thickness_um, film.location, film.slowness, minutes, band)
        found = self._waits.get(key)
        if found is None:
            alone = replace(film, wet_um=0.0)
            factor = _factor(_spread(coating, LABEL_SPREAD), band)
            end = minutes * factor
            surface = min(end, self._surface(alone, band=None) * factor)
            found = self._wait(film, clock_of(coating), surface, end, band)
            self._keep(key, coating, found)
        return found

    def _wait(
        self, film: Film, stages: tuple[Kinetics, ...], surface: float, end: float, band: Band
    ) -> Wait:
        """Return what each stage must gain, in millionths, for ``end`` of age."""
        first = self._course(film.location, stages[0], band)
        whole = ((first, round(end * MILLION)),)
        if len(stages) == 1 or end <= surface:
            return Wait(0, whole)
        second = self._course(film.location, stages[1], band)
        both = (
            (first, round(surface * MILLION)),
            (second, round(end * MILLION) - round(surface * MILLION)),
        )
        return Wait(0, whole if stages[0] is stages[1] else both, both)


def _slowness(film: Film) -> float:
    """Return what is learned of a film and its bottle, and what is stirred in, as one factor."""
    retarded = 1 + assumed("retarder") * film.coating.retarder
    return film.coating.slowness * film.slowness * retarded


def _spread(coating: Coating, usual: Spread) -> Spread:
    """Return the bottle's own doubt, or what is usual for its label or family."""
    doubt = coating.doubt
    return usual if doubt is None else Spread(1 / doubt, doubt)


def _factor(spread: Spread, band: Band | None) -> float:
    if band is Band.EARLY:
        return spread.early
    return spread.late if band is Band.LATE else 1.0


def _slot(state: State, band: Band) -> int:
    return _SLOTS.index((state, band))


def cure_of(room: Room, zone: ZoneInfo) -> Cure:
    """Return the cure of a room, the same one while that is unchanged."""
    return _cure_of(Same(room), zone)


@lru_cache(maxsize=4)
def _cure_of(room: Same[Room], zone: ZoneInfo) -> Cure:
    return Cure(room.value, zone)


@lru_cache(maxsize=16)
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
