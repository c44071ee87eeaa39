"""The copies of a damaged book, and what can still be read of it."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPushButton, QVBoxLayout, QWidget

from app.window.labels import MessageLabel
from app.window.message_translation import translated
from app.window.session import Session


class CopyOffers(QWidget):
    """Offers the copies of a damaged book, and what can still be read of it."""

    def __init__(self, session: Session, save_readable: Callable[[Path], None]) -> None:
        super().__init__()
        self._session, self._save_readable = session, save_readable
        self.buttons: list[QPushButton] = []
        self.left = MessageLabel()
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(12)
        self._column.addWidget(self.left)

    def show_book(self) -> None:
        """Offer what there is for the book that was refused last."""
        for button in self.buttons:
            self._column.removeWidget(button)
            button.deleteLater()
        self.buttons = []
        for path, copy, said in self._session.offers:
            self._offer(translated(said), partial(self._session.rescue, path, copy))
        self.left.say(translated(self._session.readable))
        if self._session.damaged is not None and self._session.readable:
            self._offer(
                self.tr("Save what can still be read of it…"),
                partial(self._save_readable, self._session.damaged),
            )

    def _offer(self, words: str, act: Callable[[], object]) -> None:
        button = QPushButton(words)
        button.setAutoDefault(True)
        button.clicked.connect(act)
        self._column.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self.buttons.append(button)


class DamagedBook(QDialog):
    """Says that a book is damaged while another is open, and offers its copies; that one stays."""

    def __init__(
        self, session: Session, save_readable: Callable[[Path], None], why: str, parent: QWidget
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Open a bench book"))
        self.why = MessageLabel()
        self.why.say(why)
        self.copies = CopyOffers(session, save_readable)
        self.copies.show_book()
        for button in self.copies.buttons:
            button.clicked.connect(self.accept)  # a book does not come while a dialog is there
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.setSpacing(12)
        column.addWidget(self.why)
        column.addWidget(self.copies)
        column.addWidget(buttons)
