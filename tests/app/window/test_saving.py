"""What cannot be written is told, kept, tried again, and can be saved elsewhere."""

from __future__ import annotations

import sqlite3
import threading
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from small_book import NOW, PROJECT, small_book

from app.service import books, edits
from app.window.session import Session
from app.window.unsaved_bar import UnsavedBar
from storage import backups, database
from storage.bench_book import BenchBook
from storage.exchange import load


@pytest.fixture
def session(qtbot, tmp_path: Path) -> Iterator[Session]:
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, small_book()).close()
    made = Session(lambda: NOW)
    made.open(path)
    yield made
    made.close()


def aside(session: Session) -> None:
    assert session.book is not None
    session.apply(edits.activate(session.book, PROJECT, active=False))


def is_aside(path: Path) -> bool:
    with BenchBook.open(path) as bench:
        return not bench.book().project(PROJECT).active


def test_a_book_that_is_deleted_is_told_and_saved_elsewhere(qtbot, session, tmp_path) -> None:
    bar = UnsavedBar(session)
    qtbot.addWidget(bar)
    session.path.unlink()
    session.watch()
    assert "is gone: deleted" in bar.why.text()
    aside(session)
    assert "One edit is not saved" in bar.why.text()
    assert session.undo_name() == f"{PROJECT}: set aside"
    target = tmp_path / "elsewhere.tackfree"
    assert session.save_elsewhere(target)
    assert bar.isHidden()
    assert session.path == target
    assert is_aside(target)
    session.undo()
    assert not is_aside(target)


def test_a_book_that_is_moved_is_gone_on_with_there(qtbot, session, tmp_path) -> None:
    there = tmp_path / "there.tackfree"
    session.path.rename(there)
    session.watch()
    if session.moved_to() is None:
        pytest.skip("this system does not tell where a file was moved to")
    aside(session)
    session.go_on_there()
    assert session.path == there
    assert not session.saving.unsaved
    assert is_aside(there)


def test_a_book_that_comes_back_is_written_by_itself(qtbot, session, tmp_path) -> None:
    path, away = session.path, tmp_path / "away"
    path.rename(away)
    aside(session)
    assert len(session.saving.unsaved) == 1
    away.rename(path)
    with qtbot.waitSignal(session.saving.saved, timeout=5_000):
        session.saving.try_again()
    assert is_aside(path)
    session.undo()
    assert not is_aside(path)


def test_another_program_that_holds_the_book_stops_no_window(qtbot, session, monkeypatch) -> None:
    """SQLite would wait half a minute for the lock: the edit is shown while it does."""
    monkeypatch.setattr(database, "BUSY_SECONDS", 30)
    with closing(sqlite3.connect(session.path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        aside(session)
        assert session.book.project(PROJECT).active is False
        assert session.saving.busy
        with qtbot.waitSignal(session.saving.saved, timeout=20_000):
            other.execute("ROLLBACK")
    assert is_aside(session.path)


def test_what_is_not_saved_can_be_undone(qtbot, session) -> None:
    session.path.unlink()
    before = session.book
    aside(session)
    session.undo()
    assert session.book == before
    assert not session.saving.unsaved


def test_undo_of_what_is_just_being_written_waits_for_it(qtbot, session, monkeypatch) -> None:
    monkeypatch.setattr("app.window.saving.PATIENCE_SECONDS", 0.01)
    before = session.book
    with monkeypatch.context() as first:
        first.setattr("app.window.saving.PATIENCE_SECONDS", 10)
        session.apply(edits.set_weight(before, PROJECT, 7))
    with closing(sqlite3.connect(session.path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        aside(session)
        session.undo()  # of what is being written now
        other.execute("ROLLBACK")
    qtbot.waitUntil(lambda: session.book.project(PROJECT).active, timeout=20_000)
    assert session.book.project(PROJECT).weight == 7
    assert not is_aside(session.path)


def test_what_is_not_saved_when_the_window_closes_is_kept(qtbot, session, monkeypatch, tmp_path):
    monkeypatch.setattr(books, "usual_path", lambda: tmp_path / "own" / "bench.tackfree")
    session.path.unlink()
    aside(session)
    wanted = session.book
    session.close()
    (kept,) = books.kept_aside().iterdir()
    assert load(kept.read_bytes()).book == wanted


def test_a_book_that_may_not_be_written_is_read(qtbot, session, monkeypatch) -> None:
    monkeypatch.setattr("storage.opening.may_write", lambda _path: False)
    told: list[str] = []
    session.troubled.connect(told.append)
    content = session.path.read_bytes()
    session.open(session.path)
    assert "can only be read here" in told[0]
    aside(session)
    assert len(session.saving.unsaved) == 1
    assert session.path.read_bytes() == content


def test_a_damaged_book_is_replaced_by_a_copy(qtbot, session) -> None:
    aside(session)
    path = session.path
    made = backups.keep(path, backups.BackupReason.DAILY)
    aside_again = edits.activate(session.book, PROJECT, active=True)
    session.apply(aside_again)
    session.close()
    with closing(sqlite3.connect(path)) as raw:
        raw.execute("UPDATE project SET note = 'x'")
        raw.commit()
    with qtbot.waitSignal(session.troubled, timeout=10_000):
        session.open_soon(path)
    assert [copy for _, copy, _ in session.offers] == [made.path]
    assert "1 edit fewer" in session.offers[0][2]
    with qtbot.waitSignal(session.opened, timeout=10_000):
        session.rescue(path, made.path)
    assert session.book.project(PROJECT).active is False
    assert path.with_name(f"{path.name}.damaged-1").exists()


def test_keeping_what_is_shown_holds_up_no_edit(
    qtbot, session, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The shown plan is still being kept, however long that takes; the edit is written."""
    monkeypatch.setattr("app.window.saving.PATIENCE_SECONDS", 10)
    begun, may_end = threading.Event(), threading.Event()

    def slowly() -> None:
        begun.set()
        may_end.wait(30)

    session.saving.aside(slowly)
    assert begun.wait(10)
    aside(session)
    assert not may_end.is_set()
    assert session.saving.unsaved == []
    assert not session.saving.busy
    assert is_aside(session.path)
    may_end.set()
    session.saving.rest()
