"""The air of a location through its days, also when the clocks change."""

from __future__ import annotations

from datetime import date, datetime
from zoneinfo import ZoneInfo

import pytest
from cure_rooms import WARSAW, at, points, room

from planner.air import Air, air_course, readings_of
from planner.values.refusal import Refused
from planner.values.room import Location, Reading, Room

PROFILE = points(("06:00", 16, 60), ("18:00", 22, 48))


def course(profile=PROFILE, weekends=(), readings=(), zone=WARSAW):
    where = Location(name="bench", drying_places=1, workdays=profile, weekends=weekends)
    return air_course(where, readings, zone)


def test_linear_between_points_and_across_midnight():
    air = course()
    assert air.at(at("2025-01-15 06:00")) == Air(16, 60)
    assert air.at(at("2025-01-15 12:00")) == Air(19, 54)
    assert air.at(at("2025-01-15 18:00")) == Air(22, 48)
    # 18:00 to 06:00 is twelve hours down; midnight is half way
    assert air.at(at("2025-01-16 00:00")) == Air(19, 54)
    assert air.at(at("2025-01-16 03:00")) == Air(17.5, 57)
    assert air.at(at("2025-01-15 06:00") + 0.5).temperature_c == pytest.approx(16 + 3 / 360 / 2)


def test_one_point_is_constant_air():
    air = course(points(("09:00", 20.3, 51.7)))
    assert {air.at(minute) for minute in range(0, 3000, 7)} == {Air(20.3, 51.7)}


def test_weekends_have_their_own_air_joined_at_midnight():
    air = course(weekends=points(("12:00", 10, 40)))
    assert air.at(at("2025-01-18 12:00")) == Air(10, 40)  # a Saturday
    # Friday 18:00 at 22 °C runs down to Saturday noon at 10 °C, eighteen hours
    assert air.at(at("2025-01-18 00:00")).temperature_c == pytest.approx(18)
    assert air.at(at("2025-01-17 23:59")).temperature_c == pytest.approx(18, abs=0.02)
    assert air.at(at("2025-01-20 06:00")) == Air(16, 60)  # Monday


def test_reading_shifts_the_rest_of_its_local_day():
    read = Reading(at=datetime(2025, 1, 15, 12, tzinfo=WARSAW), temperature_c=17, humidity_pct=60)
    air = course(readings=(read,))
    assert air.at(at("2025-01-15 11:59")).temperature_c == pytest.approx(19, abs=0.02)
    assert air.at(at("2025-01-15 12:00")) == Air(17, 60)
    assert air.at(at("2025-01-15 18:00")) == Air(20, 54)
    assert air.at(at("2025-01-16 12:00")) == Air(19, 54)


def test_a_later_reading_of_the_day_replaces_the_shift():
    def read(hour, warmth):
        moment = datetime(2025, 1, 15, hour, tzinfo=WARSAW)
        return Reading(at=moment, temperature_c=warmth, humidity_pct=54)

    air = course(readings=(read(18, 22), read(12, 17)))
    assert air.at(at("2025-01-15 12:00")).temperature_c == 17
    assert air.at(at("2025-01-15 18:00")).temperature_c == 22
    assert air.at(at("2025-01-15 21:00")).temperature_c == pytest.approx(20.5)


def test_shifted_humidity_stays_possible():
    read = Reading(at=datetime(2025, 1, 15, 18, tzinfo=WARSAW), temperature_c=22, humidity_pct=98)
    assert course(readings=(read,)).at(at("2025-01-15 23:59")).humidity_pct == 100


def test_readings_without_location_are_the_first_locations():
    def read(where):
        moment = datetime(2025, 1, 15, 12, tzinfo=WARSAW)
        return Reading(at=moment, temperature_c=20, humidity_pct=50, location=where)

    bench, box = (
        Location(name=name, drying_places=1, workdays=PROFILE) for name in ("bench", "box")
    )
    nameless, named = read(""), read("box")
    two = Room(locations=(bench, box), readings=(nameless, named))
    assert readings_of(two, bench) == (nameless,)
    assert readings_of(two, box) == (named,)


@pytest.mark.parametrize(
    ("zone", "day", "minutes"),
    [  # Python zoneinfo, IANA data: the clocks change on these days
        ("Europe/Warsaw", date(2025, 3, 30), 1380),
        ("Europe/Warsaw", date(2025, 10, 26), 1500),
        ("America/New_York", date(2025, 3, 9), 1380),
        ("America/New_York", date(2025, 11, 2), 1500),
        ("America/Santiago", date(2024, 9, 8), 1380),  # midnight itself is skipped
        ("Australia/Lord_Howe", date(2025, 4, 6), 1470),  # by half an hour
        ("Pacific/Apia", date(2011, 12, 30), 0),  # a date that never was
        ("UTC", date(2025, 3, 30), 1440),
    ],
)
def test_length_of_days(zone, day, minutes):
    assert course(zone=ZoneInfo(zone)).day(day)[1].minutes == minutes


def test_air_follows_the_wall_clock_when_clocks_change():
    air = course()
    for day in ("2025-03-30", "2025-10-26"):
        assert air.at(at(f"{day} 12:00")) == Air(19, 54)
        assert air.at(at(f"{day} 01:00")).temperature_c == pytest.approx(18.5)
    # 02:00 to 03:00 happens twice in October: the same air twice, an hour apart
    twice = at("2025-10-26 02:30")
    assert air.at(twice) == air.at(twice + 60)
    # and not at all in March
    before = at("2025-03-30 01:59")
    assert air.at(before + 1).temperature_c == pytest.approx(17.5)


@pytest.mark.parametrize("zone", ["Europe/Warsaw", "America/Santiago", "Pacific/Apia"])
def test_samples_are_the_air_in_the_middle_of_each_minute(zone):
    where = ZoneInfo(zone)
    air = course(weekends=points(("10:00", 15, 50)), zone=where)
    days = [date(2025, 1, 13 + step) for step in range(7)]
    days += [date(2011, 12, 29), date(2011, 12, 31), date(2024, 9, 8), date(2025, 10, 26)]
    for day in days:
        start, shape = air.day(day)
        samples = air.samples(shape).airs
        assert len(samples) == shape.minutes
        for offset in range(0, shape.minutes, 61):
            assert samples[offset] == air.at(start + offset + 0.5)


def test_a_profile_with_a_hole_is_refused():
    with pytest.raises(Refused, match="hole"):
        course(profile=())
    with pytest.raises(Refused, match="order"):
        course(profile=points(("18:00", 20, 50), ("06:00", 16, 50)))
    for warmth, damp in ((20, 140), (-300, 50)):
        with pytest.raises(Refused, match="outside"):
            room(*points(("06:00", warmth, damp)))
