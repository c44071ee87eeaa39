"""The bench book: everything one person has, in one SQLite file.

Each edit is one transaction that writes the pieces it touches and its line
of the journal together.  An edit counts from the revision that this session
has read; if somebody else has written since, it is refused and nothing
changes.  What was acknowledged outlasts a killed program and a power cut.
"""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path
from types import TracebackType

from sqlalchemy import Connection, Engine

from planner.graph.network import check_acyclic
from planner.values.book import Book
from planner.values.project import Logged, Project
from planner.values.refusal import Refused, demand, unknown
from storage import journal
from storage.aggregates import Pieces, changes, join, split
from storage.database import copy_to, create_engine_at, open_engine, transaction
from storage.journal import Change, Entry, Kind, Stacks
from storage.presence import Presence
from storage.store import read_book, write_pieces
from storage.trouble import BookChanged, BookTrouble, read_as_sound, told_plainly

__all__ = ["BenchBook", "BookChanged", "BookTrouble", "Entry", "Kind", "rescue"]


class BenchBook:
    """An open bench book; use `open` or `create`, and `close` it or use ``with``.

    One session reads and writes from one thread.
    """

    def __init__(self, path: Path, engine: Engine) -> None:
        self.path = path
        self._engine = engine
        self._presence = Presence(path)
        self._book: Book | None = None
        self._revision = 0

    @classmethod
    def open(cls, path: Path) -> BenchBook:
        """Open the book at ``path``, brought up to date if it is an older one.

        Raises
        ------
        BookTrouble
            If there is none, or it cannot be used; the file stays as it is.
        """
        opened = cls(path, open_engine(path))
        try:
            opened.book()
        except BaseException:
            opened.close()
            raise
        return opened

    @classmethod
    def create(cls, path: Path, book: Book) -> BenchBook:
        """Make a new bench book that holds ``book``.

        Raises
        ------
        BookTrouble
            If something lies there already, or it cannot be written.
        """
        with told_plainly(path):
            if path.exists():
                raise BookTrouble(str(path), "is there already; open it, or choose another name")
            if not path.parent.is_dir():
                raise BookTrouble(str(path), "cannot be made: its folder is not there")
            half = path.with_name(f".{path.name}.new")  # whole before it gets its name
            half.unlink(missing_ok=True)
            try:
                _fill(half, book)
                half.rename(path)
            finally:
                half.unlink(missing_ok=True)
        return cls.open(path)

    def __enter__(self) -> BenchBook:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        problem: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def close(self) -> None:
        """Let go of the file."""
        self._presence.leave()
        self._engine.dispose()

    @property
    def revision(self) -> int:
        """Revision that this session has read; each edit and fact makes a new one."""
        return self._revision

    @property
    def other_user(self) -> str:
        """Who else has the book open, in words; "" if nobody that we know of."""
        return self._presence.other

    def book(self) -> Book:
        """Return what the book holds now, whoever wrote it.

        Raises
        ------
        BookTrouble
            If it cannot be read, or what it holds is damaged.
        """
        with self._reading() as connection:
            revision = journal.last_id(connection)
            if self._book is None or revision != self._revision:
                self._adopt(read_book(connection), revision)
        assert self._book is not None
        return self._book

    def apply(self, name: str, new: Book) -> int:
        """Make the book ``new``, in one transaction; return the revision that this makes.

        An edit that changes nothing but logs is journalled as a fact, and
        `undo` passes over it.

        Parameters
        ----------
        name
            What the journal calls the edit.

        Raises
        ------
        Refused
            If a step waits for itself.
        BookChanged
            If somebody else has changed the book since this session read it.
        BookTrouble
            If it cannot be written; nothing has changed then.
        """
        check_acyclic(new)
        old, after = split(self._known()), split(new)
        changed = changes(old, after)
        if not changed:
            return self._revision
        only_logs = all(key.startswith("log/") and key in old and key in after for key in changed)
        kind = Kind.FACT if only_logs else Kind.EDIT
        with self._editing() as connection:
            revision = self._write(connection, name, kind, changed, after)
        self._adopt(new, revision)
        return revision

    def log_fact(self, name: str, project: str, fact: Logged) -> int:
        """Write down that a coat was begun, or ended; it replaces an entry of the same coat."""
        mine = (fact.model, fact.step, fact.coat)
        kept = [one for one in self._project(project).log if _coat(one) != mine]
        return self._with_log(name, project, (*kept, fact))

    def unlog(self, name: str, project: str, model: str, step: str, coat: int = 1) -> int:
        """Take back a fact that was written down by mistake."""
        log = self._project(project).log
        kept = tuple(one for one in log if _coat(one) != (model, step, coat))
        demand(len(kept) < len(log), "log", f'nothing is logged of "{step}" coat {coat}')
        return self._with_log(name, project, kept)

    def undo(self) -> str | None:
        """Take back the last edit, also one from before a restart; facts stay.

        Returns
        -------
        str or None
            What the journal calls it; None if there is nothing to undo.

        Raises
        ------
        Refused
            If facts were logged since that cannot stand without the edit.
        BookTrouble
            As for `apply`.
        """
        return self._turn(Kind.UNDO)

    def redo(self) -> str | None:
        """Make the last undone edit again, until a new edit is made; see `undo`."""
        return self._turn(Kind.REDO)

    def undoable(self) -> str | None:
        """Return the name of the edit that `undo` would take back."""
        undo = self._stacks().undo
        return undo[-1].name if undo else None

    def redoable(self) -> str | None:
        """Return the name of the edit that `redo` would make again."""
        redo = self._stacks().redo
        return redo[-1].name if redo else None

    def journal(self) -> tuple[Entry, ...]:
        """Return every entry, the oldest first."""
        with self._reading() as connection:
            return journal.entries(connection)

    def backup(self, target: Path) -> None:
        """Write a sound copy to ``target``, even while the book is in use.

        Raises
        ------
        BookTrouble
            If something lies there, or it cannot be written.
        """
        copy_to(self._engine, self.path, target)

    def restore(self, backup: Path) -> int:
        """Bring back all that a backup holds, as an edit that can be undone.

        Raises
        ------
        BookTrouble
            If the backup is no sound bench book; nothing has changed then.
        """
        with _opened_copy(backup) as other:
            return self.apply(f"restore {backup.name}", other.book())

    def _known(self) -> Book:
        return self._book if self._book is not None else self.book()

    def _project(self, name: str) -> Project:
        projects = self._known().projects
        found = next((project for project in projects if project.name == name), None)
        if found is None:
            known = [project.name for project in projects]
            raise Refused("project", unknown("project", name, known))
        return found

    def _with_log(self, name: str, project: str, log: tuple[Logged, ...]) -> int:
        book = self._known()
        projects = tuple(
            replace(one, log=log) if one.name == project else one for one in book.projects
        )
        return self.apply(name, replace(book, projects=projects))

    def _turn(self, kind: Kind) -> str | None:
        old = split(self._known())
        with self._editing() as connection:
            with read_as_sound(self.path):
                stacks = journal.stacks(journal.entries(connection))
                stack = stacks.undo if kind is Kind.UNDO else stacks.redo
                if not stack:
                    return None
                edit = stack[-1]
                wanted = journal.changes_of(connection, edit.id)
            if kind is Kind.UNDO:
                wanted = {key: Change(one.after, one.before) for key, one in wanted.items()}
            after, new = _turned(old, wanted, f'cannot {kind} "{edit.name}"')
            revision = self._write(connection, edit.name, kind, changes(old, after), after, edit.id)
        self._adopt(new, revision)
        return edit.name

    def _write(
        self,
        connection: Connection,
        name: str,
        kind: Kind,
        changed: dict[str, tuple[object, object]],
        after: Pieces,
        target: int | None = None,
    ) -> int:
        write_pieces(connection, changed, after)
        return journal.append(connection, name, kind, changed, target)

    def _stacks(self) -> Stacks:
        return journal.stacks(self.journal())

    def _adopt(self, book: Book, revision: int) -> None:
        self._book, self._revision = book, revision

    @contextmanager
    def _reading(self) -> Iterator[Connection]:
        with read_as_sound(self.path), transaction(self._engine, self.path) as connection:
            yield connection

    @contextmanager
    def _editing(self) -> Iterator[Connection]:
        """Write, provided that nobody else has since this session read."""
        with transaction(self._engine, self.path, writes=True) as connection:
            if journal.last_id(connection) != self._revision:
                raise BookChanged(
                    str(self.path),
                    "was changed by another program since it was read here; "
                    "read it again, then repeat the edit",
                )
            yield connection


