"""What a coat does to the films below it, and they to it.

Solvent leaves through all that lies above it.  So a coat hardens only once
what it shares with the film below has gone (by `share` of the wait that is
left there), and it wets again what lies below, to `depth` of its own
thickness, which then has to dry with it.  Both are assumed: what is told is
only that coats add, that a strong solvent goes deeper than water, and that
what has reacted is not wetted again.
"""

from __future__ import annotations

from typing import NamedTuple

from planner.values.coating import Family


class Bond(NamedTuple):
    """How a fresh coat hangs together with the film below.

    Attributes
    ----------
    depth
        How deep it wets that film again, in parts of its own thickness [-].
    share_pct
        How much of what that film still has to wait is added before the
        coat's own hardening begins [%].
    """

    depth: float
    share_pct: int


_F = Family
_LACQUERS = (_F.SOLVENT_LACQUER, _F.ALCOHOL_INK)
_OILS = (_F.ALKYD_ENAMEL, _F.ARTISTS_OIL)

LIKE_OVER_LIKE = Bond(0.5, 100)
"""A lacquer dissolves a lacquer: both dry as one."""
WATER_OVER_WATER = Bond(0.15, 50)
"""Water softens a dispersion again a little, and half of its glycol ether stays below."""
STRONG_OVER_WATERBORNE = Bond(0.3, 50)
"""Esters, ketones and alcohols bite into a waterborne film."""
SPIRIT_OVER_OIL = Bond(0.3, 0)
"""White spirit softens an oil film; that hardens by oxygen, which the new coat does not need."""

_BONDS: dict[tuple[Family, Family], Bond] = {
    **{(upper, lower): LIKE_OVER_LIKE for upper in _LACQUERS for lower in _LACQUERS},
    **{(upper, lower): SPIRIT_OVER_OIL for upper in _OILS for lower in _OILS},
    **{(upper, _F.WATERBORNE_ACRYLIC): STRONG_OVER_WATERBORNE for upper in _LACQUERS},
    (_F.WATERBORNE_ACRYLIC, _F.WATERBORNE_ACRYLIC): WATER_OVER_WATER,
    (_F.TWO_PACK, _F.WATERBORNE_ACRYLIC): STRONG_OVER_WATERBORNE,
    **{(_F.TWO_PACK, lower): STRONG_OVER_WATERBORNE for lower in _LACQUERS},
    (_F.WATERBORNE_ACRYLIC, _F.CHIPPING_FLUID): Bond(0.15, 0),
}


def bond_of(upper: Family, lower: Family) -> Bond | None:
    """Return how a coat hangs together with the film below; None where it does not."""
    return _BONDS.get((upper, lower))
