"""The engine's plain face against published instances, and against trying every schedule."""

from __future__ import annotations

from collections import Counter
from itertools import product

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from published_instances import PUBLISHED

from planner.schedule.optimise.master import WorkBudget
from planner.schedule.optimise.resource_constrained import (
    PlainProblem,
    TimeLag,
    broken,
    first_schedule,
    least_makespan,
)
from planner.values.plan import Status
from planner.values.refusal import Refused

SETTLED = [name for name, one in PUBLISHED.items() if one.high is not None]
WITHOUT_SCHEDULE = [name for name, one in PUBLISHED.items() if one.high is None]


def sound(problem: PlainProblem, starts: tuple[int, ...]) -> bool:
    """Tell whether a schedule holds, each minute of each resource counted on its own."""
    used: Counter[tuple[int, int]] = Counter()
    for start, duration, own in zip(starts, problem.durations, problem.demands, strict=True):
        for minute in range(start, start + duration):
            for resource, amount in enumerate(own):
                used[resource, minute] += amount
    return (
        min(starts) >= 0
        and all(starts[lag.after] - starts[lag.before] >= lag.least for lag in problem.lags)
        and all(amount <= problem.capacities[resource] for (resource, _), amount in used.items())
    )


def makespan(problem: PlainProblem, starts: tuple[int, ...]) -> int:
    """Return when the last activity ends."""
    return max(start + length for start, length in zip(starts, problem.durations, strict=True))


# -- published instances ----------------------------------------------------------------------


@pytest.mark.parametrize("name", SETTLED)
def test_the_published_makespan_is_found_and_proven(name):
    published = PUBLISHED[name]
    found = least_makespan(published.problem, WorkBudget(20))
    assert found.status is Status.OPTIMAL
    assert published.low <= found.makespan <= published.high
    assert found.bound == found.makespan
    assert sound(published.problem, found.starts)
    assert makespan(published.problem, found.starts) == found.makespan
    assert broken(published.problem, found.starts) == []


@pytest.mark.parametrize("name", WITHOUT_SCHEDULE)
def test_what_has_no_schedule_is_told(name):
    found = least_makespan(PUBLISHED[name].problem, WorkBudget(20))
    assert found.status is Status.INFEASIBLE
    assert found.starts == ()


@pytest.mark.parametrize("name", WITHOUT_SCHEDULE)
def test_it_has_one_once_nothing_need_follow_soon(name):
    """Least lags and resources alone always leave a schedule: one thing after the other."""
    old = PUBLISHED[name].problem
    lags = tuple(lag for lag in old.lags if lag.least >= 0)
    eased = PlainProblem(old.durations, old.demands, old.capacities, lags)
    found = least_makespan(eased, WorkBudget(20))
    assert found.status is Status.OPTIMAL
    assert sound(eased, found.starts)


@pytest.mark.parametrize("name", [*SETTLED[:5], "ubo50 psp89"])
def test_the_first_schedule_holds_where_there_is_one(name):
    published = PUBLISHED[name]
    starts = first_schedule(published.problem)
    if name == "ubo50 psp89":
        assert any(lag.least < 0 for lag in published.problem.lags)
        assert starts is None
    else:
        assert starts is not None
        assert sound(published.problem, starts)
        assert makespan(published.problem, starts) >= published.low


def test_the_same_work_gives_the_same_schedule():
    problem = PUBLISHED["j303_9"].problem
    assert least_makespan(problem, WorkBudget(20)) == least_makespan(problem, WorkBudget(20))


def test_too_little_work_proves_nothing():
    problem = PUBLISHED["j30 psp149"].problem
    found = least_makespan(problem, WorkBudget(0))
    assert found.status is Status.INCOMPLETE
    assert found.starts == ()
    assert 0 <= found.bound <= 105


# -- every schedule tried ---------------------------------------------------------------------

MOST = 11  # starts tried: all activities and lags one after the other take 3 × 2 + 2 × 2 = 10


