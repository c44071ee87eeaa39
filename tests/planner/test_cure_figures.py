"""Every stated number of drying, so that none changes unseen.

What each figure is worth stands with it in the program, as it is told there: published sheets and
charts, "common practice, no source", or assumed.  Here they stand once more, copied by hand from
what was gathered, and the laws are worked out apart with them.
"""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from cure_rooms import WARSAW, at, film, points, room, steady

from planner.air import Air
from planner.cure import Band, Cure, Film
from planner.cure.assumptions import ASSUMED
from planner.cure.course import MILLION, Course
from planner.cure.drying_path import film_path, progress
from planner.cure.evaporation import movement_factor
from planner.cure.family_times import FAR, LABEL_SPREAD, USUAL, WIDE, family_figure, reference_um
from planner.cure.kinetics import (
    ALCOHOL,
    CEMENT,
    FILM_OF_TWO_PACK,
    HARDENING,
    LACQUER,
    LATE_HARDNESS,
    OXIDATION,
    REACTION,
    SETTING,
    SPIRIT,
    TRAPPED,
    WATER,
    arrhenius,
    stages_of,
)
from planner.cure.pot_life import pot_life
from planner.cure.reference import minutes_at, thickness_exponent
from planner.cure.stacking import bond_of
from planner.values.coating import Coating, Family, Finish, State
from planner.values.refusal import Refused
from planner.values.room import Movement

F, G = Family, Finish
# Likely minutes at 23 °C and 50 % RH: set to touch, dust-free, tack-free, dry to handle, dry to
# recoat, print-free, solvent-safe, dry through.
MINUTES = {
    (F.WATERBORNE_ACRYLIC, G.MATTE): (4, 6, 9, 30, 12, 540, 420, 480),
    (F.WATERBORNE_ACRYLIC, G.SATIN): (5, 7, 11, 38, 15, 840, 420, 480),
    (F.WATERBORNE_ACRYLIC, G.GLOSS): (6, 9, 13, 45, 18, 1500, 420, 540),
    (F.SOLVENT_LACQUER, G.MATTE): (3, 5, 8, 20, 20, 60, 360, 400),
    (F.ALCOHOL_INK, G.MATTE): (2, 4, 6, 20, 20, 60, 360, 400),
    (F.ALKYD_ENAMEL, G.MATTE): (75, 120, 180, 420, 720, 1440, 5760, 7200),
    (F.ARTISTS_OIL, G.MATTE): (360, 540, 720, 960, 1200, 1440, 1800, 2000),
    (F.TWO_PACK, G.MATTE): (60, 90, 150, 420, 310, 1200, 4320, 1440),
    (F.PIGMENT, G.MATTE): (5, 10, 15, 30, 30, 30, 60, 60),
    (F.FIXER, G.MATTE): (20, 30, 45, 120, 120, 240, 600, 600),
    (F.DECAL, G.MATTE): (20, 30, 60, 60, 400, 480, 480, 480),
    (F.CHIPPING_FLUID, G.MATTE): (5, 8, 10, 12, 12, 60, 60, 60),
    (F.SOLVENT_CEMENT, G.MATTE): (3, 5, 10, 60, 300, 300, 300, 480),
    (F.CYANOACRYLATE, G.MATTE): (1, 1, 2, 5, 60, 60, 60, 720),
    (F.WHITE_GLUE, G.MATTE): (20, 20, 30, 35, 360, 360, 780, 780),
    (F.MASKING_FLUID, G.MATTE): (10, 15, 20, 30, 30, 60, 60, 60),
    (F.SALT, G.MATTE): (20, 25, 30, 30, 30, 60, 60, 60),
    (F.GRAPHITE, G.MATTE): (0,) * 8,
    (F.RETARDER, G.MATTE): (240,) * 8,
    (F.WATER_THINNER, G.MATTE): (20,) * 8,
    (F.ALCOHOL_THINNER, G.MATTE): (5,) * 8,
    (F.WHITE_SPIRIT, G.MATTE): (60,) * 8,
    (F.LACQUER_THINNER, G.MATTE): (10,) * 8,
}


@pytest.mark.parametrize(("family", "finish"), MINUTES)
def test_the_figures_of_a_family(family, finish):
    told = tuple(family_figure(family, finish, state).minutes for state in State)
    assert told == MINUTES[family, finish]


def test_no_family_is_left_out():
    assert {family for family, _ in MINUTES} == set(Family)


