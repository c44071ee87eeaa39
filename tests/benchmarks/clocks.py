"""Clocks that stand wrong, zones, leap days and nights of clock changes, over logged evenings.

``python tests/benchmarks/clocks.py [--seeds 1-40] [--minutes M]``

A seed lays a demonstration on a date: any, about a leap day, or about a night in which the
clocks of its zone change, with sessions that run through it.  A few evenings are begun, done,
split, looked at and closed with every answer, by a clock that is set back, forward or to another
zone in between, or sleeps over what would have closed.  At each instant there must be a plan
that the judge accepts, what is wrong with the clock must be said, and what was refused must be
refused in one line.
"""

from __future__ import annotations

import argparse
import random
import sys
import time
from collections import Counter
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from app.service import clock, closing_evening, demos, logbook
from app.service.closing_evening import ClosingAnswers, Feel, WorkState
from app.service.planning import Planned, plan
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.present import present
from planner.values.refusal import Refused
from storage.exchange import Exchange, dump, load

ZONES = ("Europe/Vienna", "America/St_Johns", "Australia/Lord_Howe", "Africa/Casablanca",
         "America/Santiago", "Asia/Kathmandu", "Pacific/Apia", "UTC")  # fmt: skip
DAYS = (
    *(date(2028, 2, 28), date(2028, 2, 29), date(2032, 2, 29)),
    *(date(2031, 3, 29), date(2031, 3, 30), date(2031, 10, 25), date(2031, 10, 26)),  # Europe
    *(date(2031, 3, 8), date(2031, 11, 1), date(2031, 4, 5), date(2031, 10, 4)),  # elsewhere
    *(date(2030, 12, 31), date(2099, 12, 30)),
)
SPANS = (("19:30", "22:00"), ("21:00", "04:30"), ("00:30", "03:45"), ("02:00", "03:00"))


def laid_out(drawn: random.Random) -> tuple[Book, int]:
    """Return a demonstration in a zone and on a day, and when its first session may begin."""
    book = demos.read(drawn.choice(demos.names())).book
    zone, day = drawn.choice(ZONES), drawn.choice(DAYS)
    span = drawn.choice(SPANS)
    nightly = Recurring(rule="FREQ=DAILY", since=day, start=span[0], end=span[1])
    time_ = replace(book.bench_time, zone=zone, stretches=(nightly,), skipped=(), extra=())
    time_ = replace(time_, quiet=time_.quiet if drawn.random() < 0.5 else ())
    projects = tuple(
        replace(one, target=None, begins=None, pins=(), log=(), observed=(), diary=())
        for one in book.projects
    )
    room = replace(book.room, readings=())
    book = replace(book, bench_time=time_, projects=projects, room=room)
    at = datetime(day.year, day.month, day.day, 19, 30, tzinfo=ZoneInfo(zone))
    return book, minute_of(at) + drawn.randrange(-600, 600)


def moved(drawn: random.Random, now: int) -> int:
    """Return what the clock shows next."""
    how = drawn.random()
    if how < 0.45:
        return now + drawn.randrange(0, 40)
    if how < 0.6:
        return now + drawn.randrange(300, 2_000)  # slept over what would have closed
    if how < 0.8:
        return now - drawn.choice((1, 2, 7, 47, 60, 1_440, 20_000, 600_000))
    if how < 0.9:
        return now + drawn.choice((60, 1_440, 20_000, 600_000))
    return now


def deed(drawn: random.Random, book: Book, planned: Planned, now: int) -> Book:
    """Do something at the bench by that clock."""
    ahead = [one for one in planned.plan.placements if not one.logged]
    behind = [one for one in planned.plan.placements if one.logged]
    key: PassKey | None = min(ahead, key=lambda one: one.start).key if ahead else None
    if behind and drawn.random() < 0.2:
        key = drawn.choice(behind).key
    if key is None:
        return book
    how = drawn.randrange(6)
    if how == 0:
        return logbook.begin(book, key, now).book
    if how < 3:
        return logbook.finish(book, key, now, drawn.choice((None, 1, 30, 200))).book
    if how == 3:
        zone = drawn.choice(ZONES)
        return replace(book, bench_time=replace(book.bench_time, zone=zone))
    answers = ClosingAnswers(
        work={key: drawn.choice(tuple(WorkState))},
        cleaned=tuple(one.name for one in book.gear.airbrushes if drawn.random() < 0.5),
        feels={one.key: drawn.choice(tuple(Feel)) for one in behind if drawn.random() < 0.3},
    )
    return closing_evening.closed(book, answers, now, planned.plan).book


def run(seed: int, met: Counter[str]) -> None:
    """Go through some evenings."""
    drawn = random.Random(seed)
    book, now = laid_out(drawn)
    last = None
    for _ in range(14):
        met["instants"] += 1
        here = present(book, now)
        met["planned from the logbook on, and said"] += here != now
        if here != now and clock.behind(book, now) is None:
            met["UNSAID"] += 1
        try:
            planned = plan(book, here, last=last, quick=drawn.random() < 0.3)
        except Refused as problem:
            met[f"no plan: {problem}"[:100]] += 1
            return
        assert planned.verdict.accepted
        last = planned.plan
        told = dump(Exchange(book))
        assert dump(load(told)) == told
        try:
            book = deed(drawn, book, planned, now)
        except Refused as problem:
            met["REFUSED IN LINES" if "\n" in str(problem) else "deeds refused"] += 1
        now = moved(drawn, now)


def main() -> None:
    """Try the seeds and print what was met."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seeds", default="1-40", help="one, or the first and the last")
    parser.add_argument("--minutes", type=float, default=60.0)
    args = parser.parse_args()
    first, _, final = args.seeds.partition("-")
    met: Counter[str] = Counter()
    end = time.monotonic() + 60 * args.minutes
    for seed in range(int(first), int(final or first) + 1):
        if time.monotonic() > end:
            break
        met["seeds"] += 1
        try:
            run(seed, met)
        except Exception as problem:
            met["TRACEBACKS"] += 1
            print(f"  {seed}: {problem!r}"[:300], flush=True)
    for what, times in met.items():
        print(f"{times:>6} {what}")


if __name__ == "__main__":
    main()
