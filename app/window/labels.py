"""Labels in our sizes and colours."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QIcon, QPainter, QPaintEvent, QPen, QPixmap
from PySide6.QtWidgets import (
    QComboBox,
    QLabel,
    QLineEdit,
    QStyle,
    QStyleOptionComboBox,
    QStylePainter,
    QWidget,
)

from app.window.message_translation import translated

RING = "#857B6B"  # around a swatch, seen on light and on dark grounds
AROUND = 4  # what the style keeps free about the words of a list [pixels]


def text(
    words_: str, *, colour: str = "", size: float = 1.0, bold: bool = False, wrap: bool = True
) -> QLabel:
    """Return a label; an empty ``colour`` is that of the palette."""
    label = QLabel(translated(words_))
    label.setTextFormat(Qt.TextFormat.PlainText)
    font = QFont(label.font())
    font.setPointSizeF(font.pointSizeF() * size)
    if bold:
        font.setWeight(QFont.Weight.DemiBold)
    label.setFont(font)
    if colour:
        palette = label.palette()
        palette.setColor(label.foregroundRole(), colour)
        label.setPalette(palette)
    if wrap:
        label.setWordWrap(True)
        label.setMinimumWidth(40)
    return label


class ColouredLabel(QLabel):
    """A line whose colour goes with what it says."""

    def __init__(self) -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setWordWrap(True)
        self.setMinimumWidth(40)

    def say(self, told: str, colour: str) -> None:
        """Show other words, in a colour."""
        self.setText(told)
        palette = self.palette()
        palette.setColor(self.foregroundRole(), colour)
        self.setPalette(palette)


def field_label(words_: str, buddy: QWidget) -> QLabel:
    """Return the label of a control; "&" marks its key."""
    label = QLabel(words_)
    label.setBuddy(buddy)
    if not buddy.accessibleName():  # a list is called by what is chosen in it, otherwise
        buddy.setAccessibleName(words_.replace("&", ""))
    # Hinted letters may be wider than Qt measures them.
    label.setMinimumWidth(label.fontMetrics().horizontalAdvance(words_) + 4)
    return label


def fit_words(field: QLineEdit, least: int) -> None:
    """Let a field be as wide as the words that stand in it while it is empty, and ``least``."""
    wide = field.fontMetrics().horizontalAdvance(field.placeholderText())
    field.setFixedWidth(max(least, wide + 16))  # its frame, and a blank at both ends


class NarrowCombo(QComboBox):
    """A list as wide as its words, and narrower where a view must; then the tooltip has all."""

    def __init__(self, letters: int = 8) -> None:
        super().__init__()
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToContents)
        around = self.sizeHint().width() - 7 * self.fontMetrics().horizontalAdvance("x")
        self.setMinimumWidth(self.fontMetrics().averageCharWidth() * letters + around)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint, and keep the tooltip true, however the words have come."""
        if self.toolTip() != self.currentText():
            self.setToolTip(self.currentText())
        painter = QStylePainter(self)
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        style = self.style()
        whole, part = QStyle.ComplexControl.CC_ComboBox, QStyle.SubControl.SC_ComboBoxEditField
        field = style.subControlRect(whole, option, part, self)
        option.currentText = self.fontMetrics().elidedText(
            option.currentText, Qt.TextElideMode.ElideRight, field.width() - AROUND
        )
        painter.drawComplexControl(whole, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
        painter.end()
        event.accept()


class MessageLabel(QLabel):
    """A line below a control that says what is wrong with it, hidden while nothing is."""

    def __init__(self) -> None:
        super().__init__()
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.hide()

    def say(self, message: str) -> None:
        """Show a message, "" for none."""
        self.setText(translated(message))
        self.setVisible(bool(message))


def swatch_icon(swatch: str, size: int = 28) -> QIcon:
    """Return a round dab of a colour."""
    pixmap = QPixmap(size, size)
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(QColor(RING), 2))  # two pixels of a picture twice as fine
    painter.setBrush(QColor(swatch))
    painter.drawEllipse(2, 2, size - 4, size - 4)
    painter.end()
    icon = QIcon(pixmap)
    icon.addPixmap(pixmap, QIcon.Mode.Selected)  # the style would tint it
    return icon
