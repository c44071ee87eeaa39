"""Lower bounds of the cost, each with what proves it.

All of them hold for every sound plan: they leave constraints out and never
add one.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from planner.schedule.optimise.board import NEVER, Board
from planner.schedule.optimise.master import NOTHING_HELD, setup_costs
from planner.schedule.optimise.packing import last_stretch
from planner.schedule.optimise.unit_conflicts import shortest_dry
from planner.schedule.partial_schedule import FOREVER
from planner.values.message import message
from planner.values.moment import moment_of
from planner.values.plan import ProvenBound

HOUR = 60


@dataclass(frozen=True)
class Least:
    """No sound plan finishes before the minute ``finish``; ``proof`` says why, in words.

    ``stretch`` is the least number of the last stretch used.
    """

    finish: int
    stretch: int
    proof: str


def path(board: Board) -> Least:
    """Return the bound of the longest chain of waits through the calendar."""
    best = Least(board.facts.time, -1, message("nothing is left to do"))
    for index in board.free:
        head = board.head[index]
        if head >= NEVER:
            continue
        end = head + board.lasts(index)
        dry = end + dry_after(board, index, end)
        if dry > best.finish:
            number = board.number_at(head + board.least(index) - 1)
            best = Least(dry, number, _chain(board, index))
    return best


def hands(board: Board) -> Least:
    """Return the bound of the attended minutes in the bench time there is.

    For every first stretch k the passes that cannot begin before it, with
    their least set-ups, fill the stretches from k on.
    """
    return max(
        (_load(board, first, sprayed_only=False) for first in firsts(board)),
        key=lambda first: first.finish,
        default=path(board),
    )


def filled(board: Board) -> Least:
    """Return the bound of work that leaves remnants of stretches in which nothing fits.

    For every first stretch k the passes that cannot begin before it, done in one go, lie in
    the stretches from k on.
    """
    best = Least(board.facts.time, -1, "")
    lengths = _hours(board, None)
    for first in firsts(board):
        sizes = [
            board.least(index)
            for index in board.free
            if board.head[index] < NEVER
            and board.number_at(board.head[index]) >= first
            and not board.problem.activities[index].pass_.step.least_piece
        ]
        number = last_stretch(sizes, lengths[first:])
        if sizes and number is not None and first + number > best.stretch:
            finish = board.starts[first + number] + min(sizes)
            text = message("what is left of each session takes no whole piece of the work")
            best = Least(finish, first + number, text)
    return best


def airbrush(board: Board) -> Least:
    """Return the bound of the sprayed minutes in the hours in which the compressor may run."""
    return max(
        (_load(board, first, sprayed_only=True) for first in firsts(board)),
        key=lambda first: first.finish,
        default=path(board),
    )


def drying_places(board: Board) -> Least:
    """Return the bound of the place-minutes that wet films take, nights included."""
    problem = board.problem
    best = Least(board.facts.time, -1, "")
    for location in problem.places.values():
        # Films of one unit dry side by side on its places: the longest one counts.
        longest: dict[int, int] = {}
        for index in board.free:
            activity = problem.activities[index]
            if activity.location == location.name and board.head[index] < NEVER:
                for unit, stands in activity.wet:
                    taken = stands * (board.lasts(index) + least_wet(board, index))
                    longest[unit] = max(longest.get(unit, 0), taken)
        energy = sum(longest.values())
        if not energy:
            continue
        finish = board.starts[0] + energy // location.drying_places if board.starts else 0
        if finish > best.finish:
            text = message(
                "wet films take {energy} place-minutes of {places} places in {location}",
                energy=energy,
                places=location.drying_places,
                location=location.name,
            )
            best = Least(finish, -1, text)  # films may dry after the last stretch used
    return best


def least_finish(board: Board) -> Least:
    """Return the best of all bounds that need no search."""
    found = [bound(board) for bound in (path, hands, airbrush, drying_places, filled)]
    best = max(found, key=lambda bound: bound.finish)
    return replace(best, stretch=max(bound.stretch for bound in found))


def stated(board: Board, least: Least, late: int, placed: bool) -> tuple[ProvenBound, ...]:
    """Return bounds of the cost's levels for a plan from ``board``'s now on.

    ``late`` is the least Σ weight × minutes late; ``placed`` tells whether
    every pass can be placed.
    """
    if not placed:
        return ()
    finish = max(0, least.finish - board.problem.now)
    return (
        ProvenBound("unplaced", 0, message("no plan places more than all")),
        ProvenBound("late", late, message("nothing can be finished earlier than its waits allow")),
        ProvenBound("finish", finish, least.proof),
    )


def least_late(board: Board) -> int:
    """Return the least Σ weight × minutes late that the chains of waits allow."""
    problem = board.problem
    total = 0
    for number, due in enumerate(problem.dues):
        ends = [0]
        for index in board.free:
            if problem.due_of[index] == number and board.head[index] < NEVER:
                end = board.head[index] + board.lasts(index)
                ends.append(end + dry_after(board, index, end))
        total += due.weight * max(0, max(ends) - due.at)
    return total


def firsts(board: Board) -> Iterator[int]:
    """Yield the stretches before which some free activity cannot begin."""
    heads = {board.number_at(board.head[i]) for i in board.free if board.head[i] < NEVER}
    yield from sorted(heads)


def _load(board: Board, first: int, *, sprayed_only: bool) -> Least:
    problem = board.problem
    chosen = [
        index
        for index in board.free
        if board.head[index] < NEVER
        and board.number_at(board.head[index]) >= first
        and (not sprayed_only or problem.activities[index].pass_.load)
    ]
    total = sum(problem.activities[index].pass_.hands for index in chosen)
    total -= sum(
        problem.activities[i].pass_.hands - board.facts.left[i]
        for i in chosen
        if i in board.facts.left
    )
    spray = [index for index in chosen if problem.activities[index].pass_.load]
    hours = _hours(board, spray if sprayed_only else None)
    held = board.held if first == 0 else NOTHING_HELD
    setups = _least_setups(board, spray, hours[first:], held) if not sprayed_only else 0
    left = total + setups
    unseen = _washing_after_all(board, spray) if setups else 0
    for number in range(first, len(board.stretches)):
        here = hours[number]
        if left <= here:
            finish = board.starts[number] + max(0, left - unseen)
            what = (
                message("sprayed minutes")
                if sprayed_only
                else message("minutes of work and set-up")
            )
            at = moment_of(board.starts[first], problem.calendar.zone)
            text = message(
                "{total} {what} from {at:%a %d %b} on fill the bench time",
                total=total + setups,
                what=what,
                at=at,
            )
            return Least(finish, number, text)
        left -= here
    return Least(board.ends[-1] if board.ends else 0, len(board.ends) - 1, "")


def _washing_after_all(board: Board, sprayed: list[int]) -> int:
    """Return the most minutes of cleaning after the last film may be held."""
    washing = sum(airbrush.clean_minutes for airbrush in board.problem.book.gear.airbrushes)
    return max(0, washing - min(least_wet(board, index) for index in sprayed))


def _hours(board: Board, sprayed: list[int] | None) -> list[int]:
    """Return the minutes of each stretch, or those in which spraying is possible."""
    if sprayed is None:
        return [end - start for start, end in zip(board.starts, board.ends, strict=True)]
    hours = [0] * len(board.stretches)
    for index in sprayed:
        for number, slots in enumerate(board.slots(index)):
            hours[number] = max(hours[number], sum(slot.end - slot.start for slot in slots))
    return hours


def _least_setups(board: Board, sprayed: list[int], hours: list[int], held: frozenset[str]) -> int:
    """Return the least set-up minutes: the fewest stretches that hold all sprayed minutes.

    Where cups ``held`` something at first, the first of the ``hours`` are
    taken to be sprayed full, with no load for that.
    """
    if not sprayed:
        return 0
    costs = setup_costs(board)
    minutes = sum(board.least(index) for index in sprayed)
    stretches, most = 0, max(hours, default=1) - costs.first
    if held:
        minutes -= hours[0]
        most = max(most, hours[0])
    for length in sorted(hours[1:] if held else hours, reverse=True):
        if minutes <= 0:
            break
        stretches += 1
        minutes -= max(0, length - costs.first)
    loads: dict[str, int] = {}
    for index in sprayed:
        load = board.problem.activities[index].pass_.load
        loads[load] = loads.get(load, 0) + board.least(index)
    fillings = sum(-(-minutes_ // max(1, most)) for minutes_ in loads.values()) - len(held)
    return stretches * costs.first + max(0, fillings - stretches) * costs.same


def dry_after(board: Board, index: int, end: int) -> int:
    """Return the minutes from ``end`` until the films of a pass may be held, at least 0."""
    problem = board.problem
    minutes = problem.handle_minutes(index, end) if problem.activities[index].pass_.films else 0
    return 0 if minutes >= NEVER_DRY else minutes


NEVER_DRY = 10**7


def least_wet(board: Board, index: int) -> int:
    """Return the least minutes that a pass's films are wet, whenever it is done."""
    activity = board.problem.activities[index]
    dry = shortest_dry(board, board.starts[0], board.ends[-1])
    names = {name for _, name in activity.pass_.films}
    return max((dry(activity, name) for name in names), default=0)


