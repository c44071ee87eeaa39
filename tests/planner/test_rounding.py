"""Minutes as people read them: to 5 below two hours, to 15 from there, never too soon or late."""

from __future__ import annotations

import pytest

from planner.cure.rounding import shown_minutes


@pytest.mark.parametrize(
    ("minutes", "up", "down"),
    [
        (0, 0, 0),
        (1, 5, 0),
        (4, 5, 0),
        (5, 5, 5),
        (6, 10, 5),
        (116, 120, 115),
        (119, 120, 115),
        (120, 120, 120),
        (121, 135, 120),
        (134, 135, 120),
        (135, 135, 135),
        (136, 150, 135),
    ],
)
def test_by_hand(minutes, up, down):
    assert shown_minutes(minutes) == up
    assert shown_minutes(minutes, up=False) == down
