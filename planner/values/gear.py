"""Tools that cost time to set up, and what was done to them: airbrushes."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Annotated

from planner.values.field import NAME, Field, Value
from planner.values.refusal import demand, plain_name

USUAL_CUP_ML = 7.0
"""Gravity cups hold 2 to 9 ml, bottles below 15 to 30: common practice, no source [ml]."""


@dataclass(frozen=True, kw_only=True)
class Airbrush(Value):
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

    name: Annotated[str, NAME]
    load_minutes: Annotated[int, Field("&Load a clean cup", unit="min", least=1, most=240)] = 3
    change_same_family: Annotated[
        int, Field("Change to the &same family", unit="min", least=1, most=240)
    ] = 6
    change_other_family: Annotated[
        int, Field("Change to &another family", unit="min", least=1, most=240)
    ] = 10
    clean_minutes: Annotated[
        int, Field("&Clean before it is put away", unit="min", least=1, most=240)
    ] = 6
    idle_limit_minutes: Annotated[
        int,
        Field(
            "A load may stand &idle",
            unit="min",
            least=0,
            most=1440,
            help="Longest time between two strokes before the paint dries in the nozzle",
        ),
    ] = 20
    least_fill_ml: Annotated[
        float, Field("Least &fill of the cup", unit="ml", least=0, most=100, decimals=1)
    ] = 1.0
    most_fill_ml: Annotated[
        float | None,
        Field("&Most that the cup takes", unit="ml", least=0.1, most=1000, decimals=1),
    ] = None
    lost_ml: Annotated[
        float,
        Field("Lost at each change and &cleaning", unit="ml", least=0, most=100, decimals=1),
    ] = 0.5
    transfer: Annotated[
        float | None, Field("&Stays on the model", percent=True, least=0.01, most=1)
    ] = None

    def __post_init__(self) -> None:
        super().__post_init__()
        holds = self.most_fill_ml is None or self.least_fill_ml <= self.most_fill_ml
        demand(holds, "most_fill_ml", "is less than least_fill_ml")

    @property
    def cup_ml(self) -> float:
        """Most that goes into the cup at once [ml]."""
        usual = max(USUAL_CUP_ML, self.least_fill_ml)
        return usual if self.most_fill_ml is None else self.most_fill_ml


@dataclass(frozen=True, kw_only=True)
class Cleaned(Value):
    """A fact: this airbrush was emptied and cleaned by then; it may have left the gear since."""

    airbrush: Annotated[str, Field(check=plain_name)]
    at: datetime


@dataclass(frozen=True, kw_only=True)
class Gear(Value):
    """What the person owns."""

    airbrushes: Annotated[tuple[Airbrush, ...], Field(unique="name")] = ()
