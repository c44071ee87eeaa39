"""The build record, read by a strict parser of HTML and by a parser of Markdown."""

from __future__ import annotations

from base64 import b64decode
from dataclasses import replace
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import html5lib
import pytest
from logged_book import LOST, PHOTO, logged_book, photos_in, png
from markdown_it import MarkdownIt
from small_book import CART, PROJECT, at, small_book

from app.service.build_record import build_record
from app.service.document_html import html_of
from app.service.document_markdown import markdown_of
from planner.values.book import Book
from planner.values.refusal import Refused

NOW = at("2031-03-21 12:00")
HTML = "{http://www.w3.org/1999/xhtml}"


def page_of(book: Book, photos: Path, only: str = "") -> Any:
    """Return the page as a tree; any fault in it is an error of the parser."""
    data = html_of(build_record(book, NOW, photos, only=only))
    parser = html5lib.HTMLParser(strict=True)
    return parser.parse(data.decode())


def photographs(page: Any) -> list[Any]:
    """Return the pictures that are no drawings of ours."""
    return [one for one in page.iter(f"{HTML}img") if "svg" not in one.get("src")]


def cells(page: Any) -> list[str]:
    return ["".join(cell.itertext()) for cell in page.iter(f"{HTML}td")]


def text_of(page: Any) -> str:
    return "".join(page.find(f"{HTML}body").itertext())


def test_the_record_tells_what_was_done_when_and_with_what(tmp_path: Path) -> None:
    page = page_of(logged_book(), photos_in(tmp_path / "b.photos"))
    told = cells(page)
    for cell in (
        "19:33",
        CART,
        "prime, airbrush",
        "grey primer on tub/bed, tub/sides",
        "25 (planned 10)",
        "21.5 °C, 48 % RH",
        "2.25 ml grey primer; 0.5 ml water thinner",
        "ran at the edge",
        "under way",
        "waterborne acrylic; mix 2 : 3 of sand : water thinner",
        "still tacky",
        "box was cold",
        "bought tape",
        "not yet",
    ):
        assert cell in told, cell
    days = ["".join(one.itertext()) for one in page.iter(f"{HTML}h3")]
    assert days == [
        "Thu 6 Mar 2031, 25 min of work",
        "Thu 13 Mar 2031, 12 min of work",
        "Thu 20 Mar 2031, 0 min of work",
    ]


def test_the_sum_of_the_work_is_what_was_written_down(tmp_path: Path) -> None:
    told = cells(page_of(logged_book(), tmp_path))
    assert told[told.index("work") + 1] == "37 min on 3 days"  # 25 as written, 12 by the clock
    assert told[told.index("reckoned") + 1] == "2 entries from start to end"
    assert told[told.index("done") + 1] == "3 coats and pieces of work, 2 not logged"


def test_what_to_do_differently_is_what_went_wrong_and_what_took_longer(tmp_path: Path) -> None:
    page = page_of(logged_book(), tmp_path)
    points = ["".join(one.itertext()) for one in page.iter(f"{HTML}li")]
    assert points == [
        "still tacky: cart/sand: box was cold",
        "cart, prime took 25 min where 10 were planned",
    ]


def test_photos_are_in_the_page_and_missing_ones_are_named(tmp_path: Path) -> None:
    page = page_of(logged_book(), photos_in(tmp_path / "b.photos"))
    (image,) = photographs(page)
    head, _, data = image.get("src").partition(",")
    assert head == "data:image/png;base64"
    assert b64decode(data) == png()
    assert image.get("alt") == "cart, prime, Thu 6 Mar 2031"  # what, how far, and when
    assert f"Photo {LOST} is missing from b.photos." in text_of(page)


def test_a_photo_that_is_no_picture_is_not_embedded(tmp_path: Path) -> None:
    folder = photos_in(tmp_path / "b.photos")
    (folder / PHOTO).write_bytes(b"<svg onload='alert(1)'>")
    page = page_of(logged_book(), folder)
    assert photographs(page) == []
    assert "cannot show" in text_of(page)