@st.composite
def problems(draw: st.DrawFn) -> PlainProblem:
    """Draw three activities on two resources, and up to two lags either way."""
    durations = draw(st.tuples(*[st.integers(0, 2)] * 3))
    capacities = draw(st.tuples(st.integers(1, 2), st.integers(0, 3)))
    demands = draw(st.tuples(*[st.tuples(*[st.integers(0, 2)] * 2)] * 3))
    ends = st.permutations(range(3)).map(lambda order: order[:2])
    lag = st.builds(lambda pair, least: TimeLag(*pair, least), ends, st.integers(-3, 2))
    return PlainProblem(durations, demands, capacities, tuple(draw(st.lists(lag, max_size=2))))


@drawn(30)
@given(problem=problems())
def test_no_schedule_of_all_is_shorter(problem):
    every = [starts for starts in product(range(MOST), repeat=3) if sound(problem, starts)]
    found = least_makespan(problem, WorkBudget(5))
    if not every:
        assert found.status is Status.INFEASIBLE
        return
    assert found.status is Status.OPTIMAL
    assert found.makespan == min(makespan(problem, starts) for starts in every)
    assert sound(problem, found.starts)
    first = first_schedule(problem)
    if first is not None:
        assert sound(problem, first)


@drawn(60)
@given(problem=problems(), starts=st.tuples(*[st.integers(-1, 6)] * 3))
def test_broken_tells_exactly_the_schedules_that_do_not_hold(problem, starts):
    assert (broken(problem, starts) == []) == sound(problem, starts)


# -- by hand ----------------------------------------------------------------------------------


def test_broken_names_what_is_wrong():
    """Two at once on one machine, and the second starts 1 after the first, not 3."""
    problem = PlainProblem((3, 2), ((1,), (1,)), (1,), (TimeLag(0, 1, 3),))
    assert broken(problem, (0, 3)) == []
    lag, machine = broken(problem, (0, 1))
    assert "activity 1 starts 1" in lag
    assert "2 of 1 of resource 0" in machine


def test_a_greatest_lag_makes_another_wait():
    """One machine: 4 alone, then 2, whose successor of 3 may start at most 2 after it.

    In the order 4, 2, 3 all end at 9; the order 2, 4, 3 would break the lag,
    as would nothing else; so 9 it is, and the 2 does not go between.
    """
    problem = PlainProblem((4, 2, 3), ((1,),) * 3, (1,), (TimeLag(1, 2, 2), TimeLag(2, 1, -2)))
    found = least_makespan(problem, WorkBudget(5))
    assert found.makespan == 9
    assert found.starts[2] == found.starts[1] + 2


@pytest.mark.parametrize("duration", [1, 5])
def test_what_asks_more_than_there_is_has_no_schedule(duration):
    problem = PlainProblem((duration,), ((2,),), (1,), ())
    assert first_schedule(problem) is None
    assert least_makespan(problem, WorkBudget(5)).status is Status.INFEASIBLE


def test_what_waits_for_itself_has_no_schedule():
    problem = PlainProblem((1, 1), ((0,), (0,)), (1,), (TimeLag(0, 1, 1), TimeLag(1, 0, 1)))
    assert first_schedule(problem) is None
    assert least_makespan(problem, WorkBudget(5)).status is Status.INFEASIBLE


@pytest.mark.parametrize(
    ("place", "values"),
    [
        ("demands", ((1, 1), ((1,),), (1,), ())),
        ("demands[1]", ((1, 1), ((1,), (1, 1)), (1,), ())),
        ("lags[0].before", ((1, 1), ((1,), (1,)), (1,), (TimeLag(2, 0, 1),))),
        ("lags[0].after", ((1, 1), ((1,), (1,)), (1,), (TimeLag(0, -1, 1),))),
        ("durations[1]", ((1, -1), ((1,), (1,)), (1,), ())),
        ("demands[0]", ((1, 1), ((-1,), (1,)), (1,), ())),
        ("capacities[0]", ((1,), ((1,),), (-1,), ())),
    ],
)
def test_bad_input_is_refused_where_it_is_wrong(place, values):
    with pytest.raises(Refused) as refused:
        PlainProblem(*values)
    assert refused.value.place == place
