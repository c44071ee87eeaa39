"""A line that says what an edit would do to the end of the work and to what is unsound."""

from __future__ import annotations

from collections.abc import Callable
from threading import Event

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtWidgets import QLabel

from app.service.edit_effects import EditEffect, effect_of
from app.service.edits import Edit
from app.service.planning_errors import Stopped, Unsound
from app.window import words
from app.window.message_translation import translated
from app.window.session import Session
from app.window.worker import Worker
from planner.values.book import Book
from planner.values.refusal import Refused

SOON_MS = 150  # after the last key, so that a plan is made of what was meant
SHOWN = 3  # findings that are told by their sentence


class _Answers(QObject):
    came = Signal(int, object)
    failed = Signal(int, str)


class EffectLabel(QLabel):
    """Plans an edit in the background and tells what comes of it; nothing is applied."""

    def __init__(self, session: Session) -> None:
        super().__init__()
        self._session = session
        self.setWordWrap(True)
        self.setMinimumHeight(self.fontMetrics().height() * 3)
        self.setAccessibleName(self.tr("What comes of it"))
        self.effect: EditEffect | None = None
        self._serial = 0
        self._stopped = Event()
        self._worker = Worker()
        self._make: Callable[[Book], Edit] | None = None
        self._answers = _Answers()
        self._answers.came.connect(self._take)
        self._answers.failed.connect(self._fail)
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(SOON_MS)
        self._soon.timeout.connect(self._start)

    def ask(self, make: Callable[[Book], Edit] | None, why: str = "") -> None:
        """Tell what an edit would do; without one, say ``why`` there is nothing to tell."""
        self.stop()
        self._make, self.effect = make, None
        if make is None:
            self.setText(why)
        else:
            self._soon.start()

    def stop(self) -> None:
        """Plan nothing more."""
        self._serial += 1
        self._stopped.set()
        self._soon.stop()

    def wait(self) -> None:
        """Wait until nothing is planned any more; a question that waits is asked at once."""
        if self._soon.isActive():
            self._soon.stop()
            self._start()
        self._worker.wait()

    def _start(self) -> None:
        book, picture, now = self._session.book, self._session.picture, self._session.now
        if book is None or self._make is None:
            return
        try:
            edited = self._make(book).book
        except Refused as refused:
            self.setText(translated(refused.line))
            return
        last = picture.plan if picture is not None and picture.book.projects else None
        self.setText(words.tr("Planning…"))
        serial, stopped = self._serial, Event()
        self._stopped = stopped

        def job() -> None:
            if stopped.is_set():
                return
            try:
                effect = effect_of(book, edited, now, last=last, stop=stopped.is_set)
            except Stopped:
                return
            except (Refused, Unsound) as problem:
                self._answers.failed.emit(serial, translated(str(problem)))
            else:
                self._answers.came.emit(serial, effect)

        self._worker.start(job)

    def _take(self, serial: int, effect: EditEffect) -> None:
        if serial == self._serial:
            self.effect = effect
            self.setText(self.told(effect))

    def _fail(self, serial: int, why: str) -> None:
        if serial == self._serial:
            self.setText(why)

    def told(self, effect: EditEffect) -> str:
        """Return an effect in words."""
        return "\n".join(filter(None, (self._end(effect), self._sound(effect))))

    def _end(self, effect: EditEffect) -> str:
        if effect.after is None:
            return words.count(
                effect.unplaced,
                self.tr("{n} coat has no place"),
                self.tr("{n} coats have no place"),
            )
        zone, now = self._session.zone, self._session.now
        done = words.when(effect.after, zone, now)
        later = effect.minutes_later
        if later is None:
            return self.tr("All done {time}.").format(time=done)
        if not later:
            return self.tr("All done {time}, as before.").format(time=done)
        told = (
            self.tr("All done {time}, {span} later than planned now.")
            if later > 0
            else self.tr("All done {time}, {span} sooner than planned now.")
        )
        return told.format(time=done, span=words.span(abs(later)))

    def _sound(self, effect: EditEffect) -> str:
        if not effect.fresh:
            return self.tr("The order of coats stays sound.")
        told = [translated(finding.message) for finding in effect.fresh[:SHOWN]]
        more = len(effect.fresh) - len(told)
        if more > 0:
            told.append(words.count(more, self.tr("and {n} more"), self.tr("and {n} more")))
        return self.tr("Not sound: {findings}").format(findings="; ".join(told))
