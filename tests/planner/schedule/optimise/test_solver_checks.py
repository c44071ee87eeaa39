"""What every solver owes: its start accepted, its best as good as all tries, the same each time."""

from __future__ import annotations

import os
import subprocess
import sys
from collections import defaultdict
from contextlib import redirect_stdout
from dataclasses import replace
from io import StringIO
from pathlib import Path

import pytest
from brute_force import best_finish
from drawn_examples import drawn
from hypothesis import assume, given
from hypothesis import strategies as st
from judge_cases.making import NOW, at, book, coating, paint, work
from ortools.sat.python import cp_model
from strategies import NOW_MINUTE, books

from app.service import demos
from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.drying_locations import chosen_in, settled
from planner.schedule.greedy import SerialSchedule, plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.earliest_finish_order import in_stretches
from planner.schedule.optimise.master import Master, WorkBudget, solver_of
from planner.schedule.optimise.search import Effort, improve
from planner.schedule.optimise.stretch_check import possible
from planner.schedule.optimise.stretch_reachability import reaches
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.coating import Family, Mark, Window
from planner.values.moment import zone_named
from planner.values.plan import Plan, Status
from planner.values.step import Gate, Stage, Step, Trait

ROOT = Path(__file__).parents[4]
SOLVED = (cp_model.OPTIMAL, cp_model.FEASIBLE)


def best_of(of: Book, now: int, effort: Effort) -> Plan:
    """Return the last plan of a search."""
    cure = Cure(of.room, zone_named(of.bench_time.zone))
    first = plan_book(of, now, cure=cure)
    *_, last = improve(of, first, cure=cure, calendar=calendar_of(of.bench_time), effort=effort)
    assert judge(of, last.plan).accepted
    return last.plan


# -- the start is accepted --------------------------------------------------------------------


def shared_out(of: Book, plan: Plan) -> tuple[Board, dict[int, int]]:
    """Return the board of a plan's stretches, and the one in which each pass of it is ended."""
    of = settled(of, chosen_in(of, plan))
    cure = Cure(of.room, zone_named(of.bench_time.zone))
    problem = Problem(of, plan.now, cure=cure, calendar=calendar_of(of.bench_time))
    search = SerialSchedule(problem, RULES[0], 0, frozenset())
    search.take_facts()
    board = Board(problem, search.table, max(placement.end for placement in plan.placements) - 1)
    begun = {
        problem.index[placement.key]: placement.pieces[-1].start
        for placement in plan.placements
        if not placement.logged
    }
    return board, {index: board.number_at(start) for index, start in begun.items()}


def accepted(of: Book, plan: Plan) -> bool:
    """Tell whether the whole master solves with every variable fixed to the plan."""
    board, numbers = shared_out(of, plan)
    if not numbers:
        return True
    goal = max(numbers.values())
    links = [link.up_to(goal) for link in reaches(board)]
    master = Master(board, whole=True, links=links, goal=goal)
    assert set(master.first) == set(numbers)
    master.hint(numbers)
    solver = solver_of(WorkBudget(5.0))
    solver.parameters.fix_variables_to_their_hinted_value = True
    return solver.solve(master.model) in SOLVED


@drawn(15)
@given(kinds=st.tuples(st.booleans(), st.booleans(), st.booleans()), data=st.data())
def test_every_plan_that_holds_is_one_of_the_master(kinds, data):
    """So its optimum is a bound: it takes away nothing that the judge would accept."""
    logged, pinned, wished = kinds
    of = data.draw(books(logged=logged, pinned=pinned, wished=wished, most_models=2))
    plan = plan_book(of, NOW_MINUTE)
    assume(not plan.unplaced and judge(of, plan).accepted)
    assert accepted(of, plan)


def test_a_plan_that_does_not_hold_is_none_of_the_master():
    """Two pieces of 200 minutes stand in two evenings of 240; hinted into one, they are refused."""
    of = carts(*((work("rub", Stage.WIPE, "hull/deck", minutes=200),) for _ in range(2)))
    plan = plan_book(of, NOW)
    assert accepted(of, plan)
    first, second = sorted(plan.placements, key=lambda placement: placement.start)
    pieces = tuple(replace(piece, start=at("18:00"), end=at("21:20")) for piece in second.pieces)
    assert not accepted(of, replace(plan, placements=(first, replace(second, pieces=pieces))))


