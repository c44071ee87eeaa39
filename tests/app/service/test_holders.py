"""Which part stands on a holder, and how many at once, on plans small enough to count by hand."""

from __future__ import annotations

from dataclasses import replace

from small_book import CART, PROJECT, at, small_book, small_plan

from app.service.build_edits import models
from app.service.holders import AtOnce, HolderUse, held, most_at_once
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.model import Part, Place
from planner.values.moment import Interval
from planner.values.plan import PassKey, Placement, Plan
from planner.values.step import Minutes, Stage, Step, Tool

CLIP = "clip on a stick"


def placed(model: str, step: str, start: str, minutes: int) -> Placement:
    begin = at(start)
    return Placement(PassKey(PROJECT, model, step), (Interval(begin, begin + minutes),))


def joined() -> tuple[Book, Plan]:
    """Return the cart with a wheel on a pin, primed too and then glued to the tub."""
    book = small_book()
    project = book.projects[0]
    cart = project.models[0]
    wheel = Part(name="wheel", places=(Place(name="rim"),), holder="pin")
    prime = replace(
        cart.steps[0],
        id="prime-wheel",
        applications=(replace(cart.steps[0].applications[0], places=("wheel",)),),
    )
    glue = Step(
        id="glue",
        stage=Stage.JOIN,
        touches=("tub", "wheel"),
        tool=Tool.HAND,
        minutes=Minutes(fixed=5),
    )
    model = replace(
        cart, parts=(*cart.parts, wheel), steps=(cart.steps[0], prime, glue, cart.steps[1])
    )
    placements = (
        placed(CART, "prime", "2031-03-06 19:33", 10),
        placed(CART, "prime-wheel", "2031-03-06 19:43", 10),
        placed(CART, "glue", "2031-03-13 19:30", 5),
    )
    whole = replace(book, projects=(replace(project, models=(model,)),))
    return whole, replace(small_plan(), placements=placements)


def test_a_part_keeps_its_holder_from_its_first_work_to_its_last() -> None:
    (one,) = held(small_book(), small_plan())
    # The plan by hand: prime from 19:33 on the 6th, wipe from 20:30 for ten minutes on the 13th.
    assert one == HolderUse(
        PROJECT, CART, "tub", CLIP, at("2031-03-06 19:33"), at("2031-03-13 20:40")
    )
    assert most_at_once([one]) == (AtOnce(CLIP, 1, at("2031-03-06 19:33")),)


def test_without_a_plan_the_part_is_told_and_nothing_is_needed() -> None:
    (one,) = held(small_book(), None)
    assert (one.since, one.until) == (None, None)
    assert most_at_once([one]) == (AtOnce(CLIP, 0, None),)


def test_two_at_once_and_one_after_the_other() -> None:
    book = models.same_again(small_book(), ModelKey(PROJECT, CART), ["barrow"]).book
    plan = small_plan()
    beside = (placed("barrow", "prime", "2031-03-06 19:50", 10),)
    after = (placed("barrow", "prime", "2031-03-20 19:30", 10),)
    together = held(book, replace(plan, placements=plan.placements + beside))
    apart = held(book, replace(plan, placements=plan.placements + after))
    assert most_at_once(together) == (AtOnce(CLIP, 2, at("2031-03-06 19:50")),)
    assert most_at_once(apart) == (AtOnce(CLIP, 1, at("2031-03-06 19:33")),)


def test_a_join_sets_the_second_holder_free() -> None:
    book, plan = joined()
    matte = placed(CART, "sand", "2031-03-20 19:30", 12)
    tub, wheel = held(book, replace(plan, placements=(*plan.placements, matte)))
    assert tub.until == matte.end
    assert wheel.until == at("2031-03-13 19:35")  # the end of the join
    assert {one.holder for one in most_at_once([tub, wheel])} == {CLIP, "pin"}


def test_what_is_let_go_of_is_free_for_what_begins_then() -> None:
    first = HolderUse(PROJECT, CART, "a", "pin", 100, 200)
    second = HolderUse(PROJECT, CART, "b", "pin", 200, 300)
    assert most_at_once([first, second]) == (AtOnce("pin", 1, 100),)


def test_what_is_set_aside_needs_no_holder() -> None:
    book = small_book()
    aside = replace(book, projects=(replace(book.projects[0], active=False),))
    assert held(aside, small_plan()) == ()
