"""Controls that tell each change at once, and are filled without telling anybody."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from enum import StrEnum
from typing import Any, TypeVar

from PySide6.QtCore import QDate, QEvent, QObject, QSignalBlocker, Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QDoubleSpinBox,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QWidget,
)

from app.window.forms.moment_fields import DateField
from app.window.message_translation import enum_word, translated
from planner.values.field import Field, fields_of
from planner.values.message import Message

E = TypeVar("E", bound=StrEnum)
TIP = Qt.ItemDataRole.ToolTipRole


class _Calm(QObject):
    """Keeps the wheel from changing a field that has not the keys: it scrolls the form."""

    def eventFilter(self, field: QObject, event: QEvent) -> bool:
        """Pass the wheel on to what lies behind."""
        wheel = event.type() == QEvent.Type.Wheel and isinstance(field, QWidget)
        if wheel and not field.hasFocus():  # type: ignore[attr-defined]
            event.ignore()
            return True
        return False


def calm(field: QWidget) -> None:
    """Let a field ignore the wheel unless it has the keys."""
    field.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
    field.installEventFilter(_Calm(field))


def line(changed: Callable[[], object], *, most: int = 200) -> QLineEdit:
    """Return a line of text."""
    field = QLineEdit()
    field.setMaxLength(most)
    field.editingFinished.connect(changed)
    return field


def unit_suffix(field: Field) -> str:
    """Return what stands behind a number of a field, "" for nothing."""
    unit = "%" if field.percent else translated(Message(field.unit))
    return f" {unit}" if unit else ""


def number(
    kind: type,
    name: str,
    changed: Callable[[], object],
    none: str = "",
    low: int | None = None,
) -> QSpinBox:
    """Return a control for a field that is a whole number, with its range and unit.

    It begins at ``low`` where that is not the field's own least, and says ``none`` there.
    """
    field = QSpinBox()
    told = fields_of(kind)[name].field
    field.setRange(int(told.least) if low is None else low, int(told.most))
    _number(field, told, none)
    field.valueChanged.connect(lambda _value: changed())
    return field


def decimal(
    kind: type,
    name: str,
    changed: Callable[[], object],
    none: str = "",
    low: float | None = None,
) -> QDoubleSpinBox:
    """Return a control for a field that is a fraction; see `number`."""
    field = QDoubleSpinBox()
    told = fields_of(kind)[name].field
    scale = 100 if told.percent else 1
    field.setRange(told.least * scale if low is None else low, told.most * scale)
    field.setDecimals(told.decimals)
    _number(field, told, none)
    field.valueChanged.connect(lambda _value: changed())
    return field


def _number(field: QSpinBox | QDoubleSpinBox, told: Field, none: str) -> None:
    field.setKeyboardTracking(False)
    if none:
        field.setSpecialValueText(none)
    field.setSuffix(unit_suffix(told))
    calm(field)


def tick(words_: str, changed: Callable[[], object], tip: str = "") -> QCheckBox:
    """Return a box to tick."""
    field = QCheckBox(words_)
    field.setToolTip(tip)
    field.toggled.connect(lambda _on: changed())
    return field


def choice(changed: Callable[[], object]) -> QComboBox:
    """Return an empty list to choose from."""
    field = QComboBox()
    field.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    field.setMinimumContentsLength(10)
    calm(field)
    field.currentIndexChanged.connect(lambda _row: changed())
    return field


def enum_choice(
    kinds: type[E],
    changed: Callable[[], object],
    meaning: Callable[[E], str] | None = None,
) -> QComboBox:
    """Return a list of an enumeration's words; tooltips say what each means."""
    field = choice(changed)
    blocked = QSignalBlocker(field)
    for kind in kinds:
        field.addItem(enum_word(kind), kind.value)
        if meaning is not None:
            field.setItemData(field.count() - 1, meaning(kind), TIP)
    blocked.unblock()
    field.currentIndexChanged.connect(lambda _at: explain(field))
    return field


def explain(field: QComboBox) -> None:
    """Let a list's own tooltip, and what a screen reader says, be that of what is chosen."""
    told = field.currentData(TIP) or ""
    field.setToolTip(told)
    field.setAccessibleDescription(told)


def fill(field: QComboBox, entries: Iterable[tuple[str, Any]], chosen: Any) -> None:
    """Put other entries into a list, (word, value) each, and choose one; tell nobody."""
    blocked = QSignalBlocker(field)
    field.clear()
    for word, value in entries:
        field.addItem(word, value)
    field.setCurrentIndex(max(field.findData(chosen), 0))
    blocked.unblock()


def pick(field: QComboBox, value: Any) -> None:
    """Choose an entry by its value; tell nobody."""
    blocked = QSignalBlocker(field)
    field.setCurrentIndex(field.findData(value))
    blocked.unblock()


def put(field: QWidget, value: Any) -> None:
    """Show a value in a line, a number or a box; tell nobody."""
    blocked = QSignalBlocker(field)
    if isinstance(field, QLineEdit):
        if field.text() != value:
            field.setText(value)
            field.setCursorPosition(0)
    elif isinstance(field, QCheckBox):
        field.setChecked(value)
    elif isinstance(field, DateField):
        field.setDate(QDate(value.year, value.month, value.day))
    else:
        field.setValue(value)  # type: ignore[attr-defined]
    blocked.unblock()


def button(words_: str, act: Callable[[], object], tip: str = "") -> QPushButton:
    """Return a button."""
    made = QPushButton(words_)
    made.setToolTip(tip)
    made.clicked.connect(act)
    return made


def beside(*fields: QWidget) -> QWidget:
    """Return fields in a row, as wide as they need."""
    holder = QWidget()
    row = QHBoxLayout(holder)
    row.setContentsMargins(0, 0, 0, 0)
    for field in fields:
        row.addWidget(field)
    row.addStretch(1)
    return holder
