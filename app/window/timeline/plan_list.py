"""The plan as a list below the strip: session by session, put into words a little at a time."""

from __future__ import annotations

import time
from collections.abc import Iterable, Iterator

from PySide6.QtCore import QSize, Qt, QTimer
from PySide6.QtWidgets import QHeaderView, QTreeView

from app.window.chosen_rows import mark_chosen_rows
from app.window.timeline.outline import OutlineNode
from app.window.timeline.tree import OutlineModel
from planner.values.plan import PassKey

LIST_SECONDS = 0.02  # how long the window may be kept from other things by it
WIDE = (96, 270)  # the first columns [pixels]


class PlanList(QTreeView):
    """A tree that keeps its open lines and the one that is chosen."""

    def __init__(self) -> None:
        super().__init__()
        self.outline = OutlineModel(self)
        self.setModel(self.outline)
        mark_chosen_rows(self)
        self.setAccessibleName(self.tr("The timeline as a list"))
        self.setAlternatingRowColors(True)
        self.setUniformRowHeights(True)
        # Lines are as high as the first, which has no swatch.
        self.setIconSize(QSize(12, 12))
        self.setFrameShape(QTreeView.Shape.NoFrame)
        self.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        header = self.header()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        header.setStretchLastSection(True)
        self._key: PassKey | None = None
        self._lines: Iterator[OutlineNode] = iter(())
        self._made: list[OutlineNode] = []
        self._go_on_soon = QTimer(self)
        self._go_on_soon.setSingleShot(True)
        self._go_on_soon.setInterval(0)
        self._go_on_soon.timeout.connect(self._go_on)

    def begin(self, lines: Iterable[OutlineNode]) -> None:
        """Show other lines once they are all there."""
        self._lines, self._made = iter(lines), []
        self._go_on_soon.stop()
        self._go_on()

    def _go_on(self) -> None:
        """Put more of the list into words, and show it when it is whole."""
        until = time.monotonic() + LIST_SECONDS
        for node in self._lines:
            self._made.append(node)
            if time.monotonic() > until:
                self._go_on_soon.start()
                return
        self._show(tuple(self._made))

    def _show(self, nodes: tuple[OutlineNode, ...]) -> None:
        first = self.outline.rowCount() == 0
        opened = self._opened()
        self.outline.show_nodes(nodes)
        for row in range(self.outline.rowCount()):
            index = self.outline.index(row, 0)
            if first or self.outline.data(index) in opened:
                self.expand(index)
        if first:
            for column, wide in enumerate(WIDE):
                self.setColumnWidth(column, wide)
        if self._key is not None:
            self.select(self._key)

    def _opened(self) -> set[str]:
        rows = (self.outline.index(row, 0) for row in range(self.outline.rowCount()))
        return {self.outline.data(index) for index in rows if self.isExpanded(index)}

    def select(self, key: PassKey | None) -> None:
        """Choose the line of a pass, now and in what is shown later."""
        self._key = key
        if key is not None and self.outline.key_at(self.currentIndex()) != key:
            index = self.outline.index_of(key)
            self.setCurrentIndex(index)
            self.scrollTo(index)
