"""Time as the planner counts it: whole minutes in UTC (definition 1)."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import UTC, date, datetime, time
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from planner.values.message import message
from planner.values.refusal import Refused, demand

FOREVER = 10**12  # a minute that never comes


def minute_of(moment: datetime, *, up: bool = True) -> int:
    """Return the whole minute of an aware datetime.

    Openings round up and closings round down (definition 1).

    Raises
    ------
    Refused
        If ``moment`` has no offset.
    """
    demand(moment.tzinfo is not None, "", "has no time zone; write an offset such as +01:00")
    minutes = moment.timestamp() / 60
    return math.ceil(minutes) if up else math.floor(minutes)


def moment_of(minute: int, zone: ZoneInfo) -> datetime:
    """Return the aware local datetime of a minute."""
    return datetime.fromtimestamp(minute * 60, UTC).astimezone(zone)


def zone_named(name: str, place: str = "zone") -> ZoneInfo:
    """Return the IANA zone ``name``; raise `Refused` if there is none."""
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError) as problem:
        raise Refused(
            place,
            message(
                'no time zone is called "{name}"; use an IANA name such as Europe/Warsaw', name=name
            ),
        ) from problem


def clock(text: str, place: str) -> time:
    """Read a wall-clock time "HH:MM"; "24:00" is refused, write "00:00"."""
    try:
        read = time.fromisoformat(text)
    except ValueError as problem:
        raise Refused(
            place, message('"{text}" is not a time; write it as 19:30', text=text)
        ) from problem
    if not (len(text) == 5 and text[2] == ":"):
        raise Refused(
            place, message('"{text}" is not a whole local minute; write it as 19:30', text=text)
        )
    return read


def aware(moment: datetime, place: str) -> None:
    """Demand an aware datetime on a whole minute, in years 1971 to 2199."""
    demand(moment.tzinfo is not None, place, "has no time zone; write an offset such as +01:00")
    demand(
        moment.second == 0 and moment.microsecond == 0, place, "is not a whole minute; drop seconds"
    )
    demand(1971 <= moment.year <= 2199, place, "lies outside the years 1971 to 2199")


def in_years(day: date, place: str) -> None:
    """Demand a date in years 1971 to 2199."""
    demand(1971 <= day.year <= 2199, place, "lies outside the years 1971 to 2199")


@dataclass(frozen=True, order=True)
class Interval:
    """A half-open interval [start, end) in UTC minutes (definition 1).

    Raises
    ------
    Refused
        If it is empty or runs backwards.
    """

    start: int
    end: int

    def __post_init__(self) -> None:
        demand(self.start < self.end, "end", "must lie after start")

    @property
    def minutes(self) -> int:
        """Length [min]."""
        return self.end - self.start

    def overlaps(self, other: Interval) -> bool:
        """Tell whether the two share a minute."""
        return self.start < other.end and other.start < self.end

    def within(self, other: Interval) -> bool:
        """Tell whether every minute of this one lies in ``other``."""
        return other.start <= self.start and self.end <= other.end
