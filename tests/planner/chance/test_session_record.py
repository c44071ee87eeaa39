"""Which evenings were lost, and which were left to films that dried."""

from __future__ import annotations

from dataclasses import replace

from judge_cases.making import at, book, when, work

from planner.chance.session_record import held_and_lost
from planner.values.book import Book
from planner.values.coating import Mark, Window
from planner.values.project import Logged
from planner.values.step import Gate, Stage


def logged(*more: Logged) -> Book:
    """Return a book of two pieces of work, two days of waiting between them; Monday did one."""
    second = work("second", Stage.CLEAN, "hull/deck")
    wait = Gate(after="first", windows=(Window(opens=Mark(minutes=2 * 1440)),))
    of = book(work("first", Stage.CLEAN, "hull/deck"), replace(second, gates=(wait,)))
    first = Logged(model="cart", step="first", start=when("18:00"), end=when("18:10"))
    return replace(of, projects=(replace(of.projects[0], log=(first, *more)),))


SECOND = Logged(model="cart", step="second", start=when("3/18:30"), end=when("3/18:40"))


def test_an_evening_with_nothing_to_be_done_by_hand_is_not_lost() -> None:
    """Monday and Thursday held; Tuesday only waits, on Wednesday it opens at 18:10."""
    assert held_and_lost(logged(SECOND), at("4/12:00")) == (2, 1)


def test_work_that_could_be_done_all_the_time_makes_both_evenings_lost() -> None:
    of = logged(SECOND)
    project = of.projects[0]
    model = project.models[0]
    more = (*model.steps, work("third", Stage.CLEAN, "wheels/tread"))
    free = replace(project, models=(replace(model, steps=more),))
    assert held_and_lost(replace(of, projects=(free,)), at("4/12:00")) == (2, 2)


def test_without_a_fact_nothing_is_told() -> None:
    assert held_and_lost(book(work("first", Stage.CLEAN, "hull/deck")), at("4/12:00")) == (0, 0)
