"""The order of the passes of one stretch that loads the airbrush least.

Unlike `exact_stretch`, a colour may be loaded as often as it likes: the cup
stands no longer than its idle limit, and what opens later than that has to be
waited for with a clean one.  Which pass is done in which stretch stays as it is.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from ortools.sat.python import cp_model

from planner.bench import Stretch
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.exact_stretch import Exact
from planner.schedule.optimise.master import WorkBudget, solver_of
from planner.schedule.optimise.stretch_sequencing import enter, in_order, sequence
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.placing import put_away
from planner.values.moment import Interval
from planner.values.plan import BenchKind, BenchWork

FILLINGS = (BenchKind.LOAD, BenchKind.CHANGE)
_Timed = tuple[int, int]  # a pass, and the minute before which it does not begin


class StretchLoads(Exact):
    """A stretch with one airbrush, clean at its beginning, loaded as often as it takes.

    Attributes
    ----------
    minutes
        Of loading, changing and cleaning.
    filled
        Of each sprayed pass, the literal that the cup is filled for it.
    """

    def __init__(
        self,
        model: cp_model.CpModel,
        board: Board,
        given: Sequence[int],
        here: PartialSchedule,
    ) -> None:
        self.minutes: Any = 0
        self.filled: dict[int, Any] = {}
        self._filling: dict[int, Any] = {}  # when that begins, and how long it takes
        self._sizes: dict[int, Any] = {}
        self._washed: dict[int, Any] = {}  # that the cup is cleaned after it, and when
        self._cleaning: dict[int, Any] = {}
        super().__init__(model, board, dict.fromkeys(given, model.new_constant(1)), here)

    def _colour_loaded_where_sprayed(self) -> None:
        """Let each sprayed pass follow another with what is in the cup, changed, or anew."""
        problem, model = self.board.problem, self.model
        sprayed = [i for i in self.starts if problem.activities[i].pass_.load]
        if not sprayed:
            return
        (self.brush,) = problem.book.gear.airbrushes
        for index in sprayed:
            self._filled_before(index)
            self._washed_after(index)
        arcs: list[tuple[int, int, Any]] = []
        for at, index in enumerate(sprayed, 1):
            first, final = model.new_bool_var(""), model.new_bool_var("")
            arcs += [(0, at, first), (at, 0, final)]
            model.add_implication(first, self.filled[index])
            model.add(self._sizes[index] == self.brush.load_minutes).only_enforce_if(first)
            model.add_implication(final, self._washed[index])
            for other_at, other in enumerate(sprayed, 1):
                if other != index:
                    arcs.append((at, other_at, self._goes_on(index, other)))
                    arcs.append((at, other_at, self._begins_anew(index, other)))
        model.add_circuit(arcs)
        washing = self.brush.clean_minutes * sum(self._washed.values())
        self.minutes = sum(self._sizes.values()) + washing

    def _filled_before(self, index: int) -> None:
        """Let the cup be filled for a pass, within its idle limit."""
        model, brush, start = self.model, self.brush, self.starts[index]
        costs = [0, brush.load_minutes, brush.change_same_family, brush.change_other_family]
        size = model.new_int_var_from_domain(cp_model.Domain.from_values(costs), "")
        begin = model.new_int_var(self.begin, self.end, "")
        end = model.new_int_var(self.begin, self.end, "")
        self.filled[index] = literal = model.new_bool_var("")
        self.hands.append(model.new_optional_interval_var(begin, size, end, literal, ""))
        model.add(end <= start).only_enforce_if(literal)
        model.add(start - end <= brush.idle_limit_minutes).only_enforce_if(literal)
        model.add(size == 0).only_enforce_if(literal.negated())
        self._sizes[index], self._filling[index] = size, begin

    def _washed_after(self, index: int) -> None:
        """Let the cup be cleaned after a pass, within its idle limit."""
        model, minutes = self.model, self.brush.clean_minutes
        literal = model.new_bool_var("")
        begin = model.new_int_var(self.begin, self.end - minutes, "")
        self.hands.append(model.new_optional_fixed_size_interval_var(begin, minutes, literal, ""))
        idle = begin - self._done(index)
        model.add(idle >= 0).only_enforce_if(literal)
        model.add(idle <= self.brush.idle_limit_minutes).only_enforce_if(literal)
        self._washed[index], self._cleaning[index] = literal, begin

    def _goes_on(self, index: int, other: int) -> Any:
        """Return the literal that a pass is sprayed next, with the same cup or a changed one."""
        model, change = self.model, self._change(index, other)
        follows = model.new_bool_var("")
        begin = self.starts[other] if change is None else self._filling[other]
        idle = begin - self._done(index)
        model.add(idle >= 0).only_enforce_if(follows)
        model.add(idle <= self.brush.idle_limit_minutes).only_enforce_if(follows)
        model.add_implication(follows, self._washed[index].negated())
        if change is None:
            model.add_implication(follows, self.filled[other].negated())
        else:
            model.add_implication(follows, self.filled[other])
            model.add(self._sizes[other] == change).only_enforce_if(follows)
        return follows

    def _begins_anew(self, index: int, other: int) -> Any:
        """Return the literal that a pass is sprayed next, the cup cleaned and loaded between."""
        model, anew = self.model, self.model.new_bool_var("")
        model.add_implication(anew, self._washed[index])
        model.add_implication(anew, self.filled[other])
        model.add(self._sizes[other] == self.brush.load_minutes).only_enforce_if(anew)
        clean = self._cleaning[index] + self.brush.clean_minutes
        model.add(self._filling[other] >= clean).only_enforce_if(anew)
        return anew

    def begins(self, solver: cp_model.CpSolver, index: int) -> int:
        """Return when a pass begins, or the filling for it."""
        filled = self.filled.get(index)
        own = filled is not None and solver.boolean_value(filled)
        return int(solver.value(self._filling[index] if own else self.starts[index]))

    def _done(self, index: int) -> Any:
        return self.starts[index] + self.board.problem.activities[index].pass_.minutes

    def _change(self, index: int, other: int) -> int | None:
        """Return the minutes of the change from one pass to another, None for the same colour."""
        problem = self.board.problem
        load, then = (problem.activities[i].pass_.load for i in (index, other))
        if load == then:
            return None
        same = problem.coatings[load].family is problem.coatings[then].family
        return self.brush.change_same_family if same else self.brush.change_other_family


def load_less(
    board: Board,
    pieces: Mapping[int, Sequence[Interval]],
    bench: Sequence[BenchWork],
    work: WorkBudget,
    take: Callable[[PartialSchedule], bool],
) -> bool:
    """Look at each stretch in which a colour is filled twice; tell whether anything was taken.

    Parameters
    ----------
    pieces, bench
        When each pass is worked on in the plan, and its loads.
    take
        Takes a table if it is better, and tells whether it was.
    """
    if len(board.problem.book.gear.airbrushes) != 1 or board.held:
        return False
    sets: dict[int, list[_Timed]] = defaultdict(list)
    for index in sorted((i for i in board.free if i in pieces), key=lambda i: pieces[i][0].start):
        sets[board.number_at(pieces[index][-1].start)].append((index, 0))
    if max(sets, default=0) >= len(board.stretches):
        return False  # a plan may use bench time that the board does not reach
    better = False
    for number in sorted(filled_twice(board, bench) & sets.keys()):
        if work.stopped():
            break
        before = _replayed(board, {n: given for n, given in sets.items() if n < number})
        given = [index for index, _ in sets[number]]
        if before is None:
            break
        other = _least_loaded(enter(before, board.stretches[number]), number, board, given, work)
        if other is None:
            continue
        table = _replayed(board, {**sets, number: other})
        if table is not None and take(table):
            sets[number], better = other, True
    return better


def _replayed(board: Board, sets: Mapping[int, Sequence[_Timed]]) -> PartialSchedule | None:
    """Return the table with the passes of each stretch one after another, or None."""
    table = board.facts.clone()
    for number in sorted(sets):
        stretch = board.stretches[number]
        here = enter(table, stretch)
        found = in_order(here, stretch, *zip(*sets[number], strict=True))
        if found is None:
            given = [index for index, _ in sets[number]]
            found = sequence(here, stretch, given, board.problem.tails)
        if found is None:
            return None
        put_away(found)
        table = found
    put_away(table)
    return table


def filled_twice(board: Board, bench: Sequence[BenchWork]) -> set[int]:
    """Return the stretches in which a colour is filled more than once."""
    fillings: dict[tuple[int, str], int] = defaultdict(int)
    for one in bench:
        if one.kind in FILLINGS:
            fillings[board.number_at(one.interval.start), one.coating] += 1
    return {number for (number, _), count in fillings.items() if count > 1}


def _least_loaded(
    here: PartialSchedule, number: int, board: Board, given: list[int], work: WorkBudget
) -> list[_Timed] | None:
    """Return the passes of a stretch, and when each begins, that load least; None if unknown.

    Of the orders that load least it is one of those in which all ends soonest.
    """
    exact = exact_loads(here, board.stretches[number], given)
    if exact is None:
        return None
    solver = solver_of(work, linear=False)
    status: Any = solver.solve(exact.model)
    if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return None
    exact.model.add(exact.minutes <= round(solver.objective_value))
    for start in exact.starts.values():
        exact.model.add_hint(start, solver.value(start))
    exact.model.minimize(sum(exact.starts.values()))
    again = solver_of(work, linear=False)
    status = again.solve(exact.model)
    if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        solver = again
    return [(index, exact.begins(solver, index)) for index in exact.order(solver)]


def exact_loads(here: PartialSchedule, stretch: Stretch, given: list[int]) -> StretchLoads | None:
    """Return the model of a stretch that asks for its least set-up, None if not all fits."""
    after = here.problem.calendar.next_stretch(stretch.interval.end)
    board = Board(here.problem, here, after.interval.start if after else stretch.interval.end)
    exact = StretchLoads(cp_model.CpModel(), board, given, here)
    if len(exact.starts) < len(given):
        return None
    exact.model.minimize(exact.minutes)
    return exact
