"""The Coat stack view: what it says of the model as a whole."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from coat_books import book_of, coat

from app.window.plan_snapshot import PlanSnapshot, picture_of
from app.window.stack.view import StackView
from planner.values.moment import minute_of
from planner.values.step import Stage

NOW = minute_of(datetime(2031, 3, 4, 17, tzinfo=UTC))
PRIME = coat(Stage.PRIME, "grey primer", name="prime")


@pytest.fixture
def slow() -> PlanSnapshot:
    return picture_of(book_of(PRIME, coat(Stage.BASE, "enamel", name="red")), NOW)


def test_the_model_s_earliest_hard_clear_stands_above_its_coats(qtbot, slow: PlanSnapshot) -> None:
    view = StackView()
    qtbot.addWidget(view)
    view.show_picture(slow)
    assert not view.hard.isHidden()
    told = view.hard.text()
    assert told.startswith("A hard clear at the earliest: ")
    assert told.endswith("because of enamel on hull, deck")


def test_where_no_film_is_slow_nothing_is_said(qtbot, slow: PlanSnapshot) -> None:
    view = StackView()
    qtbot.addWidget(view)
    view.show_picture(slow)
    view.show_picture(picture_of(book_of(PRIME), NOW))
    assert view.hard.isHidden()
