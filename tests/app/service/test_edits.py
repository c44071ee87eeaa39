"""Edits: each changes what it names and nothing else, or is refused in one line."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime

import pytest
from small_book import NOW, PROJECT, ZONE, at, small_book

from app.service import edits
from planner.bench import BenchCalendar
from planner.values.bench_time import Extra, Recurring
from planner.values.book import Book
from planner.values.moment import Interval
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Reading


def local(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=ZONE)


def stretches(book: Book, start: str, end: str) -> list[Interval]:
    calendar = BenchCalendar(book.bench_time)
    return [stretch.interval for stretch in calendar.stretches(at(start), at(end))]


def test_air_is_set_for_the_whole_day() -> None:
    book = small_book()
    noon = AirPoint(at="12:00", temperature_c=26, humidity_pct=40)
    bench = book.room.locations[0]
    varied = replace(bench, workdays=(*bench.workdays, noon), weekends=(noon,))
    edit = edits.set_air(replace(book, room=replace(book.room, locations=(varied,))), "", 14, 65)
    (point,) = edit.book.room.location("bench").workdays
    assert (point.temperature_c, point.humidity_pct) == (14, 65)
    assert edit.book.room.location("bench").weekends == ()
    assert edit.name == "air of bench: 14 °C, 65 %"
    assert replace(edit.book, room=book.room) == book


@pytest.mark.parametrize(("temperature", "humidity"), [(99, 50), (20, 140), (float("nan"), 50)])
def test_air_that_no_room_has_is_refused(temperature: float, humidity: float) -> None:
    with pytest.raises(Refused):
        edits.set_air(small_book(), "", temperature, humidity)


def test_a_reading_is_added() -> None:
    reading = Reading(at=local("2031-03-06 19:00"), temperature_c=18, humidity_pct=60)
    assert edits.add_reading(small_book(), reading).book.room.readings == (reading,)


def test_a_date_is_skipped_and_taken_back() -> None:
    away = edits.skip_date(small_book(), date(2031, 3, 6))
    assert stretches(away.book, "2031-03-06 00:00", "2031-03-07 00:00") == []
    assert edits.skip_date(away.book, date(2031, 3, 6)).book == away.book
    assert edits.unskip_date(away.book, date(2031, 3, 6)).book == small_book()


def test_a_stretch_is_added_and_taken_away() -> None:
    start, end = local("2031-03-08 09:00"), local("2031-03-08 10:00")
    added = edits.add_stretch(small_book(), start, end)
    assert stretches(added.book, "2031-03-08 00:00", "2031-03-09 00:00") == [
        Interval(at("2031-03-08 09:00"), at("2031-03-08 10:00"))
    ]
    extra = Extra(start=start, end=end)
    assert edits.remove_stretch(added.book, extra).book == small_book()


def test_a_stretch_that_runs_backwards_is_refused() -> None:
    with pytest.raises(Refused, match="end"):
        edits.add_stretch(small_book(), local("2031-03-08 10:00"), local("2031-03-08 09:00"))


# --- only so many minutes from now ------------------------------------------------------------


def test_an_evening_is_cut_short_from_now() -> None:
    edit = edits.only_minutes(small_book(), NOW + 30, 40)
    calendar = BenchCalendar(edit.book.bench_time)
    stretch = calendar.stretch_at(NOW + 30)
    assert stretch is not None
    assert stretch.interval.end == NOW + 70
    following = calendar.next_stretch(NOW + 70)
    assert following is not None
    assert following.interval == Interval(at("2031-03-13 19:30"), at("2031-03-13 21:30"))


def test_outside_bench_time_a_stretch_is_made() -> None:
    edit = edits.only_minutes(small_book(), at("2031-03-05 08:00"), 15)
    assert stretches(edit.book, "2031-03-05 00:00", "2031-03-07 00:00") == [
        Interval(at("2031-03-05 08:00"), at("2031-03-05 08:15")),
        Interval(NOW, NOW + 120),
    ]


def test_an_evening_may_be_made_longer() -> None:
    edit = edits.only_minutes(small_book(), NOW + 60, 120)
    calendar = BenchCalendar(edit.book.bench_time)
    assert calendar.stretch_at(NOW + 179) is not None
    assert calendar.stretch_at(NOW + 180) is None


def test_other_stretches_of_the_day_stay() -> None:
    book = small_book()
    morning = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 1), start="07:00", end="07:10")
    book = edits.set_stretches(book, (*book.bench_time.stretches, morning)).book
    edit = edits.only_minutes(book, NOW, 20)
    assert stretches(edit.book, "2031-03-06 00:00", "2031-03-07 12:00") == [
        Interval(at("2031-03-06 07:00"), at("2031-03-06 07:10")),
        Interval(NOW, NOW + 20),
        Interval(at("2031-03-07 07:00"), at("2031-03-07 07:10")),
    ]


def test_a_stretch_past_midnight_is_cut_as_well() -> None:
    late = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 1), start="23:00", end="01:00")
    book = edits.set_stretches(small_book(), (late,)).book
    midnight = at("2031-03-07 00:00")
    edit = edits.only_minutes(book, midnight, 10)
    calendar = BenchCalendar(edit.book.bench_time)
    assert calendar.stretch_at(midnight + 9) is not None
    assert calendar.stretch_at(midnight + 10) is None
    assert calendar.stretch_at(at("2031-03-07 23:30")) is not None


@pytest.mark.parametrize("minutes", [0, -1, 1441])
def test_minutes_out_of_reason_are_refused(minutes: int) -> None:
    with pytest.raises(Refused, match="minutes"):
        edits.only_minutes(small_book(), NOW, minutes)


# --- projects -------------------------------------------------------------------------------


def test_projects_are_dated_weighed_and_set_aside() -> None:
    book = small_book()
    assert edits.set_target(book, PROJECT, None).book.project(PROJECT).target is None
    assert edits.set_weight(book, PROJECT, 7).book.project(PROJECT).weight == 7
    aside = edits.activate(book, PROJECT, False).book
    assert not aside.project(PROJECT).active
    assert edits.activate(aside, PROJECT, True).book == book
    assert edits.remove_project(book, PROJECT).book.projects == ()


def test_an_unknown_project_is_refused() -> None:
    with pytest.raises(Refused, match='did you mean "yard"'):
        edits.set_target(small_book(), "yrad", None)
    with pytest.raises(Refused, match="no project"):
        edits.remove_project(small_book(), "barn")
