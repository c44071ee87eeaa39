"""Dates that were said, held against what came."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from math import sqrt

import pytest

from app.service import demos
from planner.chance.scoring import (
    Forecast,
    ForecastScore,
    deviation,
    finished,
    learned_scale,
    pinball,
    scores,
)
from planner.passes import expand
from planner.values.book import Book
from planner.values.moment import minute_of
from planner.values.project import Logged

BEGUN = datetime(2031, 3, 1, 19, tzinfo=UTC)
MADE = minute_of(BEGUN) - 1440


def done(count: int | None = None) -> Book:
    """Return the smallest demonstration with so many of its passes logged, one an hour."""
    book = demos.read("lone_lamplighter").book
    project = book.projects[0]
    passes = [one.key for model in project.models for one in expand(project, model)]
    log = []
    for number, key in enumerate(passes[:count]):
        at = BEGUN + timedelta(hours=number)
        log.append(
            Logged(
                model=key.model,
                step=key.step,
                coat=key.coat,
                start=at,
                end=at + timedelta(minutes=20),
            )
        )
    return replace(book, projects=(replace(project, log=tuple(log)),))


def forecast(half: int, most: int, nearly: int, made: int = MADE) -> Forecast:
    return Forecast("Lone lamplighter", made, half, most, nearly)


@pytest.mark.parametrize(
    ("share", "said", "came", "loss"),
    [(0.8, 10, 12, 1.6), (0.8, 10, 7, 0.6), (0.5, 10, 14, 2.0), (0.95, 10, 10, 0.0)],
)
def test_the_pinball_loss_by_hand(share, said, came, loss) -> None:
    """Koenker and Bassett (1978): share × what it was late, (1 - share) × what it was early."""
    assert pinball(share, said, came) == pytest.approx(loss)


def test_a_project_is_finished_with_its_last_pass_and_not_before() -> None:
    project = done().projects[0]
    assert finished(done(5).projects[0]) is None
    assert finished(project) == minute_of(max(entry.end for entry in project.log if entry.end))


def test_only_the_first_date_said_of_a_project_counts() -> None:
    book = done()
    end = finished(book.projects[0])
    assert end is not None
    early, later = forecast(end - 20, end - 10, end), forecast(end, end + 1, end + 2, MADE + 99)
    (score,) = scores(book, [later, early])
    assert score.forecast == early
    assert not score.kept
    loss = (0.5 * 20 + 0.8 * 10 + 0.95 * 0) / 3 / 1440
    assert score.loss == pytest.approx(loss)


def test_what_is_not_finished_or_was_said_too_late_is_no_score() -> None:
    book = done()
    end = finished(book.projects[0])
    assert end is not None
    assert scores(done(3), [forecast(1, 2, 3)]) == ()
    assert scores(book, [forecast(end, end, end, made=end)]) == ()


def test_on_the_date_of_four_in_five_a_finish_lies_0_84_deviations_off() -> None:
    """The quantiles of the normal distribution: 0, 0.8416 and 1.6449, from any table."""
    said = forecast(1000, 2000, 4000)
    for came, off in ((1000, 0.0), (2000, 0.8416), (4000, 1.6449), (1500, 0.4208), (0, -0.8416)):
        assert deviation(ForecastScore(said, came, True, 0)) == pytest.approx(off, abs=1e-4)


def test_without_a_score_the_spread_stays_and_with_bad_ones_it_grows() -> None:
    """Six projects' worth of 1 and three of 3²: (6 + 27) / 9, its root 1.915."""
    assert learned_scale([]) == 1
    late = ForecastScore(forecast(1000, 2000, 3000), 10**6, False, 1)
    assert learned_scale([late] * 3) == pytest.approx(sqrt(33 / 9))
    kept = ForecastScore(forecast(1000, 2000, 3000), 1000, True, 0)
    assert learned_scale([kept] * 3) == pytest.approx(sqrt(6 / 9))
