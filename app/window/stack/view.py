"""The Coat stack view on screen."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QHBoxLayout,
    QHeaderView,
    QScrollArea,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from app.window.forms.tables import lines_table
from app.window.labels import NarrowCombo, field_label, text
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.stack.coat_rows import CoatRow, PlaceStack, stacks
from app.window.stack.findings import FindingsPanel
from app.window.stack.model import SIGNS, CoatsModel, hard_line, place_name
from app.window.stack.section import LEAST_WIDTH, CrossSection


class StackView(QWidget):
    """A place's films, its table, and the findings of the model.

    Signals
    -------
    mend_wanted(Finding)
        A mend shall be applied.
    """

    mend_wanted = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._picture: PlanSnapshot | None = None
        self._stacks: tuple[PlaceStack, ...] = ()
        self.which = NarrowCombo()
        self.place = NarrowCombo(18)
        self.hard = text("", size=0.92)
        self.section = CrossSection()
        self.model = CoatsModel(self)
        self.table = lines_table(self.tr("Coats of this place, the topmost first"), self.model)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.ResizeToContents)
        header.setStretchLastSection(True)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.findings = FindingsPanel()
        self._lay_out()
        self.which.currentIndexChanged.connect(self._show_model)
        self.place.currentIndexChanged.connect(self._show_place)
        self.section.chosen.connect(self._chosen_in_drawing)
        self.table.selectionModel().currentRowChanged.connect(self._chosen_in_table)
        self.findings.mend_wanted.connect(self.mend_wanted)

    def _lay_out(self) -> None:
        head = QVBoxLayout()
        head.setContentsMargins(24, 0, 18, 0)
        head.addWidget(text(self.tr("Coat stack"), size=1.9, bold=True))
        line = QHBoxLayout()
        line.setSpacing(8)
        line.addWidget(field_label(self.tr("&Model"), self.which))
        line.addWidget(self.which)
        line.addSpacing(12)
        line.addWidget(field_label(self.tr("P&lace"), self.place))
        line.addWidget(self.place)
        line.addStretch(1)
        head.addLayout(line)
        head.addWidget(self.hard)
        self.splitter = QSplitter(Qt.Orientation.Vertical)
        self.area = QScrollArea()
        self.area.setWidget(self.section)
        self.area.setWidgetResizable(True)
        self.area.setFrameShape(QScrollArea.Shape.NoFrame)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the table leads to every film
        self.area.setMinimumWidth(LEAST_WIDTH + self.area.verticalScrollBar().sizeHint().width())
        self.splitter.addWidget(self.area)
        self.splitter.addWidget(self.table)
        self.splitter.setSizes([430, 190])
        self.splitter.setChildrenCollapsible(False)
        body = QHBoxLayout()
        body.setSpacing(6)
        body.addWidget(self.splitter, 1)
        body.addWidget(self.findings)
        self.setFocusProxy(self.table)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 14, 0, 0)
        column.setSpacing(8)
        column.addLayout(head)
        column.addLayout(body, 1)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.section.set_colours(colours)
        self.findings.set_colours(colours)
        if self._picture is not None:
            self._show_model()

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show another book; model and place stay if they can."""
        self._picture = picture
        names = [
            (project.name, model.name)
            for project in picture.book.projects
            if project.active
            for model in project.models
        ]
        before = self.which.currentData()
        blocked = QSignalBlocker(self.which)
        self.which.clear()
        for project, model in names:
            self.which.addItem(model, (project, model))
        if before in names:
            self.which.setCurrentIndex(names.index(before))
        blocked.unblock()
        self._show_model()

    def shown(self) -> PlaceStack | None:
        """Return the stack on screen."""
        at = self.place.currentIndex()
        return self._stacks[at] if 0 <= at < len(self._stacks) else None

    def _show_model(self) -> None:
        picture, chosen = self._picture, self.which.currentData()
        if picture is None or chosen is None:
            return
        project = picture.book.project(chosen[0])
        before = self.place.currentData()
        self._stacks = stacks(picture, project, project.model(chosen[1]))
        names = [stack.place for stack in self._stacks]
        blocked = QSignalBlocker(self.place)
        self.place.clear()
        for stack in self._stacks:
            self.place.addItem(f"{SIGNS[stack.worst]} {place_name(stack.place)}", stack.place)
        if before in names:
            self.place.setCurrentIndex(names.index(before))
        blocked.unblock()
        self.findings.show_findings(
            tuple(finding for finding in picture.findings if finding.model in (chosen[1], "")),
            tuple(choice for choice in picture.choices if choice.model == chosen[1]),
        )
        self._show_hard(chosen)
        self._show_place()

    def _show_hard(self, chosen: tuple[str, str]) -> None:
        """Tell from when on the model may get a hard clear; nothing if no film of it is slow."""
        assert self._picture is not None
        mine = [
            clear for clear in self._picture.hard_clears if (clear.project, clear.model) == chosen
        ]
        self.hard.setVisible(bool(mine))
        self.hard.setText(
            "\n".join(
                hard_line(hard_clear, self._picture.zone, self._picture.now) for hard_clear in mine
            )
        )

    def _show_place(self) -> None:
        picture = self._picture
        if picture is None:
            return
        self.section.show_stack(self.shown(), picture.zone, picture.now)
        self.model.show_stack(self.shown(), picture.zone, picture.now)

    def _chosen_in_drawing(self, coat: CoatRow) -> None:
        self.table.selectRow(self.model.rows.index(coat))

    def _chosen_in_table(self, index: QModelIndex) -> None:
        coat = self.model.row_at(index)
        self.section.choose(coat)
        if coat is not None:
            self.area.ensureVisible(0, self.section.middle_of(coat), 0, 40)
