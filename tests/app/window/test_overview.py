"""The overview of the plan: twelve models and nine sessions at one look, and what each says."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import QPointF, QSize, Qt
from window_steps import MakeWindow, settle

from app.window.palette import DARK, LIGHT
from app.window.strip_content import Lane, Strip, StripColumn
from app.window.timeline.overview_layout import GUTTER, LEAST_COLUMN, least_width, overview_of
from app.window.timeline.overview_paint import short_colour
from planner.values.book import Book
from planner.values.moment import Interval

EVENING, DAY = 210, 1440


def batch(models: int, sessions: int) -> Strip:
    """Return an empty plan: sessions of 3½ hours every second day, two lanes a model."""
    columns = tuple(
        StripColumn(Interval(at * 2 * DAY, at * 2 * DAY + EVENING), date(2031, 3, 1), 1)
        for at in range(sessions)
    )
    lanes = tuple(
        Lane(2 * at + part, "club", f"tram {at}", (name,))
        for at in range(models)
        for part, name in enumerate(("body", "wheels"))
    )
    return Strip(now=0, zone="UTC", columns=columns, lanes=lanes)


def test_twelve_models_and_nine_sessions_fit_a_page_of_1600_by_1000() -> None:
    # What the frame leaves of 1600 x 1000: 184 of rail and 296 of inspector across, 180 of air,
    # title and dates down; names at the left take another 230.
    width, height = 1600 - 184 - 296 - 230, 1000 - 180
    shown = overview_of(batch(12, 9), width, height, 18)
    assert len(shown.lanes) == 12
    assert shown.height <= height
    assert shown.scale.width == pytest.approx(width)
    # By hand: ten gutters (eight between, one at either end) leave (890 - 220) / 9 a session.
    columns = [span for span in shown.scale.spans if span.column is not None]
    assert [span.width for span in columns] == pytest.approx([(890 - 10 * GUTTER) / 9] * 9)


def test_more_sessions_than_can_be_told_apart_need_more_width() -> None:
    strip = batch(2, 40)
    assert least_width(strip.columns) == 41 * GUTTER + 40 * LEAST_COLUMN
    assert overview_of(strip, 600, 400, 18).scale.width == pytest.approx(41 * GUTTER + 1600)


def test_a_colour_is_named_without_its_family() -> None:
    assert short_colour("waterborne acrylic, sand") == "sand"
    assert short_colour("gloss clear, waterborne") == "gloss clear"
    assert short_colour("dark oil") == "dark oil"


@pytest.fixture
def page(make_window: MakeWindow, lamplighter: tuple[Book, int], qapp):
    window = make_window(*lamplighter)
    window.show_page("timeline")
    settle(qapp)
    return next(page for page in window.pages if page.name == "timeline").view


def spot_of(page, number: int = 0) -> QPointF:
    overview = page.overview
    return overview.scene().rect(overview.arrangement.boxes[number]).center()


def test_every_piece_of_work_is_in_its_models_lane_and_says_what_it_is(page) -> None:
    at = page.overview.arrangement
    assert {box.piece for box in at.boxes} == set(range(len(at.strip.pieces)))
    told = page.overview.tip_at(spot_of(page))
    assert at.strip.pieces[at.boxes[0].piece].key.model in told


def test_wedges_cups_and_names_have_words_on_both_levels(page) -> None:
    overview = page.overview
    scene, strip = overview.scene(), overview.arrangement.strip
    lane = overview.arrangement.lanes[0]
    wedge = next(w for w in strip.wedges if w.lane == lane.lanes[0] and w.opens)
    middle = scene.edges.top + lane.middle
    xs = [scene.x(wedge.start) + 2 + step for step in range(300)]
    told = [overview.tip_at(QPointF(x, middle)) for x in xs if x < scene.x(wedge.opens)]
    assert any(wedge.coating and line.startswith(wedge.coating) for line in told)
    held = strip.held[0]
    cup = QPointF(scene.x(held.interval.start) + 1, scene.edges.head + 8)
    assert overview.tip_at(cup).startswith(held.coating)
    assert overview.tip_at(QPointF(20, middle)).startswith(lane.at[1])


def test_the_keys_walk_and_enter_shows_the_piece_larger(page, qtbot) -> None:
    overview = page.overview
    overview.setFocus()
    qtbot.keyClick(overview, Qt.Key.Key_Home)
    first = page.strip.chosen_key
    assert first is not None
    qtbot.keyClick(overview, Qt.Key.Key_Right)
    assert page.strip.chosen_key != first
    assert page.levels.currentIndex() == 0
    qtbot.keyClick(overview, Qt.Key.Key_Return)
    assert page.levels.currentIndex() == 1


def test_a_session_is_skipped_lengthened_and_added_to_by_its_menu(page, qtbot) -> None:
    session = page._session
    column = page.overview.column_under(spot_of(page).x())
    assert column is not None
    before = session.book.bench_time
    page.days.lengthen(column)
    (longer,) = session.book.bench_time.extra
    assert longer.interval == Interval(column.interval.end, column.interval.end + 60)
    page.days.skip(column)
    assert column.on in session.book.bench_time.skipped
    session.undo()
    session.undo()
    assert session.book.bench_time == before


def test_what_moved_is_shown_and_said_until_the_ghosts_go(page, qtbot, monkeypatch) -> None:
    monkeypatch.setattr("app.window.timeline.overview.motion_is_reduced", lambda: True)
    column = page.overview.column_under(spot_of(page).x())
    assert page.overview.scene().before == {}
    with qtbot.waitSignal(page._session.pictured, timeout=20_000):
        page.days.skip(column)
    assert page.overview.scene().before
    assert page.overview.scene().moved == 1.0  # nothing travels where motion is reduced
    assert page.message.text()
    page.forget_moves()
    assert page.overview.scene().before == {}
    assert page.message.text() == ""


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_it_paints_in_both_looks(page, colours) -> None:
    page.set_colours(colours)
    image = page.overview.grab().toImage()
    assert image.size() == QSize(page.overview.size()) * image.devicePixelRatio()
    swatches = {piece.swatch.lower() for piece in page.overview.arrangement.strip.pieces}
    seen = {
        image.pixelColor(x, y).name()
        for x in range(0, image.width(), 2)
        for y in range(image.height())
    }
    assert swatches & seen


def test_a_short_piece_is_hit_beside_its_mark(page) -> None:
    # WCAG 2.2, 2.5.8 "Target size (minimum)": 24 pixels, so 12 from the middle of a mark.
    overview = page.overview
    scene, boxes = overview.scene(), overview.arrangement.boxes
    short = min(boxes, key=lambda box: box.right - box.left)
    mark = scene.rect(short)
    assert mark.width() < 20
    for across, down in ((0, 0), (11, 0), (-11, 0), (0, 11), (0, -11)):
        spot = QPointF(mark.center().x() + across, mark.center().y() + down)
        hit = overview._box_under(spot)
        assert hit is not None
        others = [box for box in boxes if box.piece != short.piece]
        alone = not any(scene.rect(box).adjusted(-12, -12, 12, 12).contains(spot) for box in others)
        assert hit.piece == short.piece or not alone


def test_a_short_piece_of_the_strip_is_hit_beside_its_mark(page) -> None:
    at = page.strip.arrangement
    short = min(at.boxes, key=lambda box: box.right - box.left)
    middle = (short.left + short.right) / 2
    assert at.box_at(middle, short.middle) == short
    for beside in (-11, 11):
        near = at.box_at(middle + beside, short.middle)
        assert near is not None
        assert near.off(middle + beside) <= short.off(middle + beside)
    assert at.box_at(middle, short.middle + 30) != short
