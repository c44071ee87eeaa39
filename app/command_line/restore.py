"""Bring your bench book back from a copy; the present one is kept."""

from __future__ import annotations

import argparse
import os
from pathlib import Path

from app.command_line.backup import copy_named
from app.command_line.book_source import add_book
from app.command_line.output import FINE, answer
from app.service import book_copies
from app.service.books import open_book, usual_path, write_whole
from planner.values.refusal import Refused
from storage.bundle import unpack
from storage.errors import BookDamaged
from storage.restoring import rescue, restore

EXAMPLES = """\
  tackfree restore 1                         the newest copy that backup --list shows
  tackfree restore /media/stick/bench.tackfree
  tackfree restore --everything all.zip --book new.tackfree
  tackfree restore --readable out.json       what can be read of a damaged book
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument(
        "copy", nargs="?", metavar="COPY", help="its number in backup --list, its name, or a file"
    )
    parser.add_argument(
        "--everything", type=Path, metavar="ZIP", help="make the book of such an archive"
    )
    parser.add_argument(
        "--readable", type=Path, metavar="FILE", help="write what can be read of a damaged book"
    )
    add_book(parser)


def run(args: argparse.Namespace) -> int:
    """Restore a copy: as an edit where the book is sound, else in its place."""
    path = Path(os.path.realpath(getattr(args, "book", None) or usual_path()))
    if args.readable is not None:
        return _write_readable(path, args.readable)
    if args.everything is not None:
        path.parent.mkdir(parents=True, exist_ok=True)
        photos = unpack(args.everything, path)
        answer(f"{path}: the book with its history, and {photos} photos")
        return FINE
    if args.copy is None:
        raise Refused("COPY", "say which; tackfree backup --list names them")
    copy = copy_named(path, args.copy)
    try:
        with open_book(path) as bench:
            restore(bench, copy)
        answer(f"{path} holds what the copy holds; undo takes that back")
    except BookDamaged as problem:
        aside = rescue(path, copy)
        answer(f"{path} was damaged ({problem.mend})\nit is {aside} now; the copy is in its place")
    except Refused:
        if path.exists():
            raise
        path.parent.mkdir(parents=True, exist_ok=True)
        rescue(path, copy)
        answer(f"{path} was not there; the copy is")
    return FINE


def _write_readable(path: Path, target: Path) -> int:
    found = book_copies.readable(path)
    if found is None:
        raise Refused(str(path), "nothing of it can be read; restore a copy")
    data, said = found
    write_whole(target, data)
    answer(f"{said}\nwritten to {target}; tackfree import takes it in")
    return FINE
