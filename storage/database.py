"""The SQLite file under a bench book: connections, transactions, migrations.

The file is whole whenever nobody writes: there is a rollback journal while
an edit is written and nothing else beside it.  No connection outlasts its
transaction, so that whatever lies under the name is seen as it is.
"""

from __future__ import annotations

import secrets
import sqlite3
import time
from collections.abc import Iterator
from contextlib import contextmanager
from importlib import resources
from pathlib import Path
from typing import Any, Final

from sqlalchemy import Connection, Engine, create_engine
from sqlalchemy.pool import NullPool, StaticPool

from planner.values.message import message
from storage import journal
from storage.aggregates import Digests, split
from storage.errors import read_as_sound, told_plainly
from storage.header import APPLICATION_ID
from storage.held_file import HANDLES
from storage.journal import JournalLine, Kind
from storage.store import read_book

NEWEST: Final = "0017"  # the last migration; a test compares it with the scripts
BUSY_SECONDS: Final = 5
SYNCHRONOUS: Final = "EXTRA"  # on the disk before a commit returns, its journal's end included
MOST_SECONDS: Final = 4.0  # of processor time that one transaction may take
UPGRADE_SECONDS: Final = 60.0  # the same, of a migration
LOOK_EVERY: Final = 50_000  # steps of SQLite's machine between two looks at the time
MOST_CELL: Final = 100_000_000  # of one text or blob [bytes]


def engine_on(path: Path, mode: str = "rw", *, seconds: float = MOST_SECONDS) -> Engine:
    """Return an engine on which every edit is durable once committed.

    Parameters
    ----------
    mode
        "ro" reads and leaves the file alone, "rw" writes, "rwc" makes it.
    seconds
        Processor time that a transaction may take: a damaged file may go in circles.
    """
    name = f"{path.absolute().as_uri()}?mode={mode}"

    def connect() -> sqlite3.Connection:
        raw = sqlite3.connect(
            name,
            uri=True,
            timeout=BUSY_SECONDS,
            isolation_level=None,  # transactions begin where we say, not where sqlite3 guesses
            check_same_thread=False,
        )
        return guarded(raw, seconds)

    return create_engine("sqlite://", creator=connect, poolclass=NullPool)


def engine_in_memory(path: Path) -> Engine:
    """Return an engine on a copy of a file, held in memory, where its own may not be written."""
    with told_plainly(path), engine_on(path, "ro").connect() as there:
        source: Any = there.connection.driver_connection
        copy = sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False)
        source.backup(copy)
    guarded(copy, UPGRADE_SECONDS)
    return create_engine("sqlite://", creator=lambda: copy, poolclass=StaticPool)


def guarded(raw: sqlite3.Connection, seconds: float) -> sqlite3.Connection:
    """Have a connection durable, and believe no more of a file than it must."""
    until = time.thread_time() + seconds
    raw.set_progress_handler(lambda: int(time.thread_time() > until), LOOK_EVERY)
    raw.setlimit(sqlite3.SQLITE_LIMIT_LENGTH, MOST_CELL)
    for pragma in (
        "trusted_schema = OFF",
        "cell_size_check = ON",
        "foreign_keys = ON",
        f"synchronous = {SYNCHRONOUS}",
    ):
        raw.execute(f"PRAGMA {pragma}").close()
    return raw


@contextmanager
def transaction(engine: Engine, path: Path, *, writes: bool = False) -> Iterator[Connection]:
    """Run one transaction; it rolls back unless it ends well.

    A writing one takes the lock at once, so that what it reads first still
    holds when it writes.
    """
    with HANDLES.busy(), told_plainly(path), engine.connect() as connection:
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")
        try:
            yield connection
            connection.exec_driver_sql("COMMIT")
        except BaseException:
            _roll_back(connection)
            raise


def _roll_back(connection: Connection) -> None:
    """End a transaction that went wrong; some errors have ended it already."""
    if not connection.invalidated:  # as by Ctrl-C in a statement: it was closed, and so rolled back
        raw: Any = connection.connection.driver_connection
        if raw.in_transaction:
            raw.rollback()


def create_at(path: Path) -> Engine:
    """Return an engine on a new, empty database of the newest version."""
    engine = engine_on(path, "rwc", seconds=UPGRADE_SECONDS)
    with told_plainly(path):
        with engine.connect() as connection:
            connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")
        migrate(engine, NEWEST)
    return engine


def let_go_of_log(path: Path) -> None:
    """Bring a book of old to rest in one file: it had a write-ahead log.

    Raises
    ------
    BookTrouble
        If another program has it open.
    """
    with HANDLES.busy(), told_plainly(path), engine_on(path).connect() as connection:
        connection.exec_driver_sql("PRAGMA journal_mode = DELETE")


def version_of(connection: Connection) -> str:
    """Return the version of a book, "" where it says none."""
    row = connection.exec_driver_sql(
        "SELECT name FROM sqlite_master WHERE name = 'alembic_version'"
    ).first()
    if row is None:
        return ""
    found = connection.exec_driver_sql("SELECT version_num FROM alembic_version").scalar()
    return str(found) if found is not None else ""


def migrate(engine: Engine, target: str, *, upgrade: Path | None = None) -> None:
    """Run the migrations up to ``target``, all in one transaction.

    The ``upgrade`` of a book in use, at that path, gets its line in the
    journal, behind which undo does not go: what older lines hold may fit
    older tables only.  Nothing happens where another program has been faster.

    Foreign keys are off meanwhile, since a table that is rebuilt would take
    its children with it; they are checked before the commit.
    """
    from alembic import command  # noqa: PLC0415 - only needed here, and slow to load
    from alembic.config import Config  # noqa: PLC0415

    config = Config()
    config.set_main_option("script_location", str(resources.files("storage") / "migrations"))
    with HANDLES.busy(), engine.connect() as connection:
        config.attributes["connection"] = connection
        connection.exec_driver_sql("PRAGMA foreign_keys = OFF")
        connection.exec_driver_sql("BEGIN IMMEDIATE")
        try:
            if upgrade is None or version_of(connection) != target:
                command.upgrade(config, target)
                _finish(connection, target, upgrade)
            connection.exec_driver_sql("COMMIT")
        except BaseException:
            _roll_back(connection)
            raise
        finally:
            if not connection.invalidated:
                connection.exec_driver_sql("PRAGMA foreign_keys = ON")


def _finish(connection: Connection, target: str, upgrade: Path | None) -> None:
    broken = connection.exec_driver_sql("PRAGMA foreign_key_check").first()
    if broken is not None:
        raise AssertionError(f"migration to {target} leaves {broken} dangling")
    if not connection.exec_driver_sql("PRAGMA user_version").scalar():
        identity = secrets.randbelow(2**31 - 1) + 1
        connection.exec_driver_sql(f"PRAGMA user_version = {identity}")
    if upgrade is not None:
        with read_as_sound(upgrade):
            book = read_book(connection)
            journal.seal(connection)
        content = Digests().of(split(book))
        name = message("upgrade to {version}", version=target)
        journal.append(connection, JournalLine(name, Kind.UPGRADE, {}, content))
