"""Everything the views show of one plan, computed together and then never changed.

No Qt: a background thread makes it.  What reads a part off a plan is imported
when that part is first read: the window is painted before.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from functools import cached_property
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

if TYPE_CHECKING:
    from app.service.hard_clear import HardClear
    from app.service.plan_changes import PlanMove
    from app.window.film_events import FilmEvent
    from app.window.strip_content import Strip
    from planner.bench import BenchCalendar
    from planner.cure import Cure
    from planner.evening.gaps import FreeGap
    from planner.evening.run_sheet_notes import Beside
    from planner.graph.slack import Slack
    from planner.layers.disputed_choices import Choice
    from planner.layers.findings import Finding
    from planner.pace.card_times import CardAsk
    from planner.quantity import Shopping
    from planner.schedule.judge import Verdict
    from planner.tonight import RunSheet
    from planner.tonight.replayed_plan import ReplayedPlan
    from planner.values.book import Book
    from planner.values.moment import Interval
    from planner.values.plan import PassKey, Placement, Plan


class SnapshotPart(StrEnum):
    """What of a picture a view shows."""

    SHEET = "tonight"
    MOMENTS = "moments"
    STRIP = "strip"
    CURE = "cure"
    COATS = "coats"
    BUILD = "build"
    SHOPPING = "shopping"


@dataclass(frozen=True)
class RoomAir:
    """Air of the usual location at one minute; no dew point in bone-dry air."""

    location: str
    temperature_c: float
    humidity_pct: float
    dew_point_c: float | None

    @property
    def margin_k(self) -> float | None:
        """How far a surface as warm as the air is above the dew point [K]."""
        return None if self.dew_point_c is None else self.temperature_c - self.dew_point_c


@dataclass(frozen=True)
class BookReading:
    """What is read off a book and the air, whatever the plan; each part when it is looked at."""

    book: Book
    now: int
    cure: Cure

    @cached_property
    def findings(self) -> tuple[Finding, ...]:
        """What is unsound in the order of coats."""
        from planner.layers.findings import find  # noqa: PLC0415

        return find(self.book)

    @cached_property
    def choices(self) -> tuple[Choice, ...]:
        """Edges of the working order on which practice is divided."""
        from planner.layers.disputed_choices import choices  # noqa: PLC0415

        return choices(self.book)

    @cached_property
    def slacks(self) -> dict[str, Slack]:
        """How early each active project can be done, and what can wait, however much bench time."""
        from planner.graph.slack import slack  # noqa: PLC0415

        return {
            project.name: slack(self.book, project, self.now, self.cure)
            for project in self.book.projects
            if project.active
        }


@dataclass(frozen=True)
class PlanSnapshot:
    """One plan and what is read off it, each part when it is first looked at.

    ``offer`` is another plan that gains something, but is not taken unasked;
    ``known`` is what another picture of the very same book has read of it.
    """

    book: Book
    now: int
    plan: Plan
    verdict: Verdict
    cure: Cure
    calendar: BenchCalendar
    offer: Plan | None = None
    known: BookReading | None = None

    @property
    def zone(self) -> ZoneInfo:
        """Zone of the book."""
        return self.calendar.zone

    def with_plan(self, book: Book, plan: Plan, verdict: Verdict) -> PlanSnapshot:
        """Return the picture of another plan; ``book`` is this one with the places it chose."""
        known = self.reading if book == self.book else None
        return PlanSnapshot(book, self.now, plan, verdict, self.cure, self.calendar, known=known)

    @cached_property
    def reading(self) -> BookReading:
        """What is read off the book alone."""
        return self.known or BookReading(self.book, self.now, self.cure)

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What is unsound in the order of coats."""
        return self.reading.findings

    @property
    def choices(self) -> tuple[Choice, ...]:
        """Edges of the working order on which practice is divided."""
        return self.reading.choices

    @property
    def slacks(self) -> dict[str, Slack]:
        """How early each active project can be done, and what can wait, however much bench time."""
        return self.reading.slacks

    @cached_property
    def placed(self) -> dict[PassKey, Placement]:
        """Where each pass stands."""
        return {placed.key: placed for placed in reversed(self.plan.placements)}

    @cached_property
    def laid(self) -> ReplayedPlan:
        """The plan laid out on a table."""
        from planner.tonight.replayed_plan import ReplayedPlan  # noqa: PLC0415

        return ReplayedPlan(self.book, self.plan, self.now, self.calendar, self.cure)

    @cached_property
    def moments(self) -> tuple[FilmEvent, ...]:
        """What opens and what closes after facts."""
        from app.window.film_events import moments  # noqa: PLC0415

        return moments(self.laid)

    @cached_property
    def strip(self) -> Strip:
        """What the timeline draws."""
        import networkx  # noqa: F401, PLC0415 - for what is said beside it: takes a fifth of a second

        from app.window.content_from_plan import strip_of  # noqa: PLC0415

        return strip_of(self.laid)

    @cached_property
    def sheet(self) -> RunSheet:
        """What Tonight shows."""
        from planner.tonight import run_sheet  # noqa: PLC0415

        return run_sheet(self.book, self.plan, self.now)

    @cached_property
    def evening_began(self) -> int:
        """Since when what is done belongs to this evening [minute]."""
        from planner.tonight.in_sight import open_since  # noqa: PLC0415

        return open_since(self.laid, self.sheet.interval)

    @cached_property
    def beside(self) -> Beside:
        """What is to be known beside the run sheet."""
        from planner.evening.run_sheet_notes import beside  # noqa: PLC0415

        return beside(self.book, self.plan, self.sheet, self.cure)

    @cached_property
    def gaps(self) -> tuple[FreeGap, ...]:
        """The gaps of the coming days, and what they are good for."""
        from planner.evening.gaps import gaps  # noqa: PLC0415

        return gaps(self.laid)

    @cached_property
    def card_asks(self) -> tuple[CardAsk, ...]:
        """What drying cards ask in the session of the run sheet."""
        if not self.book.drying_cards:
            return ()
        from app.service.drying_cards import asked_within  # noqa: PLC0415

        return asked_within(self.book, self.now, self.sheet.interval, self.cure)

    @cached_property
    def tonight(self) -> tuple[RunSheet, Beside, tuple[FreeGap, ...], tuple[CardAsk, ...]]:
        """The run sheet, what is beside it, what gaps are good for, and what cards ask."""
        return self.sheet, self.beside, self.gaps, self.card_asks

    @cached_property
    def air(self) -> RoomAir:
        """Air of the usual location."""
        return _air(self)

    @cached_property
    def shopping(self) -> Shopping:
        """What the work left takes, against the stock."""
        from planner.quantity import shopping  # noqa: PLC0415

        return shopping(self.book, self.plan, self.now)

    @cached_property
    def hard_clears(self) -> tuple[HardClear, ...]:
        """From when on each model may get a hard clear."""
        from app.service.hard_clear import hard_clears  # noqa: PLC0415

        return hard_clears(self.laid.table)

    @cached_property
    def coats(
        self,
    ) -> tuple[tuple[Finding, ...], tuple[Choice, ...], tuple[HardClear, ...]]:
        """What the Coat stack view says of the order of coats."""
        return self.findings, self.choices, self.hard_clears

    @cached_property
    def build(self) -> tuple[tuple[Finding, ...], dict[str, Slack]]:
        """What the Build view says of the steps: findings and slack."""
        return self.findings, self.slacks

    def has(self, part: SnapshotPart) -> bool:
        """Tell whether a part has been read."""
        return part.value in self.__dict__

    def prepare(self, part: SnapshotPart) -> None:
        """Read a part now, so that whoever shows it need not wait."""
        getattr(self, part.value)


