"""Copies of a bench book: made while it is in use, checked, thinned, and told apart.

They lie in a folder beside the book.  Each is a bench book itself.
"""

from __future__ import annotations

import os
import re
import sqlite3
from collections.abc import Callable, Hashable, Iterable
from contextlib import closing, suppress
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, tzinfo
from enum import StrEnum
from itertools import count
from pathlib import Path
from typing import Any, Final

from planner.values.book import Book
from planner.values.message import message
from storage.atomic_write import name_new, unfinished
from storage.database import engine_on
from storage.errors import BookTrouble, told_plainly, trouble_of
from storage.held_file import HANDLES
from storage.journal import Entry
from storage.sound_book import SoundBook, read_file

DAYS: Final = 7  # of which the newest daily copy of each is kept
WEEKS: Final = 8  # the same
MONTHS: Final = 12  # the same
FRESH: Final = timedelta(hours=1)
SET_ASIDE: Final = 5  # copies that were made before something was restored
_NAME: Final = re.compile(
    r"(\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d)Z-r(\d+)-(daily|asked|upgrade|restore)(?:-\d+)?\.tackfree"
)


class BackupReason(StrEnum):
    """Why a copy was made."""

    DAILY = "daily"
    ASKED = "asked"
    UPGRADE = "upgrade"
    RESTORE = "restore"


@dataclass(frozen=True, order=True)
class Copy:
    """One copy of a book; ``revision`` is the newest line of its journal."""

    at: datetime
    revision: int
    reason: BackupReason
    path: Path


@dataclass(frozen=True)
class BackupDifference:
    """How a copy differs from the book: edits and facts that the one has and the other lacks.

    ``common`` tells whether both were one book once.
    """

    fewer: tuple[Entry, ...]
    more: tuple[Entry, ...]
    common: bool


def folder_of(book: Path) -> Path:
    """Return the folder in which the copies of a book lie: beside the book, not a link."""
    book = Path(os.path.realpath(book))
    return book.with_name(f"{book.name}.backups")


def copies(book: Path) -> tuple[Copy, ...]:
    """Return the copies of a book, the newest first; other files of the folder are none."""
    found = []
    try:
        paths = sorted(folder_of(book).iterdir())
    except OSError:
        return ()
    for path in paths:
        if (named := _NAME.fullmatch(path.name)) and path.is_file():
            at = datetime.strptime(named[1], "%Y-%m-%dT%H-%M-%S").replace(tzinfo=UTC)
            found.append(Copy(at, int(named[2]), BackupReason(named[3]), path))
    return tuple(sorted(found, reverse=True))


def keep(book: Path, reason: BackupReason, now: datetime | None = None) -> Copy:
    """Copy a book that may be in use; the copy is read back before it gets its name.

    Raises
    ------
    BookTrouble
        If it cannot be written, or is not sound.
    """
    at = (now or datetime.now(UTC)).astimezone(UTC).replace(microsecond=0)
    folder = folder_of(book)
    with told_plainly(folder):
        folder.mkdir(exist_ok=True)
    with unfinished(folder / book.name) as half:
        _copy(book, half)
        read = read_file(half)
        revision = read.stand.id if read else 0
        for number in count(1):
            more = f"-{number}" if number > 1 else ""
            target = folder / f"{at:%Y-%m-%dT%H-%M-%S}Z-r{revision}-{reason}{more}.tackfree"
            with suppress(FileExistsError), told_plainly(target):
                name_new(half, target)
                break
    return Copy(at, revision, reason, target)


def keep_daily(book: Path, revision: int, now: datetime | None = None) -> Copy | None:
    """Copy a book unless the newest copy is of this revision, or an hour old; thin the copies.

    Raises
    ------
    BookTrouble
        As for `keep`.
    """
    every = copies(book)
    if every and every[0].revision == revision:
        return None
    age = (now or datetime.now(UTC)) - every[0].at if every else FRESH
    if timedelta() <= age < FRESH and every[0].reason is BackupReason.DAILY:
        return None
    made = keep(book, BackupReason.DAILY, now)
    thin(book)
    return made


def write_copy(book: Path, target: Path) -> None:
    """Write a sound copy of a book in use under a name that nothing has.

    Raises
    ------
    FileExistsError
        If something has that name.
    BookTrouble
        If it cannot be written, or is not sound.
    """
    if target.exists():
        raise FileExistsError(str(target))
    with unfinished(target) as half:
        _copy(book, half)
        read_file(half)
        try:
            name_new(half, target)
        except FileExistsError:
            raise
        except OSError as problem:
            why = problem.strerror or type(problem).__name__
            raise BookTrouble(
                str(target), message("cannot be written ({why})", why=why)
            ) from problem


def thin(book: Path, zone: tzinfo | None = None) -> tuple[Path, ...]:
    """Take away daily copies of which there are newer ones of their time; return them.

    Kept is the newest of each of the last 7 days, 8 weeks and 12 months that
    have one, and the last 5 that were made before something was restored.
    What was asked for, or made before an upgrade, stays.
    """
    every = copies(book)
    daily = [one for one in every if one.reason is BackupReason.DAILY]
    kept = set()
    rules: tuple[tuple[int, Callable[[datetime], Hashable]], ...] = (
        (DAYS, lambda at: at.date()),
        (WEEKS, lambda at: at.isocalendar()[:2]),
        (MONTHS, lambda at: (at.year, at.month)),
    )
    for most, period in rules:
        newest: dict[Hashable, Copy] = {}
        for one in daily:  # the newest first
            newest.setdefault(period(one.at.astimezone(zone)), one)
        kept.update(list(newest.values())[:most])
    aside = [one for one in every if one.reason is BackupReason.RESTORE]
    gone = [*(one for one in daily if one not in kept), *aside[SET_ASIDE:]]
    for one in gone:
        with told_plainly(one.path):
            one.path.unlink(missing_ok=True)
    return tuple(one.path for one in gone)


def look_into(copy: Path) -> SoundBook | None:
    """Return what a copy holds; None where it is of an older version.

    Raises
    ------
    BookTrouble
        If it is not sound.
    """
    return read_file(copy)


def compare(copy: Iterable[Entry], book: Iterable[Entry]) -> BackupDifference:
    """Return how a copy differs from a book, by their journals."""
    theirs, ours = tuple(copy), tuple(book)
    alike = 0
    for mine, other in zip(ours, theirs, strict=False):
        if mine != other:
            break
        alike += 1
    return BackupDifference(ours[alike:], theirs[alike:], common=alike > 0)


def counted(book: Book) -> tuple[int, int, int]:
    """Return how many projects, models and entries of the logbook a book has."""
    models = sum(len(project.models) for project in book.projects)
    return len(book.projects), models, sum(len(project.log) for project in book.projects)


def _copy(book: Path, half: Path) -> None:
    try:
        with (
            HANDLES.busy(),
            told_plainly(book),
            engine_on(book, "ro").connect() as connection,
            closing(sqlite3.connect(half)) as copy,
        ):
            source: Any = connection.connection.driver_connection
            source.backup(copy)
            copy.execute("PRAGMA journal_mode = DELETE").close()
    except sqlite3.Error as problem:
        trouble = trouble_of(half, getattr(problem, "sqlite_errorname", ""))
        if trouble is None:
            mend = message("cannot be written ({problem})", problem=str(problem))
            trouble = BookTrouble(str(half.parent), mend)
        raise trouble from problem


__all__ = [
    "BackupDifference",
    "BackupReason",
    "Copy",
    "compare",
    "copies",
    "counted",
    "folder_of",
    "keep",
    "keep_daily",
    "look_into",
    "thin",
    "write_copy",
]
