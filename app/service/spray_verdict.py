"""Whether it is safe to spray in the air of this minute: one verdict for every place that says it.

It rests on the same advice by which the planner keeps work out of unfit air (definition 10a).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from planner.air import (
    Advisory,
    Fitness,
    dew_point_c,
    fitness,
    laid_in,
    on_any_terms,
    step_advice,
)
from planner.cure import Cure
from planner.evening.log_entries import step_of
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.plan import Plan
from planner.values.step import Step, Tool

SPRAYED = frozenset({Tool.AIRBRUSH, Tool.CAN})
AHEAD = 24 * 60  # coats later than this meet another air: assumed [min]


@dataclass(frozen=True)
class SprayVerdict:
    """What the air at the bench allows.

    Attributes
    ----------
    fitness
        The worst that is said of any coat still to be sprayed.
    margin_k
        How far a surface as warm as the air is above the dew point [K]; None in bone-dry air.
    reason, coating
        The worst advisory's reason, and the coating that it speaks of; "" where nothing is said.
    others
        Whether other coats could be sprayed nevertheless.
    """

    fitness: Fitness
    margin_k: float | None
    reason: str = ""
    coating: str = ""
    others: bool = False


def spray_verdict(
    book: Book, cure: Cure, now: int, coats: Iterable[tuple[Step, Coating]]
) -> SprayVerdict:
    """Return what the air at ``now`` allows of coats that are still to be sprayed.

    ``cure`` is that of the room of ``book``; for ``coats`` see `to_spray`.
    """
    here = book.room.locations[0]
    air = cure.air(here.name).at(now)
    margin = None
    if air.humidity_pct > 0:
        margin = air.temperature_c - dew_point_c(air.temperature_c, air.humidity_pct)
    judged: list[tuple[Fitness, Advisory | None, str]] = []
    for step, coating in coats:
        there = cure.air(laid_in(book.room, step.tool).name).at(now)
        advice = step_advice(step, coating, there)
        judged.append((fitness(advice), advice[0] if advice else None, coating.name))
    if not judged:
        return SprayVerdict(Fitness.GO, margin)
    order = list(Fitness)
    worst, against, coating_name = max(judged, key=lambda one: order.index(one[0]))
    if against is None:
        return SprayVerdict(Fitness.GO, margin)
    others = any(order.index(one[0]) < order.index(worst) for one in judged)
    return SprayVerdict(worst, margin, against.reason, coating_name, others)


def to_spray(book: Book, plan: Plan, now: int) -> Iterator[tuple[Step, Coating]]:
    """Yield each kind of coat that a plan of ``book`` sprays within a day, or has no place for.

    Work that the air forbids has no place, and it is that of which the air has to speak.
    """
    ahead = sorted(
        (placed.start, placed.key)
        for placed in plan.placements
        if not placed.logged and placed.start < now + AHEAD
    )
    seen: set[tuple[str, Tool, object]] = set()
    for key in (*(key for _, key in ahead), *(unplaced.key for unplaced in plan.unplaced)):
        step = step_of(book, key)
        if step.tool not in SPRAYED or on_any_terms(step):
            continue
        for application in step.applications:
            kind = (application.coating, step.tool, step.stage)
            if kind not in seen:
                seen.add(kind)
                yield step, book.coating(application.coating)
