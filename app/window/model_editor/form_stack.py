"""The forms of the model editor, one in front: that of what is chosen in the tree."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property, partial
from typing import TypeVar

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QScrollArea, QStackedWidget, QWidget

from app.window.model_editor.bulk_form import ManyForm
from app.window.model_editor.fields import EditorForm
from app.window.model_editor.forms import ModelForm, PartForm, PlaceForm
from app.window.model_editor.nodes import Key, NodeKind
from app.window.model_editor.project_form import ProjectForm
from app.window.model_editor.step_form import StepForm
from planner.values.book import Book

ASIDE = 352  # least width of a form [pixels]
F = TypeVar("F", bound=EditorForm)


class FormStack(QStackedWidget):
    """A form for each kind of line; each is made when the first line of its kind is chosen.

    Signals
    -------
    wanted(EditorForm, Callable[[Book], Edit])
        A form asks for an edit.
    """

    wanted = Signal(object, object)

    def __init__(self) -> None:
        super().__init__()
        self._areas: dict[EditorForm, QScrollArea] = {}
        self.addWidget(QWidget())

    @cached_property
    def project(self) -> ProjectForm:
        """The form of a project."""
        return self._made(ProjectForm())

    @cached_property
    def model(self) -> ModelForm:
        """The form of a model."""
        return self._made(ModelForm())

    @cached_property
    def part(self) -> PartForm:
        """The form of a part."""
        return self._made(PartForm())

    @cached_property
    def place(self) -> PlaceForm:
        """The form of a place."""
        return self._made(PlaceForm())

    @cached_property
    def step(self) -> StepForm:
        """The form of a step."""
        return self._made(StepForm())

    @cached_property
    def many(self) -> ManyForm:
        """The form of several steps."""
        return self._made(ManyForm())

    def _made(self, form: F) -> F:
        form.wanted.connect(partial(self.wanted.emit, form))
        area = _scrolling(form)
        self._areas[form] = area
        self.addWidget(area)
        return form

    def show_line(self, book: Book | None, key: Key | None, steps: Sequence[Key]) -> None:
        """Show the form of a chosen line, or of several steps.

        Raises
        ------
        Refused
            If the line is no longer in the book.
        """
        if key is None or book is None:
            self.show_none()
        elif len(steps) > 1:
            self.many.show_steps(book, [step.spot for step in steps])
            self._front(self.many)
        elif key.kind is NodeKind.PROJECT:
            self.project.show_project(book, key.project)
            self._front(self.project)
        elif key.kind is NodeKind.STEP:
            self.step.show_step(book, key.spot)
            self._front(self.step)
        elif key.kind is NodeKind.PART:
            self.part.show_part(book, key.home, key.part)
            self._front(self.part)
        elif key.kind is NodeKind.PLACE:
            self.place.show_place(book, key.home, key.part, key.place)
            self._front(self.place)
        else:
            self.model.show_model(book, key.home)
            self._front(self.model)

    def show_none(self) -> None:
        """Show no form."""
        self.setCurrentIndex(0)

    def _front(self, form: EditorForm) -> None:
        self.setCurrentWidget(self._areas[form])

    def following(self, key: Key | None) -> Callable[[], Key] | None:
        """Return how to find a line again that its form may have given another name."""
        if key is None:
            return None
        if key.kind is NodeKind.STEP:
            name = self.step.id.text().strip()
            return lambda: Key(NodeKind.STEP, key.project, key.model, step=name)
        if key.kind is NodeKind.MODEL:
            name = self.model.name.text().strip()
            return lambda: Key(NodeKind.MODEL, key.project, name)
        if key.kind is NodeKind.PROJECT:
            name = self.project.name.text().strip()
            return lambda: Key(NodeKind.PROJECT, name)
        if key.kind is NodeKind.PART:
            name = self.part.name.text().strip()
            return lambda: Key(NodeKind.PART, key.project, key.model, part=name)
        if key.kind is NodeKind.PLACE:
            name = self.place.name.text().strip()
            return lambda: Key(NodeKind.PLACE, key.project, key.model, part=key.part, place=name)
        return None


def _scrolling(form: QWidget) -> QScrollArea:
    area = QScrollArea()
    area.setWidget(form)
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setMinimumWidth(ASIDE)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # its fields come into sight with the keys
    return area
