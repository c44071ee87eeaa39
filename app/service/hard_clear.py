"""From when on a model may get a hard clear: when its slow films are dry through."""

from __future__ import annotations

from dataclasses import dataclass
from zoneinfo import ZoneInfo

from app.service import wording
from planner.bench import BenchCalendar
from planner.cure import Band, Cure
from planner.layers.operation_kinds import OIL_BORNE
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.coating import State
from planner.values.plan import Plan


@dataclass(frozen=True)
class HardClear:
    """The earliest minute for a hard clear (lacquer, two-pack) on a model, and what holds it.

    ``opens`` is None where the film never dries through in this air, or has
    no place in the plan; ``coating`` on ``place`` is the last to be ready.
    """

    project: str
    model: str
    coating: str
    place: str
    opens: int | None


def hard_clears(table: PartialSchedule) -> tuple[HardClear, ...]:
    """Return one for each model that gets films of enamel or oil, in order of the book.

    Parameters
    ----------
    table
        With all placed passes laid on it; dry-through is taken late.
    """
    slowest: dict[tuple[str, str], HardClear] = {}
    for activity in table.problem.activities:
        key = activity.pass_.key
        for place, name in activity.pass_.films:
            if table.problem.coatings[name].family not in OIL_BORNE:
                continue
            opens = None
            if activity.index in table.end:
                film = table.film(activity.index, place)
                opens = table.problem.cure.ready_at(film, State.DRY_THROUGH, Band.LATE)
            hard_clear = HardClear(key.project, key.model, name, place, opens)
            before = slowest.get((key.project, key.model))
            if before is None or _rank(hard_clear) > _rank(before):
                slowest[key.project, key.model] = hard_clear
    return tuple(slowest.values())


def _rank(hard_clear: HardClear) -> tuple[bool, int]:
    return hard_clear.opens is None, hard_clear.opens or 0


def laid_out(
    book: Book, plan: Plan, now: int, cure: Cure, calendar: BenchCalendar
) -> PartialSchedule:
    """Return the table with every pass of a plan laid on it, in order of time."""
    problem = Problem(book, now, cure=cure, calendar=calendar)
    table = PartialSchedule(problem, now)
    for placement in sorted(plan.placements, key=lambda placed: (placed.start, placed.end)):
        index = problem.index.get(placement.key)
        if index is not None and index not in table.end:
            table.lay(index, placement.start, placement.end)
    return table


def line(clear: HardClear, zone: ZoneInfo) -> str:
    """Return it in one line."""
    because = f"because of {clear.coating} on {clear.place}"
    if clear.opens is None:
        return f"{clear.model}: no date for a hard clear, {because}"
    return (
        f"{clear.model}: a hard clear at the earliest {wording.moment(clear.opens, zone)},"
        f" {because}"
    )
