"""What may lie on what: the one table, a row for each pair.

Read a row as "*next* over *below*: *verdict*".  Where the verdict is "sound"
or "wait", ``state`` is what the film below must have reached first and the
planner turns it into a gate; the other verdicts ask for something that a
wait alone cannot give.  The pairs are those of films that are dry through
and of normal thickness.  Defaults are cautious, and a label or a test on
scrap has the last word.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from planner.values.coating import State
from planner.values.message import message, told

COMMON_PRACTICE = message("common practice, no source")
TRAPPED = message("UFC 3-190-06 par. 11.4.2.4 (solvent trapped between coats blisters)")
ENTERS = message("UFC 3-190-06 par. 2.4.2 (strong solvent enters the undercoat)")
SMOOTH = message("UFC 3-190-06 par. 2.4.4 (water-borne over smooth cured alkyd bonds badly)")
SOLUBLE = message("UFC 3-190-06 par. 2.4, 4.2.4 (solvent-soluble film under strong solvent)")
SAME_TYPE = message("UFC 3-190-06 par. 4.2.4 (same generic type over itself)")
BLISTERS = message("US Army TB 43-0242 (1991) par. 5-2 (urethane over lacquer)")
LATE_RECOAT = message("UFC 3-190-06 par. 2.2.3 (a cured thermoset gives no bite)")
SOFT_BELOW = message(
    "TM 43-0139 par. 5-20 (a coat over too soft an undercoat, or one not dry, splits up)"
)
ISO_PRINT_FREE = message("ISO 9117-6 print-free; the use for masking is common practice")

RECESS = 1.25
"""How much thicker a gloss film counts under a wash: it has pooled in the recesses
that the wash runs into.  Told is that a day was too short along recesses and up to
two were advised; the doubt is in the band of the wait, so this is the likely
pooling and no more: common practice, no source."""


class LayerVerdict(StrEnum):
    """What a layer, or a step, is judged to be."""

    SOUND = "sound"
    WAIT = "wait"
    ADVICE = "advice"
    PREPARE = "only after preparation"
    ORDER = "put in order"
    BARRIER = "barrier first"
    NEVER = "never"

    @property
    def rank(self) -> int:
        """How grave it is; 0 is sound."""
        return _RANKS[self]


_RANKS = {verdict: rank for rank, verdict in enumerate(LayerVerdict)}


class Next(StrEnum):
    """What comes next, seen by the films that it reaches."""

    WATERBORNE = "a waterborne coat"
    LACQUER = "a lacquer coat"
    ENAMEL = "an enamel or oil coat"
    WASH = "an oil or white-spirit wash"
    TWO_PACK = "a two-pack coat"
    HARD = "a hard coat (lacquer clear, two-pack)"
    CHIP_FLUID = "chipping fluid"
    DECAL = "decals and their softening fluid"
    MATTE = "the last coat"
    TAPE = "masking tape"


class Below(StrEnum):
    """What lies there already."""

    BARE = "bare plastic"
    WATERBORNE = "a waterborne coat"
    LACQUER = "a lacquer coat"
    CLEAR = "a clear coat"
    YOUNG_ENAMEL = "enamel younger than two weeks"
    AGED_ENAMEL = "enamel older than two weeks"
    OIL = "an oil or white-spirit wash"
    TWO_PACK = "cured two-pack"
    DECAL = "decals"
    CHIP_FLUID = "chipping fluid"
    POWDER = "loose pigment or graphite"


@dataclass(frozen=True)
class Row:
    """One line of the table.

    ``state`` is the least that the film below must have reached, whatever
    the verdict; None where nothing lies there.  ``sound_if_smooth`` marks
    rows where a gloss or satin film below leaves no more than that wait,
    ``sound_if_matte`` those where a matte one does.
    """

    next: Next
    below: Below
    verdict: LayerVerdict
    state: State | None
    reason: str
    source: str = COMMON_PRACTICE
    sound_if_smooth: bool = False
    sound_if_matte: bool = False

    def __post_init__(self) -> None:
        # Written as plain text below, and shown in the window's language.
        object.__setattr__(self, "reason", told(self.reason))
        object.__setattr__(self, "source", told(self.source))


_S, _W = LayerVerdict.SOUND, LayerVerdict.WAIT
_B, _P, _X, _A = LayerVerdict.BARRIER, LayerVerdict.PREPARE, LayerVerdict.NEVER, LayerVerdict.ADVICE
_RECOAT, _THROUGH = State.DRY_TO_RECOAT, State.DRY_THROUGH
_PRINT, _SAFE = State.PRINT_FREE, State.SOLVENT_SAFE

_UNPRIMED = "paint grips bare plastic badly and tape lifts it; prime first"
_MIST = "its solvent bites into the coat below; spray thin passes"
_SILVER = "air stays in the rough surface under the film and shines silvery"
_TIGHT = "the cured film is too smooth and hard to grip; scuff it"
_GREASY = "the wash is greasy and must have dried for days"
_SLOW = "the last coat would seal in what has not left the films below"
_RUB = "brushing and wiping with white spirit lifts pigment from an unsealed coat"
_BLISTER = "two-pack blisters over lacquer, even with an enamel between"
_RUBBED = "wet rubbing would lift a colour that is not thoroughly dry"
_WINDOW = "inside its recoat window, or scuffed"
_BEADS = "the fluid beads on enamel and grips badly"
_WRINKLE = "strong solvent swells and wrinkles a half-hardened oil film"
_CRACKS = "a hard film cracks over one that is still soft, even with a barrier between"
_BEARS = "hard enough to carry a hard film"

TABLE: tuple[Row, ...] = (
    # a waterborne coat
    Row(Next.WATERBORNE, Below.BARE, _A, None, _UNPRIMED),
    Row(Next.WATERBORNE, Below.WATERBORNE, _S, _RECOAT, "like over like", SAME_TYPE),
    Row(Next.WATERBORNE, Below.LACQUER, _S, _RECOAT, "water leaves lacquer alone"),
    Row(Next.WATERBORNE, Below.CLEAR, _S, _RECOAT, "another coat goes over it"),
    Row(Next.WATERBORNE, Below.YOUNG_ENAMEL, _P, _RECOAT, _TIGHT, SMOOTH, sound_if_matte=True),
    Row(Next.WATERBORNE, Below.AGED_ENAMEL, _P, _RECOAT, _TIGHT, SMOOTH, sound_if_matte=True),
    Row(Next.WATERBORNE, Below.OIL, _W, _RECOAT, _GREASY),
    Row(Next.WATERBORNE, Below.TWO_PACK, _P, _RECOAT, _TIGHT, LATE_RECOAT),
    Row(Next.WATERBORNE, Below.DECAL, _W, _RECOAT, "the water under the decals must be gone"),
    Row(Next.WATERBORNE, Below.CHIP_FLUID, _S, _RECOAT, "the coat that will be chipped"),
    Row(Next.WATERBORNE, Below.POWDER, _W, _RECOAT, "wet paint darkens and floats loose pigment"),
    # a lacquer coat
    Row(Next.LACQUER, Below.BARE, _A, None, "it may craze bare plastic; prime, then mist coats"),
    Row(Next.LACQUER, Below.WATERBORNE, _W, _THROUGH, _MIST, SOLUBLE),
    Row(Next.LACQUER, Below.LACQUER, _S, _RECOAT, "it dissolves and bonds to itself", SAME_TYPE),
    Row(Next.LACQUER, Below.CLEAR, _W, _RECOAT, _MIST, SOLUBLE),
    Row(Next.LACQUER, Below.YOUNG_ENAMEL, _X, _THROUGH, _WRINKLE, ENTERS),
    Row(Next.LACQUER, Below.AGED_ENAMEL, _W, _THROUGH, _WRINKLE, ENTERS),
    Row(Next.LACQUER, Below.OIL, _X, _THROUGH, _WRINKLE, ENTERS),
    Row(Next.LACQUER, Below.TWO_PACK, _P, _RECOAT, _TIGHT, LATE_RECOAT),
    Row(Next.LACQUER, Below.DECAL, _W, _RECOAT, "first passes as mist, or the decals wrinkle"),
    Row(Next.LACQUER, Below.CHIP_FLUID, _S, _RECOAT, "the coat that will be chipped"),
    Row(Next.LACQUER, Below.POWDER, _W, _RECOAT, "the spray darkens loose pigment"),
    # an enamel or oil coat
    Row(Next.ENAMEL, Below.BARE, _A, None, _UNPRIMED),
    Row(Next.ENAMEL, Below.WATERBORNE, _S, _SAFE, "white spirit is a weak solvent"),
    Row(Next.ENAMEL, Below.LACQUER, _S, _SAFE, "white spirit is a weak solvent"),
    Row(Next.ENAMEL, Below.CLEAR, _S, _SAFE, "white spirit is a weak solvent"),
    Row(Next.ENAMEL, Below.YOUNG_ENAMEL, _W, _RECOAT, "inside the family's own window", SAME_TYPE),
    Row(Next.ENAMEL, Below.AGED_ENAMEL, _S, _RECOAT, "like over like", SAME_TYPE),
    Row(Next.ENAMEL, Below.OIL, _W, _RECOAT, "the brush takes up a wash that is not dry"),
    Row(Next.ENAMEL, Below.TWO_PACK, _P, _RECOAT, _TIGHT, LATE_RECOAT),
    Row(Next.ENAMEL, Below.DECAL, _W, _SAFE, "white spirit creeps under decal edges"),
    Row(Next.ENAMEL, Below.CHIP_FLUID, _S, _RECOAT, "the coat that will be chipped"),
    Row(Next.ENAMEL, Below.POWDER, _W, _RECOAT, "wet paint darkens and floats loose pigment"),
    # an oil or white-spirit wash
    Row(Next.WASH, Below.BARE, _X, None, "white spirit that floods bare plastic cracks it"),
    Row(Next.WASH, Below.WATERBORNE, _B, _SAFE, _RUB),
    Row(Next.WASH, Below.LACQUER, _W, _SAFE, "white spirit may stay on lacquer for a short time"),
    Row(Next.WASH, Below.CLEAR, _W, _SAFE, "white spirit is brushed and wiped over it"),
    Row(Next.WASH, Below.YOUNG_ENAMEL, _X, _SAFE, "white spirit takes young enamel off again"),
    Row(Next.WASH, Below.AGED_ENAMEL, _W, _SAFE, "try the thinner on a hidden place"),
    Row(Next.WASH, Below.OIL, _W, _SAFE, "the wash below must be dry, or it comes off again"),
    Row(Next.WASH, Below.TWO_PACK, _S, _SAFE, "cured two-pack stands white spirit"),
    Row(Next.WASH, Below.DECAL, _B, _SAFE, "white spirit and wiping lift and stain bare decals"),
    Row(Next.WASH, Below.CHIP_FLUID, _B, _SAFE, "the coat must go over the fluid first"),
    Row(Next.WASH, Below.POWDER, _W, _SAFE, "the wash carries loose pigment away"),
    # a two-pack coat
    Row(Next.TWO_PACK, Below.BARE, _A, None, _UNPRIMED),
    Row(Next.TWO_PACK, Below.WATERBORNE, _W, _THROUGH, _MIST, SOLUBLE),
    Row(Next.TWO_PACK, Below.LACQUER, _X, _THROUGH, _BLISTER, BLISTERS),
    Row(Next.TWO_PACK, Below.CLEAR, _W, _THROUGH, _MIST, SOLUBLE),
    Row(Next.TWO_PACK, Below.YOUNG_ENAMEL, _X, _THROUGH, _WRINKLE, ENTERS),
    Row(Next.TWO_PACK, Below.AGED_ENAMEL, _W, _THROUGH, _WRINKLE, ENTERS),
    Row(Next.TWO_PACK, Below.OIL, _X, _THROUGH, _WRINKLE, ENTERS),
    Row(Next.TWO_PACK, Below.TWO_PACK, _W, _RECOAT, _WINDOW, LATE_RECOAT),
    Row(Next.TWO_PACK, Below.DECAL, _W, _RECOAT, "first passes as mist, or the decals wrinkle"),
    Row(Next.TWO_PACK, Below.CHIP_FLUID, _X, _RECOAT, "it is too hard to be chipped"),
    Row(Next.TWO_PACK, Below.POWDER, _W, _RECOAT, "the spray darkens loose pigment"),
    # a hard coat: what it asks beside its own kind, of every film however deep
    Row(Next.HARD, Below.BARE, _S, None, "nothing soft lies there"),
    Row(Next.HARD, Below.WATERBORNE, _S, _RECOAT, _BEARS),
    Row(Next.HARD, Below.LACQUER, _S, _RECOAT, _BEARS),
    Row(Next.HARD, Below.CLEAR, _S, _RECOAT, _BEARS),
    Row(Next.HARD, Below.YOUNG_ENAMEL, _W, _THROUGH, _CRACKS, SOFT_BELOW),
    Row(Next.HARD, Below.AGED_ENAMEL, _W, _THROUGH, _CRACKS, SOFT_BELOW),
    Row(Next.HARD, Below.OIL, _W, _THROUGH, _CRACKS, SOFT_BELOW),
    Row(Next.HARD, Below.TWO_PACK, _S, _RECOAT, _BEARS),
    Row(Next.HARD, Below.DECAL, _S, _RECOAT, _BEARS),
    Row(Next.HARD, Below.CHIP_FLUID, _S, _RECOAT, _BEARS),
    Row(Next.HARD, Below.POWDER, _S, _RECOAT, _BEARS),
    # chipping fluid
    Row(Next.CHIP_FLUID, Below.BARE, _X, None, "chips would show, and lift to, bare plastic"),
    Row(Next.CHIP_FLUID, Below.WATERBORNE, _W, _THROUGH, _RUBBED),
    Row(Next.CHIP_FLUID, Below.LACQUER, _W, _THROUGH, _RUBBED),
    Row(Next.CHIP_FLUID, Below.CLEAR, _S, _RECOAT, "the clear coat guards the colour below"),
    Row(Next.CHIP_FLUID, Below.YOUNG_ENAMEL, _B, _THROUGH, _BEADS),
    Row(Next.CHIP_FLUID, Below.AGED_ENAMEL, _B, _THROUGH, _BEADS),
    Row(Next.CHIP_FLUID, Below.OIL, _X, _THROUGH, "the fluid beads on a greasy wash"),
    Row(Next.CHIP_FLUID, Below.TWO_PACK, _S, _RECOAT, "cured two-pack stands wet rubbing"),
    Row(Next.CHIP_FLUID, Below.DECAL, _B, _RECOAT, "wet rubbing would tear the decals"),
    Row(Next.CHIP_FLUID, Below.CHIP_FLUID, _S, _RECOAT, "a second layer of the same"),
    Row(Next.CHIP_FLUID, Below.POWDER, _X, _RECOAT, "loose pigment floats up in the fluid"),
    # decals and their softening fluid, a weak solvent: a night to a day on gloss, where
    # print-free would be two; on enamel the shorter wait is told (24 to 48 h)
    Row(Next.DECAL, Below.BARE, _X, None, "decals hold badly on bare plastic and silver on it"),
    Row(Next.DECAL, Below.WATERBORNE, _B, _SAFE, _SILVER, sound_if_smooth=True),
    Row(Next.DECAL, Below.LACQUER, _B, _SAFE, _SILVER, sound_if_smooth=True),
    Row(Next.DECAL, Below.CLEAR, _B, _SAFE, _SILVER, sound_if_smooth=True),
    Row(Next.DECAL, Below.YOUNG_ENAMEL, _B, _PRINT, "softening fluid attacks young enamel"),
    Row(Next.DECAL, Below.AGED_ENAMEL, _B, _PRINT, _SILVER, sound_if_smooth=True),
    Row(Next.DECAL, Below.OIL, _X, _PRINT, "decals slide off a greasy wash; seal it first"),
    Row(Next.DECAL, Below.TWO_PACK, _B, _PRINT, _SILVER, sound_if_smooth=True),
    Row(Next.DECAL, Below.DECAL, _S, _PRINT, "a decal over a decal that has dried"),
    Row(Next.DECAL, Below.CHIP_FLUID, _X, _PRINT, "the water dissolves the fluid below"),
    Row(Next.DECAL, Below.POWDER, _X, _PRINT, "decals do not hold on loose pigment"),
    # the last coat
    Row(Next.MATTE, Below.BARE, _X, None, "there is nothing yet that it could protect"),
    Row(Next.MATTE, Below.WATERBORNE, _S, _THROUGH, _SLOW, TRAPPED),
    Row(Next.MATTE, Below.LACQUER, _S, _THROUGH, _SLOW, TRAPPED),
    Row(Next.MATTE, Below.CLEAR, _S, _THROUGH, _SLOW, TRAPPED),
    Row(Next.MATTE, Below.YOUNG_ENAMEL, _W, _THROUGH, _SLOW, TRAPPED),
    Row(Next.MATTE, Below.AGED_ENAMEL, _S, _THROUGH, _SLOW, TRAPPED),
    Row(Next.MATTE, Below.OIL, _W, _THROUGH, _SLOW, TRAPPED),
    Row(Next.MATTE, Below.TWO_PACK, _P, _THROUGH, _TIGHT, LATE_RECOAT),
    Row(Next.MATTE, Below.DECAL, _S, _THROUGH, _SLOW, TRAPPED),
    Row(Next.MATTE, Below.CHIP_FLUID, _W, _THROUGH, _SLOW, TRAPPED),
    Row(Next.MATTE, Below.POWDER, _W, _THROUGH, "a spray over loose pigment makes it fade"),
    # masking tape
    Row(Next.TAPE, Below.BARE, _S, None, "nothing lies there that it could lift"),
    Row(Next.TAPE, Below.WATERBORNE, _W, _PRINT, "tape lies on it", ISO_PRINT_FREE),
    Row(Next.TAPE, Below.LACQUER, _W, _PRINT, "tape lies on it", ISO_PRINT_FREE),
    Row(Next.TAPE, Below.CLEAR, _W, _PRINT, "tape lies on it", ISO_PRINT_FREE),
    Row(Next.TAPE, Below.YOUNG_ENAMEL, _W, _PRINT, "tape lies on it", ISO_PRINT_FREE),
    Row(Next.TAPE, Below.AGED_ENAMEL, _W, _PRINT, "tape lies on it", ISO_PRINT_FREE),
    Row(Next.TAPE, Below.OIL, _B, _PRINT, "tape lifts a wash, and what lies on it, off again"),
    Row(Next.TAPE, Below.TWO_PACK, _W, _PRINT, "tape lies on it", ISO_PRINT_FREE),
    Row(Next.TAPE, Below.DECAL, _B, _PRINT, "tape tears decals that no clear coat holds"),
    Row(Next.TAPE, Below.CHIP_FLUID, _B, _PRINT, "tape pulls the coat off chipping fluid"),
    Row(Next.TAPE, Below.POWDER, _B, _PRINT, "tape lifts loose pigment and does not stick"),
)  # fmt: skip

_BY_PAIR = {(row.next, row.below): row for row in TABLE}


def row(next_: Next, below: Below) -> Row:
    """Return the line of the table for a pair."""
    return _BY_PAIR[next_, below]


def verdict_over(line: Row, smooth: bool) -> LayerVerdict:
    """Return the verdict of a line over a smooth (gloss, satin) or a rough (matte) top.

    Where the line hangs on the sheen and the sheen is the right one, what
    is left is the wait for its state.
    """
    if (line.sound_if_smooth and smooth) or (line.sound_if_matte and not smooth):
        return LayerVerdict.WAIT
    return line.verdict
