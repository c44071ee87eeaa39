"""What is in each cup at this moment: by the logbook, and by what was filled since.  No Qt."""

from __future__ import annotations

from app.service import logbook
from app.window.bench_mode.restart_state import Memory
from planner.bench import calendar_of
from planner.evening.closing_check import cups_used
from planner.schedule.cups_at_start import cleaned_since, logged_since
from planner.values.book import Book
from planner.values.moment import Interval


def cups_now(book: Book, memory: Memory, stretch: int, now: int) -> dict[str, str]:
    """Return what each airbrush holds, for the jobs of the stretch that began at ``stretch``.

    Filling is no fact of the logbook, so memory says what was filled since
    something was sprayed or cleaned last.  Outside bench time a plan takes
    every cup to be clean; whoever works on there knows better.
    """
    fills = {  # in the very minute of a filling it was cleaned before that
        name: (coating, at)
        for name, (coating, at) in memory.fills(stretch).items()
        if not cleaned_since(book, name, at + 2)
    }
    if calendar_of(book.bench_time).stretch_at(now) is None:
        return {name: coating for name, (coating, _) in fills.items()}
    held = {name: cup.coating for name, cup in logbook.cups_now(book, now).items()}
    since = {
        name: coating for name, (coating, at) in fills.items() if not logged_since(book, name, at)
    }
    return held | since


def cups_to_check(book: Book, memory: Memory, stretch: int, span: Interval) -> dict[str, str]:
    """Return what each airbrush held last in ``span`` and was not cleaned of, to be looked at."""
    return cups_used((), book, span) | cups_now(book, memory, stretch, span.end - 1)
