"""A film wet with solvent cools itself, as a wet bulb does with water.

It settles where the heat that the air brings is the heat that evaporation
takes; only the psychrometer constant differs from that of water, by the
liquid's latent heat and by how its vapour spreads in air (Chilton and
Colburn's analogy).
"""

from __future__ import annotations

import math

from planner.air.moisture import ZERO_C_K

GAS_J_MOL_K = 8.314462618

VAPOUR_PA = {
    "n-butyl acetate": (670.0, 2131.0),
    "2-propanol": (2141.0, 7841.0),
    "butanone": (5683.0, 15253.0),
    "n-decane": (60.0, 256.0),
    "2-butoxyethanol": (50.0, 204.0),
}
"""Vapour pressure at 10 and 30 °C [Pa], from the library thermo 0.6.1."""

_PSYCHROMETER_PA_K = {
    "n-butyl acetate": 146.0,
    "2-propanol": 109.0,
    "butanone": 152.0,
    "n-decane": 141.0,
}
"""cp P M_air / (M L) · (α/D)^(2/3) with cp = 1006 J/(kg K), P = 1013.25 hPa and
α = 21.5 mm²/s; L = 378, 755, 482 and 361 kJ/kg, D = 6.7, 9.9, 9.0 and 5.6 mm²/s of the
liquids in that order are from memory [Pa/K]."""


def solvent_drop_k(solvent: str, temperature_c: float) -> float:
    """Return how far below the air a film wet with a solvent settles [K].

    The root of psat(T - drop) = γ drop, by Newton's method from 0: the curve
    is convex, so that it climbs to the root and never past it.

    Examples
    --------
    >>> round(solvent_drop_k("n-butyl acetate", 23.0), 1)
    6.6
    """
    steep = vapour_activation_kj_mol(solvent) * 1000 / GAS_J_MOL_K
    level = math.log(VAPOUR_PA[solvent][0]) + steep / (10 + ZERO_C_K)
    gamma = _PSYCHROMETER_PA_K[solvent]
    drop = 0.0
    for _ in range(20):
        wet_k = temperature_c + ZERO_C_K - drop
        pressure = math.exp(level - steep / wet_k)
        change = (pressure - gamma * drop) / (pressure * steep / wet_k**2 + gamma)
        drop += change
        if change < 1e-9:
            break
    return drop


def vapour_activation_kj_mol(solvent: str) -> float:
    """Return the slope of a solvent's vapour pressure (Clausius-Clapeyron) [kJ/mol]."""
    cold, warm = VAPOUR_PA[solvent]
    span = 1 / (10 + ZERO_C_K) - 1 / (30 + ZERO_C_K)
    return GAS_J_MOL_K / 1000 * math.log(warm / cold) / span
