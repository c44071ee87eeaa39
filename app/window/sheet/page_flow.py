"""Lines and pictures one below the other, over as many pages as they take.

A block is a list of bands.  It is kept on one page where it fits on one,
and else broken between its bands; nothing is ever cut.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen, QTextLayout, QTextOption

Draw = Callable[[QPainter, float], None]

INK, SOFT = QColor("#000000"), QColor("#404040")


@dataclass(frozen=True)
class PageBand:
    """Something of one height that draws itself with its top at a y."""

    height: float
    draw: Draw


class Flow:
    """Pages being filled, each so wide and so high [px]."""

    def __init__(self, width: float, height: float) -> None:
        self.width, self.height = width, height
        self.pages: list[list[tuple[float, PageBand]]] = [[]]
        self._y = 0.0

    @property
    def left(self) -> float:
        """Height that is left on the page [px]."""
        return self.height - self._y

    def place(self, block: Sequence[PageBand]) -> None:
        """Put a block on the page, or on the next one if it only fits there."""
        whole = sum(band.height for band in block)
        if self.left < whole <= self.height:
            self.turn()
        for band in block:
            if band.height > self.left and self.pages[-1]:
                self.turn()
            self.pages[-1].append((self._y, band))
            self._y += band.height

    def skip(self, height: float) -> None:
        """Leave a gap, but none at the head of a page."""
        if self._y:
            self._y += height

    def turn(self) -> None:
        """Begin a new page, unless this one is empty."""
        if self.pages[-1]:
            self.pages.append([])
            self._y = 0.0


def text_bands(
    text: str, font: QFont, left: float, width: float, colour: QColor = INK, gap: float = 0
) -> list[PageBand]:
    """Return a paragraph as bands of one line each, broken within words where it must be."""
    layout = QTextLayout(text, font)
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    option.setUseDesignMetrics(True)
    layout.setTextOption(option)
    height = QFontMetricsF(font).lineSpacing()
    bands = [
        PageBand(max(height, line.height()), _line_drawer(layout, number, left, colour))
        for number, line in enumerate(_lines(layout, width))
    ]
    return [*bands, gap_of(gap)] if gap else bands


def gap_of(height: float) -> PageBand:
    """Return a band with nothing in it."""
    return PageBand(height, lambda _painter, _top: None)


def _lines(layout: QTextLayout, width: float) -> Iterator:  # type: ignore[type-arg]
    layout.beginLayout()
    made = []
    while (line := layout.createLine()).isValid():
        line.setLineWidth(width)
        line.setPosition(QPointF(0, 0))
        made.append(line)
    layout.endLayout()
    yield from made


def _line_drawer(layout: QTextLayout, number: int, left: float, colour: QColor) -> Draw:
    def draw(painter: QPainter, top: float) -> None:
        painter.setPen(colour)
        layout.lineAt(number).draw(painter, QPointF(left, top))

    return draw


def together(bands: Sequence[PageBand], least: float) -> PageBand:
    """Return the bands as one that is never broken, at least so high."""

    def draw(painter: QPainter, top: float) -> None:
        for band in bands:
            band.draw(painter, top)
            top += band.height

    return PageBand(max(least, sum(band.height for band in bands)), draw)


def paint_box(painter: QPainter, left: float, top: float, size: float) -> None:
    """Paint an empty box to tick."""
    painter.setPen(QPen(INK, size * 0.09))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(QRectF(left, top, size, size))


def beside(bands: list[PageBand], draw: Draw) -> list[PageBand]:
    """Return the bands with something more drawn at the first one's top."""
    first = bands[0]

    def both(painter: QPainter, top: float) -> None:
        draw(painter, top)
        first.draw(painter, top)

    return [PageBand(first.height, both), *bands[1:]]
