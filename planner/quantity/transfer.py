"""How much of what leaves the tool stays on the model."""

from __future__ import annotations

from dataclasses import dataclass

from planner.cure import Evidence
from planner.values.gear import Airbrush
from planner.values.message import message
from planner.values.step import Stage, Step, Tool

WASHES = frozenset({Stage.WASH, Stage.OIL_WASH, Stage.FILTER})


@dataclass(frozen=True)
class Transfer:
    """Fraction of a coating that stays on the model, its span and what it is worth.

    ``status`` is None for a figure that the person gave.
    """

    fraction: float
    least: float
    most: float
    status: Evidence | None
    source: str


_MODEL_BRUSH = Transfer(0.95, 0.9, 1.0, Evidence.ASSUMED, message("little is lost in a brush"))
_RUBBED = Transfer(0.65, 0.5, 0.8, Evidence.ASSUMED, message("what is wiped or dabbed off is lost"))
_TRANSFER = {
    Tool.AIRBRUSH: Transfer(
        0.30,
        0.15,
        0.50,
        Evidence.ASSUMED,
        message("small targets catch 20 to 50 %, R. Joseph 2009"),
    ),
    Tool.CAN: Transfer(
        0.25,
        0.15,
        0.40,
        Evidence.PUBLISHED,
        message("air-atomised spray, 40 CFR 60.313; span assumed"),
    ),
    Tool.BRUSH: _MODEL_BRUSH,
    Tool.HAND: _MODEL_BRUSH,
    Tool.SPONGE: _RUBBED,
    Tool.CLOTH: _RUBBED,
}


def transfer_efficiency(step: Step, airbrush: Airbrush | None = None) -> Transfer:
    """Return how much of the coating a step's way of working leaves on the model.

    An airbrush with a figure of its own brings that; no span is known of it.
    """
    if step.stage in WASHES and step.tool is Tool.BRUSH:
        return _RUBBED
    if step.tool is Tool.AIRBRUSH and airbrush is not None and airbrush.transfer is not None:
        own = airbrush.transfer
        return Transfer(own, own, own, None, message("given for this airbrush"))
    return _TRANSFER[step.tool]
