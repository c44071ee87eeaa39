"""What a look at a film says of its pace, by sums; and the laws of damp, at their corners.

All in constant air of 23 °C and 50 % RH, where a label's minutes are elapsed ones; a label's
late end is a tenth later (assumed: `family_times.LABEL_SPREAD`).
"""

from __future__ import annotations

import pytest
from cure_rooms import labelled, steady

from planner.air import Air
from planner.cure import Band, Film, observed_film
from planner.cure.kinetics import HARDENING, OXIDATION, SETTING
from planner.values.coating import Family, State
from planner.values.moment import moment_of, zone_named
from planner.values.project import Observed

CURE = steady(23)
LAID = 30_000_000
LABEL = 100  # minutes until the next coat
FILM = Film(labelled(Family.WATERBORNE_ACRYLIC, LABEL), 20, "bench", LAID)


def looked(*seen: tuple[int, bool]) -> Film:
    """Return the film after looks so many minutes after it was laid: there, or not yet."""
    looks = [
        Observed(
            model="cart",
            step="base",
            at=moment_of(LAID + minutes, zone_named("UTC")),
            state=State.DRY_TO_RECOAT,
            reached=reached,
        )
        for minutes, reached in seen
    ]
    return observed_film(CURE, FILM, looks)


def ready(film: Film, band: Band) -> int:
    """Return after how many minutes the next coat may follow."""
    minute = CURE.ready_at(film, State.DRY_TO_RECOAT, band)
    assert minute is not None
    return minute - LAID


def test_a_film_not_there_yet_has_at_least_a_tenth_of_its_time_to_go():
    """Looked at after 150 min it takes 150 × 1.1 = 165 (the tenth is assumed), to the next one."""
    film = looked((150, False))
    assert film.slowness == pytest.approx(1.65, abs=0.0001)
    assert 165 <= ready(film, Band.NOMINAL) <= 166


def test_nobody_expected_it_before_the_early_end():
    """The early end is 90 min: a look at 89 that finds nothing says nothing, one at 90 does."""
    assert looked((89, False)) == FILM
    assert looked((90, False)).slowness == pytest.approx(0.9 * 1.1, abs=0.001)


def test_what_was_reached_is_open_from_then_on():
    """At 50 min the late end, 110 min, would still be an hour away; it is now: 50 / 110."""
    film = looked((50, True))
    assert film.slowness == pytest.approx(50 / 110, abs=0.001)
    assert ready(film, Band.LATE) == 50


def test_what_was_surely_reached_says_nothing():
    """The late end is 110 min: a look then finds what everybody knew."""
    assert looked((110, True)) == FILM
    assert looked((109, True)).slowness == pytest.approx(109 / 110, abs=0.001)


def test_no_film_is_told_slower_than_twentyfold_or_quicker_than_a_twentieth():
    """Assumed bounds: 100 min × 20, and 110 min × 0.05 = 5.5."""
    assert ready(looked((3000, False)), Band.NOMINAL) == 2000
    assert ready(looked((1, True)), Band.LATE) == 6


def test_later_looks_count_for_more_whatever_their_order():
    """Not there at 150 (165 min likely, 181.5 late), there at 160: open from 160 on."""
    assert looked((160, True), (150, False)) == looked((150, False), (160, True))
    assert ready(looked((150, False), (160, True)), Band.LATE) == 160


@pytest.mark.parametrize(
    ("humidity_pct", "rate"),
    [(0, 0.25), (5, 0.25), (10, 0.25), (20, 0.5), (39, 0.975), (40, 1.0), (41, 1.0), (60, 1.0)],
)
def test_cyanoacrylate_sets_by_damp_and_no_slower_than_at_a_tenth(humidity_pct, rate):
    """Fastest from 40 % RH on (common practice, no source); below by its share, down to 10 %."""
    assert SETTING.rate(Air(23, humidity_pct)) == pytest.approx(rate)


@pytest.mark.parametrize(
    ("kinetics", "humidity_pct", "rate"),
    [
        (HARDENING, 50, 1),
        (HARDENING, 30, 1),
        (HARDENING, 70, 1 / 1.5),  # one time more per 40 % RH above 50: assumed
        (HARDENING, 90, 1 / 2),
        (OXIDATION, 50, 1),
        (OXIDATION, 100, 1 / 1.5),  # one time more per 100 % RH: assumed
    ],
)
def test_damp_slows_what_hardens_from_half_on(kinetics, humidity_pct, rate):
    assert kinetics.rate(Air(23, humidity_pct)) == pytest.approx(rate)
