"""Looking ahead: whether what closes soon can still be met after a fit."""

from __future__ import annotations

from collections.abc import Collection

from planner.schedule.fit import Fit, earliest_fit
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.placing import place, put_away

SOON = 36 * 60  # closings nearer than this are guarded exactly [min]
LONGEST_CHAIN = 12


def keeps_windows(
    table: PartialSchedule, fit: Fit, dead: Collection[int], guarded: Collection[int]
) -> bool:
    """Tell whether every closing that runs, or that ``fit`` starts, can still be met.

    Parameters
    ----------
    dead
        Activities that were given up.
    guarded
        Activities whose closing is looked at however far ahead it lies.
    """
    problem = table.problem
    begun = problem.closing_from.get(fit.index, ()) if fit.last else ()
    starts = [problem.ends[number][1] for number in begun]
    together = problem.activities[fit.index].together if fit.last else ()
    starts += [index for index in together if index not in table.end]
    running = [
        index
        for index in table.awaited
        if index != fit.index
        and index not in dead
        and (index in guarded or table.deadline(index) < fit.end + SOON)
    ]
    if not starts and not running:
        return True
    trial = table.clone()
    if fit.stretch.interval.start > trial.time:
        put_away(trial)
    place(trial, fit)
    all_near = bool(together) or fit.index in guarded
    waiting = {*running, *starts}
    for index in sorted(waiting, key=lambda waiter: (trial.deadline(waiter), waiter)):
        if index in trial.end or index in dead:
            continue
        near = all_near or index in guarded or trial.deadline(index) < trial.time + SOON
        if near and not _chain(trial, index, set()):
            return False
    return True


def _chain(table: PartialSchedule, index: int, on_the_way: set[int]) -> bool:
    """Place a pass and all that it still waits for, one after the other; tell if it works."""
    if index in table.end:
        return True
    if index in on_the_way or len(on_the_way) > LONGEST_CHAIN:
        return len(on_the_way) > LONGEST_CHAIN  # too long to try: hope, the rerun guards
    on_the_way.add(index)
    for before in table.problem.activities[index].before:
        if not _chain(table, before, on_the_way):
            return False
    if any(before not in table.end for before in table.problem.activities[index].before):
        return True
    if table.problem.activities[index].blocked:
        return False
    if table.held_up(index):
        return True  # until the work begun is finished; the rerun guards
    fit = earliest_fit(table, index, table.time)
    while fit is not None:
        if fit.stretch.interval.start > table.time:
            put_away(table)
        place(table, fit)
        if fit.last:
            return True
        fit = earliest_fit(table, index, table.time)
    return False
