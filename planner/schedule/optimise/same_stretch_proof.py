"""What must begin in one stretch, and whether any stretch there will ever be can hold it.

Of passes that are wished in one stretch, whatever must stand between two of
them stands in it, too, and each that another of them waits for is ended in
it.  All else of a plan is left out, so that "none can" holds in every plan.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from datetime import timedelta
from math import lcm

from planner.schedule.optimise.board import Board
from planner.schedule.optimise.master import WorkBudget, setup_costs
from planner.schedule.optimise.stretch_check import possible
from planner.values.bench_time import BenchTime
from planner.values.moment import minute_of, moment_of, zone_named

DAYS = {"DAILY": 1, "WEEKLY": 7}
PLAIN = {"FREQ", "INTERVAL", "BYDAY", "COUNT", "UNTIL", "WKST"}
LONGEST_ROUND = 366  # days in which what repeats must have come round, to be known by heart
NIGHT_ENDS = "04:00"  # clocks change in the small hours
LONG_STRETCH = 8 * 1440  # bench time without end comes week by week; no stretch is longer [min]
MOST_SHAPES = 40  # kinds of stretch tried before nothing is said


@dataclass(frozen=True)
class StretchLoad:
    """Passes of one stretch: those ``whole`` end in it, of the others only a first piece counts."""

    passes: tuple[int, ...]
    whole: frozenset[int]


def apart(board: Board, domains: dict[int, int], far: Callable[[], Board]) -> bool:
    """Tell whether it is proven that some passes wished in one stretch never are in one.

    Parameters
    ----------
    domains
        The stretches that each pass may have, as bits; one bit more is "later".
    far
        Makes the board of all the time that is looked at.
    """
    later = 1 << len(board.stretches)
    for group in bound_together(board):
        common = ~0
        for index in group.passes:
            common &= domains[index]
        here = [number for number in range(len(board.stretches)) if common >> number & 1]
        if _some_holds(board, group, here):
            continue
        if not common & later:
            return True
        if not comes_round(board.problem.book.bench_time, far().ends[-1]):
            continue
        beyond = far()
        every = range(len(beyond.stretches))
        if not _some_holds(beyond, group, [n for n in every if beyond.ends[n] > board.ends[-1]]):
            return True
    return False


def bound_together(board: Board) -> Iterator[StretchLoad]:
    """Yield the passes that must stand in one stretch, of each group of which none has begun."""
    problem, free = board.problem, set(board.free)
    seen: set[int] = set()
    for index in board.free:
        group = {index, *problem.activities[index].together}
        if index in seen or len(group) < 2:
            continue
        seen |= group
        if not group <= free:
            continue  # what has happened may make it a preference (definition 24)
        after = _reached(group, lambda index: problem.after.get(index, ()))
        before = _reached(group, lambda index: problem.activities[index].before)
        passes = group | (after & before & free)
        whole = {
            pass_ for pass_ in passes if any(two in passes for two in problem.after.get(pass_, ()))
        }
        yield StretchLoad(tuple(sorted(passes)), frozenset(whole))


def _reached(group: set[int], following: Callable[[int], Iterable[int]]) -> set[int]:
    """Return all that is reached from a group, step by step."""
    found: set[int] = set()
    left = list(group)
    while left:
        for index in following(left.pop()):
            if index not in found:
                found.add(index)
                left.append(index)
    return found


def _some_holds(board: Board, group: StretchLoad, numbers: list[int]) -> bool:
    """Tell whether some of these stretches may hold a group; also where that stays open."""
    tried: set[tuple[object, ...]] = set()
    for number in sorted(numbers, key=lambda n: board.starts[n] - board.ends[n]):
        shape = _shape(board, group, number)
        if shape in tried:
            continue
        if len(tried) == MOST_SHAPES or board.ends[number] - board.starts[number] > LONG_STRETCH:
            return True
        tried.add(shape)
        if _minutes(board, group, number) > board.ends[number] - board.starts[number]:
            continue
        if possible(board, number, list(group.passes), WorkBudget(1.0)) is not False:
            return True
    return False


def _minutes(board: Board, group: StretchLoad, number: int) -> int:
    """Return the least minutes that a group takes of a stretch, set-ups included."""
    problem = board.problem
    work = sum(
        board.facts.left.get(index, problem.activities[index].pass_.hands)
        if index in group.whole
        else board.least(index)
        for index in group.passes
    )
    loads = {problem.activities[index].pass_.load for index in group.passes} - {""}
    if not loads:
        return work
    costs = setup_costs(board)
    if number == 0 and board.held:
        return work + board.washing + len(loads - board.held) * costs.same
    return work + costs.first + (len(loads) - 1) * costs.same


def _shape(board: Board, group: StretchLoad, number: int) -> tuple[object, ...]:
    """Return all that `possible` sees of a stretch; equal shapes have equal answers."""
    start = board.starts[number]
    hours = tuple(
        tuple((slot.start - start, slot.end - start) for slot in board.slots(index)[number])
        for index in group.passes
    )
    held = board.held if number == 0 else None
    return (board.ends[number] - start, hours, _waits(board, group, number), held)


def _waits(board: Board, group: StretchLoad, number: int) -> tuple[int, ...]:
    """Return how long the films between a group's passes take in a stretch, hour by hour."""
    problem, inside = board.problem, set(group.passes)
    return tuple(
        board.opens(gate, window, at) - at
        for index in group.passes
        for gate in problem.gates_from.get(index, ())
        if problem.gates[gate].place and problem.ends[gate][1] in inside
        for window in problem.gates[gate].windows
        if window.opens is not None and window.opens.of_film
        for at in range(board.starts[number], board.ends[number] + 60, 60)
    )


def comes_round(bench: BenchTime, end: int) -> bool:
    """Tell whether all stretches there will ever be are like those of the years up to ``end``.

    So it is where days and weeks repeat soon, and every rule and extra
    stretch has begun.  Rules by month or year may meet once in decades, and
    a long round may meet the night in which clocks change later.
    """
    last = moment_of(end, zone_named(bench.zone)).date() - timedelta(days=2 * LONGEST_ROUND)
    begun = all(minute_of(extra.start) < end for extra in bench.extra)
    turn = 1
    for rule in (*bench.stretches, *bench.quiet, *bench.daylight):
        fields = dict(part.partition("=")[::2] for part in rule.rule.upper().split(";"))
        days = DAYS.get(fields["FREQ"])
        if days is None or not fields.keys() <= PLAIN:
            return False
        turn = lcm(turn, days * int(fields.get("INTERVAL", "1")))
        begun = begun and rule.since < last
    night = any(rule.start < NIGHT_ENDS or rule.end <= rule.start for rule in bench.stretches)
    return begun and turn <= (7 if night else LONGEST_ROUND)
