"""Closings that went by: what must be done now instead."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import StrEnum

from planner.cure import Cure
from planner.evening.log_entries import step_of
from planner.evening.logged_films import laid
from planner.evening.skipped_steps import skipped
from planner.graph.gates import PassGate
from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.values.book import Book
from planner.values.book_changes import with_step
from planner.values.coating import Coating, Mark, Preparation, Window
from planner.values.keys import ModelKey
from planner.values.message import message, row, titled, within
from planner.values.plan import PassKey
from planner.values.refusal import demand
from planner.values.step import Bound, Gate, Minutes, Stage, Step

SCUFF_MINUTES = 10  # common practice, no source [min]
LATE_TIMES = 2  # late wiping, pressing or rubbing takes twice as long: assumed


class Remedy(StrEnum):
    """What can be done once a window has closed."""

    WAIT = "wait for reopening"
    SCUFF = "scuff, then go on"
    LATE = "do it late"
    SKIP = "leave it out"


LATE_WORDS = {
    Stage.WIPE: titled("lift what has dried with a swab and the wash's own thinner"),
    Stage.PRESS: titled("wet again with setting fluid, let it soften, press down"),
    Stage.CHIP_RUB: titled(
        "wet longer and rub with a stiffer brush; stop where the coat below shows"
    ),
    Stage.UNMASK: titled("warm the tape a little, take it off slowly and flat, cut the edge first"),
}


@dataclass(frozen=True)
class Missed:
    """A pass whose window has closed before it was done.

    Attributes
    ----------
    key, after
        The pass that is late, and the one that its gate counts from.
    closed
        Minute at which the window closed, for the end or the start of the
        pass, as ``bound`` says.
    reopens
        First minute of the next window; None if there is none.
    preparation
        What the next window asks.
    why
        What the window was for.
    remedies
        What can be done, the most usual first.
    """

    key: PassKey
    after: PassKey
    closed: int
    bound: Bound
    reopens: int | None
    preparation: Preparation
    why: str
    remedies: tuple[Remedy, ...]


def missed(book: Book, now: int, *, cure: Cure | None = None) -> tuple[Missed, ...]:
    """Return every window that the logbook has opened and ``now`` has closed, the oldest first."""
    table = laid(book, now, cure)
    problem = table.problem
    found: dict[tuple[PassKey, PassKey], Missed] = {}
    for number, gate in enumerate(problem.gates):
        before, after = problem.ends[number]
        waits = before in table.end and after not in table.end
        if not gate.closes or not waits or not _next_up(table, after):
            continue
        takes = problem.activities[after].pass_.minutes if gate.closing is Bound.END else 0
        windows = table.windows(number)
        shut = [
            window for window in windows if window.closes < FOREVER and window.closes <= now + takes
        ]
        coming = next((window for window in windows if window not in shut), None)
        outlasted = table.shut_before_open(number)
        if coming is not None and coming.window.opens is None:
            continue
        if not shut and outlasted is None:
            continue
        closed = shut[-1].closes if shut else outlasted or now
        known = found.get((gate.after, gate.before))
        if known is not None and known.closed <= closed:
            continue
        found[gate.after, gate.before] = Missed(
            gate.after,
            gate.before,
            closed,
            gate.closing,
            coming.opens if coming else None,
            coming.window.preparation if coming else Preparation.NONE,
            gate.why,
            _remedies(book, gate, reopens=coming is not None),
        )
    return tuple(sorted(found.values(), key=lambda missed: (missed.closed, missed.key)))


def _next_up(table: PartialSchedule, index: int) -> bool:
    """Tell whether all that comes before a pass is done, so that it lacks the window alone."""
    return all(before in table.end for before in table.problem.activities[index].before)


def _remedies(book: Book, gate: PassGate, *, reopens: bool) -> tuple[Remedy, ...]:
    if reopens:
        return (Remedy.WAIT, Remedy.SKIP)
    step = step_of(book, gate.after)
    if gate.closing is Bound.END or step.stage in LATE_WORDS:
        return (Remedy.LATE, Remedy.SKIP)
    return (Remedy.SCUFF, Remedy.SKIP)


def remedied(book: Book, missed: Missed, choice: Remedy) -> Book:
    """Return the book after a remedy.

    Raises
    ------
    Refused
        If the remedy is not among those of ``one``.
    """
    demand(
        choice in missed.remedies,
        "remedy",
        message("must be one of {remedies}", remedies=row(missed.remedies)),
    )
    if choice is Remedy.WAIT:
        return book
    if choice is Remedy.SKIP:
        return skipped(book, missed.key).book
    spot = ModelKey(missed.key.project, missed.key.model)
    if choice is Remedy.LATE:
        return with_step(book, spot, missed.key.step, lambda step: _late(step, missed.after.step))
    step = step_of(book, missed.key)
    if any(gate.after == missed.after.step for gate in step.gates):
        return with_step(book, spot, step.id, lambda old: _scuffed(old, missed.after.step))
    return _with_coatings(book, step_of(book, missed.after), _reopened)


def _late(step: Step, earlier: str) -> Step:
    """Take the closing of a step away; it takes longer now, in another way."""
    gates = [gate for gate in step.gates if gate.after != earlier]
    gates.append(Gate(after=earlier, windows=(Window(),)))
    minutes = Minutes(
        fixed=min(1440, step.minutes.fixed * LATE_TIMES),
        per_part=min(1440, step.minutes.per_part * LATE_TIMES),
        per_change=step.minutes.per_change,
    )
    words = LATE_WORDS.get(step.stage, "")
    title = step.title or step.id
    if words:
        title = titled("{step}; {word}", step=title, word=words)
    return replace(step, gates=tuple(gates), minutes=minutes, title=within(200, title))


def _scuffed(step: Step, earlier: str) -> Step:
    gates = tuple(
        replace(gate, windows=_reopened(gate.windows)) if gate.after == earlier else gate
        for gate in step.gates
    )
    return replace(step, gates=gates)


def _reopened(windows: tuple[Window, ...]) -> tuple[Window, ...]:
    """Return windows with one more behind the last, which asks to scuff the film."""
    if not windows or windows[-1].closes is None:
        return windows
    shut: Mark = windows[-1].closes
    again = Window(opens=shut, preparation=Preparation.SCUFF, preparation_minutes=SCUFF_MINUTES)
    return (*windows, again)


def _with_coatings(
    book: Book, step: Step, change: Callable[[tuple[Window, ...]], tuple[Window, ...]]
) -> Book:
    """Give the coatings of a step another set of recoat windows: a label's closing is theirs."""
    names = {book.coating(application.coating).name for application in step.applications}

    def changed(coating: Coating) -> Coating:
        return replace(coating, recoat=change(coating.recoat)) if coating.name in names else coating

    return replace(book, coatings=tuple(changed(coating) for coating in book.coatings))
