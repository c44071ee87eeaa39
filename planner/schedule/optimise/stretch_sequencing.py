"""Doing a chosen set of passes within one stretch: in which order, if at all."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from itertools import zip_longest

from planner.bench import Stretch
from planner.schedule.fit import Fit, fit_in, setup_for
from planner.schedule.partial_schedule import FOREVER, Cup, PartialSchedule
from planner.schedule.placing import place, put_away

LEAST_LEFT_OVER = 2  # minutes not worth a swap
MOST_SWAPS = 20


@dataclass(frozen=True)
class Order:
    """How the next pass of a stretch is chosen: weights [min]."""

    same_load: int
    setup: int
    wait: int
    closing: int = 600


ORDERS = (
    Order(same_load=60, setup=1, wait=1),
    Order(same_load=0, setup=1, wait=2),
    Order(same_load=200, setup=3, wait=1),
)


def enter(table: PartialSchedule, stretch: Stretch) -> PartialSchedule:
    """Return a copy of the table at the beginning of a stretch."""
    copy = table.clone()
    if stretch.interval.start > copy.time:
        put_away(copy)  # what the logbook left in a cup is cleaned in its own stretch
    copy.time = max(copy.time, stretch.interval.start)
    return copy


def sequence(
    table: PartialSchedule,
    stretch: Stretch,
    wanted: Collection[int],
    tails: list[int],
    orders: tuple[Order, ...] = ORDERS,
) -> PartialSchedule | None:
    """Return the table with all of ``wanted`` done in a stretch, or None if no order works."""
    for order in orders:
        found = _try(table, stretch, wanted, tails, order)
        if found is not None:
            return found
    return None


def in_order(
    table: PartialSchedule,
    stretch: Stretch,
    indices: Sequence[int],
    minutes: Sequence[int] = (),
) -> PartialSchedule | None:
    """Return the table with passes done one after another in a stretch, or None.

    With ``minutes`` each begins, its set-up included, no sooner than at its own.
    """
    here = table.clone()
    for index, minute in zip_longest(indices, minutes, fillvalue=0):
        fit = fit_in(here, index, stretch, max(here.time, minute))
        if fit is not None and fit.cleans and minute > here.time:
            put_away(here)  # at once: hands rest for a while, and no cup stands for so long
            fit = fit_in(here, index, stretch, max(here.time, minute))
        if fit is None or not fit.last:
            return None
        place(here, fit)
    return here


def fill(
    table: PartialSchedule, stretch: Stretch, candidates: list[int], tails: list[int]
) -> PartialSchedule:
    """Return the table with whatever else fits into a stretch, first candidates first."""
    for index in candidates:
        activity = table.problem.activities[index]
        if index in table.end or any(before not in table.end for before in activity.before):
            continue
        if table.problem.closing_from.get(index) or activity.together or activity.blocked:
            continue
        if table.held_up(index):
            continue
        fit = fit_in(table, index, stretch, table.time)
        if fit is not None and fit.last:
            trial = table.clone()
            place(trial, fit)
            if all(trial.deadline(index) >= FOREVER for index in trial.awaited):
                table = trial
    return table


def closed(table: PartialSchedule, stretch: Stretch) -> bool:
    """Tell whether no closing runs out before the stretch after this one."""
    after = table.problem.calendar.next_stretch(stretch.interval.end)
    begin = after.interval.start if after else 0
    return all(table.deadline(index) > begin for index in table.awaited)


def what_fits(
    here: PartialSchedule, stretch: Stretch, urgency: list[int], free: Collection[int]
) -> PartialSchedule:
    """Take passes one by one, each with what must follow it soon, while the stretch works.

    ``free`` are the passes that may be taken at all.
    """
    problem = here.problem
    kept: list[int] = []
    done = here
    for index in urgency:
        if index in kept:
            continue
        soon = [problem.ends[number][1] for number in problem.closing_from.get(index, ())]
        trial = [*kept, index, *(index for index in soon if index in free)]
        found = sequence(here, stretch, trial, problem.tails)
        if found is not None and closed(found, stretch):
            kept, done = trial, found
    return done


def _try(
    table: PartialSchedule,
    stretch: Stretch,
    wanted: Collection[int],
    tails: list[int],
    order: Order,
) -> PartialSchedule | None:
    here = table.clone()
    left = set(wanted)
    problem = here.problem
    while left:
        ready = [
            index
            for index in left
            if all(before in here.end for before in problem.activities[index].before)
        ]
        best: tuple[float, int, Fit] | None = None
        for index in ready:
            fit = fit_in(here, index, stretch, here.time)
            if fit is None:
                return None
            rank = _rank(here, fit, order, tails)
            if best is None or rank < best[:2]:
                best = (*rank, fit)
        if best is None or not best[2].last:
            return None
        place(here, best[2])
        left.discard(best[1])
    return here


def _rank(table: PartialSchedule, fit: Fit, order: Order, tails: list[int]) -> tuple[float, int]:
    problem = table.problem
    activity = problem.activities[fit.index]
    value: float = order.wait * (fit.work - table.time)
    if activity.pass_.load:
        cup = table.cups.get(fit.airbrush, Cup())
        airbrush = problem.airbrushes[fit.airbrush]
        minutes = setup_for(table, airbrush, cup, activity.pass_.load)[1]
        value += order.setup * minutes if minutes else -order.same_load
    value -= tails[fit.index] / 10_000
    deadline = table.deadline(fit.index) if activity.closing else FOREVER
    if deadline < FOREVER:
        value -= order.closing
    return value, fit.index


def top_up(
    here: PartialSchedule,
    stretch: Stretch,
    done: PartialSchedule,
    candidates: list[int],
    tails: list[int],
    *,
    same_loads: bool = False,
) -> PartialSchedule:
    """Return ``done`` with passes swapped for longer ones that use what is left of the stretch.

    ``here`` is the table before the stretch.  Only passes that nothing else
    in it waits for are swapped, and only for those that are ready; with
    ``same_loads`` only where no load is won or lost.
    """
    order = _placed_since(here, done)
    while True:
        left = stretch.interval.end - _used_until(done)
        if left < LEAST_LEFT_OVER:
            return done
        better = _swap(here, stretch, order, left, candidates, tails, same_loads=same_loads)
        if better is None:
            return done
        order, done = better
        done = fill(done, stretch, candidates, tails)
        order = _placed_since(here, done)


def _placed_since(here: PartialSchedule, done: PartialSchedule) -> list[int]:
    order = [i for i in done.start if i not in here.start]
    return sorted(order, key=done.start.__getitem__)


def _used_until(done: PartialSchedule) -> int:
    return done.time + sum(
        done.problem.airbrushes[name].clean_minutes
        for name, cup in done.cups.items()
        if cup.coating
    )


def _same_loads(loads: Counter[str], old: str, new: str) -> bool:
    """Tell whether a swap needs no other colours: else what it gains is lost in set-ups later."""
    return old == new or ((not old or loads[old] > 1) and (not new or loads[new] > 0))


def _swap(
    here: PartialSchedule,
    stretch: Stretch,
    order: list[int],
    left: int,
    candidates: list[int],
    tails: list[int],
    *,
    same_loads: bool,
) -> tuple[list[int], PartialSchedule] | None:
    problem = here.problem
    awaited = {before for index in order for before in problem.activities[index].before}
    ready = [
        index
        for index in candidates
        if index not in order
        and not problem.closing_from.get(index)
        and all(before in here.end for before in problem.activities[index].before)
        and not problem.activities[index].blocked
        and not problem.activities[index].together
    ]
    swaps = []
    loads = Counter(problem.activities[index].pass_.load for index in order)
    for at, old in enumerate(order):
        activity = problem.activities[old]
        if old in awaited or activity.closing or problem.closing_from.get(old):
            continue
        for new in ready:
            other = problem.activities[new].pass_.load
            if same_loads and not _same_loads(loads, activity.pass_.load, other):
                continue
            gain = problem.activities[new].pass_.hands - activity.pass_.hands
            if 0 < gain <= left:
                swaps.append((-gain, at, new))
    for _, at, new in sorted(swaps)[:MOST_SWAPS]:
        trial = [*order[:at], new, *order[at + 1 :]]
        found = in_order(here, stretch, trial) or sequence(here, stretch, trial, tails)
        if found is not None and _used_until(found) <= stretch.interval.end:
            return trial, found
    return None
