"""What is held against each other, each run on one batch and told in one `Outcome`.

The engine runs as in the program: a process of its own, which lowers its
priority.  The others run in this process at the usual one, with as many
workers, so that on a busy machine they are at an advantage; on an idle one it
makes no difference.  The seconds of the engine count from before its process
is started, those of the others from when their model is handed over.
"""

from __future__ import annotations

import time
from bisect import bisect_right
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta
from datetime import time as clock_time
from itertools import pairwise
from types import SimpleNamespace
from typing import Any

import frozen_direct
from frozen_greedy import plain_greedy
from library import Stated
from ortools.sat.python import cp_model
from plain_check import Starts, broken, by_evening, finish_of, set_up_minutes
from plain_tasks import Batch, batch_of

from app.service.improving import Task, improvements
from app.service.planning import plan
from planner.bench import calendar_of
from planner.schedule.judge import judge
from planner.values.bench_time import Extra
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.plan import BenchKind, Plan, Status

Event = Callable[[Book, Plan], tuple[Book, int]]  # what happens at the bench, and when it has
WORKERS = 2
SPARE = 6  # evenings after the instant plan's last that the direct model may use
MARKS = (0, 1, 3, 10, 20, 30, 60)  # seconds
BEFORE_EDITS = 5.0  # seconds of search before the first edit
SHORT = 360  # minutes of drying after the last pass, in both families over before the next evening
CLOSE = 1.01  # within 1 % of its own best finish


@dataclass
class Outcome:
    """What one contender made of one batch.

    ``course`` are (seconds, last evening, finish) of its plans, in order;
    ``bound`` is the proven least last evening, ``proof`` the seconds until it
    was met, ``optimal`` those until the finish was proven.  ``refills`` are the
    fillings with a colour that the cup had held before in the same stretch.
    """

    contender: str
    course: list[tuple[float, int, int]] = field(default_factory=list)
    evenings: int = 0
    setup: int = 0
    late: int = 0
    bound: int | None = None
    proof: float | None = None
    optimal: float | None = None
    refills: int | None = None
    note: str = ""

    def at(self, mark: float) -> int | None:
        """Return the last evening of the plan that it had after so many seconds."""
        known = [last for spent, last, _ in self.course if spent <= mark]
        return min(known, default=None)

    @property
    def close(self) -> float | None:
        """Return the seconds to within 1 % of its own best finish."""
        if not self.course:
            return None
        best = min(finish for _, _, finish in self.course)
        return next(spent for spent, _, finish in self.course if finish <= CLOSE * best)


# -- the engine -------------------------------------------------------------------------------


def engine(
    book: Book, now: int, seconds: float, first: Plan, last: Plan | None = None
) -> tuple[Outcome, Plan]:
    """Return what the engine makes of a book, and its best plan; ``last`` is that before it."""
    found = Outcome("engine")
    evenings = _ends(book, first, now)
    best, began = first, time.monotonic()
    found.course.append((0.0, *_measured(best, evenings, now)))
    for improvement in improvements(Task(book, first, last), seconds):
        spent, best = time.monotonic() - began, improvement.plan
        latest, finish = _measured(best, evenings, now)
        found.course.append((spent, latest, finish))
        found.bound = _proven(best, evenings, now)
        if found.proof is None and found.bound is not None and latest <= found.bound:
            found.proof = spent
        if found.optimal is None and best.status is Status.OPTIMAL:
            found.optimal = spent
    assert judge(book, best).accepted
    _costed(found, book, best)
    return found, best


def edited(book: Book, first: Plan, now: int, seconds: float, event: Event) -> Outcome:
    """Return what the search makes of a book after three edits, each with the plan repaired."""
    shown = engine(book, now, BEFORE_EDITS, first)[1]
    edits: list[Callable[[Book], tuple[Book, int]]] = [
        lambda then: event(then, shown),
        lambda then: (_evening_lost(then, shown), now),
        lambda then: (_hour_more(then, shown), now),
    ]
    last = shown
    for edit in edits:
        book, later = edit(book)
        now, last = max(now, later), shown
        shown = plan(book, now, last=last).plan
    found, _ = engine(book, now, seconds, shown, last)
    return replace(found, contender="edited")


