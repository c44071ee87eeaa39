"""The order of the passes of each stretch in which all ends soonest, hands resting where need be.

Rules and sweeps never let hands rest while something can be done; yet a pass
that dries long may be worth waiting for.  Which pass is done in which stretch
stays as it is.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from ortools.sat.python import cp_model

from planner.bench import Stretch
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.exact_stretch import Exact
from planner.schedule.optimise.lower_bounds import dry_after
from planner.schedule.optimise.master import WorkBudget, solver_of
from planner.schedule.optimise.stretch_sequencing import closed, enter, in_order, sequence
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.placing import put_away
from planner.values.moment import Interval

LATE = 1000  # what a minute after the target weighs beside a minute of the finish
FARTHEST = 10**7  # minutes after the beginning of a stretch that a finish may lie


def soonest(
    board: Board,
    pieces: Mapping[int, Sequence[Interval]],
    since: int,
    work: WorkBudget,
    stopped: Callable[[], bool],
) -> PartialSchedule | None:
    """Return the table with each pass in its stretch, in the order that ends soonest.

    Parameters
    ----------
    pieces
        When each pass is worked on in the plan.
    since
        The stretch from which on the order may change.

    Returns
    -------
    None where a stretch cannot even be done as it was: a pass is split, for one.
    """
    sets: dict[int, list[int]] = defaultdict(list)
    for index in sorted((i for i in board.free if i in pieces), key=lambda i: pieces[i][0].start):
        sets[board.number_at(pieces[index][-1].start)].append(index)
    return in_stretches(board, sets, since, work, stopped)


def in_stretches(
    board: Board,
    sets: Mapping[int, Sequence[int]],
    since: int,
    work: WorkBudget,
    stopped: Callable[[], bool],
) -> PartialSchedule | None:
    """Return the table with the passes of each stretch in the order that ends soonest, or None.

    None is also returned once ``stopped`` says so, and for what the board does not reach.
    They are given in an order that is taken where none is better, or before ``since``.
    """
    if max(sets, default=0) >= len(board.stretches):
        return None  # a plan may use bench time that the board does not reach
    rests, tails = _rests(board), board.problem.tails
    table = board.facts.clone()
    for number in sorted(sets):
        stretch, given = board.stretches[number], list(sets[number])
        here = enter(table, stretch)
        found = in_order(here, stretch, given) or sequence(here, stretch, given, tails)
        if number >= since and len(given) > 1:
            if stopped():
                return None
            other = _ordered(here, stretch, given, rests, work)
            if other is not None and (found is None or _worth(other, rests) < _worth(found, rests)):
                found = other
        if found is None:
            return None
        put_away(found)
        table = found
    put_away(table)
    return table


def _rests(board: Board) -> list[int]:
    """Return the least minutes from the end of each pass to the end of all that waits for it.

    Films dry as if laid now, which serves for comparing orders.
    """
    problem = board.problem
    rests = [0] * len(problem.activities)
    for index in problem.frame.backwards:
        rest = dry_after(board, index, problem.now)
        for gate in problem.gates_from.get(index, ()):
            after = problem.ends[gate][1]
            lag = board.earliest_after(gate, problem.now) - problem.now
            rest = max(rest, lag + problem.activities[after].pass_.minutes + rests[after])
        for after in problem.after.get(index, ()):
            rest = max(rest, problem.activities[after].pass_.minutes + rests[after])
        rests[index] = min(rest, FARTHEST)
    return rests


def _worth(table: PartialSchedule, rests: list[int]) -> tuple[int, int]:
    """Return how late, by weight, and when all is over that what is done leads to."""
    problem = table.problem
    ends: dict[int | None, int] = {}
    for index, end in table.end.items():
        own = problem.due_of[index]
        ends[own] = max(ends.get(own, 0), end + rests[index])
    late = 0
    for number, end in ends.items():
        if number is not None:
            due = problem.dues[number]
            late += due.weight * max(0, end - due.at)
    return late, max(ends.values(), default=0)


def _ordered(
    here: PartialSchedule, stretch: Stretch, given: list[int], rests: list[int], work: WorkBudget
) -> PartialSchedule | None:
    """Return the table with a stretch done in the best order that a solver finds, or None."""
    after = here.problem.calendar.next_stretch(stretch.interval.end)
    board = Board(here.problem, here, after.interval.start if after else stretch.interval.end)
    model = cp_model.CpModel()
    sure = model.new_constant(1)
    exact = Exact(model, board, dict.fromkeys(given, sure), here)
    if len(exact.starts) < len(given):
        return None
    model.minimize(_end_of_all(exact, given, rests))
    solver = solver_of(work, linear=False)
    status: Any = solver.solve(model)
    if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return None
    found = in_order(here, stretch, exact.order(solver))
    return found if found is not None and closed(found, stretch) else None


def _end_of_all(exact: Exact, given: list[int], rests: list[int]) -> Any:
    """Return what is to be as small as can be: lateness by weight, then the end of all."""
    model, problem = exact.model, exact.board.problem
    begin = exact.begin
    ends: dict[int | None, list[Any]] = defaultdict(list)
    for index in given:
        minutes = problem.activities[index].pass_.minutes
        ends[problem.due_of[index]].append(exact.starts[index] + minutes + rests[index])
    whole = model.new_int_var(begin, begin + FARTHEST, "")
    terms: list[Any] = [whole]
    for number, some in ends.items():
        for end in some:
            model.add(whole >= end)
        if number is not None:
            due = problem.dues[number]
            late = model.new_int_var(0, FARTHEST, "")
            for end in some:
                model.add(late >= end - due.at)
            terms.append(LATE * due.weight * late)
    return sum(terms)
