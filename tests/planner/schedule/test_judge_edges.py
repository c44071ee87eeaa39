"""What the judge says by itself, at the minute or figure on which it turns; sums by hand."""

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
    coating,
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

from planner.graph.gates import gates_of
from planner.schedule.judge import judge, premises
from planner.schedule.judge.verdict import Violation
from planner.values.book import Book
from planner.values.coating import Mark, Window
from planner.values.model import Model
from planner.values.plan import Cost, Plan, ProvenBound, Status
from planner.values.project import Logged, Pin
from planner.values.step import Gate, Stage, Trait

ONE = book(paint("base", "hull/deck"))
SOUND = plan(ONE, do("base", "18:00-18:10"))


def against(of: Book, made: Plan) -> set[int]:
    return set(judge(of, made).definitions)


def only(of: Book, made: Plan, definition: int) -> tuple[Violation, ...]:
    """Return what is found by one rule alone."""
    return judge(of, made, rules=frozenset({definition})).violations


# -- 1: minutes -----------------------------------------------------------------------------------

YEAR = 366 * 1440  # the judge reckons with years of 366 days


@pytest.mark.parametrize(
    ("now", "sound"),
    [
        (365 * 1440, True),  # the first minute of 1971
        (365 * 1440 - 1, False),
        (230 * YEAR, True),  # about 2200
        (230 * YEAR + 1, False),
    ],
)
def test_now_is_a_minute_of_the_years_that_a_book_may_have(now, sound):
    made = replace(SOUND, now=now, placements=(), unplaced=())
    assert (not any(one.about == "now" for one in only(ONE, made, 1))) is sound
    assert [one.definition for one in only(ONE, made, 1)] == [] if sound else [1]


@pytest.mark.parametrize(("ahead", "sound"), [(30 * YEAR, True), (30 * YEAR + 1, False)])
def test_no_piece_lies_further_ahead_than_thirty_years(ahead, sound):
    """Twenty years that a date may lie ahead (of 366 days each), and ten more to plan in."""
    end = NOW + ahead
    made = replace(SOUND, placements=(do("base", piece(end - 10, 10)),))
    assert (only(ONE, made, 1) == ()) is sound
    bench = [replace(load("18:00-18:03"), interval=piece(end - 3, 3))]
    assert (only(ONE, replace(SOUND, bench=tuple(bench)), 1) == ()) is sound


def test_whole_minutes_alone_are_minutes():
    for start in (float(at("18:00")), True):
        made = replace(SOUND, now=start)
        assert {one.definition for one in only(ONE, made, 1)} == {1}


def test_pieces_may_touch_and_not_overlap():
    of = book(paint("base", "hull/deck", minutes=40, split_least=15))
    assert against(of, plan(of, do("base", "18:00-18:20", "18:20-18:40"))) == set()
    assert against(of, plan(of, do("base", "18:00-18:21", "18:20-18:39"))) == {1, 13}


# -- 2: each pass once ----------------------------------------------------------------------------


def test_a_pass_is_placed_or_named_as_unplaced_and_not_both():
    neither = replace(SOUND, placements=())
    assert {one.definition for one in only(ONE, neither, 2)} == {2}
    both = plan(ONE, do("base", "18:00-18:10"), unplaced=["base"])
    assert {one.definition for one in only(ONE, both, 2)} == {2}
    twice = plan(ONE, unplaced=["base", "base"])
    assert {one.definition for one in only(ONE, twice, 2)} == {2}
    empty = replace(SOUND, placements=(replace(SOUND.placements[0], pieces=()),))
    assert 2 in {one.definition for one in only(ONE, empty, 2)}


# -- 13: hands ------------------------------------------------------------------------------------


def test_work_goes_on_where_the_last_of_all_ended():
    """A short piece within a long one does not free hands: the third overlaps the first."""
    of = book(
        paint("base", "hull/deck", minutes=60),
        paint("side", "hull/side", minutes=10),
        paint("links", "tracks", minutes=10),
    )
    first = do("base", "18:00-19:00")
    made = plan(of, first, do("side", "18:10-18:20"), do("links", "18:30-18:40"))
    assert len(only(of, made, 13)) == 2
    made = plan(of, first, do("side", "19:00-19:10"), do("links", "19:10-19:20"))
    assert only(of, made, 13) == ()


