"""At which minute of the last stretch all can be over: a bound, and ways to get there.

Once the last stretch is proven, the gap between the finish and its bound is
halved again and again: the whole master is asked whether all can be over by a
minute, and what no single stretch can hold by then is cut off.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass

from ortools.sat.python import cp_model

from planner.schedule.optimise.board import Board
from planner.schedule.optimise.earliest_finish_order import in_stretches
from planner.schedule.optimise.fewest_stretches import done_by_then, latest_ends
from planner.schedule.optimise.master import Cut, Master, WorkBudget, solver_of
from planner.schedule.optimise.stretch_check import possible
from planner.schedule.optimise.stretch_reachability import Reach
from planner.schedule.partial_schedule import FOREVER, PartialSchedule

ROUNDS = 12  # times that sets are cut off in search of one share-out


@dataclass(frozen=True)
class Halving:
    """What is asked of a board whose last stretch is ``goal``, with how much work each time.

    ``order`` is the work for the order of one stretch.
    """

    board: Board
    links: list[Reach]
    goal: int
    work: WorkBudget
    order: WorkBudget

    def narrowed(self, low: int, finish: int, take: Callable[[PartialSchedule], int]) -> int:
        """Return the first minute by which all may be over, as far as that can be proven.

        Parameters
        ----------
        low
            Minute before which nothing is over, for sure.
        finish
            Minute at which the best plan is.
        take
            Takes what is found if it is better, and returns the finish of the best plan then.
        """
        tried = low
        while tried < finish and not self.work.stopped():
            middle = (tried + finish) // 2
            proven, found = self._over_by(middle)
            if proven:
                low = tried = middle + 1
            elif found is not None and (then := take(found)) < finish:
                finish = then
            else:
                tried = middle + 1
        return min(low, finish)

    def _over_by(self, minute: int) -> tuple[bool, PartialSchedule | None]:
        """Tell whether all can surely not be over by a minute, or else return a way, if any."""
        small = Board(self.board.problem, self.board.facts, self.board.ends[self.goal] - 1)
        links = [link.up_to(self.goal) for link in self.links]
        latest = latest_ends(small, minute)
        master = Master(small, whole=True, links=links, goal=self.goal)
        for index, end in latest.items():
            done_by_then(master, index, end)
        _no_more_than_fits(master, latest)
        sure = True  # that what was cut off cannot be
        for _ in range(ROUNDS):
            solver = solver_of(self.work)
            status = solver.solve(master.model)
            if status == cp_model.INFEASIBLE:
                return sure, None
            if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE) or self.work.stopped():
                return False, None
            sets: dict[int, list[int]] = defaultdict(list)
            for index, number in sorted(master.read(solver).items()):
                sets[number].append(index)
            cuts = self._cuts(small, sets, latest)
            if not cuts:
                table = in_stretches(self.board, sets, 0, self.order, self.work.stopped)
                if table is not None and self._all_over(table) <= minute:
                    return False, table
                # Nothing speaks against it, and yet it is not found how: another one, then.
                sure = False
                cuts = [Cut(frozenset(sets[number]), (number,)) for number in [max(sets)]]
            master.cut(cuts)
        return False, None

    def _cuts(self, small: Board, sets: dict[int, list[int]], latest: dict[int, int]) -> list[Cut]:
        """Return what no stretch can hold of some sets, each as small as it can be."""
        found = []
        for number, passes in sorted(sets.items()):
            if possible(small, number, passes, self.work, latest) is not False:
                continue
            kept = list(passes)
            for index in passes:
                fewer = [other for other in kept if other != index]
                if fewer and possible(small, number, fewer, self.work, latest) is False:
                    kept = fewer
            found.append(Cut(frozenset(kept), (number,)))
        return found

    def _all_over(self, table: PartialSchedule) -> int:
        """Return when everything of a table is done and dry to handle."""
        dry = [until for until in table.wet.values() if until < FOREVER]
        return max([*table.end.values(), *dry], default=table.time)


def _no_more_than_fits(master: Master, latest: dict[int, int]) -> None:
    """Leave a stretch the minutes until the last of its passes must have ended.

    Cleaning may come after that.
    """
    board = master.board
    cleaning = sum(airbrush.clean_minutes for airbrush in board.problem.book.gear.airbrushes)
    for number in range(master.count):
        here = [index for index in master.passes if master.first[index] <= number]
        alone = any(board.lasts(index) > board.least(index) for index in here)
        until = max((latest[index] for index in here), default=board.ends[number])
        room = until - board.starts[number] + cleaning
        if not alone and room < board.ends[number] - board.starts[number]:
            minutes = sum(board.least(index) * master.within(index, number) for index in here)
            master.model.add(minutes + master.setups[number] <= room)
