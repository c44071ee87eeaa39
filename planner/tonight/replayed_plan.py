"""A plan laid out on a table, so that films and windows can be read off."""

from __future__ import annotations

from functools import cached_property

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.passes import Pass
from planner.quantity import served
from planner.schedule.partial_schedule import GateOpening, PartialSchedule
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.plan import BenchWork, PassKey, Placement, Plan


class ReplayedPlan:
    """The plan with its passes by key, what its loads serve, and the table after all of it.

    ``now`` is the minute as of which windows are read off.
    """

    def __init__(
        self, book: Book, plan: Plan, now: int, calendar: BenchCalendar, cure: Cure
    ) -> None:
        self.book = book
        self.plan = plan
        self.now = now
        self.calendar = calendar
        self.cure = cure
        self.problem = Problem(book, now, cure=cure, calendar=calendar)
        self.table = PartialSchedule(self.problem, now)
        self.placed: dict[PassKey, Placement] = {}
        for placed in sorted(
            plan.placements, key=lambda placement: (placement.start, placement.end)
        ):
            index = self.problem.index.get(placed.key)
            if index is not None and placed.key not in self.placed:
                self.placed[placed.key] = placed
                self.table.lay(index, placed.start, placed.end)

    @cached_property
    def served(self) -> dict[BenchWork, tuple[Placement, ...]]:
        """What each filling of an airbrush serves."""
        return served(self.plan)

    def of(self, key: PassKey) -> Pass:
        """Return a pass by its key."""
        return self.problem.activities[self.problem.index[key]].pass_

    def window(self, number: int) -> GateOpening | None:
        """Return the window of a gate that the plan uses, or the next one ahead.

        None where the film is not in the plan, or no window is left.
        """
        gate = self.problem.gates[number]
        if gate.before not in self.placed:
            return None
        after = self.placed.get(gate.after)
        moment = after.start if after else self.now
        return next(
            (window for window in self.table.windows(number) if moment < window.closes), None
        )
