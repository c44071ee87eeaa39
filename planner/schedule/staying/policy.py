"""What may take the place of the plan that is there (definition 27a).  One home, pure."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date
from functools import partial
from typing import NamedTuple

from planner.bench import BenchCalendar
from planner.schedule.missed_dates import ends_of_models
from planner.values.book import Book
from planner.values.moment import Interval, moment_of
from planner.values.plan import PassKey, Plan
from planner.values.wishes import Level, Staying


@dataclass(frozen=True)
class StayingChoice:
    """Which plan is shown from now on, and which other is offered, if any."""

    taken: Plan
    offered: Plan | None = None


class Firm(NamedTuple):
    """A time that is not changed unasked: nothing in it moves; with ``may_grow`` more may join."""

    time: Interval
    may_grow: bool = False


def worth(book: Book, calendar: BenchCalendar, plan: Plan) -> tuple[int, ...]:
    """Return what of a plan is worth moving work for; smaller is better.

    Passes unplaced, then the person's levels down to lateness and finish:
    lateness in Σ weight × days late, the finish as the stretches of bench
    time that begin before the last of all is done, then as the sum of those
    that begin before each project is, and each model with a date or priority
    of its own.
    """
    order = book.preferences.order
    last = max(order.index(Level.LATE), order.index(Level.FINISH))
    found = [plan.cost.unplaced]
    for level in order[: last + 1]:
        if level is Level.LATE:
            found.append(_days_late(book, calendar, plan))
        elif level is Level.FINISH:
            ends = [_stretches_until(calendar, plan.now, end) for _, end in plan.finishes]
            own = [_stretches_until(calendar, plan.now, end) for end in _own_ends(book, plan)]
            found += [max(ends, default=0), sum(ends) + sum(own)]
        else:
            found.append(int(getattr(plan.cost, level.value)))
    return tuple(found)


def choose(
    book: Book,
    calendar: BenchCalendar,
    present: Plan,
    candidates: Iterable[Plan],
    firm: Sequence[Firm] = (),
) -> StayingChoice:
    """Say which plan takes the place of the present one, and which is offered.

    Parameters
    ----------
    candidates
        Other plans of the same book and moment, each accepted by the judge.
    firm
        Times in which a plan that is taken does just what the
        present one does: tonight, and evenings that were promised.
    """
    value = partial(_value, book, calendar)

    def rank(plan: Plan) -> tuple[tuple[int, ...], int, tuple[int, ...]]:
        cost = plan.cost.in_order(book.preferences.order)
        return value(plan), moved_passes(calendar, present, plan), cost

    own = value(present)
    better = sorted((candidate for candidate in candidates if value(candidate) < own), key=rank)
    taken = next((plan for plan in better if leaves(present, plan, firm)), present)
    offered = better[0] if better and value(better[0]) < value(taken) else None
    return StayingChoice(taken, offered)


def gains(book: Book, calendar: BenchCalendar, present: Plan, other: Plan) -> bool:
    """Tell whether a plan gains enough on the present one for work to move."""
    return _value(book, calendar, other) < _value(book, calendar, present)


def _value(book: Book, calendar: BenchCalendar, plan: Plan) -> tuple[int, ...]:
    if book.preferences.staying is Staying.CLOSE:
        return worth(book, calendar, plan)
    return plan.cost.in_order(book.preferences.order)


def leaves(present: Plan, other: Plan, firm: Sequence[Firm]) -> bool:
    """Tell whether a plan leaves all of these times as the present one has them."""
    for one in firm:
        was, is_ = _within(present, one.time), _within(other, one.time)
        if not (was <= is_ if one.may_grow else was == is_):
            return False
    return True


class StayingMove(NamedTuple):
    """A pass that left its stretch: where it began, and where it begins; None is no place."""

    key: PassKey
    before: int | None
    after: int | None


def moves_between(calendar: BenchCalendar, present: Plan, other: Plan) -> tuple[StayingMove, ...]:
    """Return the passes that stand in another stretch than in the present plan, or in none.

    They come in order of the earlier of both evenings.  What was done is no
    move, nor is work that only one of the plans has heard of.
    """
    was = {placed.key: placed.start for placed in present.placements if not placed.logged}
    lost = {one.key for one in present.unplaced}
    found = []
    for placed in other.placements:
        before = was.get(placed.key)
        if placed.logged or (before is None and placed.key not in lost):
            continue
        here = None if before is None else calendar.stretch_at(before)
        if before is None or (before != placed.start and here != calendar.stretch_at(placed.start)):
            found.append(StayingMove(placed.key, before, placed.start))
    found += [StayingMove(one.key, was[one.key], None) for one in other.unplaced if one.key in was]
    return tuple(sorted(found, key=lambda item: (min(_known(item)), item.key)))


def _known(move: StayingMove) -> list[int]:
    return [minute for minute in (move.before, move.after) if minute is not None]


def moved_passes(calendar: BenchCalendar, present: Plan, other: Plan) -> int:
    """Return how many passes stand in another stretch than in the present plan."""
    return len(moves_between(calendar, present, other))


def firm_times(calendar: BenchCalendar, now: int, promised: Sequence[Interval]) -> tuple[Firm, ...]:
    """Return tonight, which is the stretch that runs or else the next, and all promised ones."""
    stretch = calendar.next_stretch(now)
    ahead = [
        stretch.interval
        for time in promised
        for stretch in calendar.stretches(time.start, time.end)
    ]
    tonight = [Firm(stretch.interval, may_grow=True)] if stretch else []
    return (*tonight, *(Firm(one) for one in ahead if one.end > now))


def firm_stretches(calendar: BenchCalendar, promised: Sequence[Interval]) -> frozenset[int]:
    """Return the beginnings of the stretches that were promised."""
    return frozenset(
        stretch.interval.start
        for time in promised
        for stretch in calendar.stretches(time.start, time.end)
    )


def _within(plan: Plan, time: Interval) -> set[tuple[PassKey, int, int]]:
    return {
        (placed.key, placed.start, placed.end)
        for placed in plan.placements
        if time.start <= placed.start < time.end and not placed.logged
    }


def _stretches_until(calendar: BenchCalendar, now: int, end: int) -> int:
    """Return how many stretches begin from ``now`` on before a minute."""
    return (
        sum(stretch.interval.start >= now for stretch in calendar.stretches(now, end))
        if end > now
        else 0
    )


def _own_ends(book: Book, plan: Plan) -> list[int]:
    """Return the finishes of models that somebody waits for: with a date or a priority."""
    ends = ends_of_models(book, plan)
    return [
        ends[project.name, model.name]
        for project in book.projects
        if project.active
        for model in project.models
        if model.target is not None or model.early or model.weight > 1
    ]


def _days_late(book: Book, calendar: BenchCalendar, plan: Plan) -> int:
    """Return Σ weight × local days late, each model counted once (definition 26)."""
    ends = ends_of_models(book, plan)
    late = 0
    for project in book.projects:
        rest: list[int] = []
        for model in project.models if project.active else ():
            end = ends[project.name, model.name]
            day = model.target or (project.target if model.weight > 1 else None)
            if model.early:
                day = moment_of(plan.now, calendar.zone).date()
            if day is None:
                rest.append(end)
            else:
                late += project.weight * model.weight * _days(calendar, end, day)
        if rest and project.target is not None:
            late += project.weight * _days(calendar, max(rest), project.target)
    return late


def _days(calendar: BenchCalendar, end: int, day: date) -> int:
    return max(0, (moment_of(end - 1, calendar.zone).date() - day).days)
