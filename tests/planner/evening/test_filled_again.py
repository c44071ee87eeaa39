"""Why a colour is filled twice in one evening, beside what is worked out apart."""

from __future__ import annotations

from judge_cases.making import (
    NOW,
    book,
    change,
    clean,
    coating,
    load,
    plan,
    ready,
    spray,
    sprayed,
)

from planner.evening.filled_again import filled_again
from planner.schedule.greedy import plan_book
from planner.values.coating import State
from planner.values.moment import moment_of, zone_named
from planner.values.plan import BenchKind


def quick(name: str):
    """Return a coating that takes the next coat after a few minutes."""
    return coating(name, **dict.fromkeys(("dry_to_recoat", "dry_to_handle"), 4), tack_free=3)


def test_what_opens_when_the_cup_may_stand_no_longer() -> None:
    of = book(spray("first", "hull/deck"), spray("second", "hull/deck"))
    made = plan_book(of, NOW)
    first, second = made.placements
    opens = ready(of, "sand", State.DRY_TO_RECOAT, first.end)
    assert opens - first.end > of.gear.airbrushes[0].idle_limit_minutes
    assert second.start == opens
    (again,) = filled_again(of, made).items()
    filled = [one for one in made.bench if one.kind is BenchKind.LOAD]
    assert again[0] == ("fine", filled[1].interval.start)
    at = moment_of(opens, zone_named("UTC")).strftime("%H:%M")
    assert "20 min" in again[1]
    assert again[1].endswith(f"second of cart opens at {at}")


def test_what_waits_for_a_drying_place() -> None:
    # The warm box takes one unit, until its film is dry to handle: longer than a cup may stand.
    of = book(
        spray("first", "hull/deck", dries_in="box"), spray("second", "tracks/links", dries_in="box")
    )
    made = plan_book(of, NOW)
    first, second = made.placements
    free = ready(of, "sand", State.DRY_TO_HANDLE, first.end)
    assert free - first.end > of.gear.airbrushes[0].idle_limit_minutes
    assert second.start == free
    (why,) = filled_again(of, made).values()
    at = moment_of(free, zone_named("UTC")).strftime("%H:%M")
    assert why.endswith(f"no drying place is free for cart before {at}")


def test_another_colour_that_lies_between() -> None:
    of = book(
        spray("one", "hull/deck", coat="quick"),
        spray("two", "hull/deck", coat="other"),
        spray("three", "hull/deck", coat="quick"),
        coatings=(quick("quick"), quick("other")),
    )
    made = plan_book(of, NOW)
    (again,) = filled_again(of, made).values()
    assert "two of cart goes on before it" in again


def test_nothing_is_said_where_nothing_forces_it() -> None:
    of = book(
        spray("one", "hull/deck"),
        spray("two", "tracks/links", coat="green"),
        spray("three", "wheels/rim"),
    )
    twice = plan(
        of,
        *(sprayed("one", "18:03-18:13"), sprayed("two", "18:19-18:29")),
        sprayed("three", "18:35-18:45"),
        bench=[
            *(load("18:00-18:03"), change("18:13-18:19", "green")),
            *(change("18:29-18:35", "sand"), clean("18:45-18:51")),
        ],
    )
    assert filled_again(of, twice) == {}


def test_a_colour_of_two_evenings_is_no_second_filling() -> None:
    of = book(
        spray("first", "hull/deck", coat="lasting"),
        spray("second", "hull/deck", coat="lasting"),
        coatings=(coating("lasting", dry_to_recoat=900),),
    )
    assert filled_again(of, plan_book(of, NOW)) == {}
