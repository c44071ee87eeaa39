"""Gaps between pieces of work: how long they are, and what fits into them."""

from __future__ import annotations

from dataclasses import replace

import pytest
from small_book import CART, NOW, PROJECT, ZONE, at, key, small_book, small_plan

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.evening.gaps import CUT_DECALS, DRY_FIT, FreeGap, GapUse, gaps
from planner.tonight.replayed_plan import ReplayedPlan
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.model import Part, Place
from planner.values.moment import Interval
from planner.values.plan import Cause, PassKey, Placement, Plan, Reason
from planner.values.step import Application, Minutes, Stage, Step, Tool

FIRST = "2031-03-06"  # primed 19:33–19:43, cleaned until 19:49; the rest of it is free
SECOND = "2031-03-13"


def found(book: Book, plan: Plan, now: int = NOW) -> tuple[FreeGap, ...]:
    calendar, cure = BenchCalendar(book.bench_time), Cure(book.room, ZONE)
    return gaps(ReplayedPlan(book, plan, now, calendar, cure))


def with_step(step: Step, *parts: Part, before: str = "") -> Book:
    """Return the small book with one more step, at the end or before another, and more parts."""
    book = small_book()
    model = book.projects[0].models[0]
    ids = [each.id for each in model.steps]
    place = ids.index(before) if before else len(ids)
    steps = (*model.steps[:place], step, *model.steps[place:])
    model = replace(model, steps=steps, parts=(*model.parts, *parts))
    coatings = (*book.coatings, Coating(name="decal sheet", family=Family.DECAL))
    return replace(book, coatings=coatings, projects=(replace(book.projects[0], models=(model,)),))


def planned(step: str, start: str, minutes: int) -> Plan:
    """Return the plan made by hand with one more pass, on the second evening."""
    begin = at(f"{SECOND} {start}")
    one = Placement(
        PassKey(PROJECT, CART, step, 1),
        (Interval(begin, begin + minutes),),
        "",
        Reason(Cause.HANDS),
    )
    plan = small_plan()
    return replace(plan, placements=(*plan.placements, one))


LAMP = Part(name="lamp", places=(Place(name="glass", area_cm2=2),))
BY_BRUSH = Step(
    id="lamp-colour",
    stage=Stage.DETAIL,
    applications=(Application(places=("lamp",), coating="grey primer"),),
    minutes=Minutes(fixed=12),
)


def test_brush_work_of_later_is_offered_for_the_minutes_between() -> None:
    """From 19:49, when the airbrush is clean, to 21:30, when bench time ends: 101 min."""
    first = found(with_step(BY_BRUSH, LAMP), planned("lamp-colour", "20:50", 12))[0]
    assert (first.start, first.end, first.minutes) == (
        at(f"{FIRST} 19:49"),
        at(f"{FIRST} 21:30"),
        101,
    )
    offer = next(one for one in first.offers if one.use is GapUse.BRUSH)
    assert offer.key == PassKey(PROJECT, CART, "lamp-colour", 1)
    assert (offer.minutes, offer.planned, offer.price) == (12, at(f"{SECOND} 20:50"), 0)


def test_nothing_is_offered_that_does_not_fit_or_is_not_ready() -> None:
    long = replace(BY_BRUSH, minutes=Minutes(fixed=102))
    offers = found(with_step(long, LAMP), planned("lamp-colour", "20:50", 12))[:1]
    assert all(one.use is not GapUse.BRUSH for gap in offers for one in gap.offers)
    waits = replace(BY_BRUSH, after=("sand",))  # which is done a week later
    offers = found(with_step(waits, LAMP), planned("lamp-colour", "20:50", 12))
    first = [gap for gap in offers if gap.start < at(f"{SECOND} 00:00")]
    assert all(one.use is not GapUse.BRUSH for gap in first for one in gap.offers)


def test_a_spray_costs_its_filling_and_one_cleaning() -> None:
    """The sand of a week later fits, once the primer is dry: twelve minutes, filled and cleaned."""
    first = found(small_book(), small_plan())[0]
    offer = next(one for one in first.offers if one.use is GapUse.SPRAY)
    assert offer.key == key("sand")
    brush = small_book().gear.airbrushes[0]
    assert offer.price == brush.load_minutes + brush.clean_minutes
    assert offer.minutes == 12 + offer.price
    assert offer.planned == at(f"{SECOND} 19:33")


def test_decals_can_be_cut_beforehand_and_parts_tried_dry() -> None:
    decals = Step(
        id="decals",
        stage=Stage.DECAL,
        applications=(Application(places=("tub/sides",), coating="decal sheet"),),
        tool=Tool.HAND,
        minutes=Minutes(fixed=20),
    )
    first = found(with_step(decals), planned("decals", "21:00", 20))[0]
    (offer,) = [one for one in first.offers if one.use is GapUse.CUT_DECALS]
    assert (offer.key.step, offer.minutes) == ("decals", CUT_DECALS)
    join = Step(
        id="join",
        stage=Stage.JOIN,
        touches=("tub", "lamp"),
        tool=Tool.HAND,
        minutes=Minutes(fixed=10),
    )
    tried = found(with_step(join, LAMP), planned("join", "21:00", 10))
    uses = [(one.use, one.minutes) for gap in tried for one in gap.offers]
    assert (GapUse.DRY_FIT, DRY_FIT) in uses


@pytest.mark.parametrize(("now", "there"), [("21:10", True), ("21:16", False)])
def test_fewer_than_fifteen_minutes_are_no_gap(now: str, there: bool) -> None:
    """Bench time ends at 21:30: twenty minutes are one, fourteen are none."""
    left = found(
        with_step(BY_BRUSH, LAMP), planned("lamp-colour", "20:50", 12), at(f"{FIRST} {now}")
    )
    assert any(gap.start < at(f"{SECOND} 00:00") for gap in left) is there
