"""What stands on screen while no book can be opened: why, and the ways on."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from app.window.damaged_book import CopyOffers
from app.window.labels import MessageLabel, text
from app.window.palette import Colours
from app.window.shell import Shell


class NoBook(QWidget):
    """Says which file could not be opened, and offers to open or to begin another.

    Enter opens another at once.
    """

    def __init__(self, window: Shell) -> None:
        super().__init__()
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
        self.copies = CopyOffers(window.session, window.files.save_readable)
        column.addWidget(self.copies)
        column.addLayout(line)
        column.addStretch(1)
        self.setFocusProxy(self.buttons[0])

    def say(self, why: str) -> None:
        """Say why the book is not there."""
        self.why.say(why)
        self.copies.show_book()
        first = (*self.copies.buttons, *self.buttons)[0]
        first.setFocus(Qt.FocusReason.OtherFocusReason)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours; the controls follow their palette."""
