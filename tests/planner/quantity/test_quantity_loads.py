"""Shares, transfer and what goes into the cup, by hand from areas and films."""

from __future__ import annotations

from dataclasses import replace

import pytest
from amount_books import FINE, GREEN, NOW, PER_CM2_ML, SAND, cart, key, plan_of, step, yard

from planner.passes import expand_all
from planner.quantity import coating_needed, fill, loads, share_of, transfer_efficiency, used_by
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.gear import Gear
from planner.values.mix import Mix, Portion
from planner.values.step import Application, Minutes, Stage, Step, Tool

SPRAY = 0.30  # caught of the spray, assumed


def the(book: Book, model: str, name: str, coat: int = 1):
    (pass_,) = [pass_ for pass_ in expand_all(book) if pass_.key == key(model, name, coat)]
    return pass_


# --- shares ------------------------------------------------------------------


def test_a_share_that_is_given_holds() -> None:
    wash = step("wash", "sand", Tool.BRUSH, Stage.WASH, share=0.5)
    share = share_of(cart("a", 100, (wash,)), wash, "tub/all over")
    assert (share.fraction, share.given) == (0.5, True)


@pytest.mark.parametrize("stage", [Stage.PRIME, Stage.BASE, Stage.FILTER, Stage.MATTE])
def test_what_goes_all_over_takes_the_whole_place(stage: Stage) -> None:
    coat = step("one", "sand", stage=stage, share=None)
    assert share_of(cart("a", 100, (coat,)), coat, "tub/all over").fraction == 1


@pytest.mark.parametrize(
    ("less", "more"),
    [
        (Stage.CHIP, Stage.DRY_BRUSH),  # chips on edges, dry-brush on all that is raised
        (Stage.DRY_BRUSH, Stage.WASH),
        (Stage.WASH, Stage.BASE),  # recesses only
        (Stage.HIGHLIGHT, Stage.BASE),
    ],
)
def test_usual_shares_are_in_the_order_of_the_trade_and_assumed(less: Stage, more: Stage) -> None:
    """Common practice, no source: only the order is known."""
    few, many = (
        share_of(cart("a", 100, (coat,)), coat, "tub/all over")
        for coat in (step("one", "sand", Tool.BRUSH, stage, share=None) for stage in (less, more))
    )
    assert 0 < few.fraction < many.fraction <= 1
    assert (few.given, many.given) == (False, False)


@pytest.mark.parametrize("colours", [1, 2, 3])
def test_colours_of_a_camouflage_and_the_coat_below_share_a_place(colours: int) -> None:
    """Shares of all colours make one, what the base keeps included."""
    steps = [
        step(f"camo-{n}", name, stage=Stage.CAMO, share=None)
        for n, name in enumerate(["green", "brown", "black"][:colours])
    ]
    one = cart("a", 100, (step("base", "sand"), *steps))
    shares = [share_of(one, camo, "tub/all over").fraction for camo in steps]
    assert shares == pytest.approx([1 / (1 + colours)] * colours)
    assert sum(shares) < 1  # some of the base is still seen


# --- what a pass takes -------------------------------------------------------


@pytest.mark.parametrize(
    ("tool", "caught", "ml"),
    [
        # 591.84 cm², 20 µm, 35 % solids: 13.53, 11.27, 3.56 ml, recomputed apart
        (Tool.CAN, 0.25, 13.53),
        (Tool.AIRBRUSH, 0.30, 11.27),
        (Tool.BRUSH, 0.95, 3.56),
    ],
)
def test_a_pass_takes_area_by_film(tool: Tool, caught: float, ml: float) -> None:
    book = yard(cart("a", 591.84, (step("base", "sand", tool),)))
    one = the(book, "a", "base")
    assert transfer_efficiency(one.step).fraction == caught
    (take,) = coating_needed(book, one)
    assert take.ml == pytest.approx(ml, abs=0.005)
    assert take.complete


