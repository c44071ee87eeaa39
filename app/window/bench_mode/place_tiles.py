"""The places of a job as tiles: each with its key, unpainted against painted."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QGridLayout, QSizePolicy, QWidget

from app.window import mark_drawing, words
from app.window.bench_mode.large_text import PLAIN, SMALL, font_of
from app.window.palette import Colours
from planner.values.step import Stage, Tool

ACROSS = 5  # tiles in a row
HIGH = 104  # of a tile [pixels at the usual size]


@dataclass(frozen=True)
class TileFace:
    """What stands on a tile: its key, place and part, and the stroke of its colour."""

    key: str
    name: str
    part: str
    on: bool
    following: bool
    swatch: str
    tool: Tool
    stage: Stage


class PlaceTile(QWidget):
    """One place; painted it bears its colour, unpainted an empty outline."""

    def __init__(self, colours: Colours, scale: float, shown: TileFace) -> None:
        super().__init__()
        self._colours, self._scale = colours, scale
        self.shown = shown
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setFixedHeight(round(HIGH * scale))
        state = self.state_word()
        self.setAccessibleName(", ".join(filter(None, (shown.key, shown.name, shown.part, state))))
        self.setToolTip(" · ".join(filter(None, (shown.name, shown.part))))

    def state_word(self) -> str:
        """Return how the place stands."""
        if self.shown.on:
            return words.tr("done")
        return words.tr("now") if self.shown.following else words.tr("not yet")

    def sizeHint(self) -> QSize:
        """Return the size at which it reads well."""
        return QSize(round(200 * self._scale), round(HIGH * self._scale))

    def minimumSizeHint(self) -> QSize:
        """Return how narrow it may become."""
        return QSize(round(120 * self._scale), round(HIGH * self._scale))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint tile, key, stroke and words."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        scale, colours, shown = self._scale, self._colours, self.shown
        edge = colours.colour("focus" if shown.following else "soft")
        painter.setPen(QPen(edge, (3.0 if shown.following else 1.4) * scale))
        painter.setBrush(colours.colour("stroke" if shown.following else "paper"))
        whole = QRectF(self.rect()).adjusted(2, 2, -2, -2)
        painter.drawRoundedRect(whole, 8 * scale, 8 * scale)
        pad = 12 * scale
        inner = whole.adjusted(pad, pad * 0.8, -pad, -pad * 0.6)
        self._paint_head(painter, inner)
        self._paint_stroke(painter, inner)
        self._write(painter, inner)
        painter.end()
        event.accept()

    def _paint_head(self, painter: QPainter, inner: QRectF) -> None:
        """Paint the key at the left, and at the right how the place stands."""
        scale, colours = self._scale, self._colours
        small = font_of(self.font(), SMALL * scale, bold=True)
        cap = QRectF(inner.left(), inner.top(), 30 * scale, 28 * scale)
        painter.setFont(small)
        painter.setPen(QPen(colours.colour("soft"), 1.4 * scale))
        painter.setBrush(colours.colour("gutter"))
        painter.drawRoundedRect(cap, 5 * scale, 5 * scale)
        painter.setPen(colours.colour("ink"))
        painter.drawText(cap, Qt.AlignmentFlag.AlignCenter, self.shown.key)
        box = QRectF(inner.right() - 28 * scale, inner.top(), 28 * scale, 28 * scale)
        if self.shown.on:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colours.colour("ink"))
            painter.drawRoundedRect(box, 5 * scale, 5 * scale)
            painter.setPen(QPen(colours.colour("paper"), 3.4 * scale))
            middle = box.center().y()
            painter.drawPolyline(
                [
                    QPointF(box.left() + 6 * scale, middle),
                    QPointF(box.left() + 12 * scale, middle + 6 * scale),
                    QPointF(box.right() - 6 * scale, middle - 7 * scale),
                ]
            )
        elif self.shown.following:
            painter.setPen(colours.colour("drying_word"))
            right = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(
                inner.adjusted(0, 0, 0, cap.bottom() - inner.bottom()), right, self.state_word()
            )

    def _paint_stroke(self, painter: QPainter, inner: QRectF) -> None:
        scale, shown = self._scale, self.shown
        left = inner.left() + 40 * scale
        room = inner.right() - 40 * scale - left if shown.on else inner.width() * 0.42
        rect = QRectF(left, inner.top() + 2 * scale, min(room, 130 * scale), 24 * scale)
        if shown.on:
            mark_drawing.paint_work(
                painter,
                rect,
                self._colours,
                swatch=shown.swatch,
                tool=shown.tool,
                stage=shown.stage,
                name=shown.name,
            )
            return
        pen = QPen(self._colours.colour("soft"), 1.6 * scale, Qt.PenStyle.DashLine)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(rect, rect.height() / 2, rect.height() / 2)

    def _write(self, painter: QPainter, inner: QRectF) -> None:
        scale = self._scale
        font = font_of(self.font(), PLAIN * scale * 0.78, bold=self.shown.following)
        line = QRectF(inner.left(), inner.top() + 31 * scale, inner.width(), 30 * scale)
        for told, letters, colour in (
            (self.shown.name, font, "ink"),
            (self.shown.part, font_of(self.font(), SMALL * scale), "soft"),
        ):
            metrics = QFontMetricsF(letters)
            painter.setFont(letters)
            painter.setPen(self._colours.colour(colour))
            cut = metrics.elidedText(told, Qt.TextElideMode.ElideRight, line.width())
            painter.drawText(line, Qt.AlignmentFlag.AlignVCenter, cut)
            line = QRectF(line.left(), line.bottom(), line.width(), inner.bottom() - line.bottom())


def tiles(colours: Colours, scale: float, faces: list[TileFace]) -> QWidget:
    """Return tiles in rows of five, all of one width."""
    holder = QWidget()
    grid = QGridLayout(holder)
    grid.setContentsMargins(0, 0, 0, 0)
    grid.setSpacing(round(12 * scale))
    for at, shown in enumerate(faces):
        grid.addWidget(PlaceTile(colours, scale, shown), at // ACROSS, at % ACROSS)
    for column in range(min(ACROSS, max(3, len(faces)))):
        grid.setColumnStretch(column, 1)
    return holder
