"""A stack of coats: they add, wet again, hold each other up, and keep their order."""

from __future__ import annotations

from dataclasses import replace

import pytest
from cure_rooms import WARSAW, at, film, points, room, steady
from drawn_examples import drawn
from hypothesis import assume, given
from hypothesis import strategies as st

from planner.cure import Band, Cure, film_um
from planner.cure.reference import DEEP, PRESUPPOSES
from planner.cure.stacking import bond_of
from planner.values.coating import Coating, Family, Finish, State
from planner.values.mix import Mix, Portion, film_of_mix
from planner.values.step import Application, Minutes, Stage, Step, Tool

HOUR, DAY = 60, 1440
START = at("2025-03-28 20:00")
LACQUER = Coating(name="clear", family=Family.SOLVENT_LACQUER, finish=Finish.GLOSS, dry_film_um=15)
ACRYLIC = Coating(name="colour", family=Family.WATERBORNE_ACRYLIC, dry_film_um=12)


def stacked(cure, coating, coats, between, thickness_um=None):
    """Return the last of some coats, each laid so many minutes after the one before."""
    found = film(coating, START, thickness_um)
    for number in range(1, coats):
        found = cure.over(film(coating, START + number * between, thickness_um), found)
    return found


def wait(cure, one, state, band=Band.LATE):
    return cure.ready_at(one, state, band) - one.laid


@pytest.mark.parametrize("coating", [LACQUER, ACRYLIC])
@pytest.mark.parametrize("state", DEEP)
def test_coats_add(coating, state):
    """Four coats within an evening wait longer than one, and less than all of it laid at once.

    Common practice, no source: several thin coats rather than one thick.
    """
    cure = steady(20)
    one, two, four = (wait(cure, stacked(cure, coating, coats, HOUR), state) for coats in (1, 2, 4))
    at_once = wait(cure, film(coating, START, 4 * coating.dry_film_um), state)
    assert one < two <= four < at_once


@pytest.mark.parametrize("coating", [LACQUER, ACRYLIC])
def test_time_between_coats_is_not_lost(coating):
    """Given a day between them, four coats leave little more to wait for than one."""
    cure = steady(20)
    hour, day = (
        wait(cure, stacked(cure, coating, 4, between), State.DRY_THROUGH)
        for between in (HOUR, 2 * DAY)
    )
    assert day < hour
    assert day < 3 * wait(cure, film(coating, START), State.DRY_THROUGH)


def test_coats_do_not_keep_each_other_from_the_next_coat():
    cure = steady(20)
    for state in set(State) - set(DEEP):
        assert wait(cure, stacked(cure, ACRYLIC, 4, 30), state) == wait(
            cure, film(ACRYLIC, START), state
        )


def test_what_has_reacted_is_not_wetted_again():
    cure = steady(20)
    cured = film(Coating(name="x", family=Family.TWO_PACK), START - 30 * DAY)
    for family in Family:
        top = film(Coating(name="y", family=family), START)
        assert cure.over(top, cured) == top


@given(
    st.sampled_from(Family),
    st.sampled_from(Family),
    st.sampled_from(DEEP),
    st.sampled_from(Band),
    st.integers(10, 5000),
    st.integers(1, 600),
    st.integers(6, 30),
)
@drawn(60)
def test_a_coat_laid_later_over_another_is_never_ready_sooner(
    upper, lower, state, band, after, more, warmth
):
    cure = Cure(room(*points(("06:00", warmth, 70), ("20:00", warmth + 4, 45))), WARSAW)
    below = film(Coating(name="b", family=lower), START)
    first, second = (
        cure.ready_at(
            cure.over(film(Coating(name="u", family=upper), START + minutes), below), state, band
        )
        for minutes in (after, after + more)
    )
    assume(first is not None and second is not None)
    assert first <= second


@given(
    st.sampled_from(Family),
    st.sampled_from(Finish),
    st.floats(0.5, 1000),
    st.floats(0, 100),
    st.integers(0, 3000),
    st.sampled_from(Band),
    st.integers(6, 35),
)
@drawn(80)
def test_states_of_one_film_are_never_out_of_order(
    family, finish, thickness, below, between, band, warmth
):
    """At any thickness, in any stack, buried or not (order of ASTM D1640)."""
    cure = steady(warmth, 60)
    coating = Coating(name="x", family=family, finish=finish)
    one = film(coating, START + between, thickness)
    if below >= 0.5:
        one = cure.over(one, film(coating, START, below))
    for top in (one, replace(one, buried=START + between + 200)):
        ready = {state: cure.ready_at(top, state, band) for state in State}
        for above, needed in PRESUPPOSES.items():
            for under in needed:
                assert ready[under] is None or ready[above] is None or ready[under] <= ready[above]


