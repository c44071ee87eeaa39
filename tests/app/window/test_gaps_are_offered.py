"""Gaps are offered in Tonight and by the menu, and work of the plan is taken into one by keys."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel
from small_book import NOW, small_book
from tonight_steps import Tonight
from window_steps import MakeWindow

from app.command_line import main
from app.service import demos
from app.window.evening.gaps_dialog import GapsDialog
from planner.evening.gaps import GapUse

Key = Qt.Key


def test_tonight_says_what_gaps_are_good_for_and_work_is_taken_into_one_by_keys(
    qtbot, qapp: QApplication, make_window: MakeWindow
) -> None:
    demo = demos.read("harbour_tenders").book
    now = demos.first_evening(demo)
    here = Tonight(qtbot, qapp, make_window(demo, now), now)
    said = [label.text() for label in here.window.tonight.findChildren(QLabel)]
    assert any("min free: " in line and "a dry fit before" in line for line in said)
    picture = here.window.session.picture
    gap, offer = next(
        (gap, one) for gap in picture.gaps for one in gap.offers if one.use is GapUse.BRUSH
    )
    assert picture.placed[offer.key].start >= gap.end
    here.command(Key.Key_G)
    dialog = qapp.activeModalWidget()
    assert isinstance(dialog, GapsDialog)
    for _ in range(dialog.list.count()):
        if dialog.taken.isEnabled():
            break
        qtbot.keyClick(dialog.list, Key.Key_Down)
    assert dialog._at(dialog.list.currentRow()) == (gap, offer)
    qtbot.keyClick(dialog.list, Key.Key_Return)
    here.settle()
    assert qapp.activeModalWidget() is None
    start = here.window.session.picture.placed[offer.key].start
    assert gap.stretch.interval.start <= start < gap.stretch.interval.end


def test_where_nothing_fits_it_says_so(qtbot, qapp: QApplication, make_window: MakeWindow) -> None:
    here = Tonight(qtbot, qapp, make_window(small_book(), NOW), NOW)
    here.window.session.picture.__dict__["gaps"] = ()
    here.command(Key.Key_G)
    dialog = qapp.activeModalWidget()
    assert isinstance(dialog, GapsDialog)
    assert not dialog.taken.isEnabled()
    assert any("No gap" in label.text() for label in dialog.findChildren(QLabel))
    qtbot.keyClick(dialog, Key.Key_Escape)
    here.settle()


def test_the_command_line_tells_them(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["tonight", "demo_projects/harbour_tenders.json", "--now", "2026-03-03T19:30"]) == 0
    said = capsys.readouterr().out
    assert "Free time\n" in said
    assert "min free: " in said