def test_what_goes_on_alone_keeps_hands_for_five_minutes():
    """Assumed: the minutes until it goes by itself."""
    bath = work("bath", Stage.CLEAN, "hull/deck", minutes=60, traits=(Trait.HANDS_FREE,))
    of = book(bath, paint("links", "tracks"))
    first = do("bath", "18:00-19:00")
    assert against(of, plan(of, first, do("links", "18:05-18:15"))) == set()
    assert against(of, plan(of, first, do("links", "18:04-18:14"))) == {13}
    over = do("bath", "21:55-22:55")
    assert against(of, plan(of, over, do("links", "18:05-18:15"))) == set()
    assert against(of, plan(of, do("bath", "21:56-22:56"), do("links", "18:05-18:15"))) == {12}


# -- 19 to 21: units ------------------------------------------------------------------------------


def test_which_side_lies_up_is_said():
    of = book(
        work("turn", Stage.TURN, "wheels"),
        work("back", Stage.TURN, "wheels"),
        paint("base", "wheels/tread"),
        paint("hubs", "wheels/hub"),
    )
    turn, back = do("turn", "18:00-18:10"), do("back", "18:10-18:20")
    (once,) = only(of, plan(of, turn, do("base", "18:10-18:20"), unplaced=["back", "hubs"]), 20)
    assert "but wheels lies with the under side up" in once.message
    (twice,) = only(of, plan(of, turn, back, do("hubs", "18:20-18:30"), unplaced=["base"]), 20)
    assert "but wheels lies with the top side up" in twice.message
    made = plan(of, turn, do("hubs", "18:10-18:20"), unplaced=["base", "back"])
    assert only(of, made, 20) == ()
    late = plan(of, do("turn", "18:05-18:15"), do("hubs", "18:10-18:20"), unplaced=["base", "back"])
    assert {one.definition for one in only(of, late, 20)} == {20}  # not yet turned


def test_the_judge_counts_the_week_of_a_mask_itself(monkeypatch):
    """Without the gate that says the same: on at 18:30, off before 18:30 a week later."""
    of = book(
        work("mask", Stage.MASK, "hull/deck"),
        paint("camo", "hull/side"),
        work("unmask", Stage.UNMASK, "hull/deck"),
    )

    def open_gates(*told):
        return tuple(gate for gate in gates_of(*told) if not gate.closes)

    monkeypatch.setattr(premises, "gates_of", open_gates)
    done = do("mask", "1/18:30-1/18:40"), do("camo", "1/18:40-1/18:50")
    for off, found in (("8/18:29", set()), ("8/18:30", {21}), ("8/18:31", {21})):
        assert against(of, plan(of, *done, do("unmask", piece(at(off), 10)))) == found


def test_no_coat_lies_under_a_mask_from_its_first_minute_to_the_last_of_taking_it_off():
    of = book(
        work("mask", Stage.MASK, "hull/deck"),
        work("unmask", Stage.UNMASK, "hull/deck"),
        paint("base", "hull/deck"),
    )

    def covered(base: str, mask: str, unmask: str) -> bool:
        made = plan(of, do("mask", mask), do("unmask", unmask), do("base", base))
        return any("covers" in one.message for one in only(of, made, 21))

    masks = "18:30-18:40", "18:50-19:00"
    assert not covered("18:20-18:30", *masks)
    assert covered("18:21-18:31", *masks)
    assert covered("18:40-18:50", *masks)
    assert covered("18:59-19:09", *masks)
    assert not covered("19:00-19:10", *masks)


# -- 22 to 24: facts ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("now", "end"),
    [
        ("18:00", "18:10"),
        ("18:04", "18:10"),
        ("18:05", "18:10"),
        ("18:06", "18:11"),
        ("19:00", "19:05"),
    ],
)
def test_work_under_way_has_at_least_five_minutes_left(now, end):
    """Begun at 18:00 and ten minutes long (definition 23)."""
    log = (Logged(model="cart", step="base", start=when("18:00")),)
    of = book(paint("base", "hull/deck"), log=log)

    def made(until: int) -> Plan:
        placed = replace(do("base", piece(at("18:00"), until - at("18:00"))), logged=True)
        return plan(of, placed, now=at(now))

    assert against(of, made(at(end))) == set()
    for off in (-1, 1):
        assert against(of, made(at(end) + off)) == {23}