def test_an_oil_wash_takes_another_coat_before_it_is_dry_through():
    """So neither a matte nor a hard clear can come sooner than a gloss one."""
    cure = steady(18, 55)
    for family in (Family.ARTISTS_OIL, Family.ALKYD_ENAMEL):
        for um in (1.0, 2.0, 3.0, 5.0):
            wash = film(Coating(name="wash", family=family, dry_film_um=um), START)
            recoat = cure.ready_at(wash, State.DRY_TO_RECOAT)
            assert recoat <= cure.ready_at(wash, State.DRY_THROUGH)


def test_a_buried_film_goes_on_at_two_thirds_of_its_pace():
    """Assumed; what it had reached before stays reached, and the surface does not matter."""
    cure = steady(23)
    oil = film(Coating(name="oil", family=Family.ARTISTS_OIL, dry_film_um=3), START)
    alone = wait(cure, oil, State.DRY_THROUGH)
    covered = replace(oil, buried=START + alone // 2)
    assert wait(cure, covered, State.DRY_THROUGH) == pytest.approx(alone * 1.25, abs=2)
    assert wait(cure, replace(oil, buried=START + alone), State.DRY_THROUGH) == alone
    for state in set(State) - set(DEEP):
        assert wait(cure, covered, state) == wait(cure, oil, state)


def test_what_never_dries_holds_the_next_coat_for_ever():
    wet = steady(20, 100)
    below = film(ACRYLIC, START)
    assert wet.ready_at(wet.over(film(LACQUER, START + DAY), below), State.DRY_THROUGH) is None


def test_a_thousand_coats_hang_together():
    """More than the interpreter lets one ask inside another; the deepest is asked first."""
    cure = steady(23)
    top = stacked(cure, ACRYLIC, coats=1200, between=1)
    assert wait(cure, top, State.DRY_THROUGH) > wait(cure, film(ACRYLIC, START), State.DRY_THROUGH)


def step(stage, tool=Tool.BRUSH):
    laid = Application(places=("hull",), coating="colour")
    return Step(id="x", stage=stage, applications=(laid,), tool=tool, minutes=Minutes(fixed=5))


@pytest.mark.parametrize(
    ("stage", "tool", "most_um"),
    [
        (Stage.DRY_BRUSH, Tool.BRUSH, 2),
        (Stage.CHIP, Tool.SPONGE, 4),
        (Stage.DETAIL, Tool.SPONGE, 4),
        (Stage.WASH, Tool.BRUSH, 3),
        (Stage.OIL_WASH, Tool.BRUSH, 3),
        (Stage.FILTER, Tool.BRUSH, 2),
    ],
)
def test_touches_dry_by_the_paint_that_they_carry(stage, tool, most_um):
    """A dry-brushed edge takes no day: common practice, no source; the films are assumed."""
    assert film_um(step(stage, tool), ACRYLIC) == most_um
    thinner = replace(ACRYLIC, dry_film_um=1.0)
    assert film_um(step(stage, tool), thinner) == 1.0
    assert film_um(step(Stage.BASE), ACRYLIC) == ACRYLIC.dry_film_um


def test_a_dry_brushed_edge_is_ready_the_same_evening():
    cure = steady(18, 55)
    touched = film(ACRYLIC, START, film_um(step(Stage.DRY_BRUSH), ACRYLIC))
    assert wait(cure, touched, State.DRY_THROUGH) <= 2 * HOUR
    assert wait(cure, film(ACRYLIC, START), State.DRY_THROUGH) > 4 * HOUR


def test_strong_solvents_go_deeper_than_water():
    strong = bond_of(Family.SOLVENT_LACQUER, Family.WATERBORNE_ACRYLIC)
    water = bond_of(Family.WATERBORNE_ACRYLIC, Family.WATERBORNE_ACRYLIC)
    assert strong.depth > water.depth > 0
    assert bond_of(Family.WATERBORNE_ACRYLIC, Family.SOLVENT_LACQUER) is None


def test_a_retarder_slows_every_state():
    """Told is only that it slows; that a tenth doubles every time is assumed."""
    cure = steady(20)
    slow = replace(LACQUER, retarder=0.1)
    for state in State:
        for band in Band:
            plain = wait(cure, film(LACQUER, START), state, band)
            assert wait(cure, film(slow, START), state, band) == pytest.approx(2 * plain, abs=2)


def test_a_mix_with_retarder_dries_slower_than_its_paint():
    known = {
        "clear": LACQUER,
        "thinner": Coating(name="thinner", family=Family.LACQUER_THINNER),
        "retarder": Coating(name="retarder", family=Family.RETARDER),
    }
    plain = Mix(
        name="a", portions=(Portion(coating="clear", parts=9), Portion(coating="thinner", parts=1))
    )
    slow = Mix(
        name="b", portions=(Portion(coating="clear", parts=9), Portion(coating="retarder", parts=1))
    )
    assert film_of_mix(plain, known) is LACQUER
    assert film_of_mix(slow, known).retarder == pytest.approx(0.1)
