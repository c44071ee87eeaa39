"""Where a step can hurt: one short caution each, and where it comes from.

They remind; they do not instruct.  The label, the safety data sheet and
the local rules have the last word (`LAST_WORD`).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from planner.values.coating import Family
from planner.values.step import Stage, Step, Tool

LAST_WORD = "The label, the safety data sheet and local rules have the last word."


@dataclass(frozen=True)
class Caution:
    """What can hurt, in one sentence, and the public source of it."""

    text: str
    source: str


_MIST = Caution(
    "Spray mist: extract it, and wear a mask that stops particles and vapour; "
    "a dust mask stops no vapour.",
    "29 CFR 1910.134 (choice of respirators); EN 14387 (combined filters)",
)
_VAPOUR = Caution(
    "Solvent vapour: air the room well; no flame, spark or unsealed motor near it.",
    "29 CFR 1910.94(c)(6) (vapour at most a quarter of the lower explosive limit)",
)
_TWO_PACK = Caution(
    "A two-pack with isocyanate must not be sprayed in a hobby room: it can cause asthma, "
    "filters give no warning by smell. Read which hardener it has.",
    "NIOSH Alert 96-111; HSE INDG388",
)
_RAGS = Caution(
    "Rags with drying oil heat themselves and can catch fire: spread them flat outdoors, "
    "or keep them under water in a closed metal can.",
    "TB 43-0209 (cloths soaked with oil)",
)
_GLUE = Caution(
    "Cyanoacrylate bonds skin at once and its vapour stings: gloves, fresh air, eyes away.",
    "common practice, no source",
)
_BLADE = Caution(
    "Blade: cut away from the fingers, and change it before it needs force.",
    "common practice, no source",
)
_POWDER = Caution(
    "Pigment dust: do not blow it about, and do not breathe it.",
    "common practice, no source",
)

_SOLVENT_BORNE = frozenset(
    {
        Family.SOLVENT_LACQUER,
        Family.ALKYD_ENAMEL,
        Family.ARTISTS_OIL,
        Family.ALCOHOL_INK,
        Family.TWO_PACK,
        Family.FIXER,
        Family.SOLVENT_CEMENT,
        Family.ALCOHOL_THINNER,
        Family.WHITE_SPIRIT,
        Family.LACQUER_THINNER,
    }
)
_DRYING_OIL = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL})


def cautions(step: Step, families: Iterable[Family]) -> tuple[Caution, ...]:
    """Return the cautions of a step.

    Parameters
    ----------
    families
        Families of all that is in the cup or on the rag: what the step
        lays, thinners in a mix included, and for wiping the film wiped.
    """
    return tuple(_cautions(step, frozenset(families)))


def _cautions(step: Step, families: frozenset[Family]) -> Iterator[Caution]:
    sprayed = step.tool in (Tool.AIRBRUSH, Tool.CAN)
    if sprayed:
        yield _MIST
    if Family.TWO_PACK in families:
        yield _TWO_PACK
    if families & _SOLVENT_BORNE or step.tool is Tool.CAN:
        yield _VAPOUR
    wiped = step.tool is Tool.CLOTH or step.stage in (Stage.OIL_WASH, Stage.WIPE)
    if wiped and families & _DRYING_OIL:
        yield _RAGS
    if Family.CYANOACRYLATE in families:
        yield _GLUE
    if Family.PIGMENT in families:
        yield _POWDER
    if step.stage in (Stage.MASK, Stage.DECAL) or step.scraped:
        yield _BLADE
