"""Steps left out: what they held together is tied anew, and nothing else changes."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from logged_books import demo_plan
from small_book import CART, PROJECT, ZONE, key, small_book
from strategies import books

from planner.evening import log_entries
from planner.evening.skipped_steps import skipped
from planner.graph.network import check_acyclic
from planner.values.book import Book
from planner.values.coating import Mark, State, Window
from planner.values.model import Model
from planner.values.plan import PassKey
from planner.values.project import Logged, Pin
from planner.values.refusal import Refused
from planner.values.step import Gate, Minutes, Stage, Step

START = datetime(2031, 3, 6, 19, 30, tzinfo=ZONE)


def cart(book: Book) -> Model:
    return book.project(PROJECT).model(CART)


def with_steps(book: Book, steps: tuple[Step, ...]) -> Book:
    project = book.project(PROJECT)
    model = replace(cart(book), steps=steps)
    return replace(book, projects=(replace(project, models=(model,)),))


def ids(book: Book) -> list[str]:
    return [step.id for step in cart(book).steps]


def test_wiping_back_goes_with_the_wash() -> None:
    made = skipped(small_book(), key("wash"))
    assert made.gone == ("wash", "wipe")
    assert ids(made.book) == ["prime", "sand", "gloss"]


def test_the_wash_stays_where_its_wiping_is_left_out() -> None:
    made = skipped(small_book(), key("wipe"))
    assert ids(made.book) == ["prime", "sand", "gloss", "wash"]


def test_a_gate_leads_past_what_is_gone() -> None:
    """Dust waits 1 h for the filter, the filter for the gloss to be solvent-safe.

    Without the filter the dust waits for the gloss, by the filter's opening; its
    closing and the wait for the filter's own film are gone with it.
    """
    book = small_book()
    safe = Window(opens=Mark(state=State.SOLVENT_SAFE), closes=Mark(minutes=90_000))
    of_filter = Window(opens=Mark(minutes=60))
    middle = Step(
        id="filter",
        stage=Stage.CLEAN,
        touches=("tub/bed",),
        minutes=Minutes(fixed=5),
        gates=(Gate(after="gloss", windows=(safe,)),),
        after=("sand",),
    )
    last = Step(
        id="dust",
        stage=Stage.CLEAN,
        touches=("tub/bed",),
        minutes=Minutes(fixed=5),
        gates=(Gate(after="filter", windows=(of_filter,)),),
    )
    book = with_steps(book, (*cart(book).steps[:3], middle, last))
    made = skipped(book, key("filter"))
    (gate,) = cart(made.book).steps[-1].gates
    assert gate == Gate(after="gloss", windows=(Window(opens=Mark(state=State.SOLVENT_SAFE)),))
    assert cart(made.book).steps[-1].after == ("sand",)


def test_wishes_about_what_is_gone_go_with_it() -> None:
    book = small_book()
    pins = (
        Pin(model=CART, step="wash", on=START.date()),
        Pin(model=CART, step="gloss", beside=f"{CART}/wash"),
        Pin(model=CART, step="gloss", on=START.date()),
    )
    book = replace(book, projects=(replace(book.project(PROJECT), pins=pins),))
    assert skipped(book, key("wash")).book.project(PROJECT).pins == pins[2:]


def test_what_is_done_or_under_way_is_not_left_out() -> None:
    begun = Logged(model=CART, step="prime", start=START)
    book = log_entries.written(small_book(), PROJECT, begun)
    with pytest.raises(Refused, match="under way"):
        skipped(book, key("prime"))
    done = replace(begun, end=START + timedelta(minutes=9))
    book = log_entries.written(book, PROJECT, done)
    with pytest.raises(Refused, match="done already"):
        skipped(book, key("prime"))


def test_of_three_coats_those_not_begun_are_left_out() -> None:
    book = small_book()
    sand = cart(book).steps[1]
    thrice = replace(sand, applications=(replace(sand.applications[0], coats=3),))
    book = with_steps(book, (cart(book).steps[0], thrice, *cart(book).steps[2:]))
    done = Logged(model=CART, step="sand", start=START, end=START + timedelta(minutes=9))
    made = skipped(log_entries.written(book, PROJECT, done), key("sand", 2))
    assert cart(made.book).steps[1].coats == 1
    assert made.gone == ()


@pytest.mark.parametrize("name", ["harbour_tenders", "winter_garage"])
def test_any_step_of_a_demonstration_can_be_left_out(name: str) -> None:
    book, _ = demo_plan(name)
    for project in book.projects:
        for model in project.models[:2]:
            for step in model.steps:
                made = skipped(book, PassKey(project.name, model.name, step.id))
                check_acyclic(made.book)
                left = made.book.project(project.name).model(model.name)
                assert {step.id for step in model.steps} == {
                    *(step.id for step in left.steps),
                    *made.gone,
                }


@drawn(40)
@given(book=books(most_models=2, most_blocks=6), data=st.data())
def test_order_among_the_others_stays(book: Book, data: st.DataObject) -> None:
    project = data.draw(st.sampled_from(book.projects))
    model = data.draw(st.sampled_from(project.models))
    step = data.draw(st.sampled_from(model.steps))
    made = skipped(book, PassKey(project.name, model.name, step.id))
    check_acyclic(made.book)
    after = made.book.project(project.name).model(model.name)
    order = [step.id for step in model.steps if step.id not in made.gone]
    assert [step.id for step in after.steps] == order
    reach, was = _reach(after), _reach(model)
    for one in order:
        assert was[one] - set(made.gone) <= reach[one]


def _reach(model: Model) -> dict[str, set[str]]:
    """Return what each step waits for by what is written on it, directly or through others."""
    found: dict[str, set[str]] = {}
    for step in model.steps:
        named = {*step.after, *(gate.after for gate in step.gates)}
        found[step.id] = named.union(*(found.get(name, set()) for name in named))
    return found
