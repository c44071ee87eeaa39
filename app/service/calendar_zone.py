"""A time zone for a calendar file (RFC 5545 section 3.6.5)."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from icalendar import Timezone, TimezoneDaylight, TimezoneStandard

HOUR, DAY = 3600, 86_400
Offset = tuple[timedelta, str, bool]  # from UTC, its name, and whether it is summer time


def timezone_of(zone: ZoneInfo, first: datetime, last: datetime) -> Timezone:
    """Return the VTIMEZONE of a zone that is right from ``first`` to ``last``.

    Each change is written down by its date.  Its local time is read on the
    clock that is still in use, as the section cited asks: the change from
    02:00 to 03:00 happens at 02:00.
    """
    start = int(first.timestamp()) // HOUR * HOUR
    begins = _offset(start, zone)
    changes: dict[tuple[timedelta, Offset], list[datetime]] = defaultdict(list)
    changes[begins[0], begins].append(_local(start, begins[0]))
    for second, before, after in _changes(zone, start, int(last.timestamp())):
        changes[before[0], after].append(_local(second, before[0]))
    made = Timezone()
    made.add("tzid", zone.key)
    for (came_from, (offset, name, summer)), onsets in changes.items():
        part = TimezoneDaylight() if summer else TimezoneStandard()
        part.add("dtstart", onsets[0])
        part.add("tzoffsetfrom", came_from)
        part.add("tzoffsetto", offset)
        part.add("tzname", name)
        if onsets[1:]:
            part.add("rdate", onsets[1:])
        made.add_component(part)
    return made


def _changes(zone: ZoneInfo, start: int, end: int) -> Iterator[tuple[int, Offset, Offset]]:
    """Yield the seconds at which the clocks change, with what was and what is then."""
    for day in range(start, end, DAY):
        if _offset(day, zone) == _offset(day + DAY, zone):
            continue
        for minute in range(day, day + DAY, 60):
            before, after = _offset(minute, zone), _offset(minute + 60, zone)
            if before != after:
                yield minute + 60, before, after


def _offset(second: int, zone: ZoneInfo) -> Offset:
    at = datetime.fromtimestamp(second, zone)
    return at.utcoffset() or timedelta(), at.tzname() or "", bool(at.dst())


def _local(second: int, offset: timedelta) -> datetime:
    return (datetime.fromtimestamp(second, UTC) + offset).replace(tzinfo=None)
