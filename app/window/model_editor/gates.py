"""Gates written on a step: from which step they count, when they open and close."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from enum import StrEnum

from PySide6.QtCore import QCoreApplication, Qt, Signal
from PySide6.QtWidgets import (
    QFormLayout,
    QFrame,
    QHBoxLayout,
    QPushButton,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.labels import text
from app.window.model_editor.fields import choice, fill, number, put, tick
from planner.values.coating import Clock, Mark, Preparation, State, Window
from planner.values.step import Bound, Gate


class By(StrEnum):
    """What a mark goes by, beside the drying states."""

    NOTHING = "nothing"
    MINUTES = "minutes"
    FILM = "film minutes"


class MarkField(QWidget):
    """When a window opens or closes: at once or never, at a drying state, or after minutes.

    Signals
    -------
    changed()
        Something is other now.
    """

    changed = Signal()

    def __init__(self, name: str, nothing: str) -> None:
        super().__init__()
        self._nothing = nothing
        self.by = choice(self._chosen)
        self.by.setAccessibleName(name)
        self.minutes = number(0, 527_040, self.changed.emit, self.tr("min"))
        self.minutes.setAccessibleName(self.tr("{name}: minutes").format(name=name))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        row.addWidget(self.by, 1)
        row.addWidget(self.minutes)

    def show_mark(self, mark: Mark | None) -> None:
        """Show a mark, or none."""
        entries: list[tuple[str, str]] = [
            (self._nothing, By.NOTHING.value),
            (self.tr("after minutes"), By.MINUTES.value),
            (self.tr("after minutes at 23 °C, 50 %"), By.FILM.value),
            *((words.state_word(state.value), state.value) for state in State),
        ]
        chosen: str = By.NOTHING.value
        if mark is not None and mark.state is not None:
            chosen = mark.state.value
        elif mark is not None:
            chosen = (By.FILM if mark.clock is Clock.FILM else By.MINUTES).value
        fill(self.by, entries, chosen)
        put(self.minutes, mark.minutes if mark and mark.minutes is not None else 60)
        self.minutes.setVisible(chosen in (By.MINUTES, By.FILM))

    def mark(self) -> Mark | None:
        """Return the mark as it stands."""
        chosen = self.by.currentData()
        if chosen == By.NOTHING:
            return None
        if chosen in (By.MINUTES, By.FILM):
            clock = Clock.FILM if chosen == By.FILM else Clock.ELAPSED
            return Mark(minutes=self.minutes.value(), clock=clock)
        return Mark(state=State(chosen))

    def _chosen(self) -> None:
        self.minutes.setVisible(self.by.currentData() in (By.MINUTES, By.FILM))
        self.changed.emit()


class WindowField(QWidget):
    """One window of a gate.

    Signals
    -------
    changed()
        Something is other now.
    """

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.opens = MarkField(self.tr("Opens"), self.tr("at once"))
        self.best = MarkField(self.tr("Best"), self.tr("as soon as it opens"))
        self.closes = MarkField(self.tr("Closes"), self.tr("never"))
        self.preparation = choice(self._prepared)
        self.preparation.setAccessibleName(self.tr("Preparation"))
        self.minutes = number(0, 600, self.changed.emit, self.tr("min"))
        self.minutes.setAccessibleName(self.tr("Minutes of preparation"))
        self.merges = tick(self.tr("melts into the film below"), self.changed.emit)
        for field in (self.opens, self.best, self.closes):
            field.changed.connect(self.changed)
        form = QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setVerticalSpacing(3)
        form.addRow(text(self.tr("opens"), wrap=False), self.opens)
        form.addRow(text(self.tr("best"), wrap=False), self.best)
        form.addRow(text(self.tr("closes"), wrap=False), self.closes)
        row = QHBoxLayout()
        row.addWidget(self.preparation, 1)
        row.addWidget(self.minutes)
        form.addRow(text(self.tr("first"), wrap=False), row)
        form.addRow(self.merges)

    def show_window(self, window: Window) -> None:
        """Show a window."""
        self.opens.show_mark(window.opens)
        self.best.show_mark(window.best)
        self.closes.show_mark(window.closes)
        entries = [
            (QCoreApplication.translate("preparation", preparation.value), preparation.value)
            for preparation in Preparation
        ]
        fill(self.preparation, entries, window.preparation.value)
        put(self.minutes, window.preparation_minutes)
        self.minutes.setVisible(window.preparation is not Preparation.NONE)
        put(self.merges, window.merges)

    def window_(self) -> Window:
        """Return the window as it stands; `Refused` if it cannot be so."""
        return Window(
            opens=self.opens.mark(),
            best=self.best.mark(),
            closes=self.closes.mark(),
            preparation=Preparation(self.preparation.currentData()),
            preparation_minutes=self.minutes.value(),
            merges=self.merges.isChecked(),
        )

    def _prepared(self) -> None:
        wanted = self.preparation.currentData() != Preparation.NONE
        put(self.minutes, 10 if wanted and not self.minutes.value() else self.minutes.value())
        if not wanted:
            put(self.minutes, 0)
        self.minutes.setVisible(wanted)
        self.changed.emit()


class GateField(QFrame):
    """One gate, with its windows below each other.

    Signals
    -------
    changed(), removed()
        Something is other now; the gate shall go.
    """

    changed = Signal()
    removed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.after = choice(self.changed.emit)
        self.after.setAccessibleName(self.tr("Counts from"))
        self.closing = choice(self.changed.emit)
        self.closing.setAccessibleName(self.tr("What must be by the closing"))
        self.windows: list[WindowField] = []
        self.more = QPushButton(self.tr("Another window"))
        self.more.setToolTip(
            self.tr("A later window, as when a film may be coated again once it was scuffed")
        )
        self.more.clicked.connect(self._more)
        self.remove = QToolButton()
        self.remove.setText("×")
        self.remove.setToolTip(self.tr("Remove this gate"))
        self.remove.setAccessibleName(self.remove.toolTip())
        self.remove.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.remove.clicked.connect(self.removed)
        head = QHBoxLayout()
        head.addWidget(text(self.tr("counts from"), wrap=False))
        head.addWidget(self.after, 1)
        head.addWidget(self.remove)
        self._holder = QVBoxLayout()
        column = QVBoxLayout(self)
        column.setContentsMargins(6, 4, 6, 4)
        column.setSpacing(4)
        column.addLayout(head)
        column.addWidget(self.closing)
        column.addLayout(self._holder)
        foot = QHBoxLayout()
        foot.addWidget(self.more)
        foot.addStretch(1)
        column.addLayout(foot)

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
            windows=tuple(window.window_() for window in self.windows),
            closing=Bound(self.closing.currentData()),
        )

    def _show(self, windows: Sequence[Window]) -> None:
        while len(self.windows) > len(windows):
            _drop(self._holder, self.windows.pop())
        while len(self.windows) < len(windows):
            field = WindowField()
            field.changed.connect(self.changed)
            self.windows.append(field)
            self._holder.addWidget(field)
        for field, window in zip(self.windows, windows, strict=True):
            field.show_window(window)

    def _more(self) -> None:
        """Add a window that opens when the last one closes, after scuffing."""
        last = self.windows[-1].window_()
        closes = last.closes or Mark(minutes=1440)
        shut = Window(
            opens=last.opens,
            best=last.best,
            closes=closes,
            preparation=last.preparation,
            preparation_minutes=last.preparation_minutes,
            merges=last.merges,
        )
        late = Window(opens=closes, preparation=Preparation.SCUFF, preparation_minutes=10)
        self._show([*(window.window_() for window in self.windows[:-1]), shut, late])
        self.changed.emit()


class GatesField(QWidget):
    """Every gate of a step.

    Signals
    -------
    changed()
        Something is other now.
    """

    changed = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.gates: list[GateField] = []
        self._steps: list[tuple[str, str]] = []
        self.add = QPushButton(self.tr("Add a gate"))
        self.add.setToolTip(
            self.tr("Let this step wait for a film, or keep it within a time after another step")
        )
        self.add.clicked.connect(self._add)
        self._holder = QVBoxLayout()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(self._holder)
        row = QHBoxLayout()
        row.addWidget(self.add)
        row.addStretch(1)
        column.addLayout(row)

    def show_gates(self, gates: Sequence[Gate], steps: Sequence[tuple[str, str]]) -> None:
        """Show gates; ``steps`` are the (name, id) that they may count from."""
        self._steps = list(steps)
        self.add.setEnabled(bool(self._steps))
        while len(self.gates) > len(gates):
            _drop(self._holder, self.gates.pop())
        while len(self.gates) < len(gates):
            self._add_field()
        for field, gate in zip(self.gates, gates, strict=True):
            field.show_gate(gate, self._steps)

    def value(self) -> tuple[Gate, ...]:
        """Return the gates as they stand; `Refused` if one cannot be so."""
        return tuple(gate.gate() for gate in self.gates)

    def _add_field(self) -> GateField:
        field = GateField()
        field.changed.connect(self.changed)
        field.removed.connect(lambda: self._remove(field))
        self.gates.append(field)
        self._holder.addWidget(field)
        return field

    def _add(self) -> None:
        field = self._add_field()
        new = Gate(after=self._steps[-1][1], windows=(Window(opens=Mark(minutes=60)),))
        field.show_gate(new, self._steps)
        self.changed.emit()
        field.after.setFocus()

    def _remove(self, field: GateField) -> None:
        self.gates.remove(field)
        _drop(self._holder, field)
        self.changed.emit()


def _drop(holder: QVBoxLayout, field: QWidget) -> None:
    holder.removeWidget(field)
    field.hide()
    field.deleteLater()


__all__ = ["GateField", "GatesField", "MarkField", "WindowField"]
