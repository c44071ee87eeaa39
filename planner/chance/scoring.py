"""Dates that were said, held against what came: were they kept, and what that teaches.

A project counts once, by the first date that was said of it: later ones
know more, and would teach that all is well.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from statistics import NormalDist, fmean

from planner.chance.odds import SHARES
from planner.passes import expand
from planner.values.book import Book
from planner.values.forecast import Forecast
from planner.values.moment import minute_of
from planner.values.project import Project

PRIOR_PROJECTS = 6.0  # so many projects' worth the stated spread is taken for: assumed
NARROWEST, WIDEST = 0.5, 2.5
FARTHEST = 3.0  # standard deviations beyond which a miss teaches no more: assumed
DAY = 1440
_UNIT = NormalDist()


@dataclass(frozen=True)
class ForecastScore:
    """A forecast and what came of it.

    Attributes
    ----------
    kept
        Whether it was finished by the date of four runs in five.
    loss
        Mean pinball loss of the three dates [days].
    """

    forecast: Forecast
    finished: int
    kept: bool
    loss: float


def pinball(share: float, said: float, came: float) -> float:
    """Return the pinball loss of a quantile that was said.

    References
    ----------
    Koenker and Bassett, Regression Quantiles, Econometrica 46 (1978), eq. 1.1.

    Examples
    --------
    >>> pinball(0.8, 10, 12)
    1.6
    """
    return (share - (came < said)) * (came - said)


def finished(project: Project) -> int | None:
    """Return when the last pass of a project ended; None while something is left to do."""
    ends = {(entry.model, entry.step, entry.coat): entry.end for entry in project.log if entry.end}
    passes = [one.key for model in project.models for one in expand(project, model)]
    if not passes or any((key.model, key.step, key.coat) not in ends for key in passes):
        return None
    return max(minute_of(end) for end in ends.values())


def scores(book: Book, forecasts: Iterable[Forecast]) -> tuple[ForecastScore, ...]:
    """Return how the first forecast of each finished project did, the oldest first."""
    first: dict[str, Forecast] = {}
    for forecast in sorted(forecasts, key=lambda one: one.made):
        first.setdefault(forecast.project, forecast)
    found = []
    for project in book.projects:
        end, said = finished(project), first.get(project.name)
        if end is None or said is None or said.made >= end:
            continue
        loss = fmean(
            pinball(share, date, end) / DAY for share, date in zip(SHARES, said.said, strict=True)
        )
        found.append(ForecastScore(said, end, end <= said.most, loss))
    return tuple(sorted(found, key=lambda one: (one.forecast.made, one.forecast.project)))


def learned_scale(known: Iterable[ForecastScore]) -> float:
    """Return the factor on the spread that forecasts have taught, near 1 while they are few.

    Where a finish fell between the dates that were said tells how many
    standard deviations it was from the middle; the mean of their squares is
    the factor's square, drawn towards 1 like a scaled inverse chi-squared.

    References
    ----------
    Gelman et al., Bayesian Data Analysis, 3rd ed., section 2.6 (normal, known
    mean, unknown variance).
    """
    squares = [(deviation(one) * one.forecast.scale) ** 2 for one in known]
    mean = (PRIOR_PROJECTS + sum(squares)) / (PRIOR_PROJECTS + len(squares))
    return min(WIDEST, max(NARROWEST, math.sqrt(mean)))


def deviation(score: ForecastScore) -> float:
    """Return how many standard deviations a finish lay from the middle that was said.

    Between the dates it is read off by proportion, outside by the slope of
    the nearest two.
    """
    marks = [_UNIT.inv_cdf(share) for share in SHARES]
    dates = score.forecast.said
    at = 0 if score.finished <= dates[1] else 1
    wide = max(1, dates[at + 1] - dates[at])
    part = (score.finished - dates[at]) / wide
    found = marks[at] + part * (marks[at + 1] - marks[at])
    return max(-FARTHEST, min(FARTHEST, found))
