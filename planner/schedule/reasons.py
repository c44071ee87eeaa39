"""Why a piece of work stands where it stands, read off the finished plan.

For each pass every thing that could hold it is turned into "not before
this minute"; the latest of them is the binding cause.
"""

from __future__ import annotations

from planner.bench import Stretch
from planner.schedule.problem import Problem
from planner.schedule.state import FOREVER, Table
from planner.values.plan import BenchKind, BenchWork, Cause, PassKey, Placement, Reason
from planner.values.step import Tool


def reasons_of(problem: Problem, table: Table) -> dict[PassKey, Reason]:
    """Return the binding cause of every placement on the table."""
    serving = _lead_in(table)
    busy = sorted(
        [(piece.end, placed.key.step) for placed in table.placements for piece in placed.pieces]
        + [(work.interval.end, work.kind.value) for work in table.bench]
    )
    reasons = {}
    for placed in table.placements:
        if placed.logged:
            reasons[placed.key] = Reason(Cause.LOGGED)
            continue
        bounds = _bounds(problem, table, placed, serving.get(placed.key, placed.start), busy)
        reasons[placed.key] = _binding(placed, bounds)
    return reasons


def _binding(placed: Placement, bounds: list[Reason]) -> Reason:
    known = [bound for bound in bounds if bound.until is not None and bound.until <= placed.start]
    if not known:
        return Reason(Cause.AT_ONCE)
    # Of equal bounds the first named wins: drying explains more than busy hands.
    return max(known, key=lambda bound: (bound.until or 0, -bounds.index(bound)))


def _lead_in(table: Table) -> dict[PassKey, int]:
    """Return when the preparation or set-up right before a pass begins."""
    begins: dict[PassKey, int] = {}
    for work in table.bench:
        if work.serves is not None:
            begins[work.serves] = min(
                work.interval.start, begins.get(work.serves, work.interval.start)
            )
    return begins


def _bounds(
    problem: Problem, table: Table, placed: Placement, begin: int, busy: list[tuple[int, str]]
) -> list[Reason]:
    index = problem.index[placed.key]
    lead = placed.start - begin
    bounds = [
        *_gates(problem, table, index),
        *_pin(problem, index, placed),
        *_places(problem, table, index, placed),
    ]
    stretch = problem.calendar.stretch_at(begin)
    bounds += _noise(problem, placed, lead)
    bounds += _before(table, placed, begin, lead, busy, stretch)
    if stretch is not None:
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
    for before in problem.activities[index].before:
        key = problem.activities[before].one.key
        found.append(Reason(Cause.ORDER, table.end[before], str(key)))
    return found


def _pin(problem: Problem, index: int, placed: Placement) -> list[Reason]:
    allowed = problem.activities[index].allowed or ()
    return [
        Reason(Cause.PIN, interval.start)
        for interval in allowed
        if interval.start <= placed.start < interval.end
    ]


def _places(problem: Problem, table: Table, index: int, placed: Placement) -> list[Reason]:
    """Return when the last drying place that it needed came free."""
    activity = problem.activities[index]
    if not placed.key or not activity.one.films:
        return []
    capacity = problem.places[activity.location].drying_places
    needed = sum(unit.stands for unit in activity.one.units)
    ends = []
    used = 0
    for other in table.placements:
        held = problem.index[other.key]
        films = problem.activities[held].one.films
        if other.start >= placed.start or not films or held == index:
            continue
        until = max(_wet_until(problem, table, held), other.end)
        if until <= placed.start:
            ends.append(until)
        elif problem.activities[held].location == activity.location:
            used += sum(unit.stands for unit in problem.activities[held].one.units)
    if ends and used + needed == capacity:
        return [Reason(Cause.DRYING_PLACE, max(ends), activity.location)]
    return []


def _wet_until(problem: Problem, table: Table, index: int) -> int:
    one = problem.activities[index].one
    spots = [(one.key.project, one.key.model, place) for place, _ in one.films]
    return max((table.wet.get(spot, 0) for spot in spots), default=0)


def _noise(problem: Problem, placed: Placement, lead: int) -> list[Reason]:
    calendar = problem.calendar
    tool = problem.activities[problem.index[placed.key]].one.step.tool
    if tool is Tool.AIRBRUSH:
        quiet = calendar.quiet(placed.start - lead - 1440, placed.start)
        return [Reason(Cause.QUIET, interval.end + lead) for interval in quiet]
    if tool is Tool.CAN:
        light = calendar.daylight(placed.start, placed.end) or ()
        return [Reason(Cause.DAYLIGHT, interval.start) for interval in light]
    return []


def _before(
    table: Table,
    placed: Placement,
    begin: int,
    lead: int,
    busy: list[tuple[int, str]],
    stretch: Stretch | None,
) -> list[Reason]:
    """Return what hands or the airbrush were busy with right before."""
    ended = [(end, what) for end, what in busy if end <= begin]
    if not ended or stretch is None or ended[-1][0] < stretch.interval.start:
        return []
    end, what = ended[-1]
    bounds = []
    setup = _setup_for(table, placed)
    if setup is not None and setup.kind is BenchKind.CHANGE:
        bounds.append(Reason(Cause.AIRBRUSH, end + lead, setup.airbrush, setup.coating))
    bounds.append(Reason(Cause.HANDS, end + lead, what))
    return bounds


def _setup_for(table: Table, placed: Placement) -> BenchWork | None:
    return next(
        (w for w in table.bench if w.serves == placed.key and w.kind is not BenchKind.PREPARE),
        None,
    )
