"""What a window says, and which of it are a person's own words."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator
from enum import Enum
from typing import Any

from PySide6.QtCore import QAbstractItemModel, QAbstractListModel, QModelIndex, QObject, Qt
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

ROLES = (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole)
ROWS = 60  # of a model that are looked at


def own_words(other: Any) -> set[str]:
    """Return every string in a book that is no word of the program."""
    if isinstance(other, Enum):
        return set()
    if isinstance(other, str):
        return {other}
    if dataclasses.is_dataclass(other):
        return own_words([getattr(other, each.name) for each in dataclasses.fields(other)])
    if isinstance(other, tuple | list):
        return set().union(*map(own_words, other))
    return set()


def texts_in(top: QWidget) -> Iterator[tuple[str, str]]:
    """Yield what a window says, with where it says so."""
    for one in [top, *top.findChildren(QObject)]:
        name = f"{type(one.parent()).__name__}/{type(one).__name__}"
        for text in (*_of_widget(one), *_of_kind(one)):
            if text:
                yield name, text


def _of_widget(other: QObject) -> Iterator[str]:
    if isinstance(other, QWidget):
        yield from (other.accessibleName(), other.toolTip(), other.accessibleDescription())
        yield from (other.whatsThis(), other.statusTip())


def _of_kind(other: QObject) -> Iterator[str]:
    if isinstance(other, QLabel | QAbstractButton | QAction):
        yield other.text()
    elif isinstance(other, QLineEdit):
        yield other.placeholderText()
    elif isinstance(other, QMenu | QGroupBox):
        yield other.title()
    elif isinstance(other, QSpinBox | QDoubleSpinBox):
        yield from (other.prefix(), other.suffix(), other.specialValueText())
    elif isinstance(other, QComboBox):
        yield from (other.itemText(at) for at in range(other.count()))
    elif isinstance(other, QTabWidget):
        yield from (other.tabText(at) for at in range(other.count()))
    elif isinstance(other, QAbstractItemView) and other.model() is not None:
        yield from _of_model(other.model())


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
