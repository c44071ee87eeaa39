"""Writing to the book away from the window's thread, and keeping what could not be written.

An edit is mostly written within a hundredth of a second, and the window waits
that long.  Where another program holds the book, the disk is full or the
book is gone, the edit stays here, is tried again, and can be saved elsewhere.
"""

from __future__ import annotations

import logging
import threading
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from app.service.edits import Edit
from app.window.message_translation import translated
from app.window.worker import Worker
from planner.values.refusal import Refused

if TYPE_CHECKING:
    from storage.bench_book import BenchBook

log = logging.getLogger(__name__)

PATIENCE_SECONDS = 0.08  # the window stands no longer than this for a write
REST_MS = 1_000  # how long a window that closes waits for the last write
QUIET_MS = 1_000  # how long an edit may wait before that is told
AGAIN_MS = 3_000  # how often what could not be written is tried again


class Waits(Exception):  # noqa: N818 - nothing went wrong so far
    """The write goes on in the background; ``writing`` sends word when it ends."""


class _Write:
    """One write; what came of it is kept here until it is taken."""

    def __init__(
        self, act: Callable[[], object], ended: Callable[[], None], edit: Edit | None = None
    ) -> None:
        self.edit = edit
        self._act, self._ended = act, ended
        self.done = threading.Event()
        self.waited_for = True
        self.problem: Exception | None = None

    def run(self) -> None:
        """Write."""
        try:
            self._act()
        except Exception as problem:
            self.problem = problem
        self.done.set()
        if not self.waited_for:
            self._ended()


class Saving(QObject):
    """Writes one thing after another; keeps the edits that could not be written.

    Signals
    -------
    changed()
        There are more or fewer edits that are not saved, or another reason.
    saved()
        Everything is saved again.
    ended(Exception or None)
        What is no edit, as an undo, has ended in the background; badly, where there is one.
    """

    changed = Signal()
    saved = Signal()
    ended = Signal(object)
    _ended = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._worker = Worker()
        self._beside = Worker()  # no edit waits behind what it writes
        self._flight: _Write | None = None
        self.unsaved: list[Edit] = []
        self._later: list[Callable[[], object]] = []
        self.why = ""
        self.lost = False
        self._store: BenchBook | None = None
        self._ended.connect(self._land)
        self._again = QTimer(self)
        self._again.setInterval(AGAIN_MS)
        self._again.timeout.connect(self.try_again)

    @property
    def busy(self) -> bool:
        """Whether something is being written."""
        return self._flight is not None

    def write(self, act: Callable[[], object], edit: Edit | None = None) -> None:
        """Write, an ``edit`` or something else, and wait no longer than a moment.

        Raises
        ------
        Waits
            If it takes longer; it goes on.
        Exception
            Whatever ``act`` raises.
        """
        if self._flight is not None:
            self._flight.done.wait(PATIENCE_SECONDS)
            self._land()
        if self._flight is not None:
            if edit is None:
                self.later(act)
            raise Waits
        flight = _Write(act, self._ended.emit, edit)
        self._worker.start(flight.run)
        if not flight.done.wait(PATIENCE_SECONDS):
            flight.waited_for = False
            if not flight.done.is_set():
                self._flight = flight
                raise Waits
        if flight.problem is not None:
            raise flight.problem

    def aside(self, act: Callable[[], object]) -> None:
        """Write what nobody waits for, and what may be lost: no edit is put off by it."""
        self._beside.start(act)

    def later(self, act: Callable[[], object]) -> None:
        """Do what is no edit, as an undo, once all before it is written."""
        self._later.append(act)

    def keep(self, store: BenchBook, edit: Edit, why: str, *, waits: bool = False) -> None:
        """Keep an edit that could not be written yet, and try it again now and then.

        Of one that just ``waits`` nothing is said for a second.
        """
        self._store, self.why = store, why
        self.unsaved.append(edit)
        self._again.start()
        if waits:
            QTimer.singleShot(QUIET_MS, self, self._tell_after_all)
        else:
            self.changed.emit()

    def note_lost(self, store: BenchBook, why: str) -> None:
        """Tell that the book lies under its name no more; look for it now and then."""
        self._store, self.why, self.lost = store, why, True
        self._again.start()
        self.changed.emit()

    def take_back(self) -> Edit | None:
        """Give up the last edit that is not saved; None where it is just being written."""
        if not self.unsaved or (self._flight is not None and len(self.unsaved) == 1):
            return None
        edit = self.unsaved.pop()
        self._tell()
        return edit

    def try_again(self) -> None:
        """Write what is not saved, the first first, in the background."""
        store = self._store
        if store is None or self._flight is not None or not (self.unsaved or self.lost):
            return
        act: Callable[[], object] = store.book
        edit = self.unsaved[0] if self.unsaved else None
        if edit is not None:
            act = partial(store.apply, edit.name, edit.book, edit.merge, edit.verb)
        flight = _Write(act, self._ended.emit, edit)
        flight.waited_for = False
        self._flight = flight
        self._worker.start(flight.run)

    def forget(self) -> None:
        """Let go of what is not saved; somebody has seen to it."""
        self._again.stop()
        self._rest()
        self._flight = self._store = None
        self.lost = False
        self.unsaved.clear()
        self._later.clear()
        self.changed.emit()

    def rest(self) -> None:
        """Wait a while until nothing is being written."""
        self._rest()
        self._land()

    def _rest(self) -> None:
        for worker in (self._worker, self._beside):
            worker.wait(REST_MS / 1000)

    def _land(self) -> None:
        """Take what came of a write in the background."""
        flight = self._flight
        if flight is None or not flight.done.is_set():
            return
        self._flight = None
        mine = bool(self.unsaved) and flight.edit is self.unsaved[0]
        if not mine and not self.lost:
            self.ended.emit(flight.problem)
            self.try_again()  # an edit may have waited for it
            self._go_on()
            return
        if flight.problem is None:
            if mine:
                del self.unsaved[0]
            self.lost = False
            self.try_again()
        elif isinstance(flight.problem, Refused):
            self.why = translated(flight.problem.mend)
        else:
            log.error("writing failed", exc_info=flight.problem)
            self.why = str(flight.problem)
        self._tell()
        self._go_on()

    def _go_on(self) -> None:
        """Begin what waited until all was written."""
        if self._later and self._flight is None and not self.unsaved:
            flight = _Write(self._later.pop(0), self._ended.emit)
            flight.waited_for = False
            self._flight = flight
            self._worker.start(flight.run)

    def _tell_after_all(self) -> None:
        if self.unsaved:
            self.changed.emit()

    def _tell(self) -> None:
        if self.unsaved or self.lost:
            self.changed.emit()
        elif self._again.isActive():
            self._again.stop()
            self.changed.emit()
            self.saved.emit()
