"""Minutes to pixels and back, wedges, labels, rows, and the arrow keys: no Qt needed."""

from __future__ import annotations

import itertools
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.window.room.plot import spread
from app.window.strip_content import Lane, StripColumn
from app.window.timeline import arrow_keys
from app.window.timeline.geometry import (
    Label,
    Scale,
    fitting_scale,
    gutter_width,
    room_for_labels,
    rows_of,
)
from app.window.timeline.strip_boxes import Box
from app.window.wedge_geometry import wedge_outline
from planner.values.moment import Interval

DAY = date(2031, 3, 6)
EVENINGS = (
    StripColumn(Interval(1000, 1150), DAY, 1),
    StripColumn(Interval(3880, 4030), DAY, 1),
    StripColumn(Interval(4030, 4090), DAY, 2),
)


def test_a_minute_of_bench_time_is_as_wide_as_any_other() -> None:
    scale = Scale(EVENINGS, 4)
    assert scale.x(1010) - scale.x(1000) == 40
    assert scale.x(3990) - scale.x(3980) == 40


def test_the_hours_between_are_narrow() -> None:
    scale = Scale(EVENINGS, 4)
    assert scale.x(3880) - scale.x(1150) == pytest.approx(gutter_width(2730))
    assert gutter_width(2730) < 150  # 45 h 30 take less room than 38 min at the bench
    assert gutter_width(60) < gutter_width(600) < gutter_width(6000)


def test_touching_stretches_have_no_gutter() -> None:
    scale = Scale(EVENINGS, 4)
    assert [span.column for span in scale.spans] == [0, None, 1, 2]


@given(st.integers(1000, 4089), st.floats(0.8, 14))
def test_x_and_minute_go_back_and_forth(minute: int, pixels: float) -> None:
    scale = Scale(EVENINGS, pixels)
    back = scale.minute(scale.x(minute) + 1e-6)
    # Within a gutter a pixel is many minutes, but never wrong by one on bench time.
    assert back == minute


@given(st.integers(-5000, 9000), st.integers(1, 4000))
def test_later_never_lies_farther_left(minute: int, more: int) -> None:
    scale = Scale(EVENINGS, 3)
    assert scale.x(minute) <= scale.x(minute + more)
    assert 0 <= scale.x(minute) <= scale.width


def test_fitting_fills_the_width() -> None:
    pixels = fitting_scale(EVENINGS, 1200)
    assert Scale(EVENINGS, pixels).width == pytest.approx(1200)


def test_nothing_at_all_has_a_scale_too() -> None:
    scale = Scale((), 4)
    assert scale.x(5) == scale.x(500)
    assert scale.minute(100) == 0
    assert fitting_scale((), 1000) > 0


def test_ticks_lie_on_round_minutes_and_apart() -> None:
    scale = Scale(EVENINGS, 4)
    ticks = scale.ticks(scale.spans[0])
    assert ticks[0] % 15 == 0
    assert all((later - sooner) * 4 >= 46 for sooner, later in itertools.pairwise(ticks))
    assert all(1000 <= tick < 1150 for tick in ticks)


def test_a_wedge_thins_to_nothing_where_the_film_opens() -> None:
    corners = wedge_outline(100, 300, 50, 20, 300)
    assert corners == [(100, 40), (300, 50), (300, 50), (100, 60)]
    half = wedge_outline(100, 300, 50, 20, 200)
    assert half == [(100, 40), (200, 45), (200, 55), (100, 60)]


def test_labels_give_way_to_each_other() -> None:
    labels = [Label(0, 80, 500), Label(50, 80, 500), Label(60, 80, 500), Label(480, 80, 500)]
    # The second has 5 px before the third: left out, so the first may reach the third.
    assert room_for_labels(labels, 26, 5) == [55, 0, 80, 0]


def test_rows_head_each_model_once() -> None:
    lanes = (
        Lane(0, "p", "one", ("hull",)),
        Lane(1, "p", "one", ("wheels",)),
        Lane(2, "p", "two", ("hull",)),
    )
    rows = rows_of(lanes, 20, 50)
    assert [(row.lane, row.top, row.bottom) for row in rows] == [
        (None, 0, 20),
        (0, 20, 70),
        (1, 70, 120),
        (None, 120, 140),
        (2, 140, 190),
    ]


@given(st.lists(st.floats(0, 300), max_size=12))
def test_names_are_spread_apart_in_order(wanted: list[float]) -> None:
    wanted.sort()
    places = spread(wanted, 20, 0, 400)
    assert all(b - a >= 20 - 1e-9 for a, b in itertools.pairwise(places))
    assert all(-1e-9 <= place <= 400 for place in places)


def _box(number: int, lane: int, left: float) -> Box:
    return Box(number, lane, left, left + 20, left + 20, lane * 50.0, main=True)


BOXES = (_box(0, 0, 10), _box(1, 0, 200), _box(2, 1, 90), _box(3, 3, 15), _box(4, 3, 190))


def test_left_and_right_keep_to_the_lane() -> None:
    assert arrow_keys.later(BOXES, BOXES[0]) == BOXES[1]
    assert arrow_keys.later(BOXES, BOXES[1]) == BOXES[1]
    assert arrow_keys.sooner(BOXES, BOXES[1]) == BOXES[0]
    assert arrow_keys.sooner(BOXES, BOXES[0]) == BOXES[0]


def test_up_and_down_go_to_the_nearest_in_time_and_skip_empty_lanes() -> None:
    assert arrow_keys.below(BOXES, BOXES[1]) == BOXES[2]
    assert arrow_keys.below(BOXES, BOXES[2]) == BOXES[3]
    assert arrow_keys.above(BOXES, BOXES[4]) == BOXES[2]
    assert arrow_keys.above(BOXES, BOXES[0]) == BOXES[0]
    assert arrow_keys.below(BOXES, BOXES[4]) == BOXES[4]


def test_the_first_key_goes_to_the_first_piece() -> None:
    for move in (
        arrow_keys.later,
        arrow_keys.sooner,
        arrow_keys.above,
        arrow_keys.below,
        arrow_keys.first,
    ):
        assert move(BOXES, None) == BOXES[0]
    assert arrow_keys.last(BOXES, None) == BOXES[1]
    assert arrow_keys.first((), None) is None
