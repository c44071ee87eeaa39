"""Whether a schedule holds as one of the bare problem, by rules of its own, and what it uses.

What this finds wrong in a plan of the engine would be a difference between
the problem that the engine solves and the one that the baselines are given.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from itertools import pairwise

from plain_tasks import Batch, Task

Starts = dict[tuple[int, int], int]


def broken(batch: Batch, starts: Starts, *, set_ups: bool = True) -> list[str]:
    """Return what a schedule does against the bare problem; not its set-ups, if told so."""
    wrong = []
    for vehicle, chain in enumerate(batch.chains):
        for at, task in enumerate(chain):
            start, name = starts[vehicle, at], f"vehicle {vehicle + 1}, task {at + 1}"
            if evening_of(batch, start) is None or start + task.minutes > _end(batch, start):
                wrong.append(f"{name} is not within an evening")
            if at:
                wrong += _waits(name, task, start, starts[vehicle, at - 1], chain[at - 1].minutes)
    tasks = _in_order(batch, starts)
    for (start, task), (after, _) in pairwise(tasks):
        if start + task.minutes > after:
            wrong.append(f"two tasks at {after}")
    if set_ups:
        wrong += _set_ups(batch, starts)
    return wrong


def _waits(name: str, task: Task, start: int, begun: int, minutes: int) -> list[str]:
    wrong = []
    if not any(
        start >= begun + minutes + least and (most is None or start < begun + most)
        for least, most in task.windows
    ):
        wrong.append(f"{name} begins in none of its windows")
    if task.ends_within is not None and start + task.minutes > begun + task.ends_within:
        wrong.append(f"{name} ends too late")
    return wrong


def _set_ups(batch: Batch, starts: Starts) -> list[str]:
    """Return where the free minutes of an evening do not suffice for its set-ups."""
    wrong = []
    for number, tasks in by_evening(batch, starts).items():
        begin, end = batch.evenings[number]
        free, cup = begin, None
        hand = 0
        for start, task in tasks:
            if not task.colour:
                hand += task.minutes
                continue
            if start - free - hand < change(batch, cup, task):
                wrong.append(f"no time to set up before {start}")
            free, cup, hand = start + task.minutes, task, 0
        if cup is not None and end - free - hand < batch.clean:
            wrong.append(f"no time to clean before {end}")
    return wrong


def change(batch: Batch, cup: Task | None, task: Task) -> int:
    """Return the least minutes that bring a task's colour into the cup.

    To clean and to load anew may be quicker than a change between families;
    the plain rule does not think of it.
    """
    if cup is None:
        return batch.load
    if cup.colour == task.colour:
        return 0
    asked = batch.same if cup.family == task.family else batch.other
    return min(asked, batch.clean + batch.load)


def set_up_minutes(batch: Batch, starts: Starts) -> int:
    """Return the least minutes of loading, changing and cleaning in this order of tasks."""
    total = 0
    for tasks in by_evening(batch, starts).values():
        cup = None
        for _, task in tasks:
            if task.colour:
                total += change(batch, cup, task)
                cup = task
        total += batch.clean if cup is not None else 0
    return total


def by_evening(batch: Batch, starts: Starts) -> dict[int, list[tuple[int, Task]]]:
    """Return (start, task) in order, by the number of the evening."""
    found: dict[int, list[tuple[int, Task]]] = defaultdict(list)
    for start, task in _in_order(batch, starts):
        number = evening_of(batch, start)
        if number is not None:
            found[number].append((start, task))
    return dict(sorted(found.items()))


def finish_of(batch: Batch, starts: Starts) -> int:
    """Return the end of the last task [min]."""
    return max(start + task.minutes for start, task in _in_order(batch, starts))


def evening_of(batch: Batch, minute: int) -> int | None:
    """Return the number of the evening that holds a minute, or None."""
    number = bisect_right([end for _, end in batch.evenings], minute)
    inside = number < len(batch.evenings) and batch.evenings[number][0] <= minute
    return number if inside else None


def _end(batch: Batch, minute: int) -> int:
    number = evening_of(batch, minute)
    return minute if number is None else batch.evenings[number][1]


def _in_order(batch: Batch, starts: Starts) -> list[tuple[int, Task]]:
    found = [(start, batch.chains[vehicle][at]) for (vehicle, at), start in starts.items()]
    return sorted(found, key=lambda item: item[0])
