"""How fast two thousand runs of a plan are, and what common draws are worth.

    .venv/bin/python tests/benchmarks/chance.py

Prints processor seconds for the twelve vehicles of the club day and for
thirty, beside the same engine with one run after the other; then the spread,
over ten seeds, of the difference between two measures with common draws and
with draws of their own.
"""

from __future__ import annotations

import sys
import time
from dataclasses import replace
from pathlib import Path
from statistics import mean, stdev

sys.path.insert(0, str(Path(__file__).parents[2]))

from app.service import advising, demos, planning
from app.service.measures import MeasureKind
from planner.chance.bench_runs import BenchRuns
from planner.chance.draws import Draws
from planner.chance.odds import odds_of
from planner.chance.script import script_of
from planner.chance.spreads import spreads_of
from planner.values.book import Book

RUNS = 2000
LOOPED = 20  # runs one by one; their time is scaled up to all


def batch(vehicles: int) -> Book:
    """Return the club day with so many vehicles: its own again, under other names."""
    book = demos.read("club_day_batch").book
    project = book.projects[0]
    models = [
        replace(project.models[at % len(project.models)], name=f"vehicle {at + 1}")
        for at in range(vehicles)
    ]
    room = replace(
        book.room,
        locations=tuple(
            replace(one, drying_places=one.drying_places * max(1, vehicles // 12))
            for one in book.room.locations
        ),
    )
    return replace(book, room=room, projects=(replace(project, models=tuple(models)),))


def seconds(book: Book) -> tuple[int, float, float]:
    """Return passes, and processor seconds of all runs at once and one by one."""
    now = demos.first_evening(book)
    plan = planning.plan(book, now, quick=True).plan
    law = spreads_of(book, now)
    begun = time.process_time()
    BenchRuns(script_of(book, plan), Draws(RUNS), law).run()
    together = time.process_time() - begun
    begun = time.process_time()
    for number in range(LOOPED):
        BenchRuns(script_of(book, plan), Draws(1, number), law).run()
    alone = (time.process_time() - begun) / LOOPED * RUNS
    return len(plan.placements), together, alone


def differences() -> None:
    """Print how far the gain of one measure over another scatters over ten seeds."""
    book = demos.read("harbour_tenders").book
    planned = planning.plan(book, demos.first_evening(book))
    adviser = advising.Adviser(book, planned)
    pick = {}
    for measure in advising.measures(book, planned, adviser.odds):
        if measure.kind in (MeasureKind.SESSION, MeasureKind.LONGER):
            pick.setdefault(measure.kind, adviser.tried(measure))
    one, other = (pick[kind] for kind in (MeasureKind.SESSION, MeasureKind.LONGER))
    assert one is not None
    assert other is not None
    law = spreads_of(book, planned.plan.now)

    def share(advice: advising.DateAdvice, seed: int) -> float:
        found = odds_of(advice.book, advice.planned.plan, spreads=law, draws=Draws(RUNS, seed))
        assert found is not None
        return 100 * (found.projects[0].in_time or 0)

    common = [share(one, seed) - share(other, seed) for seed in range(10)]
    own = [share(one, seed) - share(other, 100 + seed) for seed in range(10)]
    for words, values in (("common draws", common), ("own draws", own)):
        print(f"{words}: mean {mean(values):.2f} % points, s.d. {stdev(values):.2f}")


if __name__ == "__main__":
    for vehicles in (12, 30):
        passes, together, alone = seconds(batch(vehicles))
        print(
            f"{vehicles} vehicles, {passes} passes, {RUNS} runs: {together:.2f} s; "
            f"one by one {alone:.0f} s (from {LOOPED})"
        )
    differences()
