"""What else is in the drawer: consumables, leftover mixes, sample cards, and how to buy."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from planner.values.coating import Portion
from planner.values.moment import aware, in_years
from planner.values.refusal import all_different, demand, number_in, plain_name
from planner.values.step import Stage


@dataclass(frozen=True, kw_only=True)
class Consumable:
    """Something used up with the work: ``per_pass`` ``unit`` at each pass of its stages.

    ``in_stock`` was there when it was last ``counted``; the passes in the
    logbook since then are taken off, without ``counted`` all of them.
    """

    name: str
    unit: str
    in_stock: float = 0.0
    per_pass: float = 0.0
    stages: tuple[Stage, ...] = ()
    counted: datetime | None = None

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        plain_name(self.unit, "unit", most=20)
        number_in(self.in_stock, 0, 1e6, "in_stock")
        number_in(self.per_pass, 0, 1e4, "per_pass")
        all_different(self.stages, "stages", "")
        if self.counted is not None:
            aware(self.counted, "counted")


@dataclass(frozen=True, kw_only=True)
class Leftover:
    """A mix kept in a jar for touch-ups: its contents [parts] and how long it keeps."""

    name: str
    ml: float
    made: datetime
    keeps_days: int
    portions: tuple[Portion, ...]

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        number_in(self.ml, 0, 10_000, "ml", "ml")
        aware(self.made, "made")
        number_in(self.keeps_days, 1, 3650, "keeps_days")
        demand(len(self.portions) >= 1, "portions", "is empty; name what is in it")


@dataclass(frozen=True, kw_only=True)
class Drops:
    """So many drops of a coating."""

    coating: str
    drops: int

    def __post_init__(self) -> None:
        demand(bool(self.coating), "coating", "is empty; name a coating")
        number_in(self.drops, 1, 10_000, "drops")


@dataclass(frozen=True, kw_only=True)
class Card:
    """A sample card: what was mixed drop by drop, when, and a photo of it."""

    name: str
    on: date
    drops: tuple[Drops, ...]
    note: str = ""
    photo: str = ""

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        in_years(self.on, "on")
        demand(len(self.drops) >= 1, "drops", "is empty; say what is in it")
        demand(len(self.note) <= 2000, "note", "is longer than 2000 characters; shorten it")


@dataclass(frozen=True, kw_only=True)
class Supplies:
    """What is kept beside the bottles; ``margin_pct`` is bought on top of what is needed."""

    margin_pct: float = 10.0
    consumables: tuple[Consumable, ...] = ()
    leftovers: tuple[Leftover, ...] = ()
    cards: tuple[Card, ...] = ()

    def __post_init__(self) -> None:
        number_in(self.margin_pct, 0, 500, "margin_pct", "%")
        all_different([consumable.name for consumable in self.consumables], "consumables")
        all_different([leftover.name for leftover in self.leftovers], "leftovers")
        all_different([card.name for card in self.cards], "cards")
