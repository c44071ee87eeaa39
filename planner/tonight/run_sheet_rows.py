"""What stands on a run sheet: work, set-up, films that dry, windows that close."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.cautions import Caution
from planner.quantity import Load
from planner.values.coating import State
from planner.values.mix import Portion
from planner.values.moment import Interval
from planner.values.plan import BenchKind, PassKey, Reason
from planner.values.step import Bound, Stage, Tool, Trait


@dataclass(frozen=True)
class SheetCoat:
    """What one coating or mix of a step covers.

    ``portions`` is how the mix is stirred, empty for a coating from the
    bottle; ``places`` are the "part/place" names to tick off.  ``load`` is
    how much of it to put on the palette; None where it is sprayed from a
    load with a row of its own or from a can, done, or not measured by volume.
    """

    coating: str
    swatch: str
    portions: tuple[Portion, ...]
    places: tuple[str, ...]
    load: Load | None = None


@dataclass(frozen=True)
class WorkRow:
    """One pass, or one piece of it, on the run sheet.

    Attributes
    ----------
    coats
        What is laid and where; empty for work that lays nothing.
    places
        Every "part/place" to tick off, coated or only touched.
    free
        When hands are free again: its end, unless it goes on alone.
    piece, pieces
        Which piece of how many, from 1.
    reason
        What holds the pass where it is.
    logged
        It is a fact of the logbook.
    traits
        What else is true of it: smell, noise, daylight, hands free.
    look_in
        Minutes after its end at which somebody should have a look; None
        before the last coat.
    """

    key: PassKey
    stage: Stage
    title: str
    parts: tuple[str, ...]
    coats: tuple[SheetCoat, ...]
    places: tuple[str, ...]
    tool: Tool
    airbrush: str
    start: int
    end: int
    free: int
    piece: int
    pieces: int
    reason: Reason
    cautions: tuple[Caution, ...]
    logged: bool
    traits: tuple[Trait, ...] = ()
    look_in: int | None = None

    @property
    def minutes(self) -> int:
        """Minutes from its start to its end."""
        return self.end - self.start

    @property
    def goes_alone(self) -> bool:
        """Tell whether it goes on without hands before it ends."""
        return self.free < self.end


@dataclass(frozen=True)
class BenchRow:
    """Loading, changing, cleaning or preparing on the run sheet.

    ``load`` is what is filled in for all that it serves.
    """

    kind: BenchKind
    airbrush: str
    coating: str
    swatch: str
    portions: tuple[Portion, ...]
    serves: PassKey | None
    start: int
    end: int
    load: Load | None = None

    @property
    def free(self) -> int:
        """When hands are free again."""
        return self.end

    @property
    def minutes(self) -> int:
        """Attended minutes."""
        return self.end - self.start


Row = WorkRow | BenchRow


@dataclass(frozen=True)
class DryingFilm:
    """A film that is not yet ready for what waits for it.

    Attributes
    ----------
    key
        The pass that laid it.
    places
        Where it lies, as "part/place".
    state
        The state awaited; None where the gate counts minutes.
    since, opens
        When it was laid, and the first minute on which it is ready; None
        if it never will be in this air.
    waiting
        The pass that waits; None if only the finish does.
    """

    key: PassKey
    coating: str
    swatch: str
    places: tuple[str, ...]
    state: State | None
    since: int
    opens: int | None
    waiting: PassKey | None


@dataclass(frozen=True)
class Closing:
    """A window that runs out: ``waiting`` must start, or end, before ``closes``."""

    key: PassKey
    waiting: PassKey
    bound: Bound
    since: int
    closes: int
    planned: int | None
    why: str


@dataclass(frozen=True)
class RunSheet:
    """All that a person at the bench needs to know at ``now``.

    Attributes
    ----------
    interval
        The stretch of bench time; a virtual one where minutes were given.
    on
        Local date on which it begins.
    rows
        Work and set-up in order of time.
    drying, closing
        Films and windows at ``now``, and those that the rows themselves
        will leave behind.
    next_interval, next_opens
        The next stretch with work in it, and what is done there.
    """

    now: int
    interval: Interval
    on: date
    rows: tuple[Row, ...]
    drying: tuple[DryingFilm, ...]
    closing: tuple[Closing, ...]
    next_interval: Interval | None
    next_opens: tuple[WorkRow, ...]

    @property
    def drying_now(self) -> tuple[DryingFilm, ...]:
        """Films that lie there wet at ``now``."""
        return tuple(film for film in self.drying if film.since <= self.now)

    @property
    def drying_after(self) -> tuple[DryingFilm, ...]:
        """Films that this stretch will leave to dry."""
        return tuple(film for film in self.drying if film.since > self.now)

    @property
    def work(self) -> tuple[WorkRow, ...]:
        """The rows that are passes."""
        return tuple(row for row in self.rows if isinstance(row, WorkRow))
