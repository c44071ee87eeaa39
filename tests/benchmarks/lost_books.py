"""Books deleted, moved, replaced, set back, damaged, killed: how many edits are lost, how many lie.

``python tests/benchmarks/lost_books.py [TRIAL...] [--count N] [--seed S]``

Every trial is drawn from a seed and told in one line: how often it was done,
how many acknowledged edits are in no book any more (lost), how many books
are unsound (broken), hold something else than was told (silent), ended in
anything but a refusal (tracebacks), or took over five seconds (hangs).
"""

from __future__ import annotations

import argparse
import os
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from contextlib import closing
from dataclasses import dataclass, fields, replace
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from planner.values.book import Book
from storage import backups
from storage.bench_book import BenchBook, BookLost, BookTrouble
from storage.exchange import load
from storage.header import APPLICATION_ID
from storage.restoring import rescue, save_elsewhere

DEMO = ROOT / "demo_projects" / "lone_lamplighter.json"
OLD_BOOKS = ROOT / "tests" / "storage" / "old_books"
SLOW_SECONDS = 5.0

EDITOR = """
import sys
from dataclasses import replace
from pathlib import Path
from storage.bench_book import BenchBook

bench = BenchBook.open(Path(sys.argv[1]))
number = int(bench.book().projects[0].note or 0)
while True:
    number += 1
    book = bench.known()
    first = replace(book.projects[0], note=str(number))
    bench.apply(f"edit {number}", replace(book, projects=(first, *book.projects[1:])))
    print(number, flush=True)
"""
OPENER = """
import sys
from pathlib import Path
from app.service.books import open_book

try:
    open_book(Path(sys.argv[1]), create=True).close()
except Exception as problem:
    print(repr(problem))
    sys.exit(1)
"""
KEEPER = """
import sys
from pathlib import Path
from storage import backups

while True:
    backups.keep(Path(sys.argv[1]), backups.BackupReason.ASKED)
    print(flush=True)
"""
RESTORER = """
import sys
from pathlib import Path
from storage import backups
from storage.bench_book import BenchBook
from storage.restoring import restore

bench = BenchBook.open(Path(sys.argv[1]))
print(flush=True)
while True:
    restore(bench, backups.copies(bench.path)[-1].path)
    print(flush=True)
"""
UPGRADER = """
import sys
from pathlib import Path
from storage.bench_book import BenchBook

print(flush=True)
BenchBook.open(Path(sys.argv[1])).close()
"""


@dataclass
class Count:
    """What came of the trials of one kind."""

    trials: int = 0
    lost: int = 0
    broken: int = 0
    silent: int = 0
    tracebacks: int = 0
    hangs: int = 0

    def line(self) -> str:
        """Return the figures, in the order of the fields."""
        return "  ".join(f"{getattr(self, field.name):6}" for field in fields(self))


def noted(book: Book, note: object) -> Book:
    """Return the book with a note on its first project."""
    first, *others = book.projects
    return replace(book, projects=(replace(first, note=str(note)), *others))


def note_of(path: Path) -> int:
    """Return the number that a book was given last; 0 for none."""
    with BenchBook.open(path) as bench:
        return int(bench.book().projects[0].note or 0)


def edited(path: Path, numbers: range) -> None:
    """Make edits, each numbered."""
    with BenchBook.open(path) as bench:
        for number in numbers:
            bench.apply(f"edit {number}", noted(bench.known(), number))


