"""What lies on the table by the logbook alone: films, and the windows that they open and close."""

from __future__ import annotations

from collections.abc import Iterable

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.moment import minute_of, zone_named
from planner.values.plan import Placement


def laid(
    book: Book,
    now: int,
    cure: Cure | None = None,
    planned: Iterable[Placement] = (),
    *,
    until: int | None = None,
) -> PartialSchedule:
    """Return the table as the logbook left it; work under way counts as ending now.

    What goes on alone ends when it will have taken its minutes.
    Of ``planned`` is laid what begins before ``now`` and is not logged; of
    the logbook all, or what was begun before ``until``.
    """
    zone = zone_named(book.bench_time.zone)
    problem = Problem(
        book, now, cure=cure or Cure(book.room, zone), calendar=calendar_of(book.bench_time)
    )
    table = PartialSchedule(problem, now)
    entries = sorted(problem.logged.items(), key=lambda item: (item[1].start, item[0]))
    for key, entry in entries:
        index = problem.index.get(key)
        start = minute_of(entry.start, up=False)
        if index is None or (until is not None and start >= until):
            continue
        pass_ = problem.activities[index].pass_
        left = start + pass_.minutes if pass_.alone else 0
        end = max(now, left) if entry.end is None else minute_of(entry.end)
        table.lay(index, start, max(start + 1, end))
    for placed in sorted(planned, key=lambda placed: (placed.start, placed.key)):
        number = problem.index.get(placed.key)
        if number is not None and placed.key not in problem.logged and placed.start < now:
            table.lay(number, placed.start, placed.end)
    return table
