"""How much goes into an airbrush for what one load serves, and what a pass uses up."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import zip_longest

from planner.cure import life_in_room
from planner.passes import Pass, expand, expand_all
from planner.quantity.coating_per_pass import brush_of, coating_needed
from planner.quantity.mix_ratios import MixMeasure, measures_of, mix_of
from planner.values.book import Book
from planner.values.plan import BenchKind, BenchWork, PassKey, Placement, Plan
from planner.values.project import Used

GRAIN_ML = 0.1  # what a load is rounded up to
LOG_DIGITS = 2  # a hundredth of a millilitre is a fifth of a drop
FILLING = (BenchKind.LOAD, BenchKind.CHANGE)


@dataclass(frozen=True)
class Load:
    """One filling of an airbrush, or one mix on a palette, and what it serves.

    Attributes
    ----------
    colour
        Coating or mix.
    start, end
        From the filling to the end of the last pass that it serves.
    passes, shares_ml
        What it serves, and what each of those lays [ml].
    lost_ml
        What stays in cup and needle at the change or cleaning after it [ml].
    ml
        What to fill in: the sum, at least the least fill of the cup, rounded
        up to a tenth [ml].
    fills
        How many times the cup is filled for it, since it takes no more at once.
    measures
        What each fill is measured out of.
    complete
        False where a place has no area, so that it takes more.
    least_fill
        The least fill of the cup decides.
    life_minutes
        How long it can be used; None is for ever.
    mixed
        It is stirred from several coatings.
    """

    airbrush: str
    colour: str
    start: int
    end: int
    passes: tuple[PassKey, ...]
    shares_ml: tuple[float, ...]
    lost_ml: float
    ml: float
    fills: int
    measures: tuple[MixMeasure, ...]
    complete: bool
    least_fill: bool
    life_minutes: int | None
    mixed: bool

    @property
    def laid_ml(self) -> float:
        """What all its passes take, what misses the model included [ml]."""
        return sum(self.shares_ml)

    @property
    def each_ml(self) -> float:
        """What goes into the cup at each fill [ml]."""
        return self.ml / self.fills

    @property
    def suffices(self) -> bool:
        """Tell whether it can be used for as long as it has to be."""
        return self.life_minutes is None or self.end - self.start <= self.life_minutes

    def share_of(self, key: PassKey) -> float:
        """Return what a pass uses up of the whole filling [ml], its part of the loss included."""
        at = self.passes.index(key)
        if self.laid_ml <= 0:
            return self.ml / len(self.passes)
        return self.ml * self.shares_ml[at] / self.laid_ml


def fill(
    book: Book,
    colour: str,
    passes: Iterable[Pass],
    airbrush: str = "",
    span: tuple[int, int] = (0, 0),
) -> Load | None:
    """Return the load of a colour that some passes take; None if it is not by volume.

    Without ``airbrush`` it is a mix on a palette: nothing stays in a cup.
    ``span`` is from the filling to the end of the last pass [min].
    """
    keys, shares, complete = [], [], True
    for pass_ in passes:
        for take in coating_needed(book, pass_, airbrush):
            if take.colour == colour:
                keys.append(pass_.key)
                shares.append(take.ml)
                complete = complete and take.complete
    if not keys:
        return None
    brush = brush_of(book, airbrush)
    lost = brush.lost_ml if brush else 0.0
    least = brush.least_fill_ml if brush else 0.0
    needed = sum(shares) + lost
    ml = math.ceil(max(needed, least) / GRAIN_ML - 1e-6) * GRAIN_ML
    fills = max(1, math.ceil(ml / brush.cup_ml - 1e-6)) if brush else 1
    return Load(
        airbrush=airbrush,
        colour=colour,
        start=span[0],
        end=span[1],
        passes=tuple(keys),
        shares_ml=tuple(shares),
        lost_ml=lost,
        ml=ml,
        fills=fills,
        measures=measures_of(book, colour, ml / fills),
        complete=complete,
        least_fill=needed < least,
        life_minutes=life_in_room(book, colour),
        mixed=len(mix_of(book, colour).portions) > 1,
    )


def loads(book: Book, plan: Plan) -> tuple[Load, ...]:
    """Return every filling of an airbrush that a plan still has, in order of time."""
    passes = {pass_.key: pass_ for pass_ in expand_all(book)}
    found = (filled(book, passes, work, keys) for work, keys in served(plan).items())
    return tuple(
        sorted(
            (load for load in found if load is not None),
            key=lambda load: (load.start, load.airbrush),
        )
    )


def filled(
    book: Book, passes: Mapping[PassKey, Pass], work: BenchWork, sprayed: Iterable[Placement]
) -> Load | None:
    """Return what is filled in at a loading or change, for the passes that are sprayed from it."""
    known = [placed for placed in sprayed if placed.key in passes]
    end = max((placed.end for placed in known), default=work.interval.end)
    span = (work.interval.start, end)
    return fill(book, work.coating, (passes[placed.key] for placed in known), work.airbrush, span)


def served(plan: Plan) -> dict[BenchWork, tuple[Placement, ...]]:
    """Return for each filling the passes sprayed until the airbrush is changed or cleaned."""
    sprayed: dict[str, list[Placement]] = defaultdict(list)
    for placed in sorted(plan.placements, key=lambda placement: placement.start):
        if placed.airbrush and not placed.logged:
            sprayed[placed.airbrush].append(placed)
    turns: dict[str, list[BenchWork]] = defaultdict(list)
    for work in sorted(plan.bench, key=lambda work: work.interval):
        if work.airbrush:
            turns[work.airbrush].append(work)
    return {
        work: tuple(
            placed
            for placed in sprayed[airbrush]
            if work.interval.end <= placed.start
            and (after is None or placed.start < after.interval.start)
        )
        for airbrush, works in turns.items()
        for work, after in zip_longest(works, works[1:])
        if work.kind in FILLING
    }


def used_by(
    book: Book, pass_: Pass, airbrush: str = "", load: Load | None = None
) -> tuple[Used, ...]:
    """Return what a pass uses of each bottle, to be offered to the logbook.

    With the ``load`` that it is sprayed from it is the pass's part of the
    whole filling, losses included; without, what stays in the cup is not
    counted.
    """
    used: dict[str, float] = defaultdict(float)
    if load is not None and pass_.key in load.passes:
        portions = measures_of(book, load.colour, load.share_of(pass_.key))
    else:
        portions = tuple(
            portion
            for take in coating_needed(book, pass_, airbrush)
            for portion in measures_of(book, take.colour, take.ml)
        )
    for portion in portions:
        used[portion.coating] += portion.ml
    rounded = {coating: round(ml, LOG_DIGITS) for coating, ml in used.items()}
    return tuple(Used(coating=coating, ml=ml) for coating, ml in rounded.items() if ml > 0)


def planned_use(book: Book, plan: Plan | None, key: PassKey) -> tuple[Used, ...]:
    """Return what a pass is planned to use of each bottle, to be offered to the logbook.

    Ask while the pass is still ahead in the plan: once it is begun its load
    is behind, and what stays in the cup is no longer known.
    """
    passes = (
        pass_
        for project in book.projects
        for model in project.models
        if (project.name, model.name) == (key.project, key.model)
        for pass_ in expand(project, model)
    )
    pass_ = next((each for each in passes if each.key == key), None)
    if pass_ is None:
        return ()
    placed = plan.placement(key) if plan else None
    load = next((each for each in loads(book, plan) if key in each.passes), None) if plan else None
    return used_by(book, pass_, placed.airbrush if placed else "", load)
