"""The odds of the present plan, and what would help them, worked out in the background."""

from __future__ import annotations

import logging
from collections.abc import Callable
from threading import Event
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QObject, QTimer, Signal

from app.service.planning_errors import Stopped
from app.window.message_translation import edit_name
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.worker import Worker

if TYPE_CHECKING:
    from app.service.advising import Adviser, DateAdvice
    from app.service.planning import Planned
    from app.service.surer_plans import SurerPlan
    from planner.bench import Stretch
    from planner.chance.odds import Odds
    from planner.chance.scoring import ForecastScore
    from planner.values.forecast import Forecast
    from planner.values.moment import Interval
    from planner.values.refusal import Refused

log = logging.getLogger(__name__)

REST_MS = 1_500  # a plan rests so long before its runs are drawn


class KnownOdds(NamedTuple):
    """The odds of a plan, how earlier dates did, and what is said of dates now."""

    odds: Odds
    scores: tuple[ForecastScore, ...]
    said: tuple[Forecast, ...]


class _Answers(QObject):
    sure = Signal(int, object)
    tries = Signal(int, int, int, str)
    helped = Signal(int, object)
    starts = Signal(int, object)
    surer = Signal(int, object)


class ChanceRunner(QObject):
    """Keeps what is known of how sure the present plan is.

    Attributes
    ----------
    odds
        Of the plan on screen; None while they are not known.
    scores
        How the dates did that were said of projects that are finished.
    orders
        Other orders of the same work that are surer, and are not taken unasked.
    advice
        What would help; None while nobody has asked, or it is not known.
    starts
        Of each project with a date, the last session on which it can be begun and
        keep it in four runs of five; None where it cannot.
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
        self.scores: tuple[ForecastScore, ...] = ()
        self.orders: tuple[SurerPlan, ...] = ()
        self.advice: tuple[DateAdvice, ...] | None = None
        self.starts: tuple[tuple[str, Stretch | None], ...] = ()
        self.trying: tuple[int, int, str] | None = None
        self.picture: PlanSnapshot | None = None
        self._serial = 0
        self._stopped = Event()
        self._worker = Worker()
        self._answers = _Answers()
        self._answers.sure.connect(self._know_odds)
        self._answers.tries.connect(self._know_trial)
        self._answers.helped.connect(self._know_advice)
        self._answers.surer.connect(self._know_orders)
        self._answers.starts.connect(self._know_starts)
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
        serial, stop, said = self._serial, self._stopped.is_set, self._session.forecasts
        promised = self._session.promised

        def job() -> None:
            self._answers.sure.emit(serial, _odds(picture, said, stop))
            self._answers.surer.emit(serial, _orders(picture, said, promised, stop))

        self._start(job)

    def look_for_help(self) -> None:
        """Try what would help; `stop` ends it."""
        picture = self._session.picture
        if picture is None:
            return
        self.stop()
        self.picture, self.advice, self.starts = picture, None, ()
        serial, stop, said = self._serial, self._stopped.is_set, self._session.forecasts
        self.trying = (0, 0, "")
        self.changed.emit()

        def tell(at: int, of: int, name: str) -> None:
            self._answers.tries.emit(serial, at, of, name)

        def job() -> None:
            adviser = _adviser(picture, said, stop)
            found = adviser.all(lambda at, of, name: tell(at, of, edit_name(name)))
            self._answers.helped.emit(serial, (adviser.odds, found))
            dated = [one.project for one in adviser.odds.projects if one.target is not None]
            starts = tuple((project, adviser.latest_start(project)) for project in dated)
            self._answers.starts.emit(serial, starts)

        self._start(job)

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
        self.scores = self.orders = ()
        self.starts = ()
        self.changed.emit()

    def _planning(self, busy: bool) -> None:
        """Make way for the plan itself; what was known of another is out of date."""
        if busy:
            self.stop()
        elif self._session.picture is not self.picture:
            self.odds = self.advice = None
            self.orders, self.starts = (), ()
            self.changed.emit()
            self._soon.start(REST_MS)

    def _know_odds(self, serial: int, known: KnownOdds | None) -> None:
        if serial == self._serial and known is not None:
            self.odds, self.scores = known.odds, known.scores
            self._session.say_forecasts(known.said)
            self.changed.emit()

    def _know_orders(self, serial: int, found: tuple[SurerPlan, ...]) -> None:
        """Take an order that costs nothing and leaves tonight; keep the others to be offered."""
        if serial != self._serial:
            return
        free = next((one for one in found if one.free and one.leaves), None)
        if free is not None:
            self.take(free)
        else:
            self.orders = found
            self.changed.emit()

    def take(self, order: SurerPlan) -> None:
        """Work by another order of the same work."""
        cause = self.tr("a surer order of the same work was taken")
        self._session.take_plan(order.planned.plan, order.planned.verdict, cause)

    def _know_trial(self, serial: int, at: int, of: int, name: str) -> None:
        if serial == self._serial:
            self.trying = (at, of, name)
            self.changed.emit()

    def _know_starts(self, serial: int, starts: tuple[tuple[str, Stretch | None], ...]) -> None:
        if serial == self._serial:
            self.starts = starts
            self.changed.emit()

    def _know_advice(self, serial: int, found: tuple[Odds, tuple[DateAdvice, ...]]) -> None:
        if serial == self._serial:
            self.odds, self.advice = found
            self.trying = None
            self.changed.emit()


def _odds(
    picture: PlanSnapshot, said: tuple[Forecast, ...], stop: Callable[[], bool]
) -> KnownOdds | None:
    from app.service.forecasts import said_by  # noqa: PLC0415 - numpy, once it is needed
    from planner.chance.odds import odds_of  # noqa: PLC0415
    from planner.chance.scoring import learned_scale, scores  # noqa: PLC0415
    from planner.chance.spreads import spreads_of  # noqa: PLC0415

    known = scores(picture.book, said)
    scale = learned_scale(known)
    law = spreads_of(picture.book, picture.plan.now, scale)
    odds = odds_of(picture.book, picture.plan, spreads=law, stop=stop)
    return None if odds is None else KnownOdds(odds, known, said_by(odds, scale))


def _orders(
    picture: PlanSnapshot,
    said: tuple[Forecast, ...],
    promised: tuple[Interval, ...],
    stop: Callable[[], bool],
) -> tuple[SurerPlan, ...]:
    from app.service.advising import Adviser  # noqa: PLC0415 - numpy, once it is needed
    from app.service.forecasts import scale_of  # noqa: PLC0415
    from app.service.surer_plans import RUNS, surer_plans  # noqa: PLC0415

    scale = scale_of(picture.book, said)
    few = Adviser(picture.book, _planned(picture), runs=RUNS, scale=scale, stop=stop)
    return surer_plans(few, promised)


def _planned(picture: PlanSnapshot) -> Planned:
    from app.service.planning import Planned  # noqa: PLC0415 - as late as what needs it

    return Planned(picture.plan, picture.verdict, picture.cure, picture.calendar, picture.book)


def _adviser(
    picture: PlanSnapshot, said: tuple[Forecast, ...], stop: Callable[[], bool]
) -> Adviser:
    from app.service.advising import Adviser  # noqa: PLC0415 - numpy, once it is needed
    from app.service.forecasts import scale_of  # noqa: PLC0415

    scale = scale_of(picture.book, said)
    return Adviser(picture.book, _planned(picture), scale=scale, stop=stop)
