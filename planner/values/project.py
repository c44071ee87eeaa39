"""Projects: models finished together, with a date, wishes and what was done."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum

from planner.values.coating import State
from planner.values.model import Model
from planner.values.moment import Interval, aware, in_years, minute_of
from planner.values.refusal import (
    Refused,
    all_different,
    demand,
    demand_known,
    number_in,
    plain_name,
)


@dataclass(frozen=True, kw_only=True)
class Pin:
    """A wish that the plan must keep (definition 24).

    ``coat`` absent means every coat of the step.  Exactly one of: ``on``
    (the local date on which the stretch of bench time begins), ``start`` and
    ``end``, ``not_before``, or ``beside`` (another step of the project, as
    "model/step", whose first piece must lie in the same stretch).
    """

    model: str
    step: str
    coat: int | None = None
    on: date | None = None
    start: datetime | None = None
    end: datetime | None = None
    not_before: datetime | None = None
    beside: str | None = None

    def __post_init__(self) -> None:
        if self.coat is not None:
            number_in(self.coat, 1, 20, "coat")
        timed = self.start is not None or self.end is not None
        given = [self.on is not None, timed, self.not_before is not None, self.beside is not None]
        demand(sum(given) == 1, "", 'give one of "on", "start" and "end", "not_before", "beside"')
        if self.on is not None:
            in_years(self.on, "on")
        if self.not_before is not None:
            aware(self.not_before, "not_before")
        if self.beside is not None:
            demand(
                self.beside.count("/") == 1 and self.beside != f"{self.model}/{self.step}",
                "beside",
                'names another step of the project, as "model/step"',
            )
        if timed:
            if self.start is None or self.end is None:
                raise Refused("", 'give both "start" and "end"')
            aware(self.start, "start")
            aware(self.end, "end")
            demand(self.start < self.end, "end", "must lie after start")

    @property
    def interval(self) -> Interval | None:
        """The pinned interval in UTC minutes; None for a date."""
        if self.start is None or self.end is None:
            return None
        return Interval(minute_of(self.start), minute_of(self.end, up=False))


@dataclass(frozen=True, kw_only=True)
class Used:
    """What was used of one coating [ml], losses included."""

    coating: str
    ml: float

    def __post_init__(self) -> None:
        demand(bool(self.coating), "coating", "is empty; name a coating")
        number_in(self.ml, 0, 100_000, "ml", "ml")


@dataclass(frozen=True, kw_only=True)
class Logged:
    """A fact: this coat of this step was begun, and ended unless under way.

    Attributes
    ----------
    minutes, planned
        Minutes of work as they were, and as the plan had them at that time.
    temperature_c, humidity_pct
        What the gauge showed [°C], [% RH].
    used
        What was taken from which bottle.
    ticked
        Places that are done so far, while it is under way.
    photos
        Names of files in the book's folder of photos.
    airbrush
        What it was sprayed with; "" where it was not, or nobody said.
    """

    model: str
    step: str
    coat: int = 1
    start: datetime
    end: datetime | None = None
    minutes: int | None = None
    planned: int | None = None
    temperature_c: float | None = None
    humidity_pct: float | None = None
    used: tuple[Used, ...] = ()
    ticked: tuple[str, ...] = ()
    note: str = ""
    photos: tuple[str, ...] = ()
    airbrush: str = ""

    def __post_init__(self) -> None:
        number_in(self.coat, 1, 20, "coat")
        aware(self.start, "start")
        if self.end is not None:
            aware(self.end, "end")
            demand(self.start < self.end, "end", "must lie after start")
        for field in ("minutes", "planned"):
            if getattr(self, field) is not None:
                number_in(getattr(self, field), 1, 14_400, field, "min")
        if self.temperature_c is not None:
            number_in(self.temperature_c, -30, 60, "temperature_c", "°C")
        if self.humidity_pct is not None:
            number_in(self.humidity_pct, 0, 100, "humidity_pct", "% RH")
        all_different([used.coating for used in self.used], "used", "coating")
        all_different(self.ticked, "ticked", "")
        demand(len(self.note) <= 10_000, "note", "is longer than 10000 characters; shorten it")
        all_different(self.photos, "photos", "")
        for index, photo in enumerate(self.photos):
            plain_name(photo, f"photos[{index}]")
        if self.airbrush:
            plain_name(self.airbrush, "airbrush")


@dataclass(frozen=True, kw_only=True)
class Observed:
    """A film was looked at: it had reached a drying state at that moment, or had not."""

    model: str
    step: str
    coat: int = 1
    at: datetime
    state: State
    reached: bool

    def __post_init__(self) -> None:
        number_in(self.coat, 1, 20, "coat")
        aware(self.at, "at")


class Event(StrEnum):
    """What can happen at the bench beside work itself."""

    SKIPPED = "skipped"
    DROPPED = "dropped"
    DISLIKED = "disliked"
    TACKY = "still tacky"
    MISSED = "window missed"
    RAN_OUT = "ran out"
    STOPPED = "stopped early"
    NOTE = "note"


@dataclass(frozen=True, kw_only=True)
class Happened:
    """One line of the diary: what happened, to which step, and what was done about it.

    ``step`` may name a step that has since left the model.
    """

    at: datetime
    event: Event
    model: str = ""
    step: str = ""
    text: str = ""

    def __post_init__(self) -> None:
        aware(self.at, "at")
        demand(len(self.text) <= 2000, "text", "is longer than 2000 characters; shorten it")


@dataclass(frozen=True, kw_only=True)
class Project:
    """Models finished together.

    ``target`` means the end of that local day; it is soft (definition 26).
    Nothing of it is done before the local day ``begins``.
    ``weight`` scales its lateness in the cost.  An inactive project is kept
    but not planned.  The model named by ``pilot`` is finished before any
    other is begun.  ``observed`` and ``diary`` are facts beside the log.
    """

    name: str
    models: tuple[Model, ...]
    target: date | None = None
    weight: int = 1
    active: bool = True
    pins: tuple[Pin, ...] = ()
    log: tuple[Logged, ...] = ()
    note: str = ""
    pilot: str = ""
    observed: tuple[Observed, ...] = ()
    diary: tuple[Happened, ...] = ()
    begins: date | None = None

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        demand(len(self.models) >= 1, "models", "is empty; put at least one on the table")
        all_different([model.name for model in self.models], "models")
        number_in(self.weight, 1, 1000, "weight")
        demand(len(self.note) <= 10_000, "note", "is longer than 10000 characters; shorten it")
        for field in ("target", "begins"):
            if getattr(self, field) is not None:
                in_years(getattr(self, field), field)
        if self.pilot:
            demand_known(self.pilot, [model.name for model in self.models], "model", "pilot")
        all_different(
            [f"{entry.model}/{entry.step}#{entry.coat}" for entry in self.log], "log", "coat"
        )

    def model(self, name: str) -> Model:
        """Return the model called ``name``; `KeyError` if there is none."""
        for model in self.models:
            if model.name == name:
                return model
        raise KeyError(name)
