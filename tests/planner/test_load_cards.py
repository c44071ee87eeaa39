"""One evening by loads: cards for cups and hand work, and what the evening comes to."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from small_book import NOW, at, small_book, small_plan

from planner.cautions import Caution
from planner.quantity import Load
from planner.tonight import (
    BenchRow,
    DryingFilm,
    RunSheet,
    SheetCoat,
    WorkRow,
    cards_of,
    evening_answer,
    loose_set_up,
    run_sheet,
)
from planner.tonight.load_cards import common_words
from planner.values.moment import Interval, moment_of, zone_named
from planner.values.plan import BenchKind, Cause, PassKey, Reason
from planner.values.step import Stage, Tool

SECOND = at("2031-03-13 19:30")
MIST = Caution("Spray mist: extract it.", "common practice, no source", "spray mist")


def work(
    model: str,
    start: int,
    *,
    coating: str = "grey",
    airbrush: str = "brush one",
    places: tuple[str, ...] = ("body/upper", "body/floor"),
    stage: Stage = Stage.PRIME,
    tool: Tool = Tool.AIRBRUSH,
    minutes: int = 7,
    cautions: tuple[Caution, ...] = (),
) -> WorkRow:
    return WorkRow(
        key=PassKey("fleet", model, stage.value),
        stage=stage,
        title="",
        parts=("body",),
        coats=(SheetCoat(coating, "#888888", (), places),) if coating else (),
        places=places,
        tool=tool,
        airbrush=airbrush,
        start=start,
        end=start + minutes,
        free=start + minutes,
        piece=1,
        pieces=1,
        reason=Reason(Cause.AT_ONCE),
        cautions=cautions,
        logged=False,
    )


def set_up(kind: BenchKind, start: int, minutes: int, coating: str = "grey") -> BenchRow:
    return BenchRow(kind, "brush one", coating, "#888888", (), None, start, start + minutes)


def test_a_card_holds_all_that_is_sprayed_from_one_filling_and_its_cleaning() -> None:
    rows = (
        set_up(BenchKind.LOAD, 0, 4),
        work("Tram Clover", 4),
        work("Tram Sorrel", 11),
        set_up(BenchKind.CHANGE, 18, 6, "blue"),
        work("Tram Clover", 24, coating="blue", stage=Stage.BASE),
        set_up(BenchKind.CLEAN, 31, 8, ""),
    )
    grey, blue = cards_of(rows)
    assert [row.key.model for row in grey.rows] == ["Tram Clover", "Tram Sorrel"]
    assert (grey.start, grey.end) == (0, 18)
    assert (blue.start, blue.end) == (18, 39)  # the cleaning after it is its own
    assert grey.filling == rows[0]
    assert blue.filling == rows[3]
    assert loose_set_up(rows, (grey, blue)) == ()


def test_another_filling_of_the_same_colour_is_another_card() -> None:
    rows = (
        set_up(BenchKind.LOAD, 0, 4),
        work("Tram Clover", 4),
        set_up(BenchKind.CLEAN, 11, 8, ""),
        set_up(BenchKind.LOAD, 60, 4),
        work("Tram Sorrel", 64),
    )
    assert [card.start for card in cards_of(rows)] == [0, 60]


def test_hand_work_between_two_coats_does_not_tear_a_cup_apart() -> None:
    turn = {"airbrush": "", "coating": "", "stage": Stage.TURN, "tool": Tool.HAND}
    rows = (
        set_up(BenchKind.LOAD, 0, 4),
        work("Tram Clover", 4),
        work("Tram Clover", 11, **turn, minutes=1),
        work("Tram Sorrel", 12),
        work("Tram Sorrel", 19, **turn, minutes=1),
        work("Tram Tansy", 90, **turn, minutes=1),
    )
    cup, turns, later = cards_of(rows)
    assert [row.key.model for row in cup.rows] == ["Tram Clover", "Tram Sorrel"]
    assert [row.key.model for row in turns.rows] == ["Tram Clover", "Tram Sorrel"]
    assert [row.key.model for row in later.rows] == ["Tram Tansy"]  # more than an hour on


def test_models_with_the_same_places_share_a_block_without_empty_cells() -> None:
    rows = (
        set_up(BenchKind.LOAD, 0, 4),
        work("Snow Tractor Birch", 4),
        work("Milk Tram Clover", 11, places=("body/band", "roof/outside")),
        work("Snow Tractor Alder", 18),
    )
    (card,) = cards_of(rows)
    tractors, trams = card.blocks
    assert tractors.title == "Snow Tractor"
    assert [tractors.name_of(row) for row in tractors.rows] == ["Birch", "Alder"]
    assert tractors.columns == ("body/upper", "body/floor")
    assert trams.title == ""
    assert trams.name_of(trams.rows[0]) == "Milk Tram Clover"


@pytest.mark.parametrize(
    ("names", "shared"),
    [
        (("Snow Tractor Birch", "Snow Tractor Alder"), "Snow Tractor"),
        (("Tram", "Tram two"), ""),  # a word is left of each name
        (("Tram", "Tram"), ""),
        (("Heron", "Gull"), ""),
    ],
)
def test_the_words_that_names_share(names: tuple[str, ...], shared: str) -> None:
    assert common_words(names) == shared


def test_a_caution_stands_once_on_a_card_and_is_known_on_the_next() -> None:
    rows = (
        set_up(BenchKind.LOAD, 0, 4),
        work("Tram Clover", 4, cautions=(MIST,)),
        work("Tram Sorrel", 11, cautions=(MIST,)),
        set_up(BenchKind.CHANGE, 18, 6, "blue"),
        work("Tram Clover", 24, coating="blue", stage=Stage.BASE, cautions=(MIST,)),
    )
    first, second = cards_of(rows)
    assert first.cautions == second.cautions == (MIST,)
    assert first.told_before == frozenset()
    assert second.told_before == {MIST.text}


def test_every_row_of_a_real_sheet_is_on_one_card() -> None:
    for now in (NOW, SECOND):
        sheet = run_sheet(small_book(), small_plan(), now)
        cards = cards_of(sheet.rows)
        assert sorted(row.start for card in cards for row in card.rows) == sorted(
            row.start for row in sheet.work
        )
        mine = [one for card in cards for one in card.around]
        loose = loose_set_up(sheet.rows, cards)
        assert len(mine) + len(loose) == len(sheet.rows) - len(sheet.work)


def test_an_evening_in_figures() -> None:
    rows = (
        set_up(BenchKind.LOAD, 0, 4),
        work("Tram Clover", 4),
        work("Tram Sorrel", 11),
        set_up(BenchKind.CLEAN, 18, 8, ""),
        work("Tram Tansy", 60, coating="", airbrush="", tool=Tool.HAND, stage=Stage.TURN),
    )
    sheet = RunSheet(0, Interval(0, 120), at_date(), rows, (), (), None, ())
    answer = evening_answer(sheet, lambda _row: False)
    # By hand: 0 to 26 without a break, then 60 to 67.
    assert (answer.jobs, answer.done, answer.minutes, answer.fills) == (3, 0, 33, 1)
    half = evening_answer(replace(sheet, now=10), lambda row: row.key.model == "Tram Clover")
    # From minute 10: the second tram 11 to 18, cleaning to 26, the third 60 to 67; the cup is full.
    assert (half.jobs, half.done, half.minutes, half.fills) == (2, 1, 22, 0)


def test_two_fills_of_a_cup_count_as_two_and_two_hands_at_once_as_one_time() -> None:
    load = Load.__new__(Load)
    object.__setattr__(load, "fills", 2)
    filling = replace(set_up(BenchKind.LOAD, 0, 4), load=load)
    rows = (filling, work("A", 4), work("B", 4, airbrush="", coating="", tool=Tool.HAND))
    sheet = RunSheet(0, Interval(0, 60), at_date(), rows, (), (), None, ())
    answer = evening_answer(sheet, lambda _row: False)
    assert (answer.fills, answer.minutes) == (2, 11)


def film(model: str, since: int, opens: int | None) -> DryingFilm:
    prime = PassKey("fleet", model, "prime")
    return DryingFilm(prime, "grey", "#888888", ("body/upper",), None, since, opens, None)


def test_what_is_wet_at_the_end_is_counted_by_coats() -> None:
    films = (
        film("Clover", 5, 90),
        film("Sorrel", 5, 60),  # open on the minute at which the evening ends
        film("Tansy", 5, None),
        film("Tansy", 5, 200),  # another place of the same coat
        film("Yarrow", 70, 200),  # laid after it
    )
    sheet = RunSheet(0, Interval(0, 60), at_date(), (), films, (), None, ())
    assert evening_answer(sheet, lambda _row: False).wet == 2


def at_date() -> date:
    return moment_of(at("2031-03-06 19:30"), zone_named("Europe/Warsaw")).date()
