"""Improving plans: each is sound, none is dearer, and what is called optimal is."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from brute_force import best_finish
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import MONDAY, NOW, book, coating, paint, spray, work
from strategies import NOW_MINUTE, books

from app.service import demos
from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.search import Effort, News, improve
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.moment import zone_named
from planner.values.plan import Plan, Status
from planner.values.step import Stage, Step, Trait

LITTLE = Effort(rolls=2, proofs=1)
NEXT_DAY = 1440


def improved(of: Book, first: Plan, effort: Effort = LITTLE, **rest: object) -> list[News]:
    """Return all that a search yields of a book."""
    cure = Cure(of.room, zone_named(of.bench_time.zone))
    calendar = calendar_of(of.bench_time)
    return list(improve(of, first, cure=cure, calendar=calendar, effort=effort, **rest))  # type: ignore[arg-type]


def shown(news: list[News]) -> list[tuple[object, ...]]:
    """Return what two runs must have in common."""
    return [
        (one.improved, one.plan.placements, one.plan.bench, one.plan.bounds, one.plan.status)
        for one in news
    ]


# -- random books -----------------------------------------------------------------------------

KINDS = st.tuples(st.booleans(), st.booleans(), st.booleans())


def check_course(of: Book, first: Plan, news: list[News]) -> None:
    """Check every plan of a search, in order, its bounds against the best of them."""
    order = of.preferences.order
    assert news
    assert news[0].plan.placements == first.placements
    assert not news[0].improved
    last = first
    for one in news:
        verdict = judge(of, one.plan)
        assert verdict.accepted, [str(fault) for fault in verdict.violations][:4]
        assert one.plan.digest == first.digest
        if one.improved:
            assert one.plan.cost.in_order(order) < last.cost.in_order(order)
        else:
            assert one.plan.placements == last.placements
        last = one.plan
    for one in news:
        for bound in one.plan.bounds:
            whole = bound.level in ("unplaced", "late", "finish")
            against = last if whole else one.plan
            assert bound.value <= getattr(against.cost, bound.level), bound.proof
        if one.plan.status is Status.OPTIMAL:
            proven = (one.plan.cost.unplaced, one.plan.cost.late, one.plan.cost.finish)
            assert proven == (last.cost.unplaced, last.cost.late, last.cost.finish)


@drawn(25)
@given(kinds=KINDS, data=st.data())
def test_every_plan_is_sound_and_none_is_dearer(kinds, data):
    logged, pinned, wished = kinds
    of = data.draw(books(logged=logged, pinned=pinned, wished=wished, most_models=2))
    first = replace(plan_book(of, NOW_MINUTE), digest="of this very book")
    assert judge(of, first).accepted
    check_course(of, first, improved(of, first))


@drawn(6)
@given(of=books(logged=True, pinned=True, wished=True, most_models=2), seed=st.integers(0, 3))
def test_the_same_input_gives_the_same_plans_in_the_same_order(of, seed):
    first = plan_book(of, NOW_MINUTE)
    assert shown(improved(of, first, seed=seed)) == shown(improved(of, first, seed=seed))


@drawn(6)
@given(of=books(most_models=2), skipped=st.integers(0, 2))
def test_a_plan_after_an_event_counts_what_moved(of, skipped):
    """With the plan before it named, the steps in another stretch are counted, one by one."""
    before = plan_book(of, NOW_MINUTE)
    day = MONDAY + timedelta(days=skipped)
    dates = tuple({*of.bench_time.skipped, day})
    after = replace(of, bench_time=replace(of.bench_time, skipped=dates))
    first = plan_book(after, NOW_MINUTE, last=before)
    for one in improved(after, first, last=before):
        assert judge(after, one.plan).accepted
        assert one.plan.cost.in_order() <= first.cost.in_order()
        assert one.plan.cost.moved == moved(after, before, one.plan)


def moved(of: Book, before: Plan, after: Plan) -> int:
    """Count the steps of which a pass begins in another stretch than before."""
    calendar = calendar_of(of.bench_time)
    was = {placement.key: calendar.stretch_at(placement.start) for placement in before.placements}
    return len(
        {
            placement.key[:3]
            for placement in after.placements
            if placement.key in was and calendar.stretch_at(placement.start) != was[placement.key]
        }
    )


def test_a_demo_gets_better():
    """Two rolls of the three tenders save time on what the rules find."""
    of = demos.read("harbour_tenders").book
    first = plan_book(of, demos.first_evening(of))
    news = improved(of, first, Effort(rolls=2, proofs=0))
    check_course(of, first, news)
    assert news[-1].plan.cost.in_order() < first.cost.in_order()


# -- stopping ---------------------------------------------------------------------------------


def test_once_stopped_it_ends():
    of = demos.read("club_day_batch").book
    first = plan_book(of, demos.first_evening(of))
    asked = 0

    def stopped() -> bool:
        nonlocal asked
        asked += 1
        return True

    news = improved(of, first, Effort(), stopped=stopped)
    assert len(news) == 1
    assert news[0].plan.placements == first.placements
    assert 1 <= asked <= 2


def test_stopped_within_a_roll_it_ends_within_an_evening():
    of = demos.read("harbour_tenders").book
    first = plan_book(of, demos.first_evening(of))
    asked = 0

    def stopped() -> bool:
        nonlocal asked
        asked += 1
        return asked > 2

    improved(of, first, Effort(), stopped=stopped)
    assert asked <= 5


def test_no_effort_gives_the_first_plan_with_its_bounds():
    of = demos.read("lone_lamplighter").book
    first = plan_book(of, demos.first_evening(of))
    news = improved(of, first, Effort(rolls=0, proofs=0))
    assert news[0].plan.placements == first.placements
    assert [bound.level for bound in news[0].plan.bounds] == ["unplaced", "late", "finish"]


# -- tiny books, tried in every way -----------------------------------------------------------

QUICK = (
    coating("sand"),
    coating("green", dry_to_recoat=15, dry_to_handle=10),
    coating("oil", Family.ARTISTS_OIL, dry_to_recoat=200, dry_to_handle=90),
)


def with_models(*orders: tuple[Step, ...], **project: object) -> Book:
    """Return a book with one cart for each working order."""
    of = book(*orders[0], coatings=QUICK, **project)
    cart = of.projects[0].models[0]
    models = tuple(replace(cart, name=f"cart {n}", steps=steps) for n, steps in enumerate(orders))
    return replace(of, projects=(replace(of.projects[0], models=models),))


@st.composite
def tiny_books(draw: st.DrawFn) -> Book:
    """Draw one or two carts with two to four brush passes between them, due on Monday or not."""
    orders = []
    left = draw(st.integers(2, 4))
    while left > 0:
        count = draw(st.integers(1, left))
        left -= count
        places = st.sampled_from(["hull/deck", "hull/side", "wheels/tread", "wheels/rim"])
        lengths, coats = st.sampled_from([5, 20, 45]), st.sampled_from(["sand", "green"])
        steps = [
            paint(
                f"s{n}",
                draw(places),
                coat=draw(coats),
                minutes=draw(lengths),
                traits=draw(st.sampled_from([(), (), (Trait.SMELLS,), (Trait.HANDS_FREE,)])),
            )
            for n in range(count)
        ]
        if left >= 2 and draw(st.booleans()):
            steps += [
                paint("wash", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
                work("wipe", Stage.WIPE, "hull/deck"),
            ]
            left -= 2
        orders.append(tuple(steps))
    return with_models(*orders, target=draw(st.sampled_from([None, MONDAY])))


@drawn(15)
@given(of=tiny_books())
def test_no_plan_is_cheaper_than_the_best_there_is(of):
    first = plan_book(of, NOW)
    best = best_finish(of, NOW)
    assert best is not None
    due = NOW + 7 * 60  # Monday 17:00 to midnight
    for one in improved(of, first):
        cost = one.plan.cost
        assert judge(of, one.plan).accepted
        assert NOW + cost.finish >= best
        late = max(0, best - due) if of.projects[0].target else 0
        assert cost.late >= late
        if one.plan.status is Status.OPTIMAL:
            assert (cost.late, NOW + cost.finish) == (late, best)
        for bound in one.plan.bounds:
            most = {"unplaced": 0, "late": late, "finish": best - NOW}
            assert bound.value <= most.get(bound.level, getattr(cost, bound.level))


def test_what_is_easy_is_proven():
    """10 min from 18:00, and drying: nothing is sooner, on one evening, without set-ups."""
    of = with_models((paint("base", "hull/deck"),))
    found = improved(of, plan_book(of, NOW))[-1].plan
    assert found.status is Status.OPTIMAL
    assert NOW + found.cost.finish == best_finish(of, NOW)
    assert (found.cost.late, found.cost.stretches, found.cost.setup_minutes) == (0, 1, 0)


def test_a_plan_that_wastes_an_evening_is_mended():
    """The first plan given begins a day late; the search finds what can be done on Monday."""
    of = with_models((spray("base", "hull/deck"), spray("top", "hull/side", coat="green")))
    good = plan_book(of, NOW)
    late = plan_book(of, NOW + NEXT_DAY)
    now = replace(late, now=NOW, cost=replace(late.cost, finish=late.cost.finish + NEXT_DAY))
    assert judge(of, now).accepted
    found = improved(of, now)[-1].plan
    assert found.cost.in_order() <= good.cost.in_order()


# -- more bench time --------------------------------------------------------------------------

EARLY = Recurring(rule="FREQ=DAILY", since=MONDAY, start="07:30", end="08:30")


@drawn(12)
@given(of=tiny_books())
def test_more_bench_time_makes_no_proven_finish_later(of):
    """The air of `making` is the same all day, so a new stretch is all that is new."""
    more = replace(
        of, bench_time=replace(of.bench_time, stretches=(*of.bench_time.stretches, EARLY))
    )
    here = improved(of, plan_book(of, NOW))[-1].plan
    there = improved(more, plan_book(more, NOW))[-1].plan
    if here.status is Status.OPTIMAL:
        bound = next(bound.value for bound in there.bounds if bound.level == "finish")
        assert bound <= here.cost.finish
    if there.status is Status.OPTIMAL:
        assert (there.cost.late, there.cost.finish) <= (here.cost.late, here.cost.finish)


@pytest.mark.parametrize("minutes", [150, 200])
def test_another_stretch_lets_what_does_not_fit_tonight_end_sooner(minutes):
    """Two pieces of over 2 h need two evenings; from 7:30 on, the second goes there instead."""
    of = with_models(
        (work("one", Stage.WIPE, "hull/deck", minutes=minutes),),
        (work("two", Stage.WIPE, "hull/deck", minutes=minutes),),
    )
    hours = replace(EARLY, end="12:00")
    more = replace(
        of, bench_time=replace(of.bench_time, stretches=(*of.bench_time.stretches, hours))
    )
    here = improved(of, plan_book(of, NOW))[-1].plan
    there = improved(more, plan_book(more, NOW))[-1].plan
    assert here.cost.finish == 60 + NEXT_DAY + minutes  # Tuesday 18:00
    assert there.cost.finish == 14 * 60 + 30 + minutes  # Tuesday 07:30
