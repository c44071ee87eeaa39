"""Lower bounds: exactly the sums done by hand, and never above a plan that holds."""

from __future__ import annotations

from dataclasses import replace

import pytest
from drawn_examples import drawn
from hypothesis import assume, given
from hypothesis import strategies as st
from judge_cases.making import (
    GEAR,
    HULL,
    MONDAY,
    NOW,
    TRACKS,
    at,
    book,
    coating,
    location,
    paint,
    spray,
    work,
)
from strategies import NOW_MINUTE, books

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.greedy import SerialSchedule, plan_book
from planner.schedule.judge import judge
from planner.schedule.optimise import lower_bounds
from planner.schedule.optimise.board import Board
from planner.schedule.optimise.last_stretch_bound import Lowest
from planner.schedule.optimise.master import WorkBudget
from planner.schedule.optimise.stretch_reachability import reaches
from planner.schedule.priority_rules import RULES
from planner.schedule.problem import Problem
from planner.values.book import Book
from planner.values.coating import Mark, Window
from planner.values.gear import Airbrush, Gear
from planner.values.model import Model
from planner.values.moment import zone_named
from planner.values.room import Room
from planner.values.step import Gate, Stage, Step

LATE = 1.1  # label times come at most a tenth later (definition 6; common practice, no source)


def board_of(book: Book, now: int = NOW, days: int = 20) -> Board:
    """Return the board of a book over some days."""
    calendar = calendar_of(book.bench_time)
    cure = Cure(book.room, zone_named(book.bench_time.zone))
    problem = Problem(book, now, cure=cure, calendar=calendar)
    search = SerialSchedule(problem, RULES[0], 0, frozenset())
    search.take_facts()
    return Board(problem, search.table, now + days * 1440)


def carts(of: Book, *orders: tuple[Step, ...]) -> Book:
    """Return the book with one cart for each working order."""
    project = of.projects[0]
    parts = (HULL, TRACKS)
    models = tuple(
        Model(name=f"cart {n}", parts=parts, steps=steps) for n, steps in enumerate(orders)
    )
    return replace(of, projects=(replace(project, models=models),))


def rub(name: str, minutes: int, *waits: tuple[str, int]) -> Step:
    """Return work that lays no film, and waits for others by the clock [min]."""
    gates = tuple(Gate(after=after, windows=(Window(opens=Mark(minutes=m)),)) for after, m in waits)
    return work(name, Stage.WIPE, "hull/deck", minutes=minutes, gates=gates)


def at_once(*minutes: int) -> Book:
    """Return a book of as many carts, each with one piece of work of so many minutes."""
    return carts(book(rub("rub", 1)), *((rub("rub", minute),) for minute in minutes))


# -- the path ---------------------------------------------------------------------------------


def test_path_of_waits_within_an_evening():
    """18:00 + 10, + 60 of waiting, + 20, + 90 of waiting, + 15 = 21:15."""
    of = book(rub("a", 10), rub("b", 20, ("a", 60)), rub("c", 15, ("b", 90)))
    found = lower_bounds.path(board_of(of))
    assert (found.finish, found.stretch) == (at("21:15"), 0)
    assert "chain of 3 passes" in found.proof
    assert "1 h 30 min after b" in found.proof


def test_path_leaps_over_the_night():
    """18:00 + 10 + 200 = 21:30, where 40 do not fit before 22:00; so 18:00 + 40 a day later."""
    of = book(rub("a", 10), rub("b", 40, ("a", 200)))
    found = lower_bounds.path(board_of(of))
    assert (found.finish, found.stretch) == (at("1/18:40"), 1)


def test_path_ends_when_the_last_film_may_be_held():
    """18:00 + 10, and 100 min on the label, a tenth more at the latest: 20:00."""
    slow = coating("slow", dry_to_handle=100)
    found = lower_bounds.path(
        board_of(book(paint("a", "hull/deck", coat="slow"), coatings=(slow,)))
    )
    assert found.finish == pytest.approx(at("18:10") + 100 * LATE, abs=1)


def test_path_of_a_sprayed_pass_begins_after_the_load():
    """The airbrush is loaded in 3 min from 18:00 on: 18:03 + 25, and 30 × 1.1 of drying."""
    found = lower_bounds.path(board_of(book(spray("a", "hull/deck", minutes=25))))
    assert found.finish == pytest.approx(at("18:28") + 30 * LATE, abs=1)


# -- hands ------------------------------------------------------------------------------------


def test_hands_fill_the_bench_time():
    """4 × 70 = 280; 240 on the first evening, and 40 on the second."""
    found = lower_bounds.hands(board_of(at_once(70, 70, 70, 70)))
    assert (found.finish, found.stretch) == (at("1/18:40"), 1)
    assert "280 minutes" in found.proof


def test_hands_that_just_fill_an_evening():
    """3 × 80 = 240, the evening from 18:00 to 22:00."""
    assert lower_bounds.hands(board_of(at_once(80, 80, 80))).finish == at("22:00")


