"""The work ahead in order of time, and what each pass draws from which bottle."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

from planner.passes import Pass, expand_all
from planner.quantity.coating_per_pass import coating_needed
from planner.quantity.loads import loads
from planner.quantity.mix_ratios import measures_of
from planner.values.book import Book
from planner.values.plan import PassKey, Placement, Plan
from planner.values.project import Logged


@dataclass(frozen=True)
class Draw:
    """What one pass draws from one bottle [ml].

    ``at`` is the minute at which it is planned, None where it has no place.
    ``complete`` is false where a place has no area, so that it takes more.
    """

    at: int | None
    key: PassKey
    colour: str
    coating: str
    ml: float
    complete: bool


@dataclass(frozen=True)
class Ahead:
    """A pass not yet done: when it is planned, and what of it is in the logbook."""

    pass_: Pass
    placed: Placement | None
    begun: Logged | None

    @property
    def at(self) -> int | None:
        """The minute at which it is planned; None where it has no place."""
        return self.placed.start if self.placed else None


def ahead(book: Book, plan: Plan | None) -> tuple[Ahead, ...]:
    """Return every pass of active projects that is not done, in order of time.

    Passes without a place in the plan come last, in working order.
    """
    entries = {
        PassKey(project.name, entry.model, entry.step, entry.coat): entry
        for project in book.projects
        for entry in project.log
    }
    placements = {placed.key: placed for placed in plan.placements} if plan else {}
    found = []
    for pass_ in expand_all(book):
        entry = entries.get(pass_.key)
        if entry is None or entry.end is None:
            found.append(Ahead(pass_, placements.get(pass_.key), entry))
    return tuple(sorted(found, key=lambda each: (each.at is None, each.at or 0)))


def draws(book: Book, plan: Plan | None, passes: tuple[Ahead, ...]) -> tuple[Draw, ...]:
    """Return what the passes ahead draw from the bottles, in the same order.

    A pass sprayed from a load of the plan draws its part of the whole
    filling.  What the logbook says a pass under way has used is off the
    stock already and not drawn again.
    """
    filled = {key: load for load in loads(book, plan) for key in load.passes} if plan else {}
    found = []
    for each in passes:
        used = {used.coating: used.ml for used in each.begun.used} if each.begun else {}
        rest: dict[str, float] = defaultdict(float, used)
        for take in coating_needed(book, each.pass_, each.placed.airbrush if each.placed else ""):
            load = filled.get(each.pass_.key)
            ml = load.share_of(each.pass_.key) if load else take.ml
            for measure in measures_of(book, take.colour, ml):
                off = min(measure.ml, rest[measure.coating])
                rest[measure.coating] -= off
                found.append(
                    Draw(
                        at=each.at,
                        key=each.pass_.key,
                        colour=take.colour,
                        coating=measure.coating,
                        ml=measure.ml - off,
                        complete=take.complete,
                    )
                )
    return tuple(found)
