"""The first question: what is on the table, a line for each vehicle."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import QDate, QEvent, QObject, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QApplication,
    QComboBox,
    QHBoxLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from app.service.first_run import Vehicle, several
from app.window.first_run.chips import Chip, Chips
from app.window.first_run.vehicle_state import VehicleState
from app.window.labels import MessageLabel, fit_words, text
from app.window.words import option_word, sequence_word
from planner.sequences.chosen_options import choices_of, complete
from planner.values.sequence import Sequence as Order

ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class VehicleLine(QWidget):
    """Name, scale and sequence; below them options, kind and state while it is worked on.

    "5x Egret" stands for five vehicles.  The kind goes by the name until one
    is chosen.

    Signals
    -------
    entered(), changed()
        Enter was pressed; something is other now.
    """

    entered = Signal()
    changed = Signal()

    def __init__(self, number: int, orders: Sequence[Order]) -> None:
        super().__init__()
        tr = self.tr
        self._orders = {order.name: order for order in orders}
        self.name, self.scale, self.sequence = QLineEdit(), QLineEdit(), QComboBox()
        self.name.setMaxLength(120)
        self.name.setPlaceholderText(tr("a vehicle, then Enter"))
        self.name.setToolTip(self.name.placeholderText())  # longer than a narrow field
        self.name.setAccessibleName(tr("Vehicle {n}: name").format(n=number))
        self.scale.setMaxLength(20)
        self.scale.setPlaceholderText(tr("scale"))
        fit_words(self.scale, 76)
        self.scale.setAccessibleName(tr("Vehicle {n}: scale").format(n=number))
        self.sequence.setAccessibleName(tr("Vehicle {n}: sequence").format(n=number))
        self._offer(orders)
        self.options = Chips(tr("Options of vehicle {n}").format(n=number))
        self.state = VehicleState(number)
        self.summary = text("", size=0.92)
        self._lay_out()
        self.sequence.currentIndexChanged.connect(self._sequence_chosen)
        self.options.changed.connect(self._options_chosen)
        self.name.textChanged.connect(self.state.go_by)
        self.name.textChanged.connect(self.changed)
        self.scale.textChanged.connect(self.changed)
        self.state.changed.connect(self.changed)
        for field in (self.name, self.scale, self.sequence, *self.state.fields):
            field.installEventFilter(self)
        self._sequence_chosen()

    def _offer(self, orders: Sequence[Order]) -> None:
        for order in orders:
            self.sequence.addItem(sequence_word(order.name), order.name)
            self.sequence.setItemData(
                self.sequence.count() - 1, sequence_word(order.note), Qt.ItemDataRole.ToolTipRole
            )

    def _lay_out(self) -> None:
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addWidget(self.name, 1)
        row.addWidget(self.scale)
        row.addWidget(self.sequence)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 2)
        column.setSpacing(3)
        column.addLayout(row)
        column.addWidget(self.options)
        column.addWidget(self.state)
        column.addWidget(self.summary)

    def vehicles(self) -> tuple[Vehicle, ...]:
        """Return what was told; nothing for a line without a name."""
        name = self.name.text().strip()
        if not name:
            return ()
        return tuple(
            Vehicle(
                name=one,
                scale=self.scale.text().strip(),
                sequence=self.sequence.currentData(),
                options=self.options.pressed(),
                kind=self.state.kind,
                reached=self.state.reached,
                when=self.state.when,
            )
            for one in several(name)
        )

    def take_after(self, other: VehicleLine) -> None:
        """Begin with scale, sequence, options and kind of the line above."""
        self.scale.setText(other.scale.text())
        self.sequence.setCurrentIndex(other.sequence.currentIndex())
        self._show_options(other.options.pressed())
        self.state.begin_with(other.state.kind)

    def take(self, vehicle: Vehicle) -> None:
        """Begin with scale, sequence, options and kind of a vehicle."""
        self.scale.setText(vehicle.scale)
        self.sequence.setCurrentIndex(max(0, self.sequence.findData(vehicle.sequence)))
        self._show_options(complete(self._order(), vehicle.options))
        self.state.begin_with(vehicle.kind)

    def show_orders(self, orders: Sequence[Order]) -> None:
        """Offer other sequences; what was chosen stays where it is still there."""
        chosen, pressed = self.sequence.currentData(), self.options.pressed()
        self._orders = {order.name: order for order in orders}
        blocked = QSignalBlocker(self.sequence)
        self.sequence.clear()
        self._offer(orders)
        at = self.sequence.findData(chosen)
        self.sequence.setCurrentIndex(max(at, 0))
        blocked.unblock()
        known = [option.name for option in self._order().options]
        if at >= 0 and set(pressed) <= set(known):
            self._show_options(pressed)
        else:
            self._show_options(complete(self._order()))

    def show_whole(self, whole: bool) -> None:
        """Show the options to be pressed, or say them in a line."""
        self.options.setVisible(whole)
        self.state.setVisible(whole)
        self.summary.setVisible(not whole and bool(self.name.text().strip()))
        words_ = [self.state.told(), *(option_word(name) for name in self.options.pressed())]
        self.summary.setText(", ".join(filter(None, words_)))

    def eventFilter(self, field: QObject, event: QEvent) -> bool:
        """Take Enter as the end of the line."""
        if (
            event.type() == QEvent.Type.KeyPress
            and isinstance(event, QKeyEvent)
            and event.key() in ENTER
            and not event.modifiers() & Qt.KeyboardModifier.ControlModifier
        ):
            self.entered.emit()
            return True
        return super().eventFilter(field, event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take Enter among the options as the end of the line, too."""
        if event.key() in ENTER and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.entered.emit()
            return
        super().keyPressEvent(event)

    def _sequence_chosen(self) -> None:
        self._show_options(complete(self._order()))
        self.changed.emit()

    def _options_chosen(self) -> None:
        self.changed.emit()

    def _order(self) -> Order:
        return self._orders[self.sequence.currentData()]

    def _show_options(self, pressed: Sequence[str]) -> None:
        order = self._order()
        grouped = [option for options in choices_of(order).values() for option in options]
        free = [option for option in order.options if option not in grouped]
        chips = [
            Chip(option.name, option_word(option.name), option.choice, option_word(option.note))
            for option in grouped + free
        ]
        self.options.show_chips(chips, pressed)
        self.summary.setText(", ".join(option_word(name) for name in pressed))


