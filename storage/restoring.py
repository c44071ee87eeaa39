"""Bringing a book back: from a copy, out of a damaged file, or from what a session still knows."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import NamedTuple

from sqlalchemy.exc import DBAPIError

from planner.values.book import Book
from planner.values.message import called
from storage import journal, photos
from storage.atomic_write import name_new, settle, unfinished
from storage.backups import BackupReason, keep
from storage.bench_book import BenchBook
from storage.database import engine_on, transaction
from storage.edit_writing import fill
from storage.errors import BookTrouble, told_plainly
from storage.sound_book import read_file
from storage.store import read_what_can_be


def restore(bench: BenchBook, copy: Path) -> int:
    """Bring back all that a copy holds, as an edit that can be undone; a copy is made before.

    Raises
    ------
    BookTrouble
        If the copy is no sound bench book, or there is no room; nothing has changed then.
    """
    with opened_copy(copy) as other:
        keep(bench.path, BackupReason.RESTORE)
        return bench.apply(called("restore {file}", file=copy.name), other.book())


def rescue(path: Path, copy: Path) -> Path | None:
    """Put a copy in the place of a damaged book; return where that lies now, if it was there.

    What lay beside it as its journal goes with it, untouched: somebody may
    get more out of both together.

    Raises
    ------
    BookTrouble
        If the copy is no sound bench book; nothing has moved then.
    """
    path = Path(os.path.realpath(path))
    with opened_copy(copy):
        pass
    with told_plainly(path), unfinished(path) as fresh:
        shutil.copyfile(copy, fresh)
        aside = set_aside(path)
        name_new(fresh, path)
    return aside


def set_aside(path: Path) -> Path | None:
    """Give a damaged book another name, with all that belongs to it; raise `OSError` if it cannot.

    Should this end half way, what is left under the old name is known to be
    of another book (`storage.header`).
    """
    if not path.exists():
        return None
    number = 1
    while (aside := path.with_name(f"{path.name}.damaged-{number}")).exists():
        number += 1
    path.rename(aside)
    for end in ("-journal", "-wal", "-shm"):
        with suppress(FileNotFoundError):
            path.with_name(path.name + end).rename(aside.with_name(aside.name + end))
    settle(path.parent)
    return aside


def save_elsewhere(bench: BenchBook, target: Path) -> tuple[BenchBook, bool]:
    """Save a book whose own file is lost; return it opened, and whether its history came along.

    Raises
    ------
    BookTrouble
        If something lies there, or it cannot be written.
    """
    target = Path(os.path.realpath(target))
    if target.exists():
        raise BookTrouble(str(target), "is there already; choose another name")
    with told_plainly(target), unfinished(target) as half:
        half.write_bytes(bench.file.content())
        whole = _holds(half, bench)
        if not whole:
            half.unlink()
            fill(half, bench.known())
        try:
            name_new(half, target)
        except FileExistsError:
            raise BookTrouble(str(target), "is there already; choose another name") from None
    copy_photos(bench.path, target)
    return BenchBook.open(target), whole


class Salvage(NamedTuple):
    """What could still be read of a damaged book, and what could not."""

    book: Book
    lost: tuple[str, ...]


def salvage(path: Path, starter: Book) -> Salvage | None:
    """Return what can be read of a damaged book, changing nothing; None where nothing can.

    Each project is read by itself.  What cannot be read and must be there is
    taken from ``starter``.
    """
    with tempfile.TemporaryDirectory(prefix="tackfree-salvage-") as folder:
        copy = Path(folder) / path.name
        try:
            for end in ("-journal", "-wal", ""):
                beside = path.with_name(path.name + end)
                if beside.exists():
                    shutil.copyfile(beside, copy.with_name(copy.name + end))
            with transaction(engine_on(copy), copy) as connection:
                return Salvage(*read_what_can_be(connection, starter))
        except (OSError, BookTrouble, DBAPIError):
            return None


def last_line(path: Path) -> int | None:
    """Return the newest line of the journal of a damaged book; None where it cannot be read."""
    with tempfile.TemporaryDirectory(prefix="tackfree-salvage-") as folder:
        copy = Path(folder) / path.name
        try:
            shutil.copyfile(path, copy)
            with transaction(engine_on(copy, "ro"), copy) as connection:
                return journal.stand(connection).id
        except (OSError, ValueError, BookTrouble, DBAPIError):
            return None


def copy_photos(book: Path, target: Path) -> None:
    """Copy the kept photos of one book to another; those that it has already stay."""
    there = photos.folder_of(target)
    with told_plainly(there):
        try:
            every = sorted(photos.folder_of(book).iterdir())
        except OSError:
            return
        for photo in every:
            if photos.NAME.fullmatch(photo.name):
                there.mkdir(exist_ok=True)
                if not (there / photo.name).exists():
                    with unfinished(there / photo.name) as half, suppress(FileExistsError):
                        shutil.copyfile(photo, half)
                        name_new(half, there / photo.name)


def _holds(path: Path, bench: BenchBook) -> bool:
    """Tell whether a file is sound and holds all that a session has read or written."""
    try:
        read = read_file(path)
    except BookTrouble:
        return False
    known = bench.journal()
    return read is not None and read.entries[: len(known)] == known


@contextmanager
def opened_copy(copy: Path) -> Iterator[BenchBook]:
    """Open a copy of a copy, so that it is not itself brought up to date or touched."""
    with tempfile.TemporaryDirectory(prefix="tackfree-copy-") as folder:
        other = Path(folder) / copy.name
        try:
            with told_plainly(copy):
                shutil.copyfile(copy, other)
            opened = BenchBook.open(other)
        except BookTrouble as problem:
            raise type(problem)(str(copy), problem.mend) from problem
        with opened:
            yield opened
