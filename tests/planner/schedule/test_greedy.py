"""The heuristic on small benches whose best plan can be worked out by hand.

Bench time is 18:00 to 22:00 UTC, quiet from 21:00, a helper from day 5 on;
load 3, change 6 (same family) or 10 minutes, clean 6 (``judge_cases.making``).
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
    coating,
    key,
    paint,
    spray,
    when,
    work,
)

from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.model import Model
from planner.values.plan import BenchKind, Cause, PassKey, Plan, Status
from planner.values.project import Logged, Pin
from planner.values.step import Minutes, Stage, Step


def planned(of: Book, now: int = NOW) -> Plan:
    """Return the plan, which the judge must accept."""
    plan = plan_book(of, now)
    verdict = judge(of, plan)
    assert verdict.accepted, verdict.violations
    return plan


def start(plan: Plan, step: str, coat: int = 1) -> int:
    """Return when a pass of the cart starts."""
    placed = plan.placement(key(step, coat))
    assert placed is not None
    return placed.start


def fleet(count: int, *steps: Step, **times: int) -> Book:
    """Return a book of several carts with the same steps; ``times`` are the paint's."""
    quick = coating("sand", **times), coating("green", **times)
    of = book(*steps, coatings=quick)
    cart = of.projects[0].models[0]
    carts = tuple(replace(cart, name=f"cart {number}") for number in range(count))
    return replace(of, projects=(replace(of.projects[0], models=carts),))


def test_one_load_serves_every_vehicle() -> None:
    # Three carts, two colours that may follow at once: one load, one change,
    # one cleaning, whereas cart after cart would take three times as many.
    of = fleet(3, spray("base", "hull/deck"), spray("camo", "hull/side", coat="green"))
    plan = planned(of)
    kinds = [work.kind for work in plan.bench]
    assert sorted(kinds) == [BenchKind.CHANGE, BenchKind.CLEAN, BenchKind.LOAD]
    assert plan.cost.setup_minutes == 3 + 6 + 6


def test_coats_take_turns_between_vehicles() -> None:
    # Two coats each, 10 minutes of work and a wait of about 15 between them:
    # the second cart's first coat fits into the first cart's wait.
    of = fleet(3, spray("base", "hull/deck", coats=2), dry_to_recoat=15)
    plan = planned(of)
    first = [p.key.model for p in plan.placements[:3]]
    assert sorted(first) == ["cart 0", "cart 1", "cart 2"]
    assert [p.key.coat for p in plan.placements] == [1, 1, 1, 2, 2, 2]
    assert plan.cost.stretches == 1


def test_the_first_piece_waits_for_bench_time_and_the_second_for_drying() -> None:
    plan = planned(book(paint("base", "hull/deck"), paint("camo", "hull/deck", coat="green")))
    base, camo = plan.placements
    assert (base.start, base.reason.cause) == (at("18:00"), Cause.BENCH_TIME)
    assert camo.reason.cause is Cause.DRYING
    assert camo.reason.until == camo.start
    assert camo.reason.about == str(key("base"))
    assert camo.reason.detail == "dry-to-recoat"


def test_busy_hands_are_the_reason_of_free_work() -> None:
    plan = planned(book(paint("one", "hull/deck"), paint("other", "hull/side")))
    assert [p.start for p in plan.placements] == [at("18:00"), at("18:10")]
    assert plan.placements[1].reason.cause is Cause.HANDS


def test_a_change_of_colour_is_the_reason_of_what_follows_it() -> None:
    plan = planned(book(spray("one", "hull/deck"), spray("other", "hull/side", coat="green")))
    second = plan.placements[1]
    assert second.start == at("18:00") + 3 + 10 + 6 + 10 - 10
    assert second.reason.cause is Cause.AIRBRUSH


def test_the_last_cleaning_ends_before_quiet_hours() -> None:
    # 3 of load, 175 of work, 6 of cleaning end at 21:04, four minutes too late.
    plan = planned(book(spray("long", "hull/deck", minutes=175)))
    assert plan.unplaced[0].key == key("long")
    fits = planned(book(spray("long", "hull/deck", minutes=171)))
    assert fits.bench[-1].interval.end == at("21:00")


