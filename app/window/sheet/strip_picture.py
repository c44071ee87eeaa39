"""The timeline on paper: as many evenings side by side as the page is wide.

It says what the timeline on screen says, in the same strokes, but for paper:
names of lanes run over as many lines as they need, and nothing is cut.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace
from zoneinfo import ZoneInfo

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPen

from app.window import mark_drawing, words
from app.window.message_translation import translated
from app.window.palette import LIGHT
from app.window.sheet.page_flow import INK, SOFT, Draw, PageBand, gap_of, text_bands
from app.window.strip_content import Lane, Strip, StripColumn
from app.window.timeline.geometry import Label, Scale, fitting_scale, room_for_labels
from app.window.wedge_geometry import wedge_outline
from planner.values.message import row
from planner.values.moment import Interval

ON_PAPER = replace(LIGHT, paper="#FFFFFF", sheet="#FFFFFF", gutter="#EFEFEF")
PER_MINUTE = 1.1  # least width of a minute [px]
TEXT = 9.0  # letters of the picture [pt]; the list beside it says the same in larger ones
NAMES = 0.24  # share of the width that the names of lanes take


@dataclass(frozen=True)
class PictureRow:
    """One lane, an airbrush by its number, or the heading of a model above its lanes."""

    lane: Lane | None
    airbrush: int | None
    name: tuple[PageBand, ...]
    height: float


@dataclass(frozen=True)
class StripPicture:
    """Some columns of a strip at one scale."""

    strip: Strip
    scale: Scale
    font: QFont
    strong: QFont
    left: float
    width: float

    @property
    def line(self) -> float:
        """Height of a line of its letters [px]."""
        return QFontMetricsF(self.font).lineSpacing()

    @property
    def head(self) -> float:
        """Height of dates and hours [px]."""
        return self.line * 2.4

    def x(self, minute: int) -> float:
        """Return where a minute lies."""
        return self.left + self.scale.x(minute)


def picture_blocks(
    strip: Strip, base: QFont, width: float, most: float, first: float
) -> Iterator[list[PageBand]]:
    """Yield the strip piece by piece, each no wider than ``width`` nor higher than ``most``.

    The very first is no higher than ``first``, what is left of the page.
    """
    font, strong = QFont(base), QFont(base)
    font.setPointSizeF(TEXT)
    strong.setPointSizeF(TEXT)
    strong.setWeight(QFont.Weight.Bold)
    left = width * NAMES
    for columns in _runs(strip.columns, width - left):
        part = _cut(strip, columns)
        scale = Scale(columns, fitting_scale(columns, width - left))
        at = StripPicture(part, scale, font, strong, left, width)
        for block in _pages(at, list(_rows(at)), most, first):
            yield block
            first = most


def of_evenings(strip: Strip, evenings: tuple[Interval, ...]) -> Strip:
    """Return what a strip shows of some stretches."""
    wanted = [
        column for column in strip.columns if any(column.interval.overlaps(it) for it in evenings)
    ]
    return _cut(strip, tuple(wanted))


def of_main_parts(strip: Strip) -> Strip:
    """Return a strip with one lane a model, that of the part with the most work."""
    work = Counter(number for piece in strip.pieces for number in piece.lanes)
    main: dict[tuple[str, str], Lane] = {}
    for lane in strip.lanes:
        known = main.get((lane.project, lane.model))
        if known is None or work[lane.index] > work[known.index]:
            main[lane.project, lane.model] = lane
    new = {lane.index: number for number, lane in enumerate(main.values())}
    return replace(
        strip,
        lanes=tuple(replace(lane, index=new[lane.index]) for lane in main.values()),
        pieces=tuple(
            replace(piece, lanes=tuple(new[lane] for lane in piece.lanes if lane in new))
            for piece in strip.pieces
            if any(lane in new for lane in piece.lanes)
        ),
        wedges=tuple(replace(w, lane=new[w.lane]) for w in strip.wedges if w.lane in new),
        brackets=tuple(replace(b, lane=new[b.lane]) for b in strip.brackets if b.lane in new),
    )


def _runs(columns: tuple[StripColumn, ...], room: float) -> Iterator[tuple[StripColumn, ...]]:
    """Yield as many columns at a time as fit side by side."""
    run: tuple[StripColumn, ...] = ()
    for column in columns:
        longer = (*run, column)
        if run and Scale(longer, PER_MINUTE).width > room:
            yield run
            run = (column,)
        else:
            run = longer
    if run:
        yield run


def _cut(strip: Strip, columns: tuple[StripColumn, ...]) -> Strip:
    """Return a strip of these columns, with the work in them and what dries meanwhile."""
    if not columns:
        return replace(strip, columns=())
    shown = Interval(columns[0].interval.start, columns[-1].interval.end)
    pieces = tuple(piece for piece in strip.pieces if piece.interval.overlaps(shown))
    wedges = tuple(
        wedge
        for wedge in strip.wedges
        if wedge.start < shown.end and (wedge.opens or 0) > shown.start
    )
    busy = {lane for piece in pieces for lane in piece.lanes} | {wedge.lane for wedge in wedges}
    return replace(
        strip,
        columns=columns,
        pieces=pieces,
        wedges=wedges,
        lanes=tuple(lane for lane in strip.lanes if lane.index in busy),
        brackets=tuple(
            bracket
            for bracket in strip.brackets
            if bracket.lane in busy and shown.start < bracket.at <= shown.end
        ),
        set_ups=tuple(up for up in strip.set_ups if up.interval.overlaps(shown)),
        held=tuple(held for held in strip.held if held.interval.overlaps(shown)),
    )


def _rows(at: StripPicture) -> Iterator[PictureRow]:
    for number, airbrush in enumerate(at.strip.airbrushes):
        used = [up.airbrush for up in at.strip.set_ups] + [held.airbrush for held in at.strip.held]
        if number in used:
            name = text_bands(words.capital(airbrush), at.font, 6, at.left - 14, SOFT)
            least = at.line * 2.6
            yield PictureRow(None, number, tuple(name), max(least, sum(b.height for b in name) + 6))
    lanes = at.strip.lanes
    if len({(lane.project, lane.model) for lane in lanes}) == len(lanes):
        for lane in lanes:  # one each: the model's name is that of its lane
            name = text_bands(lane.model, at.strong, 0, at.left - 8)
            least = at.line * 2.0
            yield PictureRow(lane, None, tuple(name), max(least, sum(b.height for b in name) + 4))
        return
    model = ("", "")
    for lane in lanes:
        if (lane.project, lane.model) != model:
            model = (lane.project, lane.model)
            name = text_bands(lane.model, at.strong, 0, at.width)
            yield PictureRow(None, None, tuple(name), sum(band.height for band in name) + 4)
        name = text_bands(words.listed(lane.parts), at.font, 6, at.left - 14, SOFT)
        least = at.line * 2.6
        yield PictureRow(lane, None, tuple(name), max(least, sum(band.height for band in name) + 6))


def _pages(
    at: StripPicture, rows: list[PictureRow], most: float, first: float
) -> Iterator[list[PageBand]]:
    """Yield the rows under a head of their own, as many at a time as a page holds."""
    if sum(row.height for row in rows) + at.head + at.line <= most or first < most / 3:
        first = most  # better whole on the next page
    while rows:
        room, taken = first - at.head - at.line, 0
        first = most
        while taken < len(rows) and (rows[taken].height <= room or not taken):
            room -= rows[taken].height
            taken += 1
        if taken > 1 and taken < len(rows) and _is_heading(rows[taken - 1]):
            taken -= 1  # a heading stays with its lanes
        here, rows = rows[:taken], rows[taken:]
        head = PageBand(at.head, lambda painter, top: _head(painter, at, top))
        lanes = (PageBand(row.height, _row_drawer(at, row)) for row in here)
        yield [head, *lanes, gap_of(at.line)]


def _is_heading(row: PictureRow) -> bool:
    return row.lane is None and row.airbrush is None


def _head(painter: QPainter, at: StripPicture, top: float) -> None:
    """Draw dates, hours, and how long the films are left alone between."""
    zone = ZoneInfo(at.strip.zone)
    for span in at.scale.spans:
        left = at.left + span.left
        if span.column is None:
            painter.setFont(at.font)
            painter.setPen(SOFT)
            text = words.short_span(span.end - span.start)
            wide = QFontMetricsF(at.font).horizontalAdvance(text)
            painter.drawText(QPointF(left + (span.width - wide) / 2, top + at.line), text)
            continue
        painter.setPen(INK)
        painter.setFont(at.strong)
        painter.drawText(QPointF(left, top + at.line), words.day(at.strip.columns[span.column].on))
        painter.setFont(at.font)
        painter.setPen(SOFT)
        end = left - 9.0
        for minute in at.scale.ticks(span):
            clock = words.clock(minute, zone)
            wide = QFontMetricsF(at.font).horizontalAdvance(clock)
            if at.x(minute) > end + 8 and at.x(minute) + wide <= left + span.width + 20:
                painter.drawText(QPointF(at.x(minute), top + at.line * 2), clock)
                end = at.x(minute) + wide
    painter.setPen(QPen(SOFT, 0.8))
    bottom = top + at.head - 1
    painter.drawLine(QPointF(at.left, bottom), QPointF(at.width, bottom))


def _row_drawer(at: StripPicture, row: PictureRow) -> Draw:
    def draw(painter: QPainter, top: float) -> None:
        _ground(painter, at, row, top)
        y = top + 3
        for band in row.name:
            band.draw(painter, y)
            y += band.height
        if row.lane is not None:
            _lane(painter, at, row.lane, top, row.height)
        elif row.airbrush is not None:
            _airbrush(painter, at, row.airbrush, top, row.height)

    return draw


def _ground(painter: QPainter, at: StripPicture, row: PictureRow, top: float) -> None:
    for span in at.scale.spans:
        if span.column is None:
            area = QRectF(at.left + span.left, top, span.width, row.height)
            painter.fillRect(area, ON_PAPER.colour("gutter"))
    if _is_heading(row):
        painter.fillRect(QRectF(0, top, at.width, row.height), ON_PAPER.colour("gutter"))
    painter.setPen(QPen(ON_PAPER.colour("rule"), 0.6))
    painter.drawLine(QPointF(0, top + row.height), QPointF(at.width, top + row.height))


def _lane(painter: QPainter, at: StripPicture, lane: Lane, top: float, height: float) -> None:
    painter.save()
    painter.setClipRect(QRectF(at.left, top, at.width - at.left, height))
    middle, stroke = top + at.line * 1.75, at.line * 0.9
    for wedge in at.strip.wedges:
        if wedge.lane == lane.index:
            left = at.x(wedge.start)
            right = at.width if wedge.opens is None else at.x(wedge.opens)
            corners = wedge_outline(left, right, middle, stroke * 0.82, right)
            mark_drawing.paint_wedge(painter, corners, ON_PAPER, strong=False)
            if wedge.opens is not None and wedge.waiting is not None:
                mark_drawing.paint_ring(painter, right, middle, ON_PAPER, at.line * 0.2)
    mine = [piece for piece in at.strip.pieces if lane.index in piece.lanes]
    for piece in mine:
        left, right = at.x(piece.interval.start), at.x(piece.free)
        if piece.free < piece.interval.end:
            wide = at.x(piece.interval.end) - right
            tail = QRectF(right, middle - stroke / 2, wide, stroke)
            mark_drawing.paint_tail(painter, tail, ON_PAPER, swatch=piece.swatch)
        area = QRectF(left, middle - stroke / 2, max(5.0, right - left), stroke)
        mark_drawing.paint_work(
            painter,
            area,
            ON_PAPER,
            swatch=piece.swatch,
            tool=piece.tool,
            stage=piece.stage,
            name=str(piece.key),
            faded=piece.logged,
        )
    for bracket in at.strip.brackets:
        if bracket.lane == lane.index:
            high, low = middle - stroke * 0.72, middle + stroke * 0.72
            mark_drawing.paint_bracket(painter, at.x(bracket.at), high, low, ON_PAPER)
    said = [(piece.interval, words.stage_word(piece.stage)) for piece in mine]
    _words(painter, at, said, top)
    painter.restore()


def _airbrush(painter: QPainter, at: StripPicture, number: int, top: float, height: float) -> None:
    """Draw what an airbrush holds, and when it is loaded, changed and cleaned."""
    painter.save()
    painter.setClipRect(QRectF(at.left, top, at.width - at.left, height))
    middle, stroke = top + at.line * 1.75, at.line * 0.9
    for held in at.strip.held:
        if held.airbrush == number:
            left, right = at.x(held.interval.start), at.x(held.interval.end)
            painter.setPen(QPen(SOFT, 0.8))
            painter.setBrush(QColor(held.swatch))
            painter.drawRect(QRectF(left, middle - stroke / 4, right - left, stroke / 2))
    mine = [work for work in at.strip.set_ups if work.airbrush == number]
    for work in mine:
        left, right = at.x(work.interval.start), at.x(work.interval.end)
        painter.setPen(QPen(INK, 0.8))
        painter.setBrush(QColor(work.swatch) if work.swatch else ON_PAPER.colour("sheet"))
        painter.drawRect(QRectF(left, middle - stroke / 2, max(3.0, right - left), stroke))
    _words(painter, at, [(work.interval, translated(row((work.kind,)))) for work in mine], top)
    painter.restore()


def _words(
    painter: QPainter, at: StripPicture, named: list[tuple[Interval, str]], top: float
) -> None:
    """Write what is done over each stroke that has room for the whole of it."""
    metrics = QFontMetricsF(at.font)
    named = sorted(named)
    labels = [
        Label(at.x(interval.start), metrics.horizontalAdvance(text) + 1, at.width)
        for interval, text in named
    ]
    painter.setFont(at.font)
    painter.setPen(INK)
    rooms = room_for_labels(labels, at.width, 4)
    for label, (_, text), room in zip(labels, named, rooms, strict=True):
        if room:
            painter.drawText(QPointF(label.left, top + at.line), text)
