"""Once the finish is proven: the fewest stretches, and the least set-ups with them."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from typing import Any

from ortools.sat.python import cp_model

from planner.schedule.optimise.board import Board
from planner.schedule.optimise.lower_bounds import dry_after
from planner.schedule.optimise.master import Master, WorkBudget, solver_of
from planner.schedule.optimise.stretch_check import impossible
from planner.schedule.optimise.stretch_reachability import Reach
from planner.schedule.optimise.stretch_sequencing import enter, sequence
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.placing import put_away

ROUNDS = 12  # times that sets are cut off


@dataclass(frozen=True)
class StretchesProven:
    """Least stretches and set-up minutes with the last stretch kept, None where not proven.

    ``numbers`` shares the passes out so, as far as stretches show.
    """

    stretches: int | None
    setup: int | None
    numbers: dict[int, int]


def least_rest(
    board: Board, links: list[Reach], goal: int, finish: int, work: WorkBudget
) -> StretchesProven:
    """Return what a master proves of the levels after the finish.

    Parameters
    ----------
    goal, finish
        Number of the last stretch, and the minute by which all is done and
        dry to handle.
    """
    small = Board(board.problem, board.facts, board.ends[goal] - 1)
    master = Master(small, whole=True, links=[link.up_to(goal) for link in links], goal=goal)
    model = master.model
    for index, latest in latest_ends(small, finish).items():
        done_by_then(master, index, latest)
    used = [model.new_bool_var("") for _ in range(master.count)]
    for number, literal in enumerate(used):
        for index in master.passes:
            if master.first[index] <= number:
                model.add(master.within(index, number) <= literal)
    if small.held and used:
        model.add(used[0] == 1)  # a cup is cleaned in it, at least
    stretches = sum(used)
    model.minimize(stretches)
    least, numbers = _solve(master, board, work)
    if least is None:
        return StretchesProven(None, None, numbers)
    model.add(stretches <= least)
    master.hint(numbers)
    model.minimize(sum(master.setups))
    setup, found = _solve(master, board, work)
    return StretchesProven(least, setup, found or numbers)


def latest_ends(board: Board, finish: int) -> dict[int, int]:
    """Return the last minute at which each pass may end for all to be done by ``finish``."""
    problem, known = board.problem, set(board.free)
    found: dict[int, int] = {}
    for index in reversed(board.free):
        limits: list[tuple[Callable[[int], int], int]] = [(partial(_dry, board, index), finish)]
        limits += [
            (partial(board.earliest_after, number), _last_start(board, after, found[after]))
            for number in problem.gates_from.get(index, ())
            if (after := problem.ends[number][1]) in known
        ]
        limits += [
            (_same, _last_start(board, after, found[after]))
            for after in problem.after.get(index, ())
            if after in known
        ]
        low = board.head[index] + board.lasts(index) - 1
        found[index] = min(_last_true(low, finish, ready, limit) for ready, limit in limits)
    return found


def _dry(board: Board, index: int, end: int) -> int:
    return end + dry_after(board, index, end)


def _same(end: int) -> int:
    return end


def _last_true(low: int, high: int, ready: Callable[[int], int], limit: int) -> int:
    """Return the last minute in (low, high] for which ``ready`` is in time; ``low`` if none is."""
    while low < high:
        middle = (low + high + 1) // 2
        if ready(middle) <= limit:
            low = middle
        else:
            high = middle - 1
    return low


def _last_start(board: Board, index: int, latest: int) -> int:
    """Return the last start of a pass that ends by ``latest`` within its hours."""
    least, lasts, best = board.least(index), board.lasts(index), 0
    for slots in board.slots(index):
        for slot in slots:
            start = min(slot.end - least, latest - lasts)
            if start >= slot.start:
                best = max(best, start)
    return best


def done_by_then(master: Master, index: int, latest: int) -> None:
    """Keep a pass out of stretches in which it would end after ``latest``."""
    if index not in master.first:
        return
    board, lasts = master.board, master.board.lasts(index)
    for number in range(master.first[index], master.count):
        starts = [max(slot.start, board.head[index]) for slot in board.slots(index)[number]]
        if not any(start + lasts <= latest for start in starts):
            master.model.add(master.within(index, number) == 0)


def as_shared_out(
    facts: PartialSchedule, board: Board, numbers: dict[int, int]
) -> PartialSchedule | None:
    """Return the table with each pass in the stretch it was given, or None if one does not work."""
    table, tails = facts.clone(), board.problem.tails
    sets: dict[int, list[int]] = defaultdict(list)
    for index, number in numbers.items():
        sets[number].append(index)
    for number in sorted(sets):
        stretch = board.stretches[number]
        done = sequence(enter(table, stretch), stretch, sets[number], tails)
        if done is None:
            return None
        put_away(done)
        table = done
    put_away(table)  # also where nothing was left to do but that
    return table


def _solve(master: Master, board: Board, work: WorkBudget) -> tuple[int | None, dict[int, int]]:
    """Return the proven least of the objective, or None, and how it is reached.

    What no single stretch can hold is cut off, some times over.
    """
    numbers: dict[int, int] = {}
    for _ in range(ROUNDS):
        solver = solver_of(work)
        status: Any = solver.solve(master.model)
        if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            return None, numbers
        numbers = master.read(solver)
        sets: dict[int, list[int]] = defaultdict(list)
        for index, number in numbers.items():
            sets[number].append(index)
        cuts = [
            cut
            for number, passes in sorted(sets.items())
            if (cut := impossible(board, number, passes, work)) is not None
        ]
        if not cuts:
            return round(solver.objective_value) if status == cp_model.OPTIMAL else None, numbers
        least = round(solver.best_objective_bound)
        master.cut(cuts)
    return least, numbers
