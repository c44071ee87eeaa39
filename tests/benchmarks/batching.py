"""What sharing evenings between the vehicles of a batch saves.

Plans a project twice in one run: all vehicles together, and one vehicle
after the other, the next begun when the last stroke of the one before is
done.  Both plans pass the judge.  Run it as
``python tests/benchmarks/batching.py [demo name]``.
"""

from __future__ import annotations

import sys
from collections import Counter
from dataclasses import replace
from datetime import datetime, time
from pathlib import Path

from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.moment import minute_of, zone_named
from planner.values.plan import BenchKind, Plan
from storage.exchange import load

DEMOS = Path(__file__).parents[2] / "demo_projects"


def first_minute(book: Book) -> int:
    """Return local noon of the day on which the first evening rule begins."""
    since = min(rule.since for rule in book.bench_time.stretches)
    zone = zone_named(book.bench_time.zone)
    return minute_of(datetime.combine(since, time(12), zone))


def judged(book: Book, now: int) -> Plan:
    """Return the plan of ``book``; an unsound one ends the benchmark."""
    plan = plan_book(book, now)
    verdict = judge(book, plan)
    if not verdict.accepted or plan.unplaced:
        sys.exit(f"no sound plan: {verdict.violations[:1]} {plan.unplaced[:1]}")
    return plan


def one_after_the_other(book: Book, now: int) -> list[Plan]:
    """Return a plan for each model alone, begun when the one before is done."""
    plans = []
    for project in book.projects:
        for model in project.models:
            alone = replace(project, models=(model,), pins=(), log=())
            plans.append(judged(replace(book, projects=(alone,)), now))
            now = max(placed.end for placed in plans[-1].placements)
    return plans


def figures(plans: list[Plan], now: int) -> dict[str, int]:
    """Return counts of set-up work, its minutes, and the days until the finish."""
    work = [one for plan in plans for one in plan.bench if one.kind is not BenchKind.PREPARE]
    kinds = Counter(one.kind for one in work)
    finish = max(minute for plan in plans for _, minute in plan.finishes)
    return {
        "loads": kinds[BenchKind.LOAD],
        "changes": kinds[BenchKind.CHANGE],
        "cleanings": kinds[BenchKind.CLEAN],
        "set-up minutes": sum(one.interval.minutes for one in work),
        "days to finish": round((finish - now) / 1440),
    }


def main() -> None:
    """Print the table."""
    name = sys.argv[1] if len(sys.argv) > 1 else "club_day_batch"
    book = load((DEMOS / f"{name}.json").read_bytes()).book
    now = first_minute(book)
    together = figures([judged(book, now)], now)
    apart = figures(one_after_the_other(book, now), now)
    print(f"{name}: {sum(len(p.models) for p in book.projects)} models")
    print(f"{'':16}{'together':>10}{'in turn':>10}{'ratio':>8}")
    for row, value in together.items():
        ratio = value / apart[row] if apart[row] else 1.0
        print(f"{row:16}{value:>10}{apart[row]:>10}{ratio:>8.2f}")


if __name__ == "__main__":
    main()
