"""The bench sheet as paper: sizes, letters, boxes, nothing cut, nothing lost.

Pages are read by another library than the one that wrote them.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import date
from functools import cache
from pathlib import Path

import pypdfium2
import pytest
from pypdfium2 import raw
from small_book import NOW, small_book

from app.command_line import main
from app.service import demos, planning
from app.service.bench_sheet import bench_sheet
from app.service.bench_sheet_file import Paper, sheet_bytes
from app.service.planning import Planned
from planner.values.bench_time import BenchTime, Recurring
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.gear import Airbrush, Gear
from planner.values.model import Model, Part, Place
from planner.values.refusal import Refused
from planner.values.step import Application, Minutes, Stage, Step, Tool
from storage.exchange import Exchange, dump

MM = 72 / 25.4  # points
MARGIN = 14 * MM


def long_book() -> Book:
    """Return a book of one model with the longest names, and 40 steps."""
    acrylic = Coating(name="Ż" * 120, family=Family.WATERBORNE_ACRYLIC, swatch="#806040")
    places = tuple(Place(name=f"{number}{'w' * 118}") for number in range(4))
    part = Part(name="W" * 120, places=places, holder="stick")
    airbrush = Airbrush(name="M" * 120)
    steps = tuple(
        Step(
            id=f"step-{number}-{'x' * 40}",
            stage=Stage.DETAIL,
            title=f"{number} {'Q' * 190}",
            applications=(
                Application(
                    places=tuple(f"{part.name}/{place.name}" for place in places),
                    coating=acrylic.name,
                ),
            ),
            tool=Tool.AIRBRUSH if number % 8 == 0 else Tool.BRUSH,
            minutes=Minutes(fixed=20),
        )
        for number in range(40)
    )
    book = small_book()
    evenings = Recurring(rule="FREQ=DAILY", since=date(2031, 3, 6), start="18:00", end="22:00")
    project = replace(
        book.projects[0], name="P" * 120, target=None,
        models=(Model(name="G" * 120, parts=(part,), steps=steps),),
    )  # fmt: skip
    return replace(
        book,
        coatings=(acrylic,),
        mixes=(),
        gear=Gear(airbrushes=(airbrush,)),
        bench_time=BenchTime(zone="Europe/Warsaw", stretches=(evenings,)),
        projects=(project,),
    )


@cache
def planned(name: str) -> Planned:
    """Return the plan of the small book, of the long one, or of a demonstration."""
    if name in ("small", "long"):
        return planning.plan(small_book() if name == "small" else long_book(), NOW)
    book = demos.read(name).book
    return planning.plan(book, demos.first_evening(book))


@cache
def drawn(name: str, paper: Paper, tonight: bool) -> bytes:
    made = planned(name)
    return sheet_bytes(made.book, made.plan, paper, tonight=tonight)


SHEETS = [
    ("small", Paper.A4, False),
    ("small", Paper.LETTER, True),
    ("long", Paper.A4, False),
    ("club_day_batch", Paper.A4, True),
]
every_sheet = pytest.mark.parametrize(("name", "paper", "tonight"), SHEETS)


def pages(data: bytes) -> Iterator[pypdfium2.PdfPage]:
    with closing(pypdfium2.PdfDocument(data)) as document:
        for number in range(len(document)):
            with closing(document[number]) as page:
                yield page


def close(text: str) -> str:
    """Return text without blanks and breaks, and without hyphens, which may end a line."""
    return "".join(text.split()).replace("-", "").replace("\ufffe", "")


def text_of(data: bytes) -> str:
    """Return the text of all pages, `close`."""
    found = []
    for page in pages(data):
        with closing(page.get_textpage()) as text:
            found.append(text.get_text_range())
    return close("".join(found))


def boxes(data: bytes) -> Iterator[tuple[str, tuple[float, float, float, float]]]:
    """Yield each sign that is not blank, with left, bottom, right and top [pt]."""
    for page in pages(data):
        with closing(page.get_textpage()) as text:
            whole = text.get_text_range()
            if len(whole) != text.count_chars():
                continue  # signs beyond the basic plane; none are in these books
            for at, sign in enumerate(whole):
                if not sign.isspace():
                    yield sign, text.get_charbox(at)


@every_sheet
def test_pages_are_of_the_size_asked_for(name: str, paper: Paper, tonight: bool) -> None:
    # A4: 210 mm × 297 mm (ISO 216); Letter: 8.5 in × 11 in (ANSI/ASME Y14.1, size A).
    wanted = (210 * MM, 297 * MM) if paper is Paper.A4 else (8.5 * 72, 11 * 72)
    sizes = {page.get_size() for page in pages(drawn(name, paper, tonight))}
    assert len(sizes) == 1
    assert sizes.pop() == pytest.approx(wanted, abs=0.6)


@every_sheet
def test_every_word_can_be_taken_out_again(name: str, paper: Paper, tonight: bool) -> None:
    made = planned(name)
    sheet = bench_sheet(made.book, made.plan, made.plan.now, tonight=tonight)
    text = text_of(drawn(name, paper, tonight))
    said = [sheet.title, *sheet.lines]
    for evening in sheet.evenings:
        said += [evening.title]
        said += [line for section in evening.sections for line in (section.title, *section.lines)]
        for entry in evening.entries:
            said += [entry.at, f"{entry.minutes} min", entry.title, entry.waits]
            said += [laid.text for laid in entry.laid]
            said += [place for _, places in entry.places for place in places]
    assert len(said) > 10
    for line in said:
        assert close(line) in text, line


@every_sheet
def test_nothing_is_cut_at_the_edge(name: str, paper: Paper, tonight: bool) -> None:
    wide, high = next(page.get_size() for page in pages(drawn(name, paper, tonight)))
    signs = list(boxes(drawn(name, paper, tonight)))
    assert len(signs) > 200
    for sign, (left, bottom, right, top) in signs:
        assert left >= MARGIN - 2, sign
        assert bottom >= MARGIN - 2, sign
        assert right <= wide - MARGIN + 2, sign
        assert top <= high - MARGIN + 2, sign


@every_sheet
def test_no_line_is_written_over_another(name: str, paper: Paper, tonight: bool) -> None:
    """The middle of a sign lies in no other sign of the same page."""
    for page in pages(drawn(name, paper, tonight)):
        with closing(page.get_textpage()) as text:
            signs = [text.get_charbox(at) for at in range(text.count_chars())]
        signs = [box for box in signs if box[2] - box[0] > 1 and box[3] - box[1] > 1]
        rows: dict[int, list[tuple[float, float, float, float]]] = {}
        for box in signs:
            for row in range(int(box[1] // 10), int(box[3] // 10) + 1):
                rows.setdefault(row, []).append(box)
        for box in signs:
            x, y = (box[0] + box[2]) / 2, (box[1] + box[3]) / 2
            over = [
                row
                for row in rows.get(int(y // 10), [])
                if row != box and row[0] < x < row[2] and row[1] < y < row[3]
            ]
            assert not over, (page, box)


def test_letters_are_read_at_arms_length() -> None:
    # ISO 9241-3: at least 16 minutes of arc (from memory); at 60 cm that is
    # 600 mm × tan(16/60 °) = 2.79 mm. Figures are as high as capitals.
    heights = [
        top - bottom
        for sign, (_, bottom, _, top) in boxes(drawn("small", Paper.LETTER, True))
        if sign in "0123456789"
    ]
    heights.sort()
    assert heights[len(heights) // 2] >= 2.79 * MM


@pytest.mark.parametrize(("name", "tonight"), [("small", True), ("small", False)])
def test_there_is_a_box_for_each_thing_and_each_place(name: str, tonight: bool) -> None:
    paper = Paper.LETTER if tonight else Paper.A4
    made = planned(name)
    sheet = bench_sheet(made.book, made.plan, made.plan.now, tonight=tonight)
    entries = [entry for evening in sheet.evenings for entry in evening.entries]
    places = sum(len(names) for entry in entries for _, names in entry.places)
    squares = 0
    for page in pages(drawn(name, paper, tonight)):
        for thing in page.get_objects(filter=[raw.FPDF_PAGEOBJ_PATH]):
            left, bottom, right, top = thing.get_bounds()
            wide, high = right - left, top - bottom
            corners = raw.FPDFPath_CountSegments(thing.raw)
            squares += corners <= 5 and abs(wide - high) < 0.2 and 8 < wide < 14
    assert (places > 3) is tonight  # all evenings together have one line for each job
    assert squares == len(entries) + places


def test_tonight_is_one_evening_and_the_project_is_all() -> None:
    tonight, whole = (drawn("small", *rest) for rest in ((Paper.LETTER, True), (Paper.A4, False)))
    assert "Thu6Mar203119:30" in text_of(tonight)
    assert "Thu13Mar203119:30" not in text_of(tonight)
    assert "Thu13Mar203119:30" in text_of(whole)
    assert "2:3ofsand:waterthinner" in text_of(whole)


@every_sheet
def test_the_picture_is_on_the_page(name: str, paper: Paper, tonight: bool) -> None:
    """Drying is drawn in a blue of its own; letters, boxes and rules are black and grey."""
    blue = 0
    for page in pages(drawn(name, paper, tonight)):
        with closing(page.render(scale=0.5)) as picture:
            pixels = picture.to_numpy().astype(int)
        blue += int(((pixels[..., 0] - pixels[..., 2]) > 20).sum())  # BGR
    assert blue > 50


def test_tonight_of_twelve_vehicles_fits_one_sheet_of_paper_on_both_sides() -> None:
    assert sum(1 for _ in pages(drawn("club_day_batch", Paper.A4, True))) <= 2


def test_an_empty_plan_says_so() -> None:
    book = replace(small_book(), projects=())
    made = planning.plan(book, NOW)
    assert "Nothingtodo" in text_of(sheet_bytes(made.book, made.plan))


def test_a_missing_library_is_told_in_one_line(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    fault = "libEGL.so.1: cannot open shared object file: No such file or directory"
    stub = tmp_path / "PySide6"
    stub.mkdir()
    (stub / "__init__.py").write_text(f"raise ImportError({fault!r})", encoding="utf-8")
    monkeypatch.setenv("PYTHONPATH", str(tmp_path))
    made = planned("small")
    with pytest.raises(Refused) as refused:
        sheet_bytes(made.book, made.plan)
    assert fault in str(refused.value)
    assert "README" in str(refused.value)
    assert "\n" not in str(refused.value)
    assert sys.modules["PySide6"].__file__  # ours is untouched


def test_the_command_draws_it_without_a_display(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    source, path = tmp_path / "yard.json", tmp_path / "sheet.pdf"
    source.write_bytes(dump(Exchange(small_book())))
    words = ["export", source, "--sheet", path, "--tonight", "--paper", "Letter"]
    assert main([*map(str, words), "--now", "2031-03-06T19:30"]) == 0
    assert capsys.readouterr().out == f"{path} written\n"
    assert text_of(path.read_bytes()) == text_of(drawn("small", Paper.LETTER, True))


def test_the_sheet_speaks_another_language() -> None:
    made = planned("small")
    text = text_of(sheet_bytes(made.book, made.plan, tonight=True, language="de"))
    for word in ("GeplantDo.6.März2031", "BleibtzumTrocknen", "Vorsicht"):
        assert word in text
    assert "Planned" not in text
