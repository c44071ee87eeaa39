"""A bottle's own figures, against closed forms, integrals and simulated bottles."""

from __future__ import annotations

import math
from random import Random
from statistics import NormalDist

import pytest
from scipy import integrate, stats

from planner.cure import Spread
from planner.pace.bottle import (
    BETWEEN_BOTTLES,
    LOOK_SD,
    SLOPE_SD,
    SURELY,
    TAILS,
    FactorBound,
    Prior,
    bottle_figures,
    prior_of,
)

UNIT = NormalDist()
KNOWN = {"tails": math.inf, "spread_sd": 0.0, "slip": 0.0}


@pytest.mark.parametrize("factor", [0.8, 1.0, 1.3, 1.6])
@pytest.mark.parametrize(("bottle", "one_look"), [(0.4, 0.25), (0.15, 0.12)])
def test_one_look_by_the_truncated_normal(factor, bottle, one_look):
    """E[θ | θ + ε > c] = τ² / s · φ(c / s) / (1 − Φ(c / s)) with s² = τ² + σ².

    The mean of a truncated normal (inverse Mills ratio), e.g. Johnson, Kotz
    and Balakrishnan, Continuous Univariate Distributions 1, section 10.1.
    """
    prior = Prior(bottle, math.sqrt(one_look**2 - LOOK_SD**2), **KNOWN)
    both = math.hypot(bottle, one_look)
    at = math.log(factor) / both
    not_yet = bottle**2 / both * UNIT.pdf(at) / (1 - UNIT.cdf(at))
    there = -(bottle**2) / both * UNIT.pdf(at) / UNIT.cdf(at)
    late = bottle_figures([FactorBound(factor, False)], prior).level
    soon = bottle_figures([FactorBound(factor, True)], prior).level
    assert late.mean == pytest.approx(not_yet, abs=0.004)
    assert soon.mean == pytest.approx(there, abs=0.004)


@pytest.mark.parametrize("factor", [0.6, 1.2, 1.8])
def test_heavy_tails_by_an_integral(factor):
    """The same with Student's t of four degrees of freedom, by scipy's quadrature."""
    prior = Prior(0.14, 0.07, spread_sd=0.0, slip=0.0)
    scale = prior.level_sd * math.sqrt((TAILS - 2) / TAILS)
    seen_sd = math.hypot(prior.film_sd, LOOK_SD)

    def weight(level: float) -> float:
        beyond = UNIT.cdf((level - math.log(factor)) / seen_sd)
        return float(stats.t.pdf(level / scale, TAILS)) * beyond

    ends = (math.log(0.25), math.log(4.0))
    total, _ = integrate.quad(weight, *ends)
    mean, _ = integrate.quad(lambda level: level * weight(level), *ends)
    ours = bottle_figures([FactorBound(factor, False)], prior).level.mean
    assert ours == pytest.approx(mean / total, abs=0.006)


def test_looks_at_one_film_share_what_is_its_own():
    """Two looks at a film, its own part summed out by scipy's double quadrature."""
    prior = Prior(0.3, 0.2, **KNOWN)

    def weight(own: float, level: float) -> float:
        film = level + prior.film_sd * own
        above = UNIT.cdf((film - math.log(1.3)) / LOOK_SD)
        below = 1 - UNIT.cdf((film - math.log(1.6)) / LOOK_SD)
        return UNIT.pdf(level / prior.level_sd) * UNIT.pdf(own) * above * below

    total, _ = integrate.dblquad(weight, -1.3, 1.3, -5, 5, epsabs=1e-6)
    mean, _ = integrate.dblquad(
        lambda own, level: level * weight(own, level), -1.3, 1.3, -5, 5, epsabs=1e-6
    )
    looks = [FactorBound(1.3, False, "card"), FactorBound(1.6, True, "card")]
    ours = bottle_figures(looks, prior).level.mean
    assert ours == pytest.approx(mean / total, abs=0.01)
    twice = bottle_figures([FactorBound(1.6, False, "card")] * 2, prior).level.mean
    apart = [FactorBound(1.6, False, "one"), FactorBound(1.6, False, "another")]
    assert bottle_figures(apart, prior).level.mean > twice + 0.02


