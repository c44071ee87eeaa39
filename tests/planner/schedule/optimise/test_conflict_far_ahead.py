"""What lies years ahead is not called impossible, unless it is."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from judge_cases.making import MONDAY, NOW, book, work

from planner.cure import Cure
from planner.schedule.greedy import plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise.infeasibility_proof import contradicts
from planner.values.bench_time import Extra, Recurring
from planner.values.book import Book
from planner.values.coating import Mark, Window
from planner.values.moment import moment_of, zone_named
from planner.values.project import Pin
from planner.values.step import Gate, Stage, Step

YEAR = 365 * 1440  # minutes; a gate waits at most 366 days
DAY_OFF = date(2036, 3, 8)


def rub(name: str, minutes: int = 20, *waits: tuple[str, int]) -> Step:
    """Return work that lays no film, and waits for others by the clock [min]."""
    gates = tuple(Gate(after=after, windows=(Window(opens=Mark(minutes=m)),)) for after, m in waits)
    return work(name, Stage.WIPE, "hull/deck", minutes=minutes, gates=gates)


def refused(of: Book) -> bool:
    return contradicts(of, NOW, Cure(of.room, zone_named(of.bench_time.zone)))


def planned(of: Book) -> bool:
    plan = plan_book(of, NOW)
    return not plan.unplaced and judge(of, plan).accepted


@pytest.mark.parametrize("years", [1, 4, 12])
def test_a_wish_years_ahead_is_no_contradiction(years):
    day = MONDAY.replace(year=MONDAY.year + years)
    moment = moment_of(NOW, zone_named("UTC")).replace(year=day.year)
    of = book(rub("a"), begins=day)
    assert planned(of)
    assert not refused(of)
    of = book(rub("a"), pins=(Pin(model="cart", step="a", not_before=moment),))
    assert planned(of)
    assert not refused(of)
    of = book(rub("a"), pins=(Pin(model="cart", step="a", on=day),))
    assert planned(of)
    assert not refused(of)


def test_a_day_off_years_ahead_is_one():
    """Daily bench time leaves out one day, for which the work is wished."""
    of = book(rub("a"), pins=(Pin(model="cart", step="a", on=DAY_OFF),))
    assert planned(of)
    off = replace(of, bench_time=replace(of.bench_time, skipped=(DAY_OFF,)))
    assert not planned(off)
    assert refused(off)


def test_a_chain_of_long_waits_is_no_contradiction():
    """Five waits of a year each lead beyond the three years that one stretch is looked for."""
    steps = [rub("s0")]
    steps += [rub(f"s{n}", 20, (f"s{n - 1}", YEAR)) for n in range(1, 6)]
    of = book(*steps)
    assert planned(of)
    assert not refused(of)


def test_at_its_end_what_fits_no_stretch_is_one():
    """The last of them takes 241 minutes; every stretch has 240."""
    steps = [rub("s0")]
    steps += [rub(f"s{n}", 241 if n == 5 else 20, (f"s{n - 1}", YEAR)) for n in range(1, 6)]
    of = book(*steps)
    assert not planned(of)
    assert refused(of)


@pytest.mark.parametrize("days", [6, 370])
def test_bench_time_that_comes_late_is_waited_for(days):
    """The only stretch that holds 300 minutes is an extra one.

    The quick planner looks some weeks ahead; that it finds none proves nothing.
    """
    day = moment_of(NOW, zone_named("UTC")).replace(hour=9) + timedelta(days=days)
    of = book(rub("a"), rub("b", 300, ("a", 10)))
    evening = Recurring(rule="FREQ=DAILY", since=MONDAY, start="18:00", end="20:00")
    extra = Extra(start=day, end=day + timedelta(hours=6))
    hours = replace(of.bench_time, stretches=(evening,))
    assert refused(replace(of, bench_time=hours))
    more = replace(of, bench_time=replace(hours, extra=(extra,)))
    assert not refused(more)
    assert planned(more) == (days < 30)
