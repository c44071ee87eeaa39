"""Large letters, key caps and strokes for the bench mode.

Sizes are given for a window of 1280 × 720 and grow with it.  Whoever stands
a metre and a half away reads letters about 7 mm high with ease (16 minutes
of arc, the least that ISO 9241-303 asks for).  On a screen of 24 inches, 299 mm
high, small letters without ascenders are that high in `PLAIN`: all that is
needed for the work is written in it or larger.
"""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QLabel, QSizePolicy, QWidget

from app.window import mark_drawing
from app.window.palette import Colours
from planner.values.step import Stage, Tool

USUAL = (1280, 720)
CLOCK, HEADING, LARGE, PLAIN, SMALL = 60, 58, 36, 31, 22  # letters [pixels]


def scale_of(size: QSize) -> float:
    """Return by how much letters grow in a window of this size."""
    return max(0.6, min(size.width() / USUAL[0], size.height() / USUAL[1]))


def big(
    words_: str, size: float, colours: Colours, *, colour: str = "ink", bold: bool = False
) -> QLabel:
    """Return a label in letters of ``size`` pixels that breaks its lines."""
    label = QLabel(words_)
    label.setTextFormat(Qt.TextFormat.PlainText)
    label.setFont(font_of(label.font(), size, bold=bold))
    label.setWordWrap(True)
    label.setMinimumWidth(40)
    palette = label.palette()
    palette.setColor(label.foregroundRole(), QColor(getattr(colours, colour)))
    label.setPalette(palette)
    return label


def font_of(old: QFont, size: float, *, bold: bool = False) -> QFont:
    """Return a font with letters of ``size`` pixels."""
    font = QFont(old)
    font.setPixelSize(max(8, round(size)))
    if bold:
        font.setWeight(QFont.Weight.DemiBold)
    return font


class Swatch(QWidget):
    """A broad stroke of a coating, with its tool's own end."""

    def __init__(
        self, colours: Colours, scale: float, swatch: str, tool: Tool, stage: Stage
    ) -> None:
        super().__init__()
        self._colours, self._scale = colours, scale
        self._work = (swatch, tool, stage)
        self.setFixedSize(round(150 * scale), round(50 * scale))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the stroke."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.scale(self._scale, self._scale)
        swatch, tool, stage = self._work
        mark_drawing.paint_work(
            painter,
            QRectF(3, 5, 142, 40),
            self._colours,
            swatch=swatch,
            tool=tool,
            stage=stage,
            name=swatch,
        )
        painter.end()
        event.accept()


class Warn(QWidget):
    """A caution's triangle; the words beside it say what."""

    def __init__(self, colours: Colours, scale: float) -> None:
        super().__init__()
        self._colours, self._scale = colours, scale
        self.setFixedSize(round(26 * scale), round(26 * scale))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the triangle."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.scale(self._scale * 1.5, self._scale * 1.5)
        mark_drawing.paint_warning(painter, QRectF(1, 2, 15, 13), self._colours)
        painter.end()
        event.accept()


class KeyCap(QWidget):
    """A key and what it does."""

    def __init__(self, colours: Colours, scale: float, key: str, words_: str) -> None:
        super().__init__()
        self._colours, self._scale, self._key, self._words = colours, scale, key, words_
        self._font = font_of(self.font(), SMALL * scale)
        self._bold = font_of(self.font(), SMALL * scale, bold=True)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(f"{key}: {words_}")

    def _cap(self) -> float:
        pad = 9 * self._scale
        return max(
            QFontMetricsF(self._bold).horizontalAdvance(self._key) + 2 * pad, 30 * self._scale
        )

    def sizeHint(self) -> QSize:
        """Return the room for both."""
        words_ = QFontMetricsF(self._font).horizontalAdvance(self._words)
        return QSize(
            round(self._cap() + words_ + 10 * self._scale), round(SMALL * 1.65 * self._scale)
        )

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the cap, and the words beside it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        cap = QRectF(1, 1, self._cap() - 2, self.height() - 2)
        painter.setPen(QPen(self._colours.colour("soft"), max(1.0, 1.4 * self._scale)))
        painter.setBrush(self._colours.colour("gutter"))
        painter.drawRoundedRect(cap, 5 * self._scale, 5 * self._scale)
        painter.setPen(self._colours.colour("ink"))
        painter.setFont(self._bold)
        painter.drawText(cap, Qt.AlignmentFlag.AlignCenter, self._key)
        painter.setFont(self._font)
        rest = QRectF(cap.right() + 7 * self._scale, 0, self.width(), self.height())
        painter.drawText(
            rest, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, self._words
        )
        painter.end()
        event.accept()


class PlaceLine(QWidget):
    """A place with the key that ticks it off, and beside it the part; ticked, its box is filled."""

    def __init__(
        self, colours: Colours, scale: float, key: str, name: str, *, on: bool, part: str = ""
    ) -> None:
        super().__init__()
        self._colours, self._scale = colours, scale
        self._key, self._name, self._part = key, name, part
        self.on = on
        self.setFixedHeight(round(42 * scale))
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        told = (key, name, part, "✓" if on else "")
        self.setAccessibleName(" ".join(word for word in told if word))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint key, box, name and part."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        scale, colours = self._scale, self._colours
        painter.setFont(font_of(self.font(), SMALL * scale, bold=True))
        painter.setPen(colours.colour("soft"))
        painter.drawText(
            QRectF(0, 0, 24 * scale, self.height()), Qt.AlignmentFlag.AlignCenter, self._key
        )
        self._paint_box(painter)
        room = QRectF(68 * scale, 0, self.width() - 70 * scale, self.height())
        ink = colours.colour("soft" if self.on else "ink")
        taken = _write(painter, self._name, font_of(self.font(), PLAIN * scale), room, ink)
        room.setLeft(room.left() + taken + 14 * scale)
        small = font_of(self.font(), SMALL * scale)
        _write(painter, self._part, small, room, colours.colour("soft"))
        painter.end()
        event.accept()

    def _paint_box(self, painter: QPainter) -> None:
        scale, colours, middle = self._scale, self._colours, self.height() / 2
        box = QRectF(30 * scale, middle - 13 * scale, 26 * scale, 26 * scale)
        painter.setPen(QPen(colours.colour("ink"), 2 * scale))
        painter.setBrush(colours.colour("ink" if self.on else "sheet"))
        painter.drawRoundedRect(box, 4 * scale, 4 * scale)
        if self.on:
            painter.setPen(QPen(colours.colour("sheet"), 3.4 * scale))
            painter.drawPolyline(
                [
                    QPointF(box.left() + 6 * scale, middle),
                    QPointF(box.left() + 11 * scale, middle + 6 * scale),
                    QPointF(box.right() - 5 * scale, middle - 7 * scale),
                ]
            )


def _write(painter: QPainter, told: str, font: QFont, room: QRectF, ink: QColor) -> float:
    """Write a line as far as there is room; return how long it is [pixels]."""
    metrics = QFontMetricsF(font)
    line = metrics.elidedText(told, Qt.TextElideMode.ElideRight, max(0.0, room.width()))
    painter.setFont(font)
    painter.setPen(ink)
    painter.drawText(room, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, line)
    return metrics.horizontalAdvance(line)
