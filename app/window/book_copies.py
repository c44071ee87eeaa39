"""The copies of the open book: what is in each, how it differs, and going back to one."""

from __future__ import annotations

import logging
from pathlib import Path

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.service.book_copies import WHY, CopyLine, listed, when
from app.window import words
from app.window.chosen_rows import mark_chosen_rows
from app.window.labels import MessageLabel, text
from app.window.message_translation import translated
from app.window.session import Session
from app.window.worker import Worker
from planner.values.refusal import Refused
from storage import backups

log = logging.getLogger(__name__)

PATH = Qt.ItemDataRole.UserRole


class _Read(QObject):
    """Carries what was read of the copies to the window's thread."""

    came = Signal(object, object)


class BookCopies(QDialog):
    """A list, the newest copy first; the copies are read while it stands."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._worker = Worker()
        self._read = _Read()
        self._read.came.connect(self._show)
        self.setWindowTitle(self.tr("Copies of the book"))
        self.list = QListWidget()
        mark_chosen_rows(self.list)
        self.list.setAccessibleName(self.tr("Copies, the newest first"))
        self.list.setWordWrap(True)
        self.list.itemActivated.connect(lambda _item: self.restore())
        self.list.currentItemChanged.connect(lambda *_: self._mark())
        self.message = MessageLabel()
        self.make = QPushButton(self.tr("&Make a copy now"))
        self.go_back = QPushButton(self.tr("&Restore this copy"))
        self.make.clicked.connect(self.make_copy)
        self.go_back.clicked.connect(self.restore)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        for button in (self.make, self.go_back):
            buttons.addButton(button, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        explained = self.tr(
            "A copy is made on each day of use, before an upgrade and before a restore. "
            "Restoring can be undone."
        )
        column.addWidget(text(explained))
        column.addWidget(self.list, 1)
        column.addWidget(self.message)
        column.addWidget(buttons)
        self.resize(560, 460)
        session.troubled.connect(self.message.say)
        session.opened.connect(self.reject)
        self.finished.connect(lambda _result: self._worker.wait())
        self._mark()
        self._read_again()

    def make_copy(self) -> None:
        """Copy the book as it stands."""
        path = self._session.path
        if path is not None:
            self._start(path, make=True)

    def restore(self) -> None:
        """Bring back what the chosen copy holds."""
        item = self.list.currentItem()
        if item is not None and item.data(PATH):
            self._session.restore(Path(item.data(PATH)), item.text().partition("\n")[0])
            self._read_again()

    def _read_again(self) -> None:
        path = self._session.path
        if path is not None:
            self._start(path, make=False)

    def _start(self, path: Path, *, make: bool) -> None:
        self.message.say(self.tr("Reading the copies…"))
        self.make.setEnabled(False)
        history = self._session.history()

        def read() -> None:
            told = ""
            try:
                if make:
                    backups.keep(path, backups.BackupReason.ASKED)
                lines = listed(path, history)
            except Refused as problem:
                lines, told = listed(path, history), str(problem)
            self._read.came.emit(lines, told)

        self._worker.start(read)

    def _show(self, lines: tuple[CopyLine, ...], told: str) -> None:
        self.message.say(translated(told))
        self.make.setEnabled(True)
        self.list.clear()
        for line in lines:
            first = words.tr("{time}  {why}").format(
                time=when(line.copy), why=translated(WHY[line.copy.reason])
            )
            rest = [translated(differ) for differ in (line.holds, line.differs) if differ]
            item = QListWidgetItem("\n".join((first, *rest)))
            item.setData(PATH, str(line.copy.path) if line.holds else "")
            self.list.addItem(item)
        if not lines and not told:
            self.message.say(self.tr("There is no copy yet."))
        self.list.setCurrentRow(0)
        self.list.setFocus()
        self._mark()

    def _mark(self) -> None:
        item = self.list.currentItem()
        self.go_back.setEnabled(item is not None and bool(item.data(PATH)))


def show_copies(session: Session, parent: QWidget) -> BookCopies:
    """Open the list beside the window, so that one sees what restoring does."""
    dialog = BookCopies(session, parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.show()
    return dialog
