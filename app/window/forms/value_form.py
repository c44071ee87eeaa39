"""A dialog about one value: its controls are made, named and read as its fields are described."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace
from datetime import date
from enum import StrEnum
from typing import Any, Generic, TypeVar

from PySide6.QtWidgets import QCheckBox, QComboBox, QLineEdit, QPlainTextEdit, QWidget

from app.service.edits import Edit
from app.window.forms.controls import (
    Maybe,
    choice,
    date_edit,
    day_of,
    line,
    number,
    set_day,
    whole,
)
from app.window.forms.form import Form, FormDialog, keep
from app.window.forms.live_controls import unit_suffix
from app.window.message_translation import enum_word, translated
from app.window.session import Session
from planner.values.book import Book
from planner.values.field import Described, Value, fields_of
from planner.values.message import Message

Read = Callable[[], Any]
T = TypeVar("T", bound=Value)


class ValueDialog(FormDialog, Generic[T]):
    """Asks for fields of a value; what is not asked for stays as it is.

    Parameters
    ----------
    value
        What is shown first.
    make
        The edit that keeps what was filled in.
    """

    def __init__(
        self,
        session: Session,
        title: str,
        value: T,
        make: Callable[[Book, T], Edit],
        parent: QWidget | None,
    ) -> None:
        super().__init__(
            title, parent, lambda: keep(session, lambda book: make(book, self.value()))
        )
        self._session, self._first = session, value
        self._read: dict[str, Read] = {}
        self.controls: dict[str, QWidget] = {}
        self.given: dict[str, Maybe] = {}

    def ask(
        self,
        form: Form,
        name: str,
        *,
        about: Any = None,
        says: str = "",
        usual: Any = None,
        step: float = 1,
        hint: str = "",
    ) -> None:
        """Ask for a field.

        Parameters
        ----------
        about
            The value that holds it, where that is not the dialog's own.
        says
            What a box says beside a field that may be None, or that is yes or no; the entry
            for None of a choice.
        usual
            What is shown, greyed, while there is none.
        step
            By how much the arrows of a fraction go.
        hint
            Said in place of the field's own help.
        """
        value = self._first if about is None else about
        told, old = fields_of(type(value))[name], getattr(value, name)
        if told.kind is bool and not says:
            box = QCheckBox(translated(Message(told.field.title)))
            box.setChecked(old)
            form.put(box)
            self.controls[name], self._read[name] = box, box.isChecked
            return
        control, read = _control(told, old, usual, step, says)
        self.own(form, name, control, read, about=about, hint=hint)

    def own(
        self,
        form: Form,
        name: str,
        control: QWidget,
        read: Read,
        *,
        about: Any = None,
        hint: str = "",
    ) -> None:
        """Ask for a field by a control made for it."""
        field = fields_of(type(self._first if about is None else about))[name].field
        help_ = hint or translated(Message(field.help))
        form.add(name, translated(Message(field.title)), control, help_)
        self._read[name] = read
        self.controls[name] = control.control if isinstance(control, Maybe) else control
        if isinstance(control, Maybe):
            self.given[name] = control

    def filled(self, name: str) -> Any:
        """Return what stands in one field; `Refused` if it cannot be so."""
        return self._read[name]()

    def value(self) -> T:
        """Return what was filled in; `Refused` if it is not sound."""
        return replace(
            self._first,  # type: ignore[type-var]
            **{
                name: self.filled(name)
                for name in fields_of(type(self._first))
                if name in self._read
            },
        )


def _control(told: Described, old: Any, usual: Any, step: float, says: str) -> tuple[QWidget, Read]:
    """Return a control for a field that shows ``old``, and what reads it."""
    if isinstance(told.kind, type) and issubclass(told.kind, StrEnum):
        return _choice(told, old, says)
    if told.kind is bool:
        box = QCheckBox(says)
        box.setChecked(old)
        return box, box.isChecked
    shown = usual if old is None else old
    control, read = _plain(told, shown, old, step)
    if not told.optional:
        return control, read
    maybe = Maybe(control, old is not None, says)
    return maybe, lambda: read() if maybe.on else None


def _choice(told: Described, old: StrEnum | None, none: str) -> tuple[QComboBox, Read]:
    entries: list[tuple[str, object]] = [(none, "")] if told.optional else []
    entries += [(enum_word(each), each.value) for each in told.kind]
    box = choice(entries, old.value if old else "")
    return box, lambda: told.kind(box.currentData()) if box.currentData() else None


def _plain(told: Described, shown: Any, old: Any, step: float) -> tuple[QWidget, Read]:
    if told.kind in (int, float):
        return _number(told, shown, old, step)
    if told.kind is date:
        edit = date_edit()
        set_day(edit, shown)
        return edit, lambda: day_of(edit)
    return text_line(shown)


def _number(told: Described, shown: float, old: float | None, step: float) -> tuple[QWidget, Read]:
    """Return a control that takes as many digits as the field's range has.

    It takes a little more than the value does, so that the value can say what it takes.
    """
    field, scale = told.field, 100 if told.field.percent else 1
    low, high = (0 if field.least >= 0 else -_nines(field.least)), _nines(field.most * scale)
    if told.kind is int and field.most < 10:
        low, high = int(field.least), int(field.most)  # few enough to be gone through
    suffix = unit_suffix(field)
    if told.kind is int:
        counted = whole(int(shown), low, high, suffix)
        return counted, counted.value
    box = number(shown * scale, low, high, decimals=field.decimals, suffix=suffix, step=step)
    digits = field.decimals + (2 if field.percent else 0)

    def read() -> float:
        """Return what is shown; the old number where that, rounded, is what is shown."""
        new = round(box.value() / scale, digits)
        return old if old is not None and new == round(old, digits) else new

    return box, read


def _nines(most: float) -> int:
    return 99_999 if math.isinf(most) else int(10 ** len(str(int(abs(most)))) - 1)


def text_line(shown: str, least: int = 220) -> tuple[QLineEdit, Read]:
    """Return a line of text and what reads it, without blanks at its ends."""
    edit = line(shown, least)
    return edit, lambda: edit.text().strip()


def text_lines(shown: str, height: int = 70) -> tuple[QPlainTextEdit, Read]:
    """Return some lines of text and what reads them, without blanks at their ends."""
    edit = QPlainTextEdit(shown)
    edit.setTabChangesFocus(True)
    edit.setFixedHeight(height)
    return edit, lambda: edit.toPlainText().strip()
