"""Moments as people write them, and the demonstration projects."""

from __future__ import annotations

import time
from datetime import UTC, date, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from small_book import NOW, ZONE, at, small_book

from app.service import clock, demos, edits, logbook
from planner.bench import BenchCalendar
from planner.values.moment import minute_of
from planner.values.project import Logged
from planner.values.refusal import Refused


@pytest.mark.parametrize(
    "text",
    [
        "2031-03-06T19:30+01:00",
        "2031-03-06T19:30:00+01:00",
        "2031-03-06T18:30Z",
        "2031-03-06T19:30",
        "2031-03-06 19:30",
    ],
)
def test_a_moment_is_read_with_or_without_its_offset(text: str) -> None:
    assert clock.read_moment(text, ZONE) == NOW


def test_seconds_count_as_the_next_minute() -> None:
    assert clock.read_moment("2031-03-06T19:30:01", ZONE) == NOW + 1


def test_a_local_time_is_that_of_the_zone() -> None:
    there = clock.read_moment("2031-07-01T12:00", ZoneInfo("America/New_York"))
    assert there == minute_of(datetime(2031, 7, 1, 16, 0, tzinfo=UTC))  # EDT is UTC-4


@pytest.mark.parametrize(
    "text",
    [
        "",
        "tonight",
        "19:30",
        "2031-03-06",
        "2031-13-06T19:30",
        "2031-03-06T25:00",
        "0001-01-01T00:00",
    ],
)
def test_what_is_no_moment_is_refused_in_one_line(text: str) -> None:
    with pytest.raises(Refused) as refused:
        clock.read_moment(text, ZONE)
    assert refused.value.place == "--now"
    assert "\n" not in str(refused.value)


def test_an_hour_that_clocks_skip_is_refused_with_the_one_meant() -> None:
    """European Union: clocks go from 02:00 to 03:00 on the last Sunday of March (2000/84/EC)."""
    with pytest.raises(Refused) as refused:
        clock.read_moment("2025-03-30T02:30", ZoneInfo("Europe/Warsaw"))
    assert refused.value.mend.endswith("write 2025-03-30T03:30+02:00")
    said = clock.read_moment("2025-03-30T02:30+01:00", ZoneInfo("Europe/Warsaw"))
    assert said == minute_of(datetime(2025, 3, 30, 1, 30, tzinfo=UTC))


def test_an_hour_that_comes_twice_is_its_first() -> None:
    """RFC 5545, 3.3.5: a local time that occurs twice refers to the first occurrence."""
    read = clock.read_moment("2025-10-26T02:30", ZoneInfo("Europe/Warsaw"))
    assert read == minute_of(datetime(2025, 10, 26, 0, 30, tzinfo=UTC))


def test_the_minute_is_the_one_that_runs(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(time, "time", lambda: 119.9)
    assert clock.current_minute() == 1


def test_the_zone_of_the_machine(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("TZ", "Europe/Warsaw")
    assert clock.local_zone() == "Europe/Warsaw"
    monkeypatch.setenv("TZ", ":Australia/Lord_Howe")
    assert clock.local_zone() == "Australia/Lord_Howe"
    monkeypatch.setenv("TZ", "no such zone")
    monkeypatch.setattr(clock, "LOCALTIME", tmp_path / "missing")
    assert clock.local_zone() == "UTC"


def test_a_demo_is_found_by_its_name_in_any_spelling() -> None:
    assert demos.FIRST in demos.names()
    for name in (demos.FIRST, f"{demos.FIRST}.json", demos.FIRST.replace("_", "-")):
        assert demos.read(name).book.projects


def test_an_unknown_demo_is_refused_with_those_there_are() -> None:
    with pytest.raises(Refused, match=demos.FIRST):
        demos.read("lighthouse")


@pytest.mark.parametrize("name", demos.names())
def test_a_demo_begins_on_its_first_evening(name: str) -> None:
    book = demos.read(name).book
    begins = demos.first_evening(book)
    stretch = BenchCalendar(book.bench_time).stretch_at(begins)
    assert stretch is not None
    assert stretch.interval.start == begins


def test_a_story_goes_on_after_its_last_fact() -> None:
    assert demos.first_evening(small_book()) == NOW
    start = datetime(2031, 3, 6, 19, 33, tzinfo=ZONE)
    end = datetime(2031, 3, 6, 19, 45, tzinfo=ZONE)
    fact = Logged(model="cart", step="prime", start=start, end=end)
    book = logbook.write(small_book(), "yard", fact).book
    assert demos.first_evening(book) == NOW + 15
    book = edits.skip_date(book, date(2031, 3, 6)).book
    assert demos.first_evening(book) == at("2031-03-13 19:30")
