"""The evening master: a CP-SAT model of which pass is done in which stretch.

It knows minutes, set-ups, gates and closings as far as stretches show them;
it is optimistic everywhere, so its optimum is a bound for any sound plan.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from functools import cached_property
from itertools import pairwise
from typing import Any

from ortools.sat.python import cp_model

from planner.schedule.optimise.board import NEVER, Board
from planner.schedule.optimise.stretch_reachability import Reach, latest, reaches
from planner.schedule.problem import Problem

NOTHING_HELD: frozenset[str] = frozenset()
Literal = Any  # cp_model.IntVar or its negation


@dataclass(frozen=True)
class Cut:
    """Passes that cannot all be done in any one of the stretches ``numbers``."""

    passes: frozenset[int]
    numbers: tuple[int, ...]


@dataclass
class WorkBudget:
    """How much a search may do: a count that is the same on every machine.

    ``amount`` is in CP-SAT's deterministic seconds.
    """

    amount: float
    workers: int = 1
    seed: int = 0
    stopped: Callable[[], bool] = field(default=lambda: False)


class Master:
    """Variables and constraints over a board.

    Parameters
    ----------
    whole
        Every pass must be done within the board's stretches.  Otherwise
        what is left is done later.
    """

    def __init__(
        self,
        board: Board,
        *,
        whole: bool,
        links: list[Reach] | None = None,
        goal: int | None = None,
    ) -> None:
        self.board = board
        self.whole = whole
        self.model = cp_model.CpModel()
        self.count = len(board.stretches)
        self.passes = [i for i in board.free if board.head[i] < NEVER]
        self.links = reaches(board) if links is None else links
        self.first = self._first_stretches()
        self.passes = [i for i in self.passes if self.first[i] < self.count]
        self.by: dict[tuple[int, int], Literal] = {}
        self._no_pass_without_room()
        self._no_gate_broken()
        self._no_overfull_stretch()
        if goal is not None:
            self._no_end_after_goal(goal)

    def _no_end_after_goal(self, goal: int) -> None:
        """What is too late for its followers to end by the stretch ``goal`` is not done."""
        for index, number in latest(self.board, self.links, lambda _: goal).items():
            if index in self.first and number < goal:
                self._clause(self.done_by(index, max(number, -1)))

    def done_by(self, index: int, number: int) -> Literal:
        """Return the literal that a pass is done in a stretch up to ``number``."""
        if number < self.first.get(index, NEVER):
            return 0
        if number >= self.count - 1 and self.whole:
            return 1
        return self.by[index, min(number, self.count - 1)]

    def within(self, index: int, number: int) -> Any:
        """Return the 0-1 expression that a pass is done in this very stretch."""
        return self.done_by(index, number) - self.done_by(index, number - 1)

    def _first_stretches(self) -> dict[int, int]:
        """Return the first stretch of each pass, the gates of stretches followed."""
        first: dict[int, int] = {}
        incoming: dict[int, list[Reach]] = defaultdict(list)
        for link in self.links:
            incoming[link.after].append(link)
        for index in self.passes:
            found = self.board.first_start(index, self.board.head[index])
            number = self.count if found is None else found[0]
            for link in incoming[index]:
                before = first.get(link.before, NEVER)
                number = max(number, link.from_on(before) if before < self.count else NEVER)
            first[index] = number
        return first

    def _no_pass_without_room(self) -> None:
        model = self.model
        for index in self.passes:
            first = self.first[index]
            last = self.count - (1 if self.whole else 0)
            for number in range(first, last):
                self.by[index, number] = model.new_bool_var("")
            for number in range(first + 1, last):
                model.add_implication(self.by[index, number - 1], self.by[index, number])
            slots = self.board.slots(index)
            least = self.board.least(index)
            for number in range(first, self.count):
                if all(slot.end - slot.start < least for slot in slots[number]):
                    self._same_answer(self.done_by(index, number), self.done_by(index, number - 1))

    def _same_answer(self, literal: Literal, other: Literal) -> None:
        self.model.add(literal == other)

    def _clause(self, *literals: Literal) -> None:
        """Add a clause of literals and constants."""
        if any(isinstance(literal, int) and literal == 1 for literal in literals):
            return
        kept = [literal for literal in literals if not isinstance(literal, int)]
        if not kept:
            kept = [self.model.new_constant(0)]
        self.model.add_bool_or(kept)

    def _no_gate_broken(self) -> None:
        known = set(self.passes)
        for link in self.links:
            if link.after not in known:
                continue
            if link.before not in known:
                self._not_on_this_board(link.after)
                continue
            soonest = NEVER
            for number in reversed(range(self.first[link.before], self.count)):
                soonest = min(soonest, link.first(number))
                self._no_follower_too_soon(link, number, soonest)
                self._no_follower_between_windows(link, number)
        if not self.whole:
            self._no_work_before_what_is_left(known)

    def _no_work_before_what_is_left(self, known: set[int]) -> None:
        """What comes after a pass that is left for later is left for later, too."""
        for link in self.links:
            if link.after in known and link.before in known:
                end = self.count - 1
                self._clause(_no(self.done_by(link.after, end)), self.done_by(link.before, end))

    def _not_on_this_board(self, index: int) -> None:
        for number in range(self.first[index], self.count):
            self._clause(_no(self.done_by(index, number)))

    def _no_follower_too_soon(self, link: Reach, number: int, soonest: int) -> None:
        """Not before ``soonest``, if the earlier pass is in ``number`` or later."""
        if soonest < NEVER:
            self._clause(
                self.done_by(link.before, number - 1), _no(self.done_by(link.after, soonest - 1))
            )

    def _no_follower_between_windows(self, link: Reach, number: int) -> None:
        spans = link.spans[number]
        if spans is None:
            return
        before, after = link.before, link.after
        not_here = (_no(self.done_by(before, number)), self.done_by(before, number - 1))
        if not spans:
            if self.whole:
                self._clause(*not_here)
            else:  # nothing within the board: it is done later
                self._clause(*not_here, _no(self.done_by(after, self.count - 1)))
            return
        self._clause(*not_here, _no(self.done_by(after, spans[0][0] - 1)))
        for (_, end), (begin, _) in pairwise(spans):
            if begin > end + 1:
                self._clause(
                    *not_here, self.done_by(after, end), _no(self.done_by(after, begin - 1))
                )
        final = spans[-1][1]
        if final < self.count - 1:
            self._clause(*not_here, self.done_by(after, final))

    def _no_overfull_stretch(self) -> None:
        """The minutes of a stretch hold its passes and their least set-ups."""
        self.setups: list[Any] = []
        by_stretch: dict[int, list[int]] = defaultdict(list)
        for index in self.passes:
            for number in range(self.first[index], self.count):
                by_stretch[number].append(index)
        for number in range(self.count):
            self._no_overfull(number, by_stretch[number])

    def _no_overfull(self, number: int, passes: list[int]) -> None:
        board, model = self.board, self.model
        length = board.ends[number] - board.starts[number]
        setup = self._colour_loaded_where_sprayed(
            number, [i for i in passes if board.problem.activities[i].pass_.load]
        )
        self.setups.append(setup)
        minutes = sum(board.least(index) * self.within(index, number) for index in passes)
        if passes:
            model.add(minutes + setup <= length)

    def _colour_loaded_where_sprayed(self, number: int, sprayed: list[int]) -> Any:
        """Return the least set-up minutes of a stretch; tie them to the colours used."""
        held = self.board.held if number == 0 else NOTHING_HELD
        washing = self.board.washing if number == 0 else 0
        if not sprayed:
            return washing
        activities = self.board.problem.activities
        loads = [activities[index].pass_.load for index in sprayed]
        setup, used = setup_minutes(
            self.model, self.board.problem, self.costs, loads, held, washing
        )
        for index, load in zip(sprayed, loads, strict=True):
            self._clause(
                _no(self.done_by(index, number)), self.done_by(index, number - 1), used[load]
            )
        return setup

    @cached_property
    def costs(self) -> SetupCosts:
        """Least minutes of set-ups with the airbrushes there are."""
        return setup_costs(self.board)

    def cut(self, cuts: Iterable[Cut]) -> None:
        """Forbid sets of passes in the stretches that cannot hold them."""
        known = set(self.passes)
        for cut in cuts:
            if not cut.passes <= known:
                continue
            for number in cut.numbers:
                if number < self.count:
                    together = sum(self.within(index, number) for index in cut.passes)
                    self.model.add(together <= len(cut.passes) - 1)

    def read(self, solver: cp_model.CpSolver) -> dict[int, int]:
        """Return the stretch of each pass that is done within the board."""
        found = {}
        for index in self.passes:
            for number in range(self.first[index], self.count):
                literal = self.done_by(index, number)
                if literal == 1 if isinstance(literal, int) else solver.boolean_value(literal):
                    found[index] = number
                    break
        return found

    def hint(self, numbers: dict[int, int]) -> None:
        """Start from these stretches."""
        self.model.clear_hints()  # type: ignore[no-untyped-call]
        for (index, number), literal in self.by.items():
            self.model.add_hint(literal, numbers.get(index, NEVER) <= number)


@dataclass(frozen=True)
class SetupCosts:
    """Least set-up minutes: the first load with its cleaning, a change, one between families."""

    first: int
    same: int
    other: int


def setup_costs(board: Board) -> SetupCosts:
    """Return the least minutes that the airbrushes of a board's problem allow; 0 without any."""
    gear = board.problem.book.gear.airbrushes
    if not gear:  # then nothing is sprayed, either
        return SetupCosts(0, 0, 0)
    first = min(airbrush.load_minutes + airbrush.clean_minutes for airbrush in gear)
    same = min(first, *(airbrush.change_same_family for airbrush in gear))
    other = min(first, *(airbrush.change_other_family for airbrush in gear))
    if len(gear) > 1:  # another airbrush may hold the other colour
        other = min(other, same)
    return SetupCosts(first, min(same, first), max(min(other, first), min(same, first)))


