"""Tonight as a page for a phone, read by an independent parser; and the evening by loads."""

from __future__ import annotations

import json
import re
from functools import cache

import html5lib
import pytest

from app.service import demos, planning
from app.service.tonight_loads import load_cards
from app.service.tonight_page import SCRIPT, tonight_page
from planner.tonight import BenchRow, WorkRow, run_sheet
from planner.values.book import Book
from planner.values.plan import Plan


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


def test_cards_hold_every_piece_of_work_once_with_the_fill_that_serves_it() -> None:
    book, plan, now = evening("club_day_batch")
    rows = run_sheet(book, plan, now).rows
    cards, rest = load_cards(rows)
    work = [row for card in cards for row in card.work]
    assert sorted(work, key=rows.index) == [row for row in rows if isinstance(row, WorkRow)]
    for card in cards:
        for row in card.work:
            if card.fill is not None and row.airbrush:
                assert card.fill.coating in [coat.coating for coat in row.coats]
    assert all(isinstance(row, BenchRow) for row in rest)
    assert [card.start for card in cards] == sorted(card.start for card in cards)
