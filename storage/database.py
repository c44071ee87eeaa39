"""The SQLite file under a bench book: opened, checked, brought up to date, copied."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from importlib import resources
from pathlib import Path
from typing import Any, Final

from sqlalchemy import URL, Connection, Engine, create_engine, event
from sqlalchemy.pool import StaticPool

from planner.values.message import message
from storage import journal
from storage.errors import BookTrouble, read_as_sound, told_plainly
from storage.journal import Kind

APPLICATION_ID: Final = 0x7461636B  # "tack", in the header of each of our files
NEWEST: Final = "0004"  # the last migration; a test compares it with the scripts
BUSY_SECONDS: Final = 5
MAGIC: Final = b"SQLite format 3\0"
MOST_CHECKED_BYTES: Final = 50_000_000


def open_engine(path: Path) -> Engine:
    """Return an engine on a sound and up-to-date bench book.

    Raises
    ------
    BookTrouble
        If there is none, or it is another file, damaged, or newer than this program.
    """
    with told_plainly(path):
        _look_at(path)
        engine = engine_on(path)
        try:
            with read_as_sound(path):
                _check(engine, path)
                version = _version(engine)
            if version != NEWEST:
                _upgrade(engine, path, version)
        except BaseException:
            engine.dispose()
            raise
    return engine


def create_engine_at(path: Path) -> Engine:
    """Return an engine on a new, empty database of the newest version."""
    with told_plainly(path):
        engine = engine_on(path)
        try:
            with engine.connect() as connection:
                connection.exec_driver_sql(f"PRAGMA application_id = {APPLICATION_ID}")
            migrate(engine, NEWEST)
        except BaseException:
            engine.dispose()
            raise
    return engine


def engine_on(path: Path) -> Engine:
    """Return an engine with one connection, on which every edit is durable once committed."""
    engine = create_engine(
        URL.create("sqlite", database=str(path)),
        poolclass=StaticPool,
        connect_args={"timeout": BUSY_SECONDS, "check_same_thread": False},
    )

    @event.listens_for(engine, "connect")
    def _(raw: Any, _record: object) -> None:
        raw.isolation_level = None  # transactions begin where we say, not where sqlite3 guesses
        for pragma in ("journal_mode = WAL", "synchronous = FULL", "foreign_keys = ON"):
            raw.execute(f"PRAGMA {pragma}").close()

    return engine


@contextmanager
def transaction(engine: Engine, path: Path, *, writes: bool = False) -> Iterator[Connection]:
    """Run one transaction; it rolls back unless it ends well.

    A writing one takes the lock at once, so that what it reads first still
    holds when it writes.
    """
    with told_plainly(path), engine.connect() as connection:
        connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")
        try:
            yield connection
            connection.exec_driver_sql("COMMIT")
        except BaseException:
            raw: Any = connection.connection.driver_connection
            if raw.in_transaction:  # some errors have rolled it back already
                connection.exec_driver_sql("ROLLBACK")
            raise


def migrate(engine: Engine, target: str, *, upgrade: bool = False) -> None:
    """Run the migrations up to ``target``, all in one transaction.

    The ``upgrade`` of a book in use gets its line in the journal, behind
    which undo does not go: what older lines hold may fit older tables only.

    Foreign keys are off meanwhile, since a table that is rebuilt would take
    its children with it; they are checked before the commit.
    """
    from alembic import command  # noqa: PLC0415 - only needed here, and slow to load
    from alembic.config import Config  # noqa: PLC0415

    config = Config()
    config.set_main_option("script_location", str(resources.files("storage") / "migrations"))
    with engine.connect() as connection:
        config.attributes["connection"] = connection
        connection.exec_driver_sql("PRAGMA foreign_keys = OFF")
        connection.exec_driver_sql("BEGIN IMMEDIATE")
        try:
            command.upgrade(config, target)
            broken = connection.exec_driver_sql("PRAGMA foreign_key_check").first()
            if broken is not None:
                raise AssertionError(f"migration to {target} leaves {broken} dangling")
            if upgrade:
                journal.append(connection, f"upgrade to {target}", Kind.UPGRADE, {})
            connection.exec_driver_sql("COMMIT")
        except BaseException:
            connection.exec_driver_sql("ROLLBACK")
            raise
        finally:
            connection.exec_driver_sql("PRAGMA foreign_keys = ON")


def copy_to(engine: Engine, path: Path, target: Path) -> None:
    """Write a sound copy of a book in use to ``target``, which must not exist.

    Raises
    ------
    BookTrouble
        If something lies there, or it cannot be written.
    """
    if target.exists():
        raise BookTrouble(str(target), "is there already; choose another name for the backup")
    half = target.with_name(f".{target.name}.part")
    with told_plainly(target):
        half.unlink(missing_ok=True)
        try:
            with closing(sqlite3.connect(half)) as copy, engine.connect() as connection:
                source: Any = connection.connection.driver_connection
                source.backup(copy)
                copy.execute("PRAGMA journal_mode = DELETE").close()  # one file, easy to carry
            half.rename(target)
        except sqlite3.Error as problem:
            raise BookTrouble(
                str(target), message("cannot be written ({problem})", problem=problem)
            ) from problem
        finally:
            half.unlink(missing_ok=True)


def _look_at(path: Path) -> None:
    """Refuse what is not ours before SQLite touches it.

    The header is 100 bytes, the application id at 68 (SQLite, "Database File
    Format", section 1.3).
    """
    if not path.exists():
        raise BookTrouble(str(path), "is not there")
    if not path.is_file():
        raise BookTrouble(str(path), "is a folder, not a bench book")
    with path.open("rb") as file:
        header = file.read(100)
    if not header.startswith(MAGIC):
        raise BookTrouble(str(path), "is not a bench book" if header else "is empty")
    if len(header) < 100:
        raise BookTrouble(str(path), "is damaged: it is cut short; restore a backup of it")
    if int.from_bytes(header[68:72], "big") != APPLICATION_ID:
        raise BookTrouble(str(path), "is another program's database, not a bench book")


def _check(engine: Engine, path: Path) -> None:
    """Refuse a damaged file; a very large one only shows it where it is read."""
    if path.stat().st_size <= MOST_CHECKED_BYTES:
        with engine.connect() as connection:
            verdict = connection.exec_driver_sql("PRAGMA quick_check(1)").scalar_one()
            if verdict != "ok":
                raise BookTrouble(str(path), "is damaged; restore a backup of it")


def _version(engine: Engine) -> str:
    with engine.connect() as connection:
        row = connection.exec_driver_sql(
            "SELECT name FROM sqlite_master WHERE name = 'alembic_version'"
        ).first()
        if row is None:
            return ""
        return str(connection.exec_driver_sql("SELECT version_num FROM alembic_version").scalar())


def _upgrade(engine: Engine, path: Path, version: str) -> None:
    """Bring an older book up to date, a copy of it put aside first."""
    if not version.isdecimal():
        raise BookTrouble(str(path), "is damaged: it does not say its version; restore a backup")
    if version > NEWEST:
        raise BookTrouble(
            str(path),
            message(
                "was written by a newer Tackfree (version {version}; this one knows "
                "{newest}); update the program first",
                version=version,
                newest=NEWEST,
            ),
        )
    aside = path.with_name(f"{path.name}.before-{NEWEST}")
    if not aside.exists():
        copy_to(engine, path, aside)
    migrate(engine, NEWEST, upgrade=True)
