"""Which things of the strip lie in which square of it, so that little is looked at to paint.

Pure functions on numbers; no Qt.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from app.window.timeline.arrange import Arrangement

SIDE = 384  # of a square [px]
ROUND = 8.0  # frames, rings and mist reach so far beyond what they belong to [px]

Square = tuple[int, int]


@dataclass
class Items:
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


NOTHING = Items()


@dataclass(frozen=True)
class Index:
    """What lies where: in squares of the lanes, and in pieces of the airbrushes' band."""

    lanes: Mapping[Square, Items]
    band: Mapping[int, Items]

    def at(self, column: int, row: int) -> Items:
        """Return what lies in a square of the lanes."""
        return self.lanes.get((column, row), NOTHING)

    def of_band(self, column: int) -> Items:
        """Return what lies in a piece of the airbrushes' band."""
        return self.band.get(column, NOTHING)


def along(low: float, high: float) -> range:
    """Return the numbers of the squares that [low, high] touches on one axis."""
    return range(int(max(0.0, low - ROUND) // SIDE), int(max(0.0, high + ROUND) // SIDE) + 1)


def index_of(at: Arrangement) -> Index:
    """Return where everything lies."""
    lanes: dict[Square, Items] = defaultdict(Items)
    for name, number, (left, right, top, bottom) in _rects(at):
        columns, rows = along(left, right), along(top, bottom)
        for row in rows:
            for column in columns:
                getattr(lanes[column, row], name).append(number)
    band: dict[int, Items] = defaultdict(Items)
    for name, number, left, right in _on_airbrushes(at):
        for column in along(left, right):
            getattr(band[column], name).append(number)
    return Index(dict(lanes), dict(band))


Rect = tuple[float, float, float, float]


def _rects(at: Arrangement) -> Iterator[tuple[str, int, Rect]]:
    """Yield (kind, number, left, right, top, bottom) of all that is painted in the lanes."""
    scale, half = at.scale, at.sizes.stroke
    for number, box in enumerate(at.boxes):
        yield "boxes", number, (box.left, box.right, box.middle - half, box.middle + half)
    for number, wedge in enumerate(at.strip.wedges):
        right = scale.width if wedge.opens is None else scale.x(wedge.opens)
        until = right if wedge.until is None else scale.x(wedge.until)
        middle = at.middle(wedge.lane)
        reach = (scale.x(wedge.start), max(right, until), middle - half, middle + half)
        yield "wedges", number, reach
    for number, bracket in enumerate(at.strip.brackets):
        x, middle = scale.x(bracket.at), at.middle(bracket.lane)
        yield "brackets", number, (x, x, middle - half, middle + half)
    for number, piece in enumerate(at.strip.pieces):
        if len(piece.lanes) > 1:
            x = scale.x(piece.interval.start)
            ends = at.middle(piece.lanes[0]), at.middle(piece.lanes[-1])
            yield "ties", number, (x, x, *ends)
    for kind, texts in (("names", at.names), ("openings", at.openings)):
        for number, text in enumerate(texts):
            reach = (text.left, text.left + text.width, text.middle - 10, text.middle + 10)
            yield kind, number, reach
    for number, ghost in enumerate(at.ghosts):
        reach = (ghost.left, ghost.right, ghost.middle - half, ghost.middle + half)
        yield "ghosts", number, reach


def _on_airbrushes(at: Arrangement) -> Iterator[tuple[str, int, float, float]]:
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


def together(parts: Iterable[Items]) -> Items:
    """Return what lies in any of these squares, each thing once, in order."""
    whole, known = Items(), tuple(parts)
    for name in vars(whole):
        found = {number for part in known for number in getattr(part, name)}
        getattr(whole, name).extend(sorted(found))
    return whole
