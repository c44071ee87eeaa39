"""A table of things with buttons to add, change and remove one."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Generic, TypeVar

from PySide6.QtCore import (
    QItemSelectionModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    Qt,
)
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QHeaderView,
    QPushButton,
    QStyleOptionViewItem,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.window.chosen_rows import ChosenRows
from app.window.flow_layout import FlowLayout
from app.window.forms.rows import EN_SPACE, LEFT, Column, RowsModel
from app.window.forms.tables import lines_table
from app.window.labels import MessageLabel, text
from app.window.target_size import TARGET, roomy_rows
from planner.values.refusal import Refused

T = TypeVar("T")


class Roomy(ChosenRows):
    """Lines with some air around: numbers at the right keep off what follows them."""

    def initStyleOption(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """Add a blank behind what stands at the right."""
        super().initStyleOption(option, index)
        if option.displayAlignment & Qt.AlignmentFlag.AlignRight:
            option.text += EN_SPACE

    def sizeHint(
        self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> QSize:
        """Return the usual size and a little more."""
        hint = super().sizeHint(option, index)
        return QSize(hint.width() + 4, max(TARGET, hint.height() + 7))


def plain_table(name: str) -> QTableView:
    """Return a table of whole rows in our dress."""
    table = lines_table(name)
    table.setItemDelegate(Roomy(table))
    roomy_rows(table, table.fontMetrics().height() + 10)
    table.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
    table.horizontalHeader().setDefaultAlignment(LEFT)
    table.horizontalHeader().setStretchLastSection(True)
    table.horizontalHeader().setHighlightSections(False)
    return table


class Listing(QWidget, Generic[T]):
    """Things of one kind: Enter changes the chosen one, Delete removes it.

    Parameters
    ----------
    name
        What assistive technology calls the table.
    empty
        What is said while there is nothing in it.
    columns
        What is told of each.
    detail
        What is told of the chosen one below the table, in full.
    """

    def __init__(
        self,
        name: str,
        empty: str,
        columns: Sequence[Column[T]],
        detail: Callable[[T], str] | None = None,
    ) -> None:
        super().__init__()
        self.model: RowsModel[T] = RowsModel(columns, self)
        self.table = plain_table(name)
        self.table.setModel(self.model)
        self.empty = text(empty)
        self._detail = detail
        self.detail = text("")
        self.detail.setVisible(False)
        self.message = MessageLabel()
        self.buttons: list[QPushButton] = []
        self._needing: list[QPushButton] = []
        self._line = FlowLayout(across=6, down=4)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 4)
        column.setSpacing(6)
        column.addWidget(self.empty)
        column.addWidget(self.table, 1)
        column.addWidget(self.detail)
        column.addWidget(self.message)
        column.addLayout(self._line)
        column.addStretch(0)
        self.table.selectionModel().currentRowChanged.connect(lambda _new, _old: self._enable())
        self.show_rows(())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep room for all buttons where they take more lines."""
        super().resizeEvent(event)
        inner = self.layout()
        if inner is not None:
            self.setMinimumHeight(inner.totalMinimumHeightForWidth(self.width()))

    def add_button(self, name: str, act: Callable[[], object]) -> QPushButton:
        """Add a button that needs nothing chosen."""
        button = QPushButton(name)
        button.setAutoDefault(False)
        button.clicked.connect(lambda _on=False: act())
        self.buttons.append(button)
        self._line.addWidget(button)
        return button

    def row_button(
        self, name: str, act: Callable[[T], object], *, enter: bool = False, delete: bool = False
    ) -> QPushButton:
        """Add a button about the chosen row, pressed by Enter or Delete in the table too."""

        def on_chosen() -> None:
            chosen = self.chosen()
            if chosen is not None:
                act(chosen)

        button = self.add_button(name, on_chosen)
        self._needing.append(button)
        if enter:
            self.table.activated.connect(lambda _index: on_chosen())
        if delete:
            _key(self.table, QKeySequence.StandardKey.Delete, on_chosen)
        self._enable()
        return button

    def chosen(self) -> T | None:
        """Return the row with the keys."""
        return self.model.row_at(self.table.currentIndex())

    def choose(self, row: int) -> None:
        """Give a row the keys."""
        index = self.model.index(row, 0)
        self.table.selectionModel().setCurrentIndex(
            index,
            QItemSelectionModel.SelectionFlag.ClearAndSelect
            | QItemSelectionModel.SelectionFlag.Rows,
        )

    def show_rows(self, rows: Sequence[T]) -> None:
        """Show other rows; the line with the keys keeps its place."""
        at = max(0, self.table.currentIndex().row())
        if tuple(rows) != self.model.rows:
            self.model.show_rows(rows)
        self.empty.setVisible(not rows)
        self.table.setVisible(bool(rows))
        self.setFocusProxy(self.table if rows or not self.buttons else self.buttons[0])
        if rows and not self.table.currentIndex().isValid():
            self.choose(min(at, len(rows) - 1))
        self._enable()

    def say(self, refused: Refused | None) -> None:
        """Say why something was refused, or nothing."""
        self.message.say(refused.mend if refused else "")

    def _enable(self) -> None:
        chosen = self.chosen()
        some = chosen is not None
        if self._detail is not None:
            self.detail.setText("" if chosen is None else self._detail(chosen))
            self.detail.setVisible(some)
        for button in self._needing:
            button.setEnabled(some)


def _key(widget: QWidget, key: QKeySequence.StandardKey, act: Callable[[], object]) -> QObject:
    shortcut = QShortcut(QKeySequence(key), widget)
    shortcut.setContext(Qt.ShortcutContext.WidgetShortcut)
    shortcut.activated.connect(act)
    return shortcut
