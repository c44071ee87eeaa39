"""The room: locations where films dry, their air and their drying places."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Annotated

from planner.values.field import NAME, Field, Value
from planner.values.moment import clock
from planner.values.refusal import demand

COLDEST_C, HOTTEST_C = -30.0, 60.0

Celsius = Annotated[float, Field(unit="°C", least=COLDEST_C, most=HOTTEST_C, decimals=1)]
"""Temperature that a room can have."""
Humidity = Annotated[float, Field(unit="% RH", least=0, most=100)]


class Movement(StrEnum):
    """How the air of a location moves; it carries off what evaporates."""

    STILL = "still"
    ROOM = "room"
    FAN = "fan"
    BOX = "box"


@dataclass(frozen=True, kw_only=True)
class AirPoint(Value):
    """Air at a local wall-clock time; between points it changes linearly."""

    at: Annotated[str, Field(check=clock)]
    temperature_c: Celsius
    humidity_pct: Humidity


def sane_air(temperature_c: float, humidity_pct: float) -> None:
    """Demand air that a room can have."""
    AirPoint(at="00:00", temperature_c=temperature_c, humidity_pct=humidity_pct)


@dataclass(frozen=True, kw_only=True)
class Reading(Value):
    """What a gauge showed; it shifts that local day's profile from then on."""

    at: datetime
    temperature_c: Celsius
    humidity_pct: Humidity
    location: str = ""


@dataclass(frozen=True, kw_only=True)
class Location(Value):
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
    spraying
        Coats are sprayed in this air, wherever the film dries.
    """

    name: Annotated[str, NAME]
    drying_places: Annotated[
        int,
        Field(
            "&Drying places",
            least=1,
            most=10_000,
            help="How many parts may dry there at once; a part says how many it takes",
        ),
    ]
    workdays: Annotated[tuple[AirPoint, ...], Field("&Points of the day", unique="at")]
    weekends: Annotated[tuple[AirPoint, ...], Field("&Points of the day", unique="at")] = ()
    outdoors: Annotated[bool, Field("&Out of doors: spray cans are used in this air")] = False
    movement: Annotated[
        Movement,
        Field("&Moving air", help="A fan carries water and fast solvents off; it hardens nothing"),
    ] = Movement.ROOM
    spraying: Annotated[bool, Field("Coats are s&prayed here, wherever they dry")] = False

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.workdays) >= 1, "workdays", "has a hole; give at least one point")
        for field in ("workdays", "weekends"):
            times = [point.at for point in getattr(self, field)]
            demand(times == sorted(times), field, "is not in order of time; sort its points")


@dataclass(frozen=True, kw_only=True)
class Room(Value):
    """Every location, the usual one first, and what was read on the gauge.

    ``volume_m3`` serves the solvent vapour estimate [m³].
    """

    locations: Annotated[tuple[Location, ...], Field(unique="name")]
    readings: tuple[Reading, ...] = ()
    volume_m3: Annotated[float, Field(unit="m³", least=1, most=100_000)] = 30.0

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.locations) >= 1, "locations", "is empty; describe the bench at least")
        outside = [location.name for location in self.locations if location.outdoors]
        demand(len(outside) <= 1, "locations", "holds more than one place out of doors; keep one")
        sprayed = [location.name for location in self.locations if location.spraying]
        demand(len(sprayed) <= 1, "locations", "holds more than one place to spray in; keep one")

    @property
    def outdoors(self) -> Location | None:
        """The place out of doors, where spray cans are used; None if there is none."""
        return next((location for location in self.locations if location.outdoors), None)

    @property
    def spraying(self) -> Location | None:
        """The place where coats are sprayed; None if that is the first."""
        return next((location for location in self.locations if location.spraying), None)

    def location(self, name: str) -> Location:
        """Return the location called ``name``, the first one for ""; or `KeyError`."""
        if not name:
            return self.locations[0]
        for location in self.locations:
            if location.name == name:
                return location
        raise KeyError(name)
