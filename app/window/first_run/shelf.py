"""Which paints stand on the shelf: ticked by their swatches, typed, or read from a table."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.service.own_paints import read_paints, typed_paint
from app.service.starter_stock import COATINGS, MIXES
from app.window import words
from app.window.first_run.chips import Chip, Chips
from app.window.labels import MessageLabel, text
from planner.values.coating import Coating
from planner.values.refusal import Refused
from planner.values.sequence import Sequence as Order

ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class ShelfField(QWidget):
    """Swatches of what the chosen sequences use, and a line for what else one has.

    Signals
    -------
    changed(), done()
        Something is other now; Enter was pressed on an empty line.
    """

    changed = Signal()
    done = Signal()

    def __init__(self) -> None:
        super().__init__()
        tr = self.tr
        self._orders: tuple[str, ...] = ()
        self.own: list[Coating] = []
        self.ticks = Chips(tr("Paints that you have"))
        self.typed = QLineEdit()
        self.typed.setMaxLength(200)
        self.typed.setPlaceholderText(tr("another: acrylic, olive green, matte, 17 ml, then Enter"))
        self.typed.setAccessibleName(tr("Another paint: kind, colour, finish, millilitres, code"))
        self.typed.setToolTip(self.typed.placeholderText())
        self.table = QPushButton(tr("&Read a table…"))
        self.table.setToolTip(tr("CSV with a first line such as kind;colour;finish;ml;code"))
        self.table.setAutoDefault(False)
        self.told = text("", size=0.92)
        self.message = MessageLabel()
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.typed, 1)
        row.addWidget(self.table)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self.ticks)
        column.addLayout(row)
        column.addWidget(self.told)
        column.addWidget(self.message)
        self.ticks.changed.connect(self.changed)
        self.table.clicked.connect(lambda _on=False: self._ask())
        self._tell()

    def begin(self) -> None:
        """Take the keys."""
        self.ticks.setFocus() if self.ticks.buttons else self.typed.setFocus()

    def show_orders(self, orders: Iterable[Order]) -> None:
        """Offer the paints that these sequences usually lay; what is ticked stays ticked."""
        names = tuple(_usual(orders))
        if names == self._orders:
            return
        self._orders = names
        pressed = self.ticks.pressed()
        known = {coating.name: coating for coating in COATINGS}
        chips = [
            Chip(name, words.given_name(name), swatch=known[name].swatch)
            for name in dict.fromkeys((*pressed, *names))
            if name in known
        ]
        self.ticks.show_chips(chips, pressed)

    def paints(self) -> tuple[Coating, ...]:
        """Return what is owned: ticked ones with a full bottle, assumed, then one's own.

        Raises
        ------
        Refused
            If what stands in the line cannot be read.
        """
        pressed = self.ticks.pressed()
        ticked = [
            replace(coating, name=words.given_name(coating.name), in_stock_ml=coating.bottle_ml)
            for coating in COATINGS
            if coating.name in pressed
        ]
        if self.typed.text().strip() and not self.take():
            raise Refused("paints", self.message.text())
        own = {paint.name: paint for paint in self.own}
        return (*(one for one in ticked if one.name not in own), *own.values())

    def clear(self) -> None:
        """Begin anew."""
        self.own.clear()
        self.typed.clear()
        self.message.say("")
        names, self._orders = self._orders, ()
        self.ticks.show_chips([], ())
        self._orders = () if not names else ("",)
        self._tell()

    def take(self) -> bool:
        """Put what stands in the line on the shelf; tell whether it could be read."""
        try:
            self._add([typed_paint(self.typed.text().strip(), words.family_word)])
        except Refused as refused:
            self.message.say(refused.mend)
            self.typed.setFocus()
            return False
        self.typed.clear()
        return True

    def read(self, path: Path) -> None:
        """Put the paints of a table on the shelf, or say what is wrong with it."""
        from app.service.csv_reading import MOST_BYTES  # noqa: PLC0415
        from storage.bounded_read import read_bounded  # noqa: PLC0415

        try:
            self._add(read_paints(read_bounded(path, MOST_BYTES), words.family_word))
        except Refused as refused:
            self.message.say(refused.line)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Take Enter as the end of a line; on an empty one there is no more to tell."""
        ctrl = event.modifiers() & Qt.KeyboardModifier.ControlModifier
        if event.key() not in ENTER or ctrl:
            super().keyPressEvent(event)
        elif self.typed.hasFocus() and self.typed.text().strip():
            self.take()
        elif self.ticks.isAncestorOf(self.focusWidget() or self):
            self.typed.setFocus()
        else:
            self.done.emit()

    def _add(self, paints: Sequence[Coating]) -> None:
        self.message.say("")
        known = {paint.name: paint for paint in self.own}
        known.update((paint.name, paint) for paint in paints)
        self.own = list(known.values())
        self._tell()
        self.changed.emit()

    def _tell(self) -> None:
        told = [
            words.fill(words.tr("{name}, {ml:g} ml"), name=one.name, ml=one.in_stock_ml)
            if one.in_stock_ml
            else one.name
            for one in self.own
        ]
        self.told.setText("; ".join(told))
        self.told.setVisible(bool(told))

    def _ask(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self,
            self.tr("A table of your paints"),
            str(Path.home()),
            self.tr("Tables ({pattern});;All files (*)").format(pattern="*.csv *.tsv *.txt"),
        )
        if name:
            self.read(Path(name))


def _usual(orders: Iterable[Order]) -> Iterable[str]:
    """Yield the bottles that sequences usually lay, those of their mixes too, each once."""
    mixes = {mix.name: [portion.coating for portion in mix.portions] for mix in MIXES}
    seen: set[str] = set()
    for order in orders:
        for colour in order.colours:
            for name in mixes.get(colour.usual, [colour.usual]):
                if name and name not in seen:
                    seen.add(name)
                    yield name
