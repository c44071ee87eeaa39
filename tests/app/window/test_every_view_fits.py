"""Every page of the window in both languages, on a full and on an empty book, at two sizes."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from fits import faults
from PySide6.QtCore import QEvent, QLocale, QRect, QSettings
from PySide6.QtWidgets import QApplication, QCheckBox, QComboBox, QLabel, QPushButton, QWidget
from window_steps import MakeWindow

from app.service.edits import Edit
from app.window import language
from app.window.main_window import MainWindow
from planner.values.book import Book

LEAST = (1000, 650)  # what a window must shrink to, and so show everything on 1280 by 720
LANGUAGES = [language.Language.ENGLISH, language.Language.GERMAN]


@pytest.fixture
def spoken(request: pytest.FixtureRequest, qapp: QApplication, tmp_path: Path) -> Iterator[str]:
    """Let all that is made speak a language."""
    settings = QSettings(str(tmp_path / "language.ini"), QSettings.Format.IniFormat)
    settings.setValue(language.KEY, request.param.value)
    before = QLocale()
    translators = language.install(qapp, settings)
    yield request.param.value
    for one in translators:
        qapp.removeTranslator(one)
    QLocale.setDefault(before)


def settle(app: QApplication) -> None:
    """Let layouts follow and what was taken away go."""
    for _ in range(3):
        app.processEvents()
        app.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def found_on_all_pages(app: QApplication, window: MainWindow) -> list[str]:
    """Return what is cut or overlaps on any page at the usual and at the least size."""
    found = []
    for page in window.pages:
        window.show_page(page.name)
        for size in ((1280, 800), (1, 1)):
            window.resize(*size)
            settle(app)
            wide, tall = window.size().toTuple()
            if size == (1, 1):
                assert wide <= LEAST[0], page.name
                assert tall <= LEAST[1], page.name
            found += [f"{page.name} at {wide} x {tall}: {line}" for line in faults(window)]
    return found


@pytest.mark.parametrize("spoken", LANGUAGES, indirect=True, ids=str)
def test_nothing_is_cut_or_overlaps_on_any_page(
    spoken: str,
    qapp: QApplication,
    make_window: MakeWindow,
    lamplighter: tuple[Book, int],
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    assert window.commands.views[0].text() == {"en": "&Tonight", "de": "&Heute Abend"}[spoken]
    assert found_on_all_pages(qapp, window) == []
    window.session.apply(Edit("empty", replace(book, projects=(), coatings=(), mixes=())))
    assert found_on_all_pages(qapp, window) == []


# What follows shows that the measure itself finds what is wrong.


@pytest.fixture
def ground(qtbot) -> Iterator[QWidget]:
    """A bare widget with room for others."""
    widget = QWidget()
    qtbot.addWidget(widget)
    widget.resize(400, 300)
    yield widget
    widget.close()


WORDS = "Sand the seam of the hull"


def placed(widget: QWidget, ground: QWidget, *rect: int) -> QWidget:
    widget.setParent(ground)
    widget.setGeometry(QRect(*rect))
    return widget


@pytest.mark.parametrize("kind", [QLabel, QPushButton, QCheckBox])
def test_words_without_room_are_found(kind: type, ground: QWidget) -> None:
    roomy = placed(kind(WORDS), ground, 0, 0, 300, 40)
    ground.show()
    assert faults(ground) == []
    roomy.resize(90, 40)
    (line,) = faults(ground)
    assert "px and has" in line or "of width" in line
    roomy.setToolTip(WORDS)
    assert faults(ground) == []


def test_a_wrapped_label_without_height_is_found(ground: QWidget) -> None:
    label = QLabel(WORDS)
    label.setWordWrap(True)
    placed(label, ground, 0, 0, 70, 120)
    ground.show()
    assert faults(ground) == []
    label.resize(70, 20)
    (line,) = faults(ground)
    assert "of height" in line


def test_a_chosen_word_without_room_is_found(ground: QWidget) -> None:
    combo = QComboBox()
    combo.addItem(WORDS)
    placed(combo, ground, 0, 0, 300, 26)
    ground.show()
    assert faults(ground) == []
    combo.resize(80, 26)
    assert len(faults(ground)) == 1


def test_overlap_and_what_reaches_out_are_found(ground: QWidget) -> None:
    placed(QLabel("one"), ground, 0, 0, 60, 20)
    other = placed(QLabel("two"), ground, 60, 0, 60, 20)
    ground.show()
    assert faults(ground) == []
    other.move(50, 0)
    assert any("overlaps" in line for line in faults(ground))
    other.move(380, 0)
    assert any("reaches out" in line for line in faults(ground))
