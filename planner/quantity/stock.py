"""What is left of bottles and consumables once the logbook's use is taken off."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime

from planner.quantity.mix_ratios import drops_of
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.message import message
from planner.values.project import Logged, Project
from planner.values.step import Stage
from planner.values.supplies import Consumable


@dataclass(frozen=True)
class Stock:
    """What is left of a coating [ml].

    ``used_ml`` is what the logbook says was used since the bottle was counted.
    """

    coating: Coating
    used_ml: float

    @property
    def balance_ml(self) -> float:
        """What was there less what was used; below 0 where more was used than was counted."""
        return self.coating.in_stock_ml - self.used_ml

    @property
    def left_ml(self) -> float:
        """What can still be there [ml]."""
        return max(0.0, self.balance_ml)

    @property
    def drops(self) -> int:
        """The same in drops of this bottle."""
        return round(self.left_ml * drops_of(self.coating))


@dataclass(frozen=True)
class ConsumableNow:
    """What is left of a consumable, in its unit; ``used`` since it was counted."""

    consumable: Consumable
    used: float

    @property
    def left(self) -> float:
        """What can still be there, in its unit."""
        return max(0.0, self.consumable.in_stock - self.used)


def stock_now(book: Book) -> tuple[Stock, ...]:
    """Return what is left of every coating of the book, in its order.

    A pass counts from its start: what it takes has left the bottle by then.
    Logs of projects set aside count too.
    """
    counted = {coating.name: coating.counted for coating in book.coatings}
    used: dict[str, float] = defaultdict(float)
    for _, entry in _entries(book):
        for other in entry.used:
            if other.coating in counted and _since(counted[other.coating], entry):
                used[other.coating] += other.ml
    return tuple(Stock(coating, used[coating.name]) for coating in book.coatings)


def consumables_now(book: Book) -> tuple[ConsumableNow, ...]:
    """Return what is left of every consumable, each logged pass of its stages taken off."""
    passes: list[tuple[Stage, Logged]] = []
    for project, entry in _entries(book):
        stages = {step.id: step.stage for step in project.model(entry.model).steps}
        passes.append((stages[entry.step], entry))
    return tuple(
        ConsumableNow(
            consumable,
            consumable.per_pass
            * sum(
                stage in consumable.stages and _since(consumable.counted, entry)
                for stage, entry in passes
            ),
        )
        for consumable in book.supplies.consumables
    )


def _entries(book: Book) -> Iterator[tuple[Project, Logged]]:
    for project in book.projects:
        for entry in project.log:
            yield project, entry


def _since(counted: datetime | None, entry: Logged) -> bool:
    return counted is None or entry.start >= counted


_OLD_AFTER_YEARS = {
    Family.WATERBORNE_ACRYLIC: 3,
    Family.SOLVENT_LACQUER: 5,
    Family.ALKYD_ENAMEL: 5,
    Family.TWO_PACK: 1,
    Family.CYANOACRYLATE: 1,
    Family.SOLVENT_CEMENT: 3,
    Family.WHITE_GLUE: 2,
    Family.MASKING_FLUID: 1,
    Family.CHIPPING_FLUID: 3,
    Family.DECAL: 5,
}
"""From when a bottle opened is worth a look first; common practice, no source.

Families that are missing keep: oils in tubes, inks, powders, thinners.
"""

_LOOK = {
    Family.TWO_PACK: message("harden a little of it on scrap before you trust it"),
    Family.CYANOACRYLATE: message("try whether it still grips on scrap"),
    Family.DECAL: message("soak one that you can spare first; old film breaks up"),
}
_USUAL_LOOK = message("stir it to the bottom, strain it, and try it on scrap first")


def old_bottle(coating: Coating, on: date) -> str:
    """Return a word about a bottle opened long ago; "" if there is nothing to say.

    Common practice, no source; what the label says of keeping it comes first.
    """
    limit = _OLD_AFTER_YEARS.get(coating.family)
    if limit is None or coating.opened is None:
        return ""
    years = (on - coating.opened).days / 365.25
    if years < limit:
        return ""
    look = _LOOK.get(coating.family, _USUAL_LOOK)
    if int(years) == 1:
        return message("opened 1 year ago: {look}", look=look)
    return message("opened {years} years ago: {look}", years=int(years), look=look)
