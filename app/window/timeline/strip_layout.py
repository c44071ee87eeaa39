"""Boxes and texts of the strip at one zoom, ready to be painted or clicked on."""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cached_property

from app.window.strip_content import Piece, Strip, Wedge
from app.window.target_size import TARGET
from app.window.timeline.geometry import Label, Scale, StripRow, room_for_labels, rows_of
from app.window.timeline.spatial_index import SIDE, Index
from app.window.timeline.strip_boxes import Box, Ghost, Sizes, StripBoxes, Text
from planner.values.plan import PassKey

LEAST_BOX = 7.0  # narrower work could not be seen or hit [px]
LEAST_LABEL = 26.0
NAMED, OPENED = 0.5, 0.42  # from a lane's edge to the middle of a name or a time [text heights]


@dataclass(frozen=True)
class Arrangement(StripBoxes):
    """The strip at one zoom, and what lies where on it."""

    @cached_property
    def index(self) -> Index:
        """What lies where."""
        return Index(self)

    def box_at(self, x: float, y: float) -> Box | None:
        """Return the box under a point of the strip, or the nearest that is meant by it."""
        across = {int((x + beside) // SIDE) for beside in (-TARGET / 2, 0, TARGET / 2)}
        down = {int((y + beside) // SIDE) for beside in (-TARGET / 2, 0, TARGET / 2)}
        near = {n for column in across for row in down for n in self.index.at(column, row).boxes}
        hits = [self.boxes[n] for n in sorted(near)]
        hits = [box for box in hits if box.holds(x, y, self.sizes.stroke)]
        return min(hits, key=lambda box: (box.off(x), box.right - box.left), default=None)


def arrange(
    strip: Strip,
    scale: Scale,
    sizes: Sizes,
    *,
    measure: Callable[[str], float],
    name_of: Callable[[Piece], str],
    time_of: Callable[[Wedge], str],
    before: Mapping[PassKey, int] | None = None,
) -> Arrangement:
    """Lay out the strip.

    ``measure`` is the width of a text in the labels' font; ``before`` are
    the starts of what stood elsewhere in the plan that it is compared with.
    """
    rows = rows_of(strip.lanes, sizes.heading, sizes.lane)
    lane_rows = {row.lane: row for row in rows if row.lane is not None}
    boxes = tuple(_boxes(strip, scale, sizes, lane_rows))
    names = _names(strip, scale, sizes, boxes, lane_rows, measure, name_of)
    openings = _openings(strip, scale, sizes, lane_rows, measure, time_of)
    ghosts = tuple(_ghosts(strip, scale, sizes, lane_rows, before or {}))
    loaded = _loaded(strip)
    return Arrangement(strip, scale, sizes, rows, boxes, names, openings, ghosts, loaded, lane_rows)


def _ghosts(
    strip: Strip,
    scale: Scale,
    sizes: Sizes,
    rows: dict[int, StripRow],
    before: Mapping[PassKey, int],
) -> list[Ghost]:
    ghosts = []
    for piece in strip.pieces:
        start = before.get(piece.key)
        if start is None or piece.number > 1:
            continue
        left, end = scale.x(start), scale.x(start + piece.interval.minutes)
        for lane in piece.lanes:
            middle = rows[lane].middle + sizes.text * 0.1
            ghosts.append(Ghost(piece.key, left, max(left + LEAST_BOX, end), middle))
    return ghosts


def _loaded(strip: Strip) -> tuple[int, ...]:
    """Return when the loading of each held coating begins."""
    begins: dict[tuple[int | None, int], int] = {}
    for work in strip.set_ups:
        at = (work.airbrush, work.interval.end)
        begins[at] = max(begins.get(at, work.interval.start), work.interval.start)
    return tuple(
        begins.get((held.airbrush, held.interval.start), held.interval.start) for held in strip.held
    )


def _boxes(strip: Strip, scale: Scale, sizes: Sizes, rows: dict[int, StripRow]) -> list[Box]:
    boxes = []
    middles = {lane: row.middle + sizes.text * 0.1 for lane, row in rows.items()}
    for index, piece in enumerate(strip.pieces):
        left = scale.x(piece.interval.start)
        free = max(left + LEAST_BOX, scale.x(piece.free))
        right = free if piece.free == piece.interval.end else scale.x(piece.interval.end)
        right = max(free, right)
        for lane in piece.lanes:
            middle = middles[lane]
            boxes.append(Box(index, lane, left, free, right, middle, lane == piece.lanes[0]))
    return boxes


def _limit(scale: Scale, x: float) -> float:
    """Return where the gutter after the column at ``x`` ends: a text may lean into it."""
    at = bisect_right(scale.lefts, x) - 1
    if at < 0 or x >= scale.spans[at].right:
        return x + 200
    gutter = scale.spans[at + 1] if at + 1 < len(scale.spans) else None
    return gutter.right - 6 if gutter and gutter.column is None else scale.spans[at].right + 34


def _names(
    strip: Strip,
    scale: Scale,
    sizes: Sizes,
    boxes: tuple[Box, ...],
    rows: dict[int, StripRow],
    measure: Callable[[str], float],
    name_of: Callable[[Piece], str],
) -> tuple[Text, ...]:
    by_lane: dict[int, list[Box]] = defaultdict(list)
    for box in boxes:
        if box.main:
            by_lane[box.lane].append(box)
    names = []
    for lane, mine in by_lane.items():
        mine.sort(key=lambda box: box.left)
        texts = [name_of(strip.pieces[box.piece]) for box in mine]
        wanted = [
            Label(box.left, measure(text) + 2, _limit(scale, box.left))
            for box, text in zip(mine, texts, strict=True)
        ]
        middle = rows[lane].top + sizes.text * NAMED
        for box, text, width in zip(
            mine, texts, room_for_labels(wanted, LEAST_LABEL, 5), strict=True
        ):
            if width:
                names.append(Text(box.left, middle, width, text, strip.pieces[box.piece].key))
    return tuple(names)


def _openings(
    strip: Strip,
    scale: Scale,
    sizes: Sizes,
    rows: dict[int, StripRow],
    measure: Callable[[str], float],
    time_of: Callable[[Wedge], str],
) -> tuple[Text, ...]:
    """Write the time at each ring that has room for it."""
    by_lane: dict[int, list[tuple[float, str, PassKey]]] = defaultdict(list)
    for wedge in strip.wedges:
        if wedge.opens is not None and wedge.waiting is not None:
            by_lane[wedge.lane].append((scale.x(wedge.opens), time_of(wedge), wedge.key))
    texts = []
    for lane, rings in by_lane.items():
        middle = rows[lane].bottom - sizes.text * OPENED
        end = float("-inf")
        for x, text, key in sorted(rings):
            width = measure(text)
            if x - width / 2 > end + 6:
                texts.append(Text(x - width / 2, middle, width + 2, text, key))
                end = x + width / 2
    return tuple(texts)
