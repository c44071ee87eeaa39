"""Showing some of the strip only: one project, model, coating or tool.

Pure functions; no Qt.  What is left out of sight is still planned.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from app.window.strip_content import Lane, Piece, Strip, StripColumn
from planner.values.moment import Interval
from planner.values.step import Tool


@dataclass(frozen=True)
class Sieve:
    """What is shown; "" and None let everything through."""

    project: str = ""
    model: str = ""
    coating: str = ""
    tool: Tool | None = None

    @property
    def open(self) -> bool:
        """Tell whether everything goes through."""
        return self == Sieve()

    def passes(self, piece: Piece) -> bool:
        """Tell whether a piece of work is shown."""
        return (
            self.project in ("", piece.key.project)
            and self.model in ("", piece.key.model)
            and self.coating in ("", piece.coating)
            and self.tool in (None, piece.tool)
        )


def sift(strip: Strip, sieve: Sieve) -> Strip:
    """Return the strip with what goes through, and only the lanes and columns that hold it."""
    if sieve.open:
        return strip
    pieces = tuple(piece for piece in strip.pieces if sieve.passes(piece))
    keys = {piece.key for piece in pieces}
    lanes = sorted({lane for piece in pieces for lane in piece.lanes})
    to = {lane: number for number, lane in enumerate(lanes)}
    columns = tuple(
        column
        for column in strip.columns
        if column.interval.start <= strip.now < column.interval.end
        or any(column.interval.overlaps(piece.interval) for piece in pieces)
    )
    gone = [column.interval for column in strip.columns if column not in columns]
    return replace(
        strip,
        columns=columns,
        hidden=tuple(gone),
        lanes=tuple(replace(strip.lanes[lane], index=to[lane]) for lane in lanes),
        set_ups=tuple(
            work
            for work in strip.set_ups
            if sieve.coating in ("", work.coating) and _within(work.interval, columns)
        ),
        held=tuple(held for held in strip.held if _within(held.interval, columns)),
        pieces=tuple(_with_lanes(piece, to) for piece in pieces),
        wedges=tuple(
            replace(wedge, lane=to[wedge.lane])
            for wedge in strip.wedges
            if wedge.lane in to and keys & {wedge.key, wedge.waiting}
        ),
        brackets=tuple(
            replace(bracket, lane=to[bracket.lane])
            for bracket in strip.brackets
            if bracket.lane in to and keys & {bracket.key, bracket.waiting}
        ),
    )


def _within(interval: Interval, columns: tuple[StripColumn, ...]) -> bool:
    return any(column.interval.overlaps(interval) for column in columns)


def _with_lanes(piece: Piece, to: dict[int, int]) -> Piece:
    return replace(piece, lanes=tuple(to[lane] for lane in piece.lanes))


@dataclass(frozen=True)
class Choices:
    """What a strip can be sifted by, as it stands in the plan."""

    projects: tuple[str, ...]
    models: tuple[tuple[str, str], ...]
    coatings: tuple[str, ...]
    tools: tuple[Tool, ...]


def choices_of(strip: Strip) -> Choices:
    """Return every project, (project, model), coating and tool of a strip."""
    lanes: dict[Lane, None] = dict.fromkeys(strip.lanes)
    pieces = strip.pieces
    return Choices(
        projects=tuple(dict.fromkeys(lane.project for lane in lanes)),
        models=tuple(dict.fromkeys((lane.project, lane.model) for lane in lanes)),
        coatings=tuple(sorted({piece.coating for piece in pieces if piece.coating})),
        tools=tuple(sorted({piece.tool for piece in pieces}, key=list(Tool).index)),
    )
