"""Which place gets which coat of a step: colours across, places down, a tick where they meet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)
from PySide6.QtGui import QFont, QKeyEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.window.forms.live_controls import calm, choice, decimal, fill, number, put
from app.window.forms.row_list import FormRow, RowList
from app.window.target_size import roomy_rows
from planner.values.book import Book
from planner.values.coating import THINNERS
from planner.values.model import Model
from planner.values.step import Application, Step

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
MOST_LINES = 8


class CoatPlacesModel(QAbstractTableModel):
    """Places down, each part above its places; colours across, "no coat" last.

    A place has a tick in one column at most.

    Signals
    -------
    ticked()
        A person ticked something.
    """

    ticked = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: list[tuple[str, str]] = []
        self._columns: list[set[str]] = [set()]

    def show_places(self, model: Model, columns: Sequence[Sequence[str]]) -> None:
        """Show a model's places with the ticks of each column, as references."""
        self.beginResetModel()
        self._rows = []
        for part in model.parts:
            self._rows.append((part.name, ""))
            if len(part.places) > 1:
                self._rows += [(part.name, place.name) for place in part.places]
        self._parts = {
            part.name: [f"{part.name}/{place.name}" for place in part.places]
            for part in model.parts
        }
        self._columns = [
            {place for ref in column for place in model.places(ref)} for column in columns
        ]
        self.endResetModel()

    def first_ticked(self) -> int:
        """Return the first row with a tick, 0 if there is none."""
        rows, columns = range(len(self._rows)), range(len(self._columns))
        some = (
            row
            for row in rows
            if any(self._state(row, column) is not Qt.CheckState.Unchecked for column in columns)
        )
        return next(some, 0)

    def references(self, column: int, before: Sequence[str], model: Model) -> tuple[str, ...]:
        """Return the ticks of a column as references; as written ``before`` if they are alike."""
        chosen = self._columns[column]
        if {place for ref in before for place in model.places(ref)} == chosen:
            return tuple(before)
        found: list[str] = []
        for part, places in self._parts.items():
            inside = [place for place in places if place in chosen]
            found += [part] if inside == places else inside
        return tuple(found)

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of parts and places."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of colours, and one."""
        return 0 if parent.isValid() else len(self._columns)

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Return that every cell can be ticked."""
        flags = super().flags(index)
        return flags | Qt.ItemFlag.ItemIsUserCheckable if index.isValid() else flags

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return a cell's tick."""
        if not index.isValid():
            return None
        if role == Qt.ItemDataRole.CheckStateRole:
            return self._state(index.row(), index.column())
        if role == Qt.ItemDataRole.AccessibleTextRole:
            part, place = self._rows[index.row()]
            return f"{part} {place}, {self._head(index.column())}".replace(" ,", ",")
        return None

    def setData(self, index: Index, value: Any, role: int = Qt.ItemDataRole.EditRole) -> bool:
        """Tick a place, or all of a part; it leaves every other column."""
        if not index.isValid() or role != Qt.ItemDataRole.CheckStateRole:
            return False
        places = self._places(index.row())
        for column in self._columns:
            column.difference_update(places)
        if Qt.CheckState(value) is Qt.CheckState.Checked:
            self._columns[index.column()].update(places)
        last = self.index(len(self._rows) - 1, len(self._columns) - 1)
        self.dataChanged.emit(self.index(0, 0), last)
        self.ticked.emit()
        return True

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return the number of a colour, or the name of a part or place."""
        if orientation is Qt.Orientation.Horizontal:
            return self._head(section) if role == Qt.ItemDataRole.DisplayRole else None
        part, place = self._rows[section]
        if role == Qt.ItemDataRole.DisplayRole:
            return f"    {place}" if place else part
        if role == Qt.ItemDataRole.FontRole:
            font = QFont()
            font.setWeight(QFont.Weight.Normal if place else QFont.Weight.DemiBold)
            return font
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        return None

    def _head(self, column: int) -> str:
        return self.tr("no coat") if column == len(self._columns) - 1 else str(column + 1)

    def _places(self, row: int) -> list[str]:
        part, place = self._rows[row]
        return [f"{part}/{place}"] if place else self._parts[part]

    def _state(self, row: int, column: int) -> Qt.CheckState:
        places = self._places(row)
        inside = sum(place in self._columns[column] for place in places)
        if not inside:
            return Qt.CheckState.Unchecked
        whole = inside == len(places)
        return Qt.CheckState.Checked if whole else Qt.CheckState.PartiallyChecked


class CoatPlacesTable(QTableView):
    """The table, in which Tab leads out and Space ticks."""

    def __init__(self, model: CoatPlacesModel) -> None:
        super().__init__()
        self.setModel(model)
        self.setTabKeyNavigation(False)
        self.setAccessibleName(self.tr("Which place gets which coat"))
        header = self.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setHighlightSections(False)
        roomy_rows(self, self.fontMetrics().height() + 6)
        self.verticalHeader().setHighlightSections(False)

    def fit(self) -> None:
        """Be as high as a few lines."""
        lines = min(self.model().rowCount(), MOST_LINES)
        height = self.verticalHeader().defaultSectionSize() * lines
        self.setFixedHeight(height + self.horizontalHeader().sizeHint().height() + 6)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Tick a partly ticked part wholly by Space."""
        index = self.currentIndex()
        if event.key() == Qt.Key.Key_Space and index.isValid():
            role = Qt.ItemDataRole.CheckStateRole
            whole = Qt.CheckState(index.data(role)) is Qt.CheckState.Checked
            state = Qt.CheckState.Unchecked if whole else Qt.CheckState.Checked
            self.model().setData(index, state.value, role)
            return
        super().keyPressEvent(event)


