"""What holds for any air: order, bands, and that tables and slow counting agree."""

from __future__ import annotations

import math

import pytest
from cure_rooms import WARSAW, at, counted, film, labelled, points, room, steady
from drawn_examples import drawn
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.integrate import cumulative_trapezoid
from scipy.optimize import brentq

from planner.air import GAS_J_MOL_K, Air
from planner.cure import Band, Cure, reference_minutes
from planner.cure.kinetics import BAND_KJ_MOL, HARDENING, STAGES, WATER
from planner.values.coating import Clock, Coating, Family, Mark, State
from planner.values.room import AirPoint

START = at("2025-03-28 20:00")  # two days later the clocks change
FILM_FORMERS = [family for family in Family if family is not Family.GRAPHITE]
ONE_STAGE = list(Family)


@st.composite
def profiles(draw, least_c=-5.0, most_c=38.0, most_rh=99.0) -> tuple[AirPoint, ...]:
    hours = sorted(draw(st.sets(st.integers(0, 23), min_size=1, max_size=5)))
    return points(
        *(
            (
                f"{hour:02}:{draw(st.sampled_from((0, 15, 59))):02}",
                draw(st.floats(least_c, most_c)),
                draw(st.floats(5, most_rh)),
            )
            for hour in hours
        )
    )


def ends(cure, one, state):
    return [
        math.inf if minute is None else minute
        for minute in (cure.ready_at(one, state, band) for band in Band)
    ]


@given(profiles(), profiles(), st.sampled_from(ONE_STAGE), st.integers(1, 1500), st.data())
@drawn(30)
def test_table_and_count_agree_to_the_minute(workdays, weekends, family, minutes, data):
    cure = Cure(room(*workdays, weekends=weekends), WARSAW)
    one = film(labelled(family, minutes), START + data.draw(st.integers(0, 3000)))
    band = data.draw(st.sampled_from(Band))
    slow = counted(cure, one, State.DRY_TO_RECOAT, band, most=2500)
    quick = cure.ready_at(one, State.DRY_TO_RECOAT, band)
    if slow is None:
        assert quick is None or quick >= one.laid + 2500
    else:
        assert quick == slow


@given(profiles(least_c=6.0), st.integers(30, 2000))
@drawn(20)
def test_two_stages_count_alike(profile, minutes):
    """Water first, until it may be handled; hardening takes the rest: that split is assumed."""
    cure = Cure(room(*profile), WARSAW)
    coating = labelled(Family.WATERBORNE_ACRYLIC, minutes, State.PRINT_FREE)
    water = round(min(minutes, cure.target(film(coating), State.DRY_TO_HANDLE)) * 1e6)
    rest = minutes * 1_000_000 - water
    minute = START
    for stage, goal in ((WATER, water), (HARDENING, rest)):
        gained = 0
        while gained < goal and minute < START + 20_000:
            gained += round(stage.rate(cure.air().at(minute + 0.5)) * 1e6)
            minute += 1
    assume(minute < START + 20_000)
    assert cure.ready_at(film(coating, START), State.PRINT_FREE, Band.NOMINAL) == minute


@given(profiles(least_c=8.0), st.integers(60, 3000))
@drawn(20)
def test_agrees_with_continuous_integration(profile, minutes):
    """scipy on a grid of ten seconds: within a minute, the first whole one after.

    Where the profile turns sharply inside a minute the middle stands for
    it; hence 1 min and no less.
    """
    cure = Cure(room(*profile), WARSAW)
    one = film(Coating(name="x", family=Family.TWO_PACK), START)
    ready = cure.opens_at(one, Mark(minutes=minutes, clock=Clock.FILM), Band.NOMINAL)
    span = ready - START + 60
    grid = [step / 6 for step in range(6 * span)]
    rates = [50_000 / GAS_J_MOL_K * (1 / 296.15 - 1 / _kelvin(cure, START + t)) for t in grid]
    age = cumulative_trapezoid([math.exp(rate) for rate in rates], grid, initial=0)

    def short_by(time: float) -> float:
        left = min(int(time * 6), len(grid) - 2)
        part = time * 6 - left
        return age[left] + part * (age[left + 1] - age[left]) - minutes

    exact = START + brentq(short_by, 0, grid[-1])
    assert exact - 1.01 <= ready <= exact + 2.01


def _kelvin(cure, minute):
    return cure.air("bench").at(minute).temperature_c + 273.15


@given(profiles(), st.sampled_from(FILM_FORMERS), st.integers(1, 3000))
@drawn(20)
def test_halving_the_step_changes_at_most_a_minute(profile, family, minutes):
    cure = Cure(room(*profile), WARSAW)
    (stage, *_) = STAGES[family]
    half, whole = [], []
    for minute in range(START, START + 400):
        air = cure.air("bench")
        whole.append(stage.rate(air.at(minute + 0.5)))
        half.append((stage.rate(air.at(minute + 0.25)) + stage.rate(air.at(minute + 0.75))) / 2)
    # stated tolerance: a profile's corner inside a minute, and the cut-off crossed in one
    assert sum(half) == pytest.approx(sum(whole), abs=2 * max(whole) + 1e-9)
    smooth = [(a, b) for a, b in zip(half, whole, strict=True) if min(a, b) > 0]
    differing = [1 for a, b in smooth if abs(a / b - 1) > 1e-3]
    assert len(differing) <= 12


