"""Say how far models were before they came into the book."""

from __future__ import annotations

import argparse

from app.command_line.book_source import add_book
from app.command_line.change import add_models, chosen_models, effect_lines
from app.command_line.output import FINE, answer, progress
from app.service.begun_models import begun_before
from app.service.books import open_book
from app.service.clock import current_minute, read_moment
from app.service.edit_effects import effect_of
from planner.values.moment import zone_named
from planner.values.plausible_dates import just_told
from planner.values.project import StageReached

EXAMPLES = """\
  tackfree reached primed
  tackfree reached "base coated" --model "Winch Truck Gannet" --at 2031-03-01T20:00
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    stages = [one.value for one in StageReached if one is not StageReached.NOTHING]
    parser.add_argument("reached", choices=stages, metavar="STAGE", help=", ".join(stages))
    add_models(parser)
    parser.add_argument("--at", metavar="T", help="when the last of it was done; else a week ago")
    add_book(parser)


def run(args: argparse.Namespace) -> int:
    """Note it, and tell what it does to the end of the work."""
    now = current_minute()
    with open_book(getattr(args, "book", None)) as bench:
        book = bench.book()
        when = None
        if args.at is not None:
            when = read_moment(args.at, zone_named(book.bench_time.zone), "--at")
            just_told(when, now, "--at")
        keys = chosen_models(book, args.model)
        edit = begun_before(book, keys, StageReached(args.reached), when, now)
        with progress("planning"):
            effect = effect_of(book, edit.book, now)
        bench.apply(edit.name, edit.book, edit.merge, edit.verb)
    answer("\n".join([edit.name, *effect_lines(book, effect)]))
    return FINE
