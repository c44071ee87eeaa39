"""Amounts against printed spreading rates, mixes and scale areas.

Spreading-rate examples are those of protective-coating estimating guides and
of UFC 3-190-06 paragraph 2.1.5, in US units; the conversions are exact.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from planner.cure import Evidence
from planner.quantity import (
    NoArea,
    amount_ml,
    box_m2,
    drops_per_ml,
    measured,
    mixed_solids,
    scaled_cm2,
    shopping,
    transfer_efficiency,
)
from planner.values.bench_time import BenchTime
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.gear import Airbrush, Gear
from planner.values.mix import Mix, Portion
from planner.values.model import Model, Part, Place
from planner.values.moment import minute_of
from planner.values.project import Logged, Project
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location, Room
from planner.values.step import Application, Minutes, Stage, Step, Tool

MIL_UM = 25.4
M2_L_PER_FT2_GAL = 0.3048**2 / 3.785411784  # 0.024542


def spreading_rate_m2_l(solids: float, dry_film_um: float) -> float:
    """Return how far a litre goes [m²/l] where nothing is lost: 1 m² takes its amount."""
    return 1000 / amount_ml(10_000, dry_film_um, solids, 1.0)


def wet_film_um(dry_film_um: float, solids: float, thinner: float = 0.0) -> float:
    """Return the wet film: 1 ml on 1 m² is 1 µm, and what thins it comes on top."""
    return amount_ml(10_000, dry_film_um, solids, 1.0) * (1 + thinner)


def ft2_gal(solids: float, mil: float) -> float:
    return spreading_rate_m2_l(solids, mil * MIL_UM) / M2_L_PER_FT2_GAL


# --- printed spreading rates -----------------------------------------------


def test_spreading_rate_in_metres():
    assert spreading_rate_m2_l(0.65, 125) == pytest.approx(5.2)  # printed
    assert spreading_rate_m2_l(0.60, 51) == pytest.approx(11.8, abs=0.05)  # SSPC text, printed


@pytest.mark.parametrize(
    ("solids", "mil", "printed", "tolerance"),
    [
        (0.65, 5, 208.52, 2e-4),
        (0.46, 2.5, 294, 0.005),  # printed with 641.6 rounded
        (0.56, 2.5, 358, 0.005),
        (0.35, 2, 281, 0.002),
        (0.60, 2, 480, 0.003),  # SSPC zinc-dust paint
        # UFC 3-190-06 2.1.5 reckons with 1600 ft²/gal at 1 mil; its scan prints
        # 600 for 50 % at 1 mil, a misprint for 800, which is left out here.
        (1.00, 1, 1600, 0.003),
        (1.00, 2, 800, 0.003),
        (1.00, 4, 400, 0.003),
        (0.50, 2, 400, 0.003),
        (0.50, 4, 200, 0.003),
    ],
)
def test_spreading_rate_in_feet(solids, mil, printed, tolerance):
    assert ft2_gal(solids, mil) == pytest.approx(printed, rel=tolerance)


def test_the_misprint_is_not_reproduced():
    """50 % solids at 1 mil: half of the 1600 printed for 100 %, twice the 400 for 2 mil."""
    assert ft2_gal(0.50, 1) == pytest.approx(1600 / 2, rel=0.003)
    assert ft2_gal(0.50, 1) == pytest.approx(400 * 2, rel=0.003)
    assert abs(ft2_gal(0.50, 1) - 600) > 150


def test_practical_spreading_rate():
    """52 % solids, 35 % transfer, 1.5 mil: 194.5 ft²/gal printed (exact 194.62)."""
    assert ft2_gal(0.52, 1.5) * 0.35 == pytest.approx(194.5, rel=0.001)


def test_wet_film():
    """8 mil wet of 35 % solids dry to 2.8 mil (printed), thinned by a tenth to about 2.5."""
    assert wet_film_um(2.8 * MIL_UM, 0.35) == pytest.approx(8 * MIL_UM)
    assert wet_film_um(2.5 * MIL_UM, 0.35, thinner=0.10) == pytest.approx(8 * MIL_UM, rel=0.02)


@pytest.mark.parametrize(
    ("parts", "wet"), [((1,), 57.1), ((1, 1), 114.3), ((2, 3), 142.9)], ids=str
)
def test_wet_film_of_thinned_paint(parts, wet):
    """Recomputed apart: 20 µm dry of 35 % solids, neat and let down 1 : 1 and 2 : 3."""
    thinner = sum(parts[1:]) / parts[0]
    assert wet_film_um(20, 0.35, thinner) == pytest.approx(wet, abs=0.05)


@pytest.mark.parametrize(
    ("fraction", "ml"), [(0.25, 13.53), (0.30, 11.27), (0.65, 5.20), (0.95, 3.56)]
)
def test_amount(fraction, ml):
    """591.84 cm², 20 µm, 35 % solids; recomputed apart."""
    assert amount_ml(591.84, 20, 0.35, fraction) == pytest.approx(ml, abs=0.005)
    assert amount_ml(591.84, 20, 0.35, fraction, coats=3) == pytest.approx(3 * ml, abs=0.015)


def test_amount_and_spreading_rate_say_the_same():
    """One litre spreads over its rate: 5.2 m² at 65 % and 125 µm (printed)."""
    assert amount_ml(52_000, 125, 0.65, 1.0) == pytest.approx(1000)


@pytest.mark.parametrize(("solids", "film"), [(0, 20), (1.1, 20), (0.35, 0), (float("nan"), 20)])
def test_nonsense_is_refused(solids, film):
    with pytest.raises(Refused):
        amount_ml(100, film, solids, 0.3)


# --- transfer --------------------------------------------------------------


@pytest.mark.parametrize(
    ("stage", "tool", "fraction", "status"),
    [
        (Stage.BASE, Tool.CAN, 0.25, Evidence.PUBLISHED),  # 40 CFR 60.313
        (Stage.BASE, Tool.AIRBRUSH, 0.30, Evidence.ASSUMED),
        (Stage.BASE, Tool.BRUSH, 0.95, Evidence.ASSUMED),
        (Stage.OIL_WASH, Tool.BRUSH, 0.65, Evidence.ASSUMED),
        (Stage.CHIP, Tool.SPONGE, 0.65, Evidence.ASSUMED),
    ],
)
def test_transfer_says_what_it_is_worth(stage, tool, fraction, status):
    found = transfer_efficiency(step("one", "sand", stage=stage, tool=tool))
    assert (found.fraction, found.status) == (fraction, status)
    assert found.least < found.fraction < found.most


def test_small_targets_catch_what_an_expert_says_they_do():
    """R. Joseph 2009: 20 to 50 % on small targets."""
    assert 0.20 <= transfer_efficiency(step("one", "sand", tool=Tool.AIRBRUSH)).fraction <= 0.50


# --- scale (areas printed to two decimals in a table recomputed apart) -----


@pytest.mark.parametrize(
    ("scale", "cm2"),
    [
        (24, 1258.68),
        (32, 708.01),
        (35, 591.84),
        (48, 314.67),
        (72, 139.85),
        (144, 34.96),
        (350, 5.92),
        (700, 1.48),
    ],
)
def test_a_box_at_scale(scale, cm2):
    assert box_m2(6.0, 2.5, 2.5) == 72.5
    assert scaled_cm2(72.5, scale) == pytest.approx(cm2, abs=0.005)


# --- mixes and drops -------------------------------------------------------

WATER = Coating(name="water thinner", family=Family.WATER_THINNER)
SAND = Coating(name="sand", family=Family.WATERBORNE_ACRYLIC, in_stock_ml=5.0)
GREEN = Coating(name="green", family=Family.WATERBORNE_ACRYLIC)
GLUE = Coating(name="cement", family=Family.SOLVENT_CEMENT)
DECAL = Coating(name="decal sheet", family=Family.DECAL)


def mix(*portions, name="thin sand"):
    return Mix(name=name, portions=tuple(Portion(coating=c, parts=p) for c, p in portions))


def step(name, coating, places=("hull/deck",), coats=1, stage=Stage.BASE, tool=Tool.AIRBRUSH):
    coat = Application(places=places, coating=coating, coats=coats)
    return Step(id=name, stage=stage, tool=tool, minutes=Minutes(fixed=5), applications=(coat,))


def book(*steps, mixes=(), area=591.84, log=(), active=True, scale="1:35"):
    hull = Part(
        name="hull", places=(Place(name="deck", area_cm2=area), Place(name="keel", area_cm2=0))
    )
    air = (AirPoint(at="00:00", temperature_c=23, humidity_pct=50),)
    return Book(
        coatings=(WATER, SAND, GREEN, GLUE, DECAL),
        mixes=mixes,
        room=Room(locations=(Location(name="bench", drying_places=9, workdays=air),)),
        bench_time=BenchTime(zone="UTC"),
        gear=Gear(airbrushes=(Airbrush(name="fine"),)),
        projects=(
            Project(
                name="yard",
                models=(Model(name="cart", parts=(hull,), steps=steps, scale=scale),),
                target=date(2031, 3, 9),
                log=log,
                active=active,
            ),
        ),
    )


TWO_THREE = mix(("sand", 2), ("water thinner", 3))


def test_two_to_three_of_ten_millilitres():
    """4.0 + 6.0 ml, 80 + 120 drops at 20 to the millilitre; 14.0 % solids (recomputed apart)."""
    one = book(mixes=(TWO_THREE,))
    found = measured(one, TWO_THREE, 10)
    assert [(m.coating, m.ml, m.drops) for m in found] == [
        ("sand", pytest.approx(4.0), 80),
        ("water thinner", pytest.approx(6.0), 120),
    ]
    assert mixed_solids(one, TWO_THREE) == pytest.approx(0.14)
    assert mixed_solids(one, mix(("sand", 1), ("water thinner", 1))) == pytest.approx(0.175)


@pytest.mark.parametrize(
    ("parts", "shares"), [((2, 3), (40, 60)), ((1, 1), (50, 50)), ((3, 7), (30, 70))]
)
def test_shares_as_the_trade_names_them(parts, shares):
    """Common practice: washes 2 : 3, tool tones 50 : 50, a chipping tone 30 : 70."""
    blend = mix(("sand", parts[0]), ("green", parts[1]))
    assert [m.ml for m in measured(book(), blend, 100)] == pytest.approx(shares)


def test_drops():
    """20 drops of water to the millilitre within a tenth (USP practice text)."""
    assert 18 <= drops_per_ml(Family.WATER_THINNER) <= 22
    assert drops_per_ml(Family.WHITE_SPIRIT) > drops_per_ml(Family.WATER_THINNER)


# --- what to buy, without a plan ---------------------------------------------

NOW = minute_of(datetime(2031, 3, 3, 18, tzinfo=UTC))


def needs(book: Book):
    return {line.coating.name: line for line in shopping(book, None, NOW).lines}


def test_needs_are_summed_over_coats_and_set_against_the_stock():
    found = needs(book(step("base", "sand", coats=2), step("camo", "green", tool=Tool.CAN)))
    assert found["sand"].needed_ml == pytest.approx(2 * 11.27, abs=0.01)
    assert found["sand"].buy_ml == pytest.approx(2 * 11.27 - 5.0, abs=0.01)
    assert found["green"].needed_ml == pytest.approx(13.53, abs=0.005)
    assert all(need.complete for need in found.values())
    assert "water thinner" not in found


def test_a_thinned_coat_takes_as_much_paint_and_the_thinner_besides():
    found = needs(book(step("base", "thin sand"), mixes=(TWO_THREE,)))
    assert found["sand"].needed_ml == pytest.approx(11.27, abs=0.005)
    assert found["water thinner"].needed_ml == pytest.approx(11.27 * 3 / 2, abs=0.01)


def test_plenty_in_stock_is_not_bought():
    one = book(step("base", "sand", tool=Tool.BRUSH))
    plenty = replace(one, coatings=(WATER, replace(SAND, in_stock_ml=20), GREEN, GLUE, DECAL))
    assert needs(plenty)["sand"].buy_ml == 0


def test_a_place_without_area_is_named_and_nothing_invented():
    one = book(step("base", "sand", places=("hull",), coats=2))
    found = shopping(one, None, NOW)
    (missing,) = found.no_area
    assert missing == NoArea("yard", "cart", "hull/keel", missing.mend)
    assert "no area given" in missing.mend
    assert "592 cm² at 1:35" in missing.mend  # 591.84 of the scale table
    assert not needs(one)["sand"].complete
    assert needs(one)["sand"].needed_ml == pytest.approx(2 * 11.27, abs=0.01)


def test_without_a_scale_there_is_no_size_to_go_by():
    (missing,) = shopping(
        book(step("base", "sand", places=("hull/keel",)), scale=""), None, NOW
    ).no_area
    assert "cm² at" not in missing.mend


def test_glue_and_decals_are_only_named():
    steps = (
        step("decals", "decal sheet", places=("hull",), stage=Stage.DECAL, tool=Tool.HAND),
        step("fix", "cement", stage=Stage.DETAIL, tool=Tool.BRUSH),
    )
    found = shopping(book(*steps), None, NOW)
    assert found.at_hand == ("cement", "decal sheet")
    assert (found.lines, found.no_area) == ((), ())


def test_what_is_done_takes_nothing_more():
    began, ended = datetime(2031, 3, 3, 17, tzinfo=UTC), datetime(2031, 3, 3, 18, tzinfo=UTC)
    base = step("base", "sand", coats=2)
    done = Logged(model="cart", step="base", coat=1, start=began, end=ended)
    begun = Logged(model="cart", step="base", coat=2, start=began)
    assert needs(book(base, log=(done,)))["sand"].needed_ml == pytest.approx(11.27, abs=0.005)
    assert needs(book(base, log=(begun,)))["sand"].needed_ml == pytest.approx(22.55, abs=0.01)


def test_an_inactive_project_takes_nothing():
    assert needs(book(step("base", "sand"), active=False)) == {}
