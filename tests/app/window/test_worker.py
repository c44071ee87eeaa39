"""Jobs beside the window, and the search for garbage in the window's thread."""

from __future__ import annotations

import gc
import logging
import threading
import weakref
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QWidget

from app.window import garbage_collection
from app.window.garbage_collection import Collector
from app.window.worker import Worker


def test_jobs_are_done_one_after_another_beside_the_window() -> None:
    worker, done = Worker(), []
    for number in range(5):
        worker.start(lambda number=number: done.append((number, threading.get_ident())))
    worker.wait()
    assert [number for number, _ in done] == list(range(5))
    assert {thread for _, thread in done}.isdisjoint({threading.get_ident()})
    assert len({thread for _, thread in done}) == 1
    assert not worker.busy


def test_what_waits_can_be_called_off() -> None:
    worker, begun, go, done = Worker(), threading.Event(), threading.Event(), []

    def first() -> None:
        begun.set()
        go.wait()
        done.append("first")

    worker.start(first)
    worker.start(lambda: done.append("second"))
    begun.wait()
    assert worker.busy
    worker.clear()
    go.set()
    worker.wait()
    assert done == ["first"]


def test_a_fault_in_a_job_is_logged_and_the_next_is_done(
    caplog: pytest.LogCaptureFixture,
) -> None:
    worker, done = Worker(), []
    with caplog.at_level(logging.ERROR):
        worker.start(lambda: 1 // 0)
        worker.start(lambda: done.append("next"))
        worker.wait()
    assert done == ["next"]
    assert [record.exc_info[0] for record in caplog.records if record.exc_info] == [
        ZeroDivisionError
    ]


def test_no_job_is_kept_once_it_is_done() -> None:
    class Job:
        def run(self) -> None:
            """Do nothing, and so end before `start` has come back, more often than not."""

    worker = Worker()
    jobs = [Job() for _ in range(200)]
    known = [weakref.ref(job) for job in jobs]
    while jobs:
        worker.start(jobs.pop().run)
    worker.wait()
    worker.start(lambda: None)  # the thread has let go of the last by now
    worker.wait()
    assert [one() for one in known] == [None] * 200


@pytest.fixture
def collector(qtbot, qapp: QApplication) -> Iterator[Collector]:
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    made = Collector(window, qapp)
    yield made
    made.stop()
    window.close()


class Circle:
    def __init__(self) -> None:
        self.itself = self


def test_no_thread_but_the_windows_searches_for_garbage(collector: Collector) -> None:
    assert not gc.isenabled()
    assert gc.get_freeze_count() > 0
    collector.stop()
    assert gc.get_freeze_count() == 0
    assert gc.isenabled()


def test_what_is_new_is_searched_where_there_is_much_of_it(
    collector: Collector, monkeypatch: pytest.MonkeyPatch
) -> None:
    gc.collect()
    monkeypatch.setattr(garbage_collection, "YOUNG", 10**9)
    circle = weakref.ref(Circle())
    collector._look.timeout.emit()
    assert circle() is not None
    monkeypatch.setattr(garbage_collection, "YOUNG", 0)
    collector._look.timeout.emit()
    assert circle() is None


def test_everything_is_searched_once_the_window_was_left_alone(
    qtbot, qapp: QApplication, collector: Collector
) -> None:
    window = collector.parent()
    assert isinstance(window, QWidget)
    assert not collector._rest.isActive()
    collector._rest.setInterval(1)
    circle = weakref.ref(Circle())
    key = QKeyEvent(QEvent.Type.KeyPress, Qt.Key.Key_Down, Qt.KeyboardModifier.NoModifier)
    qapp.sendEvent(window.windowHandle(), key)
    assert collector._rest.isActive()
    qtbot.waitUntil(lambda: circle() is None)
    assert not collector._rest.isActive()


def test_everything_is_searched_when_the_person_turns_to_another_program(
    collector: Collector,
) -> None:
    circle = weakref.ref(Circle())
    collector._turned(Qt.ApplicationState.ApplicationActive)
    assert circle() is not None
    collector._turned(Qt.ApplicationState.ApplicationInactive)
    assert circle() is None
