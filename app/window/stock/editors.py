"""Times to each drying state and recoat windows, as they stand on a label."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.forms.controls import choice, tool, whole
from app.window.glossary import state_meaning
from app.window.labels import field_label, text
from app.window.message_translation import translated
from app.window.stock.coating_rows import cure_lines
from planner.values.coating import Clock, Coating, Mark, Preparation, State, StateTime, Window
from planner.values.refusal import Refused

MOST_MINUTES = 600_000  # a little more than the values take, so that they can say so
NEVER, AFTER, AFTER_FILM = "never", "after", "film"


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


class MarkEditor(QWidget):
    """When a window opens or closes: never, after minutes, or at a drying state."""

    def __init__(self, mark: Mark | None, name: str, never: str) -> None:
        super().__init__()
        entries: list[tuple[str, object]] = [
            (never, NEVER),
            (self.tr("after"), AFTER),
            (self.tr("after, as the film dries"), AFTER_FILM),
        ]
        entries += [(words.state_word(state.value), state.value) for state in State]
        self.kind = choice(entries, _kind(mark))
        self.kind.setAccessibleName(name)
        self.minutes = whole(mark.minutes if mark and mark.minutes else 0, 0, MOST_MINUTES)
        self.minutes.setSuffix(self.tr(" min"))
        self.minutes.setAccessibleName(self.tr("{name}: minutes").format(name=name))
        line = QHBoxLayout(self)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(field_label(name, self.kind))
        line.addWidget(self.kind, 1)
        line.addWidget(self.minutes)
        self.kind.currentIndexChanged.connect(self._enable)
        self._enable()

    def _enable(self) -> None:
        self.minutes.setEnabled(self.kind.currentData() in (AFTER, AFTER_FILM))

    def mark(self) -> Mark | None:
        """Return the moment; None for never."""
        kind = self.kind.currentData()
        if kind == NEVER:
            return None
        if kind in (AFTER, AFTER_FILM):
            clock = Clock.ELAPSED if kind == AFTER else Clock.FILM
            return Mark(minutes=self.minutes.value(), clock=clock)
        return Mark(state=State(kind))


class WindowRow(QFrame):
    """One recoat window."""

    def __init__(self, window: Window, name: str) -> None:
        super().__init__()
        self.setFrameShape(QFrame.Shape.StyledPanel)
        tr = self.tr
        self.opens = MarkEditor(window.opens, tr("Opens"), tr("at once"))
        self.best = MarkEditor(window.best, tr("Best"), tr("as soon as it opens"))
        self.closes = MarkEditor(window.closes, tr("Closes"), tr("never"))
        self.preparation = choice(
            [
                (QCoreApplication.translate("preparation", preparation.value), preparation.value)
                for preparation in Preparation
            ],
            window.preparation.value,
        )
        self.preparation.setMinimumContentsLength(8)
        self.minutes = whole(window.preparation_minutes, 0, 9999, tr(" min"))
        self.minutes.setAccessibleName(tr("Minutes of preparation"))
        self.merges = QCheckBox(tr("coats merge into one film"))
        self.merges.setChecked(window.merges)
        self.drop = tool("×", tr("Remove this window"), lambda: None)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 6, 8, 6)
        column.setSpacing(4)
        head = QHBoxLayout()
        head.addWidget(text(name, bold=True), 1)
        head.addWidget(self.drop)
        column.addLayout(head)
        column.addWidget(self.opens)
        column.addWidget(self.best)
        column.addWidget(self.closes)
        line = QHBoxLayout()
        line.addWidget(field_label(tr("Asks for"), self.preparation))
        line.addWidget(self.preparation, 1)
        line.addWidget(self.minutes)
        column.addLayout(line)
        column.addWidget(self.merges)
        self.preparation.currentIndexChanged.connect(self._enable)
        self._enable()

    def _enable(self) -> None:
        some = self.preparation.currentData() != Preparation.NONE.value
        self.minutes.setEnabled(some)
        if not some:
            self.minutes.setValue(0)

    def filled(self) -> Window:
        """Return what was filled in; `Refused` if it is not sound."""
        return Window(
            opens=self.opens.mark(),
            best=self.best.mark(),
            closes=self.closes.mark(),
            preparation=Preparation(self.preparation.currentData()),
            preparation_minutes=self.minutes.value(),
            merges=self.merges.isChecked(),
        )


class WindowsEditor(QWidget):
    """Recoat windows below each other; none means "once dry-to-recoat"."""

    def __init__(self, windows: Sequence[Window]) -> None:
        super().__init__()
        self.rows: list[WindowRow] = []
        self._lines = QVBoxLayout()
        self._lines.setSpacing(6)
        self.none = text(self.tr("None: the next coat may follow once this one is dry-to-recoat."))
        self.add = QPushButton(self.tr("Add a window"))
        self.add.setAutoDefault(False)
        self.add.clicked.connect(self._add)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(self.none)
        column.addLayout(self._lines)
        column.addWidget(self.add, 0, Qt.AlignmentFlag.AlignLeft)
        for window in windows:
            self._append(window)

    def _add(self) -> None:
        self._append(Window()).opens.kind.setFocus()

    def _append(self, window: Window) -> WindowRow:
        name = self.tr("Window {n}").format(n=len(self.rows) + 1)
        row = WindowRow(window, name)
        row.drop.clicked.connect(lambda: self._remove(row))
        self.rows.append(row)
        self._lines.addWidget(row)
        self.none.hide()
        return row

    def _remove(self, row: WindowRow) -> None:
        self.rows.remove(row)
        self._lines.removeWidget(row)
        row.hide()
        row.deleteLater()
        self.none.setVisible(not self.rows)
        self.add.setFocus()

    def windows(self) -> tuple[Window, ...]:
        """Return the windows; `Refused` if one is not sound."""
        found = []
        for number, row in enumerate(self.rows):
            try:
                found.append(row.filled())
            except Refused as problem:
                name = self.tr("Window {n}").format(n=number + 1)
                raise Refused(
                    "recoat", f"{name}: {problem.place} {translated(problem.mend)}"
                ) from None
        return tuple(found)


def _kind(mark: Mark | None) -> str:
    if mark is None:
        return NEVER
    if mark.state is not None:
        return mark.state.value
    return AFTER if mark.clock is Clock.ELAPSED else AFTER_FILM
