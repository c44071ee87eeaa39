"""Mixes that must not be mixed."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.finding import Finding, Mend
from planner.layers.mend_coatings import counterpart, thinner
from planner.layers.overcoat_table import COMMON_PRACTICE, LayerVerdict
from planner.layers.step_edits import SwapPortion
from planner.values.book import Book
from planner.values.coating import THINNED_BY, THINNERS, Coating, Family
from planner.values.message import message

THINNERS_APART = message(
    "TM 43-0139 par. 2-26 (enamel thinner and lacquer thinner are not exchanged)"
)

_W, _L, _E = Family.WATERBORNE_ACRYLIC, Family.SOLVENT_LACQUER, Family.ALKYD_ENAMEL
_O, _T, _I = Family.ARTISTS_OIL, Family.TWO_PACK, Family.ALCOHOL_INK
_WATER, _ALCOHOL = Family.WATER_THINNER, Family.ALCOHOL_THINNER
_SPIRIT, _STRONG = Family.WHITE_SPIRIT, Family.LACQUER_THINNER

WRONG_THINNER: dict[tuple[Family, Family], tuple[str, str]] = {
    (_L, _SPIRIT): (message("enamel thinner makes lacquer curdle and stay soft"), THINNERS_APART),
    (_E, _STRONG): (
        message("lacquer thinner is not for enamel; it lifts the coat below"),
        THINNERS_APART,
    ),
    (_L, _WATER): (message("water makes lacquer curdle and blush"), COMMON_PRACTICE),
    (_E, _WATER): (message("water and enamel do not mix"), COMMON_PRACTICE),
    (_O, _WATER): (message("water and oil do not mix"), COMMON_PRACTICE),
    (_T, _WATER): (message("water reacts with the hardener of a two-pack"), COMMON_PRACTICE),
    (_W, _SPIRIT): (message("white spirit makes waterborne paint curdle"), COMMON_PRACTICE),
    (_I, _SPIRIT): (message("white spirit does not mix with alcohol ink"), COMMON_PRACTICE),
    (_E, _ALCOHOL): (message("alcohol makes enamel curdle"), COMMON_PRACTICE),
    (_O, _ALCOHOL): (message("alcohol does not thin oil paint"), COMMON_PRACTICE),
    (_O, _STRONG): (
        message("lacquer thinner in an oil wash attacks the coat below"),
        COMMON_PRACTICE,
    ),
    (_T, _ALCOHOL): (message("alcohol uses up the hardener of a two-pack"), COMMON_PRACTICE),
    (_T, _SPIRIT): (message("white spirit throws a two-pack out of solution"), COMMON_PRACTICE),
}

GO_TOGETHER = frozenset({frozenset({_E, _O}), frozenset({_L, _I})})
UNLIKE = message("paints of unlike chemistry curdle, or dry unevenly, in one cup")


def mixing(book: Book) -> Iterator[Finding]:
    """Yield every portion that does not belong with the first of its mix."""
    for at, mix in enumerate(book.mixes):
        base = book.coating(mix.portions[0].coating)
        for number, portion in enumerate(mix.portions[1:], start=1):
            other = book.coating(portion.coating)
            fault = unmixable(base.family, other.family)
            if fault is None:
                continue
            reason, source = fault
            yield Finding(
                rule=message("{what} in {base}", what=other.family, base=base.family),
                verdict=LayerVerdict.NEVER,
                path=f"mixes[{at}].portions[{number}]",
                project="",
                model="",
                step=mix.name,
                places=(),
                message=message(
                    'mix "{mix}" holds {other} ({family}): {reason}',
                    mix=mix.name,
                    other=other.name,
                    family=other.family,
                    reason=reason,
                ),
                source=source,
                mend=_mend(mix.name, base, other),
            )


def unmixable(base: Family, other: Family) -> tuple[str, str] | None:
    """Return (reason, source) why ``other`` must not go into ``base``, or None."""
    if (base, other) in WRONG_THINNER:
        return WRONG_THINNER[base, other]
    paints = base in THINNED_BY and other in THINNED_BY
    if paints and base is not other and frozenset({base, other}) not in GO_TOGETHER:
        return UNLIKE, COMMON_PRACTICE
    return None


def _mend(mix: str, base: Coating, other: Coating) -> Mend:
    if other.family in THINNERS:
        wanted = thinner(THINNED_BY[base.family])
    else:
        wanted = counterpart(other, base.family)
    return Mend(
        message("use {wanted} in it instead", wanted=wanted.name),
        (SwapPortion(mix, other.name, wanted),),
    )
