"""The bench mode's tiles, its few keys, and an hour of waiting, by keys on the real window."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from bench_steps import AtTheBench
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialog, QLabel
from small_book import NOW, slow_primer, small_book
from window_steps import MakeWindow

from app.window.bench_mode.keys import MAIN_SHOWN, Deed, main_deeds
from app.window.bench_mode.large_text import KeyCap
from app.window.bench_mode.place_tiles import PlaceTile
from app.window.bench_mode.waiting_panel import ready_before
from planner.values.step import Tool

Key = Qt.Key
CTRL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def here(qtbot, make_window: MakeWindow) -> AtTheBench:
    """At the bench, with the airbrush loaded and the primer next."""
    at = AtTheBench(qtbot, make_window(small_book(), NOW), NOW)
    at.press(Key.Key_Space)
    return at


def tiles(here: AtTheBench) -> list[PlaceTile]:
    return here.bench._body.findChildren(PlaceTile)


def caps(here: AtTheBench) -> list[str]:
    return [cap.accessibleName() for cap in here.bench._body.findChildren(KeyCap)]


def told(here: AtTheBench) -> str:
    return "\n".join(label.text() for label in here.bench._body.findChildren(QLabel))


def test_each_place_is_a_tile_with_its_key_unpainted_or_painted(here: AtTheBench) -> None:
    places = here.job.places
    assert [tile.shown.key for tile in tiles(here)] == [str(n + 1) for n in range(len(places))]
    assert [tile.shown.on for tile in tiles(here)] == [False] * len(places)
    assert [tile.shown.following for tile in tiles(here)] == [True, *[False] * (len(places) - 1)]
    here.press(Key.Key_1)
    first, second, *_ = tiles(here)
    assert first.shown.on
    assert "done" in first.accessibleName()
    assert second.shown.following
    (coat,) = here.job.work.coats
    assert first.shown.swatch == coat.swatch


def test_tiles_lie_in_the_lower_half(here: AtTheBench, qapp: QApplication) -> None:
    qapp.processEvents()
    body = here.bench._body
    for tile in tiles(here):
        assert tile.mapTo(body, tile.rect().center()).y() > body.height() / 2


def test_five_keys_are_shown_and_the_rest_behind_the_question_mark(here: AtTheBench) -> None:
    few = caps(here)
    assert len(few) == 6
    assert few[-1].startswith("?")
    here.press(Key.Key_Question)
    many = caps(here)
    assert len(many) > 9
    here.press(Key.Key_Question)
    assert caps(here) == few


def test_the_few_keys_are_among_what_can_be_done() -> None:
    assert main_deeds(list(Deed))[-1] is Deed.LEAVE
    assert len(main_deeds(list(Deed))) == MAIN_SHOWN + 1
    assert main_deeds([Deed.HOUR, Deed.DONE, Deed.LEAVE]) == [Deed.DONE, Deed.LEAVE]


def test_ctrl_and_a_digit_tick_nothing(qtbot, here: AtTheBench) -> None:
    qtbot.keyClick(here.bench, Key.Key_1, CTRL)
    here.settle()
    assert here.project.log == ()
    assert here.bench.isVisible()


def test_f1_says_what_the_keys_do(qtbot, here: AtTheBench) -> None:
    qtbot.keyClick(here.bench, Key.Key_F1)
    (dialog,) = [one for one in here.bench.findChildren(QDialog) if one.isVisible()]
    said = "\n".join(label.text() for label in dialog.findChildren(QLabel))
    assert "A tile is a place" in said
    assert "still tacky" in said
    qtbot.keyClick(dialog, Key.Key_Escape)
    assert here.bench.isVisible()


def test_nothing_is_noted_blindly_while_work_has_to_wait(qtbot, make_window: MakeWindow) -> None:
    book = slow_primer(small_book())
    (project,) = book.projects
    (model,) = project.models
    steps = tuple(
        replace(step, tool=Tool.BRUSH) if step.id == "sand" else step for step in model.steps
    )
    project = replace(project, models=(replace(model, steps=steps),))
    here = AtTheBench(qtbot, make_window(replace(book, projects=(project,)), NOW), NOW)
    here.press(Key.Key_Space, Key.Key_S)
    here.now += 9
    here.press(Key.Key_Space, Key.Key_Space)  # primed and cleaned: the primer dries 40 minutes
    assert here.bench._waits() >= 10
    assert here.job.work is not None
    noted = here.book
    here.press(Key.Key_Space, Key.Key_1)  # its places are not on screen
    assert here.book is noted
    assert "S begins it now" in here.bench.said
    here.press(Key.Key_R)
    assert here.bench.asked is not None
    assert here.bench.said == ""  # what was told belongs to what was done before
    here.press(Key.Key_Backspace)
    assert here.bench.asked is None
    assert here.book is noted


def test_an_hour_of_waiting_is_headed_by_the_waiting(here: AtTheBench) -> None:
    waits: Callable[[], int] = here.bench._waits
    for _ in range(6):  # on to a job that has to wait for a film
        if waits():
            break
        here.now += 3
        here.press(Key.Key_S)
        here.now += 6
        here.press(Key.Key_Space)
    assert waits() >= 10
    assert here.bench._title().startswith("Wait ")
    said = told(here)
    assert "Meanwhile" in said or "Nothing else is ready until then" in said
    assert not tiles(here)
    ready = here.job.row.start
    assert all(other.start < ready for other in ready_before(here.picture, ready))
    before = waits()
    here.now += 4
    here.bench.clock_moved()
    assert waits() in (0, before - 4)
