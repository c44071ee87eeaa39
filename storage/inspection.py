"""Looking through a file before anything is written to it: is it a bench book, and sound."""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Final

from sqlalchemy import Connection

from planner.values.message import message
from storage import database
from storage.database import engine_on, transaction, version_of
from storage.errors import BookDamaged, BookTrouble, damaged, read_as_sound, told_plainly
from storage.header import Header, read_header
from storage.tables import METADATA

MOST_CHECKED_BYTES: Final = 50_000_000
TRIES: Final = 3


def is_cut_off(path: Path) -> bool:
    """Tell whether a writer was cut off: what it left must be rolled back before one can read.

    While somebody is writing, a journal lies there as well; SQLite knows which it is.
    """
    if not path.with_name(f"{path.name}-journal").exists():
        return False
    try:
        with transaction(engine_on(path, "ro"), path) as connection:
            version_of(connection)
    except BookTrouble as problem:
        orig = getattr(problem.__cause__, "orig", None)
        return getattr(orig, "sqlite_errorname", "") == "SQLITE_READONLY_ROLLBACK"
    return False


def may_write(path: Path) -> bool:
    """Tell whether a book may be written: the file, and its folder for the journal."""
    return os.access(path, os.W_OK) and os.access(path.parent, os.W_OK)


def inspect(path: Path) -> str:
    """Return the version of a bench book that is sound as far as SQLite can tell.

    Raises
    ------
    BookTrouble
        If it is damaged, newer than this program, or holds what no Tackfree wrote.
    """
    header = read_header(path)
    for left in range(TRIES - 1, -1, -1):
        beside = _beside(path)
        try:
            with at_rest(path, header) as (resting, mode), read_as_sound(path):
                return _look_through(resting, mode, path)
        except BookDamaged:
            if not left or beside == _beside(path):
                raise
            # Somebody wrote while it was copied; look once more.
    raise AssertionError(path)


def _look_through(resting: Path, mode: str, path: Path) -> str:
    with transaction(engine_on(resting, mode), path) as connection:
        _refuse_foreign(connection, path)
        version = version_of(connection)
        if not version.isdecimal():
            mend = message("is damaged: it does not say its version; restore a backup")
            raise BookDamaged(str(path), mend)
        if version > database.NEWEST:
            raise _newer(path, version)
        if version == database.NEWEST:
            _refuse_other_columns(connection, path)
        if resting.stat().st_size <= MOST_CHECKED_BYTES:
            verdict = connection.exec_driver_sql("PRAGMA quick_check(1)").scalar_one()
            if verdict != "ok":
                raise BookDamaged(str(path), "is damaged; restore a backup of it")
    return version


def _beside(path: Path) -> tuple[tuple[int, int], ...]:
    """Return what tells whether somebody has written meanwhile."""
    found = []
    for end in ("", "-journal", "-wal"):
        with suppress(OSError):
            there = path.with_name(path.name + end).stat()
            found.append((there.st_size, there.st_mtime_ns))
    return tuple(found)


def _newer(path: Path, version: str) -> BookTrouble:
    return BookTrouble(
        str(path),
        message(
            "was written by a newer Tackfree (version {version}; this one knows "
            "{newest}); update the program first",
            version=version,
            newest=database.NEWEST,
        ),
    )


@contextmanager
def at_rest(path: Path, header: Header) -> Iterator[tuple[Path, str]]:
    """Yield a file that can be read without changing the one at ``path``, and how to open it.

    What was cut off in the middle of writing is brought to rest in a copy.
    """
    if not (header.logged or is_cut_off(path)):
        yield path, "ro"
        return
    with tempfile.TemporaryDirectory(prefix="tackfree-look-") as folder:
        copy = Path(folder) / path.name
        with told_plainly(path):
            for end in ("-journal", "-wal", ""):
                beside = path.with_name(path.name + end)
                if beside.exists():
                    shutil.copyfile(beside, copy.with_name(copy.name + end))
        yield copy, "rw"


def _refuse_foreign(connection: Connection, path: Path) -> None:
    """Refuse triggers, views and virtual tables: they do what nobody asked for."""
    found = connection.exec_driver_sql("SELECT type, name, sql FROM sqlite_master")
    for kind, name, sql in found.fetchmany(2_000):
        virtual = str(sql or "").lstrip().upper().startswith("CREATE VIRTUAL")
        if kind not in ("table", "index") or virtual:
            raise damaged(
                path,
                message("it holds {what}, which no Tackfree wrote", what=f"{kind} {name}"[:80]),
            )


def _refuse_other_columns(connection: Connection, path: Path) -> None:
    """Refuse tables that are not those of this version, to the column."""
    ours = {
        table.name: {column.name for column in table.columns} for table in METADATA.sorted_tables
    }
    ours["alembic_version"] = {"version_num"}
    there = {
        str(name)
        for (name,) in connection.exec_driver_sql(
            "SELECT name FROM sqlite_master "
            "WHERE type = 'table' AND substr(name, 1, 7) <> 'sqlite_'"
        )
    }
    for name in sorted(there ^ ours.keys()):
        raise damaged(path, message("its tables are not those of Tackfree: {name}", name=name[:80]))
    for name, columns in ours.items():
        rows = connection.exec_driver_sql(f'PRAGMA table_xinfo("{name}")').all()
        if {str(row[1]) for row in rows} != columns or any(row[6] for row in rows):
            raise damaged(path, message("its tables are not those of Tackfree: {name}", name=name))
