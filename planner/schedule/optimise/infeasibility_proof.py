"""Proof that a book has no full plan: nothing here adds a constraint that a plan might break.

No planner looks further for a stretch than `LONG`; what does not come within
that of when it could begin is taken as never.
"""

from __future__ import annotations

from collections import defaultdict
from functools import cache

from planner.bench import BenchCalendar, calendar_of
from planner.cure import Cure
from planner.schedule.compiled_book import LAST_MINUTE
from planner.schedule.greedy import SerialSchedule
from planner.schedule.optimise.best_location_relaxation import anywhere
from planner.schedule.optimise.board import NEVER, Board
from planner.schedule.optimise.master import WorkBudget
from planner.schedule.optimise.same_stretch_proof import apart
from planner.schedule.optimise.stretch_check import possible
from planner.schedule.optimise.stretch_reachability import Reach, reaches
from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.values.book import Book

BEYOND = 45 * 1440  # how far past every head and wish the stretches are looked at [min]
LONG = 3 * 366 * 1440
FARTHEST = 10 * LONG  # no further than that from now [min]


def contradicts(book: Book, now: int, cure: Cure) -> bool:
    """Tell whether it is proven that no sound plan places every pass."""
    book, cure = anywhere(book, cure)
    problem = Problem(book, now, cure=cure, calendar=calendar_of(book.bench_time))
    if any(activity.blocked for activity in problem.activities):
        return True
    search = SerialSchedule(problem, RULES[0], 0, frozenset())
    search.take_facts()
    table = search.table
    if len(table.end) == len(problem.activities):
        return False
    board = Board(problem, table, _horizon(problem))
    far = cache(lambda: _far(problem, table))
    if not board.stretches or any(board.head[index] >= NEVER for index in board.free):
        board = whole = far()
        if (never := _never(whole)) is not None:
            return _until(whole, never) <= whole.last
    domains = _domains(board, problem.calendar)
    links = reaches(board)
    if not _consistent(board, links, domains):
        return True
    return not _room(board, domains) or apart(board, domains, far)


def _horizon(problem: Problem) -> int:
    latest = problem.now
    for activity in problem.activities:
        for interval in activity.allowed or ():
            for end in (interval.start, interval.end):
                if end < problem.now + LONG:
                    latest = max(latest, end)
    for tail in problem.tails:
        if tail < LONG:
            latest = max(latest, problem.now + 2 * tail)
    return latest + BEYOND


class _Far(Board):
    """A board that knows up to which minute it was looked for stretches."""

    def __init__(self, problem: Problem, facts: PartialSchedule, last: int) -> None:
        super().__init__(problem, facts, last)
        self.last = last


def _far(problem: Problem, table: PartialSchedule) -> _Far:
    """Return the board of all that is looked at: `LONG` after whatever could begin."""
    wished = [
        minute
        for activity in problem.activities
        for interval in activity.allowed or ()
        for minute in (interval.start, interval.end)
        if minute < LAST_MINUTE
    ]
    farthest = problem.now + FARTHEST
    until = max([problem.now, *wished]) + LONG
    while True:
        board = _Far(problem, table, min(until, farthest))
        never = _never(board)
        if never is None or board.last == farthest or _until(board, never) <= board.last:
            return board
        until = _until(board, never)


def _never(board: Board) -> int | None:
    """Return the first pass that has no start on a board, or None; all before it have one."""
    return next((index for index in board.free if board.head[index] >= NEVER), None)


def _until(board: Board, index: int) -> int:
    """Return up to which minute a pass without a start must be looked for, to have none ever."""
    release = _release(board, index)
    allowed = board.problem.activities[index].allowed
    if release >= FOREVER or allowed == ():
        return board.problem.now
    if allowed and max(interval.end for interval in allowed) < LAST_MINUTE:
        return max(interval.end for interval in allowed)
    begins = min(interval.start for interval in allowed) if allowed else 0
    return max(release, begins) + LONG


def _release(board: Board, index: int) -> int:
    """Return the least start of a pass by what goes before it, FOREVER if that never lets it."""
    activity, facts = board.problem.activities[index], board.facts
    release = facts.time
    for gate in activity.gates:
        before = board.problem.ends[gate][0]
        if before in facts.end:
            windows = facts.windows(gate)
            release = max(release, windows[0].opens if windows else FOREVER)
        else:
            release = max(release, board.earliest_after(gate, board.end_of(before)))
    return max([release, *(board.end_of(before) for before in activity.before)])


def _domains(board: Board, calendar: BenchCalendar) -> dict[int, int]:
    """Return, per pass, the stretches that can hold it, as bits; one bit more means "later"."""
    count = len(board.stretches)
    later = 1 << count if calendar.next_stretch(board.ends[-1]) is not None else 0
    found = {}
    for index in board.free:
        bits = 0
        least, head = board.least(index), board.head[index]
        for number, slots in enumerate(board.slots(index)):
            if any(max(slot.start, head) + least <= slot.end for slot in slots):
                bits |= 1 << number
        allowed = board.problem.activities[index].allowed
        endless = allowed is None or any(interval.end > board.ends[-1] for interval in allowed)
        closing = board.facts.deadline(index)
        if closing < board.ends[-1]:
            endless = False
            bits &= (1 << (board.number_at(closing - 1) + 1)) - 1
        found[index] = bits | (later if endless else 0)
    return found


def _consistent(board: Board, links: list[Reach], domains: dict[int, int]) -> bool:
    """Take away stretches that no other pass allows, until nothing changes."""
    if not all(domains.values()):
        return False
    masks = [(link, _masks(link, len(board.stretches))) for link in links]
    changed = True
    while changed:
        changed = False
        for link, allowed in masks:
            before, after = domains[link.before], domains[link.after]
            support = kept = 0
            for number, mask in enumerate(allowed):
                if before >> number & 1 and mask & after:
                    kept |= 1 << number
                    support |= mask
            if kept != before or support & after != after:
                domains[link.before] = kept
                domains[link.after] = after & support
                changed = True
                if not kept or not after & support:
                    return False
        for index in board.free:
            for other in board.problem.activities[index].together:
                if other in domains and domains[index] & domains[other] != domains[index]:
                    domains[index] &= domains[other]
                    changed = True
                    if not domains[index]:
                        return False
    return True


def _masks(link: Reach, count: int) -> list[int]:
    """Return, per stretch of the earlier pass, the stretches open to the later one."""
    masks = []
    for runs in link.spans:
        mask = 0
        for begin, end in runs or ():
            last = count if end == count - 1 else end  # what reaches the end may be later, too
            mask |= (1 << (last + 1)) - (1 << begin)
        if runs is not None and link.open_ended:
            mask |= 1 << count
        masks.append(mask)
    masks.append(1 << count)
    return masks


def _room(board: Board, domains: dict[int, int]) -> bool:
    """Tell whether what is tied to the same stretches may fit into them."""
    count = len(board.stretches)
    tied: dict[int, list[int]] = defaultdict(list)
    ranges: dict[tuple[int, int], int] = defaultdict(int)
    for index, bits in domains.items():
        if bits >> count & 1:
            continue
        first, last = (bits & -bits).bit_length() - 1, bits.bit_length() - 1
        ranges[first, last] += board.least(index)
        if first == last:
            tied[first].append(index)
    for number, passes in tied.items():
        if possible(board, number, passes, WorkBudget(1.0)) is False:
            return False
    for first, last in ranges:
        load = sum(minutes for (a, b), minutes in ranges.items() if first <= a and b <= last)
        hours = sum(board.ends[n] - board.starts[n] for n in range(first, last + 1))
        if load > hours:
            return False
    return True
