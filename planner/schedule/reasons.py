"""Why a piece of work stands where it stands, read off the finished plan.

For each pass every thing that could hold it is turned into "not before
this minute"; the latest of them is the binding cause.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from operator import itemgetter
from typing import NamedTuple

from planner.air import QUARTER
from planner.bench import Stretch
from planner.cure import Band
from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.schedule.problem import Problem
from planner.values.coating import State
from planner.values.plan import BenchKind, BenchWork, Cause, PassKey, Placement, Reason
from planner.values.step import Bound, Trait

BEST = "best"  # detail of a window's cause: it was aimed at its best moment


class _Stood(NamedTuple):
    """A unit on its drying places, from a coat's start until that coat can be held."""

    since: int
    until: int
    unit: int
    stands: int


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
        self.stood: dict[str, list[_Stood]] = defaultdict(list)
        self.freed: set[tuple[str, int]] = set()  # where, and when, a coat could be held
        for placed in table.placements:
            activity = problem.activities[problem.index[placed.key]]
            until = _handled_from(problem, table, activity.index) if activity.wet else 0
            self.stood[activity.location] += [
                _Stood(placed.start, until, unit, stands) for unit, stands in activity.wet
            ]
            self.freed.add((activity.location, until))

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
    stretch = problem.calendar.stretch_at(begin)
    since = placed.start - 1440
    if stretch is not None and begin != stretch.interval.start:
        since = stretch.interval.start + lead - 2 * QUARTER  # then bench time does
    bounds = [
        *_gates(problem, read.table, index),
        *_pin(problem, index, placed),
        *_places(read, index, placed),
        *_noise(problem, placed, lead, since),
    ]
    if stretch is not None:
        if begin == stretch.interval.start:
            free = max([0, *(bound[0] - lead for bound in bounds)])
            bounds += _kept_for(read, index, placed, free, lead, stretch)
        bounds += _followed(problem, read.table, index)
        bounds += _before(read, placed, begin, stretch)
        helped = problem.activities[index].pass_.step.helper
        cause = Cause.HELPER if helped else Cause.BENCH_TIME
        bounds.append((stretch.interval.start + lead, cause, "", ""))
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


def _followed(problem: Problem, table: PartialSchedule, index: int) -> list[_Bound]:
    """Return before which starts a closing would come too soon for what follows."""
    start = table.start[index]
    found: list[_Bound] = []
    for number in problem.closing_from.get(index, ()):
        later = problem.ends[number][1]
        if later not in table.start:
            continue
        to_end = problem.gates[number].closing is Bound.END
        needed = table.end[later] if to_end else table.start[later] + 1
        spares = [
            opening.closes - needed
            for opening in table.windows(number)
            if opening.opens <= table.start[later] and needed <= opening.closes < FOREVER
        ]
        if spares:
            key = problem.activities[later].pass_.key
            found.append((start - min(spares), Cause.CLOSING, key, ""))
    return found


def _kept_for(
    read: _Read, index: int, placed: Placement, free: int, lead: int, stretch: Stretch
) -> list[_Bound]:
    """Return this very start if the session before had room for it, but not for what follows.

    ``free`` is from when nothing else holds it, ``lead`` its set-up [min].
    """
    problem, table = read.problem, read.table
    closing = problem.closing_from.get(index, ())
    sessions = problem.calendar.stretches(problem.now, stretch.interval.start) if closing else ()
    if not sessions:
        return []
    session = sessions[-1].interval
    idle_from = read.busy[bisect_right(read.busy, (session.end, "\U0010ffff")) - 1][0]
    start = max(free, session.start, problem.now, min(idle_from, session.end)) + lead
    if start + placed.end - placed.start > session.end:
        return []
    for number in closing:
        later = problem.ends[number][1]
        opening = next(iter(table.windows(number)), None)
        if opening is None or later not in table.end:
            continue
        closes = start + opening.closes - placed.start
        done = start + table.end[later] - placed.start
        if done > session.end and closes <= stretch.interval.start:
            return [(placed.start, Cause.CLOSING, problem.activities[later].pass_.key, "")]
    return []


def _pin(problem: Problem, index: int, placed: Placement) -> list[_Bound]:
    allowed = problem.activities[index].allowed or ()
    return [
        (interval.start, Cause.PIN, "", "")
        for interval in allowed
        if interval.start <= placed.start < interval.end
    ]


def _places(read: _Read, index: int, placed: Placement) -> list[_Bound]:
    """Return when a drying place came free at this very start, if it was waited for."""
    activity = read.problem.activities[index]
    start = placed.start
    if not activity.wet or (activity.location, start) not in read.freed:
        return []
    stood = read.stood[activity.location]
    taken = {
        one.unit: one.stands
        for one in stood
        if one.since < start <= one.until and one.unit not in activity.held
    }
    needed = sum([stands for _, stands in activity.wet])
    if sum(taken.values()) + needed <= read.problem.places[activity.location].drying_places:
        return []
    return [(start, Cause.DRYING_PLACE, activity.location, "")]


def _handled_from(problem: Problem, table: PartialSchedule, index: int) -> int:
    """Return when the films of one pass are surely dry to handle, whatever comes over them."""
    found = 0
    for place, _ in problem.activities[index].pass_.films:
        film = table.films[index, place]
        ready = problem.cure.ready_at(film, State.DRY_TO_HANDLE, Band.LATE)
        found = max(found, FOREVER if ready is None else ready)
    return found


def _noise(problem: Problem, placed: Placement, lead: int, since: int) -> list[_Bound]:
    """Return when tools and air let a pass begin; air that was fit at ``since`` is no bound."""
    calendar = problem.calendar
    activity = problem.activities[problem.index[placed.key]]
    found: list[_Bound] = []
    if activity.loud:
        quiet = calendar.quiet(placed.start - lead - 1440, placed.start)
        found += [(interval.end + lead, Cause.QUIET, "", "") for interval in quiet]
    if activity.smells:
        quiet = calendar.quiet(placed.start - 1440, placed.start)
        found += [(interval.end, Cause.QUIET, "", Trait.SMELLS.value) for interval in quiet]
    began = _fair_since(problem, placed, since)
    if began is not None:
        found.append((began, Cause.AIR, "", ""))
    if activity.light:
        light = calendar.daylight(placed.start, placed.end) or ()
        found += [(interval.start, Cause.DAYLIGHT, "", "") for interval in light]
    return found


def _fair_since(problem: Problem, placed: Placement, earliest: int) -> int | None:
    """Return since when the air has let a pass be laid, if not since before ``earliest``."""
    index = problem.index[placed.key]
    for air in problem.fit_airs[index]:
        since = air.fit_since(placed.start, earliest)
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
