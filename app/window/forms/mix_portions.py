"""What is in a mix: coatings with parts by volume, or with drops."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QComboBox,
    QDoubleSpinBox,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.forms.controls import number, tool
from app.window.labels import MessageLabel, field_label
from planner.quantity import parts_text, read_parts
from planner.values.refusal import Refused

Amounts = Sequence[tuple[str, float]]


class PortionRow:
    """The controls of one coating in a mix."""

    def __init__(
        self,
        names: Sequence[str],
        name: str,
        amount: float,
        whole: bool,
        drop: Callable[[PortionRow], None],
    ) -> None:
        tr = words.tr
        self.coating = QComboBox()
        self.coating.addItems(list(names))
        self.coating.setCurrentIndex(max(0, self.coating.findText(name)))
        self.coating.setAccessibleName(tr("Coating in the mix"))
        self.coating.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.coating.setMinimumContentsLength(20)
        self.amount: QDoubleSpinBox = (
            number(amount, 0, 99_999, suffix=tr(" drops"))
            if whole
            else number(amount, 0, 9999, decimals=2, suffix=tr(" parts"), step=1)
        )
        self.amount.setAccessibleName(tr("How much of it"))
        self.drop = tool("×", tr("Leave it out"), lambda: drop(self))
        self.widgets: tuple[QWidget, ...] = (self.coating, self.amount, self.drop)


class PortionsEditor(QWidget):
    """Coatings below each other with what goes in of each.

    Parameters
    ----------
    names
        Coatings to choose from.
    amounts
        What is in it so far.
    whole
        True for drops, false for parts by volume, which can be typed as
        "2 : 3" or "30 % : 70 %" too.
    """

    def __init__(self, names: Sequence[str], amounts: Amounts, *, whole: bool = False) -> None:
        super().__init__()
        self._names, self._whole = tuple(names), whole
        self.rows: list[PortionRow] = []
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(6)
        self._grid.setVerticalSpacing(3)
        self._grid.setColumnStretch(0, 1)
        self.add = QPushButton(self.tr("Add a coating"))
        self.add.setAutoDefault(False)
        self.add.setEnabled(bool(names))
        self.add.clicked.connect(self._add)
        self.typed = QLineEdit()
        self.typed.setPlaceholderText(self.tr("2 : 3, or 30 % : 70 %"))
        self.typed.editingFinished.connect(self._read)
        self.message = MessageLabel()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addLayout(self._grid)
        column.addWidget(self.add, 0, Qt.AlignmentFlag.AlignLeft)
        if not whole:
            line = QHBoxLayout()
            line.addWidget(field_label(self.tr("or in &one line"), self.typed))
            line.addWidget(self.typed, 1)
            column.addLayout(line)
        column.addWidget(self.message)
        for name, amount in amounts:
            self._append(name, amount)
        self._tell()

    def amounts(self) -> tuple[tuple[str, float], ...]:
        """Return what is in it, in order."""
        return tuple((row.coating.currentText(), round(row.amount.value(), 2)) for row in self.rows)

    def _append(self, name: str, amount: float) -> PortionRow:
        row = PortionRow(self._names, name, amount, self._whole, self._drop)
        at = self._grid.rowCount()
        for column, widget in enumerate(row.widgets):
            self._grid.addWidget(widget, at, column)
        row.amount.valueChanged.connect(self._tell)
        self.rows.append(row)
        return row

    def _add(self) -> None:
        taken = {name for name, _ in self.amounts()}
        name = next((name for name in self._names if name not in taken), self._names[0])
        self._append(name, 1).coating.setFocus()
        self._tell()

    def _drop(self, row: PortionRow) -> None:
        self.rows.remove(row)
        for widget in row.widgets:
            self._grid.removeWidget(widget)
            widget.hide()
            widget.deleteLater()
        self.add.setFocus()
        self._tell()

    def _read(self) -> None:
        """Take the parts of all coatings from one line."""
        typed = self.typed.text().strip()
        if not typed or typed == self._line():
            self.message.say("")
            return
        try:
            parts = read_parts(typed)
        except Refused as problem:
            self.message.say(problem.mend)
            return
        if len(parts) != len(self.rows):
            self.message.say(
                self.tr("names {typed} parts, but there are {rows} coatings").format(
                    typed=len(parts), rows=len(self.rows)
                )
            )
            return
        self.message.say("")
        for row, part in zip(self.rows, parts, strict=True):
            row.amount.setValue(part)

    def _line(self) -> str:
        return parts_text(tuple(row.amount.value() for row in self.rows)) if self.rows else ""

    def _tell(self) -> None:
        self.typed.setText(self._line())
