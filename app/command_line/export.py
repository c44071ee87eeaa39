"""Write calendar, bench sheet, build record, tables or exchange files."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from functools import cached_property
from pathlib import Path

from app.command_line.output import FINE, NOT_SOUND, answer, note, progress
from app.command_line.source import add_now, add_source, book_of, in_file, now_of, read_file
from app.service import planning, table
from app.service.books import usual_path, write_whole
from app.service.calendar_file import calendar_bytes
from app.service.sheet_file import Paper, sheet_bytes
from planner.values.book import Book
from planner.values.refusal import Refused, demand

EXAMPLES = """\
  tackfree export --calendar evenings.ics
  tackfree export --sheet tonight.pdf --tonight --paper Letter
  tackfree export harbour.json --table harbour.csv --now 2031-03-05T19:30
"""


class Outgoing:
    """What goes out: a book, and its plan once something asks for it."""

    def __init__(self, args: argparse.Namespace) -> None:
        self.args = args
        self.book: Book = book_of(args)
        self.now = now_of(args, self.book)
        self.origin: Path = args.file or getattr(args, "book", None) or usual_path()
        self.incomplete = False

    @cached_property
    def planned(self) -> planning.Planned:
        """The plan from now on."""
        with progress("planning"):
            planned = planning.plan(self.book, self.now)
        for flag in planned.verdict.flags:
            note(flag)
        self.incomplete = bool(planned.plan.unplaced)
        return planned


def _calendar(out: Outgoing, path: Path) -> str:
    planned = out.planned
    last = read_file(path) if path.exists() else b""
    try:
        made = calendar_bytes(planned.book, planned.plan, out.now, out.origin, last)
    except Refused as problem:
        raise in_file(path, problem) from problem
    write_whole(path, made.data)
    return f": {made.told()}"


def _table(out: Outgoing, path: Path) -> str:
    planned = out.planned
    write_whole(path, table.csv_bytes(planned.plan, planned.book))
    return ""


def _sheet(out: Outgoing, path: Path) -> str:
    planned = out.planned
    with progress("drawing"):
        drawn = sheet_bytes(
            planned.book, planned.plan, Paper(out.args.paper), tonight=out.args.tonight
        )
    write_whole(path, drawn)
    return ""


Write = Callable[[Outgoing, Path], str]
OUTPUTS: tuple[tuple[str, str, str, Write], ...] = (
    ("calendar", "X.ics", "the evenings as a calendar (iCalendar), one event each", _calendar),
    ("sheet", "X.pdf", "the bench sheet for the wall, with boxes to tick (PDF)", _sheet),
    ("table", "X.csv", "the plan as comma-separated values", _table),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_now(parser)
    for name, shape, words, _ in OUTPUTS:
        parser.add_argument(f"--{name}", type=Path, metavar=shape, help=words)
    parser.add_argument(
        "--paper", choices=[one.value for one in Paper], default=Paper.A4, help="of the sheet"
    )
    parser.add_argument("--tonight", action="store_true", help="the sheet: one evening alone")


def run(args: argparse.Namespace) -> int:
    """Write each of the files asked for."""
    wanted = [(name, getattr(args, name), write) for name, _, _, write in OUTPUTS]
    wanted = [one for one in wanted if one[1] is not None]
    names = ", ".join(f"--{name}" for name, *_ in OUTPUTS)
    demand(bool(wanted), "export", f"says nothing to write; give one of {names}")
    out = Outgoing(args)
    for name, path, _ in wanted:
        demand(
            path.resolve() != out.origin.resolve(),
            f"--{name}",
            "is the file that is read; choose another name",
        )
    for _, path, write in wanted:
        told = write(out, path)
        answer(f"{path} written{told}")
    return NOT_SOUND if out.incomplete else FINE
