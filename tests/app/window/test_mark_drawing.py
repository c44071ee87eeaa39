"""A piece of work laid as a picture looks like one that is painted."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage, QPainter

from app.window import mark_drawing
from app.window.palette import DARK, LIGHT, Colours
from planner.values.step import Stage, Tool

RECTS = (QRectF(10.25, 6.5, 5.75, 20), QRectF(40, 6.25, 33.5, 20), QRectF(90.75, 7, 4.5, 18))


def _painted(colours: Colours, tool: Tool, *, faded: bool) -> QImage:
    image = QImage(140, 40, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for rect in RECTS:
        mark_drawing.paint_work(
            painter,
            rect,
            colours,
            swatch="#7a6a4f",
            tool=tool,
            stage=Stage.BASE,
            name="cart",
            faded=faded,
        )
    painter.end()
    return image


@pytest.mark.usefixtures("qapp")
@pytest.mark.parametrize("colours", [LIGHT, DARK])
@pytest.mark.parametrize("tool", [Tool.AIRBRUSH, Tool.BRUSH])
@pytest.mark.parametrize("faded", [False, True])
def test_a_picture_looks_like_what_is_painted(
    monkeypatch: pytest.MonkeyPatch, colours: Colours, tool: Tool, faded: bool
) -> None:
    laid = _painted(colours, tool, faded=faded)
    monkeypatch.setattr(mark_drawing, "STAMPED", 0.0)
    painted = _painted(colours, tool, faded=faded)
    byte, other = bytes(laid.constBits()), bytes(painted.constBits())
    different = sum(abs(a - b) > 8 for a, b in zip(byte, other, strict=True))
    assert different < 0.005 * len(byte)
    assert byte != bytes(len(byte))


@pytest.mark.usefixtures("qapp")
def test_pieces_of_one_size_and_colour_share_a_picture(monkeypatch: pytest.MonkeyPatch) -> None:
    kept = mark_drawing._Stamps()
    monkeypatch.setattr(mark_drawing, "_STAMPS", kept)
    _painted(LIGHT, Tool.AIRBRUSH, faded=False)
    assert len(kept) == len(RECTS)
    _painted(LIGHT, Tool.AIRBRUSH, faded=False)
    assert len(kept) == len(RECTS)
    _painted(LIGHT, Tool.AIRBRUSH, faded=True)
    assert len(kept) == 2 * len(RECTS)


def test_only_so_much_of_the_pictures_is_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    kept = mark_drawing._Stamps()
    images = [QImage(10, 10, QImage.Format.Format_ARGB32_Premultiplied) for _ in range(4)]
    monkeypatch.setattr(mark_drawing, "MOST_STAMPED", 3 * images[0].sizeInBytes())
    for at, image in enumerate(images):
        kept.keep((at,), image)
    assert [kept.get((at,)) is not None for at in range(4)] == [False, True, True, True]
