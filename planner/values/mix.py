"""Mixes: parts of several coatings stirred together, and the film that they leave."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Annotated

from planner.values.coating import MOST_RETARDER, Coating, Family, colour
from planner.values.field import NAME, Field, Value
from planner.values.refusal import demand


@dataclass(frozen=True, kw_only=True)
class Portion(Value):
    """Some parts by volume of one coating in a mix."""

    coating: str
    parts: Annotated[float, Field(least=0.01, most=1000, decimals=2)]

    def __post_init__(self) -> None:
        demand(bool(self.coating), "coating", "is empty; name a coating")
        super().__post_init__()


@dataclass(frozen=True, kw_only=True)
class Mix(Value):
    """Parts of several coatings stirred together.

    The film that forms is that of the first portion; further portions
    shift its colour or thin it.  ``life_minutes`` is how long it can be
    used, in the cup or on the palette [min].
    """

    name: Annotated[str, NAME]
    portions: Annotated[
        tuple[Portion, ...],
        Field(
            "&Parts by volume",
            unique="coating",
            help="What forms the film first; thinners and the rest after it",
        ),
    ]
    life_minutes: Annotated[int, Field("&Can be used for", unit="min", least=1, most=43_200)] = 240
    swatch: Annotated[str | None, Field("Co&lour", check=colour, help="Else that of the first")] = (
        None
    )

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.portions) >= 1, "portions", "is empty; name at least one coating")


def film_of_mix(mix: Mix, known: Mapping[str, Coating]) -> Coating:
    """Return the coating of the film that a mix leaves: its first, with the retarder in it."""
    first = known[mix.portions[0].coating]
    whole = sum(portion.parts for portion in mix.portions)
    slow = sum(
        portion.parts
        for portion in mix.portions
        if known[portion.coating].family is Family.RETARDER
    )
    if not slow:
        return first
    return replace(first, retarder=min(MOST_RETARDER, first.retarder + slow / whole))
