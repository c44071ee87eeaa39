"""Write calendar, bench sheet, build record, tables or exchange files."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from functools import cached_property, partial
from pathlib import Path

from app.command_line.book_source import add_now, add_source, book_of, in_file, now_of, read_file
from app.command_line.output import FINE, NOT_SOUND, answer, note, progress
from app.command_line.plan_source import planned_for, promise
from app.service import csv_export, planning, run_sheet_text
from app.service.bench_sheet_file import Paper, sheet_bytes
from app.service.books import usual_path, write_whole
from app.service.build_record import build_record
from app.service.calendar_file import calendar_bytes
from app.service.document_html import html_of
from app.service.document_markdown import markdown_of
from app.service.exporting import export, export_sequence
from app.service.project_files import packed
from app.service.shown_plans import evenings_of
from app.service.tonight_page import tonight_page
from planner.values.book import Book
from planner.values.refusal import Refused, demand, demand_known
from storage import photos

EXAMPLES = """\
  tackfree export --calendar evenings.ics
  tackfree export --sheet tonight.pdf --tonight --paper Letter
  tackfree export --project "Three harbour tenders" harbour.json
  tackfree export --project "Three harbour tenders" harbour.tackfree.zip
  tackfree export --record yard.html --only yard
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
        self.marks = csv_export.COMMA if args.decimal_comma else csv_export.POINT

    @cached_property
    def planned(self) -> planning.Planned:
        """The plan from now on."""
        with progress("planning"):
            planned = planned_for(self.args, self.book, self.now)
        for flag in planned.verdict.flags:
            note(flag)
        for line in run_sheet_text.unplaced_lines(planned.plan):
            note(line)
        self.incomplete = bool(planned.plan.unplaced)
        return planned

    def promise(self, told_by: str, *, first_only: bool) -> None:
        """Note the evenings that somebody is told of by what was written."""
        planned = self.planned
        times = evenings_of(planned.calendar, planned.plan, self.now, first_only=first_only)
        promise(self.args, told_by, times, self.now)


def _calendar(out: Outgoing, path: Path) -> str:
    planned = out.planned
    last = read_file(path) if path.exists() else b""
    try:
        made = calendar_bytes(planned.book, planned.plan, out.now, out.origin, last)
    except Refused as problem:
        raise in_file(path, problem) from problem
    write_whole(path, made.data)
    out.promise("calendar", first_only=False)
    return f": {made.told()}"


def _record(out: Outgoing, path: Path) -> str:
    record = build_record(out.book, out.now, photos.folder_of(out.origin), only=out.args.only)
    as_markdown = path.suffix.lower() in (".md", ".markdown")
    write_whole(path, markdown_of(record) if as_markdown else html_of(record))
    return ""


def _log(out: Outgoing, path: Path) -> str:
    write_whole(path, csv_export.log_bytes(out.book, out.args.only, marks=out.marks))
    return ""


def _table(out: Outgoing, path: Path) -> str:
    planned = out.planned
    write_whole(path, csv_export.csv_bytes(planned.plan, planned.book, marks=out.marks))
    return ""


def _sheet(out: Outgoing, path: Path) -> str:
    planned = out.planned
    with progress("drawing"):
        drawn = sheet_bytes(
            planned.book, planned.plan, Paper(out.args.paper), tonight=out.args.tonight
        )
    write_whole(path, drawn)
    out.promise("sheet", first_only=out.args.tonight)
    return ""


def _tonight_page(out: Outgoing, path: Path) -> str:
    planned = out.planned
    write_whole(path, tonight_page(planned.book, planned.plan, out.now))
    out.promise("sheet", first_only=True)
    return ""


def _shopping(out: Outgoing, path: Path) -> str:
    planned = out.planned
    write_whole(path, csv_export.shopping_bytes(out.book, planned.plan, out.now, marks=out.marks))
    return ""


Write = Callable[[Outgoing, Path], str]
OUTPUTS: tuple[tuple[str, str, str, Write], ...] = (
    ("calendar", "X.ics", "the evenings as a calendar (iCalendar), one event each", _calendar),
    ("sheet", "X.pdf", "the bench sheet for the wall, with boxes to tick (PDF)", _sheet),
    (
        "tonight-page",
        "X.html",
        "tonight as a page for a phone, without a network",
        _tonight_page,
    ),
    ("record", "X.html", "what was done, as one page (X.md: Markdown), photos within", _record),
    ("table", "X.csv", "the plan as comma-separated values", _table),
    ("log", "X.csv", "the logbook as comma-separated values", _log),
    ("shopping", "X.csv", "what is needed and to be bought, likewise", _shopping),
)


PARTS: dict[str, tuple[Callable[[Book, str], bytes], str]] = {
    "project": (
        lambda book, name: export(book, (name,)),
        "one project as an exchange file; X.zip: with its photos",
    ),
    "sequence": (export_sequence, "one sequence as an exchange file"),
}


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    add_source(parser)
    add_now(parser)
    for name, shape, told, _ in OUTPUTS:
        parser.add_argument(f"--{name}", type=Path, metavar=shape, help=told)
    for name, (_, told) in PARTS.items():
        parser.add_argument(
            f"--{name}", nargs=2, metavar=("NAME", "X.json"), action="append", help=told
        )
    parser.add_argument(
        "--paper", choices=[paper.value for paper in Paper], default=Paper.A4, help="of the sheet"
    )
    parser.add_argument(
        "--only", default="", metavar="PROJECT", help="record and log: of one project"
    )
    parser.add_argument(
        "--decimal-comma",
        action="store_true",
        help="tables: 1,5 and semicolons between cells, as German and other spreadsheets read",
    )
    parser.add_argument("--tonight", action="store_true", help="the sheet: one evening alone")


def run(args: argparse.Namespace) -> int:
    """Write each of the files asked for."""
    wanted: list[tuple[str, Path, Write]] = [
        (name, path, write)
        for name, _, _, write in OUTPUTS
        if (path := getattr(args, name.replace("-", "_"))) is not None
    ]
    for option, (make, _) in PARTS.items():
        for name, path in getattr(args, option) or ():
            wanted.append((option, Path(path), partial(_part, make, name)))
    names = ", ".join(f"--{name}" for name in (*(output[0] for output in OUTPUTS), *PARTS))
    demand(bool(wanted), "export", f"says nothing to write; give one of {names}")
    out = Outgoing(args)
    if args.only:
        demand_known(
            args.only, [project.name for project in out.book.projects], "project", "--only"
        )
    for name, path, _ in wanted:
        demand(
            path.resolve() != out.origin.resolve(),
            f"--{name}",
            "is the file that is read; choose another name",
        )
    written = []
    try:
        for _, path, write in wanted:
            written.append(f"{path} written{write(out, path)}")
    finally:  # told at the end: who reads a line of it and goes stops no file
        for line in written:
            answer(line)
    return NOT_SOUND if out.incomplete else FINE


def _part(make: Callable[[Book, str], bytes], name: str, out: Outgoing, path: Path) -> str:
    if make is PARTS["project"][0] and path.suffix.lower() == ".zip":
        whole = packed(out.book, (name,), out.origin)
        write_whole(path, whole.data)
        for photo in whole.missing:
            note(f"{photo} is missing beside the book, and left out")
        return f": with {whole.photos} photos"
    write_whole(path, make(out.book, name))
    return ""