def test_a_wash_waits_for_an_evening_in_which_it_can_be_wiped() -> None:
    # After 190 minutes the wash would still fit (until 21:50), but not its wiping.
    wash = paint("wash", "hull/deck", coat="oil", minutes=40, stage=Stage.OIL_WASH)
    wipe = work("wipe", Stage.WIPE, "hull/deck", minutes=15)
    before = paint("before", "tracks/links", minutes=190)
    of = book(before, replace(wash, after=("before",)), wipe)
    plan = planned(of)
    assert start(plan, "before") == at("18:00")
    assert start(plan, "wash") == at("1/18:00")
    assert start(plan, "wipe") == at("1/18:55")  # best a quarter of an hour after it


def test_a_split_step_fills_the_rest_of_an_evening() -> None:
    long = Step(
        id="decals",
        stage=Stage.DETAIL,
        applications=paint("x", "hull/deck").applications,
        minutes=Minutes(fixed=300),
        split_least=30,
    )
    placed = planned(book(long)).placements[0]
    assert [piece.minutes for piece in placed.pieces] == [240, 60]


def test_a_helper_step_waits_for_two_people() -> None:
    plan = planned(book(paint("lift", "hull/deck", helper=True)))
    assert start(plan, "lift") == at("5/18:00")


def test_a_pin_is_kept_and_an_impossible_one_is_refused_in_words() -> None:
    step = paint("base", "hull/deck")
    kept = planned(book(step, pins=(Pin(model="cart", step="base", on=MONDAY + timedelta(2)),)))
    assert start(kept, "base") == at("2/18:00")
    assert kept.placements[0].reason.cause in (Cause.PIN, Cause.BENCH_TIME)
    pin = Pin(model="cart", step="base", start=when("1/08:00"), end=when("1/12:00"))
    refused = planned(book(step, pins=(pin,)))
    assert refused.status is Status.INCOMPLETE
    assert "pin" in refused.unplaced[0].why


def test_work_under_way_comes_first_and_facts_stay() -> None:
    log = (
        Logged(model="cart", step="one", start=when("18:00"), end=when("18:07")),
        Logged(model="cart", step="two", start=when("18:07")),
    )
    steps = [paint(name, place) for name, place in (("one", "hull/deck"), ("two", "hull/side"))]
    of = book(*steps, paint("three", "tracks/links"), log=log)
    plan = planned(of, at("18:12"))
    two = plan.placement(key("two"))
    assert two is not None
    assert two.logged
    assert (two.start, two.end) == (at("18:07"), at("18:17"))
    assert start(plan, "three") == at("18:17")
    assert start(plan, "one") == at("18:00")


def test_a_film_that_never_dries_is_told_and_not_waited_for() -> None:
    # Saturated air: water cannot leave a waterborne film.
    steps = paint("base", "hull/deck", dries_in="fog"), paint("camo", "hull/deck")
    plan = planned(book(*steps))
    assert [lost.key for lost in plan.unplaced] == [key("camo")]
    assert "never" in plan.unplaced[0].why


@pytest.mark.parametrize(
    ("steps", "word"),
    [
        ((paint("rim", "wheels/hub"),), "turn"),
        ((work("mask", Stage.MASK, "hull/deck"), paint("base", "hull/deck")), "unmask"),
        ((paint("far", "hull/deck", minutes=300),), "300 minutes"),
    ],
)
def test_what_cannot_be_placed_says_why(steps: tuple[Step, ...], word: str) -> None:
    plan = planned(book(*steps))
    assert plan.status is Status.INCOMPLETE
    assert word in plan.unplaced[0].why


def test_that_unmasking_comes_after_the_mask_is_no_leave_to_let_the_tape_creep() -> None:
    # Definition 21: without a gate of its own on the mask, unmasking starts within seven days.
    # "After the mask" is an order and no gate.  The coat between is pinned to the tenth evening.
    mask, off = (
        work(name, stage, "hull/deck")
        for name, stage in (("mask", Stage.MASK), ("off", Stage.UNMASK))
    )
    steps = mask, paint("base", "hull/side"), replace(off, after=("mask",))
    pin = Pin(model="cart", step="base", on=MONDAY + timedelta(9))
    plan = planned(book(*steps, pins=(pin,)))
    lost = {one.key.step for one in plan.unplaced}
    assert "off" in lost or start(plan, "off") < start(plan, "mask") + 7 * 1440


def test_painted_faces_are_not_glued_unless_scraped() -> None:
    glue = paint("join", "hull/side", "tracks/links", coat="cement", stage=Stage.JOIN)
    painted = book(paint("base", "hull"), glue)
    assert "scrape" in planned(painted).unplaced[0].why
    scraped = book(paint("base", "hull"), replace(glue, scraped=True))
    assert not planned(scraped).unplaced


