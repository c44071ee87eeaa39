"""The slim column at the left: the rooms, and below them the projects."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QAction, QFont, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QSizePolicy, QVBoxLayout, QWidget

from app.window import mark_drawing
from app.window.palette import LIGHT, Colours
from planner.values.step import Stage, Tool

WIDE = 184  # pixels
BADGE = 44  # room for a number at the right


class RoomButton(QAbstractButton):
    """The name of a room; the chosen one lies on a stroke of paint.

    ``badge`` is a short word at the right: how much is to do there.
    """

    def __init__(self, action: QAction) -> None:
        super().__init__()
        self.action = action
        self.colours = LIGHT
        self.badge = ""
        self.setText(action.text().replace("&", ""))
        self.setToolTip(action.toolTip())
        self.setCheckable(True)
        self.setChecked(action.isChecked())
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Fixed)
        self.clicked.connect(action.trigger)
        action.toggled.connect(self.setChecked)

    def show_badge(self, badge: str, told: str) -> None:
        """Show another badge; ``told`` says in words what it means."""
        if badge == self.badge:
            return
        self.badge = badge
        name = self.text()
        self.setAccessibleName(f"{name}, {told}" if badge else name)
        tip = self.action.toolTip()
        self.setToolTip(f"{tip}\n{told}" if badge else tip)
        self.update()

    def sizeHint(self) -> QSize:
        """Return a size for the name in its larger letters."""
        metrics = self.fontMetrics()
        wide = int(metrics.horizontalAdvance(self.text()) * 1.2) + 40 + BADGE
        return QSize(wide, max(36, int(metrics.height() * 2.2)))

    def minimumSizeHint(self) -> QSize:
        """Return the least size, which is the same."""
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the name, with its stroke if chosen and a frame if it has the keys."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        rect = QRectF(self.rect()).adjusted(6, 3, -8, -3)
        colours = self.colours
        if self.isChecked():
            mark_drawing.paint_work(
                painter,
                rect,
                colours,
                swatch=colours.stroke,
                tool=Tool.BRUSH,
                stage=Stage.BASE,
                name=self.text(),
            )
            painter.fillRect(QRectF(0, 3, 3, self.height() - 6), colours.colour("focus"))
        elif self.underMouse():
            painter.fillRect(rect, colours.colour("gutter"))
        if self.hasFocus():
            painter.setPen(colours.colour("focus"))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(rect.adjusted(-2, -2, 2, 2), 5, 5)
        font = QFont(self.font())
        font.setPointSizeF(font.pointSizeF() * 1.1)
        if self.isChecked():
            font.setWeight(QFont.Weight.DemiBold)
        painter.setFont(font)
        painter.setPen(colours.colour("ink"))
        middle, right = Qt.AlignmentFlag.AlignVCenter, Qt.AlignmentFlag.AlignRight
        painter.drawText(
            rect.adjusted(12, 0, 0, 0), middle | Qt.AlignmentFlag.AlignLeft, self.text()
        )
        if self.badge:
            painter.setFont(self.font())
            painter.setPen(colours.colour("soft"))
            painter.drawText(rect.adjusted(0, 0, -14, 0), middle | right, self.badge)
        painter.end()
        event.accept()


class Navigation(QWidget):
    """Buttons of the rooms above, anything else below."""

    def __init__(self, actions: list[QAction], below: QWidget) -> None:
        super().__init__()
        self.buttons: list[RoomButton] = []
        self._colours = LIGHT
        group = QButtonGroup(self)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 14, 6, 10)
        column.setSpacing(2)
        for action in actions:
            button = RoomButton(action)
            group.addButton(button)
            self.buttons.append(button)
            column.addWidget(button)
        column.addSpacing(16)
        inner = QVBoxLayout()
        inner.setContentsMargins(8, 0, 0, 0)
        inner.addWidget(below)
        column.addLayout(inner, 1)
        self.setMinimumWidth(WIDE)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.update()
        for button in self.buttons:
            button.colours = colours
            button.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint its ground."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), self._colours.colour("gutter"))
        painter.end()
        event.accept()
