"""Published assembly lines through the planner itself: evenings are stations."""

from __future__ import annotations

import pytest
from line_balancing import NOW, AssemblyLine, as_book, bound, published, used

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import SerialSchedule, plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.annealing import Grid
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.fullest_stretches import FILLINGS, StretchFilling, fullest
from planner.schedule.optimise.search import Effort, improve
from planner.schedule.optimise.stretch_assignment import Ties
from planner.schedule.optimise.stretch_reachability import reaches
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.values.moment import zone_named

SMALL = 50  # tasks
LITTLE = Effort(rolls=6, proofs=1)
MISSED_AT_ONCE = (  # optima that no rule finds: the search must
    ("Buxey", 41),
    ("Gunther", 54),
    ("Heskiaoff", 205),
    ("Jackson", 10),
    ("Mansoor", 62),
    ("Mitchell", 35),
    ("Roszieg", 21),
    ("Sawyer", 47),
    ("Lutz3", 75),  # 89 tasks: stretches are filled one by one
)


@pytest.mark.parametrize(
    ("name", "cycle", "optimum"),
    [
        (line.name, cycle, stations)
        for line in published().values()
        if len(line.minutes) <= SMALL
        for cycle, stations in line.optima
    ],
)
def test_the_rules_are_never_below_the_published_optimum(
    name: str, cycle: int, optimum: int
) -> None:
    book = as_book(published()[name], cycle)
    plan = plan_book(book, NOW)
    assert judge(book, plan).accepted
    assert used(book, plan) >= optimum


@pytest.mark.parametrize(("name", "cycle"), MISSED_AT_ONCE)
def test_the_search_reaches_the_published_optimum_and_no_bound_is_above(
    name: str, cycle: int
) -> None:
    line = published()[name]
    optimum = dict(line.optima)[cycle]
    book = as_book(line, cycle)
    first = plan_book(book, NOW)
    assert used(book, first) > optimum
    cure, calendar = Cure(book.room, zone_named("UTC")), calendar_of(book.bench_time)
    least = fewest = 0
    for news in improve(book, first, cure=cure, calendar=calendar, effort=LITTLE):
        fewest, least = used(book, news.plan), bound(book, news.plan)
        assert judge(book, news.plan).accepted
        assert least <= optimum <= fewest
        if fewest == least:
            break
    assert fewest == least == optimum


@pytest.mark.parametrize("filling", FILLINGS)
def test_stations_are_filled_to_the_brim(filling: StretchFilling) -> None:
    """7 before 2, and 5, 3 and 3, in stations of 10: 7 + 3 and 2 + 5 + 3, by hand."""
    minutes = (7, 2, 5, 3, 3)
    book = as_book(AssemblyLine("by hand", minutes, ((1, 2),), ()), 10)
    cure, calendar = Cure(book.room, zone_named("UTC")), calendar_of(book.bench_time)
    problem = Problem(book, NOW, cure=cure, calendar=calendar)
    facts = SerialSchedule(problem, RULES[0], 0, frozenset())
    facts.take_facts()
    board = Board(problem, facts.table, NOW + 3 * 1440)
    links = reaches(board)
    grid = Grid(Ties(board, links), links)
    tasks = {index: board.least(index) for index in board.free}
    found = fullest(grid, tasks, filling, 1)
    assert found is not None
    of = {problem.activities[index].pass_.key.step: number for index, number in found.items()}
    assert of["task-1"] == 0
    assert of["task-2"] == of["task-3"] == 1
    assert sorted([of["task-4"], of["task-5"]]) == [0, 1]
    assert fullest(grid, tasks, filling, 0) is None
