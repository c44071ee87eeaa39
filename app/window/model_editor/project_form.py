"""The form of a project: dates, weight, which vehicle goes first, a note."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QDate, Signal
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QCheckBox, QPlainTextEdit

from app.service import edits as usual
from app.service import wishes
from app.service.build_edits import models, names
from app.service.build_edits.advice import MOST_AT_ONCE
from app.window.forms.live_controls import (
    beside,
    calm,
    choice,
    fill,
    line,
    number,
    put,
    tick,
)
from app.window.forms.moment_fields import DateField
from app.window.labels import text
from app.window.model_editor.fields import EditorForm
from planner.values.book import Book
from planner.values.lookup import project_of
from planner.values.project import Project


class Note(QPlainTextEdit):
    """Some lines of text.

    Signals
    -------
    left()
        The keys went elsewhere.
    """

    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setTabChangesFocus(True)
        self.setFixedHeight(self.fontMetrics().height() * 4)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Tell that writing has come to an end."""
        super().focusOutEvent(event)
        self.left.emit()


def dated(changed: Callable[[], object]) -> tuple[QCheckBox, DateField]:
    """Return a box and the date that it switches on."""
    field = DateField()
    field.setDate(QDate.currentDate().addDays(28))
    field.day_changed.connect(lambda _date: changed())
    calm(field)
    return tick("", changed), field


def date_of(box: QCheckBox, field: DateField) -> date | None:
    """Return the date if its box is ticked."""
    read = field.date()
    return date(read.year(), read.month(), read.day()) if box.isChecked() else None


def put_date(box: QCheckBox, field: DateField, value: date | None) -> None:
    """Show a date, or none."""
    put(box, value is not None)
    field.setEnabled(value is not None)
    if value is not None:
        put(field, value)


class ProjectForm(EditorForm):
    """Name, dates, weight, which vehicle goes first, and a note."""

    def __init__(self) -> None:
        super().__init__()
        tr = self.tr
        self._project = ""
        self.name = line(self._rename, most=120)
        self.by, self.target = dated(self._target)
        self.from_, self.begins = dated(self._begins)
        self.by.setText(tr("Finish by"))
        self.from_.setText(tr("Not before"))
        self.weight = number(Project, "weight", self._weight)
        self.weight.setToolTip(
            tr("How much a day late of this project weighs against a day of another")
        )
        self.pilot = choice(self._pilot)
        self.pilot.setToolTip(
            tr("One vehicle is finished ahead of the batch, so that it shows what to do better")
        )
        self.note = Note()
        self.note.left.connect(self._note)
        self.word = text("")
        self.row(tr("Project"), self.name, "name")
        for box, field in ((self.by, self.target), (self.from_, self.begins)):
            field.setAccessibleName(box.text())
            self.wide(beside(box, field))
        self.row(tr("Weight"), self.weight, "weight")
        self.row(tr("One vehicle first"), self.pilot, "pilot")
        self.row(tr("Note"), self.note, "note")
        self.wide(self.word)
        self.end()

    def show_project(self, book: Book, name: str) -> None:
        """Show a project of the book."""
        project = project_of(book, name)
        with self.filling(project) as fresh:
            self._project = name
            if not fresh:
                return
            put(self.name, name)
            put_date(self.by, self.target, project.target)
            put_date(self.from_, self.begins, project.begins)
            put(self.weight, project.weight)
            entries = [(model.name, model.name) for model in project.models]
            fill(self.pilot, [(self.tr("none"), ""), *entries], project.pilot)
            if self.note.toPlainText() != project.note:
                self.note.setPlainText(project.note)
            many = len(project.models) > MOST_AT_ONCE and not project.pilot
            self.word.setText(
                self.tr(
                    "{n} models in one batch get tedious, and a mistake is made {n} times. "
                    "Let one go first, or make two projects. (common practice, no source)"
                ).format(n=len(project.models))
                if many
                else ""
            )
            self.word.setVisible(many)

    def _rename(self) -> None:
        old, new = self._project, self.name.text().strip()
        if new != old:
            self.ask(lambda book: names.rename_project(book, old, new))

    def _target(self) -> None:
        name, target = self._project, date_of(self.by, self.target)
        self.ask(lambda book: usual.set_target(book, name, target))

    def _begins(self) -> None:
        name, begins = self._project, date_of(self.from_, self.begins)
        self.ask(lambda book: models.set_begins(book, name, begins))

    def _weight(self) -> None:
        name, weight = self._project, self.weight.value()
        self.ask(lambda book: usual.set_weight(book, name, weight))

    def _pilot(self) -> None:
        name, pilot = self._project, self.pilot.currentData() or ""
        self.ask(lambda book: wishes.set_pilot(book, name, pilot))

    def _note(self) -> None:
        name, note = self._project, self.note.toPlainText()
        if name:
            self.ask(lambda book: models.set_note(book, name, note))
