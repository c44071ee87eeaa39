"""Edits of the drawer: what changes, what goes with it, what is refused and where."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta

import pytest
from amount_books import (
    GREEN,
    SAND,
    START,
    THIN_SAND,
    THINNER,
    cart,
    entry,
    key,
    step,
    yard,
)

from app.service import stock
from app.service.edits import Edit
from app.service.renaming import uses_of
from planner.quantity import consumables_now, stock_now
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.drying_card import DryingCard
from planner.values.mix import Mix, Portion
from planner.values.model import Chosen, Made
from planner.values.project import Used
from planner.values.refusal import Refused
from planner.values.sequence import EVERY, Colour, Sequence, SequenceStep
from planner.values.step import Application, Minutes, Stage, Step
from planner.values.supplies import Card, Consumable, Drops, Leftover, Supplies

LATER = START + timedelta(hours=3)
TAPE = Consumable(name="tape", unit="m", in_stock=5, per_pass=0.5, stages=(Stage.BASE,))
JAR = Leftover(
    name="jar",
    ml=2,
    made=START,
    keeps_days=9,
    portions=(Portion(coating="sand", parts=1), Portion(coating="green", parts=2)),
)
CARD = Card(name="faded", on=date(2031, 3, 1), drops=(Drops(coating="green", drops=4),))


def book() -> Book:
    """Return a book that names sand wherever a coating can be named."""
    base = Step(
        id="base",
        stage=Stage.BASE,
        applications=(Application(places=(EVERY,), coating="body"),),
        minutes=Minutes(fixed=10),
    )
    sequence = Sequence(
        name="plain",
        colours=(Colour(name="body", usual="sand"),),
        steps=(SequenceStep(step=base),),
    )
    made = Made(sequence="plain", colours=(Chosen(colour="body", coating="sand"),))
    model = replace(cart("a", 100, (step("base", "sand"), step("thin", "thin sand"))), made=made)
    used = (Used(coating="sand", ml=3.0), Used(coating="thinner", ml=1.0))
    log = (entry(key("a", "base"), START, START + timedelta(hours=1), used),)
    supplies = Supplies(consumables=(TAPE,), leftovers=(JAR,), cards=(CARD,))
    one = yard(
        model,
        cart("b", 100, (step("base", "green"),)),
        coatings=(replace(SAND, in_stock_ml=10.0), GREEN, THINNER),
        log=log,
        supplies=supplies,
    )
    return replace(one, sequences=(sequence,))


def left(of: Book, name: str) -> float:
    return next(one.balance_ml for one in stock_now(of) if one.coating.name == name)


# --- bottles -----------------------------------------------------------------


def test_counting_a_bottle_sets_what_is_left_from_then_on() -> None:
    edit = stock.count_bottle(book(), "sand", 6.5, LATER)
    assert left(edit.book, "sand") == 6.5  # what was used before is in the count
    assert edit.merge  # a count corrected at once is one edit
    assert left(edit.book, "green") == left(book(), "green")


def test_buying_puts_full_bottles_beside_what_is_left() -> None:
    """10 ml less 3 ml used, and two bottles of 17 ml."""
    edit = stock.buy_bottles(book(), "sand", 2)
    assert left(edit.book, "sand") == 41.0
    assert edit.name == "buy 2 bottles of sand"


@pytest.mark.parametrize("bottles", [0, -1, 1001])
def test_no_bottles_at_all_are_refused(bottles: int) -> None:
    with pytest.raises(Refused) as caught:
        stock.buy_bottles(book(), "sand", bottles)
    assert caught.value.place == "bottles"


@pytest.mark.parametrize(
    "edit",
    [
        lambda one: stock.count_bottle(one, "snad", 1, LATER),
        lambda one: stock.buy_bottles(one, "snad", 1),
        lambda one: stock.put_coating(one, "snad", SAND),
        lambda one: stock.remove_coating(one, "snad"),
    ],
)
def test_a_coating_that_is_not_there_is_refused_with_the_nearest(
    edit: Callable[[Book], Edit],
) -> None:
    with pytest.raises(Refused, match='did you mean "sand"') as caught:
        edit(book())
    assert caught.value.place == "coatings"


@pytest.mark.parametrize("ml", [-1.0, float("nan"), float("inf")])
def test_a_count_that_cannot_be_is_refused(ml: float) -> None:
    with pytest.raises(Refused, match="in_stock_ml"):
        stock.count_bottle(book(), "sand", ml, LATER)


def test_the_margin() -> None:
    assert stock.set_margin(book(), 25).book.supplies.margin_pct == 25
    with pytest.raises(Refused, match="margin_pct"):
        stock.set_margin(book(), -1)


# --- coatings and mixes ------------------------------------------------------


def test_a_coating_is_added_and_changed() -> None:
    pink = Coating(name="pink", family=SAND.family)
    added = stock.put_coating(book(), "", pink).book
    assert added.coatings[-1] == pink
    changed = stock.put_coating(added, "pink", replace(pink, solids=0.5)).book
    assert changed.coating("pink").solids == 0.5
    assert changed.projects == added.projects


def test_a_new_name_goes_everywhere_and_nothing_else_changes() -> None:
    old = book()
    new = stock.put_coating(old, "sand", replace(old.coating("sand"), name="desert")).book
    assert uses_of(new, "desert") == uses_of(old, "sand")
    assert uses_of(new, "sand") == ()
    assert [use.coating for use in new.projects[0].log[0].used] == ["desert", "thinner"]
    assert left(new, "desert") == left(old, "sand")
    back = stock.put_coating(new, "desert", old.coating("sand")).book
    assert back == old
    assert new.projects[0].models[1] is old.projects[0].models[1]  # names no sand: the same


def test_every_place_that_names_a_coating_is_found() -> None:
    assert uses_of(book(), "sand") == (
        "mixes[0].portions[0].coating",
        "projects[0].models[0].steps[0].applications[0].coating",
        "projects[0].models[0].made.colours[0].coating",
        "sequences[0].colours[0].usual",
        "supplies.leftovers[0].portions[0].coating",
    )
    assert uses_of(book(), "green")[-1] == "supplies.cards[0].drops[0].coating"


@pytest.mark.parametrize("name", ["green", "thinner", "thin sand"])
def test_a_name_that_is_taken_is_refused(name: str) -> None:
    with pytest.raises(Refused, match="taken") as caught:
        stock.put_coating(book(), "sand", replace(SAND, name=name))
    assert caught.value.place == "coatings[0].name"


def test_a_coating_in_use_is_not_removed_and_the_path_is_told() -> None:
    with pytest.raises(Refused, match="4 more places") as caught:
        stock.remove_coating(book(), "sand")
    assert caught.value.place == "mixes[0].portions[0].coating"


def test_a_coating_is_removed_with_its_drying_cards() -> None:
    pink = Coating(name="pink", family=SAND.family)
    one = stock.put_coating(book(), "", pink).book
    one = replace(one, drying_cards=(DryingCard(coating="pink", laid=START),))
    assert stock.remove_coating(one, "pink").book.drying_cards == ()


def test_a_coating_that_only_the_logbook_knows_can_go() -> None:
    pink = Coating(name="pink", family=SAND.family)
    one = stock.put_coating(book(), "", pink).book
    log = (replace(one.projects[0].log[0], used=(Used(coating="pink", ml=1.0),)),)
    one = replace(one, projects=(replace(one.projects[0], log=log),))
    gone = stock.remove_coating(one, "pink").book
    assert [coating.name for coating in gone.coatings] == ["sand", "green", "thinner"]
    assert gone.projects[0].log == log


def test_a_thinner_cannot_take_the_place_of_paint_that_steps_lay() -> None:
    with pytest.raises(Refused, match="thinner"):
        stock.put_coating(book(), "sand", replace(THINNER, name="sand"))


def test_mixes_are_added_renamed_and_removed() -> None:
    pale = Mix(name="pale", portions=(Portion(coating="green", parts=1),))
    one = stock.put_mix(book(), "", pale).book
    assert stock.remove_mix(one, "pale").book.mixes == book().mixes
    named = stock.put_mix(one, "thin sand", replace(THIN_SAND, name="weak sand")).book
    assert uses_of(named, "weak sand") == (
        "projects[0].models[0].steps[1].applications[0].coating",
    )
    with pytest.raises(Refused) as caught:
        stock.remove_mix(named, "weak sand")
    assert caught.value.place == "projects[0].models[0].steps[1].applications[0].coating"


def test_a_mix_of_what_is_not_there_is_refused() -> None:
    odd = Mix(name="odd", portions=(Portion(coating="gren", parts=1),))
    with pytest.raises(Refused, match='did you mean "green"'):
        stock.put_mix(book(), "", odd)


# --- consumables, leftovers, cards -------------------------------------------


def test_consumables_are_counted_and_bought() -> None:
    """5 m less 0.5 m for the pass in the logbook."""
    assert consumables_now(book())[0].left == 4.5
    assert consumables_now(stock.buy_consumable(book(), "tape", 10).book)[0].left == 14.5
    counted = stock.count_consumable(book(), "tape", 3, LATER).book
    assert consumables_now(counted)[0].left == 3


@pytest.mark.parametrize(
    ("put", "remove", "one", "field"),
    [
        (stock.put_consumable, stock.remove_consumable, TAPE, "consumables"),
        (stock.put_leftover, stock.remove_leftover, JAR, "leftovers"),
        (stock.put_card, stock.remove_card, CARD, "cards"),
    ],
)
def test_what_is_kept_beside_the_bottles(
    put: Callable[..., Edit], remove: Callable[..., Edit], one: object, field: str
) -> None:
    def names(of: Book) -> list[str]:
        return [each.name for each in getattr(of.supplies, field)]

    other = replace(one, name="other")
    added = put(book(), "", other).book
    assert names(added) == [one.name, "other"]
    changed = put(added, one.name, replace(one, name="renamed")).book
    assert names(changed) == ["renamed", "other"]
    assert names(remove(changed, "renamed").book) == ["other"]
    with pytest.raises(Refused) as caught:
        remove(book(), "nothing")
    assert caught.value.place == f"supplies.{field}"
    with pytest.raises(Refused, match="twice"):
        put(book(), "", one)


def test_leftovers_and_cards_name_coatings_that_are_there() -> None:
    with pytest.raises(Refused) as caught:
        stock.put_card(book(), "", replace(CARD, name="x", drops=(Drops(coating="?", drops=1),)))
    assert caught.value.place == "drops[0].coating"
    portions = (*JAR.portions, Portion(coating="?", parts=1))
    with pytest.raises(Refused) as caught:
        stock.put_leftover(book(), "jar", replace(JAR, portions=portions))
    assert caught.value.place == "portions[2].coating"


def test_a_moment_without_zone_is_refused() -> None:
    with pytest.raises(Refused, match="counted"):
        stock.count_bottle(book(), "sand", 1, START.replace(tzinfo=None))
