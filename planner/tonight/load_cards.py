"""One evening by loads: a card for each filling of an airbrush and each kind of hand work.

It is read off a run sheet; nothing is decided here.  Window, paper, phone page
and terminal all cut an evening by this one rule.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from planner.cautions import Caution
from planner.quantity import Load
from planner.tonight.run_sheet_rows import BenchRow, Row, WorkRow
from planner.values.plan import BenchKind, PassKey
from planner.values.step import Stage, Tool

APART = 60  # hand work of one kind with longer pauses gets cards of its own: assumed [min]
LOADS = (BenchKind.LOAD, BenchKind.CHANGE)


@dataclass(frozen=True)
class PlacesBlock:
    """Work on models whose places are the same: a row for each, a column for each place.

    Attributes
    ----------
    title
        The words with which the names of all its models begin, or "".
    columns
        The "part/place" names.
    rows
        The work, in order of the clock.
    """

    title: str
    columns: tuple[str, ...]
    rows: tuple[WorkRow, ...]

    def name_of(self, row: WorkRow) -> str:
        """Return the name of a row's model without the words of the title."""
        name = row.key.model
        return name[len(self.title) :].strip() if self.title else name


@dataclass(frozen=True)
class LoadCard:
    """What is done with one filling, or one kind of work by hand.

    Attributes
    ----------
    filling
        The loading or change that begins it; None by hand and from a can, and where the
        colour was in the cup before.
    around
        Every set-up that belongs to it, the filling and the cleaning as well.
    rows
        The work, in order of the clock.
    cautions
        Each once; those told on an earlier card stand in ``told_before``.
    """

    stage: Stage
    tool: Tool
    airbrush: str
    coatings: tuple[str, ...]
    swatches: tuple[str, ...]
    filling: BenchRow | None
    around: tuple[BenchRow, ...]
    rows: tuple[WorkRow, ...]
    cautions: tuple[Caution, ...] = ()
    told_before: frozenset[str] = frozenset()

    @property
    def start(self) -> int:
        """First minute, set-up included."""
        rows: tuple[Row, ...] = (*self.around, *self.rows)
        return min(row.start for row in rows)

    @property
    def end(self) -> int:
        """The minute after its last, cleaning included."""
        rows: tuple[Row, ...] = (*self.around, *self.rows)
        return max(row.end for row in rows)

    @property
    def minutes(self) -> int:
        """Minutes of work by hand, set-up included."""
        rows: tuple[Row, ...] = (*self.around, *self.rows)
        return sum(row.free - row.start for row in rows)

    @property
    def swatch(self) -> str:
        """The colour of its first coat, "" where nothing is laid."""
        return self.swatches[0] if self.swatches else ""

    @property
    def put_out(self) -> tuple[Load, ...]:
        """What is put out for it by hand, one for each row and colour that is measured."""
        return tuple(
            coat.load for row in self.rows for coat in row.coats if coat.load and row.piece == 1
        )

    @property
    def in_order(self) -> tuple[Row, ...]:
        """Set-up and work, in order of the clock."""
        return tuple(sorted((*self.around, *self.rows), key=lambda row: (row.start, row.end)))

    @property
    def key(self) -> tuple[PassKey, int]:
        """What tells it from the other cards of an evening."""
        return self.rows[0].key, self.rows[0].piece

    @property
    def blocks(self) -> tuple[PlacesBlock, ...]:
        """Its rows by what places they have, in order of the first row of each."""
        found: dict[tuple[str, ...], list[WorkRow]] = {}
        for row in self.rows:
            found.setdefault(row.places, []).append(row)
        return tuple(
            PlacesBlock(common_words(row.key.model for row in rows), places, tuple(rows))
            for places, rows in found.items()
        )


def common_words(names: Iterable[str]) -> str:
    """Return the whole words with which several different names begin, leaving a word of each."""
    each = [name.split() for name in dict.fromkeys(names)]
    if len(each) < 2:
        return ""
    shared = []
    for words in zip(*each, strict=False):
        if len(set(words)) > 1:
            break
        shared.append(words[0])
    least = min(len(words) for words in each)
    return " ".join(shared[: least - 1])


