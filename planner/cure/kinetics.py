"""How fast films dry in given air, against 23 °C and 50 % RH (ISO 3270)."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from planner.air import ZERO_C_K, Air, Samples, saturation_pressure_pa
from planner.air.advice import FILM_FORMS_C
from planner.values.coating import Family

GAS_J_MOL_K = 8.314462618
REFERENCE = Air(23.0, 50.0)
REFERENCE_K = REFERENCE.temperature_c + ZERO_C_K
REFERENCE_PA = 0.5 * saturation_pressure_pa(REFERENCE.temperature_c)

BAND_KJ_MOL = 10.0
"""Uncertainty of every activation energy [kJ/mol]: assumed."""


class Band(StrEnum):
    """Which end of what is known about a film's pace."""

    EARLY = "early"
    NOMINAL = "nominal"
    LATE = "late"


_BAND_SIGN = {Band.EARLY: 1.0, Band.NOMINAL: 0.0, Band.LATE: -1.0}


class Moisture(StrEnum):
    """What the humidity of the air does to a rate."""

    NOTHING = "nothing"
    DRIES = "dries"  # water leaves at the pace of (1 - RH) psat(T), over 0.5 psat(23 °C)
    SETS = "sets"  # moisture of the air is what makes it set


@dataclass(frozen=True, eq=False)
class Kinetics:
    """One stage of drying.

    Attributes
    ----------
    activation_kj_mol
        Activation energy, or the vapour pressure's apparent one [kJ/mol].
    cutoff_c
        Below it nothing happens [°C].
    source
        Where law and number come from, with their standing.
    """

    name: str
    activation_kj_mol: float
    moisture: Moisture
    cutoff_c: float
    source: str

    def rate(self, air: Air, band: Band = Band.NOMINAL) -> float:
        """Return equivalent minutes per minute in ``air``; see `rates`."""
        return self.rates(Samples((air,)), band)[0]

    def rates(self, samples: Samples, band: Band = Band.NOMINAL) -> list[float]:
        """Return equivalent minutes per minute in each air.

        The late band takes the slower of the rates under the activation
        energy ± `BAND_KJ_MOL`, the early one the faster: a factor
        exp(∓ΔE/R · abs(1/T - 1/T_ref)) on the nominal rate, hence late is
        late above 23 °C too.
        """
        if len(samples.airs) > 1 and samples.steady:
            return [self.rate(samples.airs[0], band)] * len(samples.airs)
        steep = self.activation_kj_mol * 1000 / GAS_J_MOL_K
        unsure = _BAND_SIGN[band] * BAND_KJ_MOL * 1000 / GAS_J_MOL_K
        colder = [inverse - 1 / REFERENCE_K for inverse in samples.inverse_k]
        rates = [math.exp(unsure * abs(one) - steep * one) for one in colder]
        if self.moisture is Moisture.DRIES:
            pairs = zip(rates, samples.deficit_pa, strict=True)
            rates = [rate * (deficit / REFERENCE_PA) for rate, deficit in pairs]
        elif self.moisture is Moisture.SETS:
            damps = [min(1.0, max(air.humidity_pct, 10.0) / 40.0) for air in samples.airs]
            rates = [rate * damp for rate, damp in zip(rates, damps, strict=True)]
        if samples.coldest_c < self.cutoff_c:
            both = zip(rates, samples.airs, strict=True)
            rates = [rate if air[0] >= self.cutoff_c else 0.0 for rate, air in both]
        return rates


def arrhenius(temperature_c: float, activation_kj_mol: float, reference_c: float = 23.0) -> float:
    """Return the rate at a temperature relative to that at ``reference_c`` [-].

    References
    ----------
    ASTM C1074-19, equivalent age: exp(-Q (1/T - 1/T_ref)) with Q = Ea/R.

    Examples
    --------
    >>> round(arrhenius(10.0, 50.0), 3)
    0.394
    """
    colder = 1 / (temperature_c + ZERO_C_K) - 1 / (reference_c + ZERO_C_K)
    return math.exp(-activation_kj_mol * 1000 / GAS_J_MOL_K * colder)


