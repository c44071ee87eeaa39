"""Better plans from the background, offered or taken.

Some seconds after planning has come to rest a process begins to look for
better plans.  One that gains a stretch and leaves tonight as it is, is taken at
once; one that gains and moves tonight is offered (definition 27a).  While an
edit is planned the search rests; then it goes on from the plan on screen.
"""

from __future__ import annotations

import logging

from PySide6.QtCore import QObject, QTimer, Signal

from app.service.improving import Improved, Improver, Task
from app.window import words
from app.window.message_translation import translated
from app.window.session import Session
from planner.values.plan import Plan, Status

log = logging.getLogger(__name__)

START_MS = 3_000  # rest before the process begins
RESUME_MS = 50  # rest before a process that is there goes on
POLL_MS = 250


class Improving(QObject):
    """Looks after the process that improves the plan of a session.

    Signals
    -------
    changed()
        There is an offer, or none any more, or more is proven.
    """

    changed = Signal()

    def __init__(self, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.offer: Improved | None = None
        self.known: Plan | None = None
        self.fault = ""
        self.task: Task | None = None
        self._improver: Improver | None = None
        self._rest = QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.timeout.connect(self._start)
        self._poll = QTimer(self)
        self._poll.setInterval(POLL_MS)
        self._poll.timeout.connect(self._look)
        session.planning.connect(self._planning)
        session.offered.connect(self._offered)
        session.closed.connect(self.stop)

    @property
    def running(self) -> bool:
        """Tell whether a process looks for better plans."""
        return self._improver is not None

    def stop(self) -> None:
        """End the process and forget its offer."""
        self._rest.stop()
        self._poll.stop()
        if self._improver is not None:
            self._improver.stop()
            self._improver = None
        self._forget()

    def _forget(self) -> None:
        if self.offer is not None or self.known is not None or self.fault:
            self.offer, self.known, self.fault = None, None, ""
            self.changed.emit()

    def take(self) -> None:
        """Work by the plan that is offered."""
        if self.offer is not None:
            offer, self.offer = self.offer, None
            self.session.take_plan(offer.plan, offer.verdict, self.tr("a better plan was taken"))
            self.changed.emit()

    def line(self) -> str:
        """Return what is known of the plan, in a line; "" for nothing yet."""
        if self.offer is not None:
            shown = self.session.picture
            assert shown is not None
            return self.tr("Better plan found: {gains} (F6)").format(
                gains=_gains(shown.plan, self.offer.plan)
            )
        if self.fault:
            return self.tr("The search for better plans stopped; the plan stays")
        if self.known is None:
            return ""
        if self.known.conflict:
            clashes = "; ".join(translated(one.what) for one in self.known.conflict)
            return self.tr("No plan can place everything: {clashes}").format(clashes=clashes)
        if self.known.status is Status.OPTIMAL:
            return self.tr("Proven: no plan finishes earlier")
        bound = next((one for one in self.known.bounds if one.level == "finish"), None)
        if bound is None:
            return ""
        away = words.span(self.known.cost.finish - bound.value)
        if self.running:
            return self.tr("Within {time} of the best finish").format(time=away)
        return self.tr("Search over: within {time} of the best finish").format(time=away)

    def proof(self) -> str:
        """Return why the search broke off, or what proves the bound; "" for nothing."""
        if self.fault:
            return translated(self.fault)
        if self.known is not None and self.known.conflict:
            return "\n".join(
                f"{translated(one.what)}: {translated(one.relax)}" for one in self.known.conflict
            )
        bounds = self.known.bounds if self.known else ()
        return next((translated(one.proof) for one in bounds if one.level == "finish"), "")

    def _planning(self, busy: bool) -> None:
        self._rest.stop()
        self._forget()
        if not busy:
            self._rest.start(START_MS if self._improver is None else RESUME_MS)
        elif self._improver is not None:
            if self.task is not None and self.task.first.unplaced:
                self.stop()  # what proves that nothing places everything hears nobody
            else:
                self._improver.turn_to(None)

    def _start(self) -> None:
        picture, book = self.session.picture, self.session.book
        plan = picture.plan if picture else None
        if picture is None or book is None or not (plan and (plan.placements or plan.unplaced)):
            return
        self.task = Task(book, picture.plan)
        if self._improver is not None:
            self._improver.turn_to(self.task)
        else:
            self._improver = Improver(self.task)
        self._poll.start()
        self.changed.emit()

    def _look(self) -> None:
        if self._improver is None:
            return
        improver = self._improver
        news = improver.news()
        if news:
            self._hear(news[-1], any(one.cheaper for one in news))
        if self._improver is improver and not improver.running:
            self.fault = improver.fault
            if self.fault:
                log.warning("%s", self.fault)
            self._poll.stop()
            improver.stop()
            self._improver = None
            self.changed.emit()

    def _hear(self, newest: Improved, cheaper: bool) -> None:
        self.known = newest.plan
        if cheaper or self.offer is not None:
            self._weigh(newest)
        self.changed.emit()

    def _offered(self, plan: Plan) -> None:
        """Offer what planning by the rules has found."""
        from planner.schedule.judge import judge  # noqa: PLC0415

        book = self.session.book
        if book is not None:
            self.offer = Improved(plan, True, judge(book, plan))
            self.changed.emit()

    def _weigh(self, newest: Improved) -> None:
        """Take a plan, offer it or let it be, as definition 27a says."""
        choice = self.session.weigh(newest.plan)
        if choice is None:
            return
        if choice.taken is newest.plan:
            self.offer = None
            cause = self.tr("a better plan was found")
            self.session.take_plan(newest.plan, newest.verdict, cause)
        elif choice.offered is newest.plan:
            self.offer = newest


def _gains(old: Plan, new: Plan) -> str:
    """Say what a plan is better in: the first two things."""
    gains = []
    finish = old.cost.finish - new.cost.finish
    if finish > 0:
        gains.append(words.tr("{time} sooner").format(time=words.span(finish)))
    stretches = old.cost.stretches - new.cost.stretches
    if stretches > 0:
        fewer = words.count(
            stretches, words.tr("one session fewer"), words.tr("{n} sessions fewer")
        )
        gains.append(fewer)
    setup = old.cost.setup_minutes - new.cost.setup_minutes
    if setup > 0:
        gains.append(words.tr("{n} min less set-up").format(n=setup))
    if not gains:
        gains.append(words.tr("less late, or nearer to the last plan"))
    return ", ".join(gains[:2])
