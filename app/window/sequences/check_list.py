"""A column of boxes to tick, for things that are chosen by name."""

from __future__ import annotations

from collections.abc import Collection, Iterable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QListWidget, QListWidgetItem

from app.window.chosen_rows import TargetRows
from app.window.target_size import TARGET

MOST_LINES = 9


class Checks(QListWidget):
    """Names with boxes; the space bar ticks the one with the keys.

    Signals
    -------
    ticked()
        A box was ticked, or is no more.
    """

    ticked = Signal()

    def __init__(
        self,
        entries: Iterable[tuple[str, object]],
        chosen: Collection[object],
        lines: int = MOST_LINES,
    ) -> None:
        super().__init__()
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for said, value in entries:
            item = QListWidgetItem(said)
            item.setToolTip(said)
            item.setData(Qt.ItemDataRole.UserRole, value)
            item.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            on = value in chosen
            item.setCheckState(Qt.CheckState.Checked if on else Qt.CheckState.Unchecked)
            self.addItem(item)
        self.setSpacing(1)
        if self.count():
            self.setCurrentRow(0)
        self._frame_boxes()
        self.setItemDelegate(TargetRows(self))
        line = max(TARGET, self.fontMetrics().height() + 6) + 2
        self.setMinimumHeight(line * min(lines, max(2, self.count())) + 6)
        self.itemChanged.connect(lambda _item: self.ticked.emit())

    def _frame_boxes(self) -> None:
        """Have the boxes framed so that they are seen on a dark ground (`palette.box_palette`)."""
        palette = self.palette()
        soft = palette.color(QPalette.ColorRole.PlaceholderText)
        palette.setColor(QPalette.ColorRole.Window, soft)
        self.setPalette(palette)

    def chosen(self) -> tuple[object, ...]:
        """Return what is ticked, in order."""
        items = (self.item(row) for row in range(self.count()))
        return tuple(
            item.data(Qt.ItemDataRole.UserRole)
            for item in items
            if item.checkState() is Qt.CheckState.Checked
        )

    def show_only(self, wanted: str) -> None:
        """Show what holds every word of ``wanted``; what is hidden keeps its tick."""
        parts = wanted.casefold().split()
        for row in range(self.count()):
            said = self.item(row).text().casefold()
            self.item(row).setHidden(not all(part in said for part in parts))

    def tick_shown(self, on: bool) -> None:
        """Tick every box that is shown, or none of these."""
        state = Qt.CheckState.Checked if on else Qt.CheckState.Unchecked
        for row in range(self.count()):
            if not self.item(row).isHidden():
                self.item(row).setCheckState(state)

    def tick(self, value: object, on: bool = True) -> None:
        """Tick a box, or take its tick away."""
        for row in range(self.count()):
            if self.item(row).data(Qt.ItemDataRole.UserRole) == value:
                state = Qt.CheckState.Checked if on else Qt.CheckState.Unchecked
                self.item(row).setCheckState(state)
