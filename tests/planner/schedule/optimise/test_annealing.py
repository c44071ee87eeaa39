"""Annealing: what it shares out is possible, counted right, and best on tiny boards."""

from __future__ import annotations

from itertools import product

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import NOW, book, spray, work
from strategies import NOW_MINUTE, books

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import SerialSchedule, plan_book
from planner.schedule.optimise.annealing import Cooling, Grid, _Annealing, _bits, annealed
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.stretch_assignment import Shares, Ties, allows
from planner.schedule.optimise.stretch_reachability import Reach, earliest_end, reaches
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.step import Stage

FIRM = Cooling(tries=1500, full=4.0, late=3.0)
DAY = 1440


def shares_of(of: Book, now: int) -> tuple[Grid, Shares, list[Reach]] | None:
    """Return the rules' plan of a book by stretches, or None where nothing is placed."""
    cure = Cure(of.room, zone_named(of.bench_time.zone))
    calendar = calendar_of(of.bench_time)
    plan = plan_book(of, now, cure=cure, calendar=calendar)
    problem = Problem(of, now, cure=cure, calendar=calendar)
    at = {activity.pass_.key: index for index, activity in enumerate(problem.activities)}
    pieces = {at[placement.key]: placement.pieces for placement in plan.placements}
    if not pieces:
        return None
    last = max(run[-1].end for run in pieces.values())
    facts = SerialSchedule(problem, RULES[0], 0, frozenset())
    facts.take_facts()
    board = Board(problem, facts.table, last + DAY)
    links = reaches(board)
    ties = Ties(board, links)
    return Grid(ties, links), Shares(ties, pieces), links


def cost(grid: Grid, shares: Shares, numbers: dict[int, int], cooling: Cooling) -> float:
    """Return what a sharing out costs, counted anew from the activities."""
    board, problem = grid.board, grid.board.problem
    total = 0.0
    for number, (start, end) in enumerate(zip(board.starts, board.ends, strict=True)):
        here = [index for index, where in numbers.items() if where == number]
        loads = {problem.activities[index].pass_.load for index in here} - {""}
        families = {problem.coatings[load].family for load in loads}
        costs, setup = shares.ties.costs, 0
        if loads:
            setup = costs.first + costs.same * (len(loads) - 1)
            setup += (costs.other - costs.same) * (len(families) - 1)
        work_ = sum(shares.minutes[index] for index in here)
        total += cooling.setup * setup
        total += cooling.full * max(0, work_ + setup - (end - start))
    return total


@given(books(), st.integers(0, 9))
@drawn(60)
def test_what_is_shared_out_anew_is_possible_by_stretches_and_counted_right(
    of: Book, seed: int
) -> None:
    """Ties that the plan met stay met, and the running costs are those counted from nothing."""
    found = shares_of(of, NOW_MINUTE)
    if found is None:
        return
    grid, shares, links = found
    before = {index: shares.numbers[index] for index in grid.order if index in shares.numbers}
    one = _Annealing(grid, shares, {}, FIRM, seed)
    best = one.run(lambda: False)
    now = dict(zip(grid.order, one.numbers, strict=True))
    now = {index: now[index] for index in before}
    assert sum(one.costs) == pytest.approx(cost(grid, shares, now, FIRM))
    assert best.keys() == before.keys()
    assert cost(grid, shares, best, FIRM) <= cost(grid, shares, before, FIRM) + 1e-6
    for numbers in (best, now):
        for link in links:
            if link.before in before and link.after in before:
                kept = allows(link, before[link.before], before[link.after])
                assert not kept or allows(link, numbers[link.before], numbers[link.after])
        for index in shares.fixed & before.keys():
            assert numbers[index] == before[index]


def test_the_best_sharing_out_of_a_tiny_batch_is_found() -> None:
    """Brute force over all sharings out of six passes finds none that costs less."""
    of = book(
        spray("a", "hull/deck", minutes=100),
        spray("b", "wheels/tread", coat="green", minutes=90),
        spray("c", "tracks/links", minutes=70),
        work("d", Stage.DETAIL, "wheels/rim", minutes=110),
        work("e", Stage.DETAIL, "wheels/hub", minutes=60),
        spray("f", "hull/side", coat="green", minutes=40),
    )
    found = shares_of(of, NOW)
    assert found is not None
    grid, shares, links = found
    least = min(
        cost(grid, shares, numbers, FIRM)
        for one in product(range(grid.count), repeat=len(grid.order))
        if possible(grid, links, numbers := dict(zip(grid.order, one, strict=True)))
    )
    best = annealed(grid, shares, {}, FIRM, 0)
    assert possible(grid, links, best)
    assert cost(grid, shares, best, FIRM) == pytest.approx(least)
    assert cost(grid, shares, shares.numbers, FIRM) > least  # the rules' plan is not the best


def possible(grid: Grid, links: list[Reach], numbers: dict[int, int]) -> bool:
    """Tell whether stretches let passes be done there, one by one and pair by pair."""
    ties = grid.ties
    return (
        all(earliest_end(grid.board, index, where) for index, where in numbers.items())
        and all(allows(link, numbers[link.before], numbers[link.after]) for link in links)
        and not any(
            numbers[far] == where
            for index, where in numbers.items()
            for far in ties.too_far(index, where)
        )
    )


def test_the_same_seed_shares_out_the_same_way_and_a_stop_leaves_all_as_it_is() -> None:
    """What is stopped at once gives back the plan that it was given."""
    found = shares_of(book(*(spray(name, "hull/deck", minutes=50) for name in "abcdef")), NOW)
    assert found is not None
    grid, shares, _ = found
    assert annealed(grid, shares, {}, FIRM, 3) == annealed(grid, shares, {}, FIRM, 3)
    assert annealed(grid, shares, {}, FIRM, 3, lambda: True) == shares.numbers


def test_a_goal_draws_work_forward() -> None:
    """Work that must be done by the first evening, and finds room in it, is shared out there."""
    of = book(*(work(name, Stage.DETAIL, place, minutes=60) for name, place in PLACES))
    found = shares_of(of, NOW)
    assert found is not None
    grid, shares, _ = found
    shares.take(dict.fromkeys(grid.order, grid.count - 1))
    best = annealed(grid, shares, dict.fromkeys(grid.order, 0), FIRM, 0)
    assert set(best.values()) == {0}


def test_stretches_by_each_other_agree_where_runs_overlap() -> None:
    """Both ways are the same relation, counted pair by pair."""
    spans = (((0, 1), (1, 3)), ((1, 1), (3, 4)), None, (), ((4, 4),))
    onward, back = _bits(Reach(0, 1, spans), 5)
    for before, after in product(range(5), repeat=2):
        may = any(first <= after <= last for first, last in spans[before] or ())
        assert onward[before] >> after & 1 == may
        assert back[after] >> before & 1 == may


PLACES = (("a", "hull/deck"), ("b", "wheels/tread"), ("c", "tracks/links"))
