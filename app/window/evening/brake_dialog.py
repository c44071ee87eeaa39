"""Asks once before work is noted over a film that is not ready, or after its window."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QDialog, QPushButton, QVBoxLayout, QWidget

from app.service.film_brake import GoOn, HeldUp
from app.window import reasons, words
from app.window.evening import brake_words
from app.window.labels import text

FILMS_TOLD = 4


class BrakeDialog(QDialog):
    """Three ways on, the careful one first; each has a key of its own.

    Signals
    -------
    goes_on(GoOn)
        It is to be noted, in a way.
    waits()
        Nothing is to be noted.
    """

    goes_on = Signal(object)
    waits = Signal()

    def __init__(
        self, held: HeldUp, zone: ZoneInfo, now: int, parent: QWidget | None, *, done: bool
    ) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(self.tr("Wet film") if held.early else self.tr("Window closed"))
        self.setModal(True)
        column = QVBoxLayout(self)
        column.setContentsMargins(18, 14, 18, 14)
        column.setSpacing(8)
        column.addWidget(text(brake_words.title_words(held, done=done), size=1.2, bold=True))
        column.addWidget(text(words.capital(reasons.key_name(held.key))))
        for one in held.found[:FILMS_TOLD]:
            for line in brake_words.film_lines(one, zone, now):
                column.addWidget(text(line))
        column.addStretch(1)
        until = brake_words.wait_words(held, zone, now)
        wait = self.tr("&Wait, {until}").format(until=until) if until else self.tr("&Wait")
        self.wait = self._button(wait, self.reject)
        self.wait.setDefault(True)
        self.dry: QPushButton | None = None
        if held.by_looking:
            self.dry = self._button(
                self.tr("I waited and it is &dry"), lambda: self._go(GoOn.LOOKED)
            )
            self.dry.setToolTip(self.tr("Noted as a look: it sets the pace of this film"))
        all_the_same = self.tr("&Note it all the same") if done else self.tr("&Begin all the same")
        self.begin = self._button(all_the_same, lambda: self._go(GoOn.ALL_THE_SAME))
        self.begin.setToolTip(self.tr("It stands marked in timeline, logbook and record"))
        for button in (self.wait, self.dry, self.begin):
            if button is not None:
                column.addWidget(button)
        self.setAccessibleName(brake_words.title_words(held, done=done))
        self.setMinimumWidth(420)
        self.wait.setFocus()
        self.rejected.connect(self.waits)

    def _button(self, name: str, act: object) -> QPushButton:
        button = QPushButton(name)
        button.setAutoDefault(True)
        button.clicked.connect(act)
        return button

    def _go(self, way: GoOn) -> None:
        self.accept()
        self.goes_on.emit(way)
