"""Edits of bench time: weekly hours of three kinds, spans of holidays, one more stretch."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st
from small_book import ZONE, at, small_book

from app.service import bench_time_edits as edits
from app.service.bench_time_edits import DayHours
from planner.bench import BenchCalendar
from planner.values.bench_time import Extra, Recurring
from planner.values.book import Book
from planner.values.refusal import Refused

NIGHTS = Recurring(rule="FREQ=WEEKLY;BYDAY=TH", since=date(2031, 3, 6), start="21:00", end="07:00")


def minutes_on(book: Book, day: str) -> int:
    calendar = BenchCalendar(book.bench_time)
    found = calendar.stretches(at(f"{day} 00:00"), at(f"{day} 23:59"))
    return sum(item.interval.minutes for item in found)


@pytest.mark.parametrize("hours", DayHours)
def test_recurring_hours_are_added_changed_and_removed(hours: DayHours) -> None:
    book = small_book()
    added = edits.add_rule(book, hours, NIGHTS).book
    assert edits.rules(added, hours)[-1] == NIGHTS
    later = replace(NIGHTS, start="22:00")
    changed = edits.change_rule(added, hours, NIGHTS, later).book
    assert edits.rules(changed, hours)[-1] == later
    assert edits.remove_rule(changed, hours, later).book == book
    others = [dayhour for dayhour in DayHours if dayhour is not hours]
    assert all(edits.rules(changed, other) == edits.rules(book, other) for other in others)


def test_hours_that_somebody_else_took_away_are_not_changed() -> None:
    with pytest.raises(Refused, match="not there any more"):
        edits.change_rule(small_book(), DayHours.QUIET, NIGHTS, NIGHTS)
    with pytest.raises(Refused, match="not there any more"):
        edits.remove_rule(small_book(), DayHours.BENCH, NIGHTS)


def test_a_rule_names_its_weekdays() -> None:
    assert edits.weekly_rule({5, 1}) == "FREQ=WEEKLY;BYDAY=TU,SA"  # RFC 5545, 3.3.10
    with pytest.raises(Refused, match="choose at least one"):
        edits.weekly_rule(())


@given(st.sets(st.integers(0, 6), min_size=1))
def test_weekdays_are_read_back_from_their_rule(days: set[int]) -> None:
    rule = replace(NIGHTS, rule=edits.weekly_rule(days))
    assert edits.weekly_days(rule) == days


@pytest.mark.parametrize(
    "rule", ["FREQ=DAILY", "FREQ=WEEKLY;INTERVAL=2;BYDAY=TU", "FREQ=MONTHLY;BYDAY=1SA"]
)
def test_other_rules_are_no_plain_weekdays(rule: str) -> None:
    assert edits.weekly_days(replace(NIGHTS, rule=rule)) is None


def test_a_fortnight_of_holidays_empties_its_evenings_and_no_other() -> None:
    away = edits.skip_dates(small_book(), date(2031, 3, 10), date(2031, 3, 23)).book
    assert len(away.bench_time.skipped) == 14
    # Thursdays from 19:30 to 21:30, so 120 min each.
    assert [minutes_on(away, f"2031-03-{day:02d}") for day in (6, 13, 20, 27)] == [120, 0, 0, 120]
    half = edits.unskip_dates(away, date(2031, 3, 17), date(2031, 3, 23)).book
    assert [minutes_on(half, f"2031-03-{day:02d}") for day in (13, 20)] == [0, 120]
    back = edits.unskip_dates(half, date(2031, 3, 1), date(2031, 3, 31)).book
    assert back == small_book()


@pytest.mark.parametrize(
    ("first", "last"),
    [(date(2031, 3, 10), date(2031, 3, 9)), (date(2031, 1, 1), date(2032, 1, 3))],
)
def test_spans_that_run_backwards_or_for_years_are_refused(first: date, last: date) -> None:
    with pytest.raises(Refused) as refused:
        edits.skip_dates(small_book(), first, last)
    assert refused.value.place == "last"


def test_days_in_a_row_are_one_span() -> None:
    days = [date(2031, 2, 28), date(2031, 3, 1), date(2031, 3, 3), date(2031, 2, 27)]
    assert edits.spans(days) == (
        (date(2031, 2, 27), date(2031, 3, 1)),
        (date(2031, 3, 3), date(2031, 3, 3)),
    )


@given(st.sets(st.dates(date(2031, 1, 1), date(2031, 3, 1))))
def test_spans_hold_exactly_their_days(days: set[date]) -> None:
    found = edits.spans(days)
    assert {
        date.fromordinal(one)
        for first, last in found
        for one in range(first.toordinal(), last.toordinal() + 1)
    } == days


def test_an_extra_stretch_takes_the_place_of_another() -> None:
    def extra(start: int, end: int) -> Extra:
        day = datetime(2031, 3, 8, tzinfo=ZONE)
        return Extra(start=day.replace(hour=start), end=day.replace(hour=end))

    one = edits.put_extra(small_book(), None, extra(10, 12)).book
    two = edits.put_extra(one, extra(10, 12), extra(9, 13)).book
    assert two.bench_time.extra == (extra(9, 13),)
    assert minutes_on(two, "2031-03-08") == 240
    assert edits.put_extra(two, None, extra(9, 13)).book == two
