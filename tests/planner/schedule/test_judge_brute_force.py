"""The heuristic and the judge against an independent brute force on tiny problems."""

from __future__ import annotations

from dataclasses import replace

import pytest
from brute_force import best_finish
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import NOW, at, book, coating, paint, work

from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.model import Model
from planner.values.step import Minutes, Stage, Trait

QUICK = (
    coating("sand"),
    coating("green", dry_to_recoat=15, dry_to_handle=10),
    coating("oil", Family.ARTISTS_OIL, dry_to_recoat=200, dry_to_handle=90),
)


def with_models(*models: tuple) -> Book:
    """Return a book with one cart for each tuple of steps."""
    of = book(*models[0], coatings=QUICK)
    cart = of.projects[0].models[0]
    carts = tuple(
        Model(name=f"cart {n}", parts=cart.parts, steps=steps) for n, steps in enumerate(models)
    )
    return replace(of, projects=(replace(of.projects[0], models=carts),))


def wash(*places: str):
    """Return an oil wash on some places, and its wiping back."""
    return (
        paint("wash", *places, coat="oil", stage=Stage.OIL_WASH),
        work("wipe", Stage.WIPE, *places),
    )


SIMPLE = {
    "one coat": ((paint("base", "hull/deck"),),),
    "two coats": ((paint("base", "hull/deck", coats=2),),),
    "two carts take turns": (
        (paint("base", "hull/deck", coats=2),),
        (paint("base", "hull/deck", coats=2),),
    ),
    "the long drying first": (
        (paint("base", "hull/deck", minutes=20), paint("top", "hull/deck")),
        (paint("base", "hull/deck", minutes=60, coat="green"),),
    ),
    "a bath goes on alone": (
        (work("bath", Stage.CLEAN, "hull/deck", minutes=50, traits=(Trait.HANDS_FREE,)),),
        (paint("base", "hull/deck", minutes=30),),
    ),
    "a bath overnight": (
        (
            work("rub", Stage.WIPE, "hull/deck", minutes=230),
            work("bath", Stage.CLEAN, "hull/deck", minutes=600, traits=(Trait.HANDS_FREE,)),
            paint("base", "hull/side"),
        ),
    ),
    "a smell before the quiet hours": (
        (paint("base", "hull/deck", minutes=60),),
        (paint("clear", "hull/deck", minutes=90, traits=(Trait.SMELLS,)),),
    ),
    "a smell that must wait for tomorrow": (
        (
            paint("base", "hull/deck", minutes=60),
            paint("clear", "hull/deck", minutes=30, traits=(Trait.SMELLS,)),
        ),
    ),
    "fingers wait": ((paint("tread", "wheels/tread"), paint("rim", "wheels/rim")),),
    "wash and wipe": (wash("hull/deck"),),
    "wash over a coat": ((paint("base", "hull/deck"), *wash("hull/deck")),),
    "a wash that must wait for tomorrow": (
        (paint("base", "hull/deck", minutes=45), *wash("hull/deck")),
        (paint("base", "tracks", minutes=40, coat="green"),),
    ),
    "masked": (
        (
            work("mask", Stage.MASK, "hull/deck"),
            paint("camo", "hull/side"),
            work("unmask", Stage.UNMASK, "hull/deck"),
        ),
    ),
}


@pytest.mark.parametrize("name", SIMPLE)
def test_the_heuristic_finds_the_best_finish_of_simple_problems(name):
    of = with_models(*SIMPLE[name])
    plan = plan_book(of, NOW)
    assert judge(of, plan).accepted
    assert dict(plan.finishes)["batch"] == best_finish(of, NOW)


def test_the_brute_force_finds_what_was_worked_out_by_hand():
    """Two passes of 30 and 20 min without films, from 18:00 on, end at 18:50."""
    of = with_models(
        (work("wipe", Stage.WIPE, "hull/deck", minutes=30),),
        (work("wipe", Stage.WIPE, "hull/deck", minutes=20),),
    )
    assert best_finish(of, NOW) == at("18:50")


def test_the_brute_force_waits_where_a_closing_asks_it():
    """At 21:35 a wash of 10 min could be laid, but not wiped for 30 before 22:00."""
    laid, wiped = wash("hull/deck")
    first = work("first", Stage.WIPE, "hull/deck", minutes=215)
    of = with_models((first, laid, replace(wiped, minutes=Minutes(fixed=30))))
    finish = best_finish(of, NOW)
    assert finish is not None
    assert finish >= at("1/18:40")
    plan = plan_book(of, NOW)
    assert judge(of, plan).accepted
    assert dict(plan.finishes)["batch"] == finish


COATS = st.sampled_from(["sand", "green"])
LENGTHS = st.sampled_from([5, 20, 45])
MARKS = st.sampled_from([(), (), (Trait.SMELLS,), (Trait.HANDS_FREE,)])


@st.composite
def tiny_books(draw: st.DrawFn) -> Book:
    """Draw one or two carts with two to four brush passes between them."""
    models = []
    left = draw(st.integers(2, 4))
    while left > 0:
        count = draw(st.integers(1, left))
        steps = [
            paint(
                f"s{number}",
                draw(st.sampled_from(["hull/deck", "hull/side", "wheels/tread", "wheels/rim"])),
                coat=draw(COATS),
                minutes=draw(LENGTHS),
                traits=draw(MARKS),
            )
            for number in range(count)
        ]
        left -= count
        if left >= 2 and draw(st.booleans()):
            steps += wash(draw(st.sampled_from(["hull/deck", "hull/side"])))
            left -= 2
        models.append(tuple(steps))
    return with_models(*models)


@drawn(60)
@given(of=tiny_books())
def test_the_heuristic_is_never_better_than_the_best(of):
    plan = plan_book(of, NOW)
    assert judge(of, plan).accepted
    assert not plan.unplaced
    best = best_finish(of, NOW)
    assert best is not None
    assert dict(plan.finishes)["batch"] >= best
