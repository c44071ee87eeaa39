"""Edits that can only help, drawn for a book (definition 27a)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from random import Random

from planner.values.bench_time import Extra
from planner.values.book import Book
from planner.values.model import Model
from planner.values.project import Project
from planner.values.wishes import Preferences

Edit = Callable[[Book, Random], Book]
START = datetime(2031, 3, 3, 12, 0, tzinfo=UTC)


def extra_evening(book: Book, random: Random) -> Book:
    """Give a stretch of its own, before noon or deep in the night, some day soon or far ahead."""
    day = START + timedelta(days=random.choice((1, 2, 3, 5, 8, 13, 400)))
    begin = day.replace(hour=random.choice((3, 9)))
    people = random.choice((1, 2))
    extra = Extra(start=begin, end=begin + timedelta(hours=2), people=people)
    return with_time(book, extra=(*book.bench_time.extra, extra))


def longer(book: Book, random: Random) -> Book:
    """Let every evening of a rule last longer."""
    minutes = random.choice((15, 30, 60))
    return with_time(
        book,
        stretches=tuple(
            replace(stretch, end=_later(stretch.end, minutes))
            if stretch.start < stretch.end < "22:00"
            else stretch
            for stretch in book.bench_time.stretches
        ),
    )


def helped(book: Book, _random: Random) -> Book:
    """Have a helper at every evening."""
    stretches = tuple(replace(stretch, people=2) for stretch in book.bench_time.stretches)
    return with_time(book, stretches=stretches)


def no_quiet(book: Book, _random: Random) -> Book:
    """Let a compressor run at all hours."""
    return with_time(book, quiet=())


def fewer_wishes(book: Book, random: Random) -> Book:
    """Take a wish away."""
    return with_project(book, random, lambda one: replace(one, pins=one.pins[1:], pilot=""))


def no_date(book: Book, random: Random) -> Book:
    """Take a date away."""
    return with_project(book, random, lambda one: replace(one, target=None))


def fewer_steps(book: Book, random: Random) -> Book:
    """Take away the last step of a model, for which nothing waits."""

    def shorter(project: Project) -> Project:
        model = random.choice(project.models)
        gone = model.steps[-1].id
        if any(
            gone in (f"{pin.step}", (pin.beside or "").rpartition("/")[2]) for pin in project.pins
        ):
            return project
        if any(entry.step == gone for entry in project.log):
            return project
        models = tuple(
            _without_last(other) if other is model else other for other in project.models
        )
        return replace(project, models=models)

    return with_project(book, random, shorter)


def another_name(book: Book, random: Random) -> Book:
    """Change what nothing is planned by."""
    coatings = tuple(
        replace(coating, swatch="#123456", in_stock_ml=17) for coating in book.coatings
    )
    return with_project(
        replace(book, coatings=coatings), random, lambda one: replace(one, note="x")
    )


RELAXING: tuple[Edit, ...] = (
    extra_evening,
    longer,
    helped,
    no_quiet,
    fewer_wishes,
    no_date,
    fewer_steps,
    another_name,
)


def with_time(book: Book, **fields: object) -> Book:
    """Return a book with other bench time."""
    return replace(book, bench_time=replace(book.bench_time, **fields))  # type: ignore[arg-type]


def with_project(book: Book, random: Random, change: Callable[[Project], Project]) -> Book:
    """Return a book in which one project is another."""
    at = random.randrange(len(book.projects))
    projects = tuple(change(p) if i == at else p for i, p in enumerate(book.projects))
    return replace(book, projects=projects)


def usual(book: Book) -> Book:
    """Return a book with the usual order of cost."""
    return replace(book, preferences=Preferences())


def _without_last(model: Model) -> Model:
    if len(model.steps) < 2:
        return model
    return replace(model, steps=model.steps[:-1])


def _later(clock: str, minutes: int) -> str:
    at = datetime.combine(START.date(), time.fromisoformat(clock)) + timedelta(minutes=minutes)
    return f"{at:%H:%M}"
