"""The plan walked in order of time against the stock: what runs out when, what to buy."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from planner.quantity.areas import AreaSource, areas_of
from planner.quantity.coating_per_pass import NOT_BY_VOLUME
from planner.quantity.leftover_mixes import Kept, kept
from planner.quantity.rinsing import rinses
from planner.quantity.shared_mixes import Stirring, stirrings
from planner.quantity.stock import Stock, consumables_now, old_bottle, stock_now
from planner.quantity.sufficiency import Enough, enough_for_all
from planner.quantity.work_ahead import Ahead, Draw, ahead, draws
from planner.values.book import Book
from planner.values.coating import Coating
from planner.values.moment import moment_of, zone_named
from planner.values.plan import PassKey, Plan

NOTHING = 1e-9  # amounts that differ by less are the same


@dataclass(frozen=True)
class RunsOut:
    """The first pass that the stock does not cover.

    ``at`` is its minute, None where it has no place in the plan; its model is
    the ``model_number``-th of ``models`` that take this, in order of time.
    """

    at: int | None
    key: PassKey
    model_number: int
    models: int


@dataclass(frozen=True)
class ShoppingLine:
    """One coating that the work ahead takes [ml].

    Attributes
    ----------
    complete
        False where a place that gets it has no area, so that it takes more.
    replace
        Less than half a bottle is left of what the plan needs: the next one
        is wanted before it is begun, since bottles differ.
    old
        A word about a bottle opened long ago, or "".
    """

    coating: Coating
    needed_ml: float
    stock_ml: float
    margin_pct: float
    runs_out: RunsOut | None
    complete: bool
    replace: bool
    old: str

    @property
    def buy_ml(self) -> float:
        """What the stock lacks [ml], without a margin."""
        return max(0.0, self.needed_ml - self.stock_ml)

    @property
    def bottles(self) -> int:
        """Whole bottles to buy, so that need and margin are covered."""
        wanted = self.needed_ml * (1 + self.margin_pct / 100) - self.stock_ml
        return max(0, math.ceil(wanted / self.coating.bottle_ml - NOTHING))


@dataclass(frozen=True)
class ConsumableLine:
    """One consumable that the work ahead takes, in its unit."""

    name: str
    unit: str
    needed: float
    stock: float
    margin_pct: float
    runs_out: RunsOut | None

    @property
    def buy(self) -> float:
        """What to buy, in its unit, so that need and margin are covered."""
        return max(0.0, self.needed * (1 + self.margin_pct / 100) - self.stock)


@dataclass(frozen=True)
class NoArea:
    """A place that gets a coat but has no area, and how to mend that."""

    project: str
    model: str
    place: str
    mend: str


@dataclass(frozen=True)
class Shopping:
    """What the work left in all active projects takes, against the stock.

    ``at_hand`` names coatings that are needed but not measured by volume
    (glue, decals, pigment).  ``stirrings`` are mixes that one stirring would
    do for.
    """

    lines: tuple[ShoppingLine, ...]
    consumables: tuple[ConsumableLine, ...]
    at_hand: tuple[str, ...]
    no_area: tuple[NoArea, ...]
    colours: tuple[Enough, ...]
    leftovers: tuple[Kept, ...]
    stirrings: tuple[Stirring, ...] = ()


def shopping(book: Book, plan: Plan | None, now: int) -> Shopping:
    """Return what the passes not yet done take, and what to buy for them.

    Without a plan nothing is known of times and loads: what stays in the
    cup is not counted, and nothing says when a bottle runs out.
    """
    passes = ahead(book, plan)
    drawn = draws(book, plan, passes)
    return Shopping(
        lines=tuple(_lines(book, _in_order((*drawn, *rinses(book, plan, passes))), now)),
        consumables=tuple(_consumables(book, passes)),
        at_hand=_at_hand(book, passes),
        no_area=tuple(_no_area(book, passes)),
        colours=enough_for_all(
            drawn, {stock.coating.name: stock.left_ml for stock in stock_now(book)}
        ),
        leftovers=kept(book, now),
        stirrings=stirrings(book, plan) if plan else (),
    )


def _in_order(drawn: Iterable[Draw]) -> tuple[Draw, ...]:
    return tuple(sorted(drawn, key=lambda draw: (draw.at is None, draw.at or 0)))


def _lines(book: Book, drawn: tuple[Draw, ...], now: int) -> Iterator[ShoppingLine]:
    today = moment_of(now, zone_named(book.bench_time.zone)).date()
    for stock in stock_now(book):
        coating = stock.coating
        mine = [draw for draw in drawn if draw.coating == coating.name]
        if mine:
            needed = sum(draw.ml for draw in mine)
            yield ShoppingLine(
                coating=coating,
                needed_ml=needed,
                stock_ml=stock.left_ml,
                margin_pct=book.supplies.margin_pct,
                runs_out=_runs_out([(d.at, d.key, d.ml) for d in mine], stock.left_ml),
                complete=all(draw.complete for draw in mine),
                replace=_low(stock, needed),
                old=old_bottle(coating, today),
            )


def _low(stock: Stock, needed_ml: float) -> bool:
    """Tell whether a bottle is under half full and still needed; common practice, no source."""
    return needed_ml > NOTHING and NOTHING < stock.left_ml < stock.coating.bottle_ml / 2


def _runs_out(wanted: Iterable[tuple[int | None, PassKey, float]], stock: float) -> RunsOut | None:
    """Return the first pass at which more has been drawn than there was."""
    every = list(wanted)
    models = list(dict.fromkeys((key.project, key.model) for _, key, _ in every))
    drawn = 0.0
    for at, key, amount in every:
        drawn += amount
        if drawn > stock + NOTHING:
            number = models.index((key.project, key.model)) + 1
            return RunsOut(at, key, number, len(models))
    return None


def _consumables(book: Book, passes: tuple[Ahead, ...]) -> Iterator[ConsumableLine]:
    for have in consumables_now(book):
        consumable = have.consumable
        # A pass under way stands in the logbook: what it takes is off the stock already.
        mine = [
            (each.at, each.pass_.key, consumable.per_pass)
            for each in passes
            if each.begun is None and each.pass_.step.stage in consumable.stages
        ]
        if mine and consumable.per_pass > 0:
            yield ConsumableLine(
                name=consumable.name,
                unit=consumable.unit,
                needed=consumable.per_pass * len(mine),
                stock=have.left,
                margin_pct=book.supplies.margin_pct,
                runs_out=_runs_out(mine, have.left),
            )


def _at_hand(book: Book, passes: tuple[Ahead, ...]) -> tuple[str, ...]:
    wanted: set[str] = set()
    for each in passes:
        for _, colour in each.pass_.films:
            if book.coating(colour).family in NOT_BY_VOLUME:
                mix = book.mix(colour)
                wanted.update(portion.coating for portion in mix.portions) if mix else wanted.add(
                    colour
                )
    return tuple(coating.name for coating in book.coatings if coating.name in wanted)


def _no_area(book: Book, passes: tuple[Ahead, ...]) -> Iterator[NoArea]:
    seen: set[tuple[str, str, str]] = set()
    for each in passes:
        key = each.pass_.key
        areas = areas_of(book.project(key.project).model(key.model))
        for place, colour in each.pass_.films:
            spot = (key.project, key.model, place)
            measured = book.coating(colour).family not in NOT_BY_VOLUME
            if measured and areas[place].found is AreaSource.MISSING and spot not in seen:
                seen.add(spot)
                yield NoArea(*spot, areas[place].mend)
