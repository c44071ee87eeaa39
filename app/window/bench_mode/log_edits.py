"""A longer or shorter stretch."""

from __future__ import annotations

from app.service import edits
from app.service.edits import Edit
from planner.bench import BenchCalendar
from planner.values.book import Book


def longer(book: Book, now: int, minutes: int) -> Edit:
    """Make the stretch that runs so much longer, or begin one now."""
    stretch = BenchCalendar(book.bench_time).stretch_at(now)
    left = stretch.interval.end - now if stretch else 0
    made = edits.only_minutes(book, now, min(1440, left + minutes))
    return Edit(f"{minutes} min more at the bench", made.book)


def stop(book: Book, now: int) -> Edit:
    """End the stretch that runs."""
    return Edit("stopped for tonight", edits.only_minutes(book, now, 1).book)