VAPOUR_PA = {
    "n-butyl acetate": (670.0, 2131.0),
    "2-propanol": (2141.0, 7841.0),
    "butanone": (5683.0, 15253.0),
    "n-decane": (60.0, 256.0),
}
"""Vapour pressure at 10 and 30 °C [Pa], from the library thermo 0.6.1."""


def vapour_activation_kj_mol(solvent: str) -> float:
    """Return the slope of a solvent's vapour pressure (Clausius-Clapeyron) [kJ/mol]."""
    cold, warm = VAPOUR_PA[solvent]
    span = 1 / (10 + ZERO_C_K) - 1 / (30 + ZERO_C_K)
    return GAS_J_MOL_K / 1000 * math.log(warm / cold) / span


def _solvent(name: str, remark: str = "") -> Kinetics:
    return Kinetics(
        f"evaporation of {name}",
        vapour_activation_kj_mol(name),
        Moisture.NOTHING,
        0.0,
        f"a film dries at the pace of its slowest main solvent (paint supplier's text); "
        f"{name} stands for it (assumed){remark}",
    )


WATER = Kinetics(
    "evaporation of water",
    0.0,
    Moisture.DRIES,
    FILM_FORMS_C,
    "driven by (1 - RH) psat(T), published (Kiil 2006, Prog. Org. Coat. 57:236, constant-rate "
    "period); nothing below 5 °C, about the least film-forming temperature (ISO 2115): assumed",
)
HARDENING = Kinetics(
    "hardening of a waterborne film",
    50.0,
    Moisture.NOTHING,
    FILM_FORMS_C,
    "Arrhenius with 50 kJ/mol, twin of the doubling per 10 K of UFGS-09971: assumed for it",
)
OXIDATION = Kinetics(
    "oxidation of a drying oil",
    50.0,
    Moisture.NOTHING,
    0.0,
    "Arrhenius with 50 kJ/mol, from memory: studies span about 40 to 110",
)
REACTION = Kinetics(
    "reaction of a two-pack",
    50.0,
    Moisture.NOTHING,
    5.0,
    "Arrhenius; 50 kJ/mol fits published recoat charts (47.6 and 52.4); stops below about 5 °C",
)
SETTING = Kinetics(
    "setting of cyanoacrylate",
    50.0,
    Moisture.SETS,
    0.0,
    "moisture of the air sets it, fastest at 40 to 60 % RH: common practice, no source",
)
LACQUER = _solvent("n-butyl acetate")
ALCOHOL = _solvent("2-propanol")
CEMENT = _solvent("butanone")
SPIRIT = _solvent("n-decane", "; white spirit is a mixture from C9 to C12")

STAGES: dict[Family, tuple[Kinetics, ...]] = {
    Family.WATERBORNE_ACRYLIC: (WATER, HARDENING),
    Family.SOLVENT_LACQUER: (LACQUER,),
    Family.ALKYD_ENAMEL: (OXIDATION,),
    Family.ARTISTS_OIL: (OXIDATION,),
    Family.ALCOHOL_INK: (ALCOHOL,),
    Family.TWO_PACK: (REACTION,),
    Family.PIGMENT: (SPIRIT,),
    Family.FIXER: (SPIRIT,),
    Family.DECAL: (WATER,),
    Family.CHIPPING_FLUID: (WATER,),
    Family.SOLVENT_CEMENT: (CEMENT,),
    Family.CYANOACRYLATE: (SETTING,),
    Family.WHITE_GLUE: (WATER,),
    Family.MASKING_FLUID: (WATER,),
    Family.SALT: (WATER,),
    Family.GRAPHITE: (SPIRIT,),
    Family.WATER_THINNER: (WATER,),
    Family.ALCOHOL_THINNER: (ALCOHOL,),
    Family.WHITE_SPIRIT: (SPIRIT,),
    Family.LACQUER_THINNER: (LACQUER,),
}
"""The stages that a film of each family goes through, one after the other."""
