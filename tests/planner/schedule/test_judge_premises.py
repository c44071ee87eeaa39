"""What the judge takes from the book, what it lets pass, and what it says."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from judge_cases.facts import fact, logged
from judge_cases.gates import MELTING, outside_an_uncertain_window
from judge_cases.making import (
    ALL,
    MONDAY,
    at,
    book,
    clean,
    coating,
    do,
    load,
    paint,
    piece,
    plan,
    ready,
    spray,
    sprayed,
    when,
    work,
)

from planner.schedule.judge import Premises, judge
from planner.values.coating import Family, Mark, State, Window
from planner.values.moment import Interval
from planner.values.plan import BenchKind, BenchWork, Cost, PassKey, Placement, Plan, Status
from planner.values.project import Logged, Pin
from planner.values.step import Gate, Stage


def test_an_empty_book_and_plan_cost_nothing():
    of = replace(book(work("press", Stage.PRESS, "hull")), projects=())
    empty = Plan(at("17:00"), (), (), (), Status.FEASIBLE, Cost(0, 0, 0, 0, 0), ())
    assert judge(of, empty).accepted


def test_an_inactive_project_is_not_planned():
    of = book(paint("base", "hull/deck"), active=False)
    assert judge(of, plan(of)).accepted
    assert judge(of, plan(of, do("base", "18:00-18:10"))).definitions == {2}


def test_a_missing_pass_is_refused_unless_named_as_unplaced():
    of = book(paint("base", "hull/deck"))
    assert 2 in judge(of, plan(of)).definitions
    assert judge(of, plan(of, unplaced=["base"])).accepted


def test_facts_are_exempt_but_later_gates_use_them():
    """Both coats were logged far too close, at night; a third must still wait."""
    of = book(
        *(paint(name, "hull/deck") for name in ("base", "top", "last")),
        log=(logged("02:00", "02:10"), logged("16:00", "16:55", step="top")),
    )
    facts = fact(do("base", "02:00-02:10")), fact(do("top", "16:00-16:55"))
    opens = ready(of, "sand", State.DRY_TO_RECOAT, at("16:55"))
    start = max(opens, at("18:00"))
    assert judge(of, plan(of, *facts, do("last", piece(start, 10)))).accepted
    of = book(
        *(paint(name, "hull/deck") for name in ("base", "top", "last")),
        coatings=(coating("sand", dry_to_recoat=180),),
        log=(logged("02:00", "02:10"), logged("16:00", "16:55", step="top")),
    )
    verdict = judge(of, plan(of, *facts, do("last", "18:00-18:10")))
    assert verdict.definitions == {6}


def test_work_under_way_is_never_refused_for_the_hour():
    """Begun at 21:55 with 10 min to do, it ends after bench time."""
    of = book(paint("base", "hull/deck"), log=(logged("21:55"),))
    assert judge(of, plan(of, fact(do("base", "21:55-22:05")), now=at("21:58"))).accepted


def test_work_under_way_takes_at_least_five_minutes_more():
    of = book(paint("base", "hull/deck"), log=(logged("18:00"),))
    assert judge(of, plan(of, fact(do("base", "18:00-19:05")), now=at("19:00"))).accepted


def test_an_airbrush_under_way_is_cleaned_without_a_load():
    of = book(spray("base", "hull/deck"), log=(replace(logged("18:00"), airbrush="fine"),))
    under_way = fact(sprayed("base", "18:00-18:10"))
    now = at("18:05")
    assert judge(of, plan(of, under_way, bench=[clean("18:10-18:16")], now=now)).accepted
    again = plan(of, under_way, bench=[load("18:10-18:13"), clean("18:13-18:19")], now=now)
    assert judge(of, again).definitions == {15}


def test_an_uncertain_window_is_flagged():

    case = outside_an_uncertain_window()
    (flag,) = judge(case.book, case.sound).flags
    assert flag.startswith("uncertain: batch/cart/top#1")
    assert "19:45" in flag
    assert "19:50" in flag


@pytest.mark.parametrize(
    "pin",
    [
        Pin(model="cart", step="base", on=MONDAY - timedelta(days=1)),
        Pin(model="cart", step="base", start=when("16:00"), end=when("17:05")),
    ],
)
def test_a_pin_that_time_has_overtaken_becomes_a_preference(pin):
    of = book(paint("base", "hull/deck"), pins=(pin,))
    verdict = judge(of, plan(of, do("base", "18:00-18:10")))
    assert verdict.accepted
    (flag,) = verdict.flags
    assert flag.startswith("preference: batch/cart/base#1")


def test_a_pin_before_a_logged_film_is_ready_becomes_a_preference():
    """Pinned to 18:00, but the coat below was logged at 17:00 to 17:50 and needs an hour."""
    pin = Pin(model="cart", step="top", start=when("18:00"), end=when("18:15"))
    of = book(
        paint("base", "hull/deck", coat="hourly"),
        paint("top", "hull/deck"),
        pins=(pin,),
        log=(logged("17:00", "17:50"),),
    )
    base = fact(do("base", "17:00-17:50"))
    verdict = judge(of, plan(of, base, do("top", "18:50-19:00"), now=at("17:55")))
    assert verdict.accepted
    assert verdict.flags


def test_a_melted_film_is_not_handled_on_the_lower_coats_clock():
    """The double film holds fingers off longer than the lower coat alone would."""
    thick = coating("lacquer", Family.SOLVENT_LACQUER, MELTING, dry_to_handle=100)
    of = book(
        paint("base", "wheels/tread", coat="lacquer"),
        paint("top", "wheels/tread", coat="lacquer"),
        paint("rims", "wheels/rim"),
        coatings=(thick,),
    )
    coats = do("base", "18:00-18:10"), do("top", "18:10-18:20")
    dry = ready(of, "lacquer", State.DRY_TO_HANDLE, at("18:20"), um=40)
    early = ready(of, "lacquer", State.DRY_TO_HANDLE, at("18:20"))
    assert early < dry
    assert judge(of, plan(of, *coats, do("rims", piece(early, 10)))).definitions == {5}


def test_a_film_that_is_never_dry_keeps_its_drying_place():
    of = book(
        paint("base", "hull/deck", dries_in="fog"),
        *(paint(f"rims-{n}", place, dries_in="fog") for n, place in enumerate(["tracks"])),
    )
    room = of.room
    narrow = replace(room.locations[2], drying_places=1)
    of = replace(of, room=replace(room, locations=(*room.locations[:2], narrow)))
    late = plan(of, do("base", "18:00-18:10"), do("rims-0", "90/18:00-90/18:10"))
    assert judge(of, late).definitions == {18}


def test_one_unit_takes_its_places_once():
    """Two wet coats on the hull take one drying place, not two."""
    of = book(
        paint("base", "hull/deck", dries_in="box"), paint("sides", "hull/side", dries_in="box")
    )
    both = plan(of, do("base", "18:00-18:10"), do("sides", "18:10-18:20"))
    assert judge(of, both).accepted


def test_changing_within_a_family_takes_six_minutes():
    of = book(spray("base", "hull/deck"), spray("links", "tracks", coat="green"))
    change = BenchWork(BenchKind.CHANGE, Interval(at("18:13"), at("18:19")), "fine", "green")
    made = plan(
        of,
        sprayed("base", "18:03-18:13"),
        sprayed("links", "18:19-18:29"),
        bench=[load("18:00-18:03"), change, clean("18:29-18:35")],
    )
    assert judge(of, made).accepted


def test_a_fresh_filling_starts_the_life_of_a_mix_anew():
    of = book(
        spray("base", "hull/deck", coat="faded", minutes=40),
        spray("links", "tracks", coat="faded", minutes=40),
    )
    passes = sprayed("base", "18:03-18:43"), sprayed("links", "18:49-19:29")
    again = BenchWork(BenchKind.CHANGE, Interval(at("18:43"), at("18:49")), "fine", "faded")
    ends = [load("18:00-18:03", "faded"), clean("19:29-19:35")]
    assert judge(of, plan(of, *passes, bench=[*ends, again])).accepted
    assert judge(of, plan(of, *passes, bench=ends)).definitions == {16}


@pytest.mark.parametrize("minute", [-(10**12), 10**12, 10**30])
def test_absurd_minutes_are_refused_not_computed(minute):
    of = book(paint("base", "hull/deck"))
    sound = plan(of, do("base", "18:00-18:10"))
    far = do("base", Interval(minute, minute + 10))
    assert 1 in judge(of, replace(sound, placements=(far,))).definitions
    bench = (BenchWork(BenchKind.CLEAN, Interval(minute, minute + 6), "fine"),)
    assert judge(of, replace(sound, bench=bench)).definitions == {1}
    assert not judge(of, replace(sound, now=minute)).accepted


def test_a_plan_without_sense_is_refused_and_not_computed():
    of = book(paint("base", "hull/deck"))
    stray = PassKey("", "", "", 0)
    made = Plan(
        now=at("17:00"),
        placements=(Placement(stray, ()), Placement(PassKey("batch", "cart", "base"), ())),
        bench=(
            BenchWork(BenchKind.CHANGE, Interval(at("18:00"), at("18:01")), "none", "none"),
            BenchWork(BenchKind.CHANGE, Interval(at("18:01"), at("18:02")), "fine", "none"),
            BenchWork(BenchKind.PREPARE, Interval(at("18:02"), at("18:03")), serves=stray),
        ),
        unplaced=(),
        status=Status.OPTIMAL,
        cost=Cost(-1, -1, -1, -1, -1, -1),
        finishes=(("none", 0), ("none", 1)),
    )
    assert judge(of, made).definitions == {2, 8, 13, 15, 25, 26, 27}


def test_premises_may_be_shared():
    of = book(paint("base", "hull/deck"))
    shared = Premises(of)
    for spans, accepted in (("18:00-18:10", True), ("17:50-18:00", False)):
        assert judge(of, plan(of, do("base", spans)), premises=shared).accepted is accepted


def test_a_message_names_the_pass_and_the_times():
    of = book(paint("base", "hull/deck", coat="hourly", minutes=1), paint("top", "hull/deck"))
    made = plan(of, do("base", "18:00-18:01"), do("top", "18:01-18:11"))
    (violation,) = judge(of, made, rules=ALL).violations
    assert violation.about == "batch/cart/top#1"
    assert "starts Mon 2031-03-03 18:01" in violation.message
    assert "opens Mon 2031-03-03 19:01" in violation.message


def test_a_gate_of_steps_without_films_counts_minutes():

    gate = Gate(after="press", windows=(Window(opens=Mark(minutes=30)),))
    of = book(
        work("press", Stage.PRESS, "hull/deck"),
        work("wipe", Stage.WIPE, "hull/deck", gates=(gate,)),
    )
    press = do("press", "18:00-18:10")
    assert judge(of, plan(of, press, do("wipe", "18:40-18:50"))).accepted
    assert judge(of, plan(of, press, do("wipe", "18:10-18:20"))).definitions == {6}


def test_a_log_of_a_closed_project_counts_for_nothing():
    entry = Logged(model="cart", step="base", start=when("18:00"))
    of = book(paint("base", "hull/deck"), log=(entry,), active=False)
    assert judge(of, plan(of)).accepted
