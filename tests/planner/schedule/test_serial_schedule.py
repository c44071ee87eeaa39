"""What is sorted out before fitting, and what outlasts an event, changes no plan."""

from __future__ import annotations

from dataclasses import replace

import pytest
from drawn_examples import drawn
from hypothesis import HealthCheck, given
from hypothesis import strategies as st
from judge_cases.making import NOW, at, book, paint, spray, when
from strategies import NOW_MINUTE, books

from planner.bench import calendar_of
from planner.cure import Cure
from planner.schedule.compiled_book import frame_of
from planner.schedule.greedy import plan_book
from planner.schedule.priority_rules import RULES, Rule, drawn_rules
from planner.schedule.problem import Problem
from planner.schedule.serial_schedule import SerialSchedule
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.project import Logged, Pin
from planner.values.room import AirPoint


class FitsAll(SerialSchedule):
    """The same search, but nothing is sorted out beforehand: every ready pass is fitted."""

    def _roomy(self, stretch, lead, soon):
        ready = [index for index in self.ready if not self.table.held_up(index)]
        now = [index for index in ready if self.floor[index] <= soon]
        return now, [index for index in ready if self.floor[index] > soon]


def run(
    search: type[SerialSchedule], book: Book, rule: Rule, now: int = NOW_MINUTE
) -> SerialSchedule:
    """Return a finished search of one rule."""
    cure = Cure(book.room, zone_named(book.bench_time.zone))
    problem = Problem(book, now, cure=cure, calendar=calendar_of(book.bench_time))
    made = search(problem, rule, 5, frozenset())
    made.run()
    return made


@pytest.mark.hypothesis
@pytest.mark.parametrize("kind", [{}, {"logged": True}, {"pinned": True, "wished": True}])
def test_what_is_sorted_out_would_not_have_fitted(kind):
    @drawn(12, HealthCheck.data_too_large)
    @given(book=books(**kind), rule=st.sampled_from((*RULES, *drawn_rules(2, 1))))
    def alike(book: Book, rule: Rule) -> None:
        quick, patient = run(SerialSchedule, book, rule), run(FitsAll, book, rule)
        assert quick.table.placements == patient.table.placements
        assert quick.table.bench == patient.table.bench
        assert quick.unplaced == patient.unplaced

    alike()


def test_work_begun_is_finished():
    # 440 minutes, at least 200 at a time: an evening has room for 240, the next for the rest.
    long = paint("base", "hull/deck", minutes=440, split_least=200)
    placed = run(SerialSchedule, book(long), RULES[0], NOW).table.placements
    assert [piece.minutes for piece in placed[0].pieces] == [240, 200]


TWO = book(spray("base", "hull/deck"), paint("links", "tracks"))
DONE = Logged(model="cart", step="base", start=when("18:03"), end=when("18:13"))


def with_project(of: Book, **changes: object) -> Book:
    """Return the book with its project changed."""
    return replace(of, projects=(replace(of.projects[0], **changes),))


def test_the_frame_outlasts_new_times_and_new_air_but_no_edit():
    frame = frame_of(TWO)
    later = replace(DONE, end=when("18:15"))
    begun = frame_of(with_project(TWO, log=(DONE,)))
    assert frame_of(with_project(TWO, log=(later,))) is begun
    assert begun is not frame
    warm = replace(
        TWO.room.locations[0], workdays=(AirPoint(at="00:00", temperature_c=30, humidity_pct=30),)
    )
    room = replace(TWO.room, locations=(warm, *TWO.room.locations[1:]))
    assert frame_of(replace(TWO, room=room)) is frame
    pin = Pin(model="cart", step="base", start=when("1/18:00"), end=when("1/22:00"))
    assert frame_of(with_project(TWO, pins=(pin,))) is not frame
    assert frame_of(with_project(TWO, models=(replace(TWO.projects[0].models[0]),))) is not frame
    assert frame_of(with_project(TWO, active=False)) is not frame


def test_a_kept_frame_forgets_no_fact_and_keeps_none():
    logged = with_project(TWO, log=(DONE,))
    for _ in range(2):
        assert plan_book(logged, at("18:20")).placements[0].logged
        assert not any(placement.logged for placement in plan_book(TWO, NOW).placements)


def test_a_pilot_holds_the_rest_once_something_was_logged():
    # Work logged for another model before the pilot does not loose the rest (definition 24).
    cart = TWO.projects[0].models[0]
    two = with_project(TWO, models=(cart, replace(cart, name="second")), pilot="second")
    begun = with_project(two, log=(DONE,))
    assert frame_of(begun) is not frame_of(two)
    links = {p.key.model: p.start for p in plan_book(begun, at("18:20")).placements[1:]}
    assert links["second"] < links["cart"]


def test_tables_of_drying_are_not_mistaken_for_those_of_other_air():
    # Twice as dry and 7 K warmer, a waterborne film must be sooner dry.
    of = book(paint("base", "hull/deck"), paint("camo", "hull/deck", coat="green"))
    first = plan_book(of, NOW).finishes
    point = AirPoint(at="00:00", temperature_c=30, humidity_pct=25)
    warm = replace(of.room.locations[0], workdays=(point,), weekends=())
    room = replace(of.room, locations=(warm, *of.room.locations[1:]))
    assert plan_book(replace(of, room=room), NOW).finishes < first
    assert plan_book(of, NOW).finishes == first
