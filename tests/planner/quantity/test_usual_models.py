"""What a kind of model brings: areas and amounts against sums done by hand.

The box of each kind's usual size, all round, was worked out by hand in square
metres and divided by the square of the scale (1 m² = 10,000 cm²).
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from sequence_books import bare_book, given_book

from app.service.build_edits.models import bare_model, set_kind
from planner.layers.findings import find
from planner.passes import expand_model
from planner.quantity import AreaSource, areas_of, coating_needed
from planner.quantity.usual_models import USUAL, usual_parts
from planner.sequences.built_in import ALL
from planner.values.coating import Coating, Family
from planner.values.keys import ModelKey
from planner.values.model import Model, ModelKind, RealSize
from planner.values.step import Application, Minutes, Stage, Step, Tool

# kind: box [m²]; the same at 1:35, 1:48, 1:72 [cm²]
BOXES = {
    ModelKind.WHEELED: (79.26, 647.02, 344.01, 152.89),  # 2 (6.5·2.4 + 6.5·2.7 + 2.4·2.7)
    ModelKind.TRACKED: (88.4, 721.63, 383.68, 170.52),  # 2 (6.5·3 + 6.5·2.6 + 3·2.6)
    ModelKind.CAR: (30.8, 251.43, 133.68, 59.41),  # 2 (4.2·1.7 + 4.2·1.4 + 1.7·1.4)
    ModelKind.RAIL: (148.16, 1209.47, 643.06, 285.80),  # 2 (10·2.8 + 10·3.6 + 2.8·3.6)
    ModelKind.BOAT: (253.0, 2065.31, 1098.09, 488.04),  # 2 (15·4 + 15·3.5 + 4·3.5)
    ModelKind.AIRCRAFT: (294.0, 2400.0, 1276.04, 567.13),  # 2 (9·10 + 9·3 + 10·3)
    ModelKind.FIGURE: (3.98, 32.49, 17.27, 7.68),  # 2 (0.4·0.6 + 0.4·1.75 + 0.6·1.75)
    ModelKind.BUILDING: (264.0, 2155.10, 1145.83, 509.26),  # 2 (8·6 + 8·6 + 6·6)
}
SCALES = ("1:35", "1:48", "1:72")
# kind: what of that box is painted, the shares of its places added by hand
PAINTED = {
    ModelKind.WHEELED: 1.00,  # 0.65 + 0.15 + 0.19 + 0.01
    ModelKind.TRACKED: 1.06,  # 0.50 + 0.14 + 0.15 + 0.25 + 0.02
    ModelKind.CAR: 0.88,  # 0.55 + 0.20 + 0.13
    ModelKind.RAIL: 1.02,  # 0.75 + 0.15 + 0.12
    ModelKind.BOAT: 0.90,  # 0.60 + 0.25 + 0.05
    ModelKind.AIRCRAFT: 0.295,  # 0.17 + 0.115 + 0.01
    ModelKind.FIGURE: 0.55,
    ModelKind.BUILDING: 0.85,  # 0.60 + 0.25
}


def painted(model: Model) -> float:
    return sum(area.cm2 for area in areas_of(model).values())


def test_every_kind_but_other_is_in_the_table() -> None:
    assert set(USUAL) == set(BOXES) == set(ModelKind) - {ModelKind.OTHER}


@pytest.mark.parametrize("kind", BOXES)
@pytest.mark.parametrize("at", range(3))
def test_areas_at_three_scales(kind: ModelKind, at: int) -> None:
    model = bare_model("one", SCALES[at], kind=kind)
    assert painted(model) == pytest.approx(BOXES[kind][at + 1] * PAINTED[kind], rel=2e-3)
    assert {area.found for area in areas_of(model).values()} == {AreaSource.ASSUMED}
    assert all("assumed" in area.sentence for area in areas_of(model).values())


@pytest.mark.parametrize("kind", BOXES)
@pytest.mark.parametrize("at", range(3))
def test_millilitres_of_a_primer_at_three_scales(kind: ModelKind, at: int) -> None:
    """Sum by hand: area [cm²] × 15 µm / (10,000 × 0.30 solids × 0.95 left on by a brush)."""
    model = bare_model("one", SCALES[at], kind=kind)
    primer = Coating(name="primer", family=Family.WATERBORNE_ACRYLIC, solids=0.3, dry_film_um=15.0)
    parts = tuple(part.name for part in model.parts)
    step = Step(
        id="prime",
        stage=Stage.PRIME,
        applications=(Application(places=parts, coating="primer"),),
        tool=Tool.BRUSH,
        minutes=Minutes(fixed=5),
    )
    model = replace(model, steps=(step,))
    book = replace(bare_book(), coatings=(primer,))
    book = replace(book, projects=(replace(book.projects[0], models=(model,)),))
    (take,) = coating_needed(book, expand_model("table", model)[0])
    by_hand = BOXES[kind][at + 1] * PAINTED[kind] * 15 / (10_000 * 0.30 * 0.95)
    assert take.ml == pytest.approx(by_hand, rel=2e-3)
    assert take.complete


def test_a_lorry_is_as_large_as_simple_bodies_of_it() -> None:
    """Apart from the table, by hand: 83.3 m², which at 1:72 are 160.7 cm².

    Cab 2.0 × 2.3 × 1.9 without its floor 20.9; bed 4.2 × 2.3 from both sides
    and its sides of 0.5 in and out 32.3; frame 6.0 × 0.9 × 0.3 all round 14.9;
    six wheels of 1.0 across and 0.3 wide 15.1.
    """
    assert painted(bare_model("one", "1:72", kind=ModelKind.WHEELED)) == pytest.approx(
        160.7, rel=0.1
    )


def test_an_aircraft_is_as_large_as_its_shell() -> None:
    """π × 1.2 × 9 m, twice a wing of 20 m² and a tail of 5 m²: 83.93 m², 161.9 cm² at 1:72."""
    assert painted(bare_model("one", "1:72", kind=ModelKind.AIRCRAFT)) == pytest.approx(
        161.9, rel=0.1
    )


def test_a_figure_is_somewhat_larger_than_skin() -> None:
    """Du Bois and Du Bois 1916, from memory: 70 kg and 175 cm have 1.85 m² of skin."""
    skin_cm2 = 1.85e4 / 35**2
    figure = painted(bare_model("one", "1:35", kind=ModelKind.FIGURE))
    assert skin_cm2 < figure < 1.4 * skin_cm2


def test_a_typed_size_a_measure_and_a_typed_area_win_in_that_order() -> None:
    model = bare_model("one", "1:35", kind=ModelKind.WHEELED)
    sized = replace(model, real_size=RealSize(length_m=4, width_m=2, height_m=2))
    body = areas_of(sized)["body/all over"]
    # by hand: 2 (8 + 8 + 4) = 40 m², 326.5 cm² at 1:35, of which 65 %
    assert body.cm2 == pytest.approx(212.2, abs=0.1)
    assert body.found is AreaSource.REAL_SIZE
    first = sized.parts[0]
    typed = replace(first, places=(replace(first.places[0], area_cm2=99), *first.places[1:]))
    sized = replace(sized, parts=(typed, *sized.parts[1:]))
    assert areas_of(sized)["body/all over"].found is AreaSource.TYPED
    assert areas_of(sized)["wheels/all over"].cm2 == pytest.approx(326.5 * 0.19, abs=0.1)


def test_a_share_without_a_scale_asks_for_one() -> None:
    area = areas_of(bare_model("one", kind=ModelKind.CAR))["body/all over"]
    assert area.found is AreaSource.MISSING
    assert "1:72" in area.sentence


def test_a_kind_chosen_later_brings_the_parts_of_a_model_that_says_nothing_yet() -> None:
    book = bare_book(bare_model("one", "1:72", holder="stick"))
    book = set_kind(book, ModelKey("table", "one"), ModelKind.TRACKED).book
    (model,) = book.projects[0].models
    assert model.parts == usual_parts(ModelKind.TRACKED, holder="stick")
    book = set_kind(book, ModelKey("table", "one"), ModelKind.CAR).book
    (changed,) = book.projects[0].models
    assert (changed.kind, changed.parts) == (ModelKind.CAR, model.parts)  # they may be worked on


@pytest.mark.parametrize("sequence", ALL, ids=lambda one: one.name)
def test_every_sequence_is_sound_on_every_kind(sequence) -> None:
    for kind in ModelKind:
        book = given_book(
            sequence,
            tuple(option.name for option in sequence.options if option.usual),
            bare_model("one", "1:72", kind=kind, holder="handle"),
        )
        assert find(book) == (), kind


def test_running_gear_gets_its_own_colour() -> None:
    weathered = next(one for one in ALL if one.name == "full weathered vehicle")
    for kind, parts in (
        (ModelKind.WHEELED, ("wheels",)),
        (ModelKind.TRACKED, ("running gear", "tracks")),
    ):
        book = given_book(weathered, ("brush",), bare_model("one", "1:72", kind=kind))
        step = next(s for s in book.projects[0].models[0].steps if s.id == "running-gear")
        assert step.applications[0].places == parts
