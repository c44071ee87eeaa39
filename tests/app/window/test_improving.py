"""A better plan from the background is taken where tonight stays, and else offered."""

from __future__ import annotations

from dataclasses import replace
from typing import ClassVar

import pytest
from window_steps import MakeWindow

from app.service import improving as service
from app.window import improving
from planner.schedule.judge import judge
from planner.values.book import Book


class Canned:
    """Stands for the process: sends what a test wants."""

    sent: ClassVar[list[service.Improved]] = []

    def __init__(self, task: service.Task) -> None:
        self.task, self.running = task, True

    def news(self) -> list[service.Improved]:
        found, self.sent[:] = list(self.sent), []
        return found

    def stop(self) -> None:
        self.running = False


@pytest.fixture
def canned(monkeypatch: pytest.MonkeyPatch) -> list[service.Improved]:
    monkeypatch.setattr(improving, "START_MS", 0)
    monkeypatch.setattr(improving, "POLL_MS", 1)
    monkeypatch.setattr(improving, "Improver", Canned)
    Canned.sent = []
    return Canned.sent


def test_a_plan_that_leaves_tonight_is_taken_at_once(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], canned: list[service.Improved]
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    shown = window.session.picture
    assert shown is not None
    same = replace(shown.plan, digest="found later")
    qtbot.waitUntil(lambda: window.improving.running)
    canned.append(service.Improved(same, True, judge(book, same)))
    qtbot.waitUntil(lambda: window.session.picture.plan.digest == "found later")
    assert window.improving.offer is None
    assert not window.commands.better.isEnabled()


def test_a_plan_that_changes_tonight_waits_for_its_key(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], canned: list[service.Improved]
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    shown = window.session.picture
    assert shown is not None
    other = replace(shown.plan, placements=shown.plan.placements[1:], digest="other")
    qtbot.waitUntil(lambda: window.improving.running)
    canned.append(service.Improved(other, True, shown.verdict))
    qtbot.waitUntil(lambda: window.improving.offer is not None)
    assert window.session.picture is shown
    assert "F6" in window.improving.line()
    window.commands.better.trigger()
    assert window.session.picture.plan.digest == "other"
    assert window.improving.offer is None


def test_an_edit_ends_the_process(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], canned: list[service.Improved]
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    qtbot.waitUntil(lambda: window.improving.running)
    begun = window.improving._improver
    window.session.replan()
    assert not begun.running
    window.session.wait()
