"""Putting work on the table: cleaning, preparation, set-up and the pass itself."""

from __future__ import annotations

from planner.schedule.fit import Fit
from planner.schedule.partial_schedule import EMPTY, Cup, PartialSchedule
from planner.values.moment import Interval
from planner.values.plan import BenchKind, BenchWork, Placement


def put_away(table: PartialSchedule) -> None:
    """Clean every loaded cup, from the table's time on."""
    for name in sorted(table.cups):
        if table.cups[name].coating:
            clean(table, name, table.time)


def clean(table: PartialSchedule, name: str, start: int) -> None:
    """Clean one cup from a minute on."""
    end = start + table.problem.airbrushes[name].clean_minutes
    table.bench.append(BenchWork(BenchKind.CLEAN, Interval(start, end), name))
    table.cups[name] = EMPTY
    table.time = end


def place(table: PartialSchedule, fit: Fit) -> None:
    """Put a fit on the table: cleaning, preparation, set-up and the work itself."""
    activity = table.problem.activities[fit.index]
    key = activity.pass_.key
    if fit.cleans:
        table.time = fit.hands
        for name in [fit.airbrush] if fit.airbrush else sorted(table.cups):
            if table.cups[name].coating:
                clean(table, name, table.time)
    if fit.prepare:
        interval = Interval(fit.work, fit.work + fit.prepare)
        table.bench.append(BenchWork(BenchKind.PREPARE, interval, serves=key))
    if fit.setup is not None:
        interval = Interval(fit.start - fit.setup_minutes, fit.start)
        table.bench.append(BenchWork(fit.setup, interval, fit.airbrush, activity.pass_.load, key))
    if fit.airbrush:
        held = table.cups.get(fit.airbrush, EMPTY)
        mixed = held.mixed if fit.setup is None else fit.start - fit.setup_minutes
        table.cups[fit.airbrush] = Cup(activity.pass_.load, mixed, fit.end)
    pieces = (*table.pieces.get(fit.index, ()), Interval(fit.start, fit.end))
    table.pieces[fit.index] = pieces
    table.time = fit.free
    if not fit.last:
        left = table.left.get(fit.index, activity.pass_.minutes)
        table.left[fit.index] = left - (fit.end - fit.start)
        return
    table.left.pop(fit.index, None)
    table.placements.append(Placement(key, pieces, fit.airbrush))
    table.lay(fit.index, pieces[0].start, fit.end)