def test_hands_count_from_when_the_work_can_begin():
    """What waits for 23 h is done on the second evening: 2 × 100 from 18:00 on is 21:20.

    Over both evenings 2 × 10 + 2 × 100 would fit into the first.
    """
    order = (rub("a", 10), rub("b", 100, ("a", 1380)))
    found = lower_bounds.hands(board_of(carts(book(rub("a", 1)), order, order)))
    assert (found.finish, found.stretch) == (at("1/21:20"), 1)


@pytest.mark.parametrize(
    ("coats", "setups"),
    [
        (("sand", "sand"), 3 + 6),  # one load, one cleaning
        (("sand", "green"), 3 + 6 + 6),  # and a change within the family
    ],
)
def test_hands_set_up_the_airbrush(coats, setups):
    """2 × 30 of spraying, and the least set-ups; the last film dries longer than cleaning takes."""
    of = book(rub("a", 1), coatings=tuple(coating(c, dry_to_handle=100) for c in sorted({*coats})))
    of = carts(of, *((spray("a", "hull/deck", coat=c, minutes=30),) for c in coats))
    assert lower_bounds.hands(board_of(of)).finish == at("18:00") + 60 + setups


def test_all_may_be_done_before_the_airbrush_is_clean():
    """3 of loading and 30 of spraying, dry 2 min later at most; cleaning ends at 18:39."""
    quick = coating("sand", set_to_touch=1, dust_free=1, tack_free=1, dry_to_handle=1)
    of = book(spray("a", "hull/deck", minutes=30), coatings=(quick,))
    plan = plan_book(of, at("18:00"))
    assert plan.cost.finish <= 35
    assert lower_bounds.hands(board_of(of)).finish <= at("18:00") + plan.cost.finish


def test_hands_set_up_once_an_evening():
    """3 × 100 of spraying: two evenings of 240, so (3 + 6) × 2; 318 - 240 = 78 on the second."""
    steps = ((spray("a", "hull/deck", minutes=100),),) * 3
    of = carts(book(rub("a", 1), coatings=(coating("sand", dry_to_handle=100),)), *steps)
    assert lower_bounds.hands(board_of(of)).finish == at("1/18:00") + 78


# -- the airbrush -----------------------------------------------------------------------------


def test_the_airbrush_keeps_the_quiet_hours():
    """From 18:00 to 21:00, less 3 of loading and 6 of cleaning, are 171; 4 × 50 - 171 = 29."""
    of = carts(book(rub("a", 1)), *((spray("a", "hull/deck", minutes=50),) for _ in range(4)))
    found = lower_bounds.airbrush(board_of(of))
    assert (found.finish, found.stretch) == (at("1/18:00") + 29, 1)
    assert "200 sprayed minutes" in found.proof


def test_the_airbrush_is_set_up_as_quickly_as_the_quickest():
    """With another airbrush, 1 of loading and 2 of cleaning: 177; 200 - 177 = 23."""
    of = carts(book(rub("a", 1)), *((spray("a", "hull/deck", minutes=50),) for _ in range(4)))
    quick = Airbrush(name="quick", load_minutes=1, clean_minutes=2)
    of = replace(of, gear=Gear(airbrushes=(*GEAR.airbrushes, quick)))
    assert lower_bounds.airbrush(board_of(of)).finish == at("1/18:00") + 23


# -- drying places ----------------------------------------------------------------------------


def test_drying_places_are_taken_one_after_the_other():
    """Three carts on one place, each 10 of work and 600 × 1.1 of drying, an hour taken off.

    That is 3 × (10 + 660 - 59) from 18:00 on; the hour is what looking every
    hour for the quickest drying may miss.
    """
    slow = coating("slow", dry_to_handle=600)
    step = paint("a", "hull/deck", coat="slow")
    of = replace(
        carts(book(step, coatings=(slow,)), (step,), (step,), (step,)),
        room=Room(locations=(location("bench", 1),)),
    )
    found = lower_bounds.drying_places(board_of(of))
    assert found.finish == pytest.approx(at("18:00") + 3 * (10 + 600 * LATE - 59), abs=3)
    assert "of 1 places in bench" in found.proof
    two = replace(of, room=Room(locations=(location("bench", 2),)))
    half = lower_bounds.drying_places(board_of(two)).finish
    assert half == pytest.approx(at("18:00") + 3 * (10 + 600 * LATE - 59) / 2, abs=3)


def test_a_unit_takes_its_drying_place_once():
    """Three coats side by side on one hull dry at the same time, on one drying place.

    Each takes 10 min and dries for 120 × 1.1 = 132: at 18:30 the last is
    done, and about 20:42 all may be held; a plan does just that.
    """
    slow = coating("slow", dry_to_handle=120)
    sides = (paint(name, f"hull/{name}", coat="slow") for name in ("deck", "side", "belly"))
    of = replace(book(*sides, coatings=(slow,)), room=Room(locations=(location("bench", 1),)))
    plan = plan_book(of, NOW)
    assert judge(of, plan).accepted
    assert NOW + plan.cost.finish == pytest.approx(at("20:42"), abs=1)
    assert lower_bounds.drying_places(board_of(of)).finish <= NOW + plan.cost.finish


