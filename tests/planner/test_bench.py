"""Bench time: recurrences of RFC 5545, daylight saving, exceptions, merging."""

from __future__ import annotations

import time as clock
from datetime import UTC, date, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st

from planner.bench import DAY, HORIZON, BenchCalendar, Stretch
from planner.values.bench_time import BenchTime, Extra, Recurring
from planner.values.moment import Interval, minute_of
from planner.values.refusal import Refused

YEAR = 366 * DAY
NEW_YORK = "America/New_York"
WARSAW = "Europe/Warsaw"


def recurring(rule="FREQ=DAILY", since=date(2025, 1, 1), start="19:00", end="22:00", people=1):
    return Recurring(rule=rule, since=since, start=start, end=end, people=people)


def calendar(*rules, zone=WARSAW, **rest):
    return BenchCalendar(BenchTime(zone=zone, stretches=rules, **rest))


def utc(*parts):
    return minute_of(datetime(*parts, tzinfo=UTC))


def local(zone, *parts, fold=0):
    return minute_of(datetime(*parts, tzinfo=ZoneInfo(zone), fold=fold))


def spans(stretches: tuple[Stretch, ...]):
    return [(stretch.interval.start, stretch.interval.end, stretch.people) for stretch in stretches]


# RFC 5545 section 3.8.5.3, printed examples, America/New_York at 09:00.
RFC_5545 = [
    ("FREQ=DAILY;COUNT=10", "1997-09-02", [f"1997-09-{day:02}" for day in range(2, 12)]),
    (
        "FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH",
        "1997-09-02",
        [
            "1997-09-02",
            "1997-09-04",
            "1997-09-16",
            "1997-09-18",
            "1997-09-30",
            "1997-10-02",
            "1997-10-14",
            "1997-10-16",
        ],
    ),
    (
        "FREQ=MONTHLY;COUNT=10;BYDAY=1FR",
        "1997-09-05",
        [
            "1997-09-05",
            "1997-10-03",
            "1997-11-07",
            "1997-12-05",
            "1998-01-02",
            "1998-02-06",
            "1998-03-06",
            "1998-04-03",
            "1998-05-01",
            "1998-06-05",
        ],
    ),
    (
        "FREQ=MONTHLY;COUNT=6;BYDAY=-2MO",
        "1997-09-22",
        ["1997-09-22", "1997-10-20", "1997-11-17", "1997-12-22", "1998-01-19", "1998-02-16"],
    ),
    (
        "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=MO",
        "1997-08-05",
        ["1997-08-05", "1997-08-10", "1997-08-19", "1997-08-24"],
    ),
    (
        "FREQ=WEEKLY;INTERVAL=2;COUNT=4;BYDAY=TU,SU;WKST=SU",
        "1997-08-05",
        ["1997-08-05", "1997-08-17", "1997-08-19", "1997-08-31"],
    ),
    (
        "FREQ=MONTHLY;BYMONTHDAY=15,30;COUNT=5",
        "2007-01-15",
        ["2007-01-15", "2007-01-30", "2007-02-15", "2007-03-15", "2007-03-30"],
    ),
    (
        "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-1;COUNT=7",
        "1997-09-30",
        [
            "1997-09-30",
            "1997-10-31",
            "1997-11-28",
            "1997-12-31",
            "1998-01-30",
            "1998-02-27",
            "1998-03-31",
        ],
    ),
    (
        "FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13;COUNT=5",
        "1997-09-02",
        ["1998-02-13", "1998-03-13", "1998-11-13", "1999-08-13", "2000-10-13"],
    ),
]


@pytest.mark.parametrize(("rule", "since", "expected"), RFC_5545)
def test_the_recurrences_that_rfc_5545_prints(rule, since, expected):
    first = date.fromisoformat(since)
    times = calendar(recurring(rule, first, "09:00", "10:00"), zone=NEW_YORK)
    begin = local(NEW_YORK, first.year, first.month, first.day)
    found = times.stretches(begin - YEAR, begin + 4 * YEAR)
    assert [item.on.isoformat() for item in found] == expected
    for item in found:  # 09:00 on the wall on both sides of a change
        assert item.interval.start == local(NEW_YORK, item.on.year, item.on.month, item.on.day, 9)
        assert item.interval.minutes == 60


def test_evenings_keep_their_hour_on_the_wall_when_summer_begins():
    # Warsaw is UTC+1 until 2025-03-30 01:00 UTC and UTC+2 after it (EU rule).
    times = calendar(recurring("FREQ=WEEKLY;BYDAY=TU,TH;COUNT=4", date(2025, 3, 25), "19:30"))
    assert spans(times.stretches(utc(2025, 3, 1), utc(2025, 5, 1))) == [
        (utc(2025, 3, 25, 18, 30), utc(2025, 3, 25, 21), 1),
        (utc(2025, 3, 27, 18, 30), utc(2025, 3, 27, 21), 1),
        (utc(2025, 4, 1, 17, 30), utc(2025, 4, 1, 20), 1),
        (utc(2025, 4, 3, 17, 30), utc(2025, 4, 3, 20), 1),
    ]


