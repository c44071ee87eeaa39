"""A language that nobody speaks: every literal piece of a text that is translated is marked.

What a window shows in it without marks, beside a person's own words and numbers, has not
gone through a translator.
"""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Iterable, Iterator
from enum import Enum
from typing import Any

from PySide6.QtCore import (
    QAbstractItemModel,
    QAbstractListModel,
    QLocale,
    QModelIndex,
    QObject,
    Qt,
    QTranslator,
)
from PySide6.QtGui import QAction
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QComboBox,
    QDoubleSpinBox,
    QGroupBox,
    QLabel,
    QLineEdit,
    QMenu,
    QSpinBox,
    QTabWidget,
    QWidget,
)

FIELD = re.compile(r"(\{[^}]*\})")
MARKED = re.compile(r"⟦[^⟦⟧]*(?:⟧|$)")  # to its end, or as far as it is shown
ROLES = (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole)
KEYS = re.compile(r"\b(?:Ctrl|Alt|Shift)\+\w+")
FORMS = (QLocale.FormatType.LongFormat, QLocale.FormatType.ShortFormat)
ROWS = 60  # of a model that are looked at


class Marker(QTranslator):
    """Marks every text that it is asked for."""

    def isEmpty(self) -> bool:  # noqa: N802
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


def own_words(one: Any) -> set[str]:
    """Return every string in a book that is no word of the program."""
    if isinstance(one, Enum):
        return set()
    if isinstance(one, str):
        return {one}
    if dataclasses.is_dataclass(one):
        return own_words([getattr(one, each.name) for each in dataclasses.fields(one)])
    if isinstance(one, tuple | list):
        return set().union(*map(own_words, one))
    return set()


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
            left = KEYS.sub(" ", self._own.sub(" ", MARKED.sub(" ", text))).strip()
            self._known[text] = left if re.search(r"[^\W\d_]{2,}", left) else ""
        return self._known[text]


def _of_locale() -> set[str]:
    """Return names of days and months, which come from the locale."""
    days = {QLocale().dayName(at, form) for at in range(1, 8) for form in FORMS}
    months = {QLocale().monthName(at, form) for at in range(1, 13) for form in FORMS}
    return {*days, *months, *(day.rstrip(".") for day in days), *(day[:2] for day in days)}


def texts_in(top: QWidget) -> Iterator[tuple[str, str]]:
    """Yield what a window says, with where it says so."""
    for one in [top, *top.findChildren(QObject)]:
        name = f"{type(one.parent()).__name__}/{type(one).__name__}"
        for text in (*_of_widget(one), *_of_kind(one)):
            if text:
                yield name, text


def _of_widget(one: QObject) -> Iterator[str]:
    if isinstance(one, QWidget):
        yield from (one.accessibleName(), one.toolTip(), one.accessibleDescription())
        yield from (one.whatsThis(), one.statusTip())


def _of_kind(one: QObject) -> Iterator[str]:
    if isinstance(one, QLabel | QAbstractButton | QAction):
        yield one.text()
    elif isinstance(one, QLineEdit):
        yield one.placeholderText()
    elif isinstance(one, QMenu | QGroupBox):
        yield one.title()
    elif isinstance(one, QSpinBox | QDoubleSpinBox):
        yield from (one.prefix(), one.suffix(), one.specialValueText())
    elif isinstance(one, QComboBox):
        yield from (one.itemText(at) for at in range(one.count()))
    elif isinstance(one, QTabWidget):
        yield from (one.tabText(at) for at in range(one.count()))
    elif isinstance(one, QAbstractItemView) and one.model() is not None:
        yield from _of_model(one.model())


def _of_model(model: QAbstractItemModel) -> Iterator[str]:
    for at in range(_columns(model, QModelIndex())):
        for role in ROLES:
            yield str(model.headerData(at, Qt.Orientation.Horizontal, role) or "")
    yield from _below(model, QModelIndex())


def _columns(model: QAbstractItemModel, parent: QModelIndex) -> int:
    # Of a list, Qt hides it.
    return 1 if isinstance(model, QAbstractListModel) else model.columnCount(parent)


def _below(model: QAbstractItemModel, parent: QModelIndex) -> Iterator[str]:
    for row in range(min(ROWS, model.rowCount(parent))):
        for column in range(_columns(model, parent)):
            index = model.index(row, column, parent)
            for role in ROLES:
                told = index.data(role)
                if isinstance(told, str):
                    yield told
        yield from _below(model, model.index(row, 0, parent))
