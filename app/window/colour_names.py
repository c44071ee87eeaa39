"""Names of coatings without that of their family, where the family is told or goes without."""

from __future__ import annotations

from app.window import words
from planner.values.coating import Coating, Family


def short_name(coating: Coating) -> str:
    """Return the name of a coating without that of its family, which is told beside it."""
    return without(coating.name, coating.family)


def plain_colour(name: str) -> str:
    """Return the name of a waterborne acrylic by its colour alone; others keep their family.

    Most colours are such; whatever else is meant is named in full, so that none are confused.
    """
    return without(name, Family.WATERBORNE_ACRYLIC)


def without(name: str, family: Family) -> str:
    """Return a name without that of a family before it, in either language."""
    for told in (family.value, words.family_word(family.value)):
        if name.casefold().startswith(f"{told.casefold()}, "):
            return words.capital(name[len(told) + 2 :])
    return words.capital(name)
