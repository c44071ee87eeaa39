"""Take projects, sequences, own paints or a logger's air into your bench book."""

from __future__ import annotations

import argparse
from contextlib import nullcontext
from datetime import date
from pathlib import Path

from app.command_line.book_source import add_book, in_file
from app.command_line.import_table import add_table_arguments, take_table
from app.command_line.output import FINE, answer
from app.service.books import open_book, starter_book, usual_path
from app.service.clock import local_zone
from app.service.csv_reading import is_table
from app.service.importing import Household, Imported, import_edit, import_file
from app.service.merging import Difference, Item, MergeChoice, differences
from app.service.project_files import keep_photos, read_projects
from planner.values.book import Book
from planner.values.refusal import Refused, demand, unknown
from storage.exchange import Exchange

EXAMPLES = """\
  tackfree import harbour.json --dry-run                what it brings, and what differs
  tackfree import harbour.json --take "coating sand=theirs"
  tackfree import harbour.json --take "project harbour=beside" --household room
  tackfree import harbour.tackfree.zip                  a project with its photos
  tackfree import paints.csv                            kind;colour;finish;ml;code
  tackfree import logger.csv --location bench --dry-run time;temperature;humidity
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument(
        "file", type=Path, metavar="FILE", help="exchange file, project file, or a table (CSV)"
    )
    add_book(parser)
    parser.add_argument(
        "--take",
        action="append",
        default=[],
        metavar='"KIND NAME=CHOICE"',
        help="of a thing that differs: mine, theirs or beside",
    )
    parser.add_argument(
        "--household",
        action="append",
        default=[],
        choices=[part.value for part in Household],
        help="take this from the file in place of yours",
    )
    parser.add_argument("--dry-run", action="store_true", help="tell, but change nothing")
    add_table_arguments(parser)


def run(args: argparse.Namespace) -> int:
    """Take the file in."""
    with args.file.open("rb") if args.file.is_file() else nullcontext() as file:
        begins = file.read(200) if file else b""
    if is_table(begins):
        return take_table(args)
    read = read_projects(args.file)
    exchange = read.exchange
    chosen = getattr(args, "book", None)
    book = _book_or_new(chosen)
    found = differences(book, exchange.book)
    tried = _taken(args, book, exchange, found)  # what is refused begins no book
    if args.dry_run:
        answer("\n".join(_told(tried, found)))
        return FINE
    with open_book(chosen, create=True) as bench_book:
        book = bench_book.book()
        done = _taken(args, book, exchange, differences(book, exchange.book))
        edit = import_edit(args.file.name, done)
        keep_photos(read, bench_book.path)
        bench_book.apply(edit.name, edit.book)
    answer("\n".join(_told(done, ())))
    return FINE


def _book_or_new(chosen: Path | None) -> Book:
    """Return the book that is there, or what a new one would hold."""
    if not (chosen or usual_path()).exists():
        return starter_book(local_zone(), date.today())  # noqa: DTZ011 - a local evening
    with open_book(chosen) as bench_book:
        return bench_book.book()


def _taken(
    args: argparse.Namespace, book: Book, exchange: Exchange, found: tuple[Difference, ...]
) -> Imported:
    theirs = frozenset(map(Household, args.household))
    if not book.projects and not args.household:
        theirs = frozenset(Household)  # a new book has nothing of its own yet
    choices = dict(_choice(word, found) for word in args.take)
    try:
        return import_file(book, exchange, theirs=theirs, choices=choices)
    except Refused as problem:
        raise in_file(args.file, problem) from problem


def _choice(word: str, found: tuple[Difference, ...]) -> tuple[Item, MergeChoice]:
    """Return what was chosen for one thing, from "coating sand=theirs"."""
    item, _, choice = word.rpartition("=")
    known = {f"{difference.kind} {difference.name}": difference.item for difference in found}
    demand(
        choice in list(MergeChoice),
        "--take",
        f'"{word}" makes no choice; end it with =mine, =theirs or =beside',
    )
    if item not in known:
        raise Refused("--take", unknown("thing that differs", item, known))
    return known[item], MergeChoice(choice)


def _told(done: Imported, shown: tuple[Difference, ...]) -> list[str]:
    came = (*done.projects, *done.sequences)
    lines = [f"taken in: {_both(old, new)}" for old, new in came]
    lines += [f"there already: {name}" for name in done.already]
    lines += [f"comes with it: {name}" for name in done.added]
    lines += [f"replaced: {kind} {name}" for kind, name in done.replaced]
    lines += [f"yours kept, the file's differs: {kind} {name}" for kind, name in done.kept]
    for difference in shown:
        lines += ["", f"{difference.kind} {difference.name}"]
        lines += [
            f"  {'≠' if side.differs else ' '} {side.field}: yours {side.ours} | "
            f"the file's {side.theirs}"
            for side in difference.sides
        ]
    return lines or ["Nothing that is not in your book already."]


def _both(old: str, new: str) -> str:
    return old if old == new else f"{old}, as {new}"
