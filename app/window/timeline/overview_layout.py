"""The whole plan at one look: every model one lane, every session a column, gutters narrow.

Pure functions on numbers; no Qt.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from app.window.strip_content import Piece, Strip, StripColumn
from app.window.timeline.geometry import Scale
from app.window.timeline.strip_boxes import Box

GUTTER = 22.0
LEAST_COLUMN = 40.0  # a session has at least so much room; more of them scroll [px]
LEAST_LANE, MOST_LANE = 24.0, 52.0
LEAST_BOX = 3.0
LANE_TEXTS = 3.0  # height of a lane in heights of a text, where there is room

ModelAt = tuple[str, str]
"""A project and one of its models."""


@dataclass(frozen=True)
class OverviewLane:
    """One model: its lanes of the strip, the main one first, and its band [top, bottom)."""

    at: ModelAt
    lanes: tuple[int, ...]
    top: float
    bottom: float

    @property
    def middle(self) -> float:
        """Where the work of the main part runs."""
        return self.top + (self.bottom - self.top) * 0.42

    @property
    def lower(self) -> float:
        """Where the work of all other parts runs."""
        return self.top + (self.bottom - self.top) * 0.84


@dataclass(frozen=True)
class Overview:
    """Where everything lies, in pixels from the top left of the lanes."""

    strip: Strip
    scale: Scale
    lanes: tuple[OverviewLane, ...]
    boxes: tuple[Box, ...]

    @property
    def height(self) -> float:
        """Height of all lanes together [px]."""
        return self.lanes[-1].bottom if self.lanes else 0.0


def least_width(columns: Sequence[StripColumn]) -> float:
    """Return the width below which sessions could not be told apart [px]."""
    return _gutters(columns) + LEAST_COLUMN * len(columns)


def overview_of(strip: Strip, width: float, height: float, text: float) -> Overview:
    """Lay out a plan in a width and a height [px]; it is larger where it cannot fit.

    ``text`` is the height of a line of text.
    """
    scale = _scale(strip.columns, width)
    lanes = _lanes(strip, height, text)
    return Overview(strip, scale, lanes, tuple(_boxes(strip, scale, lanes)))


def _gutters(columns: Sequence[StripColumn]) -> float:
    apart = sum(b.interval.start > a.interval.end for a, b in pairwise(columns))
    return GUTTER * (apart + 2)


def _scale(columns: Sequence[StripColumn], width: float) -> Scale:
    minutes = sum(column.interval.minutes for column in columns)
    room = max(width, least_width(columns)) - _gutters(columns)
    return Scale(columns, room / max(1, minutes), least=0.01, narrow=GUTTER)


def _lanes(strip: Strip, height: float, text: float) -> tuple[OverviewLane, ...]:
    mine: dict[ModelAt, list[int]] = {}
    for lane in strip.lanes:
        mine.setdefault((lane.project, lane.model), []).append(lane.index)
    work = [0] * (1 + max((lane.index for lane in strip.lanes), default=0))
    for piece in strip.pieces:
        for number in piece.lanes:
            work[number] += 1
    least = max(LEAST_LANE, text * 1.4)
    most = max(least, min(MOST_LANE, text * LANE_TEXTS))
    tall = min(most, max(least, height / max(1, len(mine))))
    found = []
    for row, (at, numbers) in enumerate(mine.items()):
        main_first = sorted(numbers, key=lambda number: -work[number])
        found.append(OverviewLane(at, tuple(main_first), row * tall, (row + 1) * tall))
    return tuple(found)


def _boxes(strip: Strip, scale: Scale, lanes: Sequence[OverviewLane]) -> list[Box]:
    rows = {number: row for row, lane in enumerate(lanes) for number in lane.lanes}
    found = []
    for index, piece in enumerate(strip.pieces):
        row = rows[piece.lanes[0]]
        lane = lanes[row]
        main = is_main(piece, lane)
        left = scale.x(piece.interval.start)
        right = max(left + LEAST_BOX, scale.x(piece.interval.end))
        middle = lane.middle if main else lane.lower
        found.append(Box(index, row, left, right, right, middle, main))
    return found


def is_main(piece: Piece, lane: OverviewLane) -> bool:
    """Tell whether a piece of work is at the main part of its model."""
    return lane.lanes[0] in piece.lanes


def column_at(strip: Strip, scale: Scale, x: float) -> StripColumn | None:
    """Return the session under an x of the strip, None between two."""
    for span in scale.spans:
        if span.column is not None and span.left <= x < span.right:
            return strip.columns[span.column]
    return None
