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
