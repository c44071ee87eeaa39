"""Changes of a book that could help a date, each an edit that a person could make."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from app.service import edits, gear_edits, pins, warm_box
from planner.air.moisture import saturation_pressure_pa
from planner.bench import Stretch
from planner.values.book import Book
from planner.values.book_changes import with_project
from planner.values.plan import PassKey
from planner.values.project import Project
from planner.values.room import HOTTEST_C, AirPoint, Location
from planner.values.step import Stage, Step


@dataclass(frozen=True)
class Warmer:
    """A location is so much warmer all day, the water in its air unchanged [K]."""

    location: str
    kelvin: float

    def apply(self, book: Book) -> Book:
        """Return the book with the warmer air."""

        def warmed(point: AirPoint) -> AirPoint:
            warm = min(HOTTEST_C, point.temperature_c + self.kelvin)
            ratio = saturation_pressure_pa(point.temperature_c) / saturation_pressure_pa(warm)
            damp = round(point.humidity_pct * ratio, 1)
            return replace(point, temperature_c=warm, humidity_pct=damp)

        def changed(one: Location) -> Location:
            if one.name != self.location:
                return one
            return replace(
                one,
                workdays=tuple(map(warmed, one.workdays)),
                weekends=tuple(map(warmed, one.weekends)),
            )

        places = tuple(map(changed, book.room.locations))
        return replace(book, room=replace(book.room, locations=places))


@dataclass(frozen=True)
class WarmBox:
    """Slow coats may dry in a warm box, a new one where there is none."""

    def apply(self, book: Book) -> Book:
        """Return the book with the box offered to its slow coats."""
        known = [one for one in book.room.locations if warm_box.sane(book, one)]
        if known:
            return warm_box.offer(book, known[0].name).book
        places = (*book.room.locations, warm_box.WARM_BOX)
        book = replace(book, room=replace(book.room, locations=places))
        return warm_box.offer(book, warm_box.WARM_BOX.name).book


@dataclass(frozen=True)
class OtherCoating:
    """One coating takes the place of another at a stage, wherever that is not begun."""

    stage: Stage
    was: str
    coating: str

    def apply(self, book: Book) -> Book:
        """Return the book with the other coating."""

        def step(old: Step, begun: set[str]) -> Step:
            if old.stage is not self.stage or old.id in begun:
                return old
            coats = tuple(
                replace(one, coating=self.coating) if one.coating == self.was else one
                for one in old.applications
            )
            return replace(old, applications=coats)

        def project(old: Project) -> Project:
            if not old.active:
                return old
            models = []
            for model in old.models:
                begun = {entry.step for entry in old.log if entry.model == model.name}
                steps = tuple(step(one, begun) for one in model.steps)
                models.append(replace(model, steps=steps))
            return replace(old, models=tuple(models))

        return replace(book, projects=tuple(map(project, book.projects)))


@dataclass(frozen=True)
class Aside:
    """A model that is not begun is set aside, kept in a project of its own that is not planned."""

    project: str
    model: str

    def apply(self, book: Book) -> Book:
        """Return the book with the model in a project that rests."""
        home = book.project(self.project)
        model = home.model(self.model)

        def without(old: Project) -> Project:
            return replace(
                old,
                models=tuple(one for one in old.models if one.name != self.model),
                pins=tuple(
                    pin
                    for pin in old.pins
                    if pin.model != self.model
                    and (pin.beside or "").partition("/")[0] != self.model
                ),
                pilot="" if old.pilot == self.model else old.pilot,
            )

        left = with_project(book, self.project, without)
        taken = {one.name for one in book.projects}
        name = next(
            text
            for number in range(1, len(taken) + 2)
            if (text := self.model if number == 1 else f"{self.model} {number}") not in taken
        )
        rests = Project(name=name, models=(model,), active=False)
        return replace(left, projects=(*left.projects, rests))


@dataclass(frozen=True)
class OnTonight:
    """A pass is done in a given session."""

    key: PassKey
    stretch: Stretch

    def apply(self, book: Book) -> Book:
        """Return the book with the wish."""
        return pins.pin_to(book, self.key, self.stretch).book


@dataclass(frozen=True)
class SecondAirbrush:
    """Another airbrush like the first."""

    def apply(self, book: Book) -> Book:
        """Return the book with it."""
        first = book.gear.airbrushes[0]
        taken = {one.name for one in book.gear.airbrushes}
        name = next(
            text for number in range(2, 99) if (text := f"{first.name} {number}") not in taken
        )
        return gear_edits.put_airbrush(book, "", replace(first, name=name)).book


@dataclass(frozen=True)
class TwoPeople:
    """A second person is there for one session."""

    start: datetime
    end: datetime

    def apply(self, book: Book) -> Book:
        """Return the book with both."""
        return edits.add_stretch(book, self.start, self.end, people=2).book


@dataclass(frozen=True)
class Weightier:
    """A project's lateness weighs ten times as much."""

    project: str

    def apply(self, book: Book) -> Book:
        """Return the book with the weight."""
        weight = min(1000, 10 * book.project(self.project).weight)
        return edits.set_weight(book, self.project, weight).book