# -- all of them ------------------------------------------------------------------------------


def test_the_best_bound_counts():
    """Hands: 280 min to 18:40 on the second evening; but no four pieces fit the first: 19:10."""
    board = board_of(at_once(70, 70, 70, 70))
    assert lower_bounds.hands(board).finish == at("1/18:40")
    assert lower_bounds.least_finish(board).finish == at("1/19:10")


def test_set_ups_of_a_pool_refute_what_minutes_allow():
    """Five carts take 85 minutes of sand each: two an evening, for three take 255.

    An evening has 240, of which loading and cleaning leave 231; by the minutes
    alone two evenings hold the 425.
    """
    of = carts(
        book(spray("coat", "hull/deck", minutes=85)),
        *[[spray("coat", "hull/deck", minutes=85)]] * 5,
    )
    board = board_of(of)
    least = Lowest(board, reaches(board), lower_bounds.path(board)).pool(WorkBudget(1.0))
    assert least.stretch == 2


@pytest.mark.parametrize(
    ("count", "coats", "places", "evenings"),
    [
        (3, 1, 1, 3),
        (3, 1, 2, 2),
        (6, 1, 1, 6),  # the evenings between the first and the last are one pool
        (2, 3, 1, 6),  # each coat waits for the day after
    ],
)
def test_what_is_wet_until_an_evening_ends_keeps_its_place(count, coats, places, evenings):
    """A film takes 600 min, an evening has 240: so each place is taken once an evening."""
    steps = [
        paint(
            f"coat-{number}",
            "hull/deck",
            coat="slow",
            gates=(Gate(after=f"coat-{number - 1}", windows=(Window(opens=Mark(minutes=1380)),)),)
            if number
            else (),
        )
        for number in range(coats)
    ]
    of = replace(
        carts(book(rub("a", 1), coatings=(coating("slow", dry_to_handle=600),)), *[steps] * count),
        room=Room(locations=(location("bench", places),)),
    )
    board = board_of(of)
    least = Lowest(board, reaches(board), lower_bounds.path(board)).pool(WorkBudget(1.0))
    assert least.stretch + 1 == evenings


def test_least_lateness_of_what_cannot_be_in_time():
    """Due on Monday, the path ends at 18:40 on Tuesday: 18 h 40 min late, of weight 3."""
    of = book(rub("a", 10), rub("b", 40, ("a", 200)), target=MONDAY, weight=3)
    assert lower_bounds.least_late(board_of(of)) == 3 * (18 * 60 + 40)


def test_nothing_is_stated_of_a_plan_that_leaves_passes_over():
    board = board_of(at_once(10))
    assert lower_bounds.stated(board, lower_bounds.least_finish(board), 0, placed=False) == ()
    stated = lower_bounds.stated(board, lower_bounds.least_finish(board), 0, placed=True)
    assert [(one.level, one.value) for one in stated] == [
        ("unplaced", 0),
        ("late", 0),
        ("finish", at("18:10") - NOW),
    ]


@drawn(25)
@given(kinds=st.tuples(st.booleans(), st.booleans(), st.booleans()), data=st.data())
def test_no_bound_is_above_a_plan_that_holds(kinds, data):
    logged, pinned, wished = kinds
    of = data.draw(books(logged=logged, pinned=pinned, wished=wished, most_models=2))
    # Where films dry is settled beforehand: the bounds are of one place for each.
    of = replace(of, projects=tuple(_settled(project) for project in of.projects))
    plan = plan_book(of, NOW_MINUTE, tries=3)
    assert judge(of, plan).accepted
    assume(not plan.unplaced)
    board = board_of(of, NOW_MINUTE)
    finish = NOW_MINUTE + plan.cost.finish
    assert lower_bounds.path(board).finish <= finish
    assert lower_bounds.hands(board).finish <= finish
    assert lower_bounds.airbrush(board).finish <= finish
    assert lower_bounds.drying_places(board).finish <= finish
    assert lower_bounds.least_late(board) <= plan.cost.late
    begun = [placed.pieces[-1].start for placed in plan.placements if not placed.logged]
    last = board.number_at(max(begun)) if begun else 0
    assert lower_bounds.filled(board).finish <= finish
    assert lower_bounds.least_finish(board).stretch <= last
    pooled = Lowest(board, reaches(board), lower_bounds.path(board)).pool(WorkBudget(1.0))
    assert pooled.stretch <= last
    assert pooled.finish <= finish


def _settled(project):
    models = tuple(
        replace(model, steps=tuple(replace(step, or_in=()) for step in model.steps))
        for model in project.models
    )
    return replace(project, models=models)
