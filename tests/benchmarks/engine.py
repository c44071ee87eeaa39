"""The engine on families of batches and on the demos, beside two frozen baselines.

Run ``python tests/benchmarks/engine.py [sizes [seeds [seconds]]]``, for
example ``engine.py 1,4 0-9 10``.  It prints one row a size with medians over
the seeds, and one row a demo.  Evenings are counted from 0; "behind the
bound" is how many evenings the plan ends after what is proven.  The plain
rule and the direct model are never changed (``frozen_*.py``).
"""

from __future__ import annotations

import statistics
import sys
import time
from dataclasses import dataclass, replace
from datetime import timedelta
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE.parents[1]), str(HERE)]

from families import NOW, SIZES, batch  # noqa: E402
from frozen_direct import direct  # noqa: E402
from frozen_greedy import plain_greedy  # noqa: E402
from plain_tasks import batch_of  # noqa: E402

from app.service import demos  # noqa: E402
from app.service.improving import Task, improvements  # noqa: E402
from planner.bench import calendar_of  # noqa: E402
from planner.cure import Cure  # noqa: E402
from planner.schedule.greedy import attempt, plan_book  # noqa: E402
from planner.schedule.judge import judge  # noqa: E402
from planner.schedule.problem import Problem  # noqa: E402
from planner.schedule.rules import RULES  # noqa: E402
from planner.values.book import Book  # noqa: E402
from planner.values.moment import moment_of, zone_named  # noqa: E402
from planner.values.plan import Plan  # noqa: E402
from planner.values.project import Logged  # noqa: E402

SECONDS = {1: 3.0, 4: 60.0, 12: 60.0, 30: 60.0}
WORKERS = 2


@dataclass
class Run:
    """What one book gave: evenings, minutes and seconds."""

    first_ms: float
    again_ms: float
    plain: int
    plain_setup: int
    instant: int
    direct: int | None
    at: dict[int, int]
    bound: dict[int, int]
    setup: int
    proven: float | None


def measured(book: Book, now: int, seconds: float, *, baselines: bool) -> Run:
    """Run the engine, and the baselines, on one book."""
    zone = zone_named(book.bench_time.zone)
    cure, calendar = Cure(book.room, zone), calendar_of(book.bench_time)
    problem = Problem(book, now, cure=cure, calendar=calendar)
    attempt(problem, RULES[0], 0)  # tables of rates are warm in a window, too
    first_ms = _least_ms(lambda: attempt(problem, RULES[0], 0))
    first = plan_book(book, now, cure=cure, calendar=calendar)
    assert judge(book, first).accepted
    again_ms = _replanned(book, first, cure)
    greedy_last = _last(first, calendar, now)
    at, bound, proven, best = {}, {}, None, first
    began = time.monotonic()
    marks = [mark for mark in (1, 3, 10, 20, 30, 60) if mark <= seconds]
    for one in improvements(Task(book, first), seconds):
        spent = time.monotonic() - began
        best = one.plan
        last, least = _last(best, calendar, now), _proven(best, calendar, now)
        if proven is None and last <= least:
            proven = spent
        for mark in marks:
            if spent <= mark:
                at[mark], bound[mark] = last, least
    for mark in marks:
        at.setdefault(mark, greedy_last)
        bound.setdefault(mark, _proven(first, calendar, now))
    plain, other = None, None
    if baselines:
        bare = batch_of(book, now, greedy_last + 30)
        plain = plain_greedy(bare)
        other = direct(replace(bare, evenings=bare.evenings[: greedy_last + 6]), 30, WORKERS)
    return Run(
        first_ms,
        again_ms,
        plain.last if plain else 0,
        plain.setup if plain else 0,
        greedy_last,
        other.last if other else None,
        at,
        bound,
        best.cost.setup_minutes,
        proven,
    )


def _least_ms(act: object) -> float:
    times = []
    for _ in range(5):
        began = time.perf_counter()
        act()  # type: ignore[operator]
        times.append(time.perf_counter() - began)
    return 1000 * statistics.median(times)


