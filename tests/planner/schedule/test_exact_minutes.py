"""Every definition at its exact minute, and one minute to either side; judge and heuristic apart.

``minute_cases`` tells each edge once, with how its minute follows.
"""

from __future__ import annotations

import minute_cases.bench
import minute_cases.gates
import minute_cases.units  # noqa: F401 - importing registers the edges
import pytest
from minute_cases.making import EDGES, Edge, fitted, planned

from planner.schedule.judge import judge

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
    assert fit is None or fit.start > one.out
