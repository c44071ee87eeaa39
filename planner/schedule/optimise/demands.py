"""What a person could give up of a book: wishes, marks, windows that close, bench time."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta

from planner.bench import BenchCalendar, calendar_of
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.book_changes import with_models, with_project, with_projects
from planner.values.message import message, row
from planner.values.model import Model
from planner.values.moment import moment_of
from planner.values.plan import Clash
from planner.values.project import Pin, Project
from planner.values.step import Gate, Step, Trait

ALWAYS_FROM = date(2020, 1, 1)  # at the latest; whoever is always at the bench is there by now
FIRST_DAY = date(1971, 1, 1)


FREES = frozenset({Trait.HANDS_FREE, Trait.ANY_AIR})
"""Marks that ask nothing and only free a step of something."""


@dataclass(frozen=True)
class Demand:
    """Something that a person may give up; ``without`` is the book without it.

    ``number`` tells it from others of its book that read the same.
    """

    clash: Clash
    without: Callable[[Book], Book]
    number: int = -1


def only(book: Book, kept: Iterable[Demand]) -> Book:
    """Return the book in which only these of its demands hold."""
    numbers = {demand.number for demand in kept}
    for demand in demands(book):
        if demand.number not in numbers:
            book = demand.without(book)
    return book


def demands(book: Book) -> Iterator[Demand]:
    """Yield everything in a book that a person could give up."""
    for number, demand in enumerate(_demands(book)):
        yield replace(demand, number=number)


def _demands(book: Book) -> Iterator[Demand]:
    for project in book.projects:
        if not project.active:
            continue
        for pin in project.pins:
            yield _of_pin(project, pin)
        if project.pilot:
            text = message(
                "{pilot} goes first in {project}", pilot=project.pilot, project=project.name
            )
            yield Demand(
                Clash(text, message("let the other models begin before it is finished")),
                _changed(project.name, lambda old: replace(old, pilot="")),
            )
        if project.begins is not None:
            text = message(
                "{project} does not begin before {begins}",
                project=project.name,
                begins=project.begins,
            )
            yield Demand(
                Clash(text, message("let it begin earlier")),
                _changed(project.name, lambda old: replace(old, begins=None)),
            )
        for model in project.models:
            for step in model.steps:
                yield from _of_step(project, model, step)
    yield from _of_bench_time(book)


def _of_pin(project: Project, pin: Pin) -> Demand:
    what = message("{model}: {step}", model=pin.model, step=pin.step)
    if pin.coat:
        what = message(
            "{model}: {step} (coat {coat})", model=pin.model, step=pin.step, coat=pin.coat
        )
    if pin.on is not None:
        text = message("{what} is wished for {on}", what=what, on=pin.on)
    elif pin.not_before is not None:
        text = message(
            "{what} is wished no earlier than {not_before:%Y-%m-%d %H:%M}",
            what=what,
            not_before=pin.not_before,
        )
    elif pin.beside is not None:
        text = message(
            "{what} is wished in one session with {beside}",
            what=what,
            beside=pin.beside.replace("/", ": "),
        )
    else:
        text = message(
            "{what} is wished for {start:%Y-%m-%d %H:%M} to {end:%H:%M}",
            what=what,
            start=pin.start,
            end=pin.end,
        )

    def without(old: Project) -> Project:
        return replace(old, pins=tuple(other for other in old.pins if other != pin))

    return Demand(Clash(text, message("move or drop this wish")), _changed(project.name, without))


def _of_step(project: Project, model: Model, step: Step) -> Iterator[Demand]:
    for at, gate in enumerate(step.gates):
        if gate.windows[-1].closes is not None:
            text = message(
                "{model}: {step} within the window after {after}",
                model=model.name,
                step=step.id,
                after=gate.after,
            )
            yield Demand(
                Clash(text, message("widen the window, or do less before it")),
                _with_step(project.name, model.name, step.id, _Open(at)),
            )
    # Work that goes on alone asks no more than other work: nobody gains by giving that up.
    asking = tuple(trait for trait in step.traits if trait not in FREES)
    if asking:
        words = row(asking)
        kept = tuple(trait for trait in step.traits if trait in FREES)
        yield Demand(
            Clash(
                message(
                    "{model}: {step} is marked {words}", model=model.name, step=step.id, words=words
                ),
                message("take the mark off"),
            ),
            _with_step(project.name, model.name, step.id, lambda old: replace(old, traits=kept)),
        )
    if step.helper:
        yield Demand(
            Clash(
                message("{model}: {step} needs two people", model=model.name, step=step.id),
                message("do it alone, or ask a helper in"),
            ),
            _with_step(project.name, model.name, step.id, lambda old: replace(old, helper=False)),
        )


@dataclass(frozen=True)
class _Open:
    """Leaves the last window of a step's gate open for ever."""

    at: int

    def __call__(self, step: Step) -> Step:
        gates = list(step.gates)
        old: Gate = gates[self.at]
        *first, last = old.windows
        gates[self.at] = replace(old, windows=(*first, replace(last, closes=None)))
        return replace(step, gates=tuple(gates))


