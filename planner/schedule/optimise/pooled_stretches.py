"""Whether all fits, the first and last stretches looked at one by one and all between as one pool.

What can be done in the first evenings is little: nothing has dried yet; and in
the last ones: nothing may be left to dry.  In between every minute counts as one
pool, less the least set-ups that it needs.  So a goal is refuted on boards on
which a model of every stretch is too great.  It leaves constraints out and
adds none.
"""

from __future__ import annotations

from collections import defaultdict
from typing import Any

from ortools.sat.python import cp_model

from planner.schedule.optimise.board import NEVER, Board
from planner.schedule.optimise.master import NOTHING_HELD, setup_costs, setup_minutes
from planner.schedule.optimise.stretch_reachability import Reach, latest

Literal = Any


class PooledStretches:
    """Whether all passes of a board can end by its last stretch, as far as that shows.

    Parameters
    ----------
    board
        Ends with the stretch that is asked about.
    links
        What each gate leaves possible on it.
    head, tail
        Stretches at either end that are modelled one by one.
    """

    def __init__(self, board: Board, links: list[Reach], head: int, tail: int) -> None:
        self.board, self.links = board, links
        self.model = cp_model.CpModel()
        self.costs = setup_costs(board)
        count = len(board.stretches)
        singles = {*range(min(head, count)), *range(max(0, count - tail), count)}
        self.lasts = [n for n in range(count) if n in singles or n + 1 in singles]
        self.first, self.last = self._spans()
        self.impossible = any(self.first.get(i, NEVER) > self.last.get(i, -1) for i in board.free)
        self.by: dict[tuple[int, int], Literal] = {}
        if self.impossible:
            return
        self._no_pass_outside_its_span()
        self._no_gate_broken()
        self._no_overfull_bucket()

    def _spans(self) -> tuple[dict[int, int], dict[int, int]]:
        """Return the first and the last stretch of each pass."""
        board, goal = self.board, len(self.board.stretches) - 1
        incoming: dict[int, list[Reach]] = defaultdict(list)
        for link in self.links:
            incoming[link.after].append(link)
        first: dict[int, int] = {}
        for index in board.free:
            found = board.first_start(index, board.head[index])
            number = NEVER if found is None else found[0]
            for link in incoming[index]:
                before = first.get(link.before, NEVER)
                number = max(number, link.from_on(before) if before <= goal else NEVER)
            first[index] = number
        return first, latest(board, self.links, lambda _: goal)

    def _no_pass_outside_its_span(self) -> None:
        for index in self.board.free:
            before: Literal = 0
            for bucket, end in enumerate(self.lasts):
                if end < self.first[index]:
                    literal: Literal = 0
                elif end >= self.last[index]:
                    literal = 1
                else:
                    literal = self.model.new_bool_var("")
                    if not isinstance(before, int):
                        self.model.add_implication(before, literal)
                self.by[index, bucket] = before = literal

    def done_by(self, index: int, bucket: int) -> Literal:
        """Return the literal that a pass is done by the end of a bucket."""
        return 0 if bucket < 0 else self.by[index, bucket]

    def within(self, index: int, bucket: int) -> Any:
        """Return the 0-1 expression that a pass is done in a bucket."""
        return self.done_by(index, bucket) - self.done_by(index, bucket - 1)

    def _no_gate_broken(self) -> None:
        """What is done by a stretch had what it waits for done early enough before."""
        known = set(self.board.free)
        for link in self.links:
            if link.before not in known or link.after not in known:
                continue
            soonest = [link.from_on(number) for number in range(len(self.board.stretches))]
            for bucket, end in enumerate(self.lasts):
                fits = [number for number, found in enumerate(soonest) if found <= end]
                enough = next(
                    (b for b, last in enumerate(self.lasts) if fits and last >= fits[-1]), -1
                )
                self._implies(self.done_by(link.after, bucket), self.done_by(link.before, enough))

    def _implies(self, one: Literal, other: Literal) -> None:
        if one is other or (isinstance(one, int) and one == 0):
            return
        if isinstance(other, int) and other == 1:
            return
        clause = [literal for literal in (other,) if not isinstance(literal, int)]
        if not isinstance(one, int):
            clause.append(one.negated())
        self.model.add_bool_or(clause or [self.model.new_constant(0)])

    def _no_overfull_bucket(self) -> None:
        board = self.board
        begin = 0
        for bucket, end in enumerate(self.lasts):
            numbers = range(begin, end + 1)
            here = [i for i in board.free if self.first[i] <= end and self.last[i] >= begin]
            minutes = sum(board.least(index) * self.within(index, bucket) for index in here)
            sprayed = [i for i in here if board.problem.activities[i].pass_.load]
            if len(numbers) == 1:
                setup = self._setup_of_one(bucket, end, sprayed)
            else:
                setup = self._setup_of_many(bucket, numbers, sprayed)
            self.model.add(minutes + setup <= sum(board.ends[n] - board.starts[n] for n in numbers))
            begin = end + 1

    def _setup_of_one(self, bucket: int, number: int, sprayed: list[int]) -> Any:
        board = self.board
        held = board.held if number == 0 else NOTHING_HELD
        washing = board.washing if number == 0 else 0
        if not sprayed:
            return washing
        loads = [board.problem.activities[index].pass_.load for index in sprayed]
        setup, used = setup_minutes(self.model, board.problem, self.costs, loads, held, washing)
        for index, load in zip(sprayed, loads, strict=True):
            self.model.add(self.within(index, bucket) <= used[load])
        return setup

    def _setup_of_many(self, bucket: int, numbers: range, sprayed: list[int]) -> Any:
        """Return the least set-ups of several stretches: whole numbers of each colour's evenings.

        A colour is loaded in so many of them as its minutes fill beside one set-up, and
        in each that is sprayed in the first load costs more.
        """
        board, model, costs = self.board, self.model, self.costs
        if not sprayed or (0 in numbers and board.held):
            return 0
        most = max(board.ends[n] - board.starts[n] for n in numbers) - costs.first
        by_load: dict[str, list[int]] = defaultdict(list)
        for index in sprayed:
            by_load[board.problem.activities[index].pass_.load].append(index)
        evenings = model.new_int_var(0, len(numbers), "")
        loads = []
        for indices in by_load.values():
            filled = model.new_int_var(0, len(numbers), "")
            minutes = sum(board.least(i) * self.within(i, bucket) for i in indices)
            model.add(most * filled >= minutes)
            for index in indices:
                model.add(self.within(index, bucket) <= filled)
            model.add(filled <= evenings)
            loads.append(filled)
        return costs.first * evenings + costs.same * (sum(loads) - evenings)
