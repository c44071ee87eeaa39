"""What few runs may decide: bounds by hand, and the same answer as all runs give."""

from __future__ import annotations

from math import sqrt

import numpy as np
import pytest

from app.service import demos, few_runs, planning
from app.service.advising import Adviser
from app.service.surer_plans import surer_plans
from planner.chance.odds import FinishOdds, Odds, odds_of
from planner.values.moment import FOREVER

DAY = 1440


def odds(days: list[float], made: list[bool]) -> Odds:
    """Return odds of one project whose runs end after these days."""
    ends = np.array([FOREVER if day < 0 else int(day * DAY) for day in days])
    share = float(np.mean(made))
    one = FinishOdds("p", "", None, 0, share, np.sort(ends), ends, np.array(made))
    return Odds(0, len(days), one, (one,), (), None, (), ())


def test_the_most_days_are_the_mean_and_its_errors_of_pairs() -> None:
    """Every second run gains a day: mean 1/2, s.d. sqrt(n / (n - 1)) / 2, by hand."""
    before = odds([10.0] * 200, [False] * 200)
    after = odds([10.0, 9.0] * 50, [False] * 100)
    error = few_runs.SIGMAS * sqrt(100 / 99) / 2 / sqrt(100)
    assert few_runs.most(before, after).days == pytest.approx(0.5 + error)


def test_where_no_run_changes_three_in_n_may() -> None:
    before = odds([10.0] * 400, [True, False] * 200)
    after = odds([10.0] * 100, [True, False] * 50)
    bought = few_runs.most(before, after)
    assert bought.days == 0
    assert bought.chance == pytest.approx(3 / 100)


def test_what_never_ends_counts_as_the_last_that_does() -> None:
    before = odds([10.0, -1.0] * 100, [True] * 200)
    after = odds([10.0] * 100, [True] * 100)
    assert few_runs.most(before, after).days == 0


def test_a_share_is_decided_beyond_its_errors() -> None:
    """The s.d. of a share of 0.8 in 400 runs is 0.02, by hand."""
    far = few_runs.SIGMAS * 0.02
    assert few_runs.decided(0.8 - far - 0.001, 400, 0.8)
    assert few_runs.decided(0.8 + far + 0.001, 400, 0.8)
    assert not few_runs.decided(0.8 - far + 0.001, 400, 0.8)


@pytest.fixture(scope="module")
def advisers() -> tuple[Adviser, Adviser]:
    """Return one that looks at few runs first, and one that does not."""
    book = demos.read("lone_lamplighter").book
    planned = planning.plan(book, demos.first_evening(book))
    first, all_ = (Adviser(book, planned, runs=500) for _ in range(2))
    assert first.few
    all_.few = {}
    return first, all_


def test_few_runs_are_the_first_of_the_many(advisers) -> None:
    adviser = advisers[0]
    for count, draws in adviser.few.items():
        found = odds_of(adviser.book, adviser.planned.plan, spreads=adviser.spreads, draws=draws)
        assert found is not None
        assert (found.together.by_run == adviser.odds.together.by_run[:count]).all()
        assert (found.projects[0].made == adviser.odds.projects[0].made[:count]).all()


def test_the_answers_are_those_of_all_runs(advisers) -> None:
    first, all_ = advisers
    name = first.book.projects[0].name
    assert first.latest_start(name) == all_.latest_start(name)
    told = [[(one.days, one.chance) for one in surer_plans(adviser)] for adviser in advisers]
    assert told[0] == told[1]
