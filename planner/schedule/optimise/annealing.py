"""Sharing a whole plan out over the stretches by simulated annealing.

One pass is put into another stretch, or changes places with one there, again
and again; what makes things worse is taken ever more seldom (Kirkpatrick,
Gelatt, Vecchi 1983, "Optimization by simulated annealing", Science 220).
Windows of a few stretches, as `stretch_assignment` decides them, cannot bring together
what is far apart; this can.  Minutes within a stretch are left to `sweep`.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from math import exp
from random import Random

from planner.schedule.optimise.board import NEVER
from planner.schedule.optimise.stretch_assignment import Shares, Ties
from planner.schedule.optimise.stretch_reachability import Reach, earliest_end

BREATH = 4096  # tries between two looks at whether to stop, and two temperatures
LEAST_GAIN = 1e-9


@dataclass(frozen=True)
class Cooling:
    """How an annealing goes; all weights are for a minute.

    Attributes
    ----------
    tries
        Moves that are tried.
    hot, cold
        First and last temperature, in minutes of set-up at weight 1.
    setup
        Weight of set-up.
    full
        Weight of what is too much for a stretch.
    late
        Weight of work that is too late for the goal, for each stretch.
    swaps
        Share of tries in which two passes change places.
    alike
        Share of tries in which a sprayed pass goes where its colour is used.
    """

    tries: int = 0
    hot: float = 10.0
    cold: float = 0.4
    setup: float = 1.0
    full: float = 1.0
    late: float = 1.5
    swaps: float = 0.6
    alike: float = 0.8


class Grid:
    """Which stretches each pass may have, as bits, by those of the passes it is bound to.

    Attributes
    ----------
    order
        Activities; everything else here goes by their places in it.
    domains
        Stretches that a pass may have at all.
    bound
        For each pass, the passes bound to it, each with the stretches left
        by that one's stretch.
    after
        Bits of all passes that must come after each pass.
    loads, setups
        Bit of the colour a pass needs, 0 for none; and the least set-up
        minutes of a stretch by the bits of its colours.
    """

    def __init__(self, ties: Ties, links: list[Reach]) -> None:
        self.ties = ties
        self.board = board = ties.board
        self.order = [index for index in board.free if board.head[index] < NEVER]
        self.place = {index: at for at, index in enumerate(self.order)}
        self.count = len(board.stretches)
        self.domains = [
            sum(1 << s for s in range(self.count) if earliest_end(board, index, s) is not None)
            for index in self.order
        ]
        self.bound: list[dict[int, list[int]]] = [{} for _ in self.order]
        for link in links:
            before, after = self.place.get(link.before), self.place.get(link.after)
            if before is not None and after is not None:
                onward, back = _bits(link, self.count)
                self._bind(after, before, onward)
                self._bind(before, after, back)
        self.setups = _Setups(ties)
        activities = board.problem.activities
        self.loads = [self.setups.bit(activities[index].pass_.load) for index in self.order]
        self.after = [0] * len(self.order)
        for at in reversed(range(len(self.order))):
            for link in ties.outgoing[self.order[at]]:
                later = self.place.get(link.after)
                if later is not None:
                    self.after[at] |= 1 << later | self.after[later]

    def _bind(self, at: int, other: int, left: list[int]) -> None:
        known = self.bound[at].get(other)
        both = left if known is None else [a & b for a, b in zip(known, left, strict=True)]
        self.bound[at][other] = both

    def apart(self, index: int, other: int, number: int) -> bool:
        """Tell whether what lies between two passes keeps them from sharing a stretch."""
        if self.after[other] >> index & 1:
            index, other = other, index
        elif not self.after[index] >> other & 1:
            return False
        return self.order[other] in self.ties.too_far(self.order[index], number)


def _bits(link: Reach, count: int) -> tuple[list[int], list[int]]:
    """Return the later pass's stretches by the earlier one's, and the other way round."""
    onward, changes = [0] * count, [0] * (count + 1)
    for number, runs in enumerate(link.spans[:count]):
        for first, last in runs or ():  # those of two windows may overlap
            onward[number] |= (2 << last) - (1 << first)
        edges = onward[number] ^ onward[number] << 1
        while edges:
            at = edges.bit_length() - 1
            changes[at] ^= 1 << number
            edges ^= 1 << at
    back, open_ = [], 0
    for number in range(count):
        open_ ^= changes[number]
        back.append(open_)
    return onward, back


class _Setups(dict[int, int]):
    """Least set-up minutes by the bits of the colours used, worked out when asked for."""

    def __init__(self, ties: Ties) -> None:
        super().__init__({0: 0})
        self._costs = ties.costs
        self._coatings = ties.board.problem.coatings
        self._names: list[str] = []

    def bit(self, load: str) -> int:
        if not load:
            return 0
        if load not in self._names:
            self._names.append(load)
        return 1 << self._names.index(load)

    def __missing__(self, bits: int) -> int:
        loads = [name for at, name in enumerate(self._names) if bits >> at & 1]
        families = {self._coatings[load].family for load in loads}
        costs = self._costs
        minutes = costs.first + costs.same * (len(loads) - 1)
        minutes += (costs.other - costs.same) * (len(families) - 1)
        self[bits] = minutes
        return minutes


def annealed(
    grid: Grid,
    shares: Shares,
    last: Mapping[int, int],
    cooling: Cooling,
    seed: int,
    stopped: Callable[[], bool] = lambda: False,
) -> dict[int, int]:
    """Return the stretch of each pass in the best sharing out that was met.

    Parameters
    ----------
    shares
        What to start from.
    last
        Stretch by which each pass must be done to meet the goal.
    """
    return _Annealing(grid, shares, last, cooling, seed).run(stopped)


class _Annealing:
    """One run: where each pass is, and what each stretch holds and costs."""

    def __init__(
        self,
        grid: Grid,
        shares: Shares,
        last: Mapping[int, int],
        cooling: Cooling,
        seed: int,
    ) -> None:
        self.grid, self.cooling = grid, cooling
        self.random = Random(seed).random  # noqa: S311 - a seeded search, not a secret
        board, order = grid.board, grid.order
        self.room = [end - start for start, end in zip(board.starts, board.ends, strict=True)]
        self.numbers = [shares.numbers.get(index, NEVER) for index in order]
        self.minutes = [shares.minutes.get(index, 0) for index in order]
        self.last = [last.get(index, NEVER) for index in order]
        here = [number < grid.count for number in self.numbers]
        self.free = [at for at, index in enumerate(order) if here[at] and index not in shares.fixed]
        self.moves = frozenset(self.free)
        self.bound = [
            [(index, left) for index, left in bound.items() if here[index]] for bound in grid.bound
        ]
        self.kin = _both_ways(grid.after)
        self.work = [0] * grid.count
        self.members: list[list[int]] = [[] for _ in range(grid.count)]
        self.used: list[dict[int, int]] = [defaultdict(int) for _ in range(grid.count)]
        self.bits = [0] * grid.count
        self.where: dict[int, int] = dict.fromkeys(grid.loads, 0)
        for at, number in enumerate(self.numbers):
            if here[at]:
                self.work[number] += self.minutes[at]
                self.members[number].append(at)
                self._load(at, number, 1)
        self.costs = [self._cost(s, self.work[s], self.bits[s]) for s in range(grid.count)]

    def run(self, stopped: Callable[[], bool]) -> dict[int, int]:
        """Return the stretch of each activity in the best sharing out that was met."""
        cooling, random, free = self.cooling, self.random, self.free
        gain = best = 0.0
        found = list(self.numbers)
        temperature = cooling.hot
        cooler = (cooling.cold / cooling.hot) ** (BREATH / max(BREATH, cooling.tries))
        for number in range(cooling.tries if len(free) > 1 else 0):
            if number % BREATH == 0:
                if stopped():
                    break
                temperature *= cooler
            gain += self._try(free[int(random() * len(free))], temperature)
            if gain < best - LEAST_GAIN:
                best, found = gain, list(self.numbers)
        return {index: found[at] for at, index in enumerate(self.grid.order) if found[at] < NEVER}

    def _cost(self, number: int, work: int, bits: int) -> float:
        setup = self.grid.setups[bits]
        over = work + setup - self.room[number]
        return self.cooling.setup * setup + (self.cooling.full * over if over > 0 else 0)

    def _open(self, at: int) -> int:
        """Return the bits of the stretches that a pass may have as things are."""
        numbers, bits = self.numbers, self.grid.domains[at]
        for index, left in self.bound[at]:
            bits &= left[numbers[index]]
        return bits

    def _try(self, at: int, temperature: float) -> float:
        """Try to move a pass; return what that changes, 0 where it stays."""
        here, load, random = self.numbers[at], self.grid.loads[at], self.random
        bits = self._open(at) & ~(1 << here)
        if load and random() < self.cooling.alike:
            bits = bits & self.where[load] or bits
        if not bits:
            return 0.0
        there = _one_of(bits, random())
        other, members = None, self.members[there]
        if members and random() < self.cooling.swaps:
            other = members[int(random() * len(members))]
            apart = all(index != at for index, _ in self.bound[other])
            if not apart or other not in self.moves or not self._open(other) >> here & 1:
                return 0.0
        return self._move(at, here, there, other, temperature)

    def _move(self, at: int, here: int, there: int, other: int | None, temperature: float) -> float:
        """Take a pass from ``here`` to ``there``, and another one back, if that is good enough."""
        loads, minutes = self.grid.loads, self.minutes
        load, back, work = loads[at], 0, minutes[at]
        late = self._late(at, there) - self._late(at, here)
        if other is not None:
            back, work = loads[other], work - minutes[other]
            late += self._late(other, here) - self._late(other, there)
        bits_here, bits_there = self.bits[here], self.bits[there]
        if load != back:
            bits_here = (bits_here ^ load if self.used[here][load] == 1 else bits_here) | back
            bits_there = (bits_there ^ back if self.used[there][back] == 1 else bits_there) | load
        cost_here = self._cost(here, self.work[here] - work, bits_here)
        cost_there = self._cost(there, self.work[there] + work, bits_there)
        change = cost_here + cost_there - self.costs[here] - self.costs[there]
        change += late * self.cooling.late
        if change > 0 and self.random() >= exp(-change / temperature):
            return 0.0
        if self._clash(at, there, other) or (other is not None and self._clash(other, here, at)):
            return 0.0
        self._put(at, here, there)
        if other is not None:
            self._put(other, there, here)
        self.costs[here], self.costs[there] = cost_here, cost_there
        return change

    def _late(self, at: int, number: int) -> int:
        last = self.last[at]
        return self.minutes[at] * (number - last) if number > last else 0

    def _clash(self, at: int, number: int, but: int | None) -> bool:
        """Tell whether a stretch has a pass that cannot share it with another one."""
        kin = self.kin[at]
        for member in self.members[number]:
            if kin >> member & 1 and member != but and self.grid.apart(at, member, number):
                return True
        return False

    def _put(self, at: int, here: int, there: int) -> None:
        self.numbers[at] = there
        self.members[here].remove(at)
        self.members[there].append(at)
        self.work[here] -= self.minutes[at]
        self.work[there] += self.minutes[at]
        if self.grid.loads[at]:
            self._load(at, here, -1)
            self._load(at, there, 1)

    def _load(self, at: int, number: int, count: int) -> None:
        """Count a colour in a stretch once more, or once less."""
        load = self.grid.loads[at]
        self.used[number][load] += count
        if self.used[number][load]:
            self.bits[number] |= load
            self.where[load] |= 1 << number
        else:
            self.bits[number] &= ~load
            self.where[load] &= ~(1 << number)


def _one_of(bits: int, part: float) -> int:
    """Return the number of a bit that is set, ``part`` of the way from the lowest on."""
    low = (bits & -bits).bit_length() - 1
    skipped = low + int(part * (bits.bit_length() - low))
    rest = bits >> skipped
    return skipped + (rest & -rest).bit_length() - 1


def _both_ways(after: list[int]) -> list[int]:
    """Return the bits of all passes before or after each pass."""
    kin = list(after)
    for at, bits in enumerate(after):
        for later in range(at + 1, bits.bit_length()):
            if bits >> later & 1:
                kin[later] |= 1 << at
    return kin
