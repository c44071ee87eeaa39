"""The path of one film, for people: when it reaches each state, and its curve."""

from __future__ import annotations

import math
from dataclasses import dataclass

from planner.cure.family_times import StateFigure
from planner.cure.film import Cure, Film
from planner.cure.kinetics import LATE_HARDNESS, OXIDATION, STAGES, Band
from planner.cure.reference import reference_minutes
from planner.values.coating import Coating, Family, State
from planner.values.refusal import demand

_AT_THROUGH = 0.95  # share of the reaction that is over when dry-through: assumed


@dataclass(frozen=True)
class StateTimes:
    """When a film reaches a state; None is never.

    ``figure`` is the reference time behind it, and whence that comes.
    """

    state: State
    early: int | None
    nominal: int | None
    late: int | None
    figure: StateFigure


@dataclass(frozen=True)
class PathPoint:
    """How far a film is at a minute: 0 laid, 1 dry through (nominal)."""

    minute: int
    progress: float


def state_times(
    cure: Cure, coating: Coating, laid: int, location: str = ""
) -> tuple[StateTimes, ...]:
    """Return when a single coat laid at ``laid`` reaches each state, by nominal time.

    `KeyError` if the room has no such location.
    """
    film = Film(coating, coating.dry_film_um, location, laid)
    found = []
    for state in State:
        early, nominal, late = (cure.ready_at(film, state, band) for band in Band)
        figure = reference_minutes(coating, state)
        found.append(StateTimes(state, early, nominal, late, figure))
    return tuple(sorted(found, key=lambda one: math.inf if one.nominal is None else one.nominal))


def film_path(
    cure: Cure, film: Film, start: int, end: int, points: int = 200
) -> tuple[PathPoint, ...]:
    """Return the nominal course of a film over [start, end], evenly sampled.

    Evaporating films advance with their age; a two-pack by a first-order
    reaction; a drying oil by two equal steps in a row, A → B → C, which
    makes an S (FT-IR work on linseed oil with cobalt driers; that 95 % has
    reacted at dry-through is assumed).

    Raises
    ------
    Refused
        If the range is empty or fewer than two points are asked.
    """
    demand(start < end, "end", "must lie after start")
    demand(points >= 2, "points", "give at least 2")
    through = cure.target(film, State.DRY_THROUGH)
    minutes = dict.fromkeys(start + (end - start) * one // (points - 1) for one in range(points))
    path = []
    for minute in minutes:
        share = cure.age(film, minute) / through if through else float(minute >= film.laid)
        path.append(PathPoint(minute, progress(film.coating.family, share)))
    return tuple(path)


def progress(family: Family, share: float) -> float:
    """Return progress 0 to 1 at a share of the age of dry-through."""
    share = min(max(share, 0.0), 1.0)
    last = STAGES[family][-1]
    if last is OXIDATION:
        return _two_steps(share * _TWO_STEPS_END) / _two_steps(_TWO_STEPS_END)
    if last is LATE_HARDNESS:
        return (1 - math.pow(1 - _AT_THROUGH, share)) / _AT_THROUGH
    return share


def _two_steps(time: float) -> float:
    """Return the share of C after A → B → C with equal rate constants of 1."""
    return 1 - math.exp(-time) * (1 + time)


_TWO_STEPS_END = 4.743865  # _two_steps(…) = 0.95; the 95 % point of a gamma of shape 2
