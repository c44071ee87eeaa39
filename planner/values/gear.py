"""Tools that cost time to set up, and what was done to them: airbrushes."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from planner.values.moment import aware
from planner.values.refusal import all_different, demand, number_in, plain_name

USUAL_CUP_ML = 7.0
"""Gravity cups hold 2 to 9 ml, bottles below 15 to 30: common practice, no source [ml]."""


@dataclass(frozen=True, kw_only=True)
class Airbrush:
    """An airbrush and the minutes that its loads cost.

    Attributes
    ----------
    load_minutes
        Filling a clean cup and testing the spray [min].
    change_same_family, change_other_family
        From one colour to another, rinsing and refilling included [min].
    clean_minutes
        Cleaning before it is put away [min].
    idle_limit_minutes
        Longest time a load may stand between two strokes [min].
    least_fill_ml
        Least that the cup must hold to spray at all [ml].
    most_fill_ml
        Most that the cup takes at once [ml]; absent, `USUAL_CUP_ML`.
    lost_ml
        What stays in cup and needle at each change and cleaning [ml].
    transfer
        Fraction that stays on the model; absent, the usual one of the tool.
    """

    name: str
    load_minutes: int = 3
    change_same_family: int = 6
    change_other_family: int = 10
    clean_minutes: int = 6
    idle_limit_minutes: int = 20
    least_fill_ml: float = 1.0
    most_fill_ml: float | None = None
    lost_ml: float = 0.5
    transfer: float | None = None

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        for field in ("load_minutes", "change_same_family", "change_other_family", "clean_minutes"):
            number_in(getattr(self, field), 1, 240, field, "min")
        number_in(self.idle_limit_minutes, 0, 1440, "idle_limit_minutes", "min")
        number_in(self.least_fill_ml, 0, 100, "least_fill_ml", "ml")
        if self.most_fill_ml is not None:
            number_in(self.most_fill_ml, 0.1, 1000, "most_fill_ml", "ml")
            holds = self.least_fill_ml <= self.most_fill_ml
            demand(holds, "most_fill_ml", "is less than least_fill_ml")
        number_in(self.lost_ml, 0, 100, "lost_ml", "ml")
        if self.transfer is not None:
            number_in(self.transfer, 0.01, 1, "transfer")

    @property
    def cup_ml(self) -> float:
        """Most that goes into the cup at once [ml]."""
        usual = max(USUAL_CUP_ML, self.least_fill_ml)
        return usual if self.most_fill_ml is None else self.most_fill_ml


@dataclass(frozen=True, kw_only=True)
class Cleaned:
    """A fact: this airbrush was emptied and cleaned by then; it may have left the gear since."""

    airbrush: str
    at: datetime

    def __post_init__(self) -> None:
        plain_name(self.airbrush, "airbrush")
        aware(self.at, "at")


@dataclass(frozen=True, kw_only=True)
class Gear:
    """What the person owns."""

    airbrushes: tuple[Airbrush, ...] = ()

    def __post_init__(self) -> None:
        all_different([airbrush.name for airbrush in self.airbrushes], "airbrushes")