def test_the_airbrush_s_own_transfer_counts() -> None:
    """591.84 cm² at 65 % caught: 5.20 ml, recomputed apart."""
    brush = replace(FINE, transfer=0.65)
    book = yard(cart("a", 591.84, (step("base", "sand"),)), airbrush=brush)
    one = the(book, "a", "base")
    assert coating_needed(book, one, "fine")[0].ml == pytest.approx(5.20, abs=0.005)
    assert coating_needed(book, one)[0].ml == pytest.approx(5.20, abs=0.005)  # the only one
    two = replace(book, gear=Gear(airbrushes=(brush, replace(FINE, name="broad"))))
    assert coating_needed(two, one)[0].ml == pytest.approx(11.27, abs=0.005)  # not known which
    assert transfer_efficiency(one.step, brush).status is None  # no claim of ours
    by_hand = yard(cart("a", 591.84, (step("base", "sand", Tool.BRUSH),)), airbrush=brush)
    assert coating_needed(by_hand, the(by_hand, "a", "base"), "fine")[0].ml == pytest.approx(
        3.56, abs=0.01
    )


def test_a_share_takes_its_part() -> None:
    book = yard(cart("a", 591.84, (step("camo", "sand", stage=Stage.CAMO, share=0.25),)))
    assert coating_needed(book, the(book, "a", "camo"))[0].ml == pytest.approx(11.27 / 4, abs=0.005)


def test_a_place_without_area_makes_it_incomplete() -> None:
    book = yard(cart("a", 0, (step("base", "sand"),)))
    (take,) = coating_needed(book, the(book, "a", "base"))
    assert (take.ml, take.complete) == (0, False)


# --- loads -------------------------------------------------------------------


def area_for(ml: float) -> float:
    """Return the area on which so much neat sand is sprayed, by identity of volumes."""
    return ml * SPRAY / PER_CM2_ML


def test_one_load_serves_all_until_it_is_changed() -> None:
    """2.0 + 3.0 ml of sand, 0.5 ml lost at the change: 5.5 ml; green 2.0 + 0.5 ml."""
    first = (step("base", "sand"), step("camo", "green", stage=Stage.CAMO))
    book = yard(cart("a", area_for(2.0), first), cart("b", area_for(3.0), (step("base", "sand"),)))
    plan = plan_of(book, [[key("a", "base"), key("b", "base"), key("a", "camo")]])
    sand, green = loads(book, plan)
    assert (sand.colour, sand.passes) == ("sand", (key("a", "base"), key("b", "base")))
    assert (sand.laid_ml, sand.lost_ml) == (pytest.approx(5.0), 0.5)
    assert sand.ml == pytest.approx(5.5)
    assert [measure.drops for measure in sand.measures] == [110]
    assert (green.passes, green.ml) == ((key("a", "camo"),), pytest.approx(2.5))
    assert [(one.least_fill, one.mixed) for one in (sand, green)] == [(False, False)] * 2
    assert (sand.start, sand.end) == (NOW, NOW + 100)


def test_the_same_colour_on_another_evening_is_another_load() -> None:
    book = yard(cart("a", 50, (step("base", "sand", coats=2),)))
    plan = plan_of(book, [[key("a", "base", 1)], [key("a", "base", 2)]])
    assert [load.passes for load in loads(book, plan)] == [
        (key("a", "base", 1),),
        (key("a", "base", 2),),
    ]


def test_a_mix_of_six_point_four_millilitres() -> None:
    """5.9 ml laid and 0.5 ml lost: 6.4 ml, 51 drops and 77 drops by hand."""
    neat = 5.9 * 2 / 5  # two of five parts leave a film
    book = yard(cart("a", area_for(neat), (step("base", "thin sand"),)))
    (load,) = loads(book, plan_of(book, [[key("a", "base")]]))
    assert load.ml == pytest.approx(6.4)
    assert [(measure.coating, measure.drops) for measure in load.measures] == [
        ("sand", 51),
        ("thinner", 77),
    ]
    assert load.mixed


def test_less_than_the_cup_s_least_fill_does_not_spray() -> None:
    """0.1 ml laid and 0.5 ml lost are 0.6 ml; the cup must hold 1 ml."""
    book = yard(cart("a", area_for(0.1), (step("base", "sand"),)))
    (load,) = loads(book, plan_of(book, [[key("a", "base")]]))
    assert (load.ml, load.least_fill) == (pytest.approx(1.0), True)
    assert load.share_of(key("a", "base")) == load.ml


def test_a_load_is_rounded_up_to_a_tenth() -> None:
    book = yard(cart("a", area_for(2.01), (step("base", "sand"),)))
    (load,) = loads(book, plan_of(book, [[key("a", "base")]]))
    assert load.ml == pytest.approx(2.6)


