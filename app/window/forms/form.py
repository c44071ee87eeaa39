"""A form whose refusals stand beside the field that they speak of."""

from __future__ import annotations

import re
from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QDialog,
    QDialogButtonBox,
    QFrame,
    QLabel,
    QScrollArea,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from app.service.edits import Edit
from app.window import words
from app.window.labels import MessageLabel
from app.window.session import Session
from planner.values.book import Book
from planner.values.refusal import Refused

Make = Callable[[Book], Edit]
Save = Callable[[], Refused | None]


def keep(session: Session, make: Make) -> Refused | None:
    """Make an edit of the open book; return why it was not made, None if it was.

    Where the book does not take a sound edit, as when another program has
    just changed it, that is a refusal too: what was typed must not be lost.
    """
    book = session.book
    if book is None:
        return Refused("", words.tr("no book is open"))
    try:
        edit = make(book)
    except Refused as problem:
        return problem
    if edit.book == book or session.apply(edit):
        return None
    return Refused(
        "", words.tr("The book has not taken it; the foot of the window says why. Keep it again.")
    )


class Form(QWidget):
    """Named fields below each other, each with a line for what is wrong with it."""

    def __init__(self) -> None:
        super().__init__()
        self.fields: dict[str, QWidget] = {}
        self.messages: dict[str, MessageLabel] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(2, 2, 12, 2)
        self._column.setSpacing(3)
        self._column.addStretch(1)

    def add(self, place: str, name: str, control: QWidget, hint: str = "") -> None:
        """Add a field; ``place`` is what a refusal calls it, ``name`` has "&" before its key."""
        label = QLabel(name)
        label.setBuddy(control)
        label.setMinimumWidth(QFontMetrics(label.font()).horizontalAdvance(name) + 4)
        plain = name.replace("&", "")
        control.setAccessibleName(plain)
        message = MessageLabel()
        message.setAccessibleName(plain)
        self.fields[place] = control
        self.messages[place] = message
        at = self._column.count() - 1
        if at:
            self._column.insertSpacing(at, 7)
            at += 1
        short = isinstance(control, QAbstractSpinBox)
        side = Qt.AlignmentFlag.AlignLeft if short else Qt.AlignmentFlag(0)
        self._column.insertWidget(at, label)
        self._column.insertWidget(at + 1, control, 0, side)
        self._column.insertWidget(at + 2, message)
        if hint:
            control.setToolTip(hint)
            control.setAccessibleDescription(hint)

    def put(self, widget: QWidget, stretch: int = 0) -> None:
        """Add anything else below."""
        self._column.insertWidget(self._column.count() - 1, widget, stretch)

    def clear(self) -> None:
        """Take every message back."""
        for message in self.messages.values():
            message.say("")

    def say(self, refused: Refused) -> QWidget | None:
        """Show a refusal beside its field and return that; None if no field is meant."""
        for name in reversed(re.split(r"[.\[\]]+", refused.place)):
            if name in self.fields:
                self.messages[name].say(refused.mend)
                return self.fields[name]
        return None


class FormDialog(QDialog):
    """One thing to fill in, on one page or several, kept only if it is sound."""

    def __init__(self, title: str, parent: QWidget | None, save: Save | None = None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(title)
        self.setModal(True)
        self.save = save
        self.forms: list[Form] = []
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.message = MessageLabel()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Save | QDialogButtonBox.StandardButton.Cancel
        )
        self.buttons.button(QDialogButtonBox.StandardButton.Save).setText(self.tr("&Keep"))
        self.buttons.button(QDialogButtonBox.StandardButton.Cancel).setText(self.tr("Cancel"))
        self.buttons.accepted.connect(self._keep)
        self.buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 14, 18, 12)
        column.addWidget(self.tabs, 1)
        column.addWidget(self.message)
        column.addWidget(self.buttons)
        self.tabs.tabBar().setAutoHide(True)

    def page(self, name: str) -> Form:
        """Return a new page to fill in."""
        form = Form()
        self.forms.append(form)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setWidget(form)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.tabs.addTab(area, name)
        return form

    def fit(self, wide: int = 460, most: int = 560) -> None:
        """Make it as large as its tallest page, and no taller than ``most``."""
        tall = max((form.sizeHint().height() for form in self.forms), default=0)
        across = max((form.minimumSizeHint().width() for form in self.forms), default=0)
        self.resize(max(wide, across + 70), min(most, tall + 110))
        if self.forms and self.forms[0].fields:
            next(iter(self.forms[0].fields.values())).setFocus()

    def _keep(self) -> None:
        self.message.say("")
        for form in self.forms:
            form.clear()
        refused = self.save() if self.save is not None else None
        if refused is None:
            self.accept()
        else:
            self.say(refused)

    def say(self, refused: Refused) -> None:
        """Show a refusal beside its field, or at the foot."""
        for at, form in enumerate(self.forms):
            field = form.say(refused)
            if field is not None:
                self.tabs.setCurrentIndex(at)
                field.setFocus()
                return
        self.message.say(refused.mend)
