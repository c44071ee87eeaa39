"""Properties of coatings and materials, each fault beside its sound twin.

All of it is common practice, no source, unless it says otherwise.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from coat_books import book_of, coat, part, work

from planner.layers.findings import find
from planner.layers.hiding_coats import hides, lab
from planner.values.book import Book
from planner.values.coating import Coating, Effect, Family, Finish, Hiding
from planner.values.coating_names import effect_of
from planner.values.mix import Mix, Portion
from planner.values.model import Material
from planner.values.step import Role, Stage, Step, Tool

F = Family
MORE = (
    Coating(
        name="steel",
        family=F.SOLVENT_LACQUER,
        finish=Finish.GLOSS,
        swatch="#c4c8cc",
        effect=Effect.METALLIC,
    ),
    Coating(
        name="chrome",
        family=F.SOLVENT_LACQUER,
        finish=Finish.GLOSS,
        swatch="#d8dcdf",
        effect=Effect.MIRROR,
    ),
    Coating(name="glow", family=F.WATERBORNE_ACRYLIC, swatch="#ff6a1f", effect=Effect.FLUORESCENT),
    Coating(
        name="polish",
        family=F.WATERBORNE_ACRYLIC,
        finish=Finish.GLOSS,
        swatch="#f2f2ee",
        effect=Effect.POLISH,
    ),
    Coating(name="black gloss", family=F.SOLVENT_LACQUER, finish=Finish.GLOSS, swatch="#101010"),
    Coating(name="red", family=F.WATERBORNE_ACRYLIC, swatch="#c21f1a"),
    Coating(name="white", family=F.WATERBORNE_ACRYLIC, swatch="#f6f6f4"),
    Coating(name="dark green", family=F.WATERBORNE_ACRYLIC, swatch="#2c3a26"),
    Coating(name="latex", family=F.MASKING_FLUID),
    Coating(name="grains", family=F.SALT),
    Coating(name="fast glue", family=F.CYANOACRYLATE),
)
PRIME = coat(Stage.PRIME, "grey primer")


def rules(*steps: Step, material: Material = Material.STYRENE) -> set[str]:
    """Return the rules broken by steps on one part."""
    return {one.rule for one in find(_book(*steps, material=material))}


def _book(*steps: Step, material: Material = Material.STYRENE) -> Book:
    numbered = [replace(step, id=f"s{number}") for number, step in enumerate(steps)]
    hull = part("hull", "deck", "side", holder="stick", material=material)
    return book_of(*numbered, parts=(hull,), more=MORE)


MIRROR = (PRIME, coat(Stage.BASE, "black gloss"), coat(Stage.BASE, "chrome"))
STEEL = (PRIME, coat(Stage.BASE, "black gloss"), coat(Stage.BASE, "steel"))
WHITE = coat(Stage.BASE, "white", coats=2)
RED = coat(Stage.BASE, "red", coats=2)


@pytest.mark.parametrize(
    ("fault", "twin", "rule"),
    [
        (
            (PRIME, coat(Stage.BASE, "chrome")),
            MIRROR,
            "mirror on the wrong base",
        ),
        (
            (PRIME, coat(Stage.BASE, "steel")),
            STEEL,
            "metallic on the wrong base",
        ),
        (
            (*STEEL, coat(Stage.MATTE, "matte clear", role=Role.FINAL)),
            (*STEEL, coat(Stage.VARNISH, "gloss clear")),
            "clear over a shine",
        ),
        ((*MIRROR, coat(Stage.VARNISH, "gloss clear")), MIRROR, "clear over a shine"),
        (
            (*MIRROR, work(Stage.MASK), work(Stage.UNMASK)),
            (*MIRROR[:2], work(Stage.MASK), work(Stage.UNMASK)),
            "tape on a mirror finish",
        ),
        (
            (coat(Stage.PRIME, "black primer"), coat(Stage.BASE, "glow", coats=2)),
            (PRIME, WHITE, coat(Stage.BASE, "glow", coats=2)),
            "fluorescent on the wrong base",
        ),
        (
            (PRIME, coat(Stage.BASE, "dark green"), RED),
            (PRIME, WHITE, RED),
            "colour that hides badly",
        ),
        (
            (PRIME, coat(Stage.BASE, "acrylic"), coat(Stage.VARNISH, "polish"),
             coat(Stage.DETAIL, "ink")),
            (PRIME, coat(Stage.BASE, "acrylic"), coat(Stage.VARNISH, "gloss clear"),
             coat(Stage.DETAIL, "ink")),
            "strong solvent on polish gloss",
        ),
        (
            (PRIME, coat(Stage.BASE, "lacquer"), coat(Stage.DETAIL, "latex"),
             coat(Stage.BASE, "acrylic")),
            (PRIME, coat(Stage.BASE, "lacquer"), coat(Stage.DETAIL, "latex"),
             coat(Stage.BASE, "acrylic"), work(Stage.UNMASK)),
            "masking fluid never taken off",
        ),
        (
            (PRIME, coat(Stage.BASE, "lacquer"), coat(Stage.WEATHER, "grains"),
             coat(Stage.BASE, "acrylic")),
            (PRIME, coat(Stage.BASE, "lacquer"), coat(Stage.WEATHER, "grains"),
             coat(Stage.BASE, "acrylic"), work(Stage.CHIP_RUB)),
            "masking fluid never taken off",
        ),
        (
            (PRIME, coat(Stage.BASE, "lacquer"), coat(Stage.CHIP_FLUID, "fluid"),
             coat(Stage.BASE, "acrylic")),
            (PRIME, coat(Stage.BASE, "lacquer"), coat(Stage.CHIP_FLUID, "fluid"),
             coat(Stage.BASE, "acrylic"), work(Stage.CHIP_RUB)),
            "chipping fluid never rubbed",
        ),
        (
            (PRIME, coat(Stage.BASE, "lacquer"), coat(Stage.CHIP_FLUID, "fluid"),
             coat(Stage.BASE, "acrylic"), work(Stage.CHIP_RUB), coat(Stage.CAMO, "dark green")),
            (PRIME, coat(Stage.BASE, "lacquer"), coat(Stage.CHIP_FLUID, "fluid"),
             coat(Stage.BASE, "acrylic"), coat(Stage.CAMO, "dark green"), work(Stage.CHIP_RUB)),
            "colour over finished chips",
        ),
        (
            (PRIME, coat(Stage.BASE, "acrylic"), coat(Stage.VARNISH, "decal sheet")),
            (PRIME, coat(Stage.BASE, "acrylic"), coat(Stage.VARNISH, "gloss clear")),
            "stage that does not fit its coating",
        ),
    ],
)  # fmt: skip
def test_a_fault_is_found_and_its_twin_is_not(
    fault: tuple[Step, ...], twin: tuple[Step, ...], rule: str
) -> None:
    assert rule in rules(*fault)
    assert rules(*twin) == set()


@pytest.mark.parametrize(
    "material", [Material.RESIN, Material.CAST, Material.VINYL, Material.ETCHED, Material.METAL]
)
def test_what_comes_greasy_is_washed_first(material: Material) -> None:
    assert f"{material} not washed" in rules(PRIME, material=material)
    assert rules(work(Stage.CLEAN), PRIME, material=material) == set()


def test_clear_plastic_stays_clear_and_is_not_fogged() -> None:
    clear = Material.CLEAR
    assert "clear plastic painted over" in rules(PRIME, material=clear)
    frame = coat(Stage.PRIME, "grey primer", "hull/side")
    assert rules(frame, coat(Stage.VARNISH, "gloss clear", "hull/deck"), material=clear) == set()


def test_bare_wood_is_sealed_first() -> None:
    colour = coat(Stage.BASE, "acrylic")
    assert "colour on bare wood" in rules(colour, material=Material.WOOD)
    assert rules(PRIME, colour, material=Material.WOOD) == set()


@pytest.mark.parametrize(("celsius", "grave"), [(35, None), (50, False), (60, True)])
def test_heat_that_bends_styrene(celsius: float, grave: bool | None) -> None:
    """60 °C softens styrene; a warm box stays at 40 °C or below."""
    of = _book(PRIME)
    bench = of.room.locations[0]
    point = replace(bench.workdays[0], temperature_c=celsius)
    box = replace(bench, name="box", workdays=(point,))
    steps = (replace(of.projects[0].models[0].steps[0], dries_in="box"),)
    model = replace(of.projects[0].models[0], steps=steps)
    project = replace(of.projects[0], models=(model,))
    room = replace(of.room, locations=(bench, box))
    found = find(replace(of, room=room, projects=(project,)))
    assert [one.verdict.value == "never" for one in found] == ([] if grave is None else [grave])


@pytest.mark.parametrize(
    ("swatch", "expected"),
    # Lab of sRGB primaries under D65: the sRGB specification (IEC 61966-2-1) through CIE 15
    [
        ("#ff0000", (53.24, 80.09, 67.20)),
        ("#0000ff", (32.30, 79.19, -107.86)),
        ("#ffffff", (100.0, 0.0, 0.0)),
    ],
)
def test_lab_of_known_colours(swatch: str, expected: tuple[float, float, float]) -> None:
    assert lab(swatch) == pytest.approx(expected, abs=0.05)


def test_yellow_and_red_hide_badly_and_metal_well() -> None:
    paint = Coating(name="x", family=F.WATERBORNE_ACRYLIC)
    assert hides(paint, "#f0c800") is hides(paint, "#c21f1a") is Hiding.POOR
    assert hides(paint, "#55603c") is Hiding.USUAL
    assert hides(replace(paint, effect=Effect.METALLIC), "#c9ccd0") is Hiding.GOOD
    assert hides(replace(paint, hiding=Hiding.GOOD), "#f0c800") is Hiding.GOOD


@pytest.mark.parametrize(
    ("name", "effect"),
    [
        ("lacquer, aluminium", Effect.METALLIC),
        ("waterborne acrylic, bright metal", Effect.METALLIC),
        ("solvent lacquer, silver", Effect.METALLIC),
        ("waterborne acrylic, silver grey", Effect.PLAIN),
        ("waterborne acrylic, marigold", Effect.PLAIN),
        ("lacquer, chrome", Effect.MIRROR),
        ("neon orange", Effect.FLUORESCENT),
    ],
)
def test_a_name_tells_an_effect_that_nobody_has_set(name: str, effect: Effect) -> None:
    assert effect_of(Coating(name=name, family=F.SOLVENT_LACQUER)) is effect


def test_a_metallic_is_not_pale_over_dark() -> None:
    metal = Coating(name="aluminium", family=F.SOLVENT_LACQUER, swatch="#c9ccd0")
    of = book_of(coat(Stage.PRIME, "black primer"), coat(Stage.BASE, "aluminium"), more=(metal,))
    assert find(of) == ()


@pytest.mark.parametrize(("thinner", "rule"), [(1, ""), (4, "colour thinned to a glaze")])
def test_how_far_a_colour_is_thinned(thinner: int, rule: str) -> None:
    parts = Portion(coating="acrylic", parts=1), Portion(coating="water", parts=thinner)
    of = book_of(PRIME, coat(Stage.BASE, "thin"), mixes=(Mix(name="thin", portions=parts),))
    assert [one.rule for one in find(of)] == ([rule] if rule else [])


def test_a_gloss_is_no_matte_coat_and_a_spray_no_dry_brush() -> None:
    colour = PRIME, coat(Stage.BASE, "acrylic")
    assert "gloss laid as the matte coat" in rules(*colour, coat(Stage.MATTE, "gloss clear"))
    sprayed = coat(Stage.DRY_BRUSH, "acrylic", tool=Tool.AIRBRUSH)
    assert "tool that cannot do it" in rules(*colour, sprayed)
    assert rules(*colour, coat(Stage.DRY_BRUSH, "acrylic")) == set()


def test_the_right_glue() -> None:
    def joined(glue: str, material: Material) -> set[str]:
        parts = (part("hull", "deck", holder="stick", material=material), part("lamp", "foot"))
        step = coat(Stage.JOIN, glue, "hull/deck", "lamp/foot")
        of = book_of(replace(step, tool=Tool.HAND), parts=parts, more=MORE)
        return {one.rule for one in find(of)}

    assert joined("fast glue", Material.CLEAR) == {"cyanoacrylate at clear plastic"}
    assert joined("white glue", Material.CLEAR) == set()
    assert joined("cement", Material.RESIN) == {"solvent cement at what it cannot weld"}
    assert joined("cement", Material.STYRENE) == set()
