"""The best plan that a search has so far, and what is proven of it."""

from __future__ import annotations

from dataclasses import dataclass, replace

from planner.schedule.drying_locations import chosen_in, told
from planner.schedule.optimise import lower_bounds
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.fewest_stretches import StretchesProven
from planner.schedule.optimise.lower_bounds import Least
from planner.schedule.optimise.parallel_annealing import Pieces
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.plan_from_schedule import cost_of, plan_of
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.message import message
from planner.values.plan import Cost, Plan, ProvenBound, Status, Unplaced
from planner.values.wishes import USUAL_ORDER, Level

NOTHING = StretchesProven(None, None, {})


@dataclass(frozen=True)
class News:
    """A better plan, or the same plan with better bounds."""

    plan: Plan
    improved: bool


class BestPlan:
    """The best plan so far of a book, and what no plan can do better.

    Attributes
    ----------
    book
        The book, films drying where the first plan has chosen.
    pieces
        When each pass is worked on, by activity.
    least, late, rest
        Bounds of the finish, of lateness, and of the levels after the finish.
    still_open
        Why no more is proven of the finish, once the search is over.
    """

    def __init__(self, book: Book, first: Plan, problem: Problem, board: Board, last: Plan | None):
        self.plan = first
        self.book = problem.book
        self.board = board
        self._problem = problem
        self._last = last
        self._chosen = chosen_in(book, first)
        self.free_choice = any(
            step.or_in for p in book.projects for model in p.models for step in model.steps
        )
        keys = {activity.pass_.key: at for at, activity in enumerate(problem.activities)}
        self.pieces: Pieces = {
            keys[one.key]: one.pieces for one in first.placements if one.key in keys
        }
        self.least: Least = lower_bounds.least_finish(board)
        self.late = lower_bounds.least_late(board)
        self.rest = NOTHING
        self.still_open = ""

    @property
    def usual(self) -> bool:
        """Whether the levels of the cost count in their usual order."""
        return self.book.preferences.order == USUAL_ORDER

    @property
    def finish(self) -> int:
        """The minute at which the last project is finished."""
        return self.plan.now + self.plan.cost.finish

    @property
    def last_stretch(self) -> int:
        """The number of the last stretch in which the plan begins a piece of work."""
        begun = [p.pieces[-1].start for p in self.plan.placements if not p.logged]
        return self.board.number_at(max(begun)) if begun else 0

    def take(self, table: PartialSchedule, unplaced: list[Unplaced]) -> bool:
        """Take what a table holds if it is better; tell whether it was."""
        cost = self._cost(table)
        if self._in_order(cost) >= self._in_order(self.plan.cost):
            return False
        if cost.unplaced != len(unplaced):
            return False
        plan = plan_of(self._problem, table, unplaced, cost)
        self.pieces = dict(table.pieces)
        self.plan = replace(told(plan, self._chosen), digest=self.plan.digest)
        return True

    def rank(self, table: PartialSchedule | None = None) -> tuple[int, ...]:
        """Return the cost of a table, or of the best plan, in the person's order."""
        return self._in_order(self.plan.cost if table is None else self._cost(table))

    def news(self, *, improved: bool) -> News:
        """Return the best plan with what is proven of it."""
        plan = self.plan
        found = () if self.free_choice else self._bounds(plan.cost)
        names = [bound.level for bound in found]
        order = self.book.preferences.order
        wanted = ["unplaced", Level.LATE.value, Level.FINISH.value]
        tight = all(bound.value == getattr(plan.cost, bound.level) for bound in found)
        usual = order[0] is Level.LATE and order[1] is Level.FINISH
        status = plan.status
        if status in (Status.FEASIBLE, Status.OPTIMAL):
            proven = usual and tight and names[:3] == wanted
            status = Status.OPTIMAL if proven else Status.FEASIBLE
        self.plan = replace(plan, bounds=found, status=status)
        return News(self.plan, improved)

    def _cost(self, table: PartialSchedule) -> Cost:
        left = len(self._problem.activities) - len(table.end)
        return cost_of(self._problem, table, left, self._last)

    def _in_order(self, cost: Cost) -> tuple[int, ...]:
        return cost.in_order(self.book.preferences.order)

    def _bounds(self, cost: Cost) -> tuple[ProvenBound, ...]:
        if cost.unplaced:
            return ()
        least = self.least
        if self.still_open and least.finish < self.finish:
            proof = message("{proof}; still open: {why}", proof=least.proof, why=self.still_open)
            least = replace(least, proof=proof)
        stated = list(lower_bounds.stated(self.board, least, self.late, placed=True))
        # A level after the finish is bounded only once the finish is proven, and then if met.
        rest = (("stretches", self.rest.stretches), ("setup_minutes", self.rest.setup))
        for level, value in rest:
            if value is None or getattr(cost, level) != value:
                break
            stated.append(
                ProvenBound(level, value, message("no way to share the passes out does with less"))
            )
        return tuple(stated)
