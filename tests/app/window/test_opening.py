"""A book is read in the background: the window answers meanwhile, and nothing is lost."""

from __future__ import annotations

from pathlib import Path
from threading import Event

import pytest
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QDialog
from small_book import NOW, small_book
from window_steps import MakeWindow, settle

from app.service import books
from app.service.edits import Edit
from app.window.main_window import MainWindow
from app.window.opening import BookOpening
from planner.values.message import Message
from storage.bench_book import BenchBook


@pytest.fixture
def window(make_window: MakeWindow) -> MainWindow:
    return make_window(small_book(), NOW)


@pytest.fixture
def held(monkeypatch: pytest.MonkeyPatch) -> Event:
    """Let no book be read before this is set."""
    free, really = Event(), books.open_book

    def open_book(*given: object, **named: object) -> BenchBook:
        assert free.wait(20)
        return really(*given, **named)  # type: ignore[arg-type]

    monkeypatch.setattr(books, "open_book", open_book)
    return free


def other(tmp_path: Path, name: str = "other") -> Path:
    path = tmp_path / f"{name}.tackfree"
    BenchBook.create(path, small_book()).close()
    return path


def wake(window: MainWindow) -> None:
    """Make an edit that only the open book gets."""
    refused = window.session.attempt(
        lambda book: Edit("drop all projects", type(book)(**{**vars(book), "projects": ()}))
    )
    assert refused is None


def test_the_window_answers_while_a_book_is_read(
    qtbot, window: MainWindow, held: Event, tmp_path: Path
) -> None:
    before = window.session.path
    path = other(tmp_path)
    window.session.open_soon(path)
    rung: list[int] = []
    QTimer.singleShot(0, lambda: rung.append(1))
    qtbot.waitUntil(lambda: bool(rung))
    assert window.session.path == before  # still there, and at work
    assert "other" in window._say.text()
    held.set()
    qtbot.waitUntil(lambda: window.session.path == path)
    assert "Opening" not in window._say.text()
    assert "other" in window.windowTitle()


def test_what_was_edited_while_the_same_book_was_read_again_is_there(
    qtbot, window: MainWindow, held: Event
) -> None:
    opened: list[int] = []
    window.session.opened.connect(lambda: opened.append(1))
    window.session.open_soon(window.session.path)
    wake(window)
    held.set()
    qtbot.waitUntil(lambda: bool(opened))
    assert window.session.book is not None
    assert window.session.book.projects == ()


def test_an_edit_between_reading_and_showing_is_there(qtbot, window: MainWindow) -> None:
    window.session.open_soon(window.session.path)
    window.session._opening._worker.wait()  # read, and word of it not heard yet
    wake(window)
    opened: list[int] = []
    window.session.opened.connect(lambda: opened.append(1))
    qtbot.waitUntil(lambda: bool(opened))
    assert window.session.book is not None
    assert window.session.book.projects == ()


def test_the_book_asked_for_last_is_shown_and_the_other_let_go(
    qtbot, window: MainWindow, held: Event, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first, last = other(tmp_path, "first"), other(tmp_path, "last")
    closed: list[Path] = []
    really = BenchBook.close
    monkeypatch.setattr(BenchBook, "close", lambda one: (closed.append(one.path), really(one)))
    window.session.open_soon(first)
    window.session.open_soon(last)
    held.set()
    qtbot.waitUntil(lambda: window.session.path == last)
    assert first in closed
    assert last not in closed


def test_a_broken_file_is_told_and_the_open_book_stays(
    qtbot, window: MainWindow, tmp_path: Path
) -> None:
    path, broken = window.session.path, tmp_path / "broken.tackfree"
    broken.write_bytes(b"no book at all")
    window.session.open_soon(broken)
    qtbot.waitUntil(lambda: "is not a bench book" in window._say.text())
    assert window.session.path == path


def test_a_fault_of_ours_is_told_and_does_not_leave_one_waiting(
    qtbot, window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def open_book(*_given: object, **_named: object) -> BenchBook:
        raise ZeroDivisionError

    monkeypatch.setattr(books, "open_book", open_book)
    window.session.open_soon(tmp_path / "any.tackfree")
    qtbot.waitUntil(lambda: "log says where" in window._say.text())


def test_another_book_waits_for_the_dialog_that_is_about_this_one(
    qtbot, qapp: QApplication, window: MainWindow, tmp_path: Path
) -> None:
    before, path = window.session.path, other(tmp_path)
    dialog = QDialog(window)
    dialog.open()
    window.session.open_soon(path)
    window.session._opening._worker.wait()
    qtbot.wait(150)
    settle(qapp)
    assert window.session.path == before
    dialog.reject()
    qtbot.waitUntil(lambda: window.session.path == path)


def test_a_book_that_is_being_read_is_let_go_where_the_window_closes(
    qapp: QApplication, window: MainWindow, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = other(tmp_path)
    closed: list[Path] = []
    really = BenchBook.close
    monkeypatch.setattr(BenchBook, "close", lambda one: (closed.append(one.path), really(one)))
    window.session.open_soon(path)
    window.close()
    assert path in closed
    settle(qapp)
    assert window.session.book is None


def test_why_a_book_cannot_be_opened_can_still_be_told_in_another_language(
    qtbot, tmp_path: Path
) -> None:
    """Sent between threads as bare text it would stay English for ever."""
    (tmp_path / "shopping.tackfree").write_bytes(b"no book at all")
    opening = BookOpening()
    with qtbot.waitSignal(opening.refused) as came:
        opening.start(tmp_path / "shopping.tackfree", create=False)
    assert isinstance(came.args[0], Message)
    opening.stop()
