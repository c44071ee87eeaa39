"""How long each coating takes to each state, as a table."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QObject

from app.window import words
from app.window.forms.rows import Column, RowsModel
from app.window.glossary import state_meaning
from app.window.message_translation import enum_word, translated
from app.window.room.drying_times import CoatingTimes
from planner.air import Fitness, fitness
from planner.cure import shown_minutes
from planner.cure.drying_path import StateTimes
from planner.values.coating import State


class TimesModel(RowsModel[CoatingTimes]):
    """Coatings down, states across; a cell says how long, its tip when and how sure."""

    def __init__(self, parent: QObject | None = None) -> None:
        self._laid = 0
        self._zone = ZoneInfo("UTC")
        name = Column[CoatingTimes](
            self.tr("Coating"), self._name, tip=_about, swatch=lambda row: row.coating.swatch
        )
        super().__init__([name, *(self._column(state) for state in State)], parent)

    def _column(self, state: State) -> Column[CoatingTimes]:
        word = words.state_word(state.value)
        return Column(
            _broken(word),
            lambda row: self._time(_times(row, state)),
            right=True,
            tip=lambda row: self._tip(row, _times(row, state)),
            heading=f"{word}: {state_meaning(state)}",
        )

    def show_times(self, rows: tuple[CoatingTimes, ...], laid: int, zone: ZoneInfo) -> None:
        """Show other times."""
        same = [row.coating.name for row in rows] == [row.coating.name for row in self.rows]
        self._laid, self._zone = laid, zone
        self.show_rows(rows, same=same)

    def _time(self, state_times: StateTimes) -> str:
        if state_times.late is None:
            return self.tr("never")
        return words.short_span(shown_minutes(state_times.late - self._laid))

    def _name(self, row: CoatingTimes) -> str:
        worst = fitness(row.advice)
        if worst is Fitness.GO:
            return row.coating.name
        sign = self.tr("not now") if worst is Fitness.NO_GO else self.tr("with care")
        return self.tr("⚠ {name} ({sign})").format(name=row.coating.name, sign=sign)

    def _tip(self, row: CoatingTimes, state_times: StateTimes) -> str:
        state = words.state_word(state_times.state.value)
        if state_times.late is None or state_times.early is None:
            return self.tr("{coating} is never {state} in this air").format(
                coating=row.coating.name, state=state
            )
        return self.tr(
            "{coating}: {state} between {early} and {late}\n"
            "from {minutes:.0f} min at 23 °C and 50 % RH ({status}: {source})"
        ).format(
            coating=row.coating.name,
            state=state,
            early=words.when(state_times.early, self._zone, self._laid),
            late=words.when(state_times.late, self._zone, self._laid),
            minutes=state_times.figure.minutes,
            status=enum_word(state_times.figure.status),
            source=translated(state_times.figure.source),
        )


def _times(row: CoatingTimes, state: State) -> StateTimes:
    return next(times for times in row.states if times.state is state)


def _about(row: CoatingTimes) -> str:
    told = [
        f"{translated(advisory.reason)} ({translated(advisory.source)})" for advisory in row.advice
    ]
    return "\n".join([row.coating.name, enum_word(row.coating.family), *told])


def _broken(state: str) -> str:
    """Return a state's name on two lines, broken at its last hyphen."""
    head, hyphen, tail = state.rpartition("-")
    return f"{head}{hyphen}\n{tail}" if hyphen else state