def test_how_far_the_truth_may_lie():
    """Rounded label; told alike; told two to one; told three to one and more: all assumed."""
    assert (LABEL_SPREAD, USUAL, WIDE, FAR) == ((0.9, 1.1), (0.8, 1.25), (0.7, 1.3), (0.6, 1.5))


def test_the_films_that_the_figures_belong_to():
    """A wash of oil, a joint of glue; else a thin coat (assumed) [µm]."""
    thick = {F.ARTISTS_OIL: 3, F.SOLVENT_CEMENT: 50, F.WHITE_GLUE: 50}
    for family in Family:
        assert reference_um(family) == thick.get(family, 20)


def test_every_assumption():
    told = {name: assumption.value for name, assumption in ASSUMED.items()}
    assert told == {
        "band": 10,
        "hardening slope": 50,
        "hardening, damp": 40,
        "film forms": 5,
        "oxidation, damp": 100,
        "oxidation, reaction share": 0.15,
        "oxidation, thickness": 1.2,
        "box share": 0.7,
        "room air": 0.1,
        "fan air": 1,
        "two-pack thickness": 0.5,
        "retarder": 10,
        "buried": 1.5,
        "touch, dry-brush": 2,
        "touch, sponge": 4,
        "touch, wash": 3,
        "touch, filter": 2,
    }


# -- the laws -----------------------------------------------------------------------------------

GAS = 8.314462618  # J/(mol K), exact since 2019 but for the digits left out
ZERO, REFERENCE = 273.15, 296.15


def colder(temperature_c: float) -> float:
    """Return 1/T less that of 23 °C [1/K]."""
    return 1 / (temperature_c + ZERO) - 1 / REFERENCE


@pytest.mark.parametrize("temperature_c", [6, 10, 15, 23, 30, 38])
@pytest.mark.parametrize(
    ("kinetics", "cold", "warm", "bend"),
    [
        (HARDENING, 50, 50, 23),
        (SETTING, 50, 50, 23),
        (OXIDATION, 37, 25, 23),
        (FILM_OF_TWO_PACK, 33, 33, 23),
        (REACTION, 50, 50, 23),
        (LATE_HARDNESS, 115, 60, 21),
    ],
)
def test_reactions_go_by_their_slope_and_the_band_by_ten_more(
    kinetics, cold, warm, bend, temperature_c
):
    """Arrhenius with the slopes of the sheets [kJ/mol]; the band is assumed."""
    reference, from_bend = colder(23) - colder(bend), colder(temperature_c) - colder(bend)
    level = (warm if reference < 0 else cold) * reference
    rate = math.exp(1000 / GAS * (level - (warm if from_bend < 0 else cold) * from_bend))
    doubt = 10 * 1000 / GAS * abs(colder(temperature_c))
    air = Air(temperature_c, 50)
    assert kinetics.rate(air) == pytest.approx(rate, rel=1e-9)
    assert kinetics.rate(air, Band.EARLY) == pytest.approx(rate * math.exp(doubt), rel=1e-9)
    assert kinetics.rate(air, Band.LATE) == pytest.approx(rate * math.exp(-doubt), rel=1e-9)
    steeper = replace(kinetics, steeper_kj_mol=7)
    own = math.exp(-7 * 1000 / GAS * colder(temperature_c))
    assert steeper.rate(air) == pytest.approx(rate * own, rel=1e-9)


@pytest.mark.parametrize("kinetics", [WATER, LACQUER, ALCOHOL, CEMENT, SPIRIT])
@pytest.mark.parametrize("temperature_c", [10, 30])
def test_evaporation_has_the_same_doubt(kinetics, temperature_c):
    air, doubt = Air(temperature_c, 40), 10 * 1000 / GAS * abs(colder(temperature_c))
    assert kinetics.rate(air, Band.EARLY) / kinetics.rate(air) == pytest.approx(math.exp(doubt))
    assert kinetics.rate(air, Band.LATE) / kinetics.rate(air) == pytest.approx(math.exp(-doubt))


def test_slow_solvent_leaves_by_the_slope_of_its_vapour_pressure():
    """2-butoxyethanol: 50 Pa at 10 °C and 204 at 30 °C (library thermo 0.6.1)."""
    slope = math.log(204 / 50) / (1 / 283.15 - 1 / 303.15)
    assert TRAPPED.rate(Air(10, 50)) == pytest.approx(math.exp(-slope * colder(10)), rel=1e-9)


