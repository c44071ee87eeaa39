"""What state an operation asks of a film that it reaches.

The table is the cautious default; a gate written on the step adds to it.
Each row says where it comes from.
"""

from __future__ import annotations

from dataclasses import dataclass

from planner.values.coating import Coating, Family, State
from planner.values.step import Role, Stage, Step

COMMON_PRACTICE = "common practice, no source"

WHITE_SPIRIT_BORNE = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL, Family.WHITE_SPIRIT})


@dataclass(frozen=True)
class Requirement:
    """A state that a film must have reached before an operation, and why."""

    state: State
    why: str
    source: str = COMMON_PRACTICE


HANDLE = Requirement(State.DRY_TO_HANDLE, "fingers hold it firmly")
TAPE = Requirement(
    State.PRINT_FREE,
    "tape or masking film lies on it",
    "ISO 9117-6 print-free; the use for masking is common practice",
)
DECAL_BED = Requirement(State.PRINT_FREE, "decals are pressed on it and their fluid softens it")
WEAK_SOLVENT = Requirement(State.SOLVENT_SAFE, "white spirit is brushed and wiped over it")
LAST_COAT = Requirement(
    State.DRY_THROUGH,
    "the last coat would seal in what has not left the films below",
    "UFC 3-190-06 par. 11.4.2.4 (trapped solvent blisters)",
)
STRONG_OVER_OIL = Requirement(
    State.DRY_THROUGH,
    "strong solvent swells and wrinkles a half-hardened oil film",
    "UFC 3-190-06 par. 2.4.2",
)
RECOAT = Requirement(State.DRY_TO_RECOAT, "another coat goes over it")

_BY_STAGE: dict[Stage, Requirement | None] = {
    Stage.TURN: HANDLE,
    Stage.JOIN: HANDLE,
    Stage.CLEAN: HANDLE,
    Stage.MASK: TAPE,
    Stage.DECAL: DECAL_BED,
    Stage.MATTE: LAST_COAT,
    Stage.WIPE: None,
    Stage.PRESS: None,
    Stage.CHIP_RUB: None,
    Stage.UNMASK: None,
}


def requirement(step: Step, coating: Coating | None, below: Coating) -> Requirement | None:
    """Return what ``step`` asks of a film of ``below`` that it reaches.

    Parameters
    ----------
    coating
        What the step lays there; None if it lays nothing.
    below
        Coating of the film reached.
    """
    if step.stage in _BY_STAGE:
        return _BY_STAGE[step.stage]
    if step.role is Role.FINAL:
        return LAST_COAT
    if step.stage is Stage.OIL_WASH or (coating and coating.family in WHITE_SPIRIT_BORNE):
        same_oil = below.family in WHITE_SPIRIT_BORNE and step.stage not in (
            Stage.OIL_WASH,
            Stage.FILTER,
            Stage.WASH,
        )
        return RECOAT if same_oil else WEAK_SOLVENT
    if (
        coating
        and coating.family in (Family.SOLVENT_LACQUER, Family.TWO_PACK)
        and below.family in WHITE_SPIRIT_BORNE
    ):
        return STRONG_OVER_OIL
    return RECOAT