class CoatLine(FormRow):
    """One colour of a step: what, how many coats, and on how much of its places."""

    def __init__(self, number_: int) -> None:
        super().__init__()
        self.label = QLabel(f"{number_}")
        self.coating = choice(self.changed.emit)
        self.coating.setAccessibleName(self.tr("Colour {n}").format(n=number_))
        self.coats = number(Application, "coats", self.changed.emit)
        self.coats.setPrefix("× ")
        self.coats.setAccessibleName(self.tr("Coats of colour {n}").format(n=number_))
        self.coats.setToolTip(self.tr("Thin coats, each dried before the next"))
        self.share = decimal(
            Application, "share", self.changed.emit, self.tr("covers the usual share"), 0
        )
        self.share.setPrefix(self.tr("covers "))
        self.share.setAccessibleName(self.tr("Share covered by colour {n}").format(n=number_))
        self.share.setToolTip(self.tr("How much of its places it covers; usual for the stage"))
        self.remove = self.cross(self.tr("Remove colour {n}").format(n=number_))
        top, below = QHBoxLayout(), QHBoxLayout()
        top.addWidget(self.label)
        top.addWidget(self.coating, 1)
        top.addWidget(self.remove)
        below.addSpacing(self.label.sizeHint().width() + 6)
        below.addWidget(self.coats)
        below.addWidget(self.share)
        below.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addLayout(top)
        column.addLayout(below)

    def show_coat(self, book: Book, coat: Application) -> None:
        """Show an application."""
        names = [coating.name for coating in book.coatings if coating.family not in THINNERS]
        names += [mix.name for mix in book.mixes]
        fill(self.coating, [(name, name) for name in names], coat.coating)
        put(self.coats, coat.coats)
        put(self.share, round((coat.share or 0) * 100))


class CoatsField(QWidget):
    """Colours of a step above, places below.

    Signals
    -------
    changed()
        Something is other now.
    """

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.lines = RowList(self._new, self.tr("Add a colour"), remove=self._remove)
        self._book: Book | None = None
        self._model: Model | None = None
        self._coats: tuple[Application, ...] = ()
        self._touches: tuple[str, ...] = ()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(4)
        self.lines.add.clicked.connect(self._add)
        self.places = CoatPlacesModel(self)
        self.places.ticked.connect(self.changed)
        self.table = CoatPlacesTable(self.places)
        calm(self.table)
        self._column.addWidget(self.lines)
        self._column.addWidget(self.table)

    def show_step(self, book: Book, model: Model, step: Step) -> None:
        """Show the coats of a step."""
        self._book, self._model = book, model
        self._show(step.applications, step.touches)

    def applied(self) -> tuple[tuple[Application, ...], tuple[str, ...]]:
        """Return applications and touched places as they stand; colours without a place go.

        Raises
        ------
        Refused
            If an application cannot be so.
        """
        assert self._model is not None
        found = []
        for number_, (old, line) in enumerate(zip(self._coats, self.lines.rows, strict=True)):
            places = self.places.references(number_, old.places, self._model)
            share = line.share.value() / 100 or None
            if old.share is not None and share == round(old.share * 100) / 100:
                share = old.share
            if places:
                found.append(
                    Application(
                        places=places,
                        coating=line.coating.currentData() or old.coating,
                        coats=line.coats.value(),
                        share=share,
                    )
                )
        bare = self.places.references(len(self.lines.rows), self._touches, self._model)
        return tuple(found), bare

    def _show(self, coats: tuple[Application, ...], touches: tuple[str, ...]) -> None:
        assert self._book is not None
        assert self._model is not None
        self._coats, self._touches = coats, touches
        for line, coat in zip(self.lines.put(len(coats)), coats, strict=True):
            line.show_coat(self._book, coat)
        here = self.table.currentIndex()
        spot = (here.row(), here.column())
        self.places.show_places(self._model, [*(coat.places for coat in coats), touches])
        self.table.fit()
        if spot[0] >= 0:
            self.table.setCurrentIndex(self.places.index(*spot))
        else:
            first = self.places.index(self.places.first_ticked(), 0)
            self.table.scrollTo(first, CoatPlacesTable.ScrollHint.PositionAtTop)

    def _add(self) -> None:
        """Show another colour; it becomes part of the step with its first place."""
        assert self._book is not None
        used = [coat.coating for coat in self._coats]
        names = [coating.name for coating in self._book.coatings if coating.family not in THINNERS]
        name = next((name for name in names if name not in used), names[0] if names else "")
        if not name:
            return
        coats, touches = self.applied()
        if len(coats) < len(self._coats):
            return  # one is there already that waits for a place
        free = replace(coats[0], coating=name) if coats else None
        new = free or Application(places=touches or ("?",), coating=name)
        self._coats = (*coats, new)
        line = self.lines.append()
        line.show_coat(self._book, new)
        assert self._model is not None
        columns: list[Sequence[str]] = [coat.places for coat in coats]
        self.places.show_places(self._model, [*columns, (), touches])
        line.coating.setFocus()

    def _new(self) -> CoatLine:
        line = CoatLine(len(self.lines.rows) + 1)
        line.changed.connect(self.changed)
        return line

    def _remove(self, line: CoatLine) -> None:
        coats, touches = self._coats, self._touches
        gone = coats[self.lines.rows.index(line)]
        left = tuple(coat for coat in coats if coat is not gone)
        if not left and not touches:
            touches = gone.places  # the step still works there
        self._show(left, touches)
        self.changed.emit()
