"""Drying cards: a scrap coated with the model, and what touching it told of the bottle."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from planner.values.coating import State
from planner.values.moment import aware
from planner.values.refusal import demand, number_in, plain_name

MOST_TRIALS = 40


class Trial(StrEnum):
    """What is done to the card; each asks one drying state (two minutes for all)."""

    FINGER = "finger"
    THUMB = "thumb"
    TAPE = "tape"
    RUB = "rub"


ASKS: dict[Trial, State] = {
    Trial.FINGER: State.SET_TO_TOUCH,
    Trial.THUMB: State.DRY_TO_HANDLE,
    Trial.TAPE: State.PRINT_FREE,
    Trial.RUB: State.SOLVENT_SAFE,
}
"""A light finger leaves no mark; a thumb pressed and twisted does not loosen the film (so
ASTM D1640 tells both, from memory); low-tack tape leaves no print; a swab wet with the
solvent of the next wash, rubbed on the card's edge, takes no colour (common practice)."""


@dataclass(frozen=True, kw_only=True)
class Tried:
    """One trial of a card: whether the film stood it, at a moment."""

    trial: Trial
    at: datetime
    held: bool

    def __post_init__(self) -> None:
        aware(self.at, "at")


@dataclass(frozen=True, kw_only=True)
class DryingCard:
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

    coating: str
    laid: datetime
    location: str = ""
    dry_film_um: float | None = None
    tried: tuple[Tried, ...] = ()

    def __post_init__(self) -> None:
        plain_name(self.coating, "coating")
        aware(self.laid, "laid")
        if self.dry_film_um is not None:
            number_in(self.dry_film_um, 0.1, 2000, "dry_film_um", "µm")
        demand(len(self.tried) <= MOST_TRIALS, "tried", f"has more than {MOST_TRIALS} trials")
        for index, one in enumerate(self.tried):
            demand(one.at > self.laid, f"tried[{index}].at", "must lie after the card was coated")
