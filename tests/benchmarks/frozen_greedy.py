"""Baseline, its choices never to be changed: the plain greedy rule.

Time runs forward; of the tasks that can begin now the one with the longest
chain behind it goes next, whatever colour is in the cup.  Wiping is done as
soon as it may be, before anything else; a wash is begun only where both fit.
Drying places are not counted, which only helps it.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from plain_tasks import Batch, Task


@dataclass(frozen=True)
class Found:
    """Number of the last evening used, minutes of set-up, and each task's start [min].

    A start stands under (vehicle, number in its chain).
    """

    last: int
    setup: int
    starts: dict[tuple[int, int], int] = field(default_factory=dict)


def plain_greedy(batch: Batch) -> Found:
    """Return what the plain rule makes of a batch."""
    tails = [_tails(chain) for chain in batch.chains]
    done = [0] * len(batch.chains)
    started = [0] * len(batch.chains)
    ended = [0] * len(batch.chains)
    setup, last = 0, 0
    starts: dict[tuple[int, int], int] = {}
    for number, (begin, end) in enumerate(batch.evenings):
        time, cup = begin, ("", "")
        while True:
            best: tuple[tuple[int, int, int], int, int] | None = None
            for vehicle, chain in enumerate(batch.chains):
                if done[vehicle] == len(chain):
                    continue
                task = chain[done[vehicle]]
                start = _start(task, time, started[vehicle], ended[vehicle])
                change = _change(batch, cup, task)
                wiping = task.ends_within is not None
                start = max(start, time + change)
                after = batch.clean if task.colour or cup[0] else 0
                room = end - after
                if start + task.minutes + _follow(chain, done[vehicle]) > room:
                    continue
                rank = (0 if wiping else 1, start - time - change, -tails[vehicle][done[vehicle]])
                if best is None or rank < best[0]:
                    best = rank, vehicle, start
            if best is None:
                break
            _, vehicle, start = best
            task = batch.chains[vehicle][done[vehicle]]
            if task.colour:
                setup += _change(batch, cup, task)
                cup = task.colour, task.family
            starts[vehicle, done[vehicle]] = start
            started[vehicle], ended[vehicle] = start, start + task.minutes
            done[vehicle] += 1
            time, last = start + task.minutes, number
        if cup[0]:
            setup += batch.clean
        if all(count == len(chain) for count, chain in zip(done, batch.chains, strict=True)):
            return Found(last, setup, starts)
    return Found(len(batch.evenings), setup, starts)


def _start(task: Task, time: int, started: int, ended: int) -> int:
    for least, most in task.windows:
        opens = max(time, ended + least)
        if most is None or opens < started + most:
            return opens
    return 10**9


def _follow(chain: tuple[Task, ...], at: int) -> int:
    """Return the minutes that wiping takes after a wash, its wait included."""
    if at + 1 == len(chain) or chain[at + 1].ends_within is None:
        return 0
    return chain[at + 1].windows[0][0] + chain[at + 1].minutes


def _change(batch: Batch, cup: tuple[str, str], task: Task) -> int:
    if not task.colour or cup[0] == task.colour:
        return 0
    if not cup[0]:
        return batch.load
    return batch.same if cup[1] == task.family else batch.other


def _tails(chain: tuple[Task, ...]) -> list[int]:
    tails, rest = [0] * len(chain), 0
    for at in reversed(range(len(chain))):
        rest += chain[at].minutes
        tails[at] = rest
        rest += chain[at].windows[0][0]
    return tails