def setup_minutes(
    model: cp_model.CpModel,
    problem: Problem,
    costs: SetupCosts,
    loads: Iterable[str],
    held: frozenset[str] = NOTHING_HELD,
    washing: int = 0,
) -> tuple[Any, dict[str, Literal]]:
    """Return the least set-up minutes of a stretch, and the literal of each colour used in it.

    What cups ``held`` at its beginning needs no load; their cleaning takes
    ``washing`` minutes, whatever is sprayed.
    """
    used: dict[str, Literal] = {}
    families: dict[str, Literal] = {}
    any_load = model.new_bool_var("")
    for load in dict.fromkeys(loads):
        used[load] = model.new_bool_var("")
        model.add_implication(used[load], any_load)
        family = problem.coatings[load].family.value
        if family not in families:
            families[family] = model.new_bool_var("")
        model.add_implication(used[load], families[family])
    if held:
        known = {problem.coatings[load].family.value for load in held}
        new = sum(literal for load, literal in used.items() if load not in held)
        kinds = sum(literal for family, literal in families.items() if family not in known)
        return washing + costs.same * new + (costs.other - costs.same) * kinds, used
    minutes = (
        costs.first * any_load
        + costs.same * (sum(used.values()) - any_load)
        + (costs.other - costs.same) * (sum(families.values()) - any_load)
    )
    return minutes, used


def solver_of(work: WorkBudget, *, linear: bool = True, presolve: bool = True) -> cp_model.CpSolver:
    """Return a solver that gives the same answer on every machine.

    Small models of clauses are solved twice as fast without ``linear`` relaxation,
    and, short of the optimum, three times as far in the same time without ``presolve``.
    """
    solver = cp_model.CpSolver()
    parameters = solver.parameters
    parameters.num_workers = work.workers
    parameters.random_seed = work.seed
    parameters.max_deterministic_time = work.amount
    parameters.symmetry_level = 0
    parameters.cp_model_probing_level = 0
    if not linear:
        parameters.linearization_level = 0
    parameters.cp_model_presolve = presolve
    if work.workers > 1:
        parameters.interleave_search = True
    return solver


def _no(literal: Literal) -> Literal:
    return 1 - literal if isinstance(literal, int) else literal.negated()
