"""The plan that was shown comes back: after a restart, by undo and redo (definition 27a)."""

from __future__ import annotations

import json
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from window_steps import MakeWindow, replan

from app.service import bench_time_edits, demos, pins
from app.window.main_window import MainWindow
from app.window.session import Session
from planner.values.book import Book
from planner.values.moment import moment_of
from storage.bench_book import BenchBook
from storage.exchange import dump_plan


@pytest.fixture
def harbour() -> tuple[Book, int]:
    book = demos.read("harbour_tenders").book
    return book, demos.first_evening(book)


def told(window: MainWindow) -> str:
    """Return the plan on screen as JSON, but for what names the input."""
    session = window.session
    assert session.picture is not None
    assert session.book is not None
    plan = dump_plan(session.picture.plan, session.book)
    for name in ("input", "bound", "status"):
        plan.pop(name)
    plan["cost"].pop("moved")
    return json.dumps(plan, indent=1)


def lose(window: MainWindow, days: int) -> None:
    """Take an evening away."""
    session = window.session
    assert session.picture is not None
    day = moment_of(session.now, session.zone).date() + timedelta(days=days)
    session.attempt(lambda book: bench_time_edits.skip_dates(book, day, day))


def test_undo_and_redo_show_the_plans_that_were_shown_then(
    qtbot, make_window: MakeWindow, harbour: tuple[Book, int]
) -> None:
    window = make_window(*harbour)
    seen = [told(window)]
    for days in (2, 5, 9):
        replan(qtbot, window, lambda days=days: lose(window, days))
        seen.append(told(window))
    assert len(set(seen)) > 1
    for expected in seen[-2::-1]:
        replan(qtbot, window, window.session.undo)
        assert told(window) == expected
    for expected in seen[1:]:
        replan(qtbot, window, window.session.redo)
        assert told(window) == expected


def test_a_restart_shows_the_same_plan_at_once(
    qtbot, tmp_path: Path, harbour: tuple[Book, int]
) -> None:
    book, now = harbour
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, book).close()
    seen = []
    for number in range(3):
        session = Session(lambda: now)
        settings = QSettings(str(tmp_path / f"{number}.ini"), QSettings.Format.IniFormat)
        window = MainWindow(session, settings)
        qtbot.addWidget(window)
        first: list[str] = []
        session.pictured.connect(lambda _c, seen=first, here=window: seen.append(told(here)))
        replan(qtbot, window, lambda session=session: session.open(path))
        if number == 0:
            replan(qtbot, window, lambda here=window: lose(here, 2))
            first[:] = []
        seen.append(told(window))
        assert set(first) <= {seen[-1]}  # nothing else was on screen before it
        window.close()
    assert seen[0] == seen[1] == seen[2]


def test_a_pin_taken_back_leaves_no_trace(
    qtbot, make_window: MakeWindow, harbour: tuple[Book, int]
) -> None:
    window = make_window(*harbour)
    before = told(window)
    shown = window.session.picture
    assert shown is not None
    last = shown.plan.placements[-1]
    calendar = shown.calendar
    later = calendar.next_stretch(calendar.next_stretch(last.start).interval.end)
    replan(
        qtbot,
        window,
        lambda: window.session.attempt(lambda book: pins.pin_to(book, last.key, later)),
    )
    assert told(window) != before
    replan(qtbot, window, window.session.undo)
    assert told(window) == before
