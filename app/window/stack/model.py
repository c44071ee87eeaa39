"""The coats of a place as a table, the topmost first, for everyone who reads."""

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

from app.service.hard_clear import HardClear
from app.window import words
from app.window.labels import swatch_icon
from app.window.stack.coat_rows import CoatRow, PlaceStack
from planner.layers.overcoat_table import LayerVerdict

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()

SIGNS = {
    LayerVerdict.SOUND: "○",
    LayerVerdict.WAIT: "◁",
    LayerVerdict.ADVICE: "△",
    LayerVerdict.PREPARE: "△",
    LayerVerdict.ORDER: "△",
    LayerVerdict.BARRIER: "✕",
    LayerVerdict.NEVER: "✕",
}


def verdict_word(verdict: LayerVerdict) -> str:
    """Return a verdict in words."""
    return QCoreApplication.translate("verdict", verdict.value)


def verdict_line(coat: CoatRow, zone: ZoneInfo, now: int, *, with_state: bool = True) -> str:
    """Return what is thought of laying a coat where it lies, in one short line."""
    if coat.verdict is not LayerVerdict.WAIT:
        return verdict_word(coat.verdict)
    at = words.tr("never") if coat.opens is None else words.when(coat.opens, zone, now)
    if coat.state is None or not with_state:
        return words.tr("from {time}").format(time=at)
    return words.tr("{state} from {time}").format(state=words.state_word(coat.state.value), time=at)


def coat_name(coat: CoatRow) -> str:
    """Return what the coat is of, and which of several."""
    if coat.coats < 2:
        return coat.name
    return words.tr("{name}, coat {coat} of {coats}").format(
        name=coat.name, coat=coat.key.coat, coats=coat.coats
    )


def place_name(place: str) -> str:
    """Return a place as a person says it: "hull, upper works"."""
    return place.replace("/", ", ")


def hard_line(hard_clear: HardClear, zone: ZoneInfo, now: int) -> str:
    """Return from when on a model may get a hard clear, and what holds it."""
    if hard_clear.opens is None:
        return words.tr("No date for a hard clear, because of {coating} on {place}").format(
            coating=hard_clear.coating, place=place_name(hard_clear.place)
        )
    form = words.tr("A hard clear at the earliest: {time}, because of {coating} on {place}")
    return form.format(
        time=words.when(hard_clear.opens, zone, now),
        coating=hard_clear.coating,
        place=place_name(hard_clear.place),
    )


def coat_time(coat: CoatRow, zone: ZoneInfo, now: int) -> str:
    """Return when the coat is laid, or was."""
    if coat.start is None:
        return words.tr("no place")
    at = words.when(coat.start, zone, now)
    return words.tr("laid {time}").format(time=at) if coat.logged else at


class CoatsModel(QAbstractTableModel):
    """Coats down, the topmost first; what, stage, when, verdict across."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._coats: tuple[CoatRow, ...] = ()
        self._zone, self._now = ZoneInfo("UTC"), 0

    def show_stack(self, stack: PlaceStack | None, zone: ZoneInfo, now: int) -> None:
        """Show another place."""
        self.beginResetModel()
        self._coats = tuple(reversed(stack.coats)) if stack else ()
        self._zone, self._now = zone, now
        self.endResetModel()

    def coat_at(self, index: Index) -> CoatRow | None:
        """Return the coat of a line."""
        return self._coats[index.row()] if index.isValid() else None

    def row_of(self, coat: CoatRow) -> int:
        """Return the line of a coat."""
        return self._coats.index(coat)

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of coats."""
        return 0 if parent.isValid() else len(self._coats)

    def columnCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of columns."""
        return 0 if parent.isValid() else 4

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        coat = self.coat_at(index)
        if coat is None:
            return None
        if role == Qt.ItemDataRole.DisplayRole:
            verdict = verdict_line(coat, self._zone, self._now)
            return (
                coat_name(coat),
                coat_time(coat, self._zone, self._now),
                f"{SIGNS[coat.verdict]} {verdict}",
                words.stage_word(coat.stage),
            )[index.column()]
        if role == Qt.ItemDataRole.ToolTipRole:
            return coat.why
        if role == Qt.ItemDataRole.DecorationRole and index.column() == 0:
            return swatch_icon(coat.swatch)
        return None

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            names = (
                self.tr("Coat"),
                self.tr("When"),
                self.tr("On the one below"),
                self.tr("Stage"),
            )
            return names[section]
        return None
