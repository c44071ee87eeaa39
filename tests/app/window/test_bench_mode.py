"""The bench mode by its keys, each of them taken back."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from small_book import BRUSH, NOW, PROJECT, at, key, small_book
from window_steps import MakeWindow

from app.window.bench_mode.jobs import jobs_of
from app.window.bench_mode.keys import BINDINGS, Deed
from app.window.bench_mode.view import BenchMode
from app.window.main_window import MainWindow
from app.window.palette import DARK, LIGHT, contrast
from planner.schedule.judge import judge
from planner.values.plan import BenchKind
from planner.values.project import Logged

Key = Qt.Key


class AtTheBench:
    """A window in bench mode with a clock of its own."""

    def __init__(self, qtbot: Any, window: MainWindow, now: int) -> None:
        self.qtbot, self.window, self.now = qtbot, window, now
        window.session.set_clock(lambda: self.now)
        window.tonight.setFocus()
        qtbot.keyClick(window.tonight, Key.Key_B)
        self.bench: BenchMode = window.bench

    def press(self, key: Qt.Key) -> None:
        """Press a key and wait until nothing is being planned."""
        self.qtbot.keyClick(self.bench, key)
        self.settle()

    def settle(self) -> None:
        session = self.window.session
        serial = session._serial
        self.qtbot.waitUntil(
            lambda: session._tried == serial and session._pool.activeThreadCount() == 0,
            timeout=20_000,
        )
        for _ in range(3):
            QApplication.processEvents()
        picture = session.picture
        assert picture is not None
        assert judge(picture.book, picture.plan).accepted

    @property
    def log(self) -> tuple[Logged, ...]:
        book = self.window.session.book
        assert book is not None
        return book.project(PROJECT).log

    @property
    def doing(self) -> str:
        job = self.bench.job
        return "" if job is None else job.name[0]


Bench = Callable[[], AtTheBench]


@pytest.fixture
def bench(qtbot, make_window: MakeWindow) -> Bench:
    """Return how to go to the bench with the small book."""
    return lambda: AtTheBench(qtbot, make_window(small_book(), NOW), NOW)


def test_b_goes_to_the_bench_and_escape_leaves_it(bench: Bench) -> None:
    here = bench()
    assert here.bench.isVisible()
    here.press(Key.Key_Escape)
    assert not here.bench.isVisible()


def test_one_job_after_the_other(bench: Bench) -> None:
    here = bench()
    assert here.doing == f"load {BRUSH}"
    here.press(Key.Key_Space)
    assert here.doing == str(key("prime"))
    here.now += 3
    here.press(Key.Key_S)
    (entry,) = here.log
    assert entry.end is None
    here.now += 9
    here.press(Key.Key_Space)
    (entry,) = here.log
    assert entry.end is not None
    assert (entry.end - entry.start).seconds == 9 * 60
    assert here.doing == f"clean {BRUSH}"
    here.press(Key.Key_Space)
    assert not here.doing.startswith("clean")


def test_places_are_ticked_in_the_logbook_and_stay(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_Space)
    here.press(Key.Key_2)
    (entry,) = here.log
    assert entry.ticked == ("tub/sides",)
    assert entry.end is None  # the first tick begins the work
    here.press(Key.Key_1)
    here.press(Key.Key_2)
    (entry,) = here.log
    assert entry.ticked == ("tub/bed",)


def test_every_deed_is_taken_back_to_the_last(bench: Bench) -> None:
    here = bench()
    book = here.window.session.book
    for pressed in (Key.Key_Space, Key.Key_S, Key.Key_1, Key.Key_H, Key.Key_Space, Key.Key_E):
        here.press(pressed)
        here.now += 1
    here.press(Key.Key_1)  # a line of the closing check
    here.press(Key.Key_Escape)
    assert here.window.session.book != book
    for _ in range(7):
        here.press(Key.Key_Backspace)
    assert here.window.session.book == book
    assert here.doing == f"load {BRUSH}"
    assert Deed.BACK not in here.bench.evening.deeds()


def test_what_is_in_the_cup_outlasts_the_program(qtbot, bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_Space)
    here.press(Key.Key_S)
    again = BenchMode(here.window.session, here.window.settings, None)
    again.enter(full_screen=False)
    job = again.job
    assert job is not None
    assert job.begun == NOW
    assert again.evening.memory.cups(NOW) == {BRUSH: "grey primer"}
    again.close()
    again.deleteLater()


def test_an_hour_more_and_an_early_end(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_H)
    picture = here.window.session.picture
    assert picture is not None
    assert picture.sheet.interval.end == at("2031-03-06 22:30")
    here.now += 30
    here.press(Key.Key_E)
    assert here.bench.asked is not None  # the closing check
    picture = here.window.session.picture
    assert picture is not None
    assert all(
        row.start < here.now + 1 or row.start >= at("2031-03-13 19:30")
        for row in picture.sheet.rows
    )


def test_a_load_already_in_the_cup_is_no_job(bench: Bench) -> None:
    here = bench()
    picture = here.window.session.picture
    assert picture is not None

    def first(cups: dict[str, str]) -> tuple[BenchKind, str] | None:
        row = jobs_of(picture, cups)[0].set_up
        return (row.kind, row.coating) if row else None

    assert first({}) == (BenchKind.LOAD, "grey primer")
    assert first({BRUSH: "grey primer"}) is None
    assert first({BRUSH: "thin sand"}) == (BenchKind.CHANGE, "grey primer")


def test_every_key_is_shown_and_every_deed_has_one(bench: Bench) -> None:
    assert {binding.deed for binding in BINDINGS} == set(Deed)
    keys = [key for binding in BINDINGS for key in binding.keys]
    assert len(keys) == len(set(keys))


@pytest.mark.parametrize("colours", [LIGHT, DARK])
def test_letters_stand_out(colours) -> None:
    # WCAG 2.1, success criterion 1.4.6: 7 : 1 for text, here also for the lesser words
    # that are large (4.5 : 1).
    assert contrast(colours.ink, colours.sheet) >= 7
    assert contrast(colours.soft, colours.sheet) >= 4.5
