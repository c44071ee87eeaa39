"""The run sheet of plans made by hand, and the cautions on it.

Clock times are worked out by hand from the plan in ``small_book``; how long
a film dries is asked of `planner.cure`, which has tests of its own.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from small_book import BRUSH, CART, NOW, PROJECT, ZONE, at, key, small_book, small_plan

from planner.cautions import cautions
from planner.cure import Band, Cure, Film
from planner.tonight import BenchRow, WorkRow, run_sheet, swatch_of
from planner.values.coating import Coating, Family, State
from planner.values.moment import Interval
from planner.values.plan import BenchKind, BenchWork, PassKey, Placement
from planner.values.refusal import Refused
from planner.values.step import Application, Bound, Minutes, Stage, Step, Tool

SECOND = at("2031-03-13 19:30")


def test_rows_stand_in_order_of_the_clock() -> None:
    sheet = run_sheet(small_book(), small_plan(), NOW)
    assert sheet.interval == Interval(NOW, NOW + 120)
    assert sheet.on.isoformat() == "2031-03-06"
    assert [(row.start - NOW, row.end - NOW) for row in sheet.rows] == [(0, 3), (3, 13), (13, 19)]
    load, prime, clean = sheet.rows
    assert isinstance(load, BenchRow)
    assert (load.kind, load.airbrush, load.coating) == (BenchKind.LOAD, BRUSH, "grey primer")
    assert isinstance(prime, WorkRow)
    assert (prime.key, prime.stage, prime.minutes) == (key("prime"), Stage.PRIME, 10)
    assert prime.places == ("tub/bed", "tub/sides")
    assert [(coat.coating, coat.swatch) for coat in prime.coats] == [("grey primer", "#909090")]
    assert isinstance(clean, BenchRow)
    assert (clean.kind, clean.coating) == (BenchKind.CLEAN, "")


def test_between_two_evenings_the_next_one_is_shown() -> None:
    sheet = run_sheet(small_book(), small_plan(), at("2031-03-10 08:00"))
    assert sheet.interval == Interval(SECOND, SECOND + 120)
    assert [row.key.step for row in sheet.work] == ["sand", "wash", "wipe"]


def test_the_last_minute_of_a_stretch_belongs_to_it_and_its_end_does_not() -> None:
    assert run_sheet(small_book(), small_plan(), NOW + 119).interval.start == NOW
    assert run_sheet(small_book(), small_plan(), NOW + 120).interval.start == SECOND


def test_minutes_given_make_a_stretch_of_their_own() -> None:
    sheet = run_sheet(small_book(), small_plan(), NOW + 5, minutes=9)
    assert sheet.interval == Interval(NOW + 5, NOW + 14)
    assert [type(row) for row in sheet.rows] == [WorkRow, BenchRow]  # the load is over


@pytest.mark.parametrize("minutes", [0, -5, 1441])
def test_minutes_out_of_reason_are_refused(minutes: int) -> None:
    with pytest.raises(Refused, match="minutes"):
        run_sheet(small_book(), small_plan(), NOW, minutes)


def test_a_mix_is_shown_in_parts() -> None:
    sheet = run_sheet(small_book(), small_plan(), SECOND)
    load, sand = sheet.rows[:2]
    assert isinstance(load, BenchRow)
    assert isinstance(sand, WorkRow)
    for portions in (load.portions, sand.coats[0].portions):
        assert [(portion.coating, portion.parts) for portion in portions] == [
            ("sand", 2),
            ("water thinner", 3),
        ]
    assert load.swatch == sand.coats[0].swatch == "#c8b482"


def test_a_film_is_drying_until_it_is_ready_for_the_next_coat() -> None:
    book = small_book()
    laid = NOW + 13
    film = Film(book.coating("grey primer"), 20.0, "bench", laid)
    recoat = Cure(book.room, ZONE).ready_at(film, State.DRY_TO_RECOAT, Band.NOMINAL)  # likely
    assert recoat is not None
    sheet = run_sheet(book, small_plan(), laid)
    primer = next(one for one in sheet.drying_now if one.key == key("prime"))
    assert (primer.state, primer.since, primer.opens) == (State.DRY_TO_RECOAT, laid, recoat)
    assert primer.waiting == key("sand")
    assert primer.places == ("tub/bed", "tub/sides")
    open_by_now = run_sheet(book, small_plan(), recoat).drying_now
    assert not [one for one in open_by_now if one.state is State.DRY_TO_RECOAT]


def test_before_it_is_laid_a_film_is_not_drying() -> None:
    assert run_sheet(small_book(), small_plan(), NOW).drying_now == ()


def test_a_film_that_outlasts_the_evening_is_left_to_dry() -> None:
    sheet = run_sheet(small_book(), small_plan(), SECOND)
    oil = next(one for one in sheet.drying_after if one.key == key("wash"))
    assert oil.state is State.DRY_TO_HANDLE  # no coat waits for it
    assert oil.waiting is None
    assert oil.since == SECOND + 45
    assert oil.opens is None or oil.opens > SECOND + 120


def test_the_wiping_back_closes_an_hour_after_the_wash_was_begun() -> None:
    sheet = run_sheet(small_book(), small_plan(), SECOND)
    (wipe,) = [one for one in sheet.closing if one.waiting == key("wipe")]
    assert wipe.closes == SECOND + 30 + 60
    assert (wipe.key, wipe.bound, wipe.since) == (key("wash"), Bound.END, SECOND + 30)
    assert wipe.planned == SECOND + 60


def test_nothing_closes_before_it_was_begun_or_after_it_was_met() -> None:
    assert run_sheet(small_book(), small_plan(), NOW).closing == ()
    met = run_sheet(small_book(), small_plan(), SECOND + 70)
    assert not [one for one in met.closing if one.waiting == key("wipe")]


def test_what_opens_next_is_named() -> None:
    sheet = run_sheet(small_book(), small_plan(), NOW)
    assert sheet.next_interval == Interval(SECOND, SECOND + 120)
    assert [row.key.step for row in sheet.next_opens] == ["sand", "wash", "wipe"]
    last = run_sheet(small_book(), small_plan(), SECOND)
    assert last.next_interval is None
    assert last.next_opens == ()


def test_split_work_shows_its_pieces() -> None:
    plan = small_plan()
    wash = Placement(
        key("wash"), (Interval(NOW + 30, NOW + 40), Interval(SECOND + 30, SECOND + 35))
    )
    others = tuple(
        placement for placement in plan.placements if placement.key.step not in ("wash", "wipe")
    )
    plan = replace(plan, placements=(*others, wash))
    (piece,) = [row for row in run_sheet(small_book(), plan, SECOND).work if row.key == wash.key]
    assert (piece.piece, piece.pieces, piece.minutes) == (2, 2, 5)


def test_work_of_projects_set_aside_is_left_out() -> None:
    plan = small_plan()
    stray = Placement(PassKey("gone", CART, "prime"), (Interval(NOW + 50, NOW + 60),))
    sheet = run_sheet(small_book(), replace(plan, placements=(*plan.placements, stray)), NOW)
    assert {row.key.project for row in sheet.work} == {PROJECT}


def test_a_preparation_names_what_it_serves() -> None:
    plan = small_plan()
    scuff = BenchWork(BenchKind.PREPARE, Interval(SECOND + 22, SECOND + 28), serves=key("wash"))
    sheet = run_sheet(small_book(), replace(plan, bench=(*plan.bench, scuff)), SECOND)
    (row,) = [r for r in sheet.rows if isinstance(r, BenchRow) and r.kind is BenchKind.PREPARE]
    assert row.serves == key("wash")


def test_without_bench_time_there_is_an_empty_sheet() -> None:
    book = small_book()
    book = replace(book, bench_time=replace(book.bench_time, stretches=()))
    sheet = run_sheet(book, replace(small_plan(), placements=(), bench=()), NOW)
    assert sheet.rows == ()


def test_a_mix_without_a_swatch_has_that_of_its_first_portion() -> None:
    assert swatch_of(small_book(), "thin sand") == "#c8b482"
    assert swatch_of(small_book(), "dark oil") == "#302010"


# --- cautions: each hazard on the step that has it, and on no other ---------------------------


def _step(stage: Stage, tool: Tool) -> Step:
    lays = (Application(places=("tub",), coating="x"),)
    wipes = stage in (Stage.WIPE, Stage.MASK)
    return Step(
        id="s",
        stage=stage,
        tool=tool,
        minutes=Minutes(fixed=5),
        applications=() if wipes else lays,
        touches=("tub",) if wipes else (),
    )


@pytest.mark.parametrize(
    ("stage", "tool", "family", "word"),
    [
        (Stage.BASE, Tool.AIRBRUSH, Family.WATERBORNE_ACRYLIC, "mist"),
        (Stage.PRIME, Tool.CAN, Family.WATERBORNE_ACRYLIC, "vapour"),
        (Stage.BASE, Tool.BRUSH, Family.SOLVENT_LACQUER, "vapour"),
        (Stage.VARNISH, Tool.AIRBRUSH, Family.TWO_PACK, "isocyanate"),
        (Stage.WIPE, Tool.CLOTH, Family.ARTISTS_OIL, "Rags"),
        (Stage.OIL_WASH, Tool.BRUSH, Family.ARTISTS_OIL, "Rags"),
        (Stage.JOIN, Tool.HAND, Family.CYANOACRYLATE, "skin"),
        (Stage.PIGMENT, Tool.BRUSH, Family.PIGMENT, "dust"),
        (Stage.MASK, Tool.HAND, Family.WATERBORNE_ACRYLIC, "Blade"),
    ],
)
def test_each_hazard_has_its_caution(stage: Stage, tool: Tool, family: Family, word: str) -> None:
    found = cautions(_step(stage, tool), [family])
    assert any(word in item.text for item in found)
    assert all(item.source for item in found)


def test_brushing_a_waterborne_coat_needs_none() -> None:
    assert cautions(_step(Stage.BASE, Tool.BRUSH), [Family.WATERBORNE_ACRYLIC]) == ()


def test_the_cloth_that_wipes_oil_is_cautioned_about() -> None:
    sheet = run_sheet(small_book(), small_plan(), SECOND)
    wipe = next(row for row in sheet.work if row.key.step == "wipe")
    assert any("Rags" in caution.text for caution in wipe.cautions)


def test_a_thinner_in_the_mix_is_cautioned_about() -> None:
    book = small_book()
    hot = Coating(name="water thinner", family=Family.LACQUER_THINNER)
    swapped = tuple(hot if coating.name == hot.name else coating for coating in book.coatings)
    sheet = run_sheet(replace(book, coatings=swapped), small_plan(), SECOND)
    sand = next(row for row in sheet.work if row.key.step == "sand")
    assert any("vapour:" in caution.text for caution in sand.cautions)
