"""What *now* is where the clock lies behind the logbook (definition 23)."""

import time
from dataclasses import replace
from datetime import timedelta

import pytest
from logged_book import CART, PROJECT, logged_book, moment

from app.service.clock import behind, elsewhere
from app.service.planning import plan
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.gear import Cleaned
from planner.values.moment import minute_of
from planner.values.present import last_told, present

LAST = minute_of(moment("2031-03-20 19:30"))  # the wash was begun then, last of all


def test_the_last_fact_of_all_is_told():
    told = last_told(logged_book())
    assert told == (LAST, f"{CART}/wash")
    airbrush = logged_book().gear.airbrushes[0].name
    later = replace(
        logged_book(), cleaned=(Cleaned(airbrush=airbrush, at=moment("2031-03-21 20:00")),)
    )
    assert last_told(later) == (LAST + 24 * 60 + 30, airbrush)


def test_now_is_the_later_of_clock_and_logbook():
    book = logged_book()
    assert present(book, LAST + 1) == LAST + 1
    assert present(book, LAST - 1) == LAST
    assert present(book, LAST - 60 * 24 * 365) == LAST
    century = 100 * 366 * 1440  # a mistyped year moves nothing; `in_reach` refuses it
    assert present(book, LAST - century) == LAST - century


def test_a_project_set_aside_tells_nothing():
    book = logged_book()
    aside = replace(book, projects=(replace(book.project(PROJECT), active=False),))
    assert present(aside, LAST - 5) == LAST - 5


@pytest.mark.parametrize("early", [1, 7, 60, 24 * 60, 7 * 24 * 60, 13 * 24 * 60, 366 * 24 * 60])
def test_a_clock_behind_the_logbook_still_gives_a_plan(early):
    book = logged_book()
    made = plan(book, LAST - early).plan
    assert made.now == LAST
    assert not made.unplaced
    assert all(placement.logged or placement.start >= LAST for placement in made.placements)
    assert behind(book, LAST - early) == (
        f"it is {moment('2031-03-20 19:30') - timedelta(minutes=early):%Y-%m-%d %H:%M}, "
        f"but the logbook tells of {CART}/wash at 2031-03-20 19:30: planned from there on; "
        "put the clock right, or the entry"
    )


def test_nothing_is_said_of_a_clock_that_goes_right():
    assert behind(logged_book(), LAST) is None


def test_the_judge_knows_a_now_that_lies_before_the_logbook():
    book = logged_book()
    made = plan_book(book, LAST)
    assert judge(book, made).accepted
    early = replace(made, now=LAST - 1)
    assert 23 in {violation.definition for violation in judge(book, early).violations}


@pytest.mark.skipif(not hasattr(time, "tzset"), reason="the zone of a process is set by tzset")
def test_a_person_who_travels_is_told(monkeypatch):
    book = logged_book()
    try:
        monkeypatch.setenv("TZ", book.bench_time.zone)
        time.tzset()
        assert elsewhere(book, LAST) is None
        monkeypatch.setenv("TZ", "Asia/Tokyo")  # nine hours ahead of UTC, Warsaw then one
        time.tzset()
        said = elsewhere(book, LAST)
        assert said is not None
        assert "the clock here shows 03:30, at the bench it is 19:30 (Europe/Warsaw)" in said
    finally:
        monkeypatch.undo()
        time.tzset()
