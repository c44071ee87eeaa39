"""Begun work stays in sight, and what an evening has done until it closes, where it stood."""

from __future__ import annotations

from dataclasses import replace

import pytest
from logged_book import moment
from small_book import CART, ZONE, at, key, small_book

from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.tonight import BenchRow, Row, RunSheet, WorkRow, as_they_stood, name_of, run_sheet
from planner.tonight.in_sight import open_since
from planner.tonight.replayed_plan import ReplayedPlan
from planner.values.book import Book
from planner.values.project import Event, Happened, Logged

DAY = "2031-03-06"  # a Thursday with bench time from 19:30 to 21:30; the next is a week later


def primed(start: str, end: str | None) -> Book:
    fact = Logged(
        model=CART, step="prime", start=moment(start), end=None if end is None else moment(end)
    )
    book = small_book()
    return replace(book, projects=(replace(book.projects[0], log=(fact,)),))


def sheet_at(book: Book, now: str) -> RunSheet:
    cure = Cure(book.room, ZONE)
    calendar = BenchCalendar(book.bench_time)
    return run_sheet(book, plan_book(book, at(now), cure=cure, calendar=calendar), at(now))


def shows_primer(book: Book, now: str) -> bool:
    return any(row.key == key("prime") for row in sheet_at(book, now).work)


@pytest.mark.parametrize(
    "begun", [f"{DAY} 19:35", f"{DAY} 18:50", "2031-03-01 12:00", "2031-02-06 19:40"]
)
@pytest.mark.parametrize("now", [f"{DAY} 19:45", f"{DAY} 21:50", "2031-03-08 12:00"])
def test_begun_work_is_on_every_sheet_until_it_is_done(begun: str, now: str) -> None:
    assert shows_primer(primed(begun, None), now)


@pytest.mark.parametrize(
    ("start", "end", "now", "shown"),
    [
        ("19:35", "19:45", f"{DAY} 20:30", True),  # in the stretch that runs
        ("18:50", "19:00", f"{DAY} 19:10", True),  # come early, before the stretch
        ("18:50", "19:00", f"{DAY} 20:30", True),  # and when it runs
        ("15:00", "15:10", f"{DAY} 19:40", False),  # another time of the day
        ("19:35", "19:45", f"{DAY} 21:45", True),  # over time: the evening is still open
        ("21:35", "21:40", f"{DAY} 21:45", True),
        ("19:35", "19:45", "2031-03-07 12:00", False),  # closed by itself
    ],
)
def test_what_was_done_stays_until_the_evening_closes(
    start: str, end: str, now: str, shown: bool
) -> None:
    assert shows_primer(primed(f"{DAY} {start}", f"{DAY} {end}"), now) is shown


def test_an_evening_that_was_stopped_is_closed() -> None:
    book = primed(f"{DAY} 19:35", f"{DAY} 19:45")
    stopped = Happened(at=moment(f"{DAY} 21:31"), event=Event.STOPPED)
    closed = replace(book, projects=(replace(book.projects[0], diary=(stopped,)),))
    assert shows_primer(book, f"{DAY} 21:45")
    assert not shows_primer(closed, f"{DAY} 21:45")


def test_the_evening_is_open_since_its_stretch_began() -> None:
    book, now = small_book(), at(f"{DAY} 22:00")
    calendar, cure = BenchCalendar(book.bench_time), Cure(book.room, ZONE)
    plan = plan_book(book, now, cure=cure, calendar=calendar)
    laid = ReplayedPlan(book, plan, now, calendar, cure)
    following = calendar.next_stretch(now)
    assert following is not None
    assert open_since(laid, following.interval) == at(f"{DAY} 19:30")


def rows() -> tuple[Row, ...]:
    book = small_book()
    return sheet_at(book, f"{DAY} 19:30").rows


def test_what_is_ticked_stays_where_it_stood() -> None:
    shown = rows()
    work = [row for row in shown if isinstance(row, WorkRow)]
    assert len(work) >= 3
    last = work[-1]
    done = replace(last, logged=True, start=last.start - 600, end=last.end - 600)
    now = tuple(sorted((done, *(row for row in shown if row != last)), key=lambda row: row.start))
    assert now[0] == done  # by the clock it was before all the others
    stood = as_they_stood([name_of(row) for row in shown], now)
    assert [name_of(row) for row in stood] == [name_of(row) for row in shown]


def test_what_was_not_shown_comes_by_the_clock_and_what_is_gone_is_missed_by_nobody() -> None:
    shown = rows()
    names = [name_of(row) for row in shown]
    assert as_they_stood([], shown) == shown
    first = next(row for row in shown if isinstance(row, BenchRow))
    done = [
        replace(row, logged=True) if isinstance(row, WorkRow) else row
        for row in shown
        if row != first
    ]
    stood = as_they_stood(names, done)
    assert [name_of(row) for row in stood] == [name for name in names if name != name_of(first)]
