"""What else is in the drawer: consumables, leftover mixes, sample cards, and how to buy."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from typing import Annotated

from planner.values.field import NAME, Field, Value
from planner.values.mix import Portion
from planner.values.refusal import demand, plain_name
from planner.values.step import Stage


def _short_name(unit: str, place: str) -> None:
    plain_name(unit, place, most=20)


@dataclass(frozen=True, kw_only=True)
class Consumable(Value):
    """Something used up with the work: ``per_pass`` ``unit`` at each pass of its stages.

    ``in_stock`` was there when it was last ``counted``; the passes in the
    logbook since then are taken off, without ``counted`` all of them.
    """

    name: Annotated[str, NAME]
    unit: Annotated[str, Field("Counted &in", check=_short_name)]
    in_stock: Annotated[float, Field("&Left now", least=0, most=1e6, decimals=1)] = 0.0
    per_pass: Annotated[
        float, Field("Used &up by one coat or piece of work", least=0, most=1e4, decimals=2)
    ] = 0.0
    stages: Annotated[tuple[Stage, ...], Field("&At these stages", unique="")] = ()
    counted: datetime | None = None


@dataclass(frozen=True, kw_only=True)
class Leftover(Value):
    """A mix kept in a jar for touch-ups: its contents [parts] and how long it keeps."""

    name: Annotated[str, NAME]
    ml: Annotated[float, Field("&How much", unit="ml", least=0, most=10_000, decimals=1)]
    made: Annotated[datetime, Field("&Mixed on")]
    keeps_days: Annotated[int, Field("Keeps &for", unit="days", least=1, most=3650)]
    portions: Annotated[tuple[Portion, ...], Field("&Parts by volume")]

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.portions) >= 1, "portions", "is empty; name what is in it")


@dataclass(frozen=True, kw_only=True)
class Drops(Value):
    """So many drops of a coating."""

    coating: str
    drops: Annotated[int, Field(least=1, most=10_000)]

    def __post_init__(self) -> None:
        demand(bool(self.coating), "coating", "is empty; name a coating")
        super().__post_init__()


@dataclass(frozen=True, kw_only=True)
class Card(Value):
    """A sample card: what was mixed drop by drop, when, and a photo of it."""

    name: Annotated[str, NAME]
    on: Annotated[date, Field("&Painted on")]
    drops: Annotated[tuple[Drops, ...], Field("&Drop by drop")]
    note: Annotated[str, Field("N&ote", most=2000)] = ""
    photo: Annotated[str, Field("P&hoto")] = ""

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.drops) >= 1, "drops", "is empty; say what is in it")


@dataclass(frozen=True, kw_only=True)
class Supplies(Value):
    """What is kept beside the bottles; ``margin_pct`` is bought on top of what is needed."""

    margin_pct: Annotated[float, Field(unit="%", least=0, most=500)] = 10.0
    consumables: Annotated[tuple[Consumable, ...], Field(unique="name")] = ()
    leftovers: Annotated[tuple[Leftover, ...], Field(unique="name")] = ()
    cards: Annotated[tuple[Card, ...], Field(unique="name")] = ()
