"""The four words for a plan: each only where it is so (definition 25)."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import MONDAY, NOW, book, coating, location, paint, work
from strategies import NOW_MINUTE, books
from told_plans import explained

from app.service import demos, planning
from app.service.planning import Planned
from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.conflict import explain, least_conflict
from planner.schedule.optimise.infeasibility_proof import contradicts
from planner.schedule.optimise.search import Effort, improve
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import Cost, Plan, Status, Unplaced
from planner.values.project import Pin
from planner.values.room import Room
from planner.values.step import Stage, Trait


def cure_of(of: Book) -> Cure:
    return Cure(of.room, zone_named(of.bench_time.zone))


def told(of: Book, now: int) -> tuple[Plan, Plan]:
    """Return the instant plan, and what is told of it once a proof was sought."""
    first = planning.plan(of, now)
    return first.plan, explained(first, of).plan


@st.composite
def hard_books(draw: st.DrawFn) -> Book:
    """Draw books of which some wishes can hold and some cannot."""
    of = draw(books(logged=draw(st.booleans()), pinned=True, wished=True, most_models=1))
    project = of.projects[0]
    model = draw(st.sampled_from(project.models))
    step = draw(st.sampled_from(model.steps))
    day = MONDAY + timedelta(days=draw(st.integers(0, 6)))
    pin = Pin(model=model.name, step=step.id, on=day)
    try:
        project = replace(project, pins=(*project.pins, pin))
        return replace(of, projects=(project, *of.projects[1:]))
    except ValueError:
        return of  # wished elsewhere already


@drawn(8)
@given(of=hard_books())
def test_infeasible_is_said_only_with_its_proof_and_otherwise_what_is_missing(of):
    first, shown = told(of, NOW_MINUTE)
    if not first.unplaced:
        assert first.status in (Status.FEASIBLE, Status.OPTIMAL)
        assert shown == first
        assert not contradicts(of, NOW_MINUTE, cure_of(of))
        return
    assert first.status is Status.INCOMPLETE
    assert all(one.why for one in first.unplaced)
    assert first.cost.unplaced == len(first.unplaced)
    assert shown.unplaced == first.unplaced
    if shown.status is Status.INFEASIBLE:
        assert shown.conflict
        assert contradicts(of, NOW_MINUTE, cure_of(of))
        assert plan_book(of, NOW_MINUTE, tries=3, seed=5).unplaced
    else:
        assert shown.status is Status.INCOMPLETE
        assert shown.conflict == ()


def without_the_last(planned: Planned) -> Planned:
    """Return what a heuristic would tell that overlooked the place of the last pass."""
    plan = planned.plan
    *kept, lost = sorted(plan.placements, key=lambda placement: placement.start)
    cost = replace(plan.cost, unplaced=1)
    missing = (Unplaced(lost.key, "has no place"),)
    less = replace(
        plan,
        placements=tuple(kept),
        unplaced=missing,
        cost=cost,
        status=Status.INCOMPLETE,
        bounds=(),
    )
    return replace(planned, plan=less)


@pytest.mark.parametrize("name", ["lone_lamplighter", "harbour_tenders", "winter_garage"])
def test_that_a_heuristic_failed_proves_nothing(name):
    of = demos.read(name).book
    shown = explained(without_the_last(planning.plan(of, demos.first_evening(of))), of)
    assert shown.plan.status is Status.INCOMPLETE
    assert shown.plan.conflict == ()
    assert [one.why for one in shown.plan.unplaced] == ["has no place"]


def test_a_search_that_places_not_all_stays_incomplete():
    """200 + 200 minutes are wished on one evening of 240: the search may not call it optimal."""
    of = book(*(work(name, Stage.WIPE, "hull/deck", minutes=200) for name in ("one", "two")))
    pins = tuple(Pin(model="cart", step=name, on=MONDAY) for name in ("one", "two"))
    of = replace(of, projects=(replace(of.projects[0], pins=pins),))
    first = plan_book(of, NOW)
    effort = Effort(rolls=2, proofs=1)
    for one in improve(
        of, first, cure=cure_of(of), calendar=calendar_of(of.bench_time), effort=effort
    ):
        assert one.plan.unplaced
        assert one.plan.status is Status.INCOMPLETE
    _, shown = told(of, NOW)
    assert shown.status is Status.INFEASIBLE
    # The other need not be wished for: it comes before, and takes its 200 minutes.
    assert [one.what.split()[1] for one in shown.conflict] == ["two", "bench"]


def test_a_plan_of_nothing_is_not_the_cheapest():
    """A plan that leaves a pass over is dearer than any that does not."""
    of = demos.read("lone_lamplighter").book
    whole = planning.plan(of, demos.first_evening(of))
    less = without_the_last(whole)
    cheap = Cost(unplaced=1, late=0, finish=0, stretches=0, setup_minutes=0)
    assert less.plan.cost.in_order() > whole.plan.cost.in_order()
    assert cheap.in_order() > whole.plan.cost.in_order()


# -- air in which a film never dries ----------------------------------------------------------


def in_air(humidity_pct: float, *traits: Trait) -> Book:
    """Return a book of two coats of a waterborne acrylic, in air of 23 °C."""
    of = book(paint("base", "hull/deck", coats=2, traits=traits), coatings=(coating("sand"),))
    return replace(of, room=Room(locations=(location("bench", 10, 23, humidity_pct),)))


def test_air_that_takes_up_no_more_water_is_told_as_the_reason():
    """At 100 % nothing evaporates; at 50 % the label's times hold (ISO 3270)."""
    wet, usual = in_air(100), in_air(50)
    assert planning.plan(usual, NOW).plan.unplaced == ()
    assert explain(usual, NOW, cure_of(usual)) == ()
    _, shown = told(wet, NOW)
    assert shown.status is Status.INFEASIBLE
    (clash,) = shown.conflict
    assert "the air is unfit for base" in clash.what
    _, on_my_word = told(in_air(100, Trait.ANY_AIR), NOW)
    (clash,) = on_my_word.conflict
    assert "base never dries far enough in this air" in clash.what
    (only,) = least_conflict(wet, NOW, cure_of(wet))
    mended = only.without(wet)
    assert planning.plan(mended, NOW).plan.unplaced == ()
    assert judge(mended, plan_book(mended, NOW)).accepted


def test_a_search_that_is_over_says_what_is_still_open():
    """The garage's plan ends after its bound, and nobody is left to guess why that stays so."""
    of = demos.read("winter_garage").book
    now = demos.first_evening(of)
    first = planning.plan(of, now)
    cure = cure_of(of)
    *_, last = improve(
        of,
        first.plan,
        cure=cure,
        calendar=calendar_of(of.bench_time),
        effort=Effort(rolls=0, proofs=1),
    )
    bound = next(one for one in last.plan.bounds if one.level == "finish")
    assert last.plan.status is Status.FEASIBLE
    assert bound.value < last.plan.cost.finish
    assert "; still open: " in bound.proof
