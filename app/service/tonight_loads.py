"""An evening by loads: one card for each fill of a cup, and for each kind of work by hand."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from planner.tonight import BenchRow, Row, WorkRow
from planner.values.plan import BenchKind

FILLS = frozenset({BenchKind.LOAD, BenchKind.CHANGE})


@dataclass
class PaperLoad:
    """What is filled in, if anything, and the work that it serves, in order of time."""

    fill: BenchRow | None
    work: list[WorkRow] = field(default_factory=list)

    @property
    def start(self) -> int:
        """The minute at which it begins."""
        return self.fill.start if self.fill else self.work[0].start

    @property
    def minutes(self) -> int:
        """Minutes of work, the filling included."""
        filling = self.fill.minutes if self.fill else 0
        return filling + sum(row.free - row.start for row in self.work)

    @property
    def swatch(self) -> str:
        """The colour of the first coat, "" where nothing is laid."""
        if self.fill is not None:
            return self.fill.swatch
        return next((coat.swatch for row in self.work for coat in row.coats), "")


def load_cards(rows: Iterable[Row]) -> tuple[tuple[PaperLoad, ...], tuple[BenchRow, ...]]:
    """Return the cards of an evening, and what is only cleaned or prepared.

    Work that is sprayed belongs to the last fill of its airbrush; other work
    of one stage and one coating follows each other on one card.
    """
    cards: list[PaperLoad] = []
    filled: dict[str, PaperLoad] = {}
    rest: list[BenchRow] = []
    by_hand: dict[tuple[str, ...], PaperLoad] = {}
    for row in rows:
        if isinstance(row, BenchRow):
            if row.kind in FILLS:
                filled[row.airbrush] = PaperLoad(row)
                cards.append(filled[row.airbrush])
            else:
                rest.append(row)
            continue
        card = filled.get(row.airbrush) if row.airbrush else None
        if card is None:
            kind = (row.stage.value, row.title, *(coat.coating for coat in row.coats))
            if kind not in by_hand:
                by_hand[kind] = PaperLoad(None)
                cards.append(by_hand[kind])
            card = by_hand[kind]
        card.work.append(row)
    shown = (card for card in cards if card.work)
    return tuple(sorted(shown, key=lambda card: card.start)), tuple(rest)
