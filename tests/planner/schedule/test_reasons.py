"""Why a piece of work stands where it stands, where a person would ask.

The bench is the one of ``judge_cases.making``: 18:00 to 22:00, two people from day 5 on;
every film here is dry to handle 30 minutes after it was laid, at nominal values.
"""

from __future__ import annotations

from dataclasses import replace

from judge_cases.making import AFTER_AN_HOUR, NOW, at, book, coating, key, paint, work

from planner.schedule.greedy import plan_book
from planner.schedule.reason_wording import sentence
from planner.values.book import Book
from planner.values.coating import Mark, Window
from planner.values.moment import zone_named
from planner.values.plan import Cause, Placement, Reason
from planner.values.step import Stage


def placed(of: Book, step: str) -> Placement:
    found = plan_book(of, NOW).placement(key(step))
    assert found is not None
    return found


def why(of: Book, step: str) -> Reason:
    return placed(of, step).reason


def washed(before_minutes: int) -> Book:
    """Return a book in which an oil wash (40 min, wiped within the hour) comes after other work."""
    before = paint("before", "tracks/links", minutes=before_minutes)
    wash = paint("wash", "hull/deck", coat="oil", minutes=40, stage=Stage.OIL_WASH)
    wipe = work("wipe", Stage.WIPE, "hull/deck", minutes=15)
    return book(before, replace(wash, after=("before",)), wipe)


def test_a_wash_put_off_says_that_it_could_not_be_wiped() -> None:
    # From 21:10 the wash ends 21:50; a quarter of an hour later the evening is over.
    reason = why(washed(190), "wash")
    assert reason == Reason(Cause.CLOSING, at("1/18:00"), str(key("wipe")))
    words = str(sentence(reason, zone_named("UTC")))
    assert words == "waits until Tue 18:00 so that cart/wipe can follow in time"


def test_a_wash_that_has_no_room_itself_says_so() -> None:
    # From 21:30 it would not end by 22:00, whatever follows.
    assert why(washed(210), "wash").cause is Cause.BENCH_TIME


def test_what_needs_two_says_that_it_waits_for_two() -> None:
    reason = why(book(paint("lift", "hull/deck", helper=True)), "lift")
    assert reason == Reason(Cause.HELPER, at("5/18:00"))


def test_a_drying_place_is_named_though_its_unit_is_painted_again_later() -> None:
    # The warm box takes one unit.  The deck gets its second coat when the links are dry,
    # so the last coat of the hull is not what the links waited for.
    of = book(
        paint("one", "hull/deck", dries_in="box"),
        paint("two", "tracks/links", dries_in="box"),
        paint("three", "hull/deck", dries_in="box", after=("two",)),
    )
    one, two = placed(of, "one"), placed(of, "two")
    assert two.reason == Reason(Cause.DRYING_PLACE, two.start, "box")
    assert one.end + 30 <= two.start < one.end + 60  # late band of 30 minutes


def test_where_places_are_free_none_is_named() -> None:
    # The links wait for the minute at which the hull can be handled, by an order of their own;
    # the bench has nine more places.
    first = paint("one", "hull/deck")
    alone = replace(paint("two", "tracks/links"), after=("one",))
    assert why(book(first, alone), "two").cause is not Cause.DRYING_PLACE


def test_a_coat_is_put_off_so_that_the_next_one_meets_its_window() -> None:
    # Closed again after two hours: the next coat must come within the same evening.
    shut = coating("hourly", recoat=(Window(opens=Mark(minutes=60), closes=Mark(minutes=120)),))
    assert shut.recoat != AFTER_AN_HOUR
    of = book(
        paint("before", "tracks/links", minutes=170),
        replace(paint("base", "hull/deck", coat="hourly"), after=("before",)),
        paint("camo", "hull/deck", coat="hourly", minutes=20),
        coatings=(shut,),
    )
    assert why(of, "base") == Reason(Cause.CLOSING, at("1/18:00"), str(key("camo")))
