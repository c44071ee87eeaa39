"""A plan: where every piece of work stands, and the reason that holds it there."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from planner.values.moment import Interval
from planner.values.wishes import USUAL_ORDER, Level


class PassKey(NamedTuple):
    """Names one pass: a coat (from 1) of a step of a model of a project.

    A tuple, since it is hashed many thousand times for one plan.
    """

    project: str
    model: str
    step: str
    coat: int = 1

    def __str__(self) -> str:
        return f"{self.project}/{self.model}/{self.step}#{self.coat}"


class Cause(StrEnum):
    """What kind of thing holds a piece of work where it is."""

    AT_ONCE = "at once"
    DRYING = "drying"
    WINDOW = "window"
    BENCH_TIME = "bench time"
    HANDS = "hands"
    AIRBRUSH = "airbrush"
    QUIET = "quiet hours"
    DAYLIGHT = "daylight"
    AIR = "air"
    DRYING_PLACE = "drying place"
    PIN = "pin"
    ORDER = "order"
    LOGGED = "logged"
    CLOSING = "closing"  # waits so that what must follow soon can follow in time
    HELPER = "helper"


@dataclass(frozen=True)
class Reason:
    """The binding cause of a start.

    ``until`` is the minute at which the cause let go; ``about`` names the
    pass, coating or airbrush concerned, ``detail`` the drying state.
    """

    cause: Cause
    until: int | None = None
    about: str = ""
    detail: str = ""


@dataclass(frozen=True)
class Placement:
    """One pass with the interval(s) that it is worked on.

    ``airbrush`` names the one used; ``logged`` is true for facts;
    ``location`` is where its films dry if another than the step's own was
    chosen among its alternatives.
    """

    key: PassKey
    pieces: tuple[Interval, ...]
    airbrush: str = ""
    reason: Reason = Reason(Cause.AT_ONCE)
    logged: bool = False
    location: str = ""

    @property
    def start(self) -> int:
        """First minute."""
        return self.pieces[0].start

    @property
    def end(self) -> int:
        """Minute after the last."""
        return self.pieces[-1].end


class BenchKind(StrEnum):
    """Attended work that serves the passes."""

    LOAD = "load"
    CHANGE = "change"
    CLEAN = "clean"
    PREPARE = "prepare"


@dataclass(frozen=True)
class BenchWork:
    """A load, change or cleaning of an airbrush, or the preparation of a film.

    ``coating`` is what the airbrush holds afterwards ("" when clean);
    ``serves`` is the pass that a preparation is for.
    """

    kind: BenchKind
    interval: Interval
    airbrush: str = ""
    coating: str = ""
    serves: PassKey | None = None


class Status(StrEnum):
    """What is known of a plan (definition 25)."""

    OPTIMAL = "optimal"
    FEASIBLE = "feasible"
    INFEASIBLE = "infeasible"
    INCOMPLETE = "incomplete"


@dataclass(frozen=True)
class Cost:
    """Cost by the levels of definition 27, all integers; `in_order` compares.

    ``finish`` and ``late`` are in minutes; ``late`` is Σ weight × minutes
    late; ``finish`` counts from the plan's ``now``.
    """

    unplaced: int
    late: int
    finish: int
    stretches: int
    setup_minutes: int
    moved: int = 0

    def in_order(self, order: tuple[Level, ...] = USUAL_ORDER) -> tuple[int, ...]:
        """Return the passes unplaced, then the levels in a person's order."""
        return (self.unplaced, *(getattr(self, level.value) for level in order))


@dataclass(frozen=True)
class ProvenBound:
    """A proven lower bound of one cost level, and what proved it."""

    level: str
    value: int
    proof: str


@dataclass(frozen=True)
class Unplaced:
    """A pass that no place was found for, and what stands in its way."""

    key: PassKey
    why: str


@dataclass(frozen=True)
class Clash:
    """One of the things that cannot hold together, and how a person may give way."""

    what: str
    relax: str


@dataclass(frozen=True)
class Plan:
    """Every piece of work from ``now`` on, logged facts included.

    ``finishes`` maps project names to the minute of definition 26, and
    ``model_finishes`` names project, model and minute of each model.
    ``digest`` names the input that was planned.  Where it is proven that
    nothing can place everything, ``conflict`` says what clashes.
    """

    now: int
    placements: tuple[Placement, ...]
    bench: tuple[BenchWork, ...]
    unplaced: tuple[Unplaced, ...]
    status: Status
    cost: Cost
    finishes: tuple[tuple[str, int], ...]
    bounds: tuple[ProvenBound, ...] = ()
    digest: str = ""
    conflict: tuple[Clash, ...] = ()
    model_finishes: tuple[tuple[str, str, int], ...] = ()

    def placement(self, key: PassKey) -> Placement | None:
        """Return where a pass stands, or None."""
        return next((placed for placed in self.placements if placed.key == key), None)
