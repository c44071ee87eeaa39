"""Working at the bench by keys, for tests: a window in bench mode with a clock of its own."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from app.window.bench_mode.jobs import Job
from app.window.bench_mode.view import BenchMode
from app.window.main_window import MainWindow
from app.window.plan_snapshot import PlanSnapshot
from planner.schedule.judge import judge
from planner.values.book import Book
from planner.values.project import Project

Key = Qt.Key


class AtTheBench:
    """Presses keys; after each that changed the book, the judge looks at the plan."""

    def __init__(self, qtbot: Any, window: MainWindow, now: int) -> None:
        self.qtbot, self.now = qtbot, now
        self.judged: object = None
        self.verdicts = 0
        self.sit_down(window)

    def sit_down(self, window: MainWindow) -> None:
        """Go to the bench in a window, once it has a plan."""
        self.window = window
        self.settle()
        window.session.set_clock(lambda: self.now)
        window.session._later.setInterval(0)  # nobody looks at what is painted meanwhile
        window.tonight.setFocus()
        self.qtbot.keyClick(window.tonight, Key.Key_B)
        assert self.bench.isVisible()

    @property
    def bench(self) -> BenchMode:
        """The bench mode."""
        return self.window.bench

    @property
    def book(self) -> Book:
        """The open book."""
        book = self.window.session.book
        assert book is not None
        return book

    @property
    def picture(self) -> PlanSnapshot:
        """The plan on screen."""
        picture = self.window.session.picture
        assert picture is not None
        return picture

    @property
    def project(self) -> Project:
        """The only project."""
        (project,) = self.book.projects
        return project

    @property
    def job(self) -> Job:
        """The job on screen."""
        job = self.bench.job
        assert job is not None
        return job

    @property
    def doing(self) -> str:
        """The name of the job on screen, "" for none."""
        return self.bench.job.name[0] if self.bench.job else ""

    def press(self, *keys: Qt.Key) -> None:
        """Press keys one after the other, each once nothing is planned any more."""
        for key in keys:
            self.qtbot.keyClick(self.bench, key)
            self.settle()

    def type(self, text: str) -> None:
        """Type a line, then Enter."""
        field = self.bench.field
        assert field is not None
        self.qtbot.keyClicks(field, text)
        self.qtbot.keyClick(field, Key.Key_Return)
        self.settle()

    def settle(self) -> None:
        """Wait until all rules were tried, and hand what is new to the judge."""
        session = self.window.session
        self.qtbot.waitUntil(
            lambda: session._tried == session._serial and not session._worker.busy,
            timeout=20_000,
        )
        for _ in range(3):
            QApplication.processEvents()
        picture = self.picture
        if picture is not self.judged:
            verdict = judge(picture.book, picture.plan)
            assert verdict.accepted, verdict.violations[:3]
            self.judged = picture
            self.verdicts += 1

    def choose(self, words: str) -> None:
        """Press the number of the line that holds some words."""
        asked = self.bench.asked
        assert asked is not None, words
        told = [f"{line.told} {line.below}".lower() for line in asked.lines]
        at = next(at for at, line in enumerate(told) if words.lower() in line)
        self.press(Qt.Key(Key.Key_1.value + at))
