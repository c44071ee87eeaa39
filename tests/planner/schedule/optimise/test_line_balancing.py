"""Published assembly lines through the planner itself: evenings are stations."""

from __future__ import annotations

import pytest
from line_balancing import NOW, as_book, bound, published, used

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.search import Effort, improve
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
