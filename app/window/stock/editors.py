"""Times to each drying state and recoat windows, as they stand on a label."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import (
    QCheckBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.forms.controls import whole
from app.window.forms.row_list import FormRow, RowList
from app.window.forms.window_field import WindowField
from app.window.glossary import state_meaning
from app.window.labels import text
from app.window.message_translation import translated
from app.window.stock.coating_rows import cure_lines
from planner.values.coating import Coating, State, StateTime, Window
from planner.values.refusal import Refused

MOST_MINUTES = 600_000  # a little more than the values take, so that they can say so


class TimesEditor(QWidget):
    """For each state: whether the label says a time, how long, and where it stands.

    Where nothing is ticked the class default holds; it is shown greyed.
    """

    def __init__(self, coating: Coating) -> None:
        super().__init__()
        self.boxes: dict[State, QCheckBox] = {}
        self.minutes: dict[State, QSpinBox] = {}
        self.sources: dict[State, QLineEdit] = {}
        given = {time.state: time for time in coating.times}
        usual = {line.state: round(line.minutes) for line in cure_lines(coating)}
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(6)
        grid.setVerticalSpacing(3)
        grid.setColumnStretch(2, 1)
        for row, state in enumerate(State):
            box = QCheckBox(words.state_word(state.value))
            box.setToolTip(state_meaning(state))
            time = given.get(state)
            minutes = whole(time.minutes if time else usual.get(state, 0), 0, MOST_MINUTES)
            minutes.setSuffix(self.tr(" min"))
            minutes.setAccessibleName(self.tr("Minutes to {state}").format(state=box.text()))
            source = QLineEdit(time.source if time else "label")
            source.setAccessibleName(self.tr("Where the time stands"))
            for control in (minutes, source):
                control.setEnabled(time is not None)
                box.toggled.connect(control.setEnabled)
            box.setChecked(time is not None)
            for column, widget in enumerate((box, minutes, source)):
                grid.addWidget(widget, row, column)
            self.boxes[state], self.minutes[state] = box, minutes
            self.sources[state] = source

    def times(self) -> tuple[StateTime, ...]:
        """Return the times that are ticked; `Refused` if one is none."""
        found: list[StateTime] = []
        for state, box in self.boxes.items():
            if box.isChecked():
                try:
                    time = StateTime(
                        state=state,
                        minutes=self.minutes[state].value(),
                        source=self.sources[state].text().strip(),
                    )
                except Refused as problem:
                    raise Refused("times", f"{box.text()}: {translated(problem.mend)}") from None
                found.append(time)
        return tuple(found)


class WindowRow(FormRow):
    """One recoat window, named by its number."""

    def __init__(self) -> None:
        super().__init__()
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.name = text("", bold=True)
        self.window_field = WindowField()
        self.window_field.changed.connect(self.changed)
        self.drop = self.cross(self.tr("Remove this window"))
        self.setFocusProxy(self.window_field.opens.by)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 6, 8, 6)
        column.setSpacing(4)
        head = QHBoxLayout()
        head.addWidget(self.name, 1)
        head.addWidget(self.drop)
        column.addLayout(head)
        column.addWidget(self.window_field)


class WindowsEditor(RowList[WindowRow]):
    """Recoat windows below each other; none means "once dry-to-recoat"."""

    def __init__(self, windows: Sequence[Window]) -> None:
        super().__init__(
            WindowRow, self.tr("Add a window"), lambda row: row.window_field.show_window(Window())
        )
        self.none = text(self.tr("None: the next coat may follow once this one is dry-to-recoat."))
        layout = self.layout()
        assert isinstance(layout, QVBoxLayout)
        layout.insertWidget(0, self.none)
        for row, window in zip(self.put(len(windows)), windows, strict=True):
            row.window_field.show_window(window)
        self.changed.connect(self._number)
        self._number()

    def _number(self) -> None:
        self.none.setVisible(not self.rows)
        for number, row in enumerate(self.rows, start=1):
            row.name.setText(self.tr("Window {n}").format(n=number))

    def windows(self) -> tuple[Window, ...]:
        """Return the windows; `Refused` if one is not sound."""
        found = []
        for row in self.rows:
            for box in row.findChildren(QSpinBox):
                box.interpretText()  # what is still being typed when Keep is pressed by its key
            try:
                found.append(row.window_field.window_())
            except Refused as problem:
                told = f"{row.name.text()}: {problem.place} {translated(problem.mend)}"
                raise Refused("recoat", told) from None
        return tuple(found)