class VehiclesField(QWidget):
    """Lines of vehicles; Enter ends one and begins the next, Enter on an empty one goes on.

    Signals
    -------
    done(), changed()
        No more vehicles; something is other now.
    """

    done = Signal()
    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.lines: list[VehicleLine] = []
        self._orders: tuple[Order, ...] = ()
        self._today = QDate.currentDate()
        self.message = MessageLabel()
        self._holder = QVBoxLayout()
        self._holder.setSpacing(4)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._holder)
        column.addWidget(self.message)
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        app.focusChanged.connect(self._focused)

    def show_orders(self, orders: Sequence[Order]) -> None:
        """Offer these sequences; what was typed already stays."""
        if tuple(orders) == self._orders:
            return
        self._orders = tuple(orders)
        for line in self.lines:
            line.show_orders(orders)
        if not self.lines:
            self._add()

    def clear(self) -> None:
        """Begin with one empty line again."""
        for line in self.lines:
            self._holder.removeWidget(line)
            line.hide()
            line.deleteLater()
        self.lines = []
        self._add()

    def set_today(self, today: date) -> None:
        """Say near to which day a day without a year is meant."""
        self._today = QDate(today.year, today.month, today.day)
        for line in self.lines:
            line.state.today = self._today

    def to_fault(self) -> bool:
        """Take the keys to a day that cannot be read; tell whether there is one."""
        for line in self.lines:
            if line.vehicles() and line.state.unread:
                line.show_whole(True)
                line.state.since.setFocus()
                line.state.since.selectAll()
                return True
        return False

    def begin_like(self, vehicle: Vehicle) -> None:
        """Begin every line without a name like a vehicle."""
        for line in self.lines:
            if not line.vehicles():
                line.take(vehicle)

    def vehicles(self) -> tuple[Vehicle, ...]:
        """Return every vehicle that has a name."""
        return tuple(vehicle for line in self.lines for vehicle in line.vehicles())

    def begin(self) -> None:
        """Take the keys."""
        if self.lines:
            self.lines[-1].name.setFocus()

    def _add(self) -> VehicleLine:
        line = VehicleLine(len(self.lines) + 1, self._orders)
        line.state.today = self._today
        if self.lines:
            line.take_after(self.lines[-1])
        line.entered.connect(lambda: self._entered(line))
        line.changed.connect(self.changed)
        self.lines.append(line)
        self._holder.addWidget(line)
        line.show()  # at once, so that it can take the keys
        line.show_whole(len(self.lines) == 1)
        return line

    def _entered(self, line: VehicleLine) -> None:
        at = self.lines.index(line)
        if not line.vehicles():
            self.done.emit()
        elif at + 1 < len(self.lines):
            self.lines[at + 1].name.setFocus()
        else:
            self._add().name.setFocus()
            self.changed.emit()

    def _focused(self, _old: QWidget | None, new: QWidget | None) -> None:
        """Show the options of the line that has the keys alone."""
        if new is None or not self.isAncestorOf(new):
            return
        for line in self.lines:
            line.show_whole(line.isAncestorOf(new))
