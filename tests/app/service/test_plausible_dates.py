"""What lies too many years ahead is refused in one line; what is old is only old."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, datetime

import pytest
from coat_books import book_of, coat
from small_book import CART, NOW, PROJECT, ZONE, key, small_book

from app.service import logbook
from app.service.importing import import_file
from app.service.planning import plan
from planner.values.bench_time import Recurring
from planner.values.book import Book
from planner.values.coating import State
from planner.values.plausible_dates import in_reach
from planner.values.project import Logged, Observed, Pin, Project
from planner.values.refusal import Refused
from planner.values.step import Minutes, Stage
from storage.exchange import Exchange

Change = Callable[[Project, datetime], Project]


def _log(project: Project, when: datetime) -> Project:
    end = when.replace(hour=20)
    return replace(project, log=(Logged(model=CART, step="prime", start=when, end=end),))


def _under_way(project: Project, when: datetime) -> Project:
    return replace(project, log=(Logged(model=CART, step="prime", start=when),))


def _look(project: Project, when: datetime) -> Project:
    look = Observed(model=CART, step="prime", at=when, state=State.SET_TO_TOUCH, reached=True)
    return replace(project, observed=(look,))


def _on(project: Project, when: datetime) -> Project:
    return replace(project, pins=(Pin(model=CART, step="prime", on=when.date()),))


def _not_before(project: Project, when: datetime) -> Project:
    return replace(project, pins=(Pin(model=CART, step="prime", not_before=when),))


def _begins(project: Project, when: datetime) -> Project:
    return replace(project, begins=when.date())


def _changed(change: Change, year: int) -> Book:
    book = small_book()
    when = datetime(year, 3, 5, 19, 30, tzinfo=ZONE)
    return replace(book, projects=(change(book.project(PROJECT), when),))


@pytest.mark.parametrize("year", [2052, 2099, 2199])
@pytest.mark.parametrize("change", [_log, _under_way, _look, _on, _not_before, _begins])
def test_what_no_plan_reaches_is_refused_with_its_place_and_day(change: Change, year: int) -> None:
    book = _changed(change, year)
    with pytest.raises(Refused) as refused:
        plan(book, NOW)
    assert refused.value.place.startswith("projects[0].")
    assert f"{year}-03-05, more than 20 years after now; check the year" in refused.value.mend


@pytest.mark.parametrize("change", [_log, _under_way, _look, _begins])
@pytest.mark.parametrize("year", [1972, 2010, 2031, 2050])
def test_what_is_old_or_within_twenty_years_is_planned(change: Change, year: int) -> None:
    planned = plan(_changed(change, year), NOW)
    assert planned.verdict.accepted


def test_a_file_with_such_a_fact_is_not_taken_in_though_its_project_rests() -> None:
    asleep = _changed(lambda one, when: replace(_log(one, when), active=False), 2099)
    with pytest.raises(Refused, match=r"projects\[0\]\.log\[0\]\.start: cart/prime is dated"):
        import_file(small_book(), Exchange(asleep), now=NOW)
    in_reach(asleep, NOW)  # in a book it stays where it does no harm


@pytest.mark.parametrize("year", [1999, 2099])
def test_a_mistyped_year_in_a_correction_is_refused_by_its_field(year: int) -> None:
    book = _changed(_log, 2031)
    fact = book.project(PROJECT).log[0]
    wrong = replace(fact, start=fact.start.replace(year=min(year, 2031)))
    wrong = replace(wrong, end=fact.start.replace(year=year, hour=21))
    with pytest.raises(Refused) as refused:
        logbook.correct(book, key("prime"), wrong, NOW)
    assert refused.value.place == ("start" if year < 2031 else "end")


def test_an_old_entry_may_be_corrected_where_its_years_stay() -> None:
    book = _changed(_log, 1980)
    fact = replace(book.project(PROJECT).log[0], note="grandfather's")
    corrected = logbook.correct(book, key("prime"), fact, NOW).book
    assert corrected.project(PROJECT).log == (fact,)


def test_work_of_a_minute_begun_later_than_now_is_planned_soundly() -> None:
    """The clock of the book's owner went wrong; five minutes are the least that is left of it."""
    book = _changed(_under_way, 2032)
    model = book.project(PROJECT).models[0]
    short = replace(model.steps[0], minutes=replace(model.steps[0].minutes, fixed=1))
    model = replace(model, steps=(short, *model.steps[1:]))
    book = replace(book, projects=(replace(book.project(PROJECT), models=(model,)),))
    assert plan(book, NOW).verdict.accepted


@pytest.mark.parametrize("quick", [True, False])
def test_work_for_more_evenings_than_any_plan_reaches_is_named_and_the_rest_planned(
    quick: bool,
) -> None:
    """Thirty years of 366 days from a 6th of March on hold 30 times the 5th; 33 were needed."""
    coats = [
        replace(coat(Stage.BASE, "acrylic", "hull/deck", name=f"c{at}"), minutes=Minutes(fixed=45))
        for at in range(33)
    ]
    yearly = Recurring(rule="FREQ=YEARLY", since=date(2031, 3, 5), start="19:30", end="20:30")
    book = book_of(*coats)
    book = replace(book, bench_time=replace(book.bench_time, stretches=(yearly,), quiet=()))
    planned = plan(book, NOW, quick=quick)
    assert planned.verdict.accepted
    assert [len(planned.plan.placements), len(planned.plan.unplaced)] == [30, 3]
    assert planned.plan.unplaced[0].why == "there is no more bench time; add an evening"
