"""The strip on screen: keys, pointing, zoom, light and dark."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from small_book import NOW, at, key, small_book

from app.window.palette import DARK, LIGHT, Colours
from app.window.plan_snapshot import PlanSnapshot, picture_of
from app.window.timeline.view import TimelineView


@pytest.fixture(scope="module")
def picture() -> PlanSnapshot:
    return picture_of(small_book(), NOW)


@pytest.fixture
def view(qtbot, picture: PlanSnapshot) -> TimelineView:
    view = TimelineView()
    qtbot.addWidget(view)
    view.resize(1000, 420)
    view.show()
    view.show_strip(picture.strip)
    return view


def test_arrows_walk_through_the_lane_and_enter_opens(qtbot, view: TimelineView) -> None:
    opened: list[object] = []
    view.opened.connect(opened.append)
    seen = []
    for _ in range(7):
        qtbot.keyClick(view, Qt.Key.Key_Right)
        seen.append(view.chosen_key)
    order = [key(step) for step in ("prime", "sand", "gloss", "wash", "wipe")]
    assert list(dict.fromkeys(seen)) == order
    qtbot.keyClick(view, Qt.Key.Key_Return)
    assert opened == [key("wipe")]
    qtbot.keyClick(view, Qt.Key.Key_Left)
    assert view.chosen_key == key("wash")
    qtbot.keyClick(view, Qt.Key.Key_Home)
    assert view.chosen_key == key("prime")
    qtbot.keyClick(view, Qt.Key.Key_End)
    assert view.chosen_key == key("wipe")


def test_a_chosen_piece_is_brought_on_screen(qtbot, view: TimelineView) -> None:
    view.choose(key("wipe"))
    scene = view.scene()
    x = scene.x(picture_start(view, "wipe"))
    assert scene.left <= x <= scene.area.right()


def picture_start(view: TimelineView, step: str) -> int:
    return next(
        piece.interval.start for piece in view.arrangement.strip.pieces if piece.key == key(step)
    )


def test_plus_and_minus_zoom_and_zero_fits(qtbot, view: TimelineView) -> None:
    before = view.arrangement.scale.pixels_per_minute
    qtbot.keyClick(view, Qt.Key.Key_Plus)
    assert view.arrangement.scale.pixels_per_minute == pytest.approx(before * 1.25)
    qtbot.keyClick(view, Qt.Key.Key_Minus)
    assert view.arrangement.scale.pixels_per_minute == pytest.approx(before)
    qtbot.keyClick(view, Qt.Key.Key_0)
    strip_room = view.viewport().width() - view.arrangement.sizes.left
    assert view.arrangement.scale.width <= strip_room + 1


def spot_of(view: TimelineView, step: str) -> QPointF:
    scene = view.scene()
    box = next(
        box
        for box in view.arrangement.boxes
        if view.arrangement.strip.pieces[box.piece].key == key(step)
    )
    x = scene.left + (box.left + box.right) / 2 - scene.across
    return QPointF(x, scene.top + box.middle - scene.down)


def test_a_click_chooses_and_the_tip_says_why(qtbot, view: TimelineView) -> None:
    view.show_now()
    spot = spot_of(view, "prime")
    qtbot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=spot.toPoint())
    assert view.chosen_key == key("prime")
    tip = view.tip_at(spot)
    assert "Prime" in tip
    assert "19:33–19:43" in tip
    assert view.tip_at(QPointF(5, 5)) == ""


def test_the_frame_of_the_chosen_piece_leaves_its_words_alone(view: TimelineView) -> None:
    view.choose(None)
    view.setFocus()
    before = view.viewport().grab().toImage()
    view.choose(key("gloss"))
    view.setFocus()
    after = view.viewport().grab().toImage()
    at, scene = view.arrangement, view.scene()
    box = next(box for box in at.boxes if at.strip.pieces[box.piece].key == key("gloss"))
    texts = [name for name in (*at.names, *at.openings) if abs(name.left - box.left) < 60]
    texts = [text for text in texts if abs(text.middle - box.middle) < at.sizes.lane / 2]
    assert {text.middle < box.middle for text in texts} == {True, False}  # a name and an opening
    touched = inked = 0
    for text in texts:
        left, middle = int(scene.shift(text.left)), int(scene.top + text.middle - scene.down)
        for x in range(left, left + int(text.width)):
            for y in range(middle - 9, middle + 10):
                ink = before.pixelColor(x, y).lightness() < 140
                if ink and abs(y - middle) < at.sizes.text * 0.4:
                    inked += 1
                    touched += before.pixel(x, y) != after.pixel(x, y)
    assert inked > 50
    assert touched == 0


def test_dragging_moves_the_strip(qtbot, view: TimelineView) -> None:
    view.zoom_in()
    bar = view.horizontalScrollBar()
    before = bar.value()
    port = view.viewport()
    height = port.height() - 6
    qtbot.mousePress(port, Qt.MouseButton.LeftButton, pos=QPoint(700, height))
    qtbot.mouseMove(port, QPoint(500, height))
    qtbot.mouseRelease(port, Qt.MouseButton.LeftButton, pos=QPoint(500, height))
    assert bar.value() > before


@pytest.mark.parametrize("colours", [LIGHT, DARK], ids=["light", "dark"])
def test_grounds_and_the_shade_over_the_past(view: TimelineView, colours: Colours) -> None:
    view.set_colours(colours)
    view.show_now()
    view.set_now(at("2031-03-06 19:30"))
    untouched = view.grab().toImage()
    view.set_now(at("2031-03-06 20:30"))
    shaded = view.grab().toImage()
    scene = view.scene()
    y = round(scene.area.bottom()) - 12
    before_now = round(scene.x(at("2031-03-06 20:15"))) + 4
    after_now = round(scene.x(at("2031-03-06 20:45"))) + 4
    assert untouched.pixelColor(before_now, y).name() == colours.sheet.lower()
    assert shaded.pixelColor(before_now, y).name() != colours.sheet.lower()
    assert shaded.pixelColor(after_now, y).name() == colours.sheet.lower()


def test_work_carries_the_swatch_of_its_coating(view: TimelineView) -> None:
    view.choose(None)
    view.show_now()
    image = view.grab().toImage()
    spot = spot_of(view, "prime").toPoint()
    assert image.pixelColor(spot.x() - 8, spot.y()).name() == "#909090"


def test_an_empty_plan_is_painted_too(qtbot) -> None:
    view = TimelineView()
    qtbot.addWidget(view)
    view.resize(600, 300)
    assert not view.grab().isNull()
    qtbot.keyClick(view, Qt.Key.Key_Right)
    qtbot.keyClick(view, Qt.Key.Key_0)
    assert view.chosen_key is None