def _evening_lost(book: Book, shown: Plan) -> Book:
    """Return the book without the recurring evening of a work a third through the plan."""
    bench = book.bench_time
    return replace(book, bench_time=replace(bench, skipped=(*bench.skipped, _day(book, shown, 3))))


def _hour_more(book: Book, shown: Plan) -> Book:
    """Return the book with an hour on the morning of a work half through the plan."""
    zone = zone_named(book.bench_time.zone)
    begin = datetime.combine(_day(book, shown, 2), clock_time(7), zone)
    more = Extra(start=begin, end=begin + timedelta(hours=1))
    bench = book.bench_time
    return replace(book, bench_time=replace(bench, extra=(*bench.extra, more)))


def _day(book: Book, shown: Plan, share: int) -> date:
    placed = sorted(one.start for one in shown.placements if not one.logged)
    return moment_of(placed[len(placed) // share], zone_named(book.bench_time.zone)).date()


def _costed(found: Outcome, book: Book, best: Plan) -> None:
    cost, calendar = best.cost, calendar_of(book.bench_time)
    found.evenings, found.setup, found.late = cost.stretches, cost.setup_minutes, cost.late
    fillings = [
        (calendar.stretch_at(work.interval.start), work.airbrush, work.coating)
        for work in best.bench
        if work.kind in (BenchKind.LOAD, BenchKind.CHANGE)
    ]
    found.refills = len(fillings) - len(set(fillings))


def instant(book: Book, now: int, first: Plan) -> Outcome:
    """Return what the instant plan is, whose milliseconds are measured apart."""
    found = Outcome("instant", [(0.0, *_measured(first, _ends(book, first, now), now))])
    _costed(found, book, first)
    return found


def last_evening(book: Book, plan: Plan, now: int) -> int:
    """Return the number of the last evening that a plan uses."""
    return _measured(plan, _ends(book, plan, now), now)[0]


def starts_of(book: Book, plan: Plan) -> Starts:
    """Return the starts of a batch's plan by (vehicle, number in its chain)."""
    spots = {
        (model.name, step.id): (number, at)
        for number, model in enumerate(book.projects[0].models)
        for at, step in enumerate(model.steps)
    }
    return {
        spots[placement.key.model, placement.key.step]: placement.start
        for placement in plan.placements
    }


def _ends(book: Book, plan: Plan, now: int) -> list[int]:
    far = max(placed.end for placed in plan.placements) + 60 * 1440
    return [stretch.interval.end for stretch in calendar_of(book.bench_time).stretches(now, far)]


def _measured(plan: Plan, evenings: list[int], now: int) -> tuple[int, int]:
    """Return the last evening used, and the end of the last pass counted from ``now``."""
    end = max(placed.end for placed in plan.placements)
    return bisect_right(evenings, end - 1), end - now


def _proven(plan: Plan, evenings: list[int], now: int) -> int | None:
    """Return the first evening in which all can be done, as far as that is proven.

    The finish counts drying after the last pass.  In the families that is
    over within six hours and never reaches another evening; where it takes
    days, as in the demos, or two evenings are that close, a finish says
    nothing of evenings.
    """
    finish = next((bound.value for bound in plan.bounds if bound.level == "finish"), None)
    drying = plan.cost.finish - (max(placement.end for placement in plan.placements) - now)
    closest = min((later - earlier for earlier, later in pairwise(evenings)), default=0)
    if finish is None or drying > min(SHORT, closest):
        return None
    return bisect_right(evenings, now + finish - drying - 1)


# -- the others -------------------------------------------------------------------------------


def plain(batch: Batch, now: int) -> Outcome:
    """Return what the frozen plain rule makes of a batch."""
    began = time.perf_counter()
    found = plain_greedy(batch)
    spent = time.perf_counter() - began
    assert not broken(batch, found.starts)
    finish = finish_of(batch, found.starts)
    return replace(_told("plain", batch, found.starts, now, [(spent, finish)]), setup=found.setup)


class _Course(cp_model.CpSolverSolutionCallback):
    """Notes when each better schedule came."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[tuple[float, int]] = []
        self.began = time.monotonic()

    def on_solution_callback(self) -> None:
        """Note the seconds and the makespan."""
        self.found.append((time.monotonic() - self.began, round(self.objective_value)))


def direct(batch: Batch, now: int, seconds: float) -> Outcome:
    """Return what the frozen direct model finds; its solver is only looked at while it works."""
    notes = _Course()
    solvers: list[cp_model.CpSolver] = []
    status: list[Any] = []

    class Watched(cp_model.CpSolver):
        def solve(self, model: Any, callback: Any = None) -> Any:
            solvers.append(self)
            notes.began = time.monotonic()
            status.append(super().solve(model, callback or notes))
            return status[-1]

    usual = frozen_direct.cp_model
    frozen_direct.cp_model = SimpleNamespace(  # type: ignore[assignment]
        CpModel=cp_model.CpModel,
        CpSolver=Watched,
        OPTIMAL=cp_model.OPTIMAL,
        FEASIBLE=cp_model.FEASIBLE,
    )
    try:
        found = frozen_direct.direct(batch, seconds, WORKERS)
    finally:
        frozen_direct.cp_model = usual
    if found is None:
        return Outcome("direct")
    outcome = _told("direct", batch, found.starts, now, notes.found)
    _bounded(outcome, batch, solvers[0].best_objective_bound)
    if status[0] == cp_model.OPTIMAL:
        outcome.proof = outcome.optimal = solvers[0].wall_time
    wrong = broken(batch, found.starts)
    outcome.note = f"breaks the bare problem: {wrong[0]}" if wrong else ""
    return outcome


def library(batch: Batch, now: int, seconds: float) -> Outcome:
    """Return what the general-purpose library finds; only its last schedule is known."""
    stated = Stated(batch)
    result = stated.model.solve(time_limit=seconds, num_workers=WORKERS, display=False)
    if result.status.value not in ("Optimal", "Feasible"):
        return Outcome("library")
    starts = stated.starts(result)
    outcome = _told("library", batch, starts, now, [(result.runtime, finish_of(batch, starts))])
    _bounded(outcome, batch, stated.zero + result.lower_bound)
    if result.status.value == "Optimal":
        outcome.proof = outcome.optimal = result.runtime
    wrong = broken(batch, starts, set_ups=False)
    lacking = len(broken(batch, starts)) - len(wrong)
    outcome.note = (
        f"breaks the bare problem: {wrong[0]}" if wrong else f"{lacking} set-ups have no time"
    )
    return outcome


def _told(
    name: str, batch: Batch, starts: Starts, now: int, course: list[tuple[float, int]]
) -> Outcome:
    ends = [end for _, end in batch.evenings]
    return Outcome(
        name,
        [(spent, bisect_right(ends, finish - 1), finish - now) for spent, finish in course],
        evenings=len(by_evening(batch, starts)),
        setup=set_up_minutes(batch, starts),
    )


def _bounded(outcome: Outcome, batch: Batch, finish: float) -> None:
    ends = [end for _, end in batch.evenings]
    outcome.bound = bisect_right(ends, round(finish) - 1)


def bare(book: Book, now: int, last: int) -> tuple[Batch, Batch]:
    """Return the bare problem with plenty of evenings, and with few after ``last``."""
    whole = batch_of(book, now, last + 30)
    return whole, replace(whole, evenings=whole.evenings[: last + SPARE])
