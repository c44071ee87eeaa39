"""Changes tried beside the plan: what they would do to finish, evenings and set-up.

A scenario is a few changes in a row; each is a pure function from a book to
a book.  Nothing is written before a person keeps a scenario, and then as
one edit of the book as it stands at that moment.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime
from typing import Protocol

from app.service import edits, wishes
from app.service.edits import WEEKDAYS, Edit
from app.service.planning import plan
from app.service.planning_errors import Stopped
from planner.bench import calendar_of
from planner.layers.findings import find
from planner.layers.named_mends import Remove
from planner.schedule.missed_dates import missed_dates
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.book_changes import with_model_steps
from planner.values.keys import ModelKey
from planner.values.lookup import project_of
from planner.values.message import message
from planner.values.model import Model
from planner.values.plan import Plan
from planner.values.refusal import Refused, demand, plain_name, unknown
from planner.values.room import AirPoint, Location
from planner.values.step import LAYS_NO_FILM, UNDONE_BY, Stage, Step


class TriedChange(Protocol):
    """One thing that is tried; `Refused` where it cannot be."""

    def apply(self, book: Book) -> Book:
        """Return the changed book."""


@dataclass(frozen=True)
class OneMoreEvening:
    """Bench time on one more weekday (0 is Monday), from a date on."""

    weekday: int
    start: str
    end: str
    since: date

    def apply(self, book: Book) -> Book:
        """Add it beside the other stretches."""
        rule = f"FREQ=WEEKLY;BYDAY={WEEKDAYS[self.weekday]}"
        more = Recurring(rule=rule, since=self.since, start=self.start, end=self.end)
        return edits.set_stretches(book, (*book.bench_time.stretches, more)).book


@dataclass(frozen=True)
class Once:
    """One stretch of bench time beside the rules."""

    start: datetime
    end: datetime

    def apply(self, book: Book) -> Book:
        """Add it."""
        return edits.add_stretch(book, self.start, self.end).book


@dataclass(frozen=True)
class LeaveOut:
    """All steps of one stage, on one model or, "", on every one of the project.

    Steps that only serve what is left out (wiping back a wash) go with it;
    what is in the logbook stays.
    """

    project: str
    model: str
    stage: Stage

    def apply(self, book: Book) -> Book:
        """Take the steps out."""
        gone = 0
        for model in _models(book, self.project, self.model):
            spot = ModelKey(self.project, model.name)
            for step in _with_servants(model, self.stage):
                before = book
                book = Remove(spot, step).apply(book)
                gone += book is not before
        demand(
            gone > 0,
            "stage",
            message('nothing with the stage "{stage}" is left to do there', stage=self.stage),
        )
        return book


@dataclass(frozen=True)
class Elsewhere:
    """Films of one stage dry in another location, on one model or, "", on every one.

    With ``temperature_c`` the location is a new one, with that air and room
    for ``drying_places`` parts [°C, % RH].
    """

    project: str
    model: str
    stage: Stage
    location: str
    temperature_c: float | None = None
    humidity_pct: float = 30
    drying_places: int = 4

    def apply(self, book: Book) -> Book:
        """Let the films dry there."""
        book = self._with_location(book)
        found = 0
        for model in _models(book, self.project, self.model):
            steps = tuple(self._moved(step) for step in model.steps)
            found += steps != model.steps
            book = with_model_steps(book, ModelKey(self.project, model.name), steps)
        demand(
            found > 0,
            "stage",
            message('nothing with the stage "{stage}" would dry elsewhere', stage=self.stage),
        )
        return book

    def _moved(self, step: Step) -> Step:
        if step.stage is not self.stage or not step.applications:
            return step
        others = tuple(name for name in step.or_in if name != self.location)
        return replace(step, dries_in=self.location, or_in=others)

    def _with_location(self, book: Book) -> Book:
        known = [one.name for one in book.room.locations]
        if self.temperature_c is None:
            if self.location not in known:
                raise Refused("location", unknown("location", self.location, known))
            return book
        plain_name(self.location, "location")
        demand(
            self.location not in known,
            "location",
            message('"{location}" is there already', location=self.location),
        )
        air = AirPoint(at="00:00", temperature_c=self.temperature_c, humidity_pct=self.humidity_pct)
        new = Location(name=self.location, drying_places=self.drying_places, workdays=(air,))
        room = replace(book.room, locations=(*book.room.locations, new))
        return replace(book, room=room)


@dataclass(frozen=True)
class First:
    """One model is finished before any other of its project is begun; "" for none."""

    project: str
    model: str

    def apply(self, book: Book) -> Book:
        """Make it the pilot."""
        return wishes.set_pilot(book, self.project, self.model).book


@dataclass(frozen=True)
class Weight:
    """A project's lateness weighs so much."""

    project: str
    weight: int

    def apply(self, book: Book) -> Book:
        """Set the weight."""
        return edits.set_weight(book, self.project, self.weight).book