@pytest.mark.parametrize(
    ("kinetics", "least_c"),
    [(WATER, 5), (HARDENING, 5), (FILM_OF_TWO_PACK, 4), (REACTION, 4), (LATE_HARDNESS, 4)],
)
def test_below_its_least_temperature_nothing_happens(kinetics, least_c):
    """Films of water form from 5 °C on (assumed); the chart of an epoxy ends at 4 °C."""
    assert kinetics.rate(Air(least_c, 50)) > 0
    assert kinetics.rate(Air(least_c - 0.01, 50)) == 0


def test_moving_air_by_the_formula_of_the_handbook():
    """ASHRAE: w ~ 0.089 + 0.0782 V; a room 0.1 m/s, a fan 1 m/s, a box keeps 0.3 (assumed)."""
    room = 0.089 + 0.00782
    assert movement_factor(Movement.ROOM) == 1
    assert movement_factor(Movement.STILL) == pytest.approx(0.089 / room, rel=1e-9)
    assert movement_factor(Movement.FAN) == pytest.approx(0.1672 / room, rel=1e-9)
    assert movement_factor(Movement.BOX) == pytest.approx(0.7 * 0.089 / room, rel=1e-9)
    fan = WATER.rate(Air(15, 60), movement=Movement.FAN) / WATER.rate(Air(15, 60))
    assert fan == pytest.approx(0.1672 / room, rel=1e-9)


def test_what_goes_by_the_arrhenius_law_of_the_standard():
    """ASTM C1074, equivalent age; from 20 °C, at which its own examples stand."""
    assert arrhenius(10, 45, 20) == pytest.approx(
        math.exp(-45_000 / GAS * (1 / 283.15 - 1 / 293.15)), rel=1e-9
    )
    assert arrhenius(23, 45) == 1


@pytest.mark.parametrize(("solids", "first"), [(0.89, FILM_OF_TWO_PACK), (0.9, REACTION)])
def test_from_nine_tenths_of_solids_on_a_two_pack_only_reacts(solids, first):
    """Assumed."""
    two_pack = Coating(name="x", family=F.TWO_PACK, solids=solids)
    assert stages_of(two_pack) == (first, LATE_HARDNESS)
    free = solids == 0.9
    assert thickness_exponent(two_pack, State.DRY_TO_RECOAT) == (0 if free else 0.5)


# -- thickness ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("family", "recoat", "safe", "through"),
    [
        (F.WATERBORNE_ACRYLIC, 1, 1.5, 1.5),
        (F.SOLVENT_LACQUER, 1, 1.5, 2),
        (F.ALCOHOL_INK, 1, 1.5, 2),
        (F.ALKYD_ENAMEL, 1.2, 1.5, 2),
        (F.ARTISTS_OIL, 1.2, 1.5, 2),
        (F.TWO_PACK, 0.5, 0, 0),
        (F.DECAL, 0, 0, 0),
        (F.CYANOACRYLATE, 0, 0, 0),
        (F.WHITE_GLUE, 1, 1.5, 1.5),
    ],
)
def test_exponents_of_thickness(family, recoat, safe, through):
    """1 by evaporation (Kiil 2006), 2 by diffusion (Fick); 1.2, 1.5 and 0.5 are assumed."""
    coating = Coating(name="x", family=family)
    states = (State.DRY_TO_RECOAT, State.SOLVENT_SAFE, State.DRY_THROUGH)
    assert tuple(thickness_exponent(coating, s) for s in states) == (recoat, safe, through)


def test_a_film_three_times_as_thick_by_hand():
    """Lacquer: 20 × 3; 360 × 3^1.5 = 1870.6; 400 × 9. Enamel: 0.15 + 0.85 × 9 = 7.8 times."""
    lacquer = Coating(name="x", family=F.SOLVENT_LACQUER, dry_film_um=20)
    enamel = Coating(name="y", family=F.ALKYD_ENAMEL, dry_film_um=20)

    def minutes(coating, state, um, wet=0.0):
        return minutes_at(coating, state, um, wet).minutes

    assert minutes(lacquer, State.DRY_TO_RECOAT, 60) == pytest.approx(60)
    assert minutes(lacquer, State.SOLVENT_SAFE, 60) == pytest.approx(360 * 3**1.5)
    assert minutes(lacquer, State.DRY_THROUGH, 60) == pytest.approx(3600)
    assert minutes(enamel, State.DRY_THROUGH, 60) == pytest.approx(7200 * 7.8)
    # What was wetted again below counts for the deep states alone.
    assert minutes(lacquer, State.SOLVENT_SAFE, 40, 20) == pytest.approx(360 * 3**1.5)
    assert minutes(lacquer, State.DRY_TO_RECOAT, 40, 20) == pytest.approx(40)
    # Below a micrometre no film dries sooner (assumed).
    assert minutes(lacquer, State.DRY_TO_RECOAT, 0.5) == pytest.approx(20 / 20)


