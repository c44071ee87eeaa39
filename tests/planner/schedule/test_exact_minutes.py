"""Every definition at its exact minute, and one minute to either side; judge and heuristic apart.

``minute_cases`` tells each edge once, with how its minute follows.
"""

from __future__ import annotations

from dataclasses import replace

import minute_cases.bench
import minute_cases.gates
import minute_cases.units
import pytest
from judge_cases.making import MONDAY, at
from minute_cases.making import EDGES, Edge, fitted, planned

from planner.schedule.judge import judge
from planner.schedule.partial_schedule import Cup
from planner.values.bench_time import Recurring

every_edge = pytest.mark.parametrize(
    ("definition", "build"),
    [pytest.param(number, build, id=f"{number}-{name}") for number, name, build in EDGES],
)


@every_edge
def test_the_judge_accepts_the_minute_and_one_within(definition, build):
    one: Edge = build()
    for start in (one.at, one.inside):
        assert judge(one.book, planned(one, start)).violations == ()


@every_edge
def test_the_judge_refuses_one_minute_beyond_naming_the_definition(definition, build):
    one: Edge = build()
    assert judge(one.book, planned(one, one.out)).definitions == (one.named or {definition})


@every_edge
def test_the_heuristic_takes_the_minute_and_one_within(definition, build):
    one: Edge = build()
    for start in (one.at, one.inside):
        fit = fitted(one, start)
        assert fit is not None
        assert (fit.start, fit.end) == (start, start + one.minutes)
        assert fit.hands == fit.work == start - one.lead


@every_edge
def test_the_heuristic_does_not_take_one_minute_beyond(definition, build):
    one: Edge = build()
    fit = fitted(one, one.out)
    assert fit is None or (fit.start > one.out and fit.prepare >= 0)


def test_a_coat_waits_until_the_cleaning_of_every_cup_clears_the_quiet_hours():
    """Sprayed at 20:36, both cups are clean at 20:58; quiet hours of 20:50 to 20:55 put it off.

    Up to 20:28 both are clean by 20:50.  To change the other takes six minutes and is no sooner.

    It is loaded from 20:55 on then, and sprayed from 20:58.
    """
    one = minute_cases.bench.both_airbrushes_are_clean_when_the_quiet_hours_begin()
    patient = [replace(each, idle_limit_minutes=240) for each in one.book.gear.airbrushes]
    quiet = Recurring(rule="FREQ=DAILY", since=MONDAY, start="20:50", end="20:55")
    of = replace(
        one.book,
        gear=replace(one.book.gear, airbrushes=tuple(patient)),
        bench_time=replace(one.book.bench_time, quiet=(quiet,)),
    )
    for asked, start in (
        ("20:27", "20:27"),
        ("20:28", "20:28"),
        ("20:32", "20:58"),
        ("20:36", "20:58"),
    ):
        fit = fitted(
            replace(one, book=of, done=(), cups={"fine": Cup("sand", 0, at("20:20"))}), at(asked)
        )
        assert fit is not None
        assert (fit.start, fit.airbrush) == (at(start), "wide")
