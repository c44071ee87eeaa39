"""Which closings are guarded before a piece of work is placed, to the minute."""

from __future__ import annotations

from dataclasses import replace

import pytest
from judge_cases.making import MONDAY, NOW, at, book, do, work
from minute_cases.making import lay

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.schedule.fit import earliest_fit
from planner.schedule.partial_schedule import PartialSchedule
from planner.schedule.problem import Problem
from planner.schedule.window_lookahead import keeps_windows
from planner.values.bench_time import BenchTime, Recurring
from planner.values.coating import Mark, Window
from planner.values.moment import zone_named
from planner.values.step import Gate, Stage

LOOKS_AHEAD = 36 * 60  # minutes after the work that is placed: assumed


def keeps(closes: int, guarded: tuple[int, ...] = ()) -> bool:
    """Tell whether four hours of other work are let in before what closes.

    The laying begins at 18:00 on day 0, and what waits for it closes so many
    minutes later.  Day 1 has bench time from 18:00 to 22:00, which the other
    work takes as a whole, and there is none after it: so the closing is missed.
    """
    gate = Gate(after="lay", windows=(Window(closes=Mark(minutes=closes)),))
    of = book(
        work("lay", Stage.PRESS, "hull/deck"),
        work("wipe", Stage.WIPE, "hull/deck", gates=(gate,)),
        work("other", Stage.CLEAN, "tracks", minutes=240),
    )
    days = Recurring(rule="FREQ=DAILY;COUNT=2", since=MONDAY, start="18:00", end="22:00")
    of = replace(of, bench_time=BenchTime(zone="UTC", stretches=(days,)))
    cure = Cure(of.room, zone_named("UTC"))
    problem = Problem(of, NOW, cure=cure, calendar=BenchCalendar(of.bench_time))
    table = PartialSchedule(problem, NOW)
    lay(table, do("lay", "18:00-18:10"))
    table.time = at("22:00")
    fit = earliest_fit(table, 2, table.time)
    assert fit is not None
    assert (fit.start, fit.end) == (at("1/18:00"), at("1/22:00"))
    return keeps_windows(table, fit, (), guarded)


# The other work ends at 22:00 on day 1, 28 h after the laying began.
FROM_LAYING = 28 * 60 + LOOKS_AHEAD


@pytest.mark.parametrize(
    ("closes", "let_in"),
    [(FROM_LAYING - 1, False), (FROM_LAYING, True), (FROM_LAYING + 1, True)],
)
def test_closings_within_a_day_and_a_half_are_guarded(closes, let_in):
    assert keeps(closes) is let_in


def test_what_was_missed_once_is_guarded_however_far_ahead():
    assert not keeps(FROM_LAYING + 1440, guarded=(1,))
