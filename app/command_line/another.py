"""Put models into the book that are painted as one in the logbook was."""

from __future__ import annotations

import argparse

from app.command_line.book_source import add_book
from app.command_line.change import chosen_models, effect_lines
from app.command_line.output import FINE, answer, progress
from app.service.books import open_book
from app.service.clock import current_minute
from app.service.edit_effects import effect_of
from app.service.painted_again import another_like

EXAMPLES = """\
  tackfree another "Winch Truck Gannet" "Winch Truck Heron"
  tackfree another "Winch Truck Gannet" Heron Ibis --note "second batch"
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("model", metavar="MODEL", help="one that was painted, or project/model")
    parser.add_argument("names", nargs="+", metavar="NAME", help="what the new ones are called")
    parser.add_argument("--note", default="", metavar="TEXT", help="a note on the order")
    add_book(parser)


def run(args: argparse.Namespace) -> int:
    """Put them in, and tell what it does to the end of the work."""
    now = current_minute()
    with open_book(getattr(args, "book", None)) as bench:
        book = bench.book()
        (key,) = chosen_models(book, [args.model])
        edit = another_like(book, key, args.names, note=args.note)
        with progress("planning"):
            effect = effect_of(book, edit.book, now)
        bench.apply(edit.name, edit.book, edit.merge, edit.verb)
    answer("\n".join([edit.name, *effect_lines(book, effect)]))
    return FINE
