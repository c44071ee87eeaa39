"""A start waits for one view only: the others are made when looked at, with nothing lost."""

from __future__ import annotations

import re
import subprocess
import sys
from importlib import import_module
from pathlib import Path

import pytest
from PySide6.QtCore import QSize
from PySide6.QtWidgets import QApplication, QWidget
from small_book import NOW, small_book
from window_steps import MakeWindow, replan

from app.service import edits
from app.window.initial_size import fit_to
from app.window.main_window import MainWindow
from app.window.palette import DARK, Appearance

ROOT = Path(__file__).parents[3]
HEAVY = ("sqlalchemy", "alembic", "icalendar", "ortools", "networkx", "msgspec", "asyncio")


def made(window: MainWindow) -> list[str]:
    return [page.name for page in window.pages if page.late.made is not None]


def test_the_window_is_painted_before_the_database_is_loaded() -> None:
    asked = "import sys, app.window.start, app.window.tonight_view; print(*sys.modules)"
    said = subprocess.check_output([sys.executable, "-c", asked], text=True)
    loaded = {name.partition(".")[0] for name in said.split()}
    assert "PySide6" in loaded
    assert loaded.isdisjoint(HEAVY)
    assert "planner.schedule.greedy" not in said.split()


def test_whatever_is_made_late_can_be_found() -> None:
    """Modules and classes are written as text there: a new name must reach them, too."""
    found = []
    for file in (ROOT / "app" / "window").rglob("*.py"):
        for module, name in re.findall(r'"([a-z_.]+):(\w+)"', file.read_text(encoding="utf-8")):
            found.append(name)
            assert hasattr(import_module(f"app.window.{module}"), name)
    assert {"TonightView", "Notifier", "about", "NoBook"} <= set(found)


def test_a_view_is_made_when_it_is_looked_at_and_dressed_as_the_window(
    make_window: MakeWindow,
) -> None:
    window = make_window(small_book(), NOW)
    assert made(window) == ["tonight"]
    window.set_look(Appearance.DARK)
    window.show_page("timeline")
    assert made(window) == ["tonight", "timeline"]
    assert window.timeline.strip.scene().colours is DARK
    assert window.timeline.strip.arrangement.boxes  # the plan that was there before it


def test_a_timeline_made_late_knows_what_moved_before(qtbot, make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    replan(qtbot, window, lambda: window.session.attempt(lambda b: edits.set_air(b, "", 12, 50)))
    change = window.session.last_change
    assert change is not None
    moved = {move.key for move in change.moves if move.before is not None}
    assert moved
    window.show_page("timeline")
    window.timeline.filter.compared.setChecked(True)
    assert window.timeline.strip.arrangement.ghosts


@pytest.mark.parametrize(
    ("screen", "wide", "beside"),
    [((1920, 1053), 1280, True), ((1280, 773), 1276, False), ((1024, 741), 1020, False)],
)
def test_the_first_window_lies_within_the_screen_and_leaves_its_page_room(
    make_window: MakeWindow, screen: tuple[int, int], wide: int, beside: bool
) -> None:
    window = make_window(small_book(), NOW)
    fit_to(QSize(*screen), window)
    QApplication.processEvents()
    assert window.width() == wide
    assert window.height() < screen[1]
    assert window.frame.inspector.isVisible() is beside
    window.show_page("build")
    QApplication.processEvents()
    assert window.view("build").tree.width() >= 400
    window.show_page("tonight")
    window.frame.desk.open()
    assert window.frame.inspector.isVisible()


@pytest.mark.parametrize("onwards", [True, False])
def test_tab_follows_the_eye(make_window: MakeWindow, onwards: bool) -> None:
    window = make_window(small_book(), NOW)
    frame = window.frame
    areas: list[QWidget] = [
        window.strip,
        window.navigation,
        frame.switch,
        window.stack,
        frame.inspector,
    ]
    for name in ("tonight", "timeline"):
        window.show_page(name)
        frame.desk.open()  # Plan's comes with a choice only
        window.activateWindow()
        window.strip.change.setFocus()
        seen: list[int] = []
        fields: list[QWidget] = []
        while (here := QApplication.focusWidget()) not in fields:
            assert here is not None
            fields.append(here)
            seen.append(
                next(n for n, area in enumerate(areas) if area is here or area.isAncestorOf(here))
            )
            assert window.focusNextPrevChild(onwards)
        blocks = [one for one, before in zip(seen, [None, *seen], strict=False) if one != before]
        there = [0, 1, 2, 3, 4] if name == "tonight" else [0, 1, 3, 4]  # Plan has one page
        assert blocks == there if onwards else blocks in ([0, *there[:0:-1]], [0, *there[::-1]])
