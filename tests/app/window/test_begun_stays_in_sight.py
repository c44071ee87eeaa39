"""Begun and ticked work stays in sight in Tonight and at the bench, by keys."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from bench_steps import AtTheBench
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from small_book import NOW, at, key, small_book
from tonight_steps import Tonight, row_of
from window_steps import MakeWindow, settle

from planner.values.book import Book
from planner.values.plan import PassKey

Key = Qt.Key
Come = Callable[[Book, int], Tonight]


@pytest.fixture
def tonight(qtbot, qapp: QApplication, make_window: MakeWindow) -> Come:
    """Return how to come to Tonight with a book at a time."""
    return lambda book, now: Tonight(qtbot, qapp, make_window(book, now), now)


def order(here: Tonight) -> list[PassKey]:
    return [row.key for row in here.window.tonight.rows]


def test_begun_work_is_in_sight_after_hours_and_the_day_after_until_it_is_put_back(
    tonight: Come,
) -> None:
    here = tonight(small_book(), NOW)
    here.tick(key("prime"))
    here.settle()
    for later in ("2031-03-06 21:50", "2031-03-07 12:00"):
        here.now = at(later)
        here.window.session.replan()
        here.settle()
        row = row_of(here.window, key("prime"))
        head = row.model.headerData(row.at, Qt.Orientation.Vertical)
        assert head.endswith("· begun")
        assert row.checked(0)
    here.back(key("prime"))
    here.settle()
    assert here.log == ()


def test_it_can_be_done_after_hours(tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    here.tick(key("prime"))
    here.settle()
    here.now = at("2031-03-06 21:40")
    here.window.session.replan()
    here.settle()
    here.done(key("prime"))
    here.settle()
    assert here.log[0].end is not None
    assert row_of(here.window, key("prime")).over  # and stays, ticked, while the evening is open


def test_done_work_stays_where_it_stood(qapp: QApplication, tonight: Come) -> None:
    here = tonight(small_book(), NOW)
    before = order(here)
    assert before[:2] == [key("prime"), key("sand")]
    here.now += 1
    last = before[-1]
    here.done(last)
    dialog = qapp.activeModalWidget()
    if dialog is not None:
        here.answer(dialog.begin)
    here.settle()
    assert order(here) == before
    assert row_of(here.window, last).over


def test_begun_work_is_the_job_at_the_bench_the_day_after(qtbot, make_window: MakeWindow) -> None:
    here = AtTheBench(qtbot, make_window(small_book(), NOW), NOW)
    here.press(Key.Key_Space, Key.Key_S)
    here.press(Key.Key_Escape)
    here.now = at("2031-03-07 12:00")
    here.window.session.replan()
    here.settle()
    settle(QApplication.instance())
    here.window.tonight.setFocus()
    qtbot.keyClick(here.window.tonight, Key.Key_B)
    names = [job.name[0] for job in here.bench.evening.jobs]
    assert names[0] == str(key("prime"))
