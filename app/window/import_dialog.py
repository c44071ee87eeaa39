"""Before a file is taken in: what it brings, and what it says differently."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.service.importing import Difference, Household, Imported, import_file
from app.window import words
from app.window.labels import text
from planner.values.book import Book
from planner.values.refusal import Refused
from storage.exchange import Exchange

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
CHECKED = Qt.CheckState.Checked


class DifferencesModel(QAbstractTableModel):
    """Coatings of one name that differ, side by side; checked ones are taken from the file."""

    def __init__(self, differences: tuple[Difference, ...], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._differences = differences
        self.taken: set[str] = set()

    def rowCount(self, parent: Index = NO_INDEX) -> int:  # noqa: N802
        """Return the number of names that differ."""
        return 0 if parent.isValid() else len(self._differences)

    def columnCount(self, parent: Index = NO_INDEX) -> int:  # noqa: N802
        """Return the number of columns: name, book, file."""
        return 0 if parent.isValid() else 3

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Return that the first column can be checked."""
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        flags = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        return flags | Qt.ItemFlag.ItemIsUserCheckable if index.column() == 0 else flags

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return a name or what one side says."""
        if not index.isValid():
            return None
        one = self._differences[index.row()]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.ToolTipRole):
            if index.column() == 0:
                return one.name
            side = index.column()
            return "; ".join(f"{field[0]} {_short(field[side])}" for field in one.fields)
        if role == Qt.ItemDataRole.CheckStateRole and index.column() == 0:
            return CHECKED if one.name in self.taken else Qt.CheckState.Unchecked
        return None

    def setData(  # noqa: N802
        self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole
    ) -> bool:
        """Take a coating from the file, or keep the book's."""
        if not index.isValid() or role != Qt.ItemDataRole.CheckStateRole:
            return False
        name = self._differences[index.row()].name
        if Qt.CheckState(value) is CHECKED:
            self.taken.add(name)
        else:
            self.taken.discard(name)
        self.dataChanged.emit(index, index, [role])
        return True

    def headerData(  # noqa: N802
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            names = (
                self.tr("Take from the file"),
                self.tr("Your book says"),
                self.tr("The file says"),
            )
            return names[section]
        return None


class ImportDialog(QDialog):
    """What comes in, and which of two voices wins."""

    def __init__(self, book: Book, exchange: Exchange, name: str, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Import {file}").format(file=name))
        self.resize(640, 420)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 14)
        column.setSpacing(10)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        take = self.buttons.button(QDialogButtonBox.StandardButton.Ok)
        take.setText(self.tr("Import"))
        self.household: dict[Household, QCheckBox] = {}
        self.model = DifferencesModel((), self)
        try:
            preview = import_file(book, exchange)
        except Refused as problem:
            column.addWidget(
                text(self.tr("It does not go into this book: {why}").format(why=problem))
            )
            take.setEnabled(False)
        else:
            self._fill(column, book, exchange, preview)
        column.addStretch(1)
        column.addWidget(self.buttons)
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)

    def _fill(self, column: QVBoxLayout, book: Book, exchange: Exchange, preview: Imported) -> None:
        names = [ours for _, ours in preview.projects]
        title = words.listed(names) or self.tr("Nothing that is not in your book already")
        column.addWidget(text(title, size=1.3, bold=True))
        if exchange.note:
            column.addWidget(text(exchange.note))
        for old, new in preview.projects:
            if old != new:
                line = self.tr("Your book has a project “{old}”; this one comes in as “{new}”.")
                column.addWidget(text(line.format(old=old, new=new)))
        if preview.already:
            line = self.tr("Already in your book, unchanged: {names}.")
            column.addWidget(text(line.format(names=words.listed(preview.already))))
        if preview.added:
            line = self.tr("Comes with it: {names}.")
            column.addWidget(text(line.format(names=words.listed(preview.added))))
        labels = {
            Household.BENCH_TIME: self.tr("Take the file's bench time in place of yours"),
            Household.ROOM: self.tr("Take the file's room and air in place of yours"),
            Household.GEAR: self.tr("Take the file's airbrushes in place of yours"),
        }
        for part, label in labels.items():
            box = QCheckBox(label)
            box.setChecked(not book.projects)
            self.household[part] = box
            column.addWidget(box)
        if preview.differences:
            self.model = DifferencesModel(preview.differences, self)
            column.addWidget(
                text(self.tr("These coatings are described differently; yours win unless checked:"))
            )
            table = QTableView()
            table.setModel(self.model)
            table.horizontalHeader().setStretchLastSection(True)
            table.verticalHeader().hide()
            table.setWordWrap(True)
            table.setColumnWidth(0, 190)
            table.setColumnWidth(1, 190)
            table.setAccessibleName(self.tr("Coatings that differ"))
            column.addWidget(table, 1)

    def choices(self) -> tuple[frozenset[Household], frozenset[str]]:
        """Return what to take from the file: parts of the household, and coatings."""
        theirs = frozenset(part for part, box in self.household.items() if box.isChecked())
        return theirs, frozenset(self.model.taken)


def _short(value: object) -> str:
    shown = str(value)
    return shown if len(shown) <= 60 else shown[:57] + "…"
