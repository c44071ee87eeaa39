"""The slim column at the left: views, and below them the projects."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QAction, QFont, QPainter, QPaintEvent
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QSizePolicy, QVBoxLayout, QWidget

from app.window import mark_drawing
from app.window.palette import LIGHT, Colours
from planner.values.step import Stage, Tool


class ViewButton(QAbstractButton):
    """The name of a view; the chosen one lies on a stroke of paint."""

    def __init__(self, action: QAction) -> None:
        super().__init__()
        self.action = action
        self.colours = LIGHT
        self.setText(action.text().replace("&", ""))
        self.setToolTip(action.toolTip())
        self.setCheckable(True)
        self.setChecked(action.isChecked())
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Minimum, QSizePolicy.Policy.Maximum)
        self.clicked.connect(action.trigger)
        action.toggled.connect(self.setChecked)

    def sizeHint(self) -> QSize:
        """Return a size for the name in its larger letters."""
        metrics = self.fontMetrics()
        return QSize(int(metrics.horizontalAdvance(self.text()) * 1.2) + 40, metrics.height() * 2)

    def minimumSizeHint(self) -> QSize:
        """Return the least size, for screens on which fourteen views stand close together."""
        hint = self.sizeHint()
        return QSize(hint.width(), int(self.fontMetrics().height() * 1.8))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the name, with its stroke if chosen and a frame if it has the keys."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        rect = QRectF(self.rect()).adjusted(6, 4, -8, -4)
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
        painter.drawText(
            rect.adjusted(12, 0, 0, 0),
            Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignLeft,
            self.text(),
        )
        painter.end()
        event.accept()


class Navigation(QWidget):
    """View buttons above, anything else below."""

    def __init__(self, actions: list[QAction], below: QWidget) -> None:
        super().__init__()
        self.buttons: list[ViewButton] = []
        group = QButtonGroup(self)
        column = QVBoxLayout(self)
        column.setContentsMargins(6, 14, 6, 10)
        column.setSpacing(2)
        for action in actions:
            button = ViewButton(action)
            group.addButton(button)
            self.buttons.append(button)
            column.addWidget(button)
        column.addSpacing(16)
        column.addWidget(below, 1)
        self.setMinimumWidth(176)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        for button in self.buttons:
            button.colours = colours
            button.update()
