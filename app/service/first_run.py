"""The first plan: a book from a few short questions, and more vehicles for it later on.

What is on the table and how far it is, which paints stand on the shelf, when
one paints, what the room is like.  Nothing is compulsory but one name;
everything can be changed afterwards.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from datetime import date, datetime, time

from app.service.begun_models import BEFORE, LONG_AGO
from app.service.bench_time_edits import weekly_days
from app.service.books import AIRBRUSH
from app.service.build_edits.models import bare_model
from app.service.clock import current_minute
from app.service.edits import WEEKDAYS, Edit
from app.service.own_paints import taken_colours, with_paints
from app.service.sequences import GIVES, give_sequence
from app.service.warm_box import WARM_BOX, offered
from planner.evening.laid_before import laid_before
from planner.sequences.apply_to_book import sequence_named
from planner.sequences.apply_to_model import colours_needed
from planner.sequences.chosen_options import complete, without_airbrush
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.coating import Coating
from planner.values.gear import Airbrush, Gear
from planner.values.lookup import project_of
from planner.values.message import Translate, called, message
from planner.values.model import Model, ModelKind
from planner.values.moment import minute_of, zone_named
from planner.values.project import Project, StageReached
from planner.values.refusal import Refused
from planner.values.room import AirPoint

HANDLE = "handle"


@dataclass(frozen=True, kw_only=True)
class Vehicle:
    """One line of the table: a model to be, how it is finished, and how far it is.

    ``options`` None means the usual ones of the sequence.  What it has
    ``reached`` was done by the end of the day ``when``; absent, long ago.
    """

    name: str
    scale: str = ""
    sequence: str
    options: tuple[str, ...] | None = None
    kind: ModelKind = ModelKind.OTHER
    reached: StageReached = StageReached.NOTHING
    when: date | None = None


@dataclass(frozen=True, kw_only=True)
class FirstHours:
    """Some weekdays (0 = Monday) with the hours of the bench, "HH:MM"."""

    days: frozenset[int]
    start: str
    end: str


@dataclass(frozen=True, kw_only=True)
class Answers:
    """All that was said: temperature [°C], humidity [% RH], ``owned`` paints."""

    project: str
    vehicles: tuple[Vehicle, ...]
    hours: tuple[FirstHours, ...]
    temperature_c: float = 20.0
    humidity_pct: float = 50.0
    warm_box: bool = False
    airbrush: bool = True
    owned: tuple[Coating, ...] = ()


def begin(
    book: Book,
    answers: Answers,
    today: date,
    translate: Translate = str,
    *,
    now: int | None = None,
) -> Edit:
    """Return the book with the project, evenings, room and gear as they were told.

    ``translate`` gives names to what comes into the book beside that; what
    is done already was done by ``now`` at the latest.

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
    fresh = not book.projects
    book = _equipped(_timed(book, answers.hours, today), answers, translate)
    try:
        book = with_paints(book, answers.owned).book if answers.owned else book
    except Refused as refused:
        raise refused.under("paints") from refused
    try:
        models = tuple(_model(vehicle, translate) for vehicle in answers.vehicles)
        project = Project(name=answers.project, models=models)
        book = replace(book, projects=(*book.projects, project))
        made = _Made(answers.project, answers.airbrush, answers.owned, translate)
        book = _finished(book, made, answers.vehicles, now)
        book = _with_room_for(book, project) if fresh else book
        if answers.warm_box:
            book = offered(book, answers.project, translate(WARM_BOX.name))
    except Refused as refused:
        raise refused.under("vehicles") from refused
    return Edit(called("begin {project}", project=answers.project), book, verb=GIVES)


def more(
    book: Book,
    project: str,
    vehicles: tuple[Vehicle, ...],
    translate: Translate = str,
    *,
    now: int | None = None,
    like: str = "",
) -> Edit:
    """Return the book with more vehicles in a project, finished as they were told.

    They take owned paints where those serve: what stands in the stock with
    an amount.  One that is told just as the model ``like`` is has its
    parts, areas, colours and changes, too.  For the rest see `begin`.

    Raises
    ------
    Refused
        If no vehicle was told, a name is taken, or something cannot be.
    """
    if not vehicles:
        raise Refused("vehicles", "name at least one vehicle; the rest has an answer already")
    project_of(book, project)
    owned = tuple(coating for coating in book.coatings if coating.in_stock_ml > 0)
    try:
        pattern = next((one for one in book.project(project).models if one.name == like), None)
        alike = [one for one in vehicles if pattern is not None and told_so(pattern, one)]
        models = tuple(
            _again(pattern, one.name) if pattern and one in alike else _model(one, translate)
            for one in vehicles
        )
        new = with_project(book, project, lambda old: replace(old, models=(*old.models, *models)))
        made = _Made(project, bool(book.gear.airbrushes), owned, translate)
        others = tuple(one for one in vehicles if one not in alike)
        new = _finished(new, made, others, now)
        new = _begun(new, made, tuple(alike), now)
    except Refused as refused:
        raise refused.under("vehicles") from refused
    whom = vehicles[0].name if len(vehicles) == 1 else called("{n} models", n=len(vehicles))
    return Edit(called("{project}: add {model}", project=project, model=whom), new, verb=GIVES)


