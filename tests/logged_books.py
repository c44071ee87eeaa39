"""Books in which some of a plan was done just as planned."""

from __future__ import annotations

from functools import cache

from app.service import demos, planning
from planner.evening import log_entries
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.plan import PassKey, Plan
from planner.values.project import Logged


def done_as_planned(book: Book, plan: Plan, count: int) -> tuple[Book, tuple[PassKey, ...], int]:
    """Return the book with the first passes of a plan in the log, their keys, and the end."""
    zone = zone_named(book.bench_time.zone)
    ahead = [placed for placed in plan.placements if not placed.logged]
    first = sorted(ahead, key=lambda placed: (placed.start, placed.key))[:count]
    for placed in first:
        fact = Logged(
            model=placed.key.model,
            step=placed.key.step,
            coat=placed.key.coat,
            start=moment_of(placed.start, zone),
            end=moment_of(placed.end, zone),
        )
        book = log_entries.written(book, placed.key.project, fact)
    return book, tuple(placed.key for placed in first), max(placed.end for placed in first)


@cache
def demo_plan(name: str) -> tuple[Book, Plan]:
    """Return a demonstration project and a quick plan of it."""
    book = demos.read(name).book
    return book, planning.plan(book, demos.first_evening(book), quick=True).plan
