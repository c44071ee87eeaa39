"""Better plans of an evening whose cups are full: sound, bounded rightly, one load less."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import replace

from drawn_examples import drawn
from hypothesis import HealthCheck, given
from judge_cases.cups import with_fine
from judge_cases.making import at, book, spray
from ortools.sat.python import cp_model
from sprayed_books import sprayed_evenings

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import SerialSchedule, plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.lower_bounds import least_finish
from planner.schedule.optimise.master import Master, WorkBudget, solver_of
from planner.schedule.optimise.search import Effort, improve
from planner.schedule.optimise.stretch_check import possible
from planner.schedule.optimise.stretch_reachability import reaches
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import BenchKind, Plan


def board_under(of: Book, plan: Plan) -> tuple[Board, dict[int, int]]:
    """Return the board of a plan's stretches, and the one in which each pass of it stands."""
    cure = Cure(of.room, zone_named(of.bench_time.zone))
    problem = Problem(of, plan.now, cure=cure, calendar=calendar_of(of.bench_time))
    search = SerialSchedule(problem, RULES[0], 0, frozenset())
    search.take_facts()
    board = Board(
        problem, search.table, max(placement.pieces[-1].start for placement in plan.placements)
    )
    begun = {
        problem.index[placement.key]: placement.pieces[-1].start
        for placement in plan.placements
        if not placement.logged
    }
    return board, {index: board.number_at(start) for index, start in begun.items()}


def improved(of: Book, first: Plan) -> list[Plan]:
    """Return the plans of a short search."""
    cure, calendar = Cure(of.room, zone_named(of.bench_time.zone)), calendar_of(of.bench_time)
    effort = Effort(rolls=2, proofs=1)
    return [one.plan for one in improve(of, first, cure=cure, calendar=calendar, effort=effort)]


def least_setup(of: Book, plan: Plan) -> int | None:
    """Return what the whole master, held to the stretches of a plan, counts for set-ups."""
    board, numbers = board_under(of, plan)
    if not numbers:
        return None
    goal = max(numbers.values())
    links = [link.up_to(goal) for link in reaches(board)]
    master = Master(board, whole=True, links=links, goal=goal)
    master.hint(numbers)
    for (index, number), literal in master.by.items():
        master.model.add(literal == int(numbers[index] <= number))
    master.model.minimize(sum(master.setups))
    solver = solver_of(WorkBudget(5.0))
    assert solver.solve(master.model) in (cp_model.OPTIMAL, cp_model.FEASIBLE)
    return round(solver.objective_value)


def never_above(of: Book, plan: Plan) -> None:
    """Hold all that claims to be least against a plan that is sound."""
    board, numbers = board_under(of, plan)
    assert least_finish(board).finish <= plan.now + plan.cost.finish
    setup = least_setup(of, plan)
    assert setup is None or setup <= plan.cost.setup_minutes
    sets: dict[int, list[int]] = defaultdict(list)
    for index, number in numbers.items():
        sets[number].append(index)
    for number, passes in sets.items():
        assert possible(board, number, passes, WorkBudget(0.5)) is not False


@drawn(40, HealthCheck.data_too_large)
@given(moments=sprayed_evenings())
def test_what_is_called_least_is_never_above_a_sound_plan(moments):
    for of, now in moments:
        plan = plan_book(of, now)
        if not plan.unplaced:
            never_above(of, plan)


@drawn(12, HealthCheck.data_too_large)
@given(moments=sprayed_evenings())
def test_better_plans_after_an_event_are_sound(moments):
    of, now = moments[-1]
    first = replace(plan_book(of, now), digest="of this very book")
    last = first
    for plan in improved(of, first):
        assert judge(of, plan).violations == ()
        assert plan.cost.in_order() <= last.cost.in_order()
        last = plan
    if not last.unplaced:
        never_above(of, last)


def half_sprayed() -> Book:
    """Sand was sprayed until 19:50; two more passes of sand and one of green are left."""
    return book(
        spray("base", "hull/deck"),
        spray("rims", "wheels/rim"),
        spray("links", "tracks"),
        spray("side", "hull/side", coat="green"),
        log=(with_fine("19:40", "19:50"),),
    )


def test_the_least_set_up_counts_no_load_for_what_the_cup_holds():
    """A change within the family is 6 min, the cleaning 6: 12, of which no load of 3 is part."""
    of = half_sprayed()
    plan = plan_book(of, at("19:52"))
    assert judge(of, plan).accepted
    assert [work.kind for work in plan.bench] == [BenchKind.CHANGE, BenchKind.CLEAN]
    assert plan.cost.setup_minutes == 12
    assert least_setup(of, plan) == 12


def test_the_best_plan_of_the_evening_is_proven():
    """One stretch and 12 min of set-up are the least there can be."""
    of = half_sprayed()
    first = replace(plan_book(of, at("19:52")), digest="of this very book")
    last = improved(of, first)[-1]
    assert (last.cost.stretches, last.cost.setup_minutes) == (1, 12)
    found = {bound.level: bound.value for bound in last.bounds}
    assert found.get("setup_minutes", 0) <= 12
