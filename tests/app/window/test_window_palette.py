"""Colours: published hues, and contrast as WCAG 2.1 asks."""

from __future__ import annotations

import pytest
from PySide6.QtGui import QColor, QPalette

from app.window import palette
from app.window.palette import (
    DARK,
    LIGHT,
    box_palette,
    contrast,
    luminance,
    qt_palette,
)


@pytest.mark.parametrize(
    ("name", "rgb"),
    # Okabe and Ito, "Color Universal Design" (2008), figure "colors with high contrast".
    [
        ("ORANGE", (230, 159, 0)),
        ("SKY_BLUE", (86, 180, 233)),
        ("BLUISH_GREEN", (0, 158, 115)),
        ("YELLOW", (240, 228, 66)),
        ("BLUE", (0, 114, 178)),
        ("VERMILLION", (213, 94, 0)),
        ("REDDISH_PURPLE", (204, 121, 167)),
    ],
)
def test_hues_are_the_published_ones(name: str, rgb: tuple[int, int, int]) -> None:
    assert QColor(getattr(palette, name)).getRgb()[:3] == rgb


def test_contrast_is_that_of_wcag() -> None:
    # WCAG 2.1, definition "contrast ratio": from 1 to 21.
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#808080", "#808080") == 1
    # Luminance of the primaries are the weights of the definition itself.
    assert luminance("#00ff00") == pytest.approx(0.7152)
    # The darkest grey that fails 4.5 : 1 on white, from memory: #777777 has 4.48.
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.005)


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_text_can_be_read_on_every_ground(colours: palette.Colours) -> None:
    # WCAG 2.2, 1.4.3: text 4.5 : 1.  What is chosen lies on "stroke".
    for ink in ("ink", "soft", "drying_word", "closing_word"):
        for ground in ("paper", "sheet", "gutter", "stroke"):
            ratio = contrast(getattr(colours, ink), getattr(colours, ground))
            assert ratio >= 4.5, (ink, ground, ratio)
    for mark in ("closing", "focus", "ready"):  # WCAG 2.1, 1.4.11: marks 3 : 1
        assert contrast(getattr(colours, mark), colours.sheet) >= 3, mark


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_controls_of_qt_can_be_read(colours: palette.Colours) -> None:
    made = qt_palette(colours)
    role, group_ = QPalette.ColorRole, QPalette.ColorGroup
    for ink, ground in (
        (role.WindowText, role.Window),
        (role.Text, role.Base),
        (role.Text, role.AlternateBase),
        (role.ButtonText, role.Button),
        (role.HighlightedText, role.Highlight),
        (role.PlaceholderText, role.Base),
        (role.ToolTipText, role.ToolTipBase),
        (role.Link, role.Window),
        (role.Link, role.Base),
    ):
        # Disabled text need not be readable by WCAG; ours is, for it tells what is missing.
        for group in (group_.Active, group_.Inactive, group_.Disabled):
            names = (made.color(group, ink).name(), made.color(group, ground).name())
            assert contrast(*names) >= 4.5, (group, ink, ground)


def test_tick_boxes_are_seen_in_both_looks() -> None:
    # WCAG 2.1, 1.4.11: parts of a control stand out at 3 : 1.  Qt's Fusion style frames
    # a box in the window's colour, darker by 140 and then lighter by 110.
    for colours in (LIGHT, DARK):
        frame = box_palette(colours).window().color().darker(140).lighter(110)
        assert contrast(frame.name(), colours.paper) >= 3
