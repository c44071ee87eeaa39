"""Things that book and file describe differently under one name, side by side, to choose from."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject
from PySide6.QtGui import QFont
from PySide6.QtWidgets import (
    QAbstractItemView,
    QButtonGroup,
    QHBoxLayout,
    QHeaderView,
    QLineEdit,
    QRadioButton,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.service.merging import USUAL, Difference, Item, ItemKind, MergeChoice, MergeSide
from app.window import words
from app.window.chosen_rows import mark_chosen_rows
from app.window.forms.rows import Column, RowsModel
from app.window.message_translation import translated


def kind_word(kind: ItemKind) -> str:
    """Return what kind of thing it is."""
    names = {
        ItemKind.PROJECT: words.tr("project"),
        ItemKind.COATING: words.tr("coating"),
        ItemKind.MIX: words.tr("mix"),
        ItemKind.SEQUENCE: words.tr("sequence"),
    }
    return names[kind]


def choice_word(choice: MergeChoice) -> str:
    """Return a choice in a few words."""
    names = {
        MergeChoice.MINE: words.tr("keep yours"),
        MergeChoice.THEIRS: words.tr("take the file's"),
        MergeChoice.BESIDE: words.tr("take it beside"),
    }
    return names[choice]


class DifferencesModel(RowsModel[Difference]):
    """What differs: kind, name, and what is to be done with it."""

    def __init__(self, differences: tuple[Difference, ...], parent: QObject | None = None) -> None:
        columns = (
            Column[Difference](self.tr("What"), lambda difference: kind_word(difference.kind)),
            Column[Difference](self.tr("Name"), lambda difference: difference.name),
            Column[Difference](self.tr("To be done"), self._to_be_done),
        )
        super().__init__(columns, parent)
        self.choices: dict[Item, MergeChoice] = {
            difference.item: USUAL[difference.kind] for difference in differences
        }
        self.names: dict[Item, str] = {
            difference.item: difference.beside for difference in differences
        }
        self.show_rows(differences)

    def _to_be_done(self, difference: Difference) -> str:
        choice = self.choices[difference.item]
        if choice is MergeChoice.BESIDE:
            return words.tr("take it beside as “{name}”").format(name=self.names[difference.item])
        return choice_word(choice)

    def choose(self, row: int, choice: MergeChoice, name: str) -> None:
        """Choose for one thing; ``name`` is its new name if it is taken beside."""
        item = self.rows[row].item
        self.choices[item], self.names[item] = choice, name
        self.tell_changed()


class SidesModel(RowsModel[MergeSide]):
    """The fields of one thing: what the book says, what the file says, marked where they differ."""

    MARK = "≠"

    def __init__(self, parent: QObject | None = None) -> None:
        tr = self.tr

        def column(
            name: str,
            text: Callable[[MergeSide], str],
            spoken: Callable[[MergeSide], str] | None = None,
        ) -> Column[MergeSide]:
            return Column(name, text, font=_bold_where_it_differs, spoken=spoken)

        columns = (
            column(
                "",
                lambda side: self.MARK if side.differs else "",
                lambda side: tr("differs") if side.differs else tr("the same"),
            ),
            column(tr("Field"), lambda side: translated(side.field)),
            column(tr("Your book says"), lambda side: translated(side.ours)),
            column(tr("The file says"), lambda side: translated(side.theirs)),
        )
        super().__init__(columns, parent)

    def show_sides(self, sides: tuple[MergeSide, ...]) -> None:
        """Show another thing, what differs first."""
        self.show_rows(sorted(sides, key=lambda side: not side.differs), same=False)


def _bold_where_it_differs(side: MergeSide) -> QFont | None:
    font = QFont()
    font.setBold(True)
    return font if side.differs else None


class MergeView(QWidget):
    """A list of what differs; for the chosen one its two sides, and what to do with it."""

    def __init__(self, differences: tuple[Difference, ...], changed: Callable[[], None]) -> None:
        super().__init__()
        self._changed = changed
        self._filling = False
        self.model = DifferencesModel(differences, self)
        self.sides = SidesModel(self)
        self.list = _table(self.model, self.tr("What differs"))
        self.table = _table(self.sides, self.tr("Both sides of what is chosen above"))
        self.table.setWordWrap(True)
        self.radios = {choice: QRadioButton() for choice in MergeChoice}
        self.radios[MergeChoice.MINE].setText(self.tr("&Keep yours"))
        self.radios[MergeChoice.THEIRS].setText(self.tr("Take the &file's in its place"))
        self.radios[MergeChoice.BESIDE].setText(self.tr("Take it &beside yours, named"))
        self._group = QButtonGroup(self)
        self.name = QLineEdit()
        self.name.setAccessibleName(self.tr("Name under which it is taken beside yours"))
        self.name.setMaxLength(120)
        self._lay_out()
        self.list.selectionModel().currentRowChanged.connect(self._show)
        self.name.textEdited.connect(lambda _text: self._choose())
        if differences:
            self.list.selectRow(0)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.list, 2)
        choices = QHBoxLayout()
        for choice, radio in self.radios.items():
            self._group.addButton(radio)
            radio.toggled.connect(lambda on: self._choose() if on else None)
            choices.addWidget(radio)
            if choice is MergeChoice.BESIDE:
                choices.addWidget(self.name, 1)
        column.addLayout(choices)
        column.addWidget(self.table, 3)
        sizes = self.list.horizontalHeader()
        sizes.setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        self.list.setColumnWidth(1, 240)
        both = self.table.horizontalHeader()
        both.setSectionResizeMode(0, QHeaderView.ResizeMode.ResizeToContents)
        both.setSectionResizeMode(1, QHeaderView.ResizeMode.ResizeToContents)
        both.setSectionResizeMode(2, QHeaderView.ResizeMode.Stretch)
        both.setSectionResizeMode(3, QHeaderView.ResizeMode.Stretch)

    def _show(self, index: QModelIndex, _before: QModelIndex | None = None) -> None:
        if not index.isValid():
            return
        difference = self.model.rows[index.row()]
        self._filling = True
        self.sides.show_sides(difference.sides)
        self.table.resizeRowsToContents()
        self.radios[self.model.choices[difference.item]].setChecked(True)
        self.name.setText(self.model.names[difference.item])
        self.name.setEnabled(self.model.choices[difference.item] is MergeChoice.BESIDE)
        self._filling = False

    def _choose(self) -> None:
        row = self.list.currentIndex().row()
        if self._filling or row < 0:
            return
        choice = next(choice for choice, radio in self.radios.items() if radio.isChecked())
        self.name.setEnabled(choice is MergeChoice.BESIDE)
        self.model.choose(row, choice, self.name.text().strip())
        self._changed()


def _table(model: QAbstractTableModel, name: str) -> QTableView:
    table = QTableView()
    table.setModel(model)
    table.setAccessibleName(name)
    table.verticalHeader().hide()
    mark_chosen_rows(table)
    table.setTabKeyNavigation(False)
    table.horizontalHeader().setStretchLastSection(True)
    table.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
    table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
    table.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
    return table