def _of_bench_time(book: Book) -> Iterator[Demand]:
    bench = book.bench_time
    if bench.quiet:
        yield Demand(
            Clash(
                message("quiet hours"), message("do it earlier, or allow noise and smell for once")
            ),
            lambda old: replace(old, bench_time=replace(old.bench_time, quiet=())),
        )
    if bench.daylight:
        yield Demand(
            Clash(message("daylight hours"), message("work by lamp, or on another day")),
            lambda old: replace(old, bench_time=replace(old.bench_time, daylight=())),
        )
    if bench.skipped:
        days = ", ".join(str(day) for day in bench.skipped[:3])
        yield Demand(
            Clash(
                message("no bench time on {days}", days=days),
                message("find an hour on one of these days"),
            ),
            lambda old: replace(old, bench_time=replace(old.bench_time, skipped=())),
        )
    yield Demand(
        Clash(message("the bench time there is"), message("add a session, or make one longer")),
        _always,
    )


def _always(book: Book) -> Book:
    """Return the book with somebody, and a helper, always at the bench.

    Time without end is no stretch that begins on a wished date, so such a
    wish then names the hours of the date, and those of the stretches that
    did begin on it.
    """
    bench = book.bench_time
    calendar = calendar_of(bench)
    first = [rule.since for rule in bench.stretches] + [extra.start.date() for extra in bench.extra]
    since = max(FIRST_DAY, min([ALWAYS_FROM, *(day - timedelta(days=400) for day in first)]))
    whole = Recurring(rule="FREQ=DAILY", since=since, start="00:00", end="00:00", people=2)
    always = replace(book, bench_time=replace(bench, stretches=(whole,), skipped=(), extra=()))
    return with_projects(
        always,
        lambda project: replace(
            project, pins=tuple(_in_hours(pin, calendar) for pin in project.pins)
        ),
    )


def _in_hours(pin: Pin, calendar: BenchCalendar) -> Pin:
    """Return a wish for a date as one for all hours that the date could mean."""
    if pin.on is None:
        return pin
    begin, end = calendar.day_end(pin.on - timedelta(days=1)), calendar.day_end(pin.on)
    own = [
        stretch.interval.end for stretch in calendar.stretches(begin, end) if stretch.on == pin.on
    ]
    start = moment_of(begin, calendar.zone)
    until = moment_of(max([end, *own]), calendar.zone)
    return replace(pin, on=None, start=start, end=until)


def _changed(project: str, change: Callable[[Project], Project]) -> Callable[[Book], Book]:
    return lambda book: with_project(book, project, change)


def _with_step(
    project: str, model: str, step: str, change: Callable[[Step], Step]
) -> Callable[[Book], Book]:
    def with_model(old: Model) -> Model:
        if old.name != model:
            return old
        return replace(
            old, steps=tuple(change(other) if other.id == step else other for other in old.steps)
        )

    return _changed(
        project,
        lambda old: with_models(old, with_model),
    )