def cards_of(rows: Iterable[Row]) -> tuple[LoadCard, ...]:
    """Return the cards of the rows of a run sheet in order of their first work."""
    cards: list[LoadCard] = []
    open_loads: dict[str, int] = {}  # airbrush: which card is being sprayed
    filled: dict[str, BenchRow] = {}  # airbrush: a filling that nothing was sprayed with yet
    ahead: list[BenchRow] = []  # set-up whose work comes next
    by_hand: dict[tuple[object, ...], int] = {}
    for row in rows:
        if isinstance(row, BenchRow):
            _set_up(row, cards, open_loads, filled, ahead)
            continue
        kind = _kind(row)
        at = open_loads.get(row.airbrush) if row.airbrush else by_hand.get(kind)
        if at is not None and not row.airbrush and row.start - cards[at].end > APART:
            at = None
        if at is not None and row.airbrush and cards[at].coatings != _names(row):
            at = None
        if at is None:
            filling = filled.pop(row.airbrush, None) if row.airbrush else None
            mine = [one for one in ahead if filling is not None or one.serves == row.key]
            ahead = [one for one in ahead if one not in mine]
            around = (*mine, *((filling,) if filling is not None else ()))
            cards.append(_begun(row, filling, tuple(dict.fromkeys(around))))
            at = len(cards) - 1
            if row.airbrush:
                open_loads[row.airbrush] = at
            else:
                by_hand[kind] = at
        else:
            mine = [one for one in ahead if one.serves == row.key]
            ahead = [one for one in ahead if one not in mine]
            cards[at] = replace(
                cards[at], rows=(*cards[at].rows, row), around=(*cards[at].around, *mine)
            )
    return _cautioned(cards)


def loose_set_up(rows: Iterable[Row], cards: Iterable[LoadCard]) -> tuple[BenchRow, ...]:
    """Return the set-up that belongs to no card, as the cleaning of a cup filled days ago."""
    mine = {one for card in cards for one in card.around}
    return tuple(row for row in rows if isinstance(row, BenchRow) and row not in mine)


def _set_up(
    row: BenchRow,
    cards: list[LoadCard],
    open_loads: dict[str, int],
    filled: dict[str, BenchRow],
    ahead: list[BenchRow],
) -> None:
    """Give a set-up to the card before it, or keep it for the one after."""
    if row.kind in LOADS:
        open_loads.pop(row.airbrush, None)
        filled[row.airbrush] = row
    elif row.kind is BenchKind.CLEAN and row.airbrush in open_loads:
        at = open_loads.pop(row.airbrush)
        cards[at] = replace(cards[at], around=(*cards[at].around, row))
    elif row.kind is not BenchKind.CLEAN:
        ahead.append(row)


def _begun(row: WorkRow, filling: BenchRow | None, around: tuple[BenchRow, ...]) -> LoadCard:
    return LoadCard(
        stage=row.stage,
        tool=row.tool,
        airbrush=row.airbrush,
        coatings=_names(row),
        swatches=tuple(coat.swatch for coat in row.coats),
        filling=filling,
        around=around,
        rows=(row,),
    )


def _names(row: WorkRow) -> tuple[str, ...]:
    return tuple(coat.coating for coat in row.coats)


def _kind(row: WorkRow) -> tuple[object, ...]:
    return row.stage, row.tool, _names(row)


def _cautioned(cards: list[LoadCard]) -> tuple[LoadCard, ...]:
    """Return the cards with each caution once, and which of them earlier cards have told."""
    told: set[str] = set()
    found = []
    for card in cards:
        every = dict.fromkeys(
            caution for row in card.rows if not row.logged for caution in row.cautions
        )
        mine: dict[str, Caution] = {}
        for caution in every:
            mine.setdefault(caution.text, caution)
        found.append(
            replace(
                card,
                cautions=tuple(mine.values()),
                told_before=frozenset(text for text in mine if text in told),
            )
        )
        told.update(mine)
    return tuple(found)
