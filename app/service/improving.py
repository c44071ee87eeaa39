"""Improving a plan in a process of its own, whose death costs nothing.

The process gets a book and its first plan and sends back every better plan
that the judge accepts, and every bound that rises.  Nobody waits for it: ask
`Improver.news` now and then, and `Improver.stop` ends it at once.
"""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import time
from collections.abc import Iterator
from dataclasses import dataclass, field
from multiprocessing.connection import Connection
from threading import Thread
from typing import TYPE_CHECKING

from planner.schedule.optimise.effort import Effort
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import Plan

# Solver and judge take a good part of a start to import: only where they are needed.
if TYPE_CHECKING:
    from app.service.planning import Planned
    from planner.bench import BenchCalendar
    from planner.cure import Cure
    from planner.schedule.judge import Verdict

POLL_SECONDS = 0.05


@dataclass(frozen=True)
class Task:
    """What is to be improved: the ``first`` plan of a book, near to the ``last`` before it."""

    book: Book
    first: Plan
    last: Plan | None = None
    seed: int = 0
    effort: Effort = field(default_factory=Effort)


@dataclass(frozen=True)
class Improved:
    """A plan that the judge accepted, with what is proven of it.

    ``cheaper`` is false where only the bounds are new.
    """

    plan: Plan
    cheaper: bool
    verdict: Verdict


class Improver:
    """One running improvement; `stop` it, or let it come to its own end.

    Starting a process hands it the whole book, which takes as long as the
    process needs to wake up; so it is done from a thread, and nobody waits.
    """

    def __init__(self, task: Task) -> None:
        context = multiprocessing.get_context("spawn")
        self._mine, self._theirs = context.Pipe(duplex=False)
        self._process = context.Process(target=_work, args=(task, self._theirs), daemon=True)
        self._stopped = False
        self._over = False  # the process has closed its end
        # No daemon: whoever ends the program while the process wakes up waits until it has,
        # and it is ended at once.
        self._starting = Thread(target=self._start)
        self._starting.start()

    def news(self) -> list[Improved]:
        """Return what has come since the last time, without waiting."""
        found: list[Improved] = []
        try:
            while self._mine.poll():
                found.append(self._mine.recv())
        except (EOFError, OSError):
            self._over = True
        return found

    @property
    def running(self) -> bool:
        """Tell whether more may come."""
        if self._starting.is_alive():
            return True
        if self._over:  # a closed end looks like one at which something waits
            return False
        return self._process.is_alive() or self._waiting()

    def stop(self) -> None:
        """End the process, whatever it does; one that is waking up ends when it has."""
        self._stopped = True
        if not self._starting.is_alive():
            self._end()

    def _start(self) -> None:
        with contextlib.suppress(OSError):
            self._process.start()
        self._theirs.close()
        if self._stopped:
            self._end()

    def _end(self) -> None:
        if self._process.is_alive():
            self._process.kill()
        with contextlib.suppress(ValueError, AssertionError):
            self._process.join()
        self._mine.close()

    def _waiting(self) -> bool:
        with contextlib.suppress(OSError):
            return self._mine.poll()
        return False


def improved(planned: Planned, book: Book, seconds: float) -> Planned:
    """Return the best plan found within some time; Ctrl+C ends it early with what there is.

    ``book`` is the one asked for, ``planned`` its first plan.
    """
    found = planned.plan
    with contextlib.suppress(KeyboardInterrupt):
        for one in improvements(Task(book, planned.plan), seconds):
            found = one.plan
    return _planned(book, found, planned.cure, planned.calendar)


def explained(planned: Planned, book: Book) -> Planned:
    """Return a plan that leaves passes over with what clashes, where that is proven."""
    if not planned.plan.unplaced:
        return planned
    from planner.schedule.optimise.conflict import explain, infeasible  # noqa: PLC0415

    clashes = explain(book, planned.plan.now, planned.cure)
    return _planned(book, infeasible(planned.plan, clashes), planned.cure, planned.calendar)


def improvements(task: Task, seconds: float) -> Iterator[Improved]:
    """Yield what a process finds within some time [s]."""
    until = time.monotonic() + seconds
    improver = Improver(task)
    try:
        while time.monotonic() < until and improver.running:
            yield from improver.news()
            time.sleep(POLL_SECONDS)
        yield from improver.news()
    finally:
        improver.stop()


def _planned(book: Book, plan: Plan, cure: Cure, calendar: BenchCalendar) -> Planned:
    from app.service.planning import Planned  # noqa: PLC0415
    from planner.schedule.judge import Premises, judge  # noqa: PLC0415
    from planner.schedule.where import chosen_in, settled  # noqa: PLC0415

    verdict = judge(book, plan, premises=Premises(book, cure, calendar))
    return Planned(plan, verdict, cure, calendar, settled(book, chosen_in(book, plan)))


def _work(task: Task, theirs: Connection) -> None:
    """Improve, in the process; what the judge refuses is never sent."""
    from planner.bench import calendar_of  # noqa: PLC0415
    from planner.cure import Cure  # noqa: PLC0415
    from planner.schedule.judge import Premises, judge  # noqa: PLC0415
    from planner.schedule.optimise.conflict import explain, infeasible  # noqa: PLC0415
    from planner.schedule.optimise.search import improve  # noqa: PLC0415

    with contextlib.suppress(AttributeError, OSError):
        os.nice(10)  # whoever sits at the window comes first
    cure = Cure(task.book.room, zone_named(task.book.bench_time.zone))
    calendar = calendar_of(task.book.bench_time)
    premises = Premises(task.book, cure, calendar)
    with contextlib.suppress(BrokenPipeError, KeyboardInterrupt):
        if task.first.unplaced:
            told = infeasible(task.first, explain(task.book, task.first.now, cure))
            theirs.send(Improved(told, False, judge(task.book, told, premises=premises)))
            if told.conflict:
                return
        for one in improve(
            task.book,
            task.first,
            cure=cure,
            calendar=calendar,
            last=task.last,
            seed=task.seed,
            effort=task.effort,
        ):
            verdict = judge(task.book, one.plan, premises=premises)
            if verdict.accepted:
                theirs.send(Improved(one.plan, one.improved, verdict))
    theirs.close()