def _fill(path: Path, book: Book) -> None:
    engine = create_engine_at(path)
    try:
        with transaction(engine, path, writes=True) as connection:
            pieces = split(book)
            write_pieces(connection, pieces, pieces)
            journal.append(connection, "new book", Kind.CREATED, {})
    finally:
        engine.dispose()


def rescue(path: Path, backup: Path) -> Path:
    """Put a copy of ``backup`` in the place of a damaged book; return where that lies now.

    Raises
    ------
    BookTrouble
        If the backup is no sound bench book; nothing has moved then.
    """
    with _opened_copy(backup):
        pass
    with told_plainly(path):
        number = 1
        while (aside := path.with_name(f"{path.name}.damaged-{number}")).exists():
            number += 1
        fresh = path.with_name(f".{path.name}.fresh")
        shutil.copyfile(backup, fresh)
        if path.exists():
            path.rename(aside)
        for rest in ("-wal", "-shm"):
            path.with_name(path.name + rest).unlink(missing_ok=True)
        fresh.rename(path)
    return aside


@contextmanager
def _opened_copy(backup: Path) -> Iterator[BenchBook]:
    """Open a copy, so that the backup itself is not upgraded or touched."""
    with tempfile.TemporaryDirectory() as folder:
        copy = Path(folder) / backup.name
        with told_plainly(backup):
            shutil.copyfile(backup, copy)
        try:
            opened = BenchBook.open(copy)
        except BookTrouble as problem:
            raise BookTrouble(str(backup), problem.mend) from problem
        with opened:
            yield opened


def _turned(old: Pieces, wanted: Mapping[str, Change], trouble: str) -> tuple[Pieces, Book]:
    """Return the pieces, and their book, after an edit is turned back or made again."""
    after = dict(old)
    for key, change in wanted.items():
        demand(
            not key.startswith("log/") or old.get(key) == change.before,
            "",
            f"{trouble}: work of its project was logged since; take those facts back first",
        )
        if change.after is None:
            after.pop(key, None)
        else:
            after[key] = change.after
    try:
        return after, join(after)
    except Refused as problem:
        raise Refused("", f"{trouble}: {problem}; take back what was logged since") from problem


def _coat(fact: Logged) -> tuple[str, str, int]:
    return fact.model, fact.step, fact.coat