@dataclass(frozen=True)
class PlanChange:
    """A picture that takes the place of another, and what moved between them."""

    old: PlanSnapshot | None
    new: PlanSnapshot
    moves: tuple[PlanMove, ...]
    cause: str


def picture_of(
    book: Book,
    now: int,
    *,
    last: Plan | None = None,
    quick: bool = False,
    promised: Sequence[Interval] = (),
    shown: bool = False,
    stop: Callable[[], bool] | None = None,
) -> PlanSnapshot:
    """Plan a book from ``now`` on; all else as for `app.service.planning.plan`.

    Raises
    ------
    Unsound
        If the judge refuses the plan; then nothing of it is shown.
    Stopped
        If ``stop`` says so.
    """
    from app.service.planning import plan  # noqa: PLC0415

    planned = plan(book, now, last=last, quick=quick, promised=promised, shown=shown, stop=stop)
    # The logbook may be ahead of the clock; the plan says which minute it begins with.
    here = planned.plan.now
    return PlanSnapshot(
        planned.book,
        here,
        planned.plan,
        planned.verdict,
        planned.cure,
        planned.calendar,
        planned.offer,
    )


def _air(picture: PlanSnapshot) -> RoomAir:
    from planner.air import dew_point_c  # noqa: PLC0415

    usual = picture.book.room.locations[0]
    air = picture.cure.air(usual.name).at(picture.now)
    dew = dew_point_c(air.temperature_c, air.humidity_pct) if air.humidity_pct > 0 else None
    return RoomAir(usual.name, air.temperature_c, air.humidity_pct, dew)
