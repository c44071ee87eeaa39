"""A book that cannot be opened: why is said in the middle of the window, with the ways on."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication
from small_book import NOW, small_book
from window_steps import MakeWindow, replan, settle

from app.window.damaged_book import DamagedBook
from app.window.main_window import MainWindow
from app.window.session import Session
from storage import backups
from storage.bench_book import BenchBook


@pytest.mark.parametrize(
    ("content", "why"), [(b"no book at all", "is not a bench book"), (b"", "is empty")]
)
def test_a_broken_file_is_told_and_another_can_be_opened(
    qtbot, qapp: QApplication, tmp_path: Path, content: bytes, why: str
) -> None:
    broken, good = tmp_path / "broken.tackfree", tmp_path / "good.tackfree"
    broken.write_bytes(content)
    BenchBook.create(good, small_book()).close()
    settings = QSettings(str(tmp_path / "s.ini"), QSettings.Format.IniFormat)
    window = MainWindow(Session(lambda: NOW), settings)
    window.show()
    window.session.open(broken)
    settle(qapp)
    page = window.views.no_book.made
    assert window.stack.currentWidget() is page
    assert why in page.why.text()
    assert qapp.focusWidget() is page.buttons[0]
    assert not window.air.temperature.isEnabled()  # of no book there is no air
    window.show_page("room")  # still nothing to show
    assert window.stack.currentWidget() is page
    replan(qtbot, window, lambda: window.session.open(good))
    assert window.stack.currentWidget() is window.view("room")
    assert window.air.temperature.isEnabled()
    assert broken.read_bytes() == content
    window.close()
    window.deleteLater()


def test_the_open_book_stays_where_another_cannot_be_opened(
    make_window: MakeWindow, tmp_path: Path
) -> None:
    window = make_window(small_book(), NOW)
    window.session.open(tmp_path)
    assert window.views.no_book.made is None
    assert window.stack.currentWidget() is window.view("tonight")
    assert window.air.temperature.isEnabled()


def test_copies_of_a_damaged_book_are_offered_while_another_is_open(
    qtbot, qapp: QApplication, tmp_path: Path, make_window: MakeWindow
) -> None:
    window = make_window(small_book(), NOW)
    mine, broken = window.session.path, tmp_path / "broken.tackfree"
    BenchBook.create(broken, small_book()).close()
    backups.keep(broken, backups.BackupReason.DAILY)
    with closing(sqlite3.connect(broken)) as raw:
        raw.execute("UPDATE project SET note = 'x'")
        raw.commit()
    window.session.open_soon(broken)
    qtbot.waitUntil(lambda: isinstance(qapp.activeModalWidget(), DamagedBook), timeout=20_000)
    dialog = qapp.activeModalWidget()
    assert isinstance(dialog, DamagedBook)
    assert "is damaged" in dialog.why.text()
    assert window.session.path == mine
    with qtbot.waitSignal(window.session.opened, timeout=20_000):
        dialog.copies.buttons[0].click()
    assert window.session.path == broken
