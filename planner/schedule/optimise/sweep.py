"""Sweeping a plan from its first stretch on: each is shared out anew, and done to the minute."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from ortools.sat.python import cp_model

from planner.bench import Stretch
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.exact_stretch import Exact
from planner.schedule.optimise.master import WorkBudget, solver_of
from planner.schedule.optimise.stretch_assignment import AssignmentWindow, Shares, Weights
from planner.schedule.optimise.stretch_sequencing import (
    closed,
    enter,
    fill,
    in_order,
    sequence,
    top_up,
    what_fits,
)
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.placing import put_away

WORK = 0.01  # deterministic seconds, usual for one window
MINUTE_WORK = 0.05  # the same where a stretch is worked out to the minute
TRIES = 4  # times that one stretch is shared out anew


@dataclass
class Sweep:
    """Shares a plan out anew from its first stretch on, each stretch done to the minute in turn.

    Parameters
    ----------
    last
        Stretch by which each pass must be done to meet the goal.
    ahead
        Stretches that are shared out together.
    work
        Deterministic seconds for one window.
    top
        Swap passes for longer ones where minutes of a stretch are left.
    """

    shares: Shares
    last: Mapping[int, int]
    weights: Weights
    ahead: int = 4
    work: float = WORK
    seed: int = 0
    top: bool = False
    stopped: Callable[[], bool] = lambda: False

    def run(self, start: PartialSchedule) -> PartialSchedule | None:
        """Return the table with every pass placed, or None where the board ends before."""
        shares, table = self.shares, start.clone()
        for number in range(len(shares.board.stretches)):
            if self.stopped():
                return None
            table = self._stretch(table, number)
            left = [index for index in shares.order if index not in table.end]
            if not left:
                return table
            for index in left:
                if shares.numbers[index] <= number:
                    shares.push(index, number + 1)
        return None

    def _stretch(self, table: PartialSchedule, number: int) -> PartialSchedule:
        shares, stretch = self.shares, self.shares.board.stretches[number]
        here, tails = enter(table, stretch), table.problem.tails
        done = self._shared_out(here, stretch, number)
        later = sorted(
            (i for i in shares.order if shares.numbers[i] >= number and i not in done.end),
            key=lambda i: (shares.numbers[i], -tails[i]),
        )
        done = fill(done, stretch, later, tails)
        if self.top:
            done = top_up(here, stretch, done, later, tails, same_loads=True)
        put_away(done)
        done.time = max(done.time, stretch.interval.end)
        shares.take({i: number for i in later if i in done.end})
        return done

    def _shared_out(self, here: PartialSchedule, stretch: Stretch, number: int) -> PartialSchedule:
        """Return the table with a stretch done, its passes chosen anew with those of the next."""
        shares = self.shares
        window = range(number, min(number + self.ahead, len(shares.board.stretches)))
        before = {index: shares.numbers[index] for index in shares.within(window)}
        cuts: list[frozenset[int]] = []
        minute = _Minute(here, stretch, self.seed)
        for attempt in range(TRIES):
            model = AssignmentWindow(shares, window, self.weights, self.last, cuts)
            exact = None
            if attempt:  # what seems to fit did not: look at the minutes from the start
                exact = Exact(model.model, minute.board, model.in_stretch(number), here)
            work = self.work if exact is None else max(self.work, MINUTE_WORK)
            solver = model.solve(WorkBudget(work, seed=self.seed), presolve=exact is not None)
            if solver is None:
                break
            shares.take(model.read(solver))
            given = shares.within([number])
            if exact is None:
                done = minute.done(given) or minute.worked_out(given)
            else:
                done = minute.done(exact.order(solver))
            if done is not None:
                return done
            cuts.append(minute.conflict(given))
            shares.take(before)
        given = shares.within([number])
        return minute.as_before(given, shares.started) or minute.most_of(given)


class _Minute:
    """What one stretch holds to the minute, after all that was done before it."""

    def __init__(self, here: PartialSchedule, stretch: Stretch, seed: int) -> None:
        self.here, self.stretch, self.seed = here, stretch, seed
        self.tails = here.problem.tails
        after = here.problem.calendar.next_stretch(stretch.interval.end)
        end = after.interval.start if after else stretch.interval.end
        self.board = Board(here.problem, here, end)

    def done(self, order: list[int]) -> PartialSchedule | None:
        """Return the table with passes done in an order, or another if that fails, or None."""
        for found in (
            in_order(self.here, self.stretch, order),
            sequence(self.here, self.stretch, order, self.tails),
        ):
            if found is not None and closed(found, self.stretch):
                return found
        return None

    def as_before(self, given: list[int], started: Mapping[int, int]) -> PartialSchedule | None:
        """Return the table with all of a set done, if it can be in the order that it had."""
        return self.done(sorted(given, key=started.__getitem__))

    def worked_out(self, given: list[int]) -> PartialSchedule | None:
        """Return the table with passes done in an order that a solver finds, or None."""
        exact, solver = self._solved(given)
        return None if solver is None else self.done(exact.order(solver))

    def conflict(self, given: list[int]) -> frozenset[int]:
        """Return a least part of a set that cannot be done, or all of it."""
        kept = list(given)
        for index in given:
            fewer = [other for other in kept if other != index]
            if fewer and not self._possible(fewer):
                kept = fewer
        return frozenset(kept)

    def most_of(self, given: list[int]) -> PartialSchedule:
        """Return the table with passes of a set taken one by one, each with what must follow."""
        order = sorted(given, key=lambda i: -self.tails[i])
        return what_fits(self.here, self.stretch, order, set(self.board.head))

    def _possible(self, given: list[int]) -> bool:
        return self._solved(given)[1] is not None

    def _solved(self, given: list[int]) -> tuple[Exact, cp_model.CpSolver | None]:
        model = cp_model.CpModel()
        sure = model.new_constant(1)
        exact = Exact(model, self.board, dict.fromkeys(given, sure), self.here)
        solver = solver_of(WorkBudget(MINUTE_WORK, seed=self.seed), linear=False, presolve=False)
        status: Any = solver.solve(model)
        return exact, solver if status in (cp_model.OPTIMAL, cp_model.FEASIBLE) else None
