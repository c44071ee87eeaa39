"""The air of a location, to be changed and seen to matter at once."""

from __future__ import annotations

from PySide6.QtCore import QSignalBlocker, QTimer
from PySide6.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QFormLayout,
    QHBoxLayout,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.service import edits
from app.window.labels import MessageLabel, NarrowCombo, field_label, text
from app.window.session import Session
from planner.cure import Cure
from planner.values.book import Book
from planner.values.moment import moment_of
from planner.values.room import COLDEST_C, HOTTEST_C, Location, Reading

SETTLE_MS = 90  # several steps of a spin box within this time are one edit


class AirPanel(QWidget):
    """Temperature and humidity of a location.

    Still air is set for all day.  Where the air changes over the day, what
    the gauge shows is noted as a reading, which corrects the rest of today.

    Parameters
    ----------
    across
        Whether its fields stand beside each other, without a heading.
    """

    def __init__(
        self, session: Session, parent: QWidget | None = None, *, across: bool = False
    ) -> None:
        super().__init__(parent)
        self._session = session
        self.location = NarrowCombo(10)
        self.temperature = QDoubleSpinBox()
        self.temperature.setRange(COLDEST_C, HOTTEST_C)
        self.temperature.setDecimals(1)
        self.temperature.setSuffix(self.tr(" °C"))
        self.humidity = QSpinBox()
        self.humidity.setRange(0, 100)
        self.humidity.setSuffix(self.tr(" % RH"))
        self.scope = NarrowCombo(10)
        self.scope.addItem(self.tr("today, from now on"), "reading")
        self.scope.addItem(self.tr("every day, all day"), "always")
        for combo in (self.location, self.scope):
            combo.setSizeAdjustPolicy(
                QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
            )
            combo.setMinimumContentsLength(10)
        self.message = MessageLabel()
        self._lay_out(across)
        self._settle = QTimer(self)
        self._settle.setSingleShot(True)
        self._settle.setInterval(SETTLE_MS)
        self._settle.timeout.connect(self._apply)
        for box in (self.temperature, self.humidity):
            box.setKeyboardTracking(False)
            box.valueChanged.connect(self._settle.start)
        self.location.currentIndexChanged.connect(self._show_location)

    def _lay_out(self, across: bool) -> None:
        fields: tuple[tuple[str, QWidget], ...] = (
            (self.tr("Whe&re"), self.location),
            (self.tr("Tem&perature"), self.temperature),
            (self.tr("Humidit&y"), self.humidity),
            (self.tr("H&olds"), self.scope),
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        if across:
            line = QHBoxLayout()
            line.setSpacing(8)
            for name, field in fields:
                line.addWidget(field_label(name, field))
                line.addWidget(field)
                line.addSpacing(10)
            line.addStretch(1)
            column.addLayout(line)
        else:
            form = QFormLayout()
            form.setContentsMargins(0, 0, 0, 0)
            for name, field in fields:
                plain = name.replace("&", "")  # the letters belong to the strip above
                form.addRow(field_label(plain, field), field)
            column.addWidget(text(self.tr("Air"), bold=True))
            column.addLayout(form)
        for name, field in fields:
            field.setAccessibleName(name.replace("&", ""))
        column.addWidget(self.message)

    def show_book(self) -> None:
        """Show the air of the open book."""
        book = self._session.book
        if book is None or self._settle.isActive():
            return
        names = [location.name for location in book.room.locations]
        shown = [self.location.itemText(at) for at in range(self.location.count())]
        if names != shown:
            blocked = QSignalBlocker(self.location)
            self.location.clear()
            self.location.addItems(names)
            blocked.unblock()
        self._show_location()

    def _chosen(self, book: Book) -> Location:
        return book.room.location(self.location.currentText())

    def _show_location(self) -> None:
        book = self._session.book
        if book is None:
            return
        location = self._chosen(book)
        air = Cure(book.room, self._session.zone).air(location.name).at(self._session.now)
        blocked = [
            QSignalBlocker(narrow_combo)
            for narrow_combo in (self.temperature, self.humidity, self.scope)
        ]
        self.temperature.setValue(round(air.temperature_c, 1))
        self.humidity.setValue(round(air.humidity_pct))
        changing = is_changing(location)
        self.scope.setCurrentIndex(0 if changing else 1)
        self.scope.setEnabled(changing)
        del blocked
        self.message.say("")

    def _apply(self) -> None:
        book = self._session.book
        if book is None:
            return
        location = self._chosen(book).name
        warm, damp = self.temperature.value(), float(self.humidity.value())
        if self.scope.currentData() == "always":
            refused = self._session.attempt(lambda book: edits.set_air(book, location, warm, damp))
        else:
            reading = Reading(
                at=moment_of(self._session.now, self._session.zone),
                temperature_c=warm,
                humidity_pct=damp,
                location=location,
            )
            refused = self._session.attempt(lambda book: edits.add_reading(book, reading))
        self.message.say(refused.mend if refused else "")


def is_changing(location: Location) -> bool:
    """Tell whether the air of a location changes over the day or the week."""
    return len(location.workdays) > 1 or bool(location.weekends)
