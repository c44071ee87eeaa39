"""Gates written on a step: from which step they count, when they open and close."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from PySide6.QtWidgets import QFrame, QHBoxLayout, QVBoxLayout

from app.window.forms.live_controls import choice, fill
from app.window.forms.row_list import FormRow, RowList
from app.window.forms.window_field import WindowField
from app.window.labels import text
from planner.values.coating import Mark, Preparation, Window
from planner.values.step import Bound, Gate


class GateField(FormRow):
    """One gate, with its windows below each other."""

    def __init__(self) -> None:
        super().__init__()
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.after = choice(self.changed.emit)
        self.after.setAccessibleName(self.tr("Counts from"))
        self.closing = choice(self.changed.emit)
        self.closing.setAccessibleName(self.tr("What must be by the closing"))
        self.windows = RowList(
            WindowField,
            self.tr("Another window"),
            tip=self.tr("A later window, as when a film may be coated again once it was scuffed"),
        )
        self.windows.add.clicked.connect(self._more)
        self.windows.changed.connect(self.changed)
        self.remove = self.cross(self.tr("Remove this gate"))
        self.setFocusProxy(self.after)
        head = QHBoxLayout()
        head.addWidget(text(self.tr("counts from"), wrap=False))
        head.addWidget(self.after, 1)
        head.addWidget(self.remove)
        column = QVBoxLayout(self)
        column.setContentsMargins(6, 4, 6, 4)
        column.setSpacing(4)
        column.addLayout(head)
        column.addWidget(self.closing)
        column.addWidget(self.windows)

    def show_gate(self, gate: Gate, steps: Iterable[tuple[str, str]]) -> None:
        """Show a gate; ``steps`` are the (name, id) it may count from."""
        fill(self.after, steps, gate.after)
        entries = [
            (self.tr("must have begun by the closing"), Bound.START.value),
            (self.tr("must be done by the closing"), Bound.END.value),
        ]
        fill(self.closing, entries, gate.closing.value)
        self._show(gate.windows)

    def gate(self) -> Gate:
        """Return the gate as it stands; `Refused` if it cannot be so."""
        return Gate(
            after=self.after.currentData() or "",
            windows=tuple(row.window_() for row in self.windows.rows),
            closing=Bound(self.closing.currentData()),
        )

    def _show(self, windows: Sequence[Window]) -> None:
        for field, window in zip(self.windows.put(len(windows)), windows, strict=True):
            field.show_window(window)

    def _more(self) -> None:
        """Add a window that opens when the last one closes, after scuffing."""
        *others, last = (row.window_() for row in self.windows.rows)
        shut = replace(last, closes=last.closes or Mark(minutes=1440))
        late = Window(opens=shut.closes, preparation=Preparation.SCUFF, preparation_minutes=10)
        self._show([*others, shut, late])
        self.changed.emit()


class GatesField(RowList[GateField]):
    """Every gate of a step."""

    def __init__(self) -> None:
        self._steps: list[tuple[str, str]] = []
        super().__init__(
            GateField,
            self.tr("Add a gate"),
            self._begin,
            self.tr("Let this step wait for a film, or keep it within a time after another step"),
        )

    def show_gates(self, gates: Sequence[Gate], steps: Sequence[tuple[str, str]]) -> None:
        """Show gates; ``steps`` are the (name, id) that they may count from."""
        self._steps = list(steps)
        self.add.setEnabled(bool(self._steps))
        for field, gate in zip(self.put(len(gates)), gates, strict=True):
            field.show_gate(gate, self._steps)

    def value(self) -> tuple[Gate, ...]:
        """Return the gates as they stand; `Refused` if one cannot be so."""
        return tuple(gate.gate() for gate in self.rows)

    def _begin(self, field: GateField) -> None:
        new = Gate(after=self._steps[-1][1], windows=(Window(opens=Mark(minutes=60)),))
        field.show_gate(new, self._steps)


__all__ = ["GateField", "GatesField"]
