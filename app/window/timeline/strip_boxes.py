"""What the strip consists of at one zoom: boxes, texts and ghosts, in pixels of the strip."""

from __future__ import annotations

from dataclasses import dataclass, field

from app.window.strip_content import Strip
from app.window.target_size import TARGET
from app.window.timeline.geometry import Scale, StripRow
from planner.values.plan import PassKey


@dataclass(frozen=True)
class Sizes:
    """Heights and widths that follow the font [px]; whole ones paint faster."""

    text: float

    @property
    def head(self) -> float:
        """Height of the row of dates and hours."""
        return round(self.text * 3.4)

    @property
    def airbrush(self) -> float:
        """Height of an airbrush lane."""
        return round(self.text * 3.7)

    @property
    def heading(self) -> float:
        """Height of a model's heading."""
        return round(self.text * 1.75)

    @property
    def lane(self) -> float:
        """Height of a lane."""
        return round(self.text * 3.6)

    @property
    def stroke(self) -> float:
        """Height of a piece of work."""
        return self.text * 1.25

    @property
    def left(self) -> float:
        """Width of the column of lane names."""
        return round(self.text * 10.5)


@dataclass(frozen=True)
class Box:
    """A piece of work in one lane, in strip coordinates (lanes start at y = 0).

    From ``free`` on it goes on alone, if that is before its right end.
    """

    piece: int
    lane: int
    left: float
    free: float
    right: float
    middle: float
    main: bool

    def holds(self, x: float, y: float, height: float) -> bool:
        """Tell whether a point lies on it, or so near that a short piece is a target, too."""
        beside = max(2.0, (TARGET - (self.right - self.left)) / 2)
        near = abs(y - self.middle) <= max(height / 2 + 3, TARGET / 2)
        return near and self.left - beside <= x <= self.right + beside

    def off(self, x: float) -> float:
        """Return how far a point is beside it, 0 over it or below it [px]."""
        return max(0.0, self.left - x, x - self.right)


@dataclass(frozen=True)
class Text:
    """A text in strip coordinates, cut to ``width``."""

    left: float
    middle: float
    width: float
    text: str
    key: PassKey | None = None


@dataclass(frozen=True)
class Ghost:
    """Where a piece of work stood in another plan, in strip coordinates."""

    key: PassKey
    left: float
    right: float
    middle: float


@dataclass(frozen=True)
class StripBoxes:
    """What the strip consists of at one zoom.

    ``loaded`` is of each ``held`` of the strip the minute at which its
    loading begins.
    """

    strip: Strip
    scale: Scale
    sizes: Sizes
    rows: tuple[StripRow, ...]
    boxes: tuple[Box, ...]
    names: tuple[Text, ...]
    openings: tuple[Text, ...]
    ghosts: tuple[Ghost, ...] = ()
    loaded: tuple[int, ...] = ()
    lane_rows: dict[int, StripRow] = field(default_factory=dict)

    @property
    def height(self) -> float:
        """Height of all lanes together [px]."""
        return self.rows[-1].bottom if self.rows else 0.0

    def middle(self, lane: int) -> float:
        """Return where the strokes of a lane run."""
        return self.lane_rows[lane].middle + self.sizes.text * 0.1