def test_the_page_needs_nothing_and_runs_nothing(tmp_path: Path) -> None:
    page = page_of(logged_book(), photos_in(tmp_path / "b.photos"))
    names = {element.tag.removeprefix(HTML) for element in page.iter() if element.tag is not None}
    assert not names & {"script", "link", "iframe", "object", "embed", "form", "a", "base"}
    for element in page.iter():
        for name, value in element.attrib.items():
            assert not name.startswith("on")
            assert name not in ("href", "srcset", "action", "style")
            assert name != "src" or value.startswith("data:image/")
    policy = [one.get("content") for one in page.iter(f"{HTML}meta") if one.get("http-equiv")]
    assert policy == ["default-src 'none'; img-src data:; style-src 'unsafe-inline'"]


def test_one_project_or_all_that_have_something_to_tell(tmp_path: Path) -> None:
    book = logged_book()
    idle = replace(book.projects[0], name="idle", log=(), diary=(), observed=())
    second = replace(book.projects[0], name="second")
    book = replace(book, projects=(*book.projects, idle, second))
    page = page_of(book, tmp_path)
    heads = ["".join(one.itertext()) for one in page.iter(f"{HTML}h2")]
    assert heads == [PROJECT, "second"]
    alone = page_of(book, tmp_path, only="idle")
    assert "".join(next(alone.iter(f"{HTML}h1")).itertext()) == "idle"
    with pytest.raises(Refused, match="no project"):
        build_record(book, NOW, tmp_path, only="idel")


def test_nothing_logged_is_said(tmp_path: Path) -> None:
    assert "Nothing has been logged yet." in text_of(page_of(small_book(), tmp_path))


def test_markdown_says_the_same(tmp_path: Path) -> None:
    record = build_record(logged_book(), NOW, photos_in(tmp_path / "b.photos"))
    source = markdown_of(record).decode()
    html = MarkdownIt("commonmark").enable("table").render(source)
    page = html5lib.HTMLParser(strict=True).parse(f"<!DOCTYPE html><title>x</title>{html}")
    mine = [" ".join(cell.split()) for cell in cells(page)]
    theirs = page_of(logged_book(), tmp_path / "b.photos")
    assert mine == [" ".join(cell.split()) for cell in cells(theirs)]
    (image,) = photographs(page)
    assert b64decode(image.get("src").partition(",")[2]) == png()


def test_each_coating_has_its_swatch_beside_it(tmp_path: Path) -> None:
    book = logged_book()
    data = html_of(build_record(book, NOW, tmp_path / "b.photos")).decode()
    primer = book.coating("grey primer").swatch
    assert f".c{primer[1:]} {{ background: {primer}; }}" in data
    assert f'<span class="swatch c{primer[1:]}"></span>' in data


def test_each_model_has_its_face_in_its_present_coats(tmp_path: Path) -> None:
    """The outline is well-formed XML and filled with the primer that the log has laid."""
    book = logged_book()
    page = page_of(book, tmp_path / "b.photos")
    faces = [one for one in page.iter(f"{HTML}img") if "svg" in one.get("src")]
    project = book.project(PROJECT)
    assert len(faces) == len(project.models)
    for image, model in zip(faces, project.models, strict=True):
        assert image.get("alt").startswith(f"{model.name}: ")
        drawn = ElementTree.fromstring(b64decode(image.get("src").partition(",")[2]))
        fills = {shape.get("fill") for shape in drawn}
        laid = {book.coating(name).swatch for name in ("grey primer", "sand")}
        assert fills & laid


def test_the_coat_of_each_line_of_work_has_its_swatch(tmp_path: Path) -> None:
    book = logged_book()
    primer = book.coating("grey primer").swatch
    page = page_of(book, tmp_path / "b.photos")
    found = [
        cell
        for cell in page.iter(f"{HTML}td")
        if "".join(cell.itertext()).startswith("grey primer on ")
    ]
    assert found
    assert all(cell[0].get("class") == f"swatch c{primer[1:]}" for cell in found)


def test_swatches_are_printed_and_the_sheet_is_white(tmp_path: Path) -> None:
    """Browsers leave backgrounds off paper unless told so (CSS Color Adjustment 1, 3.2)."""
    data = html_of(build_record(logged_book(), NOW, tmp_path)).decode()
    printed = data.partition("@media print")[2]
    assert "print-color-adjust: exact" in printed
    assert "--paper: #fff" in printed
