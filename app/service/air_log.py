"""What a logger wrote of the air of a room, read from a table: time, temperature, humidity.

Separator, decimal comma, °F, offsets from UTC and the order of day and month
are told by the file itself where it says them, or can be given.
"""

from __future__ import annotations

import itertools
import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from statistics import median
from types import MappingProxyType
from zoneinfo import ZoneInfo

from app.service.csv_reading import TableRow, column_of, number, read_table, shown, spot
from planner.values.message import message
from planner.values.refusal import Refused, demand
from planner.values.room import COLDEST_C, HOTTEST_C

COLUMNS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "humidity": ("humid", "rh", "rel", "feucht", "luftf", "hum", "%"),
        "temperature": ("temp", "°c", "°f", "celsius", "fahrenheit", "t ", "t[", "t("),
        "clock": ("clock", "hour", "uhr"),
        "time": ("time", "date", "zeit", "datum", "stamp", "tag"),
    }
)
"""What a heading may begin with, in the languages of the window."""
AWAY = ("time zone", "timezone", "zeitzone")
MOST_YEARS = 20  # of a logger: assumed
GAP_TIMES = 3.0  # what is longer than so many usual intervals is a gap: assumed
LEAST_GAP = 90  # and shorter than this is none [min]: assumed
DAY = 1440
_ISO = re.compile(
    r"(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ]+(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?)?"
    r"\s*(Z|UTC|[+-]\d{2}:?\d{2})?"
)
_DATED = re.compile(
    r"(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})(?:[T ,]+(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?"
    r"\s*([AaPp][Mm])?)?\s*(Z|UTC|[+-]\d{2}:?\d{2})?"
)
_EPOCH = re.compile(r"(\d{9,10})(?:\.\d+)?|(\d{12,13})")  # seconds or milliseconds, Unix time
_HEAD_OFFSET = re.compile(r"(?:gmt|utc)\s*([+-]\d{2}:?\d{2})", re.IGNORECASE)


@dataclass(frozen=True)
class LogFormat:
    """What a person says about a file, where it does not say so itself.

    ``fahrenheit`` and ``day_first`` None: as the file tells.
    """

    zone: ZoneInfo
    fahrenheit: bool | None = None
    day_first: bool | None = None


@dataclass(frozen=True)
class AirSample:
    """The air at a UTC minute [°C], [% RH]."""

    minute: int
    temperature_c: float
    humidity_pct: float


@dataclass(frozen=True)
class LogGap:
    """Minutes (UTC) between which the logger says nothing."""

    start: int
    end: int


@dataclass(frozen=True)
class AirLog:
    """What a file holds, and how it was read.

    Attributes
    ----------
    samples
        In order of time, one for each minute at most.
    every
        Usual minutes between two of them.
    told_zone
        The file gives offsets from UTC itself.
    twice
        Lines of a minute that was there already; the first of them counts.
    """

    samples: tuple[AirSample, ...]
    gaps: tuple[LogGap, ...]
    every: int
    fahrenheit: bool
    day_first: bool
    told_zone: bool
    separator: str
    twice: int = 0


@dataclass(frozen=True)
class _Stamp:
    line: int
    first: int
    second: int
    year: int
    clock: tuple[int, int]
    offset: str
    iso: bool
    mark: str = ""


