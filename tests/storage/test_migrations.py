"""Old books open after every upgrade; newer ones are refused."""

import itertools
import sqlite3
from contextlib import closing
from dataclasses import replace
from importlib import resources
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.config import Config
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import event

from storage import database, opening
from storage.backups import BackupReason, copies
from storage.bench_book import BenchBook, BookTrouble, Kind
from storage.exchange import load
from storage.tables import METADATA

OLD = sorted((Path(__file__).parent / "old_books").glob("*.sql"))
SCRIPTS = ScriptDirectory(str(resources.files("storage") / "migrations"))


def test_the_newest_version_is_the_last_script():
    assert SCRIPTS.get_heads() == [database.NEWEST]


def test_each_version_has_an_old_book_to_open():
    versions = {script.revision for script in SCRIPTS.walk_revisions()}
    assert {path.stem for path in OLD} == versions


def test_the_migrated_tables_are_those_we_use(book_path):
    with BenchBook.open(book_path) as bench, bench._engine.connect() as connection:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        assert compare_metadata(context, METADATA) == []


def tables_of(path):
    """Return all rows of all tables of a file."""
    with closing(sqlite3.connect(path)) as raw:
        names = raw.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall()
        return {name: raw.execute(f"SELECT * FROM {name}").fetchall() for (name,) in names}


@pytest.mark.parametrize("old", OLD, ids=lambda path: path.stem)
def test_a_book_of_each_version_opens(old, tmp_path):
    path = tmp_path / "bench"
    with closing(sqlite3.connect(path)) as raw:
        raw.executescript(old.read_text("utf-8"))
        raw.execute(f"PRAGMA application_id = {database.APPLICATION_ID}")
    before = tables_of(path)
    expected = load(old.with_suffix(".json").read_bytes()).book
    with BenchBook.open(path) as bench:
        assert bench.book() == expected
        bench.apply("edit", expected.__class__(room=expected.room, bench_time=expected.bench_time))
        assert bench.undo() == "edit"
        assert bench.book() == expected
    kept = copies(path)
    assert [one.reason for one in kept] == [BackupReason.UPGRADE] * (old.stem != database.NEWEST)
    for one in kept:
        assert tables_of(one.path) == before


def test_a_newer_book_is_refused_and_left_alone(book_path):
    with closing(sqlite3.connect(book_path)) as raw:
        raw.execute("UPDATE alembic_version SET version_num = '9999'")
        raw.commit()
    with pytest.raises(BookTrouble, match=r"by a newer Tackfree \(version 9999.*update"):
        BenchBook.open(book_path)
    with closing(sqlite3.connect(book_path)) as raw:
        assert raw.execute("SELECT version_num FROM alembic_version").fetchone() == ("9999",)


@pytest.mark.parametrize("change", ["DELETE FROM alembic_version", "DROP TABLE alembic_version"])
def test_a_book_without_its_version_is_damaged(book_path, change):
    with closing(sqlite3.connect(book_path)) as raw:
        raw.execute(change)
        raw.commit()
    with pytest.raises(BookTrouble, match="does not say its version"):
        BenchBook.open(book_path)


@pytest.fixture
def next_migration(monkeypatch, tmp_path):
    """Add a migration after the newest, for the time of a test."""
    scripts = tmp_path / "migrations"
    (scripts / "versions").mkdir(parents=True)
    original = Path(str(resources.files("storage") / "migrations"))
    (scripts / "env.py").write_text((original / "env.py").read_text())
    for script in (original / "versions").glob("*.py"):
        (scripts / "versions" / script.name).write_text(script.read_text())

    def add(*body: str) -> None:
        head = f"revision, down_revision = '9000', '{database.NEWEST}'"
        lines = ["import sqlalchemy as sa", "from alembic import op", head, "def upgrade():"]
        lines += [f"    {line}" for line in body]
        (scripts / "versions" / "next.py").write_text("\n".join(lines))
        monkeypatch.setattr(database, "NEWEST", "9000")
        original_option = Config.set_main_option
        monkeypatch.setattr(
            Config,
            "set_main_option",
            lambda config, name, _value: original_option(config, name, str(scripts)),
        )

    return add


