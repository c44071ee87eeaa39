"""What a file holds, read as strictly as an exchange file and held against its journal."""

from __future__ import annotations

from pathlib import Path
from typing import Final, NamedTuple

from sqlalchemy import Connection

from planner.values.book import Book
from planner.values.message import message
from storage import database, journal
from storage.aggregates import Digests, split
from storage.database import engine_on, transaction
from storage.errors import BookLost, damaged, read_as_sound
from storage.header import read_header
from storage.inspection import at_rest, inspect
from storage.journal import Entry, Stand
from storage.store import read_book

NOTHING: Final = Stand(0, "", "")


class SoundBook(NamedTuple):
    """A book, where its journal stands, and the entries behind those that were known."""

    book: Book
    stand: Stand
    entries: tuple[Entry, ...]


def read_sound(
    connection: Connection, path: Path, digests: Digests, known: Stand = NOTHING
) -> SoundBook:
    """Read a book that goes on from what is ``known`` of it.

    Raises
    ------
    BookDamaged
        If it is not what was written last.
    BookLost
        If it does not go on from there.
    """
    with read_as_sound(path):
        demand_goes_on(connection, path, known)
        entries = journal.read(connection, known)
        stand = journal.stand(connection)
        book = read_book(connection)
    if digests.of(split(book)) != stand.content:
        raise damaged(path, message("it holds something else than was written to it"))
    return SoundBook(book, stand, entries)


def demand_goes_on(connection: Connection, path: Path, known: Stand) -> None:
    """Demand that a journal holds the line that is known as its newest.

    Raises
    ------
    BookLost
        If another book, or an older state of this one, was laid in its place.
    """
    if known.id and journal.digest_at(connection, known.id) != known.digest:
        if journal.stand(connection).id < known.id:
            mend = message("was set back to an older state; save yours elsewhere")
        else:
            mend = message("is another book now, laid in its place; save yours elsewhere")
        raise BookLost(str(path), mend)


def read_file(path: Path) -> SoundBook | None:
    """Read a bench book at rest, changing nothing; None where it is of an older version.

    Raises
    ------
    BookTrouble
        If there is none, or it is not sound.
    """
    if inspect(path) != database.NEWEST:
        return None
    with (
        at_rest(path, read_header(path)) as (resting, mode),
        read_as_sound(path),
        transaction(engine_on(resting, mode), path) as connection,
    ):
        return read_sound(connection, path, Digests())
