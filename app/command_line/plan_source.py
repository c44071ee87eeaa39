"""The plan that a command tells of: of the bench book the one that was shown, brought up to date.

So a calendar, a sheet and a table that are written one after the other agree,
and agree with the window.
"""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from app.service import planning
from app.service.books import open_book
from app.service.shown_plans import shown_before
from planner.values.book import Book
from planner.values.forecast import Forecast
from planner.values.moment import Interval


def planned_for(args: argparse.Namespace, book: Book, now: int) -> planning.Planned:
    """Plan a book from ``now`` on; of the person's own, near to the plan that was shown last.

    What is planned for another moment than the present is not kept.
    """
    if args.file is not None:
        return planning.plan(book, now)
    with open_book(getattr(args, "book", None)) as bench:
        before = shown_before(bench, book)
        planned = planning.plan(
            book, now, last=before.last, promised=before.promised, shown=before.exact
        )
        if args.now is None and book == bench.book() and not bench.read_only:
            bench.plans.keep(planned.plan)
    return planned


def promise(args: argparse.Namespace, told_by: str, times: Sequence[Interval], now: int) -> None:
    """Note that a sheet or a calendar tells of evenings of the person's own book."""
    if args.file is None and args.now is None:
        with open_book(getattr(args, "book", None)) as bench:
            if not bench.read_only:
                bench.plans.promise(told_by, times, now)


def taught(args: argparse.Namespace) -> tuple[Forecast, ...]:
    """Return the dates that were said of the person's own book before; none for a file."""
    if args.file is not None:
        return ()
    with open_book(getattr(args, "book", None)) as bench:
        return bench.forecasts.all()


def keep_forecasts(args: argparse.Namespace, forecasts: Sequence[Forecast]) -> None:
    """Keep dates that are said of the person's own book, as of the present moment."""
    if args.file is None and args.now is None:
        with open_book(getattr(args, "book", None)) as bench:
            if not bench.read_only:
                bench.forecasts.keep(forecasts)


def keep_plan(args: argparse.Namespace, planned: planning.Planned) -> None:
    """Keep another plan of the person's own book as the one that is shown."""
    if args.file is None and args.now is None:
        with open_book(getattr(args, "book", None)) as bench:
            if not bench.read_only:
                bench.plans.keep(planned.plan)


def promised_to(args: argparse.Namespace) -> tuple[Interval, ...]:
    """Return the evenings that somebody was told of; none for a file."""
    if args.file is not None:
        return ()
    with open_book(getattr(args, "book", None)) as bench:
        return bench.plans.promised()
