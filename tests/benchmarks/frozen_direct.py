"""Baseline, never to be changed: CP-SAT alone on the direct model.

Starts in minutes, closed time as fixed intervals, one pair of hands, a
circuit over all sprayed tasks for the set-ups; hinted by nothing.  Drying
places are not counted, which only helps it.
"""

from __future__ import annotations

from bisect import bisect_right
from itertools import pairwise

from frozen_greedy import Found
from ortools.sat.python import cp_model
from plain_tasks import Batch, Task


def direct(batch: Batch, seconds: float, workers: int) -> Found | None:
    """Return what the direct model finds in some time, or None."""
    model = cp_model.CpModel()
    begin, end = batch.evenings[0][0], batch.evenings[-1][1]
    hands = [
        model.new_fixed_size_interval_var(a[1], b[0] - a[1], "")
        for a, b in pairwise(batch.evenings)
    ]
    starts: dict[tuple[int, int], cp_model.IntVar] = {}
    sprays: list[tuple[Task, cp_model.IntVar]] = []
    for vehicle, chain in enumerate(batch.chains):
        for at, task in enumerate(chain):
            start = model.new_int_var(begin, end - task.minutes, "")
            starts[vehicle, at] = start
            if at:
                _wait(model, task, starts[vehicle, at - 1], chain[at - 1].minutes, start)
            if task.colour:
                sprays.append((task, start))
            else:
                hands.append(model.new_fixed_size_interval_var(start, task.minutes, ""))
    _circuit(model, batch, sprays, hands, begin, end)
    model.add_no_overlap(hands)
    makespan = model.new_int_var(begin, end, "")
    for (vehicle, at), start in starts.items():
        model.add(makespan >= start + batch.chains[vehicle][at].minutes)
    model.minimize(makespan)
    solver = cp_model.CpSolver()
    solver.parameters.max_time_in_seconds = seconds
    solver.parameters.num_workers = workers
    if solver.solve(model) not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return None
    ends = [evening[1] for evening in batch.evenings]
    return Found(
        bisect_right(ends, solver.value(makespan) - 1),
        0,
        {spot: solver.value(start) for spot, start in starts.items()},
    )


def _wait(
    model: cp_model.CpModel,
    task: Task,
    before: cp_model.IntVar,
    minutes: int,
    start: cp_model.IntVar,
) -> None:
    options = []
    for least, most in task.windows:
        chosen = model.new_bool_var("")
        options.append(chosen)
        model.add(start >= before + minutes + least).only_enforce_if(chosen)
        if most is not None:
            model.add(start < before + most).only_enforce_if(chosen)
    model.add_bool_or(options)
    if task.ends_within is not None:
        model.add(start + task.minutes <= before + task.ends_within)


def _circuit(
    model: cp_model.CpModel,
    batch: Batch,
    sprays: list[tuple[Task, cp_model.IntVar]],
    hands: list[cp_model.IntervalVar],
    begin: int,
    end: int,
) -> None:
    arcs, heads, tails = [], [], []
    for at, (task, start) in enumerate(sprays, 1):
        head, tail = model.new_int_var(0, 60, ""), model.new_int_var(0, 60, "")
        first, last = model.new_bool_var(""), model.new_bool_var("")
        arcs += [(0, at, first), (at, 0, last)]
        model.add(head >= batch.load).only_enforce_if(first)
        model.add(tail >= batch.clean).only_enforce_if(last)
        size = model.new_int_var(task.minutes, task.minutes + 120, "")
        model.add(size == head + task.minutes + tail)
        low = model.new_int_var(begin, end, "")
        model.add(low == start - head)
        high = model.new_int_var(begin, end, "")
        model.add(high == start + task.minutes + tail)
        hands.append(model.new_interval_var(low, size, high, ""))
        heads.append(head)
        tails.append(tail)
    for at, (task, start) in enumerate(sprays, 1):
        for other, (earlier, before) in enumerate(sprays, 1):
            if at == other:
                continue
            same, anew = model.new_bool_var(""), model.new_bool_var("")
            arcs.append((other, at, same))
            arcs.append((other, at, anew))
            change = 0
            if earlier.colour != task.colour:
                change = batch.same if earlier.family == task.family else batch.other
            for literal in (same, anew):
                model.add(start >= before + earlier.minutes).only_enforce_if(literal)
            model.add(heads[at - 1] >= change).only_enforce_if(same)
            # Carried over within one evening only: at most its length apart.
            model.add(start - before <= 180).only_enforce_if(same)
            model.add(heads[at - 1] >= batch.load).only_enforce_if(anew)
            model.add(tails[other - 1] >= batch.clean).only_enforce_if(anew)
    model.add_circuit(arcs)
