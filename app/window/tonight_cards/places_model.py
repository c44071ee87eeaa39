"""Places to tick as a table: a row for each model, a column for each place, and one for all."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from enum import Enum
from typing import Any
from zoneinfo import ZoneInfo

from PySide6.QtCore import (
    QAbstractTableModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
    Signal,
)

from app.service.model_faces import Face
from app.window import reasons, words
from app.window.fill_amounts import fill_words
from planner.tonight import DryingFilm, PlacesBlock, WorkRow
from planner.values.moment import minute_of
from planner.values.plan import Cause, PassKey
from planner.values.project import Logged

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
STATE = Qt.ItemDataRole.UserRole
Check = Qt.CheckState
LONG = 9  # letters of a place's name from which it is broken into two lines


class Cell(Enum):
    """How a place stands."""

    TO_DO = "to do"
    NEXT = "next"
    DONE = "done"
    LATER = "opens later"
    BEGUN = "begun"


@dataclass(frozen=True)
class Progress:
    """What the logbook has of the work of an evening.

    Attributes
    ----------
    entries
        Entries by pass, where there are any.
    next_key
        The pass that comes first of those not done, None for none.
    loggable
        Tells whether a row can be noted as done: its evening runs, it is its last piece.
    faces
        What the models look like by it, by project and model.
    wet
        The film that is waited for on each place, by pass and place.
    """

    now: int
    zone: ZoneInfo
    entries: dict[PassKey, Logged] = field(default_factory=dict)
    next_key: PassKey | None = None
    loggable: Callable[[WorkRow], bool] = lambda _row: False
    faces: Mapping[tuple[str, str], Face] = field(default_factory=dict)
    wet: Mapping[tuple[PassKey, str], DryingFilm] = field(default_factory=dict)

    def over(self, row: WorkRow) -> bool:
        """Tell whether a row was done; work under way is not over."""
        entry = self.entries.get(row.key)
        return row.logged and (entry is None or entry.end is not None)

    def begun(self, row: WorkRow) -> bool:
        """Tell whether a row was begun and is not done."""
        return not self.over(row) and row.key in self.entries

    def can_be_done(self, row: WorkRow) -> bool:
        """Tell whether a row can be noted as done."""
        return not self.over(row) and (self.loggable(row) or self.begun(row))

    def ready(self, rows: Iterable[WorkRow]) -> list[PassKey]:
        """Return the passes of rows that can be noted as done."""
        return list(dict.fromkeys(row.key for row in rows if self.can_be_done(row)))

    def open_spots(self, rows: Iterable[WorkRow]) -> list[tuple[PassKey, str]]:
        """Return the places of rows that are not done yet."""
        return [
            (row.key, place)
            for row in rows
            if not self.over(row)
            for place in row.places
            if place not in self.ticked(row)
        ]

    def ticked(self, row: WorkRow) -> frozenset[str]:
        """Return the places of a row that are done."""
        if self.over(row):
            return frozenset(row.places)
        entry = self.entries.get(row.key)
        return frozenset(entry.ticked if entry else ())


class PlacesModel(QAbstractTableModel):
    """The places of one block.

    Signals
    -------
    ticked(list[tuple[PassKey, str]], bool)
        Places were ticked off, or not after all.
    done(PassKey), taken_back(PassKey)
        A whole row was done; it was not begun or done after all.
    load_done(list[WorkRow])
        All of the rows were done.
    """

    ticked = Signal(list, bool)
    done = Signal(object)
    load_done = Signal(list)
    taken_back = Signal(object)

    def __init__(self, block: PlacesBlock, progress: Progress, parent: QObject) -> None:
        super().__init__(parent)
        self._block, self._progress = block, progress
        self._asked: dict[tuple[PassKey, str], bool] = {}  # ticks that no plan shows yet

    @property
    def block(self) -> PlacesBlock:
        """What is shown."""
        return self._block

    @property
    def all_column(self) -> int:
        """The column that stands for a whole row."""
        return len(self._block.columns)

    def show_block(self, block: PlacesBlock, progress: Progress) -> None:
        """Show how the same work stands now."""
        self._block, self._progress = block, progress
        self.forget_asked()

    def forget_asked(self) -> None:
        """Show what the logbook has, whatever was clicked."""
        self._asked.clear()
        last = self.index(self.rowCount() - 1, self.all_column)
        self.dataChanged.emit(self.index(0, 0), last)
        self.headerDataChanged.emit(Qt.Orientation.Vertical, 0, self.rowCount() - 1)

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of models."""
        return 0 if parent.isValid() else len(self._block.rows)

    def columnCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of places, and one for all."""
        return 0 if parent.isValid() else len(self._block.columns) + 1

    def row_at(self, index: Index) -> WorkRow | None:
        """Return the work of a row."""
        return self._block.rows[index.row()] if index.isValid() else None

    def face_at(self, section: int) -> Face | None:
        """Return what the model of a row looks like."""
        key = self._block.rows[section].key
        return self._progress.faces.get((key.project, key.model))

    def over(self, row: WorkRow) -> bool:
        """Tell whether a row was done."""
        return self._progress.over(row)

    def begun(self, row: WorkRow) -> bool:
        """Tell whether a row was begun and is not done."""
        return self._progress.begun(row)

    def can_be_done(self, row: WorkRow) -> bool:
        """Tell whether a row can be noted as done."""
        return self._progress.can_be_done(row)

    def cell(self, index: Index) -> Cell:
        """Return how a place stands, or a whole row."""
        row = self._block.rows[index.row()]
        progress = self._progress
        ticked = self._ticked(row)
        if progress.over(row):
            return Cell.DONE
        if index.column() == self.all_column:
            return Cell.BEGUN if progress.begun(row) else Cell.TO_DO
        place = self._block.columns[index.column()]
        if place in ticked:
            return Cell.DONE
        if row.key == progress.next_key and place == self._first_open(row, ticked):
            return Cell.NEXT
        waits = row.reason.cause is Cause.DRYING and row.start > progress.now
        return Cell.LATER if waits and not progress.begun(row) else Cell.TO_DO

    def _ticked(self, row: WorkRow) -> frozenset[str]:
        """Return the places that are ticked, those just clicked as well."""
        known = set(self._progress.ticked(row))
        for (key, place), on in self._asked.items():
            if key == row.key:
                (known.add if on else known.discard)(place)
        return frozenset(known)

    def _ask(self, spots: list[tuple[PassKey, str]], *, on: bool) -> None:
        self._asked.update(dict.fromkeys(spots, on))
        self.dataChanged.emit(self.index(0, 0), self.index(self.rowCount() - 1, self.all_column))
        self.ticked.emit(spots, on)

    def tick(self, indexes: list[QModelIndex], *, on: bool) -> None:
        """Tick the places among cells, or take that back."""
        spots = self._open_spots(indexes, on=on)
        if spots:
            self._ask(spots, on=on)

    def _first_open(self, row: WorkRow, ticked: frozenset[str]) -> str:
        return next((place for place in row.places if place not in ticked), "")

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return the check mark of a place, and what is said of it."""
        if not index.isValid():
            return None
        state = self.cell(index)
        if role == STATE:
            return state
        if role == Qt.ItemDataRole.CheckStateRole:
            if state is Cell.BEGUN:
                return Check.PartiallyChecked
            return Check.Checked if state is Cell.DONE else Check.Unchecked
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self._spoken(index, state)
        if role == Qt.ItemDataRole.ToolTipRole:
            return self._tip(index, state)
        return None

    def _spoken(self, index: Index, state: Cell) -> str:
        row = self._block.rows[index.row()]
        return self.tr("{place}, {model}: {state}").format(
            place=self._place_words(index.column()),
            model=row.key.model,
            state=cell_word(state),
        )

    def _tip(self, index: Index, state: Cell) -> str:
        row = self._block.rows[index.row()]
        zone, now = self._progress.zone, self._progress.now
        told = [self._spoken(index, state)]
        told.append(
            self.tr("{start}, {length}: {work}").format(
                start=words.clock(row.start, zone),
                length=words.span(row.minutes),
                work=words.listed([coat.coating for coat in row.coats])
                or words.stage_word(row.stage),
            )
        )
        spot = "" if index.column() == self.all_column else self._block.columns[index.column()]
        film = self._progress.wet.get((row.key, spot))
        if film is not None and film.opens is not None:
            told.append(
                self.tr("then wet: {state} {time}").format(
                    state=words.state_word(film.state.value) if film.state else self.tr("ready"),
                    time=words.when(film.opens, zone, now),
                )
            )
        if state is not Cell.DONE:
            told.append(reasons.reason_sentence(row.reason, self._progress.zone, row.start))
        elif index.column() == self.all_column:
            told.append(self.tr("Click, or Delete, takes it back."))
        return "\n".join(told)

    def _place_words(self, column: int) -> str:
        if column == self.all_column:
            return self.tr("all of it")
        part, _, spot = self._block.columns[column].partition("/")
        return self.tr("{place} of {part}").format(place=spot, part=part) if spot else part

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return part and place above a column, time and model before a row."""
        if orientation is Qt.Orientation.Horizontal:
            return self._column_head(section, role)
        row = self._block.rows[section]
        name = self._block.name_of(row)
        if row.key.coat > 1:
            name = self.tr("{model}, coat {n}").format(model=name, n=row.key.coat)
        if row.pieces > 1:
            name = self.tr("{model}, part {n} of {count}").format(
                model=name, n=row.piece, count=row.pieces
            )
        entry = self._progress.entries.get(row.key)
        begun = self._progress.begun(row)
        if begun:
            name = self.tr("{model} · begun").format(model=name)
        at = words.clock(row.start, self._progress.zone)
        if role == Qt.ItemDataRole.DisplayRole:
            return f"{at}  {name}"
        if role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleTextRole):
            told = self.tr("{start}, {length}: {work}").format(
                start=at,
                length=words.span(row.minutes),
                work=reasons.key_name(row.key),
            )
            lines = [told]
            if begun and entry is not None:
                since = words.when(
                    minute_of(entry.start, up=False), self._progress.zone, self._progress.now
                )
                lines.append(self.tr("begun {time}").format(time=since))
            lines += [words.capital(fill_words(coat.load)) for coat in row.coats if coat.load]
            return "\n".join([*lines, f"{at}  {name}"])
        return None

    def _column_head(self, section: int, role: int) -> Any:
        if section == self.all_column:
            head, tip = self.tr("all"), self.tr("Click to note every row as done")
        else:
            part, _, spot = self._block.columns[section].partition("/")
            head = f"{part}\n{in_two_lines(spot)}" if spot else part
            tip = self.tr("{place}: click to tick it on every model").format(
                place=self._place_words(section)
            )
        if role == Qt.ItemDataRole.DisplayRole:
            return head
        if role == Qt.ItemDataRole.ToolTipRole:
            return f"{tip}\n{head}"
        if role == Qt.ItemDataRole.AccessibleTextRole:
            return self._place_words(section)
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Return that a place can be chosen and ticked."""
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable

    def _open_spots(self, indexes: list[QModelIndex], *, on: bool) -> list[tuple[PassKey, str]]:
        """Return the places among cells that a tick, or its taking back, would change."""
        found = []
        for index in indexes:
            row = self._block.rows[index.row()]
            if index.column() == self.all_column or self.over(row):
                continue
            place = self._block.columns[index.column()]
            if (place in self._ticked(row)) is not on:
                found.append((row.key, place))
        return found

    def turn(self, index: Index) -> None:
        """Tick a place, or take it back; the last column notes a whole row, or takes it back."""
        row = self._block.rows[index.row()]
        if index.column() == self.all_column:
            if self.over(row):
                self.taken_back.emit(row.key)
            elif self.can_be_done(row):
                self.done.emit(row.key)
            else:
                self._ask([(row.key, place) for place in row.places], on=True)
        elif not self.over(row):
            on = self.cell(index) is not Cell.DONE
            place = self._block.columns[index.column()]
            self._ask([(row.key, place)], on=on)

    def turn_column(self, column: int) -> None:
        """Tick a place on every model, or take that back where all have it; the last notes all."""
        if column == self.all_column:
            self.load_done.emit(list(self._block.rows))
            return
        cells = [self.index(number, column) for number in range(self.rowCount())]
        self.tick(cells, on=bool(self._open_spots(cells, on=True)))

    def take_back(self, index: Index) -> None:
        """Take a whole row back that was begun or done."""
        row = self.row_at(index)
        if row is not None and (self.over(row) or self.begun(row)):
            self.taken_back.emit(row.key)


def in_two_lines(name: str) -> str:
    """Return a long name broken at the space nearest to its middle."""
    spaces = [at for at, letter in enumerate(name) if letter == " "]
    if len(name) < LONG or not spaces:
        return name
    at = min(spaces, key=lambda at: abs(at - len(name) / 2))
    return f"{name[:at]}\n{name[at + 1 :]}"


def cell_word(state: Cell) -> str:
    """Return the word for how a place stands."""
    told = {
        Cell.TO_DO: QCoreApplication.translate("PlacesModel", "to do"),
        Cell.NEXT: QCoreApplication.translate("PlacesModel", "next"),
        Cell.DONE: QCoreApplication.translate("PlacesModel", "done"),
        Cell.LATER: QCoreApplication.translate("PlacesModel", "opens later"),
        Cell.BEGUN: QCoreApplication.translate("PlacesModel", "begun"),
    }
    return told[state]
