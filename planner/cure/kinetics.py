"""How fast films dry in given air, against 23 °C and 50 % RH (ISO 3270)."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import cached_property, lru_cache

from planner.air import GAS_J_MOL_K, ZERO_C_K, Air, Samples, vapour_activation_kj_mol
from planner.cure.assumptions import assumed
from planner.cure.evaporation import (
    REFERENCE_K,
    Liquid,
    movement_factor,
)
from planner.values.coating import Coating, Family
from planner.values.room import Movement

BAND_KJ_MOL = assumed("band")
"""Uncertainty of every activation energy [kJ/mol]."""

SOLVENT_FREE = 0.9
"""Volume solids from which a two-pack has no solvent to lose: assumed."""


class Band(StrEnum):
    """Which end of what is known about a film's pace."""

    EARLY = "early"
    NOMINAL = "nominal"
    LATE = "late"


_BAND_SIGN = {Band.EARLY: 1.0, Band.NOMINAL: 0.0, Band.LATE: -1.0}


class Moisture(StrEnum):
    """What the humidity of the air does to a rate, evaporation apart."""

    NOTHING = "nothing"
    SLOWS = "slows"  # above 50 % RH, by `damp_pct`
    SETS = "sets"  # moisture of the air is what makes it set


@dataclass(frozen=True, eq=False, kw_only=True)
class Kinetics:
    """One stage of drying: an evaporation, or a reaction by Arrhenius.

    Attributes
    ----------
    steeper_kj_mol
        What one bottle's own evidence adds to any of it [kJ/mol].
    activation_kj_mol, warm_kj_mol
        Activation energy below and above `bend_c`; one where they do not
        differ [kJ/mol].
    liquid
        What evaporates; None is a reaction, or a diffusion that goes as one.
    damp_pct
        How far above 50 % RH everything takes twice as long, and so on
        evenly [% RH].
    cutoff_c
        Below it nothing happens [°C].
    source
        Where law and number come from, with their standing.
    """

    name: str
    source: str
    cutoff_c: float = 0.0
    activation_kj_mol: float = 0.0
    warm_kj_mol: float | None = None
    bend_c: float = 23.0
    liquid: Liquid | None = None
    moisture: Moisture = Moisture.NOTHING
    damp_pct: float = 0.0
    steeper_kj_mol: float = 0.0

    def rate(
        self, air: Air, band: Band = Band.NOMINAL, movement: Movement = Movement.ROOM
    ) -> float:
        """Return equivalent minutes per minute in ``air``; see `rates`."""
        return self.rates(Samples((air,)), band, movement)[0]

    def rates(
        self, samples: Samples, band: Band = Band.NOMINAL, movement: Movement = Movement.ROOM
    ) -> list[float]:
        """Return equivalent minutes per minute in each air.

        The late band takes the slower of the rates under the activation
        energy ± `BAND_KJ_MOL`, the early one the faster: a factor
        exp(∓ΔE/R · abs(1/T - 1/T_ref)) on the nominal rate, hence late is
        late above 23 °C too.
        """
        if len(samples.airs) > 1 and samples.steady:
            return [self.rate(samples.airs[0], band, movement)] * len(samples.airs)
        unsure = _BAND_SIGN[band] * BAND_KJ_MOL * 1000 / GAS_J_MOL_K
        colder = [inverse - 1 / REFERENCE_K for inverse in samples.inverse_k]
        if self.liquid is not None:
            rates = self._evaporation(samples, colder, unsure, movement)
        else:
            rates = self._reaction(colder, unsure)
        if self.steeper_kj_mol:
            steeper = self.steeper_kj_mol * 1000 / GAS_J_MOL_K
            pairs = zip(rates, colder, strict=True)
            rates = [rate * math.exp(-steeper * each) for rate, each in pairs]
        if self.moisture is not Moisture.NOTHING:
            damps = [self._by_damp(air.humidity_pct) for air in samples.airs]
            rates = [rate * damp for rate, damp in zip(rates, damps, strict=True)]
        if samples.coldest_c < self.cutoff_c:
            both = zip(rates, samples.airs, strict=True)
            rates = [rate if air[0] >= self.cutoff_c else 0.0 for rate, air in both]
        return rates

    def _evaporation(
        self, samples: Samples, colder: list[float], unsure: float, movement: Movement
    ) -> list[float]:
        assert self.liquid is not None
        moved = movement_factor(movement)
        drops = zip(self.liquid.drops_k(samples), colder, strict=True)
        if unsure == 0.0:
            return [drop / self._reference_drop_k * moved for drop, _ in drops]
        return [
            drop / self._reference_drop_k * moved * math.exp(unsure * abs(one))
            for drop, one in drops
        ]

    def _reaction(self, colder: list[float], unsure: float) -> list[float]:
        """Return exp(-E/R (1/T - 1/T_ref)), with the other E on the other side of the bend."""
        cold = self.activation_kj_mol * 1000 / GAS_J_MOL_K
        if self.warm_kj_mol is None:
            return [math.exp(unsure * abs(one) - cold * one) for one in colder]
        warm = self.warm_kj_mol * 1000 / GAS_J_MOL_K
        bend = 1 / (self.bend_c + ZERO_C_K) - 1 / REFERENCE_K

        def way(one: float) -> float:  # E/R (1/T - 1/T_bend)
            return (warm if one < bend else cold) * (one - bend)

        at_reference = way(0.0)
        return [math.exp(unsure * abs(one) - way(one) + at_reference) for one in colder]

    def _by_damp(self, humidity_pct: float) -> float:
        if self.moisture is Moisture.SETS:
            return min(1.0, max(humidity_pct, 10.0) / 40.0)
        return 1.0 / (1.0 + max(0.0, humidity_pct - 50.0) / self.damp_pct)

    @cached_property
    def _reference_drop_k(self) -> float:
        assert self.liquid is not None
        return self.liquid.reference_drop_k


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


