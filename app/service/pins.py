"""Wishes about single pieces of work: pinned, not before, together with.

A wish of one kind takes the place of the same piece's former wish about the
time; "together with" stands beside it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any

from app.service.edits import Edit
from planner.bench import BenchCalendar, Stretch, calendar_of
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.message import called
from planner.values.moment import minute_of, moment_of
from planner.values.plan import PassKey, Plan
from planner.values.project import Pin, Project

DAY = 1440


def wishes_of(book: Book, key: PassKey) -> tuple[Pin, ...]:
    """Return every pin that binds a pass."""
    return tuple(pin for pin in book.project(key.project).pins if binds(pin, key))


def binds(pin: Pin, key: PassKey) -> bool:
    """Tell whether a pin of the pass's own project binds it."""
    return (pin.model, pin.step) == (key.model, key.step) and pin.coat in (None, key.coat)


def pin_to(book: Book, key: PassKey, stretch: Stretch) -> Edit:
    """Wish a pass in one stretch: by its date, or by its hours where the date has several."""
    zone = calendar_of(book.bench_time).zone
    start, end = (moment_of(at, zone) for at in (stretch.interval.start, stretch.interval.end))
    if len(stretches_on(book, stretch.on)) == 1:
        pin = _pin(book, key, on=stretch.on)
    else:
        pin = _pin(book, key, start=start, end=end)
    return _wish(
        book,
        key,
        pin,
        called("pin {name} to {start:%a %Y-%m-%d %H:%M}", name=_name(key), start=start),
    )


def not_before(book: Book, key: PassKey, minute: int) -> Edit:
    """Wish that a pass does not begin before a minute."""
    at = moment_of(minute, calendar_of(book.bench_time).zone)
    pin = _pin(book, key, not_before=at)
    return _wish(
        book, key, pin, called("{name} not before {at:%a %Y-%m-%d %H:%M}", name=_name(key), at=at)
    )


def put_off(book: Book, keys: Sequence[PassKey], minute: int) -> Edit:
    """Wish that several passes, as of one cup of colour, start no earlier, as one edit."""
    edits = [not_before(book, keys[0], minute)]
    for key in keys[1:]:
        edits.append(not_before(edits[-1].book, key, minute))
    if len(edits) == 1:
        return edits[0]
    at = moment_of(minute, calendar_of(book.bench_time).zone)
    name = called("{n} jobs not before {at:%a %Y-%m-%d %H:%M}", n=len(keys), at=at)
    return Edit(name, edits[-1].book)


def beside(book: Book, key: PassKey, other: PassKey) -> Edit:
    """Wish that a pass begins in the same stretch as a step of the same project."""
    pin = _pin(book, key, beside=f"{other.model}/{other.step}")
    return _wish(
        book,
        key,
        pin,
        called("{work} together with {other}", work=_name(key), other=_name(other)),
    )


def unpin(book: Book, key: PassKey) -> Edit:
    """Take back every wish about a pass."""
    gone = wishes_of(book, key)
    return _with_pins(
        book, key.project, called("unpin {name}", name=_name(key)), lambda pin: pin not in gone
    )


def remove(book: Book, project: str, gone: Pin) -> Edit:
    """Take back one wish."""
    name = called("take back a wish: {step}, {model}", step=gone.step, model=gone.model)
    return _with_pins(book, project, name, lambda pin: pin != gone)


def stretches_on(book: Book, day: date) -> tuple[Stretch, ...]:
    """Return the stretches that begin on a local date."""
    calendar = calendar_of(book.bench_time)
    midnight = calendar.day_end(day)
    around = calendar.stretches(midnight - 2 * DAY, midnight + 2 * DAY)
    return tuple(stretch for stretch in around if stretch.on == day)


def next_stretch(calendar: BenchCalendar, minute: int, by: int, now: int) -> Stretch | None:
    """Return the stretch after the one at ``minute`` (``by`` 1), or before it (-1).

    None where there is no such, or it is over at ``now``.
    """
    here = calendar.stretch_at(minute)
    if by > 0:
        return calendar.next_stretch(here.interval.end if here else minute)
    start = here.interval.start if here else minute
    sooner = calendar.stretches(now, start)
    return sooner[-1] if sooner else None


@dataclass(frozen=True)
class Wish:
    """One pin of a project, and whether the plan keeps it (definition 24).

    ``kept`` is None where the plan holds nothing of it.
    """

    project: str
    pin: Pin
    kept: bool | None


def wishes(book: Book, plan: Plan | None) -> tuple[Wish, ...]:
    """Return every wish of the active projects, by project as it was made."""
    calendar = calendar_of(book.bench_time)
    return tuple(
        Wish(project.name, pin, _kept(project, pin, plan, calendar) if plan else None)
        for project in book.projects
        if project.active
        for pin in project.pins
    )


def _kept(project: Project, pin: Pin, plan: Plan, calendar: BenchCalendar) -> bool | None:
    mine = [
        placed
        for placed in plan.placements
        if placed.key.project == project.name and binds(pin, placed.key)
    ]
    if not mine:
        return None
    if pin.on is not None:
        days = _dates(calendar, (piece.start for placed in mine for piece in placed.pieces))
        return all(day == pin.on for day in days)
    if pin.interval is not None:
        first, last = pin.interval.start, pin.interval.end
        return all(first <= placed.start and placed.end <= last for placed in mine)
    if pin.not_before is not None:
        return all(placed.start >= minute_of(pin.not_before) for placed in mine)
    others = [
        placed.start
        for placed in plan.placements
        if placed.key.project == project.name
        and f"{placed.key.model}/{placed.key.step}" == pin.beside
        and placed.key.coat == 1
    ]
    stretches = {calendar.stretch_at(at) for at in (mine[0].start, *others)}
    return len(stretches) == 1 if others else None


def _dates(calendar: BenchCalendar, minutes: Iterable[int]) -> Iterator[date | None]:
    for minute in minutes:
        stretch = calendar.stretch_at(minute)
        yield stretch.on if stretch else None


def _coats(book: Book, key: PassKey) -> int:
    steps = book.project(key.project).model(key.model).steps
    return next(step.coats for step in steps if step.id == key.step)


def _pin(book: Book, key: PassKey, **wish: Any) -> Pin:
    coat = key.coat if _coats(book, key) > 1 else None
    return Pin(model=key.model, step=key.step, coat=coat, **wish)


def _name(key: PassKey) -> str:
    return f"{key.step}, {key.model}"


def _wish(book: Book, key: PassKey, pin: Pin, name: str) -> Edit:
    """Put a wish in the place of the pass's own one of the same kind."""
    alone = _coats(book, key) == 1

    def stays(other: Pin) -> bool:
        same = binds(other, key) and (alone or other.coat is not None)
        return not same or (other.beside is None) is not (pin.beside is None)

    return _with_pins(book, key.project, name, stays, pin)


def _with_pins(book: Book, name: str, edit: str, keep: Callable[[Pin], bool], *more: Pin) -> Edit:
    def wished(project: Project) -> Project:
        return replace(project, pins=(*filter(keep, project.pins), *more))

    return Edit(edit, with_project(book, name, wished))
