"""Whether all fits, the first and last stretches looked at one by one and all between as one pool.

What can be done in the first evenings is little: nothing has dried yet; and in
the last ones: nothing may be left to dry.  In between every minute counts as one
pool, less the least set-ups that it needs.  So a goal is refuted on boards on
which a model of every stretch is too great.  It leaves constraints out and
adds none.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable
from typing import Any

from ortools.sat.python import cp_model

from planner.schedule.optimise.board import NEVER, Board
from planner.schedule.optimise.lower_bounds import least_wet
from planner.schedule.optimise.master import NOTHING_HELD, SetupCosts, setup_costs, setup_minutes
from planner.schedule.optimise.stretch_reachability import Reach, latest
from planner.schedule.problem import Problem

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
        self._no_drying_place_overfull()

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
        for bucket, numbers in enumerate(self._buckets()):
            end = numbers[-1]
            here = self._here(board.free, numbers)
            minutes = sum(board.least(index) * self.within(index, bucket) for index in here)
            sprayed = [i for i in here if board.problem.activities[i].pass_.load]
            if len(numbers) == 1:
                setup = self._setup_of_one(bucket, end, sprayed)
            else:
                setup = self._setup_of_many(bucket, numbers, sprayed)
            self.model.add(minutes + setup <= sum(board.ends[n] - board.starts[n] for n in numbers))

    def _buckets(self) -> list[range]:
        begins = [0, *(end + 1 for end in self.lasts)]
        return [range(begin, end + 1) for begin, end in zip(begins, self.lasts, strict=False)]

    def _here(self, passes: Iterable[int], numbers: range) -> list[int]:
        """Return those of some passes that may be done in a bucket."""
        return [i for i in passes if self.first[i] <= numbers[-1] and self.last[i] >= numbers[0]]

    def _no_drying_place_overfull(self) -> None:
        """Whatever is coated in a stretch stands wet at its end, where films dry that slowly."""
        board = self.board
        units: dict[str, dict[tuple[int, int], list[int]]] = defaultdict(lambda: defaultdict(list))
        for index in board.free:
            activity = board.problem.activities[index]
            for unit in activity.wet:
                units[activity.location][unit].append(index)
        wet = {
            i: least_wet(board, i) for of in units.values() for all_ in of.values() for i in all_
        }
        parted = _Parted(self.links, len(board.stretches))
        for bucket, numbers in enumerate(self._buckets()):
            longest = max(board.ends[n] - board.starts[n] for n in numbers)
            for location, coats in units.items():
                room = board.problem.places[location].drying_places * len(numbers)
                slow = {
                    unit: [i for i in self._here(passes, numbers) if wet[i] >= longest]
                    for unit, passes in coats.items()
                }
                if sum(unit[1] * len(passes) for unit, passes in slow.items()) > room:
                    stands = [
                        unit[1] * self._evenings_of(passes, bucket, len(numbers), parted)
                        for unit, passes in slow.items()
                        if passes
                    ]
                    self.model.add(sum(stands) <= room)

    def _evenings_of(self, passes: list[int], bucket: int, count: int, parted: _Parted) -> Literal:
        """Return in how many stretches of a bucket a unit is coated, as far as that shows."""
        evenings = self.model.new_int_var(0, count, "")
        for index in passes:
            self.model.add(evenings >= self.within(index, bucket))
        if count > 1:
            chain = parted.chain(passes)
            self.model.add(evenings >= sum(self.within(index, bucket) for index in chain))
        return evenings

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
        """Return the least set-ups of several stretches, those of one length counted together.

        A colour is loaded in as many of them as its minutes there fill beside one set-up, the
        first load of each that is sprayed in costs more, and so does a colour of another
        family.
        """
        board, model, costs = self.board, self.model, self.costs
        if not sprayed or (0 in numbers and board.held):
            return 0
        activities = board.problem.activities
        lengths = Counter(board.ends[n] - board.starts[n] for n in numbers)
        alike = [
            _Alike(model, length, count, costs, board.problem)
            for length, count in sorted(lengths.items())
            if length > costs.first
        ]
        by_load: dict[str, list[int]] = defaultdict(list)
        for index in sprayed:
            by_load[activities[index].pass_.load].append(index)
        for load, indices in by_load.items():
            minutes = sum(board.least(i) * self.within(i, bucket) for i in indices)
            held = [one.hold(load) for one in alike]
            model.add(sum(here for here, _ in held) >= minutes)
            for index in indices:
                model.add(sum(loads for _, loads in held) >= self.within(index, bucket))
        return sum(one.setup() for one in alike)


class _Parted:
    """Which passes are never done in one stretch, by waits between them."""

    def __init__(self, links: Iterable[Reach], count: int) -> None:
        self.after: dict[int, list[tuple[int, bool]]] = defaultdict(list)
        for link in links:
            never = not any(
                begin <= number <= end
                for number, runs in enumerate(link.spans[:count])
                for begin, end in runs or ()
            )
            self.after[link.before].append((link.after, never))

    def chain(self, passes: list[int]) -> list[int]:
        """Return a longest chain of passes, in order of precedence, each parted from the next."""
        best: dict[int, list[int]] = {index: [index] for index in passes}
        for index in passes:
            for later in self._parted_from(index) & best.keys():
                if len(best[later]) <= len(best[index]):
                    best[later] = [*best[index], later]
        return max(best.values(), key=len)

    def _parted_from(self, index: int) -> set[int]:
        seen, queue = {(index, False)}, [(index, False)]
        while queue:
            at, apart = queue.pop()
            for after, never in self.after[at]:
                found = after, apart or never
                if found not in seen:
                    seen.add(found)
                    queue.append(found)
        return {at for at, apart in seen if apart}


class _Alike:
    """Evenings of one length: in how many is sprayed, in how many each colour and family.

    There are ``count`` of them.
    """

    def __init__(
        self,
        model: cp_model.CpModel,
        length: int,
        count: int,
        costs: SetupCosts,
        problem: Problem,
    ) -> None:
        self.model, self.length, self.count, self.costs = model, length, count, costs
        self.problem = problem
        self.used = model.new_int_var(0, count, "")
        self.minutes: dict[str, Literal] = {}
        self.loads: dict[str, Literal] = {}

    def hold(self, load: str) -> tuple[Literal, Literal]:
        """Return the minutes that a colour is sprayed in them, and in how many it is."""
        most = self.length - self.costs.first  # beside one load and its cleaning
        minutes = self.model.new_int_var(0, most * self.count, "")
        loads = self.model.new_int_var(0, self.count, "")
        self.model.add(minutes <= most * loads)
        self.model.add(loads <= self.used)
        self.minutes[load], self.loads[load] = minutes, loads
        return minutes, loads

    def setup(self) -> Any:
        """Return the least set-ups, once all colours are held."""
        model, costs, used = self.model, self.costs, self.used
        by_family: dict[str, list[str]] = defaultdict(list)
        for load in self.loads:
            by_family[self.problem.coatings[load].family.value].append(load)
        families = []
        for names in by_family.values():
            family = model.new_int_var(0, self.count, "")
            model.add(family <= used)
            model.add(
                sum(self.minutes[name] for name in names) <= (self.length - costs.first) * family
            )
            for name in names:
                model.add(self.loads[name] <= family)
            model.add(family <= sum(self.loads[name] for name in names))
            families.append(family)
        kinds, loads = sum(families), sum(self.loads.values())
        model.add(kinds >= used)
        setup = (
            costs.first * used
            + costs.same * (loads - used)
            + (costs.other - costs.same) * (kinds - used)
        )
        model.add(sum(self.minutes.values()) + setup <= self.length * used)
        return setup
