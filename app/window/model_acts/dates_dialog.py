"""Dates and priorities of every model in one list, with when the plan finishes each."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from PySide6.QtCore import QDate, Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QGridLayout,
    QLineEdit,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.service.build_edits.models import set_early, set_model_target, set_model_weight
from app.service.edits import Edit
from app.window import words
from app.window.forms.controls import whole
from app.window.forms.moment_reading import read_day
from app.window.labels import MessageLabel, text
from app.window.session import Session
from app.window.target_size import roomy
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.model import Model
from planner.values.moment import moment_of

HIGH = 520


@dataclass(frozen=True)
class _Line:
    key: ModelKey
    target: QLineEdit
    weight: QWidget
    early: QCheckBox
    done: QWidget


class DatesDialog(QDialog):
    """A line for each model; every change is made at once and can be undone."""

    def __init__(self, session: Session, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Dates and priorities"))
        self._session = session
        self.lines: list[_Line] = []
        self.message = MessageLabel()
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.button(QDialogButtonBox.StandardButton.Close).setText(self.tr("Close"))
        buttons.button(QDialogButtonBox.StandardButton.Close).setAutoDefault(False)
        buttons.rejected.connect(self.reject)
        inner = QWidget()
        self._grid = QGridLayout(inner)
        self._grid.setColumnStretch(0, 1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QScrollArea.Shape.NoFrame)
        area.setWidget(inner)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 14, 18, 12)
        column.addWidget(
            text(
                self.tr(
                    "A model without a date counts by that of its project. Weight says how much "
                    "a day late of it weighs against a day of another."
                ),
                size=0.95,
            )
        )
        column.addWidget(area, 1)
        column.addWidget(self.message)
        column.addWidget(buttons)
        self._fill()
        self.resize(680, min(HIGH, 150 + 40 * len(self.lines)))
        session.pictured.connect(self._tell_ends)  # by name: it ends with the dialog
        if self.lines:
            self.lines[0].target.setFocus()

    def _fill(self) -> None:
        tr, grid = self.tr, self._grid
        heads = (tr("Model"), tr("Finish by"), tr("Weight"), tr("Early"), tr("By the plan"))
        for at, head in enumerate(heads):
            grid.addWidget(text(head, bold=True, wrap=False), 0, at)
        book = self._session.book
        for project in book.projects if book else ():
            if project.active:
                for model in project.models:
                    self._add(ModelKey(project.name, model.name), model)
        grid.setRowStretch(len(self.lines) + 1, 1)
        self._tell_ends()

    def _add(self, key: ModelKey, model: Model) -> None:
        row = len(self.lines) + 1
        target = QLineEdit(words.day(model.target) if model.target else "")
        target.setMaxLength(40)
        target.setPlaceholderText(self.tr("no date"))
        target.setAccessibleName(self.tr("{model}: finish by").format(model=key.model))
        weight = whole(model.weight, 1, 1000)
        weight.setKeyboardTracking(False)
        weight.setAccessibleName(self.tr("{model}: weight").format(model=key.model))
        early = QCheckBox()
        roomy(early)
        early.setChecked(model.early)
        early.setAccessibleName(self.tr("{model}: as early as it can be").format(model=key.model))
        early.setToolTip(self.tr("As early as it can be; others fill the gaps"))
        done = text("", wrap=False)
        name = text(key.model)
        for at, widget in enumerate((name, target, weight, early, done)):
            self._grid.addWidget(widget, row, at)
        target.editingFinished.connect(lambda: self._dated(key, target))
        weight.valueChanged.connect(
            lambda value: self._make(lambda book: set_model_weight(book, key, value))
        )
        early.toggled.connect(lambda on: self._make(lambda book: set_early(book, key, on)))
        self.lines.append(_Line(key, target, weight, early, done))

    def _dated(self, key: ModelKey, field: QLineEdit) -> None:
        typed = field.text().strip()
        now = moment_of(self._session.now, self._session.zone).date()
        read = read_day(typed, QDate(now.year, now.month, now.day)) if typed else None
        if typed and read is None:
            self.message.say(
                self.tr("“{text}” is no day; write it as 24.12. or 2031-12-24").format(
                    text=typed[:40]
                )
            )
            return
        target = date(read.year(), read.month(), read.day()) if read is not None else None
        field.setText(words.day(target) if target else "")
        self._make(lambda book: set_model_target(book, key, target))

    def _make(self, make: Callable[[Book], Edit]) -> None:
        refused = self._session.attempt(make)
        self.message.say(refused.mend if refused else "")

    def _tell_ends(self) -> None:
        """Say when the plan finishes each model."""
        picture = self._session.picture
        if picture is None:
            return
        zone, now = picture.zone, picture.plan.now
        ends: dict[ModelKey, int] = {}
        for placed in picture.plan.placements:
            key = ModelKey(placed.key.project, placed.key.model)
            ends[key] = max(ends.get(key, 0), placed.end)
        stuck = {ModelKey(one.key.project, one.key.model) for one in picture.plan.unplaced}
        for line in self.lines:
            if line.key in stuck:
                told = self.tr("has no place")
            else:
                told = words.when(ends[line.key], zone, now) if line.key in ends else ""
            line.done.setText(told)  # type: ignore[attr-defined]
