"""How much room words take, and what is done where they take more."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget


def height_of(widget: QWidget, width: int) -> int:
    """Return the height of a widget that is so wide, its lines broken."""
    layout = widget.layout()
    assert layout is not None
    if layout.hasHeightForWidth():
        return layout.totalHeightForWidth(width)
    return layout.totalMinimumSize().height()


def scrolling(inner: QWidget) -> QScrollArea:
    """Return a widget in an area that scrolls and paints no ground of its own."""
    area = QScrollArea()
    area.setWidgetResizable(True)
    area.setFrameShape(QFrame.Shape.NoFrame)
    area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    area.setWidget(inner)
    for each in (area.viewport(), inner):  # both would paint the window's own ground
        each.setAutoFillBackground(False)
    return area
