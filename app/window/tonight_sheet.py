"""Where the cards of Tonight lie: in order of time, small ones side by side."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QRect, QSize
from PySide6.QtWidgets import QLayoutItem, QWidget

from app.window.emptying import empty
from app.window.flow_layout import FlowLayout
from app.window.tonight_cards.card import CardFrame

MARGINS = (24, 10, 18, 20)
APART = 10  # pixels between lines
ACROSS = 12  # and between cards of a line


class CardLines(FlowLayout):
    """Lines as wide as the sheet; cards that follow each other share one where they have room."""

    def minimumSize(self) -> QSize:
        """Return the least size, the margins included."""
        left, _, right, _ = MARGINS
        return super().minimumSize() + QSize(left + right, 0)

    def _lay(self, rect: QRect, *, move: bool) -> int:
        left, top, right, bottom = MARGINS
        inner = rect.adjusted(left, top, -right, -bottom)
        y = inner.y()
        for line in self._lines(inner.width()):
            wide = self._widths(line, inner.width())
            high = max(_height(item, each) for item, each in zip(line, wide, strict=True))
            x = inner.x()
            for item, each in zip(line, wide, strict=True):
                if move:
                    item.setGeometry(QRect(x, y, each, high))
                x += each + ACROSS
            y += high + APART
        return y - APART + bottom - rect.y()

    def _lines(self, room: int) -> Iterator[list[QLayoutItem]]:
        line: list[QLayoutItem] = []
        used = 0
        for item in self._items:
            if item.isEmpty():  # hidden
                continue
            card = item.widget()
            wide = card.natural_width() if isinstance(card, CardFrame) else room
            if line and used + ACROSS + wide > room:
                yield line
                line, used = [], 0
            used += wide + (ACROSS if line else 0)
            line.append(item)
        if line:
            yield line

    @staticmethod
    def _widths(line: list[QLayoutItem], room: int) -> list[int]:
        """Return how wide each gets: what it needs, and its share of the rest."""
        if len(line) == 1:
            return [room]
        needs = []
        for item in line:
            card = item.widget()
            assert isinstance(card, CardFrame)
            needs.append(card.natural_width())
        rest = room - ACROSS * (len(line) - 1) - sum(needs)
        return [need + rest // len(line) for need in needs]


def _height(item: QLayoutItem, width: int) -> int:
    return item.heightForWidth(width) if item.hasHeightForWidth() else item.sizeHint().height()


class Sheet(QWidget):
    """Heading, cards and last word; what is given again is not made anew."""

    def __init__(self) -> None:
        super().__init__()
        self._layout = CardLines(self)
        self.lines: list[QWidget] = []

    def show_lines(self, lines: list[QWidget]) -> None:
        """Show lines in this order."""
        if lines == self.lines:
            return
        empty(self._layout, keep=set(lines))
        self.lines = list(lines)
        for line in lines:
            self._layout.addWidget(line)

    def show_all(self) -> None:
        """Show what has just come; a layout counts only what is shown."""
        for line in self.lines:
            line.show()
