"""A place's films as a cross-section, like a paint micrograph."""

from __future__ import annotations

import math
from dataclasses import dataclass
from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication, QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.window import mark_drawing
from app.window.palette import LIGHT, Colours
from app.window.room.plot import spread
from app.window.stack.coat_rows import CoatRow, PlaceStack
from app.window.stack.model import coat_name, coat_time, verdict_line
from planner.layers.overcoat_table import LayerVerdict
from planner.values.coating import Finish

MARGIN, PLASTIC = 20.0, 54.0
LEAST_FILM, MOST_FILM = 16.0, 58.0
MOST_STRETCH = 1.7  # a few films are drawn higher, but not as high as the view
VCENTRE = Qt.AlignmentFlag.AlignVCenter
LEAST_WIDTH = 316
PALE, SHADE = 0.45, (30, 28, 25, 150)  # the least lightness of a pale film; its edge
LEADER = 27.0  # from a film to its words
BETWEEN = 3.0  # between the words of two films


@dataclass(frozen=True)
class FilmBand:
    """Where one film lies: [top, bottom) at its middle."""

    coat: CoatRow
    top: float
    bottom: float

    @property
    def middle(self) -> float:
        """Vertical centre."""
        return (self.top + self.bottom) / 2


@dataclass(frozen=True)
class Lines:
    """How the words of every film are laid out, ``beside`` with the time in the name's line."""

    small: QFont
    body: QFontMetricsF
    fine: QFontMetricsF
    left: float
    width: float
    beside: bool

    @property
    def gap(self) -> float:
        """Height of one film's words, with the space to the next."""
        high = self.body.height() + self.fine.height() + BETWEEN
        return high if self.beside else high + self.fine.height()


def bands(coats: tuple[CoatRow, ...], top: float, bottom: float) -> list[FilmBand]:
    """Stack films from ``bottom`` up; thick ones are higher, thin ones still to be seen."""
    wanted = [min(MOST_FILM, max(LEAST_FILM, 9.0 * math.sqrt(coat.thickness_um))) for coat in coats]
    room = bottom - top
    scale = min(MOST_STRETCH, room / sum(wanted)) if wanted else 1.0
    found = []
    y = bottom
    for coat, height in zip(coats, wanted, strict=True):
        found.append(FilmBand(coat, y - height * scale, y))
        y -= height * scale
    return found


