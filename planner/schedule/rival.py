"""A schedule that others are held against while they are still made."""

from __future__ import annotations

from dataclasses import dataclass

from planner.bench import Stretch
from planner.schedule.problem import Problem
from planner.values.plan import Cost
from planner.values.wishes import Level


@dataclass(frozen=True)
class Rival:
    """What a finished schedule leaves another to end as early.

    ``left`` are the minutes of bench time from each stretch on, by its
    start, until the finished one is over [min].
    """

    left: dict[int, int]

    def beats(self, stretch: Stretch, hands: int) -> bool:
        """Tell whether so many minutes of hands, from a stretch on, end later for sure."""
        return hands > self.left.get(stretch.interval.start, 0)


def rival_of(problem: Problem, cost: Cost) -> Rival | None:
    """Return what to hold others against; None if to end later is not yet to be dearer."""
    order = problem.book.preferences.order
    ahead = [getattr(cost, level.value) for level in order[: order.index(Level.FINISH)]]
    if cost.unplaced or any(ahead):
        return None
    finish, minutes, left = problem.now + cost.finish, 0, {}
    for stretch in reversed(problem.calendar.stretches(problem.now, finish)):
        start = stretch.interval.start
        minutes += min(finish, stretch.interval.end) - max(problem.now, start)
        left[start] = minutes
    return Rival(left)
