"""Copy your bench book, or list its copies.

The program makes copies by itself: before an upgrade, before something is
restored, and daily where the book was edited.
"""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from app.command_line.book_source import add_book, add_json
from app.command_line.output import FINE, NOT_SOUND, answer, document, note, progress
from app.service import book_copies
from app.service.books import open_book
from planner.values.refusal import Refused
from storage import backups
from storage.bundle import pack

EXAMPLES = """\
  tackfree backup                    make a copy now, beside the book
  tackfree backup --to /media/stick/bench.tackfree
  tackfree backup --everything all.zip
  tackfree backup --list             every copy, what is in it, how it differs
  tackfree backup --check            read every copy through
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("--to", type=Path, metavar="FILE", help="write the copy there")
    parser.add_argument(
        "--everything", type=Path, metavar="ZIP", help="book, history and photos in one archive"
    )
    parser.add_argument("--list", action="store_true", help="list the copies, and make none")
    parser.add_argument(
        "--check", action="store_true", help="list the copies; status 1 if one is not sound"
    )
    add_book(parser)
    add_json(parser)


def run(args: argparse.Namespace) -> int:
    """Make a copy, or list them."""
    with open_book(getattr(args, "book", None)) as bench:
        if args.list or args.check:
            with progress("reading the copies"):
                lines = book_copies.listed(bench.path, bench.journal())
            _tell(lines, args.json)
            broken = any(not line.holds for line in lines)
            return NOT_SOUND if args.check and broken else FINE
        if args.everything is not None:
            with progress("packing"):
                photos, missing = pack(bench, args.everything)
            for photo in missing:
                note(f"{photo} is missing beside the book, and left out")
            answer(f"{args.everything}: the book with its history, and {photos} photos")
            return FINE
        if args.to is not None:
            bench.backup(args.to)
            made = args.to
        else:
            made = backups.keep(bench.path, backups.BackupReason.ASKED).path
    if args.json:
        document({"made": str(made)})
    else:
        answer(f"{made}\nread back and sound")
    return FINE


def copy_named(book: Path, name: str) -> Path:
    """Return the copy that a person means: a number of the list, its name, or any file.

    Raises
    ------
    Refused
        If there is none.
    """
    every = backups.copies(book)
    if name.isdecimal() and 1 <= int(name) <= len(every):
        return every[int(name) - 1].path
    for one in every:
        if one.path.name == name:
            return one.path
    if Path(name).is_file():
        return Path(name)
    raise Refused(name, "is no copy; tackfree backup --list names them")


def _tell(lines: tuple[book_copies.CopyLine, ...], as_json: bool) -> None:
    if as_json:
        document([_data(line) for line in lines])
    elif not lines:
        answer("There is no copy yet; tackfree backup makes one.")
    for number, line in enumerate(() if as_json else lines, 1):
        answer(f"{number:3}  {book_copies.when(line.copy)}  {book_copies.WHY[line.copy.reason]}")
        answer("     " + "; ".join(filter(None, (line.holds, line.differs))))


def _data(line: book_copies.CopyLine) -> dict[str, Any]:
    return {
        "path": str(line.copy.path),
        "at": line.copy.at.isoformat(),
        "reason": line.copy.reason.value,
        "holds": line.holds,
        "differs": line.differs,
    }