def read_air_log(data: bytes, asked: LogFormat) -> AirLog:
    """Read what a logger wrote; the first line says what stands in which column.

    Raises
    ------
    Refused
        By line and column; also where day and month, or a time, can be read
        in two ways and nobody has said which.
    """
    table = read_table(data)
    header_at, at = _header(table.rows)
    header, rows = table.rows[header_at], table.rows[header_at + 1 :]
    demand(
        bool(rows),
        spot(header.line),
        message("is all there is; a line for each moment must follow"),
    )
    told = _HEAD_OFFSET.search(header.cell(at["time"]))
    stamps = [_stamp(row, at, told[1] if told else "") for row in rows]
    day_first = _day_first(stamps, asked.day_first)
    fahrenheit = _is_fahrenheit(header.cells[at["temperature"]], asked.fahrenheit)
    samples: dict[int, AirSample] = {}
    last: datetime | None = None
    for row, stamp in zip(rows, stamps, strict=True):
        last = _moment(stamp, day_first, asked.zone, last)
        minute = int(last.timestamp() // 60)
        temperature = number(_bare(row.cell(at["temperature"])), row.line, "temperature")
        humidity = number(_bare(row.cell(at["humidity"])), row.line, "humidity")
        celsius = (temperature - 32) / 1.8 if fahrenheit else temperature
        _in_range(celsius, humidity, row, fahrenheit)
        samples.setdefault(minute, AirSample(minute, round(celsius, 2), humidity))
    found = tuple(samples[minute] for minute in sorted(samples))
    span = found[-1].minute - found[0].minute
    demand(
        span <= MOST_YEARS * 366 * DAY,
        spot(rows[-1].line, "time"),
        message("lies more than {most} years from the others; check the year", most=MOST_YEARS),
    )
    every = _usual(found)
    return AirLog(
        samples=found,
        gaps=_gaps(found, every),
        every=every,
        fahrenheit=fahrenheit,
        day_first=day_first,
        told_zone=any(stamp.offset for stamp in stamps),
        separator=table.separator,
        twice=len(rows) - len(found),
    )


def winter_time(zone: ZoneInfo, now: int) -> str | None:
    """Return the name of a zone that keeps the winter time of one all year; None if none does.

    Loggers seldom follow summer time.
    """
    year = datetime.fromtimestamp(now * 60, UTC).year
    offsets = [datetime(year, month, 1, tzinfo=zone).utcoffset() for month in (1, 7)]
    least = min(offset for offset in offsets if offset is not None)
    hours, left = divmod(int(least.total_seconds()), 3600)
    if left or offsets[0] == offsets[1]:
        return None
    return f"Etc/GMT{-hours:+d}" if hours else "UTC"


def _header(rows: Sequence[TableRow]) -> tuple[int, dict[str, int]]:
    """Return the first line that names time, temperature and humidity; loggers write more above."""
    for number_, row in enumerate(rows[:50]):
        if sum(bool(cell.strip()) for cell in row.cells) < 3:
            continue
        plain = TableRow(row.line, tuple(_heading(cell) for cell in row.cells))
        try:
            at = column_of(plain, COLUMNS)
        except Refused:
            if number_ + 1 == len(rows):
                raise
            at = _first_of(plain)
        if {"time", "temperature", "humidity"} <= set(at):
            return number_, at
    mend = message(
        "names no columns for time, temperature and humidity; begin with a line such as"
        " time;temperature;humidity"
    )
    raise Refused(spot(rows[0].line), mend)


def _first_of(row: TableRow) -> dict[str, int]:
    """Return the first column of each kind: a logger may have several probes.

    A second one of times is the clock beside the date.
    """
    at: dict[str, int] = {}
    for number_, cell in enumerate(row.cells):
        for name, found in column_of(TableRow(row.line, (cell,)), COLUMNS).items():
            kind = "clock" if name == "time" and "time" in at else name
            at.setdefault(kind, number_ + found)
    return at


def _heading(cell: str) -> str:
    told = cell.strip().casefold()
    return "" if any(told.startswith(word) for word in (*AWAY, "dew", "taup")) else told


def _bare(text: str) -> str:
    return re.sub(r"\s*(?:°\s*[CF]|% ?RH|% ?rF|%)\s*$", "", text.strip())


def _stamp(row: TableRow, at: Mapping[str, int], usual_offset: str) -> _Stamp:
    """Return what a line says of its moment; ``usual_offset`` is what the heading says."""
    text = row.cell(at["time"])
    if (epoch := _EPOCH.fullmatch(text)) is not None:
        seconds = int(epoch[1] or 0) or int(epoch[2]) // 1000
        moment = datetime.fromtimestamp(seconds, UTC)
        clock = (moment.hour, moment.minute)
        return _Stamp(row.line, moment.month, moment.day, moment.year, clock, "Z", iso=True)
    if "clock" in at and ":" not in text:
        text = f"{text} {row.cell(at['clock'])}"
    iso = _ISO.fullmatch(text)
    if iso:
        year, first, second = int(iso[1]), int(iso[2]), int(iso[3])
        clock, offset = _clock(iso[4], iso[5], "", row.line), iso[7] or usual_offset
        return _Stamp(row.line, first, second, year, clock, offset, iso=True)
    dated = _DATED.fullmatch(text)
    if dated is None:
        mend = message(
            "“{text}” is no time; write it as 2031-03-05 19:30 or 05.03.2031 19:30",
            text=shown(text),
        )
        raise Refused(spot(row.line, "time"), mend if text else message("is empty; write a time"))
    year = int(dated[4]) + (2000 if len(dated[4]) == 2 else 0)
    clock = _clock(dated[5], dated[6], dated[8] or "", row.line)
    return _Stamp(
        row.line,
        int(dated[1]),
        int(dated[3]),
        year,
        clock,
        dated[9] or usual_offset,
        False,
        dated[2],
    )


def _clock(hours: str | None, minutes: str | None, half: str, line: int) -> tuple[int, int]:
    hour, minute = int(hours or 0), int(minutes or 0)
    if half:
        demand(1 <= hour <= 12, spot(line, "time"), message("has no such hour of a half day"))
        hour = hour % 12 + (12 if half.lower() == "pm" else 0)
    demand(hour <= 23 and minute <= 59, spot(line, "time"), message("has no such hour or minute"))
    return hour, minute


def _day_first(stamps: Sequence[_Stamp], asked: bool | None) -> bool:
    """Return whether the day stands before the month, as the file's dates tell."""
    if asked is not None:
        return asked
    plain = [stamp for stamp in stamps if not stamp.iso]
    if not plain or any(stamp.mark == "." for stamp in plain):
        return True
    first = next((stamp for stamp in plain if stamp.first > 12), None)
    second = next((stamp for stamp in plain if stamp.second > 12), None)
    if first is not None and second is not None:
        mend = message("has the day first, line {line} the month", line=second.line)
        raise Refused(spot(first.line, "time"), mend)
    if first is None and second is None:
        mend = message("may begin with the day or the month; say which")
        raise Refused(spot(plain[0].line, "time"), mend)
    return first is not None


def _moment(stamp: _Stamp, day_first: bool, zone: ZoneInfo, last: datetime | None) -> datetime:
    """Return a moment with its offset; a clock time that comes twice is the later one once past."""
    month, day = (
        (stamp.first, stamp.second) if stamp.iso or not day_first else (stamp.second, stamp.first)
    )
    try:
        plain = datetime(stamp.year, month, day, *stamp.clock)  # noqa: DTZ001 - gets its zone below
    except ValueError as problem:
        raise Refused(
            spot(stamp.line, "time"), message("names a day that is in no calendar")
        ) from problem
    demand(
        1990 <= stamp.year <= 2100,
        spot(stamp.line, "time"),
        message("is of the year {year}; check it", year=stamp.year),
    )
    if stamp.offset:
        return plain.replace(tzinfo=UTC) - _offset(stamp)
    first = plain.replace(tzinfo=zone)
    later = plain.replace(tzinfo=zone, fold=1)
    if first.utcoffset() == later.utcoffset():
        return first.astimezone(UTC)
    if first.astimezone(UTC).astimezone(zone).replace(tzinfo=None) != plain:
        raise Refused(
            spot(stamp.line, "time"),
            message(
                "is in the hour that the clocks leave out; does the logger keep winter time all"
                " year?"
            ),
        )
    passed = last is not None and first.astimezone(UTC) <= last
    return (later if passed else first).astimezone(UTC)


def _offset(stamp: _Stamp) -> timedelta:
    if stamp.offset in ("Z", "UTC"):
        return timedelta()
    sign = -1 if stamp.offset[0] == "-" else 1
    digits = stamp.offset[1:].replace(":", "")
    hours, minutes = int(digits[:2]), int(digits[2:])
    demand(hours <= 14 and minutes <= 59, spot(stamp.line, "time"), message("has no such offset"))
    return sign * timedelta(hours=hours, minutes=minutes)


def _is_fahrenheit(heading: str, asked: bool | None) -> bool:
    if asked is not None:
        return asked
    told = heading.casefold()
    return "fahrenheit" in told or bool(re.search(r"°\s*f|\[f\]|\(f\)", told))


def _in_range(celsius: float, humidity: float, row: TableRow, fahrenheit: bool) -> None:
    if not COLDEST_C <= celsius <= HOTTEST_C:
        hint = message("is {celsius:.1f} °C, no air of a room", celsius=celsius)
        if not fahrenheit:
            hint = message("is {celsius:.1f} °C, no air of a room; is it °F?", celsius=celsius)
        raise Refused(spot(row.line, "temperature"), hint)
    demand(
        0 <= humidity <= 100,
        spot(row.line, "humidity"),
        message("is no relative humidity; it lies between 0 and 100 %"),
    )


def _usual(samples: Sequence[AirSample]) -> int:
    between = [after.minute - one.minute for one, after in itertools.pairwise(samples)]
    return max(1, round(median(between))) if between else 1


def _gaps(samples: Iterable[AirSample], every: int) -> tuple[LogGap, ...]:
    longest = max(GAP_TIMES * every, LEAST_GAP)
    found, before = [], None
    for sample in samples:
        if before is not None and sample.minute - before > longest:
            found.append(LogGap(before, sample.minute))
        before = sample.minute
    return tuple(found)
