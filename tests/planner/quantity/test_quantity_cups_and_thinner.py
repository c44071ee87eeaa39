"""The size of a cup, thinner for rinsing and wiping, and "enough" only where areas are known."""

from __future__ import annotations

from dataclasses import replace

import pytest
from amount_books import FINE, NOW, SAND, THINNER, cart, key, plan_of, step, yard

from planner.quantity import loads, shopping
from planner.quantity.rinsing import RINSE_ML, WIPE_ML
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.step import Minutes, Stage, Step, Tool

LACQUER = Coating(name="lacquer", family=Family.SOLVENT_LACQUER, in_stock_ml=100)
STRONG = Coating(name="strong thinner", family=Family.LACQUER_THINNER, in_stock_ml=2)
OIL = Coating(name="oil", family=Family.ARTISTS_OIL, in_stock_ml=100)
SPIRIT = Coating(name="spirit", family=Family.WHITE_SPIRIT)


def sprayed(area_cm2: float, most_fill_ml: float | None) -> Book:
    """Return a cart that is sprayed with sand."""
    brush = replace(FINE, most_fill_ml=most_fill_ml)
    return yard(cart("a", area_cm2, (step("base", "sand"),)), airbrush=brush)


def test_what_a_cup_cannot_hold_is_told_as_so_many_fills() -> None:
    """The same amount in cups of 2.5 ml: its drops are those of one fill (20 a millilitre)."""
    (whole,) = loads(sprayed(400, 1000), plan_of(sprayed(400, 1000), [[key("a", "base")]]))
    book = sprayed(400, 2.5)
    (load,) = loads(book, plan_of(book, [[key("a", "base")]]))
    assert load.ml == pytest.approx(whole.ml)
    assert whole.fills == 1
    assert load.fills == -(-whole.ml // 2.5) > 1
    assert load.each_ml <= 2.5
    assert load.measures[0].ml == pytest.approx(load.ml / load.fills)
    assert load.share_of(key("a", "base")) == pytest.approx(load.ml)


def test_a_cup_that_nobody_measured_holds_the_usual() -> None:
    """Gravity cups hold 2 to 9 ml: common practice, no source."""
    assert 2 <= replace(FINE).cup_ml <= 9
    assert replace(FINE, least_fill_ml=20.0).cup_ml == 20.0


def test_rinsing_takes_the_right_thinner_and_water_comes_from_the_tap() -> None:
    book = yard(
        cart("a", 10, (step("base", "lacquer"), step("top", "sand"))),
        coatings=(replace(SAND, in_stock_ml=9), THINNER, LACQUER, STRONG),
        mixes=(),
    )
    found = shopping(book, plan_of(book, [[key("a", "base"), key("a", "top")]]), NOW)
    needed = {line.coating.name: line.needed_ml for line in found.lines}
    assert needed["strong thinner"] == RINSE_ML  # one load of lacquer
    assert "thinner" not in needed
    (line,) = (line for line in found.lines if line.coating.name == "strong thinner")
    assert line.runs_out is not None


def test_wiping_an_oil_wash_takes_white_spirit() -> None:
    wash = step("wash", "oil", Tool.BRUSH, Stage.OIL_WASH)
    wipe = Step(
        id="wipe", stage=Stage.WIPE, tool=Tool.CLOTH, touches=("tub",), minutes=Minutes(fixed=9)
    )
    book = yard(*(cart(name, 10, (wash, wipe)) for name in "ab"), coatings=(OIL, SPIRIT), mixes=())
    order = [[key(name, each) for name in "ab" for each in ("wash", "wipe")]]
    found = shopping(book, plan_of(book, order), NOW)
    needed = {line.coating.name: line.needed_ml for line in found.lines}
    assert needed["spirit"] == 2 * WIPE_ML


def test_nothing_is_enough_for_all_where_an_area_is_not_known() -> None:
    base = (step("base", "sand", Tool.BRUSH),)
    book = yard(cart("a", 10, base), cart("b", 0, base), coatings=(replace(SAND, in_stock_ml=99),),
                mixes=())  # fmt: skip
    (sand,) = shopping(book, plan_of(book, [[key("a", "base"), key("b", "base")]]), NOW).colours
    assert (sand.complete, sand.enough, sand.short) == (False, False, ())
    known = yard(cart("a", 10, base), cart("b", 10, base), coatings=book.coatings, mixes=())
    (sand,) = shopping(known, plan_of(known, [[key("a", "base"), key("b", "base")]]), NOW).colours
    assert sand.enough
