"""The scenarios as a table, the plan as it is first."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QObject, QPersistentModelIndex, Qt

from app.service.what_if import PlanFigures
from app.window import words
from app.window.what_if.runner import Tried
from app.window.what_if.scenario_wording import cells, heads, remark

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()


class ScenarioModel(QAbstractTableModel):
    """A thin adapter over what the runner knows."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._present: PlanFigures | None = None
        self._tried: tuple[Tried, ...] = ()
        self._zone, self._now = ZoneInfo("UTC"), 0

    def show_tried(
        self, present: PlanFigures | None, tried: tuple[Tried, ...], zone: ZoneInfo, now: int
    ) -> None:
        """Show what is known; rows are only reset where they are others."""
        alike = [tried.scenario for tried in tried] == [tried.scenario for tried in self._tried]
        if not alike:
            self.beginResetModel()
        self._present, self._tried, self._zone, self._now = present, tried, zone, now
        if alike:
            last = self.index(self.rowCount() - 1, self.columnCount() - 1)
            self.dataChanged.emit(self.index(0, 0), last)
        else:
            self.endResetModel()

    def tried(self, row: int) -> Tried | None:
        """Return the scenario of a row, None for the plan as it is."""
        return self._tried[row - 1] if 1 <= row <= len(self._tried) else None

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of scenarios, and one for the plan as it is."""
        return 0 if parent.isValid() else 1 + len(self._tried)

    def columnCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of columns."""
        return 0 if parent.isValid() else len(heads())

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        if not index.isValid() or index.row() >= self.rowCount():
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            return self._cell(index.row(), index.column())
        if role == Qt.ItemDataRole.ToolTipRole:
            return self.remark(index.row()) or self._cell(index.row(), index.column())
        return None

    def remark(self, row: int) -> str:
        """Return what is to be said of a row beside its numbers."""
        tried = self.tried(row)
        if tried is None:
            return ""
        if tried.why:
            return tried.why
        told = remark(tried.outcome, self._present) if tried.outcome else ""
        return self.tr("{name}. {told}").format(name=words.capital(tried.scenario.name), told=told)

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return heads()[section]
        return None

    def _cell(self, row: int, column: int) -> str:
        tried = self.tried(row)
        outcome = tried.outcome if tried else self._present
        if column == 0:
            return words.capital(tried.scenario.name) if tried else self.tr("Present plan")
        if tried is not None and tried.why:
            return self.tr("cannot be") if column == 1 else ""
        if outcome is None:
            return self.tr("planning…") if column == 1 else ""
        against = self._present if tried else None
        told = cells(outcome, against, self._zone, self._now)[column - 1]
        if outcome.rough and column == 1:
            return self.tr("{told}, first result").format(told=told)
        return told
