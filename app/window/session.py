"""The open bench book and its plan, as the window works with them.

Every edit goes to the book first; then a background thread plans anew and
the views get the new picture.  An answer to an older book is thrown away.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from threading import Event
from zoneinfo import ZoneInfo

from PySide6.QtCore import QObject, QRunnable, QThreadPool, QTimer, Signal

from app.service import books, gauge, logbook
from app.service.clock import current_minute
from app.service.edits import Edit
from app.service.moves import moved
from app.service.planning import Stopped, Unsound
from app.window import words
from app.window.picture import Change, Part, Picture, picture_of
from planner.schedule.judge import Verdict
from planner.schedule.where import chosen_in, settled
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import PassKey, Plan
from planner.values.refusal import Refused
from planner.values.wishes import Level
from storage.bench_book import BenchBook, BookChanged, Stacks

log = logging.getLogger(__name__)

MOVED_MS = 10  # time for the window to paint what moved
PAINT_MS = 40  # time for it to paint the first answer


class _Answers(QObject):
    """Carries answers from the background thread to the window's."""

    came = Signal(int, object, bool)
    failed = Signal(int, str, bool)
    prepared = Signal(int)


@dataclass(frozen=True)
class _Question:
    """What is to be planned; ``quick`` by one rule, else by all of them.

    ``old`` is the picture before the edit, ``part`` what is on screen.
    """

    serial: int
    book: Book
    now: int
    old: Picture | None
    part: Part
    quick: bool


class _Planning(QRunnable):
    def __init__(self, asked: _Question, answers: _Answers, stop: Event) -> None:
        super().__init__()
        self._asked, self._answers, self._stop = asked, answers, stop

    def run(self) -> None:
        """Plan, and send what came of it."""
        asked = self._asked
        last = asked.old.plan if asked.old and not asked.quick else None
        try:
            picture = picture_of(
                asked.book, asked.now, last=last, quick=asked.quick, stop=self._stop.is_set
            )
            if not asked.quick:
                picture.prepare(asked.part)
        except Stopped:
            pass  # something newer is being planned
        except (Refused, Unsound) as problem:
            self._answers.failed.emit(asked.serial, str(problem), asked.quick)
        except Exception:
            # A fault of the program must neither hang the window nor end it.
            log.exception("planning failed")
            message = words.tr("planning failed; the program's log says where")
            self._answers.failed.emit(asked.serial, message, asked.quick)
        else:
            self._answers.came.emit(asked.serial, picture, asked.quick)


class _Preparing(QRunnable):
    """Reads the part of a picture that is on screen, once what moved was shown."""

    def __init__(self, serial: int, picture: Picture, part: Part, answers: _Answers) -> None:
        super().__init__()
        self._serial, self._picture, self._part = serial, picture, part
        self._answers = answers

    def run(self) -> None:
        """Read it, and say so."""
        self._picture.prepare(self._part)
        self._answers.prepared.emit(self._serial)


def _no_better(full: Picture, quick: Picture) -> bool:
    """Tell whether trying all rules gained nothing; steps moved against a plan count last."""
    order = tuple(one for one in full.book.preferences.order if one is not Level.MOVED)
    return full.plan.cost.in_order(order) >= quick.plan.cost.in_order(order)


def _until(plan: Plan, minute: int) -> set[tuple[PassKey, int, int]]:
    """Return what a plan does before a minute, facts left out."""
    return {
        (placed.key, placed.start, placed.end)
        for placed in plan.placements
        if placed.start < minute and not placed.logged
    }