@pytest.mark.parametrize("late", [1.1, 1.25, 1.5])
def test_who_tried_nothing_has_the_band_of_label_or_family(late):
    """Whose late end is the 95th percentile of a normal: 1.645 standard deviations."""
    assert pytest.approx(UNIT.inv_cdf(0.95), abs=0.001) == SURELY
    prior = prior_of(Spread(1 / late, late))
    assert prior.level_sd**2 + prior.film_sd**2 == pytest.approx((math.log(late) / SURELY) ** 2)
    assert prior.level_sd**2 == pytest.approx(BETWEEN_BOTTLES * (math.log(late) / SURELY) ** 2)
    untried = bottle_figures([], prior)
    assert untried.level.factor == pytest.approx(1.0)
    assert untried.doubt == pytest.approx(late, rel=0.02)  # the far tail is cut at 4 times
    assert not untried.tells_slope


def test_a_card_that_agrees_narrows_and_one_that_does_not_moves_the_level():
    prior = prior_of(Spread(1 / 1.5, 1.5))
    agrees = bottle_figures([FactorBound(0.9, False, 1), FactorBound(1.1, True, 1)], prior)
    assert agrees.level.factor == pytest.approx(1.0, abs=0.03)
    assert agrees.doubt < 1.4
    slow = bottle_figures([FactorBound(2.0, False, 1), FactorBound(2.5, True, 1)], prior)
    assert 1.5 < slow.level.factor < 2.25
    torn = [
        bound
        for card, (low, high) in enumerate([(0.5, 0.6), (1.7, 2.0), (0.5, 0.6), (1.7, 2.0)])
        for bound in (FactorBound(low, False, card), FactorBound(high, True, card))
    ]
    assert bottle_figures(torn, prior).film_sd > 1.5 * agrees.film_sd
    wild = bottle_figures([FactorBound(20.0, False)] * 20, prior)
    assert 2 < wild.level.factor <= 4
    once = bottle_figures([*[FactorBound(1.1, True, card) for card in range(6)]], prior)
    slip = [FactorBound(1.1, True, card) for card in range(6)] + [FactorBound(3.0, False, 9)]
    assert bottle_figures(slip, prior).level.factor < 1.1 * once.level.factor


def test_cards_in_other_warmth_tell_the_slope_and_those_at_23_degrees_do_not():
    """At 10 °C a slope 10 kJ/mol steeper is exp(10000/8.314 · (1/283.15 − 1/296.15)) = 1.205."""
    per = (1 / 283.15 - 1 / 296.15) * 1000 / 8.314
    assert math.exp(10 * per) == pytest.approx(1.205, abs=0.001)
    prior = prior_of(Spread(1 / 1.25, 1.25))
    bench = [FactorBound(0.95, False, "bench"), FactorBound(1.05, True, "bench")]
    alone = bottle_figures(bench, prior)
    assert not alone.tells_slope
    assert alone.slope.mean == 0
    cold = [
        bound
        for card in range(4)
        for bound in (
            FactorBound(1.25, False, card, per),
            FactorBound(1.35, True, card, per),
        )
    ]
    both = bottle_figures(bench * 2 + cold, prior)
    assert both.tells_slope
    assert both.slope.mean > 2
    assert math.sqrt(both.slope.variance) < SLOPE_SD
    assert both.level.factor < bottle_figures(cold, prior).level.factor


def test_intervals_hold_what_they_say():
    """Bottles drawn from the prior lie in their interval of 95 % about so often.

    Cook, Gelman and Rubin (2006), Validation of software for Bayesian models.
    """
    prior = prior_of(Spread(1 / 1.5, 1.5))
    scale = prior.level_sd * math.sqrt((TAILS - 2) / TAILS)
    draw, held = Random(7), 0
    for _ in range(150):
        chi = draw.gammavariate(TAILS / 2, 2)
        level = scale * draw.gauss(0, 1) / math.sqrt(chi / TAILS)
        spread = prior.film_sd * math.exp(draw.gauss(0, prior.spread_sd))
        looks = []
        for card in range(2):
            film = level + draw.gauss(0, spread)
            for _look in range(2):
                at = draw.uniform(-0.5, 0.5)
                looks.append(FactorBound(math.exp(at), film + draw.gauss(0, LOOK_SD) < at, card))
        figures = bottle_figures(looks, prior)
        held += figures.level.low <= math.exp(level) <= figures.level.high
    assert 0.90 <= held / 150 <= 0.99
