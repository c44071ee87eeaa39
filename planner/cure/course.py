"""Cumulative tables: how far a stage of drying comes, minute by minute.

Every whole minute adds an integer number of millionths of an equivalent
minute, taken in its middle.  Days with the same air share one table, so a
question costs two bisections; a sum over the minutes gives the same answer.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from datetime import date, timedelta
from functools import lru_cache
from itertools import accumulate

from planner.air import AirCourse, DayShape
from planner.cure.kinetics import Band, Kinetics

MILLION = 1_000_000
HORIZON = 3 * 366 * 1440
"""What is not reached within three years is never reached [min]."""


class Course:
    """Progress of one stage in one location's air, at one end of the band."""

    def __init__(self, air: AirCourse, kinetics: Kinetics, band: Band) -> None:
        self.air = air
        self.kinetics = kinetics
        self.band = band
        self._next_day: date | None = None
        self._starts: list[int] = []
        self._totals: list[int] = []
        self._sums: list[list[int]] = []

    def rate(self, minute: int) -> int:
        """Return millionths of an equivalent minute gained in one minute."""
        air = self.air.at(minute + 0.5)
        return round(self.kinetics.rate(air, self.band, self.air.movement) * MILLION)

    def between(self, start: int, end: int) -> int:
        """Return millionths gained over [start, end)."""
        return self._sum_to(end) - self._sum_to(start)

    def reach(self, start: int, gain: int, *, up: bool = True) -> int | None:
        """Return the minute by which ``gain`` millionths are won from ``start`` on.

        Rounded up to the first whole minute that has them all, or down to
        the last that has no more (definition 1); None if never.
        """
        if gain <= 0:
            return start
        goal = self._sum_to(start) + gain
        totals, starts = self._totals, self._starts
        while totals[-1] < goal:
            if starts[-1] >= start + HORIZON:
                return None
            self._grow()
        day = bisect_left(totals, goal) - 1
        sums = self._sums[day]
        rest = goal - totals[day]
        offset = bisect_left(sums, rest)
        if not up and sums[offset] > rest:
            offset -= 1
        return starts[day] + offset

    def days(self, start: int, end: int) -> list[tuple[int, int, list[int]]]:
        """Return the days that reach into [start, end), each in three figures.

        Its first minute, what was gained before it, and what is gained within it
        by each of its minutes; never to be changed [millionths of an equivalent min].
        """
        self._sum_to(start)
        self._sum_to(end)
        first, last = bisect_right(self._starts, start) - 1, bisect_right(self._starts, end)
        return [
            (self._starts[day], self._totals[day], self._sums[day])
            for day in range(first, min(last, len(self._sums)))
        ]

    def _sum_to(self, minute: int) -> int:
        starts = self._starts
        if not starts or minute < starts[0]:
            self._begin(minute)
        while starts[-1] <= minute:
            self._grow()
        day = bisect_right(starts, minute) - 1
        return self._totals[day] + self._sums[day][minute - starts[day]]

    def _begin(self, minute: int) -> None:
        """Start the days anew, a week before ``minute``."""
        self._next_day = self.air.date_of(minute) - timedelta(days=7)
        self._starts[:] = [self.air.day(self._next_day)[0]]
        self._totals[:] = [0]
        self._sums.clear()

    def _grow(self) -> None:
        assert self._next_day is not None
        _, shape = self.air.day(self._next_day)
        self._next_day += timedelta(days=1)
        if shape.minutes <= 0:
            return  # a date that the zone skipped
        sums = _table(self.air, shape, self.kinetics, self.band)
        self._sums.append(sums)
        self._starts.append(self._starts[-1] + shape.minutes)
        self._totals.append(self._totals[-1] + sums[-1])


@lru_cache(maxsize=256)
def _table(air: AirCourse, shape: DayShape, kinetics: Kinetics, band: Band) -> list[int]:
    """Return the millionths gained by each minute of a day; never to be changed.

    Kept for all that ask of the same air: they are most of the cost of an answer.
    """
    rates = kinetics.rates(air.samples(shape), band, air.movement)
    return list(accumulate([round(rate * MILLION) for rate in rates], initial=0))