class Session(QObject):
    """One bench book at a time.

    Signals
    -------
    opened()
        Another book was opened.
    edited()
        The book has changed; undo and redo may have other names.
    pictured(Change)
        A new plan is there.
    prepared()
        What the view on screen shows of it has been read, too.
    planning(bool)
        Planning began, or ended.
    closed()
        The book is let go of.
    troubled(str)
        Something could not be done; the sentence says what and how to mend it.
    """

    opened = Signal()
    edited = Signal()
    pictured = Signal(object)
    prepared = Signal()
    planning = Signal(bool)
    closed = Signal()
    troubled = Signal(str)

    def __init__(
        self, clock: Callable[[], int] = current_minute, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._clock = clock
        self._store: BenchBook | None = None
        self._book: Book | None = None
        self._picture: Picture | None = None
        self._before: Picture | None = None
        self._part = Part.SHEET
        self._serial = 0
        self._tried = -1
        self._stop = Event()
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(PAINT_MS)
        self._later.timeout.connect(self._try_all)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(MOVED_MS)
        self._soon.timeout.connect(self._prepare)
        self._cause = ""
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._answers = _Answers()
        self._answers.came.connect(self._take)
        self._answers.failed.connect(self._fail)
        self._answers.prepared.connect(self._show)

    @property
    def now(self) -> int:
        """The minute that runs."""
        return self._clock()

    @property
    def book(self) -> Book | None:
        """The open book."""
        return self._book

    @property
    def path(self) -> Path | None:
        """Where the open book lies."""
        return self._store.path if self._store else None

    @property
    def picture(self) -> Picture | None:
        """What the views show."""
        return self._picture

    @property
    def zone(self) -> ZoneInfo:
        """The zone of the open book."""
        return zone_named(self._book.bench_time.zone if self._book else "UTC")

    def open(self, path: Path | None = None, *, create: bool = False) -> bool:
        """Open a book in place of the one that is open; tell whether it went well."""
        try:
            store = books.open_book(path, create=create)
            book = store.book()
        except Refused as problem:
            self.troubled.emit(str(problem))
            return False
        self.adopt(store, book)
        if store.other_user:
            self.troubled.emit(
                self.tr("This book is open elsewhere as well ({who}).").format(who=store.other_user)
            )
        return True

    def adopt(self, store: BenchBook, book: Book) -> None:
        """Work with an opened book from now on."""
        self.close()
        self._store, self._book, self._picture, self._before = store, book, None, None
        self.opened.emit()
        self.edited.emit()
        self.replan()

    def close(self) -> None:
        """Let go of the book, after planning has come to rest."""
        self.closed.emit()
        self._serial += 1
        self._stop.set()
        self._later.stop()
        self._soon.stop()
        self._pool.clear()
        self._pool.waitForDone()
        if self._store is not None:
            self._store.close()
        self._store = self._book = None

    def set_clock(self, clock: Callable[[], int]) -> None:
        """Go by another clock; a demonstration has a time of its own."""
        self._clock = clock

    def apply(self, edit: Edit, tried: Picture | None = None) -> bool:
        """Make an edit and plan anew; tell whether the book took it.

        ``tried`` is a plan of the book after it, if there is one already.
        """
        if self._store is None or edit.book == self._book:
            return False
        store = self._store
        return self._change(edit.name, lambda: store.apply(edit.name, edit.book, edit.merge), tried)

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
        if self._store is not None:
            self._change(self.tr("undo {name}").format(name=self.undo_name()), self._store.undo)

    def redo(self) -> None:
        """Make the last undone edit again."""
        if self._store is not None:
            self._change(self.tr("redo {name}").format(name=self.redo_name()), self._store.redo)

    def take_back(self) -> None:
        """Take back what was done last of all, be it an edit or a fact of the logbook."""
        if self._store is not None:
            name = self.tr("taken back: {name}").format(name=self.latest_name())
            self._change(name, self._store.take_back)

    def turn_to(self, edit: int, name: str) -> None:
        """Go to the point right after an edit of the journal, 0 for before all of them."""
        if self._store is not None:
            store = self._store
            self._change(name, lambda: store.turn_to(edit))

    def stacks(self) -> Stacks:
        """Return the edits that can be undone and redone, the next one last."""
        return self._store.stacks() if self._store else Stacks((), ())

    def latest_name(self) -> str:
        """Return the name of what `take_back` would take back, "" for nothing."""
        return (self._store.latest() or "") if self._store else ""

    def undo_name(self) -> str:
        """Return what undo would take back, "" for nothing."""
        return (self._store.undoable() or "") if self._store else ""

    def redo_name(self) -> str:
        """Return what redo would make again, "" for nothing."""
        return (self._store.redoable() or "") if self._store else ""

    def look_again(self, cause: str = "") -> None:
        """Read the book again; somebody else may have changed it.

        ``cause`` is what to say of it, if it was.
        """
        if self._store is None:
            return
        try:
            book = self._store.book()
        except Refused as problem:
            self.troubled.emit(str(problem))
            return
        if book != self._book:
            self._book = book
            self._cause = cause or self.tr("another program changed the book")
            self.edited.emit()
            self.replan()

    def tick(self, key: PassKey, place: str, on: bool) -> None:
        """Note that a place is done, or not after all; the first begins the work."""
        planned = self._planned(key)
        refused = self.attempt(
            lambda book: logbook.tick(book, key, place, self.now, on=on, planned=planned)
        )
        if refused is not None:
            self.troubled.emit(str(refused))

    def log_done(self, key: PassKey) -> None:
        """Note in the logbook that a pass was done, ending now."""
        if self._book is None or self._picture is None:
            return
        planned = self._planned(key)
        plan = self._picture.plan
        placed = plan.placement(key)
        length = planned
        if placed is not None and placed.start < self.now:
            length = self.now - placed.start
        begun = logbook.entry_of(self._book, key) is not None
        refused = self.attempt(
            lambda book: logbook.finish(
                book,
                key,
                self.now,
                None if begun else length,
                planned,
                used=logbook.usual_use(book, key, plan),
                air=gauge.last_read(book, self.now),
            )
        )
        if refused is not None:
            self.troubled.emit(str(refused))

    def _planned(self, key: PassKey) -> int | None:
        if self._book is None or self._picture is None:
            return None
        return logbook.planned_minutes(self._book, self._picture.plan, key)

    def replan(self, tried: Picture | None = None) -> None:
        """Plan the book as it stands, in the background; ``tried`` is a first answer."""
        if self._book is None:
            return
        self._serial += 1
        self._stop.set()  # what is planned for an older book only takes its time
        self._stop = Event()
        self._before = self._picture
        self.planning.emit(True)
        self._later.stop()
        self._soon.stop()
        self._pool.clear()
        if tried is None:
            self._ask(self._book, quick=True)
        else:
            self._take(self._serial, tried, True)

    def make_way(self) -> None:
        """Put off trying all rules, for somebody waits for something else; `go_on` after it."""
        if self._tried == self._serial and self._picture is not self._before:
            self._stop.set()
            self._stop = Event()
            self._tried = -1
        self._later.stop()

    def go_on(self) -> None:
        """Try all rules after all, unless they were tried."""
        if self._tried != self._serial and self._picture is not self._before:
            self._later.start()

    def _ask(self, book: Book, *, quick: bool) -> None:
        asked = _Question(self._serial, book, self.now, self._before, self._part, quick)
        self._pool.start(_Planning(asked, self._answers, self._stop))

    def _try_all(self) -> None:
        """Try every rule, unless something newer is being planned."""
        if self._tried != self._serial and self._book is not None:
            self._tried = self._serial
            self._ask(self._book, quick=False)

    def take_plan(self, plan: Plan, verdict: Verdict, cause: str) -> None:
        """Show another plan of the book as it stands, one that the judge has accepted."""
        old = self._picture
        if self._book is None or old is None:
            return
        there = settled(self._book, chosen_in(self._book, plan))
        self._picture = Picture(there, old.now, plan, verdict, old.cure, old.calendar)
        self.pictured.emit(Change(old, self._picture, moved(old.plan, plan), cause))
        self._prepare()

    def leaves_tonight(self, plan: Plan) -> bool:
        """Tell whether a plan does in this stretch, or the next, just what is shown."""
        shown = self._picture
        if shown is None:
            return False
        stretch = shown.calendar.next_stretch(self.now)
        until = stretch.interval.end if stretch else self.now
        return _until(shown.plan, until) == _until(plan, until)

    def show_first(self, part: Part) -> None:
        """Have this part of every picture read in the background, for the view on screen."""
        self._part = part

    def wait(self) -> None:
        """Wait until no planning runs any more."""
        self._pool.waitForDone()

    def _change(self, name: str, write: Callable[[], object], tried: Picture | None = None) -> bool:
        store = self._store
        assert store is not None
        try:
            write()
        except BookChanged:
            cause = self.tr("another program changed the book, so “{name}” was not done")
            self.look_again(cause.format(name=name))
            return False
        except Refused as problem:
            self.troubled.emit(str(problem))
            return False
        self._book = store.book()
        self._cause = name
        self.edited.emit()
        self.replan(tried)
        return True

    def _take(self, serial: int, picture: Picture, quick: bool) -> None:
        if serial != self._serial:
            return
        shown = self._picture
        if quick or shown is None or shown is self._before or not _no_better(picture, shown):
            old = self._before
            self._picture = picture
            moves = moved(old.plan, picture.plan) if old else ()
            self.pictured.emit(Change(old, picture, moves, self._cause))
        if quick:
            # Only once what moved was painted: two threads would share one interpreter.
            self._soon.start()
        else:
            self._show(serial)
            self._rest()

    def _prepare(self) -> None:
        picture = self._picture
        if self._store is not None and picture is not None:
            self._pool.start(_Preparing(self._serial, picture, self._part, self._answers))

    def _show(self, serial: int) -> None:
        if serial != self._serial:
            return
        self.prepared.emit()
        if self._tried != serial:
            self._later.start()

    def _fail(self, serial: int, message: str, quick: bool) -> None:
        if serial != self._serial:
            return
        if quick:
            self._try_all()  # all rules together may still find a sound plan
        else:
            self._rest()
            self.troubled.emit(message)

    def _rest(self) -> None:
        self._cause = ""
        self.planning.emit(False)
