"""Choosing one of many by typing a part of its name."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QVBoxLayout,
    QWidget,
)

from app.window.chosen_rows import mark_chosen_rows
from app.window.labels import text

VALUE = Qt.ItemDataRole.UserRole


class Choose(QDialog):
    """A list with a field that narrows it; arrow keys go on in the list."""

    def __init__(
        self,
        title: str,
        question: str,
        options: Sequence[tuple[str, Any]],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.narrow = QLineEdit()
        self.narrow.setPlaceholderText(self.tr("type a part of the name"))
        self.narrow.setAccessibleName(self.tr("Narrow the list"))
        self.narrow.textChanged.connect(self._narrow)
        self.narrow.installEventFilter(self)
        self.list = QListWidget()
        mark_chosen_rows(self.list)
        self.list.setAccessibleName(question)
        for name, value in options:
            item = QListWidgetItem(name)
            item.setData(VALUE, value)
            self.list.addItem(item)
        self.list.setCurrentRow(0)
        self.list.itemActivated.connect(lambda _item: self.accept())
        buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.addWidget(text(question))
        column.addWidget(self.narrow)
        column.addWidget(self.list, 1)
        column.addWidget(buttons)
        self.resize(460, 420)

    def value(self) -> Any:
        """Return what is chosen, None for nothing."""
        item = self.list.currentItem()
        return item.data(VALUE) if item is not None and not item.isHidden() else None

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Let the arrow keys of the field move in the list."""
        if (
            watched is self.narrow
            and isinstance(event, QKeyEvent)
            and event.type() == QEvent.Type.KeyPress
            and event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down)
        ):
            self._go(1 if event.key() == Qt.Key.Key_Down else -1)
            return True
        return super().eventFilter(watched, event)

    def _rows(self) -> list[int]:
        return [row for row in range(self.list.count()) if not self.list.item(row).isHidden()]

    def _go(self, by: int) -> None:
        rows, here = self._rows(), self.list.currentRow()
        if rows:
            at = rows.index(here) + by if here in rows else 0
            self.list.setCurrentRow(rows[min(len(rows) - 1, max(0, at))])

    def _narrow(self, typed: str) -> None:
        wanted = typed.casefold().split()
        for row in range(self.list.count()):
            item = self.list.item(row)
            item.setHidden(not all(part in item.text().casefold() for part in wanted))
        rows = self._rows()
        if rows and self.list.currentRow() not in rows:
            self.list.setCurrentRow(rows[0])
