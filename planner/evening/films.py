"""What lies on the table by the logbook alone: films, and the windows that they open and close."""

from __future__ import annotations

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.problem import Problem
from planner.schedule.state import Table
from planner.values.book import Book
from planner.values.moment import minute_of, zone_named
from planner.values.plan import PassKey


def laid(book: Book, now: int, cure: Cure | None = None) -> Table:
    """Return the table as the logbook left it; work under way counts as ending now."""
    zone = zone_named(book.bench_time.zone)
    problem = Problem(
        book, now, cure=cure or Cure(book.room, zone), calendar=calendar_of(book.bench_time)
    )
    table = Table(problem, now)
    entries = sorted(problem.logged.items(), key=lambda item: (item[1].start, item[0]))
    for key, entry in entries:
        index = problem.index.get(key)
        if index is None:
            continue
        start = minute_of(entry.start, up=False)
        end = now if entry.end is None else minute_of(entry.end)
        table.lay(index, start, max(start + 1, end))
    return table


def index_of(table: Table, key: PassKey) -> int | None:
    """Return the number of a pass; None if its project is not planned."""
    return table.problem.index.get(key)
