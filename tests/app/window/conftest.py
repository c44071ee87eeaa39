"""Windows on scratch books; a Qt warning, a thread or a window left behind fails the test."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from pseudo_language import Marker
from PySide6.QtCore import QEvent, QLocale, QSettings, QThreadPool
from PySide6.QtWidgets import QApplication
from window_steps import MakeWindow, replan

from app.service import demos
from app.window import language, words
from app.window.main_window import MainWindow
from app.window.palette import Appearance
from app.window.session import Session
from app.window.type_size import set_base
from planner.values.book import Book
from storage.bench_book import BenchBook

OF_THE_OFFSCREEN_PLATFORM = tuple(
    f"This plugin does not support {what}"
    for what in ("propagateSizeHints()", "raise()", "grabbing the keyboard", "grabbing the mouse")
)


@pytest.fixture(autouse=True, scope="session")
def _letters_as_in_the_window(qapp: QApplication) -> None:
    """Let a view that is shown alone write as large as it does in the window."""
    set_base(qapp)


@pytest.fixture(autouse=True)
def _qt_stays_quiet(qtlog, qapp: QApplication) -> Iterator[None]:
    yield
    for _ in range(3):
        qapp.processEvents()
        qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    said = [record.message for record in qtlog.records]
    left = [widget for widget in qapp.topLevelWidgets() if widget.isVisible()]
    names = [repr(one) for one in left]
    for one in left:
        one.close()  # the tests that follow shall not fail of it as well
    assert [line for line in said if line not in OF_THE_OFFSCREEN_PLATFORM] == []
    assert QThreadPool.globalInstance().activeThreadCount() == 0
    assert names == []


@pytest.fixture(autouse=True)
def _no_better_plans(monkeypatch: pytest.MonkeyPatch) -> None:
    """Begin no process that improves plans, and draw no runs; a test that wants one says so."""
    monkeypatch.setattr("app.window.improving.START_MS", 10**8)
    monkeypatch.setattr("app.window.chance.runner.REST_MS", 10**8)


@pytest.fixture(autouse=True)
def _time_passes_when_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let no tick of the real clock plan anew in the middle of a test."""
    for module in ("main_window", "bench_mode.view"):
        monkeypatch.setattr(f"app.window.{module}.TICK_MS", 10**8)


@pytest.fixture(autouse=True)
def _writes_are_waited_for(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> None:
    """Let no busy machine send a write to the background; how that goes has tests of its own."""
    if not request.module.__name__.endswith("test_saving"):
        monkeypatch.setattr("app.window.saving.PATIENCE_SECONDS", 60)


@pytest.fixture
def lamplighter() -> tuple[Book, int]:
    """Return the smallest demonstration, and the start of its first evening."""
    book = demos.read("lone_lamplighter").book
    return book, demos.first_evening(book)


@pytest.fixture
def spoken(request: pytest.FixtureRequest, qapp: QApplication, tmp_path: Path) -> Iterator[str]:
    """Let all that is made speak a language."""
    settings = QSettings(str(tmp_path / "language.ini"), QSettings.Format.IniFormat)
    settings.setValue(language.KEY, request.param.value)
    before = QLocale()
    translators = language.install(qapp, settings)
    yield request.param.value
    for translator in translators:
        qapp.removeTranslator(translator)
    QLocale.setDefault(before)


@pytest.fixture
def marker(qapp: QApplication) -> Iterator[None]:
    """Let the window speak the language whose every text is marked."""
    before = QLocale()
    QLocale.setDefault(QLocale(QLocale.Language.German))
    translator = Marker(qapp)
    qapp.installTranslator(translator)
    words.when.cache_clear()
    yield
    qapp.removeTranslator(translator)
    QLocale.setDefault(before)
    words.when.cache_clear()


@pytest.fixture
def make_window(qtbot, tmp_path: Path) -> Iterator[MakeWindow]:
    """Return how to open a window on a new book at a fixed time, planned and painted."""
    made: list[MainWindow] = []

    def make(book: Book, now: int, *, wait: bool = True) -> MainWindow:
        path = tmp_path / f"bench{len(made)}.tackfree"
        BenchBook.create(path, book).close()
        settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
        session = Session(lambda: now)
        window = MainWindow(session, settings)
        made.append(window)
        window.set_look(Appearance.LIGHT)
        window.resize(1280, 800)
        window.show()
        if wait and any(project.active for project in book.projects):
            replan(qtbot, window, lambda: session.open(path))
        else:
            session.open(path)
        return window

    yield make
    for window in made:
        session = window.session
        window.close()
        window.deleteLater()
        assert session.path is None  # the book was let go of
