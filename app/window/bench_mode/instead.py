"""What else could be begun now, though the plan has it later.  No Qt.

The cure for impatience with wet paint is another model.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from app.window.picture import Picture
from planner.schedule.fit import fit_in
from planner.schedule.problem import Problem
from planner.schedule.state import Table
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.step import Stage


@dataclass(frozen=True)
class Other:
    """A pass that can be begun at ``start`` in this stretch, and takes until ``end`` [minutes]."""

    key: PassKey
    stage: Stage
    parts: tuple[str, ...]
    start: int
    end: int


def instead(picture: Picture, now: int, without: Iterable[PassKey] = ()) -> tuple[Other, ...]:
    """Return what fits into the rest of this stretch, the soonest first.

    Only what has been logged is taken to be there, so that nothing on the
    list waits for work of the plan.
    """
    stretch = picture.calendar.next_stretch(now)
    if stretch is None:
        return ()
    problem = Problem(picture.book, now, cure=picture.cure, calendar=picture.calendar)
    table = _facts(problem, now)
    left_out = set(without)
    found = []
    for activity in problem.activities:
        one = activity.one
        if activity.index in table.end or one.key in left_out or activity.blocked:
            continue
        if any(before not in table.end for before in activity.before):
            continue
        fit = fit_in(table, activity.index, stretch, now)
        if fit is not None and fit.last:
            found.append(Other(one.key, one.step.stage, one.parts, fit.start, fit.end))
    return tuple(sorted(found, key=lambda other: (other.start, other.key)))


def _facts(problem: Problem, now: int) -> Table:
    table = Table(problem, now)
    for key, entry in sorted(problem.logged.items(), key=lambda item: item[1].start):
        index = problem.index.get(key)
        if index is None:
            continue
        start = minute_of(entry.start, up=False)
        end = minute_of(entry.end) if entry.end is not None else now
        table.lay(index, start, max(start + 1, end))
    return table
