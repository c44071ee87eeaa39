"""Which piece of work the arrow keys go to.

Pure functions on boxes: left and right keep to the lane and pass on to the
nearest one where it ends; up and down go to the nearest piece in time.
"""

from __future__ import annotations

from collections.abc import Sequence

from app.window.timeline.strip_boxes import Box


def _order(box: Box) -> tuple[float, float]:
    return (box.left, box.middle)


def first(boxes: Sequence[Box], _now: Box | None) -> Box | None:
    """Return the earliest piece."""
    return min(boxes, key=_order, default=None)


def last(boxes: Sequence[Box], _now: Box | None) -> Box | None:
    """Return the latest piece."""
    return max(boxes, key=_order, default=None)


def later(boxes: Sequence[Box], now: Box | None) -> Box | None:
    """Return the next piece of the lane, at its end the current one."""
    if now is None:
        return first(boxes, None)
    ahead = [box for box in boxes if box.lane == now.lane and box.left > now.left]
    return min(ahead, key=_order, default=now)


def sooner(boxes: Sequence[Box], now: Box | None) -> Box | None:
    """Return the piece before in the lane, at its beginning the current one."""
    if now is None:
        return first(boxes, None)
    behind = [box for box in boxes if box.lane == now.lane and box.left < now.left]
    return max(behind, key=_order, default=now)


def below(boxes: Sequence[Box], now: Box | None) -> Box | None:
    """Return the piece nearest in time in the next lane down that has any."""
    if now is None:
        return first(boxes, None)
    return _nearest([box for box in boxes if box.lane > now.lane], now, least=True)


def above(boxes: Sequence[Box], now: Box | None) -> Box | None:
    """Return the piece nearest in time in the next lane up that has any."""
    if now is None:
        return first(boxes, None)
    return _nearest([box for box in boxes if box.lane < now.lane], now, least=False)


def _nearest(boxes: Sequence[Box], now: Box, *, least: bool) -> Box:
    if not boxes:
        return now
    lanes = [box.lane for box in boxes]
    lane = min(lanes) if least else max(lanes)
    mine = [box for box in boxes if box.lane == lane]
    return min(mine, key=lambda box: (abs(box.left - now.left), box.left))
