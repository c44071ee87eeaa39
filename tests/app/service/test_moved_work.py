"""What moved is told in at most three lines, evening by evening, without keys and swaps."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date

from judge_cases.making import MONDAY, NOW, at, book, work

from app.service.moved_work import moved_lines, moved_work
from app.service.planning import plan
from planner.bench import calendar_of
from planner.values.moment import Interval
from planner.values.plan import Plan
from planner.values.step import Stage

SPOTS = ("hull/deck", "hull/side", "wheels/tread", "wheels/rim", "tracks/links")


def five() -> tuple[str, ...]:
    return ("sort", "file", "fill", "polish", "wipe")


OF = book(
    *(
        work(name, Stage.CLEAN, spot, minutes=100, title=f"{name} it all")
        for name, spot in zip(five(), SPOTS, strict=True)
    )
)
CALENDAR = calendar_of(OF.bench_time)


def test_a_lost_evening_is_told_in_three_lines_at_most() -> None:
    last = plan(OF, NOW).plan
    lost = replace(OF, bench_time=replace(OF.bench_time, skipped=(date(2031, 3, 4),)))
    made = plan(lost, NOW, last=last).plan
    lines = [str(line) for line in moved_lines(lost, calendar_of(lost.bench_time), last, made)]
    assert 1 < len(lines) <= 3
    assert lines[0].startswith("Tue 4 Mar: ")
    assert " it all of cart" in lines[0]
    assert lines[-1].startswith("The end ")
    told = "\n".join(lines)
    assert not re.search(r"\d{4}-\d\d-\d\d|/|#", told)


def shifted(made: Plan, minutes: int) -> Plan:
    """Return a plan with every piece somewhat later."""
    return replace(
        made,
        placements=tuple(
            replace(
                placement,
                pieces=tuple(
                    Interval(p.start + minutes, p.end + minutes) for p in placement.pieces
                ),
            )
            for placement in made.placements
        ),
    )


def test_minutes_within_an_evening_are_not_told() -> None:
    last = plan(OF, NOW).plan
    assert moved_work(CALENDAR, last, shifted(last, 5)) == ()
    (line,) = moved_lines(OF, CALENDAR, last, shifted(last, 5))
    assert line.startswith("The end stays ")


def test_work_that_goes_together_is_told_together_and_only_some_is_named() -> None:
    last = plan(OF, NOW).plan
    week = shifted(last, 7 * 1440)
    moved = moved_work(CALENDAR, last, week)
    assert [one.before for one in moved] == sorted(one.before for one in moved if one.before)
    assert moved[0].before == MONDAY
    assert moved[0].after == date(2031, 3, 10)
    everything = moved_lines(OF, CALENDAR, last, week, every=True)
    assert len(everything) == len(moved) + 1
    assert at("18:00") <= last.placements[0].start
