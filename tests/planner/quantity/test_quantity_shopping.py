"""What runs out when, and what to buy: sums by hand over plans laid by hand."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from amount_books import (
    GREEN,
    NOW,
    PER_CM2_ML,
    SAND,
    START,
    THINNER,
    cart,
    entry,
    key,
    plan_of,
    step,
    yard,
)

from planner.quantity import Shopping, shopping
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.mix import Portion
from planner.values.project import Used
from planner.values.step import Stage, Tool
from planner.values.supplies import Consumable, Leftover, Supplies

BRUSHED = 0.95  # stays on the model, assumed
BASE = (step("base", "sand", Tool.BRUSH),)
DAY = 1440


def area_for(ml: float) -> float:
    """Return the area that so much neat paint covers once by brush."""
    return ml * BRUSHED / PER_CM2_ML


def three(stock: float, *, bottle: float = 17.0, margin: float = 0.0) -> Book:
    """Return three carts that take 4 ml of sand each."""
    models = [cart(name, area_for(4.0), BASE) for name in "abc"]
    sand = replace(SAND, in_stock_ml=stock, bottle_ml=bottle)
    return yard(*models, coatings=(sand, GREEN, THINNER), supplies=Supplies(margin_pct=margin))


def one_a_day(book: Book, order: str = "abc") -> Shopping:
    """Return the shopping where one cart is painted on each day from a Thursday on."""
    return shopping(book, plan_of(book, [[key(name, "base")] for name in order]), NOW)


@pytest.mark.parametrize(
    ("stock", "day", "model", "number"),
    [(0, 0, "a", 1), (3.9, 0, "a", 1), (4.1, 1, "b", 2), (8.1, 2, "c", 3), (11.9, 2, "c", 3)],
)
def test_it_runs_out_on_that_day_at_that_model(
    stock: float, day: int, model: str, number: int
) -> None:
    (line,) = one_a_day(three(stock)).lines
    assert line.needed_ml == pytest.approx(12.0)
    assert line.runs_out is not None
    assert line.runs_out.at == NOW + day * DAY + 10  # brushing begins ten minutes in
    assert line.runs_out.key == key(model, "base")
    assert (line.runs_out.model_number, line.runs_out.models) == (number, 3)
    assert line.buy_ml == pytest.approx(12.0 - stock)


def test_the_order_of_the_plan_decides_who_goes_without() -> None:
    (line,) = one_a_day(three(4.1), "cab").lines
    assert line.runs_out is not None
    assert line.runs_out.key.model == "a"


def test_enough_does_not_run_out() -> None:
    (line,) = one_a_day(three(12.1)).lines
    assert (line.runs_out, line.buy_ml, line.bottles) == (None, 0, 0)


@pytest.mark.parametrize(
    ("stock", "bottle", "margin", "bottles"),
    [
        (0, 17, 0, 1),  # 12 ml
        (0, 12, 0, 1),
        (0, 11.9, 0, 2),
        (0, 12, 10, 2),  # 13.2 ml
        (0, 5, 0, 3),
        (6, 5, 0, 2),
        (12.1, 17, 0, 0),
        (12.1, 17, 10, 1),  # enough, but not with the margin
        (13.3, 17, 10, 0),
        (2, 10, 100, 3),  # 24 ml - 2 ml
    ],
)
def test_bottles_are_rounded_up_with_the_margin(
    stock: float, bottle: float, margin: float, bottles: int
) -> None:
    (line,) = one_a_day(three(stock, bottle=bottle, margin=margin)).lines
    assert line.bottles == bottles


def test_a_pass_without_a_place_in_the_plan_comes_last_and_without_a_day() -> None:
    book = three(8.1)
    plan = plan_of(book, [[key("b", "base")], [key("c", "base")]])
    (line,) = shopping(book, plan, NOW).lines
    assert line.runs_out is not None
    assert (line.runs_out.key.model, line.runs_out.at) == ("a", None)


def test_without_a_plan_all_is_summed_up() -> None:
    (line,) = shopping(three(5.0), None, NOW).lines
    assert (line.needed_ml, line.buy_ml) == (pytest.approx(12.0), pytest.approx(7.0))


def test_what_stays_in_the_cup_is_needed_too() -> None:
    """Two loads on two evenings, each rounded up to a tenth: 2 × (2.0 + 0.5 ml)."""
    area = 2.0 * 0.30 / PER_CM2_ML
    book = yard(*(cart(name, area, (step("base", "sand"),)) for name in "ab"))
    together = plan_of(book, [[key("a", "base"), key("b", "base")]])
    apart = plan_of(book, [[key("a", "base")], [key("b", "base")]])
    (line,) = shopping(book, together, NOW).lines
    (other,) = shopping(book, apart, NOW).lines
    assert line.needed_ml == pytest.approx(4.5)
    assert other.needed_ml == pytest.approx(5.0)


def test_what_a_pass_under_way_has_used_is_not_asked_for_again() -> None:
    book = three(20.0)
    used = (Used(coating="sand", ml=1.5),)
    begun = entry(key("a", "base"), START, None, used)
    book = replace(book, projects=(replace(book.projects[0], log=(begun,)),))
    (line,) = shopping(book, None, NOW).lines
    assert (line.needed_ml, line.stock_ml) == (pytest.approx(10.5), pytest.approx(18.5))


def test_what_is_done_is_not_asked_for_again() -> None:
    book = three(20.0)
    done = entry(key("a", "base"), START, START + timedelta(hours=1))
    book = replace(book, projects=(replace(book.projects[0], log=(done,)),))
    (line,) = shopping(book, None, NOW).lines
    assert line.needed_ml == pytest.approx(8.0)


# --- half a bottle (common practice, no source) ------------------------------


@pytest.mark.parametrize(
    ("stock", "replaced"), [(0, False), (0.5, True), (8.4, True), (8.6, False), (40, False)]
)
def test_under_half_a_bottle_the_next_is_wanted_first(stock: float, replaced: bool) -> None:
    (line,) = one_a_day(three(stock)).lines
    assert line.replace is replaced


def test_an_old_bottle_is_said_where_it_is_needed() -> None:
    book = three(20)
    old = replace(book.coatings[0], opened=(START - timedelta(days=4000)).date())
    (line,) = one_a_day(replace(book, coatings=(old, *book.coatings[1:]))).lines
    assert line.old.startswith("opened 10 years ago")


# --- enough for all? ---------------------------------------------------------


@pytest.mark.parametrize(("stock", "covered"), [(0, 0), (4.1, 1), (8.1, 2), (11.9, 2), (12.1, 3)])
def test_enough_for_all_is_told_before_the_first(stock: float, covered: int) -> None:
    (sand,) = one_a_day(three(stock)).colours
    assert (sand.colour, sand.covered, len(sand.takers)) == ("sand", covered, 3)
    assert sand.enough is (covered == 3)
    assert sum(short.lacks_ml for short in sand.short) == pytest.approx(max(0, 12 - stock))
    assert sand.first == key("a", "base")
    assert [taker.ml for taker in sand.takers] == pytest.approx([4.0] * 3)


def test_another_colour_from_the_same_bottle_is_taken_off_before() -> None:
    """4 ml of sand go first; then two carts want 2 of 5 parts of 5 ml each."""
    tint = (step("tint", "thin sand", Tool.BRUSH, Stage.DETAIL),)
    alone = cart("z", area_for(4.0), BASE)
    pair = [cart(name, area_for(2.0), tint) for name in "ab"]
    book = yard(
        alone,
        *pair,
        coatings=(replace(SAND, in_stock_ml=7.0), replace(THINNER, in_stock_ml=99)),
    )
    order = [[key("z", "base"), key("a", "tint"), key("b", "tint")]]
    (thin,) = shopping(book, plan_of(book, order), NOW).colours
    assert (thin.colour, thin.covered) == ("thin sand", 1)
    assert [(s.coating, s.lacks_ml) for s in thin.short] == [("sand", pytest.approx(1.0))]


def test_a_colour_of_one_model_is_not_asked_about() -> None:
    book = yard(cart("a", 10, BASE))
    assert shopping(book, None, NOW).colours == ()


# --- consumables, what is at hand, areas -------------------------------------


def test_consumables_run_out_the_same_way() -> None:
    """Three passes of 0.4 m against 0.9 m: the third goes without; 10 % more is 1.32 m."""
    tape = Consumable(name="tape", unit="m", in_stock=0.9, per_pass=0.4, stages=(Stage.BASE,))
    spare = Consumable(name="swabs", unit="piece", per_pass=2, stages=(Stage.WIPE,))
    book = replace(three(99), supplies=Supplies(margin_pct=10, consumables=(tape, spare)))
    (line,) = one_a_day(book).consumables
    assert (line.name, line.needed) == ("tape", pytest.approx(1.2))
    assert line.buy == pytest.approx(1.32 - 0.9)
    assert line.runs_out is not None
    assert (line.runs_out.key.model, line.runs_out.at) == ("c", NOW + 2 * DAY + 10)


def test_a_pass_under_way_has_its_consumables_already() -> None:
    tape = Consumable(name="tape", unit="m", in_stock=9, per_pass=0.4, stages=(Stage.BASE,))
    book = replace(three(99), supplies=Supplies(consumables=(tape,)))
    begun = entry(key("a", "base"), START, None)
    book = replace(book, projects=(replace(book.projects[0], log=(begun,)),))
    (line,) = shopping(book, None, NOW).consumables
    assert (line.needed, line.stock) == (pytest.approx(0.8), pytest.approx(8.6))


def test_a_missing_area_is_named_once_and_nothing_is_invented() -> None:
    book = yard(cart("a", 0, (step("base", "sand", coats=2),)))
    found = shopping(book, None, NOW)
    (missing,) = found.no_area
    assert (missing.project, missing.model, missing.place) == ("yard", "a", "tub/all over")
    (line,) = found.lines
    assert (line.needed_ml, line.complete, line.bottles) == (0, False, 0)


def test_glue_in_a_mix_or_alone_is_to_be_at_hand() -> None:
    glue = Coating(name="cement", family=Family.SOLVENT_CEMENT)
    fix = (step("fix", "cement", Tool.BRUSH, Stage.DETAIL),)
    book = yard(cart("a", 0, fix), coatings=(SAND, THINNER, glue))
    found = shopping(book, None, NOW)
    assert (found.at_hand, found.lines, found.no_area) == (("cement",), (), ())


# --- leftovers ---------------------------------------------------------------


def jar(days: int, *portions: tuple[str, float], ml: float = 2.0) -> Leftover:
    return Leftover(
        name=f"jar {days}",
        ml=ml,
        made=START,
        keeps_days=days,
        portions=tuple(Portion(coating=name, parts=parts) for name, parts in portions),
    )


def test_leftovers_say_what_they_can_touch_up_and_until_when() -> None:
    thin = (step("base", "thin sand", Tool.BRUSH),)
    book = yard(cart("a", 10, thin), cart("b", 10, BASE))
    jars = (
        jar(9, ("thinner", 6), ("sand", 4)),  # 2 : 3 in other words
        jar(7, ("sand", 1)),
        jar(8, ("sand", 1), ("thinner", 9)),
        jar(1, ("sand", 1)),
    )
    book = replace(book, supplies=Supplies(leftovers=jars))
    found = shopping(book, None, NOW + 2 * DAY).leftovers
    assert [(item.leftover.name, item.colour, item.models, item.usable) for item in found] == [
        ("jar 1", "sand", ("yard/b",), False),
        ("jar 7", "sand", ("yard/b",), True),
        ("jar 8", "", (), True),
        ("jar 9", "thin sand", ("yard/a",), True),
    ]
    assert found[1].until == NOW + 7 * DAY


def test_an_empty_jar_touches_nothing_up() -> None:
    book = replace(
        yard(cart("a", 10, BASE)), supplies=Supplies(leftovers=(jar(9, ("sand", 1), ml=0),))
    )
    assert not shopping(book, None, NOW).leftovers[0].usable
