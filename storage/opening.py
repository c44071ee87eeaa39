"""Opening a bench book: brought to rest and up to date, or opened to be read only."""

from __future__ import annotations

from pathlib import Path
from typing import Final, NamedTuple

from sqlalchemy import Engine

from planner.values.message import Message, message
from storage import database
from storage.backups import BackupReason, keep
from storage.database import (
    UPGRADE_SECONDS,
    engine_in_memory,
    engine_on,
    let_go_of_log,
    migrate,
)
from storage.errors import BookDamaged, BookTrouble, told_plainly
from storage.header import Header, read_header, set_aside_journal, set_aside_log
from storage.inspection import at_rest, inspect, is_cut_off, may_write

READ_ONLY: Final = message("its file, folder or disk may not be written")


class Opened(NamedTuple):
    """An engine on a sound and up-to-date book, and why it only reads; "" where it writes too."""

    engine: Engine
    read_only: Message | str


def open_engine(path: Path) -> Opened:
    """Return an engine on a sound and up-to-date bench book.

    What is refused is left as it is, to the byte.

    Raises
    ------
    BookTrouble
        If there is none, or it is another file, damaged, or newer than this program.
    """
    header = read_header(path)
    if not may_write(path):
        return _to_read(path, header)
    set_aside_log(path, header)
    if not header.logged and is_cut_off(path):
        set_aside_journal(path, header)
    version = inspect(path)
    if header.logged:
        let_go_of_log(path)
    if version != database.NEWEST:
        try:
            _upgrade(path)
        except BookDamaged:
            raise
        except BookTrouble as problem:  # no room for the copy before it, as a rule
            why = message("it cannot be brought up to date here: {problem}", problem=problem.mend)
            return Opened(_brought_up(path), why)
    return Opened(engine_on(path), "")


def _upgrade(path: Path) -> None:
    """Bring an older book up to date, a checked copy of it put aside first."""
    keep(path, BackupReason.UPGRADE)
    with told_plainly(path):
        migrate(engine_on(path, seconds=UPGRADE_SECONDS), database.NEWEST, upgrade=path)


def _brought_up(path: Path) -> Engine:
    engine = engine_in_memory(path)
    with told_plainly(path):
        migrate(engine, database.NEWEST, upgrade=path)
    return engine


def _to_read(path: Path, header: Header) -> Opened:
    """Open a book that may not be written."""
    version = inspect(path)
    if version == database.NEWEST and not (header.logged or is_cut_off(path)):
        return Opened(engine_on(path, "ro"), READ_ONLY)
    with at_rest(path, header) as (resting, _):
        engine = engine_in_memory(resting)
    if version != database.NEWEST:
        with told_plainly(path):
            migrate(engine, database.NEWEST, upgrade=path)
    return Opened(engine, READ_ONLY)
