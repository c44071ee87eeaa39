"""When films are ready in many runs at once: the very tables of `planner.cure`, searched together.

The opening that the rules reckon with (definition 6) and the moment at which
the film truly is there are two things: a pass waits for the later of both.
"""

from __future__ import annotations

import numpy as np

from planner.chance.assumptions import assumed
from planner.chance.draws import Floats, Minutes
from planner.cure import Band, Cure, Film, Wait
from planner.cure.course import Course
from planner.schedule.partial_schedule import FOREVER
from planner.values.coating import Mark, State

DAY = 1440
BLOCK = 28 * DAY  # plans of almost the same length end in the same block
AHEAD = 60  # minutes that are searched before and after one that is wanted
MOST_AHEAD = 1000  # in all; beyond this the wanted ones alone are


class Gained:
    """What one course gains from ``start`` on, summed minute by minute."""

    def __init__(self, course: Course, start: int, end: int) -> None:
        self.course = course  # as long as it is kept, no other has its id
        days = course.days(start, end)
        self.start = days[0][0]
        parts = [np.asarray(sums[:-1], dtype=np.int64) + total for _, total, sums in days]
        parts.append(np.asarray([days[-1][1] + days[-1][2][-1]], dtype=np.int64))
        self.sums = np.concatenate(parts)
        self._tables: dict[tuple[int, bool], Minutes] = {}  # 0 is not searched yet

    def reach(self, start: Minutes, gain: int, *, up: bool = True) -> Minutes:
        """Return the minutes by which ``gain`` millionths are won; `FOREVER` beyond the end.

        Runs lay the same films at the same few minutes of their evenings, so
        that what was searched once is kept by its minute; pages of a table
        that no run comes to are never touched, and cost nothing.
        """
        if gain <= 0:
            return start
        table = self._tables.get((gain, up))
        if table is None:
            table = self._tables[gain, up] = np.zeros(len(self.sums), dtype=np.int64)
        at = start - self.start
        reached = table.take(at, mode="clip")
        if not reached.all():
            fresh = np.minimum(np.maximum(at[reached == 0], 0), len(table) - 1)
            low, high = max(0, int(fresh.min()) - AHEAD), int(fresh.max()) + AHEAD
            if high - low < MOST_AHEAD:
                fresh = np.arange(low, min(high, len(table)))
            table[fresh] = self._search(fresh, gain, up=up)
            reached = table.take(at, mode="clip")
        return reached

    def _search(self, at: Minutes, gain: int, *, up: bool) -> Minutes:
        """Return by when ``gain`` is won from minutes counted from the first on."""
        sums, last = self.sums, len(self.sums) - 1
        goal = sums[at] + gain
        found = sums.searchsorted(goal)
        if not up:
            found = found - (sums[np.minimum(found, last)] > goal)
        reached: Minutes = np.where(found > last, FOREVER, found + self.start)
        return reached


Gains = dict[tuple[int, int, int], Gained]
"""What courses gain, by their id and from when until when."""


class FilmRuns:
    """Drying in many runs from ``start`` to ``end`` and up to four weeks beyond.

    Simulations that hand on their ``gains`` share what they searched.
    """

    def __init__(self, cure: Cure, start: int, end: int, gains: Gains | None = None) -> None:
        self.cure = cure
        self.start, self.end = start, -(-end // BLOCK) * BLOCK
        self._gains: Gains = {} if gains is None else gains

    def _of(self, course: Course) -> Gained:
        key = id(course), self.start, self.end
        found = self._gains.get(key)
        if found is None:
            found = self._gains[key] = Gained(course, self.start, self.end)
        return found

    def opens(self, wait: Wait, laid: Minutes, held: Minutes | None = None) -> Minutes:
        """Return when a wait is over for films laid at these minutes.

        ``held`` is from when the second stage may run, where films below
        keep it back (definition 11).
        """
        if held is None or not wait.deep:
            return self._reach(wait.need, laid + wait.minutes, up=True)
        (first, surface), (second, rest) = wait.deep
        dry = self._of(first).reach(laid, surface)
        return self._of(second).reach(np.maximum(dry, held), rest)

    def after(self, wait: Wait, start: Minutes, *, up: bool) -> Minutes:
        """Return when a wait is over, counted from a start, whatever lies below and above."""
        return self._reach(wait.need, start + wait.minutes, up=up)

    def _reach(self, need: tuple[tuple[Course, int], ...], at: Minutes, *, up: bool) -> Minutes:
        for course, gain in need:
            at = self._of(course).reach(at, gain, up=up)
        return at

    def wait(self, film: Film, state: State, band: Band) -> Wait:
        """Return what a state asks of a film."""
        return self.cure.wait(film, Mark(state=state), band)


def drawn(laid: Minutes, likely: Minutes, end: Minutes, away: Floats) -> Minutes:
    """Return when films are ready that lie ``away`` from likely, towards one end of their band.

    Their time from ``laid`` goes with its logarithm, so that it is likely at
    0 and at the end of the band at the standard deviation called "surely".
    """
    never = (likely >= FOREVER) | (end >= FOREVER)
    first = np.maximum(likely - laid, 1).astype(float)
    last = np.maximum(end - laid, 1).astype(float)
    share = np.abs(away) / assumed("surely")
    time = np.ceil(first * (last / first) ** np.minimum(share, 4.0))
    ready: Minutes = laid + np.where(never, 0, time).astype(np.int64)
    return np.where(never, FOREVER, ready)
