"""Walking on from a plan: one sweep after another, each from what the last one found."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property

from planner.schedule.optimise.annealing import Cooling, Grid, annealed
from planner.schedule.optimise.board import NEVER, Board
from planner.schedule.optimise.stretch_assignment import Shares, Ties, Weights
from planner.schedule.optimise.stretch_reachability import Reach, latest
from planner.schedule.optimise.sweep import WORK, Sweep
from planner.schedule.partial_schedule import PartialSchedule
from planner.values.moment import Interval

Pieces = Mapping[int, Sequence[Interval]]
PROVABLE = 130
"""Up to so many passes a board is small: the whole master answers, and windows may be wide."""
TRIES = 700  # of an annealing, for each pass
HOT = 15.0  # temperature of a first annealing
HEATS = (4.0, 8.0, 4.0, 3.0, 6.0)  # of those that go on from a good plan
SOFT = Cooling()
FIRM = Cooling(full=4.0, late=3.0, setup=1.5, cold=0.7)
SAVING = Cooling(full=4.0, late=3.0, setup=3.0, cold=0.7)
ASTRAY = 2  # stretches behind the best plan after which a walk begins anew from that


@dataclass(frozen=True)
class Way:
    """How a sweep goes; with ``still`` what ends the plan stays as it is.

    ``ahead`` stretches are shared out together, with ``work`` deterministic
    seconds for each window.
    """

    weights: Weights
    top: bool = False
    still: bool = False
    ahead: int = 4
    work: float = WORK


PULL = (0, 1, 2, 10)
WAYS = (
    Way(Weights(setup=3, later=PULL), top=True),
    Way(Weights(setup=20, later=PULL)),
    Way(Weights(setup=10, later=(0, 1, 1, 10))),
    Way(Weights(setup=6, later=PULL), top=True),
    Way(Weights(setup=40, later=PULL), top=True),
    Way(Weights(setup=10)),
)
# Narrow windows of a small board are soon as good as they can be, and walks go in a circle.
WIDE = (
    Way(Weights(setup=3, later=PULL), top=True),
    Way(Weights(setup=6, later=PULL), top=True),
    Way(Weights(setup=10), ahead=6, work=0.03),
    Way(Weights(setup=6, later=PULL), top=True, ahead=6, work=0.03),
    Way(Weights(setup=20, later=PULL)),
    Way(Weights(setup=6, later=PULL), top=True, ahead=8, work=0.03),
    Way(Weights(setup=10)),
)
STILL = tuple(
    Way(Weights(setup=setup, used=30 * setup, later=(0,)), still=True) for setup in (10, 20)
)
# After annealing a window need only mend what does not fit to the minute.
MENDING = (
    Way(Weights(setup=10), work=0.03),
    Way(Weights(setup=10, later=(0, 0, 1, 10)), work=0.03),
)
FILLED = Way(Weights(later=(0, 0, 0, 1)))  # what is full already stays as it is
SETTLED = (Way(Weights(setup=10, used=300, later=(0,))), Way(Weights(setup=6)))


@dataclass
class Walker:
    """Makes sweeps over one board; what is random follows ``seed``, and ``stopped`` ends it."""

    board: Board
    links: list[Reach]
    ties: Ties
    seed: int
    stopped: Callable[[], bool] = field(default=lambda: False)

    @cached_property
    def grid(self) -> Grid:
        """Which stretches passes may have, for annealing."""
        return Grid(self.ties, self.links)

    def anneal(self, pieces: Pieces, last: int, least: int, number: int) -> PartialSchedule | None:
        """Return what a sweep makes of a plan whose passes annealing has shared out anew.

        The first one begins hot: it owes little to the plan, which ends in
        the stretch ``last``, and may aim far ahead, at the one after the
        least last stretch of any plan.
        """
        shares, turn = Shares(self.ties, pieces), number // 2
        tries, heat = TRIES * len(self.board.free), HEATS[turn % len(HEATS)]
        if last <= least:
            way, goal, kind = STILL[turn % len(STILL)], last, SAVING
            shares.keep_last()
        else:
            way, goal = MENDING[turn % len(MENDING)], last - 1
            kind = (SOFT, FIRM)[number % 2]
        if turn == 0:
            goal, heat, tries = min(goal, least + 1), HOT, tries * 2
        cooling = replace(kind, tries=tries, hot=heat)
        target, seed = self.target(max(goal, least)), self.seed + number
        numbers = annealed(self.grid, shares, target, cooling, seed, self.stopped)
        return self.sweep(pieces, way, target, numbers, number)

    @property
    def small(self) -> bool:
        """Tell whether the board is small."""
        return len(self.board.free) <= PROVABLE

    def ways(self, last: int, least: int) -> tuple[Way, ...]:
        """Return the ways to go from plans that end in a stretch, the least being another."""
        if last <= least:
            return STILL
        return WIDE if self.small else WAYS

    def last_of(self, table: PartialSchedule) -> int:
        """Return the last stretch that a table uses."""
        begun = [table.pieces[i][-1].start for i in self.board.free if i in table.end]
        return self.board.number_at(max(begun, default=0))

    def target(self, goal: int) -> dict[int, int]:
        """Return the stretch by which each pass must be done for all to end by a goal."""
        board, problem = self.board, self.board.problem
        ends: dict[int | None, int] = {None: goal}
        for number, due in enumerate(problem.dues):
            ends[number] = min(goal, board.number_at(due.at) - 1)
        of, paths = problem.due_of, defaultdict[int | None, int](int)
        for index in board.free:
            if board.head[index] < NEVER:
                paths[of[index]] = max(paths[of[index]], board.number_at(board.head[index]))
        return latest(board, self.links, lambda i: max(ends[of[i]], paths[of[i]]))

    def sweep(
        self,
        pieces: Pieces,
        way: Way,
        target: Mapping[int, int],
        numbers: dict[int, int],
        number: int = 0,
    ) -> PartialSchedule | None:
        """Return what one sweep makes of a plan, the passes in ``numbers`` first put there."""
        shares = Shares(self.ties, pieces)
        shares.take(numbers)
        if way.still:
            shares.keep_last()
        return Sweep(
            shares,
            target,
            way.weights,
            ahead=way.ahead,
            work=way.work,
            seed=self.seed + number,
            top=way.top,
            stopped=self.stopped,
        ).run(self.board.facts)
