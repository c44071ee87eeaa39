"""Why a cup is filled a second time with a colour that was in it before, in the same stretch."""

from __future__ import annotations

from planner.bench import BenchCalendar
from planner.passes import expand_all
from planner.quantity import served
from planner.values.book import Book
from planner.values.message import message
from planner.values.moment import moment_of, zone_named
from planner.values.plan import BenchKind, BenchWork, Cause, PassKey, Placement, Plan

FILLINGS = (BenchKind.LOAD, BenchKind.CHANGE)
WAITS = (Cause.DRYING, Cause.WINDOW, Cause.CLOSING, Cause.DRYING_PLACE, Cause.QUIET, Cause.AIR)


def filled_again(book: Book, plan: Plan) -> dict[tuple[str, int], str]:
    """Return why, by (airbrush, minute) of each filling with a colour that it held before.

    Two things force it: what comes next opens later than a cup may stand, or another colour
    lies below it.  Where neither does nothing is said: it may cost less than to wait.
    """
    calendar = BenchCalendar(book.bench_time)
    fillings = {
        work: placed for work, placed in served(plan).items() if work.kind in FILLINGS and placed
    }
    found: dict[tuple[str, int], str] = {}
    before: dict[tuple[str, str, int], list[Placement]] = {}
    for work in sorted(fillings, key=lambda item: item.interval.start):
        stretch = calendar.stretch_at(work.interval.start)
        if stretch is None:
            continue
        key = (work.airbrush, work.coating, stretch.interval.start)
        if key in before:
            why = _why(book, plan, work, before[key], list(fillings[work]))
            if why:
                found[work.airbrush, work.interval.start] = why
        before.setdefault(key, []).extend(fillings[work])
    return found


def _why(
    book: Book, plan: Plan, work: BenchWork, earlier: list[Placement], later: list[Placement]
) -> str:
    used = max(placed.end for placed in earlier)
    between = _below(book, plan, later, used, work.interval.start)
    if between is not None:
        return message(
            "filled again: {step} of {model} goes on before it, in another colour",
            step=between.step,
            model=between.model,
        )
    idle = next(one.idle_limit_minutes for one in book.gear.airbrushes if one.name == work.airbrush)
    first = min(later, key=lambda placed: placed.start)
    opens = first.reason.until
    if first.reason.cause in WAITS and opens is not None and opens - used > idle:
        at = moment_of(opens, zone_named(book.bench_time.zone))
        if first.reason.cause is Cause.DRYING_PLACE:
            return message(
                "filled again: the cup may stand {idle} min only, and no drying place is free "
                "for {model} before {at:%H:%M}",
                idle=idle,
                model=first.key.model,
                at=at,
            )
        return message(
            "filled again: the cup may stand {idle} min only, and {step} of {model} opens at "
            "{at:%H:%M}",
            idle=idle,
            step=first.key.step,
            model=first.key.model,
            at=at,
        )
    return ""


def _below(
    book: Book, plan: Plan, later: list[Placement], used: int, filled: int
) -> PassKey | None:
    """Return what was sprayed in between on a place that one of ``later`` coats, if anything."""
    keys = {placed.key for placed in later}
    between = [
        placed.key
        for placed in sorted(plan.placements, key=lambda item: item.start)
        if placed.airbrush and used <= placed.start < filled
    ]
    coated = {
        one.key: {(one.key.project, one.key.model, place) for place, _ in one.films}
        for one in expand_all(book)
        if one.key in keys or one.key in between
    }
    wanted = set().union(*(coated.get(key, set()) for key in keys))
    return next((key for key in between if coated.get(key, set()) & wanted), None)
