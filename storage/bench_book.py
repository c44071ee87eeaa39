"""The bench book: everything one person has, in one SQLite file.

Each edit is one transaction that writes the pieces it touches and its line
of the journal together.  An edit counts from the revision that this session
has read; if somebody else has written since, it is refused and nothing
changes.  What was acknowledged outlasts a killed program and a power cut.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from types import TracebackType
from typing import Any

from sqlalchemy import Connection

from planner.graph.network import check_acyclic
from planner.values.book import Book
from planner.values.message import message
from storage import backups, journal
from storage.aggregates import Digests, changes, holds_facts, split
from storage.atomic_write import name_new, unfinished
from storage.database import transaction
from storage.edit_writing import Changed, Writing, edits_to_turn, fill, go_on, turn, write
from storage.errors import (
    BookChanged,
    BookDamaged,
    BookLost,
    BookTrouble,
    read_as_sound,
    told_plainly,
)
from storage.forecasts import Forecasts
from storage.held_file import HeldFile
from storage.journal import Entry, Kind, Stacks
from storage.opening import Opened, open_engine
from storage.presence import Presence
from storage.shown_plans import ShownPlans
from storage.sound_book import NOTHING, SoundBook, demand_goes_on, read_sound
from storage.undo_redo import Latest, back_to, joined, turned

__all__ = [
    "BenchBook",
    "BookChanged",
    "BookDamaged",
    "BookLost",
    "BookTrouble",
    "Entry",
    "Kind",
    "Stacks",
]


class BenchBook:
    """An open bench book; use `open` or `create`, and `close` it or use ``with``.

    One session reads and writes from one thread.
    """

    def __init__(self, path: Path, opened: Opened) -> None:
        self.path = path
        self._engine, self.read_only = opened
        self.plans = ShownPlans(self._engine, path, self._demand_ours)
        self.forecasts = Forecasts(self._engine, path, self._demand_ours)
        self._held = HeldFile(path)
        self._presence = Presence(path)
        self._book: Book | None = None
        self._stand = NOTHING
        self._history: tuple[Entry, ...] = ()
        self._digests = Digests()
        self._latest = Latest()

    @classmethod
    def open(cls, path: Path) -> BenchBook:
        """Open the book at ``path``, brought up to date if it is an older one.

        A link is followed first: photos and copies lie beside the book itself.

        Raises
        ------
        BookTrouble
            If there is none, or it cannot be used; the file stays as it is.
        """
        real = Path(os.path.realpath(path))
        opened = cls(real, open_engine(real))
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
        path = Path(os.path.realpath(path))
        there = BookTrouble(str(path), "is there already; open it, or choose another name")
        with told_plainly(path):
            if path.exists():
                raise there
            if not path.parent.is_dir():
                raise BookTrouble(str(path), "cannot be made: its folder is not there")
            with unfinished(path) as half:  # whole before it gets its name
                fill(half, book)
                try:
                    name_new(half, path)
                except FileExistsError:
                    raise there from None
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
        self._held.close()

    @property
    def revision(self) -> int:
        """Revision that this session has read; each edit and fact makes a new one."""
        return self._stand.id

    @property
    def other_user(self) -> str:
        """Who else has the book open, in words; "" if nobody that we know of."""
        return self._presence.other

    def book(self) -> Book:
        """Return what the book holds now, whoever wrote it.

        Raises
        ------
        BookLost
            If it lies under its name no more.
        BookTrouble
            If it cannot be read, or what it holds is damaged.
        """
        self._held.check()
        with self._reading() as connection:
            if self._book is None or journal.stand(connection) != self._stand:
                self._adopt(read_sound(connection, self.path, self._digests, self._stand))
        assert self._book is not None
        return self._book

    def known(self) -> Book:
        """Return the book as this session knows it, without a look at the file."""
        return self._book if self._book is not None else self.book()

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
        old, after = split(self.known()), split(new)
        changed = changes(old, after)
        if not changed:
            return self.revision
        only_logs = all(holds_facts(key) and key in old and key in after for key in changed)
        kind = Kind.FACT if only_logs else Kind.EDIT
        goes_on = kind is Kind.EDIT and self._latest.continues(merge, self.revision)
        with self._editing() as writing:
            made = Changed(changed, after, self._digests.of(after))
            if goes_on:
                revision = go_on(writing.connection, self.path, name, made, self.revision, verb)
            else:
                revision = write(writing.connection, name, kind, made, verb=verb)
            writing.book = new
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
        """Return every entry that this session has read, the oldest first."""
        return self._history

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
        with self._reading() as connection:
            return journal.after_edits(connection, self._history, verb, kind, bare)

    def backup(self, target: Path) -> None:
        """Write a sound copy to ``target``, even while the book is in use.

        Raises
        ------
        BookTrouble
            If something lies there, or it cannot be written.
        """
        try:
            backups.write_copy(self.path, target)
        except FileExistsError:
            mend = message("is there already; choose another name for the backup")
            raise BookTrouble(str(target), mend) from None

    @property
    def file(self) -> HeldFile:
        """The file that is open, wherever it lies by now."""
        return self._held

    def _take_fact_back(self, fact: Entry) -> str:
        trouble = message('cannot take back "{edit}"', edit=fact.name)
        old = split(self.known())
        with self._editing() as writing:
            with read_as_sound(self.path):
                made = journal.changes_of(writing.connection, fact.id)
            after = turned(old, back_to(made), trouble)
            writing.book = joined(after, trouble)
            made_back = Changed(changes(old, after), after, self._digests.of(after))
            write(writing.connection, fact.name, Kind.FACT, made_back, fact.id)
        return fact.name

    def _turn(self, kind: Kind, times: int = 1) -> str | None:
        """Turn back, or make again, so many edits in one transaction; name the last of them."""
        old = split(self.known())
        with self._editing() as writing:
            turning = edits_to_turn(writing.connection, self.path, kind, times)
            if not turning:
                return None
            turned_to = turn(writing.connection, kind, turning, old, self._digests)
            writing.book = turned_to.book
        return turned_to.name

    def _adopt(self, read: SoundBook) -> None:
        self._book, self._stand = read.book, read.stand
        self._history += read.entries

    @contextmanager
    def _reading(self) -> Iterator[Connection]:
        with read_as_sound(self.path), transaction(self._engine, self.path) as connection:
            yield connection

    @contextmanager
    def _editing(self) -> Iterator[Writing]:
        """Write, provided that it is the same book still and nobody else has since it was read."""
        self._demand_writable()
        self._held.check()  # SQLite says less of a file that is gone
        with transaction(self._engine, self.path, writes=True) as connection:
            self._demand_ours(connection)
            if journal.stand(connection) != self._stand:
                raise BookChanged(
                    str(self.path),
                    "was changed by another program since it was read here; "
                    "read it again, then repeat the edit",
                )
            writing = Writing(connection, self.known())
            yield writing
            entries = journal.read(connection, self._stand)
            stand = journal.stand(connection)
        self._held.check()  # what was written to a file that has just gone is not there
        self._adopt(SoundBook(writing.book, stand, entries))

    def _demand_ours(self, connection: Connection) -> None:
        """Demand that what lies under the name is the book that this session has read."""
        self._demand_writable()
        self._held.check()
        with read_as_sound(self.path):
            demand_goes_on(connection, self.path, self._stand)

    def _demand_writable(self) -> None:
        if self.read_only:
            mend = message("is open to be read only: {why}", why=self.read_only)
            raise BookTrouble(str(self.path), mend)
