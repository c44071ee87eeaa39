"""Cautions: the vapour estimate against worked examples, and which step gets which."""

from __future__ import annotations

from dataclasses import replace

import pytest
from small_book import NOW, small_book

from app.service.planning import plan
from planner.cautions import (
    BUTYL_ACETATE,
    ISOPROPANOL,
    WHITE_SPIRIT,
    Caution,
    Solvent,
    quarter_limit_ml,
    vapour_ppm,
)
from planner.tonight import WorkRow, run_sheet
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.model import Material
from planner.values.step import Minutes, Stage, Step


@pytest.mark.parametrize(
    ("solvent", "millilitres", "density", "molar_mass", "litres", "ppm"),
    [
        # Ideal gas at 25 °C, 24.45 l/mol (OSHA methods manual appendix); densities
        # and molar masses as in the chemicals library 1.5.2.
        ("2-propanol", 20, 0.785, 60.10, 30_000, 213),
        ("white spirit", 10, 0.78, 140.0, 30_000, 45.4),
        ("acetone", 10, 0.79, 58.08, 30_000, 111),
        ("acetone in a closed box", 10, 0.79, 58.08, 50, 66_600),
    ],
)
def test_worked_ventilation_examples(
    solvent: str, millilitres: float, density: float, molar_mass: float, litres: float, ppm: float
) -> None:
    assert vapour_ppm(millilitres, density, molar_mass, litres / 1000) == pytest.approx(
        ppm, rel=0.005
    )


def cautions_of(book: Book, step: str) -> tuple[Caution, ...]:
    """Return what the run sheet of the evening warns of at a step's first coat."""
    made = plan(book, NOW).plan
    at = next(placed.start for placed in made.placements if placed.key.step == step)
    rows = run_sheet(book, made, at).rows
    works = (row for row in rows if isinstance(row, WorkRow))
    return next(row.cautions for row in works if row.key.step == step)


def _with_sand(family: Family) -> Book:
    """Return the small book with the sand coat of another family."""
    book = small_book()
    coatings = tuple(
        Coating(name="sand", family=family) if coating.name == "sand" else coating
        for coating in book.coatings
    )
    return replace(book, coatings=coatings)


def test_the_estimate_is_for_the_room_of_the_book() -> None:
    """10 ml of white spirit in 30 m³ make 45 ppm, in 15 m³ twice that (worked example above)."""
    book = small_book()
    text = " ".join(caution.text for caution in cautions_of(book, "wash"))
    assert "45 ppm" in text
    assert "30 m³" in text
    small = replace(book, room=replace(book.room, volume_m3=15.0))
    assert "91 ppm" in " ".join(caution.text for caution in cautions_of(small, "wash"))


def test_wiping_an_oil_wash_is_cautioned_about_its_rags_and_vapour() -> None:
    book = small_book()
    text = " ".join(caution.text for caution in cautions_of(book, "wipe"))
    assert "Rags" in text
    assert "white spirit" in text


@pytest.mark.parametrize(
    ("family", "word"),
    [
        (Family.TWO_PACK, "isocyanate"),
        (Family.SOLVENT_LACQUER, "n-butyl acetate"),
        (Family.ALCOHOL_INK, "2-propanol"),
    ],
)
def test_a_family_brings_its_caution_and_its_source(family: Family, word: str) -> None:
    book = _with_sand(family)
    found = cautions_of(book, "sand")
    assert any(word in item.text for item in found)
    assert all(item.source for item in found)


def test_water_brings_no_vapour_estimate() -> None:
    book = small_book()
    found = cautions_of(book, "prime")
    assert any("mist" in item.text for item in found)
    assert not any("ppm" in item.text for item in found)


@pytest.mark.parametrize(
    ("solvent", "millilitres"),
    # 25 % of the lower explosive limit in 100 l (29 CFR 1910.94(c)(6)), ideal gas at 25 °C,
    # densities and molar masses as in the chemicals library 1.5.2; worked by hand:
    # white spirit 0.25 * 0.9 l / 24.45 l/mol * 140 g/mol / 0.78 g/ml = 1.65 ml
    [(WHITE_SPIRIT, 1.65), (ISOPROPANOL, 1.56), (BUTYL_ACETATE, 1.62)],
)
def test_how_little_solvent_a_closed_box_bears(solvent: Solvent, millilitres: float) -> None:
    assert quarter_limit_ml(solvent, 100.0) == pytest.approx(millilitres, abs=0.006)


def _texts(book: Book, name: str) -> str:
    return " ".join(caution.text for caution in cautions_of(book, name))


def test_solvent_wet_films_in_a_heated_box_are_cautioned_and_water_is_not() -> None:
    book = small_book()
    bench = book.room.locations[0]
    warm = replace(bench.workdays[0], temperature_c=35.0)
    box = replace(bench, name="warm box", workdays=(warm,))
    model = book.projects[0].models[0]
    steps = tuple(replace(s, dries_in="warm box") if s.applications else s for s in model.steps)
    project = replace(book.projects[0], models=(replace(model, steps=steps),))
    room = replace(book.room, locations=(bench, box))
    boxed = replace(book, room=room, projects=(project,))
    assert "1.6 ml of white spirit" in _texts(boxed, "wash")
    assert "explosive" not in _texts(boxed, "sand")
    assert "explosive" not in _texts(book, "wash")


def test_gloves_for_solvents_and_a_mask_for_resin_dust() -> None:
    book = small_book()
    assert "Gloves" in _texts(book, "wash")
    assert "Gloves" not in _texts(book, "sand")
    model = book.projects[0].models[0]
    parts = tuple(replace(part, material=Material.RESIN) for part in model.parts)
    washed = Step(
        id="wash-parts", stage=Stage.CLEAN, touches=(parts[0].name,), minutes=Minutes(fixed=5)
    )
    resin = replace(model, parts=parts, steps=(washed, *model.steps))
    project = replace(book.projects[0], models=(resin,))
    assert "Resin dust" in _texts(replace(book, projects=(project,)), "wash-parts")


def test_cement_evaporates_what_is_in_it_and_little_of_it() -> None:
    """Butanone, 1 ml: 1 x 0.805 / 72.11 x 24.45 l in 30 m³ = 9.1 ppm; limit 200 (Z-1)."""
    book = _with_sand(Family.SOLVENT_CEMENT)
    assert "1 ml of butanone make about 9 ppm" in _texts(book, "sand")
