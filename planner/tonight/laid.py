"""A plan laid out on a table, so that films and windows can be read off."""

from __future__ import annotations

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.passes import Pass
from planner.quantity import served
from planner.schedule.problem import Problem
from planner.schedule.state import Table
from planner.values.book import Book
from planner.values.plan import PassKey, Placement, Plan


class LaidPlan:
    """The plan with its passes by key, what its loads serve, and the table after all of it."""

    def __init__(
        self, book: Book, plan: Plan, now: int, calendar: BenchCalendar, cure: Cure
    ) -> None:
        self.book = book
        self.plan = plan
        self.now = now
        self.problem = Problem(book, now, cure=cure, calendar=calendar)
        self.table = Table(self.problem, now)
        self.served = served(plan)
        self.placed: dict[PassKey, Placement] = {}
        for placed in sorted(plan.placements, key=lambda one: (one.start, one.end)):
            index = self.problem.index.get(placed.key)
            if index is not None and placed.key not in self.placed:
                self.placed[placed.key] = placed
                self.table.lay(index, placed.start, placed.end)

    def pass_of(self, key: PassKey) -> Pass:
        """Return a pass by its key."""
        return self.problem.activities[self.problem.index[key]].one
