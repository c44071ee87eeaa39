"""The first bytes of a bench book and of what SQLite may leave beside it.

Read before SQLite touches anything: SQLite believes whatever lies beside a
file under the right name, and would write a journal of another file over it.

References
----------
SQLite, "Database File Format", sections 1.3 (database header) and 3 (rollback journal).
"""

from __future__ import annotations

import struct
from collections.abc import Iterator
from pathlib import Path
from typing import BinaryIO, Final, NamedTuple

from planner.values.message import message
from storage.errors import BookDamaged, BookTrouble, told_plainly
from storage.held_file import first_bytes

APPLICATION_ID: Final = 0x7461636B  # "tack", in the header of each of our files
MAGIC: Final = b"SQLite format 3\0"
JOURNAL_MAGIC: Final = bytes.fromhex("d9d505f920a163d7")
LENGTH: Final = 100  # of the header [bytes]


class Header(NamedTuple):
    """What tells one book, and one state of it, from another.

    Attributes
    ----------
    identity
        Drawn when the book was made (``user_version``); 0 in books of old.
    changes
        The file change counter.
    logged
        Whether it has a write-ahead log, as books of old had.
    """

    identity: int
    changes: int
    logged: bool


def read_header(path: Path) -> Header:
    """Return the header of a bench book.

    Raises
    ------
    BookTrouble
        If there is none, or it is something else.
    """
    with told_plainly(path):
        if not path.exists():
            raise BookTrouble(str(path), "is not there")
        if path.is_dir():
            raise BookTrouble(str(path), "is a folder, not a bench book")
        if not path.is_file():
            raise BookTrouble(str(path), "is a pipe or a device, not a bench book")
        header = first_bytes(path, LENGTH)
    if not header.startswith(MAGIC):
        raise BookTrouble(str(path), "is not a bench book" if header else "is empty")
    if len(header) < LENGTH:
        raise BookDamaged(str(path), "is damaged: it is cut short; restore a backup of it")
    if int.from_bytes(header[68:72], "big") != APPLICATION_ID:
        raise BookTrouble(str(path), "is another program's database, not a bench book")
    return _parsed(header)


def set_aside_log(path: Path, header: Header) -> None:
    """Rename a write-ahead log that lies beside a book without one: it is of another file.

    SQLite would take it in, whatever the header says.

    Raises
    ------
    BookTrouble
        If it cannot be renamed.
    """
    log = path.with_name(f"{path.name}-wal")
    if not header.logged and log.exists():
        _rename(log)


def set_aside_journal(path: Path, header: Header) -> bool:
    """Rename a journal that nobody writes and that is none of the book's; tell whether it was so.

    A copy that was laid over a book after a crash, or brought by a synced
    folder, must not be changed by what was left of another.

    Raises
    ------
    BookTrouble
        If it cannot be renamed.
    """
    journal = path.with_name(f"{path.name}-journal")
    with told_plainly(path):
        foreign = journal.exists() and not _is_of(journal, header)
        if foreign:
            _rename(journal)
    return foreign


def _is_of(journal: Path, header: Header) -> bool:
    """Tell whether a rollback journal belongs to a file in just this state.

    It keeps each page as it was before: the first page among them, since it
    counts the changes, and with it who the book is.
    """
    with journal.open("rb") as file:
        before = next((page for number, page in _pages(file) if number == 1), None)
    if before is None:
        return True  # nothing to bring back: SQLite takes it away
    kept = _parsed(before)
    return kept.identity == header.identity and header.changes - kept.changes in (0, 1)


def _pages(file: BinaryIO) -> Iterator[tuple[int, bytes]]:
    """Yield the pages of the first segment of a journal: number and content."""
    start = file.read(28)
    if len(start) < 28 or not start.startswith(JOURNAL_MAGIC):
        return
    count, _, _, sector, size = struct.unpack(">iIIII", start[8:])
    if not (512 <= size <= 65536 and 28 <= sector <= 65536):
        return
    file.seek(sector)
    while count:
        record = file.read(4 + size + 4)
        if len(record) < 4 + size + 4:
            return
        yield int.from_bytes(record[:4], "big"), record[4:-4]
        count -= 1


def _parsed(page: bytes) -> Header:
    return Header(
        identity=int.from_bytes(page[60:64], "big"),
        changes=int.from_bytes(page[24:28], "big"),
        logged=page[18:20] == b"\2\2",
    )


def _rename(path: Path) -> None:
    number = 1
    while (aside := path.with_name(f"{path.name}.of-another-{number}")).exists():
        number += 1
    try:
        path.rename(aside)
    except OSError as problem:
        mend = message(
            "lies beside the book and belongs to another; move it away ({why})",
            why=problem.strerror,
        )
        raise BookTrouble(str(path), mend) from problem
