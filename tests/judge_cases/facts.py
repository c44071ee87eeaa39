"""Plans that break definitions 22 to 28: the logbook, now, pins, and what a plan claims."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from judge_cases.making import (
    MONDAY,
    Case,
    at,
    book,
    breaks,
    clean,
    do,
    load,
    paint,
    plan,
    spray,
    sprayed,
    when,
    work,
)

from planner.values.plan import Cost, Placement, Plan, ProvenBound, Status
from planner.values.project import Logged, Pin
from planner.values.step import Stage

BASE, LINKS = paint("base", "hull/deck"), paint("links", "tracks")


def logged(start: str, end: str | None = None, step: str = "base") -> Logged:
    return Logged(model="cart", step=step, start=when(start), end=when(end) if end else None)


def fact(placed: Placement) -> Placement:
    return replace(placed, logged=True)


DONE = book(BASE, LINKS, log=(logged("17:20", "17:35"),))
DONE_PLAN = plan(DONE, fact(do("base", "17:20-17:35")), do("links", "18:00-18:10"), now=at("17:40"))


@breaks(22)
def a_fact_moved() -> Case:
    moved = fact(do("base", "17:20-17:34"))
    return Case(DONE, DONE_PLAN, replace(DONE_PLAN, placements=(moved, *DONE_PLAN.placements[1:])))


@breaks(22)
def a_fact_left_out() -> Case:
    return Case(DONE, DONE_PLAN, replace(DONE_PLAN, placements=DONE_PLAN.placements[1:]))


@breaks(22)
def a_fact_planned_again() -> Case:
    again = do("base", "18:20-18:30")
    return Case(DONE, DONE_PLAN, replace(DONE_PLAN, placements=(again, *DONE_PLAN.placements[1:])))


@breaks(22)
def an_invented_fact() -> Case:
    base, links = DONE_PLAN.placements
    return Case(DONE, DONE_PLAN, replace(DONE_PLAN, placements=(base, fact(links))))


@breaks(23)
def before_now() -> Case:
    of = book(BASE)
    sound = plan(of, do("base", "19:00-19:10"), now=at("19:00"))
    return Case(of, sound, plan(of, do("base", "18:59-19:09"), now=at("19:00")))


BEGUN = book(BASE, LINKS, log=(logged("18:00"),))


def begun(base: str, links: str, now: str) -> Plan:
    return plan(BEGUN, fact(do("base", base)), do("links", links), now=at(now))


@breaks(23)
def work_under_way_does_not_come_first() -> Case:
    """Begun 18:00, 10 min long, now 18:04: it lasts to 18:10."""
    return Case(
        BEGUN,
        begun("18:00-18:10", "18:10-18:20", "18:04"),
        begun("18:00-18:10", "18:09-18:19", "18:04"),
    )


@breaks(23)
def work_under_way_cut_short() -> Case:
    """Now 18:08: at least 5 min are left, so it lasts to 18:13."""
    return Case(
        BEGUN,
        begun("18:00-18:13", "18:13-18:23", "18:08"),
        begun("18:00-18:10", "18:13-18:23", "18:08"),
    )


@breaks(24)
def not_on_the_pinned_evening() -> Case:
    of = book(BASE, pins=(Pin(model="cart", step="base", on=MONDAY + timedelta(days=1)),))
    return Case(of, plan(of, do("base", "1/18:00-1/18:10")), plan(of, do("base", "18:00-18:10")))


@breaks(24)
def outside_the_pinned_interval() -> Case:
    pin = Pin(model="cart", step="base", coat=1, start=when("19:00"), end=when("19:30"))
    of = book(BASE, pins=(pin,))
    return Case(of, plan(of, do("base", "19:20-19:30")), plan(of, do("base", "19:21-19:31")))


ONE = book(BASE)
ONE_PLAN = plan(ONE, do("base", "18:00-18:10"))


@breaks(25)
def optimal_without_a_bound() -> Case:
    return Case(ONE, ONE_PLAN, replace(ONE_PLAN, status=Status.OPTIMAL))


@breaks(25)
def optimal_above_its_bound() -> Case:
    proven = tuple(
        ProvenBound(level, value, "worked out")
        for level, value in (("unplaced", 0), ("late", 0), ("finish", ONE_PLAN.cost.finish))
    )
    sound = replace(ONE_PLAN, status=Status.OPTIMAL, bounds=proven)
    lower = replace(proven[2], value=proven[2].value - 1)
    return Case(ONE, sound, replace(sound, bounds=(*proven[:2], lower)))


@breaks(25)
def a_bound_above_the_cost() -> Case:
    bound = ProvenBound("unplaced", 1, "wrong")
    return Case(ONE, ONE_PLAN, replace(ONE_PLAN, bounds=(bound,)))


@breaks(25)
def feasible_with_something_unplaced() -> Case:
    sound = plan(ONE, unplaced=["base"])
    return Case(ONE, sound, replace(sound, status=Status.FEASIBLE))


@breaks(25)
def infeasible_without_a_proof() -> Case:
    sound = plan(ONE, unplaced=["base"])
    return Case(ONE, sound, replace(sound, status=Status.INFEASIBLE))


@breaks(25)
def incomplete_with_everything_placed() -> Case:
    return Case(ONE, ONE_PLAN, replace(ONE_PLAN, status=Status.INCOMPLETE))


@breaks(26)
def a_finish_before_the_film_is_dry() -> Case:
    """The work ends 18:10; the film is dry to handle later."""
    return Case(ONE, ONE_PLAN, replace(ONE_PLAN, finishes=(("batch", at("18:10")),)))


@breaks(26)
def a_finish_left_out() -> Case:
    return Case(ONE, ONE_PLAN, replace(ONE_PLAN, finishes=()))


def two_evenings() -> tuple[Case, Cost]:
    """Work out a cost by hand, on steps without films after which nothing dries.

    Now is 17:00 on day 0.  Pressing ends 1/18:10, wiping 3/18:30.  The
    target is day 1, so due at the midnight after it; from 2/00:00 to 3/18:30
    are 42.5 h = 2550 min, times the weight 3.  The finish is 73.5 h = 4410
    min after now.  Two evenings hold work.
    """
    of = book(
        work("press", Stage.PRESS, "hull/deck"),
        work("wipe", Stage.WIPE, "tracks"),
        target=date(2031, 3, 4),
        weight=3,
    )
    right = Cost(unplaced=0, late=7650, finish=4410, stretches=2, setup_minutes=0)
    sound = plan(
        of,
        do("press", "1/18:00-1/18:10"),
        do("wipe", "3/18:20-3/18:30"),
        cost=right,
        finishes=(("batch", at("3/18:30")),),
    )
    return Case(of, sound, sound), right


@breaks(26)
def a_finish_a_minute_off() -> Case:
    case, _ = two_evenings()
    return replace(case, broken=replace(case.sound, finishes=(("batch", at("3/18:29")),)))


def wrong(**level: int) -> Case:
    case, right = two_evenings()
    return replace(case, broken=replace(case.sound, cost=replace(right, **level)))


@breaks(27)
def the_lateness_without_the_weight() -> Case:
    return wrong(late=2550)


@breaks(27)
def the_finish_from_the_wrong_now() -> Case:
    return wrong(finish=4409)


@breaks(27)
def too_few_evenings() -> Case:
    return wrong(stretches=1)


@breaks(27)
def something_unplaced_that_is_not() -> Case:
    return wrong(unplaced=1)


@breaks(27)
def less_setting_up() -> Case:
    """A load of 3 min and a cleaning of 6 are 9."""
    of = book(spray("base", "hull/deck"))
    sound = plan(
        of,
        sprayed("base", "18:03-18:13"),
        bench=[load("18:00-18:03"), clean("18:13-18:19")],
    )
    sound = replace(sound, cost=replace(sound.cost, setup_minutes=9))
    return Case(of, sound, replace(sound, cost=replace(sound.cost, setup_minutes=3)))


@breaks(28)
def planned_for_another_book() -> Case:
    sound = replace(ONE_PLAN, digest="a1")
    return Case(ONE, sound, replace(sound, digest="b2"), digest="a1")
