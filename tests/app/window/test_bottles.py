"""Bottles as pictures: as full as they are, and when they run out beside them."""

from __future__ import annotations

from PySide6.QtGui import QColor, QIcon

from app.window.palette import DARK, LIGHT
from app.window.stock.bottles import PICTURE, bottle_icon

RED = "#b02418"


def reds(icon: QIcon) -> int:
    """Return how many pixels of the bottle, without its swatch, are of the colour."""
    image = icon.pixmap(*PICTURE).toImage()
    wide = image.width() * 30 // 72
    spots = ((x, y) for x in range(wide) for y in range(image.height()))
    return sum(image.pixelColor(*spot) == QColor(RED) for spot in spots)


def test_a_bottle_is_as_full_as_it_is(qapp) -> None:
    for colours in (LIGHT, DARK):
        levels = [
            reds(bottle_icon(RED, left, 0, old=False, colours=colours))
            for left in (0, 0.25, 0.5, 1)
        ]
        assert levels == sorted(levels)
        assert levels[0] == 0
        assert 1.6 < levels[3] / levels[2] < 2.4


def test_what_the_plan_takes_is_hatched_and_a_chosen_bottle_untinted(qapp) -> None:
    whole = bottle_icon(RED, 1, 0, old=False, colours=LIGHT)
    assert reds(bottle_icon(RED, 1, 0.5, old=False, colours=LIGHT)) < reds(whole)
    plain = whole.pixmap(*PICTURE).toImage()
    assert whole.pixmap(*PICTURE, QIcon.Mode.Selected).toImage() == plain
