"""Words that drawings paint: cut by their own room, outside their widget, or over each other.

Qt's own controls paint their words in C++ and are measured by `text_fit`; what is
written here in Python goes through `QPainter.drawText`, which is watched while
a widget paints itself.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import combinations
from typing import Any

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPainter
from PySide6.QtWidgets import QAbstractScrollArea, QWidget

SLACK = 1.5  # pixels of width: hinted letters may be wider than measured
FAR = 10_000.0  # pixels: beyond every edge
LEADING = 4.0  # pixels of height: a line's box is higher than its letters


@dataclass(frozen=True)
class Written:
    """Words on a surface: where they stand [px], and the room that they were given, if any."""

    words: str
    where: QRectF
    room: QRectF | None
    shown: QRectF | None
    """What the painter let through, None for all."""
    surface: int

    @property
    def seen(self) -> QRectF:
        """The part of the words that can be seen."""
        return self.where if self.shown is None else self.where.intersected(self.shown)


@contextmanager
def watched() -> Iterator[list[tuple[Any, Written]]]:
    """Collect everything that is written by `drawText`, with the surface that it is on."""
    found: list[tuple[Any, Written]] = []
    usual = QPainter.drawText

    def write(painter: QPainter, *given: Any) -> Any:
        found.append((painter.device(), _written(painter, given)))
        return usual(painter, *given)

    QPainter.drawText = write  # type: ignore[method-assign, assignment]
    try:
        yield found
    finally:
        QPainter.drawText = usual  # type: ignore[method-assign]


def _written(painter: QPainter, given: tuple[Any, ...]) -> Written:
    words = next(one for one in given if isinstance(one, str))
    room: QRectF | None = None
    if isinstance(given[0], (QRect, QRectF)):
        room = QRectF(given[0])
        flags = given[1] if not isinstance(given[1], str) else Qt.AlignmentFlag.AlignLeft
        number = flags if isinstance(flags, int) else flags.value
        where = painter.boundingRect(room, number, words)
        if number & Qt.TextFlag.TextDontClip.value:
            room = None
    elif isinstance(given[0], (QPoint, QPointF)):
        where = QFontMetricsF(painter.font()).boundingRect(words).translated(QPointF(given[0]))
    else:
        raise AssertionError(f"written in another way: {given}")
    turn = painter.worldTransform()
    shown = turn.mapRect(painter.clipBoundingRect()) if painter.hasClipping() else None
    return Written(
        words,
        turn.mapRect(where),
        turn.mapRect(room) if room is not None else None,
        shown,
        id(painter.device()),
    )


def painted_faults(whole: QWidget) -> list[str]:
    """Return a line for all that a widget and those in it write badly."""
    with watched() as found:
        whole.grab()
    by_surface: dict[int, list[tuple[Any, Written]]] = {}
    for surface, item in found:
        if item.words.strip():
            by_surface.setdefault(item.surface, []).append((surface, item))
    return [line for each in by_surface.values() for line in _surface(each)]


def _surface(found: list[tuple[Any, Written]]) -> list[str]:
    surface = found[0][0]
    every: list[Written] = []
    for _, item in found:  # a widget may paint itself twice
        if item not in every and not item.seen.isEmpty():
            every.append(item)
    name = type(surface).__name__
    said = [f"{name}: {line}" for one in every for line in cut(one)]
    if isinstance(surface, QWidget):
        said += [f"{name}: {line}" for one in every for line in outside(one, surface)]
    said += [f"{name}: {line}" for a, b in combinations(every, 2) for line in over(a, b)]
    return said


def cut(written: Written) -> list[str]:
    """Return what of the words does not fit into their own room."""
    if written.room is None:
        return []
    wide, tall = written.where.width(), written.where.height()
    if wide > written.room.width() + SLACK:
        return [f"{written.words!r} needs {wide:.0f} px and has {written.room.width():.0f}"]
    if tall > written.room.height() + LEADING:
        return [
            f"{written.words!r} needs {tall:.0f} px of height and has {written.room.height():.0f}"
        ]
    return []


def outside(written: Written, widget: QWidget) -> list[str]:
    """Return what of the words lies outside their widget."""
    if written.shown is not None and not written.shown.contains(written.where):
        return []  # cut on purpose, as at the edge of what scrolls
    page = QRectF(widget.rect()).adjusted(-SLACK, -LEADING, SLACK, LEADING)
    area = widget.parentWidget()
    if isinstance(area, QAbstractScrollArea) and area.viewport() is widget:
        if area.verticalScrollBar().maximum():  # the rest comes into sight
            page.adjust(0, -FAR, 0, FAR)
        if area.horizontalScrollBar().maximum():
            page.adjust(-FAR, 0, FAR, 0)
    if page.contains(written.where):
        return []
    return [f"{written.words!r} at {_at(written.where)} reaches out of {widget.size().toTuple()}"]


def over(a: Written, b: Written) -> list[str]:
    """Return whether words stand over others."""
    common = a.seen.intersected(b.seen)
    if common.width() <= SLACK or common.height() <= LEADING:
        return []
    return [f"{a.words!r} at {_at(a.where)} overlaps {b.words!r} at {_at(b.where)}"]


def _at(rect: QRectF) -> tuple[int, ...]:
    return tuple(round(part) for part in rect.getRect())
