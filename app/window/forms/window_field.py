"""A window in which a coat may follow: when it opens, is best, closes, and what it asks first."""

from __future__ import annotations

from enum import StrEnum

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QFormLayout, QHBoxLayout, QWidget

from app.window import words
from app.window.forms.live_controls import choice, fill, number, put, tick
from app.window.forms.row_list import FormRow
from app.window.labels import text
from app.window.message_translation import enum_word
from planner.values.coating import Clock, Mark, Preparation, State, Window


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
        self.minutes = number(Mark, "minutes", self.changed.emit)
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


class WindowField(FormRow):
    """A window: of a gate, or for the next coat.

    Signals
    -------
    changed()
        Something is other now.
    """

    def __init__(self) -> None:
        super().__init__()
        self.opens = MarkField(self.tr("Opens"), self.tr("at once"))
        self.best = MarkField(self.tr("Best"), self.tr("as soon as it opens"))
        self.closes = MarkField(self.tr("Closes"), self.tr("never"))
        self.preparation = choice(self._prepared)
        self.preparation.setAccessibleName(self.tr("Preparation"))
        self.minutes = number(Window, "preparation_minutes", self.changed.emit)
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
        entries = [(enum_word(each), each.value) for each in Preparation]
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
