"""The second question: on which days, and from when to when, one is at the bench."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QVBoxLayout, QWidget

from app.service.first_run import FirstHours, read_hours
from app.window.first_run.chips import Chip, Chips
from app.window.labels import MessageLabel
from planner.values.refusal import Refused

ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
USUAL = "19:30-21:30"


class HoursLine(QWidget):
    """Some weekdays and their hours.

    Signals
    -------
    entered(), changed()
        Enter was pressed; something is other now.
    """

    entered = Signal()
    changed = Signal()

    def __init__(self, days: Iterable[int], hours: str) -> None:
        super().__init__()
        tr, locale = self.tr, QLocale()
        self.days = Chips(tr("Days"), numbered=True)
        chips = [
            Chip(
                str(day),
                locale.dayName(day + 1, QLocale.FormatType.ShortFormat)[:2],
                tip=tr("{day} (key {n})").format(day=locale.dayName(day + 1), n=day + 1),
            )
            for day in range(7)
        ]
        self.days.show_chips(chips, [str(day) for day in days])
        self.hours = QLineEdit(hours)
        self.hours.setFixedWidth(140)
        self.hours.setMaxLength(40)
        self.hours.setAccessibleName(tr("Hours at the bench, as 19:30-21:30 or 20-22"))
        self.hours.setToolTip(self.hours.accessibleName())
        self.message = MessageLabel()
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.days, 1)
        row.addWidget(self.hours)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(row)
        column.addWidget(self.message)
        self.days.changed.connect(self.changed)
        self.hours.textChanged.connect(self.changed)

    def value(self) -> FirstHours | None:
        """Return what was told, None where no day is pressed in; `Refused` as the hours read."""
        days = frozenset(int(day) for day in self.days.pressed())
        self.message.say("")
        if not days:
            return None
        try:
            start, end = read_hours(self.hours.text())
        except Refused as refused:
            self.message.say(refused.mend)
            raise
        return FirstHours(days=days, start=start, end=end)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take Enter as the end of the line."""
        if event.key() in ENTER and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.entered.emit()
            return
        super().keyPressEvent(event)


class HoursField(QWidget):
    """Lines of days and hours; Enter ends one and begins another, Enter without a day goes on.

    Signals
    -------
    done(), changed()
        No more evenings; something is other now.
    """

    done = Signal()
    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.lines: list[HoursLine] = []
        self.message = MessageLabel()
        self._holder = QVBoxLayout()
        self._holder.setSpacing(4)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._holder)
        column.addWidget(self.message)
        self._add((1, 3))

    def begin(self) -> None:
        """Take the keys."""
        self.lines[0].days.setFocus()

    def to_fault(self) -> None:
        """Take the keys where hours cannot be read, ready to be written anew; else as usual."""
        for line in self.lines:
            if line.message.text():
                line.hours.setFocus()
                line.hours.selectAll()
                return
        self.begin()

    def show_hours(self, hours: Iterable[FirstHours]) -> None:
        """Begin with hours that are known already; with none there stay the usual ones."""
        known = tuple(hours)
        if not known:
            return
        for line in self.lines:
            self._holder.removeWidget(line)
            line.hide()
            line.deleteLater()
        self.lines = []
        for first_hours in known:
            self._add(sorted(first_hours.days)).hours.setText(
                f"{first_hours.start}-{first_hours.end}"
            )

    def value(self) -> tuple[FirstHours, ...]:
        """Return every line with a day; `Refused` if hours cannot be read."""
        told = [line.value() for line in self.lines]
        return tuple(first_hours for first_hours in told if first_hours is not None)

    def _add(self, days: Iterable[int]) -> HoursLine:
        line = HoursLine(days, self.lines[-1].hours.text() if self.lines else USUAL)
        line.entered.connect(lambda: self._entered(line))
        line.changed.connect(self.changed)
        self.lines.append(line)
        self._holder.addWidget(line)
        line.show()  # at once, so that it can take the keys
        return line

    def _entered(self, line: HoursLine) -> None:
        at = self.lines.index(line)
        if not line.days.pressed():
            self.done.emit()
        elif at + 1 < len(self.lines):
            self.lines[at + 1].days.setFocus()
        else:
            self._add(()).days.setFocus()
            self.changed.emit()