def _solvent(name: str, remark: str = "") -> Kinetics:
    return Kinetics(
        name=f"evaporation of {name}",
        liquid=Liquid(name),
        source="a film touches dry at the pace of its main fast solvent (paint supplier's text); "
        f"{name} stands for it (assumed){remark}; it cools itself as a wet bulb does",
    )


WATER = Kinetics(
    name="evaporation of water",
    liquid=Liquid("water"),
    cutoff_c=assumed("film forms"),
    source="constant-rate period, published (Kiil 2006, Prog. Org. Coat. 57:236); the wet film "
    "cools itself as a wet bulb does (WMO-No. 8, Annex 4.B)",
)
HARDENING = Kinetics(
    name="hardening of a waterborne film",
    activation_kj_mol=assumed("hardening slope"),
    moisture=Moisture.SLOWS,
    damp_pct=assumed("hardening, damp"),
    cutoff_c=assumed("film forms"),
    source="Arrhenius, assumed; damp slows it: common practice, no source",
)
TRAPPED = Kinetics(
    name="slow solvent out of a lacquer",
    activation_kj_mol=vapour_activation_kj_mol("2-butoxyethanol"),
    source="Fick: diffusion through the film; its slope is that of a slow solvent's vapour "
    "pressure (2-butoxyethanol stands for it: assumed)",
)
OXIDATION = Kinetics(
    name="oxidation of a drying oil",
    activation_kj_mol=37.0,
    warm_kj_mol=25.0,
    moisture=Moisture.SLOWS,
    damp_pct=assumed("oxidation, damp"),
    source="published sheets of alkyds: twice the time at 10 °C, 0.6 to 0.67 of it at 35 to "
    "40 °C, against 23 °C; damp slows it (assumed)",
)
FILM_OF_TWO_PACK = Kinetics(
    name="drying of a thin two-pack",
    activation_kj_mol=33.0,
    cutoff_c=4.0,
    source="sheet of a solvent-borne epoxy primer: 33 kJ/mol to dry, 21 to recoat; a chart of "
    "an epoxy warns that below 4 °C nothing happens",
)
REACTION = Kinetics(
    name="reaction of a two-pack",
    activation_kj_mol=50.0,
    cutoff_c=4.0,
    source="pot lives 41 to 63 kJ/mol (UFGS-09971: halves per 10 K), gel and recoat chart of a "
    "solvent-free epoxy 46 to 52",
)
LATE_HARDNESS = Kinetics(
    name="late hardness of a two-pack",
    activation_kj_mol=115.0,
    warm_kj_mol=60.0,
    bend_c=21.0,
    cutoff_c=4.0,
    source="chart of a solvent-free epoxy to Shore D 65: 83 kJ/mol through all, steeper in the "
    "cold, where the film turns to glass before it has reacted",
)
SETTING = Kinetics(
    name="setting of cyanoacrylate",
    activation_kj_mol=50.0,
    moisture=Moisture.SETS,
    source="moisture of the air sets it, fastest at 40 to 60 % RH: common practice, no source; "
    "rule of thumb: half the time for 10 K more",
)
LACQUER = _solvent("n-butyl acetate")
ALCOHOL = _solvent("2-propanol")
CEMENT = _solvent("butanone")
SPIRIT = _solvent("n-decane", "; white spirit is a mixture from C9 to C12")

