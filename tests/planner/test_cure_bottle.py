"""What a bottle's own evidence says: level, slope and spread, each for itself."""

from __future__ import annotations

import math

import pytest
from cure_rooms import film, steady

from planner.cure import Band
from planner.values.coating import Clock, Coating, Family, Mark, State
from planner.values.refusal import Refused

FAMILIES = [Family.WATERBORNE_ACRYLIC, Family.SOLVENT_LACQUER, Family.ALKYD_ENAMEL, Family.TWO_PACK]
BANDS = (Band.EARLY, Band.NOMINAL, Band.LATE)


def ends(family, warmth, state=State.DRY_THROUGH, **own):
    coating = Coating(name="x", family=family, **own)
    cure = steady(warmth)
    return [cure.ready_at(film(coating, thickness_um=60), state, band) for band in BANDS]


@pytest.mark.parametrize("family", FAMILIES)
def test_level_moves_every_end_alike(family):
    plain, slow = ends(family, 15), ends(family, 15, slowness=1.5)
    assert [b / a for a, b in zip(plain, slow, strict=True)] == pytest.approx([1.5] * 3, rel=0.02)


@pytest.mark.parametrize("family", FAMILIES)
def test_slope_leaves_the_reference_and_turns_about_it(family):
    """exp(E/R (1/T - 1/296.15 K)) on the time, with 10 kJ/mol 1.2 at 10 °C (by hand)."""
    assert ends(family, 23, steeper_kj_mol=10) == ends(family, 23)
    by_hand = math.exp(10_000 / 8.314462618 * (1 / 283.15 - 1 / 296.15))
    assert by_hand == pytest.approx(1.205, abs=0.001)
    cold = [
        b / a for a, b in zip(ends(family, 10), ends(family, 10, steeper_kj_mol=10), strict=True)
    ]
    assert cold == pytest.approx([by_hand] * 3, rel=0.02)
    warm = ends(family, 32, steeper_kj_mol=10)
    assert warm < ends(family, 32)


@pytest.mark.parametrize("family", FAMILIES)
def test_doubt_leaves_the_likely_time(family):
    early, likely, late = ends(family, 23, doubt=1.1)
    assert likely == ends(family, 23)[1]
    assert late / likely == pytest.approx(1.1, rel=0.01)
    assert early / likely == pytest.approx(1 / 1.1, rel=0.01)


def test_a_pot_follows_the_bottles_slope():
    mark = Mark(minutes=240, clock=Clock.FILM)
    plain, steep = (
        steady(15).closes_at(film(Coating(name="x", family=Family.TWO_PACK, **own)), mark, 0)
        for own in ({}, {"steeper_kj_mol": 15.0})
    )
    assert plain < steep


@pytest.mark.parametrize(
    ("field", "value"), [("doubt", 0.9), ("doubt", 5), ("steeper_kj_mol", -30), ("retarder", 0.9)]
)
def test_what_no_bottle_has_is_refused(field, value):
    with pytest.raises(Refused, match=field):
        Coating(name="x", family=Family.TWO_PACK, **{field: value})