class Trials:
    """Draws trials and counts what came of them."""

    def __init__(self, folder: Path, seed: int) -> None:
        self.folder = folder
        self.random = random.Random(seed)
        self.demo = noted(load(DEMO.read_bytes()).book, "")
        self.pristine = folder / "pristine.tackfree"
        BenchBook.create(self.pristine, self.demo).close()
        self.number = 0

    def fresh(self, name: str = "bench.tackfree") -> Path:
        """Return a book in a folder of its own."""
        self.number += 1
        own = self.folder / f"trial{self.number}"
        own.mkdir()
        return Path(shutil.copy(self.pristine, own / name))

    def done(self, path: Path) -> None:
        """Clear up after a trial."""
        shutil.rmtree(path.parent)

    def gone(self, count: Count, take_away: Callable[[Path], None]) -> None:
        """Take a book away while it is open, edit, and save it elsewhere."""
        path = self.fresh()
        before = self.random.randint(1, 4)
        with BenchBook.open(path) as bench:
            for number in range(1, before + 1):
                bench.apply("edit", noted(bench.known(), number))
            take_away(path)
            there = path.read_bytes() if path.exists() else b""
            pending = noted(bench.known(), before + 1)
            try:
                bench.apply("edit", pending)
            except BookLost:
                saved, _ = save_elsewhere(bench, path.with_name("saved.tackfree"))
                with saved:
                    saved.apply("edit", pending)
            else:
                count.lost += 1
            after = path.read_bytes() if path.exists() else b""
            count.silent += after != there  # what was laid in its place has been written over
        if path.with_name("saved.tackfree").exists():
            count.lost += note_of(path.with_name("saved.tackfree")) != before + 1
        self.done(path)

    def deleted(self, count: Count) -> None:
        """Delete it."""
        self.gone(count, Path.unlink)

    def moved(self, count: Count) -> None:
        """Move it."""
        self.gone(count, lambda path: path.rename(path.with_name("moved")) and None)

    def _another(self) -> Path:
        """Return another book, or another state of one like it."""
        other = self.folder / "another.tackfree"
        shutil.copy(self.pristine, other)
        edited(other, range(100, 100 + self.random.randint(0, 6)))
        return other

    def replaced(self, count: Count) -> None:
        """Rename another over it."""
        other = self._another()
        self.gone(
            count,
            lambda path: shutil.copy(other, f"{path}.new") and os.replace(f"{path}.new", path),
        )

    def overwritten(self, count: Count) -> None:
        """Copy another over it, into the same file."""
        other = self._another()
        self.gone(count, lambda path: shutil.copyfile(other, path) and None)

    def set_back(self, count: Count) -> None:
        """Copy an older state over it, into the same file."""
        self.gone(count, lambda path: shutil.copyfile(self.pristine, path) and None)

    def copied(self, count: Count) -> None:
        """Copy it while it is open, as any program copies a file."""
        path = self.fresh()
        copy = path.with_name("copy.tackfree")
        edits = self.random.randint(1, 20)
        with BenchBook.open(path) as bench:
            for number in range(1, edits + 1):
                bench.apply("edit", noted(bench.known(), number))
            shutil.copyfile(path, copy)
        count.lost += note_of(copy) != edits
        self.done(path)

    def killed(self, count: Count) -> None:
        """Kill an editor at any instant."""
        path = self.fresh()
        last = self._killed(EDITOR, path, self.random.uniform(0, 0.08), lines=1)
        found = note_of(path)
        count.lost += max(0, last - found)
        count.silent += found > last + 1
        count.broken += not self._sound(path)
        self.done(path)

    def copy_over_crashed(self, count: Count) -> None:
        """Kill an editor, lay a copy of before over the book, open it."""
        path = self.fresh()
        edited(path, range(1, self.random.randint(2, 5)))
        copy = Path(shutil.copy(path, path.with_name("copy")))
        wanted = note_of(copy)
        self._killed(EDITOR, path, self.random.uniform(0, 0.05), lines=1)
        shutil.copyfile(copy, path)
        try:
            count.lost += note_of(path) != wanted
            count.broken += not self._sound(path)
        except BookTrouble:
            count.broken += 1
        self.done(path)

    def killed_upgrading(self, count: Count) -> None:
        """Kill a program that brings a book of old up to date."""
        old = self.random.choice(sorted(OLD_BOOKS.glob("*.sql"))[:-1])
        path = self.fresh()
        path.unlink()
        with closing(sqlite3.connect(path)) as raw:
            raw.executescript(old.read_text("utf-8"))
            raw.execute(f"PRAGMA application_id = {APPLICATION_ID}")
        expected = load(old.with_suffix(".json").read_bytes()).book
        self._killed(UPGRADER, path, self.random.uniform(0.0, 0.5), lines=1)
        with BenchBook.open(path) as bench:
            count.lost += bench.book() != expected
        count.broken += not self._sound(path)
        self.done(path)

    def killed_backing_up(self, count: Count) -> None:
        """Kill a program that makes copies; every copy that has its name must be sound."""
        path = self.fresh()
        edited(path, range(1, 3))
        self._killed(KEEPER, path, self.random.uniform(0, 0.2), lines=1)
        for copy in backups.copies(path):
            count.broken += backups.look_into(copy.path) is None
        count.broken += not self._sound(path)
        self.done(path)

    def killed_restoring(self, count: Count) -> None:
        """Kill a program that restores copies; the book is as before or as the copy."""
        path = self.fresh()
        backups.keep(path, backups.BackupReason.ASKED)
        edited(path, range(1, 3))
        self._killed(RESTORER, path, self.random.uniform(0, 0.2), lines=1)
        count.lost += note_of(path) not in (0, 2)
        count.broken += not self._sound(path)
        self.done(path)

    def first_starts(self, count: Count) -> None:
        """Start twice at once where there is no book yet."""
        path = self.fresh()
        path.unlink()
        both = [self._run(OPENER, path) for _ in range(2)]
        count.lost += sum(one.wait(60) != 0 for one in both)
        for one in both:
            one.stdout.close()  # type: ignore[union-attr]
        count.broken += not self._sound(path)
        self.done(path)

    def damaged(self, count: Count) -> None:
        """Change bytes of a book, or what SQLite keeps of its own in it; open, read, undo."""
        path = self.fresh()
        edited(path, range(1, 3))
        told = self._damage(path)
        before, began = path.read_bytes(), time.monotonic()
        refused = False
        try:
            with BenchBook.open(path) as bench:
                count.silent += bench.book() != noted(self.demo, 2)
                bench.apply("edit", noted(bench.known(), 3))
            count.silent += note_of(path) != 3
        except BookTrouble:
            refused = True
        except Exception as problem:
            count.tracebacks += 1
            print(f"  {told}: {problem!r}"[:300])
        count.hangs += time.monotonic() - began > SLOW_SECONDS
        if refused and path.read_bytes() != before:
            count.broken += 1
        self.done(path)

    def foreign(self, count: Count) -> None:
        """Open files that are no books, or none of ours; they stay as they are."""
        path = self.fresh()
        with closing(sqlite3.connect(path)) as raw:
            raw.execute(
                self.random.choice(("PRAGMA application_id = 7", "PRAGMA journal_mode = WAL"))
            )
            raw.execute("CREATE TABLE theirs (value TEXT)")
            raw.execute("INSERT INTO theirs VALUES ('kept')")
            raw.commit()
        before = path.read_bytes()
        try:
            BenchBook.open(path).close()
        except BookTrouble:
            count.broken += path.read_bytes() != before
        else:
            count.silent += 1
        self.done(path)

    def rescued(self, count: Count) -> None:
        """Damage a book beyond reading and put a copy in its place."""
        path = self.fresh()
        edited(path, range(1, 4))
        copy = backups.keep(path, backups.BackupReason.DAILY)
        content = path.read_bytes()[: self.random.randint(120, 5000)]
        path.write_bytes(content)
        path.with_name(f"{path.name}-journal").write_bytes(b"what was left")
        aside = rescue(path, copy.path)
        count.lost += note_of(path) != 3
        count.broken += aside is None or aside.read_bytes() != content
        count.broken += not aside.with_name(f"{aside.name}-journal").exists() if aside else 1
        self.done(path)

    def _damage(self, path: Path) -> str:
        kind = self.random.choice(("bytes", "cut", "text", "trigger", "view", "table", "journal"))
        if kind in ("bytes", "cut"):
            content = bytearray(path.read_bytes())
            if kind == "cut":
                del content[self.random.randrange(len(content)) :]
            for _ in range(self.random.randint(1, 20) if kind == "bytes" else 0):
                at = self.random.randrange(100, len(content) - 4)
                content[at : at + 4] = self.random.randbytes(4)
            path.write_bytes(content)
            return kind
        statements = {
            "text": (
                "UPDATE project SET note = 'other'",
                "UPDATE coating SET name = name || 'x'",
                "UPDATE airbrush SET clean_minutes = clean_minutes + 1",
                "UPDATE place SET area_cm2 = area_cm2 * 2",
                "DELETE FROM gate_window",
            ),
            "trigger": (
                "CREATE TRIGGER t AFTER UPDATE ON project BEGIN UPDATE project SET note = 'x'; END",
                "CREATE TRIGGER t AFTER INSERT ON journal BEGIN DELETE FROM project_pin; END",
            ),
            "view": (
                "ALTER TABLE project RENAME TO p; CREATE VIEW project AS SELECT * FROM p",
                "ALTER TABLE card RENAME TO c; CREATE VIEW card AS WITH RECURSIVE n(id) AS "
                "(SELECT 1 UNION ALL SELECT id + 1 FROM n) SELECT id, 1, 0, '', '', '', '' FROM n",
            ),
            "table": (
                "CREATE TABLE more (id INTEGER)",
                "ALTER TABLE project ADD COLUMN more TEXT",
                "DROP TABLE pace",
                "INSERT INTO gear (id, position) VALUES (99999, 1)",
            ),
            "journal": (
                "UPDATE journal SET name = 'other' WHERE id = 2",
                "DELETE FROM journal WHERE id = 2",
                "DELETE FROM journal",
                "UPDATE journal SET changes = zeroblob(100)",
                "DELETE FROM journal WHERE id = (SELECT max(id) FROM journal)",
            ),
        }
        with closing(sqlite3.connect(path)) as raw:
            statement = self.random.choice(statements[kind])
            raw.executescript(statement)
            raw.commit()
        return statement

    def _run(self, code: str, path: Path) -> subprocess.Popen[str]:
        return subprocess.Popen(
            [sys.executable, "-c", code, str(path)], cwd=ROOT, stdout=subprocess.PIPE, text=True
        )

    def _killed(self, code: str, path: Path, seconds: float, *, lines: int) -> int:
        """Run a program, kill it some time after its first lines; return its last number."""
        last = 0
        with self._run(code, path) as running:
            assert running.stdout is not None
            for _ in range(lines):
                last = int(running.stdout.readline().strip() or 0)
            time.sleep(seconds)
            running.send_signal(signal.SIGKILL)
            for line in running.stdout:
                last = int(line.strip() or 0)
        return last

    def _sound(self, path: Path) -> bool:
        with closing(sqlite3.connect(path)) as raw:
            return raw.execute("PRAGMA integrity_check").fetchall() == [("ok",)]


