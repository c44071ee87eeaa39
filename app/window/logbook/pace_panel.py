"""What the logbook teaches: minutes of this person, drying of this room; with numbers."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from app.service.pace import Lesson
from app.window import words
from app.window.labels import text
from app.window.palette import LIGHT, Colours
from planner.pace.drying import DryingLine
from planner.pace.minutes import Estimate, PaceLine

SHOWN = 8
WORTH = 0.02  # a smaller change of a factor is not worth an edit


class PacePanel(QWidget):
    """One line for each stage and tool, and for each coating, with a button to agree.

    Signals
    -------
    minutes_wanted(Stage, Tool), drying_wanted(str), all_wanted()
        What was learned is to be applied.
    """

    minutes_wanted = Signal(object, object)
    drying_wanted = Signal(str)
    all_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._lesson: Lesson | None = None
        self.colours = LIGHT
        self.every = QPushButton(self.tr("App&ly all that is sure"))
        self.every.clicked.connect(self.all_wanted)
        self.buttons: list[QPushButton] = []
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(text(self.tr("Pace"), size=1.2, bold=True))
        self.summary = text("")
        column.addWidget(self.summary)
        self._grid_holder: QWidget | None = None
        self._column = column
        foot = QHBoxLayout()
        foot.addWidget(self.every)
        foot.addStretch(1)
        column.addLayout(foot)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.colours = colours
        if self._lesson is not None:
            lesson, self._lesson = self._lesson, None
            self.show_lesson(lesson)

    def show_lesson(self, lesson: Lesson) -> None:
        """Show what was learned."""
        if lesson == self._lesson:
            return
        self._lesson = lesson
        if self._grid_holder is not None:
            self._column.removeWidget(self._grid_holder)
            self._grid_holder.hide()
            self._grid_holder.deleteLater()
        self.buttons = []
        holder = self._grid_holder = QWidget()
        grid = QGridLayout(holder)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setColumnStretch(1, 1)
        for row, line in enumerate(lesson.minutes[:SHOWN]):
            self._line(grid, row, *minutes_told(line), self._apply_minutes(line))
        for row, drying in enumerate(lesson.drying[:SHOWN], start=len(lesson.minutes)):
            self._line(grid, row, *drying_told(drying), self._apply_drying(drying))
        self._column.insertWidget(2, holder)
        empty = not lesson.minutes and not lesson.drying
        self.summary.setText(
            self.tr("Nothing yet: log work with its real minutes, and look at films.")
            if empty
            else self.tr("Applied only when you agree; can be undone.")
        )
        self.every.setEnabled(bool(lesson.sure_minutes or lesson.sure_drying))

    def _line(self, grid: QGridLayout, row: int, name: str, told: str, button: QPushButton) -> None:
        grid.addWidget(text(name, bold=True), row, 0)
        grid.addWidget(text(told, colour=self.colours.soft), row, 1)
        button.setAccessibleName(self.tr("Apply: {what}").format(what=name))
        grid.addWidget(button, row, 2)
        self.buttons.append(button)

    def _apply_minutes(self, line: PaceLine) -> QPushButton:
        button = QPushButton(self.tr("Apply"))
        button.setEnabled(abs(line.estimate.factor - 1) >= WORTH)
        button.clicked.connect(partial(self.minutes_wanted.emit, line.work.stage, line.work.tool))
        return button

    def _apply_drying(self, line: DryingLine) -> QPushButton:
        button = QPushButton(self.tr("Apply"))
        button.setEnabled(abs(line.estimate.factor - line.now) >= WORTH)
        button.clicked.connect(partial(self.drying_wanted.emit, line.coating))
        return button


def minutes_told(line: PaceLine) -> tuple[str, str]:
    """Return a stage and tool, and what was learned of it."""
    name = words.tr("{stage}, {tool}").format(
        stage=words.capital(words.stage_word(line.work.stage)),
        tool=words.tool_word(line.work.tool),
    )
    told = words.tr("{passes}: planned {planned} min, worked {worked} min; likely {range}").format(
        passes=words.count(line.passes, words.tr("{n} pass"), words.tr("{n} passes")),
        planned=line.planned,
        worked=line.worked,
        range=_range(line.estimate, sure=line.estimate.sure),
    )
    if abs(line.agreed - 1) >= WORTH:
        told += words.tr("; {percent} % applied before").format(percent=round(line.agreed * 100))
    return name, told


def drying_told(line: DryingLine) -> tuple[str, str]:
    """Return a coating, and what was learned of its drying here."""
    told = words.tr("{looks}: likely {range} of the stated times; reckoned with {now} %").format(
        looks=words.count(line.looks, words.tr("{n} look"), words.tr("{n} looks")),
        range=_range(line.estimate, sure=line.sure),
        now=round(line.now * 100),
    )
    return line.coating, told


def _range(estimate: Estimate, *, sure: bool) -> str:
    """Return a factor with its interval of 95 %, and whether that says anything yet."""
    told = words.tr("{percent} % ({low}–{high} %)").format(
        percent=round(estimate.factor * 100),
        low=round(estimate.low * 100),
        high=round(estimate.high * 100),
    )
    return told if sure else words.tr("{range}, not sure yet").format(range=told)