@drawn(15)
@given(kinds=st.tuples(st.booleans(), st.booleans()), data=st.data())
def test_no_stretch_of_a_plan_that_holds_is_cut_off(kinds, data):
    """What is proven impossible in one stretch stands together in none of any plan."""
    logged, pinned = kinds
    of = data.draw(books(logged=logged, pinned=pinned, most_models=2))
    plan = plan_book(of, NOW_MINUTE)
    assume(not plan.unplaced)
    board, numbers = shared_out(of, plan)
    sets: dict[int, list[int]] = defaultdict(list)
    for index, number in numbers.items():
        sets[number].append(index)
    for number, passes in sets.items():
        assert possible(board, number, sorted(passes), WorkBudget(1.0)) is not False


# -- all tries ---------------------------------------------------------------------------------

QUICK = (
    coating("sand"),
    coating("green", dry_to_recoat=15, dry_to_handle=10),
    coating("oil", Family.ARTISTS_OIL, dry_to_recoat=200, dry_to_handle=90),
)


def carts(*orders: tuple[Step, ...]) -> Book:
    """Return a book with one cart for each working order."""
    of = book(*orders[0], coatings=QUICK)
    cart = of.projects[0].models[0]
    models = tuple(replace(cart, name=f"cart {n}", steps=steps) for n, steps in enumerate(orders))
    return replace(of, projects=(replace(of.projects[0], models=models),))


@st.composite
def tiny_books(draw: st.DrawFn) -> Book:
    """Draw one or two carts with two or three brush passes of which none closes."""
    places = st.sampled_from(["hull/deck", "hull/side", "wheels/tread", "wheels/rim"])
    count = draw(st.integers(2, 3))
    cut = draw(st.integers(1, count))
    steps = [
        paint(
            f"s{n}",
            draw(places),
            coat=draw(st.sampled_from(["sand", "green"])),
            minutes=draw(st.sampled_from([5, 20, 45, 110])),
            traits=draw(st.sampled_from([(), (), (Trait.SMELLS,), (Trait.HANDS_FREE,)])),
        )
        for n in range(count)
    ]
    return carts(*(tuple(step) for step in (steps[:cut], steps[cut:]) if step))


FAR = 4 * 1440  # three pieces that smell take three evenings


@drawn(15)
@given(of=tiny_books())
def test_the_search_ends_on_the_best_of_all_tries(of):
    """Where nothing closes, trying all earliest starts finds the least finish there is."""
    best = best_finish(of, NOW, FAR)
    assert best is not None
    found = best_of(of, NOW, Effort(rolls=6, proofs=1))
    assert NOW + found.cost.finish == best


def test_hands_rest_where_all_ends_sooner_by_that():
    """The second coat waits for the first, then goes on alone while the deck is painted.

    By hand, from 18:00: 5 min for the first coat, and its 40 to recoat are 44 at the latest;
    5 min of hands set the second going, then come 110 for the deck, whose 30 to handle are 33
    at the latest. Whoever paints the deck meanwhile has 5 + 110, and only then the 110 that go
    on alone, and the 33. What is told of it claims no more than is proven.
    """
    alone = paint("s2", "wheels/rim", minutes=110, traits=(Trait.HANDS_FREE,))
    of = carts(
        (paint("s0", "hull/deck", minutes=110),), (paint("s1", "wheels/rim", minutes=5), alone)
    )
    best = best_finish(of, NOW, FAR)
    first = plan_book(of, NOW)
    assert best == at("18:00") + 5 + 44 + 5 + 110 + 33
    assert NOW + first.cost.finish == at("18:00") + 5 + 110 + 110 + 33
    found = best_of(of, NOW, Effort(rolls=0, proofs=0))
    assert NOW + found.cost.finish == best
    starts = {placement.key.step: placement.start for placement in found.placements}
    assert starts["s1"] < starts["s2"] < starts["s0"]
    bound = next(bound.value for bound in found.bounds if bound.level == "finish")
    assert bound <= found.cost.finish
    assert (found.status is Status.OPTIMAL) is (bound == found.cost.finish)


