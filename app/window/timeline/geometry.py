"""Where things lie on the strip: minutes to x, lanes to y, labels without clashes.

Pure functions on numbers; no Qt.  A stretch of bench time is as wide as
its minutes; the hours between are a narrow gutter, in which time runs
evenly but much faster.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from app.window.strip_content import Lane, StripColumn
from planner.values.moment import Interval

GUTTER_LEAST, GUTTER_PER_DOUBLING = 58.0, 7.0
ENDS = 40.0  # room before the first column and behind the last
LEAST_SCALE, MOST_SCALE = 0.8, 14.0  # pixels per minute
TICKS = (1, 2, 5, 10, 15, 30, 60, 120, 240)


@dataclass(frozen=True)
class PixelSpan:
    """Pixels [left, right) that show the minutes [start, end)."""

    left: float
    right: float
    start: int
    end: int
    column: int | None  # index of the column, None for a gutter

    @property
    def width(self) -> float:
        """Width [px]."""
        return self.right - self.left


class Scale:
    """The map between minutes and x at one zoom.

    ``least`` is the smallest scale there is, and ``narrow`` the width of every
    gutter where they are not as wide as their hours ask for.
    """

    def __init__(
        self,
        columns: Sequence[StripColumn],
        pixels_per_minute: float,
        *,
        least: float = LEAST_SCALE,
        narrow: float | None = None,
    ) -> None:
        self.columns = tuple(columns)
        self._narrow = narrow
        self._ends = ENDS if narrow is None else narrow
        self.pixels_per_minute = min(MOST_SCALE, max(least, pixels_per_minute))
        self.spans = tuple(self._spans())
        self._starts = [span.start for span in self.spans]
        self.lefts = [span.left for span in self.spans]

    def _spans(self) -> Iterable[PixelSpan]:
        x = self._ends
        for index, column in enumerate(self.columns):
            interval = column.interval
            width = interval.minutes * self.pixels_per_minute
            yield PixelSpan(x, x + width, interval.start, interval.end, index)
            x += width
            if index + 1 < len(self.columns):
                following = self.columns[index + 1].interval
                if following.start > interval.end:
                    wide = self._narrow or gutter_width(following.start - interval.end)
                    yield PixelSpan(x, x + wide, interval.end, following.start, None)
                    x += wide

    @property
    def width(self) -> float:
        """Width of the whole strip [px]."""
        return (self.spans[-1].right if self.spans else 0.0) + self._ends

    def x(self, minute: int) -> float:
        """Return where a minute lies; before and after the columns time is squeezed."""
        if not self.spans:
            return self._ends
        if minute < self.spans[0].start:
            return self._ends - _squeezed(self.spans[0].start - minute, self._ends)
        if minute >= self.spans[-1].end:
            return self.spans[-1].right + _squeezed(minute - self.spans[-1].end, self._ends)
        span = self.spans[bisect_right(self._starts, minute) - 1]
        return span.left + span.width * (minute - span.start) / (span.end - span.start)

    def minute(self, x: float) -> int:
        """Return the minute shown at ``x``, within the columns."""
        if not self.spans:
            return 0
        at = max(0, bisect_right(self.lefts, x) - 1)
        span = self.spans[at]
        share = min(1.0, max(0.0, (x - span.left) / span.width))
        return span.start + math.floor(share * (span.end - span.start))

    def ticks(self, span: PixelSpan) -> list[int]:
        """Return the minutes to label in a column, at least 46 pixels apart."""
        step = next((s for s in TICKS if s * self.pixels_per_minute >= 46), TICKS[-1])
        first = -(-span.start // step) * step
        return list(range(first, span.end, step))


def gutter_width(minutes: int) -> float:
    """Return the width of a gutter [px]: longer waits are wider, but only a little."""
    return GUTTER_LEAST + GUTTER_PER_DOUBLING * math.log2(1 + minutes / 60)


def _squeezed(minutes: int, ends: float) -> float:
    return ends * 0.75 * (1 - math.exp(-minutes / 1440))


def fitting_scale(columns: Sequence[StripColumn], width: float) -> float:
    """Return the pixels per minute at which all columns fit into ``width``."""
    minutes = sum(column.interval.minutes for column in columns)
    gutters = sum(
        gutter_width(later.interval.start - sooner.interval.end)
        for sooner, later in pairwise(columns)
        if later.interval.start > sooner.interval.end
    )
    if not minutes:
        return LEAST_SCALE
    return min(MOST_SCALE, max(LEAST_SCALE, (width - 2 * ENDS - gutters) / minutes))


@dataclass(frozen=True)
class StripRow:
    """One lane's band [top, bottom), or a model's heading where ``lane`` is None."""

    top: float
    bottom: float
    lane: int | None
    model: str
    project: str

    @property
    def middle(self) -> float:
        """Vertical centre."""
        return (self.top + self.bottom) / 2


def rows_of(lanes: Sequence[Lane], heading: float, height: float) -> tuple[StripRow, ...]:
    """Stack lanes under the headings of their models, from y = 0 down."""
    rows: list[StripRow] = []
    y = 0.0
    model: tuple[str, str] | None = None
    for lane in lanes:
        if (lane.project, lane.model) != model:
            model = (lane.project, lane.model)
            rows.append(StripRow(y, y + heading, None, lane.model, lane.project))
            y += heading
        rows.append(StripRow(y, y + height, lane.index, lane.model, lane.project))
        y += height
    return tuple(rows)


@dataclass(frozen=True)
class Label:
    """A text that wants to stand at ``left`` and is ``width`` wide."""

    left: float
    width: float
    limit: float  # where the column ends


def room_for_labels(labels: Sequence[Label], least: float, gap: float) -> list[float]:
    """Return for each label of one row, ordered by ``left``, the width that it gets.

    A label ends where the next one begins, or where its column does; one
    that would get less than ``least`` is left out (0).
    """
    given = [0.0] * len(labels)
    following = math.inf
    for at in range(len(labels) - 1, -1, -1):
        label = labels[at]
        room = min(label.width, following - gap - label.left, label.limit - label.left)
        if room >= min(least, label.width):
            given[at] = room
            following = label.left
    return given


def inside(interval: Interval, minute: int) -> bool:
    """Tell whether a minute lies in [start, end)."""
    return interval.start <= minute < interval.end