@pytest.mark.parametrize(
    ("zone", "night", "minutes"),
    [
        # Wall-clock 20:00 to 20:00 is 23 h or 25 h (Python's zoneinfo, IANA data).
        (WARSAW, date(2025, 3, 29), 23 * 60),
        (WARSAW, date(2025, 10, 25), 25 * 60),
        (NEW_YORK, date(2025, 3, 8), 23 * 60),
        (NEW_YORK, date(2025, 11, 1), 25 * 60),
    ],
)
def test_a_stretch_over_the_change_has_its_true_length(zone, night, minutes):
    rule = recurring("FREQ=DAILY;COUNT=1", night, "20:00", "20:00")
    (found,) = calendar(rule, zone=zone).stretches(utc(2025, 1, 1), utc(2026, 1, 1))
    assert found.interval.minutes == minutes
    assert found.on == night


@pytest.mark.parametrize(
    ("zone", "night", "start", "end", "expected"),
    [
        # Spring: 02:30 is skipped and read with the offset before (RFC 5545 3.3.5).
        (WARSAW, (2025, 3, 30), "02:30", "04:00", ((2025, 3, 30, 1, 30), (2025, 3, 30, 2, 0))),
        (WARSAW, (2025, 3, 29), "22:00", "02:30", ((2025, 3, 29, 21, 0), (2025, 3, 30, 1, 30))),
        (NEW_YORK, (2025, 3, 9), "02:30", "04:00", ((2025, 3, 9, 7, 30), (2025, 3, 9, 8, 0))),
        # ... and would be over before it began: what there is of it is left.
        (WARSAW, (2025, 3, 30), "02:30", "03:15", ((2025, 3, 30, 1, 0), (2025, 3, 30, 1, 15))),
        (NEW_YORK, (2025, 3, 9), "02:30", "03:15", ((2025, 3, 9, 7, 0), (2025, 3, 9, 7, 15))),
        # Autumn: 02:30 comes twice, the first is meant, as start and as end.
        (WARSAW, (2025, 10, 26), "02:30", "04:00", ((2025, 10, 26, 0, 30), (2025, 10, 26, 3, 0))),
        (WARSAW, (2025, 10, 25), "22:00", "02:30", ((2025, 10, 25, 20, 0), (2025, 10, 26, 0, 30))),
        (WARSAW, (2025, 10, 26), "02:15", "02:45", ((2025, 10, 26, 0, 15), (2025, 10, 26, 0, 45))),
        (NEW_YORK, (2025, 11, 2), "01:30", "03:00", ((2025, 11, 2, 5, 30), (2025, 11, 2, 8, 0))),
    ],
)
def test_nights_of_the_change(zone, night, start, end, expected):
    rule = recurring("FREQ=DAILY;COUNT=1", date(*night), start, end)
    found = calendar(rule, zone=zone).stretches(utc(2025, 1, 1), utc(2026, 1, 1))
    assert spans(found) == [(utc(*expected[0]), utc(*expected[1]), 1)]


def test_a_stretch_that_lies_wholly_in_the_skipped_hour_is_not_there():
    for start in ("02:00", "02:30"):  # the whole hour, and a part of it
        rule = recurring("FREQ=DAILY;COUNT=2", date(2025, 3, 29), start, "03:00")
        found = calendar(rule).stretches(utc(2025, 1, 1), utc(2026, 1, 1))
        assert [item.on for item in found] == [date(2025, 3, 29)]


def test_a_leap_day_has_its_evening():
    rule = recurring("FREQ=MONTHLY;BYMONTHDAY=29", date(2028, 1, 29), "19:00", "21:00")
    found = calendar(rule, zone="UTC").stretches(utc(2028, 1, 1), utc(2029, 3, 1))
    assert [(item.on.month, item.on.day) for item in found][:3] == [(1, 29), (2, 29), (3, 29)]
    assert date(2029, 2, 28) not in {item.on for item in found}


def test_an_end_at_or_before_the_start_lies_on_the_next_day():
    rule = recurring("FREQ=DAILY;COUNT=1", date(2025, 6, 10), "22:00", "01:00")
    (found,) = calendar(rule, zone="UTC").stretches(utc(2025, 6, 1), utc(2025, 7, 1))
    assert found.interval == Interval(utc(2025, 6, 10, 22), utc(2025, 6, 11, 1))
    assert found.on == date(2025, 6, 10)


