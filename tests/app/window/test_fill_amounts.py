"""What a row of the run sheet says of cup and palette; sums by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest
from amount_books import PER_CM2_ML, THIN_SAND, cart, key, plan_of, step, yard

from app.window.fill_amounts import fill_words
from planner.passes import expand_all
from planner.quantity import Load, fill, loads
from planner.values.step import Tool


def sprayed(colour: str, neat_ml: float, life: int = 240) -> Load:
    """Return the load of one cart on which so much unthinned paint is sprayed."""
    model = cart("a", neat_ml * 0.30 / PER_CM2_ML, (step("base", colour),))
    book = yard(model, mixes=(replace(THIN_SAND, life_minutes=life),))
    (load,) = loads(book, plan_of(book, [[key("a", "base")]]))
    return load


def test_a_mix_is_told_drop_by_drop() -> None:
    """5.9 ml of 2 : 3 laid, 0.5 ml lost: 6.4 ml, 51.2 and 76.8 drops."""
    told = fill_words(sprayed("thin sand", 5.9 * 2 / 5))
    assert told == "mix 6.4 ml: 51 drops sand, 77 drops thinner"


def test_a_coating_from_the_bottle_is_told_by_its_amount() -> None:
    """2.0 ml laid, 0.5 ml lost, 20 drops to 1 ml."""
    assert fill_words(sprayed("sand", 2.0)) == "fill in 2.5 ml, 50 drops"


def test_a_palette_is_put_out() -> None:
    model = cart("a", 2.0 * 0.95 / PER_CM2_ML, (step("base", "sand", Tool.BRUSH),))
    book = yard(model)
    load = fill(book, "sand", expand_all(book))
    assert load is not None
    assert fill_words(load) == "put out 2.0 ml, 40 drops"


def test_a_palette_for_places_without_an_area_gets_no_amount() -> None:
    """Nothing is known of it, and no drop is no answer."""
    book = yard(cart("a", 0, (step("base", "sand", Tool.BRUSH),)))
    load = fill(book, "sand", expand_all(book))
    assert load is not None
    told = fill_words(load)
    assert "0.0 ml" not in told
    assert "0 drops" not in told
    assert "no area" in told


@pytest.mark.parametrize(
    ("load", "word"),
    [
        (lambda: sprayed("sand", 0.1), "less does not spray"),
        (lambda: sprayed("sand", 0), "some places have no area"),
        (lambda: sprayed("thin sand", 2.0, life=30), "it keeps for 30 min"),
    ],
)
def test_where_it_falls_short(load, word: str) -> None:
    assert word in fill_words(load())


def test_enough_of_everything_adds_no_word() -> None:
    assert ";" not in fill_words(sprayed("thin sand", 2.0))
