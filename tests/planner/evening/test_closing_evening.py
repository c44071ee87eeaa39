"""What an evening leaves behind, and what is answered to it, as one edit."""

from __future__ import annotations

from dataclasses import replace

import pytest
from logged_book import moment
from small_book import BRUSH, CART, NOW, PROJECT, at, key, small_book

from app.service import logbook
from app.service.closing_evening import ClosingAnswers, EveningSummary, Feel, WorkState, closed
from planner.bench import calendar_of
from planner.cure import Cure
from planner.evening.closing_evening import summary
from planner.schedule.greedy import plan_book
from planner.tonight import run_sheet
from planner.values.book import Book
from planner.values.coating import State
from planner.values.moment import zone_named
from planner.values.plan import Plan
from planner.values.project import Event, Logged, Project

END = at("2031-03-06 21:10")
SINCE = at("2031-03-06 19:30")


def facts(**logged: tuple[str, str | None]) -> Book:
    log = tuple(
        Logged(
            model=CART,
            step=step,
            start=moment(f"2031-03-06 {start}"),
            end=None if end is None else moment(f"2031-03-06 {end}"),
            airbrush=BRUSH if step in ("prime", "sand") else "",
        )
        for step, (start, end) in logged.items()
    )
    book = small_book()
    return replace(book, projects=(replace(book.projects[0], log=log),))


def plan_of(book: Book, now: int) -> Plan:
    zone = zone_named(book.bench_time.zone)
    return plan_book(book, now, cure=Cure(book.room, zone), calendar=calendar_of(book.bench_time))


def left(book: Book, now: int = END) -> EveningSummary:
    plan = plan_of(book, now)
    cups = {name: held.coating for name, held in logbook.cups_now(book, now).items()}
    return summary(book, plan, run_sheet(book, plan, now), now, cups, since=SINCE)


def project_of(book: Book) -> Project:
    return book.project(PROJECT)


def test_done_and_half_done_are_told_apart() -> None:
    found = left(facts(prime=("19:33", "19:43"), sand=("21:00", None)))
    assert found.done == (key("prime"),)
    assert found.half == (key("sand"),)
    assert [(one.model, one.last) for one in found.models] == [(CART, key("sand"))]


def test_what_the_evening_before_did_is_not_this_evenings() -> None:
    book = facts(prime=("10:00", "10:10"))
    assert left(book).done == ()
    assert left(book).models == ()


def test_what_the_sheet_asked_for_and_nobody_noted_is_asked_about() -> None:
    assert key("prime") in left(small_book(), NOW + 5).not_told


def test_films_say_how_far_they_should_have_come() -> None:
    """In 23 °C and 50 % RH; by then the primer is at least dry to touch, the sand is wet."""
    found = left(facts(prime=("19:33", "19:43")))
    (film,) = found.films
    assert (film.key, film.coating) == (key("prime"), "grey primer")
    assert film.likely is not None
    fresh = left(facts(prime=("21:00", "21:10")))
    assert fresh.films[0].likely is None


def test_cups_and_mixes_are_told() -> None:
    """The airbrush holds the mix of sand within its idle limit, and a jar could keep it."""
    found = left(facts(sand=("21:00", "21:10")), at("2031-03-06 21:11"))
    assert [(cup.airbrush, cup.coating) for cup in found.cups] == [(BRUSH, "thin sand")]
    assert [portion.coating for portion in found.cups[0].portions] == ["sand", "water thinner"]
    cleaned = left(facts(sand=("19:33", "19:43")), at("2031-03-06 21:25"))
    if not cleaned.cups:
        assert [jar.coating for jar in cleaned.jars] == ["thin sand"]


def test_what_is_next_is_the_first_work_ahead() -> None:
    found = left(facts(prime=("19:33", "19:43")), at("2031-03-06 21:31"))
    assert found.next_start is not None
    assert found.next_start >= at("2031-03-13 19:30")  # the next bench time is a week later
    assert found.next_work


# --- the answers ------------------------------------------------------------------------


def test_all_answers_are_one_edit() -> None:
    book = facts(prime=("19:33", "19:43"), sand=("21:00", None))
    answers = ClosingAnswers(
        work={key("sand"): WorkState.DONE},
        cleaned=(BRUSH,),
        kept={"thin sand": 4.0},
        feels={key("prime"): Feel.TOUCH_DRY, key("sand"): Feel.STICKY},
    )
    after = closed(book, answers, END, plan_of(book, END)).book
    project = project_of(after)
    assert [fact.end is not None for fact in project.log] == [True, True]
    assert [cleaning.airbrush for cleaning in after.cleaned] == [BRUSH]
    (jar,) = after.supplies.leftovers
    assert (jar.name, jar.ml, jar.made) == ("thin sand", 4.0, moment("2031-03-06 21:10"))
    assert jar.portions == book.mixes[0].portions
    looks = {look.step: (look.state, look.reached) for look in project.observed}
    assert looks == {"prime": (State.TACK_FREE, True), "sand": (State.TACK_FREE, False)}
    assert project.diary[-1].event is Event.STOPPED
    assert calendar_of(after.bench_time).stretch_at(END) is None  # the stretch has ended


def test_half_done_work_can_be_put_back_and_what_nobody_noted_can_be_done() -> None:
    book = facts(prime=("19:33", None))
    after = closed(book, ClosingAnswers(work={key("prime"): WorkState.NOT_BEGUN}), END).book
    assert project_of(after).log == ()
    plan = plan_of(small_book(), NOW)
    answers = ClosingAnswers(work={key("prime"): WorkState.DONE})
    (fact,) = project_of(closed(small_book(), answers, END, plan).book).log
    placed = plan.placement(key("prime"))
    assert placed is not None
    assert fact.end is not None
    assert fact.end.timestamp() == placed.end * 60  # as planned, for nobody said otherwise


def test_with_nothing_answered_only_the_evening_ends() -> None:
    book = facts(prime=("19:33", "19:43"))
    after = closed(book, ClosingAnswers(), END).book
    assert project_of(after).log == project_of(book).log
    assert project_of(after).diary[-1].event is Event.STOPPED


@pytest.mark.parametrize("now", ["2031-03-06 21:45", "2031-03-07 12:00"])
def test_an_evening_can_be_closed_after_its_time(now: str) -> None:
    after = closed(facts(prime=("19:33", "19:43")), ClosingAnswers(), at(now)).book
    assert after.bench_time == small_book().bench_time
    assert project_of(after).diary[-1].at == moment(now)


def test_a_photo_goes_to_the_last_work_on_its_model() -> None:
    book = facts(prime=("19:33", "19:43"))
    answers = ClosingAnswers(photos={key("prime"): "cart.png"})
    after = closed(book, answers, END).book
    assert project_of(after).log[0].photos == ("cart.png",)
