"""Moments as people write them, and the demonstration projects."""

from __future__ import annotations

import json
import time
from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from small_book import NOW, ZONE, at, small_book

from app.service import clock, demo_texts, demos, edits, logbook
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


def texts_at(document: object, at: str = "") -> Iterator[tuple[str, str]]:
    """Yield each text of a document with the names of the fields that lead to it."""
    if isinstance(document, dict):
        for name, value in document.items():
            yield from texts_at(value, f"{at}.{name}" if at else name)
    elif isinstance(document, list):
        for each in document:
            yield from texts_at(each, at)
    elif isinstance(document, str):
        yield at, document


# What is written in a demonstration and is no text: words of the program, times and colours.
NO_TEXT = {
    *("family", "swatch", "state", "hiding", "finish", "preparation", "at", "zone", "rule"),
    *("since", "start", "end", "skipped", "quiet", "side", "stage", "tool", "role", "closing"),
    *("scale", "kind", "target"),
}


@pytest.mark.parametrize("name", demos.names())
def test_every_text_of_a_demo_has_its_german(name: str) -> None:
    known = demo_texts.texts("de")
    kinds = set()
    for path, text in texts_at(json.loads(demos.data(name))):
        if path.rsplit(".", 1)[-1] in NO_TEXT:
            continue
        kinds.add(path)
        kind = demo_texts.KINDS[path]  # a field without a kind is one that nobody thought of
        if kind == demo_texts.PATH:
            part, _, place = text.partition("/")
            assert part in known["part"]
            assert not place or place in known["place"]
        else:
            assert text in known[kind], (path, text)
    assert len(kinds) > 10
    assert demos.title(name, "de") != demos.title(name)


@pytest.mark.parametrize("name", demos.names())
def test_a_demo_in_german_is_the_same_work(name: str) -> None:
    """The same parts, places, steps and minutes; and nothing of it is English any more."""
    english, german = demos.read(name).book, demos.read(name, "de").book
    assert demos.first_evening(german) == demos.first_evening(english)
    for one, other in zip(english.projects, german.projects, strict=True):
        for model, said in zip(one.models, other.models, strict=True):
            assert [part.holder is None for part in model.parts] == [
                part.holder is None for part in said.parts
            ]
            assert [len(part.places) for part in model.parts] == [
                len(part.places) for part in said.parts
            ]
            assert [
                (step.stage, step.tool, step.minutes, len(step.gates)) for step in model.steps
            ] == [(step.stage, step.tool, step.minutes, len(step.gates)) for step in said.steps]
    same = {"Airbrush", "airbrush", "Chassis", "Deck", "deck", "sepia", "Sepia"}
    english_texts = {
        text for path, text in texts_at(json.loads(demos.data(name))) if path in demo_texts.KINDS
    }
    german_texts = {
        text
        for path, text in texts_at(json.loads(demos.data(name, "de")))
        if path in demo_texts.KINDS
    }
    assert german_texts & english_texts <= same


def test_a_language_that_is_not_written_is_english() -> None:
    assert demos.data(demos.FIRST, "eo") == demos.data(demos.FIRST)
