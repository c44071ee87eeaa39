"""Areas against a table of scales and bodies worked out apart from the program.

The table: a box of 6.0 × 2.5 × 2.5 m at eight scales, a capsule, and the
shell of an aircraft by fuselage, wing and tail; recomputed by hand.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.quantity import AreaSource, areas_of, measure_cm2, scale_of
from planner.values.model import Measure, Model, Part, Place, RealSize, Shape

TRUCK = RealSize(length_m=6.0, width_m=2.5, height_m=2.5)
SCALES = [
    ("1:24", 1258.68),
    ("1:32", 708.01),
    ("1:35", 591.84),
    ("1:48", 314.67),
    ("1:72", 139.85),
    ("1:144", 34.96),
    ("1:350", 5.92),
    ("1:700", 1.48),
]


def model(*places: Place, scale: str = "1:72", real: RealSize | None = TRUCK) -> Model:
    return Model(
        name="truck", parts=(Part(name="hull", places=places),), scale=scale, real_size=real
    )


@pytest.mark.parametrize(("scale", "cm2"), SCALES)
def test_a_place_takes_the_box_of_the_real_size(scale: str, cm2: float) -> None:
    area = areas_of(model(Place(name="all over"), scale=scale))["hull/all over"]
    assert area.cm2 == pytest.approx(cm2, abs=0.005)
    assert (area.found, area.among) == (AreaSource.REAL_SIZE, 1)
    assert "real size" in area.sentence


@pytest.mark.parametrize(("scale", "cm2"), SCALES)
def test_a_box_measured_on_the_model_is_the_same(scale: str, cm2: float) -> None:
    times_smaller = scale_of(scale)
    assert times_smaller is not None
    smaller = 1000 / times_smaller
    box = Measure(
        shape=Shape.BOX, length_mm=6 * smaller, width_mm=2.5 * smaller, height_mm=2.5 * smaller
    )
    assert measure_cm2(box) == pytest.approx(cm2, abs=0.005)


def test_a_capsule() -> None:
    """Radius 1, straight for 4: 37.699."""
    straight = Measure(shape=Shape.TUBE, length_mm=40, width_mm=20)
    ends = Measure(shape=Shape.BALL, length_mm=20)
    assert measure_cm2(straight) + measure_cm2(ends) == pytest.approx(37.699, abs=5e-4)


def test_a_cylinder_has_two_ends() -> None:
    """Radius 1, length 4: 2π·4 + 2π = 31.416 by hand."""
    assert measure_cm2(Measure(shape=Shape.CYLINDER, length_mm=40, width_mm=20)) == pytest.approx(
        31.416, abs=5e-4
    )


@pytest.mark.parametrize(("scale", "cm2"), [(48, 364.3), (72, 161.9)])
def test_the_shell_of_an_aircraft(scale: float, cm2: float) -> None:
    """π × 1.2 × 9 m, twice a wing of 20 m² and a tail of 5 m²: 83.93 m²."""
    metre = 1000 / scale
    shell = (
        Measure(shape=Shape.TUBE, length_mm=9 * metre, width_mm=1.2 * metre),
        Measure(shape=Shape.SHELL, length_mm=10 * metre, width_mm=2 * metre, count=2),
        Measure(shape=Shape.SHELL, length_mm=5 * metre, width_mm=1 * metre, count=2),
    )
    area = areas_of(model(Place(name="all over", measures=shell)))["hull/all over"]
    assert area.cm2 == pytest.approx(cm2, abs=0.05)
    assert area.found is AreaSource.MEASURED


def test_what_is_typed_comes_before_measures_and_measures_before_the_real_size() -> None:
    shell = (Measure(shape=Shape.SHELL, length_mm=100, width_mm=50),)  # 50 cm²
    areas = areas_of(
        model(
            Place(name="typed", area_cm2=12, measures=shell, detail=2),
            Place(name="measured", measures=shell, detail=1.3),
            Place(name="rest"),
            Place(name="ribs", detail=1.5),
        )
    )
    assert [area.found for area in areas.values()] == [
        AreaSource.TYPED,
        AreaSource.MEASURED,
        AreaSource.REAL_SIZE,
        AreaSource.REAL_SIZE,
    ]
    assert areas["hull/typed"].cm2 == 12  # as typed, whatever its detail
    assert areas["hull/measured"].cm2 == pytest.approx(65)
    left = (139.85 - 12 - 65) / 2  # what the box of the table has left, for two places
    assert areas["hull/rest"].cm2 == pytest.approx(left, abs=0.005)
    assert areas["hull/ribs"].cm2 == pytest.approx(1.5 * left, abs=0.01)
    assert "shared by 2 places" in areas["hull/ribs"].sentence
    assert "times 1.5 for detail" in areas["hull/ribs"].sentence


@pytest.mark.parametrize(
    ("spoiled", "mend"),
    [
        ({"real_size": None}, "give area_cm2"),
        ({"scale": ""}, "no scale"),
        ({"scale": "big"}, "no scale"),
    ],
)
def test_what_cannot_be_found_says_what_to_give(spoiled: dict[str, object], mend: str) -> None:
    area = areas_of(replace(model(Place(name="all over")), **spoiled))["hull/all over"]
    assert (area.cm2, area.found) == (0, AreaSource.MISSING)
    assert mend in area.sentence


def test_a_real_size_that_other_places_use_up_leaves_nothing() -> None:
    areas = areas_of(model(Place(name="most", area_cm2=140), Place(name="rest")))
    assert areas["hull/rest"].found is AreaSource.MISSING
    assert "measure it" in areas["hull/rest"].sentence


@pytest.mark.parametrize(
    ("text", "scale"),
    [("1:72", 72), ("1/35", 35), (" 1 : 48 ", 48), ("1:76.2", 76.2), ("1:76,2", 76.2), ("1:1", 1)],
)
def test_scales_as_people_write_them(text: str, scale: float) -> None:
    assert scale_of(text) == scale


@pytest.mark.parametrize("text", ["", "72", "2:72", "1:0", "1:-72", "1:72:1", "1:nan"])
def test_what_is_no_scale(text: str) -> None:
    assert scale_of(text) is None


@given(
    st.lists(st.floats(0.1, 5), min_size=1, max_size=6),
    st.sampled_from([scale for scale, _ in SCALES]),
)
def test_shares_of_plain_places_make_the_whole_box(detail: list[float], scale: str) -> None:
    places = [Place(name=str(at), detail=each) for at, each in enumerate(detail)]
    areas = areas_of(model(*places, scale=scale)).values()
    assert sum(area.plain_cm2 for area in areas) == pytest.approx(dict(SCALES)[scale], rel=0.005)
    assert sum(area.cm2 for area in areas) == pytest.approx(
        sum(area.plain_cm2 * each for area, each in zip(areas, detail, strict=True))
    )
