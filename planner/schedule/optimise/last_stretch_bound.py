"""The least last stretch, proven by the whole master with cuts from single stretches."""

from __future__ import annotations

from collections import defaultdict
from typing import Any

from ortools.sat.python import cp_model

from planner.schedule.optimise.board import Board
from planner.schedule.optimise.lower_bounds import Least
from planner.schedule.optimise.master import Cut, Master, WorkBudget, solver_of
from planner.schedule.optimise.pooled_stretches import PooledStretches
from planner.schedule.optimise.stretch_check import impossible
from planner.schedule.optimise.stretch_reachability import Reach
from planner.values.message import message

# Stretches at either end that are looked at one by one; with few the pool is soon refuted,
# where set-ups of all the rest do it, with more what little can be done first and last does.
ONE_BY_ONE = (1, 3)
CUT_ROUNDS = 12  # times that sets are cut off in search of one share-out


class Lowest:
    """Raises the bound of the last stretch used, round by round.

    Attributes
    ----------
    least
        The best bound so far.
    closed
        Nothing more can be proven this way.
    numbers
        Then the share-out that nothing spoke against.
    """

    def __init__(self, board: Board, links: list[Reach], least: Least) -> None:
        self.board, self.links = board, links
        self.least = least
        self.closed = least.stretch >= len(board.stretches) - 1
        self.cuts: list[Cut] = []
        self.numbers: dict[int, int] = {}
        self._stopped = False
        self._solver: cp_model.CpSolver | None = None

    def stop(self) -> None:
        """End the proof under way, from another thread."""
        self._stopped = True
        if self._solver is not None:
            self._solver.stop_search()

    def pool(self, work: WorkBudget) -> Least:
        """Raise the bound as far as the first and last stretches show, the rest being one pool."""
        goal = max(0, self.least.stretch)
        while self.board.free and goal < len(self.board.stretches) - 1 and not work.stopped():
            if not any(self._pool_refutes(goal, ends, work) for ends in ONE_BY_ONE):
                break
            goal += 1
            self._raise(goal)
        return self.least

    def _pool_refutes(self, goal: int, ends: int, work: WorkBudget) -> bool:
        """Tell whether all cannot end by a stretch, ``ends`` at either end seen by themselves."""
        board = Board(self.board.problem, self.board.facts, self.board.ends[goal] - 1)
        links = [link.up_to(goal) for link in self.links]
        pooled = PooledStretches(board, links, ends, ends)
        if pooled.impossible:
            return True
        status: Any = solver_of(work).solve(pooled.model)
        return bool(status == cp_model.INFEASIBLE)

    def prove(self, work: WorkBudget) -> Least:
        """Work on the bound; return the best so far."""
        if self.closed:
            return self.least
        while not self.closed and not self._stopped and not work.stopped():
            status, numbers = self._ask(self.least.stretch, work)
            if status == cp_model.INFEASIBLE:
                self._raise(self.least.stretch + 1)
                self.closed = self.least.stretch >= len(self.board.stretches) - 1
            elif numbers is None:
                break
            elif not self._cut(numbers, work):
                self.closed, self.numbers = True, numbers
        return self.least

    def share_out(self, goal: int, work: WorkBudget) -> dict[int, int]:
        """Return a share-out over the stretches up to a goal that nothing speaks against, or {}."""
        for _ in range(CUT_ROUNDS):
            _, numbers = self._ask(goal, work)
            if numbers is None or work.stopped():
                break
            if not self._cut(numbers, work):
                return numbers
        return {}

    def _ask(self, goal: int, work: WorkBudget) -> tuple[Any, dict[int, int] | None]:
        """Ask whether all can be shared out over the stretches up to a goal, and how."""
        board = Board(self.board.problem, self.board.facts, self.board.ends[goal] - 1)
        links = [link.up_to(goal) for link in self.links]
        master = Master(board, whole=True, links=links, goal=goal)
        master.cut(self.cuts)
        self._solver = solver = solver_of(work)
        status = solver.solve(master.model, _Watch(work))
        answered = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
        return status, master.read(solver) if answered else None

    def _cut(self, numbers: dict[int, int], work: WorkBudget) -> bool:
        """Cut off the sets that no evening can hold; tell whether there was any."""
        sets: dict[int, list[int]] = defaultdict(list)
        for index, number in numbers.items():
            sets[number].append(index)
        found = [
            cut
            for number, passes in sorted(sets.items())
            if (cut := impossible(self.board, number, passes, work)) is not None
        ]
        self.cuts += found
        return bool(found)

    def _raise(self, stretch: int) -> None:
        shortest = min(self.board.least(index) for index in self.board.free)
        finish = max(self.least.finish, self.board.starts[stretch] + shortest)
        proof = message("the coats cannot be shared out over fewer sessions")
        self.least = Least(finish, stretch, proof)


class _Watch(cp_model.CpSolverSolutionCallback):
    """Ends the solver where the search is stopped."""

    def __init__(self, work: WorkBudget) -> None:
        super().__init__()
        self._work = work

    def on_solution_callback(self) -> None:
        """Look whether to go on."""
        if self._work.stopped():
            self.stop_search()
