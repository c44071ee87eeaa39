"""What every form of a change has: its title, its fields, and how they are offered."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QSignalBlocker
from PySide6.QtWidgets import QComboBox, QDoubleSpinBox, QFormLayout, QSpinBox, QWidget

from app.service.what_if import TriedChange
from app.window.forms.moment_fields import ClockField
from planner.values.book import Book

HOURS = "HH:mm"


class ChangeForm(QWidget):
    """Fields of one kind of change."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.fields = QFormLayout(self)
        self.fields.setContentsMargins(0, 0, 0, 0)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        raise NotImplementedError

    def show_book(self, book: Book, now: int) -> None:
        """Offer what the book holds; what was chosen stays so where it can."""

    def change(self) -> TriedChange:
        """Return the change that the fields say."""
        raise NotImplementedError

    def name(self) -> str:
        """Return what the journal will call it."""
        raise NotImplementedError

    def box(self, label: str) -> QComboBox:
        """Add a list to choose from."""
        made = QComboBox()
        made.setAccessibleName(label)
        made.setMinimumContentsLength(22)
        made.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.fields.addRow(label, made)
        return made

    def clock(self, label: str, at: str) -> ClockField:
        """Add a time of day."""
        made = ClockField(at, label)
        self.fields.addRow(label, made)
        return made

    def number(self, label: str, low: int, high: int, value: int) -> QSpinBox:
        """Add a whole number."""
        made = QSpinBox()
        made.setRange(low, high)
        made.setValue(value)
        made.setAccessibleName(label)
        self.fields.addRow(label, made)
        return made

    def air(self) -> tuple[QDoubleSpinBox, QSpinBox]:
        """Add temperature and humidity."""
        warm = QDoubleSpinBox()
        warm.setRange(-10, 60)
        warm.setDecimals(1)
        warm.setSuffix(self.tr(" °C"))
        warm.setAccessibleName(self.tr("Temperature"))
        self.fields.addRow(self.tr("Temperature"), warm)
        damp = self.number(self.tr("Humidity"), 0, 100, 50)
        damp.setSuffix(self.tr(" % RH"))
        return warm, damp


def refill(box: QComboBox, options: list[tuple[str, Any]]) -> None:
    """Offer other things; what was chosen stays so where it is still there."""
    kept = box.currentData()
    values = [value for _, value in options]
    with QSignalBlocker(box):
        box.clear()
        for name, value in options:
            box.addItem(name, value)
        box.setCurrentIndex(values.index(kept) if kept in values else 0)


def models_of(book: Book, whole: str) -> list[tuple[str, tuple[str, str]]]:
    """Return every planned project as a whole, each followed by its models."""
    found: list[tuple[str, tuple[str, str]]] = []
    for project in book.projects:
        if project.active:
            found.append((whole.format(project=project.name), (project.name, "")))
            found += [(model.name, (project.name, model.name)) for model in project.models]
    return found
