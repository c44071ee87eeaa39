"""What is in a mix: coatings with parts by volume, or with drops."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QComboBox, QHBoxLayout, QLineEdit, QVBoxLayout

from app.window import words
from app.window.forms.controls import number
from app.window.forms.row_list import FormRow, RowList
from app.window.labels import MessageLabel, field_label
from planner.quantity import parts_text, read_parts
from planner.values.refusal import Refused

Amounts = Sequence[tuple[str, float]]


class PortionRow(FormRow):
    """The controls of one coating in a mix."""

    def __init__(self, names: Sequence[str], whole: bool) -> None:
        super().__init__()
        tr = words.tr
        self.coating = QComboBox()
        self.coating.addItems(list(names))
        self.coating.setAccessibleName(tr("Coating in the mix"))
        self.coating.setSizeAdjustPolicy(
            QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon
        )
        self.coating.setMinimumContentsLength(20)
        self.amount = (
            number(1, 0, 99_999, suffix=tr(" drops"))
            if whole
            else number(1, 0, 9999, decimals=2, suffix=tr(" parts"), step=1)
        )
        self.amount.setAccessibleName(tr("How much of it"))
        self.drop = self.cross(tr("Leave it out"))
        self.across(self.coating, self.amount, self.drop).setStretchFactor(self.coating, 1)
        self.setFocusProxy(self.coating)
        self.amount.valueChanged.connect(self.changed)

    def show_portion(self, name: str, amount: float) -> None:
        """Show a coating and how much of it there is."""
        self.coating.setCurrentIndex(max(0, self.coating.findText(name)))
        self.amount.setValue(amount)


class PortionsEditor(RowList[PortionRow]):
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
        super().__init__(
            lambda: PortionRow(names, whole), self.tr("Add a coating"), self._name_another
        )
        self._names = tuple(names)
        self.add.setEnabled(bool(names))
        self.typed = QLineEdit()
        self.typed.setPlaceholderText(self.tr("2 : 3, or 30 % : 70 %"))
        self.typed.editingFinished.connect(self._read)
        self.message = MessageLabel()
        column = self.layout()
        assert isinstance(column, QVBoxLayout)
        if not whole:
            line = QHBoxLayout()
            line.addWidget(field_label(self.tr("or in &one line"), self.typed))
            line.addWidget(self.typed, 1)
            column.addLayout(line)
        column.addWidget(self.message)
        for row, amount in zip(self.put(len(amounts)), amounts, strict=True):
            row.show_portion(*amount)
        self.changed.connect(self._tell)
        self._tell()

    def amounts(self) -> tuple[tuple[str, float], ...]:
        """Return what is in it, in order."""
        return tuple((row.coating.currentText(), round(row.amount.value(), 2)) for row in self.rows)

    def _name_another(self, row: PortionRow) -> None:
        taken = {other.coating.currentText() for other in self.rows if other is not row}
        name = next((name for name in self._names if name not in taken), self._names[0])
        row.show_portion(name, 1)

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
