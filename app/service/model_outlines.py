"""Outlines of models by kind, of our own drawing, in a box of 96 by 48; and one as SVG."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from app.service.model_faces import Face
from planner.values.model import ModelKind

BOX = (96.0, 48.0)
GLASS = "glass"
LINE = "line"
Area = tuple[str, str, tuple[float, ...]]
"""Which colour it takes, its shape ("poly", "rect", "oval", "line"), and its numbers."""


def _wheel(x: float, y: float, radius: float) -> tuple[Area, ...]:
    return (
        ("tyres", "oval", (x, y, radius, radius)),
        ("running", "oval", (x, y, radius * 0.5, radius * 0.5)),
    )


OUTLINES: dict[ModelKind, tuple[Area, ...]] = {
    ModelKind.WHEELED: (
        ("lower", "rect", (8, 31, 82, 5, 1)),
        ("1", "rect", (36, 15, 54, 16, 1)),
        (LINE, "line", (36, 20, 90, 20)),
        (LINE, "line", (36, 25.5, 90, 25.5)),
        ("0", "poly", (5, 33, 5, 24, 11, 12, 32, 12, 32, 33)),
        (GLASS, "poly", (10, 22, 14, 15, 22, 15, 22, 22)),
        *_wheel(18, 37, 7.5),
        *_wheel(62, 37, 7.5),
        *_wheel(80, 37, 7.5),
    ),
    ModelKind.TRACKED: (
        ("0", "rect", (36, 7, 26, 17, 2)),
        (GLASS, "rect", (40, 10, 12, 8, 1)),
        ("0", "poly", (14, 24, 84, 24, 88, 31, 12, 31)),
        ("tyres", "rect", (12, 29, 76, 15, 7.5)),
        *(("running", "oval", (x, 36.5, 4.6, 4.6)) for x in (21.0, 35.5, 50.0, 64.5, 79.0)),
        ("1", "poly", (2, 20, 7, 20, 10, 41, 1, 43)),
        (LINE, "line", (8, 32, 14, 30)),
    ),
    ModelKind.CAR: (
        ("0", "poly", (4, 36, 5, 27, 22, 23, 34, 12, 62, 12, 74, 23, 91, 27, 92, 36)),
        (GLASS, "poly", (28, 23, 37, 15, 46, 15, 46, 23)),
        (GLASS, "poly", (50, 23, 50, 15, 60, 15, 68, 23)),
        ("lower", "rect", (4, 33, 88, 4, 1.5)),
        *_wheel(24, 37, 7),
        *_wheel(74, 37, 7),
    ),
    ModelKind.RAIL: (
        (LINE, "line", (40, 9, 48, 1, 56, 9)),
        ("0", "rect", (6, 12, 84, 15, 3)),
        *((GLASS, "rect", (x, 15, 9, 8, 1)) for x in (12.0, 24.5, 37.0, 49.5, 62.0, 74.5)),
        ("1", "rect", (6, 25, 84, 9, 1)),
        ("roof", "rect", (10, 8, 76, 5, 2.5)),
        ("lower", "rect", (10, 34, 76, 3, 1)),
        *(("running", "oval", (x, 39.5, 4.6, 4.6)) for x in (20.0, 32.0, 64.0, 76.0)),
    ),
    ModelKind.BOAT: (
        (LINE, "line", (34, 24, 34, 4)),
        (LINE, "line", (34, 6, 56, 24)),
        ("2", "rect", (60, 5, 8, 10, 1)),
        ("1", "rect", (48, 13, 26, 13, 1)),
        *((GLASS, "rect", (x, 16, 5, 4, 1)) for x in (51.0, 58.5, 66.0)),
        ("0", "poly", (3, 24, 93, 26, 86, 42, 14, 42)),
        ("lower", "poly", (10.5, 36, 88.5, 36, 86, 42, 14, 42)),
    ),
    ModelKind.AIRCRAFT: (
        (LINE, "line", (5, 10, 5, 38)),
        ("1", "poly", (76, 19, 84, 4, 92, 4, 90, 20)),
        ("0", "poly", (6, 24, 12, 17, 40, 15, 70, 18, 93, 20, 93, 24, 60, 31, 14, 31)),
        (GLASS, "poly", (32, 16, 38, 9, 50, 9, 58, 17)),
        ("lower", "poly", (28, 25, 58, 25, 66, 30, 24, 30)),
        ("tyres", "oval", (30, 38, 4.5, 4.5)),
        (LINE, "line", (30, 34, 33, 30)),
    ),
    ModelKind.FIGURE: (
        ("lower", "rect", (30, 43, 36, 4, 1)),
        ("2", "poly", (42, 27, 54, 27, 54, 43, 49, 43, 48, 31, 47, 43, 42, 43)),
        (
            "1",
            "poly",
            (41, 14, 55, 14, 60, 28, 56, 29, 54, 22, 54, 29, 42, 29, 42, 22, 40, 29, 36, 28),
        ),
        ("0", "oval", (48, 8, 5, 6)),
        ("3", "poly", (42, 5, 45, 1, 51, 1, 54, 5)),
    ),
    ModelKind.BUILDING: (
        ("2", "rect", (60, 3, 7, 12, 0)),
        ("0", "rect", (18, 21, 60, 23, 0)),
        ("roof", "poly", (11, 22, 27, 6, 69, 6, 85, 22)),
        ("1", "rect", (43, 29, 10, 15, 0)),
        (GLASS, "rect", (25, 27, 10, 8, 0)),
        (GLASS, "rect", (61, 27, 10, 8, 0)),
    ),
    ModelKind.OTHER: (
        ("lower", "rect", (22, 40, 52, 4, 2)),
        ("0", "poly", (32, 16, 48, 8, 64, 16, 64, 34, 48, 40, 32, 34)),
        (LINE, "line", (32, 16, 48, 23, 64, 16)),
        (LINE, "line", (48, 23, 48, 40)),
    ),
}

PAPER, INK, EDGE, BARE = "#fefcf7", "#5c554a", "#857b6b", "#d9d2c3"
"""Glass, lines, the edges of areas and bare plastic, where they are printed."""


def outline_svg(face: Face) -> bytes:
    """Return the outline of a model in its present coats as an SVG picture (SVG 1.1)."""
    wide, tall = BOX
    shapes = "".join(_shapes(face, OUTLINES[face.kind]))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="-1 -1 {wide + 2:g} {tall + 2:g}" '
        f'width="{wide * 2:g}" height="{tall * 2:g}">{shapes}</svg>'
    ).encode()


def _shapes(face: Face, areas: Iterable[Area]) -> Iterator[str]:
    for slot, shape, numbers in areas:
        fill = PAPER if slot == GLASS else face.colour(slot) or BARE if slot != LINE else "none"
        style = f'fill="{fill}" stroke="{INK if slot == LINE else EDGE}" stroke-width="1"'
        if shape == "rect":
            x, y, wide, tall, radius = numbers
            yield (
                f'<rect x="{x:g}" y="{y:g}" width="{wide:g}" height="{tall:g}" '
                f'rx="{radius:g}" {style}/>'
            )
        elif shape == "oval":
            x, y, across, down = numbers
            yield f'<ellipse cx="{x:g}" cy="{y:g}" rx="{across:g}" ry="{down:g}" {style}/>'
        else:
            points = " ".join(
                f"{x:g},{y:g}" for x, y in zip(numbers[::2], numbers[1::2], strict=True)
            )
            name = "polygon" if shape == "poly" else "polyline"
            yield f'<{name} points="{points}" {style}/>'
