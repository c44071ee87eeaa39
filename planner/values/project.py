"""Projects: models finished together, with a date, wishes and what was done."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from planner.values.model import Model
from planner.values.moment import Interval, aware, in_years, minute_of
from planner.values.refusal import Refused, all_different, demand, number_in, plain_name


@dataclass(frozen=True, kw_only=True)
class Pin:
    """A wish that the plan must keep (definition 24).

    ``coat`` absent means every coat of the step.  Either ``on`` (the local
    date on which the stretch of bench time begins) or ``start`` and ``end``.
    """

    model: str
    step: str
    coat: int | None = None
    on: date | None = None
    start: datetime | None = None
    end: datetime | None = None

    def __post_init__(self) -> None:
        if self.coat is not None:
            number_in(self.coat, 1, 20, "coat")
        if self.on is not None:
            in_years(self.on, "on")
            demand(self.start is None and self.end is None, "on", "excludes start and end")
            return
        if self.start is None or self.end is None:
            raise Refused("", 'give "on", or "start" and "end"')
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
class Logged:
    """A fact: this coat of this step was begun, and ended unless under way."""

    model: str
    step: str
    coat: int = 1
    start: datetime
    end: datetime | None = None

    def __post_init__(self) -> None:
        number_in(self.coat, 1, 20, "coat")
        aware(self.start, "start")
        if self.end is not None:
            aware(self.end, "end")
            demand(self.start < self.end, "end", "must lie after start")


@dataclass(frozen=True, kw_only=True)
class Project:
    """Models finished together.

    ``target`` means the end of that local day; it is soft (definition 26).
    ``weight`` scales its lateness in the cost.  An inactive project is kept
    but not planned.
    """

    name: str
    models: tuple[Model, ...]
    target: date | None = None
    weight: int = 1
    active: bool = True
    pins: tuple[Pin, ...] = ()
    log: tuple[Logged, ...] = ()
    note: str = ""

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        demand(len(self.models) >= 1, "models", "is empty; put at least one on the table")
        all_different([model.name for model in self.models], "models")
        number_in(self.weight, 1, 1000, "weight")
        demand(len(self.note) <= 10_000, "note", "is longer than 10000 characters; shorten it")
        if self.target is not None:
            in_years(self.target, "target")
        all_different(
            [f"{entry.model}/{entry.step}#{entry.coat}" for entry in self.log], "log", "coat"
        )

    def model(self, name: str) -> Model:
        """Return the model called ``name``; `KeyError` if there is none."""
        for model in self.models:
            if model.name == name:
                return model
        raise KeyError(name)