@pytest.mark.parametrize(("life", "suffices"), [(100, True), (99, False)])
def test_whether_a_mix_lives_as_long_as_it_is_needed(life: int, suffices: bool) -> None:
    """Loaded at 0, the second pass ends after 100 minutes."""
    short = Mix(
        name="short",
        portions=(Portion(coating="sand", parts=1), Portion(coating="thinner", parts=1)),
        life_minutes=life,
    )
    book = yard(
        cart("a", 20, (step("base", "short"),)),
        cart("b", 20, (step("base", "short"),)),
        mixes=(short,),
    )
    (load,) = loads(book, plan_of(book, [[key("a", "base"), key("b", "base")]]))
    assert (load.life_minutes, load.suffices) == (life, suffices)


def test_what_is_logged_is_no_load_any_more() -> None:
    book = yard(cart("a", 20, (step("base", "sand"),)))
    plan = plan_of(book, [[key("a", "base")]])
    gone = replace(
        plan, placements=tuple(replace(placement, logged=True) for placement in plan.placements)
    )
    assert loads(book, gone) == ()


def test_a_palette_loses_nothing_in_a_cup() -> None:
    book = yard(cart("a", 591.84, (step("base", "thin sand", Tool.BRUSH),)))
    load = fill(book, "thin sand", (the(book, "a", "base"),))
    assert load is not None
    # 3.56 ml of sand (recomputed apart) in two of five parts: 8.9 ml
    assert (load.lost_ml, load.ml) == (0, pytest.approx(3.56 * 5 / 2, abs=0.1))


def test_glue_is_not_filled_in() -> None:
    cement = Coating(name="cement", family=Family.SOLVENT_CEMENT)
    glue = step("glue", "cement", Tool.BRUSH, Stage.DETAIL)
    book = yard(cart("a", 20, (glue,)), coatings=(SAND, GREEN, cement), mixes=())
    assert fill(book, "cement", (the(book, "a", "glue"),)) is None
    assert used_by(book, the(book, "a", "glue")) == ()


# --- what is used ------------------------------------------------------------


def test_passes_use_up_the_whole_load_between_them() -> None:
    """Two thirds and a third of 3.5 ml of the mix: parts 2 : 3 of each."""
    neat = 3.0 * 2 / 5
    book = yard(
        cart("a", area_for(neat * 2 / 3), (step("base", "thin sand"),)),
        cart("b", area_for(neat / 3), (step("base", "thin sand"),)),
    )
    (load,) = loads(book, plan_of(book, [[key("a", "base"), key("b", "base")]]))
    assert load.ml == pytest.approx(3.5)
    used = {m: dict_of(used_by(book, the(book, m, "base"), "fine", load)) for m in "ab"}
    assert used["a"] == {
        "sand": pytest.approx(3.5 * 2 / 3 * 0.4, abs=0.005),
        "thinner": pytest.approx(3.5 * 2 / 3 * 0.6, abs=0.005),
    }
    total = sum(sum(use.values()) for use in used.values())
    assert total == pytest.approx(3.5, abs=0.02)


def test_without_a_load_only_what_leaves_the_tool_is_used() -> None:
    book = yard(cart("a", area_for(2.0), (step("base", "sand"),)))
    assert dict_of(used_by(book, the(book, "a", "base"))) == {"sand": pytest.approx(2.0)}


def test_a_coating_in_two_colours_of_a_pass_is_used_once() -> None:
    both = Step(
        id="detail",
        stage=Stage.DETAIL,
        minutes=Minutes(fixed=10),
        applications=(
            Application(places=("tub/left",), coating="sand"),
            Application(places=("tub/right",), coating="thin sand"),
        ),
    )
    one = cart("a", 0, ())
    tub = replace(
        one.parts[0],
        places=tuple(
            replace(one.parts[0].places[0], name=name, area_cm2=100) for name in ("left", "right")
        ),
    )
    book = yard(replace(one, parts=(tub,), steps=(both,)))
    used = dict_of(used_by(book, the(book, "a", "detail")))
    sand = 100 * PER_CM2_ML / 0.95  # brushed, the same from the bottle and thinned
    assert used["sand"] == pytest.approx(2 * sand, abs=0.005)
    assert used["thinner"] == pytest.approx(sand * 1.5, abs=0.005)


def dict_of(used) -> dict[str, float]:
    return {use.coating: use.ml for use in used}
