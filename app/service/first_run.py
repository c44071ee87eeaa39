"""The first plan: a book from three short questions.

What is on the table, when one paints, what the room is like.  Nothing is
compulsory but one name; everything can be changed afterwards.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date

from app.service.bench_time_edits import weekly_days
from app.service.books import AIRBRUSH
from app.service.build_edits.models import bare_model
from app.service.edits import WEEKDAYS, Edit
from app.service.sequences import GIVES, give_sequence
from app.service.warm_box import WARM_BOX, offered
from planner.sequences.apply_to_book import sequence_named
from planner.sequences.chosen_options import complete, without_airbrush
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.gear import Airbrush, Gear
from planner.values.message import Translate, called, message
from planner.values.model import Model, ModelKind
from planner.values.project import Project
from planner.values.refusal import Refused
from planner.values.room import AirPoint

HANDLE = "handle"


@dataclass(frozen=True, kw_only=True)
class Vehicle:
    """One line of the table: a model to be, and how it is finished.

    ``options`` None means the usual ones of the sequence.
    """

    name: str
    scale: str = ""
    sequence: str
    options: tuple[str, ...] | None = None
    kind: ModelKind = ModelKind.OTHER


@dataclass(frozen=True, kw_only=True)
class FirstHours:
    """Some weekdays (0 = Monday) with the hours of the bench, "HH:MM"."""

    days: frozenset[int]
    start: str
    end: str


@dataclass(frozen=True, kw_only=True)
class Answers:
    """All that was said: temperature [°C], humidity [% RH]."""

    project: str
    vehicles: tuple[Vehicle, ...]
    hours: tuple[FirstHours, ...]
    temperature_c: float = 20.0
    humidity_pct: float = 50.0
    warm_box: bool = False
    airbrush: bool = True


def begin(book: Book, answers: Answers, today: date, translate: Translate = str) -> Edit:
    """Return the book with the project, evenings, room and gear as they were told.

    ``translate`` gives names to what comes into the book beside that.

    Raises
    ------
    Refused
        If no vehicle or no evening was told, or something of it cannot be;
        the place begins with "vehicles", "hours" or "room".
    """
    if not answers.vehicles:
        raise Refused("vehicles", "name at least one vehicle; the rest has an answer already")
    if not any(hour.days for hour in answers.hours):
        raise Refused("hours", "choose at least one day")
    book = _equipped(_timed(book, answers.hours, today), answers, translate)
    try:
        models = tuple(_model(vehicle, translate) for vehicle in answers.vehicles)
        project = Project(name=answers.project, models=models)
        book = replace(book, projects=(*book.projects, project))
        for vehicle in _alike(answers.vehicles):
            book = _given(book, answers, vehicle, translate)
        if answers.warm_box:
            book = offered(book, answers.project, translate(WARM_BOX.name))
    except Refused as refused:
        raise refused.under("vehicles") from refused
    return Edit(called("begin {project}", project=answers.project), book, verb=GIVES)


def options_for(book: Book, vehicle: Vehicle, *, airbrush: bool) -> tuple[str, ...]:
    """Return every option that a vehicle is finished with, the usual ones filled in."""
    sequence = sequence_named(book, vehicle.sequence)
    if airbrush:
        return complete(sequence, vehicle.options)
    return without_airbrush(sequence, vehicle.options)


def told_hours(book: Book) -> tuple[FirstHours, ...]:
    """Return the bench time of a book as one would tell it; rules that are not weekly are left out.

    Answers with these very hours leave its bench time as it is.
    """
    told = ((weekly_days(stretch), stretch) for stretch in book.bench_time.stretches)
    return tuple(
        FirstHours(days=days, start=rule.start, end=rule.end) for days, rule in told if days
    )


def told_air(book: Book) -> tuple[float, float]:
    """Return the air at the bench in two numbers [°C, % RH]: the mean of its workdays' points.

    Answers with these very numbers leave its room as it is.
    """
    points = book.room.locations[0].workdays
    warm = sum(point.temperature_c for point in points) / len(points)
    damp = sum(point.humidity_pct for point in points) / len(points)
    return round(warm, 1), float(round(damp))


def read_hours(text: str) -> tuple[str, str]:
    """Read "19:30-21:30", "20-22" or "19.30 – 21" as two times of the clock.

    Raises
    ------
    Refused
        If it is no such thing.
    """
    found = re.fullmatch(
        r"\s*(\d{1,2})(?:[:.h](\d{2}))?\s*[-–—]\s*(\d{1,2})(?:[:.h](\d{2}))?\s*", text
    )
    mend = message('"{text}" are no hours; write them as 19:30-21:30 or 20-22', text=text.strip())
    if found is None:
        raise Refused("hours", mend)
    numbers = [int(part or 0) for part in found.groups()]
    if numbers[2] == 24 and not numbers[3]:
        numbers[2] = 0
    if numbers[0] > 23 or numbers[2] > 23 or numbers[1] > 59 or numbers[3] > 59:
        raise Refused("hours", mend)
    return f"{numbers[0]:02d}:{numbers[1]:02d}", f"{numbers[2]:02d}:{numbers[3]:02d}"


def _timed(book: Book, hours: tuple[FirstHours, ...], today: date) -> Book:
    if hours == told_hours(book):
        return book
    try:
        stretches = tuple(
            Recurring(
                rule="FREQ=WEEKLY;BYDAY=" + ",".join(WEEKDAYS[day] for day in sorted(hour.days)),
                since=today,
                start=hour.start,
                end=hour.end,
            )
            for hour in hours
            if hour.days
        )
        return replace(book, bench_time=replace(book.bench_time, stretches=stretches))
    except Refused as refused:
        raise refused.under("hours") from refused


def _equipped(book: Book, answers: Answers, translate: Translate) -> Book:
    try:
        air = AirPoint(
            at="00:00",
            temperature_c=answers.temperature_c,
            humidity_pct=answers.humidity_pct,
        )
        first, *others = book.room.locations
        if (answers.temperature_c, answers.humidity_pct) != told_air(book):
            first = replace(first, workdays=(air,), weekends=())
        locations = [first, *others]
        warm_box = replace(WARM_BOX, name=translate(WARM_BOX.name))
        if answers.warm_box and warm_box.name not in [location.name for location in locations]:
            locations.append(warm_box)
        room = replace(book.room, locations=tuple(locations))
    except Refused as refused:
        raise refused.under("room") from refused
    gear = book.gear
    if answers.airbrush and not gear.airbrushes:
        gear = replace(gear, airbrushes=(Airbrush(name=translate(AIRBRUSH)),))
    elif not answers.airbrush and not book.projects:
        gear = Gear()
    return replace(book, room=room, gear=gear)


def _model(vehicle: Vehicle, translate: Translate) -> Model:
    handle = translate(HANDLE)
    return bare_model(vehicle.name, vehicle.scale, translate, vehicle.kind, holder=handle)


def _alike(vehicles: Iterable[Vehicle]) -> dict[Vehicle, None]:
    """Return one of each vehicles that are finished alike; its name does not matter."""
    return dict.fromkeys(
        replace(vehicle, name="any", scale="", kind=ModelKind.OTHER) for vehicle in vehicles
    )


def _given(book: Book, answers: Answers, kind: Vehicle, translate: Translate) -> Book:
    names = [
        vehicle.name
        for vehicle in answers.vehicles
        if (vehicle.sequence, vehicle.options) == (kind.sequence, kind.options)
    ]
    options = options_for(book, kind, airbrush=answers.airbrush)
    return give_sequence(
        book, answers.project, names, kind.sequence, options, translate=translate
    ).book
