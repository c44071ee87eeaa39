"""Asks which places of a step shall have a step of their own."""

from __future__ import annotations

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QVBoxLayout, QWidget

from app.service.build_edits.locate import model_of, step_of
from app.window.labels import text
from app.window.model_editor.fields import CheckList
from planner.values.book import Book
from planner.values.keys import StepKey


class SplitDialog(QDialog):
    """The step's places, to be ticked."""

    def __init__(self, book: Book, at: StepKey, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Split by places"))
        model = model_of(book, at.home)
        step = step_of(model, at.step)
        places = dict.fromkeys(place for name in step.references() for place in model.places(name))
        self.list = CheckList(9)
        self.list.setAccessibleName(self.tr("Places that get a step of their own"))
        self.list.show_names([(name.replace("/", ", "), name) for name in places], ())
        self.list.ticked.connect(self._ticked)
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.addWidget(
            text(self.tr("Tick the places that shall have a step of their own, right behind."))
        )
        column.addWidget(self.list)
        column.addWidget(self.buttons)
        self._ticked()
        self.list.setFocus()

    def places(self) -> frozenset[str]:
        """Return the places that were ticked."""
        return frozenset(self.list.chosen())

    def _ticked(self) -> None:
        some = 0 < len(self.list.chosen()) < self.list.count()
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(some)
