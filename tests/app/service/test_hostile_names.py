"""Names and notes that would run, calculate or read otherwise stay text in all that goes out."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import Any

import html5lib
import pytest
import vobject
from logged_book import logged_book, moment
from markdown_it import MarkdownIt
from small_book import NOW

from app.service import csv_export, planning
from app.service.bench_sheet import bench_sheet
from app.service.build_record import build_record
from app.service.calendar_file import calendar_bytes
from app.service.document_html import html_of
from app.service.document_markdown import markdown_of
from app.service.sanitize_text import TURNING, tame
from planner.values.book import Book
from planner.values.project import Event, Happened
from planner.values.step import Stage
from planner.values.supplies import Consumable, Supplies
from storage.exchange import Exchange, dump, load

HTML = "{http://www.w3.org/1999/xhtml}"
LONG = "x" * 9_990 + " the end."
# No "/" in names: it separates part and place. Turning signs are refused in names.
NAMES = [
    "<script>alert(1)<script>",
    '"><img src=x onerror=alert(1)>',
    "=cmd()",
    "@SUM(A1:A9)",
    "+1 [a](javascript:alert(1))",
    "- ![p](x) `code` **bold** | cell",
    "1. &lt;b&gt; &amp; <!-- x -->",
    "END:VEVENT;X=1,\\n",
    "ﬁne שלום żółć 模型",
]
TEXTS = [
    "</td></table></style></script><script>alert(1)</script>",
    "=1+1\n=2+2\r\n@A1",
    "\u202etxt.exe\u2066 \u200fגוף",
    "a\x00b\x07c\x1b[31m\x85d\u2028e",
    "BEGIN:VALARM\r\nEND:VEVENT",
    "http://www.example.org <http://example.org> www.example.org",
    "# head\n> quote\n---\n| a | b |\n|---|---|",
    LONG,
]

OUTLINE = "data:image/svg+xml;base64,"


def spiked(name: str, text: str) -> Book:
    """Return the logged book with a name and a text wherever one may stand."""
    book = logged_book()
    project = book.projects[0]
    model = project.models[0]
    steps = tuple(replace(step, title=text[:200]) for step in model.steps)
    project = replace(
        project,
        name=name,
        models=(replace(model, name=name, steps=steps),),
        log=tuple(replace(fact, model=name, note=text) for fact in project.log),
        observed=tuple(replace(seen, model=name) for seen in project.observed),
        diary=(
            Happened(at=moment("2031-03-14 08:00"), event=Event.DROPPED, text=text[:2000]),
        ),
        note=text,
    )  # fmt: skip
    return replace(book, projects=(project,))


SPIKED = [(name, TEXTS[at % len(TEXTS)]) for at, name in enumerate(NAMES)]
SPIKED += [("cart", text) for text in TEXTS]
each = pytest.mark.parametrize(("name", "text"), SPIKED, ids=range(len(SPIKED)))


def shown(text: str) -> str:
    """Return what is to be read of a text: its signs, without blanks and control characters."""
    return "".join(tame(text).split())


def record_of(book: Book) -> Any:
    return build_record(book, NOW, Path("no photos"))


def elements(page: Any) -> Iterator[tuple[str, dict[str, str]]]:
    for element in page.iter():
        if isinstance(element.tag, str):
            yield element.tag.removeprefix(HTML), dict(element.attrib)


@each
def test_the_page_shows_it_and_nothing_runs(name: str, text: str) -> None:
    data = html_of(record_of(spiked(name, text))).decode()
    page = html5lib.HTMLParser(strict=True).parse(data)
    plain = html5lib.HTMLParser(strict=True).parse(html_of(record_of(logged_book())).decode())
    assert {tag for tag, _ in elements(page)} <= {tag for tag, _ in elements(plain)} | {"bdi"}
    for tag, held in elements(page):
        assert re.fullmatch(r"|photos|faces|swatch c[0-9a-f]{6}", held.pop("class", ""))
        if tag.endswith("img"):  # an outline of ours, which holds no text
            assert held.pop("src").startswith(OUTLINE)
            assert shown(name) in shown(held.pop("alt"))
        assert set(held) <= {"lang", "charset", "http-equiv", "content", "name", "scope"}
    body = "".join("".join(page.find(f"{HTML}body").itertext()).split())
    assert shown(name) in body
    assert shown(text) in body
    assert not set(data) & TURNING


@each
def test_markdown_shows_it_and_makes_nothing_of_it(name: str, text: str) -> None:
    source = markdown_of(record_of(spiked(name, text))).decode()
    tokens = MarkdownIt("gfm-like", {"linkify": False}).parse(source)
    every = [one for token in tokens for one in (token, *(token.children or ()))]
    drawn = [one for one in every if one.type == "image"]
    assert all(one.attrGet("src").startswith(OUTLINE) for one in drawn)
    every = [one for one in every if one not in drawn]
    assert not {one.type for one in every} & {
        "html_block", "html_inline", "link_open", "image", "code_inline", "fence", "code_block",
        "strong_open", "blockquote_open", "hr", "s_open", "ordered_list_open",
    }  # fmt: skip
    whole = "".join("".join(one.content for one in every if one.type == "text").split())
    assert shown(name) in whole
    assert shown(text) in whole
    tables = sum(one.type == "table_open" for one in every)
    plain = MarkdownIt("gfm-like", {"linkify": False}).parse(
        markdown_of(record_of(logged_book())).decode()
    )
    assert tables == sum(one.type == "table_open" for one in plain)


def plan_table(book: Book) -> bytes:
    planned = planning.plan(book, NOW)
    return csv_export.csv_bytes(planned.plan, planned.book)


def shopping_table(book: Book) -> bytes:
    tape = Consumable(name=book.projects[0].name, unit="@m", per_pass=1, stages=tuple(Stage))
    project = replace(book.projects[0], log=(), observed=())
    book = replace(book, projects=(project,), supplies=Supplies(consumables=(tape,)))
    return csv_export.shopping_bytes(book, planning.plan(book, NOW).plan, NOW)


@each
@pytest.mark.parametrize("written", [plan_table, csv_export.log_bytes, shopping_table])
def test_no_cell_of_a_table_calculates(
    name: str, text: str, written: Callable[[Book], bytes]
) -> None:
    rows = list(csv.reader(io.StringIO(written(spiked(name, text)).decode(), newline="")))
    assert len({len(row) for row in rows}) == 1
    cells = [cell for row in rows for cell in row]
    assert not [cell for cell in cells if cell.startswith(("=", "+", "-", "@", "\t", "\r"))]
    assert shown(name) in {"".join(cell.split()).removeprefix("'") for cell in cells}
    assert not set("".join(cells)) & (TURNING | {"\x00", "\x1b"})


def calendar(book: Book) -> bytes:
    planned = planning.plan(book, NOW)
    return calendar_bytes(planned.book, planned.plan, NOW, Path("x")).data


@cache
def plain_calendar() -> bytes:
    return calendar(logged_book())


@each
def test_the_calendar_keeps_its_shape(name: str, text: str) -> None:
    data = calendar(spiked(name, text))
    read = vobject.readOne(data.decode())
    plain = vobject.readOne(plain_calendar().decode())
    assert len(read.vevent_list) == len(plain.vevent_list)
    for mine, theirs in zip(read.vevent_list, plain.vevent_list, strict=True):
        assert [one.name for one in mine.getChildren()] == [
            one.name for one in theirs.getChildren()
        ]
    told = "".join("".join(one.description.value.split()) for one in read.vevent_list)
    assert shown(name) in told
    assert shown(text[:200]) in told
    signs = {chr(number) for number in range(32)} - {"\n", "\r"}
    assert not set(data.decode()) & (TURNING | signs)


@each
def test_the_bench_sheet_shows_it(name: str, text: str) -> None:
    planned = planning.plan(spiked(name, text), NOW)
    sheet = bench_sheet(planned.book, planned.plan, NOW)
    titles = [entry.title for evening in sheet.evenings for entry in evening.entries if entry.work]
    assert titles
    for title in titles:
        assert shown(name) in shown(title)
        assert title.isprintable()


@each
def test_the_exchange_file_brings_it_back_unchanged(name: str, text: str) -> None:
    text = text.replace("\x00", "")  # that is refused in any text that comes in
    book = spiked(name, text)
    data = dump(Exchange(book, text))
    assert load(data) == Exchange(book, text)


@pytest.mark.parametrize("text", TEXTS)
def test_tame_text_is_tame_and_stays_so(text: str) -> None:
    assert tame(tame(text)) == tame(text)
    assert all(sign == "\n" or sign.isprintable() or sign == "\u2028" for sign in tame(text))
    assert "\n" not in tame(text, lines=False)


def test_letters_of_every_script_stay() -> None:
    for text in ("żółć", "שלום", "模型", "مرحبا", "👩‍🎨", "e\u0301", "½ × ′"):
        assert tame(text) == text
