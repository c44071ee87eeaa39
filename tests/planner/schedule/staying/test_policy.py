"""What may take the place of the plan that is there: a pure function (definition 27a).

Bench time is 18:00 to 22:00 every day, `NOW` is Monday 17:00; the stretches
until the finish are counted by hand.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from judge_cases.making import NOW, at, book, work

from planner.bench import calendar_of
from planner.schedule.staying.policy import StayingChoice, choose, firm_stretches, firm_times, worth
from planner.values.book import Book
from planner.values.moment import Interval
from planner.values.plan import Cost, PassKey, Placement, Plan, Status
from planner.values.step import Stage
from planner.values.wishes import USUAL_ORDER, Level, Preferences, Staying

FIRST, SECOND = PassKey("batch", "cart", "sort"), PassKey("batch", "cart", "file")
TONIGHT = at("18:00")


@pytest.fixture
def of() -> Book:
    return book(work("sort", Stage.CLEAN, "hull"), work("file", Stage.CLEAN, "wheels"))


def made(last: str, *, first: str = "18:00", **cost: int) -> Plan:
    """Return a plan of two pieces of 20 minutes; what else it says of itself is made up."""
    starts = {FIRST: at(first), SECOND: at(last)}
    end = max(starts.values()) + 20
    costs = {"unplaced": 0, "late": 0, "finish": end - NOW, "stretches": 2, "setup_minutes": 0}
    return Plan(
        now=NOW,
        placements=tuple(Placement(k, (Interval(s, s + 20),)) for k, s in starts.items()),
        bench=(),
        unplaced=(),
        status=Status.FEASIBLE,
        cost=Cost(**(costs | cost)),
        finishes=(("batch", end),),
    )


def chosen(
    of: Book, present: Plan, *others: Plan, promised: tuple[Interval, ...] = ()
) -> StayingChoice:
    calendar = calendar_of(of.bench_time)
    return choose(of, calendar, present, others, firm_times(calendar, NOW, promised))


def test_minutes_within_the_last_stretch_are_worth_nothing(of: Book) -> None:
    present = made("3/21:00", setup_minutes=60)
    sooner = made("3/18:00")
    assert chosen(of, present, sooner) == StayingChoice(present)
    assert worth(of, calendar_of(of.bench_time), present) == (0, 0, 4, 4)


def test_a_stretch_earlier_is_taken_where_tonight_stays(of: Book) -> None:
    present, sooner = made("3/18:00"), made("2/21:30", setup_minutes=60)
    assert chosen(of, present, sooner) == StayingChoice(sooner)


def test_a_stretch_earlier_is_offered_where_tonight_would_change(of: Book) -> None:
    present, sooner = made("3/18:00"), made("2/18:00", first="18:05")
    assert chosen(of, present, sooner) == StayingChoice(present, sooner)


def test_more_work_may_join_tonight_where_it_gains_a_stretch(of: Book) -> None:
    present, sooner = made("3/18:00"), made("18:30")
    assert chosen(of, present, sooner) == StayingChoice(sooner)
    tonight = Interval(at("18:00"), at("22:00"))  # as on the sheet that was printed
    assert chosen(of, present, sooner, promised=(tonight,)) == StayingChoice(present, sooner)


def test_what_gains_more_but_moves_tonight_is_offered_beside_what_is_taken(of: Book) -> None:
    present, less, more = made("4/18:00"), made("3/18:00"), made("1/18:00", first="18:05")
    assert chosen(of, present, less, more) == StayingChoice(less, more)
    assert chosen(of, present, more, made("1/18:00")) == StayingChoice(made("1/18:00"))


def test_a_promised_evening_is_left_as_it_is(of: Book) -> None:
    present, sooner = made("3/18:00"), made("2/18:00")
    promised = Interval(at("3/18:00"), at("3/22:00"))
    assert chosen(of, present, sooner, promised=(promised,)) == StayingChoice(present, sooner)
    into = Interval(at("2/20:00"), at("2/21:00"))  # bench hours may have changed since
    assert chosen(of, present, sooner, promised=(into,)) == StayingChoice(present, sooner)
    starts = firm_stretches(calendar_of(of.bench_time), (promised, into))
    assert starts == {at("2/18:00"), at("3/18:00")}


def test_of_two_that_gain_alike_the_one_that_moves_less_is_taken(of: Book) -> None:
    present = made("4/18:00", first="1/18:00")
    much, little = made("3/18:00", first="2/18:00"), made("3/21:00", first="1/18:00")
    assert chosen(of, present, much, little) == StayingChoice(little)


def test_whole_days_late_count_and_minutes_do_not(of: Book) -> None:
    """A target means the end of its day: Tuesday's is missed by one day on Wednesday."""
    due = replace(of.projects[0], target=date(2031, 3, 4), weight=3)
    of = replace(of, projects=(due,))
    calendar = calendar_of(of.bench_time)
    assert worth(of, calendar, made("1/21:00")) == (0, 0, 2, 2)
    assert worth(of, calendar, made("2/18:00")) == (0, 3, 3, 3)
    present = made("2/21:00", late=3 * 1280)
    assert chosen(of, present, made("2/18:00", late=3 * 1100)) == StayingChoice(present)


def test_placing_more_comes_before_all_else(of: Book) -> None:
    present, more = made("1/18:00", unplaced=1), made("4/18:00")
    assert chosen(of, present, more) == StayingChoice(more)


def test_levels_that_a_person_put_before_the_finish_count(of: Book) -> None:
    order = (Level.SETUP, Level.LATE, Level.FINISH, Level.STRETCHES, Level.MOVED)
    of = replace(of, preferences=Preferences(order=order))
    present, cleaner = made("2/18:00", setup_minutes=9), made("3/18:00", setup_minutes=6)
    assert chosen(of, present, cleaner) == StayingChoice(cleaner)
    assert set(USUAL_ORDER) == set(order)


def test_earliest_finish_whatever_moves_goes_by_the_whole_cost(of: Book) -> None:
    of = replace(of, preferences=Preferences(staying=Staying.EARLIEST))
    present, sooner = made("3/21:00"), made("3/20:55")
    assert chosen(of, present, sooner) == StayingChoice(sooner)
    assert chosen(of, sooner, present) == StayingChoice(sooner)
