"""Trying changes: what each does to the book, and what is compared."""

from __future__ import annotations

from datetime import date, datetime, timedelta

import pytest
from small_book import CART, NOW, PROJECT, ZONE, small_book

from app.service import demos, what_if
from app.service.planning import plan
from app.service.what_if import (
    AirAllDay,
    Elsewhere,
    First,
    LeaveOut,
    Once,
    OneMoreEvening,
    PlanFigures,
    Scenario,
    Weight,
)
from planner.values.refusal import Refused
from planner.values.step import Stage


def outcome(scenario: Scenario) -> PlanFigures:
    *_, last = what_if.tried(small_book(), NOW, scenario, lambda: False)
    assert not last.rough
    return last


def present() -> PlanFigures:
    return what_if.outcome_of(small_book(), plan(small_book(), NOW).plan)


def test_one_more_evening_lets_the_cart_be_finished_sooner() -> None:
    more = OneMoreEvening(weekday=0, start="19:30", end="21:30", since=date(2031, 3, 6))
    assert outcome(Scenario("Mondays", (more,))).finish < present().finish


def test_what_is_left_out_takes_its_wiping_with_it() -> None:
    scenario = Scenario("no wash", (LeaveOut(PROJECT, CART, Stage.OIL_WASH),))
    steps = scenario.apply(small_book()).book.project(PROJECT).model(CART).steps
    assert [step.id for step in steps] == ["prime", "sand", "gloss"]
    assert outcome(scenario).finish < present().finish


def test_films_in_a_warm_box_dry_there() -> None:
    change = Elsewhere(PROJECT, "", Stage.BASE, "box", temperature_c=35, humidity_pct=20)
    book = Scenario("warm box", (change,)).apply(small_book()).book
    assert book.room.location("box").workdays[0].temperature_c == 35
    dries = {step.id: step.dries_in for step in book.project(PROJECT).model(CART).steps}
    assert dries == {"prime": "", "sand": "box", "gloss": "", "wash": "", "wipe": ""}


def test_several_changes_are_one_edit() -> None:
    day = datetime(2031, 3, 8, 10, 0, tzinfo=ZONE)
    changes = (
        Once(day, day + timedelta(hours=3)),
        First(PROJECT, CART),
        Weight(PROJECT, 7),
        AirAllDay("", 26, 40),
    )
    edit = Scenario("a warm Saturday", changes).apply(small_book())
    assert edit.name == "a warm Saturday"
    assert len(edit.book.bench_time.extra) == 1
    assert (edit.book.project(PROJECT).pilot, edit.book.project(PROJECT).weight) == (CART, 7)
    assert edit.book.room.locations[0].workdays[0].temperature_c == 26


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (LeaveOut(PROJECT, CART, Stage.FILTER), "nothing with the stage"),
        (LeaveOut("moon", "", Stage.WASH), "moon"),
        (Elsewhere(PROJECT, CART, Stage.BASE, "cellar"), "cellar"),
        (Elsewhere(PROJECT, "moon", Stage.BASE, "bench"), "moon"),
        (Weight(PROJECT, 1), "changes nothing"),
    ],
)
def test_what_cannot_be_tried_is_said(change: what_if.TriedChange, told: str) -> None:
    with pytest.raises(Refused, match=told):
        Scenario("x", (change,)).apply(small_book())


def test_a_first_look_comes_before_all_rules_and_stops_when_told() -> None:
    scenario = Scenario("weight", (Weight(PROJECT, 2),))
    stopped: list[bool] = []
    seen = []
    for one in what_if.tried(small_book(), NOW, scenario, lambda: bool(stopped)):
        seen.append(one.rough)
        stopped.append(True)
    assert seen == [True]


def test_leaving_out_what_others_need_is_counted_as_unsound() -> None:
    book = demos.read("harbour_tenders").book
    project = book.projects[0]
    assert Stage.VARNISH in what_if.stages_left(book, project.name)
    scenario = Scenario("no gloss", (LeaveOut(project.name, "", Stage.VARNISH),))
    after = scenario.apply(book).book
    now = demos.first_evening(book)
    assert what_if.outcome_of(after, plan(after, now, quick=True).plan).unsound > 0
