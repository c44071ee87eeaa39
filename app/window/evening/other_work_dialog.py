"""Takes one line that tells what was really painted, and says at once how it is understood."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCompleter,
    QDialog,
    QDialogButtonBox,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from app.service.edits import Edit
from app.service.other_work import OtherWork, done_beside, read_line
from app.window import words
from app.window.evening.other_work_words import example, told_words, words_of_the_line
from app.window.labels import MessageLabel, text
from app.window.message_translation import translated
from app.window.session import Session
from planner.values.book import Book
from planner.values.refusal import Refused


class OtherWorkDialog(QDialog):
    """One field; below it what the line tells, or why it cannot be read."""

    def __init__(self, session: Session, parent: QWidget | None) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("I did something else"))
        self.setModal(True)
        self._session = session
        self.field = QLineEdit()
        self.field.setPlaceholderText(example())
        self.field.setAccessibleName(self.tr("What was painted, and on what"))
        self.field.setMaxLength(600)
        self.field.textChanged.connect(self._read)
        self._complete()
        self.told = text("")
        self.message = MessageLabel()
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setText(self.tr("&Note it"))
        self.buttons.button(QDialogButtonBox.StandardButton.Cancel).setText(self.tr("Cancel"))
        self.buttons.accepted.connect(self._keep)
        self.buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 14, 18, 14)
        column.setSpacing(8)
        column.addWidget(text(self.tr("What was painted, and on what?"), size=1.2, bold=True))
        column.addWidget(
            text(
                self.tr(
                    "Planned or not: the colour, “on”, then models with their parts; between "
                    "commas also the tool, the kind of work, minutes and millilitres."
                )
            )
        )
        column.addWidget(self.field)
        column.addWidget(self.told)
        column.addWidget(self.message)
        column.addStretch(1)
        column.addWidget(self.buttons)
        self.setMinimumWidth(520)
        self._read("")
        self.field.setFocus()

    def _complete(self) -> None:
        """Offer the coatings and mixes of the book while the first words are typed."""
        book = self._session.book
        names = (
            [*(each.name for each in book.coatings), *(mix.name for mix in book.mixes)]
            if (book)
            else []
        )
        between = words.tr("on")
        completer = QCompleter([f"{name} {between} " for name in names], self)
        completer.setCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)
        completer.setFilterMode(Qt.MatchFlag.MatchContains)
        self.field.setCompleter(completer)

    def _work(self) -> OtherWork | Refused | None:
        book, line = self._session.book, self.field.text().strip()
        if book is None or not line:
            return None
        try:
            return read_line(book, line, words_of_the_line())
        except Refused as problem:
            return problem

    def _read(self, _line: str) -> None:
        """Say how the line is understood so far."""
        work = self._work()
        self.message.say("")
        good = isinstance(work, OtherWork)
        self.buttons.button(QDialogButtonBox.StandardButton.Ok).setEnabled(good)
        if isinstance(work, OtherWork):
            self.told.setText(told_words(work))
        elif isinstance(work, Refused):
            self.told.setText(translated(work.mend))
        else:
            self.told.setText(self.tr("For example: {line}").format(line=example()))

    def _keep(self) -> None:
        refused = note_line(self._session, self.field.text(), self._session.troubled.emit)
        if refused is None:
            self.accept()
        else:
            self.message.say(refused.mend)


def note_line(session: Session, line: str, tell: Callable[[str], None]) -> Refused | None:
    """Note what a line tells, and say what the order of coats says to it."""
    said: list[str] = []

    def make(book: Book) -> Edit:
        done = done_beside(book, line, session.now, words_of_the_line())
        said.extend(translated(finding.message) for finding in done.findings)
        return done.edit

    refused = session.attempt(make)
    if refused is None and said:
        tell(said[0])
    return refused
