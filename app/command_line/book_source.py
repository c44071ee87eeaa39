"""Where a command gets its book from, and the one line that refuses a bad one."""

from __future__ import annotations

import argparse
from pathlib import Path

from app.command_line.output import note
from app.service.books import open_book
from app.service.clock import behind, current_minute, read_moment
from app.service.overtaken_work import overtaken_lines
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.present import present
from planner.values.refusal import Refused

BOOK_MAGIC = b"SQLite format 3\x00"


def add_source(parser: argparse.ArgumentParser) -> None:
    """Let a command take an exchange file, or else a bench book."""
    parser.add_argument(
        "file", nargs="?", type=Path, metavar="FILE", help="exchange file; without it, your book"
    )
    add_book(parser)


def add_book(parser: argparse.ArgumentParser) -> None:
    """Let a command name the bench book; it may stand before the command as well."""
    parser.add_argument(
        "--book",
        type=Path,
        default=argparse.SUPPRESS,
        metavar="BOOK",
        help="another bench book than your own",
    )


def add_now(parser: argparse.ArgumentParser) -> None:
    """Let a command take a moment to plan from."""
    parser.add_argument(
        "--now", metavar="T", help="ISO 8601 time to plan from, as 2031-05-31T19:30+02:00"
    )


def add_json(parser: argparse.ArgumentParser) -> None:
    """Let a command answer with a JSON document."""
    parser.add_argument(
        "--json", action="store_true", help="print one JSON document instead of text"
    )


def book_of(args: argparse.Namespace) -> Book:
    """Return the book that a command is about.

    Raises
    ------
    Refused
        With the file's name, the place in it and the mend.
    """
    chosen: Path | None = getattr(args, "book", None)
    if args.file is None:
        with open_book(chosen) as bench_book:
            return bench_book.book()
    if chosen is not None:
        raise Refused("--book", "goes without FILE; give one of the two")
    from storage.exchange import load  # noqa: PLC0415 - not for the window's own start

    data = read_file(args.file)
    if data.startswith(BOOK_MAGIC):
        raise Refused(str(args.file), "is a bench book, not an exchange file; put --book before it")
    try:
        return load(data).book
    except Refused as problem:
        raise in_file(args.file, problem) from problem


def now_of(args: argparse.Namespace, book: Book) -> int:
    """Return the minute to plan from: ``--now`` or this minute, or the logbook's last if later."""
    return present(book, _clock(args, book))


def note_of_log(args: argparse.Namespace, book: Book) -> None:
    """Say where the plan begins later than was asked, and what the logbook seems to lack."""
    if (line := behind(book, _clock(args, book))) is not None:
        note(line)
    for line in overtaken_lines(book):
        note(line)


def _clock(args: argparse.Namespace, book: Book) -> int:
    if args.now is None:
        return current_minute()
    return read_moment(args.now, zone_named(book.bench_time.zone))


def read_file(path: Path) -> bytes:
    """Return the bytes of a file, no more than an exchange file may have.

    Raises
    ------
    Refused
        If it cannot be read.
    """
    from storage.bounded_read import read_bounded  # noqa: PLC0415
    from storage.strict import MOST_BYTES  # noqa: PLC0415

    return read_bounded(path, MOST_BYTES)


def in_file(path: Path, problem: Refused) -> Refused:
    """Return a refusal with the name of its file in front."""
    place = f"{path}: {problem.place}" if problem.place else str(path)
    return Refused(place, problem.mend)
