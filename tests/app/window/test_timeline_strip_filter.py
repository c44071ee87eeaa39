"""Some of the strip only, stretches to let go at, where things stood, and the strip on paper."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pypdfium2
import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage, QPainter
from small_book import NOW, PROJECT, at, key, small_book

from app.window.plan_snapshot import PlanSnapshot, picture_of
from app.window.timeline.drop_targets import slot_at, slots
from app.window.timeline.filter_bar import FilterBar
from app.window.timeline.geometry import Scale
from app.window.timeline.outline import outline
from app.window.timeline.print_pages import paint_strip, write_strip
from app.window.timeline.spatial_index import SIDE, Index, together
from app.window.timeline.strip_filter import Sieve, sift
from app.window.timeline.view import TimelineView
from planner.values.coating import State, StateTime
from planner.values.step import Tool


def two_carts() -> PlanSnapshot:
    """Return a plan of the cart and another like it, on three evenings.

    The primer's label lets no coat follow before the evening is over, and
    the gloss has to dry before the wash.
    """
    book = small_book()
    label = StateTime(state=State.DRY_TO_RECOAT, minutes=120)
    coatings = (
        replace(coating, times=(label,)) if coating.name == "grey primer" else coating
        for coating in book.coatings
    )
    book = replace(book, coatings=tuple(coatings))
    project = book.project(PROJECT)
    van = replace(project.models[0], name="van")
    return picture_of(
        replace(book, projects=(replace(project, models=(*project.models, van)),)), NOW
    )


@pytest.fixture(scope="module")
def picture() -> PlanSnapshot:
    return two_carts()


@pytest.mark.parametrize(
    ("sieve", "steps"),
    [
        (Sieve(), {"prime", "sand", "gloss", "wash", "wipe"}),
        (Sieve(tool=Tool.CLOTH), {"wipe"}),
        (Sieve(coating="dark oil"), {"wash"}),
        (Sieve(model="van", tool=Tool.AIRBRUSH), {"prime", "sand", "gloss"}),
        (Sieve(project="elsewhere"), set()),
    ],
)
def test_only_what_goes_through_is_shown(
    picture: PlanSnapshot, sieve: Sieve, steps: set[str]
) -> None:
    strip = sift(picture.strip, sieve)
    assert {piece.key.step for piece in strip.pieces} == steps
    wanted = {sieve.model} if sieve.model else ({"cart", "van"} if steps else set())
    assert {lane.model for lane in strip.lanes} == wanted
    assert [lane.index for lane in strip.lanes] == list(range(len(strip.lanes)))
    for piece in (*strip.pieces, *strip.wedges, *strip.brackets):
        lanes = piece.lanes if hasattr(piece, "lanes") else (piece.lane,)
        assert all(0 <= lane < len(strip.lanes) for lane in lanes)


def test_columns_without_what_is_shown_are_folded_but_can_be_dropped_on(
    picture: PlanSnapshot,
) -> None:
    strip = sift(picture.strip, Sieve(model="van", coating="dark oil"))
    # Between tonight and the wash lies an evening of other work.
    assert len(strip.columns) < len(picture.strip.columns)
    scale = Scale(strip.columns, 2)
    there = {slot.interval for slot in slots(strip, scale)}
    last = strip.columns[-1].interval
    between = {c.interval for c in picture.strip.columns if c.interval.start < last.end}
    assert between <= there


def test_every_stretch_from_now_on_can_be_hit(picture: PlanSnapshot) -> None:
    strip = replace(picture.strip, now=at("2031-03-07 00:00"))
    scale = Scale(strip.columns, 2)
    found = slots(strip, scale)
    assert found[0].interval.start > strip.now  # the first Thursday is past
    assert all(item.right > item.left for item in found)
    thursdays = [(item.interval.start - NOW) / 10080 for item in found]
    assert thursdays == [1, 2, *range(3, 3 + len(found) - 2)]  # week after week, none left out
    for item in found:
        assert slot_at(found, (item.left + item.right) / 2) == item
    assert slot_at(found, -50) is None


def test_the_bar_offers_what_the_plan_holds_and_keeps_the_choice(
    qtbot, picture: PlanSnapshot
) -> None:
    bar = FilterBar()
    qtbot.addWidget(bar)
    bar.show_strip(picture.strip)
    assert bar.sieve == Sieve()
    assert not bar.everything.isEnabled()
    bar.models.setCurrentIndex(bar.models.findText("van"))
    bar.tools.setCurrentIndex(bar.tools.findText("Brush"))
    assert bar.sieve == Sieve(project=PROJECT, model="van", tool=Tool.BRUSH)
    bar.show_strip(picture.strip)
    assert bar.sieve.model == "van"
    with qtbot.waitSignal(bar.changed):
        bar.everything.click()
    assert bar.sieve == Sieve()


def test_where_work_stood_before_is_outlined_and_said(qtbot, picture: PlanSnapshot) -> None:
    view = TimelineView()
    qtbot.addWidget(view)
    view.resize(900, 420)
    view.show_strip(picture.strip)
    before = {key("gloss"): at("2031-03-06 20:45")}
    view.compare(before)
    (ghost,) = view.arrangement.ghosts
    scale = view.arrangement.scale
    assert ghost.left == scale.x(at("2031-03-06 20:45"))
    said = [
        below.what
        for column in outline(picture.strip, before)
        for line in column.below
        for below in line.below
        if line.key == key("gloss")
    ]
    assert "stood here before the last change" in said
    view.compare({})
    assert view.arrangement.ghosts == ()


def test_each_thing_lies_in_the_squares_that_it_touches(qtbot, picture: PlanSnapshot) -> None:
    view = TimelineView()
    qtbot.addWidget(view)
    view.show_strip(picture.strip)
    arrangement = view.arrangement
    index = Index(arrangement)
    for number, box in enumerate(arrangement.boxes):
        spot = (int(box.left // SIDE), int(box.middle // SIDE))
        assert number in index.at(*spot).boxes
    seen = together(index.at(*spot) for spot in index.squares)
    assert seen.boxes == list(range(len(arrangement.boxes)))
    assert seen.names == list(range(len(arrangement.names)))
    total = {number for spot in index.squares for number in index.at(*spot).boxes}
    assert total == set(range(len(arrangement.boxes)))


def test_the_strip_on_paper_has_every_date_and_every_model(
    qtbot, picture: PlanSnapshot, tmp_path: Path
) -> None:
    path = tmp_path / "strip.pdf"
    pages = write_strip(path, picture)
    document = pypdfium2.PdfDocument(path)
    assert len(document) == pages
    text = " ".join(page.get_textpage().get_text_range() for page in document)
    document.close()
    for wanted in (
        "cart",
        "van",
        "Thu 6 Mar",
        "oil wash",
        "wipe back",
        f"page {pages} of {pages}",
    ):
        assert wanted in text
    with pytest.raises(FileNotFoundError):
        write_strip(tmp_path / "none" / "strip.pdf", picture)


def test_a_small_page_makes_many_and_none_is_empty(qtbot, picture: PlanSnapshot) -> None:
    image = QImage(420, 300, QImage.Format.Format_RGB32)
    inked = []

    def new_page() -> None:
        spots = ((x, y) for x in range(200, 420, 4) for y in range(40, 260, 6))
        inked.append(len({image.pixel(*spot) for spot in spots}))
        image.fill(0xFFFFFFFF)

    painter = QPainter(image)
    pages = paint_strip(painter, QRectF(0, 0, 420, 300), picture, new_page=new_page)
    painter.end()
    assert pages > 4
    assert len(inked) == pages - 1
    assert all(colours > 2 for colours in inked)
