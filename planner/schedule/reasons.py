"""Why a piece of work stands where it stands, read off the finished plan.

For each pass every thing that could hold it is turned into "not before
this minute"; the latest of them is the binding cause.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from operator import itemgetter

from planner.bench import Stretch
from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.schedule.problem import Problem
from planner.values.plan import BenchKind, BenchWork, Cause, PassKey, Placement, Reason
from planner.values.step import Trait

BEST = "best"  # detail of a window's cause: it was aimed at its best moment


class _Read:
    """The finished plan, indexed for asking what held whom."""

    def __init__(self, problem: Problem, table: PartialSchedule) -> None:
        self.problem = problem
        self.table = table
        self.serving: dict[PassKey, list[BenchWork]] = defaultdict(list)
        for work in table.bench:
            if work.serves is not None:
                self.serving[work.serves].append(work)
        self.busy = sorted(
            [
                (
                    piece.end - problem.activities[problem.index[placement.key]].pass_.alone,
                    str(placement.key),
                )
                for placement in table.placements
                for piece in placement.pieces
            ]
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


def reasons_of(problem: Problem, table: PartialSchedule) -> dict[PassKey, Reason]:
    """Return the binding cause of every placement on the table."""
    read = _Read(problem, table)
    return {
        placed.key: Reason(Cause.LOGGED)
        if placed.logged
        else _binding(placed, _bounds(read, placed))
        for placed in table.placements
    }


# Something that let go: when, the cause, about what, which state or coating.  A plain
# tuple, for there are many, and only the binding one is put into words.
_Bound = tuple[int, Cause, object, str]


def _binding(placed: Placement, bounds: list[_Bound]) -> Reason:
    start = placed.start
    # Of equal bounds the first named wins: drying explains more than busy hands.
    known = [bound for bound in bounds if bound[0] <= start]
    if not known:
        return Reason(Cause.AT_ONCE)
    until, cause, about, detail = max(known, key=itemgetter(0))
    return Reason(cause, until, str(about), detail)


def _bounds(read: _Read, placed: Placement) -> list[_Bound]:
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
        bounds.append((stretch.interval.start + lead, Cause.BENCH_TIME, "", ""))
    bounds.append((problem.now + lead, Cause.AT_ONCE, "", ""))
    return bounds


def _gates(problem: Problem, table: PartialSchedule, index: int) -> list[_Bound]:
    start = table.start[index]
    found: list[_Bound] = []
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
                found.append((opens, cause, gate.before, state))
                if opens < opening.best <= start:
                    found.append((opening.best, Cause.WINDOW, gate.before, BEST))
                break
    fingers = table.fingers_from(index)
    if fingers and fingers <= start:
        found.append((fingers, Cause.DRYING, "", "dry-to-handle"))
    last = max(problem.activities[index].before, key=table.end.__getitem__, default=None)
    if last is not None:
        key = problem.activities[last].pass_.key
        found.append((table.end[last], Cause.ORDER, key, ""))
    return found


def _pin(problem: Problem, index: int, placed: Placement) -> list[_Bound]:
    allowed = problem.activities[index].allowed or ()
    return [
        (interval.start, Cause.PIN, "", "")
        for interval in allowed
        if interval.start <= placed.start < interval.end
    ]


def _places(read: _Read, index: int, placed: Placement) -> list[_Bound]:
    """Return when a drying place came free at this very start, if one did."""
    activity = read.problem.activities[index]
    frees = read.freed.get(activity.location, [])
    at = bisect_right(frees, placed.start)
    if activity.wet and at and frees[at - 1] == placed.start:
        return [(placed.start, Cause.DRYING_PLACE, activity.location, "")]
    return []


def _wet_until(problem: Problem, table: PartialSchedule, index: int) -> int:
    one = problem.activities[index].pass_
    spots = [(one.key.project, one.key.model, place) for place, _ in one.films]
    return max((table.wet.get(spot, 0) for spot in spots), default=0)


def _noise(problem: Problem, placed: Placement, lead: int) -> list[_Bound]:
    calendar = problem.calendar
    activity = problem.activities[problem.index[placed.key]]
    found: list[_Bound] = []
    if activity.loud:
        quiet = calendar.quiet(placed.start - lead - 1440, placed.start)
        found += [(interval.end + lead, Cause.QUIET, "", "") for interval in quiet]
    if activity.smells:
        quiet = calendar.quiet(placed.start - 1440, placed.start)
        found += [(interval.end, Cause.QUIET, "", Trait.SMELLS.value) for interval in quiet]
    began = _fair_since(problem, placed)
    if began is not None:
        found.append((began, Cause.AIR, "", ""))
    if activity.light:
        light = calendar.daylight(placed.start, placed.end) or ()
        found += [(interval.start, Cause.DAYLIGHT, "", "") for interval in light]
    return found


def _fair_since(problem: Problem, placed: Placement) -> int | None:
    """Return since when the air has let a pass be laid, if it did not within the day before."""
    index = problem.index[placed.key]
    for air in problem.fit_airs[index]:
        since = air.fit_since(placed.start, placed.start - 1440)
        if since is not None:
            return since
    return None


def _before(read: _Read, placed: Placement, begin: int, stretch: Stretch) -> list[_Bound]:
    """Return what hands or the airbrush were busy with right before."""
    at = bisect_right(read.busy, (begin, "\U0010ffff"))
    if not at or read.busy[at - 1][0] <= stretch.interval.start:
        return []
    end, what = read.busy[at - 1]
    until = end + placed.start - begin
    changes = [w for w in read.serving.get(placed.key, ()) if w.kind is BenchKind.CHANGE]
    if changes:
        return [(until, Cause.AIRBRUSH, changes[0].airbrush, changes[0].coating)]
    return [(until, Cause.HANDS, what, "")]
