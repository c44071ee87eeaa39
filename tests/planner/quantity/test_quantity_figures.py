"""Every stated number of amounts, and amounts at the edge of what they decide.

Sources stand with the figures; what is not published is assumed or common practice.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from amount_books import (
    FINE,
    GREEN,
    NOW,
    PER_CM2_ML,
    SAND,
    START,
    cart,
    entry,
    key,
    plan_of,
    step,
    yard,
)

from planner.passes import expand_all
from planner.quantity.areas import BOX_M
from planner.quantity.coverage import share_of
from planner.quantity.film_volume import amount_ml
from planner.quantity.leftover_mixes import kept
from planner.quantity.loads import fill, used_by
from planner.quantity.rinsing import RINSE_ML, WIPE_ML
from planner.quantity.shared_mixes import stirrings
from planner.quantity.shopping import shopping
from planner.quantity.stock import old_bottle, stock_now
from planner.quantity.transfer import transfer_efficiency
from planner.values.coating import Coating, Family
from planner.values.gear import Airbrush
from planner.values.mix import Mix, Portion
from planner.values.project import Used
from planner.values.step import Stage, Tool
from planner.values.supplies import Leftover, Supplies

F = Family


@pytest.mark.parametrize(
    ("tool", "stage", "likely", "least", "most"),
    [
        (Tool.AIRBRUSH, Stage.BASE, 0.30, 0.15, 0.50),  # small targets, R. Joseph 2009; assumed
        (Tool.CAN, Stage.BASE, 0.25, 0.15, 0.40),  # 40 CFR 60.313; the span is assumed
        (Tool.BRUSH, Stage.BASE, 0.95, 0.9, 1.0),  # assumed
        (Tool.HAND, Stage.BASE, 0.95, 0.9, 1.0),
        (Tool.SPONGE, Stage.CHIP, 0.65, 0.5, 0.8),  # assumed
        (Tool.CLOTH, Stage.BASE, 0.65, 0.5, 0.8),
        (Tool.BRUSH, Stage.WASH, 0.65, 0.5, 0.8),
        (Tool.BRUSH, Stage.OIL_WASH, 0.65, 0.5, 0.8),
        (Tool.BRUSH, Stage.FILTER, 0.65, 0.5, 0.8),
        (Tool.AIRBRUSH, Stage.WASH, 0.30, 0.15, 0.50),
    ],
)
def test_what_stays_on_the_model(tool, stage, likely, least, most):
    told = transfer_efficiency(step("x", "sand", tool, stage))
    assert (told.fraction, told.least, told.most) == (likely, least, most)


def test_an_airbrush_with_a_figure_of_its_own():
    own = Airbrush(name="own", transfer=0.42)
    told = transfer_efficiency(step("x", "sand"), own)
    assert (told.fraction, told.least, told.most, told.status) == (0.42, 0.42, 0.42, None)
    assert transfer_efficiency(step("x", "sand", Tool.BRUSH), own).fraction == 0.95
    assert transfer_efficiency(step("x", "sand"), FINE).fraction == 0.30


@pytest.mark.parametrize(
    ("stage", "share"),
    [
        (Stage.HIGHLIGHT, 0.4),
        (Stage.DRY_BRUSH, 0.15),
        (Stage.WASH, 0.3),
        (Stage.OIL_WASH, 0.3),
        (Stage.CHIP, 0.05),
        (Stage.WEATHER, 0.3),
        (Stage.BASE, 1.0),
        (Stage.VARNISH, 1.0),
    ],
)
def test_usual_shares_of_a_place(stage, share):
    """All assumed."""
    coat = step("x", "sand", Tool.BRUSH, stage, share=None)
    assert share_of(cart("a", 100, (coat,)), coat, "tub/all over").fraction == share
    given = step("x", "sand", Tool.BRUSH, stage, share=0.77)
    assert share_of(cart("a", 100, (given,)), given, "tub/all over").fraction == 0.77


def test_colours_of_a_camouflage_share_a_place_alike():
    """Two colours and the coat below them: a third each."""
    coats = [
        step(n, c, Tool.BRUSH, Stage.CAMO, share=None) for n, c in (("a", "sand"), ("b", "green"))
    ]
    assert share_of(cart("m", 9, tuple(coats)), coats[0], "tub/all over").fraction == 1 / 3
    assert share_of(cart("m", 9, (coats[0],)), coats[0], "tub/all over").fraction == 1 / 2


def test_the_other_figures():
    """A box for a missing area; a rinse and a wipe: all assumed."""
    assert BOX_M == (6.0, 2.5, 2.5)
    assert (RINSE_ML, WIPE_ML) == (5.0, 3.0)


def test_a_volume_by_identity():
    """100 cm² × 20 µm are 0.2 ml of solids; of 40 % solids 0.5 ml; half is lost: 1 ml."""
    assert amount_ml(100, 20, 0.4, 0.5) == pytest.approx(1.0)
    assert amount_ml(100, 20, 0.4, 0.5, coats=3) == pytest.approx(3.0)
    assert amount_ml(100, 20, 1, 1) == pytest.approx(0.2)


@pytest.mark.parametrize(
    ("family", "years"),
    [
        (F.WATERBORNE_ACRYLIC, 3),
        (F.SOLVENT_LACQUER, 5),
        (F.ALKYD_ENAMEL, 5),
        (F.TWO_PACK, 1),
        (F.CYANOACRYLATE, 1),
        (F.SOLVENT_CEMENT, 3),
        (F.WHITE_GLUE, 2),
        (F.MASKING_FLUID, 1),
        (F.CHIPPING_FLUID, 3),
        (F.DECAL, 5),
        (F.ARTISTS_OIL, None),
        (F.ALCOHOL_INK, None),
        (F.PIGMENT, None),
        (F.WHITE_SPIRIT, None),
    ],
)
def test_from_when_a_bottle_is_worth_a_look(family, years):
    """Common practice, no source; a year has 365.25 days."""
    opened = date(2020, 1, 1)
    bottle = Coating(name="x", family=family, opened=opened)
    if years is None:
        assert old_bottle(bottle, opened + timedelta(days=20_000)) == ""
        return
    last = int(years * 365.25 - 0.001)  # days that are less than so many years
    assert old_bottle(bottle, opened + timedelta(days=last)) == ""
    told = old_bottle(bottle, opened + timedelta(days=last + 1))
    assert told.startswith(f"opened {years} year{'s' if years > 1 else ''} ago")
    twice = old_bottle(bottle, opened + timedelta(days=int(2 * years * 365.25) + 1))
    assert twice.startswith(f"opened {2 * years} years ago")


# -- at the edge --------------------------------------------------------------------------------


def test_a_load_without_areas_is_shared_alike_and_one_with_areas_by_them():
    coats = (step("base", "sand"),)
    bare = yard(cart("a", 0, coats), cart("b", 0, coats))
    load = fill(bare, "sand", expand_all(bare), "fine")
    assert load is not None
    assert load.share_of(key("a", "base")) == pytest.approx(load.ml / 2)
    laid = yard(cart("a", 100, coats), cart("b", 300, coats))
    load = fill(laid, "sand", expand_all(laid), "fine")
    assert load is not None
    assert load.share_of(key("a", "base")) == pytest.approx(load.ml / 4)
    assert load.share_of(key("b", "base")) == pytest.approx(load.ml * 3 / 4)


def test_a_load_is_rounded_up_to_a_tenth_and_no_less_than_the_least():
    """Sprayed, 30 % stay: 100 cm² take 20/3500 × 100 / 0.3 = 1.905 ml, and 0.5 stay in the cup."""
    coats = (step("base", "sand"),)
    of = yard(cart("a", 100, coats))
    load = fill(of, "sand", expand_all(of), "fine")
    assert load is not None
    assert load.laid_ml == pytest.approx(100 * PER_CM2_ML / 0.3)
    assert load.ml == pytest.approx(2.5)  # 2.405 rounded up
    small = yard(cart("a", 1, coats))
    load = fill(small, "sand", expand_all(small), "fine")
    assert load is not None
    assert load.ml == pytest.approx(1.0)  # 0.019 + 0.5 is less than it sprays with


def test_what_is_less_than_a_hundredth_of_a_millilitre_is_not_logged():
    """0.005 ml and more are a hundredth, by rounding; what rounds to nothing is left out."""
    coats = (step("base", "sand", Tool.BRUSH),)
    for area, logged in ((0.5, 0), (2.0, 1)):  # × 20/3500 / 0.95: 0.003 and 0.012 ml
        of = yard(cart("a", area, coats))
        (one,) = expand_all(of)
        assert len(used_by(of, one)) == logged


def test_the_next_coat_from_the_bottle_runs_out_to_the_drop():
    """A stock of just what is needed does: only what is more than nothing runs out."""
    coats = (step("base", "sand", Tool.BRUSH),)
    needed = 100 * PER_CM2_ML / 0.95

    def runs_out(stock: float) -> bool:
        bottle = replace(SAND, in_stock_ml=stock)
        of = yard(cart("a", 100, coats), coatings=(bottle, GREEN), mixes=())
        line = next(one for one in shopping(of, None, NOW).lines if one.coating.name == "sand")
        return line.runs_out is not None

    assert not runs_out(needed)
    assert not runs_out(needed + 0.001)
    assert runs_out(needed - 0.001)


def test_a_brushed_mix_is_stirred_once_for_all_and_a_bottle_is_not():
    mix = Mix(
        name="half",
        portions=(Portion(coating="sand", parts=1), Portion(coating="green", parts=1)),
    )
    one = Mix(name="alone", portions=(Portion(coating="sand", parts=1),))
    for colour, stirred in (("half", 1), ("alone", 0), ("sand", 0)):
        coats = (step("base", colour, Tool.BRUSH),)
        of = yard(cart("a", 100, coats), cart("b", 100, coats), mixes=(mix, one))
        plan = plan_of(of, [[key("a", "base"), key("b", "base")]])
        found = stirrings(of, plan)
        assert len(found) == stirred
        assert [stirring.fillings for stirring in found] == [2] * stirred


def test_a_leftover_keeps_to_the_minute_and_is_named_by_what_it_holds():
    """Made at `START` and good for two days: its last minute is the one before that."""
    jar = Leftover(
        name="jar", made=START, portions=(Portion(coating="sand", parts=4),), ml=3, keeps_days=2
    )
    mixed = replace(
        jar,
        name="both",
        portions=(Portion(coating="green", parts=1), Portion(coating="sand", parts=1)),
    )
    of = yard(cart("a", 9, (step("base", "sand"),)), supplies=Supplies(leftovers=(jar, mixed)))
    until = NOW + 2 * 1440
    for now, usable in ((until - 1, True), (until, False), (until + 1, False)):
        assert [one.usable for one in kept(of, now)] == [usable] * 2
    alone, both = sorted(kept(of, NOW), key=lambda one: -len(one.colour))
    assert (alone.colour, alone.models, alone.until) == ("sand", ("yard/a",), until)
    assert (both.colour, both.models) == ("", ())


def test_what_was_logged_from_the_count_on_comes_off():
    """A pass begun at the very moment of the count is not in it."""
    coats = (step("base", "sand"),)
    used = (Used(coating="sand", ml=2.0),)
    log = (entry(key("a", "base"), START, None, used),)
    for counted, taken in ((START, 2.0), (START + timedelta(minutes=1), 0.0)):
        bottle = replace(SAND, in_stock_ml=10, counted=counted)
        of = yard(cart("a", 9, coats), coatings=(bottle, GREEN), mixes=(), log=log)
        stock = next(one for one in stock_now(of) if one.coating.name == "sand")
        assert stock.used_ml == taken
