"""Words to press in or out: one stop of Tab, arrows and first letters go along, Space presses."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QFont, QFontMetrics, QKeyEvent
from PySide6.QtWidgets import QToolButton, QWidget

from app.window.flow_layout import FlowLayout
from app.window.labels import swatch_icon
from app.window.target_size import TARGET

BACK = (Qt.Key.Key_Left, Qt.Key.Key_Up)
ONWARDS = (Qt.Key.Key_Right, Qt.Key.Key_Down)

PADDING = 16  # pixels beside a word
BETWEEN_GROUPS = 14


@dataclass(frozen=True)
class Chip:
    """One word: what it stands for, and the group of which only one is pressed in.

    ``swatch`` is a colour to show beside it, "" for none.
    """

    value: str
    word: str
    group: str = ""
    tip: str = ""
    swatch: str = ""


class Chips(QWidget):
    """Words in lines.

    Signals
    -------
    changed()
        A person pressed one.
    """

    changed = Signal()

    def __init__(self, name: str, *, numbered: bool = False) -> None:
        super().__init__()
        self._name = name
        self._numbered = numbered
        self._chips: list[Chip] = []
        self.buttons: list[QToolButton] = []
        self._gaps: list[QWidget] = []
        self._here = 0
        self._lines = FlowLayout(self, across=4, down=4)
        self.setAccessibleName(name)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)

    def show_chips(self, chips: Sequence[Chip], pressed: Iterable[str]) -> None:
        """Show other words; tell nobody."""
        for button in self.buttons:
            self._lines.removeWidget(button)
            button.hide()
            button.deleteLater()
        for gap in self._gaps:
            self._lines.removeWidget(gap)
            gap.hide()
            gap.deleteLater()
        self._chips, self.buttons, self._gaps = list(chips), [], []
        inside = set(pressed)
        for number, chip in enumerate(chips):
            button = QToolButton()
            button.setText(chip.word)
            button.setToolTip(chip.tip)
            button.setAccessibleName(
                self.tr("{what}: {word}").format(what=self._name, word=chip.word)
            )
            bold = QFont(button.font())
            bold.setWeight(QFont.Weight.DemiBold)  # as when it is pressed in
            wide = QFontMetrics(bold).horizontalAdvance(chip.word) + PADDING
            if chip.swatch:
                button.setIcon(swatch_icon(chip.swatch))
                button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextBesideIcon)
                wide += button.iconSize().width() + 4
            button.setMinimumSize(wide, TARGET)
            button.setCheckable(True)
            button.setChecked(chip.value in inside)
            button.clicked.connect(lambda _on=False, n=number: self._pressed(n))
            button.installEventFilter(self)
            if number and chip.group != chips[number - 1].group:
                self._part()
            self._lines.addWidget(button)
            self.buttons.append(button)
            button.show()
        self._here = min(self._here, max(len(chips) - 1, 0))
        self._stop()
        self.updateGeometry()

    def pressed(self) -> tuple[str, ...]:
        """Return what is pressed in."""
        both = zip(self._chips, self.buttons, strict=True)
        return tuple(chip.value for chip, button in both if button.isChecked())

    def eventFilter(self, button: QObject, event: QEvent) -> bool:
        """Go along by arrows and first letters, press by Space or, where numbered, by digit."""
        if event.type() == QEvent.Type.FocusIn and button in self.buttons:
            self._here = self.buttons.index(button)
            self._stop()
        if event.type() == QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            return self._key(event)
        return False

    def _part(self) -> None:
        """Leave some room between two groups."""
        gap = QWidget()
        gap.setFixedWidth(BETWEEN_GROUPS)
        self._lines.addWidget(gap)
        self._gaps.append(gap)
        gap.show()

    def _key(self, event: QKeyEvent) -> bool:
        held = event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier
        if held not in (Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier):
            return False
        if event.key() in BACK or event.key() in ONWARDS:
            step = 1 if event.key() in ONWARDS else -1
            self._go((self._here + step) % len(self.buttons))
            return True
        letter = event.text()
        if self._numbered and letter.isdigit() and 1 <= int(letter) <= len(self.buttons):
            self.buttons[int(letter) - 1].click()
            return True
        return letter.isalpha() and self._seek(letter.lower())

    def _seek(self, letter: str) -> bool:
        """Go to the next word that begins with a letter."""
        count = len(self._chips)
        for ahead in range(1, count + 1):
            at = (self._here + ahead) % count
            if self._chips[at].word.lower().startswith(letter):
                self._go(at)
                break
        return True

    def _go(self, at: int) -> None:
        self._here = at
        self._stop()
        self.buttons[at].setFocus(Qt.FocusReason.OtherFocusReason)

    def _stop(self) -> None:
        """Let Tab stop at one word only."""
        for at, button in enumerate(self.buttons):
            policy = Qt.FocusPolicy.StrongFocus if at == self._here else Qt.FocusPolicy.ClickFocus
            button.setFocusPolicy(policy)
        if self.buttons:
            self.setFocusProxy(self.buttons[self._here])

    def _pressed(self, number: int) -> None:
        group = self._chips[number].group
        if group:  # one of a group stays in
            for at, chip in enumerate(self._chips):
                if chip.group == group:
                    blocked = QSignalBlocker(self.buttons[at])
                    self.buttons[at].setChecked(at == number)
                    blocked.unblock()
        self.changed.emit()
