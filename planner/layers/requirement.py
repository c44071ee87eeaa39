"""What state an operation asks of a film that it reaches.

The states stand in the table of layers; here they become gates.  A gate
written on the step adds to them, and a label wins.
"""

from __future__ import annotations

from dataclasses import dataclass

from planner.layers.operation_kinds import below_kind, next_of
from planner.layers.overcoat_table import COMMON_PRACTICE, RECESS, LayerVerdict, Next, row
from planner.values.coating import Coating, Family, Finish, State
from planner.values.message import message
from planner.values.step import Stage, Step

WHITE_SPIRIT_BORNE = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL, Family.WHITE_SPIRIT})


@dataclass(frozen=True)
class Requirement:
    """A state that a film must have reached before an operation, and why.

    ``pooled`` is how many times its thickness the film counts, where the
    operation seeks out the recesses in which it has pooled.
    """

    state: State
    why: str
    source: str = COMMON_PRACTICE
    pooled: float = 1.0


HANDLE = Requirement(State.DRY_TO_HANDLE, message("fingers hold it firmly"))
RECOAT = Requirement(State.DRY_TO_RECOAT, message("another coat goes over it"))
POOLS = Requirement(
    State.SOLVENT_SAFE,
    message("a wash pools in recesses, where the gloss is thickest and softest"),
    pooled=RECESS,
)

BY_HAND = frozenset({Stage.TURN, Stage.JOIN, Stage.CLEAN})
WHILE_SOFT = frozenset({Stage.WIPE, Stage.PRESS, Stage.CHIP_RUB, Stage.UNMASK})
"""Stages that work on a soft film: they have gates of their own."""

_LATEST = tuple(State)  # in order of coming


def requirement(
    step: Step,
    coating: Coating | None,
    below: Coating,
    laid_by: Step | None = None,
    *,
    sheltered: bool = False,
    barred: bool = False,
) -> Requirement | None:
    """Return what ``step`` asks of a film of ``below`` that it reaches.

    Parameters
    ----------
    coating
        What the step lays there; None if it lays nothing.
    below
        Coating of the film reached.
    laid_by
        Step that laid that film, where known: a clear coat asks less, and so
        does another coat of the same step.
    sheltered
        A clear coat lies between, at which weak solvents stop.
    barred
        A barrier coat lies between, at which strong solvents stop too.
    """
    if step.stage in BY_HAND:
        return HANDLE
    if step.stage in WHILE_SOFT:
        return None
    if laid_by is not None and laid_by.id == step.id:
        return RECOAT  # one coat of it over another
    kinds = next_of(step.stage, step.role, coating.family if coating else None)
    asked = [
        one
        for kind in kinds
        if not _stopped(kind, sheltered=sheltered, barred=barred)
        if (one := _by_table(kind, below, laid_by)) is not None
    ]
    if _pools(step, kinds, below) and not sheltered:
        asked.append(POOLS)
    if asked:
        return max(asked, key=lambda one: (_LATEST.index(one.state), one.pooled))
    return None if sheltered else RECOAT


def _stopped(kind: Next, *, sheltered: bool, barred: bool) -> bool:
    """Tell whether what lies between stops it; tape, hard and last coats feel every film."""
    if kind in (Next.TAPE, Next.MATTE, Next.HARD):
        return False
    return barred if kind in (Next.LACQUER, Next.TWO_PACK) else sheltered


def _by_table(kind: Next, below: Coating, laid_by: Step | None) -> Requirement | None:
    found = below_kind(below, laid_by, kind)
    if found is None:
        return None
    line = row(kind, found)
    if kind is Next.HARD and line.verdict is LayerVerdict.SOUND:
        return None  # what its own kind asks is enough
    return Requirement(line.state, line.reason, line.source) if line.state else None


def _pools(step: Step, kinds: tuple[Next, ...], below: Coating) -> bool:
    thin = Next.WATERBORNE in kinds and step.stage in (Stage.WASH, Stage.FILTER)
    return (
        (thin or Next.WASH in kinds)
        and below.finish is Finish.GLOSS
        and below.family in (Family.WATERBORNE_ACRYLIC, Family.SOLVENT_LACQUER)
    )
