"""What is done to a plan to the minute: the order in each stretch, its finish, what comes after.

Each is done once for each plan, and the same work gives the same plans.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from planner.schedule.optimise.best_plan import NOTHING, BestPlan, News
from planner.schedule.optimise.earliest_finish_order import soonest
from planner.schedule.optimise.fewest_loads import load_less
from planner.schedule.optimise.fewest_stretches import StretchesProven, as_shared_out, least_rest
from planner.schedule.optimise.finish_minute import Halving
from planner.schedule.optimise.last_stretch_bound import Lowest
from planner.schedule.optimise.master import WorkBudget
from planner.schedule.optimise.parallel_annealing import SETTLED, Walker
from planner.schedule.partial_schedule import PartialSchedule
from planner.values.message import message
from planner.values.plan import Placement, Status

REST_WORK = 1.0  # deterministic seconds for each question to the whole master
ORDER_WORK = 0.05  # the same for the order of one stretch
LOADS_WORK = 0.1  # the same for the least loads of one stretch
LAST_ORDERED = 2  # stretches before the last in which order is looked for on a great board


@dataclass
class Settling:
    """Works on the best plan of a search, which is ``best``; ``stopped`` ends it."""

    best: BestPlan
    walker: Walker
    lowest: Lowest
    seed: int
    stopped: Callable[[], bool]
    _ordered: tuple[Placement, ...] = ()  # of the plan whose stretches are in order
    _loaded: tuple[Placement, ...] = ()  # of the plan whose loads were looked at
    _narrowed: int | None = None  # the finish for which the minute was looked at
    # For which finish the levels after it were asked for, and what was found.
    _asked: tuple[int, StretchesProven] | None = None

    def news(self) -> Iterator[News]:
        """Yield what is found and proven."""
        for settle in (self._in_order_of_end, self._narrow, self._settle, self._load_less):
            if self.stopped():
                return
            better = settle()
            if better is not None:
                yield self.best.news(improved=better)

    def _in_order_of_end(self) -> bool | None:
        """Put what is done in each stretch into the order that ends soonest.

        As the others, tell whether a better plan was found; None where nothing is new.
        """
        plan, board = self.best.plan, self.best.board
        if self._ordered is plan.placements or plan.unplaced or not board.free:
            return None
        self._ordered = plan.placements
        since = 0 if self.walker.small else self.best.last_stretch - LAST_ORDERED
        work = WorkBudget(ORDER_WORK, seed=self.seed)
        table = soonest(board, self.best.pieces, since, work, self.stopped)
        return True if table is not None and self.best.take(table, []) else None

    def _load_less(self) -> bool | None:
        """Fill no colour twice in a stretch where another order of its passes needs it once."""
        best, plan = self.best, self.best.plan
        if self._loaded is plan.placements or plan.unplaced or not best.board.free:
            return None
        work = WorkBudget(LOADS_WORK, seed=self.seed, stopped=self.stopped)
        better = load_less(best.board, best.pieces, plan.bench, work, self._better)
        self._loaded = best.plan.placements
        return True if better else None

    def _better(self, table: PartialSchedule) -> bool:
        return self.best.take(table, [])

    def _narrow(self) -> bool | None:
        """Narrow the gap between the finish and its bound within the last stretch."""
        best, plan = self.best, self.best.plan
        if plan.unplaced or self._narrowed == plan.cost.finish or not self._settles():
            return None
        goal, sure = self._goal()
        work = WorkBudget(REST_WORK, seed=self.seed, stopped=self.stopped)
        order = WorkBudget(ORDER_WORK, seed=self.seed)
        halving = Halving(best.board, self.walker.links, goal, work, order)
        low = halving.narrowed(best.least.finish, best.finish, self._take)
        self._narrowed = best.plan.cost.finish
        if sure and low > best.least.finish:
            proof = message("no way to share the passes out is over before")
            best.least = self.lowest.least = replace(best.least, finish=low, proof=proof)
        elif best.plan is plan:
            return None
        return best.plan is not plan

    def _take(self, table: PartialSchedule) -> int:
        self.best.take(table, [])
        return self.best.finish

    def _settles(self) -> bool:
        """Tell whether the last stretch of a plan is proven, on a small board."""
        best = self.best
        # Where nothing but facts is left there may be no stretch at all.
        if not best.board.free or not self.walker.small or not best.usual:
            return False
        return best.last_stretch < len(best.board.ends) and best.last_stretch <= best.least.stretch

    def _goal(self) -> tuple[int, bool]:
        """Return the last stretch that may be used, and whether the board has all that may be.

        While the last films dry there may be bench time that the plan does not use; a plan
        that does may end as soon, so nothing is proven without it.
        """
        last = self.best.board.last_before(self.best.finish)
        return (self.best.last_stretch, False) if last is None else (last, True)

    def _settle(self) -> bool | None:
        """Go for the levels after the finish once that can hardly be better.

        What is proven of them holds for a plan that ends at the very minute
        of the best one, so it is a bound only where that minute is proven.
        """
        best = self.best
        if not self._settles():
            return None
        finish = best.finish
        if self._asked is not None and self._asked[0] == finish:
            return self._settled(self._asked[1])
        goal, sure = self._goal()
        work = WorkBudget(REST_WORK, seed=self.seed)
        rest = least_rest(best.board, self.walker.links, goal, finish, work)
        self._asked = finish, rest if sure else NOTHING
        best.rest = self._asked[1] if best.plan.status is Status.OPTIMAL else NOTHING
        tables = [as_shared_out(best.board.facts, best.board, rest.numbers)]
        if rest.numbers:
            target = self.walker.target(max(best.least.stretch, best.last_stretch - 1))
            tables += [self.walker.sweep(best.pieces, way, target, rest.numbers) for way in SETTLED]
        found = [table is not None and best.take(table, []) for table in tables]
        return True if any(found) else False if best.rest != NOTHING else None

    def _settled(self, rest: StretchesProven) -> bool | None:
        """Let what was found hold from when the finish is proven on."""
        if self.best.plan.status is not Status.OPTIMAL or self.best.rest == rest:
            return None
        self.best.rest = rest
        return False
