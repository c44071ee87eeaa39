"""A logger's air becomes that of the room: its usual day, and what it was while films dried."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from statistics import fmean
from zoneinfo import ZoneInfo

from app.service.air_log import DAY, AirLog, AirSample
from app.service.edits import Edit
from planner.evening.logged_films import laid
from planner.schedule.partial_schedule import FOREVER
from planner.values.book import Book
from planner.values.message import called, message
from planner.values.moment import minute_of, moment_of, zone_named
from planner.values.plan import PassKey
from planner.values.refusal import Refused, unknown
from planner.values.room import AirPoint, Location, Reading

POINTS = tuple(range(0, 24, 3))  # hours of the usual day
NEAR = 90  # minutes on either side whose air makes a point
LEAST_DAYS = 2  # of a kind, to have a day of its own: assumed
DRIES_DAYS = 14  # after a coat, as long as its film is watched: assumed
EVERY = 60  # minutes between two readings that are kept


@dataclass(frozen=True)
class Moved:
    """A film that is surely dry enough to be handled at another minute than it was thought."""

    key: PassKey
    place: str
    before: int | None
    after: int | None


@dataclass(frozen=True)
class Taken:
    """A book with the air of a log, and all that it changed.

    Attributes
    ----------
    was, becomes
        Mean air of the usual workday before and after [°C], [% RH].
    readings
        How many were added; ``replaced`` of that time went.
    moved
        Films by the logbook whose drying it changed.
    """

    edit: Edit
    was: tuple[float, float]
    becomes: tuple[float, float]
    readings: int
    replaced: int
    moved: tuple[Moved, ...]


def usual_day(log: AirLog, zone: ZoneInfo) -> tuple[tuple[AirPoint, ...], tuple[AirPoint, ...]]:
    """Return the usual air of workdays and of weekends, every three hours of the local day.

    Each point is the mean of what lies within an hour and a half of it.
    Where there are too few days of weekends they are as workdays, and the
    other way round.

    Raises
    ------
    Refused
        If not one hour of it can be told.
    """
    parts: dict[bool, list[tuple[int, AirSample]]] = {False: [], True: []}
    days: dict[bool, set[date]] = {False: set(), True: set()}
    for sample in log.samples:
        local = moment_of(sample.minute, zone)
        weekend = local.weekday() >= 5
        parts[weekend].append((local.hour * 60 + local.minute, sample))
        days[weekend].add(local.date())
    enough = [kind for kind in (False, True) if len(days[kind]) >= LEAST_DAYS]
    if len(enough) < 2:
        return _points([*parts[False], *parts[True]]), ()
    return _points(parts[False]), _points(parts[True])


def take_air(
    book: Book,
    log: AirLog,
    location: str = "",
    *,
    day: bool = True,
    films: bool = True,
    now: int,
) -> Taken:
    """Take a logger's air into the room.

    Parameters
    ----------
    location
        Where the logger lay; "" is the usual one.
    day
        Let it make the usual day of that location.
    films
        Keep what was read while films dried there, an hour apart, in the
        place of what was read by hand in that time.

    Raises
    ------
    Refused
        If there is no such location, or nothing of the log would be taken.
    """
    zone = zone_named(book.bench_time.zone)
    place = _location(book, location)
    was = _mean(place.workdays)
    new = place
    if day:
        workdays, weekends = usual_day(log, zone)
        new = replace(place, workdays=workdays, weekends=weekends)
    locations = tuple(new if one is place else one for one in book.room.locations)
    changed = replace(book, room=replace(book.room, locations=locations))
    added, replaced = 0, 0
    if films:
        spans = _watched(book, place, log)
        kept = tuple(one for one in book.room.readings if not _covered(one, place, book, spans))
        read = tuple(_readings(log, spans, place, zone))
        added, replaced = len(read), len(book.room.readings) - len(kept)
        changed = replace(changed, room=replace(changed.room, readings=(*kept, *read)))
    if changed == book:
        raise Refused("", message("nothing of it is taken: no film dried there in that time"))
    name = called("air of {where}, from a logger", where=place.name)
    moved = _moved(book, changed, now)
    return Taken(Edit(name, changed), was, _mean(new.workdays), added, replaced, moved)


def _points(parts: Sequence[tuple[int, AirSample]]) -> tuple[AirPoint, ...]:
    found = []
    for hour in POINTS:
        near = [sample for clock, sample in parts if _apart(clock, hour * 60) <= NEAR]
        if near:
            found.append(
                AirPoint(
                    at=f"{hour:02d}:00",
                    temperature_c=round(fmean(one.temperature_c for one in near), 1),
                    humidity_pct=round(fmean(one.humidity_pct for one in near), 1),
                )
            )
    if not found:
        raise Refused("", message("holds no air of any hour"))
    return tuple(found)


def _apart(clock: int, other: int) -> int:
    apart = abs(clock - other) % DAY
    return min(apart, DAY - apart)


def _mean(points: Iterable[AirPoint]) -> tuple[float, float]:
    points = tuple(points)
    return (
        round(fmean(point.temperature_c for point in points), 1),
        round(fmean(point.humidity_pct for point in points), 1),
    )


def _location(book: Book, name: str) -> Location:
    try:
        return book.room.location(name)
    except KeyError:
        known = [location.name for location in book.room.locations]
        raise Refused("location", unknown("location", name, known)) from None


def _watched(book: Book, place: Location, log: AirLog) -> tuple[tuple[int, int], ...]:
    """Return the minutes in which films dried at a location, as far as the log reaches."""
    usual = book.room.locations[0].name
    first, last = log.samples[0].minute, log.samples[-1].minute
    found = []
    for project in book.projects:
        dries = {
            (model.name, step.id): step.dries_in or usual
            for model in project.models
            for step in model.steps
            if step.applications
        }
        for fact in project.log:
            if dries.get((fact.model, fact.step)) != place.name:
                continue
            start = minute_of(fact.start, up=False)
            end = start + DRIES_DAYS * DAY
            if start <= last and end >= first:
                found.append((max(start, first), min(end, last)))
    return _joined(found)


def _joined(spans: Iterable[tuple[int, int]]) -> tuple[tuple[int, int], ...]:
    found: list[tuple[int, int]] = []
    for start, end in sorted(spans):
        if found and start <= found[-1][1]:
            found[-1] = (found[-1][0], max(end, found[-1][1]))
        else:
            found.append((start, end))
    return tuple(found)


def _covered(
    reading: Reading, place: Location, book: Book, spans: Iterable[tuple[int, int]]
) -> bool:
    if book.room.location(reading.location).name != place.name:
        return False
    minute = minute_of(reading.at, up=False)
    return any(start <= minute <= end for start, end in spans)


def _readings(
    log: AirLog, spans: Sequence[tuple[int, int]], place: Location, zone: ZoneInfo
) -> Iterable[Reading]:
    next_ = log.samples[0].minute
    days: set[date] = set()
    for sample in log.samples:
        if not any(start <= sample.minute <= end for start, end in spans):
            continue
        day = moment_of(sample.minute, zone).date()
        if day not in days or sample.minute >= next_:
            days.add(day)
            next_ = sample.minute + EVERY
            yield Reading(
                at=moment_of(sample.minute, zone),
                temperature_c=round(sample.temperature_c, 1),
                humidity_pct=round(sample.humidity_pct, 1),
                location=place.name,
            )


def _moved(before: Book, after: Book, now: int) -> tuple[Moved, ...]:
    old, new = (_ready(book, now) for book in (before, after))
    return tuple(
        Moved(key, place, old[key, place], new[key, place])
        for key, place in old
        if (key, place) in new and old[key, place] != new[key, place]
    )


def _ready(book: Book, now: int) -> dict[tuple[PassKey, str], int | None]:
    """Return when the top film of each place is surely dry enough to be handled."""
    table = laid(book, now)
    found = {}
    for (project, model, place), (index, _) in table.top.items():
        wet = table.wet[project, model, place]
        key = table.problem.activities[index].pass_.key
        found[key, place] = None if wet >= FOREVER else wet
    return found
