"""Plans that were shown come back as they were; evenings that were promised, too."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from dataclasses import replace
from pathlib import Path

from small_book import NOW, key, small_book

from planner.schedule.greedy import plan_book
from planner.values.message import message
from planner.values.moment import Interval
from planner.values.plan import Plan, Unplaced
from storage.bench_book import BenchBook
from storage.shown_plans import MOST

LOST = Unplaced(key("prime"), message("needs {n} min", n=5))


def shown(digest: str) -> Plan:
    return replace(plan_book(small_book(), NOW), digest=digest)


def test_a_plan_comes_back_to_the_minute_after_the_book_was_closed(tmp_path: Path) -> None:
    plan = replace(shown("one"), unplaced=(LOST,))
    with BenchBook.create(tmp_path / "bench", small_book()) as bench:
        revision = bench.revision
        bench.plans.keep(plan)
        assert bench.revision == revision
        assert len(bench.journal()) == 1
    with BenchBook.open(tmp_path / "bench") as bench:
        assert bench.plans.all() == (plan,)


def test_one_plan_is_kept_for_a_book_and_the_newest_fifty_in_all(tmp_path: Path) -> None:
    with BenchBook.create(tmp_path / "bench", small_book()) as bench:
        for number in range(MOST + 3):
            bench.plans.keep(shown(f"book {number}"))
        bench.plans.keep(replace(shown("book 10"), now=NOW + 1))
        kept = bench.plans.all()
    assert len(kept) == MOST
    assert (kept[0].digest, kept[-1].digest, kept[-1].now) == ("book 3", "book 10", NOW + 1)


def test_what_another_version_wrote_is_left_out(tmp_path: Path) -> None:
    path = tmp_path / "bench"
    with BenchBook.create(path, small_book()) as bench:
        bench.plans.keep(shown("one"))
        bench.plans.keep(shown("two"))
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("UPDATE shown_plan SET plan = x'00' WHERE digest = 'one'")
        raw.commit()
    with BenchBook.open(path) as bench:
        assert [plan.digest for plan in bench.plans.all()] == ["two"]


def test_a_calendar_takes_the_place_of_the_one_before_and_a_sheet_adds(tmp_path: Path) -> None:
    evenings = [Interval(1000 * n, 1000 * n + 150) for n in range(1, 6)]
    with BenchBook.create(tmp_path / "bench", small_book()) as bench:
        plans = bench.plans
        plans.promise("calendar", evenings[:3], 0)
        plans.promise("sheet", evenings[3:4], 0)
        assert plans.promised() == tuple(evenings[:4])
        plans.promise("calendar", evenings[1:2], 0)
        plans.promise("sheet", evenings[3:4], 0)
        assert plans.promised() == (evenings[1], evenings[3])
        plans.promise("sheet", evenings[4:], evenings[2].start)  # what is past goes
        assert plans.promised() == tuple(evenings[3:])
