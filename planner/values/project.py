"""Projects: models finished together, with a date, wishes and what was done."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum
from typing import Annotated

from planner.values.coating import State
from planner.values.field import NAME, Field, Value
from planner.values.model import Model, Weight
from planner.values.moment import Interval, minute_of
from planner.values.refusal import Refused, all_different, demand, demand_known, plain_name
from planner.values.room import Celsius, Humidity
from planner.values.step import MOST_COATS

Coat = Annotated[int, Field(least=1, most=MOST_COATS)]
"""Which coat of a step."""
Spent = Annotated[int | None, Field(unit="min", least=1, most=14_400)]
Note = Annotated[str, Field(most=10_000)]


@dataclass(frozen=True, kw_only=True)
class Pin(Value):
    """A wish that the plan must keep (definition 24).

    ``coat`` absent means every coat of the step.  Exactly one of: ``on``
    (the local date on which the stretch of bench time begins), ``start`` and
    ``end``, ``not_before``, or ``beside`` (another step of the project, as
    "model/step", whose first piece must lie in the same stretch).
    """

    model: str
    step: str
    coat: Annotated[int | None, Field(least=1, most=MOST_COATS)] = None
    on: date | None = None
    start: datetime | None = None
    end: datetime | None = None
    not_before: datetime | None = None
    beside: str | None = None

    def __post_init__(self) -> None:
        super().__post_init__()
        timed = self.start is not None or self.end is not None
        given = [self.on is not None, timed, self.not_before is not None, self.beside is not None]
        demand(sum(given) == 1, "", 'give one of "on", "start" and "end", "not_before", "beside"')
        if self.beside is not None:
            demand(
                self.beside.count("/") == 1 and self.beside != f"{self.model}/{self.step}",
                "beside",
                'names another step of the project, as "model/step"',
            )
        if timed:
            if self.start is None or self.end is None:
                raise Refused("", 'give both "start" and "end"')
            demand(self.start < self.end, "end", "must lie after start")

    @property
    def interval(self) -> Interval | None:
        """The pinned interval in UTC minutes; None for a date."""
        if self.start is None or self.end is None:
            return None
        return Interval(minute_of(self.start), minute_of(self.end, up=False))


@dataclass(frozen=True, kw_only=True)
class Used(Value):
    """What was used of one coating [ml], losses included."""

    coating: str
    ml: Annotated[float, Field(unit="ml", least=0, most=100_000, decimals=1)]

    def __post_init__(self) -> None:
        demand(bool(self.coating), "coating", "is empty; name a coating")
        super().__post_init__()


@dataclass(frozen=True, kw_only=True)
class Logged(Value):
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
    coat: Coat = 1
    start: datetime
    end: datetime | None = None
    minutes: Spent = None
    planned: Spent = None
    temperature_c: Celsius | None = None
    humidity_pct: Humidity | None = None
    used: Annotated[tuple[Used, ...], Field(unique="coating")] = ()
    ticked: Annotated[tuple[str, ...], Field(unique="")] = ()
    note: Note = ""
    photos: Annotated[tuple[str, ...], Field(unique="")] = ()
    airbrush: str = ""

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(self.end is None or self.start < self.end, "end", "must lie after start")
        for index, photo in enumerate(self.photos):
            plain_name(photo, f"photos[{index}]")
        if self.airbrush:
            plain_name(self.airbrush, "airbrush")


@dataclass(frozen=True, kw_only=True)
class Observed(Value):
    """A film was looked at: it had reached a drying state at that moment, or had not."""

    model: str
    step: str
    coat: Coat = 1
    at: datetime
    state: State
    reached: bool


class StageReached(StrEnum):
    """How far a model is."""

    NOTHING = "nothing yet"
    PRIMED = "primed"
    BASE = "base coated"
    COLOURS = "all colours on"
    DECALS = "decals on"


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
    TOO_SOON = "over a film not ready"
    TOO_LATE = "after its window"


@dataclass(frozen=True, kw_only=True)
class Happened(Value):
    """One line of the diary: what happened, to which step, and what was done about it.

    ``step`` may name a step that has since left the model.
    """

    at: datetime
    event: Event
    model: str = ""
    step: str = ""
    text: Annotated[str, Field(most=2000)] = ""


@dataclass(frozen=True, kw_only=True)
class Project(Value):
    """Models finished together.

    ``target`` means the end of that local day; it is soft (definition 26).
    Nothing of it is done before the local day ``begins``.
    ``weight`` scales its lateness in the cost.  An inactive project is kept
    but not planned.  The model named by ``pilot`` is finished before any
    other is begun.  ``observed`` and ``diary`` are facts beside the log.
    """

    name: Annotated[str, NAME]
    models: Annotated[tuple[Model, ...], Field(unique="name")]
    target: date | None = None
    weight: Weight = 1
    active: bool = True
    pins: tuple[Pin, ...] = ()
    log: tuple[Logged, ...] = ()
    note: Note = ""
    pilot: str = ""
    observed: tuple[Observed, ...] = ()
    diary: tuple[Happened, ...] = ()
    begins: date | None = None

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.models) >= 1, "models", "is empty; put at least one on the table")
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