@given(
    profiles(),
    st.sampled_from(FILM_FORMERS),
    st.sampled_from(State),
    st.sampled_from(Band),
    st.integers(0, 4000),
    st.integers(0, 2000),
)
@drawn(40)
def test_laid_later_is_never_ready_earlier(profile, family, state, band, wait, more):
    cure = Cure(room(*profile), WARSAW)
    coating = Coating(name="x", family=family)
    first = cure.ready_at(film(coating, START + wait), state, band)
    second = cure.ready_at(film(coating, START + wait + more), state, band)
    assume(first is not None and second is not None)
    assert START + wait <= first <= second


@given(
    profiles(least_c=0.0, most_c=45.0),
    st.sampled_from(Family),
    st.sampled_from(State),
    st.sampled_from(Band),
    st.floats(0.1, 8),
)
@drawn(40)
def test_colder_air_of_the_same_humidity_is_never_quicker(profile, family, state, band, colder):
    coating = Coating(name="x", family=family)
    warm = Cure(room(*profile), WARSAW)
    cold = Cure(
        room(*points(*((one.at, one.temperature_c - colder, one.humidity_pct) for one in profile))),
        WARSAW,
    )
    early = warm.ready_at(film(coating, START), state, band)
    late = cold.ready_at(film(coating, START), state, band)
    assert late is None or (early is not None and early <= late)


@given(profiles(least_c=0.0, most_c=45.0), st.sampled_from(Family), st.sampled_from(State))
@drawn(50)
def test_early_nominal_late_in_any_air(profile, family, state):
    cure = Cure(room(*profile), WARSAW)
    early, nominal, late = ends(cure, film(Coating(name="x", family=family), START), state)
    assert early <= nominal <= late


@pytest.mark.parametrize("family", FILM_FORMERS)
def test_widths_of_the_band_from_0_to_45_degrees(family):
    """Early ≤ nominal ≤ late everywhere, never narrower than the factors alone.

    A label's time is ± 10 %, and the activation energy ± 10 kJ/mol adds
    exp(ΔE/R · abs(1/T - 1/T_ref)) on either side: nothing at 23 °C, 20 %
    at 10 °C, 41 % at 0 °C, 33 % at 45 °C.  The widths are assumed.
    """
    coating = labelled(family, 10_000)
    for warmth in range(46):
        middle = STAGES[family][0].rate(Air(warmth, 50))
        for stage in STAGES[family]:
            rates = [stage.rate(Air(warmth, 50), band) for band in Band]
            assert rates == sorted(rates, reverse=True)
        if middle == 0:
            assert ends(steady(warmth), film(coating), State.DRY_TO_RECOAT) == [math.inf] * 3
            continue
        early, nominal, late = ends(steady(warmth), film(coating), State.DRY_TO_RECOAT)
        side = math.exp(BAND_KJ_MOL * 1000 / GAS_J_MOL_K * abs(1 / (warmth + 273.15) - 1 / 296.15))
        assert late / nominal == pytest.approx(1.10 * side, rel=0.001)
        assert early / nominal == pytest.approx(0.90 / side, rel=0.001)


@pytest.mark.parametrize(("warmth", "width"), [(23, 1.0), (10, 1.20), (0, 1.41), (45, 1.33)])
def test_stated_widths(warmth, width):
    """What the docstring above says, by hand: exp(1203 K · abs(1/T - 1/296.15 K))."""
    oil = STAGES[Family.ARTISTS_OIL][0]
    assert oil.rate(Air(warmth, 50)) / oil.rate(Air(warmth, 50), Band.LATE) == pytest.approx(
        width, abs=0.01
    )


def test_a_labels_time_is_trusted_more_than_a_familys():
    """± 10 % against a fifth to a quarter: both assumed."""
    by_family = Coating(name="x", family=Family.TWO_PACK)
    by_label = labelled(Family.TWO_PACK, 310)
    for coating, early, late in ((by_family, 248, 388), (by_label, 279, 341)):
        assert reference_minutes(coating, State.DRY_TO_RECOAT).minutes == 310
        assert ends(steady(23), film(coating), State.DRY_TO_RECOAT) == [early, 310, late]


@given(
    st.floats(-30, 60),
    st.floats(0, 100),
    st.sampled_from(Family),
    st.sampled_from(Band),
)
@drawn(100)
def test_rates_are_finite_and_never_negative(temperature_c, humidity_pct, family, band):
    cure = steady(temperature_c, humidity_pct)
    for stage in range(len(STAGES[family])):
        rate = cure.rate(family, "", START, band, stage)
        assert math.isfinite(rate)
        assert rate >= 0


def test_a_day_of_23_hours_is_no_day_of_24():
    """Drying is elapsed time: Python zoneinfo gives Warsaw 23 h from 29 to 30 March 2025."""
    one = film(labelled(Family.SOLVENT_LACQUER, 23 * 60), at("2025-03-29 20:00"))
    cure = steady(23)
    assert cure.ready_at(one, State.DRY_TO_RECOAT, Band.NOMINAL) == at("2025-03-30 20:00")
    autumn = film(labelled(Family.SOLVENT_LACQUER, 25 * 60), at("2025-10-25 20:00"))
    assert cure.ready_at(autumn, State.DRY_TO_RECOAT, Band.NOMINAL) == at("2025-10-26 20:00")


def test_films_asked_out_of_order_get_the_same_answers():
    profile = points(("06:00", 15, 60), ("18:00", 21, 50))
    laid = [START + days * 1440 for days in (900, 3, -4000, 0, 40)]
    coating = Coating(name="x", family=Family.ALKYD_ENAMEL)
    together = Cure(room(*profile), WARSAW)
    for minute in laid:
        alone = Cure(room(*profile), WARSAW)
        one = film(coating, minute)
        assert together.ready_at(one, State.DRY_THROUGH) == alone.ready_at(one, State.DRY_THROUGH)