# -- more bench time --------------------------------------------------------------------------

EARLY = Recurring(
    rule="FREQ=DAILY", since=book().bench_time.stretches[0].since, start="08:00", end="12:00"
)


def rub(name: str, minutes: int, *waits: tuple[str, int]) -> Step:
    """Return work that lays no film, and waits for others by the clock [min]."""
    gates = tuple(Gate(after=after, windows=(Window(opens=Mark(minutes=m)),)) for after, m in waits)
    return work(name, Stage.WIPE, "hull/deck", minutes=minutes, gates=gates)


@pytest.mark.parametrize(
    ("orders", "here", "there"),
    [
        # both in the first evening, from 18:00 on; before that there is no other
        (((rub("a", 30),), (rub("a", 40),)), "19:10", "19:10"),
        # 40 do not fit after 18:10 + 200; at 8:00 they do, or else at 18:00
        (((rub("a", 10), rub("b", 40, ("a", 200))),), "1/18:40", "1/08:40"),
        # 18:20 + 1200 is 14:20, so b stands from 18:00 to 18:20 a day later; + 900 is 9:20
        (
            ((rub("a", 20), rub("b", 20, ("a", 1200)), rub("c", 9, ("b", 900))),),
            "2/18:09",
            "2/09:29",
        ),
    ],
)
def test_an_evening_more_makes_no_proven_optimum_worse(orders, here, there):
    """Both are proven, so that neither is the search's luck; the air is the same all day."""
    of = carts(*orders)
    hours = (*of.bench_time.stretches, EARLY)
    more = replace(of, bench_time=replace(of.bench_time, stretches=hours))
    for one, best in ((of, here), (more, there)):
        plan = best_of(one, NOW, Effort(rolls=4, proofs=2))
        assert plan.status is Status.OPTIMAL
        assert NOW + plan.cost.finish == at(best)
    assert at(there) <= at(here)


# -- the same each time -----------------------------------------------------------------------

AGAIN = """
from dataclasses import replace
from app.service import demos
from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.optimise.search import Effort, improve
from planner.values.moment import zone_named

book = demos.read("harbour_tenders").book
project = replace(book.projects[0], models=book.projects[0].models[:2])
book = replace(book, projects=(project,))
now = demos.first_evening(book)
cure = Cure(book.room, zone_named(book.bench_time.zone))
first = plan_book(book, now, cure=cure)
calendar = calendar_of(book.bench_time)
effort = Effort(rolls=2, proofs=0)
for one in improve(book, first, cure=cure, calendar=calendar, seed=0, effort=effort):
    print(one.improved, one.plan.status, one.plan.cost, one.plan.placements, one.plan.bounds)
"""


def test_another_process_finds_the_same_plans():
    """Sets are walked in another order there: no plan may depend on it."""
    other = subprocess.run(
        [sys.executable, "-c", AGAIN],
        cwd=ROOT,
        env={**os.environ, "PYTHONHASHSEED": "7"},
        capture_output=True,
        text=True,
        timeout=120,
        check=True,
    ).stdout
    here = StringIO()
    with redirect_stdout(here):
        exec(AGAIN, {})
    assert here.getvalue().count("\n") >= 2
    assert here.getvalue() == other


# -- what is told of a plan -------------------------------------------------------------------


def test_the_demos_are_told_by_what_is_known_of_them():
    """A plan that leaves nothing over is never called incomplete or infeasible."""
    of = demos.read("lone_lamplighter").book
    plan = best_of(of, demos.first_evening(of), Effort(rolls=1, proofs=0))
    assert not plan.unplaced
    assert plan.status in (Status.FEASIBLE, Status.OPTIMAL)


def test_bench_time_that_a_board_does_not_reach_is_left_as_it_is():
    """A better plan may end later than the first one, by which the board was cut."""
    of = carts((paint("s0", "hull/deck", minutes=20),))
    board, numbers = shared_out(of, plan_book(of, NOW))
    work_of_one = WorkBudget(0.05)
    for number, there in ((0, True), (len(board.stretches), False)):
        sets = {number: list(numbers)}
        found = in_stretches(board, sets, 0, work_of_one, lambda: False)
        assert (found is not None) is there
