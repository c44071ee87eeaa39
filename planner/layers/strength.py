"""How strong the solvent in a coating is, and what a dry film withstands.

Five classes: 0 water; 1 white spirit; 2 turpentine and alcohols; 3 glycol
ethers, xylene; 4 esters and ketones ("lacquer thinner").  A film is at risk
when the class of what goes over it exceeds its own resistance.  The classes
are an ordering of common practice, not a measurement.
"""

from __future__ import annotations

from planner.values.book import Book
from planner.values.coating import Family

WATER, SPIRIT, ALCOHOL, ETHER, ESTER = range(5)

STRENGTH: dict[Family, int] = {
    Family.ALKYD_ENAMEL: SPIRIT,
    Family.ARTISTS_OIL: SPIRIT,
    Family.WHITE_SPIRIT: SPIRIT,
    Family.FIXER: SPIRIT,
    Family.ALCOHOL_INK: ALCOHOL,
    Family.ALCOHOL_THINNER: ALCOHOL,
    Family.TWO_PACK: ETHER,
    Family.SOLVENT_LACQUER: ESTER,
    Family.LACQUER_THINNER: ESTER,
    Family.SOLVENT_CEMENT: ESTER,
}
"""Class of the solvent that a coating brings; families left out bring water or nothing."""

RESISTANCE: dict[Family, int] = {
    Family.WATERBORNE_ACRYLIC: SPIRIT,
    Family.SOLVENT_LACQUER: SPIRIT,
    Family.ALKYD_ENAMEL: WATER,
    Family.ARTISTS_OIL: WATER,
    Family.ALCOHOL_INK: SPIRIT,
    Family.TWO_PACK: ETHER,
    Family.DECAL: WATER,
}
"""Highest class that a dry film survives within the weeks of a project; others: 0."""


def strength_of(book: Book, name: str) -> int:
    """Return the solvent class of a coating; of a mix, that of its strongest portion.

    Raises
    ------
    KeyError
        If there is no such coating or mix.
    """
    mix = book.mix(name)
    names = [portion.coating for portion in mix.portions] if mix else [name]
    return max(STRENGTH.get(book.coating(one).family, WATER) for one in names)
