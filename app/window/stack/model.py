"""The coats of a place as a table, the topmost first, for everyone who reads."""

from __future__ import annotations

from collections.abc import Callable
from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication, QObject

from app.service.hard_clear import HardClear
from app.window import words
from app.window.forms.rows import Column, RowsModel
from app.window.stack.coat_rows import CoatRow, PlaceStack
from planner.layers.overcoat_table import LayerVerdict

SIGNS = {
    LayerVerdict.SOUND: "○",
    LayerVerdict.WAIT: "◁",
    LayerVerdict.ADVICE: "△",
    LayerVerdict.PREPARE: "△",
    LayerVerdict.ORDER: "△",
    LayerVerdict.BARRIER: "✕",
    LayerVerdict.NEVER: "✕",
}


def verdict_word(verdict: LayerVerdict) -> str:
    """Return a verdict in words."""
    return QCoreApplication.translate("verdict", verdict.value)


def verdict_line(coat: CoatRow, zone: ZoneInfo, now: int, *, with_state: bool = True) -> str:
    """Return what is thought of laying a coat where it lies, in one short line."""
    if coat.verdict is not LayerVerdict.WAIT:
        return verdict_word(coat.verdict)
    at = words.tr("never") if coat.opens is None else words.when(coat.opens, zone, now)
    if coat.state is None or not with_state:
        return words.tr("from {time}").format(time=at)
    return words.tr("{state} from {time}").format(state=words.state_word(coat.state.value), time=at)


def coat_name(coat: CoatRow) -> str:
    """Return what the coat is of, and which of several."""
    if coat.coats < 2:
        return coat.name
    return words.tr("{name}, coat {coat} of {coats}").format(
        name=coat.name, coat=coat.key.coat, coats=coat.coats
    )


def place_name(place: str) -> str:
    """Return a place as a person says it: "hull, upper works"."""
    return place.replace("/", ", ")


def hard_line(hard_clear: HardClear, zone: ZoneInfo, now: int) -> str:
    """Return from when on a model may get a hard clear, and what holds it."""
    if hard_clear.opens is None:
        return words.tr("No date for a hard clear, because of {coating} on {place}").format(
            coating=hard_clear.coating, place=place_name(hard_clear.place)
        )
    form = words.tr("A hard clear at the earliest: {time}, because of {coating} on {place}")
    return form.format(
        time=words.when(hard_clear.opens, zone, now),
        coating=hard_clear.coating,
        place=place_name(hard_clear.place),
    )


def coat_time(coat: CoatRow, zone: ZoneInfo, now: int) -> str:
    """Return when the coat is laid, or was."""
    if coat.start is None:
        return words.tr("no place")
    at = words.when(coat.start, zone, now)
    return words.tr("laid {time}").format(time=at) if coat.logged else at


class CoatsModel(RowsModel[CoatRow]):
    """Coats down, the topmost first; what, when, verdict, stage across."""

    def __init__(self, parent: QObject | None = None) -> None:
        self._zone, self._now = ZoneInfo("UTC"), 0

        def column(
            name: str,
            text: Callable[[CoatRow], str],
            swatch: Callable[[CoatRow], str] | None = None,
        ) -> Column[CoatRow]:
            return Column(name, text, tip=lambda coat: coat.why, swatch=swatch)

        columns = (
            column(self.tr("Coat"), coat_name, lambda coat: coat.swatch),
            column(self.tr("When"), lambda coat: coat_time(coat, self._zone, self._now)),
            column(self.tr("On the one below"), self._verdict),
            column(self.tr("Stage"), lambda coat: words.stage_word(coat.stage)),
        )
        super().__init__(columns, parent)

    def _verdict(self, coat: CoatRow) -> str:
        return f"{SIGNS[coat.verdict]} {verdict_line(coat, self._zone, self._now)}"

    def show_stack(self, stack: PlaceStack | None, zone: ZoneInfo, now: int) -> None:
        """Show another place."""
        self._zone, self._now = zone, now
        self.show_rows(tuple(reversed(stack.coats)) if stack else (), same=False)
