"""The drying laws against published figures, as bounds by family.

The sources stand beside the figures; ``tests/benchmarks/drying.py`` prints
them one by one.
"""

from __future__ import annotations

import math
from statistics import fmean

import pytest
from published_drying import LEAST, RATIOS, TEMPERATURE

BOUNDS = {
    # mean and worst |ln(model/published)|: printed guidance is rounded, and products of one
    # family differ (pot lives run from 41 to 63 kJ/mol, late hardness bends)
    "two-pack": (0.15, 0.70),
    "alkyd": (0.05, 0.10),
    "cyanoacrylate": (0.05, 0.05),
    "vapour pressure": (0.01, 0.02),
}


RATIO_BOUNDS = {
    # the two lists differ by up to a third, and tell neither air speed nor temperature
    "solvents": (0.30, 0.55),
    "air speed": (0.005, 0.005),
    "thickness": (0.0, 0.0),
}


def test_ratios_beside_temperature():
    assert {ratio.family for ratio in RATIOS} == set(RATIO_BOUNDS)
    for family, (mean, worst) in RATIO_BOUNDS.items():
        errors = [abs(ratio.error()) for ratio in RATIOS if ratio.family == family]
        assert fmean(errors) <= mean, family
        assert max(errors) <= worst, family


@pytest.mark.parametrize("ratio", RATIOS, ids=lambda one: one.name)
def test_no_ratio_has_the_wrong_direction(ratio):
    assert (ratio.ours() - 1) * (ratio.told - 1) > 0


def test_every_family_has_a_bound():
    assert {series.family for series in TEMPERATURE} == set(BOUNDS)


@pytest.mark.parametrize("family", BOUNDS)
def test_temperature_series(family):
    errors = [
        error for series in TEMPERATURE if series.family == family for error in series.errors()
    ]
    mean, worst = BOUNDS[family]
    assert fmean(map(abs, errors)) <= mean
    assert max(map(abs, errors)) <= worst


@pytest.mark.parametrize("series", TEMPERATURE, ids=lambda one: one.name)
def test_the_direction_is_never_wrong(series):
    for ours, told in zip(series.modelled()[1:], series.published()[1:], strict=True):
        assert math.isfinite(ours)
        assert (ours - 1) * (told - 1) > 0


@pytest.mark.parametrize("least", LEAST, ids=lambda one: f"{one.what} at {one.temperature_c:g}")
def test_surely_is_never_earlier_than_a_published_least_wait(least):
    assert least.surely() >= least.hours
