"""What the timeline shows: columns, lanes, work, wedges, brackets.

Plain values: no Qt and no pixels in here.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.values.coating import State
from planner.values.moment import Interval
from planner.values.plan import BenchKind, PassKey, Reason
from planner.values.project import Pin
from planner.values.step import Bound, Stage, Tool


@dataclass(frozen=True)
class StripColumn:
    """One stretch of bench time, or a logged piece of work outside any."""

    interval: Interval
    on: date
    people: int


@dataclass(frozen=True)
class Lane:
    """Parts of one model that are always worked on together."""

    index: int
    project: str
    model: str
    parts: tuple[str, ...]


@dataclass(frozen=True)
class Piece:
    """One interval of work on a pass, with all the lanes it lies in."""

    key: PassKey
    interval: Interval
    number: int
    of: int
    lanes: tuple[int, ...]
    parts: tuple[str, ...]
    stage: Stage
    title: str
    tool: Tool
    coating: str
    swatch: str
    coats: int
    airbrush: str
    reason: Reason
    logged: bool
    free: int  # when hands are free again: its end, unless it goes on alone
    wishes: tuple[Pin, ...] = ()
    marks: tuple[str, ...] = ()  # how it met films outside their windows

    @property
    def pinned(self) -> bool:
        """Tell whether it is wished at a certain time."""
        return any(pin.beside is None and pin.not_before is None for pin in self.wishes)


@dataclass(frozen=True)
class Wedge:
    """A film that dries from ``start``; it thins until ``opens``, None for never.

    ``until`` is when the waiting pass starts: between the two nothing is
    waited for but time at the bench.
    """

    key: PassKey
    lane: int
    coating: str
    start: int
    opens: int | None
    state: State | None
    waiting: PassKey | None
    until: int | None


@dataclass(frozen=True)
class Bracket:
    """A window that closes at ``at`` for ``waiting``."""

    key: PassKey
    lane: int
    waiting: PassKey
    at: int
    bound: Bound
    why: str


@dataclass(frozen=True)
class SetUp:
    """Loading, changing or cleaning of an airbrush; a preparation has none."""

    kind: BenchKind
    interval: Interval
    airbrush: int | None
    coating: str
    swatch: str
    serves: PassKey | None


@dataclass(frozen=True)
class HeldColour:
    """How long an airbrush holds a coating."""

    airbrush: int
    interval: Interval
    coating: str
    swatch: str


@dataclass(frozen=True)
class Strip:
    """Everything that the timeline draws.

    ``beyond`` is the stretch after the last column; ``hidden`` are columns
    that were sifted out.
    """

    now: int
    zone: str
    columns: tuple[StripColumn, ...] = ()
    free: tuple[Interval, ...] = ()
    airbrushes: tuple[str, ...] = ()
    lanes: tuple[Lane, ...] = ()
    pieces: tuple[Piece, ...] = ()
    wedges: tuple[Wedge, ...] = ()
    brackets: tuple[Bracket, ...] = ()
    set_ups: tuple[SetUp, ...] = ()
    held: tuple[HeldColour, ...] = ()
    targets: tuple[tuple[str, int], ...] = ()
    finishes: tuple[tuple[str, int], ...] = ()
    beyond: Interval | None = None
    hidden: tuple[Interval, ...] = ()
