"""What an evening tells, at its exact minute and one to either side."""

from __future__ import annotations

from dataclasses import replace

import pytest
from judge_cases.making import NOW, at, book, coating, do, key, paint, ready, when

from planner.evening.last_coat_brake import braked
from planner.values.book import Book
from planner.values.coating import State
from planner.values.plan import Placement
from planner.values.project import Logged
from planner.values.step import Role, Stage

BASE = paint("base", "hull/deck")
LAST = paint("last", "hull/deck", stage=Stage.VARNISH, role=Role.FINAL, coat="green")
LAID = do("base", "18:00-18:10")


def logged() -> Book:
    """Return a book whose base was laid from 18:00 to 18:10."""
    log = (Logged(model="cart", step="base", start=when("18:00"), end=when("18:10")),)
    return book(BASE, LAST, log=log)


@pytest.mark.parametrize("state", list(State))
def test_the_brake_tells_a_state_from_its_late_minute_on(state):
    """Label times rise from state to state, so each is the farthest from its own minute on."""
    of = logged()
    reached = ready(of, "sand", state, at("18:10"))
    (film,) = braked(of, key("last"), reached)
    assert film.state is state
    (before,) = braked(of, key("last"), reached - 1)
    states = list(State)
    earlier = states[states.index(state) - 1] if state is not states[0] else None
    assert before.state is earlier
    assert film.hard == before.hard == ready(of, "sand", State.DRY_THROUGH, at("18:10"))


def planned(at_minute: int, *placed: Placement) -> list[str]:
    return [film.step for film in braked(book(BASE, LAST), key("last"), at_minute, planned=placed)]


def test_the_brake_counts_what_is_begun_before_the_last_coat():
    assert planned(at("18:00"), LAID) == []
    assert planned(at("18:01"), LAID) == ["base"]
    assert planned(at("18:30"), LAID) == ["base"]


def test_the_least_dry_film_comes_first():
    """On the deck sand, which is dry through long before the slow coat on the side is tack-free."""
    slow = coating("slow", tack_free=900, dry_to_handle=1000, dry_to_recoat=1000, print_free=1200)
    both = paint("last", "hull/deck", "hull/side", stage=Stage.MATTE, coat="green")
    other = paint("side", "hull/side", coat="slow")
    of = book(BASE, other, both, coatings=(replace(slow, times=slow.times[:6]),))
    laid = LAID, do("side", "18:10-18:20")
    films = braked(of, key("last"), at("18:10") + 400, planned=laid)
    assert [film.step for film in films] == ["side", "base"]
    assert braked(of, key("base"), NOW + 400, planned=laid) == ()
