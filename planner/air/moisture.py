"""Moist air: saturation pressure, dew point, how far a surface is from condensation."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

from planner.values.refusal import demand, number_in
from planner.values.room import COLDEST_C, HOTTEST_C, sane_air

MAGNUS_PA, MAGNUS_A, MAGNUS_B_C = 611.2, 17.62, 243.12
"""Coefficients over water, -45 to 60 °C.  WMO-No. 8 (CIMO Guide), Annex 4.B."""

PSYCHROMETER_PA_K = 66.5
"""cp P / (0.622 L) at 1013.25 hPa, with cp = 1006 J/(kg K) and L = 2.46 MJ/kg [Pa/K]."""

ZERO_C_K = 273.15
_NEWTON, _CLOSE_K = 20, 1e-9


class Air(NamedTuple):
    """Temperature [°C] and relative humidity [%]."""

    temperature_c: float
    humidity_pct: float


@dataclass(frozen=True)
class Samples:
    """Some airs, one after the other, and what follows from each."""

    airs: tuple[Air, ...]

    @cached_property
    def steady(self) -> bool:
        """Tell whether they are all the same."""
        return all(air == self.airs[0] for air in self.airs)

    @cached_property
    def coldest_c(self) -> float:
        """The least temperature [°C]."""
        return min(air.temperature_c for air in self.airs)

    @cached_property
    def inverse_k(self) -> tuple[float, ...]:
        """Each 1/T [1/K]."""
        return tuple([1 / (air.temperature_c + ZERO_C_K) for air in self.airs])

    @cached_property
    def wet_bulb_drop_k(self) -> tuple[float, ...]:
        """How far each wet bulb lies below the air [K]."""
        return tuple([wet_bulb_drop_k(air) for air in self.airs])


def saturation_pressure_pa(temperature_c: float) -> float:
    """Return the saturation pressure of water vapour over water [Pa].

    Parameters
    ----------
    temperature_c
        Air temperature [°C], -30 to 60.

    Raises
    ------
    Refused
        If the temperature is outside that range.

    References
    ----------
    WMO-No. 8 (CIMO Guide), Annex 4.B.

    Examples
    --------
    >>> round(saturation_pressure_pa(23.0))
    2803
    """
    number_in(temperature_c, COLDEST_C, HOTTEST_C, "temperature_c", "°C")
    return _magnus(temperature_c)


def dew_point_c(temperature_c: float, humidity_pct: float) -> float:
    """Return the dew point over water, also below 0 °C [°C].

    Over water it is the higher of dew and frost point, hence the safer one.

    Raises
    ------
    Refused
        If the air is none that a room can have, or bone dry (no dew point).

    References
    ----------
    Lawrence 2005, Bull. Amer. Meteor. Soc. 86:225, with the WMO coefficients.

    Examples
    --------
    >>> round(dew_point_c(20.0, 50.0), 2)
    9.26
    """
    sane_air(temperature_c, humidity_pct)
    demand(humidity_pct > 0, "humidity_pct", "0 % RH has no dew point; give more than 0")
    gamma = math.log(humidity_pct / 100) + MAGNUS_A * temperature_c / (MAGNUS_B_C + temperature_c)
    return MAGNUS_B_C * gamma / (MAGNUS_A - gamma)


def surface_margin_k(surface_c: float, temperature_c: float, humidity_pct: float) -> float:
    """Return how far a surface is above the dew point of the air [K].

    Raises
    ------
    Refused
        If the surface or the air is none that a room can have.
    """
    number_in(surface_c, COLDEST_C, HOTTEST_C, "surface_c", "°C")
    return surface_c - dew_point_c(temperature_c, humidity_pct)


def wet_bulb_drop_k(air: Air) -> float:
    """Return how far below the air a wet surface settles that draws its heat from it [K].

    There the heat that the air brings is the heat that evaporation takes:
    psat(T - drop) - p = γ drop.  Newton's method from 0, where the curve is
    convex, climbs to the root and never past it.

    References
    ----------
    WMO-No. 8 (CIMO Guide), Annex 4.B; `PSYCHROMETER_PA_K` is that of the
    thermodynamic wet bulb at sea level.

    Examples
    --------
    >>> round(23.0 - wet_bulb_drop_k(Air(23.0, 50.0)), 1)
    16.3
    """
    temperature_c, humidity_pct = air
    if humidity_pct >= 100:
        return 0.0
    vapour = humidity_pct / 100 * _magnus(temperature_c)
    drop = 0.0
    for _ in range(_NEWTON):
        wet_c = temperature_c - drop
        pressure = _magnus(wet_c)
        slope = pressure * MAGNUS_A * MAGNUS_B_C / (MAGNUS_B_C + wet_c) ** 2
        change = (pressure - vapour - PSYCHROMETER_PA_K * drop) / (slope + PSYCHROMETER_PA_K)
        drop += change
        if change < _CLOSE_K:
            break
    return drop


def _magnus(temperature_c: float) -> float:
    return MAGNUS_PA * math.exp(MAGNUS_A * temperature_c / (MAGNUS_B_C + temperature_c))
