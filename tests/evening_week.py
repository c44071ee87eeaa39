"""A week of evenings at the bench by keys, with seeded troubles; what the finish was told to be.

On the first day and on each day after, the finish that the plan tells; and of each change of it
what had been done just before.
"""

from __future__ import annotations

import random
from dataclasses import dataclass, field, replace
from datetime import date

from bench_steps import AtTheBench
from PySide6.QtCore import Qt
from small_book import small_book

from app.service import film_brake
from app.window.bench_mode.keys import Deed
from app.window.plan_changes_panel import cause_words
from app.window.plan_snapshot import PlanChange
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.moment import moment_of
from planner.values.plan import Plan

Key = Qt.Key
MOST_JOBS = 12  # of one evening
CLOCK = "time went by: what was planned had not been begun"
TROUBLES = (
    "tacky",
    "left out",
    "wrong",
    "an hour more",
    "other work",
    "stopped",
    "too soon",
)


@dataclass(frozen=True)
class FinishMoved:
    """A change of the finish: what was done just before, and the minutes told before and after."""

    cause: str
    before: int
    after: int


@dataclass
class EveningTold:
    """One evening: the finish told as it began, its trouble, and each change of the finish."""

    start: int
    finish: int
    trouble: str
    done: int = 0
    asked: int = 0
    moved: list[FinishMoved] = field(default_factory=list)


def carts(count: int = 3) -> Book:
    """Return the small book with several carts, and bench time on every evening."""
    book = small_book()
    (project,) = book.projects
    models = tuple(replace(project.models[0], name=f"cart {n + 1}") for n in range(count))
    daily = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 6), start="19:30", end="21:30")
    return replace(
        book,
        bench_time=replace(book.bench_time, stretches=(daily,)),
        projects=(replace(project, models=models),),
    )


def finish_of(plan: Plan) -> int:
    """Return the minute at which all is finished."""
    return max((end for _, end in plan.finishes), default=plan.now)


class EveningWeek:
    """Goes through the evenings of a week; ``here`` presses the keys."""

    def __init__(self, here: AtTheBench, seed: int) -> None:
        self.here, self._drawn = here, random.Random(seed)
        self.told: list[EveningTold] = []
        here.window.session.pictured.connect(self._pictured)

    def _pictured(self, change: PlanChange) -> None:
        if change.old is None or not self.told:
            return
        before, after = finish_of(change.old.plan), finish_of(change.new.plan)
        if before != after:
            cause = cause_words(change.cause) if change.cause else CLOCK
            moved = FinishMoved(cause, before, after)
            if moved not in self.told[-1].moved[-1:]:  # the quick plan and the whole one agree
                self.told[-1].moved.append(moved)

    def run(self, evenings: int = 7) -> None:
        """Work through some evenings, each with a trouble of its own, in an order that is drawn."""
        troubles = list(TROUBLES)
        self._drawn.shuffle(troubles)
        for number in range(evenings):
            if not self._come(troubles[number % len(troubles)]):
                return
            self._evening()

    def _come(self, trouble: str) -> bool:
        """Come to the next evening; False where nothing is left to do."""
        here = self.here
        if all(placed.logged for placed in here.picture.plan.placements):
            return False
        begun = self.told[-1].start if self.told else here.now - 1
        stretch = here.picture.calendar.next_stretch(max(here.now, begun))
        while stretch is not None and stretch.interval.start <= begun:
            stretch = here.picture.calendar.next_stretch(stretch.interval.end)
        assert stretch is not None
        here.now = stretch.interval.start
        self.told.append(EveningTold(here.now, finish_of(here.picture.plan), trouble))
        here.window.session.replan()
        here.settle()
        here.bench.evening.begin_to_show()
        here.bench.show_job()
        if Deed.MISSED in here.bench.evening.deeds():
            here.press(Key.Key_W, Key.Key_1)
            self._escape()
        return True

    def _evening(self) -> None:
        told = self.told[-1]
        at = self._drawn.randrange(1, 4)
        for number in range(MOST_JOBS):
            if number == at and self._trouble(told.trouble):
                return
            if not self._job():
                break
        self._escape()

    def _job(self) -> bool:
        """Do the job on screen; False where none can be begun any more this evening."""
        here, told = self.here, self.told[-1]
        stretch = here.picture.calendar.stretch_at(here.now)
        job = here.bench.job
        if stretch is None or job is None or job.row.start >= stretch.interval.end:
            return False
        if job.begun is None:
            here.now = max(here.now, job.row.start)
        if job.work is None:
            here.now += job.row.minutes
            here.press(Key.Key_Space)
            return True
        if job.begun is None:
            here.press(Key.Key_S)
            self._answer()
            if here.bench.job is None or here.bench.job.begun is None:
                return False  # it waits
        here.now += max(1, round(job.row.minutes * self._drawn.uniform(0.7, 1.6)))
        here.press(Key.Key_Space)
        self._answer()
        told.done += 1
        return True

    def _answer(self) -> None:
        """Answer whatever is asked: begin all the same, or what there is but waiting."""
        here = self.here
        for _ in range(3):
            asked = here.bench.asked
            if asked is None:
                return
            self.told[-1].asked += 1
            if asked.space is not None:
                here.press(Key.Key_Space)
            elif len(asked.lines) > 1:
                here.press(Qt.Key(Key.Key_0.value + len(asked.lines)))
            else:
                here.press(Key.Key_Escape)
        self._escape()

    def _escape(self) -> None:
        if self.here.bench.asked is not None:
            self.here.press(Key.Key_Escape)

    def _trouble(self, trouble: str) -> bool:
        """Let a trouble happen by its keys; True where the evening ends by it."""
        here = self.here
        deeds = here.bench.evening.deeds()
        if trouble == "tacky" and Deed.TACKY in deeds:
            here.press(Key.Key_K, Key.Key_1)
        elif trouble == "left out" and Deed.NOT_NOW in deeds:
            here.press(Key.Key_N, Key.Key_1)
        elif trouble == "wrong" and Deed.WRONG in deeds:
            here.press(Key.Key_R, Key.Key_1, Key.Key_1, Key.Key_1)
        elif trouble == "an hour more":
            here.press(Key.Key_H)
        elif trouble == "other work":
            here.press(Key.Key_O)
            here.type("dark oil on cart 1 bed, brush, 6 min")
            here.now += 1
        elif trouble == "stopped":
            here.press(Key.Key_E)
        elif trouble == "too soon":
            self._too_soon()
        self._escape()
        return trouble == "stopped"

    def _too_soon(self) -> None:
        """Begin, all the same, the first job whose film is not ready."""
        here = self.here
        for _ in here.bench.evening.jobs:
            work = here.bench.job.work if here.bench.job else None
            if work and film_brake.at_beginning(here.book, work.key, here.now):
                here.press(Key.Key_S)
                self._answer()
                return
            here.press(Key.Key_Right)
        here.bench.evening.begin_to_show()

    def lines(self) -> list[str]:
        """Return what was told, an evening in a line and each change of the finish below."""
        zone = self.here.picture.zone

        def when(minute: int) -> str:
            return f"{moment_of(minute, zone):%a %d %b %H:%M}"

        lines = []
        for told in self.told:
            head = f"{when(told.start)}  finish told {when(told.finish)}"
            lines.append(f"{head}  done {told.done}, asked {told.asked}  ({told.trouble})")
            lines += [
                f"    {when(moved.before)} -> {when(moved.after)}: {moved.cause}"
                for moved in told.moved
            ]
        return lines
