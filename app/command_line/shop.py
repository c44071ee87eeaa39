"""How much of each coating the work left takes, when it runs out, and what to buy."""

from __future__ import annotations

import argparse

from app.command_line.book_source import add_json, add_now, add_source, book_of, now_of
from app.command_line.output import FINE, answer, document, note, progress
from app.command_line.plan_source import planned_for
from app.service.shopping import shopping_document, shopping_text
from planner.quantity import shopping
from planner.values.moment import zone_named

EXAMPLES = """\
  tackfree shop                      your bench book against your stock
  tackfree shop harbour.json --json  a file, for another program
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_now(parser)
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Print amounts, stock, when it runs out and what to buy."""
    book = book_of(args)
    now = now_of(args, book)
    with progress("planning"):
        planned = planned_for(args, book, now)
    for flag in planned.verdict.flags:
        note(flag)
    found = shopping(book, planned.plan, now)
    if args.json:
        document(shopping_document(found, zone_named(book.bench_time.zone)))
    else:
        answer(shopping_text(found, book))
    return FINE
