"""When the air lets a coat be laid: what advice calls "not now" is not planned (definition 10a).

The air at the beginning of each quarter of an hour stands for all of it.
"""

from __future__ import annotations

from functools import lru_cache

from planner.air.advice import Advisory, Fitness, fitness, laying_advice
from planner.air.course import DAY, AirCourse
from planner.air.moisture import Air
from planner.values.coating import Coating
from planner.values.room import Location, Room
from planner.values.step import CLEAR_STAGES, Step, Tool, Trait

QUARTER = 15  # the air is looked at so often: assumed [min]


def laid_in(room: Room, tool: Tool) -> Location:
    """Return in whose air a coat is laid: on the bench, where one sprays, or out of doors.

    A can is used out of doors, where there is such a place.  Where its film
    dries afterwards does not matter here.
    """
    outdoors = room.outdoors if tool is Tool.CAN else None
    spraying = room.spraying if tool in (Tool.CAN, Tool.AIRBRUSH) else None
    return outdoors or spraying or room.locations[0]


def on_any_terms(step: Step) -> bool:
    """Tell whether the air has no say: nothing is laid, or the person gave their word."""
    return not step.applications or Trait.ANY_AIR in step.traits


def step_advice(step: Step, coating: Coating, air: Air) -> tuple[Advisory, ...]:
    """Return what speaks against laying a coating at a step, worst first."""
    clear = True if step.stage in CLEAR_STAGES else None
    return laying_advice(coating, step.tool, air, clear=clear)


class FitAir:
    """At which quarters of an hour one course of air lets one coating be laid.

    Parameters
    ----------
    course
        The air that it meets.
    step, coating
        How it is laid, and what; only what the air has a say in matters.
    """

    def __init__(self, course: AirCourse, step: Step, coating: Coating) -> None:
        self._course = course
        self._step = step
        self._coating = coating
        self._known: dict[int, bool] = {}
        self._in: dict[Air, bool] = {}  # one day's air is another's

    def at(self, minute: int) -> bool:
        """Tell whether it may be laid in the quarter that holds a minute."""
        return self._fit(minute // QUARTER)

    def _fit(self, quarter: int) -> bool:
        found = self._known.get(quarter)
        if found is None:
            air = self._course.begins_with(quarter, QUARTER)
            found = self._in.get(air)
            if found is None:
                found = self._in[air] = _fit(self._step, self._coating, air)
            self._known[quarter] = found
        return found

    def against(self, minute: int) -> str:
        """Return the first reason against laying it at a minute or in the day after it, or ""."""
        for quarter in range(minute // QUARTER, minute // QUARTER + DAY // QUARTER):
            if not self.at(quarter * QUARTER):
                air = self._course.at(quarter * QUARTER)
                return step_advice(self._step, self._coating, air)[0].reason
        return ""

    def until(self, start: int, end: int) -> int:
        """Return the first minute in [start, end) at which it may not be laid, or ``end``."""
        known = self._known
        for quarter in range(start // QUARTER, -(-end // QUARTER)):
            fit = known.get(quarter)
            if not (self._fit(quarter) if fit is None else fit):
                return max(start, quarter * QUARTER)
        return end

    def fit_since(self, minute: int, earliest: int) -> int | None:
        """Return since when it may be laid at a minute, None if since before ``earliest``.

        In the quarter that holds the minute the air need not be fit itself.
        """
        known = self._known
        for quarter in range(minute // QUARTER, earliest // QUARTER, -1):
            fit = known.get(quarter)
            if not (self._fit(quarter) if fit is None else fit):
                return (quarter + 1) * QUARTER
        return None

    def pieces(self, start: int, end: int) -> list[tuple[int, int]]:
        """Return the parts of [start, end) in which it may be laid."""
        found = []
        while start < end:
            begin = self.start(start, 1, end)
            stop = self.until(begin, end) if begin < end else end
            if begin < stop:
                found.append((begin, stop))
            start = max(stop, begin) + 1
        return found

    def start(self, start: int, minutes: int, latest: int) -> int:
        """Return the first start ≥ ``start`` with ``minutes`` of fit air, or ``latest``."""
        while start < latest:
            stop = self.until(start, start + minutes)
            if stop >= start + minutes:
                return start
            start = (stop // QUARTER + 1) * QUARTER
        return latest


def fit_air(course: AirCourse, step: Step, coating: Coating) -> FitAir:
    """Return when a course of air lets a coating be laid at a step; alike ones share it."""
    clear = step.stage in CLEAR_STAGES
    return _shared(course, _Alike(step, coating, clear))


class _Alike:
    """A step and a coating that equal others which the air treats alike."""

    def __init__(self, step: Step, coating: Coating, clear: bool) -> None:
        self.step, self.coating = step, coating
        self._key = (
            step.tool,
            clear or coating.name,
            coating.family,
            coating.least_c,
            coating.most_c,
            coating.most_humidity_pct,
        )

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Alike) and self._key == other._key

    def __hash__(self) -> int:
        return hash(self._key)


@lru_cache(maxsize=128)
def _shared(course: AirCourse, alike: _Alike) -> FitAir:
    return FitAir(course, alike.step, alike.coating)


def _fit(step: Step, coating: Coating, air: Air) -> bool:
    return fitness(step_advice(step, coating, air)) is not Fitness.NO_GO