TRIALS = {
    "deleted": Trials.deleted,
    "moved": Trials.moved,
    "replaced": Trials.replaced,
    "overwritten": Trials.overwritten,
    "set_back": Trials.set_back,
    "copied": Trials.copied,
    "killed": Trials.killed,
    "copy_over_crashed": Trials.copy_over_crashed,
    "killed_upgrading": Trials.killed_upgrading,
    "killed_backing_up": Trials.killed_backing_up,
    "killed_restoring": Trials.killed_restoring,
    "first_starts": Trials.first_starts,
    "damaged": Trials.damaged,
    "foreign": Trials.foreign,
    "rescued": Trials.rescued,
}


def run(name: str, count: int, seed: int) -> Count:
    """Run so many trials of one kind."""
    found = Count()
    with tempfile.TemporaryDirectory(prefix="tackfree-trials-") as folder:
        trials = Trials(Path(folder), seed)
        for _ in range(count):
            found.trials += 1
            TRIALS[name](trials, found)
    return found


def main() -> None:
    """Run the trials asked for and print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("trial", nargs="*", choices=[*TRIALS, []], help="absent: every one")
    parser.add_argument("--count", type=int, default=20)
    parser.add_argument("--seed", type=int, default=1)
    args = parser.parse_args()
    print(f"{'trial':20}" + "  ".join(f"{field.name[:6]:>6}" for field in fields(Count)))
    for name in args.trial or TRIALS:
        print(f"{name:20}" + run(name, args.count, args.seed).line(), flush=True)


if __name__ == "__main__":
    main()
