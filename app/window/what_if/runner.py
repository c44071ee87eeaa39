"""Scenarios planned in the background, one after the other, as the plan itself rests."""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass
from threading import Event

from PySide6.QtCore import QObject, QTimer, Signal

from app.service import what_if
from app.service.planning_errors import Unsound
from app.service.what_if import PlanFigures, Scenario
from app.window import words
from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.worker import Worker
from planner.values.book import Book
from planner.values.plan import Plan
from planner.values.refusal import Refused

log = logging.getLogger(__name__)

SOON_MS = 300  # the plan itself is painted first


@dataclass(frozen=True)
class TriedScenario:
    """A scenario and what is known of it; ``why`` says why it cannot be."""

    scenario: Scenario
    outcome: PlanFigures | None = None
    why: str = ""

    @property
    def done(self) -> bool:
        """Tell whether nothing more will be known."""
        return bool(self.why) or (self.outcome is not None and not self.outcome.rough)


class _Answers(QObject):
    came = Signal(int, object, object)
    failed = Signal(int, object, str)


class _Job:
    """Plans one scenario; without one it reads off the present plan."""

    def __init__(
        self,
        serial: int,
        scenario: Scenario | None,
        outcomes: Callable[[Callable[[], bool]], object],
        answers: _Answers,
    ) -> None:
        self.stopped = Event()
        self.scenario = scenario
        self._serial, self._outcomes, self._answers = serial, outcomes, answers

    def run(self) -> None:
        """Plan it, and send what it comes to as it is known."""
        if self.stopped.is_set():
            return
        try:
            for outcome in self._outcomes(self.stopped.is_set):  # type: ignore[attr-defined]
                if self.stopped.is_set():
                    return
                self._answers.came.emit(self._serial, self.scenario, outcome)
        except (Refused, Unsound) as problem:
            self._answers.failed.emit(self._serial, self.scenario, translated(str(problem)))
        except Exception:
            # A fault of the program must neither hang the window nor end it.
            log.exception("trying a change failed")
            why = words.tr("trying it failed; the program's log says where")
            self._answers.failed.emit(self._serial, self.scenario, why)


class Runner(QObject):
    """Keeps the scenarios, and what each comes to with the book as it stands.

    Signals
    -------
    changed()
        Something new is known.
    """

    changed = Signal()

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self.present: PlanFigures | None = None
        self.tried: list[TriedScenario] = []
        self._serial = 0
        self._jobs: list[_Job] = []
        self._picture: PlanSnapshot | None = None
        self._worker = Worker()
        self._answers = _Answers()
        self._answers.came.connect(self._take)
        self._answers.failed.connect(self._fail)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(SOON_MS)
        self._soon.timeout.connect(self._start)
        session.planning.connect(self._planning)
        session.opened.connect(self._forget)

    @property
    def busy(self) -> bool:
        """Tell whether something is still being planned."""
        return self._soon.isActive() or any(not one.done for one in self.tried)

    def add(self, scenario: Scenario) -> None:
        """Try another scenario.

        Raises
        ------
        Refused
            If it cannot be made of the book, or is being tried already.
        """
        book = self._session.book
        if book is None:
            return
        scenario.apply(book)
        if scenario.changes in [one.scenario.changes for one in self.tried]:
            raise Refused("", self._session.tr("this is being tried already"))
        self.tried.append(TriedScenario(scenario))
        self.changed.emit()
        self._soon.start()

    def drop(self, scenario: Scenario) -> None:
        """Forget a scenario, also while it is being planned."""
        for job in self._jobs:
            if job.scenario == scenario:
                job.stopped.set()
        self.tried = [one for one in self.tried if one.scenario != scenario]
        self.changed.emit()

    def keep(self, scenario: Scenario) -> Refused | None:
        """Make a scenario of the open book, as one edit; the others are tried on top of it."""
        refused = self._session.attempt(scenario.apply)
        if refused is None:
            self.drop(scenario)
        return refused

    def wait(self) -> None:
        """Wait until nothing is being planned any more."""
        self._worker.wait()

    def stop(self) -> None:
        """Plan nothing more."""
        self._serial += 1
        self._soon.stop()
        for job in self._jobs:
            job.stopped.set()
        self._jobs.clear()
        self._worker.clear()

    def begin(self) -> None:
        """Read off the present plan; it may have been there before anybody asked."""
        if self.present is None and self._session.picture is not None:
            self._soon.start()

    def _forget(self) -> None:
        self.stop()
        self.present, self._picture = None, None
        self.tried.clear()
        self.changed.emit()

    def _planning(self, busy: bool) -> None:
        """Make way for the plan itself; go on when it rests, anew if it is another."""
        if busy:
            self.stop()
        elif self._session.picture is not self._picture:
            self.present = None
            self.tried = [TriedScenario(one.scenario) for one in self.tried]
            self.changed.emit()
            self._soon.start()
        elif self.busy or self.present is None:
            self._soon.start()

    def _start(self) -> None:
        picture, book = self._session.picture, self._session.book
        if picture is None or book is None:
            return
        self._picture = picture
        waiting = [one.scenario for one in self.tried if not one.done]
        running = [job.scenario for job in self._jobs if not job.stopped.is_set()]
        if self.present is None:
            self._run(None, lambda _stop: iter((what_if.outcome_of(picture.book, picture.plan),)))
        for scenario in waiting:
            if scenario not in running:
                self._run(scenario, _trying(book, picture.now, scenario, picture.plan))

    def _run(
        self, scenario: Scenario | None, outcomes: Callable[[Callable[[], bool]], object]
    ) -> None:
        job = _Job(self._serial, scenario, outcomes, self._answers)
        self._jobs.append(job)
        self._worker.start(job.run)

    def _take(self, serial: int, scenario: Scenario | None, outcome: PlanFigures) -> None:
        if serial != self._serial:
            return
        if scenario is None:
            self.present = outcome
        self._know(scenario, outcome, "")

    def _fail(self, serial: int, scenario: Scenario | None, why: str) -> None:
        if serial == self._serial:
            self._know(scenario, None, why)

    def _know(self, scenario: Scenario | None, outcome: PlanFigures | None, why: str) -> None:
        self.tried = [
            TriedScenario(one.scenario, outcome, why) if one.scenario == scenario else one
            for one in self.tried
        ]
        if why or (outcome is not None and not outcome.rough):
            self._jobs = [job for job in self._jobs if job.scenario != scenario]
        self.changed.emit()


def _trying(
    book: Book, now: int, scenario: Scenario, last: Plan
) -> Callable[[Callable[[], bool]], object]:
    return lambda stop: what_if.tried(book, now, scenario, stop, last)
