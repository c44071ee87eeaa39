"""What a person reads about amounts, and the document that other programs read."""

from __future__ import annotations

import json
from dataclasses import replace
from zoneinfo import ZoneInfo

import pytest
from amount_books import NOW, PER_CM2_ML, SAND, START, THINNER, cart, key, plan_of, step, yard

from app.service.shopping import (
    load_text,
    runs_out_text,
    shopping_document,
    shopping_text,
)
from planner.passes import expand_all
from planner.quantity import RunsOut, fill, loads, shopping
from planner.values.book import Book
from planner.values.mix import Mix, Portion
from planner.values.step import Stage, Tool
from planner.values.supplies import Consumable, Leftover, Supplies

UTC = ZoneInfo("UTC")
BASE = (step("base", "sand", Tool.BRUSH),)


def brushed(ml: float) -> float:
    return ml * 0.95 / PER_CM2_ML


def sprayed(ml: float) -> float:
    return ml * 0.30 / PER_CM2_ML


def three(stock: float, **more: object) -> Book:
    sand = replace(SAND, in_stock_ml=stock)
    models = [cart(name, brushed(4.0), BASE) for name in "abc"]
    return yard(*models, coatings=(sand, THINNER), **more)


def told(book: Book) -> str:
    plan = plan_of(book, [[key(name, "base")] for name in "abc"])
    return shopping_text(shopping(book, plan, NOW), book)


def test_a_load_in_one_figure() -> None:
    """2.36 of 5.9 ml leave a film; 5.9 + 0.5 ml are 6.4 ml: 51.2 and 76.8 drops by hand."""
    book = yard(cart("a", sprayed(2.36), (step("base", "thin sand"),)))
    (load,) = loads(book, plan_of(book, [[key("a", "base")]]))
    assert load_text(load) == "mix 6.4 ml: 51 drops sand, 77 drops thinner"


def test_a_load_says_where_it_falls_short() -> None:
    short = Mix(
        name="short",
        portions=(Portion(coating="sand", parts=1), Portion(coating="thinner", parts=1)),
        life_minutes=30,
    )
    book = yard(cart("a", 0, (step("base", "short"),)), mixes=(short,))
    (load,) = loads(book, plan_of(book, [[key("a", "base")]]))
    text = load_text(load)
    assert "least that the cup must hold" in text
    assert "without an area" in text
    assert "can be used for 30 min, but is needed for 40" in text


def test_a_palette_for_places_without_an_area_gets_no_amount() -> None:
    """Nothing is known of it, and no drop is no answer."""
    book = yard(cart("a", 0, BASE))
    load = fill(book, "sand", expand_all(book))
    assert load is not None
    text = load_text(load)
    assert "0.0 ml" not in text
    assert "no area" in text


def test_it_runs_out_on_a_named_day_at_a_counted_model() -> None:
    assert "  runs out on Friday 7 March, at the second of 3 models (b/base)" in told(three(4.1))


@pytest.mark.parametrize(
    ("number", "word"), [(1, "first"), (12, "twelfth"), (13, "13th"), (21, "21st"), (112, "112th")]
)
def test_ordinals(number: int, word: str) -> None:
    at = RunsOut(NOW, key("a", "base"), number, 120)
    assert f"at the {word} of 120 models" in runs_out_text(at, UTC)


def test_what_has_no_day_says_so() -> None:
    text = runs_out_text(RunsOut(None, key("a", "base"), 1, 1), UTC)
    assert text == "runs out at a/base, which has no place in the plan yet"


def test_the_whole_list_in_words() -> None:
    tape = Consumable(name="tape", unit="m", in_stock=0.9, per_pass=0.4, stages=(Stage.BASE,))
    jar = Leftover(
        name="jar", ml=2, made=START, keeps_days=9, portions=(Portion(coating="sand", parts=1),)
    )
    supplies = Supplies(margin_pct=10, consumables=(tape,), leftovers=(jar,))
    text = told(three(4.1, supplies=supplies))
    for piece in (
        "1 bottle of 17 ml",
        "less than half a bottle is left",
        "tape: takes 1.2 m, in stock 0.9 m, buy 0.42 m",  # 1.32 - 0.9
        "runs out on Saturday 8 March, at the third of 3 models (c/base)",
        "sand: no, for 1 of 3 models; lacking 7.9 ml of sand",  # 12 - 4.1
        "jar, 2 ml, sand: until Sat 15 Mar 18:00 for a, b, c",
        "a spare margin of 10 %",
    ):
        assert piece in text


def test_one_stirring_for_several_says_how_much_and_until_when() -> None:
    """Two carts of 1 ml of the mix, within the four hours that it keeps: 2 ml, 0.8 + 1.2 ml."""
    thin = (step("base", "thin sand", Tool.BRUSH),)
    book = yard(*(cart(name, brushed(0.399), thin) for name in "ab"))
    found = shopping(book, plan_of(book, [[key(name, "base") for name in "ab"]]), NOW)
    assert (
        "thin sand, Thu 6 Mar 18:10: 2.0 ml for 2 fillings on 2 models: "
        "16 drops sand, 24 drops thinner; keep it covered, it can be used until Thu 6 Mar 22:10"
    ) in shopping_text(found, book)
    (one,) = shopping_document(found, UTC)["stir_once"]
    assert (one["fillings"], one["keeps_until"]) == (2, "2031-03-06T22:10:00+00:00")


def test_enough_is_said_as_well() -> None:
    text = told(three(20))
    assert "enough" in text.splitlines()[1]
    assert "sand: yes, for all 3 models" in text


def test_none_in_the_drawer_says_from_when_it_is_wanted() -> None:
    assert "none is there; wanted from Thursday 6 March on, for a/base" in told(three(0))


def test_the_document_is_plain_json_with_times_and_says_the_same() -> None:
    book = three(4.1)
    plan = plan_of(book, [[key(name, "base")] for name in "abc"])
    document = shopping_document(shopping(book, plan, NOW), UTC)
    assert json.loads(json.dumps(document, allow_nan=False)) == document
    (sand,) = document["coatings"]
    assert sand["runs_out"] == {
        "at": "2031-03-07T18:10:00+00:00",
        "project": "yard",
        "model": "b",
        "step": "base",
        "coat": 1,
        "model_number": 2,
        "models": 3,
    }
    assert (sand["bottles"], sand["under_half_a_bottle"]) == (1, True)
    (enough,) = document["enough_for_all"]
    assert (enough["covered"], enough["enough"]) == (1, False)
    assert [one["model"] for one in enough["models"]] == ["a", "b", "c"]
