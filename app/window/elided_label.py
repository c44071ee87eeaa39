"""A line of words that gives way: cut with "…" where it has no room, whole in its tooltip."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QSizePolicy

LEAST_LETTERS = 8


class ElidedLabel(QFrame):
    """One line in the palette's colour, or in another."""

    def __init__(self, *, bold: bool = False) -> None:
        super().__init__()
        self._words = ""
        self._colour = ""
        if bold:
            font = self.font()
            font.setWeight(font.Weight.DemiBold)
            self.setFont(font)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)

    def text(self) -> str:
        """Return all of the words."""
        return self._words

    def say(self, words_: str, colour: str = "") -> None:
        """Show other words; an empty ``colour`` is that of the palette."""
        if (words_, colour) == (self._words, self._colour):
            return
        self._words, self._colour = words_, colour
        self.setToolTip(words_)
        self.setAccessibleName(words_)
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Return the size in which all words have room."""
        metrics = self.fontMetrics()
        return QSize(metrics.horizontalAdvance(self._words) + 4, metrics.height() + 2)

    def minimumSizeHint(self) -> QSize:
        """Return the size of a few letters."""
        least = self.fontMetrics().averageCharWidth() * LEAST_LETTERS
        return QSize(min(least, self.sizeHint().width()), self.sizeHint().height())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Write as much as there is room for."""
        painter = QPainter(self)
        painter.setPen(self._colour or self.palette().windowText().color())
        told = self.fontMetrics().elidedText(
            self._words, Qt.TextElideMode.ElideRight, self.width() - 1
        )
        painter.drawText(
            self.rect(), Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, told
        )
        painter.end()
        event.accept()