def several(text: str) -> tuple[str, ...]:
    """Return the names that "5x Egret" or "Egret x 5" stand for: "Egret 1" to "Egret 5".

    Other text is one name.
    """
    found = re.fullmatch(r"(\d{1,2})\s*[x×]\s+(.+)", text) or re.fullmatch(
        r"(?P<name>.+?)\s+[x×]\s*(?P<n>\d{1,2})", text
    )
    if found is None:
        return (text,)
    told = found.groupdict()
    count, name = (told["n"], told["name"]) if told else (found[1], found[2])
    if int(count) < 2:
        return (name,)
    return tuple(f"{name} {number}" for number in range(1, int(count) + 1))


_KIND_WORDS: tuple[tuple[str, ModelKind], ...] = (
    ("half-?track|tank(?! ?wag)|tracked|panzer|kette|raupe|dozer|crawler", ModelKind.TRACKED),
    ("wagg?on|loco|railcar|tram|lok|waggon|güterwagen|schiene", ModelKind.RAIL),
    ("boat|ship|tug|barge|boot|schiff|kutter|schlepper|punt|ferry|fähre", ModelKind.BOAT),
    ("plane|aircraft|glider|flugzeug|flieger|helicopter|hubschrauber", ModelKind.AIRCRAFT),
    ("figure|figur|rider|driver|soldier|soldat|fahrer|bust|büste", ModelKind.FIGURE),
    ("house|barn|shed|building|ruin|haus|scheune|schuppen|gebäude|ruine", ModelKind.BUILDING),
    ("lorry|lorries|truck|lkw|laster|bus|cart|tractor|traktor|trailer|anhänger", ModelKind.WHEELED),
    (r"\bcars?\b|saloon|van|pkw|auto", ModelKind.CAR),
)


def kind_told(name: str) -> ModelKind | None:
    """Return the kind that a model's name tells, in the languages of the window; None if none."""
    told = name.casefold()
    return next((kind for words, kind in _KIND_WORDS if re.search(words, told)), None)


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


def _with_room_for(book: Book, project: Project) -> Book:
    """Return a new book whose first location has a place for each part at once: assumed.

    Whoever paints so much has somewhere to put it; the room says better.
    """
    stands = sum(part.stands for model in project.models for part in model.parts)
    first, *others = book.room.locations
    first = replace(first, drying_places=max(first.drying_places, stands))
    return replace(book, room=replace(book.room, locations=(first, *others)))


def told_so(model: Model, vehicle: Vehicle) -> bool:
    """Tell whether a line says of a vehicle just what a model is."""
    made = model.made
    return (
        made is not None
        and (made.sequence, model.scale, model.kind)
        == (vehicle.sequence, vehicle.scale, vehicle.kind)
        and (vehicle.options is None or set(vehicle.options) == set(made.options))
    )


def _again(model: Model, name: str) -> Model:
    return replace(model, name=name, target=None, weight=1, early=False)


@dataclass(frozen=True)
class _Made:
    """In which project, and with what, vehicles are finished."""

    project: str
    airbrush: bool
    owned: tuple[Coating, ...]
    translate: Translate


def _finished(
    book: Book,
    made: _Made,
    vehicles: tuple[Vehicle, ...],
    now: int | None,
) -> Book:
    """Return the book with the order of each vehicle, and with what is done of it already."""
    for kind in dict.fromkeys((vehicle.sequence, vehicle.options) for vehicle in vehicles):
        alike = [one for one in vehicles if (one.sequence, one.options) == kind]
        book = _given(book, made, alike)
    return _begun(book, made, vehicles, now)


def _begun(book: Book, made: _Made, vehicles: tuple[Vehicle, ...], now: int | None) -> Book:
    for vehicle in vehicles:
        if vehicle.reached is not StageReached.NOTHING:
            when = _when(book, vehicle, now)
            note = made.translate(BEFORE)
            book = laid_before(book, made.project, vehicle.name, vehicle.reached, when, note)
    return book


def _when(book: Book, vehicle: Vehicle, now: int | None) -> int:
    """Return by when a vehicle was so far: the evening of that day, and not after now."""
    moment = current_minute() if now is None else now
    if vehicle.when is None:
        return moment - LONG_AGO
    evening = datetime.combine(vehicle.when, time(20), zone_named(book.bench_time.zone))
    return min(minute_of(evening), moment - 1)


def _given(book: Book, made: _Made, alike: list[Vehicle]) -> Book:
    first = alike[0]
    options = options_for(book, first, airbrush=made.airbrush)
    sequence = sequence_named(book, first.sequence)
    laid = [
        colour
        for colour in sequence.colours
        if any(
            colour in colours_needed(sequence, model, options)
            for model in book.project(made.project).models
            if model.name in {vehicle.name for vehicle in alike}
        )
    ]
    colours = taken_colours(laid, made.owned)
    names = [vehicle.name for vehicle in alike]
    return give_sequence(
        book, made.project, names, first.sequence, options, colours, translate=made.translate
    ).book
