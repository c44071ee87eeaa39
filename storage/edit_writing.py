"""What an edit writes: the pieces it touches and its line of the journal, together."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import NamedTuple

from sqlalchemy import Connection

from planner.values.book import Book
from planner.values.message import Message, message
from storage import journal
from storage.aggregates import Digests, Pieces, changes, split
from storage.database import create_at, transaction
from storage.errors import read_as_sound
from storage.journal import Change, Entry, JournalLine, Kind
from storage.store import write_pieces
from storage.undo_redo import back_to, joined, turned


class Changed(NamedTuple):
    """Pieces before and after by their keys; all pieces, and their digest, as they are then."""

    pieces: Mapping[str, tuple[object, object]]
    after: Pieces
    content: str


@dataclass
class Writing:
    """An edit being written: where to, and the book after it."""

    connection: Connection
    book: Book


def write(
    connection: Connection,
    name: str,
    kind: Kind,
    made: Changed,
    target: int | None = None,
    verb: str = "",
) -> int:
    """Write what was changed and a line about it; return the revision that this makes."""
    write_pieces(connection, made.pieces, made.after)
    return journal.append(
        connection, JournalLine(name, kind, made.pieces, made.content, target, verb)
    )


def go_on(
    connection: Connection, path: Path, name: str, made: Changed, revision: int, verb: str = ""
) -> int:
    """Write an edit that goes on with the one of ``revision``, in its place.

    Raises
    ------
    BookTrouble
        If the journal of the book at ``path`` makes no sense.
    """
    with read_as_sound(path):
        undo = journal.stacks(journal.entries(connection)).undo
        if not undo or undo[-1].id != revision:  # that one was taken back
            return write(connection, name, Kind.EDIT, made, verb=verb)
        first = journal.changes_of(connection, undo[-1].id)
    write_pieces(connection, made.pieces, made.after)
    both = journal.together(first, {key: Change(*pair) for key, pair in made.pieces.items()})
    if not both:  # back where they began
        back = undo[-1]
        line = JournalLine(back.name, Kind.UNDO, made.pieces, made.content, back.id)
        return journal.append(connection, line)
    return journal.append(
        connection, JournalLine(name, Kind.EDIT, both, made.content, undo[-1].id, verb)
    )


class TurnedTo(NamedTuple):
    """The book after edits were turned, the name of the last, and the revision that it makes."""

    book: Book
    name: str
    revision: int


Turning = list[tuple[Entry, dict[str, Change]]]


def edits_to_turn(connection: Connection, path: Path, kind: Kind, times: int) -> Turning:
    """Return the next edits to undo or redo, the first one first, with what each changed.

    Raises
    ------
    BookTrouble
        If the journal of the book at ``path`` makes no sense.
    """
    with read_as_sound(path):
        stacks = journal.stacks(journal.entries(connection))
        stack = stacks.undo if kind is Kind.UNDO else stacks.redo
        return [
            (edit, journal.changes_of(connection, edit.id))
            for edit in reversed(stack[-times:] if times else ())
        ]


def turn(
    connection: Connection, kind: Kind, turning: Turning, old: Pieces, digests: Digests
) -> TurnedTo:
    """Turn edits back, or make them again.

    Raises
    ------
    Refused
        If facts were logged since that cannot stand then.
    """
    after = old
    for edit, wanted in turning:
        before, name = after, edit.name
        after = turned(before, back_to(wanted) if kind is Kind.UNDO else wanted, _no(kind, name))
        both = changes(before, after)
        line = JournalLine(name, kind, both, digests.of(after), edit.id)
        revision = journal.append(connection, line)
    book = joined(after, _no(kind, name))
    write_pieces(connection, changes(old, after), after)
    return TurnedTo(book, name, revision)


def _no(kind: Kind, name: str) -> Message:
    if kind is Kind.UNDO:
        return message('cannot undo "{edit}"', edit=name)
    return message('cannot redo "{edit}"', edit=name)


def fill(path: Path, book: Book) -> None:
    """Make a file that holds a new book."""
    engine = create_at(path)
    with transaction(engine, path, writes=True) as connection:
        pieces = split(book)
        write_pieces(connection, pieces, pieces)
        line = JournalLine(message("new book"), Kind.CREATED, {}, Digests().of(pieces))
        journal.append(connection, line)
