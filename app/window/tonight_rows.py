"""Lines between the cards of Tonight: a set-up of its own, a gap, a look, the end."""

from __future__ import annotations

from collections.abc import Iterable
from zoneinfo import ZoneInfo

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QGridLayout,
    QVBoxLayout,
    QWidget,
)

from app.window import mark_drawing, words
from app.window.fill_amounts import fill_words
from app.window.labels import text
from app.window.mark_widgets import DropMark, GapMark, MarkWidget
from app.window.palette import Colours
from planner.tonight import BenchRow
from planner.values.mix import Portion

TIME_WIDTH = 66


class TonightRow(QWidget):
    """A row of the sheet: time at the left, mark on the thread, words beside it.

    What is past of [start, end) is shaded from the top down.
    """

    def __init__(
        self, colours: Colours, start: int, end: int, now: int, *, ruled: bool = False
    ) -> None:
        super().__init__()
        self.colours = colours
        self.start, self.end, self.now = start, end, now
        self.ruled = ruled
        self.grid = QGridLayout(self)
        self.grid.setContentsMargins(10, 0, 10, 0)
        self.grid.setHorizontalSpacing(10)
        self.grid.setVerticalSpacing(0)
        self.grid.setColumnMinimumWidth(0, TIME_WIDTH)
        self.grid.setColumnStretch(2, 1)

    def build(self, times: Iterable[QWidget], mark: MarkWidget, content: QWidget) -> None:
        """Put time, mark and words in their columns."""
        left = QVBoxLayout()
        left.setContentsMargins(0, 3, 0, 3)
        left.setSpacing(0)
        for label in times:
            left.addWidget(label, 0, Qt.AlignmentFlag.AlignRight)
        left.addStretch(1)
        self.grid.addLayout(left, 0, 0)
        self.grid.addWidget(mark, 0, 1)
        self.grid.addWidget(content, 0, 2)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the shade over what is past, and the rule under the row."""
        painter = QPainter(self)
        share = (self.now - self.start) / max(1, self.end - self.start)
        if share > 0:
            height = self.height() * min(1.0, share)
            mark_drawing.paint_past(painter, QRectF(0, 0, self.width(), height), self.colours)
        if self.ruled:
            painter.setPen(QPen(self.colours.colour("rule"), 1))
            painter.drawLine(TIME_WIDTH + 120, self.height() - 1, self.width(), self.height() - 1)
        painter.end()
        event.accept()


class SetUpLine(TonightRow):
    """Loading, changing, cleaning or preparing between the pieces of work."""

    def __init__(
        self, colours: Colours, row: BenchRow, *, zone: ZoneInfo, now: int, more: tuple[str, ...]
    ) -> None:
        super().__init__(colours, row.start, row.end, now)
        name = words.capital(words.setup_word(row.kind, row.coating))
        sentence = self.tr("{name} · {length}").format(name=name, length=words.span(row.minutes))
        parts = _portions(row.portions)
        if parts:
            sentence = self.tr("{sentence} · {parts}").format(sentence=sentence, parts=parts)
        times = (text(words.clock(row.start, zone), colour=colours.soft, wrap=False),)
        content = QWidget()
        box = QVBoxLayout(content)
        box.setContentsMargins(0, 3, 0, 3)
        box.setSpacing(2)
        box.addWidget(text(sentence, colour=colours.soft))
        if row.load:
            told = words.capital(fill_words(row.load))
            box.addWidget(text(told))
            sentence = self.tr("{sentence} · {fill}").format(sentence=sentence, fill=told)
        for told in more:
            box.addWidget(text(told, size=0.92))
            sentence = self.tr("{sentence} · {fill}").format(sentence=sentence, fill=told)
        self.build(times, DropMark(colours, row.swatch), content)
        self.setAccessibleName(
            self.tr("{start}: {sentence}").format(
                start=words.clock(row.start, zone), sentence=sentence
            )
        )


class NoteLine(TonightRow):
    """A gap in which nothing is ready, or the end of the stretch."""

    def __init__(
        self, colours: Colours, start: int, end: int, words_: str, *, zone: ZoneInfo, now: int
    ) -> None:
        super().__init__(colours, start, end, now)
        times = (text(words.clock(start, zone), colour=colours.soft, wrap=False),)
        label = text(words_, colour=colours.soft)
        label.setContentsMargins(0, 3, 0, 3)
        self.build(times, GapMark(colours), label)
        self.setAccessibleName(words_)


def _portions(portions: tuple[Portion, ...]) -> str:
    return " + ".join(
        f"{words.decimal(f'{portion.parts:g}')} {portion.coating}" for portion in portions
    )
