"""The person's clock: which minute it is, and which zone it shows."""

from __future__ import annotations

import os
import re
import time
from datetime import UTC, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from planner.values.book import Book
from planner.values.message import Message, message
from planner.values.moment import aware, minute_of, moment_of, zone_named
from planner.values.present import last_told, present
from planner.values.refusal import Refused

LOCALTIME = Path("/etc/localtime")


def current_minute() -> int:
    """Return the minute that runs now."""
    return int(time.time() // 60)


def read_moment(text: str, zone: ZoneInfo, place: str = "--now") -> int:
    """Return the minute of an ISO 8601 time; without an offset it is local to ``zone``.

    Raises
    ------
    Refused
        If it is no time, one that the clocks of ``zone`` skip, or lies
        outside the years that are planned.
    """
    mend = message('"{text}" is not a time; write it as 2031-05-31T19:30+02:00', text=text[:60])
    if re.match(r"\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}", text) is None:
        raise Refused(place, mend)
    try:
        moment = datetime.fromisoformat(text)
    except ValueError:
        raise Refused(place, mend) from None
    if moment.tzinfo is None:
        moment = moment.replace(tzinfo=zone)
    aware(moment.replace(second=0, microsecond=0), place)
    there = moment.astimezone(UTC).astimezone(zone)
    if moment.tzinfo is zone and there.replace(tzinfo=None) != moment.replace(tzinfo=None):
        gap = message(
            '"{text}" is skipped in {zone}, where clocks go forward then; write {next}',
            text=text[:60],
            zone=zone.key,
            next=there.isoformat(timespec="minutes"),
        )
        raise Refused(place, gap)
    return minute_of(moment)


def behind(book: Book, clock: int) -> Message | None:
    """Return what to say where the clock lies before what the logbook tells; None elsewhere."""
    now = present(book, clock)
    told = last_told(book)
    if told is None or now == clock:
        return None
    zone = zone_named(book.bench_time.zone)
    return message(
        "it is {clock}, but the logbook tells of {what} at {told}: planned from there on; "
        "put the clock right, or the entry",
        clock=f"{moment_of(clock, zone):%Y-%m-%d %H:%M}",
        what=told.what,
        told=f"{moment_of(told.minute, zone):%Y-%m-%d %H:%M}",
    )


def elsewhere(book: Book, clock: int) -> Message | None:
    """Return what to say where this machine's clocks go otherwise than those of the bench."""
    there = moment_of(clock, zone_named(book.bench_time.zone))
    here = there.astimezone()  # the machine's own rules: not every platform tells their name
    if here.utcoffset() == there.utcoffset():
        return None
    return message(
        "the clock here shows {here}, at the bench it is {there} ({zone}); all times are the "
        "bench's",
        here=f"{here:%H:%M}",
        there=f"{there:%H:%M}",
        zone=book.bench_time.zone,
    )


def local_zone() -> str:
    """Return the IANA name of this machine's zone, "UTC" where it cannot be told."""
    for name in (os.environ.get("TZ", "").removeprefix(":"), _linked_zone()):
        if name:
            try:
                return zone_named(name).key
            except Refused:
                continue
    return "UTC"


def _linked_zone() -> str:
    try:
        target = str(LOCALTIME.resolve(strict=True))
    except OSError:
        return ""
    return target.partition("zoneinfo/")[2]
