"""Cumulative tables: how far a stage of drying comes, minute by minute.

Every whole minute adds an integer number of millionths of an equivalent
minute, taken in its middle.  Days with the same air share one table, so a
question costs two bisections; a sum over the minutes gives the same answer.
"""

from __future__ import annotations

from array import array
from bisect import bisect_left, bisect_right
from dataclasses import dataclass, field
from datetime import date, timedelta
from functools import lru_cache
from itertools import accumulate
from threading import Lock

from planner.air import AirCourse, DayShape
from planner.cure.kinetics import Band, Kinetics

MILLION = 1_000_000
HORIZON = 3 * 366 * 1440
"""What is not reached within three years is never reached [min]."""


@dataclass(eq=False, slots=True)
class _Days:
    """The days from a first one on: what was gained before each, and by each of its minutes.

    They only grow, and a day is told by what is appended first: so others may read
    while one grows.
    """

    next_day: date
    starts: list[int]
    totals: list[int] = field(default_factory=lambda: [0])
    sums: list[array[int]] = field(default_factory=list)


class Course:
    """Progress of one stage in one location's air, at one end of the band.

    Several threads may ask it.
    """

    def __init__(self, air: AirCourse, kinetics: Kinetics, band: Band) -> None:
        self.air = air
        self.kinetics = kinetics
        self.band = band
        self._known: _Days | None = None
        self._grows = Lock()

    def rate(self, minute: int) -> int:
        """Return millionths of an equivalent minute gained in one minute."""
        air = self.air.at(minute + 0.5)
        return round(self.kinetics.rate(air, self.band, self.air.movement) * MILLION)

    def between(self, start: int, end: int) -> int:
        """Return millionths gained over [start, end)."""
        days = self._around(start, end)
        return _sum_to(days, end) - _sum_to(days, start)

    def reach(self, start: int, gain: int, *, up: bool = True) -> int | None:
        """Return the minute by which ``gain`` millionths are won from ``start`` on.

        Rounded up to the first whole minute that has them all, or down to
        the last that has no more (definition 1); None if never.
        """
        if gain <= 0:
            return start
        days = self._around(start, start)
        starts, totals = days.starts, days.totals
        goal = _sum_to(days, start) + gain
        while totals[-1] < goal:
            if starts[-1] >= start + HORIZON:
                return None
            self._grow(days)
        day = bisect_left(totals, goal) - 1
        if starts[day] >= start + HORIZON:
            return None
        sums = days.sums[day]
        rest = goal - totals[day]
        offset = bisect_left(sums, rest)
        if not up and sums[offset] > rest:
            offset -= 1
        return starts[day] + offset

    def days(self, start: int, end: int) -> list[tuple[int, int, array[int]]]:
        """Return the days that reach into [start, end), each in three figures.

        Its first minute, what was gained before it, and what is gained within it
        by each of its minutes; never to be changed [millionths of an equivalent min].
        """
        days = self._around(start, end)
        first, last = bisect_right(days.starts, start) - 1, bisect_right(days.starts, end)
        return [
            (days.starts[day], days.totals[day], days.sums[day])
            for day in range(first, min(last, len(days.sums)))
        ]

    def _around(self, start: int, end: int) -> _Days:
        """Return days that hold both minutes; from anew, a week before, where they begin later."""
        days = self._known
        if days is None or start < days.starts[0]:
            first = self.air.date_of(start) - timedelta(days=7)
            days = self._known = _Days(first, [self.air.day(first)[0]])
        while days.starts[-1] <= end:
            self._grow(days)
        return days

    def _grow(self, days: _Days) -> None:
        with self._grows:
            _, shape = self.air.day(days.next_day)
            days.next_day += timedelta(days=1)
            if shape.minutes <= 0:
                return  # a date that the zone skipped
            sums = _table(self.air, shape, self.kinetics, self.band)
            days.sums.append(sums)
            days.starts.append(days.starts[-1] + shape.minutes)
            days.totals.append(days.totals[-1] + sums[-1])


def _sum_to(days: _Days, minute: int) -> int:
    day = bisect_right(days.starts, minute) - 1
    return days.totals[day] + days.sums[day][minute - days.starts[day]]


@lru_cache(maxsize=256)
def _table(air: AirCourse, shape: DayShape, kinetics: Kinetics, band: Band) -> array[int]:
    """Return the millionths gained by each minute of a day; never to be changed.

    Kept for all that ask of the same air: they are most of the cost of an answer.  As plain
    numbers they take a fifth of the room.
    """
    rates = kinetics.rates(air.samples(shape), band, air.movement)
    return array("q", accumulate([round(rate * MILLION) for rate in rates], initial=0))
