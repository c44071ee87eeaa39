"""The bench mode by its keys, each of them taken back."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from bench_steps import AtTheBench
from PySide6.QtCore import Qt
from small_book import BRUSH, NOW, at, key, small_book
from window_steps import MakeWindow

from app.window.bench_mode.jobs import jobs_of
from app.window.bench_mode.keys import BINDINGS, Deed
from app.window.bench_mode.view import BenchMode
from app.window.palette import DARK, LIGHT, contrast
from planner.values.plan import BenchKind

Key = Qt.Key


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
    (entry,) = here.project.log
    assert entry.end is None
    here.now += 9
    here.press(Key.Key_Space)
    (entry,) = here.project.log
    assert entry.end is not None
    assert (entry.end - entry.start).seconds == 9 * 60
    assert here.doing == f"clean {BRUSH}"
    here.press(Key.Key_Space)
    assert not here.doing.startswith("clean")


def test_places_are_ticked_in_the_logbook_and_stay(bench: Bench) -> None:
    here = bench()
    here.press(Key.Key_Space)
    here.press(Key.Key_2)
    (entry,) = here.project.log
    assert entry.ticked == ("tub/sides",)
    assert entry.end is None  # the first tick begins the work
    here.press(Key.Key_1)
    here.press(Key.Key_2)
    (entry,) = here.project.log
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
