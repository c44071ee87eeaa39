"""How long each coating takes to each state, as a table."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from PySide6.QtCore import (
    QAbstractTableModel,
    QCoreApplication,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    Qt,
)
from PySide6.QtGui import QIcon

from app.window import words
from app.window.glossary import state_meaning
from app.window.labels import swatch_icon
from app.window.message_translation import translated
from app.window.room.drying_times import CoatingTimes
from planner.air import Fitness, fitness
from planner.cure import shown_minutes
from planner.cure.drying_path import StateTimes
from planner.values.coating import State

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
STATES = tuple(State)


class TimesModel(QAbstractTableModel):
    """Coatings down, states across; a cell says how long, its tip when and how sure."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[CoatingTimes, ...] = ()
        self._laid = 0
        self._zone = ZoneInfo("UTC")
        self._icons: dict[str, QIcon] = {}

    def show_times(self, rows: tuple[CoatingTimes, ...], laid: int, zone: ZoneInfo) -> None:
        """Show other times."""
        same = [row.coating.name for row in rows] == [row.coating.name for row in self._rows]
        if not same:
            self.beginResetModel()
        self._rows, self._laid, self._zone = rows, laid, zone
        if not same:
            self.endResetModel()
        elif rows:
            self.dataChanged.emit(self.index(0, 0), self.index(len(rows) - 1, len(STATES)))

    def times_at(self, index: Index) -> CoatingTimes | None:
        """Return the coating of a line."""
        return self._rows[index.row()] if index.isValid() else None

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of coatings."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of states and one for the name."""
        return 0 if parent.isValid() else len(STATES) + 1

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        row = self.times_at(index)
        if row is None:
            return None
        if index.column() == 0:
            return self._name(row, role)
        state_times = next(time for time in row.states if time.state is STATES[index.column() - 1])
        if role == Qt.ItemDataRole.DisplayRole:
            if state_times.late is None:
                return self.tr("never")
            return words.short_span(shown_minutes(state_times.late - self._laid))
        if role == Qt.ItemDataRole.ToolTipRole:
            return self._tip(row, state_times)
        if role == Qt.ItemDataRole.TextAlignmentRole:
            return Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        return None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is not Qt.Orientation.Horizontal:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            if section == 0:
                return self.tr("Coating")
            return _broken(words.state_word(STATES[section - 1].value))
        if role == Qt.ItemDataRole.TextAlignmentRole:
            side = Qt.AlignmentFlag.AlignRight if section else Qt.AlignmentFlag.AlignLeft
            return side | Qt.AlignmentFlag.AlignVCenter
        if role == Qt.ItemDataRole.ToolTipRole and section:
            state = STATES[section - 1]
            return f"{words.state_word(state.value)}: {state_meaning(state)}"
        return None

    def _name(self, row: CoatingTimes, role: int) -> Any:
        if role == Qt.ItemDataRole.DisplayRole:
            worst = fitness(row.advice)
            if worst is Fitness.GO:
                return row.coating.name
            sign = self.tr("not now") if worst is Fitness.NO_GO else self.tr("with care")
            return self.tr("⚠ {name} ({sign})").format(name=row.coating.name, sign=sign)
        if role == Qt.ItemDataRole.ToolTipRole:
            told = [
                f"{translated(advisory.reason)} ({translated(advisory.source)})"
                for advisory in row.advice
            ]
            family = QCoreApplication.translate("family", row.coating.family.value)
            return "\n".join([row.coating.name, family, *told])
        if role == Qt.ItemDataRole.DecorationRole:
            swatch = row.coating.swatch
            if swatch not in self._icons:
                self._icons[swatch] = swatch_icon(swatch)
            return self._icons[swatch]
        return None

    def _tip(self, row: CoatingTimes, state_times: StateTimes) -> str:
        state = words.state_word(state_times.state.value)
        if state_times.late is None or state_times.early is None:
            return self.tr("{coating} is never {state} in this air").format(
                coating=row.coating.name, state=state
            )
        return self.tr(
            "{coating}: {state} between {early} and {late}\n"
            "from {minutes:.0f} min at 23 °C and 50 % RH ({status}: {source})"
        ).format(
            coating=row.coating.name,
            state=state,
            early=words.when(state_times.early, self._zone, self._laid),
            late=words.when(state_times.late, self._zone, self._laid),
            minutes=state_times.figure.minutes,
            status=QCoreApplication.translate("status", state_times.figure.status.value),
            source=translated(state_times.figure.source),
        )


def _broken(state: str) -> str:
    """Return a state's name on two lines, broken at its last hyphen."""
    head, hyphen, tail = state.rpartition("-")
    return f"{head}{hyphen}\n{tail}" if hyphen else state
