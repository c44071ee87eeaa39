"""All that one repaint of the overview needs, and where its minutes lie."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from zoneinfo import ZoneInfo

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QFont, QFontMetricsF

from app.service.model_faces import Face
from app.window.palette import Colours
from app.window.timeline.overview_layout import ModelAt, Overview
from app.window.timeline.strip_boxes import Box
from planner.values.plan import PassKey

FACE = 42.0  # width of a model's outline [px]
MOST_NAME = 170.0


@dataclass(frozen=True)
class Edges:
    """Room around the lanes [px]: names at the left, dates and cups above, words below."""

    left: float
    head: float
    cups: float
    brushes: int
    foot: float

    @property
    def top(self) -> float:
        """Where the lanes begin."""
        return self.head + self.cups * self.brushes


def edges_of(metrics: QFontMetricsF, names: Iterable[str], brushes: int) -> Edges:
    """Return the room around the lanes for a font, the names of the models, and airbrushes."""
    wide = max((metrics.horizontalAdvance(name) for name in names), default=0.0)
    text = metrics.height()
    return Edges(
        left=round(FACE + 22 + min(MOST_NAME, max(60.0, wide))),
        head=round(text * 2.6),
        cups=round(text * 2.5),
        brushes=brushes,
        foot=round(text * 1.6),
    )


@dataclass(frozen=True)
class OverviewScene:
    """Everything that one repaint needs.

    ``before`` are the starts of what stood elsewhere; ``moved`` is how much of
    its way it has slid, from 0 to 1.  ``ends`` is of each model when it is done,
    and whether that is too late.  ``sure`` is of each model, and of each project
    under no model, when it is done in half, four fifths and 95 % of all runs.
    """

    at: Overview
    edges: Edges
    colours: Colours
    font: QFont
    zone: ZoneInfo
    now: int
    size: QSize
    faces: Mapping[ModelAt, Face]
    ends: Mapping[ModelAt, tuple[int, bool]]
    before: Mapping[PassKey, int]
    moved: float = 1.0
    sure: Mapping[ModelAt, tuple[int, int, int]] = field(default_factory=dict)

    @cached_property
    def small(self) -> QFont:
        """Font of what is of less weight."""
        font = QFont(self.font)
        font.setPointSizeF(self.font.pointSizeF() * 0.86)
        return font

    @cached_property
    def bold(self) -> QFont:
        """Font of dates."""
        font = QFont(self.font)
        font.setWeight(QFont.Weight.DemiBold)
        return font

    @property
    def stroke(self) -> float:
        """Height of a piece of work at a main part."""
        lane = self.at.lanes[0] if self.at.lanes else None
        return 0.0 if lane is None else (lane.bottom - lane.top) * 0.5

    def x(self, minute: int) -> float:
        """Return where a minute lies."""
        return self.edges.left + self.at.scale.x(minute)

    def rect(self, box: Box, start: int | None = None) -> QRectF:
        """Return where a piece of work lies, or would with another start."""
        left = box.left if start is None else self.at.scale.x(start)
        tall = self.stroke if box.main else self.stroke * 0.42
        middle = self.edges.top + box.middle
        return QRectF(self.edges.left + left, middle - tall / 2, box.right - box.left, tall)
