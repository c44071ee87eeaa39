"""One evening as bands: its heading, what to do with boxes to tick, what dries and closes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen

from app.service.bench_sheet import LaidCoating, SheetEntry, SheetEvening
from app.window.sheet.page_flow import (
    INK,
    SOFT,
    Draw,
    PageBand,
    beside,
    gap_of,
    paint_box,
    text_bands,
    together,
)

# A letter is read at 60 cm if it is 16 minutes of arc high (ISO 9241-3, from memory): 2.8 mm,
# which capitals of 12 points reach.
BODY, HEADING, TITLE = 12.0, 16.0, 20.0


@dataclass(frozen=True)
class Fonts:
    """Letters of one family in the sizes of the sheet [pt]."""

    body: QFont
    strong: QFont
    heading: QFont
    title: QFont

    @classmethod
    def of(cls, base: QFont) -> Fonts:
        """Return them in the family of ``base``, with widths that scale."""

        def made(size: float, weight: QFont.Weight) -> QFont:
            font = QFont(base)
            font.setPointSizeF(size)
            font.setWeight(weight)
            font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
            return font

        normal, bold = QFont.Weight.Normal, QFont.Weight.Bold
        return cls(made(BODY, normal), made(BODY, bold), made(HEADING, bold), made(TITLE, bold))

    @property
    def line(self) -> float:
        """Height of a line of the body [px]."""
        return QFontMetricsF(self.body).lineSpacing()


def heading_bands(evening: SheetEvening, fonts: Fonts, width: float) -> list[PageBand]:
    """Return the heading of an evening over a rule."""
    bands = text_bands(evening.title, fonts.heading, 0, width)

    def rule(painter: QPainter, top: float) -> None:
        painter.setPen(QPen(INK, 1.2))
        painter.drawLine(0, round(top) + 2, round(width), round(top) + 2)

    return [*bands, PageBand(fonts.line * 0.5, rule)]


def entry_bands(entry: SheetEntry, fonts: Fonts, width: float) -> list[PageBand]:
    """Return one thing to do: clock and minutes at the left, then a box and what it is."""
    if entry.brief:
        return _brief_bands(entry, fonts, width)
    line = fonts.line
    clock, left = line * 3.4, line * 4.8
    room = width - left
    font = fonts.strong if entry.work else fonts.body
    bands = text_bands(entry.title, font, left, room)

    for laid in entry.laid:
        bands += _laid_bands(laid, fonts, left, room)
    for part, places in entry.places:
        bands += _tick_bands(part, places, fonts, left, room)
    if entry.waits:
        bands += text_bands(entry.waits, fonts.body, left, room, SOFT)

    def mark(painter: QPainter, top: float) -> None:
        painter.setPen(INK)
        painter.setFont(fonts.strong)
        painter.drawText(QRectF(0, top, clock, line), entry.at)
        painter.setPen(SOFT)
        painter.setFont(fonts.body)
        painter.drawText(QRectF(0, top + line, clock, line), f"{entry.minutes} min")
        paint_box(painter, clock, top + line * 0.1, line * 0.8)

    head = together(bands[:2], line * 2)  # both lines at the left stand beside it
    return [gap_of(line * 0.2), *beside([head], mark), *bands[2:], gap_of(line * 0.25)]


def _brief_bands(entry: SheetEntry, fonts: Fonts, width: float) -> list[PageBand]:
    line = fonts.line
    minutes, box, left = line * 3.0, line * 6.6, line * 7.8
    bands = text_bands(entry.title, fonts.body, left, width - left)

    def mark(painter: QPainter, top: float) -> None:
        painter.setPen(INK)
        painter.setFont(fonts.strong)
        painter.drawText(QRectF(0, top, minutes, line), entry.at)
        painter.setPen(SOFT)
        painter.setFont(fonts.body)
        painter.drawText(QRectF(minutes, top, box - minutes, line), f"{entry.minutes} min")
        paint_box(painter, box, top + line * 0.1, line * 0.8)

    return beside(bands, mark)


def _laid_bands(laid: LaidCoating, fonts: Fonts, left: float, room: float) -> list[PageBand]:
    line = fonts.line
    size = line * 0.62

    def patch(painter: QPainter, top: float) -> None:
        painter.setPen(QPen(SOFT, 0.8))
        painter.setBrush(QColor(laid.swatch))
        painter.drawEllipse(QRectF(left, top + (line - size) / 2, size, size))

    bands = text_bands(laid.text, fonts.body, left + line, room - line)
    return beside(bands, patch) if laid.swatch else bands


def _tick_bands(
    part: str, places: tuple[str, ...], fonts: Fonts, left: float, room: float
) -> Iterator[PageBand]:
    """Yield rows of places with a box before each, as many in a row as fit."""
    line, metrics = fonts.line, QFontMetricsF(fonts.body)
    box, gap = line * 1.05, line * 0.9
    head = f"{part}:"
    inset = line * 1.5
    used = metrics.horizontalAdvance(head) + gap
    if used > room / 2:  # a long name has rows of its own
        yield from text_bands(head, fonts.body, left, room)
        head, used = "", inset
    row: list[tuple[float, str]] = []
    for place in places:
        wide = box + metrics.horizontalAdvance(place) + 2
        if used + wide > room and (row or head):
            yield _tick_row(head, row, fonts, left)
            head, used, row = "", inset, []
        if used + wide > room:
            narrow = text_bands(place, fonts.body, left + used + box, room - used - box)
            yield from beside(narrow, _box_drawer(left + used, line))
            continue
        row.append((used, place))
        used += wide + gap
    if row or head:
        yield _tick_row(head, row, fonts, left)


def _tick_row(head: str, row: list[tuple[float, str]], fonts: Fonts, left: float) -> PageBand:
    line = fonts.line
    texts = [(0.0, head), *((x + line * 1.05, place) for x, place in row)]
    bands = [text_bands(text, fonts.body, left + x, 10_000)[0] for x, text in texts if text]

    def draw(painter: QPainter, top: float) -> None:
        for x, _ in row:
            _box_drawer(left + x, line)(painter, top)
        for band in bands:
            band.draw(painter, top)

    return PageBand(line * 1.12, draw)


def _box_drawer(left: float, line: float) -> Draw:
    def draw(painter: QPainter, top: float) -> None:
        paint_box(painter, left, top + line * 0.15, line * 0.7)

    return draw


def _dash_drawer(line: float) -> Draw:
    def draw(painter: QPainter, top: float) -> None:
        painter.setPen(QPen(INK, 1.2))
        painter.drawLine(
            QPointF(line * 0.2, top + line * 0.55), QPointF(line * 0.6, top + line * 0.55)
        )

    return draw


def section_bands(evening: SheetEvening, fonts: Fonts, width: float) -> Iterator[list[PageBand]]:
    """Yield a block for what dries, what closes, and where to take care."""
    line = fonts.line
    for section in evening.sections:
        bands = text_bands(section.title, fonts.strong, 0, width)
        for text in section.lines:
            bands += beside(text_bands(text, fonts.body, line, width - line), _dash_drawer(line))
        yield [gap_of(line * 0.2), *bands, gap_of(line * 0.25)]