STAGES: dict[Family, tuple[Kinetics, Kinetics]] = {
    Family.WATERBORNE_ACRYLIC: (WATER, HARDENING),
    Family.SOLVENT_LACQUER: (LACQUER, TRAPPED),
    Family.ALKYD_ENAMEL: (OXIDATION, OXIDATION),
    Family.ARTISTS_OIL: (OXIDATION, OXIDATION),
    Family.ALCOHOL_INK: (ALCOHOL, TRAPPED),
    Family.TWO_PACK: (FILM_OF_TWO_PACK, LATE_HARDNESS),
    Family.PIGMENT: (SPIRIT, SPIRIT),
    Family.FIXER: (SPIRIT, SPIRIT),
    Family.DECAL: (WATER, WATER),
    Family.CHIPPING_FLUID: (WATER, WATER),
    Family.SOLVENT_CEMENT: (CEMENT, CEMENT),
    Family.CYANOACRYLATE: (SETTING, SETTING),
    Family.WHITE_GLUE: (WATER, WATER),
    Family.MASKING_FLUID: (WATER, WATER),
    Family.SALT: (WATER, WATER),
    Family.GRAPHITE: (SPIRIT, SPIRIT),
    Family.RETARDER: (SPIRIT, SPIRIT),
    Family.WATER_THINNER: (WATER, WATER),
    Family.ALCOHOL_THINNER: (ALCOHOL, ALCOHOL),
    Family.WHITE_SPIRIT: (SPIRIT, SPIRIT),
    Family.LACQUER_THINNER: (LACQUER, LACQUER),
}
"""Of each family: what makes the film fit for fingers and another coat, and what
then makes it hard."""


def stages_of(coating: Coating) -> tuple[Kinetics, Kinetics]:
    """Return the two stages of a coating; a two-pack without solvent only reacts."""
    first, second = STAGES[coating.family]
    if coating.family is Family.TWO_PACK and coating.solids >= SOLVENT_FREE:
        first = REACTION
    if not coating.steeper_kj_mol:
        return first, second
    return _steeper(first, coating.steeper_kj_mol), _steeper(second, coating.steeper_kj_mol)


@lru_cache(maxsize=256)
def _steeper(stage: Kinetics, steeper_kj_mol: float) -> Kinetics:
    """Return a stage as one bottle has it."""
    name = f"{stage.name}, {steeper_kj_mol:+g} kJ/mol"
    return replace(stage, name=name, steeper_kj_mol=steeper_kj_mol)


def clock_of(coating: Coating) -> tuple[Kinetics, ...]:
    """Return the stages by which minutes "of the film" count: a two-pack's by its reaction."""
    if coating.family is not Family.TWO_PACK:
        return stages_of(coating)
    steeper = coating.steeper_kj_mol
    return (_steeper(REACTION, steeper) if steeper else REACTION,)
