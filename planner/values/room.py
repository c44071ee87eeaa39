"""The room: locations where films dry, their air and their drying places."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from planner.values.moment import aware, clock
from planner.values.refusal import all_different, demand, number_in, plain_name

COLDEST_C, HOTTEST_C = -30.0, 60.0


class Movement(StrEnum):
    """How the air of a location moves; it carries off what evaporates."""

    STILL = "still"
    ROOM = "room"
    FAN = "fan"
    BOX = "box"


def sane_air(temperature_c: float, humidity_pct: float) -> None:
    """Demand air that a room can have."""
    number_in(temperature_c, COLDEST_C, HOTTEST_C, "temperature_c", "°C")
    number_in(humidity_pct, 0, 100, "humidity_pct", "% RH")


@dataclass(frozen=True, kw_only=True)
class AirPoint:
    """Air at a local wall-clock time; between points it changes linearly."""

    at: str
    temperature_c: float
    humidity_pct: float

    def __post_init__(self) -> None:
        clock(self.at, "at")
        sane_air(self.temperature_c, self.humidity_pct)


@dataclass(frozen=True, kw_only=True)
class Reading:
    """What a gauge showed; it shifts that local day's profile from then on."""

    at: datetime
    temperature_c: float
    humidity_pct: float
    location: str = ""

    def __post_init__(self) -> None:
        aware(self.at, "at")
        sane_air(self.temperature_c, self.humidity_pct)


@dataclass(frozen=True, kw_only=True)
class Location:
    """A place of the room where films dry.

    Attributes
    ----------
    drying_places
        How many parts may dry there at once.
    workdays, weekends
        Daily profile; one point is constant air.  ``weekends`` empty: as on
        workdays.
    outdoors
        Out of doors: spray cans are used in this air, wherever the film dries.
    movement
        How its air moves: still, as in a room, before a fan, or in a closed box.
    """

    name: str
    drying_places: int
    workdays: tuple[AirPoint, ...]
    weekends: tuple[AirPoint, ...] = ()
    outdoors: bool = False
    movement: Movement = Movement.ROOM

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        number_in(self.drying_places, 1, 10_000, "drying_places")
        demand(len(self.workdays) >= 1, "workdays", "has a hole; give at least one point")
        for field in ("workdays", "weekends"):
            times = [point.at for point in getattr(self, field)]
            all_different(times, field, "at")
            demand(times == sorted(times), field, "is not in order of time; sort its points")


@dataclass(frozen=True, kw_only=True)
class Room:
    """Every location, the usual one first, and what was read on the gauge.

    ``volume_m3`` serves the solvent vapour estimate [m³].
    """

    locations: tuple[Location, ...]
    readings: tuple[Reading, ...] = ()
    volume_m3: float = 30.0

    def __post_init__(self) -> None:
        demand(len(self.locations) >= 1, "locations", "is empty; describe the bench at least")
        all_different([location.name for location in self.locations], "locations")
        number_in(self.volume_m3, 1, 100_000, "volume_m3", "m³")
        outside = [location.name for location in self.locations if location.outdoors]
        demand(len(outside) <= 1, "locations", "holds more than one place out of doors; keep one")

    @property
    def outdoors(self) -> Location | None:
        """The place out of doors, where spray cans are used; None if there is none."""
        return next((location for location in self.locations if location.outdoors), None)

    def location(self, name: str) -> Location:
        """Return the location called ``name``, the first one for ""; or `KeyError`."""
        if not name:
            return self.locations[0]
        for location in self.locations:
            if location.name == name:
                return location
        raise KeyError(name)
