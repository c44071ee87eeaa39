"""One bottle's own figures from what was seen of its films: level, slope and spread apart.

A look says only that a film was there, or was not yet: a bound on the factor
of its drying time.  The logarithm of that factor is taken as the bottle's
level, plus its slope times how far the film dried from 23 °C, plus what this
one film has of its own (the spread), plus the error of who looked:

    ln f = level + slope · x + film,   seen with an error of `LOOK_SD`.

Prior (all of it assumed, for no measured scatter of hobby paints was found):
the band of a bottle that nobody has tested, from its label or family, is
what lies within 19 cases of 20, four fifths of that variance between bottles
and one fifth between films of a bottle.  The level has Student's t with four
degrees of freedom, so that a bottle quite unlike its label is believed once
several looks say so.  The slope is normal around the family's, with the
band of every slope.  The spread is log-normal.

References
----------
Gelman et al., Bayesian Data Analysis, 3rd ed., section 10.1 for the sum over
a grid and section 17.2 for t priors; Hermite's nodes in Abramowitz and
Stegun, table 25.10.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import product
from typing import NamedTuple

from planner.cure import Spread
from planner.pace.minutes import Estimate

SURELY = 1.645
"""Standard deviations to the late end of the band: 19 of 20 films are there by then."""
BETWEEN_BOTTLES = 0.8
"""Share of a band's variance that is the bottle's level, not this film's: assumed."""
LOOK_SD = 0.1
"""How far off the minute is at which a finger says "now": assumed [ln]."""
TAILS = 4.0
"""Degrees of freedom of the level: assumed."""
SLIP = 0.001
"""How often somebody notes the wrong answer: assumed [-]."""
SPREAD_SD = 0.4
"""How far the spread of one bottle lies from the usual: assumed [ln]."""
SLOPE_BAND_KJ_MOL = 10.0
"""The band of every slope, as the drying laws have it [kJ/mol]."""
SLOPE_SD = SLOPE_BAND_KJ_MOL / SURELY
SLOWEST, FASTEST = 4.0, 0.25
LEVELS = 97
NODES = (
    (-2.020183, 0.019953),
    (-0.958572, 0.393619),
    (0.0, 0.945309),
    (0.958572, 0.393619),
    (2.020183, 0.019953),
)
LEAST_SLOPE = 0.03
"""What a slope must do to a film's times before films near 23 °C are asked of it: assumed [ln]."""
SPREADS = (-2.0, -1.0, 0.0, 1.0, 2.0)
SLOPES = (-3.0, -2.0, -1.0, 0.0, 1.0, 2.0, 3.0)
"""Where spread and slope are looked at, in standard deviations of their priors."""


@dataclass(frozen=True)
class FactorBound:
    """A film's factor lies above ``factor`` (not there yet), or not above it (there).

    Attributes
    ----------
    film
        What is the same for looks at one film.
    per_kj_mol
        By how much the logarithm of the bound falls for a slope 1 kJ/mol
        steeper: how much of its drying this film did in the cold.
    """

    factor: float
    reached: bool
    film: object = ""
    per_kj_mol: float = 0.0


class Prior(NamedTuple):
    """What is believed of a bottle before anybody looked: standard deviations [ln]."""

    level_sd: float
    film_sd: float
    tails: float = TAILS
    spread_sd: float = SPREAD_SD
    slope_sd: float = SLOPE_SD
    slip: float = SLIP


def prior_of(spread: Spread) -> Prior:
    """Return the prior whose late end is that of the band."""
    whole = math.log(spread.late) / SURELY
    return Prior(whole * math.sqrt(BETWEEN_BOTTLES), whole * math.sqrt(1 - BETWEEN_BOTTLES))


@dataclass(frozen=True)
class BottleFigures:
    """What is believed of a bottle.

    Attributes
    ----------
    level
        Factor on its stated times.
    slope
        How much steeper than its family's its times go by temperature;
        mean and variance [kJ/mol].
    film_sd
        Mean square root of what films of it differ among each other [ln].
    """

    level: Estimate
    slope: Estimate
    film_sd: float

    @property
    def doubt(self) -> float:
        """The late end over the likely: the level is not known, and films differ."""
        return math.exp(SURELY * math.sqrt(self.level.variance + self.film_sd**2))

    @property
    def tells_slope(self) -> bool:
        """Tell whether anything was learned of the slope: a tenth less doubt of it (assumed)."""
        return math.sqrt(self.slope.variance) < 0.9 * SLOPE_SD


