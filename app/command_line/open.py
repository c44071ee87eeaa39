"""Open a bench book, or an exchange file to be taken into your own, in the window.

A desktop calls this when a file is double-clicked.  What is wrong with an
exchange file is told in the window, for there may be no terminal.
"""

from __future__ import annotations

import argparse
from pathlib import Path

from app.command_line.book_source import BOOK_MAGIC
from planner.values.refusal import Refused

EXAMPLES = """\
  tackfree open                    your own bench book, as tackfree alone does
  tackfree open club.tackfree      another bench book
  tackfree open harbour.json       your own, with this project to be taken in
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument(
        "file", nargs="?", type=Path, metavar="FILE", help="bench book or exchange file"
    )


def run(args: argparse.Namespace) -> int:
    """Open the window."""
    if args.open_window is None:
        raise Refused("", "no window can be opened here; try tackfree --help")
    book: Path | None = getattr(args, "book", None)
    if args.file is None:
        return int(args.open_window(book, None))
    if _is_book(args.file):
        if book is not None:
            raise Refused("--book", "goes with an exchange file; a bench book is opened by itself")
        return int(args.open_window(args.file, None))
    return int(args.open_window(book, None, args.file))


def _is_book(path: Path) -> bool:
    """Tell a bench book by its first bytes, or an empty or foreign file by its ending."""
    try:
        if path.exists() and not path.is_file():
            raise Refused(str(path), "is no file; give a bench book or an exchange file")
        with path.open("rb") as file:
            start = file.read(len(BOOK_MAGIC))
    except OSError as problem:
        why = problem.strerror or type(problem).__name__
        raise Refused(str(path), f"cannot be read ({why}); check the path") from problem
    except ValueError as problem:  # a zero byte in the path
        raise Refused(repr(str(path)), "is no path; check it") from problem
    return start == BOOK_MAGIC or path.suffix == ".tackfree"