def test_a_pin_that_a_closing_of_what_is_done_rules_out_is_a_preference():
    """Wished for day 2, but it closes an hour after what was begun at 18:00 on day 0."""
    gate = Gate(after="base", windows=(Window(closes=Mark(minutes=60)),))
    log = (Logged(model="cart", step="base", start=when("18:00"), end=when("18:10")),)
    pin = Pin(model="cart", step="press", on=MONDAY + timedelta(days=2))
    steps = paint("base", "hull/deck"), work("press", Stage.PRESS, "hull/deck", gates=(gate,))
    of = book(*steps, log=log, pins=(pin,))
    done = replace(do("base", "18:00-18:10"), logged=True)
    made = plan(of, done, do("press", "18:30-18:40"), now=at("18:20"))
    verdict = judge(of, made)
    assert verdict.violations == ()
    assert any(flag.startswith("preference:") for flag in verdict.flags)
    loose = book(steps[0], replace(steps[1], gates=()), log=log, pins=(pin,))
    made = plan(loose, done, do("press", "18:30-18:40"), now=at("18:20"))
    assert against(loose, made) == {24}


def test_what_begins_with_the_work_that_waited_carries_nothing_off_before_it():
    """Definition 10 is silent of it; that hands cannot be at both is definition 13's."""
    of = book(
        paint("base", "hull/deck", dries_in="box"),
        paint("side", "hull/side"),
        paint("grime", "hull/deck", coat="oil", stage=Stage.OIL_WASH),
        coatings=(coating("sand", solvent_safe=60),),
    )
    first = do("base", "18:00-18:10")
    for side, found in (("18:30-18:40", 1), ("18:39-18:49", 1), ("18:40-18:50", 0)):
        made = plan(of, first, do("side", side), do("grime", "18:40-18:50"))
        assert sum("takes hull/deck" in one.message for one in only(of, made, 10)) == found


# -- 25 to 28: what a plan says of itself ---------------------------------------------------------


def proven(**levels: int) -> tuple[ProvenBound, ...]:
    return tuple(ProvenBound(level, value, "by hand") for level, value in levels.items())


UNPLACED = plan(ONE, unplaced=["base"])


@pytest.mark.parametrize(
    ("made", "found"),
    [
        (replace(SOUND, status=Status.FEASIBLE), set()),
        (replace(SOUND, status=Status.INCOMPLETE), {25}),
        (replace(SOUND, status=Status.INFEASIBLE), {25}),
        (replace(SOUND, status=Status.INFEASIBLE, bounds=proven(unplaced=1)), {25}),
        (replace(UNPLACED, status=Status.INCOMPLETE), set()),
        (replace(UNPLACED, status=Status.FEASIBLE), {25}),
        (replace(UNPLACED, status=Status.INFEASIBLE), {25}),
        (replace(UNPLACED, status=Status.INFEASIBLE, bounds=proven(unplaced=0)), {25}),
        (replace(UNPLACED, status=Status.INFEASIBLE, bounds=proven(unplaced=1)), set()),
        (replace(UNPLACED, status=Status.INFEASIBLE, bounds=proven(unplaced=2)), {25}),
        (replace(SOUND, status=Status.OPTIMAL), {25}),
        (replace(SOUND, status=Status.OPTIMAL, bounds=proven(unplaced=0)), set()),
        (replace(SOUND, status=Status.OPTIMAL, bounds=proven(late=0)), {25}),  # a gap before it
        (replace(SOUND, status=Status.OPTIMAL, bounds=proven(unplaced=0, late=0)), set()),
        (replace(SOUND, bounds=proven(unplaced=0, late=1)), {25}),
        (replace(SOUND, bounds=proven(rubbish=0)), {25}),
    ],
)
def test_a_status_claims_no_more_than_is_shown(made, found):
    verdict = judge(ONE, made)
    assert set(verdict.definitions) == found


