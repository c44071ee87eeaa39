"""What the name of a coating tells: its effect, and whether it is a clear."""

from __future__ import annotations

import re
from collections.abc import Iterable

from planner.values.coating import Coating, Effect

CLEAR_WORDS = ("clear", "varnish", "klar", "firnis")
"""How people call clear coats in the languages of the window."""

_BY_NAME: tuple[tuple[Effect, str], ...] = (
    (Effect.FLUORESCENT, r"fluorescent|fluo|neon|leuchtfarbe|leucht\w*"),
    (Effect.MIRROR, r"chrome|mirror|chrom|spiegel\w*"),
    (
        Effect.METALLIC,
        r"metallic|metal|metallisch|aluminium|aluminum|steel|stahl|gunmetal|brass|messing|copper"
        r"|kupfer|bronze|gold|silver(?! gr[ea]y)|silber(?!grau)",
    ),
)


def effect_of(coating: Coating) -> Effect:
    """Return the effect of a coating: as the book says, else as its name tells.

    Who names a bottle "aluminium" means the metal; what is told wrongly so
    can be set in the book.
    """
    if coating.effect is not Effect.PLAIN:
        return coating.effect
    name = coating.name.casefold()
    return next(
        (effect for effect, words in _BY_NAME if re.search(rf"\b(?:{words})\b", name)),
        Effect.PLAIN,
    )


def named_so(coating: Coating, words: Iterable[str]) -> bool:
    """Tell whether the name of a coating holds one of some words."""
    name = coating.name.casefold()
    return any(word in name for word in words)
