"""The scenarios as a table, the plan as it is first."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QObject

from app.service.what_if import PlanFigures
from app.window import words
from app.window.forms.rows import Column, RowsModel
from app.window.what_if.runner import TriedScenario
from app.window.what_if.scenario_wording import cells, heads, remark


class ScenarioModel(RowsModel[TriedScenario | None]):
    """What the runner knows of each scenario; the line of none is the plan as it is."""

    def __init__(self, parent: QObject | None = None) -> None:
        self._present: PlanFigures | None = None
        self._zone, self._now = ZoneInfo("UTC"), 0
        super().__init__([self._column(at, head) for at, head in enumerate(heads())], parent)
        self.show_rows((None,))

    def _column(self, at: int, head: str) -> Column[TriedScenario | None]:
        return Column(
            head,
            lambda tried: self._cell(tried, at),
            tip=lambda tried: self.remark(tried) or self._cell(tried, at),
        )

    def show_tried(
        self,
        present: PlanFigures | None,
        tried: tuple[TriedScenario, ...],
        zone: ZoneInfo,
        now: int,
    ) -> None:
        """Show what is known; rows are only reset where they are others."""
        alike = [each.scenario for each in tried] == [
            each.scenario for each in self.rows if each is not None
        ]
        self._present, self._zone, self._now = present, zone, now
        self.show_rows((None, *tried), same=alike)

    def remark(self, tried: TriedScenario | None) -> str:
        """Return what is to be said of a scenario beside its numbers."""
        if tried is None:
            return ""
        if tried.why:
            return tried.why
        told = remark(tried.outcome, self._present) if tried.outcome else ""
        return self.tr("{name}. {told}").format(name=words.capital(tried.scenario.name), told=told)

    def _cell(self, tried: TriedScenario | None, column: int) -> str:
        outcome = tried.outcome if tried else self._present
        if column == 0:
            return words.capital(tried.scenario.name) if tried else self.tr("Present plan")
        if tried is not None and tried.why:
            return self.tr("cannot be") if column == 1 else ""
        if outcome is None:
            return self.tr("planning…") if column == 1 else ""
        against = self._present if tried else None
        told = cells(outcome, against, self._zone, self._now)[column - 1]
        if outcome.rough and column == 1:
            return self.tr("{told}, first result").format(told=told)
        return told
