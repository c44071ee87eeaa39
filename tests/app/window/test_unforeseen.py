"""A fault nobody foresaw is told calmly, once; the window goes on."""

import sys

import pytest
from PySide6.QtCore import Qt
from small_book import NOW, small_book

from app.service import program_log
from app.window.unforeseen import Unforeseen


@pytest.fixture(autouse=True)
def _log_apart(tmp_path, monkeypatch):
    monkeypatch.setattr(program_log, "folder", lambda: tmp_path / "log")
    monkeypatch.setattr(sys, "excepthook", sys.__excepthook__)


def test_a_fault_is_told_once_and_the_window_goes_on(qtbot, make_window, tmp_path) -> None:
    window = make_window(small_book(), NOW)
    told = Unforeseen(window)
    for _ in range(2):
        try:
            raise RuntimeError("Aunt Mathilda's tank")
        except RuntimeError as problem:
            sys.excepthook(type(problem), problem, problem.__traceback__)
    qtbot.waitUntil(lambda: told.box is not None)
    words = told.box.informativeText()
    assert "saved up to the last edit" in words
    (report,) = (tmp_path / "log").glob("report-*.txt")
    assert str(report) in words
    assert "Mathilda" not in report.read_text("utf-8")
    box = told.box
    qtbot.keyClick(box, Qt.Key.Key_Escape)
    assert not box.isVisible()
    window.show_page("room")
    assert window.stack.currentWidget() is window.view("room")
