"""Asks how many models like one there shall be."""

from __future__ import annotations

from collections.abc import Collection

from PySide6.QtWidgets import QDialog, QDialogButtonBox, QHBoxLayout, QSpinBox, QVBoxLayout, QWidget

from app.service.build_edits.names import fresh_name
from app.window.labels import field_label, text

MOST = 30


class AgainDialog(QDialog):
    """A number, and the names that the new models get."""

    def __init__(self, model: str, taken: Collection[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self._taken = model, tuple(taken)
        self.setWindowTitle(self.tr("Same again, other markings"))
        self.number = QSpinBox()
        self.number.setRange(1, MOST)
        self.told = text("")
        self.buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel
        )
        self.buttons.accepted.connect(self.accept)
        self.buttons.rejected.connect(self.reject)
        line = QHBoxLayout()
        line.addWidget(field_label(self.tr("&How many more"), self.number))
        line.addWidget(self.number)
        line.addStretch(1)
        column = QVBoxLayout(self)
        column.addWidget(
            text(
                self.tr(
                    "They get the parts and steps of {model}, with nothing done and no wishes."
                ).format(model=model)
            )
        )
        column.addLayout(line)
        column.addWidget(self.told)
        column.addStretch(1)
        column.addWidget(self.buttons)
        self.setMinimumWidth(380)
        self.number.valueChanged.connect(self._tell)
        self._tell()
        self.number.selectAll()
        self.number.setFocus()

    def names(self) -> tuple[str, ...]:
        """Return the names of the new models, none of them taken."""
        taken = list(self._taken)
        for _ in range(self.number.value()):
            taken.append(fresh_name(self._model, taken))
        return tuple(taken[len(self._taken) :])

    def _tell(self) -> None:
        names = self.names()
        if len(names) == 1:
            self.told.setText(self.tr("It is called {name}.").format(name=names[0]))
        else:
            self.told.setText(
                self.tr("They are called {first} to {last}.").format(first=names[0], last=names[-1])
            )
