"""The open bench book and its plan, as the window works with them.

Every edit goes to the book first; then it is planned anew in the background.
The database and the logbook's rules are imported when they are first needed:
the window is painted before.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from app.service import books, network_folder
from app.service.clock import current_minute
from app.service.edits import Edit
from app.window import step_naming, words
from app.window.kept_book import KeptBook
from app.window.message_translation import edit_name, translated
from app.window.opening import BookOpening
from app.window.plan_snapshot import PlanSnapshot
from app.window.saving import Waits
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.refusal import Refused

if TYPE_CHECKING:
    from app.service.book_copies import Offers
    from planner.sequences.difference import Given
    from storage.bench_book import BenchBook, Entry, Stacks

log = logging.getLogger(__name__)


class Session(KeptBook):
    """One bench book at a time.

    Signals
    -------
    opening(str)
        A book is being opened in the background; the line says so.
    opened()
        Another book was opened.
    edited()
        The book has changed; undo and redo may have other names.
    closed()
        The book is let go of.
    damaged_beside(str)
        Another book could not be opened, says why, and there are copies of it or what is left.
    pictured, prepared, foreseen, planning, troubled
        As of `Replanning`.
    """

    def __init__(
        self, clock: Callable[[], int] = current_minute, parent: QObject | None = None
    ) -> None:
        super().__init__(clock, parent)
        self._opening = BookOpening(self)
        self._opening.opened.connect(self._come)
        self._opening.refused.connect(self._refused)
        self.edited.connect(self._know_names)  # before any view hears of it

    @property
    def path(self) -> Path | None:
        """Where the open book lies."""
        return self._store.path if self._store else None

    def open(self, path: Path | None = None, *, create: bool = False) -> bool:
        """Open a book in place of the one that is open; tell whether it went well.

        Whoever has a window on screen asks `open_soon`.
        """
        self._opening.stop()
        try:
            store = books.open_book(path, create=create, translate=words.given_name)
        except Refused as problem:
            self._opening.refuse(problem)
            return False
        return self._come(store)

    def open_soon(self, path: Path | None = None, *, create: bool = False) -> None:
        """Read a book in the background, then put it in place of the one that is open.

        That one stays until then, and where the other cannot be opened.
        """
        self._opening.start(path, create=create)
        name = (path or books.usual_path()).stem
        self.opening.emit(self.tr("Opening {book}…").format(book=name))

    def _refused(self, why: str) -> None:
        self.troubled.emit(translated(why))
        if self._store is not None and (self.offers or self.readable):
            self.damaged_beside.emit(translated(why))

    def _come(self, store: BenchBook) -> bool:
        """Work with a book that was just read, as it stands by now; tell whether it went well."""
        self.saving.rest()  # what is just being written may be of this very book
        try:
            book = store.book()
        except Refused as problem:
            store.close()
            self.troubled.emit(translated(str(problem)))
            return False
        self.adopt(store, book)
        if store.other_user:
            self.troubled.emit(
                self.tr("This book is open elsewhere as well ({who}).").format(who=store.other_user)
            )
        if (far := network_folder.warning(store.path)) is not None:
            self.troubled.emit(translated(far))
        if store.read_only:
            told = self.tr("This book can only be read here: {why}.")
            self.troubled.emit(told.format(why=translated(store.read_only)))
        return True

    @property
    def offers(self) -> Offers:
        """What can be opened in place of the damaged book that was refused last."""
        return self._opening.offers

    @property
    def damaged(self) -> Path | None:
        """The damaged book that was refused last; None for any other refusal."""
        return self._opening.damaged

    @property
    def readable(self) -> str:
        """What can still be read of that damaged book, in words; "" for nothing."""
        return self._opening.readable

    def rescue(self, path: Path, copy: Path) -> None:
        """Put a copy in the place of a damaged book, which is set aside, and open it."""
        from storage.restoring import rescue  # noqa: PLC0415

        try:
            rescue(path, copy)
        except Refused as problem:
            self.troubled.emit(translated(str(problem)))
        else:
            self.open_soon(path)

    def adopt(self, store: BenchBook, book: Book) -> None:
        """Work with an opened book from now on."""
        self.close()
        self._store, self._book = store, book
        self._recollect(store)
        self._seen = books.seen(store.path)
        self.opened.emit()
        self.edited.emit()
        self.replan(recall=True)

    def close(self) -> None:
        """Let go of the book, after planning has come to rest; open none any more."""
        self._opening.stop()
        self.closed.emit()
        self._forget_plan()
        self._keep_aside()
        if self._store is not None:
            self._store.close()
        self._store = self._book = None
        self._promised = ()
        self._know_names()

    def _know_names(self) -> None:
        step_naming.know(self._book)

    def set_clock(self, clock: Callable[[], int]) -> None:
        """Go by another clock; a demonstration has a time of its own."""
        self._clock = clock

    def apply(self, edit: Edit, tried: PlanSnapshot | None = None) -> bool:
        """Make an edit and plan anew; tell whether the book took it.

        ``tried`` is a plan of the book after it, if there is one already.
        """
        if self._store is None or edit.book == self._book:
            return False
        store = self._store
        if self.saving.unsaved:
            return self._keep(edit, self.saving.why, tried)
        return self._change(
            edit.name, lambda: store.apply(edit.name, edit.book, edit.merge, edit.verb), tried, edit
        )

    def attempt(self, make: Callable[[Book], Edit]) -> Refused | None:
        """Make an edit of the open book; return the refusal where it cannot be made."""
        if self._book is None:
            return None
        try:
            edit = make(self._book)
        except Refused as problem:
            return problem
        self.apply(edit)
        return None

    def undo(self) -> None:
        """Take back the last edit."""
        if self.saving.unsaved:
            self._drop_last()
        elif self._store is not None:
            self._change(
                self.tr("undo {name}").format(name=edit_name(self.undo_name())),
                self._store.undo,
                recall=True,
            )

    def redo(self) -> None:
        """Make the last undone edit again."""
        if self._store is not None:
            self._change(
                self.tr("redo {name}").format(name=edit_name(self.redo_name())),
                self._store.redo,
                recall=True,
            )

    def take_back(self) -> None:
        """Take back what was done last of all, be it an edit or a fact of the logbook."""
        if self._store is not None:
            name = self.tr("taken back: {name}").format(name=edit_name(self.latest_name()))
            self._change(name, self._store.take_back, recall=True)

    def turn_to(self, edit: int, name: str) -> None:
        """Go to the point right after an edit of the journal, 0 for before all of them."""
        if self._store is not None:
            store = self._store
            self._change(name, lambda: store.turn_to(edit), recall=True)

    def restore(self, copy: Path, name: str) -> None:
        """Bring back what a copy of the book holds, as an edit."""
        from storage.restoring import restore  # noqa: PLC0415

        if self._store is not None and not self.saving.unsaved:
            store = self._store
            told = self.tr("restored: {name}").format(name=name)
            self._change(told, lambda: restore(store, copy))

    def history(self) -> tuple[Entry, ...]:
        """Return the journal of the open book, as far as it was read."""
        return self._store.journal() if self._store else ()

    def stacks(self) -> Stacks | None:
        """Return the edits that can be undone and redone, the next one last."""
        return self._store.stacks() if self._store else None

    def given_steps(self) -> dict[ModelKey, Given]:
        """Return the steps that each model was last given by a sequence, as far as is known."""
        from app.service import sequences  # noqa: PLC0415

        return sequences.given_steps(self._store) if self._store else {}

    def latest_name(self) -> str:
        """Return the name of what `take_back` would take back, "" for nothing."""
        return (self._store.latest() or "") if self._store else ""

    def undo_name(self) -> str:
        """Return what undo would take back, "" for nothing."""
        if self.saving.unsaved:
            return self.saving.unsaved[-1].name
        return (self._store.undoable() or "") if self._store else ""

    def redo_name(self) -> str:
        """Return what redo would make again, "" for nothing."""
        return (self._store.redoable() or "") if self._store else ""

    def _change(
        self,
        name: str,
        write: Callable[[], object],
        tried: PlanSnapshot | None = None,
        edit: Edit | None = None,
        *,
        recall: bool = False,
    ) -> bool:
        from storage.bench_book import BookChanged, BookTrouble  # noqa: PLC0415

        store = self._store
        assert store is not None
        try:
            self.saving.write(write, edit)
        except Waits:
            why = self.tr("is being written by another program")
            if edit is not None:
                return self._keep(edit, why, tried, waits=True)
            self._cause_of_looking = name
            told = self.tr("“{name}” is done as soon as the book can be written.")
            self.troubled.emit(told.format(name=edit_name(name)))
            return False
        except BookChanged:
            cause = self.tr("another program changed the book, so “{name}” was not done")
            self.look_again(cause.format(name=edit_name(name)))
            return False
        except Refused as problem:
            if edit is not None and isinstance(problem, BookTrouble):
                return self._keep(edit, translated(problem.mend), tried)
            self.troubled.emit(translated(str(problem)))
            return False
        self._show_book(store.known(), name, tried, recall=recall)
        return True

    def save_elsewhere(self, target: Path) -> bool:
        """Save the book and all that is not saved of it under another name, and go on there."""
        from storage.restoring import save_elsewhere  # noqa: PLC0415

        store = self._store
        if store is None:
            return False
        self.saving.rest()
        try:
            saved, whole = save_elsewhere(store, target)
        except Refused as problem:
            self.troubled.emit(translated(str(problem)))
            return False
        told = (
            self.tr("Saved to {path}.")
            if whole
            else self.tr("Saved to {path}, without the edits of before: undo begins anew.")
        )
        return self._go_on_in(saved, told.format(path=saved.path))

    def go_on_there(self) -> None:
        """Go on with the book where it was moved to."""
        from storage.bench_book import BenchBook  # noqa: PLC0415

        there = self.moved_to()
        if there is None:
            return
        try:
            store = BenchBook.open(there)
        except Refused as problem:
            self.troubled.emit(translated(str(problem)))
            return
        self._go_on_in(store, self.tr("Going on with {path}.").format(path=there))

    def _go_on_in(self, store: BenchBook, told: str) -> bool:
        try:
            for edit in self.saving.unsaved:
                store.apply(edit.name, edit.book, edit.merge, edit.verb)
        except Refused as problem:
            store.close()
            self.troubled.emit(translated(str(problem)))
            return False
        self.saving.forget()
        self.adopt(store, store.known())
        self.troubled.emit(told)
        return True
