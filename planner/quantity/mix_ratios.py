"""Parts, drops and what is solid of a mix.

Parts are by volume.  No contraction is reckoned with; keep mixes by weight
apart.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache

from planner.values.book import Book
from planner.values.coating import THINNERS, Coating, Family
from planner.values.message import message
from planner.values.mix import Mix, Portion
from planner.values.refusal import Refused, demand, number_in

THIN_LIQUIDS = frozenset({Family.ALCOHOL_THINNER, Family.WHITE_SPIRIT, Family.LACQUER_THINNER})
_SHARE = re.compile(r"(\d+(?:[.,]\d+)?)\s*(%?)")
WHOLE_PCT = 100
NEARLY_PCT = 1.0  # how far percentages may miss 100, so that 33 : 33 : 33 is read


def read_parts(text: str) -> tuple[float, ...]:
    """Read parts by volume as people write them.

    "2 : 3", "50 : 50", "30 % : 70 %", "1,5 : 1" and "2 + 3" are read.

    Raises
    ------
    Refused
        With the place "parts", if that is not what it says.

    Examples
    --------
    >>> read_parts("30 % : 70 %")
    (30.0, 70.0)
    """
    shares = [_SHARE.fullmatch(piece.strip()) for piece in re.split("[:+]", text)]
    found = [share for share in shares if share is not None]
    if len(found) != len(shares) or len(found) < 2:
        raise Refused(
            "parts",
            message('"{text}" is no mix; write it as 2 : 3 or as 40 % : 60 %', text=text[:40]),
        )
    numbers = tuple(float(share[1].replace(",", ".")) for share in found)
    for number in numbers:
        number_in(number, 0.01, 1000, "parts")
    signs = {share[2] for share in found}
    demand(len(signs) == 1, "parts", message("has parts and percentages; write all of them alike"))
    if signs == {"%"}:
        demand(
            abs(sum(numbers) - WHOLE_PCT) <= NEARLY_PCT,
            "parts",
            message(
                "add up to {sum:g} %; percentages of a mix make {whole} %",
                sum=sum(numbers),
                whole=WHOLE_PCT,
            ),
        )
    return numbers


def parts_text(parts: Iterable[float]) -> str:
    """Return parts as people write them: "2 : 3"."""
    return " : ".join(f"{part:g}" for part in parts)


def solids_of(coating: Coating) -> float:
    """Return the volume solids of what is in a bottle; a thinner leaves nothing."""
    return 0.0 if coating.family in THINNERS else coating.solids


def mix_of(book: Book, colour: str) -> Mix:
    """Return a mix of the book; a coating from the bottle is one of a single part."""
    return book.mix(colour) or _alone(colour)


@lru_cache(maxsize=1024)
def _alone(coating: str) -> Mix:
    return Mix(name=coating, portions=(Portion(coating=coating, parts=1),))


def mixed_solids(book: Book, mix: Mix) -> float:
    """Return the volume solids of a mix; no contraction is reckoned with."""
    parts = sum(portion.parts for portion in mix.portions)
    solid = sum(
        portion.parts * solids_of(book.coating(portion.coating)) for portion in mix.portions
    )
    return solid / parts


def drops_per_ml(family: Family) -> int:
    """Return how many drops of a usual bottle make a millilitre.

    20 for water ± 10 % (USP, usual practice); 45 for alcohol and white spirit
    (from memory), whose drops are smaller.  Bottles differ: count once.
    """
    return 45 if family in THIN_LIQUIDS else 20


def drops_of(coating: Coating) -> float:
    """Return the drops to a millilitre that were counted of this bottle, else its family's."""
    return coating.drops_per_ml or drops_per_ml(coating.family)


@dataclass(frozen=True)
class MixMeasure:
    """What goes into a mix of one coating."""

    coating: str
    parts: float
    ml: float
    drops: int


def measured(book: Book, mix: Mix, total_ml: float) -> tuple[MixMeasure, ...]:
    """Return the measures by volume that make ``total_ml`` of a mix.

    Whatever goes in at all is at least a drop.
    """
    whole = sum(portion.parts for portion in mix.portions)
    found = []
    for portion in mix.portions:
        ml = total_ml * portion.parts / whole
        drops = round(ml * drops_of(book.coating(portion.coating)))
        found.append(MixMeasure(portion.coating, portion.parts, ml, max(drops, 1 if ml > 0 else 0)))
    return tuple(found)


def measures_of(book: Book, colour: str, total_ml: float) -> tuple[MixMeasure, ...]:
    """Return the measures that make ``total_ml`` of a coating or mix called ``colour``."""
    return measured(book, mix_of(book, colour), total_ml)
