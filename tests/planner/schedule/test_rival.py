"""Rules are given up while they run: only where they could not win, which is counted by hand.

Bench time is 18:00 to 22:00 UTC (``judge_cases.making``).
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from drawn_examples import drawn
from hypothesis import HealthCheck, given
from judge_cases.making import NOW, at, book, paint
from strategies import NOW_MINUTE, books

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import attempt, plan_book
from planner.schedule.plan_from_schedule import cost_of
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.schedule.rival import rival_of
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import Cost


def problem_of(of: Book, now: int) -> Problem:
    """Return what a schedule of a book must respect."""
    cure = Cure(of.room, zone_named(of.bench_time.zone))
    return Problem(of, now, cure=cure, calendar=calendar_of(of.bench_time))


def test_what_is_left_until_the_finish_is_counted_from_each_evening():
    problem = problem_of(book(paint("base", "hull/deck", minutes=60)), NOW)
    first = problem.calendar.next_stretch(NOW)
    second = problem.calendar.next_stretch(first.interval.end)
    third = problem.calendar.next_stretch(second.interval.end)
    done = Cost(unplaced=0, late=0, finish=at("1/20:00") - NOW, stretches=2, setup_minutes=0)
    rival = rival_of(problem, done)
    assert rival is not None
    # 240 minutes of the first evening, 120 of the second, none after.
    assert not rival.beats(first, 360)
    assert rival.beats(first, 361)
    assert not rival.beats(second, 120)
    assert rival.beats(second, 121)
    assert rival.beats(third, 1)


@pytest.mark.parametrize("dearer", [{"unplaced": 1}, {"late": 1}])
def test_nothing_is_given_up_where_the_finish_does_not_decide(dearer):
    problem = problem_of(book(paint("base", "hull/deck", minutes=60)), NOW)
    done = Cost(unplaced=0, late=0, finish=300, stretches=1, setup_minutes=0)
    assert rival_of(problem, done) is not None
    assert rival_of(problem, replace(done, **dearer)) is None


@drawn(15, HealthCheck.data_too_large)
@given(of=books(logged=True, pinned=True))
def test_the_plan_is_that_of_rules_that_all_ran_to_the_end(of: Book) -> None:
    problem = problem_of(of, NOW_MINUTE)
    searches = [attempt(problem, rule, number) for number, rule in enumerate(RULES)]
    costs = [cost_of(problem, one.table, len(one.unplaced), None) for one in searches]
    order = of.preferences.order
    assert plan_book(of, NOW_MINUTE).cost.in_order(order) == min(
        cost.in_order(order) for cost in costs
    )
