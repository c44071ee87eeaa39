"""How an operation, and a film below it, count in the table."""

from __future__ import annotations

from planner.layers.overcoat_table import Below, Next
from planner.values.coating import Coating, Family
from planner.values.step import CLEAR_STAGES, Role, Stage, Step

WASH_STAGES = frozenset({Stage.WASH, Stage.OIL_WASH, Stage.FILTER, Stage.WEATHER})
OIL_BORNE = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL})
SEALING = frozenset({Family.WATERBORNE_ACRYLIC, Family.SOLVENT_LACQUER, Family.TWO_PACK})

BY_FAMILY: dict[Family, Next] = {
    Family.WATERBORNE_ACRYLIC: Next.WATERBORNE,
    Family.SOLVENT_LACQUER: Next.LACQUER,
    Family.ALCOHOL_INK: Next.LACQUER,
    Family.ALKYD_ENAMEL: Next.ENAMEL,
    Family.ARTISTS_OIL: Next.ENAMEL,
    Family.TWO_PACK: Next.TWO_PACK,
    Family.CHIPPING_FLUID: Next.CHIP_FLUID,
    Family.DECAL: Next.DECAL,
}
_BELOW: dict[Family, Below] = {
    Family.WATERBORNE_ACRYLIC: Below.WATERBORNE,
    Family.SOLVENT_LACQUER: Below.LACQUER,
    Family.ALCOHOL_INK: Below.LACQUER,
    Family.ALKYD_ENAMEL: Below.YOUNG_ENAMEL,
    Family.ARTISTS_OIL: Below.OIL,
    Family.TWO_PACK: Below.TWO_PACK,
    Family.DECAL: Below.DECAL,
    Family.CHIPPING_FLUID: Below.CHIP_FLUID,
    Family.PIGMENT: Below.POWDER,
    Family.FIXER: Below.POWDER,
    Family.GRAPHITE: Below.POWDER,
}


def next_of(stage: Stage, role: Role | None, family: Family | None) -> tuple[Next, ...]:
    """Return how an operation counts in the table; empty if the table is silent."""
    if stage is Stage.MASK:
        return (Next.TAPE,)
    if family is Family.MASKING_FLUID:
        return (Next.TAPE,)  # it is drawn off as tape is
    last = (Next.MATTE,) if stage is Stage.MATTE or role is Role.FINAL else ()
    if family is None or family not in BY_FAMILY:
        return last
    washes = family in OIL_BORNE and stage in WASH_STAGES
    hard = (Next.HARD,) if dries_hard(stage, family) else ()
    return (Next.WASH if washes else BY_FAMILY[family], *hard, *last)


def dries_hard(stage: Stage, family: Family) -> bool:
    """Tell whether a film is stiff enough to crack over a soft one."""
    return family is Family.TWO_PACK or (family is Family.SOLVENT_LACQUER and stage in CLEAR_STAGES)


def seals(step: Step, coating: Coating) -> bool:
    """Tell whether weak solvents and wiping stop at a film: a clear coat, or two-pack."""
    if coating.family is Family.TWO_PACK:
        return True
    return step.stage in CLEAR_STAGES and coating.family in SEALING


def bars(step: Step, coating: Coating) -> bool:
    """Tell whether strong solvents stop at a film too: a barrier coat, or two-pack."""
    barrier = seals(step, coating) and step.role is Role.BARRIER
    return barrier or coating.family is Family.TWO_PACK


def below_kind(coating: Coating, laid_by: Step | None, next_: Next) -> Below | None:
    """Return how a film counts in the table; None if the table is silent.

    ``laid_by`` None is a step that is not known; the film counts as a colour.
    A clear coat counts by its chemistry under two-pack, which blisters over
    any lacquer, and a waterborne one under lacquer, which bites into it.
    Enamel counts as young.
    """
    if laid_by is None:
        return _BELOW.get(coating.family)
    if coating.family in OIL_BORNE and laid_by.stage in WASH_STAGES:
        return Below.OIL
    two_pack = coating.family is Family.TWO_PACK or next_ is Next.TWO_PACK
    bitten = next_ is Next.LACQUER and coating.family is Family.WATERBORNE_ACRYLIC
    if seals(laid_by, coating) and not two_pack and not bitten:
        return Below.CLEAR
    return _BELOW.get(coating.family)
