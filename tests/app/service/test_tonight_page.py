"""Tonight as a page for a phone, read by an independent parser; and the evening by loads."""

from __future__ import annotations

import json
import re
from functools import cache

import html5lib
import pytest

from app.service import demos, planning, run_sheet_text, wording
from app.service.bench_sheet import bench_sheet
from app.service.tonight_page import SCRIPT, tonight_page
from planner.quantity import Load, MixMeasure
from planner.tonight import SheetCoat, WorkRow, cards_of, run_sheet
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.plan import Cause, PassKey, Plan, Reason
from planner.values.step import Stage, Tool


@cache
def evening(name: str = "lone_lamplighter") -> tuple[Book, Plan, int]:
    book = demos.read(name).book
    now = demos.first_evening(book)
    return book, planning.plan(book, now).plan, now


def parsed(data: bytes):
    parser = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False)
    return parser.parse(data)


def test_the_page_is_sound_and_needs_nothing_but_itself() -> None:
    data = tonight_page(*evening())
    page = parsed(data)
    for node in page.iter():
        assert not {"src", "href", "action"} & set(node.attrib)
        assert node.tag not in ("link", "img", "iframe", "form")
    policy = next(
        meta.attrib["content"]
        for meta in page.iter("meta")
        if meta.attrib.get("http-equiv") == "Content-Security-Policy"
    )
    assert policy.startswith("default-src 'none'")
    assert re.search(r"https?://", data.decode().replace(SCRIPT, "")) is None


def test_every_place_of_tonight_has_a_box_of_its_own() -> None:
    book, plan, now = evening()
    sheet = run_sheet(book, plan, now)
    boxes = [
        node.attrib["data-place"] for node in parsed(tonight_page(book, plan, now)).iter("input")
    ]
    assert len(boxes) == sum(len(row.places) for row in sheet.work)
    assert len(set(boxes)) == len(boxes)


def test_each_film_that_opens_carries_its_minute() -> None:
    book, plan, now = evening()
    wanted = sorted(film.opens for film in run_sheet(book, plan, now).drying if film.opens)
    found = [
        int(node.attrib["data-opens"])
        for node in parsed(tonight_page(book, plan, now)).iter("li")
        if "data-opens" in node.attrib
    ]
    assert found == wanted


def test_names_cannot_break_out_of_the_page(monkeypatch: pytest.MonkeyPatch) -> None:
    nasty = "</script><script>alert(1)</script>"
    data = tonight_page(*evening(), translate=lambda text: f"{text}{nasty}")
    page = parsed(data)
    scripts = list(page.iter("script"))
    assert len(scripts) == 2
    told = json.loads(scripts[0].text)
    assert told["words"]["ready"].endswith(nasty)
    assert scripts[1].text == SCRIPT


def test_paper_page_and_terminal_have_the_cards_of_the_window() -> None:
    """What begins a card is the same everywhere; the page names each card, paper ticks it."""
    book, plan, now = evening("club_day_batch")
    sheet = run_sheet(book, plan, now)
    cards = cards_of(sheet.rows)
    zone = zone_named(book.bench_time.zone)
    clocks = [wording.clock_time(card.start, zone) for card in cards]
    page = parsed(tonight_page(book, plan, now))
    sections = [
        section for section in page.iter("section") if next(section.iter("input"), None) is not None
    ]
    assert ["".join(section[1].itertext())[:5] for section in sections] == clocks
    places = [sum(len(row.places) for row in card.rows) for card in cards]
    assert [len(list(section.iter("input"))) for section in sections] == places
    (paper,) = bench_sheet(book, plan, now, tonight=True).evenings
    assert [entry.at for entry in paper.entries if entry.work] == clocks
    models = [[row.key.model for row in card.rows] for card in cards]
    assert [
        [next(name for name in each if name in head) for head, _ in entry.places]
        for entry, each in zip((one for one in paper.entries if one.work), models, strict=True)
    ] == models
    told = run_sheet_text.run_sheet_text(sheet, book).partition("\nDrying")[0]
    blocks = told.split("\n\n")[1 : len(cards) + 1]
    assert [block.partition("\n")[0][:5] for block in blocks] == clocks
    assert [block.count("[ ]") for block in blocks] == places
    assert sorted(row.start for card in cards for row in card.rows) == sorted(
        row.start for row in sheet.work
    )


def put_out_for(model: str, ml: float, drops: tuple[int, int]) -> WorkRow:
    names = ("umber", "thinner")
    load = Load(
        airbrush="", colour="wash", start=0, end=5, passes=(), shares_ml=(ml,), lost_ml=0, ml=ml,
        fills=1, complete=True, least_fill=False, life_minutes=None, mixed=True,
        measures=tuple(
            MixMeasure(name, 1, count * 0.05, count)
            for name, count in zip(names, drops, strict=True)
        ),
    )  # fmt: skip
    return WorkRow(
        key=PassKey("fleet", model, "wash"), stage=Stage.WASH, title="", parts=("body",),
        coats=(SheetCoat("wash", "#604020", (), ("body/upper",), load),), places=("body/upper",),
        tool=Tool.BRUSH, airbrush="", start=0, end=5, free=5, piece=1, pieces=1,
        reason=Reason(Cause.AT_ONCE), cautions=(), logged=False,
    )  # fmt: skip


def test_what_is_put_out_by_hand_is_summed_for_the_whole_card() -> None:
    """By hand: 0.2 ml of 1 + 3 drops and 0.3 ml of 2 + 4 are 0.5 ml of 3 + 7."""
    (card,) = cards_of([put_out_for("Heron", 0.2, (1, 3)), put_out_for("Gull", 0.3, (2, 4))])
    assert run_sheet_text.put_out(card, "wash") == [
        "put out 0.5 ml in all: 3 drops umber, 7 drops thinner"
    ]
