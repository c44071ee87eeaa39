"""Mixes that one stirring would do for: several loads and palettes within their life.

One mix for all matches; of two, each is a little different.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

from planner.passes import expand_all
from planner.quantity.loads import Load, fill, loads
from planner.quantity.mix_ratios import MixMeasure, measures_of, mix_of
from planner.values.book import Book
from planner.values.plan import PassKey, Plan
from planner.values.step import Tool


@dataclass(frozen=True)
class Stirring:
    """One stirring of a mix that several fillings are taken from.

    Attributes
    ----------
    start, end
        From the first filling to the end of the last pass [min].
    fillings
        How many loads and palettes are filled from it.
    passes
        What it serves, in order of time.
    ml, measures
        What all of them hold together.
    keeps_until
        The minute at which the mix can no longer be used; None is never.
    """

    colour: str
    start: int
    end: int
    fillings: int
    passes: tuple[PassKey, ...]
    ml: float
    measures: tuple[MixMeasure, ...]
    keeps_until: int | None


def stirrings(book: Book, plan: Plan) -> tuple[Stirring, ...]:
    """Return the mixes that are wanted more than once before their life is over.

    Each begins with the first filling that no stirring before it can serve.
    """
    fillings: dict[str, list[Load]] = defaultdict(list)
    for load in sorted((*loads(book, plan), *_palettes(book, plan)), key=lambda load: load.start):
        if load.mixed and load.ml > 0:
            fillings[load.colour].append(load)
    found = [
        _stirring(book, group)
        for every in fillings.values()
        for group in _within_life(every)
        if len(group) > 1
    ]
    return tuple(sorted(found, key=lambda stirring: (stirring.start, stirring.colour)))


def _within_life(every: list[Load]) -> list[list[Load]]:
    groups: list[list[Load]] = []
    for load in every:
        life = load.life_minutes
        if groups and (life is None or load.end - groups[-1][0].start <= life):
            groups[-1].append(load)
        else:
            groups.append([load])
    return groups


def _stirring(book: Book, group: list[Load]) -> Stirring:
    first, ml = group[0], sum(load.ml for load in group)
    return Stirring(
        colour=first.colour,
        start=first.start,
        end=max(load.end for load in group),
        fillings=len(group),
        passes=tuple(key for load in group for key in load.passes),
        ml=ml,
        measures=measures_of(book, first.colour, ml),
        keeps_until=None if first.life_minutes is None else first.start + first.life_minutes,
    )


def _palettes(book: Book, plan: Plan) -> list[Load]:
    """Return the palettes of what is planned and not sprayed."""
    placements = {placed.key: placed for placed in plan.placements if not placed.logged}
    found = []
    for pass_ in expand_all(book):
        placed = placements.get(pass_.key)
        if placed is None or pass_.step.tool is Tool.AIRBRUSH:
            continue
        for colour in dict.fromkeys(name for _, name in pass_.films):
            if len(mix_of(book, colour).portions) > 1:
                filling = fill(book, colour, (pass_,), span=(placed.start, placed.end))
                if filling is not None:
                    found.append(filling)
    return found