def _replanned(book: Book, plan: Plan, cure: Cure) -> float:
    """Return the milliseconds from one logged event to the first answer."""
    placed = plan.placements[0]
    zone = zone_named(book.bench_time.zone)
    start = moment_of(placed.start, zone)
    fact = Logged(
        model=placed.key.model,
        step=placed.key.step,
        coat=placed.key.coat,
        start=start,
        end=start + timedelta(minutes=placed.end - placed.start + 4),
    )
    projects = [
        replace(one, log=(*one.log, fact)) if one.name == placed.key.project else one
        for one in book.projects
    ]
    logged = replace(book, projects=tuple(projects))
    began = time.perf_counter()
    plan_book(
        logged,
        placed.end + 5,
        cure=cure,
        calendar=calendar_of(book.bench_time),
        rules=RULES[:1],
        last=plan,
    )
    return 1000 * (time.perf_counter() - began)


def _last(plan: Plan, calendar: object, now: int) -> int:
    end = max(placed.end for placed in plan.placements)
    return len(calendar.stretches(now, end)) - 1  # type: ignore[attr-defined]


def _proven(plan: Plan, calendar: object, now: int) -> int:
    finish = next((one.value for one in plan.bounds if one.level == "finish"), 0)
    return max(0, len(calendar.stretches(now, now + max(1, finish))) - 1)  # type: ignore[attr-defined]


def _row(name: str, runs: list[Run]) -> str:
    def middle(values: list[float]) -> str:
        return f"{statistics.median(values):.0f}" if values else "-"

    cells = [
        name,
        middle([run.first_ms for run in runs]),
        middle([run.again_ms for run in runs]),
        middle([run.plain for run in runs]),
        middle([run.instant for run in runs]),
        middle([run.direct for run in runs if run.direct is not None])
        + f" ({sum(run.direct is None for run in runs)} none)",
    ]
    for mark in (10, 20, 60):
        known = [run for run in runs if mark in run.at]
        behind = [run.at[mark] - run.bound[max(run.bound)] for run in known]
        cells.append(f"{middle([r.at[mark] for r in known])} (+{middle(behind)})" if known else "-")
    on = sum(run.at[max(run.at)] <= run.bound[max(run.bound)] for run in runs if run.at)
    ahead = [
        run.direct - run.at.get(30, run.at[max(run.at)]) for run in runs if run.direct is not None
    ]
    shares = [run.setup / run.plain_setup for run in runs if run.plain_setup]
    cells += [
        f"{on}/{len(runs)}",
        f"{middle([run.proven for run in runs if run.proven is not None])} s"
        f" ({sum(run.proven is not None and run.proven <= 10 for run in runs)} in 10 s)",
        f"{min(ahead, default=0)}..{max(ahead, default=0)}",
        f"{100 * statistics.median(shares):.0f} %" if shares else "-",
    ]
    return " | ".join(cells)


HEAD = (
    "batch | first plan ms | re-plan ms | plain rule | instant | direct 30 s | at 10 s (behind) | "
    "at 20 s | at 60 s | on its bound | proven | ahead of direct | set-up of plain rule's"
)


def main() -> None:
    """Print the table."""
    sizes = [int(n) for n in sys.argv[1].split(",")] if len(sys.argv) > 1 else list(SIZES)
    low, _, high = (sys.argv[2] if len(sys.argv) > 2 else "0-9").partition("-")
    seeds = range(int(low), int(high or low) + 1)
    print(HEAD)
    for size in sizes:
        seconds = float(sys.argv[3]) if len(sys.argv) > 3 else SECONDS[size]
        runs = [measured(batch(size, seed), NOW, seconds, baselines=True) for seed in seeds]
        print(_row(f"{size} vehicles, {20 * size} steps", runs), flush=True)
    if len(sys.argv) <= 1:
        for name in demos.names():
            book = demos.read(name).book
            run = measured(book, demos.first_evening(book), 20, baselines=False)
            print(_row(name, [run]), flush=True)


if __name__ == "__main__":
    main()
