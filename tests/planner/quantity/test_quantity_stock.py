"""Stock after the logbook: nothing is lost or made between bottle and model."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta

import pytest
from amount_books import (
    GREEN,
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
from hypothesis import given
from hypothesis import strategies as st

from app.service.logbook import write as log_fact
from app.service.stock import buy_bottles, count_bottle
from planner.passes import expand_all
from planner.quantity import (
    consumables_now,
    drops_of,
    loads,
    old_bottle,
    shopping,
    stock_now,
    used_by,
)
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.plan import PassKey
from planner.values.project import Used
from planner.values.step import Stage, Tool
from planner.values.supplies import Consumable, Supplies

HOUR = timedelta(hours=1)


def left(book: Book) -> dict[str, float]:
    return {one.coating.name: one.balance_ml for one in stock_now(book)}


# --- conservation over simulated projects ------------------------------------


@dataclass
class Drawer:
    """The bottles as somebody would keep account of them on paper."""

    ml: dict[str, float] = field(default_factory=dict)

    def use(self, used: tuple[Used, ...]) -> None:
        for use in used:
            self.ml[use.coating] -= use.ml

    def count(self, name: str, ml: float) -> None:
        self.ml[name] = ml

    def buy(self, name: str, bottles: int, bottle_ml: float) -> None:
        self.ml[name] = max(0.0, self.ml[name]) + bottles * bottle_ml


deeds = st.one_of(
    st.just(("log",)),
    st.tuples(st.just("count"), st.sampled_from(["sand", "thinner"]), st.floats(0, 60)),
    st.tuples(st.just("buy"), st.sampled_from(["sand", "thinner"]), st.integers(1, 3)),
)


@given(
    stock=st.lists(st.floats(0, 80), min_size=2, max_size=2),
    areas=st.lists(st.floats(0.5, 400), min_size=1, max_size=4),
    coats=st.integers(1, 3),
    colour=st.sampled_from(["sand", "thin sand"]),
    tool=st.sampled_from([Tool.AIRBRUSH, Tool.BRUSH]),
    what=st.lists(deeds, max_size=12),
)
def test_stock_before_less_what_is_used_is_stock_after(
    stock: list[float],
    areas: list[float],
    coats: int,
    colour: str,
    tool: Tool,
    what: list[tuple[object, ...]],
) -> None:
    """Whatever is logged, counted and bought, account is kept to the drop (in fact to 10⁻⁶ ml)."""
    models = [
        cart(f"cart {n}", area, (step("base", colour, tool, coats=coats),))
        for n, area in enumerate(areas)
    ]
    bottles = (
        replace(SAND, in_stock_ml=stock[0]),
        replace(THINNER, in_stock_ml=stock[1], drops_per_ml=33.0),
    )
    book = yard(*models, coatings=bottles)
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    plan = plan_of(book, [[pass_ for pass_ in passes if pass_.coat == n + 1] for n in range(coats)])
    filled = {pass_: load for load in loads(book, plan) for pass_ in load.passes}
    drawer = Drawer({"sand": stock[0], "thinner": stock[1]})
    to_log = iter(passes)
    for minutes, (deed, *details) in enumerate(what, start=1):
        moment = START + timedelta(minutes=minutes)
        if deed == "log":
            one = next(to_log, None)
            if one is None:
                continue
            used = used_by(book, passes[one], "fine", filled.get(one))
            book = log_fact(book, "yard", entry(one, moment, moment + HOUR, used)).book
            drawer.use(used)
        elif deed == "count":
            book = count_bottle(book, *details, moment).book
            drawer.count(*details)
        else:
            name, number = details
            book = buy_bottles(book, name, number).book
            drawer.buy(name, number, 17.0)
        assert left(book) == pytest.approx(drawer.ml, abs=1e-6)
    for one in stock_now(book):
        kept = max(0.0, drawer.ml[one.coating.name])
        assert abs(one.drops - kept * drops_of(one.coating)) <= 0.5 + 1e-4


@given(
    areas=st.lists(st.floats(1, 300), min_size=1, max_size=5),
    colour=st.sampled_from(["sand", "thin sand"]),
)
def test_what_all_passes_use_is_what_all_loads_held(areas: list[float], colour: str) -> None:
    """Within the hundredth of a millilitre to which each entry is rounded."""
    models = [
        cart(f"cart {n}", area, (step("base", colour, coats=2),)) for n, area in enumerate(areas)
    ]
    book = yard(*models)
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    plan = plan_of(book, [[pass_ for pass_ in passes if pass_.coat == n] for n in (1, 2)])
    every = loads(book, plan)
    used = sum(
        use.ml
        for load in every
        for each in load.passes
        for use in used_by(book, passes[each], "fine", load)
    )
    assert used == pytest.approx(sum(load.ml for load in every), abs=0.005 * 2 * len(passes))


@given(st.lists(st.floats(1, 300), min_size=1, max_size=4), st.data())
def test_what_is_logged_is_needed_no_more(areas: list[float], data: st.DataObject) -> None:
    """Need and stock fall together: what is lacking stays the same when a pass is done."""
    models = [cart(f"cart {n}", area, (step("base", "sand"),)) for n, area in enumerate(areas)]
    book = yard(*models, coatings=(replace(SAND, in_stock_ml=500), GREEN, THINNER))
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    before = needed(book)
    one = data.draw(st.sampled_from(list(passes)))
    used = used_by(book, passes[one], "fine")
    after = log_fact(book, "yard", entry(one, START, START + HOUR, used)).book
    assert before - needed(after) == pytest.approx(used[0].ml, abs=0.006)
    assert left(book)["sand"] - left(after)["sand"] == pytest.approx(used[0].ml)


def needed(book: Book) -> float:
    return sum(line.needed_ml for line in shopping(book, None, 0).lines)


# --- since when --------------------------------------------------------------


def logged(book: Book, key: PassKey, start: datetime, ml: float) -> Book:
    used = (Used(coating="sand", ml=ml),)
    return log_fact(book, "yard", entry(key, start, start + HOUR, used)).book


def plain(stock: float = 20.0, counted: datetime | None = None) -> Book:
    one = replace(SAND, in_stock_ml=stock, counted=counted)
    two = (step("base", "sand", coats=3),)
    return yard(cart("a", 100, two), coatings=(one, GREEN, THINNER))


def test_without_a_count_everything_in_the_logbook_comes_off() -> None:
    book = logged(plain(), key("a", "base", 1), START, 3.0)
    assert left(logged(book, key("a", "base", 2), START + 5 * HOUR, 4.0))["sand"] == 13.0


def test_what_was_used_before_the_count_is_in_it_already() -> None:
    book = plain(counted=START)
    book = logged(book, key("a", "base", 1), START - HOUR, 3.0)
    assert left(book)["sand"] == 20.0
    assert left(logged(book, key("a", "base", 2), START, 4.0))["sand"] == 16.0


def test_a_project_set_aside_has_used_its_paint_all_the_same() -> None:
    book = logged(plain(), key("a", "base", 1), START, 3.0)
    aside = replace(book, projects=(replace(book.projects[0], active=False),))
    assert left(aside)["sand"] == 17.0


def test_more_used_than_counted_leaves_nothing_and_says_so() -> None:
    (sand, *_) = stock_now(logged(plain(2.0), key("a", "base", 1), START, 3.0))
    assert (sand.left_ml, sand.balance_ml, sand.drops) == (0.0, -1.0, 0)


def test_a_new_bottle_is_full_whatever_was_used_before() -> None:
    book = logged(plain(2.0), key("a", "base", 1), START, 3.0)
    assert left(buy_bottles(book, "sand", 1).book)["sand"] == pytest.approx(17.0)


def test_what_is_no_longer_in_the_drawer_is_passed_over() -> None:
    book = plain()
    used = (Used(coating="gone", ml=3.0),)
    noted = log_fact(book, "yard", entry(key("a", "base"), START, START + HOUR, used)).book
    assert left(noted)["sand"] == 20.0


def test_consumables_go_with_the_passes_of_their_stages() -> None:
    foam = Consumable(
        name="foam", unit="piece", in_stock=9, per_pass=0.5, stages=(Stage.BASE, Stage.CHIP)
    )
    counted = replace(foam, name="counted foam", counted=START + 2 * HOUR)
    other = replace(foam, name="swabs", stages=(Stage.WIPE,))
    book = replace(plain(), supplies=Supplies(consumables=(foam, counted, other)))
    book = logged(book, key("a", "base", 1), START, 1.0)
    book = logged(book, key("a", "base", 2), START + 3 * HOUR, 1.0)
    assert [consumable.left for consumable in consumables_now(book)] == [8.0, 8.5, 9.0]


# --- old bottles (common practice, no source) --------------------------------


def test_a_fresh_bottle_and_one_without_a_date_say_nothing() -> None:
    assert old_bottle(SAND, date(2031, 3, 6)) == ""
    assert old_bottle(replace(SAND, opened=date(2030, 9, 1)), date(2031, 3, 6)) == ""


def test_a_bottle_opened_ten_years_ago_is_worth_a_look() -> None:
    said = old_bottle(replace(SAND, opened=date(2021, 3, 1)), date(2031, 3, 6))
    assert said.startswith("opened 10 years ago")
    assert "scrap" in said


def test_a_hardener_ages_sooner_than_a_paint() -> None:
    """Two-pack lacquers are used up within a year or so; common practice, no source."""
    opened, today = date(2029, 9, 1), date(2031, 3, 6)
    hard = Coating(name="clear, two-pack", family=Family.TWO_PACK, opened=opened)
    assert old_bottle(hard, today).startswith("opened 1 year ago")
    assert old_bottle(replace(SAND, opened=opened), today) == ""


def test_white_spirit_keeps() -> None:
    spirit = Coating(name="spirit", family=Family.WHITE_SPIRIT, opened=date(1990, 1, 1))
    assert old_bottle(spirit, date(2031, 3, 6)) == ""