def test_skipped_dates_and_extras():
    extra = Extra(
        start=datetime(2025, 6, 12, 9, 0, tzinfo=UTC), end=datetime(2025, 6, 12, 9, 10, tzinfo=UTC)
    )
    times = calendar(
        recurring("FREQ=DAILY;COUNT=3", date(2025, 6, 10)),
        zone="UTC",
        skipped=(date(2025, 6, 11), date(2025, 6, 12)),
        extra=(extra,),
    )
    assert spans(times.stretches(utc(2025, 6, 1), utc(2025, 7, 1))) == [
        (utc(2025, 6, 10, 19), utc(2025, 6, 10, 22), 1),
        (utc(2025, 6, 12, 9), utc(2025, 6, 12, 9, 10), 1),  # an extra is never skipped
    ]


def test_a_skipped_date_leaves_quiet_hours_alone():
    quiet = recurring(start="22:00", end="07:00")
    times = calendar(zone="UTC", quiet=(quiet,), skipped=(date(2025, 6, 11),))
    assert times.quiet(utc(2025, 6, 11, 23), utc(2025, 6, 11, 23, 5)) == (
        Interval(utc(2025, 6, 11, 22), utc(2025, 6, 12, 7)),
    )


def test_touching_and_overlapping_stretches_become_one():
    once = "FREQ=DAILY;COUNT=1"
    times = calendar(
        recurring(once, date(2025, 6, 10), "18:00", "19:00"),
        recurring(once, date(2025, 6, 10), "19:00", "21:00"),
        recurring(once, date(2025, 6, 10), "20:00", "22:00"),
        recurring(once, date(2025, 6, 10), "22:01", "23:00"),
        zone="UTC",
    )
    assert spans(times.stretches(utc(2025, 6, 1), utc(2025, 7, 1))) == [
        (utc(2025, 6, 10, 18), utc(2025, 6, 10, 22), 1),
        (utc(2025, 6, 10, 22, 1), utc(2025, 6, 10, 23), 1),
    ]


def test_a_second_person_cuts_the_evening():
    once = "FREQ=DAILY;COUNT=1"
    times = calendar(
        recurring(once, date(2025, 6, 10), "18:00", "23:00"),
        recurring(once, date(2025, 6, 10), "20:00", "22:00", people=2),
        zone="UTC",
    )
    assert spans(times.stretches(utc(2025, 6, 1), utc(2025, 7, 1))) == [
        (utc(2025, 6, 10, 18), utc(2025, 6, 10, 20), 1),
        (utc(2025, 6, 10, 20), utc(2025, 6, 10, 22), 2),
        (utc(2025, 6, 10, 22), utc(2025, 6, 10, 23), 1),
    ]


def test_ranges_and_minutes_are_half_open():
    rule = recurring("FREQ=DAILY;COUNT=2", date(2025, 6, 10))
    times = calendar(rule, zone="UTC")
    start, end = utc(2025, 6, 10, 19), utc(2025, 6, 10, 22)
    assert times.stretches(end, end + 60) == ()
    assert times.stretches(start - 60, start) == ()
    assert len(times.stretches(end - 1, end)) == 1
    assert times.stretch_at(start - 1) is None
    assert times.stretch_at(end) is None
    found = times.stretch_at(start)
    assert found is not None
    assert found.interval == Interval(start, end)
    assert times.stretch_at(end - 1) == times.next_stretch(end - 1) == found
    following = times.next_stretch(end)
    assert following is not None
    assert following.on == date(2025, 6, 11)
    assert times.next_stretch(end + DAY) is None


def test_nothing_is_looked_for_beyond_three_years():
    times = calendar(recurring("FREQ=DAILY;COUNT=1", date(2030, 1, 1), "09:00", "10:00"))
    start = local(WARSAW, 2030, 1, 1, 9)
    assert times.stretch_at(start) is not None  # expanded already, and yet out of reach
    assert times.next_stretch(start - HORIZON) is None
    assert times.next_stretch(start - HORIZON + 1) == times.stretch_at(start)


def test_without_bench_time_there_is_none():
    times = calendar()
    assert times.stretches(0, YEAR) == ()
    assert times.next_stretch(utc(2025, 1, 1)) is None
    assert times.quiet(0, YEAR) == ()


def test_daylight_is_unlimited_only_where_no_hours_are_given():
    assert calendar().daylight(0, YEAR) is None
    times = calendar(
        zone="UTC", daylight=(recurring("FREQ=DAILY;COUNT=1", date(2025, 6, 10), "08:00", "18:00"),)
    )
    assert times.daylight(utc(2025, 6, 10, 9), utc(2025, 6, 10, 10)) == (
        Interval(utc(2025, 6, 10, 8), utc(2025, 6, 10, 18)),
    )
    assert times.daylight(utc(2025, 6, 10, 18), utc(2025, 6, 10, 19)) == ()


