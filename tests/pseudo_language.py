"""A language that nobody speaks: every literal piece of a text that is translated is marked.

What a window shows in it without marks, beside a person's own words and numbers, has not
gone through a translator.
"""

from __future__ import annotations

import re
from collections.abc import Iterable

from PySide6.QtCore import QLocale, QTranslator

FIELD = re.compile(r"(\{[^}]*\})")
MARKED = re.compile(r"(?:⟦|^)[^⟦⟧]*⟧|⟦[^⟦⟧]*$")  # to its end, or as far as a part of it is shown
KEYS = re.compile(r"\b(?:(?:Ctrl|Alt|Shift)\+(?:\w+|[↑↓])|Esc\b|Tab\b)")
FORMS = (QLocale.FormatType.LongFormat, QLocale.FormatType.ShortFormat)


class Marker(QTranslator):
    """Marks every text that it is asked for."""

    def isEmpty(self) -> bool:
        """It has a translation of everything."""
        return False

    def translate(
        self, context: str, text: str, disambiguation: str | None = None, n: int = -1
    ) -> str:
        return marked(text)


def marked(text: str) -> str:
    """Return a text whose literal pieces are marked; what is put in comes between."""
    return "".join(
        piece if FIELD.fullmatch(piece) or not re.search(r"\w", piece) else f"⟦{piece}⟧"
        for piece in FIELD.split(text)
    )


class Ear:
    """Hears what of a text is neither marked nor a person's own."""

    def __init__(self, own: Iterable[str]) -> None:
        named = {word for text in own for word in (text, text.replace("-", " "))}
        words = sorted({*named, *_of_locale()} - {""}, key=len, reverse=True)
        told = "|".join(map(re.escape, words))
        self._own = re.compile(rf"(?<!\w)(?:{told})(?!\w)", re.IGNORECASE)
        self._known: dict[str, str] = {}

    def unmarked(self, text: str) -> str:
        """Return the words that are left, "" for none."""
        if text not in self._known:
            plain = re.sub("&(?!&)", "", text)  # letters after Alt also stand within names
            left = KEYS.sub(" ", self._own.sub(" ", MARKED.sub(" ", plain))).strip()
            self._known[text] = left if re.search(r"[^\W\d_]{2,}", left) else ""
        return self._known[text]


def _of_locale() -> set[str]:
    """Return names of days and months, which come from the locale."""
    days = {QLocale().dayName(at, form) for at in range(1, 8) for form in FORMS}
    months = {QLocale().monthName(at, form) for at in range(1, 13) for form in FORMS}
    return {*days, *months, *(day.rstrip(".") for day in days), *(day[:2] for day in days)}