def test_costs_and_digest_are_held_to_the_last_figure():
    cost = SOUND.cost
    for level in ("unplaced", "late", "finish", "stretches", "setup_minutes"):
        for off in (-1, 1):
            wrong = replace(cost, **{level: getattr(cost, level) + off})
            assert set(judge(ONE, replace(SOUND, cost=wrong)).definitions) == {27}
    assert against(ONE, replace(SOUND, cost=replace(cost, moved=0))) == set()
    assert against(ONE, replace(SOUND, cost=replace(cost, moved=3))) == set()
    assert against(ONE, replace(SOUND, cost=replace(cost, moved=-1))) == {27}
    told = replace(SOUND, digest="a1")
    assert judge(ONE, told, expected_digest="a1").accepted
    assert judge(ONE, told, expected_digest="a2").definitions == {28}
    assert judge(ONE, told).accepted


def carts(**target: object) -> Book:
    """Return a book of two carts that are pressed, ten minutes each."""
    of = book(work("press", Stage.PRESS, "hull/deck"), **target)
    (one,) = of.projects
    (cart,) = one.models
    models: tuple[Model, ...] = (cart, replace(cart, name="sled"))
    return replace(of, projects=(replace(one, models=models),))


def test_finishes_of_models_are_held_where_a_plan_tells_of_them():
    of = carts()
    made = plan(of, do("press", "18:00-18:10"))
    sled = replace(
        made.placements[0],
        key=key("press")._replace(model="sled"),
        pieces=(piece(at("18:10"), 10),),
    )
    made = plan(of, do("press", "18:00-18:10"), sled)
    right = (("batch", "cart", at("18:10")), ("batch", "sled", at("18:20")))
    assert against(of, replace(made, model_finishes=right)) == set()
    for off in (-1, 1):
        wrong = (right[0], ("batch", "sled", at("18:20") + off))
        assert against(of, replace(made, model_finishes=wrong)) == {26}
    assert against(of, replace(made, model_finishes=(("batch", "cab", 1),))) == {26}
    assert against(of, replace(made, finishes=(*made.finishes, ("yard", 1)))) == {26}
    assert against(of, replace(made, finishes=(*made.finishes, *made.finishes))) == {26}


@pytest.mark.parametrize(("days", "late"), [(0, 0), (-1, 17 * 60)])
def test_a_model_without_any_work_counts_as_finished_now(days, late):
    """Now is 17:00; the target of the day before was midnight, 17 hours ago."""
    of = carts(target=MONDAY + timedelta(days=days))
    made = plan(of, unplaced=["press"])
    cost: Cost = judge(of, made, rules=frozenset()).cost
    assert (cost.unplaced, cost.late, cost.finish) == (2, late, 0)
    assert dict(made.finishes) == {"batch": NOW}


# -- 15: what a cup holds -------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("filled", "cleaned", "found"),
    [
        ("18:00-18:03", "18:13-18:19", set()),
        ("18:01-18:03", "18:13-18:19", {15}),  # two minutes of the three that a load takes
        ("18:00-18:03", "18:13-18:18", {15}),  # five of six
        ("18:00-18:03", "18:13-18:20", set()),
    ],
)
def test_loads_and_cleanings_take_their_least_minutes(filled, cleaned, found):
    of = book(spray("base", "hull/deck"))
    bench = [load(filled), clean(cleaned)]
    assert against(of, plan(of, sprayed("base", "18:03-18:13"), bench=bench)) == found


def test_a_preparation_serves_what_is_placed():
    of = book(paint("base", "hull/deck"), paint("links", "tracks"), coatings=(coating("sand"),))
    made = plan(
        of, do("base", "18:10-18:20"), bench=[prepare("18:00-18:10", "base")], unplaced=["links"]
    )
    assert only(of, made, 8) == ()
    made = plan(
        of, do("base", "18:10-18:20"), bench=[prepare("18:00-18:10", "links")], unplaced=["links"]
    )
    assert {one.definition for one in only(of, made, 8)} == {8}


def test_a_model_with_a_date_of_its_own_and_no_work_is_late_by_now():
    """Its day ended at midnight, 17 hours before now; the other has none."""
    of = carts()
    (one,) = of.projects
    cart, sled = one.models
    models = (replace(cart, target=MONDAY - timedelta(days=1)), sled)
    of = replace(of, projects=(replace(one, models=models),))
    cost: Cost = judge(of, plan(of, unplaced=["press"]), rules=frozenset()).cost
    assert cost.late == 17 * 60
