"""A book of each old version whose upgrade dies at each of its statements, one after another.

``python tests/benchmarks/upgrade_deaths.py [VERSION...]``

After each death the file must hold what it held, row by row (or be of the newest
version, where it dies after that was written), and opening it once more must
bring the whole book.  Printed are, by version, the statements of its
upgrade, and how many deaths left another file (changed) or lost the book (lost).
"""

from __future__ import annotations

import shutil
import sqlite3
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from sqlalchemy import event

from storage import database, opening
from storage.bench_book import BenchBook
from storage.exchange import load

OLD_BOOKS = ROOT / "tests" / "storage" / "old_books"


class UpgradeDied(Exception):  # noqa: N818 - it is told to, and is no error
    """The upgrade was told to die here."""


@contextmanager
def dying_at(number: int) -> Iterator[list[int]]:
    """Let an upgrade die at a statement; the list counts those that it reached."""
    really, reached = opening.migrate, [0]

    def migrate(engine, target, *, upgrade=None):
        def die(*_given):
            reached[0] += 1
            if reached[0] == number:
                raise UpgradeDied

        event.listen(engine, "before_cursor_execute", die)
        really(engine, target, upgrade=upgrade)

    opening.migrate = migrate
    try:
        yield reached
    finally:
        opening.migrate = really


def rows(path: Path) -> dict[str, list[tuple[object, ...]]]:
    """Return all rows of all tables of a file."""
    with closing(sqlite3.connect(path)) as raw:
        names = raw.execute("SELECT name FROM sqlite_master WHERE type = 'table'").fetchall()
        return {name: raw.execute(f"SELECT * FROM {name}").fetchall() for (name,) in names}


def deaths(old: Path, folder: Path) -> str:
    """Let one version's upgrade die everywhere; return the line of the table."""
    origin = folder / "origin.tackfree"
    with closing(sqlite3.connect(origin)) as raw:
        raw.executescript(old.read_text("utf-8"))
        raw.execute(f"PRAGMA application_id = {database.APPLICATION_ID}")
    expected, before = load(old.with_suffix(".json").read_bytes()).book, rows(origin)
    number = changed = lost = 0
    while True:
        number += 1
        own = folder / f"death{number}"
        own.mkdir()
        path = Path(shutil.copy(origin, own / "bench.tackfree"))
        try:
            with dying_at(number), BenchBook.open(path):
                break  # there is no such statement any more
        except UpgradeDied:
            pass
        now = rows(path)
        changed += now != before and now["alembic_version"] != [(database.NEWEST,)]
        with BenchBook.open(path) as bench:
            lost += bench.book() != expected
        shutil.rmtree(own)
    return f"{old.stem:8}  {number - 1:10}  {changed:7}  {lost:4}"


def main(wanted: list[str]) -> None:
    """Print the table."""
    began = time.monotonic()
    print("version   statements  changed  lost")
    for old in sorted(OLD_BOOKS.glob("*.sql")):
        if not wanted or old.stem in wanted:
            with tempfile.TemporaryDirectory() as folder:
                print(deaths(old, Path(folder)), flush=True)
    print(f"{time.monotonic() - began:.0f} s")


if __name__ == "__main__":
    main(sys.argv[1:])
