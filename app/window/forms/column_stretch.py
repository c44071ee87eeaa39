"""Columns that fill their view."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QHeaderView, QTableView, QTreeView


class Breadth(QObject):
    """Keeps columns as wide as their words, and shares what is left of the view among them.

    Lines then reach to the edge, and numbers keep apart.  Call `share` after the first column
    has got a width of its own.
    """

    def __init__(self, view: QTableView | QTreeView) -> None:
        super().__init__(view)
        self._view = view
        header = self._header()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        header.setStretchLastSection(False)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(0)
        self._later.timeout.connect(self.share)
        model = view.model()
        model.modelReset.connect(self._later.start)
        model.rowsInserted.connect(self._later.start)
        model.rowsRemoved.connect(self._later.start)
        model.dataChanged.connect(self._later.start)
        view.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Share anew when the view has another size."""
        if event.type() in (QEvent.Type.Resize, QEvent.Type.FontChange):
            self._later.start()
        return super().eventFilter(watched, event)

    def _header(self) -> QHeaderView:
        """Return the header as Qt has it now: it is Qt's own, and never kept."""
        view = self._view
        return view.header() if isinstance(view, QTreeView) else view.horizontalHeader()

    def share(self) -> None:
        """Give every column what its words need, and as much more as all others get."""
        header = self._header()
        header.resizeSections(QHeaderView.ResizeMode.ResizeToContents)
        left = header.viewport().width() - header.length()
        count = header.count()
        if count and left > 0:
            for at in range(count):
                more = left // count + (left % count if at == count - 1 else 0)
                header.resizeSection(at, header.sectionSize(at) + more)
