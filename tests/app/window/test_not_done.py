"""A project with work that has no place is nowhere called done."""

from __future__ import annotations

from dataclasses import replace

from small_book import NOW, PROJECT, small_book
from window_steps import MakeWindow

from app.window.drying_sidebar import finish_line
from app.window.plan_snapshot import picture_of
from planner.values.book import Book


def _without_evenings() -> Book:
    book = small_book()
    return replace(book, bench_time=replace(book.bench_time, stretches=()))


def test_the_finish_beside_the_pages_says_what_is_without_a_place(qapp) -> None:
    picture = picture_of(_without_evenings(), NOW)
    ((name, minute),) = picture.plan.finishes
    line = finish_line(picture.plan, picture, name, minute, picture.zone)
    assert line == f"not done; without a place: {len(picture.plan.unplaced)}"
    sound = picture_of(small_book(), NOW)
    ((name, minute),) = sound.plan.finishes
    assert finish_line(sound.plan, sound, name, minute, sound.zone).startswith("done ")


def test_the_list_of_projects_says_so_too(make_window: MakeWindow) -> None:
    window = make_window(_without_evenings(), NOW)
    model = window.projects.model
    told = str(model.data(model.index(0)))
    assert PROJECT in told
    assert "not done; without a place: " in told