class Belief(NamedTuple):
    """One possible bottle, and how likely it is."""

    level: float
    slope: float
    film_sd: float
    weight: float


def bottle_figures(seen: Iterable[FactorBound], prior: Prior) -> BottleFigures:
    """Return the figures of a bottle that looks at its films leave likely."""
    return figures_of(beliefs(seen, prior), prior)


def figures_of(every: Sequence[Belief], prior: Prior) -> BottleFigures:
    """Return the means and variances of weighted beliefs."""
    total = sum(one.weight for one in every)
    if total <= 0:  # looks that contradict each other beyond what numbers can tell
        level = Estimate(0.0, prior.level_sd**2)
        return BottleFigures(level, Estimate(0.0, prior.slope_sd**2), prior.film_sd)
    level = _estimate([(one.level, one.weight / total) for one in every])
    slope = Estimate(0.0, prior.slope_sd**2)
    if any(one.slope for one in every):  # else nothing was asked of it
        slope = _estimate([(one.slope, one.weight / total) for one in every])
    square = sum(one.film_sd**2 * one.weight for one in every) / total
    return BottleFigures(level, slope, math.sqrt(square))


def _estimate(weighted: list[tuple[float, float]]) -> Estimate:
    mean = sum(value * weight for value, weight in weighted)
    return Estimate(mean, max(1e-9, sum((value - mean) ** 2 * part for value, part in weighted)))


def beliefs(seen: Iterable[FactorBound], prior: Prior) -> list[Belief]:
    """Return every bottle of the grid with its weight, the looks taken in.

    Looks at one film share what that film has of its own.
    """
    films: dict[object, list[FactorBound]] = defaultdict(list)
    for bound in seen:
        films[bound.film].append(bound)
    spreads = SPREADS if prior.spread_sd else (0.0,)
    told = max((abs(one.per_kj_mol) for film in films.values() for one in film), default=0.0)
    slopes = SLOPES if told * prior.slope_sd > LEAST_SLOPE else (0.0,)
    found = []
    for slope_step, spread_step in product(slopes, spreads):
        slope = slope_step * prior.slope_sd
        film_sd = prior.film_sd * math.exp(spread_step * prior.spread_sd)
        weight = math.exp(-0.5 * (slope_step**2 + spread_step**2))
        for level in _levels():
            chances = [
                _likelihood(film, level, slope, film_sd, prior.slip) for film in films.values()
            ]
            told = weight * _level_density(level, prior) * math.prod(chances)
            found.append(Belief(level, slope, film_sd, told))
    return found


def chance_there(belief: Belief, bound: FactorBound) -> float:
    """Return how likely a film of that bottle is there by a bound, seen once [-]."""
    return _phi((_at(bound, belief.slope) - belief.level) / math.hypot(belief.film_sd, LOOK_SD))


def _at(bound: FactorBound, slope: float) -> float:
    """Return the logarithm of a bound; what lies beyond all levels counts as their end."""
    factor = min(SLOWEST, max(FASTEST, bound.factor))
    return math.log(factor) - bound.per_kj_mol * slope


def _levels() -> list[float]:
    low, high = math.log(FASTEST), math.log(SLOWEST)
    return [low + (high - low) * number / (LEVELS - 1) for number in range(LEVELS)]


def _level_density(level: float, prior: Prior) -> float:
    """Return the prior of a level, not normed; of Student's t, with `Prior.level_sd` as its own."""
    reduced = level / prior.level_sd
    if math.isinf(prior.tails):
        return math.exp(-0.5 * reduced**2)
    return float((1 + reduced**2 / (prior.tails - 2)) ** (-(prior.tails + 1) / 2))


def _likelihood(
    film: list[FactorBound], level: float, slope: float, film_sd: float, slip: float
) -> float:
    """Return the chance of all that was seen of one film, summed over what it has of its own."""
    if len(film) == 1:
        there = chance_there(Belief(level, slope, film_sd, 1.0), film[0])
        return _noted(there, film[0].reached, slip)
    total = 0.0
    for node, part in NODES:
        own = level + math.sqrt(2) * film_sd * node
        chance = part / math.sqrt(math.pi)
        for bound in film:
            chance *= _noted(_phi((_at(bound, slope) - own) / LOOK_SD), bound.reached, slip)
        total += chance
    return total


def _noted(there: float, reached: bool, slip: float) -> float:
    """Return how likely an answer is noted, where the film is there with some chance."""
    right = there if reached else 1 - there
    return slip + (1 - 2 * slip) * right


def _phi(value: float) -> float:
    return 0.5 * math.erfc(-value / math.sqrt(2))
