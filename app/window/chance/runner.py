"""The odds of the present plan, and what would help them, worked out in the background."""

from __future__ import annotations

import logging
from collections.abc import Callable
from threading import Event
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal

from app.service.planning_errors import Stopped
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.worker import Worker

if TYPE_CHECKING:
    from app.service.advising import DateAdvice
    from planner.chance.odds import Odds
    from planner.values.refusal import Refused

log = logging.getLogger(__name__)

REST_MS = 1_500  # a plan rests so long before its runs are drawn


class _Answers(QObject):
    sure = Signal(int, object)
    tries = Signal(int, int, int, str)
    helped = Signal(int, object)


class ChanceRunner(QObject):
    """Keeps what is known of how sure the present plan is.

    Attributes
    ----------
    odds
        Of the plan on screen; None while they are not known.
    advice
        What would help; None while nobody has asked, or it is not known.
    trying
        Which measure of how many is being tried, and its name; None where none is.

    Signals
    -------
    changed()
        Something new is known, or what was known is out of date.
    """

    changed = Signal()

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.odds: Odds | None = None
        self.advice: tuple[DateAdvice, ...] | None = None
        self.trying: tuple[int, int, str] | None = None
        self.picture: PlanSnapshot | None = None
        self._serial = 0
        self._stopped = Event()
        self._worker = Worker()
        self._answers = _Answers()
        self._answers.sure.connect(self._know_odds)
        self._answers.tries.connect(self._know_trial)
        self._answers.helped.connect(self._know_advice)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.timeout.connect(self.begin)
        session.planning.connect(self._planning)
        session.opened.connect(self._forget)
        session.closed.connect(self.stop)

    @property
    def busy(self) -> bool:
        """Tell whether something is being worked out."""
        return self._worker.busy

    def begin(self) -> None:
        """Work out the odds of the plan on screen, if they are not known."""
        picture = self._session.picture
        self._soon.stop()
        if picture is None or (picture is self.picture and self.odds is not None):
            return
        self.stop()
        self.picture = picture
        serial, stop = self._serial, self._stopped.is_set
        self._start(lambda: self._answers.sure.emit(serial, _odds(picture, stop)))

    def look_for_help(self) -> None:
        """Try what would help; `stop` ends it."""
        picture = self._session.picture
        if picture is None:
            return
        self.stop()
        self.picture, self.advice = picture, None
        serial, stop = self._serial, self._stopped.is_set
        self.trying = (0, 0, "")
        self.changed.emit()

        def tell(at: int, of: int, name: str) -> None:
            self._answers.tries.emit(serial, at, of, name)

        self._start(lambda: self._answers.helped.emit(serial, _advice(picture, tell, stop)))

    def apply(self, advice: DateAdvice) -> Refused | None:
        """Make a measure one edit of the book; return why it cannot be."""
        return self._session.attempt(advice.measure.scenario.apply)

    def stop(self) -> None:
        """Work out nothing more; what is known stays."""
        self._serial += 1
        self._soon.stop()
        self._stopped.set()
        self._stopped = Event()
        self._worker.clear()
        if self.trying is not None:
            self.trying = None
            self.changed.emit()

    def wait(self) -> None:
        """Wait until nothing is being worked out any more."""
        self._worker.wait()

    def _start(self, job: Callable[[], None]) -> None:
        def guarded() -> None:
            try:
                job()
            except Stopped:
                log.debug("stopped drawing runs")

        self._worker.start(guarded)

    def _forget(self) -> None:
        self.stop()
        self.odds = self.advice = self.picture = None
        self.changed.emit()

    def _planning(self, busy: bool) -> None:
        """Make way for the plan itself; what was known of another is out of date."""
        if busy:
            self.stop()
        elif self._session.picture is not self.picture:
            self.odds = self.advice = None
            self.changed.emit()
            self._soon.start(REST_MS)

    def _know_odds(self, serial: int, odds: Odds | None) -> None:
        if serial == self._serial and odds is not None:
            self.odds = odds
            self.changed.emit()

    def _know_trial(self, serial: int, at: int, of: int, name: str) -> None:
        if serial == self._serial:
            self.trying = (at, of, name)
            self.changed.emit()

    def _know_advice(self, serial: int, found: tuple[Odds, tuple[DateAdvice, ...]]) -> None:
        if serial == self._serial:
            self.odds, self.advice = found
            self.trying = None
            self.changed.emit()


def _odds(picture: PlanSnapshot, stop: Callable[[], bool]) -> Odds | None:
    from planner.chance.odds import odds_of  # noqa: PLC0415 - numpy, once it is needed

    return odds_of(picture.book, picture.plan, stop=stop)


def _advice(
    picture: PlanSnapshot, tell: Callable[[int, int, str], None], stop: Callable[[], bool]
) -> tuple[Odds, tuple[DateAdvice, ...]]:
    from app.service.advising import Adviser  # noqa: PLC0415 - numpy, once it is needed
    from app.service.planning import Planned  # noqa: PLC0415
    from app.window.message_translation import edit_name  # noqa: PLC0415

    planned = Planned(picture.plan, picture.verdict, picture.cure, picture.calendar, picture.book)
    adviser = Adviser(picture.book, planned, stop=stop)
    found = adviser.all(lambda at, of, name: tell(at, of, edit_name(name)))
    return adviser.odds, found
