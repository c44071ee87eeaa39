"""The evening as one strip: cups with their cleaning, hand work, what opens, and now."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window import mark_drawing, words
from app.window.palette import Colours, contrast
from app.window.plan_snapshot import PlanSnapshot
from app.window.tonight_cards import card_words
from planner.tonight import LoadCard, RunSheet, cards_of
from planner.values.plan import BenchKind

HIGH = 66
TOP, CUP, LOW = 18, 24, 50  # where hours, cups and rings stand
HOUR = 60
HATCH = Qt.BrushStyle.BDiagPattern


class EveningStrip(QWidget):
    """What is done when, on one line of time; its accessible description says the same."""

    def __init__(self, colours: Colours) -> None:
        super().__init__()
        self._colours = colours
        self._sheet: RunSheet | None = None
        self._cards: tuple[LoadCard, ...] = ()
        self._zone = ZoneInfo("UTC")
        self._opens: tuple[int, ...] = ()
        self._start, self._end, self._now = 0, 1, 0
        self.setFixedHeight(HIGH)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("The evening as a strip"))

    def show_evening(self, picture: PlanSnapshot) -> None:
        """Show another evening."""
        sheet = picture.sheet
        self._sheet, self._zone, self._now = sheet, picture.zone, sheet.now
        self._cards = cards_of(sheet.rows)
        within = [film.opens for film in sheet.drying if film.opens is not None]
        self._start = min([sheet.interval.start, *(card.start for card in self._cards)])
        self._start = max(self._start, sheet.interval.start - HOUR)
        self._end = max(sheet.interval.end, self._start + 1)
        self._opens = tuple(sorted({at for at in within if self._start <= at <= self._end}))
        told = [
            self.tr("{start} to {end}: {work}").format(
                start=words.clock(card.start, self._zone),
                end=words.clock(card.end, self._zone),
                work=card_words.heading(card),
            )
            for card in self._cards
        ]
        self.setAccessibleDescription("; ".join(told))
        self.setToolTip("\n".join(told))
        self.update()

    def set_now(self, now: int) -> None:
        """Let the shade reach another minute."""
        self._now = now
        self.update()

    def _x(self, minute: int) -> float:
        share = (minute - self._start) / (self._end - self._start)
        return 6 + (self.width() - 12) * min(1.0, max(0.0, share))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint hours, cups, rings and now."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours = self._colours
        painter.setPen(QPen(colours.colour("rule"), 1))
        painter.setBrush(colours.colour("sheet"))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        if self._sheet is None:
            painter.end()
            return
        now = min(self._end, max(self._start, self._now))
        if now > self._start:
            shade = QRectF(1, 1, self._x(now) - 1, self.height() - 2)
            mark_drawing.paint_past(painter, shade, colours)
        self._paint_hours(painter)
        for card in self._cards:
            self._paint_card(painter, card)
        for at in self._opens:
            mark_drawing.paint_ring(painter, self._x(at), LOW + 6, colours, 4)
        if self._start <= self._now <= self._end:
            painter.setPen(QPen(colours.colour("ink"), 2))
            x = self._x(self._now)
            painter.drawLine(QPointF(x, 2), QPointF(x, self.height() - 2))
        painter.end()
        event.accept()

    def _paint_hours(self, painter: QPainter) -> None:
        colours, metrics = self._colours, painter.fontMetrics()
        step = HOUR
        while (self._end - self._start) / step * 52 > self.width():
            step *= 2
        first = -(-self._start // step) * step
        reached = 0.0
        for at in (self._start, *range(first, self._end, step), self._end):
            told = words.clock(at, self._zone)
            wide = metrics.horizontalAdvance(told)
            x = min(max(4.0, self._x(at) - wide / 2), self.width() - wide - 4.0)
            painter.setPen(QPen(colours.colour("rule"), 1))
            painter.drawLine(QPointF(self._x(at), TOP), QPointF(self._x(at), self.height() - 2))
            if x < reached:
                continue
            painter.setPen(colours.colour("soft"))
            painter.drawText(QRectF(x, 2, wide + 2, TOP - 2), Qt.AlignmentFlag.AlignVCenter, told)
            reached = x + wide + 6

    def _paint_card(self, painter: QPainter, card: LoadCard) -> None:
        """Paint a cup that narrows downwards, its cleaning hatched; hand work as its strokes."""
        colours = self._colours
        last = max(row.free for row in card.rows)
        swatch = card.swatches[0] if card.swatches else ""
        if card.filling is None and not card.airbrush:
            for row in card.rows:
                rect = QRectF(self._x(row.start), CUP, 0, 22)
                rect.setRight(max(rect.left() + 5, self._x(row.free) - 1))
                mark_drawing.paint_work(
                    painter,
                    rect,
                    colours,
                    swatch=row.coats[0].swatch if row.coats else "",
                    tool=row.tool,
                    stage=row.stage,
                    name=str(row.key),
                )
            return
        left, right = self._x(card.start), self._x(last)
        slope = min(5.0, (right - left) / 5)
        cup = QPolygonF(
            [
                QPointF(left, CUP),
                QPointF(right, CUP),
                QPointF(right - slope, CUP + 22),
                QPointF(left + slope, CUP + 22),
            ]
        )
        painter.setPen(mark_drawing.edge_pen(swatch, colours))
        painter.setBrush(mark_drawing.brush_of(swatch, 1.0) if swatch else Qt.BrushStyle.NoBrush)
        painter.drawPolygon(cup)
        self._paint_amount(painter, card, QRectF(left, CUP, right - left, 22))
        for work in card.around:
            if work.kind is BenchKind.CLEAN:
                hatch = QRectF(self._x(work.start), CUP + 2, 0, 18)
                hatch.setRight(max(hatch.left() + 3, self._x(work.end)))
                painter.fillRect(hatch, QBrush(colours.colour("soft"), HATCH))

    def _paint_amount(self, painter: QPainter, card: LoadCard, rect: QRectF) -> None:
        load = card.filling.load if card.filling else None
        if load is None or not load.ml or not card.swatches:
            return
        told = words.fill(words.tr("{ml:.1f} ml"), ml=load.ml)
        if painter.fontMetrics().horizontalAdvance(told) + 10 > rect.width():
            return
        ground = card.swatches[0]
        light, dark = "#ffffff", "#1a1a1a"
        painter.setPen(dark if contrast(dark, ground) > contrast(light, ground) else light)
        painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, told)
