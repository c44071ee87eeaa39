"""What is told where there is no bench time: nothing is done, and the cause stands once."""

from __future__ import annotations

from dataclasses import replace

from small_book import NOW, small_book

from app.service import planning, run_sheet_text
from planner.tonight import run_sheet
from planner.values.book import Book


def _without_evenings() -> Book:
    book = small_book()
    return replace(book, bench_time=replace(book.bench_time, stretches=()))


def test_a_project_that_has_no_evening_is_not_called_done() -> None:
    book = _without_evenings()
    plan = planning.plan(book, NOW).plan
    lines = [str(line) for line in run_sheet_text.finish_lines(plan, book)]
    assert lines[0] == f"yard: not done; without a place: {len(plan.unplaced)}"
    assert not any("in time" in line for line in lines)


def test_what_only_waits_is_counted_and_the_cause_named() -> None:
    plan = planning.plan(_without_evenings(), NOW).plan
    lines = [str(line) for line in run_sheet_text.unplaced_lines(plan)]
    assert lines[0] == "no place found for cart/prime: there is no more bench time; add an evening"
    waiting = len(plan.unplaced) - 1
    assert lines[1:] == [f"no place found for what waits for such work: {waiting}"]


def test_an_evening_that_will_not_come_has_no_hours() -> None:
    book = _without_evenings()
    sheet = run_sheet(book, planning.plan(book, NOW).plan, NOW)
    text = run_sheet_text.run_sheet_text(sheet, book)
    assert text == "No bench time ahead; add an evening."