@dataclass(frozen=True)
class AirAllDay:
    """Another air in a location, the same all day [°C, % RH]."""

    location: str
    temperature_c: float
    humidity_pct: float

    def apply(self, book: Book) -> Book:
        """Set the air."""
        return edits.set_air(book, self.location, self.temperature_c, self.humidity_pct).book


@dataclass(frozen=True)
class Scenario:
    """Changes that are tried together; ``name`` is what the journal would call them."""

    name: str
    changes: tuple[TriedChange, ...]

    def apply(self, book: Book) -> Edit:
        """Make all changes as one edit.

        Raises
        ------
        Refused
            If one of them cannot be made, or all of them change nothing.
        """
        after = book
        for change in self.changes:
            after = change.apply(after)
        demand(after != book, "", message("changes nothing"))
        return Edit(self.name, after)


@dataclass(frozen=True)
class PlanFigures:
    """What a plan comes to, in the terms of its cost (definition 27).

    ``finish`` is the last finish, a minute; ``unsound`` counts findings of
    the order of coats; ``rough`` tells that only one rule was tried.
    """

    finish: int
    finishes: tuple[tuple[str, int], ...]
    evenings: int
    setup_minutes: int
    late: int
    unplaced: int
    unsound: int
    rough: bool = False


def outcome_of(book: Book, plan: Plan, *, rough: bool = False) -> PlanFigures:
    """Read off a plan what scenarios are compared by."""
    return PlanFigures(
        finish=max((at for _, at in plan.finishes), default=plan.now),
        finishes=plan.finishes,
        evenings=plan.cost.stretches,
        setup_minutes=plan.cost.setup_minutes,
        late=sum(one.minutes for one in missed_dates(book, calendar_of(book.bench_time), plan)),
        unplaced=plan.cost.unplaced,
        unsound=len(find(book)),
        rough=rough,
    )


def tried(
    book: Book,
    now: int,
    scenario: Scenario,
    stop: Callable[[], bool],
    last: Plan | None = None,
) -> Iterator[PlanFigures]:
    """Yield what a scenario comes to: a first look, then with every rule tried.

    ``last`` is the plan as it is, near to which the scenario is planned.

    Nothing more comes once ``stop`` says so.

    Raises
    ------
    Refused
        If the scenario cannot be made of this book.
    Unsound
        If the judge refuses the plan.
    """
    changed = scenario.apply(book).book
    for quick in (True, False):
        try:
            made = plan(changed, now, last=last, quick=quick, stop=stop)
        except Stopped:
            return
        yield outcome_of(changed, made.plan, rough=quick)


def stages_left(book: Book, project: str, model: str = "") -> tuple[Stage, ...]:
    """Return the stages that still have a step to do, in working order."""
    found: dict[Stage, None] = {}
    log = {(entry.model, entry.step) for entry in project_of(book, project).log}
    for one in _models(book, project, model):
        for step in one.steps:
            if (one.name, step.id) not in log:
                found.setdefault(step.stage)
    return tuple(found)


def _with_servants(model: Model, stage: Stage) -> list[str]:
    """Return the steps of a stage, and those that lay nothing and are gated after one."""
    gone: list[str] = []
    for step in model.steps:
        serves = step.stage in LAYS_NO_FILM and any(gate.after in gone for gate in step.gates)
        serves = serves or step.stage is UNDONE_BY.get(stage)
        if step.stage is stage or serves:
            gone.append(step.id)
    return gone


def _models(book: Book, project: str, model: str) -> tuple[Model, ...]:
    models = project_of(book, project).models
    chosen = tuple(one for one in models if model in ("", one.name))
    if not chosen:
        raise Refused("model", unknown("model", model, [one.name for one in models]))
    return chosen
