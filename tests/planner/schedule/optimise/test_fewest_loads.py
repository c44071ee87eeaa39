"""The least loads of one stretch: sums by hand, every order tried, and plans made better by it.

The airbrush takes 3 minutes to load, 6 or 10 to change, 6 to clean, and its cup stands for 20
at most; quiet hours begin at 21:00.
"""

from __future__ import annotations

from itertools import pairwise, permutations

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from judge_cases.making import (
    NOW,
    book,
    change,
    clean,
    coating,
    load,
    paint,
    plan,
    spray,
    sprayed,
)
from ortools.sat.python import cp_model

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import SerialSchedule
from planner.schedule.judge import judge
from planner.schedule.optimise.best_plan import BestPlan
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.fewest_loads import exact_loads, filled_twice, load_less
from planner.schedule.optimise.master import WorkBudget, solver_of
from planner.schedule.optimise.stretch_sequencing import enter
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import Plan
from planner.values.step import Step

PLACES = ("hull/deck", "hull/side", "tracks/links", "wheels/rim", "wheels/tread")
SAND_GREEN_SAND = (
    spray("one", "hull/deck"),
    spray("two", "tracks/links", coat="green"),
    spray("three", "wheels/rim"),
)
WORK = WorkBudget(1.0)


def board_of(of: Book, end: int) -> Board:
    """Return the board of a book."""
    calendar = calendar_of(of.bench_time)
    cure = Cure(of.room, zone_named("UTC"))
    problem = Problem(of, NOW, cure=cure, calendar=calendar)
    search = SerialSchedule(problem, RULES[0], 0, frozenset())
    search.take_facts()
    return Board(problem, search.table, end)


def least(*steps: Step) -> int | None:
    """Return the least set-up minutes of the first evening with all steps in it."""
    return least_of(board_of(book(*steps), NOW + 300))


def least_of(board: Board) -> int | None:
    """Return the least set-up minutes of the first evening with everything in it, None for none."""
    exact = exact_loads(
        enter(board.facts, board.stretches[0]), board.stretches[0], list(board.free)
    )
    solver = solver_of(WORK, linear=False)
    if exact is None or solver.solve(exact.model) != cp_model.OPTIMAL:
        return None
    return round(solver.objective_value)


def lessened(of: Book, first: Plan) -> BestPlan:
    """Return what looking at each stretch makes of a plan."""
    board = board_of(of, max(placed.end for placed in first.placements))
    best = BestPlan(of, first, board.problem, board, None)
    load_less(board, best.pieces, first.bench, WORK, lambda table: best.take(table, []))
    return best


def test_a_colour_is_filled_once_where_nothing_stands_against_it() -> None:
    """By hand: load 3, one change within the family 6, clean 6."""
    of = book(*SAND_GREEN_SAND)
    twice = plan(
        of,
        *(sprayed("one", "18:03-18:13"), sprayed("two", "18:19-18:29")),
        sprayed("three", "18:35-18:45"),
        bench=[
            *(load("18:00-18:03"), change("18:13-18:19", "green")),
            *(change("18:29-18:35", "sand"), clean("18:45-18:51")),
        ],
    )
    assert judge(of, twice).accepted
    assert least(*SAND_GREEN_SAND) == 3 + 6 + 6
    best = lessened(of, twice)
    assert (twice.cost.setup_minutes, best.plan.cost.setup_minutes) == (21, 15)
    assert judge(of, best.plan).accepted
    assert filled_twice(best.board, best.plan.bench) == set()


@pytest.mark.parametrize(
    ("opens_after", "minutes"),
    [
        (20, 3 + 6),  # the cup may stand for just so long
        (21, 2 * (3 + 6)),  # a minute more, and it is cleaned and filled again
    ],
)
def test_a_second_coat_that_opens_when_the_cup_may_stand_no_longer(
    opens_after: int, minutes: int
) -> None:
    quick = coating("quick", **_all_after(opens_after))
    first, second = (spray(name, "hull/deck", coat="quick") for name in ("first", "second"))
    of = book(first, second, coatings=(quick,))
    board = board_of(of, NOW + 300)
    gate = board.problem.activities[1].gates[0]
    assert board.opens(gate, board.problem.gates[gate].windows[0], NOW) - NOW == opens_after
    assert least_of(board) == minutes


def _all_after(minutes: int) -> dict[str, int]:
    """Return label times of which the late end comes after so many minutes (a tenth later)."""
    states = "set_to_touch dust_free tack_free dry_to_handle dry_to_recoat print_free solvent_safe"
    return dict.fromkeys((*states.split(), "dry_through"), round(minutes / 1.1))


def test_hand_work_that_lasts_longer_than_the_cup_may_stand_goes_before_or_after() -> None:
    """25 minutes between two coats of sand would cost 9 more; nobody need do them there."""
    steps = (
        spray("one", "hull/deck"),
        paint("brushed", "hull/side", minutes=25),
        spray("two", "tracks/links"),
    )
    assert least(*steps) == 3 + 6


@drawn(40)
@given(st.lists(st.sampled_from(("sand", "green", "lacquer")), min_size=1, max_size=4))
def test_no_order_of_free_coats_takes_less(colours: list[str]) -> None:
    steps = [
        spray(f"s{at}", place, coat=colour, minutes=4)
        for at, (place, colour) in enumerate(zip(PLACES, colours, strict=False))
    ]

    def between(one: str, other: str) -> int:
        if one == other:
            return 0
        dear = 10 if "lacquer" in (one, other) else 6
        return min(dear, 6 + 3)  # or cleaned and loaded anew

    tried = (3 + sum(between(*pair) for pair in pairwise(way)) + 6 for way in permutations(colours))
    assert least(*steps) == min(tried)
