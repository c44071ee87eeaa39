"""Every page of the window in both languages, on a full and on an empty book, at three sizes:
nothing is cut, nothing overlaps, and whatever takes a click is large enough for it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from drawn_text import painted_faults
from PySide6.QtCore import QRect
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QLabel,
    QListWidget,
    QPushButton,
    QTabBar,
    QWidget,
)
from target_sizes import TARGET, small_targets
from text_fit import faults
from window_steps import LANGUAGES, MakeWindow, settle

from app.service.edits import Edit
from app.window.main_window import MainWindow
from planner.values.book import Book

SIZES = ((1920, 1200), (1280, 800), (1, 1))
LEAST = (1000, 650)  # what a window must shrink to, and so show everything on 1280 by 720


def found_on_all_pages(
    app: QApplication, window: MainWindow, sizes: tuple[tuple[int, int], ...] = SIZES
) -> list[str]:
    """Return what is cut, overlaps or is too small on any page, from a large size to the least."""
    found = []
    for page in window.pages:
        window.show_page(page.name)
        if page.name == "build":  # what waits for what is drawn for a model
            tree, table = page.view.tree, page.view.model
            tree.setCurrentIndex(table.index(0, 0, table.index(0, 0)))
        for size in sizes:
            window.resize(*size)
            settle(app)
            wide, tall = window.size().toTuple()
            if size == (1, 1):
                assert wide <= LEAST[0], page.name
                assert tall <= LEAST[1], page.name
            where = f"{page.name} at {wide} x {tall}"
            found += [f"{where}: {line}" for line in faults(window)]
            found += [f"{where}: {line}" for line in painted_faults(page.widget)]
            if size != SIZES[0]:  # nothing is smaller in a larger window
                found += [f"{where}: {line}" for line in small_targets(window)]
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
    assert found_on_all_pages(qapp, window, SIZES[1:]) == []


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


def test_what_is_too_small_for_the_pointer_is_found(ground: QWidget) -> None:
    large = (0, 0, 60, TARGET)
    button = placed(QPushButton("Go"), ground, *large)
    box = placed(QComboBox(), ground, 80, 0, 60, TARGET)
    ground.show()
    assert small_targets(ground) == []
    button.resize(TARGET - 1, TARGET)
    box.resize(60, TARGET - 1)
    assert [line.rpartition(" is ")[2] for line in small_targets(ground)] == ["23 x 24", "60 x 23"]
    button.setEnabled(False)  # it takes no click
    assert len(small_targets(ground)) == 1


def test_lines_and_leaves_that_are_too_small_are_found(ground: QWidget) -> None:
    lines, leaves = QListWidget(), QTabBar()
    lines.addItems(["Sand", "Prime"])
    for word in ("Sand", "Prime"):
        leaves.addTab(word)
    placed(lines, ground, 0, 0, 100, 80)
    placed(leaves, ground, 0, 100, 200, 14)
    ground.show()
    found = small_targets(ground)
    assert sum("item" in line for line in found) == 2
    assert sum("tab" in line for line in found) == 2
