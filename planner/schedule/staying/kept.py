"""Where the plan before has what is still to be done, read for the problem of today."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple

from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.problem import Problem
from planner.values.moment import Interval
from planner.values.plan import BenchKind, BenchWork, PassKey, Placement, Plan


class KeptPiece(NamedTuple):
    """A piece of a pass as the plan before has it.

    ``begin`` is when its preparation or set-up began, ``activity`` is its number,
    ``last`` whether it ends the pass.
    """

    begin: int
    activity: int
    interval: Interval
    last: bool


class Cleaning(NamedTuple):
    """A cleaning as the plan before has it."""

    begin: int
    airbrush: str


@dataclass(frozen=True)
class KeptPlan:
    """What the plan before says of work that is still to be done.

    Attributes
    ----------
    events
        Pieces and cleanings from now on, in order of their beginnings.
    order
        Of each pass, the minute at which it began, were it before now or not.
    pieces
        Of each pass that may stay in its stretch, its pieces.
    lost
        Passes that the plan before left out.
    """

    events: tuple[KeptPiece | Cleaning, ...]
    order: dict[int, int]
    pieces: dict[int, tuple[Interval, ...]]
    lost: frozenset[int]


def kept_of(problem: Problem, last: Plan, facts: PartialSchedule) -> KeptPlan:
    """Return what of a plan can still stand: passes that are there, not begun, and not past.

    What should have begun in the stretch that runs keeps its turn in it, and so does a cleaning
    that work overran.
    """
    leads = _leads(last.bench)
    running = problem.calendar.stretch_at(problem.now)
    since = running.interval.start if running else problem.now
    events: list[KeptPiece | Cleaning] = []
    order: dict[int, int] = {}
    pieces: dict[int, tuple[Interval, ...]] = {}
    for placed in last.placements:
        index = problem.index.get(placed.key)
        if index is None or index in facts.end or index in order:
            continue
        order[index] = placed.start
        if not _allowed(problem, index, placed):
            continue
        begin = min([placed.start, *leads.get(placed.key, ())])
        if begin < since or not _same_length(problem, index, placed):
            continue
        pieces[index] = placed.pieces
        for at, piece in enumerate(placed.pieces):
            lead = piece.start if at else begin
            events.append(KeptPiece(lead, index, piece, at == len(placed.pieces) - 1))
    events += [
        Cleaning(work.interval.start, work.airbrush)
        for work in last.bench
        if work.kind is BenchKind.CLEAN and work.interval.start >= since
    ]
    events = _together(problem, events)
    events.sort(key=lambda event: (event.begin, isinstance(event, KeptPiece)))
    lost = frozenset(
        problem.index[unplaced.key] for unplaced in last.unplaced if unplaced.key in problem.index
    )
    return KeptPlan(tuple(events), order, pieces, lost)


def _allowed(problem: Problem, index: int, placed: Placement) -> bool:
    """Tell whether the pins of a pass still allow it to stand where it did."""
    activity = problem.activities[index]
    if activity.allowed is None:
        return True
    alone = activity.pass_.alone
    return all(
        any(
            interval.start <= piece.start and piece.end - alone <= interval.end
            for interval in activity.allowed
        )
        for piece in placed.pieces
    )


def _together(problem: Problem, events: list[KeptPiece | Cleaning]) -> list[KeptPiece | Cleaning]:
    """Put what is wished in one stretch into the latest of those that it was in."""
    begun = {event.activity: event for event in events if isinstance(event, KeptPiece)}
    found: list[KeptPiece | Cleaning] = []
    for event in events:
        latest = event
        if isinstance(event, KeptPiece):
            group = [begun[i] for i in problem.activities[event.activity].together if i in begun]
            latest = max([event, *group], key=lambda other: other.interval.start)
        here, there = (problem.calendar.stretch_at(other.begin) for other in (event, latest))
        found.append(event if here == there else event._replace(begin=latest.begin))
    return found


def _leads(bench: Iterable[BenchWork]) -> dict[PassKey, list[int]]:
    """Return when the preparations and set-ups of each pass began."""
    found: dict[PassKey, list[int]] = defaultdict(list)
    for work in bench:
        if work.serves is not None:
            found[work.serves].append(work.interval.start)
    return found


def _same_length(problem: Problem, index: int, placed: Placement) -> bool:
    """Tell whether pieces still make up the pass; of one in pieces the minutes must be the same."""
    pass_ = problem.activities[index].pass_
    return len(placed.pieces) == 1 or pass_.minutes == sum(p.minutes for p in placed.pieces)
