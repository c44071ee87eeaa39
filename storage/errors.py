"""What can go wrong around a bench book that is nobody's mistake in it."""

from __future__ import annotations

import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

from planner.values.message import Message, message
from planner.values.refusal import Refused


class BookTrouble(Refused):
    """The file, the disk or another program stands in the way.

    ``place`` is the path of the file.
    """


class BookChanged(BookTrouble):
    """Somebody else has changed the book since it was read here."""


class BookDamaged(BookTrouble):
    """What is in the file is not what was written to it."""


class BookLost(BookTrouble):
    """The book that this session has read lies under its name no more.

    It was deleted, moved, or something else was laid in its place; what is
    known of it here can be saved elsewhere.
    """


DAMAGED: Final = message("is damaged; restore a backup of it")
_WORDS: Final = {
    "SQLITE_FULL": message("cannot be written: the disk is full; nothing was changed"),
    "SQLITE_READONLY": message("cannot be written: the file or its folder is read-only"),
    "SQLITE_BUSY": message("is being written by another program; try again"),
    "SQLITE_LOCKED": message("is being written by another program; try again"),
    "SQLITE_CORRUPT": DAMAGED,
    "SQLITE_NOTADB": message("is not a bench book"),
    "SQLITE_IOERR": message("cannot be read or written: the disk reports an error"),
    "SQLITE_CANTOPEN": message(
        "cannot be opened: look whether its folder is there and may be written"
    ),
    "SQLITE_PERM": message("cannot be opened: no permission"),
    "SQLITE_AUTH": "cannot be opened: no permission",
    "SQLITE_INTERRUPT": message("takes too long to read: it is damaged, or no book of one person"),
    "SQLITE_TOOBIG": message("holds a text that is far too long: it is damaged"),
}
_DAMAGE: Final = ("SQLITE_CORRUPT", "SQLITE_INTERRUPT", "SQLITE_TOOBIG")


@contextmanager
def told_plainly(path: Path) -> Iterator[None]:
    """Turn what SQLite reports about its surroundings into `BookTrouble`.

    Our own mistakes (a wrong statement, a broken constraint) pass through.
    """
    from sqlalchemy.exc import DBAPIError  # noqa: PLC0415 -- the window is painted before it

    try:
        yield
    except DBAPIError as problem:
        trouble = trouble_of(path, getattr(problem.orig, "sqlite_errorname", ""))
        if trouble is None:
            raise
        raise trouble from problem
    except FileExistsError:
        raise  # whoever gives a name to a file chooses another one
    except OSError as problem:
        reason = problem.strerror or type(problem).__name__
        raise BookTrouble(
            str(path), message("cannot be used ({reason})", reason=reason)
        ) from problem


def trouble_of(path: Path, code: str) -> BookTrouble | None:
    """Return what an error of SQLite means, by its name; None where it is a mistake of ours."""
    for begins, words in _WORDS.items():
        if code.startswith(begins):
            kind = BookDamaged if begins in _DAMAGE else BookTrouble
            return kind(str(path), words)
    return None


@contextmanager
def read_as_sound(path: Path) -> Iterator[None]:
    """Tell what makes no sense in a file that we once wrote as damage to it."""
    from sqlalchemy.exc import DBAPIError  # noqa: PLC0415 -- as above

    try:
        with told_plainly(path):
            yield
    except BookTrouble:
        raise
    except (DBAPIError, ValueError, TypeError, LookupError, zlib.error) as problem:
        words = " ".join(str(problem).split())[:200]
        raise damaged(path, words) from problem


def damaged(path: Path, words: Message | str) -> BookDamaged:
    """Return that a file is damaged, and how one knows."""
    return BookDamaged(
        str(path), message("is damaged ({words}); restore a backup of it", words=words)
    )
