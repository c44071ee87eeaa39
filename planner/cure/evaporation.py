"""Evaporation from a wet film: it cools itself, and moving air carries the vapour off.

The film settles below the air as a wet bulb does, and its rate goes with how
far: that is the heat which the air brings it.
"""

from __future__ import annotations

from dataclasses import dataclass

from planner.air import ZERO_C_K, Air, Samples, solvent_drop_k, wet_bulb_drop_k
from planner.cure.assumptions import assumed
from planner.values.room import Movement

REFERENCE = Air(23.0, 50.0)
REFERENCE_K = REFERENCE.temperature_c + ZERO_C_K

_SPEED_M_S = {
    Movement.STILL: 0.0,
    Movement.ROOM: assumed("room air"),
    Movement.FAN: assumed("fan air"),
    Movement.BOX: 0.0,
}


def movement_factor(movement: Movement) -> float:
    """Return how fast a film evaporates in such air, relative to the air of a room [-].

    References
    ----------
    ASHRAE Handbook HVAC Applications, evaporation from water:
    w ~ 0.089 + 0.0782 V with V in m/s.  Which speed a room and a fan have is
    assumed, and so is what a box keeps.

    Examples
    --------
    >>> round(movement_factor(Movement.FAN), 2)
    1.73
    """
    factor = (0.089 + 0.0782 * _SPEED_M_S[movement]) / (0.089 + 0.0782 * _SPEED_M_S[Movement.ROOM])
    return factor * assumed("box share") if movement is Movement.BOX else factor


@dataclass(frozen=True)
class Liquid:
    """What evaporates; water gives off less in damp air, no solvent does."""

    name: str

    @property
    def is_water(self) -> bool:
        """Tell whether it is water."""
        return self.name == "water"

    def drops_k(self, samples: Samples) -> tuple[float, ...]:
        """Return how far a wet film settles below each air [K]."""
        if self.is_water:
            return samples.wet_bulb_drop_k
        known: dict[float, float] = {}
        for air in samples.airs:
            if air.temperature_c not in known:
                known[air.temperature_c] = solvent_drop_k(self.name, air.temperature_c)
        return tuple([known[air.temperature_c] for air in samples.airs])

    @property
    def reference_drop_k(self) -> float:
        """The same at 23 °C and 50 % RH [K]."""
        if self.is_water:
            return wet_bulb_drop_k(REFERENCE)
        return solvent_drop_k(self.name, REFERENCE.temperature_c)
