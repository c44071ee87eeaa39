"""How the air of a location runs through the days."""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

from planner.air.moisture import Air, Samples
from planner.values.moment import minute_of
from planner.values.room import COLDEST_C, HOTTEST_C, AirPoint, Location, Reading, Room

DAY = 1440


@dataclass(frozen=True)
class DayShape:
    """What makes the air of one local day differ from that of another.

    Attributes
    ----------
    profiles
        Profile of the day before, of the day and of the day after
        (0 workdays, 1 weekends): midnight joins one to the next.
    minutes
        Length: 1440, or 1380 or 1500 where the clocks change.
    clock_from
        Wall clock at its first minute [min after midnight].
    jump
        (minute of the day, minutes): when the clocks change and by how much.
    shifts
        (minute of the day, K, % RH): a gauge reading moves the rest of the day.
    """

    profiles: tuple[int, int, int]
    minutes: int
    clock_from: int = 0
    jump: tuple[int, int] | None = None
    shifts: tuple[tuple[int, float, float], ...] = ()

    def clock(self, offset: float) -> float:
        """Return the wall clock at a minute of the day [min after midnight]."""
        wall = self.clock_from + offset
        return wall + self.jump[1] if self.jump and offset >= self.jump[0] else wall


class AirCourse:
    """The air of one location at every minute.

    Linear between the profile's points in local wall-clock time, also
    across midnight.  A reading shifts temperature and humidity for the rest
    of its local day, so that the course passes through it.

    Parameters
    ----------
    location
        Whose profile it is.
    readings
        What was read there; see `readings_of`.
    zone
        Time zone of the profile's clock.
    """

    def __init__(self, location: Location, readings: Iterable[Reading], zone: ZoneInfo) -> None:
        self.zone = zone
        self.movement = location.movement
        weekends = location.weekends or location.workdays
        self._profiles = (location.workdays, weekends)
        self._weekend = int(weekends != location.workdays)
        self._readings: dict[date, dict[int, Air]] = {}
        for reading in sorted(readings, key=lambda reading: reading.at):
            day = reading.at.astimezone(zone).date()
            read = Air(reading.temperature_c, reading.humidity_pct)
            self._readings.setdefault(day, {})[minute_of(reading.at, up=False)] = read
        self._days: dict[date, tuple[int, DayShape]] = {}
        self._knots: dict[tuple[int, int, int], tuple[list[int], list[Air]]] = {}
        self._samples: dict[DayShape, Samples] = {}
        self._spans: dict[tuple[int, int], Air] = {}  # films of all coatings ask for the same

    def at(self, minute: float) -> Air:
        """Return the air at a UTC minute, which may be a fraction."""
        start, shape = self.day(self.date_of(math.floor(minute)))
        return self._air(shape, minute - start)

    def begins_with(self, number: int, minutes: int) -> Air:
        """Return the air at the beginning of the ``number``-th so many minutes since the epoch."""
        key = (number, minutes)
        found = self._spans.get(key)
        if found is None:
            found = self._spans[key] = self.at(number * minutes)
        return found

    def date_of(self, minute: int) -> date:
        """Return the local day that holds a UTC minute."""
        day = datetime.fromtimestamp(minute * 60, UTC).astimezone(self.zone).date()
        while minute < _midnight(day, self.zone):  # clocks set back across midnight
            day -= timedelta(days=1)
        while minute >= _midnight(day + timedelta(days=1), self.zone):
            day += timedelta(days=1)
        return day

    def day(self, day: date) -> tuple[int, DayShape]:
        """Return the first UTC minute of a local day, and the shape of its air."""
        found = self._days.get(day)
        if found is None:
            found = self._days[day] = self._shape(day)
        return found

    def samples(self, shape: DayShape) -> Samples:
        """Return the air in the middle of each minute of a day."""
        found = self._samples.get(shape)
        if found is None:
            airs = self._knots_of(shape.profiles)[1]
            if not shape.shifts and all(air == airs[0] for air in airs):
                found = Samples((airs[0],) * shape.minutes)
            elif shape == DayShape(shape.profiles, DAY):
                found = Samples(tuple(self._plain_day(shape.profiles)))
            else:
                found = Samples(tuple([self._air(shape, at + 0.5) for at in range(shape.minutes)]))
            self._samples[shape] = found
        return found

    def _shape(self, day: date) -> tuple[int, DayShape]:
        start = _midnight(day, self.zone)
        minutes = _midnight(day + timedelta(days=1), self.zone) - start
        jump = None
        if minutes > 0:
            first, last = self._offset(start), self._offset(start + minutes - 1)
            if first != last:
                turn = bisect_left(
                    range(minutes), True, key=lambda at: self._offset(start + at) != first
                )
                jump = (turn, last - first)
        local = datetime.fromtimestamp(start * 60, UTC).astimezone(self.zone)
        clock_from = local.hour * 60 + local.minute if local.date() == day else 0
        near = (day + timedelta(days=step) for step in (-1, 0, 1))
        before, today, after = (self._weekend * (one.weekday() >= 5) for one in near)
        shape = DayShape((before, today, after), minutes, clock_from, jump)
        shifts = []
        for minute, read in sorted(self._readings.get(day, {}).items()):
            usual = self._air(shape, minute - start)
            shifts.append(
                (
                    minute - start,
                    read.temperature_c - usual.temperature_c,
                    read.humidity_pct - usual.humidity_pct,
                )
            )
        if shifts:
            shape = DayShape(shape.profiles, minutes, clock_from, jump, tuple(shifts))
        return start, shape

    def _offset(self, minute: int) -> int:
        """Return wall clock minus UTC [min]."""
        offset = datetime.fromtimestamp(minute * 60, UTC).astimezone(self.zone).utcoffset()
        return 0 if offset is None else int(offset.total_seconds() // 60)

    def _air(self, shape: DayShape, offset: float) -> Air:
        clock = shape.clock(offset)
        walls, airs = self._knots_of(shape.profiles)
        right = min(max(bisect_right(walls, clock), 1), len(walls) - 1)
        left = right - 1
        part = (clock - walls[left]) / (walls[right] - walls[left])
        temperature = _between(airs[left].temperature_c, airs[right].temperature_c, part)
        humidity = _between(airs[left].humidity_pct, airs[right].humidity_pct, part)
        for since, warmer, damper in reversed(shape.shifts):
            if offset >= since:
                temperature = min(max(temperature + warmer, COLDEST_C), HOTTEST_C)
                humidity = min(max(humidity + damper, 0.0), 100.0)
                break
        return Air(temperature, humidity)

    def _plain_day(self, profiles: tuple[int, int, int]) -> Iterator[Air]:
        """Yield what `_air` says of the middle of each minute of a day like most, quicker."""
        walls, airs = self._knots_of(profiles)
        for left in range(len(walls) - 1):
            begin, span = walls[left], walls[left + 1] - walls[left]
            (cold, dry), (warm, damp) = airs[left], airs[left + 1]
            for minute in range(max(begin, 0), min(begin + span, DAY)):
                part = (minute + 0.5 - begin) / span
                yield Air(_between(cold, warm, part), _between(dry, damp, part))

    def _knots_of(self, profiles: tuple[int, int, int]) -> tuple[list[int], list[Air]]:
        """Return wall minutes and air, from yesterday's last point to tomorrow's first."""
        found = self._knots.get(profiles)
        if found is None:
            before, today, after = (self._profiles[which] for which in profiles)
            points = [
                (_wall(before[-1]) - DAY, before[-1]),
                *((_wall(point), point) for point in today),
                (_wall(after[0]) + DAY, after[0]),
            ]
            walls = [wall for wall, _ in points]
            airs = [Air(point.temperature_c, point.humidity_pct) for _, point in points]
            found = self._knots[profiles] = (walls, airs)
        return found


def readings_of(room: Room, location: Location) -> tuple[Reading, ...]:
    """Return the readings taken at one location; a reading without one is the first's."""
    return tuple(
        reading for reading in room.readings if room.location(reading.location) == location
    )


def air_course(location: Location, readings: Iterable[Reading], zone: ZoneInfo) -> AirCourse:
    """Return the course of the air at ``location``, given what was read there."""
    return AirCourse(location, readings, zone)


def _between(left: float, right: float, part: float) -> float:
    """Interpolate; equal ends give exactly their value."""
    return left + (right - left) * part


def _wall(point: AirPoint) -> int:
    return int(point.at[:2]) * 60 + int(point.at[3:])


def _midnight(day: date, zone: ZoneInfo) -> int:
    """Return the UTC minute at which a local day begins."""
    return math.floor(datetime(day.year, day.month, day.day, tzinfo=zone).timestamp() / 60)