def test_the_day_ends_at_local_midnight():
    assert calendar().day_end(date(2025, 3, 30)) == utc(2025, 3, 30, 22)
    assert calendar(zone=NEW_YORK).day_end(date(2025, 11, 2)) == utc(2025, 11, 3, 5)
    # Chile skips from 24:00 to 01:00; the day ends where the change begins.
    assert calendar(zone="America/Santiago").day_end(date(2025, 9, 6)) == utc(2025, 9, 7, 4)


def test_bench_time_without_end_is_cut_into_weeks_whatever_was_asked_before():
    always = recurring("FREQ=DAILY", date(2020, 1, 1), "00:00", "00:00")
    asked = calendar(always)
    asked.stretches(utc(2025, 6, 1), utc(2026, 8, 1))
    found = asked.stretches(utc(2025, 6, 1), utc(2026, 6, 1))
    assert found == calendar(always).stretches(utc(2025, 6, 1), utc(2026, 6, 1))
    assert all(item.on.weekday() == 0 for item in found)
    assert all(a.interval.end == b.interval.start for a, b in pairwise(found))
    assert {item.interval.minutes for item in found} == {7 * DAY, 7 * DAY - 60, 7 * DAY + 60}


ZONES = st.sampled_from([WARSAW, NEW_YORK, "UTC", "Australia/Lord_Howe"])
CLOCKS = st.builds("{:02}:{:02}".format, st.integers(0, 23), st.sampled_from([0, 15, 30, 59]))
RULES = st.builds(
    Recurring,
    rule=st.sampled_from(
        ["FREQ=DAILY", "FREQ=WEEKLY;BYDAY=SA,SU", "FREQ=DAILY;INTERVAL=3", "FREQ=MONTHLY"]
    ),
    since=st.dates(date(2024, 12, 1), date(2025, 3, 1)),
    start=CLOCKS,
    end=CLOCKS,
    people=st.integers(1, 2),
)


@drawn(40)
@given(
    ZONES,
    st.lists(RULES, min_size=1, max_size=4),
    st.lists(st.integers(0, 400 * DAY), min_size=1, max_size=6),
)
def test_every_minute_is_what_the_wall_clock_says(zone, rules, offsets):
    """Checked minute by minute against the rules' dates, away from changed nights."""
    times = calendar(*rules, zone=zone)
    begin = utc(2025, 1, 1)
    for offset in offsets:
        minute = begin + offset
        wall = datetime.fromtimestamp(minute * 60, ZoneInfo(zone))
        around = [wall + timedelta(days=days) for days in (-2, 2)]
        if around[0].utcoffset() != around[1].utcoffset():
            continue
        people = max((_people(rule, wall.replace(tzinfo=None)) for rule in rules), default=0)
        found = times.stretch_at(minute)
        assert (found.people if found else 0) == people
    every = times.stretches(begin, begin + 400 * DAY)
    assert every == calendar(*rules, zone=zone).stretches(begin, begin + 400 * DAY)
    for one, other in pairwise(every):
        assert one.interval.end <= other.interval.start
        if one.interval.end == other.interval.start and one.people == other.people:
            assert other.on.weekday() == 0  # only where bench time without end is cut


def _people(rule: Recurring, wall: datetime) -> int:
    dates = set(_until(rule, wall.date()))
    for day in (wall.date(), wall.date() - timedelta(days=1)):
        start = datetime.combine(day, datetime.strptime(rule.start, "%H:%M").time())  # noqa: DTZ007
        end = datetime.combine(day, datetime.strptime(rule.end, "%H:%M").time())  # noqa: DTZ007
        if end <= start:
            end += timedelta(days=1)
        if day in dates and start <= wall < end:
            return rule.people
    return 0


def _until(rule: Recurring, last: date):
    for day in rule.dates():
        if day > last:
            return
        yield day


@pytest.mark.parametrize(
    "rule",
    [
        "FREQ=DAILY;INTERVAL=0",
        "FREQ=DAILY;INTERVAL=-1",
        "FREQ=DAILY;COUNT=0",
        "FREQ=DAILY;COUNT=2;UNTIL=20260101",
        "FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30",
        "FREQ=DAILY RRULE:FREQ=WEEKLY",
    ],
)
def test_rules_that_would_never_name_a_day_or_never_end_are_refused(rule):
    with pytest.raises(Refused, match=r"^rule: "):
        recurring(rule)


def test_asking_often_is_cheap():
    rules = [recurring("FREQ=WEEKLY;BYDAY=TU,TH", date(2020, 1, 1)), recurring("FREQ=DAILY")]
    times = calendar(*rules)
    begin = utc(2025, 1, 1)
    times.stretches(begin, begin + YEAR)
    started = clock.perf_counter()
    for minute in range(begin, begin + YEAR, 60):
        times.next_stretch(minute)
    assert clock.perf_counter() - started < 1.0  # about 9000 questions
