"""What smells and what goes on alone: worked out by hand, and over drawn books."""

from __future__ import annotations

from dataclasses import replace

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import NOW, at, book, paint, spray, work
from strategies import NOW_MINUTE, books

from planner.bench import AIRED, calendar_of
from planner.cure import Cure
from planner.passes import expand_all
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.conflict import explain, least_conflict
from planner.schedule.optimise.search import Effort, improve
from planner.schedule.reason_wording import sentence
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.plan import Cause, Plan
from planner.values.step import Stage, Tool, Trait

SMELLS, ALONE = (Trait.SMELLS,), (Trait.HANDS_FREE,)


def cure_of(of: Book) -> Cure:
    return Cure(of.room, zone_named(of.bench_time.zone))


def starts(plan: Plan) -> dict[str, tuple[int, int]]:
    return {placement.key.step: (placement.start, placement.end) for placement in plan.placements}


# -- by hand: bench time from 18:00 to 22:00, quiet hours from 21:00 ----------------------------


def test_others_are_worked_on_while_a_bath_goes_on_alone():
    bath = work("bath", Stage.CLEAN, "hull/deck", minutes=50, traits=ALONE)
    of = book(bath, paint("links", "tracks", minutes=30))
    plan = plan_book(of, NOW)
    assert judge(of, plan).accepted
    assert starts(plan) == {
        "bath": (at("18:00"), at("18:50")),
        "links": (at("18:05"), at("18:35")),
    }
    links = plan.placement(plan.placements[1].key)
    assert links is not None
    assert (links.reason.cause, links.reason.until) == (Cause.HANDS, at("18:05"))


def test_what_is_sprayed_keeps_hands_whatever_its_marks():
    step = spray("base", "hull/deck", minutes=20, traits=ALONE)
    assert not step.goes_alone
    assert not replace(step, tool=Tool.CAN).goes_alone
    assert replace(step, tool=Tool.BRUSH).goes_alone


def test_a_smell_waits_for_tomorrow_where_it_cannot_be_aired():
    """Hands are busy to 19:40, and 30 min more would end at 20:10, 50 min before 21:00."""
    of = book(
        work("rub", Stage.WIPE, "tracks", minutes=100),
        paint("clear", "hull/deck", minutes=30, traits=SMELLS, after=("rub",)),
    )
    plan = plan_book(of, NOW)
    assert starts(plan)["clear"] == (at("1/18:00"), at("1/18:30"))
    of = book(
        work("rub", Stage.WIPE, "tracks", minutes=90),
        paint("clear", "hull/deck", minutes=30, traits=SMELLS, after=("rub",)),
    )
    assert starts(plan_book(of, NOW))["clear"] == (at("19:30"), at("20:00"))


def test_a_smell_is_broken_off_an_hour_before_the_quiet_hours():
    """Of 150 min 120 smell until 20:00, and 30 on the next evening."""
    of = book(paint("clear", "hull/deck", minutes=150, split_least=30, traits=SMELLS))
    (placed,) = plan_book(of, NOW).placements
    assert [(piece.start, piece.end) for piece in placed.pieces] == [
        (at("18:00"), at("20:00")),
        (at("1/18:00"), at("1/18:30")),
    ]


def test_a_reason_names_quiet_hours_that_a_smell_waits_for():
    """Bench time from 6:00 on, quiet hours to 7:00."""
    of = book(paint("clear", "hull/deck", traits=SMELLS))
    early = replace(of.bench_time.stretches[0], start="06:00", end="09:00")
    of = replace(of, bench_time=replace(of.bench_time, stretches=(early,)))
    (placed,) = plan_book(of, at("1/05:00")).placements
    assert (placed.reason.cause, placed.reason.until) == (Cause.QUIET, at("1/07:00"))
    zone = zone_named("UTC")
    assert sentence(placed.reason, zone) == "quiet hours until Tue 07:00, and it smells"


def test_why_a_smell_has_no_place_is_its_mark_the_quiet_hours_or_the_bench_time():
    """Bench time begins at 20:30, and whatever smells must have ended by 20:00."""
    of = book(paint("clear", "hull/deck", traits=SMELLS))
    late = replace(of.bench_time.stretches[0], start="20:30", rule="FREQ=DAILY")
    of = replace(of, bench_time=replace(of.bench_time, stretches=(late,)))
    plan = plan_book(of, NOW)
    assert [one.key.step for one in plan.unplaced] == ["clear"]
    assert plan.unplaced[0].why.startswith("it smells for 10 minutes, and no session")
    told = [one.what for one in explain(of, NOW, cure_of(of))]
    assert told == ["cart: clear is marked smells", "quiet hours", "the bench time there is"]
    for demand in least_conflict(of, NOW, cure_of(of)):
        mended = demand.without(of)
        assert not plan_book(mended, NOW).unplaced, demand.clash.what


def test_nobody_gains_by_doing_with_hands_what_goes_on_alone():
    """Marked both, only the smell is a thing to give up; the bath goes on alone all the same."""
    bath = work("bath", Stage.CLEAN, "hull/deck", minutes=400, traits=(*SMELLS, *ALONE))
    of = book(bath)
    told = [one.what for one in explain(of, NOW, cure_of(of))]
    assert told[0] == "cart: bath is marked smells"
    (demand, *_) = least_conflict(of, NOW, cure_of(of))
    (placed,) = plan_book(demand.without(of), NOW).placements
    assert (placed.start, placed.end) == (at("18:00"), at("18:00") + 400)


# -- over drawn books --------------------------------------------------------------------------


def check(of: Book, plan: Plan) -> None:
    """Hold a plan against both marks, by the values alone."""
    assert judge(of, plan).accepted
    quiet = calendar_of(of.bench_time).quiet(plan.now - 2 * 1440, plan.now + 400 * 1440)
    passes = {pass_.key: pass_ for pass_ in expand_all(of)}
    for placed in (placement for placement in plan.placements if not placement.logged):
        step = passes[placed.key].step
        if Trait.SMELLS not in step.traits:
            continue
        for piece in placed.pieces:
            told = moment_of(piece.start, zone_named(of.bench_time.zone))
            assert all(
                piece.end + AIRED <= hours.start or hours.end <= piece.start for hours in quiet
            ), f"{placed.key} smells at {told}"


@drawn(12)
@given(of=st.booleans().flatmap(lambda wished: books(wished=wished, most_models=2)))
def test_every_plan_keeps_the_marks(of: Book):
    first = plan_book(of, NOW_MINUTE)
    check(of, first)
    calendar = calendar_of(of.bench_time)
    effort = Effort(rolls=1, proofs=1)
    for news in improve(of, first, cure=cure_of(of), calendar=calendar, effort=effort):
        check(of, news.plan)


@pytest.mark.parametrize("minutes", [3, 5, 6, 40])
def test_what_is_short_keeps_hands_throughout(minutes: int):
    of = book(work("bath", Stage.CLEAN, "hull/deck", minutes=minutes, traits=ALONE))
    (pass_,) = expand_all(of)
    assert (pass_.hands, pass_.alone) == (min(minutes, 5), max(0, minutes - 5))
