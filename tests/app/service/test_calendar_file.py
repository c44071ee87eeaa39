"""The calendar file, read by another library: evenings, changes of the clocks, writing again."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest
import vobject
from dateutil.tz import tzical
from small_book import NOW, PROJECT, at, small_book

from app.service import planning
from app.service.calendar_file import Written, calendar_bytes
from app.service.calendar_zone import timezone_of
from planner.bench import BenchCalendar
from planner.values.bench_time import BenchTime, Extra, Recurring
from planner.values.book import Book
from planner.values.moment import minute_of, moment_of
from planner.values.project import Logged
from planner.values.refusal import Refused

ORIGIN = Path("yard.tackfree")


def written(book: Book, now: int = NOW, last: bytes = b"") -> Written:
    planned = planning.plan(book, now)
    return calendar_bytes(planned.book, planned.plan, now, ORIGIN, last)


def events(data: bytes) -> dict[str, Any]:
    """Return the events by UID, as the other library reads them.

    It keeps the first zone of a name that it ever read; each file shall speak for itself.
    """
    for name in [name for name in vars(vobject.icalendar)["__tzidMap"] if name != "UTC"]:
        del vars(vobject.icalendar)["__tzidMap"][name]
    read = vobject.readOne(data.decode())
    return {event.uid.value: event for event in getattr(read, "vevent_list", [])}


def spans(data: bytes) -> set[tuple[datetime, datetime]]:
    return {
        (event.dtstart.value.astimezone(UTC), event.dtend.value.astimezone(UTC))
        for event in events(data).values()
        if event.status.value != "CANCELLED"
    }


def instant(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


def skipping(book: Book, *days: date) -> Book:
    return replace(book, bench_time=replace(book.bench_time, skipped=days))


def titled(book: Book, title: str) -> Book:
    project = book.projects[0]
    model = project.models[0]
    steps = (replace(model.steps[0], title=title), *model.steps[1:])
    return replace(book, projects=(replace(project, models=(replace(model, steps=steps),)),))


def test_there_is_one_event_for_each_evening_that_the_plan_uses() -> None:
    book = small_book()
    plan = planning.plan(book, NOW).plan
    calendar = BenchCalendar(book.bench_time)
    used = [calendar.stretch_at(placement.start) for placement in plan.placements]
    used += [calendar.stretch_at(work.interval.start) for work in plan.bench]
    evenings = {
        (moment_of(use.interval.start, UTC), moment_of(use.interval.end, UTC))  # type: ignore[arg-type]
        for use in used
        if use is not None
    }
    assert len(evenings) >= 2
    assert spans(written(book).data) == evenings


def test_an_event_tells_the_run_sheet() -> None:
    first = min(events(written(small_book()).data).values(), key=lambda event: event.dtstart.value)
    told = first.description.value
    for piece in ("load fine brush with grey primer", "tub: [ ] bed [ ] sides", "Spray mist",
                  "Left to dry", "Thu 6 Mar 2031 19:30–21:30"):  # fmt: skip
        assert piece in told
    mixes = "".join(
        event.description.value for event in events(written(small_book()).data).values()
    )
    assert re.search(r"mix \d+\.\d ml: \d+ drops sand, \d+ drops water thinner", mixes)


def test_alarms_call_to_the_evening_and_before_a_window_closes() -> None:
    every = events(written(small_book()).data).values()
    (washing,) = [one for one in every if "oil wash" in one.summary.value]
    plan = planning.plan(small_book(), NOW).plan
    wash = next(placement for placement in plan.placements if placement.key.step == "wash")
    triggers = [alarm.trigger.value for alarm in washing.valarm_list]
    # The wash must be wiped back within 60 minutes of its start; a sixth of that ahead.
    closes = datetime.fromtimestamp(wash.start * 60, UTC) + timedelta(minutes=60)
    assert triggers == [timedelta(minutes=-15), closes - timedelta(minutes=10)]
    first = min(every, key=lambda one: one.dtstart.value)
    said = first.valarm_list[0].description.value
    assert said == "At the bench at 19:30: load fine brush with grey primer"
    assert "cart/wipe" in washing.valarm_list[1].description.value
    # RFC 5545, section 3.8.6.3: the type must be set to DATE-TIME for an absolute trigger.
    assert b"TRIGGER;VALUE=DATE-TIME:" in written(small_book()).data


def test_written_again_unchanged_it_stays_the_same_to_the_byte() -> None:
    once = written(small_book())
    again = written(small_book(), NOW, once.data)
    assert again.data == once.data
    assert (again.new, again.changed, again.cancelled) == (0, 0, 0)
    assert again.kept == once.new


def test_the_same_evenings_have_the_same_names_in_any_file() -> None:
    assert events(written(small_book()).data).keys() == events(written(small_book()).data).keys()
    planned = planning.plan(small_book(), NOW)
    other = calendar_bytes(planned.book, planned.plan, NOW, Path("other.tackfree"))
    assert not events(other.data).keys() & events(written(small_book()).data).keys()


def test_a_new_plan_keeps_the_names_and_counts_changes_up() -> None:
    once = written(small_book())
    later = written(titled(small_book(), "with care"), NOW + 5, once.data)
    before, after = events(once.data), events(later.data)
    assert after.keys() == before.keys()
    changed = [uid for uid in after if "with care" in after[uid].description.value]
    for uid, event in after.items():
        number = int(event.sequence.value)
        assert number == (1 if uid in changed else 0)
        # RFC 5545, section 3.8.7.2: without METHOD, DTSTAMP is when it was last revised.
        stamp = moment_of(NOW + 5 if uid in changed else NOW, ZoneInfo("UTC"))
        assert event.dtstamp.value == stamp
        assert event.last_modified.value == stamp
    assert changed
    third = written(titled(small_book(), "with more care"), NOW + 9, later.data)
    assert {int(events(third.data)[uid].sequence.value) for uid in changed} == {2}


def test_an_evening_that_is_used_no_longer_is_cancelled_and_may_come_back() -> None:
    once = written(small_book())
    away = date(2031, 3, 13)
    without = written(skipping(small_book(), away), NOW, once.data)
    (uid,) = [uid for uid in events(without.data) if uid.startswith(f"{away:%Y%m%d}")]
    gone = events(without.data)[uid]
    assert without.cancelled == 1
    assert (gone.status.value, gone.sequence.value) == ("CANCELLED", "1")
    assert not hasattr(gone, "valarm_list")
    assert spans(without.data) == spans(written(skipping(small_book(), away)).data)
    kept = written(skipping(small_book(), away), NOW, without.data)
    assert kept.data == without.data  # cancelled once, not again
    back = events(written(small_book(), NOW, without.data).data)[uid]
    assert (back.status.value, back.sequence.value) == ("CONFIRMED", "2")


def test_an_evening_moved_by_half_an_hour_is_the_same_event() -> None:
    book = small_book()
    once = events(written(book).data)
    stretches = tuple(
        replace(stretch, start="20:00", end="22:00") for stretch in book.bench_time.stretches
    )
    moved = replace(book, bench_time=replace(book.bench_time, stretches=stretches))
    assert events(written(moved).data).keys() == once.keys()


def test_what_is_past_stays_as_it_was() -> None:
    once = written(small_book())
    begun = moment_of(at("2031-03-06 19:33"), ZoneInfo("Europe/Warsaw"))
    entry = Logged(model="cart", step="prime", start=begun, end=begun + timedelta(minutes=10))
    book = small_book()
    book = replace(book, projects=(replace(book.project(PROJECT), log=(entry,)),))
    later = written(book, at("2031-03-10 12:00"), once.data)
    first = next(uid for uid in events(once.data) if uid.startswith("20310306"))
    assert str(events(later.data)[first]) == str(events(once.data)[first])


NIGHTS = [
    # From 22:00 to 04:00 by the clock on the wall. Offsets: Europe/Warsaw UTC+1, in summer
    # UTC+2; America/New_York UTC-5, in summer UTC-4 (IANA time zone database).
    ("Europe/Warsaw", date(2026, 3, 28), "2026-03-28T21:00", "2026-03-29T02:00"),
    ("Europe/Warsaw", date(2026, 10, 24), "2026-10-24T20:00", "2026-10-25T03:00"),
    ("America/New_York", date(2026, 3, 7), "2026-03-08T03:00", "2026-03-08T08:00"),
    ("America/New_York", date(2026, 10, 31), "2026-11-01T02:00", "2026-11-01T09:00"),
]


@pytest.mark.parametrize(("zone", "on", "start", "end"), NIGHTS)
def test_nights_in_which_the_clocks_change(zone: str, on: date, start: str, end: str) -> None:
    rule = Recurring(rule="FREQ=DAILY", since=on, start="22:00", end="04:00")
    book = replace(small_book(), bench_time=BenchTime(zone=zone, stretches=(rule,)))
    now = minute_of(instant(start)) - 60
    data = written(book, now).data
    # The zone is the one written in the file, not one that the reading library knows.
    read = min(events(data).values(), key=lambda event: event.dtstart.value)
    assert type(read.dtstart.value.tzinfo) is not ZoneInfo
    assert min(spans(data)) == (instant(start), instant(end))
    assert f"DTSTART;TZID={zone}:{on:%Y%m%d}T220000".encode() in data
    assert f"DTEND;TZID={zone}:{on + timedelta(days=1):%Y%m%d}T040000".encode() in data


def test_the_second_of_two_like_hours_is_written_in_utc() -> None:
    # Europe/Warsaw, 25 October 2026: 03:00 becomes 02:00 at 01:00 UTC, so 02:30 occurs twice.
    extra = Extra(start=instant("2026-10-25T01:30"), end=instant("2026-10-25T03:30"))
    book = replace(small_book(), bench_time=BenchTime(zone="Europe/Warsaw", extra=(extra,)))
    data = written(book, minute_of(instant("2026-10-24T12:00"))).data
    assert spans(data) == {(instant("2026-10-25T01:30"), instant("2026-10-25T03:30"))}
    assert b"DTSTART:20261025T013000Z" in data


def test_the_zone_is_written_as_the_standard_writes_it() -> None:
    # RFC 5545, section 3.6.5, New York since 2007: DAYLIGHT DTSTART:20070311T020000, from
    # -0500 to -0400; STANDARD DTSTART:20071104T020000, from -0400 to -0500.
    zone = ZoneInfo("America/New_York")
    made = timezone_of(zone, instant("2007-02-01T00:00"), instant("2007-12-01T00:00"))
    lines = made.to_ical().decode().replace("\r\n", "\n")
    for summer in (
        "BEGIN:DAYLIGHT\nDTSTART:20070311T020000\nTZNAME:EDT\n"
        "TZOFFSETFROM:-0500\nTZOFFSETTO:-0400\nEND:DAYLIGHT\n",
        "BEGIN:STANDARD\nDTSTART:20071104T020000\nTZNAME:EST\n"
        "TZOFFSETFROM:-0400\nTZOFFSETTO:-0500\nEND:STANDARD\n",
    ):
        assert summer in lines


@pytest.mark.parametrize("name", ["Europe/Warsaw", "America/New_York", "Australia/Lord_Howe",
                                  "Asia/Tokyo", "Europe/Dublin"])  # fmt: skip
def test_every_hour_of_two_years_reads_as_the_zone_database_has_it(
    name: str, tmp_path: Path
) -> None:
    zone = ZoneInfo(name)
    first, last = instant("2026-01-01T00:00"), instant("2028-01-01T00:00")
    file = tmp_path / "zone.ics"
    file.write_bytes(timezone_of(zone, first, last).to_ical())
    read = tzical(str(file)).get()
    for hours in range(1, 2 * 365 * 24):
        moment = first + timedelta(hours=hours)
        local = moment.astimezone(zone)
        assert local.replace(tzinfo=read).utcoffset() == local.utcoffset(), local


def test_text_of_anybodys_stays_text() -> None:
    # U+202E turns the writing about, U+0007 rings a bell; a line break must not begin a property.
    book = titled(small_book(), "a\u202eb\x07c; d, e\\n")
    book = titled(book, book.projects[0].models[0].steps[0].title + "\nBEGIN:VEVENT\n=cmd()")
    data = written(book).data
    assert len(events(data)) == len(events(written(small_book()).data))
    told = "".join(event.description.value for event in events(data).values())
    assert "abc; d, e\\n" in told
    assert "\u202e" not in told
    assert "\x07" not in told


def test_no_line_is_longer_than_the_standard_allows() -> None:
    """RFC 5545, section 3.1: no more than 75 octets a line, without the break."""
    data = written(titled(small_book(), "ż" * 200)).data
    assert max(map(len, data.split(b"\r\n"))) <= 75
    assert "ż" * 200 in "".join(event.description.value for event in events(data).values())


@pytest.mark.parametrize(
    "last",
    [
        b"\x00\xff",
        b"BEGIN:VCALENDAR",
        b"hello",
        b"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//somebody//else//EN\r\nEND:VCALENDAR\r\n",
        b"BEGIN:VCALENDAR\r\nPRODID:-//Tackfree//Bench evenings//EN\r\nBEGIN:VEVENT\r\n"
        b"UID:x\r\nDTSTART;VALUE=DATE:20310101\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n",
    ],
)
def test_a_file_that_is_none_of_ours_is_refused(last: bytes) -> None:
    with pytest.raises(Refused, match="choose another"):
        written(small_book(), NOW, last)


def test_nothing_to_do_makes_an_empty_calendar() -> None:
    made = written(replace(small_book(), projects=()))
    assert made.new == 0
    assert events(made.data) == {}
    assert made.told() == "no evenings"
