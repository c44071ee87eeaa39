"""Nothing acknowledged is lost: killed programs, full disks, damaged files."""

import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import replace
from pathlib import Path

import pytest
from drawn_examples import drawn
from hypothesis import HealthCheck, given
from hypothesis import strategies as st
from sqlalchemy.exc import OperationalError

from planner.values.book import Book
from storage import database
from storage.bench_book import BenchBook, BookTrouble
from storage.database import transaction
from storage.errors import told_plainly
from storage.exchange import load
from storage.restoring import rescue, salvage

ROOT = Path(__file__).parents[2]

EDITOR = """
import sys
from dataclasses import replace
from pathlib import Path
from storage.bench_book import BenchBook

bench = BenchBook.open(Path(sys.argv[1]))
number = 0
while True:
    number += 1
    book = bench.book()
    first = replace(book.projects[0], note=str(number))
    bench.apply(f"edit {number}", replace(book, projects=(first, *book.projects[1:])))
    print(number, flush=True)
"""

COUNTER = """
import sys
from dataclasses import replace
from pathlib import Path
from storage.bench_book import BenchBook, BookChanged

bench = BenchBook.open(Path(sys.argv[1]))
told, done = 0, 0
while done < 25:
    book = bench.book()
    note = str(int(book.projects[0].note or 0) + 1)
    first = replace(book.projects[0], note=note)
    try:
        bench.apply("count", replace(book, projects=(first, *book.projects[1:])))
    except BookChanged:
        told += 1
    else:
        done += 1
print(told)
"""

DIES_CREATING = """
import os, signal, sys
from pathlib import Path
from storage import journal
from storage.bench_book import BenchBook
from storage.exchange import load

journal.append = lambda *_: os.kill(os.getpid(), signal.SIGKILL)
demo = Path("demo_projects/lone_lamplighter.json").read_bytes()
BenchBook.create(Path(sys.argv[1]), load(demo).book)
"""

DIES_INSIDE = """
import os, signal, sys
from dataclasses import replace
from pathlib import Path
from storage import journal
from storage.bench_book import BenchBook

bench = BenchBook.open(Path(sys.argv[1]))
journal.append = lambda *_: os.kill(os.getpid(), signal.SIGKILL)
bench.apply("never", replace(bench.book(), projects=()))
"""


def run(code: str, path: Path) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, "-c", code, str(path)], cwd=ROOT, stdout=subprocess.PIPE, text=True
    )


def noted(book, note):
    first, *others = book.projects
    return replace(book, projects=(replace(first, note=note), *others))


def is_sound(path: Path) -> bool:
    with closing(sqlite3.connect(path)) as raw:
        return raw.execute("PRAGMA integrity_check").fetchall() == [("ok",)]


@pytest.mark.parametrize("delay", [0.0, 0.003, 0.011, 0.05])
def test_killed_at_any_instant_the_last_acknowledged_edit_is_there(book_path, delay):
    with run(EDITOR, book_path) as editor:
        assert editor.stdout is not None
        for _ in range(random.randint(1, 6)):
            acknowledged = int(editor.stdout.readline())
        time.sleep(delay)
        editor.kill()
        for line in editor.stdout:  # what was acknowledged before the end
            acknowledged = int(line)
    with BenchBook.open(book_path) as bench:
        found = int(bench.book().projects[0].note)
        assert found in (acknowledged, acknowledged + 1)
        assert bench.undoable() == f"edit {found}"
        bench.undo()
        assert bench.undoable() == (f"edit {found - 1}" if found > 1 else None)
    assert is_sound(book_path)


def test_two_programs_at_once_lose_no_edit(book_path, demo_book):
    """Each adds one to what it read, 25 times, and begins again where it is told of the other."""
    with BenchBook.open(book_path) as bench:
        bench.apply("start", noted(demo_book, "0"))
    with run(COUNTER, book_path) as first, run(COUNTER, book_path) as second:
        for one in (first, second):
            assert one.wait(60) == 0
    with BenchBook.open(book_path) as bench:
        assert bench.book().projects[0].note == "50"
    assert is_sound(book_path)


