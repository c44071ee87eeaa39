"""The warm box of the first run: what may dry in it, and what a plan makes of it."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from app.service import sequences
from app.service.books import starter_book
from app.service.first_run import Answers, FirstHours, Vehicle, begin
from app.service.warm_box import HOTTEST_C, WARM_BOX, offer, offered
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.model import Material
from planner.values.moment import minute_of
from planner.values.refusal import Refused
from planner.values.room import AirPoint
from planner.values.step import Stage, Step

TODAY = date(2031, 3, 3)
NOW = minute_of(datetime(2031, 3, 3, 12, tzinfo=UTC))
TABLE = "On the table"


def answers(*, warm_box: bool, temperature_c: float = 18.0) -> Answers:
    return Answers(
        project=TABLE,
        vehicles=(Vehicle(name="Ferry Pike", sequence="full weathered vehicle"),),
        hours=(FirstHours(days=frozenset({0, 2, 4}), start="19:30", end="22:00"),),
        temperature_c=temperature_c,
        warm_box=warm_box,
    )


def begun(**told) -> Book:
    return begin(starter_book("UTC", TODAY), answers(**told), TODAY).book


def steps(book: Book) -> tuple[Step, ...]:
    return book.project(TABLE).models[0].steps


def test_slow_coats_may_dry_in_it_and_quick_ones_stay_on_the_bench() -> None:
    book = begun(warm_box=True)
    by_stage = {step.stage: step.or_in for step in steps(book)}
    assert by_stage[Stage.OIL_WASH] == by_stage[Stage.VARNISH] == ("warm box",)
    assert by_stage[Stage.BASE] == by_stage[Stage.PRIME] == by_stage[Stage.DECAL] == ()


def test_without_one_nothing_is_offered() -> None:
    book = begun(warm_box=False)
    assert all(step.or_in == () for step in steps(book))
    assert offered(book, TABLE) is book


def test_in_a_cold_room_the_plan_uses_it_gains_by_it_and_the_judge_accepts_it() -> None:
    with_box = begun(warm_box=True, temperature_c=11.0)
    without = begun(warm_box=False, temperature_c=11.0)
    plan, plain = plan_book(with_box, NOW), plan_book(without, NOW)
    verdict = judge(with_box, plan)
    assert verdict.accepted, verdict
    finish, usual = dict(plan.finishes)[TABLE], dict(plain.finishes)[TABLE]
    assert finish is not None
    assert usual is not None
    assert finish < usual
    assert {placement.location for placement in plan.placements} == {
        "",
        "warm box",
    }  # "": its usual place


@pytest.mark.parametrize(
    ("box_c", "bench_c"),
    [(HOTTEST_C + 1, 18.0), (20.0, 19.0)],
    ids=["so warm that styrene may bend", "hardly warmer than the room"],
)
def test_a_box_that_is_not_sane_is_not_offered(box_c: float, bench_c: float) -> None:
    book = begun(warm_box=False, temperature_c=bench_c)
    air = (AirPoint(at="00:00", temperature_c=box_c, humidity_pct=30),)
    box = replace(WARM_BOX, workdays=air)
    room = replace(book.room, locations=(*book.room.locations, box))
    book = replace(book, room=room)
    assert offered(book, TABLE) is book


def test_soft_material_stays_out_of_it() -> None:
    book = begun(warm_box=False)
    home = book.project(TABLE)
    model = home.models[0]
    soft = tuple(replace(part, material=Material.SOFT) for part in model.parts)
    home = replace(home, models=(replace(model, parts=soft),))
    room = replace(book.room, locations=(*book.room.locations, WARM_BOX))
    book = offered(replace(book, projects=(home,), room=room), TABLE)
    assert all(step.or_in == () for step in steps(book))


def test_a_box_bought_later_is_offered_to_what_stands_on_the_table() -> None:
    book = begun(warm_box=False)
    book = replace(book, room=replace(book.room, locations=(*book.room.locations, WARM_BOX)))
    edit = offer(book, WARM_BOX.name)
    assert edit.name == "slow coats may dry in warm box"
    assert steps(edit.book) == steps(begun(warm_box=True))
    with pytest.raises(Refused, match="no slow coat is left"):
        offer(edit.book, WARM_BOX.name)
    with pytest.raises(Refused, match="must be 3 °C warmer"):
        offer(book, "bench")


def test_the_box_is_no_difference_from_the_sequence_and_stays_when_it_is_given_anew() -> None:
    book = begun(warm_box=True)
    assert sequences.offers(book) == {}
    (model,) = book.project(TABLE).models
    assert model.made is not None
    anew = sequences.give_sequence(
        book, TABLE, [model.name], model.made.sequence, model.made.options
    )
    assert steps(anew.book) == steps(book)
