"""What planner, storage and service say, in the language of the window.

They speak English and keep how each sentence was made (`planner.values.message`).  Here its
template is translated, then what belongs into it, each by itself; a person's own text
passes through.
"""

from __future__ import annotations

import json
import re
from collections.abc import Sequence
from datetime import date, datetime
from enum import StrEnum
from functools import lru_cache
from pathlib import Path
from string import Formatter
from typing import Any

from PySide6.QtCore import QCoreApplication, QLocale

from app.window import step_naming, words
from app.window.translations.enumerations import ENUMERATIONS
from planner.values.message import Message

CONTEXT = "said"
KEPT = Path(__file__).with_name("translations") / "kept_as_text.json"
TITLES = ("title", "step", "colour", "earlier")  # fields that a step's title may fill
SOME = 3  # letters that a template must have to be known by them
LETTERS = 5  # that a template must have to be sought inside what another was filled with

_CONTEXTS = {kind: context for context, kinds in ENUMERATIONS.items() for kind in kinds}
_DATE = re.compile(r"(?:[A-Z][a-z]{2} )?(\d{4}-\d{2}-\d{2})( \d{2}:\d{2}(?:–\d{2}:\d{2})?)?")
_DECIMAL = re.compile(r"-?\d+\.\d+")
_FIELD = re.compile(r"\{(\w+)[^}]*\}")


def translated(text: str) -> str:
    """Return what the program says in the window's language; other text as it is."""
    if not isinstance(text, Message):
        return text
    template = QCoreApplication.translate(CONTEXT, text.template)
    if not text.arguments:
        return template
    arguments = {name: _told(name, value) for name, value in text.arguments.items()}
    return (_LOCAL if words.is_foreign() else _ENGLISH).vformat(template, (), arguments)


def enum_word(value: StrEnum) -> str:
    """Return what a value of an enumeration is called."""
    return QCoreApplication.translate(_CONTEXTS.get(type(value), CONTEXT), value.value)


def edit_name(text: str) -> str:
    """Return what the journal calls an edit, in the window's language."""
    told = translated(text)
    if not isinstance(text, Message) and words.is_foreign():
        told = _recognised(text, "called", inside=False)
    for name, key in step_naming.mentioned(told):
        told = told.replace(name, f"{title(step_naming.title_of(key))} · {key.model}")
    return told


def title(text: str) -> str:
    """Return what the program called a step, in the window's language; a person's as it is."""
    if isinstance(text, Message) or not words.is_foreign():
        return translated(text)
    built_in = words.title_word(text)
    return built_in if built_in != text else _recognised(text, "titled", inside=False)


class _Local(Formatter):
    """Puts fractions and dates in as the locale writes them."""

    def format_field(self, value: Any, format_spec: str) -> str:
        """Return one value in the form that is asked."""
        if isinstance(value, date):
            return _date_text(value, format_spec)
        told = str(format(value, format_spec))
        return words.decimal(told) if isinstance(value, float) else told


_LOCAL, _ENGLISH = _Local(), Formatter()


def _told(name: str, value: object) -> object:
    if name == "edit" and isinstance(value, str):  # as the journal calls it
        return edit_name(value)
    if isinstance(value, Message):
        return translated(value)
    if isinstance(value, StrEnum):
        return enum_word(value)
    if isinstance(value, str) and value:
        if name in TITLES:
            return title(value)
        if name in ENUMERATIONS:
            return QCoreApplication.translate(name, value)
    return value


def _date_text(value: date, form: str) -> str:
    if not form:
        clock = f" {value:%H:%M}" if isinstance(value, datetime) else ""
        return words.day(value) + clock
    names = {
        "%a": QLocale().dayName(value.isoweekday(), QLocale.FormatType.ShortFormat),
        "%A": QLocale().dayName(value.isoweekday(), QLocale.FormatType.LongFormat),
        "%b": QLocale().monthName(value.month, QLocale.FormatType.ShortFormat),
        "%B": QLocale().monthName(value.month, QLocale.FormatType.LongFormat),
    }
    form = form.replace("%a %Y-%m-%d", "%Y-%m-%d").replace("%Y-%m-%d", words.day(value))
    for mark, name in names.items():
        form = form.replace(mark, name)
    return format(value, form)


def _recognised(text: str, kind: str, *, inside: bool) -> str:
    found = _found(text, kind, inside, words.language_code())
    if found is None:
        return _own(text)
    template, arguments = found
    told = {name: _filled(name, value, kind) for name, value in arguments}
    # The journal keeps text alone: what was a number has its form already.
    plain = _FIELD.sub(r"{\1}", QCoreApplication.translate(CONTEXT, template))
    return plain.format(**told) if told else QCoreApplication.translate(CONTEXT, template)


def _told_by_a_word(arguments: dict[str, str]) -> bool:
    """Tell whether a word of the program is among what a name without letters was filled with."""
    return any(
        (title(value) if name in TITLES else _word(name, value)) != value
        for name, value in arguments.items()
        if name == "word" or name in TITLES or name in ENUMERATIONS
    )


def _word(name: str, value: str) -> str:
    return QCoreApplication.translate(CONTEXT if name == "word" else name, value)


def _filled(name: str, value: str, kind: str) -> str:
    """Return what a name was filled with: a word of the program by the name of its field."""
    if name == "word" or name in ENUMERATIONS:
        return _word(name, value)
    if name in TITLES:
        return title(value)
    return _recognised(value, kind, inside=True)


def _own(text: str) -> str:
    """Return dates and decimals as the locale writes them, and all else as it stands."""
    if _DECIMAL.fullmatch(text):
        return words.decimal(text)
    when = _DATE.fullmatch(text)
    if when is None:
        return text
    return words.day(date.fromisoformat(when[1])) + (when[2] or "")


@lru_cache(maxsize=2048)
def _found(
    text: str, kind: str, inside: bool, _language: str
) -> tuple[str, Sequence[tuple[str, str]]] | None:
    """Return the template that a kept text was made of, and what was put in."""
    for template, pattern, letters in _patterns(kind):
        if inside and (letters < LETTERS or not pattern.groups):
            continue
        match = pattern.fullmatch(text)
        if match is not None and (letters >= SOME or _told_by_a_word(match.groupdict())):
            return template, tuple(match.groupdict().items())
    return None


@lru_cache(maxsize=2)
def _patterns(kind: str) -> list[tuple[str, re.Pattern[str], int]]:
    """Return every template of a kind, the ones with the most letters first."""
    templates = json.loads(KEPT.read_text(encoding="utf-8"))[kind]
    made = [
        (template, pattern_of(template), len(re.findall("[A-Za-z]", _FIELD.sub("", template))))
        for template in templates
    ]
    return sorted(made, key=lambda other: (-other[2], other[0]))


def pattern_of(template: str) -> re.Pattern[str]:
    """Return what a text looks like that was made of a template."""
    seen: set[str] = set()
    form, end = "", 0
    for field in _FIELD.finditer(template):
        form += re.escape(template[end : field.start()])
        form += f"(?P={field[1]})" if field[1] in seen else f"(?P<{field[1]}>.+?)"
        seen.add(field[1])
        end = field.end()
    return re.compile(form + re.escape(template[end:]), re.DOTALL)
