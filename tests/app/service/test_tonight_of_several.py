"""What a run sheet says where several models of one project take the same coats."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest
from small_book import NOW, PROJECT, ZONE, at, key, small_book

from app.service import planning, run_sheet_text, wording
from app.service.run_sheet_notes_text import air_text, beside_text
from planner.air import Fitness, fitness
from planner.evening.advice import in_air
from planner.evening.run_sheet_notes import beside
from planner.tonight import DryingFilm, RunSheet, run_sheet, run_sheets
from planner.values.book import Book
from planner.values.coating import State
from planner.values.model import Model
from planner.values.plan import BenchKind, Cause, Reason
from planner.values.room import AirPoint
from planner.values.step import Stage, Trait

CARTS = ("cart", "hand cart", "tip cart")


@pytest.fixture(scope="module")
def book() -> Book:
    book = small_book()
    (cart,) = book.project(PROJECT).models
    models = tuple(replace(cart, name=name) for name in CARTS)
    room = replace(book.room.locations[0], drying_places=9)
    return replace(
        book,
        room=replace(book.room, locations=(room,)),
        projects=(replace(book.project(PROJECT), models=models),),
    )


@pytest.fixture(scope="module")
def sheet(book: Book) -> RunSheet:
    return run_sheet(book, planning.plan(book, NOW).plan, NOW)


def test_busy_hands_are_busy_with_a_model(book: Book, sheet: RunSheet) -> None:
    busy = [row for row in sheet.work if row.reason.cause is Cause.HANDS]
    assert busy
    text = run_sheet_text.run_sheet_text(sheet, book)
    assert re.search(r"hands are busy with (cart|hand cart|tip cart)/prime until Thu 19:4", text)


@pytest.mark.parametrize(
    ("kind", "doing"),
    [
        (BenchKind.LOAD, "filling the airbrush"),
        (BenchKind.CHANGE, "changing the colour"),
        (BenchKind.CLEAN, "cleaning the airbrush"),
        (BenchKind.PREPARE, "preparing a film"),
    ],
)
def test_set_up_is_told_as_something_that_hands_do(kind: BenchKind, doing: str) -> None:
    told = wording.reasons_text(Reason(Cause.HANDS, NOW, kind.value), ZONE)
    assert told == f"hands are busy with {doing} until Thu 19:30"


def test_films_of_like_models_are_told_in_one_line() -> None:
    film = DryingFilm(
        key=key("prime"),
        coating="grey primer",
        swatch="#808080",
        places=("tub/bed", "tub/sides"),
        state=State.DRY_TO_RECOAT,
        since=NOW,
        opens=at("2031-03-06 21:10"),
        waiting=key("sand"),
    )
    second = replace(
        film, key=key("prime")._replace(model="hand cart"), opens=at("2031-03-06 21:25")
    )
    other = replace(film, coating="thin sand")
    tomorrow = replace(film, opens=at("2031-03-07 09:00"))
    lines = [
        str(drying_line)
        for drying_line in run_sheet_text.drying_lines((film, second, other, tomorrow), NOW, ZONE)
    ]
    assert lines == [
        "21:10–21:25       dry-to-recoat  grey primer on cart, hand cart (tub), for sand",
        "21:10             dry-to-recoat  thin sand on cart (tub), for sand",
        "Fri 7 Mar 09:00   dry-to-recoat  grey primer on cart (tub), for sand",
    ]
    late = replace(tomorrow, key=second.key, opens=at("2031-03-07 09:30"))
    (line,) = run_sheet_text.drying_lines((tomorrow, late), NOW, ZONE)
    assert line.startswith("Fri 7 Mar 09:00–09:30  dry-to-recoat  grey primer on cart, hand cart")


def test_a_film_that_never_dries_stands_apart() -> None:
    never = DryingFilm(
        key=key("prime"),
        coating="grey primer",
        swatch="#808080",
        places=("tub/bed",),
        state=State.DRY_TO_RECOAT,
        since=NOW,
        opens=None,
        waiting=None,
    )
    lines = list(run_sheet_text.drying_lines((never, replace(never, opens=NOW + 60)), NOW, ZONE))
    assert len(lines) == 2
    assert lines[0].startswith("never in this air")


def test_what_stands_on_the_sheet_is_offered_no_more(book: Book, sheet: RunSheet) -> None:
    found = beside(book, planning.plan(book, NOW).plan, sheet)
    here = {row.key[:3] for row in sheet.work}
    assert found.fillings
    for filling in found.fillings:
        assert not [taker for taker in filling.takers if taker.key[:3] in here]


def test_one_line_of_offers_holds_one_time_for_each(book: Book) -> None:
    """At 19:30 the cup is filled: what could be sprayed then needs no second 19:30."""
    plan = planning.plan(book, NOW).plan
    sheet = run_sheet(book, plan, NOW)
    alone = replace(sheet, rows=tuple(row for row in sheet.rows if row not in sheet.work))
    text = beside_text(beside(book, plan, alone), alone, ZONE)
    (line,) = [line for line in text.splitlines() if line.startswith("  19:30  grey primer")]
    assert "as well: cart/prime (tub)" in line
    assert line.count("19:30") == 1


def _in_air(book: Book, temperature_c: float, humidity_pct: float) -> Book:
    (place,) = book.room.locations
    air = (AirPoint(at="00:00", temperature_c=temperature_c, humidity_pct=humidity_pct),)
    return replace(book, room=replace(book.room, locations=(replace(place, workdays=air),)))


def test_air_that_is_good_for_the_evening_is_not_talked_about(book: Book, sheet: RunSheet) -> None:
    assert in_air(_in_air(book, 21, 50), sheet.work) == ()


def test_air_that_speaks_against_a_coat_is_told_once_with_its_hour(
    book: Book, sheet: RunSheet
) -> None:
    """ISO 2115: below its least temperature a waterborne film does not flow; 5 °C is assumed."""
    cold = _in_air(book, 3, 50)
    (one,) = in_air(cold, [row for row in sheet.work if row.key.step == "prime"])
    assert (one.coating, fitness(one.reasons)) == ("grey primer", Fitness.NO_GO)
    assert air_text((one,), ZONE).startswith(
        "The air for it\n  19:33  grey primer: not now: at 3 °C a waterborne film does not flow"
    )


def test_a_clear_coat_by_its_stage_is_not_sprayed_in_damp_air(book: Book) -> None:
    """70 % RH and more is always poor for clears: common practice, no source.

    It is not planned there; where the person gave their word it is, and that is told.
    """
    damp = _in_air(book, 21, 80)
    plan = planning.plan(damp, NOW).plan
    assert "80 % RH" in next(one.why for one in plan.unplaced if one.key.step == "gloss")
    projects = tuple(
        replace(project, models=tuple(map(_on_my_word, project.models)))
        for project in damp.projects
    )
    willing = replace(damp, projects=projects)
    plan = planning.plan(willing, NOW).plan
    rows = [row for sheet in run_sheets(willing, plan, NOW) for row in sheet.work]
    told = {one.coating: fitness(one.reasons) for one in in_air(willing, rows)}
    assert told.get("gloss clear") is Fitness.NO_GO
    assert "grey primer" not in told


def _on_my_word(model: Model) -> Model:
    steps = tuple(
        replace(step, traits=(*step.traits, Trait.ANY_AIR)) if step.stage is Stage.VARNISH else step
        for step in model.steps
    )
    return replace(model, steps=steps)
