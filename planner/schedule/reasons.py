"""Why a piece of work stands where it stands, read off the finished plan.

For each pass every thing that could hold it is turned into "not before
this minute"; the latest of them is the binding cause.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict

from planner.bench import Stretch
from planner.schedule.problem import Problem
from planner.schedule.state import FOREVER, Table
from planner.values.plan import BenchKind, BenchWork, Cause, PassKey, Placement, Reason


class _Read:
    """The finished plan, indexed for asking what held whom."""

    def __init__(self, problem: Problem, table: Table) -> None:
        self.problem = problem
        self.table = table
        self.serving: dict[PassKey, list[BenchWork]] = defaultdict(list)
        for work in table.bench:
            if work.serves is not None:
                self.serving[work.serves].append(work)
        self.busy = sorted(
            [(piece.end, one.key.step) for one in table.placements for piece in one.pieces]
            + [(work.interval.end, work.kind.value) for work in table.bench]
        )
        self.freed: dict[str, list[int]] = defaultdict(list)
        for placed in table.placements:
            activity = problem.activities[problem.index[placed.key]]
            if activity.wet:
                self.freed[activity.location].append(_wet_until(problem, table, activity.index))
        for frees in self.freed.values():
            frees.sort()

    def lead_in(self, placed: Placement) -> int:
        """Return when the preparation or set-up right before a pass begins."""
        return min(
            [placed.start, *(work.interval.start for work in self.serving.get(placed.key, ()))]
        )


def reasons_of(problem: Problem, table: Table) -> dict[PassKey, Reason]:
    """Return the binding cause of every placement on the table."""
    read = _Read(problem, table)
    return {
        placed.key: Reason(Cause.LOGGED)
        if placed.logged
        else _binding(placed, _bounds(read, placed))
        for placed in table.placements
    }


def _binding(placed: Placement, bounds: list[Reason]) -> Reason:
    known = [bound for bound in bounds if bound.until is not None and bound.until <= placed.start]
    if not known:
        return Reason(Cause.AT_ONCE)
    # Of equal bounds the first named wins: drying explains more than busy hands.
    return max(known, key=lambda bound: bound.until or 0)


def _bounds(read: _Read, placed: Placement) -> list[Reason]:
    problem = read.problem
    index = problem.index[placed.key]
    begin = read.lead_in(placed)
    lead = placed.start - begin
    bounds = [
        *_gates(problem, read.table, index),
        *_pin(problem, index, placed),
        *_places(read, index, placed),
        *_noise(problem, placed, lead),
    ]
    stretch = problem.calendar.stretch_at(begin)
    if stretch is not None:
        bounds += _before(read, placed, begin, stretch)
        bounds.append(Reason(Cause.BENCH_TIME, stretch.interval.start + lead))
    bounds.append(Reason(Cause.AT_ONCE, problem.now + lead))
    return bounds


def _gates(problem: Problem, table: Table, index: int) -> list[Reason]:
    start = table.start[index]
    found = []
    for number in problem.activities[index].gates:
        gate = problem.gates[number]
        for opening in table.windows(number):
            opens = opening.opens + opening.window.preparation_minutes
            if opens <= start < max(opening.closes, opens + 1) and opening.opens < FOREVER:
                mark = opening.window.opens
                state = mark.state.value if mark is not None and mark.state is not None else ""
                cause = Cause.DRYING if gate.place else Cause.WINDOW
                if mark is None:
                    cause = Cause.ORDER
                found.append(Reason(cause, opens, str(gate.before), state))
                break
    fingers = table.fingers_from(index)
    if fingers and fingers <= start:
        found.append(Reason(Cause.DRYING, fingers, detail="dry-to-handle"))
    last = max(problem.activities[index].before, key=table.end.__getitem__, default=None)
    if last is not None:
        key = problem.activities[last].one.key
        found.append(Reason(Cause.ORDER, table.end[last], str(key)))
    return found


def _pin(problem: Problem, index: int, placed: Placement) -> list[Reason]:
    allowed = problem.activities[index].allowed or ()
    return [
        Reason(Cause.PIN, interval.start)
        for interval in allowed
        if interval.start <= placed.start < interval.end
    ]


def _places(read: _Read, index: int, placed: Placement) -> list[Reason]:
    """Return when a drying place came free at this very start, if one did."""
    activity = read.problem.activities[index]
    frees = read.freed.get(activity.location, [])
    at = bisect_right(frees, placed.start)
    if activity.wet and at and frees[at - 1] == placed.start:
        return [Reason(Cause.DRYING_PLACE, placed.start, activity.location)]
    return []


def _wet_until(problem: Problem, table: Table, index: int) -> int:
    one = problem.activities[index].one
    spots = [(one.key.project, one.key.model, place) for place, _ in one.films]
    return max((table.wet.get(spot, 0) for spot in spots), default=0)


def _noise(problem: Problem, placed: Placement, lead: int) -> list[Reason]:
    calendar = problem.calendar
    activity = problem.activities[problem.index[placed.key]]
    found = []
    if activity.loud:
        quiet = calendar.quiet(placed.start - lead - 1440, placed.start)
        found += [Reason(Cause.QUIET, interval.end + lead) for interval in quiet]
    if activity.light:
        light = calendar.daylight(placed.start, placed.end) or ()
        found += [Reason(Cause.DAYLIGHT, interval.start) for interval in light]
    return found


def _before(read: _Read, placed: Placement, begin: int, stretch: Stretch) -> list[Reason]:
    """Return what hands or the airbrush were busy with right before."""
    at = bisect_right(read.busy, (begin, "\U0010ffff"))
    if not at or read.busy[at - 1][0] <= stretch.interval.start:
        return []
    end, what = read.busy[at - 1]
    until = end + placed.start - begin
    changes = [w for w in read.serving.get(placed.key, ()) if w.kind is BenchKind.CHANGE]
    if changes:
        return [Reason(Cause.AIRBRUSH, until, changes[0].airbrush, changes[0].coating)]
    return [Reason(Cause.HANDS, until, what)]
