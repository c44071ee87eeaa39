"""Trying a wish before it is written: planned in the background, kept or refused."""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass
from threading import Event

from PySide6.QtCore import QObject, Signal

from app.service.edits import Edit
from app.service.planning_errors import Stopped, Unsound
from app.window import words
from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot, picture_of
from app.window.session import Session
from app.window.wishes import conflict_sentence
from app.window.worker import Worker
from planner.values.book import Book
from planner.values.moment import Interval
from planner.values.plan import PassKey
from planner.values.refusal import Refused

log = logging.getLogger(__name__)

Make = Callable[[Book], Edit]


@dataclass(frozen=True)
class AskedWish:
    """A wish: how it is written, of which pass, and the stretch it is to stand in."""

    make: Make
    key: PassKey | None = None
    where: Interval | None = None


class _Answers(QObject):
    came = Signal(int, object, object, str)


class _Trying:
    def __init__(
        self,
        serial: int,
        asked: AskedWish,
        edit: Edit,
        before: PlanSnapshot,
        now: int,
        answers: _Answers,
    ) -> None:
        self.stopped = Event()
        self._serial, self._asked, self._edit = serial, asked, edit
        self._before, self._now, self._answers = before, now, answers

    def run(self) -> None:
        """Plan the book with the wish, and send what forbids it, if anything does."""
        trial = None
        try:
            trial = picture_of(
                self._edit.book,
                self._now,
                last=self._before.plan,
                quick=True,
                stop=self.stopped.is_set,
            )
            asked = self._asked
            why = conflict_sentence.after_trial(self._before, trial, asked.key, asked.where)
        except Stopped:
            return
        except (Refused, Unsound) as problem:
            why = translated(str(problem))
        except Exception:
            # A fault of the program must neither hang the window nor end it.
            log.exception("trying a wish failed")
            why = words.tr("trying it failed; the program's log says where")
        self._answers.came.emit(self._serial, self._edit, trial, why)


class WishTrial(QObject):
    """Tries one wish at a time; a newer one takes the place of what is being tried.

    Signals
    -------
    began()
        A wish is being tried.
    kept(str)
        It was written into the book; this is the edit's name.
    refused(str)
        It cannot be kept; the sentence says what forbids it.  Nothing has changed.
    """

    began = Signal()
    kept = Signal(str)
    refused = Signal(str)

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._serial = 0
        self._asked: AskedWish | None = None
        self._trying: _Trying | None = None
        self._book: Book | None = None
        self._worker = Worker()
        self._answers = _Answers()
        self._answers.came.connect(self._take)
        session.opened.connect(self.drop)

    def ask(self, asked: AskedWish) -> None:
        """Try a wish; it is written if a plan keeps it."""
        session = self._session
        book, picture = session.book, session.picture
        if book is None or picture is None:
            return
        self.drop()
        if asked.key is not None and asked.where is not None:
            why = conflict_sentence.at_once(picture, asked.key, asked.where, session.now)
            if why:
                self.refused.emit(why)
                return
        try:
            edit = asked.make(book)
        except Refused as problem:
            self.refused.emit(translated(str(problem)))
            return
        if edit.book == book:
            return
        self._asked, self._book = asked, book
        session.make_way()
        self.began.emit()
        self._trying = _Trying(self._serial, asked, edit, picture, session.now, self._answers)
        self._worker.start(self._trying.run)

    def drop(self) -> None:
        """Forget what is being tried."""
        self._serial += 1
        if self._trying is not None:
            self._trying.stopped.set()
        self._worker.clear()
        if self._asked is not None:
            self._asked = None
            self._session.go_on()

    def wait(self) -> None:
        """Wait until nothing is being tried any more."""
        self._worker.wait()

    def _take(self, serial: int, edit: Edit, trial: PlanSnapshot | None, why: str) -> None:
        asked = self._asked
        if serial != self._serial or asked is None:
            return
        if self._session.book is not self._book:  # edited meanwhile: try it on that
            self.ask(asked)
            return
        self._asked = None
        if why:
            self._session.go_on()
            self.refused.emit(why)
        elif self._session.apply(edit, trial):
            self.kept.emit(edit.name)
