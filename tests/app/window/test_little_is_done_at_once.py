"""What a new plan makes the window do at once, and what it leaves for later or does not do."""

from __future__ import annotations

import gc
from dataclasses import replace

import pytest
from window_steps import MakeWindow

from app.service.plan_changes import PlanMove
from app.window import page_turning, plan_changes_panel
from app.window.main_window import MainWindow
from app.window.plan_changes_panel import MovedPanel
from app.window.plan_snapshot import PlanChange, PlanSnapshot, SnapshotPart
from planner.values.book import Book
from planner.values.plan import Plan


def _other(window: MainWindow) -> Plan:
    picture = window.session.picture
    assert picture is not None
    return replace(picture.plan, digest="found later")


def _take(qtbot, window: MainWindow) -> PlanSnapshot:
    picture = window.session.picture
    assert picture is not None
    window.session.take_plan(_other(window), picture.verdict, "a better plan was found")
    taken = window.session.picture
    assert taken is not None
    name = window.pages[window.shown_view].name
    qtbot.waitUntil(lambda: name not in window.turning.stale and taken.has(SnapshotPart.MOMENTS))
    return taken


def test_a_page_out_of_sight_is_shown_nothing_until_it_comes_on_screen(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], monkeypatch: pytest.MonkeyPatch
) -> None:
    window = make_window(*lamplighter)
    for page in window.pages:
        window.show_page(page.name)  # every page is there
    window.frame.desk.inspector.choose("piece")  # else the inspector shows wishes of its own
    window.show_page("timeline")
    window.frame.desk.open("piece")
    window.show_page("logbook")
    shown: list[str] = []
    for page in window.pages:
        monkeypatch.setattr(page.view, "show_picture", lambda _p, at=page.name: shown.append(at))
    _take(qtbot, window)
    assert shown == ["logbook"]
    window.show_page("timeline")
    assert shown == ["logbook", "timeline"]
    window.show_page("timeline")
    assert shown == ["logbook", "timeline"]


def test_what_no_page_on_screen_shows_is_not_read(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    window = make_window(*lamplighter)
    window.show_page("build")
    window.show_page("sequences")
    picture = _take(qtbot, window)
    assert not picture.has(SnapshotPart.BUILD)
    assert not picture.has(SnapshotPart.STRIP)


def test_a_plan_keeps_what_was_read_off_its_book(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    window = make_window(*lamplighter)
    before = window.session.picture
    assert before is not None
    before.prepare(SnapshotPart.BUILD)
    after = _take(qtbot, window)
    assert after is not before
    assert after.findings is before.findings
    assert after.slacks is before.slacks
    changed = replace(before.book, supplies=replace(before.book.supplies, margin_pct=77))
    other = before.with_plan(changed, before.plan, before.verdict)
    assert "slacks" not in vars(other)


def test_a_page_waits_until_a_great_plan_has_been_read(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(page_turning, "AT_ONCE", 0)  # so that this plan is a great one
    window = make_window(*lamplighter)
    window.show_page("build")
    picture = window.session.picture
    assert picture is not None
    assert not picture.has(SnapshotPart.BUILD)
    assert window.stack.currentWidget() is window.view("build")
    qtbot.waitUntil(lambda: "build" not in window.turning.stale)
    assert picture.has(SnapshotPart.BUILD)


def test_a_thousand_moves_come_into_the_list_a_few_at_a_time(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    picture = make_window(*lamplighter).session.picture
    assert picture is not None
    keys = [placed.key for placed in picture.plan.placements]
    # Each to another evening: what stays within its own is not told.
    first, *_, last = sorted(placed.start for placed in picture.plan.placements)
    assert picture.calendar.stretch_at(first) != picture.calendar.stretch_at(last)
    moves = tuple(PlanMove(keys[at % len(keys)], first, last) for at in range(1000))
    panel = MovedPanel()
    qtbot.addWidget(panel)
    panel.show_change(PlanChange(picture, picture, moves, "cause"))
    assert panel.list.count() == plan_changes_panel.AT_ONCE
    panel.show_change(PlanChange(picture, picture, moves, "cause"))  # begins anew
    qtbot.waitUntil(lambda: panel.list.count() > plan_changes_panel.AT_ONCE)
    assert panel.list.count() == 1000


def test_a_plan_leaves_hardly_a_circle_behind(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    """What goes in a circle stays until Python stops everything to look for it."""
    window = make_window(*lamplighter)
    window.show_page("timeline")
    _take(qtbot, window)
    _take(qtbot, window)
    gc.collect()
    gc.disable()
    try:
        picture = _take(qtbot, window)
        circles = gc.collect()
    finally:
        gc.enable()
    assert circles < 2 * len(picture.plan.placements)


def test_reading_slack_leaves_hardly_a_circle_behind(
    make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    picture = make_window(*lamplighter).session.picture
    assert picture is not None
    gc.collect()
    gc.disable()
    try:
        picture.prepare(SnapshotPart.BUILD)
        circles = gc.collect()
    finally:
        gc.enable()
    assert circles < 2 * len(picture.plan.placements)