# -- what lies below ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("upper", "lower", "bond"),
    [
        *[
            (upper, lower, (0.5, 100))
            for upper in (F.SOLVENT_LACQUER, F.ALCOHOL_INK)
            for lower in (F.SOLVENT_LACQUER, F.ALCOHOL_INK)
        ],
        *[
            (upper, lower, (0.3, 0))
            for upper in (F.ALKYD_ENAMEL, F.ARTISTS_OIL)
            for lower in (F.ALKYD_ENAMEL, F.ARTISTS_OIL)
        ],
        (F.SOLVENT_LACQUER, F.WATERBORNE_ACRYLIC, (0.3, 50)),
        (F.ALCOHOL_INK, F.WATERBORNE_ACRYLIC, (0.3, 50)),
        (F.TWO_PACK, F.WATERBORNE_ACRYLIC, (0.3, 50)),
        (F.TWO_PACK, F.SOLVENT_LACQUER, (0.3, 50)),
        (F.TWO_PACK, F.ALCOHOL_INK, (0.3, 50)),
        (F.WATERBORNE_ACRYLIC, F.WATERBORNE_ACRYLIC, (0.15, 50)),
        (F.WATERBORNE_ACRYLIC, F.CHIPPING_FLUID, (0.15, 0)),
        (F.WATERBORNE_ACRYLIC, F.ALKYD_ENAMEL, None),
        (F.TWO_PACK, F.TWO_PACK, None),
    ],
)
def test_how_a_coat_hangs_together_with_the_one_below(upper, lower, bond):
    """All assumed: depth in parts of its own thickness, share of the wait below in per cent."""
    assert bond_of(upper, lower) == bond


def test_what_a_coat_waits_for_below_by_hand():
    """Half of what the film below still has to wait, rounded up; none that is over."""
    cure = steady(23)
    coating = Coating(name="x", family=F.WATERBORNE_ACRYLIC)
    below = Film(coating, 20, "bench", 0)
    over = cure.over(Film(coating, 20, "bench", 300), below)
    assert over.wet_um == pytest.approx(3)  # 0.15 × 20
    for state in (State.PRINT_FREE, State.SOLVENT_SAFE, State.DRY_THROUGH):
        for band in Band:
            end = cure.ready_at(below, state, band)
            assert over.lower.held(state, band) == 300 + max(0, math.ceil((end - 300) / 2))
            late = cure.over(Film(coating, 20, "bench", end + 10), below)
            assert late.lower.held(state, band) == end + 10
    assert cure.over(Film(coating, 20, "bench", 300), replace(below, thickness_um=2)).wet_um == 2


def test_a_buried_film_takes_half_as_long_again_from_then_on():
    """Assumed: buried at 200, what is left until the minute m becomes 1.5 (m - 200)."""
    cure = steady(23)
    one = film(Coating(name="x", family=F.WATERBORNE_ACRYLIC, dry_film_um=20))
    for state in (State.PRINT_FREE, State.SOLVENT_SAFE):
        free = cure.ready_at(one, state, Band.NOMINAL)
        buried = cure.ready_at(replace(one, buried=200), state, Band.NOMINAL)
        assert buried == 200 + math.ceil((free - 200) * 1.5)
        assert cure.ready_at(replace(one, buried=free), state, Band.NOMINAL) == free
    assert cure.ready_at(replace(one, buried=2), State.DRY_TO_RECOAT) == cure.ready_at(
        one, State.DRY_TO_RECOAT
    )


# -- films and their paths ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("um", "fits"), [(0.099, False), (0.1, True), (1e5, True), (100001, False)]
)
def test_no_film_is_thinner_or_thicker(um, fits):
    coating = Coating(name="x", family=F.WATERBORNE_ACRYLIC)
    if fits:
        assert Film(coating, um, "", 0).thickness_um == um
        return
    with pytest.raises(Refused) as refused:
        Film(coating, um, "", 0)
    assert refused.value.place == "thickness_um"
    assert "0.1 to 100000 µm" in refused.value.mend.replace("1e+05", "100000").replace(
        " 000", "000"
    )


