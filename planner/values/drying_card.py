"""Drying cards: a scrap coated with the model, and what touching it told of the bottle."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Annotated

from planner.values.coating import State
from planner.values.field import Field, Value
from planner.values.message import message
from planner.values.refusal import demand, plain_name

MOST_TRIALS, MOST_CARDS = 20, 100  # that a card, and a book, may have


class CardTrial(StrEnum):
    """What is done to the card; each asks one drying state (two minutes for all)."""

    FINGER = "finger"
    THUMB = "thumb"
    TAPE = "tape"
    RUB = "rub"


ASKS: dict[CardTrial, State] = {
    CardTrial.FINGER: State.SET_TO_TOUCH,
    CardTrial.THUMB: State.DRY_TO_HANDLE,
    CardTrial.TAPE: State.PRINT_FREE,
    CardTrial.RUB: State.SOLVENT_SAFE,
}
"""A light finger leaves no mark; a thumb pressed and twisted does not loosen the film (so
ASTM D1640 tells both, from memory); low-tack tape leaves no print; a swab wet with the
solvent of the next wash, rubbed on the card's edge, takes no colour (common practice)."""


@dataclass(frozen=True, kw_only=True)
class TrialResult(Value):
    """One trial of a card: whether the film stood it, at a moment."""

    trial: Annotated[CardTrial, Field("&Trial")]
    at: Annotated[datetime, Field("&When")]
    held: Annotated[bool, Field("It h&eld")]


@dataclass(frozen=True, kw_only=True)
class DryingCard(Value):
    """A scrap coated once with a bottle, to be tried while it dries.

    Attributes
    ----------
    coating
        The bottle, or the mix.
    laid
        When its coat ended.
    location
        Where it dries; "" is the first location.
    dry_film_um
        Its dry film; absent, that of the coating [µm].
    tried
        The trials so far.
    """

    coating: Annotated[str, Field("&Bottle", check=plain_name)]
    laid: Annotated[datetime, Field("&Coated")]
    location: Annotated[str, Field("Dries &in")] = ""
    dry_film_um: Annotated[
        float | None, Field("Dry &film", unit="µm", least=0.1, most=2000, decimals=1)
    ] = None
    tried: tuple[TrialResult, ...] = ()

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(
            len(self.tried) <= MOST_TRIALS,
            "tried",
            message("has more than {most} trials; coat another card", most=MOST_TRIALS),
        )
        for index, one in enumerate(self.tried):
            demand(one.at > self.laid, f"tried[{index}].at", "must lie after the card was coated")
