"""Wishes about pieces of work, on a book small enough to work out by hand."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, timedelta

from small_book import CART, NOW, PROJECT, ZONE, at, key, small_book

from app.service import edits, pins, wishes
from app.service.planning import plan
from planner.bench import calendar_of
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.moment import minute_of
from planner.values.plan import Plan
from planner.values.project import Pin
from planner.values.wishes import USUAL_ORDER, Level


def placed(book: Book) -> Plan:
    made = plan(book, NOW).plan
    assert judge(book, made).accepted
    return made


def stretch(book: Book, text: str):
    found = calendar_of(book.bench_time).stretch_at(at(text))
    assert found is not None
    return found


def start_of(made: Plan, step: str) -> int:
    found = made.placement(key(step))
    assert found is not None
    return found.start


def test_a_pin_names_the_date_and_the_plan_keeps_it() -> None:
    book = small_book()
    third = stretch(book, "2031-03-20 19:30")
    edit = pins.pin_to(book, key("prime"), third)
    assert edit.book.project(PROJECT).pins == (Pin(model=CART, step="prime", on=date(2031, 3, 20)),)
    assert "prime" in edit.name
    assert "2031-03-20" in edit.name
    made = placed(edit.book)
    assert third.interval.start <= start_of(made, "prime") < third.interval.end
    assert [wish.kept for wish in pins.wishes(edit.book, made)] == [True]
    assert pins.unpin(edit.book, key("prime")).book == book


def test_two_stretches_of_one_day_are_told_apart_by_their_hours() -> None:
    day = datetime(2031, 3, 20, 9, 0, tzinfo=ZONE)
    book = edits.add_stretch(small_book(), day, day + timedelta(hours=2)).book
    edit = pins.pin_to(book, key("prime"), stretch(book, "2031-03-20 09:30"))
    (pin,) = edit.book.project(PROJECT).pins
    assert (pin.on, pin.start, pin.end) == (None, day, day + timedelta(hours=2))
    made = placed(edit.book)
    assert minute_of(day) <= start_of(made, "prime") < minute_of(day) + 120
    assert [wish.kept for wish in pins.wishes(edit.book, made)] == [True]


def test_a_wish_about_the_time_takes_the_place_of_the_last() -> None:
    book = pins.pin_to(small_book(), key("prime"), stretch(small_book(), "2031-03-20 19:30")).book
    book = pins.beside(book, key("prime"), key("sand")).book
    later = at("2031-03-13 20:00")
    edit = pins.not_before(book, key("prime"), later)
    assert {
        (pin.on, pin.not_before is not None, pin.beside) for pin in edit.book.project(PROJECT).pins
    } == {(None, True, None), (None, False, "cart/sand")}
    made = placed(edit.book)
    assert start_of(made, "prime") >= later
    assert [wish.kept for wish in pins.wishes(edit.book, made)] == [True, True]
    calendar = calendar_of(edit.book.bench_time)
    assert calendar.stretch_at(start_of(made, "prime")) == calendar.stretch_at(
        start_of(made, "sand")
    )
    for pin in edit.book.project(PROJECT).pins:
        edit = pins.remove(edit.book, PROJECT, pin)
    assert edit.book == small_book()


def test_one_coat_of_several_is_pinned_alone() -> None:
    plain = small_book()
    model = plain.project(PROJECT).model(CART)
    twice = tuple(
        replace(
            step,
            applications=tuple(replace(application, coats=2) for application in step.applications),
        )
        if step.id == "sand"
        else step
        for step in model.steps
    )
    project = replace(plain.project(PROJECT), models=(replace(model, steps=twice),))
    book = replace(plain, projects=(project,))
    edit = pins.pin_to(book, key("sand", 2), stretch(book, "2031-03-27 19:30"))
    (pin,) = edit.book.project(PROJECT).pins
    assert pin.coat == 2
    assert not pins.wishes_of(edit.book, key("sand", 1))
    assert pins.wishes_of(edit.book, key("sand", 2)) == (pin,)


def test_what_has_happened_turns_a_wish_into_a_preference_and_that_is_said() -> None:
    edit = pins.pin_to(small_book(), key("prime"), stretch(small_book(), "2031-03-20 19:30"))
    plain = plan(small_book(), NOW).plan
    assert [wish.kept for wish in pins.wishes(edit.book, plain)] == [False]
    assert [wish.kept for wish in pins.wishes(edit.book, None)] == [None]


def test_the_stretch_before_and_after() -> None:
    calendar = calendar_of(small_book().bench_time)
    here = at("2031-03-13 20:00")
    later = pins.next_stretch(calendar, here, 1, NOW)
    sooner = pins.next_stretch(calendar, here, -1, NOW)
    assert later is not None
    assert sooner is not None
    assert (sooner.on, later.on) == (date(2031, 3, 6), date(2031, 3, 20))
    assert pins.next_stretch(calendar, NOW + 5, -1, NOW) is None


def test_what_counts_most_is_put_in_order() -> None:
    book = wishes.move_level(small_book(), Level.SETUP, -3).book
    assert book.preferences.order[0] is Level.SETUP
    assert sorted(book.preferences.order) == sorted(USUAL_ORDER)
    assert wishes.move_level(book, Level.SETUP, -1).book == book
    assert wishes.usual_order(book).book == small_book()


def test_the_pilot_is_named_and_named_no_more() -> None:
    edit = wishes.set_pilot(small_book(), PROJECT, CART)
    assert edit.book.project(PROJECT).pilot == CART
    assert wishes.set_pilot(edit.book, PROJECT, "").book == small_book()
