"""Mixes that one stirring would do for: sums and hours by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest
from amount_books import (
    NOW,
    PER_CM2_ML,
    START,
    THIN_SAND,
    cart,
    entry,
    key,
    plan_of,
    step,
    yard,
)

from planner.quantity import planned_use, stirrings
from planner.values.book import Book
from planner.values.step import Tool

BRUSHED, SPRAYED = 0.95, 0.30  # stays on the model, assumed
TWO_OF_FIVE = 2 / 5  # parts of the mix that leave a film


def area_for(ml: float, stays: float) -> float:
    """Return the area that so much of the mix covers once."""
    return ml * TWO_OF_FIVE * stays / PER_CM2_ML


def washed(life: int, ml: float = 1.0, names: str = "abc") -> Book:
    """Return carts brushed with the mix, an hour apart in the plans below."""
    models = [
        cart(name, area_for(ml, BRUSHED), (step("base", "thin sand", Tool.BRUSH),))
        for name in names
    ]
    return yard(*models, mixes=(replace(THIN_SAND, life_minutes=life),))


def one_evening(book: Book, names: str = "abc"):
    return stirrings(book, plan_of(book, [[key(name, "base") for name in names]]))


def test_one_stirring_does_for_all_within_its_life() -> None:
    """Begun at 10, 70 and 130 min, half an hour each: 150 min from first to last."""
    (one,) = one_evening(washed(150))
    assert (one.colour, one.fillings) == ("thin sand", 3)
    assert one.passes == (key("a", "base"), key("b", "base"), key("c", "base"))
    assert one.ml == pytest.approx(3.0, abs=0.3)  # each is rounded up to a tenth
    assert [portion.ml for portion in one.measures] == pytest.approx(
        [one.ml * TWO_OF_FIVE, one.ml * 3 / 5]
    )
    assert (one.start, one.end, one.keeps_until) == (NOW + 10, NOW + 160, NOW + 160)


def test_a_shorter_life_takes_two_stirrings_and_one_alone_is_none() -> None:
    (one,) = one_evening(washed(149))
    assert one.passes == (key("a", "base"), key("b", "base"))
    assert one_evening(washed(30)) == ()


def test_two_loads_of_an_evening_and_another_day() -> None:
    """2 + 0.5 ml each evening; the second evening begins 24 h after the first."""
    two = (step("base", "thin sand", coats=2),)
    model = cart("a", area_for(2.0, SPRAYED), two)
    plan_for = [[key("a", "base", 1)], [key("a", "base", 2)]]
    kept = yard(model, mixes=(replace(THIN_SAND, life_minutes=1480),))
    (stirring,) = stirrings(kept, plan_of(kept, plan_for))
    assert (stirring.fillings, stirring.ml) == (2, pytest.approx(5.0))
    fresh = yard(model, mixes=(replace(THIN_SAND, life_minutes=1479),))
    assert stirrings(fresh, plan_of(fresh, plan_for)) == ()


def test_a_coating_from_the_bottle_is_not_stirred_up() -> None:
    models = [cart(name, 50, (step("base", "sand", Tool.BRUSH),)) for name in "ab"]
    assert one_evening(yard(*models), "ab") == ()


def test_without_areas_there_is_nothing_to_stir() -> None:
    assert one_evening(washed(500, ml=0)) == ()


def test_what_is_planned_to_be_used_is_known_until_it_is_begun() -> None:
    """Two carts of 1.5 ml and 0.5 ml lost: 3.5 ml, half of it each, 2 of 5 parts sand."""
    models = [cart(name, area_for(1.5, SPRAYED), (step("base", "thin sand"),)) for name in "ab"]
    book = yard(*models)
    plan = plan_of(book, [[key("a", "base"), key("b", "base")]])
    used = {one.coating: one.ml for one in planned_use(book, plan, key("b", "base"))}
    assert used == {"sand": pytest.approx(0.7), "thinner": pytest.approx(1.05)}
    log = (entry(key("b", "base"), START, None),)
    begun = replace(book, projects=(replace(book.projects[0], log=log),))
    without = {one.coating: one.ml for one in planned_use(begun, None, key("b", "base"))}
    assert without == {"sand": pytest.approx(0.6), "thinner": pytest.approx(0.9)}
    assert planned_use(book, plan, key("z", "base")) == ()
