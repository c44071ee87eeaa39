"""Fields of the Build view's forms: a change is an edit at once, a refusal a line below."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from contextlib import contextmanager
from enum import StrEnum
from typing import Any, TypeVar

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QFormLayout,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from app.service.edits import Edit
from app.window.chosen_rows import TargetRows
from app.window.labels import MessageLabel, text
from app.window.tab_order import move_focus
from app.window.target_size import TARGET
from planner.values.book import Book
from planner.values.refusal import Refused

Make = Callable[[Book], Edit]
E = TypeVar("E", bound=StrEnum)
TIP = Qt.ItemDataRole.ToolTipRole
CHECKED, UNCHECKED = Qt.CheckState.Checked, Qt.CheckState.Unchecked


class EditorForm(QWidget):
    """Fields of one thing, with a line for what is wrong with them.

    Signals
    -------
    wanted(callable)
        An edit shall be made, by a function from the book.
    """

    wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.messages: dict[str, MessageLabel] = {}
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(10, 4, 14, 16)
        self.column.setSpacing(8)
        self._rows: QFormLayout | None = None
        self._groups: list[QFormLayout] = []
        self._shown: object = None
        self._filling = False

    def title(self, words_: str) -> None:
        """Begin a group of fields."""
        self._rows = None
        self.column.addWidget(text(words_, bold=True, size=1.05))

    def row(self, label: str, field: QWidget, *names: str) -> None:
        """Add a field; refusals of ``names`` are told below it."""
        rows = self._form()
        rows.addRow(text(label, wrap=False), field)
        field.setAccessibleName(field.accessibleName() or label)
        self._message(rows, names)

    def wide(self, field: QWidget, *names: str) -> None:
        """Add a field that needs no label or the whole width."""
        rows = self._form()
        rows.addRow(field)
        self._message(rows, names)

    def end(self) -> None:
        """Let what is above stay above; refusals of nothing in particular are told last."""
        self._message(self._form(), ("",))
        self.column.addStretch(1)

    def show_row(self, field: QWidget, shown: bool) -> None:
        """Show a field with its label, or neither."""
        for rows in self._groups:
            if rows.indexOf(field) >= 0:
                rows.setRowVisible(field, shown)

    def ask(self, make: Make) -> None:
        """Ask for an edit, unless the fields are being filled."""
        if not self._filling:
            for message in self.messages.values():
                message.say("")
            self.wanted.emit(make)

    def refuse(self, refused: Refused) -> None:
        """Say what is wrong, below the field that it is about if that can be told."""
        place = refused.place
        best = max((name for name in self.messages if name and name in place), key=len, default="")
        self.messages[best].say(refused.mend)

    @contextmanager
    def filling(self, shown: object) -> Any:
        """Fill the fields without asking for edits; yields whether there is anything new."""
        fresh = shown != self._shown
        self._shown = shown
        self._filling = True
        try:
            if fresh:
                for message in self.messages.values():
                    message.say("")
            yield fresh
        finally:
            self._filling = False

    def focusNextPrevChild(self, onwards: bool) -> bool:
        """Let Tab go along as fields are laid out."""
        return move_focus(self, onwards=onwards) or super().focusNextPrevChild(onwards)

    def _form(self) -> QFormLayout:
        if self._rows is None:
            self._rows = QFormLayout()
            self._rows.setFieldGrowthPolicy(QFormLayout.FieldGrowthPolicy.AllNonFixedFieldsGrow)
            self._rows.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
            self._rows.setVerticalSpacing(6)
            self._groups.append(self._rows)
            self.column.addLayout(self._rows)
        return self._rows

    def _message(self, rows: QFormLayout, names: Sequence[str]) -> None:
        if names:
            message = MessageLabel()
            rows.addRow(message)
            self.messages.update(dict.fromkeys(names, message))


class CheckList(QListWidget):
    """Names to tick, a few lines high."""

    ticked = Signal()

    def __init__(self, lines: int = 4) -> None:
        super().__init__()
        self.setItemDelegate(TargetRows(self))
        height = max(TARGET, self.fontMetrics().height() + 6)
        self.setFixedHeight(height * lines)
        self.itemChanged.connect(lambda _item: self.ticked.emit())

    def show_names(self, names: Iterable[tuple[str, str]], chosen: Iterable[str]) -> None:
        """Show (word, value) pairs with those of ``chosen`` ticked; tell nobody."""
        wanted = set(chosen)
        pairs = list(names)
        here = self.currentRow()
        blocked = QSignalBlocker(self)
        self.clear()
        for word, value in pairs:
            item = QListWidgetItem(word)
            item.setData(Qt.ItemDataRole.UserRole, value)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(CHECKED if value in wanted else UNCHECKED)
            self.addItem(item)
        self.setCurrentRow(min(max(here, 0), len(pairs) - 1))
        blocked.unblock()

    def chosen(self) -> tuple[str, ...]:
        """Return the values that are ticked."""
        items = [self.item(row) for row in range(self.count())]
        return tuple(
            str(list_widget_item.data(Qt.ItemDataRole.UserRole))
            for list_widget_item in items
            if list_widget_item.checkState() is CHECKED
        )
