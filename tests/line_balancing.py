"""Assembly lines as bench books: a published problem that planning evenings contains.

Simple assembly line balancing of type 1 gives tasks with minutes and an order
of precedence to as few stations as it can, none with more minutes than the
cycle time.  A station is an evening of so many minutes, one a day; a task is
a step of hand work without film on a place of its own; what must come before
is `Step.after`.  The number of evenings until the last one used is the number
of stations.

The graphs in ``line_balancing.json`` and the least numbers of stations for
many cycle times are those of A. Scholl (1993), "Data of assembly line
balancing problems", Schriften zur Quantitativen Betriebswirtschaftslehre
16/93, TU Darmstadt, who collected them from the literature since 1955.  Three
graphs whose tasks last longer than a day are left out.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import UTC, date, datetime
from functools import cache
from pathlib import Path

from planner.bench import calendar_of
from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.gear import Airbrush, Gear
from planner.values.model import Model, Part, Place
from planner.values.moment import minute_of
from planner.values.plan import Plan
from planner.values.project import Project
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Minutes, Stage, Step

NOW = minute_of(datetime(2031, 3, 2, 12, 0, tzinfo=UTC))  # the noon before the first evening
LONGEST = 1380  # minutes of an evening that a clock can say without touching the next


@dataclass(frozen=True)
class AssemblyLine:
    """Minutes of the tasks, pairs (earlier, later) counted from 1, and (cycle time, stations)."""

    name: str
    minutes: tuple[int, ...]
    before: tuple[tuple[int, int], ...]
    optima: tuple[tuple[int, int], ...]


@cache
def published() -> dict[str, AssemblyLine]:
    """Return the published lines by name."""
    text = Path(__file__).with_name("line_balancing.json").read_text(encoding="utf-8")
    return {
        name: AssemblyLine(
            name,
            tuple(line["minutes"]),
            tuple((earlier, later) for earlier, later in line["before"]),
            tuple((cycle, stations) for cycle, stations in line["optima"] if cycle <= LONGEST),
        )
        for name, line in json.loads(text).items()
    }


def as_book(line: AssemblyLine, cycle: int) -> Book:
    """Return the book whose evenings are the stations of a line."""
    earlier: dict[int, list[str]] = {}
    for before, after in line.before:
        earlier.setdefault(after, []).append(f"task-{before}")
    count = len(line.minutes)
    steps = tuple(
        Step(
            id=f"task-{number}",
            stage=Stage.CLEAN,
            touches=(f"line/{number}",),
            minutes=Minutes(fixed=line.minutes[number - 1]),
            after=tuple(earlier.get(number, ())),
        )
        for number in _in_order(line)
    )
    places = tuple(Place(name=str(number), area_cm2=1) for number in range(1, count + 1))
    part = Part(name="line", places=places, holder="stand")
    hours, minutes = divmod(cycle, 60)
    evening = Recurring(
        rule="FREQ=DAILY", since=date(2031, 3, 3), start="00:00", end=f"{hours:02d}:{minutes:02d}"
    )
    air = AirPoint(at="00:00", temperature_c=23, humidity_pct=50)
    return Book(
        room=Room(locations=(Location(name="bench", drying_places=1, workdays=(air,)),)),
        bench_time=BenchTime(zone="UTC", stretches=(evening,)),
        gear=Gear(airbrushes=(Airbrush(name="unused"),)),
        projects=(Project(name="line", models=(Model(name="line", parts=(part,), steps=steps),)),),
    )


def _in_order(line: AssemblyLine) -> list[int]:
    """Return the tasks such that each comes after those that it waits for, by number else."""
    left = set(range(1, len(line.minutes) + 1))
    order: list[int] = []
    while left:
        waiting = {later for earlier, later in line.before if earlier in left}
        ready = min(left - waiting)
        order.append(ready)
        left.remove(ready)
    return order


def stations(book: Book, minute: int) -> int:
    """Return how many evenings have begun before a minute."""
    return len(calendar_of(book.bench_time).stretches(NOW, minute))


def used(book: Book, plan: Plan) -> int:
    """Return the number of evenings until the last one that a plan uses."""
    assert not plan.unplaced
    return stations(book, max(placed.end for placed in plan.placements))


def bound(book: Book, plan: Plan) -> int:
    """Return the number of evenings that a plan is proven to need at least."""
    least = next((one.value for one in plan.bounds if one.level == "finish"), 0)
    return stations(book, NOW + least)
