"""A ring around the control that has the keys.

The style marks it by a shade that hardly differs from that of its other
controls; who works by keys alone has to see at once where they are.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QRegion
from PySide6.QtWidgets import (
    QAbstractItemView,
    QAbstractSpinBox,
    QApplication,
    QCheckBox,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QRadioButton,
    QScrollArea,
    QTabBar,
    QWidget,
)

WIDE = 2  # pixels
RINGED = (
    QAbstractItemView,
    QAbstractSpinBox,
    QCheckBox,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QRadioButton,
    QTabBar,
)
"""What the style paints by itself; our own drawings mark in themselves what has the keys."""


class Ring(QWidget):
    """Lies on a control, along its edge; the pointer goes through."""

    def __init__(self, on: QWidget) -> None:
        super().__init__(on)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        on.installEventFilter(self)
        self._fit(on)
        self.show()
        self.raise_()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Stay as large as the control."""
        if event.type() == QEvent.Type.Resize and isinstance(watched, QWidget):
            self._fit(watched)
        return False

    def _fit(self, on: QWidget) -> None:
        rect = on.rect()
        self.setGeometry(rect)
        # What a table scrolls below it is moved, and not painted anew, but for the edge.
        inner = rect.adjusted(WIDE, WIDE, -WIDE, -WIDE)
        self.setMask(QRegion(rect).subtracted(QRegion(inner)))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the edge in the colour of what has the keys."""
        painter = QPainter(self)
        painter.setClipRegion(self.mask())
        painter.fillRect(self.rect(), QApplication.palette().accent())
        painter.end()
        event.accept()


def ringed(control: QWidget) -> bool:
    """Tell whether a control gets a ring; what is only scrolled by keys, where they led there."""
    by_keys = control.window().testAttribute(Qt.WidgetAttribute.WA_KeyboardFocusChange)
    return isinstance(control, RINGED) or (by_keys and isinstance(control, QScrollArea))


class FocusRing(QObject):
    """Lets the ring follow the keys, in every window of an application."""

    def __init__(self, app: QApplication) -> None:
        super().__init__(app)
        self._ring: Ring | None = None
        app.focusChanged.connect(self._follow)

    def _follow(self, _before: QWidget | None, now: QWidget | None) -> None:
        if self._ring is not None:
            self._ring.destroyed.disconnect(self._gone)
            self._ring.hide()
            self._ring.deleteLater()
            self._ring = None
        if now is not None and ringed(now):
            self._ring = Ring(now)
            self._ring.destroyed.connect(self._gone)

    def _gone(self, _ring: QObject) -> None:
        """Forget a ring that went with its control."""
        self._ring = None
