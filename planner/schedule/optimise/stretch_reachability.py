"""Which stretch a later pass can have, given that of an earlier one."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from planner.schedule.optimise.board import NEVER, Board
from planner.schedule.partial_schedule import FOREVER
from planner.values.coating import Window
from planner.values.step import Bound


@dataclass(frozen=True, slots=True)
class Reach:
    """Of one gate or precedence: stretches of the later pass, by that of the earlier.

    ``open_ended`` tells whether the last window stays open for ever.
    ``spans[k]`` are the runs [first, last] of stretch numbers that remain
    possible for ``after`` when ``before`` ends in stretch k; None where
    ``before`` cannot be done in k.
    """

    before: int
    after: int
    spans: tuple[tuple[tuple[int, int], ...] | None, ...]
    open_ended: bool = True

    def up_to(self, final: int) -> Reach:
        """Return it with the stretches up to ``final`` only."""
        spans = tuple(
            None
            if runs is None
            else tuple((begin, min(end, final)) for begin, end in runs if begin <= final)
            for runs in self.spans[: final + 1]
        )
        return Reach(self.before, self.after, spans, self.open_ended)

    def from_on(self, number: int) -> int:
        """Return the first possible stretch if the earlier pass is in ``number`` or later.

        With "within 2 h or after 24 h" a later stretch may let the next coat
        come sooner, so it is not always that of ``number`` itself.
        """
        return min((self.first(k) for k in range(number, len(self.spans))), default=NEVER)

    def first(self, number: int) -> int:
        """Return the first possible stretch, NEVER if there is none."""
        spans = self.spans[number]
        return spans[0][0] if spans else NEVER


def reaches(board: Board) -> list[Reach]:
    """Return what every gate and precedence between free activities leaves possible."""
    problem, free = board.problem, set(board.free)
    found: list[Reach] = []
    gated = set()
    for number, (before, after) in enumerate(problem.ends):
        if before in free and after in free and board.head[after] < NEVER:
            gated.add((before, after))
            found.append(_reach(board, number, before, after))
    found += [
        _follows(board, before, after)
        for after in board.free
        if board.head[after] < NEVER
        for before in problem.activities[after].before
        if before in free and (before, after) not in gated
    ]
    return found


def earliest_end(board: Board, index: int, number: int) -> int | None:
    """Return the least end of an activity in a stretch, or None if it cannot be done there."""
    least = board.least(index)
    for slot in board.slots(index)[number]:
        start = max(slot.start, board.head[index])
        if start + least <= slot.end:
            return start + board.lasts(index)
    return None


def _reach(board: Board, gate: int, before: int, after: int) -> Reach:
    spans: list[tuple[tuple[int, int], ...] | None] = []
    to_end = board.problem.gates[gate].closing is Bound.END
    lasts = board.lasts(after)
    windows = [
        window
        for window in board.problem.gates[gate].windows
        if not _empty(window, board.lasts(before), lasts if to_end else 0)
    ]
    ever = all(window.closes is None for window in windows) or board.problem.may_melt(gate)
    final = len(board.stretches) - 1
    for number in range(len(board.stretches)):
        end = earliest_end(board, before, number)
        if end is None:
            spans.append(None)
            continue
        if ever:  # the window that opens first is the one that counts
            soonest = min((board.opens(gate, w, end) for w in windows), default=FOREVER)
            found = board.first_start(after, max(end, soonest))
            spans.append(() if found is None else ((found[0], final),))
            continue
        last = board.last_start(before, number)
        assert last is not None  # there is an earliest end
        runs: list[tuple[int, int]] = []
        for window in windows:
            opens = max(end, board.opens(gate, window, end))
            found = board.first_start(after, opens)
            closes = board.closes(gate, window, last)
            if found is None or found[1] + (lasts if to_end else 0) > closes:
                continue
            until = final
            if closes < FOREVER:
                # The pass must begin (or end) before the window closes.
                until = min(final, board.number_at(closes - 1))
                if 0 <= until < len(board.starts) and board.starts[until] >= closes:
                    until -= 1
            if found[0] <= until:
                runs.append((found[0], until))
        spans.append(tuple(runs))
    endless = bool(windows) and (windows[-1].closes is None or board.problem.may_melt(gate))
    return Reach(before, after, tuple(spans), endless)


def _empty(window: Window, before: int, after: int) -> bool:
    """Tell whether plain minutes leave no start, whenever the earlier pass is done."""
    opens, closes = window.opens, window.closes
    if closes is None or closes.of_film or (opens is not None and opens.of_film):
        return False
    wait = (opens.minutes or 0) if opens else 0
    return before + wait + after > (closes.minutes or 0) - (0 if after else 1)


def _follows(board: Board, before: int, after: int) -> Reach:
    spans: list[tuple[tuple[int, int], ...] | None] = []
    final = len(board.stretches) - 1
    for number in range(len(board.stretches)):
        end = earliest_end(board, before, number)
        found = None if end is None else board.first_start(after, end)
        spans.append(None if end is None else ((found[0], final),) if found else ())
    return Reach(before, after, tuple(spans))


def latest(board: Board, links: list[Reach], goal: Callable[[int], int]) -> dict[int, int]:
    """Return the last stretch of each activity that lets all end by their ``goal``."""
    outgoing: dict[int, list[Reach]] = {}
    for link in links:
        outgoing.setdefault(link.before, []).append(link)
    found: dict[int, int] = {}
    for index in reversed(board.free):
        late = goal(index)
        for link in outgoing.get(index, ()):
            bound = found.get(link.after, NEVER)
            while late >= 0 and link.first(late) > bound:
                late -= 1
        found[index] = late
    return found