def test_killed_inside_an_edit_nothing_has_changed(book_path, demo_book):
    with run(DIES_INSIDE, book_path) as editor:
        assert editor.wait(60) == -signal.SIGKILL
    with BenchBook.open(book_path) as bench:
        assert bench.book() == demo_book
        assert bench.undo() is None
        bench.apply("later", noted(demo_book, "later"))
    assert is_sound(book_path)


def test_killed_while_making_a_book_leaves_no_half_of_one(tmp_path, demo_book):
    path = tmp_path / "bench"
    with run(DIES_CREATING, path) as editor:
        assert editor.wait(60) == -signal.SIGKILL
    assert not path.exists()
    with BenchBook.create(path, demo_book) as bench:
        assert bench.book() == demo_book
    assert sorted(left.name for left in tmp_path.iterdir() if left.name.endswith(".new")) == []


@contextmanager
def pragma(text: str) -> Iterator[None]:
    """Have every connection made meanwhile under a further rule."""
    really = database.guarded

    def guarded(raw: sqlite3.Connection, seconds: float) -> sqlite3.Connection:
        raw.execute(f"PRAGMA {text}").close()
        return really(raw, seconds)

    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(database, "guarded", guarded)
        yield


def test_a_full_disk_is_told_and_nothing_is_lost(book_path, demo_book):
    with BenchBook.open(book_path) as bench:
        many = tuple(
            replace(demo_book.coatings[0], name=f"coating {number}") for number in range(2000)
        )
        full = pragma("max_page_count = 1")  # SQLite then allows no more than there is
        with full, pytest.raises(BookTrouble, match="the disk is full; nothing was changed"):
            bench.apply("too much", replace(demo_book, coatings=(*demo_book.coatings, *many)))
        assert bench.book() == demo_book
        bench.apply("enough", noted(demo_book, "room again"))
    assert is_sound(book_path)


def test_a_read_only_file_is_told(book_path, demo_book):
    told = pytest.raises(BookTrouble, match="read-only")
    with BenchBook.open(book_path) as bench, pragma("query_only = ON"), told:
        bench.apply("note", noted(demo_book, "x"))


def test_a_book_locked_by_another_program_is_told(book_path, demo_book, monkeypatch):
    monkeypatch.setattr("storage.database.BUSY_SECONDS", 0)
    with BenchBook.open(book_path) as bench, closing(sqlite3.connect(book_path)) as other:
        other.execute("BEGIN IMMEDIATE")
        with pytest.raises(BookTrouble, match="is being written by another program"):
            bench.apply("note", noted(demo_book, "x"))
        other.rollback()
        bench.apply("note", noted(demo_book, "x"))


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"", "is empty"),
        (b"SQLite format 2\0" + b"\0" * 100, "is not a bench book"),
        (b'{"tackfree": 1}', "is not a bench book"),
        (b"SQLite format 3\0" + b"\xff" * 4096, "is another program's database"),
        (b"SQLite format 3\0" + b"\xff" * 50, "is damaged: it is cut short"),
    ],
)
def test_other_files_are_refused_and_left_alone(tmp_path, content, said):
    path = tmp_path / "thing"
    path.write_bytes(content)
    with pytest.raises(BookTrouble, match=said) as caught:
        BenchBook.open(path)
    assert "\n" not in str(caught.value)
    assert caught.value.place == str(path)
    assert path.read_bytes() == content


def test_other_places_are_refused(tmp_path, book_path, demo_book):
    with pytest.raises(BookTrouble, match="is not there"):
        BenchBook.open(tmp_path / "missing")
    with pytest.raises(BookTrouble, match="is a folder"):
        BenchBook.open(tmp_path)
    with pytest.raises(BookTrouble, match="is there already"):
        BenchBook.create(book_path, demo_book)
    with pytest.raises(BookTrouble, match="its folder is not there"):
        BenchBook.create(tmp_path / "no" / "book", demo_book)


