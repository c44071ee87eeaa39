"""Drying in this room: what looks at films say of a coating's times.

A look says only that a film was, or was not yet, there: a bound on the
factor of its drying time.  Factors are taken as log-normal around the
coating's own, and that around 1; a few looks therefore move it little.

References
----------
Gelman et al., Bayesian Data Analysis, 3rd ed., section 2.5 for the prior and
section 10.1 for the sum over a grid of points.  The two standard deviations
are assumed.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, replace
from statistics import NormalDist

from planner.cure import Band, Cure, Film
from planner.evening.logged_films import laid
from planner.pace.minutes import Estimate
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Observed

COATING_SD = 0.4  # a coating in this room against its stated times: assumed [ln]
FILM_SD = 0.25  # one film against its coating: assumed [ln]
SLOWEST, FASTEST = 4.0, 0.25
LEAST_LOOKS = 3  # at films of a coating, before its drying is called otherwise: assumed
POINTS = 401
_UNIT = NormalDist()


@dataclass(frozen=True)
class FactorBound:
    """A film's factor lies above ``factor`` (not there yet), or not above it (there)."""

    factor: float
    reached: bool


@dataclass(frozen=True)
class DryingLine:
    """What looks say of one coating.

    ``estimate`` is the factor on its stated times, ``now`` the factor that
    the book reckons with.
    """

    coating: str
    looks: int
    estimate: Estimate
    now: float

    @property
    def sure(self) -> bool:
        """Tell whether enough looks say that the book reckons with another drying than it is."""
        reckoned = self.estimate.low <= self.now <= self.estimate.high
        return self.looks >= LEAST_LOOKS and not reckoned


def drying_factor(bounds: Iterable[FactorBound]) -> Estimate:
    """Return the factor of a coating that bounds on its films' factors leave likely.

    The mean and variance of its logarithm, summed over a grid between a
    quarter and four times.
    """
    seen = list(bounds)
    low, high = math.log(FASTEST), math.log(SLOWEST)
    total = first = second = 0.0
    for number in range(POINTS):
        value = low + (high - low) * number / (POINTS - 1)
        weight = math.exp(-0.5 * (value / COATING_SD) ** 2)
        for bound in seen:
            above = _UNIT.cdf((value - math.log(bound.factor)) / FILM_SD)
            weight *= 1 - above if bound.reached else above
        total += weight
        first += weight * value
        second += weight * value * value
    if total <= 0:  # looks that contradict each other beyond what numbers can tell
        return Estimate(0.0, COATING_SD**2)
    mean = first / total
    return Estimate(mean, max(1e-9, second / total - mean * mean))


def learned_drying(book: Book, now: int, *, cure: Cure | None = None) -> tuple[DryingLine, ...]:
    """Return what the looks of the active projects teach, coating by coating."""
    table = laid(book, now, cure)
    problem = table.problem
    bounds: dict[str, list[FactorBound]] = defaultdict(list)
    for project in book.projects:
        for look in project.observed if project.active else ():
            key = PassKey(project.name, look.model, look.step, look.coat)
            index = problem.index.get(key)
            if index is None or index not in table.end:
                continue
            films: dict[str, Film] = {}
            for place, name in problem.activities[index].pass_.films:
                films.setdefault(name, table.film(index, place))
            for film in films.values():
                bound = _bound(problem.cure, film, look)
                if bound is not None:
                    bounds[film.coating.name].append(bound)
    slow = {coating.name: coating.slowness for coating in book.coatings}
    return tuple(
        DryingLine(name, len(seen), drying_factor(seen), slow[name])
        for name, seen in sorted(bounds.items())
    )


def _bound(cure: Cure, film: Film, look: Observed) -> FactorBound | None:
    """Return the factor with which a film would have come so far just when it was looked at.

    None where no factor between a twentieth and twenty would: such a look
    says nothing about this room (before the film was laid, or never).
    """
    minute = minute_of(look.at)
    plain = replace(film, coating=replace(film.coating, slowness=1.0), slowness=1.0)
    low, high = 0.05, 20.0
    if not _there(cure, plain, look.state, low, minute):
        return None
    if _there(cure, plain, look.state, high, minute):
        return FactorBound(high, look.reached) if not look.reached else None
    for _ in range(40):
        middle = math.sqrt(low * high)
        if _there(cure, plain, look.state, middle, minute):
            low = middle
        else:
            high = middle
    return FactorBound(low, look.reached)


def _there(cure: Cure, film: Film, state: State, factor: float, minute: int) -> bool:
    ready = cure.ready_at(replace(film, slowness=factor), state, Band.NOMINAL)
    return ready is not None and ready <= minute
