"""A better plan from the background is taken where tonight stays, and else offered."""

from __future__ import annotations

import os
import signal
from dataclasses import replace
from typing import ClassVar

import pytest
from window_steps import MakeWindow

from app.service import improving as service
from app.service import planning
from app.service.edits import Edit
from app.window import improving
from app.window.main_window import MainWindow
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.plan import Plan
from planner.values.project import Project


class Canned:
    """Stands for the process: sends what a test wants."""

    sent: ClassVar[list[service.Improved]] = []

    def __init__(self, task: service.Task) -> None:
        self.task, self.running, self.fault = task, True, ""

    def news(self) -> list[service.Improved]:
        found, self.sent[:] = list(self.sent), []
        return found

    def turn_to(self, task: service.Task | None) -> None:
        self.task = task

    def stop(self) -> None:
        self.running = False


@pytest.fixture
def canned(monkeypatch: pytest.MonkeyPatch) -> list[service.Improved]:
    monkeypatch.setattr(improving, "START_MS", 0)
    monkeypatch.setattr(improving, "POLL_MS", 1)
    monkeypatch.setattr(improving, "Improver", Canned)
    Canned.sent = []
    return Canned.sent


def later_plan(window: MainWindow, book: Book, now: int) -> Plan:
    """Show a plan that leaves the second evening free; return the one that was shown before."""
    session = window.session
    shown = session.picture
    assert shown is not None
    second = sorted(
        {shown.calendar.stretch_at(placement.start).on for placement in shown.plan.placements}
    )[1]
    away = replace(book, bench_time=replace(book.bench_time, skipped=(second,)))
    later = planning.plan(away, now, last=shown.plan).plan
    session.take_plan(later, judge(book, later), "")
    return shown.plan


def test_a_plan_that_ends_a_stretch_earlier_and_leaves_tonight_is_taken_at_once(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], canned: list[service.Improved]
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    better = replace(later_plan(window, book, now), digest="found later")
    qtbot.waitUntil(lambda: window.improving.running)
    canned.append(service.Improved(better, True, judge(book, better)))
    qtbot.waitUntil(lambda: window.session.picture.plan.digest == "found later")
    assert window.improving.offer is None
    assert not window.commands.better.isEnabled()


def test_a_plan_that_gains_less_than_a_stretch_is_let_be(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], canned: list[service.Improved]
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    shown = window.session.picture
    assert shown is not None
    cheaper = replace(shown.plan.cost, setup_minutes=shown.plan.cost.setup_minutes - 3)
    other = replace(shown.plan, cost=cheaper, digest="other")
    qtbot.waitUntil(lambda: window.improving.running)
    canned.append(service.Improved(other, True, shown.verdict))
    qtbot.waitUntil(lambda: window.improving.known is other)
    assert window.session.picture is shown
    assert window.improving.offer is None


def test_a_plan_that_changes_tonight_waits_for_its_key(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], canned: list[service.Improved]
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    better = later_plan(window, book, now)
    shown = window.session.picture
    other = replace(better, placements=better.placements[1:], digest="other")
    qtbot.waitUntil(lambda: window.improving.running)
    canned.append(service.Improved(other, True, shown.verdict))
    qtbot.waitUntil(lambda: window.improving.offer is not None)
    assert window.session.picture is shown
    assert "F6" in window.improving.line()
    window.commands.better.trigger()
    assert window.session.picture.plan.digest == "other"
    assert window.improving.offer is None


def test_an_edit_only_interrupts_the_search_which_goes_on_from_the_plan_on_screen(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int], canned: list[service.Improved]
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    qtbot.waitUntil(lambda: window.improving.running)
    begun = window.improving._improver
    window.session.apply(Edit("note", replace(book, projects=(noted(book),))))
    assert (begun.task, begun.running) == (None, True)  # it rests while the edit is planned
    qtbot.waitUntil(lambda: begun.task is not None)
    assert window.improving._improver is begun
    assert begun.task.book == window.session.book
    assert begun.task.first.placements == window.session.picture.plan.placements
    window.session.wait()


def noted(book: Book) -> Project:
    return replace(book.projects[0], note="for the shelf by the door")


@pytest.mark.skipif(not hasattr(signal, "SIGKILL"), reason="needs the signals of a Unix")
def test_a_search_that_is_killed_is_told_at_the_foot_and_the_plan_stays(
    qtbot,
    make_window: MakeWindow,
    lamplighter: tuple[Book, int],
    monkeypatch: pytest.MonkeyPatch,
    capfd: pytest.CaptureFixture[str],
    caplog: pytest.LogCaptureFixture,
) -> None:
    monkeypatch.setattr(improving, "START_MS", 0)
    window = make_window(*lamplighter)
    qtbot.waitUntil(lambda: window.improving.running)
    improver, shown = window.improving._improver, window.session.picture
    improver._starting.join()
    os.kill(improver._process.pid, signal.SIGKILL)
    qtbot.waitUntil(lambda: not window.improving.running, timeout=20_000)
    assert window._known.text() == window.improving.line()
    assert "stopped" in window.improving.line()
    assert "signal 9" in window.improving.proof()
    assert len(caplog.records) == 1
    assert "signal 9" in caplog.text
    assert caplog.records[0].exc_info is None
    assert "Traceback" not in capfd.readouterr().err
    assert window.session.picture.plan.placements == shown.plan.placements
    window.session.replan()  # the next plan is looked into again
    assert "stopped" not in window.improving.line()
    window.session.wait()
    window.improving.stop()
