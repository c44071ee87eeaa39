"""A bench book read in the background, so that the window answers meanwhile.

Reading a great book takes a third of a second, the database's library included.
"""

from __future__ import annotations

import logging
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QApplication

from app.service import books
from app.window import background, words
from app.window.message_translation import translated
from app.window.worker import Worker
from planner.values.refusal import Refused

if TYPE_CHECKING:
    from app.service.book_copies import Offers
    from storage.bench_book import BenchBook

log = logging.getLogger(__name__)

DIALOG_MS = 100  # how often a dialog in the way is looked for


class _Done(QObject):
    """Carries word from the background thread to the window's."""

    came = Signal(object)
    uncopied = Signal(object)  # as `refused` is


class _Reading:
    """Opens one book; what came of it is kept here until it is taken."""

    def __init__(self, path: Path | None, done: _Done, *, create: bool) -> None:
        self._path, self._create, self._done = path, create, done
        self.store: BenchBook | None = None
        self.refusal = ""
        self.offers: Offers = ()
        self.damaged: Path | None = None
        self.readable = ""

    def run(self) -> None:
        """Open it, and send word."""
        from app.service.book_copies import (  # noqa: PLC0415 - the database's library
            keep_daily,
        )

        try:
            self.store = books.open_book(
                self._path, create=self._create, translate=words.given_name
            )
        except Refused as problem:
            self.refusal = str(problem)
            self.offers, self.damaged, self.readable = _instead(problem)
        except Exception:
            # A fault of the program must not leave the window waiting.
            log.exception("opening failed")
            self.refusal = words.tr("opening failed; the program's log says where")
        store = self.store  # whoever hears of it may take it at once
        self._done.came.emit(self)
        if store is not None:
            # It loads the database's library: not before the window is painted.
            from app.service.book_copies import keep_daily  # noqa: PLC0415

            if uncopied := keep_daily(store):
                self._done.uncopied.emit(str(uncopied))


def _instead(problem: Refused) -> tuple[Offers, Path | None, str]:
    """Return what can be opened in place of a damaged book, which that is, and what is left."""
    from app.service.book_copies import damaged_by, offers_for, readable  # noqa: PLC0415 - as above

    damaged = damaged_by(problem)
    left = readable(damaged) if damaged is not None else None
    return offers_for(problem), damaged, left[1] if left else ""


class BookOpening(QObject):
    """Opens books one after another; only the one asked for last is handed on.

    What a dialog is about belongs to the book that is open: the next one waits
    until the dialog is gone.

    Signals
    -------
    opened(BenchBook)
        It was read; whoever hears of it closes it.
    refused(object)
        It could not be opened; the sentence says why and how to mend it.  Sent as
        text it would stay English.
    """

    opened = Signal(object)
    refused = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._worker = Worker()
        self._done = _Done()
        self._done.came.connect(self._take)
        self._done.uncopied.connect(self._tell)
        self._awaited: _Reading | None = None
        self.damaged: Path | None = None
        self.readable = ""
        self.offers: Offers = ()  # for the book that was refused last
        self._dropped: list[_Reading] = []
        self._again = QTimer(self)
        self._again.setSingleShot(True)
        self._again.setInterval(DIALOG_MS)
        self._again.timeout.connect(lambda: self._take(self._awaited))

    def start(self, path: Path | None, *, create: bool) -> None:
        """Begin to open a book, in place of any that is being opened."""
        self._drop()
        self._awaited = _Reading(path, self._done, create=create)
        self._worker.start(self._awaited.run)

    def stop(self) -> None:
        """Open nothing any more, and let go of what was being opened."""
        self._drop()
        resting = background.rested(self._worker)
        if resting is not self._worker:  # it is let go of when it comes, in `_take`
            self._worker = resting
            return
        for reading in self._dropped:
            self._let_go(reading)
        self._dropped.clear()

    def _drop(self) -> None:
        self._again.stop()
        if self._awaited is not None:
            self._dropped.append(self._awaited)
            self._awaited = None

    def _take(self, reading: _Reading | None) -> None:
        if reading is None:
            return
        if reading is not self._awaited:
            if reading in self._dropped:
                self._dropped.remove(reading)
                self._let_go(reading)
            return
        if QApplication.activeModalWidget() is not None:
            self._again.start()
            return
        self._awaited = None
        self.offers, self.damaged, self.readable = (), None, ""
        if reading.store is not None:
            self.opened.emit(reading.store)
        else:
            self.offers, self.damaged = reading.offers, reading.damaged
            self.readable = reading.readable
            self.refused.emit(reading.refusal)

    def refuse(self, problem: Refused) -> None:
        """Tell that a book cannot be opened, and keep what can be opened in its place."""
        self.offers, self.damaged, self.readable = _instead(problem)
        self.refused.emit(str(problem))

    def _tell(self, why: str) -> None:
        told = words.tr("No copy of the book was made: {why}")
        self.refused.emit(told.format(why=translated(why)))

    def _let_go(self, reading: _Reading) -> None:
        if reading.store is not None:
            reading.store.close()
            reading.store = None
