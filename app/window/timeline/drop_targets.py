"""Where a carried piece of work may be let go: the stretches from now on, hidden ones too.

Pure functions on numbers; no Qt.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from app.window.strip_content import Strip
from app.window.timeline.geometry import ENDS, Scale
from planner.values.moment import Interval


@dataclass(frozen=True)
class Slot:
    """Pixels [left, right) of the strip that stand for one stretch of bench time."""

    left: float
    right: float
    interval: Interval


def slots(strip: Strip, scale: Scale) -> tuple[Slot, ...]:
    """Return the stretches that are not over, as wide as they can be hit.

    Free stretches share the gutter that hides them; the next one after the
    last column has the room behind it.
    """
    return tuple(slot for slot in _slots(strip, scale) if slot.interval.end > strip.now)


def _slots(strip: Strip, scale: Scale) -> Iterator[Slot]:
    folded = sorted((*strip.free, *strip.hidden))
    for span in scale.spans:
        if span.column is not None:
            yield Slot(span.left, span.right, strip.columns[span.column].interval)
            continue
        free = [
            interval
            for interval in folded
            if span.start <= interval.start and interval.end <= span.end
        ]
        wide = span.width / max(1, len(free))
        for number, interval in enumerate(free):
            left = span.left + number * wide
            yield Slot(left, left + wide, interval)
    if scale.spans:
        end = scale.spans[-1]
        behind = [interval for interval in folded if interval.start >= end.end]
        if strip.beyond is not None:
            behind.append(strip.beyond)
        if behind:
            yield Slot(end.right, end.right + ENDS, min(behind))


def slot_at(found: tuple[Slot, ...], x: float) -> Slot | None:
    """Return the slot under an x of the strip."""
    return next((slot for slot in found if slot.left <= x < slot.right), None)