def _chain(board: Board, index: int) -> str:
    """Say which waits make the head of a pass."""
    problem = board.problem
    longest: tuple[int, int] | None = None
    at: int | None = index
    steps = 0
    while at is not None and steps < 400:
        steps += 1
        before, wait = _binding(board, at)
        if before is not None and (longest is None or wait > longest[0]):
            longest = (wait, before)
        at = before
    last = problem.activities[index].pass_.key
    if longest is None:
        return message("{model}: {step} cannot be earlier", model=last.model, step=last.step)
    held = problem.activities[longest[1]].pass_.key
    hours, minutes = divmod(longest[0], HOUR)
    return message(
        "{model}: {step} ends a chain of {steps} passes; its longest wait is "
        "{hours} h {minutes:02d} min after {earlier}",
        model=last.model,
        step=last.step,
        steps=steps,
        hours=hours,
        minutes=minutes,
        earlier=held.step,
    )


def _binding(board: Board, index: int) -> tuple[int | None, int]:
    """Return the earlier pass that holds the head of another back most, and for how long."""
    problem = board.problem
    best: tuple[int | None, int] = (None, 0)
    latest = 0
    for number in problem.activities[index].gates:
        before = problem.ends[number][0]
        if before in board.facts.end:
            continue
        end = board.end_of(before)
        opens = board.earliest_after(number, end) if end < FOREVER else FOREVER
        if opens > latest:
            latest, best = opens, (before, opens - end)
    return best
