"""Repairs: put in behind what was done, sound, planned, and true to the logbook."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from logged_books import demo_plan, done_as_planned
from small_book import CART, PROJECT, ZONE, key, small_book

from app.service import planning
from planner.evening import log_entries
from planner.evening.repairs import Repair, outline, repaired, repairs_for
from planner.graph.network import check_acyclic
from planner.layers.coat_stack import stack_of
from planner.layers.findings import find
from planner.layers.overcoat_table import LayerVerdict
from planner.values.book import Book
from planner.values.coating import Mark, State
from planner.values.model import Model
from planner.values.moment import minute_of
from planner.values.project import Logged
from planner.values.refusal import Refused
from planner.values.step import Stage

START = datetime(2031, 3, 6, 19, 30, tzinfo=ZONE)
ORDER = ("prime", "sand", "gloss", "wash", "wipe")
DEMOS = ("harbour_tenders", "lone_lamplighter", "winter_garage")


def done_to(last: str) -> Book:
    """Return the small book with everything up to a step done, an evening each."""
    book = small_book()
    for number, step in enumerate(ORDER[: ORDER.index(last) + 1]):
        evening = START + timedelta(weeks=number)
        if step == "wipe":
            evening = START + timedelta(weeks=number - 1, minutes=30)
        fact = Logged(model=CART, step=step, start=evening, end=evening + timedelta(minutes=12))
        book = log_entries.written(book, PROJECT, fact)
    return book


def steps(book: Book) -> list[str]:
    return [step.id for step in cart(book).steps]


def cart(book: Book) -> Model:
    return book.project(PROJECT).model(CART)


def test_a_coat_once_more_lies_over_what_was_done() -> None:
    book = repaired(done_to("sand"), key("sand"), Repair.AGAIN)
    assert steps(book) == ["prime", "sand", "sand-again", "gloss", "wash", "wipe"]
    again = cart(book).steps[2]
    assert (again.coats, again.tool) == (1, cart(book).steps[1].tool)


def test_a_colour_mended_under_a_clear_coat_gets_clear_again() -> None:
    """A brush touch-up over gloss would meet the oil wash bare; see the rule for washes."""
    book = repaired(done_to("gloss"), key("sand"), Repair.TOUCH_UP, ("tub/bed",))
    assert steps(book)[3:5] == ["touch-up-sand", "gloss-again"]
    spot, clear = cart(book).steps[3:5]
    assert spot.stage is Stage.DETAIL
    assert spot.applications[0].places == clear.applications[0].places == ("tub/bed",)
    assert spot.applications[0].share == 0.1


def test_sanding_waits_until_the_film_is_dry_through() -> None:
    book = repaired(done_to("sand"), key("sand"), Repair.SAND)
    sanding = next(step for step in cart(book).steps if step.id.startswith("sand-sand"))
    (gate,) = sanding.gates
    assert gate.after == "sand"
    assert gate.windows[0].opens == Mark(state=State.DRY_THROUGH)


def test_stripping_takes_every_film_off_and_lays_it_anew() -> None:
    book = done_to("gloss")
    after = repaired(book, key("sand"), Repair.STRIP)
    names = steps(after)
    assert names[:5] == ["prime", "sand", "gloss", "soak", "brush-off"]
    assert names[5:8] == ["prime-again", "sand-again", "gloss-again"]
    assert after.project(PROJECT).log == book.project(PROJECT).log
    films = stack_of(after, after.project(PROJECT), cart(after))["tub/sides"]
    assert [film.step.id for film in films] == ["prime-again", "sand-again", "gloss-again"]
    # "Two hours to a few" in the stripper, then dry overnight: common practice, no source.
    waits = {
        gate.after: gate.windows[0].opens.minutes
        for step in cart(after).steps[4:6]
        for gate in step.gates
        if gate.windows[0].opens is not None
    }
    assert waits == {"soak": 120, "brush-off": 720}


def test_coats_that_were_logged_one_by_one_survive_stripping() -> None:
    book = small_book()
    sand = cart(book).steps[1]
    thrice = replace(sand, applications=(replace(sand.applications[0], coats=3),))
    model = replace(cart(book), steps=(cart(book).steps[0], thrice, *cart(book).steps[2:]))
    book = replace(book, projects=(replace(book.project(PROJECT), models=(model,)),))
    for number in range(3):
        evening = START + timedelta(days=number)
        fact = Logged(
            model=CART,
            step="prime" if not number else "sand",
            coat=max(1, number),
            start=evening,
            end=evening + timedelta(minutes=9),
        )
        book = log_entries.written(book, PROJECT, fact)
    after = repaired(book, key("sand"), Repair.STRIP)
    times = [(entry.start, entry.end) for entry in book.project(PROJECT).log]
    assert [(entry.start, entry.end) for entry in after.project(PROJECT).log] == times
    again = next(step for step in cart(after).steps if step.id == "sand-again")
    rest = next(step for step in cart(after).steps if step.id == "sand-rest")
    assert (again.coats, rest.coats) == (2, 1)


def test_frosting_gets_gloss_first_and_then_matte_anew() -> None:
    """ "Do not add matte; a gloss coat over it in a dry room; matte later": common practice."""
    book, plan = demo_plan("lone_lamplighter")
    book, keys, _ = done_as_planned(book, plan, len(plan.placements))
    matte = next(key for key in keys if log_entries.step_of(book, key).stage is Stage.MATTE)
    new = outline(book, matte, Repair.FROSTING)
    assert [step.stage for step in new] == [Stage.VARNISH, Stage.MATTE]
    assert new[0].look_in == 60


def test_a_tide_mark_waits_for_the_wiping_that_is_due() -> None:
    with pytest.raises(Refused, match='do "wipe" first'):
        repaired(done_to("wash"), key("wash"), Repair.TIDE_MARK)
    after = repaired(done_to("wipe"), key("wash"), Repair.TIDE_MARK)
    assert steps(after)[-1] == "lift-wash"


def test_nothing_is_mended_where_nothing_was_done() -> None:
    with pytest.raises(Refused, match="nothing was done there yet"):
        repaired(small_book(), key("sand"), Repair.AGAIN)
    with pytest.raises(Refused, match="no place"):
        repaired(done_to("sand"), key("sand"), Repair.AGAIN, ("roof",))
    with pytest.raises(Refused, match="no decals"):
        repaired(done_to("sand"), key("sand"), Repair.SILVERING)


def test_what_still_comes_counts_its_window_from_the_new_film() -> None:
    """The wash is done once more: wiping within the hour counts from the later one."""
    book = done_to("gloss")
    model = cart(book)
    recoat = replace(model.steps[4].gates[0], after="sand")
    wash = replace(model.steps[3], gates=(recoat,))
    model = replace(model, steps=(*model.steps[:3], wash, model.steps[4]))
    book = replace(book, projects=(replace(book.project(PROJECT), models=(model,)),))
    after = repaired(book, key("sand"), Repair.AGAIN)
    wash = next(step for step in cart(after).steps if step.id == "wash")
    assert [gate.after for gate in wash.gates] == ["sand-again"]


@pytest.mark.parametrize("name", DEMOS)
@pytest.mark.parametrize("part", [0.15, 0.4, 0.7, 1.0])
def test_what_is_offered_is_sound_and_planned(name: str, part: float) -> None:
    book, plan = demo_plan(name)
    book, keys, end = done_as_planned(book, plan, max(1, int(part * len(plan.placements))))
    before = {one.key for one in find(book)}
    log = [fact for project in book.projects for fact in project.log]
    this = keys[-1]
    offered = repairs_for(book, this)
    for kind in offered:
        after = repaired(book, this, kind)
        check_acyclic(after)
        fresh = [one for one in find(after) if one.key not in before]
        assert all(one.verdict.rank <= LayerVerdict.ADVICE.rank for one in fresh)
        times = [(fact.start, fact.end) for project in after.projects for fact in project.log]
        assert times == [(fact.start, fact.end) for fact in log]
    if offered:
        kind = offered[len(offered) // 2]
        made = planning.plan(repaired(book, this, kind), end, quick=True)  # the judge accepts it
        placed = {placement.key: placement for placement in made.plan.placements}
        for fact in log:
            where = [p for p in placed.values() if p.logged and p.start == minute_of(fact.start)]
            assert where
