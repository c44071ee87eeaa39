"""What is planned and read in the background, and what carries the answers back."""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass
from threading import Event

from PySide6.QtCore import QObject, Signal

from app.service.planning_errors import Stopped, Unsound
from app.window import words
from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot, SnapshotPart, picture_of
from planner.values.book import Book
from planner.values.moment import Interval
from planner.values.plan import Plan
from planner.values.refusal import Refused

log = logging.getLogger(__name__)


class PlanAnswers(QObject):
    """Carries answers from the background thread to the window's."""

    came = Signal(int, object, bool)
    failed = Signal(int, str, bool)
    prepared = Signal(int)
    foreseen = Signal(int)


@dataclass(frozen=True)
class Question:
    """What is to be planned; ``quick`` by repair or one rule alone, else by all of them.

    ``old`` is the picture before the edit, ``part`` what is on screen,
    ``promised`` the evenings that somebody was told of.  ``known`` are plans
    that were shown, the newest last, where one of them may be of this book.
    """

    serial: int
    book: Book
    now: int
    old: PlanSnapshot | None
    part: SnapshotPart | None
    quick: bool
    promised: tuple[Interval, ...] = ()
    known: tuple[Plan, ...] = ()

    def before(self) -> tuple[Plan | None, bool]:
        """Return the plan to begin from, and whether it was shown for this very book."""
        from app.service.shown_plans import begin_from  # noqa: PLC0415 - as of `planning`

        last, exact = begin_from(self.known, self.book)
        if exact or self.old is None:
            return last, exact
        return self.old.plan, False


class Planning:
    """Plans a book, and sends what came of it."""

    def __init__(self, asked: Question, answers: PlanAnswers, stop: Event) -> None:
        self._asked, self._answers, self._stop = asked, answers, stop

    def run(self) -> None:
        """Plan, and send what came of it."""
        asked = self._asked
        try:
            last, shown = asked.before()
            picture = picture_of(
                asked.book,
                asked.now,
                last=last,
                quick=asked.quick,
                promised=asked.promised,
                shown=shown,
                stop=self._stop.is_set,
            )
            if not asked.quick and asked.part is not None:
                picture.prepare(asked.part)
        except Stopped:
            pass  # something newer is being planned
        except (Refused, Unsound) as problem:
            self._answers.failed.emit(asked.serial, translated(str(problem)), asked.quick)
        except Exception:
            # A fault of the program must neither hang the window nor end it.
            log.exception("planning failed")
            message = words.tr("planning failed; the program's log says where")
            self._answers.failed.emit(asked.serial, message, asked.quick)
        else:
            self._answers.came.emit(asked.serial, picture, asked.quick)


class Preparing:
    """Reads a part of a picture, and says so."""

    def __init__(
        self, picture: PlanSnapshot, part: SnapshotPart | None, done: Callable[[], None]
    ) -> None:
        self._picture, self._part, self._done = picture, part, done

    def run(self) -> None:
        """Read it, and say so."""
        if self._part is not None:
            self._picture.prepare(self._part)
        self._done()
