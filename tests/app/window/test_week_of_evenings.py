"""A week of evenings with seeded troubles: each change of the finish that is told has a cause."""

from __future__ import annotations

import pytest
from bench_steps import AtTheBench
from evening_week import CLOCK, TROUBLES, EveningWeek, carts, finish_of
from small_book import NOW
from window_steps import MakeWindow

EVENINGS = 3  # a benchmark goes through whole weeks under a real display


@pytest.mark.parametrize("seed", [3])
def test_the_finish_is_told_each_day_and_each_change_has_its_cause(
    qtbot, make_window: MakeWindow, seed: int
) -> None:
    here = AtTheBench(qtbot, make_window(carts(1), NOW), NOW)
    week = EveningWeek(here, seed)
    week.run(EVENINGS)
    assert 3 <= len(week.told) <= EVENINGS
    assert {told.trouble for told in week.told} <= set(TROUBLES)
    assert sum(told.done for told in week.told) >= 3
    moved = [one for told in week.told for one in told.moved]
    assert moved  # a week of troubles moves the finish at least once
    for one in moved:
        assert one.cause == CLOCK or one.cause.strip()
        assert one.before != one.after
    # What is told in the morning is what the evening before, and all that changed since, left.
    for before, after in zip(week.told, week.told[1:], strict=False):
        last = before.moved[-1].after if before.moved else before.finish
        assert after.finish == last
    assert finish_of(here.picture.plan) >= here.now or not here.picture.plan.placements
    assert here.verdicts >= 6  # the judge accepted every plan
    told = week.lines()
    assert len(told) == len(week.told) + len(moved)