def test_the_pace_at_reference_is_one():
    cure: Cure = steady(23)
    for family in Family:
        for stage in (0, 1):
            assert cure.rate(family, "bench", 0, stage=stage) == pytest.approx(1, abs=1e-6)


def test_age_runs_from_the_laying_on():
    """At reference a film of a label of 100 min is as old as the minutes that have gone by."""
    cure = steady(23)
    one = film(Coating(name="x", family=F.WATERBORNE_ACRYLIC), laid=1000)
    assert [cure.age(one, minute) for minute in (0, 999, 1000)] == [0, 0, 0]
    for minutes in (1, 10, 30, 31, 200, 481):
        assert cure.age(one, 1000 + minutes) == pytest.approx(minutes, abs=1e-4)
    assert cure.age(one, 1030) == 30  # the very end of its first stage: fingers may hold it


def test_the_end_of_two_equal_steps_is_the_gamma_quantile():
    """1 - e^-t (1 + t) = 0.95 at t = 4.743865 (95 % point of a gamma of shape 2, any table)."""
    assert progress(F.ALKYD_ENAMEL, 1) == 1
    for share in (0.1, 0.5, 0.9):
        time = share * 4.743865
        by_hand = (1 - math.exp(-time) * (1 + time)) / 0.95
        assert progress(F.ALKYD_ENAMEL, share) == pytest.approx(by_hand, rel=1e-6)
        first_order = (1 - 0.05**share) / 0.95  # assumed: 95 % has reacted
        assert progress(F.TWO_PACK, share) == pytest.approx(first_order, rel=1e-9)
        assert progress(F.WATERBORNE_ACRYLIC, share) == share
    assert (progress(F.DECAL, -0.5), progress(F.DECAL, 1.5)) == (0, 1)


def test_a_path_is_sampled_evenly_from_end_to_end():
    cure = steady(23)
    one = film(Coating(name="x", family=F.WATERBORNE_ACRYLIC))
    path = film_path(cure, one, 0, 100, points=5)
    assert [point.minute for point in path] == [0, 25, 50, 75, 100]
    assert [point.minute for point in film_path(cure, one, 0, 100, points=2)] == [0, 100]
    through = cure.target(one, State.DRY_THROUGH)
    assert path[2].progress == pytest.approx(50 / through, abs=1e-4)
    for end, count in ((0, 5), (9, 1)):
        with pytest.raises(Refused):
            film_path(cure, one, 0, end, points=count)


def test_a_minute_of_a_course_is_taken_in_its_middle():
    """From 15 °C at noon to 27 °C at midnight a degree more each hour: no minute is the next."""
    warming = Cure(room(*points(("00:00", 15, 50), ("12:00", 15, 50), ("23:59", 27, 50))), WARSAW)
    air = warming.air("bench")
    course = Course(air, HARDENING, Band.NOMINAL)
    noon = at("2031-03-06 12:00")
    for minute in (noon + 1, noon + 300, noon + 700):
        by_hand = HARDENING.rate(air.at(minute + 0.5)) * MILLION
        assert course.rate(minute) == round(by_hand) == course.between(minute, minute + 1)
        assert course.rate(minute) != round(HARDENING.rate(air.at(minute - 0.5)) * MILLION)


def test_what_is_won_is_reached_in_the_minute_that_wins_it():
    """At reference a million each minute: nothing at once, and one more takes a second minute."""
    course = Course(steady(23).air("bench"), HARDENING, Band.NOMINAL)
    assert [course.reach(100, gain) for gain in (-5, 0, 1, MILLION, MILLION + 1)] == [
        100, 100, 101, 101, 102,
    ]  # fmt: skip
    assert [course.reach(100, gain, up=False) for gain in (1, MILLION - 1, MILLION)] == [
        100, 100, 101,
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("warmest_c", "minutes"), [(23, 240), (33, 123), (13, 480), (9, 480), (0, 480), (31, 140)]
)
def test_the_life_of_a_two_pack_goes_by_its_reaction(warmest_c, minutes):
    """exp(50 000 / 8.314 (1/T - 1/296.15)) of 240 min, and no more than twice that in the cold."""
    by_hand = 240 * math.exp(50_000 / GAS * colder(warmest_c))
    assert minutes == int(min(480, by_hand + 1e-9))
    assert pot_life(240, warmest_c) == minutes
    assert pot_life(1, 60) == 1
