"""What stands on screen while no book can be opened: why, and the ways on."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from app.window.labels import MessageLabel, text
from app.window.message_translation import translated
from app.window.palette import Colours
from app.window.shell import Shell


class NoBook(QWidget):
    """Says which file could not be opened, and offers to open or to begin another.

    Enter opens another at once.
    """

    def __init__(self, window: Shell) -> None:
        super().__init__()
        self._session, self._files = window.session, window.files
        self.offers: list[QPushButton] = []
        self.why = MessageLabel()
        self.buttons: list[QPushButton] = []
        line = QHBoxLayout()
        for way in window.ways_to_a_book:
            button = QPushButton(way.text())
            button.setAutoDefault(True)
            button.clicked.connect(way.trigger)
            self.buttons.append(button)
            line.addWidget(button)
        line.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(24, 14, 24, 14)
        column.setSpacing(12)
        column.addWidget(text(self.tr("No book is open"), size=1.9, bold=True))
        column.addWidget(self.why)
        self._offers = QVBoxLayout()
        self.left = MessageLabel()
        column.addWidget(self.left)
        column.addLayout(self._offers)
        column.addLayout(line)
        column.addStretch(1)
        self.setFocusProxy(self.buttons[0])

    def say(self, why: str) -> None:
        """Say why the book is not there."""
        self.why.say(why)
        self._show_offers()
        first = (*self.offers, *self.buttons)[0]
        first.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_offers(self) -> None:
        """Offer the copies of a damaged book, and what can still be read of it."""
        for button in self.offers:
            self._offers.removeWidget(button)
            button.deleteLater()
        self.offers = []
        offers = self._session.offers
        for path, copy, said in offers:
            self._offer(translated(said), partial(self._session.rescue, path, copy))
        self.left.say(translated(self._session.readable))
        if self._session.damaged is not None and self._session.readable:
            self._offer(
                self.tr("Save what can still be read of it…"),
                partial(self._files.save_readable, self._session.damaged),
            )

    def _offer(self, words: str, act: Callable[[], object]) -> None:
        button = QPushButton(words)
        button.setAutoDefault(True)
        button.clicked.connect(act)
        self._offers.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self.offers.append(button)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours; the controls follow their palette."""
