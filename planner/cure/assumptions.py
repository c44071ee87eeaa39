"""Every number of the drying laws for which no figure was found, with its reason.

One table; the laws take their numbers from here, so none is assumed
elsewhere.  What is published or told by practice stands beside its use.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Assumption:
    """A number, its unit and why it is that one."""

    value: float
    unit: str
    reason: str


ASSUMED: dict[str, Assumption] = {
    "band": Assumption(
        10.0, "kJ/mol", "doubt of every slope: published recoat charts scatter as much"
    ),
    "hardening slope": Assumption(
        50.0, "kJ/mol", "no waterborne acrylic in a temperature series; doubles per 10 K"
    ),
    "hardening, damp": Assumption(
        40.0,
        "% RH",
        "per so much above 50 % RH one time more: painters add half a day above 50 % and a "
        "day above 80 %, on the day that they wait else; no clean series is known, and one paper "
        "finds the last water of a polymer solution leaving alike at 25 and 90 % RH",
    ),
    "film forms": Assumption(5.0, "°C", "least film-forming temperature; ISO 2115 says how"),
    "oxidation, damp": Assumption(
        100.0,
        "% RH",
        "per so much above 50 % RH one time more: humid air slows alkyds, by no known figure",
    ),
    "oxidation, reaction share": Assumption(
        0.15, "-", "oxygen has to react in the thinnest film too: enamel washes take a day"
    ),
    "oxidation, thickness": Assumption(
        1.2, "-", "exponent until recoat; a supplier: twice the film takes at least twice as long"
    ),
    "box share": Assumption(0.7, "-", "a closed box keeps part of the vapour"),
    "room air": Assumption(0.1, "m/s", "air of a room in which nobody fans"),
    "fan air": Assumption(1.0, "m/s", "before a small fan"),
    "two-pack thickness": Assumption(
        0.5, "-", "exponent until recoat where solvent must leave first; none without solvent"
    ),
    "retarder": Assumption(
        10.0, "-", "a tenth of slow solvent doubles every time: told is only that it slows"
    ),
    "buried": Assumption(
        1.5, "-", "what has not left a film takes half as long again once a coat lies over it"
    ),
    "touch, dry-brush": Assumption(2.0, "µm", "the brush is wiped nearly dry before"),
    "touch, sponge": Assumption(4.0, "µm", "dabbed off on paper before"),
    "touch, wash": Assumption(3.0, "µm", "a wash is mostly thinner"),
    "touch, filter": Assumption(2.0, "µm", "a filter is nearly all thinner"),
}


def assumed(name: str) -> float:
    """Return one assumed number.

    Examples
    --------
    >>> assumed("hardening slope")
    50.0
    """
    return ASSUMED[name].value
