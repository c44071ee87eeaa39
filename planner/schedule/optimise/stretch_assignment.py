"""A whole plan by stretches: which pass is done in which, a few stretches re-decided at a time.

What stands outside a window of stretches stays; inside it a small CP-SAT
model shares the passes out anew with fewer set-ups, and work that could be
done sooner moves forward.  Minutes within a stretch are left to `sweep`.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from ortools.sat.python import cp_model

from planner.schedule.optimise.board import Board
from planner.schedule.optimise.master import (
    Literal,
    SetupCosts,
    WorkBudget,
    setup_costs,
    setup_minutes,
    solver_of,
)
from planner.schedule.optimise.stretch_reachability import Reach, earliest_end
from planner.values.moment import Interval

OVERFULL = 60  # what a minute too many in a stretch weighs
LATE = 400  # what a stretch too late for the goal weighs


@dataclass(frozen=True)
class Weights:
    """What counts in a window, beside overfull stretches and lateness.

    Attributes
    ----------
    setup
        A minute of set-up.
    used
        A stretch in which hands are used at all.
    later
        A minute of work, by the place in the window of the stretch that it
        is done in; the last one goes for all beyond.
    """

    setup: int = 2
    used: int = 0
    later: tuple[int, ...] = (0, 0, 0, 10)


class Ties:
    """What binds passes to each other over the stretches of a board.

    Attributes
    ----------
    incoming, outgoing
        Links by their later and by their earlier pass.
    """

    def __init__(self, board: Board, links: list[Reach]) -> None:
        self.board = board
        self.costs: SetupCosts = setup_costs(board)
        self.incoming: dict[int, list[Reach]] = defaultdict(list)
        self.outgoing: dict[int, list[Reach]] = defaultdict(list)
        for link in links:
            self.incoming[link.after].append(link)
            self.outgoing[link.before].append(link)
        self._far: dict[tuple[int, int], frozenset[int]] = {}

    def too_far(self, index: int, number: int) -> frozenset[int]:
        """Return the later passes that cannot be done in the same stretch as a pass.

        Link by link they could; the whole chain of work and waits between is
        too long.
        """
        found = self._far.get((index, number))
        if found is None:
            found = self._far[index, number] = frozenset(self._beyond(index, number))
        return found

    def _beyond(self, index: int, number: int) -> set[int]:
        board, problem = self.board, self.board.problem
        end = earliest_end(board, index, number)
        if end is None:
            return set()
        ends = {index: end}
        beyond: set[int] = set()
        queue = [index]
        while queue:
            other = queue.pop()
            steps = [
                (problem.ends[gate][1], board.earliest_after(gate, ends[other]))
                for gate in problem.gates_from.get(other, ())
            ]
            steps += [(after, ends[other]) for after in problem.after.get(other, ())]
            for after, opens in steps:
                if after not in board.head:
                    continue
                found = board.first_start(after, opens)
                if found is None or found[0] != number:
                    beyond.add(after)
                elif (end := found[1] + board.lasts(after)) > ends.get(after, 0):
                    ends[after] = end
                    queue.append(after)
        return beyond


class Shares:
    """The stretch of every pass of a plan that is not a fact.

    Parameters
    ----------
    pieces
        When each pass is worked on, by activity.

    Attributes
    ----------
    numbers
        Stretch of each free pass.
    started
        When it began before.
    fixed
        Passes that stay in their stretch.
    """

    def __init__(self, ties: Ties, pieces: Mapping[int, Sequence[Interval]]) -> None:
        self.ties = ties
        self.board = board = ties.board
        activities = board.problem.activities
        self.order = [index for index in board.free if index in pieces]
        self.numbers = {i: board.number_at(pieces[i][-1].start) for i in self.order}
        self.started = {index: pieces[index][0].start for index in self.order}
        left = board.facts.left
        self.minutes = {i: left.get(i, activities[i].pass_.hands) for i in self.order}
        self.fixed = {index for index in self.order if activities[index].together}
        self.left_over = set(board.free) - set(self.order)

    def take(self, numbers: dict[int, int]) -> None:
        """Put passes into other stretches; what the plan has left over stays so."""
        self.numbers.update((i, number) for i, number in numbers.items() if i in self.minutes)

    def keep_last(self) -> None:
        """Keep what is done in the last stretch used where it is."""
        last = max(self.numbers.values(), default=0)
        self.fixed |= {index for index, number in self.numbers.items() if number == last}

    def push(self, index: int, number: int) -> None:
        """Put a pass off to a stretch, and what follows it as far as it must."""
        numbers, beyond = self.numbers, len(self.board.stretches)
        numbers[index] = number
        moved = {index}
        for other in self.order[self.order.index(index) :]:
            for link in self.ties.incoming[other]:
                if link.before not in moved:
                    continue
                before, after = numbers[link.before], numbers[other]
                if before >= beyond:
                    later = [beyond]
                elif allows(link, before, after):
                    continue
                else:
                    runs = link.spans[before] or ()
                    later = [max(begin, after) for begin, end in runs if end >= after]
                numbers[other] = min(later, default=beyond)
                moved.add(other)

    def within(self, window: Iterable[int]) -> list[int]:
        """Return the passes done in some stretches, in an order that keeps precedence."""
        inside = set(window)
        return [i for i in self.board.free if self.numbers.get(i) in inside]

    def domain(self, index: int, window: Sequence[int], free: set[int]) -> list[int]:
        """Return the stretches of a window that passes outside it leave to a pass."""
        numbers, least = self.numbers, self.board.least(index)
        loose = free | self.left_over
        found = []
        for number in window:
            if earliest_end(self.board, index, number) is None:
                continue
            slots = self.board.slots(index)[number]
            if all(slot.end - slot.start < least for slot in slots):
                continue
            if all(
                link.before in loose or allows(link, numbers[link.before], number)
                for link in self.ties.incoming[index]
            ) and all(
                link.after in loose or allows(link, number, numbers[link.after])
                for link in self.ties.outgoing[index]
            ):
                found.append(number)
        return found


def allows(link: Reach, before: int, after: int) -> bool:
    """Tell whether a link lets its passes be done in these stretches."""
    spans = link.spans[before] if before < len(link.spans) else None
    return spans is not None and any(begin <= after <= end for begin, end in spans)


class AssignmentWindow:
    """A model of the passes in some stretches; what is outside stays where it is.

    Parameters
    ----------
    last
        Stretch by which each pass must be done to meet the goal.
    cuts
        Sets of passes that the first stretch cannot hold.

    Attributes
    ----------
    model, places
        CP-SAT model, and the literal that a pass is done in a stretch.
    """

    def __init__(
        self,
        shares: Shares,
        window: Sequence[int],
        weights: Weights,
        last: Mapping[int, int],
        cuts: Iterable[frozenset[int]] = (),
    ) -> None:
        self.shares, self.window, self.last = shares, window, last
        self.model = cp_model.CpModel()
        self.sure: Literal = self.model.new_constant(1)
        self.places: dict[int, dict[int, Literal]] = {}
        inside = shares.within(window)
        self.pinned = [index for index in inside if index in shares.fixed]
        free = [index for index in inside if index not in shares.fixed]
        known = set(free)
        for index in free:
            domain = shares.domain(index, window, known)
            self.places[index] = {number: self.model.new_bool_var("") for number in domain}
            self.model.add_exactly_one(self.places[index].values())
        self._no_gate_broken()
        self.terms: list[Any] = []
        for position, number in enumerate(window):
            self._stretch_overfull_at_a_price(number, position, weights)
        for passes in cuts:
            here = self.in_stretch(window[0])
            if passes <= here.keys():
                self.model.add_bool_or([here[index].negated() for index in passes])
        self.model.minimize(sum(self.terms))
        self._hint()

    def in_stretch(self, number: int) -> dict[int, Literal]:
        """Return the literal of each pass that may be in a stretch, sure ones included."""
        found = {i: places[number] for i, places in self.places.items() if number in places}
        found |= {i: self.sure for i in self.pinned if self.shares.numbers[i] == number}
        return found

    def solve(self, work: WorkBudget, *, presolve: bool) -> cp_model.CpSolver | None:
        """Return the solver with the best answer found, or None if there is none."""
        solver = solver_of(work, linear=False, presolve=presolve)
        status: Any = solver.solve(self.model)
        return solver if status in (cp_model.OPTIMAL, cp_model.FEASIBLE) else None

    def read(self, solver: cp_model.CpSolver) -> dict[int, int]:
        """Return the stretch of each free pass."""
        return {
            index: next(n for n, literal in places.items() if solver.boolean_value(literal))
            for index, places in self.places.items()
        }

    def _no_gate_broken(self) -> None:
        add, shares = self.model.add_bool_or, self.shares
        for after, places in self.places.items():
            for link in shares.ties.incoming[after]:
                for number, literal in self.places.get(link.before, {}).items():
                    good = [place for n, place in places.items() if allows(link, number, n)]
                    if len(good) < len(places):
                        add([*good, literal.negated()])
        for number in self.window:
            here = self.in_stretch(number)
            for index, literal in here.items():
                for after in shares.ties.too_far(index, number) & here.keys():
                    add([literal.negated(), here[after].negated()])

    def _stretch_overfull_at_a_price(self, number: int, position: int, weights: Weights) -> None:
        shares, board, model = self.shares, self.shares.board, self.model
        here = self.in_stretch(number)
        setup = self._colour_loaded_where_sprayed(here)
        work = sum(shares.minutes[i] * literal for i, literal in here.items())
        over = model.new_int_var(0, 10_000 if position else self._longest(here, number), "")
        model.add(work + setup - over <= board.ends[number] - board.starts[number])
        self.terms += [OVERFULL * over, weights.setup * setup]
        later = weights.later[min(position, len(weights.later) - 1)]
        for index, literal in here.items():
            late = LATE * max(0, number - self.last.get(index, number))
            if cost := late + later * shares.minutes[index]:
                self.terms.append(cost * literal)
        if weights.used and here:
            used = model.new_bool_var("")
            for literal in here.values():
                model.add_implication(literal, used)
            self.terms.append(weights.used * used)

    def _longest(self, here: Iterable[int], number: int) -> int:
        """Return how much too long for a stretch a single pass is, which may be broken off in it.

        So much may the first stretch of a window be overfull, as it is done
        to the minute next; the others can still be mended.
        """
        board = self.shares.board
        longest = max((self.shares.minutes[index] for index in here), default=0)
        return max(0, longest - (board.ends[number] - board.starts[number]))

    def _colour_loaded_where_sprayed(self, here: dict[int, Literal]) -> Any:
        """Return the least set-up minutes of a stretch, tied to the colours used in it."""
        problem = self.shares.board.problem
        sprayed = {i: load for i in here if (load := problem.activities[i].pass_.load)}
        if not sprayed:
            return 0
        setup, used = setup_minutes(self.model, problem, self.shares.ties.costs, sprayed.values())
        for index, load in sprayed.items():
            self.model.add_implication(here[index], used[load])
        return setup

    def _hint(self) -> None:
        for index, places in self.places.items():
            for number, literal in places.items():
                self.model.add_hint(literal, self.shares.numbers[index] == number)
