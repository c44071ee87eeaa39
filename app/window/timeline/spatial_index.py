"""Which things of the strip lie in which square of it, so that little is looked at to paint.

Pure functions on numbers; no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from functools import cached_property
from weakref import ref

from app.window.timeline.strip_boxes import StripBoxes

SIDE = 384  # of a square [px]
ROUND = 8.0  # frames, rings and mist reach so far beyond what they belong to [px]

Square = tuple[int, int]


@dataclass
class SquareItems:
    """Numbers of what lies in one square; ``row`` of one band of airbrushes."""

    boxes: list[int] = field(default_factory=list)
    wedges: list[int] = field(default_factory=list)
    brackets: list[int] = field(default_factory=list)
    ties: list[int] = field(default_factory=list)
    names: list[int] = field(default_factory=list)
    openings: list[int] = field(default_factory=list)
    ghosts: list[int] = field(default_factory=list)
    set_ups: list[int] = field(default_factory=list)
    held: list[int] = field(default_factory=list)
    sprayed: list[int] = field(default_factory=list)


NOTHING = SquareItems()


class Index:
    """What lies where: in squares of the lanes, and in pieces of the airbrushes' band.

    A row of squares is looked through when one of them is asked for: the rows
    out of sight can wait.
    """

    def __init__(self, at: StripBoxes) -> None:
        self._at = ref(at)  # which holds this in turn
        self._of_row: dict[int, list[Reach]] = defaultdict(list)
        for kind, number, top, bottom in _heights(at):
            for row in along(top, bottom):
                self._of_row[row].append((kind, number))
        self._rows: dict[int, dict[int, SquareItems]] = {}

    @property
    def squares(self) -> list[Square]:
        """Every square of the lanes in which something lies."""
        return [(column, row) for row in sorted(self._of_row) for column in self._row(row)]

    def at(self, column: int, row: int) -> SquareItems:
        """Return what lies in a square of the lanes."""
        return self._row(row).get(column, NOTHING)

    def of_band(self, column: int) -> SquareItems:
        """Return what lies in a piece of the airbrushes' band."""
        return self._band.get(column, NOTHING)

    @property
    def _arrangement(self) -> StripBoxes:
        at = self._at()
        assert at is not None
        return at

    def _row(self, row: int) -> dict[int, SquareItems]:
        known = self._rows.get(row)
        if known is None:
            known, at = defaultdict(SquareItems), self._arrangement
            for kind, number in self._of_row.get(row, ()):
                left, right = _WIDTHS[kind](at, number)
                for column in along(left, right):
                    getattr(known[column], kind).append(number)
            known = self._rows[row] = dict(known)
        return known

    @cached_property
    def _band(self) -> dict[int, SquareItems]:
        band: dict[int, SquareItems] = defaultdict(SquareItems)
        for kind, number, left, right in _on_airbrushes(self._arrangement):
            for column in along(left, right):
                getattr(band[column], kind).append(number)
        return dict(band)


def along(low: float, high: float) -> range:
    """Return the numbers of the squares that [low, high] touches on one axis."""
    return range(int(max(0.0, low - ROUND) // SIDE), int(max(0.0, high + ROUND) // SIDE) + 1)


Reach = tuple[str, int]  # kind and number of what is painted


def _heights(at: StripBoxes) -> Iterator[tuple[str, int, float, float]]:
    """Yield (kind, number, top, bottom) of all that is painted in the lanes."""
    half = at.sizes.stroke
    middles = [at.middle(lane.index) for lane in at.strip.lanes]
    for number, box in enumerate(at.boxes):
        yield "boxes", number, box.middle - half, box.middle + half
    for number, wedge in enumerate(at.strip.wedges):
        yield "wedges", number, middles[wedge.lane] - half, middles[wedge.lane] + half
    for number, bracket in enumerate(at.strip.brackets):
        yield "brackets", number, middles[bracket.lane] - half, middles[bracket.lane] + half
    for number, piece in enumerate(at.strip.pieces):
        if len(piece.lanes) > 1:
            yield "ties", number, middles[piece.lanes[0]], middles[piece.lanes[-1]]
    for kind, texts in (("names", at.names), ("openings", at.openings)):
        for number, text in enumerate(texts):
            yield kind, number, text.middle - 10, text.middle + 10
    for number, ghost in enumerate(at.ghosts):
        yield "ghosts", number, ghost.middle - half, ghost.middle + half


Width = tuple[float, float]  # from left to right


def _box(at: StripBoxes, number: int) -> Width:
    return at.boxes[number].left, at.boxes[number].right


def _wedge(at: StripBoxes, number: int) -> Width:
    wedge, scale = at.strip.wedges[number], at.scale
    right = scale.width if wedge.opens is None else scale.x(wedge.opens)
    until = right if wedge.until is None else scale.x(wedge.until)
    return scale.x(wedge.start), max(right, until)


def _bracket(at: StripBoxes, number: int) -> Width:
    x = at.scale.x(at.strip.brackets[number].at)
    return x, x


def _tie(at: StripBoxes, number: int) -> Width:
    x = at.scale.x(at.strip.pieces[number].interval.start)
    return x, x


def _name(at: StripBoxes, number: int) -> Width:
    text = at.names[number]
    return text.left, text.left + text.width


def _opening(at: StripBoxes, number: int) -> Width:
    text = at.openings[number]
    return text.left, text.left + text.width


def _ghost(at: StripBoxes, number: int) -> Width:
    return at.ghosts[number].left, at.ghosts[number].right


_WIDTHS = {
    "boxes": _box,
    "wedges": _wedge,
    "brackets": _bracket,
    "ties": _tie,
    "names": _name,
    "openings": _opening,
    "ghosts": _ghost,
}


def _on_airbrushes(at: StripBoxes) -> Iterator[tuple[str, int, float, float]]:
    scale, strip = at.scale, at.strip
    for number, work in enumerate(strip.set_ups):
        if work.airbrush is not None:
            middle = scale.x(work.interval.start)
            yield "set_ups", number, middle - 20, scale.x(work.interval.end) + 20
    for number, held in enumerate(strip.held):
        yield "held", number, scale.x(at.loaded[number]), scale.x(held.interval.end)
    for number, piece in enumerate(strip.pieces):
        if piece.airbrush in strip.airbrushes:
            left, right = scale.x(piece.interval.start), scale.x(piece.interval.end)
            yield "sprayed", number, left, max(right, left + 4)


def together(parts: Iterable[SquareItems]) -> SquareItems:
    """Return what lies in any of these squares, each thing once, in order."""
    whole, known = SquareItems(), tuple(parts)
    for name in vars(whole):
        found = {number for part in known for number in getattr(part, name)}
        getattr(whole, name).extend(sorted(found))
    return whole
