"""The open book: looked after by what its file is, and kept where that cannot be written."""

from __future__ import annotations

import logging
from collections.abc import Callable, Iterable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from app.service import books
from app.service.edits import Edit
from app.window.message_translation import edit_name, translated
from app.window.plan_snapshot import PlanSnapshot
from app.window.replanning import Replanning
from app.window.saving import Saving, Waits
from planner.values.book import Book
from planner.values.forecast import Forecast
from planner.values.moment import Interval
from planner.values.plan import Plan
from planner.values.refusal import Refused

if TYPE_CHECKING:
    from storage.bench_book import BenchBook

log = logging.getLogger(__name__)


class KeptBook(Replanning):
    """A book that is open, its file, and the edits that are not in the file yet.

    Signals
    -------
    opening, opened, edited, closed, damaged_beside
        As of `app.window.session.Session`.
    """

    opening = Signal(str)
    opened = Signal()
    edited = Signal()
    closed = Signal()
    damaged_beside = Signal(str)

    def __init__(self, clock: Callable[[], int], parent: QObject | None = None) -> None:
        super().__init__(clock, parent)
        self._store: BenchBook | None = None
        self.saving = Saving(self)
        self.saving.ended.connect(self._caught_up)
        self.saving.saved.connect(lambda: self.troubled.emit(self.tr("Everything is saved.")))
        self._promised: tuple[Interval, ...] = ()
        self._forecasts: tuple[Forecast, ...] = ()
        self._seen: object = None
        self._cause_of_looking = ""

    def look_again(self, cause: str = "") -> None:
        """Read the book again; somebody else may have changed it.

        ``cause`` is what to say of it, if it was.
        """
        store = self._store
        if store is None or self.saving.unsaved or self.saving.busy:
            return
        self._cause_of_looking = cause
        try:
            self.saving.write(store.book)
        except Waits:
            return  # `_caught_up` goes on
        except Refused as problem:
            self._look_failed(problem)
        else:
            self._caught_up(None)

    def watch(self) -> None:
        """Look whether the file of the book is what it was; it costs next to nothing."""
        if self._store is not None:
            seen = books.seen(self._store.path)
            if seen != self._seen:
                self._seen = seen
                self.look_again()

    def _look_failed(self, problem: Refused) -> None:
        from storage.bench_book import BookLost  # noqa: PLC0415 - as of `books.open_book`

        if isinstance(problem, BookLost) and self._store is not None:
            self.saving.note_lost(self._store, translated(problem.mend))
        self.troubled.emit(translated(str(problem)))

    def _caught_up(self, problem: Exception | None) -> None:
        """Show the book as it was last read or written."""
        if isinstance(problem, Refused):
            self._look_failed(problem)
        if self._store is None or problem is not None or self.saving.unsaved:
            return
        book = self._store.known()
        if book != self._book:
            self._book = book
            self._cause = self._cause_of_looking or self.tr("another program changed the book")
            self.edited.emit()
            self.replan()

    def _show_book(
        self, book: Book, name: str, tried: PlanSnapshot | None = None, *, recall: bool = False
    ) -> None:
        self._book = book
        self._cause = name
        self.edited.emit()
        self.replan(tried, recall=recall)

    def _keep(
        self, edit: Edit, why: str, tried: PlanSnapshot | None, *, waits: bool = False
    ) -> bool:
        """Go on with an edit that could not be written."""
        assert self._store is not None
        self.saving.keep(self._store, edit, why, waits=waits)
        self._show_book(edit.book, edit.name, tried)
        return True

    def _drop_last(self) -> None:
        """Give up the last edit that is not saved; one that is just being written is undone."""
        edit = self.saving.take_back()
        if edit is None and self._store is not None:
            self.saving.later(self._store.undo)
        elif edit is not None and self._store is not None:
            left = self.saving.unsaved
            book = left[-1].book if left else self._store.known()
            self._show_book(book, self.tr("undo {name}").format(name=edit_name(edit.name)))

    def _recollect(self, store: BenchBook) -> None:
        """Read what was shown of a book, and promised."""
        try:
            self._shown = {plan.digest: plan for plan in store.plans.all()}
            self._promised = store.plans.promised()
            self._forecasts = store.forecasts.all()
        except Refused:
            log.exception("what was shown cannot be read")  # it is planned anew

    def _put_by(self, plan: Plan) -> None:
        if self._store is None:
            return
        if self.saving.unsaved or self.saving.busy:
            return  # it can be planned anew
        self.saving.aside(partial(_kept, self._store, plan))

    @property
    def promised(self) -> tuple[Interval, ...]:
        """Evenings that somebody was told of, on paper or in a calendar."""
        return self._promised

    def promise(self, told_by: str, times: Iterable[Interval]) -> None:
        """Note that a "sheet" or a "calendar" has told of some evenings."""
        if self._store is None:
            return
        try:
            self._store.plans.promise(told_by, times, self.now)
            self._promised = self._store.plans.promised()
        except Refused as problem:
            self.troubled.emit(translated(str(problem)))

    @property
    def forecasts(self) -> tuple[Forecast, ...]:
        """Dates that were said of this book's projects before."""
        return self._forecasts

    def say_forecasts(self, forecasts: tuple[Forecast, ...]) -> None:
        """Keep dates that are told on screen, to be held against what comes."""
        if self._store is not None and not self.saving.unsaved and not self.saving.busy:
            self.saving.aside(partial(_said, self._store, forecasts))

    def moved_to(self) -> Path | None:
        """Return where the file of the open book lies, where it is not under its name."""
        if self._store is None or books.seen(self._store.path) is not None:
            return None
        return self._store.file.moved_to()

    def _keep_aside(self) -> None:
        """Write what could not be saved where the program keeps its own things."""
        self.saving.rest()
        if self.saving.unsaved and self._store is not None:
            try:
                kept = books.keep_aside(self.saving.unsaved[-1].book, self._store.path.stem)
                self.troubled.emit(
                    self.tr("What was not saved is kept in {path}").format(path=kept)
                )
            except Refused as problem:
                self.troubled.emit(translated(str(problem)))
        self.saving.forget()


def _kept(store: BenchBook, plan: Plan) -> None:
    """Keep what is shown, if that can be; else it can be planned anew."""
    try:
        store.plans.keep(plan)
    except Refused as problem:
        log.info("what is shown cannot be kept: %s", problem)


def _said(store: BenchBook, forecasts: tuple[Forecast, ...]) -> None:
    """Keep the dates that were said, if that can be."""
    try:
        store.forecasts.keep(forecasts)
    except Refused as problem:
        log.info("what was said of dates cannot be kept: %s", problem)
