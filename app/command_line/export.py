"""Write the plan as a table for a spreadsheet."""

from __future__ import annotations

import argparse
from pathlib import Path

from app.command_line.output import FINE, NOT_SOUND, answer, note, progress
from app.command_line.source import add_now, add_source, book_of, now_of
from app.service import planning, table
from app.service.books import write_whole
from planner.values.refusal import demand

EXAMPLES = """\
  tackfree export --table evenings.csv
  tackfree export harbour.json --table harbour.csv --now 2031-03-05T19:30
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_now(parser)
    parser.add_argument(
        "--table", type=Path, required=True, metavar="X.csv", help="write comma-separated values"
    )


def run(args: argparse.Namespace) -> int:
    """Plan, and write the table."""
    book = book_of(args)
    demand(
        args.file is None or args.table.resolve() != args.file.resolve(),
        "--table",
        "is the exchange file itself; choose another name",
    )
    now = now_of(args, book)
    with progress("planning"):
        planned = planning.plan(book, now)
    write_whole(args.table, table.csv_bytes(planned.plan, book))
    for flag in planned.verdict.flags:
        note(flag)
    answer(f"{args.table} written")
    return NOT_SOUND if planned.plan.unplaced else FINE