def test_a_migration_that_fails_changes_nothing(book_path, monkeypatch, next_migration):
    """All migrations run in one transaction: the tables stay, and so does the version."""
    next_migration("op.execute('DROP TABLE gear')", "raise RuntimeError('half way')")
    with pytest.raises(RuntimeError, match="half way"):
        BenchBook.open(book_path)
    monkeypatch.undo()
    with BenchBook.open(book_path) as bench:
        assert bench.book().gear.airbrushes


def test_an_upgrade_keeps_the_book_and_a_copy_of_the_old_file(book_path, demo_book, next_migration):
    """Rebuilding a table would delete its children, were foreign keys not off meanwhile."""
    with BenchBook.open(book_path) as bench:
        bench.apply("edit", replace(demo_book, coatings=(*demo_book.coatings[::-1],)))
        kept = bench.book()
    next_migration(
        "with op.batch_alter_table('room', recreate='always') as batch:",
        "    batch.add_column(sa.Column('windows', sa.Integer()))",
    )
    with BenchBook.open(book_path) as bench:
        assert bench.book() == kept
        assert bench.journal()[-1].kind is Kind.UPGRADE
        assert bench.undo() is None  # older lines may not fit the newer tables
        bench.apply("later", demo_book)
        assert bench.undo() == "later"
    (aside,) = copies(book_path)
    with closing(sqlite3.connect(aside.path)) as raw:
        old = SCRIPTS.get_current_head()
        assert raw.execute("SELECT version_num FROM alembic_version").fetchone() == (old,)


def old_book(path, version="0001"):
    """Make a book of an old version; return what it holds."""
    old = next(one for one in OLD if one.stem == version)
    with closing(sqlite3.connect(path)) as raw:
        raw.executescript(old.read_text("utf-8"))
        raw.execute(f"PRAGMA application_id = {database.APPLICATION_ID}")
    return load(old.with_suffix(".json").read_bytes()).book


@pytest.mark.parametrize("at", [1, 5, 20, 60, 110, 150])
def test_a_migration_that_dies_at_a_statement_leaves_the_old_book(tmp_path, monkeypatch, at):
    path = tmp_path / "bench"
    expected = old_book(path)
    before = tables_of(path)
    really = database.migrate

    def dying(engine, target, *, upgrade=None):
        done = itertools.count(1)

        def die(*_given):
            if next(done) == at:
                raise KeyboardInterrupt

        event.listen(engine, "before_cursor_execute", die)
        really(engine, target, upgrade=upgrade)

    monkeypatch.setattr(opening, "migrate", dying)
    with pytest.raises(KeyboardInterrupt):
        BenchBook.open(path)
    assert tables_of(path) == before
    monkeypatch.undo()
    with BenchBook.open(path) as bench:
        assert bench.book() == expected


def test_an_old_book_on_a_full_disk_is_read_as_it_is(tmp_path, monkeypatch):
    """There is no room for the copy before the upgrade: it is brought up to date in memory."""
    path = tmp_path / "bench"
    expected = old_book(path)
    content = path.read_bytes()

    def full(*_given):
        raise BookTrouble(str(path), "cannot be written: the disk is full; nothing was changed")

    monkeypatch.setattr(opening, "keep", full)
    with BenchBook.open(path) as bench:
        assert bench.book() == expected
        assert "the disk is full" in bench.read_only
        with pytest.raises(BookTrouble, match="read only"):
            bench.apply(
                "edit", expected.__class__(room=expected.room, bench_time=expected.bench_time)
            )
    assert path.read_bytes() == content


@pytest.mark.parametrize("version", ["0001", "0005"])
def test_an_old_book_that_may_not_be_written_is_read(tmp_path, monkeypatch, version):
    path = tmp_path / "bench"
    expected = old_book(path, version)
    content = path.read_bytes()
    monkeypatch.setattr(opening, "may_write", lambda _path: False)
    with BenchBook.open(path) as bench:
        assert bench.book() == expected
        assert bench.read_only
    assert path.read_bytes() == content
    assert [one.name for one in tmp_path.iterdir() if one.name.startswith("bench")] == ["bench"]
