"""One line tells what was really painted: by the menu's keys, at the bench, on the command line."""

from __future__ import annotations

from pathlib import Path

import pytest
from bench_steps import AtTheBench
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialogButtonBox
from small_book import CART, NOW, PROJECT, key, small_book
from tonight_steps import Tonight
from window_steps import MakeWindow

from app.command_line import main
from app.window.evening.other_work_dialog import OtherWorkDialog
from planner.values.step import Tool
from storage.bench_book import BenchBook

Key = Qt.Key


def asked(app: QApplication) -> OtherWorkDialog:
    dialog = app.activeModalWidget()
    assert isinstance(dialog, OtherWorkDialog)
    return dialog


def test_a_line_is_told_back_as_it_is_typed_and_noted_by_enter(
    qtbot, qapp: QApplication, make_window: MakeWindow
) -> None:
    here = Tonight(qtbot, qapp, make_window(small_book(), NOW), NOW)
    here.command(Key.Key_D)
    dialog = asked(qapp)
    note = dialog.buttons.button(QDialogButtonBox.StandardButton.Ok)
    assert not note.isEnabled()
    qtbot.keyClicks(dialog.field, "dark oil on lorry")
    assert '"lorry" is no model' in dialog.told.text()
    assert not note.isEnabled()
    dialog.field.selectAll()
    qtbot.keyClicks(dialog.field, "dark oil on cart bed, brush, 9 min")
    assert "Dark oil on cart (tub)" in dialog.told.text()
    assert note.isEnabled()
    qtbot.keyClick(dialog.field, Key.Key_Return)
    here.settle()
    assert qapp.activeModalWidget() is None
    (fact,) = here.log
    assert fact.minutes == 9
    step = next(
        step
        for step in here.window.session.book.project(PROJECT).model(CART).steps
        if step.id == fact.step
    )
    assert (step.tool, step.applications[0].coating) == (Tool.BRUSH, "dark oil")
    assert step.applications[0].places == ("tub/bed",)
    plan = here.window.session.picture.plan
    assert any(placed.logged and placed.key.step == fact.step for placed in plan.placements)


def test_its_shortcut_is_told_in_the_menu(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW)
    assert window.commands.other.shortcut().toString() == "Ctrl+Shift+D"


def test_the_bench_mode_takes_the_line_by_o_and_takes_it_back(
    qtbot, make_window: MakeWindow
) -> None:
    here = AtTheBench(qtbot, make_window(small_book(), NOW), NOW)
    book = here.book
    here.press(Key.Key_O)
    here.type("grey primer on lorry")
    assert "is no model" in here.bench.said
    here.press(Key.Key_O)
    here.type("grey primer on cart, 8 min")
    (fact,) = here.project.log
    assert (fact.step, fact.minutes) == (key("prime").step, 8)
    here.press(Key.Key_Backspace)
    assert here.book == book


def test_the_command_line_takes_the_line(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, small_book()).close()
    when = ("--at", "2031-03-06T20:30", "--book", str(path))
    assert main(["log", "other", "grey primer on cart sides, 7 min", *when]) == 0
    said = capsys.readouterr().out
    assert "done beside the plan: grey primer on cart" in said
    assert "noted as cart/prime" in said
    assert main(["log", "other", "mauve on cart", *when]) == 2
    assert 'no coating or mix is called "mauve"' in capsys.readouterr().err
    with BenchBook.open(path) as bench:
        (fact,) = bench.book().project(PROJECT).log
        assert (fact.step, fact.minutes) == ("prime", 7)
