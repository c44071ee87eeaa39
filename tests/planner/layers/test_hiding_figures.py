"""How many coats hide what lies below: each limit at a swatch on either side of it.

The limits are assumed.  Where a swatch lies is told by the inverse of the standard's curve for
greys (IEC 61966-2-1, CIE 15), and for hues by swatches whose chroma and hue were worked out with
the same two standards, apart from the program, and stand beside them.
"""

from __future__ import annotations

import math

import pytest
from coat_books import book_of, coat

from planner.layers.findings import find
from planner.layers.hiding_coats import coats_to_hide, hides, lab, lightness
from planner.values.book import Book
from planner.values.coating import Coating, Family, Hiding
from planner.values.mix import Mix, Portion
from planner.values.step import Stage

W = Family.WATERBORNE_ACRYLIC
BLACK, WHITE = "#000000", "#ffffff"
POOR, SHOWS = "colour that hides badly", "pale over dark"


def grey(value: float, rounding=math.ceil) -> str:
    """Return the grey whose L* is the first at or above a value, or with floor the last below."""
    luminance = ((value + 16) / 116) ** 3
    level = rounding(255 * (1.055 * luminance ** (1 / 2.4) - 0.055))
    return f"#{level:02x}{level:02x}{level:02x}"


@pytest.mark.parametrize(
    ("swatch", "expected"),
    [
        ("#ff0000", (53.23, 80.11, 67.22)),
        ("#00ff00", (87.74, -86.19, 83.19)),
        ("#0000ff", (32.30, 79.19, -107.85)),
        ("#ffff00", (97.14, -21.56, 94.49)),
        ("#808080", (53.59, 0, 0)),
        ("#030303", (0.82, 0, 0)),  # 3/255/12.92 × 903.3: below both bends of the curves
        ("#000b00", (2.16, -4.42, 3.16)),
        (WHITE, (100, 0, 0)),
        (BLACK, (0, 0, 0)),
    ],
)
def test_colours_whose_lab_is_told_everywhere(swatch, expected):
    """Primaries under D65: from memory, and worked out apart from the program for the darkest."""
    assert lab(swatch) == pytest.approx(expected, abs=0.02)
    assert lightness(swatch) == pytest.approx(expected[0], abs=0.02)


@pytest.mark.parametrize(("limit", "coats"), [(10, 1), (40, 2), (65, 3)])
def test_coats_by_the_lightness_gained(limit, coats):
    """Over black, whose L* is 0: up to 10 one coat, to 40 two, to 65 three, else four (assumed)."""
    assert coats_to_hide(grey(limit, math.floor), BLACK) == coats
    assert coats_to_hide(grey(limit), BLACK) == coats + 1
    assert coats_to_hide(BLACK, WHITE) == 1


def rules(colour: str, below: str, coats: int = 1, **own: object) -> set[str]:
    """Return what is found about one colour over a primer."""
    top = Coating(name="top", family=W, swatch=colour, **own)
    under = Coating(name="under primer", family=W, swatch=below)
    steps = (
        coat(Stage.PRIME, "under primer", name="prime"),
        coat(Stage.BASE, "top", name="base", coats=coats),
    )
    return {each.rule for each in find(book_of(*steps, more=(top, under)))}


def test_pale_is_from_65_and_dark_to_35():
    pale, dark = grey(65), grey(35, math.floor)
    assert SHOWS in rules(pale, dark)
    assert SHOWS not in rules(grey(65, math.floor), dark)
    assert SHOWS not in rules(pale, grey(35))


def test_enough_coats_are_enough():
    """From L* 35 to 65 are 30: two coats; from 34.9 to 100 are 65.1: four."""
    assert SHOWS in rules(grey(65), grey(35, math.floor), coats=1)
    assert SHOWS not in rules(grey(65), grey(35, math.floor), coats=2)
    assert SHOWS in rules(WHITE, grey(35, math.floor), coats=3)
    assert SHOWS not in rules(WHITE, grey(35, math.floor), coats=4)


@pytest.mark.parametrize(
    ("swatch", "power"),
    [
        ("#e8735c", Hiding.POOR),  # chroma 55.00, hue 37.9°
        ("#b4542b", Hiding.USUAL),  # chroma 54.998, hue 48.7°
        ("#ff51bc", Hiding.POOR),  # hue -14.993°, chroma 77
        ("#cb118f", Hiding.USUAL),  # hue -15.004°, chroma 76
        ("#e7ff3d", Hiding.POOR),  # hue 109.994°, chroma 88
        ("#cbe419", Hiding.USUAL),  # hue 110.002°, chroma 87
    ],
)
def test_clean_warm_colours_hide_badly(swatch, power):
    assert hides(Coating(name="x", family=W, swatch=swatch), swatch) is power


ORANGE = "#ff8000"  # L* 67.05, chroma 85.5, hue 59.949°


@pytest.mark.parametrize(
    ("below", "shows"),
    [
        (grey(75, math.floor), True),
        (grey(75), False),
        ("#ab9287", True),  # chroma 11.970: as good as grey
        ("#8b7b6a", False),  # chroma 12.01, hue 74.2°: 14° from the orange
        ("#fd0460", True),  # hue 14.946°: 45.003° apart
        ("#c6104b", False),  # hue 14.950°: 44.999° apart
    ],
)
def test_what_shows_through_a_colour_that_hides_badly(below, shows):
    assert (POOR in rules(ORANGE, below)) is shows


def test_a_colour_that_hides_badly_wants_two_coats_more():
    """From L* 53.6 to 67.1 are 13.5: two coats, and two more of what hides badly (assumed)."""
    assert POOR in rules(ORANGE, "#808080", coats=3)
    assert POOR not in rules(ORANGE, "#808080", coats=4)


@pytest.mark.parametrize(("paint", "thin", "glaze"), [(1, 3, False), (1, 4, True), (2, 7, True)])
def test_less_than_a_quarter_of_paint_is_a_glaze(paint, thin, glaze):
    portions = (Portion(coating="acrylic", parts=paint), Portion(coating="water", parts=thin))
    steps = (
        coat(Stage.PRIME, "grey primer", name="prime"),
        coat(Stage.BASE, "thin", name="base"),
    )
    of: Book = book_of(*steps, mixes=(Mix(name="thin", portions=portions),))
    assert ("colour thinned to a glaze" in {each.rule for each in find(of)}) is glaze
