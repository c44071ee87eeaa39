"""The steps of one model drawn in layers, with what holds the end marked.

The tree beside it says the same: what each step waits for, and how long it can wait.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QFont,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPolygonF,
)
from PySide6.QtWidgets import QScrollArea, QToolTip, QWidget

from app.window import mark_drawing, words
from app.window.model_editor.layers import Layout
from app.window.palette import LIGHT, Colours
from planner.values.step import Stage, Tool

WIDE, HIGH = 158.0, 46.0
BETWEEN, LINE = 40.0, 58.0
EDGE = 14.0
EMPTY = Layout({}, (), 0, 0)
STEERING = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}


@dataclass(frozen=True)
class Shown:
    """What is drawn of one step; ``wait`` says how long it can wait, "" if nobody knows."""

    name: str
    tool: Tool
    stage: Stage
    swatch: str
    wait: str
    critical: bool


class NetworkDrawing(QWidget):
    """Boxes in layers from left to right, joined by what waits for what.

    Signals
    -------
    chosen(str)
        The id of the step that was clicked, or reached by the arrow keys.
    """

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._colours = LIGHT
        self._layout = EMPTY
        self._steps: Mapping[str, Shown] = {}
        self.current = ""
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(
            self.tr("What waits for what, drawn; the tree says the same in words")
        )

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.update()

    def show_layout(self, layout: Layout, steps: Mapping[str, Shown]) -> None:
        """Draw other steps."""
        self._layout, self._steps = layout, steps
        if self.current not in steps:
            self.current = ""
        self.setMinimumSize(self.sizeHint())
        self.resize(self.sizeHint())
        self.update()

    def choose(self, step: str) -> None:
        """Mark a step, and bring it into sight."""
        self.current = step
        self.update()
        area = self._area()
        if area is not None and step in self._layout.spots:
            middle = self.box(step).center()
            area.ensureVisible(int(middle.x()), int(middle.y()), int(WIDE), int(HIGH))

    def sizeHint(self) -> QSize:
        """Return a size that holds every layer."""
        wide = self._layout.layers * (WIDE + BETWEEN) - BETWEEN + 2 * EDGE
        return QSize(int(max(wide, 60)), int(self._layout.lines * LINE + 2 * EDGE))

    def box(self, step: str) -> QRectF:
        """Return where a step is drawn."""
        layer, line = self._layout.spots[step]
        return QRectF(EDGE + layer * (WIDE + BETWEEN), EDGE + line * LINE, WIDE, HIGH)

    def step_at(self, point: QPointF) -> str:
        """Return the step drawn at a point, "" where there is none."""
        return next((spot for spot in self._layout.spots if self.box(spot).contains(point)), "")

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint links below, boxes above."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        near = QRectF(event.rect()).adjusted(-WIDE, -HIGH, WIDE, HIGH)
        for before, after in self._layout.links:
            self._link(painter, before, after)
        for step in self._layout.spots:
            if self.box(step).intersects(near):
                self._box(painter, step)
        painter.end()
        event.accept()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose what is clicked."""
        step = self.step_at(event.position())
        if step:
            self._go(step)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Go along with the arrow keys."""
        way = STEERING.get(Qt.Key(event.key()))
        if way is None or not self._layout.spots:
            super().keyPressEvent(event)
            return
        self._go(self._next(*way))

    def event(self, event: QEvent) -> bool:
        """Say what is below the pointer."""
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            step = self.step_at(QPointF(event.pos()))
            QToolTip.showText(event.globalPos(), self.sentence(step) if step else "", self)
            return True
        return super().event(event)

    def sentence(self, step: str) -> str:
        """Return what the drawing says of a step."""
        shown = self._steps[step]
        before = [self._steps[name].name for name in self._layout.before(step)]
        parts = [shown.name]
        if before:
            parts.append(self.tr("waits for {steps}").format(steps=words.listed(before)))
        if shown.critical:
            parts.append(self.tr("sets the end"))
        elif shown.wait:
            parts.append(self.tr("can wait {length}").format(length=shown.wait))
        return ", ".join(parts)

    def _go(self, step: str) -> None:
        self.choose(step)
        self.chosen.emit(step)

    def _next(self, across: int, down: int) -> str:
        spots = self._layout.spots
        if self.current not in spots:
            return next(iter(spots))
        layer, line = spots[self.current]
        if across:
            near = {step: at for step, at in spots.items() if at[0] == layer + across}
            return min(near, key=lambda name: abs(near[name][1] - line), default=self.current)
        same = {step: at[1] for step, at in spots.items() if at[0] == layer}
        beyond = {step: at for step, at in same.items() if (at - line) * down > 0}
        return min(beyond, key=lambda name: abs(beyond[name] - line), default=self.current)

    def _area(self) -> QScrollArea | None:
        viewport = self.parentWidget()
        area = viewport.parentWidget() if viewport else None
        return area if isinstance(area, QScrollArea) else None

    def _link(self, painter: QPainter, before: str, after: str) -> None:
        start, end = self.box(before), self.box(after)
        holds = self._steps[before].critical and self._steps[after].critical
        touched = self.current in (before, after)
        colour = "ink" if holds or touched else "soft"
        painter.setPen(QPen(self._colours.colour(colour), 2.6 if holds else 1.2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        point_f = QPointF(start.right(), start.center().y())
        two = QPointF(end.left() - 5, end.center().y())
        path = QPainterPath(point_f)
        reach = BETWEEN * 0.55
        path.cubicTo(point_f + QPointF(reach, 0), two - QPointF(reach, 0), two)
        painter.drawPath(path)
        tip = QPointF(end.left(), end.center().y())
        painter.setBrush(self._colours.colour(colour))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.drawPolygon(QPolygonF([tip, tip + QPointF(-7, -4), tip + QPointF(-7, 4)]))

    def _box(self, painter: QPainter, step: str) -> None:
        shown, rect, colours = self._steps[step], self.box(step), self._colours
        here = step == self.current
        width = 2.6 if shown.critical else 1.0
        painter.setPen(QPen(colours.colour("ink" if shown.critical else "rule"), width))
        painter.setBrush(colours.colour("stroke" if here else "sheet"))
        painter.drawRoundedRect(rect, 4, 4)
        if here and self.hasFocus():
            painter.setPen(QPen(colours.colour("focus"), 2))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(rect.adjusted(-4, -4, 4, 4), 6, 6)
        mark_drawing.paint_work(
            painter,
            QRectF(rect.left() + 7, rect.top() + 8, 30, 13),
            colours,
            swatch=shown.swatch,
            tool=shown.tool,
            stage=shown.stage,
            name=step,
        )
        words_ = QRect(int(rect.left()) + 43, int(rect.top()) + 3, int(WIDE) - 48, 22)
        font = QFont(self.font())
        font.setWeight(QFont.Weight.DemiBold if shown.critical else QFont.Weight.Normal)
        self._text(painter, words_, shown.name, font, "ink")
        wait = self.tr("sets the end") if shown.critical else shown.wait
        small = QFont(self.font())
        small.setPointSizeF(small.pointSizeF() * 0.88)
        below = QRect(int(rect.left()) + 8, int(rect.top()) + 24, int(WIDE) - 14, 19)
        told = (
            wait if shown.critical or not wait else self.tr("can wait {length}").format(length=wait)
        )
        self._text(painter, below, told, small, "ink" if here else "soft")

    def _text(self, painter: QPainter, rect: QRect, said: str, font: QFont, colour: str) -> None:
        painter.setFont(font)
        painter.setPen(self._colours.colour(colour))
        short = painter.fontMetrics().elidedText(said, Qt.TextElideMode.ElideRight, rect.width())
        painter.drawText(rect, Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft, short)
