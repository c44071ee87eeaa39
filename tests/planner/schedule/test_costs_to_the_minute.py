"""Definitions 26 and 27 at their minute, told by heuristic and judge apart; sums by hand.

The steps lay no film, so that a project ends when its work does.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from judge_cases.making import (
    MONDAY,
    NOW,
    at,
    book,
    clean,
    do,
    key,
    load,
    paint,
    piece,
    plan,
    prepare,
    spray,
    sprayed,
    when,
    work,
)
from minute_cases.making import fact, lay

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.schedule.judge import judge
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.plan_from_schedule import cost_of
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import Cost, Plan
from planner.values.project import Logged
from planner.values.step import Stage

PRESS = work("press", Stage.PRESS, "hull/deck")
TO_SMALL_HOURS = replace(book(PRESS).bench_time.stretches[0], start="20:00", end="04:00")


def counted(of: Book, *placements, bench=(), last: Plan | None = None, now: int = NOW) -> Cost:
    """Return the cost that the heuristic counts for work that lies on its table."""
    cure = Cure(of.room, zone_named("UTC"))
    problem = Problem(of, now, cure=cure, calendar=BenchCalendar(of.bench_time))
    table = PartialSchedule(problem, now)
    for placed in placements:
        lay(table, placed)
    table.bench.extend(bench)
    return cost_of(problem, table, len(problem.activities) - len(placements), last)


def costs(of: Book, *placements, bench=(), now: int = NOW) -> list[Cost]:
    """Return what heuristic and judge count."""
    judged = judge(of, plan(of, *placements, bench=bench, now=now), rules=frozenset()).cost
    return [counted(of, *placements, bench=bench, now=now), judged]


def late(start: str, **project: object) -> list[int]:
    """Return the minutes late, weighted, of ten minutes of work begun at ``start``."""
    of = book(PRESS, **project)
    of = replace(of, bench_time=replace(of.bench_time, stretches=(TO_SMALL_HOURS,)))
    return [cost.late for cost in costs(of, do("press", piece(at(start), 10)))]


@pytest.mark.parametrize(
    ("start", "minutes"), [("23:49", 0), ("23:50", 0), ("23:51", 1), ("1/00:00", 10)]
)
def test_a_target_is_the_end_of_its_day(start, minutes):
    assert late(start, target=MONDAY) == [minutes] * 2
    assert late(start, target=MONDAY, weight=3) == [3 * minutes] * 2


def carts(*models: dict[str, object], **project: object) -> Book:
    """Return a book of several carts, each with ten minutes of work."""
    of = book(PRESS, **project)
    (one,) = of.projects
    (cart,) = one.models
    several = tuple(replace(cart, name=f"cart {n}", **more) for n, more in enumerate(models))
    bench = replace(of.bench_time, stretches=(TO_SMALL_HOURS,))
    return replace(of, projects=(replace(one, models=several),), bench_time=bench)


def pressed(*starts: str):
    """Place the work of each cart."""
    return [
        replace(do("press", piece(at(start), 10)), key=key("press")._replace(model=f"cart {n}"))
        for n, start in enumerate(starts)
    ]


@pytest.mark.parametrize(
    ("models", "project", "starts", "minutes"),
    [
        # Two that share the project's target count once, by the latest: 30 min after midnight.
        ([{}, {}], {"target": MONDAY}, ("1/00:05", "1/00:20"), 30),
        # A model with a date of its own counts by that alone, and the other by the project's.
        (
            [{"target": MONDAY}, {}],
            {"target": MONDAY + timedelta(days=1)},
            ("1/00:20", "2/00:05"),
            30 + 15,
        ),
        # A model's weight is multiplied by the project's: 2 × 3 × 15 min; the other is in time.
        ([{"weight": 3}, {}], {"target": MONDAY, "weight": 2}, ("1/00:05", "23:50"), 90),
        # With weight 1 it is counted with the others: once, 15 min.
        ([{"weight": 1}, {}], {"target": MONDAY}, ("1/00:05", "1/00:00"), 15),
        # Early: from now, 17:00, to 20:10 are 190 min, target or none.
        ([{"early": True}], {}, ("20:00",), 190),
        ([{"early": True}], {"target": MONDAY}, ("20:00",), 190),
        # Without a target nothing is late.
        ([{}, {}], {}, ("1/00:05", "3/00:05"), 0),
    ],
)
def test_each_model_counts_once(models, project, starts, minutes):
    of = carts(*models, **project)
    assert [cost.late for cost in costs(of, *pressed(*starts))] == [minutes] * 2


def test_the_other_levels_by_hand():
    """Two evenings; load 3, clean 6 twice are 18; ends 1/18:13, 25 h 13 min after 17:00."""
    of = book(spray("base", "hull/deck"), work("wipe", Stage.WIPE, "tracks"))
    of = replace(of, projects=(replace(of.projects[0]),))
    sprays = do("wipe", "18:00-18:10"), sprayed("base", "1/18:03-1/18:13")
    bench = load("1/18:00-1/18:03"), clean("1/18:13-1/18:19"), prepare("18:10-18:20", "base")
    for cost in costs(of, *sprays, bench=bench):
        assert (cost.unplaced, cost.stretches, cost.setup_minutes) == (0, 2, 3 + 6)
    pressing = book(PRESS, work("wipe", Stage.WIPE, "tracks"))
    for cost in costs(pressing, do("press", "1/18:03-1/18:13")):
        assert (cost.unplaced, cost.finish) == (1, 25 * 60 + 13)


def test_what_has_finished_before_now_finishes_now():
    log = (Logged(model="cart", step="press", start=when("16:00"), end=when("16:10")),)
    of = book(PRESS, log=log)
    for cost in costs(of, fact(do("press", "16:00-16:10"))):
        assert (cost.finish, cost.stretches) == (0, 0)


# -- moved ------------------------------------------------------------------------------------

TWO = book(paint("base", "hull/deck", coats=2), paint("links", "tracks"))


def moved(of: Book, before: list, after: list) -> int:
    """Return how many steps the heuristic counts as moved."""
    return counted(of, *after, last=plan(of, *before)).moved


def test_a_step_moves_with_its_stretch_and_once_for_all_its_coats():
    """Evenings run from 18:00 to 22:00; both coats of the base change theirs, and are one step."""
    coats = do("base", "18:00-18:10"), do("base", "21:00-21:10", coat=2)
    next_day = do("base", "1/18:00-1/18:10"), do("base", "1/21:00-1/21:10", coat=2)
    links = do("links", "18:10-18:20")
    assert moved(TWO, [*coats, links], [*coats, links]) == 0
    assert moved(TWO, [*coats, links], [*coats, do("links", "21:50-22:00")]) == 0
    assert moved(TWO, [*coats, links], [*next_day, links]) == 1
    assert moved(TWO, [*coats, links], [*next_day, do("links", "1/18:10-1/18:20")]) == 2


def test_what_is_new_or_was_done_has_not_moved():
    """Definition 27: logged work stands where it was done, whatever was planned for it."""
    links = do("links", "18:10-18:20")
    done = fact(do("base", "1/18:00-1/18:10"))
    log = (Logged(model="cart", step="base", start=when("1/18:00"), end=when("1/18:10")),)
    of = replace(TWO, projects=(replace(TWO.projects[0], log=log),))
    before = [do("base", "18:00-18:10"), links]
    assert moved(of, before, [done, links]) == 0
    assert moved(TWO, before, [replace(done, logged=False), links]) == 1
    assert moved(TWO, [links], [do("base", "1/18:00-1/18:10"), links]) == 0


def test_without_a_plan_before_nothing_has_moved():
    assert counted(TWO, do("links", "18:10-18:20")).moved == 0
