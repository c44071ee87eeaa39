"""Among plans of the same worth the surer one; what a surer one would cost is told."""

from __future__ import annotations

from dataclasses import replace

import pytest

from app.service import demos, planning
from app.service.advising import Adviser
from app.service.planning_errors import Stopped
from app.service.surer_plans import RUNS, SurerPlan, price_line, surer_plans, taken
from planner.schedule.judge import judge
from planner.schedule.staying.policy import firm_times, leaves, worth


@pytest.fixture(scope="module")
def garage() -> Adviser:
    book = demos.read("winter_garage").book
    return Adviser(book, planning.plan(book, demos.first_evening(book)), runs=RUNS)


@pytest.fixture(scope="module")
def found(garage: Adviser) -> tuple[SurerPlan, ...]:
    return surer_plans(garage)


def test_each_is_a_sound_plan_and_surer_on_the_same_luck(garage, found) -> None:
    assert found
    for one in found:
        assert judge(garage.book, one.planned.plan).accepted
        assert one.planned.plan.cost.unplaced <= garage.planned.plan.cost.unplaced
        assert one.days > 0 or (one.chance or 0) > 0


def test_what_is_free_is_worth_no_less_by_what_work_moves_for(garage, found) -> None:
    calendar, plan = garage.planned.calendar, garage.planned.plan
    firm = firm_times(calendar, plan.now, ())
    for one in found:
        other = one.planned.plan
        value = worth(garage.book, calendar, other)
        assert one.free == (value <= worth(garage.book, calendar, plan))
        assert one.leaves == leaves(plan, other, firm)


def test_taken_is_the_surest_that_is_free_and_leaves_tonight(found) -> None:
    one = taken(found)
    assert one is not None
    assert one.free
    assert one.leaves
    assert taken([replace(one, free=False)]) is None
    assert taken([replace(one, leaves=False)]) is None


def test_the_price_names_sessions_and_days(garage, found) -> None:
    one = found[0]
    later = one.planned.plan.cost.finish - garage.planned.plan.cost.finish
    assert f"{later / 1440:+.1f} days by plan" in price_line(one, garage.planned.plan)


def test_it_stops_when_told(garage) -> None:
    told = Adviser(garage.book, garage.planned, runs=20)
    told.stop = lambda: True
    with pytest.raises(Stopped):
        surer_plans(told)
