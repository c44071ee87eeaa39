"""Text of anybody's made harmless for files that other programs open.

What a person typed, or took in with a file of somebody else, may hold
control characters, or signs that turn the direction of writing about and so
make a line read otherwise than it is written (Unicode Technical Report 36,
section 2.4).  Letters of every script stay.
"""

from __future__ import annotations

import unicodedata

# Unicode Standard Annex 9, tables 1 and 2: marks, embeddings, overrides and isolates.
TURNING = frozenset("\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
BREAKS = str.maketrans({"\r": "\n", "\u2028": "\n", "\u2029": "\n", "\x85": "\n", "\t": " "})
NO_TEXT = frozenset({"Cc", "Cs", "Co", "Cn"})  # control, surrogate, private, unassigned


def tame(text: str, *, lines: bool = True) -> str:
    """Return text without control characters and signs that turn the writing about.

    Parameters
    ----------
    lines
        Keep line breaks; else each becomes a blank.
    """
    whole = text.replace("\r\n", "\n").translate(BREAKS)
    kept = "".join(sign for sign in whole if sign == "\n" or _is_text(sign))
    return kept if lines else kept.replace("\n", " ")


def _is_text(sign: str) -> bool:
    return sign not in TURNING and unicodedata.category(sign) not in NO_TEXT
