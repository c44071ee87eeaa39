"""Dates and priorities of models: each model counts once (definitions 24, 26, 27).

Bench time is 18:00 to 22:00 every day, `NOW` is Monday 17:00.  Lateness is
worked out by hand from when the pieces stand.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import NOW, at, book, work
from strategies import NOW_MINUTE, books

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.schedule.missed_dates import missed_dates
from planner.schedule.optimise.search import Effort, improve
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import Plan
from planner.values.step import Stage

SPOTS = ("hull/deck", "hull/side", "wheels/tread", "wheels/rim")
TUESDAY, WEDNESDAY = date(2031, 3, 4), date(2031, 3, 5)
DAY = 1440


def carts(first: dict[str, Any], second: dict[str, Any], **project: Any) -> Book:
    """Return a book of two carts of 400 minutes each: together they fill more than three days."""
    steps = tuple(work(f"s{n}", Stage.CLEAN, spot, minutes=100) for n, spot in enumerate(SPOTS))
    of = book(*steps)
    cart = of.projects[0].models[0]
    models = (replace(cart, name="one", **first), replace(cart, name="two", **second))
    return replace(of, projects=(replace(of.projects[0], models=models, **project),))


def ends(plan: Plan) -> dict[str, int]:
    return {model: end for _, model, end in plan.model_finishes}


def test_a_model_that_is_early_is_done_first_and_the_other_fills_what_is_left() -> None:
    for early, late in (("one", "two"), ("two", "one")):
        of = carts({"early": early == "one"}, {"early": early == "two"})
        plan = plan_book(of, NOW)
        assert judge(of, plan).accepted
        assert ends(plan)[early] <= at("1/22:00") < ends(plan)[late]  # two evenings take 400 min
        # Each minute from now until it is finished counts, and nothing else has a date.
        assert plan.cost.late == ends(plan)[early] - NOW


def test_a_model_with_a_date_counts_by_that_and_not_in_its_project() -> None:
    of = carts({"target": TUESDAY, "weight": 2}, {}, target=WEDNESDAY, weight=3)
    plan = plan_book(of, NOW)
    assert judge(of, plan).accepted
    own = max(0, ends(plan)["one"] - at("2/00:00"))
    other = max(0, ends(plan)["two"] - at("3/00:00"))
    assert plan.cost.late == 3 * 2 * own + 3 * other


def test_a_weight_alone_counts_by_the_date_of_the_project() -> None:
    of = carts({"weight": 5}, {}, target=TUESDAY)
    plan = plan_book(of, NOW)
    assert judge(of, plan).accepted
    late = {name: max(0, end - at("2/00:00")) for name, end in ends(plan).items()}
    assert plan.cost.late == 5 * late["one"] + late["two"]
    assert late["one"] == 0  # it comes first, for its lateness weighs more


def test_missed_dates_are_those_of_models_and_of_the_rest() -> None:
    of = carts({"target": TUESDAY}, {"target": TUESDAY}, target=date(2031, 3, 3))
    plan = plan_book(of, NOW)
    missed = missed_dates(of, calendar_of(of.bench_time), plan)
    late = {name: end for name, end in ends(plan).items() if end > at("2/00:00")}
    assert {one.model: one.end for one in missed} == late
    assert all(one.days == -(-(one.end - at("2/00:00")) // DAY) for one in missed)


@pytest.mark.parametrize("wrong", [1, -1])
def test_a_wrong_finish_of_a_model_is_against_definition_26(wrong: int) -> None:
    of = carts({}, {})
    plan = plan_book(of, NOW)
    (project, model, end), *others = plan.model_finishes
    spoilt = replace(plan, model_finishes=((project, model, end + wrong), *others))
    assert judge(of, spoilt).definitions == {26}
    assert judge(
        of, replace(plan, model_finishes=())
    ).accepted  # who says nothing says nothing wrong


MODELS = st.fixed_dictionaries(
    {
        "target": st.sampled_from([None, date(2031, 3, 5), date(2031, 3, 12)]),
        "weight": st.integers(1, 4),
        "early": st.booleans(),
    }
)


@drawn(20)
@given(data=st.data())
def test_judge_heuristic_and_bounds_agree_on_what_is_late(data: st.DataObject) -> None:
    drawn_book = data.draw(books(most_models=2, most_blocks=2))
    projects = tuple(
        replace(
            project,
            models=tuple(replace(model, **data.draw(MODELS)) for model in project.models),
        )
        for project in drawn_book.projects
    )
    of = replace(drawn_book, projects=projects)
    first = plan_book(of, NOW_MINUTE)
    assert judge(of, first).accepted
    cure, calendar = Cure(of.room, zone_named(of.bench_time.zone)), calendar_of(of.bench_time)
    told = next(iter(improve(of, first, cure=cure, calendar=calendar, effort=Effort(0, 0))))
    assert judge(of, told.plan).accepted
    late = [bound.value for bound in told.plan.bounds if bound.level == "late"]
    assert all(value <= first.cost.late for value in late)
