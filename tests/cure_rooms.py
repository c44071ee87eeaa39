"""Rooms and films for the tests of air and cure, and a slow count to check them by."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

from planner.air import Air
from planner.cure import Band, Cure, Film
from planner.cure.kinetics import STAGES
from planner.values.coating import Coating, Family, State, StateTime
from planner.values.moment import minute_of
from planner.values.room import AirPoint, Location, Reading, Room

WARSAW = ZoneInfo("Europe/Warsaw")


def at(text: str, zone: ZoneInfo = WARSAW) -> int:
    """Return the minute of a local time such as 2025-03-29 20:00."""
    return minute_of(datetime.fromisoformat(text).replace(tzinfo=zone))


def points(*rows: tuple[str, float, float]) -> tuple[AirPoint, ...]:
    """Return profile points of (clock, °C, % RH)."""
    return tuple(AirPoint(at=at, temperature_c=t, humidity_pct=rh) for at, t, rh in rows)


def steps(*rows: tuple[int, float]) -> tuple[AirPoint, ...]:
    """Return a profile that stands still and then steps, of (hour from, °C), at 50 % RH."""
    found: list[tuple[str, float, float]] = []
    for index, (hour, warmth) in enumerate(rows):
        found.append((f"{hour:02}:00", warmth, 50.0))
        until = rows[index + 1][0] if index + 1 < len(rows) else 24
        found.append((f"{until - 1:02}:59", warmth, 50.0))
    return points(*found)


def room(
    *workdays: AirPoint,
    weekends: tuple[AirPoint, ...] = (),
    readings: tuple[Reading, ...] = (),
) -> Room:
    """Return a room with a bench."""
    bench = Location(name="bench", drying_places=4, workdays=workdays, weekends=weekends)
    return Room(locations=(bench,), readings=readings)


def steady(temperature_c: float, humidity_pct: float = 50.0) -> Cure:
    """Return the cure in constant air."""
    return Cure(room(*points(("00:00", temperature_c, humidity_pct))), WARSAW)


def labelled(family: Family, minutes: int, state: State = State.DRY_TO_RECOAT) -> Coating:
    """Return a coating whose label gives one time."""
    return Coating(name="x", family=family, times=(StateTime(state=state, minutes=minutes),))


def film(coating: Coating, laid: int = 0, thickness_um: float | None = None) -> Film:
    """Return a film on the bench, of its own thickness unless given."""
    return Film(coating, thickness_um or coating.dry_film_um, "bench", laid)


def counted(cure: Cure, film: Film, state: State, band: Band, most: int = 60_000) -> int | None:
    """Count minute by minute until a film has a label's time of its first stage; no table."""
    spread = {Band.EARLY: 0.90, Band.NOMINAL: 1.0, Band.LATE: 1.10}[band]
    label = next(time.minutes for time in film.coating.times if time.state is state)
    kinetics = STAGES[film.coating.family][0]
    goal, gained = round(label * spread * 1e6), 0
    for minute in range(film.laid, film.laid + most):
        if gained >= goal:
            return minute
        air: Air = cure.air("bench").at(minute + 0.5)
        gained += round(kinetics.rate(air, band) * 1e6)
    return None