def test_two_families_of_work_leave_no_drying_place_unused() -> None:
    # The warm box takes one unit; the second waits until the first is dry to handle.
    of = book(
        paint("one", "hull/deck", dries_in="box"), paint("two", "tracks/links", dries_in="box")
    )
    plan = planned(of)
    placement, two = plan.placements
    assert placement.end < two.start
    assert two.reason.cause is Cause.DRYING_PLACE


def test_the_same_input_gives_the_same_plan() -> None:
    of = fleet(4, spray("base", "hull/deck", coats=2), spray("camo", "hull/side", coat="green"))
    assert plan_book(of, NOW, tries=5, seed=3) == plan_book(of, NOW, tries=5, seed=3)


def test_more_tries_never_cost_more() -> None:
    of = fleet(4, spray("base", "hull/deck", coats=2), spray("camo", "hull/side", coat="green"))
    few, many = plan_book(of, NOW), plan_book(of, NOW, tries=15)
    assert many.cost.in_order() <= few.cost.in_order()


def test_an_inactive_project_is_left_alone() -> None:
    of = book(paint("base", "hull/deck"))
    idle = replace(of, projects=(replace(of.projects[0], active=False),))
    assert plan_book(idle, NOW).placements == ()


def test_two_projects_share_a_load() -> None:
    of = book(spray("base", "hull/deck"))
    other = replace(of.projects[0], name="other")
    plan = planned(replace(of, projects=(*of.projects, other)))
    assert [work.kind for work in plan.bench] == [BenchKind.LOAD, BenchKind.CLEAN]
    assert {p.key.project for p in plan.placements} == {"batch", "other"}


def test_strong_solvent_waits_for_a_hard_enamel() -> None:
    # Lacquer over enamel asks dry-through (UFC 3-190-06 par. 2.4.2), not dry-to-recoat.
    enamel = coating("enamel", Family.ALKYD_ENAMEL, dry_to_recoat=20, dry_through=900)
    steps = paint("base", "hull/deck", coat="enamel"), paint("top", "hull/deck", coat="lacquer")
    plan = planned(book(*steps, coatings=(enamel,)))
    assert start(plan, "top") >= at("18:10") + 900


def test_moved_steps_are_counted_against_the_last_plan() -> None:
    of = book(paint("base", "hull/deck"), paint("camo", "hull/side"))
    last = plan_book(of, NOW)
    skipped = replace(of, bench_time=replace(of.bench_time, skipped=(MONDAY,)))
    again = plan_book(skipped, NOW, last=last)
    assert again.cost.moved == 2
    assert plan_book(of, NOW, last=last).cost.moved == 0


def test_a_model_without_steps_needs_no_plan() -> None:
    of = book(paint("base", "hull/deck"))
    bare = Model(name="bare", parts=of.projects[0].models[0].parts)
    plan = plan_book(replace(of, projects=(replace(of.projects[0], models=(bare,)),)), NOW)
    assert (plan.placements, plan.status) == ((), Status.FEASIBLE)
    assert plan.finishes == (("batch", NOW),)


def test_keys_read_as_a_path() -> None:
    assert str(PassKey("batch", "cart", "base", 2)) == "batch/cart/base#2"


def test_nobody_holds_a_part_on_which_work_was_begun() -> None:
    # The wheels have no holder; 300 minutes of work on the tread take two evenings,
    # and the rim is not touched between them, though hands were free.
    tread = paint("tread", "wheels/tread", minutes=300, split_least=30)
    plan = planned(book(tread, paint("rim", "wheels/rim", minutes=20)))
    placed = plan.placement(key("tread"))
    assert placed is not None
    assert not placed.start <= start(plan, "rim") < placed.end


def test_a_part_stays_in_its_box_while_something_waits_for_its_film() -> None:
    # The side could be painted at 18:10, but that would take the hull out of the box
    # in which the wash waits for the deck to become solvent-safe (100 min at reference).
    deck = paint("deck", "hull/deck", dries_in="box")
    wash = paint("wash", "hull/deck", coat="oil", stage=Stage.OIL_WASH)
    plan = planned(book(deck, paint("side", "hull/side"), wash))
    assert start(plan, "side") >= at("18:10") + 100
    alike = planned(book(paint("deck", "hull/deck"), paint("side", "hull/side"), wash))
    assert start(alike, "side") < at("18:10") + 100
