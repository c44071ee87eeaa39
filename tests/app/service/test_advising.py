"""What would help: each measure is a sound plan, and buys what it promises."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from app.service import advising, demos, measures, planning
from app.service.advising import Adviser
from app.service.measure_changes import Aside, OtherCoating, WarmBox, Warmer
from app.service.measures import MeasureKind
from app.service.planning_errors import Stopped
from planner.air.moisture import dew_point_c
from planner.chance.draws import Draws
from planner.chance.odds import odds_of
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.moment import moment_of
from planner.values.refusal import Refused
from planner.values.step import Stage, Tool

RUNS = 400


@pytest.fixture(scope="module")
def lamplighter() -> Adviser:
    book = demos.read("lone_lamplighter").book
    return Adviser(book, planning.plan(book, demos.first_evening(book)), runs=RUNS)


@pytest.fixture(scope="module")
def found(lamplighter: Adviser) -> tuple[advising.DateAdvice, ...]:
    return lamplighter.all()


def test_every_measure_is_a_plan_that_the_judge_accepts(lamplighter, found) -> None:
    assert found
    for one in found:
        assert judge(one.book, one.planned.plan).accepted
        assert one.planned.plan.cost.unplaced <= lamplighter.planned.plan.cost.unplaced


def test_the_gain_promised_is_the_gain_on_fresh_luck(lamplighter, found) -> None:
    """Within four standard errors of a difference of two shares of 400 runs each, at the most."""
    fresh = Draws(RUNS, 4711)
    law = lamplighter.spreads
    before = odds_of(lamplighter.book, lamplighter.planned.plan, spreads=law, draws=fresh)
    assert before is not None
    for one in found[:3]:
        after = odds_of(one.book, one.planned.plan, spreads=law, draws=fresh)
        assert after is not None
        gained = (after.projects[0].in_time or 0) - (before.projects[0].in_time or 0)
        assert gained == pytest.approx(one.chance, abs=4 * (2 * 0.16 / RUNS) ** 0.5)


def test_the_one_that_buys_most_comes_first(found) -> None:
    assert [one.chance for one in found] == sorted((one.chance for one in found), reverse=True)
    assert all(advising.helps(one) for one in found)


def test_what_is_asked_to_stop_stops(lamplighter) -> None:
    with pytest.raises(Stopped):
        Adviser(lamplighter.book, lamplighter.planned, runs=10, stop=lambda: True)


def test_a_warmer_room_holds_the_same_water(lamplighter) -> None:
    """The dew point stays: what is heated loses no water; a tenth of a percent is rounded away."""
    book = lamplighter.book
    place = book.room.locations[0]
    warm = Warmer(place.name, 3).apply(book).room.locations[0]
    for cold, hot in zip(place.workdays, warm.workdays, strict=True):
        assert hot.temperature_c == cold.temperature_c + 3
        assert dew_point_c(hot.temperature_c, hot.humidity_pct) == pytest.approx(
            dew_point_c(cold.temperature_c, cold.humidity_pct), abs=0.05
        )


def test_a_model_set_aside_is_kept_and_not_planned() -> None:
    book = demos.read("harbour_tenders").book
    project, model = book.projects[0].name, book.projects[0].models[0]
    after = Aside(project, model.name).apply(book)
    assert model.name not in [one.name for one in after.project(project).models]
    rests = next(one for one in after.projects if model in one.models)
    assert not rests.active


def test_only_a_primer_that_is_on_the_shelf_takes_the_place_of_a_primer() -> None:
    book = demos.read("harbour_tenders").book
    planned = planning.plan(book, demos.first_evening(book), quick=True)
    shelf = {one.name: one for one in book.coatings}
    adviser = Adviser(book, planned, runs=20)
    for one in measures.measures(book, planned, adviser.odds):
        if one.kind is MeasureKind.COATING:
            (swap,) = one.scenario.changes
            assert isinstance(swap, OtherCoating)
            assert shelf[swap.coating].in_stock_ml > 0
            if swap.stage is not Stage.PRIME:
                assert shelf[swap.coating].finish is shelf[swap.was].finish


def test_what_comes_in_a_can_and_what_in_a_bottle_do_not_take_each_others_place() -> None:
    """The garage primes one model from a can; no bottle can be sprayed by that."""
    book = demos.read("winter_garage").book
    planned = planning.plan(book, demos.first_evening(book), quick=True)
    cans = {
        application.coating
        for project in book.projects
        for model in project.models
        for step in model.steps
        if step.tool is Tool.CAN
        for application in step.applications
    }
    assert cans
    adviser = Adviser(book, planned, runs=20)
    for one in measures.measures(book, planned, adviser.odds):
        for change in one.scenario.changes:
            if isinstance(change, OtherCoating):
                assert not cans & {change.was, change.coating}


def test_the_box_is_there_once() -> None:
    book = demos.read("harbour_tenders").book
    boxed = WarmBox().apply(book)
    assert len(boxed.room.locations) <= len(book.room.locations) + 1
    with pytest.raises(Refused):
        WarmBox().apply(boxed)  # nothing is left that could dry there as well


def dated(book: Book, day: date | None) -> Book:
    return replace(book, projects=(replace(book.projects[0], target=day),))


def test_the_later_the_date_the_later_one_may_begin() -> None:
    """Nobody need begin a month ahead what takes a week; before its plan ends it is too late."""
    book = demos.read("lone_lamplighter").book
    now = demos.first_evening(book)
    plain = planning.plan(book, now)
    end = moment_of(plain.plan.finishes[0][1], plain.calendar.zone).date()
    found = []
    for later in (-2, 14, 28):
        one = dated(book, end + timedelta(days=later))
        adviser = Adviser(one, planning.plan(one, now), runs=60)
        found.append(adviser.latest_start(one.projects[0].name))
    early, middle, late = found
    assert early is None
    assert middle is not None
    assert late is not None
    assert middle.interval.start < late.interval.start
    day = plain.calendar.day_end(end + timedelta(days=14))
    assert now < middle.interval.start < day


def test_without_a_date_there_is_no_latest_start(lamplighter) -> None:
    book = dated(lamplighter.book, None)
    adviser = Adviser(book, lamplighter.planned, runs=10)
    with pytest.raises(Refused):
        adviser.latest_start(book.projects[0].name)
