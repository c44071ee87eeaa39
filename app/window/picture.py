"""Everything the views show of one plan, computed together and then never changed.

No Qt: a background thread makes it.
"""

from __future__ import annotations

from dataclasses import dataclass

from app.service.moves import Move
from app.service.planning import plan
from app.window.timeline.content import Laid, Strip, strip_of
from planner.air import dew_point_c
from planner.schedule.judge import Verdict
from planner.tonight import RunSheet, run_sheet
from planner.values.book import Book
from planner.values.plan import Plan


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
class Picture:
    """One plan and what is read off it."""

    book: Book
    plan: Plan
    verdict: Verdict
    laid: Laid
    strip: Strip
    sheet: RunSheet
    air: RoomAir


@dataclass(frozen=True)
class Change:
    """A picture that takes the place of another, and what moved between them."""

    old: Picture | None
    new: Picture
    moves: tuple[Move, ...]
    cause: str


def picture_of(book: Book, now: int) -> Picture:
    """Plan a book from ``now`` on and read everything off the plan.

    Raises
    ------
    Unsound
        If the judge refuses the plan; then nothing of it is shown.
    """
    planned = plan(book, now)
    laid = Laid(book, planned.plan, now)
    return Picture(
        book=book,
        plan=planned.plan,
        verdict=planned.verdict,
        laid=laid,
        strip=strip_of(laid),
        sheet=run_sheet(book, planned.plan, now),
        air=_air(laid),
    )


def _air(laid: Laid) -> RoomAir:
    usual = laid.book.room.locations[0]
    air = laid.problem.cure.air(usual.name).at(laid.now)
    dew = dew_point_c(air.temperature_c, air.humidity_pct) if air.humidity_pct > 0 else None
    return RoomAir(usual.name, air.temperature_c, air.humidity_pct, dew)
