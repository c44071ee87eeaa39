"""Controls for hours, days, weekdays and numbers, and what they say as plain values."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable
from datetime import date, time

from PySide6.QtCore import QDate, QLocale, QSignalBlocker, Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QHBoxLayout,
    QLineEdit,
    QSizePolicy,
    QSpinBox,
    QToolButton,
    QWidget,
)

from app.window.forms.moment_fields import HOURS, ClockField, DateField
from app.window.labels import NarrowCombo
from app.window.target_size import roomy

UNSET = QDate(2000, 1, 1)  # a date that nobody has chosen yet


def clock_of(edit: ClockField) -> time:
    """Return the time that a control shows."""
    return time.fromisoformat(hours_of(edit))


def hours_of(edit: ClockField) -> str:
    """Return the time that a control shows as the values write it, "19:30"."""
    return edit.time().toString(HOURS)


def date_edit(name: str = "") -> DateField:
    """Return a control for a date, not set yet."""
    edit = DateField(name)
    set_day(edit, date(UNSET.year(), UNSET.month(), UNSET.day()))
    return edit


def set_day(edit: DateField, day: date) -> None:
    """Show a date without telling anybody."""
    blocked = QSignalBlocker(edit)
    edit.setDate(QDate(day.year, day.month, day.day))
    blocked.unblock()


def day_of(edit: DateField) -> date:
    """Return the date that a control shows."""
    read = edit.date()
    return date(read.year(), read.month(), read.day())


def tool(sign: str, name: str, act: Callable[[], object]) -> QToolButton:
    """Return a small button that shows a sign and is called by a name."""
    button = QToolButton()
    button.setText(sign)
    button.setToolTip(name)
    button.setAccessibleName(name)
    button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    roomy(button)
    button.clicked.connect(lambda _on=False: act())
    return button


def day_name(day: int, *, long: bool = False) -> str:
    """Return a weekday's name, 0 for Monday."""
    form = QLocale.FormatType.LongFormat if long else QLocale.FormatType.ShortFormat
    return QLocale().dayName(day + 1, form)


class Weekdays(QWidget):
    """Seven buttons; those that are down are the chosen weekdays.

    Signals
    -------
    toggled()
        Another choice was made.
    """

    toggled = Signal()

    def __init__(self, chosen: Collection[int] = ()) -> None:
        super().__init__()
        self.days: list[QToolButton] = []
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(2)
        for day in range(7):
            button = tool(day_name(day)[:2], day_name(day, long=True), lambda: None)
            button.setCheckable(True)
            button.setChecked(day in chosen)
            button.toggled.connect(lambda _on: self.toggled.emit())
            line.addWidget(button)
            self.days.append(button)
        line.addStretch(1)
        self.setFocusProxy(self.days[0])

    def chosen(self) -> frozenset[int]:
        """Return the weekdays that are down, 0 for Monday."""
        return frozenset(day for day, button in enumerate(self.days) if button.isChecked())


def number(
    value: float, low: float, high: float, *, decimals: int = 0, suffix: str = "", step: float = 1
) -> QDoubleSpinBox:
    """Return a control for a number with its unit.

    It takes a little more than the values do, so that they can say what they take.
    """
    box = QDoubleSpinBox()
    box.setDecimals(decimals)
    box.setRange(low, high)
    box.setSingleStep(step)
    box.setSuffix(suffix)
    box.setValue(value)
    box.setAccelerated(True)
    box.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
    return box


def whole(value: int, low: int, high: int, suffix: str = "") -> QSpinBox:
    """Return a control for a whole number with its unit."""
    box = QSpinBox()
    box.setRange(low, high)
    box.setSuffix(suffix)
    box.setValue(value)
    box.setAccelerated(True)
    box.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
    return box


class Maybe(QWidget):
    """A control that counts only while its box is ticked.

    Parameters
    ----------
    control
        What is enabled by the box.
    on
        Whether it counts at first.
    said
        What the box says.
    """

    def __init__(self, control: QWidget, on: bool, said: str) -> None:
        super().__init__()
        self.control = control
        self.box = QCheckBox(said)
        self.box.setChecked(on)
        control.setEnabled(on)
        self.box.toggled.connect(control.setEnabled)
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(self.box)
        line.addWidget(control)
        line.addStretch(1)
        self.setFocusProxy(self.box)

    @property
    def on(self) -> bool:
        """Tell whether the control counts."""
        return self.box.isChecked()

    def setAccessibleName(self, name: str) -> None:
        """Name the box and the control alike."""
        super().setAccessibleName(name)
        self.box.setAccessibleName(f"{name}: {self.box.text()}")
        self.control.setAccessibleName(name)


def choice(entries: Iterable[tuple[str, object]], chosen: object = None) -> QComboBox:
    """Return a control for one of several; each is what it says and what it stands for."""
    box = NarrowCombo(16)
    for said, value in entries:
        box.addItem(said, value)
        if value == chosen:
            box.setCurrentIndex(box.count() - 1)
    box.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    box.setMinimumContentsLength(16)
    return box


def line(value: str, least: int = 220) -> QLineEdit:
    """Return a control for a few words."""
    edit = QLineEdit(value)
    edit.setMinimumWidth(least)
    return edit