class CrossSection(QWidget):
    """The drawing, with names at the right.

    Signals
    -------
    chosen(Coat)
        A film was clicked on.
    """

    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._colours = LIGHT
        self._stack: PlaceStack | None = None
        self._chosen: CoatRow | None = None
        self._zone, self._now = ZoneInfo("UTC"), 0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(LEAST_WIDTH, 200)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.update()

    def show_stack(self, stack: PlaceStack | None, zone: ZoneInfo, now: int) -> None:
        """Show another place."""
        self._stack, self._zone, self._now, self._chosen = stack, zone, now, None
        self._make_room()
        if stack is not None:
            self.setAccessibleName(
                self.tr("Cross-section of {place}; the table below says the same").format(
                    place=stack.place
                )
            )
        self.update()

    def choose(self, coat: CoatRow | None) -> None:
        """Frame a film."""
        self._chosen = coat
        self.update()

    def middle_of(self, coat: CoatRow) -> int:
        """Return the height at which a film lies, 0 for one that is not drawn."""
        return next((round(band.middle) for band in self._bands() if band.coat == coat), 0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Need more height where the words of a film take three lines."""
        super().resizeEvent(event)
        self._make_room()

    def changeEvent(self, event: QEvent) -> None:
        """Follow the size of the letters."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._make_room()

    def _make_room(self) -> None:
        """Be high enough for the words of every film; the view scrolls what it cannot show."""
        count = len(self._stack.coats) if self._stack else 0
        need = MARGIN + 8 + count * self._lines().gap + 6 + PLASTIC + MARGIN
        self.setMinimumHeight(max(200, math.ceil(need)))

    def _lines(self) -> Lines:
        """Return how the words of a film are laid out at the present width."""
        small = QFont(self.font())
        small.setPointSizeF(small.pointSizeF() * 0.9)
        body, fine = QFontMetricsF(self.font()), QFontMetricsF(small)
        left = self._right() + LEADER
        width = self.width() - left - 4
        beside = True
        for coat in self._stack.coats if self._stack else ():
            when = fine.horizontalAdvance(coat_time(coat, self._zone, self._now))
            if body.horizontalAdvance(coat_name(coat)) + 10 + when > width:
                beside = False
        return Lines(small, body, fine, left, width, beside)

    def sizeHint(self) -> QSize:
        """Return a size for a dozen films."""
        return QSize(460, 420)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose the film under the pointer."""
        for band in self._bands():
            if band.top <= event.position().y() < band.bottom:
                self.chosen.emit(band.coat)
                return
        super().mousePressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint plastic, films, verdicts and names."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if self._stack is not None:
            font = QFont(self.font())
            painter.setFont(font)
            found = self._bands()
            for band in reversed(found):  # so that each lower film's own surface is seen
                self._film(painter, band)
            self._plastic(painter)
            self._names(painter, found)
        painter.end()
        event.accept()

    def _right(self) -> float:
        return max(72.0, self.width() * 0.36 if self.width() >= 420 else self.width() * 0.28)

    def _bottom(self) -> float:
        return self.height() - MARGIN - PLASTIC

    def _bands(self) -> list[FilmBand]:
        coats = self._stack.coats if self._stack else ()
        return bands(coats, MARGIN + 14, self._bottom())

    def _edge(self, y: float, phase: float, roughness: float) -> list[QPointF]:
        points = []
        x = MARGIN + 14
        right = self._right()
        while x <= right:
            swell = 1.8 * math.sin(x / 37 + phase) + 0.9 * math.sin(x / 13 + 2.3 * phase)
            grain = roughness * math.sin(x * 1.7 + phase * 5) * math.sin(x * 0.61)
            points.append(QPointF(x, y + swell + grain))
            x += 3
        return points

    def _plastic(self, painter: QPainter) -> None:
        assert self._stack is not None
        top = self._edge(self._bottom(), 0.7, 0)
        shape = [*top, QPointF(top[-1].x(), self.height() - MARGIN)]
        shape.append(QPointF(top[0].x(), self.height() - MARGIN))
        painter.setPen(QPen(self._colours.colour("soft", 0.8), 1))
        painter.setBrush(self._colours.colour("gutter"))
        painter.drawPolygon(QPolygonF(shape))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(self._colours.colour("soft", 0.35), Qt.BrushStyle.Dense6Pattern))
        painter.drawPolygon(QPolygonF(shape))
        painter.setPen(self._colours.colour("ink"))
        rect = QRectF(self._right() + LEADER, self._bottom(), self.width(), PLASTIC)
        painter.drawText(
            rect, VCENTRE, QCoreApplication.translate("material", self._stack.material)
        )

    def _film(self, painter: QPainter, band: FilmBand) -> None:
        coat = band.coat
        phase = mark_drawing.phase_of(str(coat.key))
        roughness = {Finish.MATTE: 1.6, Finish.SATIN: 0.6, Finish.GLOSS: 0.0}[coat.finish]
        upper = self._edge(band.top, phase, roughness)
        path = QPainterPath(upper[0])
        for point in upper[1:]:
            path.lineTo(point)
        path.lineTo(upper[-1].x(), band.bottom + 4)
        path.lineTo(upper[0].x(), band.bottom + 4)
        path.closeSubpath()
        # A pale edge on a pale film would not part it from one of the same colour below.
        pale = QColor(coat.swatch).lightnessF() > PALE
        edge = QColor(*SHADE) if pale else mark_drawing.edge_on(coat.swatch, self._colours)
        painter.setPen(QPen(edge, 1))
        painter.setBrush(QColor(coat.swatch))
        painter.drawPath(path)
        if coat.finish is Finish.GLOSS:
            painter.setPen(QPen(QColor(255, 255, 255, 150), 1.2))
            painter.drawPolyline([QPointF(p.x(), p.y() + 3) for p in upper[4 : len(upper) // 2]])
        if coat == self._chosen:
            painter.setPen(QPen(self._colours.colour("focus"), 2.4))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(
                QRectF(
                    upper[0].x() - 3,
                    band.top - 1,
                    upper[-1].x() - upper[0].x() + 6,
                    band.bottom - band.top + 2,
                )
            )

    def _names(self, painter: QPainter, found: list[FilmBand]) -> None:
        lines = self._lines()
        upward = list(reversed(found))
        low = self._bottom() - 6 - lines.gap / 2
        places = spread(
            [band.middle for band in upward], lines.gap, MARGIN + 8 + lines.gap / 2, low
        )
        for band, y in zip(upward, places, strict=True):
            self._verdict(painter, band, y)
            self._words(painter, band.coat, y, lines)

    def _words(self, painter: QPainter, coat: CoatRow, y: float, lines: Lines) -> None:
        """Write a film's name, when it is laid, and what is thought of it."""
        when = coat_time(coat, self._zone, self._now)
        top, body = y - (lines.gap - BETWEEN) / 2, painter.font()
        room = lines.width
        if lines.beside:
            room -= lines.fine.horizontalAdvance(when) + 10
        painter.setPen(self._colours.colour("ink"))
        name = lines.body.elidedText(coat_name(coat), Qt.TextElideMode.ElideRight, room)
        painter.drawText(QRectF(lines.left, top, room, lines.body.height()), VCENTRE, name)
        painter.setFont(lines.small)
        painter.setPen(self._colours.colour("soft"))
        side = Qt.AlignmentFlag.AlignRight if lines.beside else Qt.AlignmentFlag.AlignLeft
        if not lines.beside:
            top += lines.body.height()
        high = lines.body.height() if lines.beside else lines.fine.height()
        painter.drawText(QRectF(lines.left, top, lines.width, high), VCENTRE | side, when)
        top += high
        grave = coat.verdict.rank > LayerVerdict.ADVICE.rank
        painter.setPen(self._colours.colour("closing_word" if grave else "drying_word"))
        line = verdict_line(coat, self._zone, self._now)
        if lines.fine.horizontalAdvance(line) > lines.width:  # the table has the state as well
            line = verdict_line(coat, self._zone, self._now, with_state=False)
        shown = lines.fine.elidedText(line, Qt.TextElideMode.ElideRight, lines.width)
        painter.drawText(QRectF(lines.left, top, lines.width, lines.fine.height()), VCENTRE, shown)
        painter.setFont(body)

    def _verdict(self, painter: QPainter, band: FilmBand, y: float) -> None:
        """Paint the verdict's sign at the interface, and a line to the name."""
        right = self._right()
        painter.setPen(QPen(self._colours.colour("soft", 0.6), 1))
        painter.drawLine(QPointF(right + 2, band.middle), QPointF(right + LEADER - 5, y))
        x, at = MARGIN + 2, band.bottom
        verdict = band.coat.verdict
        if verdict is LayerVerdict.SOUND:
            painter.setPen(QPen(self._colours.colour("ready"), 2))
            painter.setBrush(self._colours.colour("sheet"))
            painter.drawEllipse(QPointF(x, at), 5, 5)
        elif verdict is LayerVerdict.WAIT:
            corners = [(x - 7, at - 6), (x + 7, at), (x + 7, at), (x - 7, at + 6)]
            mark_drawing.paint_wedge(painter, corners, self._colours, strong=True)
        elif verdict in (LayerVerdict.BARRIER, LayerVerdict.NEVER):
            painter.setPen(QPen(self._colours.colour("closing"), 2.6))
            painter.drawLine(QPointF(x - 5, at - 5), QPointF(x + 5, at + 5))
            painter.drawLine(QPointF(x - 5, at + 5), QPointF(x + 5, at - 5))
        else:
            mark_drawing.paint_warning(painter, QRectF(x - 7, at - 7, 14, 12), self._colours)
