"""How long a film takes to each of its states, and whether it may be laid in this air."""

from __future__ import annotations

from dataclasses import dataclass

from planner.air import Advisory, AirCourse, dew_point_c, laying_advice, readings_of
from planner.cure import Band, Cure, Film, reference_minutes
from planner.values.coating import Coating, State
from planner.values.moment import zone_named
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Tool


@dataclass(frozen=True)
class Reached:
    """When a film is in a state: minutes at each end of the band, None for never."""

    state: State
    reference: float
    status: str
    source: str
    early: int | None
    nominal: int | None
    late: int | None


@dataclass(frozen=True)
class DryingTimes:
    """One film in one air.

    Attributes
    ----------
    laid
        Minute at which it was finished.
    temperature_c, humidity_pct
        Air at that minute.
    margin_k
        How far the surface is above the dew point [K]; None in bone-dry air.
    states
        Every state, in order of drying.
    advice
        What speaks against laying it now, worst first.
    """

    coating: Coating
    film_um: float
    location: str
    laid: int
    temperature_c: float
    humidity_pct: float
    surface_c: float
    dew_point_c: float | None
    margin_k: float | None
    states: tuple[Reached, ...]
    advice: tuple[Advisory, ...]

    @property
    def ever(self) -> bool:
        """Tell whether it reaches any state at all."""
        return any(state.nominal is not None for state in self.states)


def still_room(temperature_c: float, humidity_pct: float) -> Room:
    """Return a room with one location and the same air all day."""
    air = AirPoint(at="00:00", temperature_c=temperature_c, humidity_pct=humidity_pct)
    return Room(locations=(Location(name="here", drying_places=1, workdays=(air,)),))


def drying(
    coating: Coating,
    room: Room,
    zone: str,
    laid: int,
    *,
    location: str = "",
    film_um: float | None = None,
    surface_c: float | None = None,
    tool: Tool = Tool.AIRBRUSH,
) -> DryingTimes:
    """Return how a film laid by the minute ``laid`` dries.

    Parameters
    ----------
    location
        Where it dries; "" is the room's first location.
    film_um
        Dry thickness, the coating's own by default [µm].
    surface_c
        Temperature of the model's surface, that of the air by default [°C].
    tool
        What it is laid with; it decides what damp or cold does to it.
    """
    clock = zone_named(zone)
    place = room.location(location)
    air = AirCourse(place, readings_of(room, place), clock).at(laid)
    surface = air.temperature_c if surface_c is None else surface_c
    thickness = coating.dry_film_um if film_um is None else film_um
    film = Film(coating, thickness, place.name, laid)
    cure = Cure(room, clock)
    # Bone-dry air has no dew point; nothing can sweat in it.
    dew = dew_point_c(air.temperature_c, air.humidity_pct) if air.humidity_pct > 0 else None
    margin = None if dew is None else surface - dew
    return DryingTimes(
        coating=coating,
        film_um=thickness,
        location=place.name,
        laid=laid,
        temperature_c=air.temperature_c,
        humidity_pct=air.humidity_pct,
        surface_c=surface,
        dew_point_c=dew,
        margin_k=margin,
        states=tuple(_reached(cure, film, state) for state in State),
        advice=laying_advice(coating, tool, air, surface_c=surface),
    )


def _reached(cure: Cure, film: Film, state: State) -> Reached:
    figure = reference_minutes(film.coating, state)
    ends = [cure.ready_at(film, state, band) for band in (Band.EARLY, Band.NOMINAL, Band.LATE)]
    early, nominal, late = (None if end is None else end - film.laid for end in ends)
    return Reached(state, figure.minutes, str(figure.status), figure.source, early, nominal, late)
