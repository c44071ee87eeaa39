"""A plan laid out on a table, so that films and windows can be read off.

No Qt in here.
"""

from __future__ import annotations

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.passes import Pass
from planner.schedule.problem import Problem
from planner.schedule.state import Opening, Table
from planner.values.book import Book
from planner.values.plan import PassKey, Placement, Plan


class Laid:
    """The plan of a book on its table."""

    def __init__(
        self, book: Book, plan: Plan, now: int, calendar: BenchCalendar, cure: Cure
    ) -> None:
        self.book = book
        self.plan = plan
        self.now = now
        self.calendar = calendar
        self.cure = cure
        self.problem = Problem(book, now, cure=self.cure, calendar=calendar)
        self.table = Table(self.problem, now)
        self.placed: dict[PassKey, Placement] = {}
        for one in sorted(plan.placements, key=lambda placed: (placed.start, placed.end)):
            index = self.problem.index.get(one.key)
            if index is not None and one.key not in self.placed:
                self.placed[one.key] = one
                self.table.lay(index, one.start, one.end)

    def of(self, key: PassKey) -> Pass:
        """Return the pass of a key."""
        return self.problem.activities[self.problem.index[key]].one

    def window(self, number: int) -> Opening | None:
        """Return the window of a gate that the plan uses, or the next one ahead."""
        gate = self.problem.gates[number]
        if gate.before not in self.placed:
            return None
        after = self.placed.get(gate.after)
        moment = after.start if after else self.now
        return next((w for w in self.table.windows(number) if moment < w.closes), None)
