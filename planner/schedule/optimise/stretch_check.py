"""Whether some passes can all be done in one stretch, whatever went before.

Everything that depends on the plan around the stretch is left out: what a
pass waits for from outside it is taken as long ready.  So "no" holds in
every plan and may cut the set off for good.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from ortools.sat.python import cp_model

from planner.graph.gates import PassGate
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.master import NOTHING_HELD, Cut, WorkBudget, setup_costs, solver_of
from planner.schedule.optimise.unit_conflicts import keep_apart, shortest_dry
from planner.schedule.partial_schedule import FOREVER
from planner.values.coating import Window
from planner.values.step import Bound

CHECK_WORK = 0.5  # deterministic seconds for one set


def impossible(board: Board, number: int, passes: Iterable[int], work: WorkBudget) -> Cut | None:
    """Return a cut if a set cannot be done in a stretch: a least set that cannot, and where."""
    chosen = sorted(passes)
    if possible(board, number, chosen, work) is not False:
        return None
    for index in list(chosen):
        fewer = [other for other in chosen if other != index]
        if possible(board, number, fewer, work) is False:
            chosen = fewer
    numbers = tuple(
        other
        for other in range(len(board.stretches))
        if other == number or _alike(board, chosen, number, other)
    )
    return Cut(frozenset(chosen), numbers)


def possible(
    board: Board,
    number: int,
    passes: list[int],
    work: WorkBudget,
    latest: Mapping[int, int] | None = None,
) -> bool | None:
    """Tell whether a set can be done in a stretch, seen by itself; None where that stays open.

    ``latest`` are minutes by which passes must have ended.
    """
    model = cp_model.CpModel()
    problem = board.problem
    begin, end = board.starts[number], board.ends[number]
    starts: dict[int, Any] = {}
    hands = []
    for index in passes:
        least = board.least(index)
        last = FOREVER if latest is None else latest[index] - board.lasts(index)
        spans = [
            [slot.start, min(slot.end - least, last)]
            for slot in board.slots(index)[number]
            if slot.start <= min(slot.end - least, last)
        ]
        if not spans:
            return False
        starts[index] = model.new_int_var_from_domain(cp_model.Domain.from_intervals(spans), "")
        if not problem.activities[index].pass_.load:
            hands.append(model.new_fixed_size_interval_var(starts[index], least, ""))
    no_gate_broken(model, board, number, starts)
    keep_apart(
        model, board, starts, shortest_dry(board, board.starts[number], board.ends[number], 1)
    )
    held = board.held if number == 0 else NOTHING_HELD
    _colour_loaded_where_sprayed(model, board, starts, hands, begin, end, held)
    model.add_no_overlap(hands)
    solver = solver_of(WorkBudget(CHECK_WORK, seed=work.seed))
    status = solver.solve(model)
    if status == cp_model.INFEASIBLE:
        return False
    return True if status in (cp_model.OPTIMAL, cp_model.FEASIBLE) else None


def no_gate_broken(model: Any, board: Board, number: int, starts: dict[int, Any]) -> None:
    """Hold the gates between the passes, at their shortest."""
    problem = board.problem
    for gate, (before, after) in enumerate(problem.ends):
        if before not in starts or after not in starts:
            continue
        own = problem.gates[gate]
        size = board.lasts(after) if own.closing is Bound.END else 1
        gap = starts[after] - starts[before]
        options = []
        for window in own.windows:
            least, most = _gap_allowed(board, gate, window, number, before)
            if least > board.ends[number] - board.starts[number]:
                continue
            literal = model.new_bool_var("")
            options.append(literal)
            model.add(gap >= least).only_enforce_if(literal)
            if most is not None:
                model.add(gap <= most - size).only_enforce_if(literal)
        model.add_bool_or(options)
    for after, start in starts.items():
        for before in problem.activities[after].before:
            if before in starts:
                model.add(start - starts[before] >= board.lasts(before))


def _gap_allowed(
    board: Board, gate: int, window: Window, number: int, before: int
) -> tuple[int, int | None]:
    """Return the least gap between two starts, and what the later must end or start before."""
    minutes = board.lasts(before)
    opens, closes = window.opens, window.closes
    least = minutes
    if opens is not None and not (opens.of_film and board.problem.gates[gate].place):
        least += (opens.minutes or 0) + window.preparation_minutes
    elif opens is not None:
        least += board.shortest_lag(gate, window, number)
    if closes is None or board.problem.may_melt(gate):
        return least, None
    if closes.of_film and board.problem.gates[gate].place:
        return least, None
    return least, closes.minutes


def _colour_loaded_where_sprayed(
    model: Any,
    board: Board,
    starts: dict[int, Any],
    hands: list[Any],
    begin: int,
    end: int,
    held: frozenset[str],
) -> None:
    """Put the sprayed passes into a circuit of set-ups, the cleaning after the last."""
    problem = board.problem
    sprayed = [index for index in starts if problem.activities[index].pass_.load]
    if not sprayed:
        return
    costs, gear = setup_costs(board), problem.book.gear.airbrushes
    load = min(airbrush.load_minutes for airbrush in gear)
    clean = min(airbrush.clean_minutes for airbrush in gear)
    several = len(gear) > 1
    arcs = []
    setups: dict[int, list[Any]] = {index: [] for index in sprayed}
    for at, index in enumerate(sprayed, 1):
        first, last = model.new_bool_var(""), model.new_bool_var("")
        arcs += [(0, at, first), (at, 0, last)]
        own = min(load, costs.same) if held else load
        setups[index].append((0 if problem.activities[index].pass_.load in held else own) * first)
        for other_at, other in enumerate(sprayed, 1):
            if other == index:
                continue
            follows = model.new_bool_var("")
            arcs.append((other_at, at, follows))
            minutes = _change(board, other, index, costs.same, costs.other)
            setups[index].append((0 if several else minutes) * follows)
            least = board.least(other) + (0 if several else minutes)
            model.add(starts[index] >= starts[other] + least).only_enforce_if(follows)
    model.add_circuit(arcs)
    ends = []
    for index in sprayed:
        setup = model.new_int_var(0, 240, "")
        model.add(setup == sum(setups[index]))
        minutes = board.least(index)
        size = model.new_int_var(minutes, minutes + 240, "")
        model.add(size == setup + minutes)
        low = model.new_int_var(begin, end, "")
        hands.append(model.new_interval_var(low, size, starts[index] + minutes, ""))
        ends.append(starts[index] + minutes)
    wash = model.new_int_var(begin, end - clean, "")
    for one in ends:
        model.add(wash >= one)
    hands.append(model.new_fixed_size_interval_var(wash, clean, ""))


def _change(board: Board, before: int, after: int, same: int, other: int) -> int:
    problem = board.problem
    old, new = (problem.activities[index].pass_.load for index in (before, after))
    if old == new:
        return 0
    alike = problem.coatings[old].family is problem.coatings[new].family
    return same if alike else other


def _in_film_time(gate: PassGate) -> bool:
    """Tell whether a gate's waits depend on when the film was laid."""
    return bool(gate.place) and any(
        mark is not None and mark.of_film
        for window in gate.windows
        for mark in (window.opens, window.closes)
    )


def _alike(board: Board, passes: list[int], number: int, other: int) -> bool:
    """Tell whether a stretch leaves these passes no more than another does, hour by hour."""
    problem = board.problem
    if board.ends[other] - board.starts[other] > board.ends[number] - board.starts[number]:
        return False
    if other == 0 and board.held:
        return False
    inside = set(passes)
    for gate, (before, after) in enumerate(problem.ends):
        if before in inside and after in inside and _in_film_time(problem.gates[gate]):
            return False
    for index in passes:
        here, there = (
            [(slot.start - board.starts[at], slot.end - board.starts[at]) for slot in slots]
            for at, slots in ((n, board.slots(index)[n]) for n in (number, other))
        )
        if not all(any(a <= c and d <= b for a, b in here) for c, d in there):
            return False
    return True
