"""What can go wrong around a bench book that is nobody's mistake in it."""

from __future__ import annotations

import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

from sqlalchemy.exc import DBAPIError

from planner.values.message import message
from planner.values.refusal import Refused


class BookTrouble(Refused):
    """The file, the disk or another program stands in the way.

    ``place`` is the path of the file.
    """


class BookChanged(BookTrouble):
    """Somebody else has changed the book since it was read here."""


_WORDS: Final = {
    "SQLITE_FULL": message("cannot be written: the disk is full; nothing was changed"),
    "SQLITE_READONLY": message("cannot be written: the file or its folder is read-only"),
    "SQLITE_BUSY": message("is being written by another program; try again"),
    "SQLITE_LOCKED": message("is being written by another program; try again"),
    "SQLITE_CORRUPT": message("is damaged; restore a backup of it"),
    "SQLITE_NOTADB": message("is not a bench book"),
    "SQLITE_IOERR": message("cannot be read or written: the disk reports an error"),
    "SQLITE_CANTOPEN": message(
        "cannot be opened: look whether its folder is there and may be written"
    ),
    "SQLITE_PERM": message("cannot be opened: no permission"),
    "SQLITE_AUTH": "cannot be opened: no permission",
}


@contextmanager
def told_plainly(path: Path) -> Iterator[None]:
    """Turn what SQLite reports about its surroundings into `BookTrouble`.

    Our own mistakes (a wrong statement, a broken constraint) pass through.
    """
    try:
        yield
    except DBAPIError as problem:
        name = getattr(problem.orig, "sqlite_errorname", "")
        for code, words in _WORDS.items():
            if name.startswith(code):
                raise BookTrouble(str(path), words) from problem
        raise
    except OSError as problem:
        reason = problem.strerror or type(problem).__name__
        raise BookTrouble(
            str(path), message("cannot be used ({reason})", reason=reason)
        ) from problem


@contextmanager
def read_as_sound(path: Path) -> Iterator[None]:
    """Tell what makes no sense in a file that we once wrote as damage to it."""
    try:
        with told_plainly(path):
            yield
    except BookTrouble:
        raise
    except (DBAPIError, ValueError, TypeError, LookupError, zlib.error) as problem:
        words = " ".join(str(problem).split())[:200]
        raise BookTrouble(
            str(path), message("is damaged ({words}); restore a backup of it", words=words)
        ) from problem
