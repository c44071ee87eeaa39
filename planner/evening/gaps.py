"""Gaps between pieces of work, and what they are good for: brush work, dry fits, decals."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from planner.bench import Stretch
from planner.evening.alternatives import keeps_windows
from planner.schedule.fit import fit_in
from planner.schedule.partial_schedule import PartialSchedule
from planner.tonight.replayed_plan import ReplayedPlan
from planner.values.moment import Interval
from planner.values.plan import PassKey, Placement
from planner.values.step import Stage, Tool

LEAST = 15  # a shorter gap is no time for anything: assumed [min]
AHEAD = 7 * 1440  # how far ahead gaps are offered [min]
DRY_FIT = 10  # trying how parts go together: common practice, no source [min]
CUT_DECALS = 15  # cutting out a sheet of decals: common practice, no source [min]
MOST = 4  # offers for one gap


class GapUse(StrEnum):
    """What a gap is good for."""

    BRUSH = "brush work"
    DRY_FIT = "dry-fit"
    CUT_DECALS = "decals to cut"
    SPRAY = "a spray at the price of one cleaning"


@dataclass(frozen=True)
class GapOffer:
    """One thing that fits into a gap.

    ``minutes`` is what it takes, set-up and cleaning included; ``planned`` is
    when the pass stands in the plan, ``price`` the set-up and cleaning that
    it costs more [min].
    """

    use: GapUse
    key: PassKey
    minutes: int
    planned: int
    price: int = 0


@dataclass(frozen=True)
class FreeGap:
    """Minutes in a stretch in which hands are free, and what they are good for."""

    stretch: Stretch
    start: int
    end: int
    offers: tuple[GapOffer, ...]

    @property
    def minutes(self) -> int:
        """How long it is [min]."""
        return self.end - self.start

    @property
    def on(self) -> date:
        """The local day on which its stretch begins."""
        return self.stretch.on


def gaps(laid: ReplayedPlan, ahead: int = AHEAD) -> tuple[FreeGap, ...]:
    """Return the gaps of the coming days that something fits into, the first one first.

    What is offered leaves all other work where the plan has it, and keeps
    every window that runs then.
    """
    now = laid.now
    found = []
    for stretch in laid.calendar.stretches(now, now + ahead):
        for free in _free(laid, stretch, now):
            offers = tuple(_offers(laid, stretch, free))[:MOST]
            if offers:
                found.append(FreeGap(stretch, free.start, free.end, offers))
    return tuple(found)


def _free(laid: ReplayedPlan, stretch: Stretch, now: int) -> Iterator[Interval]:
    """Yield the minutes of a stretch in which hands do nothing, where they are enough."""
    busy = sorted(
        [
            laid.of(key).attended(piece)
            for key, placed in laid.placed.items()
            for piece in placed.pieces
        ]
        + [work.interval for work in laid.plan.bench]
    )
    at = max(now, stretch.interval.start)
    for hands in busy:
        if hands.end <= at or hands.start >= stretch.interval.end:
            continue
        if hands.start - at >= LEAST:
            yield Interval(at, hands.start)
        at = max(at, hands.end)
    if stretch.interval.end - at >= LEAST:
        yield Interval(at, stretch.interval.end)


def _offers(laid: ReplayedPlan, stretch: Stretch, free: Interval) -> Iterator[GapOffer]:
    table = _table_at(laid, free.start)
    later = sorted(
        (
            placed
            for placed in laid.placed.values()
            if placed.start >= free.end and not placed.logged
        ),
        key=lambda placed: (placed.start, placed.key),
    )
    sprays: list[GapOffer] = []
    for placed in _first_coats(later):
        offer = _work(laid, table, stretch, free, placed)
        if offer is None:
            continue
        if offer.use is GapUse.SPRAY:
            sprays.append(offer)
        else:
            yield offer
    yield from _fits(laid, table, free, later)
    yield from _decals(laid, free, later)
    yield from sprays[:1]


def _table_at(laid: ReplayedPlan, minute: int) -> PartialSchedule:
    """Return the table as the plan has left it by a minute."""
    table = PartialSchedule(laid.problem, minute)
    for placed in sorted(laid.placed.values(), key=lambda placed: (placed.start, placed.end)):
        if placed.start < minute:
            table.lay(laid.problem.index[placed.key], placed.start, placed.end)
    return table


def _first_coats(later: Iterable[Placement]) -> Iterator[Placement]:
    """Yield of each step the first coat that is ahead: the next ones follow it."""
    seen: set[tuple[str, ...]] = set()
    for placed in later:
        if placed.key[:3] not in seen:
            seen.add(placed.key[:3])
            yield placed


def _work(
    laid: ReplayedPlan, table: PartialSchedule, stretch: Stretch, free: Interval, placed: Placement
) -> GapOffer | None:
    """Return a pass of the plan that fits into a gap instead of later, or None."""
    index = laid.problem.index[placed.key]
    activity = laid.problem.activities[index]
    if activity.blocked or any(before not in table.end for before in activity.before):
        return None
    sprayed = activity.pass_.step.tool is Tool.AIRBRUSH
    fit = fit_in(table, index, stretch, free.start)
    if fit is None or not fit.last or fit.work < free.start:
        return None
    cleaning = 0
    if sprayed:
        own = {each.name: each.clean_minutes for each in laid.book.gear.airbrushes}
        cleaning = own.get(fit.airbrush, 0)
    if fit.free + cleaning > free.end or not keeps_windows(table, fit, stretch):
        return None
    if activity.pass_.step.tool is Tool.CAN:
        return None
    minutes = fit.free - fit.work + cleaning
    price = fit.setup_minutes + cleaning if sprayed else 0
    use = GapUse.SPRAY if sprayed else GapUse.BRUSH
    return GapOffer(use, placed.key, minutes, placed.start, price)


def _fits(
    laid: ReplayedPlan, table: PartialSchedule, free: Interval, later: Iterable[Placement]
) -> Iterator[GapOffer]:
    """Yield the next join that could be tried dry: nothing on its parts is wet by then."""
    if free.end - free.start < DRY_FIT:
        return
    for placed in later:
        if laid.of(placed.key).step.stage is not Stage.JOIN:
            continue
        index = laid.problem.index[placed.key]
        if table.fingers_from(index) <= free.start:
            yield GapOffer(GapUse.DRY_FIT, placed.key, DRY_FIT, placed.start)
            return


def _decals(laid: ReplayedPlan, free: Interval, later: Iterable[Placement]) -> Iterator[GapOffer]:
    """Yield the next decals that could be cut out beforehand; no model is needed for it."""
    if free.end - free.start < CUT_DECALS:
        return
    for placed in _first_coats(later):
        if laid.of(placed.key).step.stage is Stage.DECAL:
            yield GapOffer(GapUse.CUT_DECALS, placed.key, CUT_DECALS, placed.start)
            return
