"""Sharing a plan out stretch by stretch, each as full as a bounded enumeration makes it.

After T. R. Hoffmann (1963), "Assembly line balancing with a precedence matrix",
Management Science 9, 551-562, who fills station by station so, from either end;
with weights for what has much after it, after K. Fleszar and K. S. Hindi (2003), "An
enumerative heuristic and reduction methods for the assembly line balancing problem",
European Journal of Operational Research 145, 606-620.  Minutes within a stretch are
left to `sweep`.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from planner.schedule.optimise.annealing import Grid

NODES = 1500  # sets looked at for one stretch
MOST_LEFT = 60  # of what can be taken up, so many are looked at


@dataclass(frozen=True)
class StretchFilling:
    """How stretches are filled: from the end with ``back``.

    A minute of work is worth 1 and ``after`` more for each thousand minutes of work that
    come after it in its chains (before it, from the end).
    """

    back: bool = False
    after: float = 0.0


FILLINGS = tuple(
    StretchFilling(back, after)
    for after in (0.5, 0.05, 5.0, 20.0, 2.0, 0.2)
    for back in (False, True)
)


def fullest(
    grid: Grid, minutes: Mapping[int, int], filling: StretchFilling, goal: int
) -> dict[int, int] | None:
    """Return the stretch of each pass, or None where not all find one up to ``goal``.

    Parameters
    ----------
    minutes
        Of each activity that is to be shared out.
    """
    return _Fullest(grid, minutes, filling, goal).run()


class _Fullest:
    def __init__(
        self, grid: Grid, minutes: Mapping[int, int], filling: StretchFilling, goal: int
    ) -> None:
        self.grid, self.filling, self.goal = grid, filling, goal
        board = grid.board
        self.room = [end - start for start, end in zip(board.starts, board.ends, strict=True)]
        self.minutes = [minutes.get(index, 0) for index in grid.order]
        after = [
            {other for other in bound if grid.after[at] >> other & 1}
            for at, bound in enumerate(grid.bound)
        ]
        before = [
            {other for other in bound if grid.after[other] >> at & 1}
            for at, bound in enumerate(grid.bound)
        ]
        self.needs, self.next = (after, before) if filling.back else (before, after)
        kin = list(grid.after)
        if filling.back:
            kin = [0] * len(grid.order)
            for at, bits in enumerate(grid.after):
                for later in _ones(bits):
                    kin[later] |= 1 << at
        weight = [sum(self.minutes[other] for other in _ones(bits)) for bits in kin]
        self.worth = [
            own * (1 + filling.after * heavy / 1000)
            for own, heavy in zip(self.minutes, weight, strict=True)
        ]
        self.numbers: list[int | None] = [None] * len(grid.order)

    def run(self) -> dict[int, int] | None:
        """Fill stretch by stretch."""
        left = len(self.numbers)
        way = range(self.goal + 1)
        for number in reversed(way) if self.filling.back else way:
            for at in self._set(number):
                self.numbers[at] = number
                left -= 1
            if not left:
                break
        if left:
            return None
        found = zip(self.grid.order, self.numbers, strict=True)
        return {index: number for index, number in found if number is not None}

    def _set(self, number: int) -> list[int]:
        """Return what is done in a stretch: the best set that the enumeration meets."""
        self.number, self.nodes = number, NODES
        self.best: tuple[float, list[int]] = (0.0, [])
        open_ = [at for at in range(len(self.numbers)) if self._open(at)]
        open_.sort(key=lambda at: (-self.worth[at], at))
        self._go_on(open_[:MOST_LEFT], [], 0, 0, 0.0)
        for at in self.best[1]:
            self.numbers[at] = None
        return self.best[1]

    def _go_on(
        self, open_: Sequence[int], taken: list[int], work: int, bits: int, worth: float
    ) -> None:
        """Try each of what can be taken up next, and go on from there."""
        room = self.room[self.number]
        for place, at in enumerate(open_):
            if self.nodes <= 0:
                return
            more, colours = work + self.minutes[at], bits | self.grid.loads[at]
            if more + self.grid.setups[colours] > room:
                continue
            self.nodes -= 1
            taken.append(at)
            self.numbers[at] = self.number
            value = worth + self.worth[at]
            if value > self.best[0]:
                self.best = (value, list(taken))
            rest = list(open_[place + 1 :])
            rest += [other for other in self.next[at] if other not in rest and self._open(other)]
            self._go_on(rest, taken, more, colours, value)
            taken.pop()
            self.numbers[at] = None

    def _open(self, at: int) -> bool:
        """Tell whether a pass can be done in the stretch, as what it waits for is done."""
        grid, number = self.grid, self.number
        if self.numbers[at] is not None or not grid.domains[at] >> number & 1:
            return False
        for other in self.needs[at]:
            there = self.numbers[other]
            if there is None or not grid.bound[at][other][there] >> number & 1:
                return False
            if there == number and grid.apart(at, other, number):
                return False
        return True


def _ones(bits: int) -> list[int]:
    found = []
    while bits:
        low = bits & -bits
        found.append(low.bit_length() - 1)
        bits ^= low
    return found