def test_another_programs_database_is_refused(tmp_path):
    path = tmp_path / "other.db"
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("CREATE TABLE thing (id INTEGER)")
        raw.commit()
    content = path.read_bytes()
    with pytest.raises(BookTrouble, match="another program's database"):
        BenchBook.open(path)
    assert path.read_bytes() == content


@drawn(80, HealthCheck.function_scoped_fixture)
@given(data=st.data())
def test_a_damaged_file_is_told_or_harmless(data, pristine, tmp_path_factory):
    path = tmp_path_factory.mktemp("damage") / "bench"
    content = bytearray(pristine.read_bytes())
    if data.draw(st.booleans()):
        del content[data.draw(st.integers(0, len(content) - 1)) :]
    for _ in range(data.draw(st.integers(0, 30)) if len(content) > 100 else 0):
        at = data.draw(st.integers(100, len(content) - 1))
        content[at : at + 4] = data.draw(st.binary(min_size=4, max_size=4))
    path.write_bytes(content)
    try:
        with BenchBook.open(path) as bench:
            bench.journal()
            bench.undo()
    except BookTrouble as trouble:
        said = str(trouble)
    else:
        said = ""
    assert "\n" not in said
    shutil.rmtree(path.parent)


def test_rows_that_make_no_sense_are_told(book_path):
    with closing(sqlite3.connect(book_path)) as raw:
        raw.execute("UPDATE step SET stage = 'juggle'")
        raw.commit()
    with pytest.raises(BookTrouble, match=r"is damaged \(.+\); restore a backup"):
        BenchBook.open(book_path)


def test_a_damaged_book_is_rescued_from_a_backup(book_path, demo_book, tmp_path):
    backup = tmp_path / "backup"
    with BenchBook.open(book_path) as bench:
        bench.backup(backup)
    content = book_path.read_bytes()[:5000]
    book_path.write_bytes(content)
    with pytest.raises(BookTrouble):
        BenchBook.open(book_path)
    with pytest.raises(BookTrouble):
        rescue(book_path, book_path)
    aside = rescue(book_path, backup)
    assert aside.read_bytes() == content
    with BenchBook.open(book_path) as bench:
        assert bench.book() == demo_book


def test_drying_cards_are_read_from_a_damaged_book_with_what_they_name(tmp_path):
    """A starter book has neither the bottle nor the location of the card."""
    old = Path(__file__).parent / "old_books" / "0014.json"
    book = load(old.read_bytes()).book
    path = tmp_path / "bench"
    BenchBook.create(path, book).close()
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("UPDATE step SET stage = 'juggle'")
        raw.commit()
    elsewhere = replace(book.room, locations=(replace(book.room.locations[0], name="elsewhere"),))
    starter = Book(room=replace(elsewhere, readings=()), bench_time=book.bench_time)
    found = salvage(path, starter)
    assert found is not None
    assert found.book.drying_cards == book.drying_cards != ()


def test_our_own_mistakes_are_no_trouble_of_the_file(book_path):
    def broken() -> None:
        with (
            BenchBook.open(book_path) as bench,
            transaction(bench._engine, book_path) as connection,
            told_plainly(book_path),
        ):
            connection.exec_driver_sql("SELECT nonsense")

    with pytest.raises(OperationalError):
        broken()


def test_every_edit_waits_for_the_disk(book_path):
    """A rollback journal with synchronous EXTRA (3): all is on the disk before a commit returns."""
    with BenchBook.open(book_path) as bench, bench._engine.connect() as connection:
        for name, value in (("journal_mode", "delete"), ("synchronous", 3), ("foreign_keys", 1)):
            assert connection.exec_driver_sql(f"PRAGMA {name}").scalar_one() == value
