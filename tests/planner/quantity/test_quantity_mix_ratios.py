"""Parts as people write them, and drops against printed weights."""

from __future__ import annotations

from dataclasses import replace

import pytest
from amount_books import SAND, THIN_SAND, THINNER, cart, step, yard
from hypothesis import given
from hypothesis import strategies as st

from planner.quantity import drops_of, drops_per_ml, measured, measures_of, parts_text, read_parts
from planner.values.coating import Family
from planner.values.refusal import Refused


@pytest.mark.parametrize(
    ("text", "percent"),
    [
        # common practice: a shading wash and a stronger one, a tool tone, a chipping tone
        ("2 : 3", (40, 60)),
        ("3:2", (60, 40)),
        ("50 : 50", (50, 50)),
        ("30 % : 70 %", (30, 70)),
        ("30% : 70%", (30, 70)),
        ("1 + 1 + 2", (25, 25, 50)),
        ("1,5 : 1.5", (50, 50)),
        ("33 % : 33 % : 33 %", (100 / 3, 100 / 3, 100 / 3)),
    ],
)
def test_parts_as_people_write_them(text: str, percent: tuple[float, ...]) -> None:
    parts = read_parts(text)
    assert [100 * part / sum(parts) for part in parts] == pytest.approx(percent)


@pytest.mark.parametrize(
    ("text", "mend"),
    [
        ("", "2 : 3"),
        ("2", "2 : 3"),
        ("two to three", "2 : 3"),
        ("2 : ", "2 : 3"),
        ("-2 : 3", "2 : 3"),
        ("0 : 3", "outside"),
        ("1e999 : 1", "2 : 3"),
        ("9999 : 1", "outside"),
        ("30 % : 60 %", "90 %"),
        ("30 % : 70", "alike"),
        ("2 : 3" + " : 1" * 5000 + "x", "2 : 3"),
    ],
)
def test_what_is_no_mix_is_refused(text: str, mend: str) -> None:
    with pytest.raises(Refused, match=mend) as caught:
        read_parts(text)
    assert caught.value.place == "parts"
    assert len(str(caught.value)) < 200


@given(st.lists(st.integers(1, 999).map(float), min_size=2, max_size=5))
def test_what_is_shown_is_read_again(parts: list[float]) -> None:
    assert list(read_parts(parts_text(parts))) == parts


def test_a_dropper_tip_of_three_millimetres() -> None:
    """Eschbaum 1895: a drop of water from a tip of 3.07 mm weighs 52.2 mg, so 19.2 to 1 ml."""
    assert drops_per_ml(Family.WATER_THINNER) == pytest.approx(1000 / 52.2, rel=0.10)


def test_the_bottle_s_own_drops_come_before_the_family_s() -> None:
    assert drops_of(SAND) == 20
    counted = replace(SAND, drops_per_ml=31.5)
    assert drops_of(counted) == 31.5
    book = yard(cart("a", 10, (step("base", "sand"),)), coatings=(counted, THINNER))
    (measure,) = measures_of(book, "sand", 2.0)
    assert (measure.ml, measure.drops) == (2.0, 63)


def test_six_point_four_millilitres_two_to_three() -> None:
    """2.56 ml and 3.84 ml; 51.2 and 76.8 drops at 20 to the millilitre, by hand."""
    book = yard(cart("a", 10, (step("base", "sand"),)), coatings=(SAND, THINNER))
    assert [(one.coating, one.drops) for one in measured(book, THIN_SAND, 6.4)] == [
        ("sand", 51),
        ("thinner", 77),
    ]


def test_whatever_goes_in_is_at_least_a_drop() -> None:
    book = yard(cart("a", 10, (step("base", "sand"),)), coatings=(SAND, THINNER))
    assert [one.drops for one in measured(book, THIN_SAND, 0.01)] == [1, 1]
    assert [one.drops for one in measured(book, THIN_SAND, 0)] == [0, 0]
