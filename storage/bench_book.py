"""The bench book: everything one person has, in one SQLite file.

Each edit is one transaction that writes the pieces it touches and its line
of the journal together.  An edit counts from the revision that this session
has read; if somebody else has written since, it is refused and nothing
changes.  What was acknowledged outlasts a killed program and a power cut.
"""

from __future__ import annotations

import shutil
import tempfile
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from types import TracebackType
from typing import Any

from sqlalchemy import Connection, Engine

from planner.graph.network import check_acyclic
from planner.values.book import Book
from planner.values.message import Message, called, message
from storage import journal
from storage.aggregates import changes, holds_facts, split
from storage.database import copy_to, open_engine, transaction
from storage.edit_writing import Changed, edits_to_turn, fill, go_on, turn, write
from storage.errors import BookChanged, BookTrouble, read_as_sound, told_plainly
from storage.journal import Entry, Kind, Stacks
from storage.presence import Presence
from storage.store import read_book
from storage.undo_redo import Latest, back_to, joined, turned

__all__ = ["BenchBook", "BookChanged", "BookTrouble", "Entry", "Kind", "Stacks", "rescue"]


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
        self._latest = Latest()

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
                fill(half, book)
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

    def apply(self, name: str, new: Book, merge: str = "", verb: str = "") -> int:
        """Make the book ``new``, in one transaction; return the revision that this makes.

        An edit that changes nothing but logs is journalled as a fact, and
        `undo` passes over it.

        Parameters
        ----------
        name
            What the journal calls the edit; of a `Message` template and arguments are kept.
        merge
            What is edited, as one types or counts up a value: edits of the
            same thing that follow each other within seconds are undone as
            one.  One that leads back to where they began takes them back.
        verb
            What the edit does, for `after_edits`; "" where nobody asks.

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
        only_logs = all(holds_facts(key) and key in old and key in after for key in changed)
        kind = Kind.FACT if only_logs else Kind.EDIT
        goes_on = kind is Kind.EDIT and self._latest.continues(merge, self._revision)
        with self._editing() as connection:
            made = Changed(changed, after)
            if goes_on:
                revision = go_on(connection, self.path, name, made, self._revision, verb)
            else:
                revision = write(connection, name, kind, made, verb=verb)
        self._adopt(new, revision)
        self._latest = Latest.now(merge, revision)
        return revision

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

    def turn_to(self, edit: int) -> None:
        """Undo or redo until ``edit``, an id, is the last that is done; 0 for none.

        All of it is one transaction.

        Raises
        ------
        Refused
            If facts were logged since that cannot stand then.
        BookTrouble
            As for `apply`.
        """
        stacks = self.stacks()
        done = [entry.id for entry in stacks.undo]
        undone = [entry.id for entry in stacks.redo]
        if edit in undone:
            self._turn(Kind.REDO, len(undone) - undone.index(edit))
        elif edit in done or not edit:
            back = len(done) - (done.index(edit) + 1 if edit else 0)
            self._turn(Kind.UNDO, back)

    def take_back(self) -> str | None:
        """Take back what was done last of all, be it an edit or a fact of the log.

        `undo` passes over facts; this is for somebody at the bench who has
        just pressed the wrong key.  A fact that is taken back does not come
        again by `redo`.

        Returns
        -------
        str or None
            What the journal calls it; None if there is nothing to take back.

        Raises
        ------
        Refused
            If something was logged since that cannot stand without it.
        BookTrouble
            As for `apply`.
        """
        done = journal.done(self.journal())
        if not done:
            return None
        if done[-1].kind is Kind.FACT:
            return self._take_fact_back(done[-1])
        return self.undo()

    def latest(self) -> str | None:
        """Return the name of what `take_back` would take back."""
        done = journal.done(self.journal())
        return done[-1].name if done else None

    def undoable(self) -> str | None:
        """Return the name of the edit that `undo` would take back."""
        undo = self.stacks().undo
        return undo[-1].name if undo else None

    def redoable(self) -> str | None:
        """Return the name of the edit that `redo` would make again."""
        redo = self.stacks().redo
        return redo[-1].name if redo else None

    def stacks(self) -> Stacks:
        """Return the edits that can be undone and redone, the next one last."""
        return journal.stacks(self.journal())

    def journal(self) -> tuple[Entry, ...]:
        """Return every entry, the oldest first."""
        with self._reading() as connection:
            return journal.entries(connection)

    def after_edits(self, verb: str, kind: str, bare: Callable[[str, str], bool]) -> dict[str, Any]:
        """Return pieces as they were after the newest edit that stands and does so.

        Parameters
        ----------
        verb
            What the edit does.
        kind
            How the key of the piece begins, as "model/".
        bare
            Tells of the text of an older edit, whose verb is not known, and of the
            key of a piece that it changed, whether it did so.
        """
        found: dict[str, Any] = {}
        with self._reading() as connection:
            for entry in journal.done(journal.entries(connection)):
                old = not isinstance(entry.name, Message)
                if entry.kind is not Kind.EDIT or not (old or entry.verb == verb):
                    continue
                found |= {
                    key: change.after
                    for key, change in journal.changes_of(connection, entry.id).items()
                    if key.startswith(kind) and (entry.verb == verb or bare(entry.name, key))
                }
        return found

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
            return self.apply(called("restore {file}", file=backup.name), other.book())

    def _known(self) -> Book:
        return self._book if self._book is not None else self.book()

    def _take_fact_back(self, fact: Entry) -> str:
        trouble = message('cannot take back "{edit}"', edit=fact.name)
        old = split(self._known())
        with self._editing() as connection:
            with read_as_sound(self.path):
                made = journal.changes_of(connection, fact.id)
            after = turned(old, back_to(made), trouble)
            new = joined(after, trouble)
            made_back = Changed(changes(old, after), after)
            revision = write(connection, fact.name, Kind.FACT, made_back, fact.id)
        self._adopt(new, revision)
        return fact.name

    def _turn(self, kind: Kind, times: int = 1) -> str | None:
        """Turn back, or make again, so many edits in one transaction; name the last of them."""
        old = split(self._known())
        with self._editing() as connection:
            turning = edits_to_turn(connection, self.path, kind, times)
            if not turning:
                return None
            turned_to = turn(connection, kind, turning, old)
        self._adopt(turned_to.book, turned_to.revision)
        return turned_to.name

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
