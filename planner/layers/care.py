"""What a pass risks where the film below it is not ready."""

from __future__ import annotations

from planner.layers.operation_kinds import WASH_STAGES, next_of
from planner.layers.overcoat_table import Next
from planner.values.coating import Coating, Family
from planner.values.step import CLEAR_STAGES, Stage, Step
from planner.values.wishes import Care

_STRONG = frozenset({Family.SOLVENT_LACQUER, Family.ALCOHOL_INK, Family.TWO_PACK})


def care_of(step: Step, coating: Coating | None, below: Coating) -> Care:
    """Return by what it costs the work of ``step`` counts over a film of ``below``.

    What cannot be taken back comes first: tape lifts, a hard coat cracks, a
    strong solvent wrinkles what is of another kind, and the last coat shuts
    all of it in.
    """
    kinds = next_of(step.stage, step.role, coating.family if coating else None)
    if Next.TAPE in kinds:
        return Care.TAPE
    bites = coating is not None and coating.family in _STRONG and coating.family != below.family
    if Next.HARD in kinds or bites:
        return Care.HARD
    if Next.MATTE in kinds:
        return Care.LAST
    if step.stage in (Stage.DECAL, Stage.PRESS):
        return Care.DECAL
    if step.stage in WASH_STAGES:
        return Care.WASH
    return Care.CLEAR if step.stage in CLEAR_STAGES else Care.COAT
