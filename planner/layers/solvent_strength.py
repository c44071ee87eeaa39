"""How strong the solvent in a coating is.

Five classes: 0 water; 1 white spirit; 2 turpentine and alcohols; 3 glycol
ethers, xylene; 4 esters and ketones ("lacquer thinner").  The classes are an
ordering of common practice, not a measurement; what each film withstands
stands in the table of layers.
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
