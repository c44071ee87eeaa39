"""The plan of a book, kept up to date in the background.

A thread repairs the plan before, or plans by one rule where there is none; then
it tries all rules, and reads off the plan what the view on screen shows.  An
answer to an older book is thrown away.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import partial
from threading import Event
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from PySide6.QtCore import QObject, QTimer, Signal

from app.window import background
from app.window.plan_snapshot import PlanChange, PlanSnapshot, SnapshotPart
from app.window.planning_jobs import PlanAnswers, Planning, Preparing, Question
from app.window.worker import Worker
from planner.values.book import Book
from planner.values.moment import Interval, zone_named
from planner.values.plan import Plan
from planner.values.present import last_told, present
from planner.values.wishes import Level

if TYPE_CHECKING:
    from planner.schedule.judge import Verdict
    from planner.schedule.staying.policy import StayingChoice

MOVED_MS = 10  # time for the window to paint what moved
PAINT_MS = 40  # time for it to paint the first answer


def _no_better(full: PlanSnapshot, quick: PlanSnapshot, before: PlanSnapshot | None) -> bool:
    """Tell whether trying all rules gained nothing.

    A first plan is as good as can be; one that follows another gains only
    where it was let to (definition 27a), and is another only then.
    """
    if before is not None:
        return full.plan.placements == quick.plan.placements and full.plan.bench == quick.plan.bench
    order = tuple(one for one in full.book.preferences.order if one is not Level.MOVED)
    return full.plan.cost.in_order(order) >= quick.plan.cost.in_order(order)


class Replanning(QObject):
    """A book and its newest plan; whoever changes the book calls `replan`.

    Signals
    -------
    pictured(PlanChange)
        A new plan is there.
    prepared()
        What the view on screen shows of it has been read, too.
    foreseen()
        What opens and closes by it has been read, last of all.
    planning(bool)
        Planning began, or ended.
    offered(Plan)
        Another plan, accepted by the judge, gains something but moves tonight.
    troubled(str)
        Something could not be done; the sentence says what and how to mend it.
    """

    pictured = Signal(object)
    offered = Signal(object)
    prepared = Signal()
    foreseen = Signal()
    planning = Signal(bool)
    troubled = Signal(str)

    def __init__(self, clock: Callable[[], int], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._clock = clock
        self._book: Book | None = None
        self._told_of: Book | None = None
        self._told = 0
        self._picture: PlanSnapshot | None = None
        self._before: PlanSnapshot | None = None
        self._part: SnapshotPart | None = None
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
        self._ahead = QTimer(self)
        self._ahead.setSingleShot(True)
        self._ahead.setInterval(MOVED_MS)
        self._ahead.timeout.connect(self._look_ahead)
        self._cause = ""
        self._digest = ""  # of the book that was planned last
        self._shown: dict[str, Plan] = {}  # what was shown, by the digest of its book
        self._known: tuple[Plan, ...] = ()
        self._last_change: PlanChange | None = None
        self._worker = Worker()
        self._answers = PlanAnswers()
        self._answers.came.connect(self._take)
        self._answers.failed.connect(self._fail)
        self._answers.prepared.connect(self._show)
        self._answers.foreseen.connect(self._foresee)

    @property
    def now(self) -> int:
        """The minute that runs, or the last of which the open book tells if that is later."""
        clock = self._clock()
        if self._book is None:
            return clock
        if self._told_of is not self._book:  # asked while painting: a long logbook is read once
            self._told_of, told = self._book, last_told(self._book)
            self._told = told.minute if told else clock
        return present(self._book, clock) if self._told > clock else clock

    @property
    def clock(self) -> int:
        """The minute that the clock shows."""
        return self._clock()

    @property
    def book(self) -> Book | None:
        """The open book."""
        return self._book

    @property
    def picture(self) -> PlanSnapshot | None:
        """What the views show."""
        return self._picture

    @property
    def zone(self) -> ZoneInfo:
        """The zone of the open book."""
        return zone_named(self._book.bench_time.zone if self._book else "UTC")

    @property
    def last_change(self) -> PlanChange | None:
        """The last new plan that came of something with a name, as of an edit."""
        return self._last_change

    @property
    def promised(self) -> tuple[Interval, ...]:
        """Evenings that somebody was told of, on paper or in a calendar."""
        return ()

    def replan(self, tried: PlanSnapshot | None = None, *, recall: bool = False) -> None:
        """Plan the book as it stands, in the background.

        ``tried`` is a first answer; ``recall`` says that the book may stand
        as it stood before, and is to have the plan that was shown then.
        """
        if self._book is None:
            return
        self._serial += 1
        self._digest = ""
        self._stop.set()  # what is planned for an older book only takes its time
        self._stop = Event()
        self._before = self._picture
        self._known = tuple(self._shown.values()) if recall else ()
        self.planning.emit(True)
        self._put_off()
        self._worker.clear()
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

    def _forget_plan(self) -> None:
        """Let go of the plan, and of planning, which has been told to stop."""
        self._serial += 1
        self._stop.set()
        self._put_off()
        self._worker = background.rested(self._worker)
        self._picture = self._before = self._last_change = None
        self._digest, self._shown = "", {}

    def _put_off(self) -> None:
        for timer in (self._later, self._soon, self._ahead):
            timer.stop()

    def _ask(self, book: Book, *, quick: bool) -> None:
        asked = Question(
            self._serial,
            book,
            self.now,
            self._before,
            self._part,
            quick,
            self.promised,
            self._known,
        )
        self._worker.start(Planning(asked, self._answers, self._stop).run)

    def _try_all(self) -> None:
        """Try every rule, unless something newer is being planned."""
        if self._tried != self._serial and self._book is not None:
            self._tried = self._serial
            self._ask(self._book, quick=False)

    def take_plan(self, plan: Plan, verdict: Verdict, cause: str) -> None:
        """Show another plan of the book as it stands, one that the judge has accepted."""
        from planner.schedule.drying_locations import chosen_in, settled  # noqa: PLC0415

        old = self._picture
        if self._book is None or old is None:
            return
        there = settled(self._book, chosen_in(self._book, plan))
        self._picture = old.with_plan(there, plan, verdict)
        self._tell(old, self._picture, cause)
        self._keep_shown()
        self._soon.start()

    def weigh(self, plan: Plan) -> StayingChoice | None:
        """Say which is to be shown, the plan on screen or another of the book as it stands."""
        from planner.schedule.staying.policy import choose, firm_times  # noqa: PLC0415

        shown = self._picture
        if shown is None or self._book is None:
            return None
        firm = firm_times(shown.calendar, self.now, self.promised)
        return choose(self._book, shown.calendar, shown.plan, [plan], firm)

    def show_first(self, part: SnapshotPart | None) -> None:
        """Have this part of every picture read in the background, for the view on screen."""
        self._part = part

    def read(self) -> None:
        """Read what the view on screen shows of the newest plan; `prepared` tells when."""
        self._soon.start()

    def wait(self) -> None:
        """Wait until no planning runs any more."""
        self._worker.wait()

    def _take(self, serial: int, picture: PlanSnapshot, quick: bool) -> None:
        if serial != self._serial:
            return
        shown = self._picture
        before = self._before
        if quick or shown is None or shown is before or not _no_better(picture, shown, before):
            old = self._before
            self._picture = picture
            self._tell(old, picture, self._cause)
        if quick:
            # Only once what moved was painted: two threads would share one interpreter.
            self._soon.start()
        else:
            self._digest = picture.plan.digest
            self._keep_shown()
            self._show(serial)
            self._rest()
            if picture.offer is not None:
                self.offered.emit(picture.offer)

    def _keep_shown(self) -> None:
        """Keep the plan on screen as what was shown for its book, the newest last."""
        if self._picture is None or not self._digest:
            return
        plan = replace(self._picture.plan, digest=self._digest)
        if self._shown.pop(self._digest, None) != plan:
            self._put_by(plan)
        self._shown[self._digest] = plan

    def _put_by(self, plan: Plan) -> None:
        """Store a plan that is shown; here there is nowhere to."""

    def _tell(self, old: PlanSnapshot | None, new: PlanSnapshot, cause: str) -> None:
        from app.service.plan_changes import moved  # noqa: PLC0415

        change = PlanChange(old, new, moved(old.plan, new.plan) if old else (), cause)
        if change.cause:
            self._last_change = change
        self.pictured.emit(change)

    def _prepare(self) -> None:
        picture = self._picture
        if self._book is not None and picture is not None:
            done = partial(self._answers.prepared.emit, self._serial)
            self._worker.start(Preparing(picture, self._part, done).run)

    def _look_ahead(self) -> None:
        """Read what opens and closes, once the view on screen was painted."""
        picture = self._picture
        if self._book is not None and picture is not None:
            done = partial(self._answers.foreseen.emit, self._serial)
            self._worker.start(Preparing(picture, SnapshotPart.MOMENTS, done).run)

    def _show(self, serial: int) -> None:
        if serial != self._serial:
            return
        self.prepared.emit()
        self._ahead.start()
        if self._tried != serial:
            self._later.start()

    def _foresee(self, serial: int) -> None:
        if serial == self._serial:
            self.foreseen.emit()

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
