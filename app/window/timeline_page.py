"""The Timeline view: the strip, and below it the same as a list, with the chosen piece."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QHeaderView,
    QSplitter,
    QToolButton,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.aside import finish_line
from app.window.details import Details
from app.window.labels import text
from app.window.palette import Colours
from app.window.picture import Picture
from app.window.timeline.outline import outline
from app.window.timeline.tree import OutlineModel
from app.window.timeline.view import TimelineView
from planner.values.plan import PassKey


class TimelinePage(QWidget):
    """Strip, list and details, kept in step with each other."""

    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.strip = TimelineView()
        self.model = OutlineModel(self)
        self.tree = QTreeView()
        self.tree.setModel(self.model)
        self.tree.setAccessibleName(self.tr("The timeline as a list"))
        self.tree.setAlternatingRowColors(True)
        self.tree.setUniformRowHeights(True)
        self.tree.setFrameShape(QTreeView.Shape.NoFrame)
        header = self.tree.header()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Interactive)
        header.setStretchLastSection(True)
        self.details = Details()
        self._summary = text("", wrap=True)
        self._title = text(self.tr("Timeline"), size=1.9, bold=True)
        self.below = QSplitter(Qt.Orientation.Horizontal)
        self.below.addWidget(self.tree)
        self.below.addWidget(self.details)
        self.below.setSizes([600, 270])
        self.below.setChildrenCollapsible(False)
        self.splitter = QSplitter(Qt.Orientation.Vertical)
        self.splitter.addWidget(self.strip)
        self.splitter.addWidget(self.below)
        self.splitter.setStretchFactor(0, 1)
        self.splitter.setSizes([460, 190])
        self.splitter.setCollapsible(0, False)
        self.setFocusProxy(self.strip)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 14, 0, 0)
        column.setSpacing(8)
        column.addLayout(self._head())
        column.addWidget(self.splitter, 1)
        self._picture: Picture | None = None
        self._list_later = QTimer(self)
        self._list_later.setSingleShot(True)
        self._list_later.setInterval(0)
        self._list_later.timeout.connect(self._show_list)
        self.strip.chosen.connect(self._chosen_on_strip)
        self.strip.opened.connect(lambda _key: self.details.setFocus())
        self.tree.selectionModel().currentChanged.connect(self._chosen_in_list)

    def _head(self) -> QHBoxLayout:
        line = QHBoxLayout()
        line.setContentsMargins(24, 0, 18, 0)
        words_ = QVBoxLayout()
        words_.setSpacing(2)
        words_.addWidget(self._title)
        words_.addWidget(self._summary)
        line.addLayout(words_, 1)
        for sign, name, act in (
            ("−", self.tr("Smaller (−)"), self.strip.zoom_out),
            ("+", self.tr("Larger (+)"), self.strip.zoom_in),
            ("↔", self.tr("Fit the whole plan (0)"), self.strip.zoom_to_fit),
            (self.tr("now"), self.tr("Go to now"), self.strip.show_now),
        ):
            button = QToolButton()
            button.setText(sign)
            button.setToolTip(name)
            button.setAccessibleName(name)
            button.setMinimumSize(32, 28)
            button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            button.clicked.connect(act)
            line.addWidget(button, 0, Qt.AlignmentFlag.AlignBottom)
        return line

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.strip.set_colours(colours)
        self.details.set_colours(colours)

    def show_picture(self, picture: Picture) -> None:
        """Show another plan; choice, zoom and open lines stay where they can."""
        first = self._picture is None
        self._picture = picture
        self.strip.show_strip(picture.strip)
        if first:
            ahead = [p for p in picture.strip.pieces if p.interval.start >= picture.now]
            soonest = min(ahead, key=lambda piece: piece.interval.start, default=None)
            self.strip.choose(soonest.key if soonest else None)
            self.strip.show_now()
            self.strip.verticalScrollBar().setValue(0)
        self.details.show_picture(picture)
        self._summary.setText(self._said(picture))
        self._list_later.start()

    def _show_list(self) -> None:
        """Show the plan as a list; the strip was painted first, for it is looked at first."""
        picture = self._picture
        if picture is None:
            return
        first = self.model.rowCount() == 0
        key = self.strip.chosen_key
        opened = self._opened()
        self.model.show_nodes(outline(picture.strip))
        for row in range(self.model.rowCount()):
            index = self.model.index(row, 0)
            if first or self.model.data(index) in opened:
                self.tree.expand(index)
        if first:
            self.tree.setColumnWidth(0, 96)
            self.tree.setColumnWidth(1, 270)
        if key is not None:
            self._select(key)

    def set_now(self, now: int) -> None:
        """Let the shade reach ``now``."""
        self.strip.set_now(now)

    def _opened(self) -> set[str]:
        rows = (self.model.index(row, 0) for row in range(self.model.rowCount()))
        return {self.model.data(index) for index in rows if self.tree.isExpanded(index)}

    def _said(self, picture: Picture) -> str:
        zone, plan = picture.zone, picture.plan
        told = [
            self.tr("{project}: {line}").format(
                project=name, line=finish_line(plan, picture, name, minute, zone)
            )
            for name, minute in plan.finishes
        ]
        cost = plan.cost
        told.append(
            self.tr("{stretches}, {minutes} min of loading and cleaning").format(
                stretches=words.count(
                    cost.stretches,
                    self.tr("{n} stretch at the bench"),
                    self.tr("{n} stretches at the bench"),
                ),
                minutes=cost.setup_minutes,
            )
        )
        if plan.unplaced:
            told.append(
                words.count(
                    len(plan.unplaced),
                    self.tr("{n} piece of work has no place yet"),
                    self.tr("{n} pieces of work have no place yet"),
                )
            )
        return " · ".join(told)

    def _chosen_on_strip(self, key: PassKey | None) -> None:
        self.details.show_key(key)
        if key is not None:
            self._select(key)
        self.chosen.emit(key)

    def _chosen_in_list(self, index: QModelIndex) -> None:
        key = self.model.key_at(index)
        if key is not None and key != self.strip.chosen_key:
            self.strip.choose(key)

    def _select(self, key: PassKey) -> None:
        if self.model.key_at(self.tree.currentIndex()) != key:
            index = self.model.index_of(key)
            self.tree.setCurrentIndex(index)
            self.tree.scrollTo(index)
