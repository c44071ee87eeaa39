"""Dialogs, first questions and bench mode: nothing is cut or overlaps, whatever takes a click is
large enough, no letter after Alt leads to two things; what drawings write.
"""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from drawn_text import painted_faults
from every_dialog import every_dialog
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QApplication, QDialog, QTabWidget, QWidget
from shared_letters import on_screen, shared
from target_sizes import small_targets
from text_fit import faults
from window_steps import LANGUAGES, MakeWindow, settle

from app.service.books import starter_book
from app.service.first_run import Answers, FirstHours, Vehicle, begin
from app.window.main_window import MainWindow
from planner.sequences.apply_to_book import every_sequence
from planner.values.book import Book
from planner.values.moment import minute_of, moment_of, zone_named

LEAST_SCREEN = (1280, 720 - 60)  # of a dialog, beside a bar of the desktop
LISTING = {"give", "save", "choose", "import", "split"}  # what is longer where more stands
LONG = "Carrier of the third harbour company with a crane"


@pytest.fixture
def crowded(lamplighter: tuple[Book, int]) -> tuple[Book, int]:
    """A table of thirty models, some with long names, of every sequence."""
    _, now = lamplighter
    today = moment_of(now, zone_named("Europe/Vienna")).date()
    book = starter_book("Europe/Vienna", today)
    orders = [one.name for one in every_sequence(book)]
    kinds = ("Bus", LONG, "Lorry", "Figures at the fountain", "Tender")
    vehicles = tuple(
        Vehicle(
            name=f"{kinds[number % 5]} no. {number}",
            scale="1:72",
            sequence=orders[number % len(orders)],
        )
        for number in range(1, 31)
    )
    answers = Answers(
        project="A crowded table with quite a long name",
        vehicles=vehicles,
        hours=(FirstHours(days=frozenset({0, 2, 5}), start="19:30", end="22:30"),),
    )
    return begin(book, answers, today).book, minute_of(moment_of(now, zone_named("UTC")))


def found_in_dialogs(
    app: QApplication, window: MainWindow, only: set[str] | None = None
) -> list[str]:
    """Return what is wrong on any page of any dialog, and what is too large for a screen."""
    found = []
    for name, make in every_dialog(window).items():
        if only is not None and name not in only:
            continue
        dialog = make()
        dialog.show()
        tabs = dialog.findChild(QTabWidget)
        for page in range(tabs.count() if tabs else 1):
            if tabs:
                tabs.setCurrentIndex(page)
            app.processEvents()
            found += [f"{name}, page {page}: {line}" for line in faults(dialog)]
            found += [f"{name}, page {page}: {line}" for line in painted_faults(dialog)]
            found += [f"{name}, page {page}: {line}" for line in small_targets(dialog)]
            found += [f"{name}, page {page}: {line}" for line in shared(on_screen(dialog))]
        wide, tall = dialog.size().toTuple()
        if wide > LEAST_SCREEN[0] or tall > LEAST_SCREEN[1]:
            found.append(f"{name}: {wide} x {tall} is larger than a small screen")
        put_away(app, dialog)
    return found


def put_away(app: QApplication, dialog: QDialog) -> None:
    """Close a dialog and let it go."""
    dialog.close()
    dialog.deleteLater()
    settle(app)


@pytest.mark.parametrize("spoken", LANGUAGES, indirect=True, ids=str)
def test_nothing_is_cut_or_overlaps_in_any_dialog(
    spoken: str, qapp: QApplication, make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    window = make_window(*lamplighter)
    assert found_in_dialogs(qapp, window) == []


def test_dialogs_hold_a_crowded_table(
    qapp: QApplication, make_window: MakeWindow, crowded: tuple[Book, int]
) -> None:
    window = make_window(*crowded, wait=False)
    assert found_in_dialogs(qapp, window, LISTING) == []


@pytest.mark.parametrize("spoken", LANGUAGES, indirect=True, ids=str)
def test_nothing_is_cut_in_the_first_questions(
    qtbot, spoken: str, qapp: QApplication, make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    _, now = lamplighter
    window = make_window(
        starter_book("Europe/Vienna", moment_of(now, zone_named("UTC")).date()), now
    )
    asked = window.empty.first_run
    qtbot.waitUntil(lambda: bool(asked.vehicles.lines) and asked.isVisible())
    settle(qapp)
    stages = [
        asked.begin,
        lambda: asked.vehicles.lines[0].name.setText(LONG),
        asked.vehicles.lines[0].entered.emit,
        lambda: asked.vehicles.lines[1].name.setText("Tender"),
        asked.hours.lines[0].entered.emit,
        lambda: asked.hours.lines[0].hours.setText("no hours"),
        asked.ask_plan,
    ]
    found = []
    for number, stage in enumerate(stages):
        stage()
        for size in ((1280, 800), (1, 1)):
            window.resize(*size)
            settle(qapp)
            found += [f"stage {number}, {size}: {line}" for line in faults(window)]
            found += [f"stage {number}, {size}: {line}" for line in small_targets(window)]
    shown = (asked.hours.lines[0].hours.text(), asked.hours.lines[0].message.text())
    assert all(shown), shown  # the last stage was refused, by its field
    assert found == []


@pytest.mark.parametrize("spoken", LANGUAGES, indirect=True, ids=str)
def test_nothing_is_cut_in_bench_mode(
    spoken: str, qapp: QApplication, make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    window = make_window(*lamplighter)
    window.bench.enter()
    found = []
    for size in ((1920, 1200), (1280, 800), (1000, 650)):
        window.bench.resize(*size)
        settle(qapp)
        found += [f"{size}: {line}" for line in faults(window.bench)]
        found += [f"{size}: {line}" for line in painted_faults(window.bench)]
        found += [f"{size}: {line}" for line in small_targets(window.bench)]
    window.bench.leave()
    settle(qapp)
    assert found == []


# What follows shows that the measure itself finds what is wrong.


class Writing(QWidget):
    """Writes words, some of them into a room."""

    def __init__(self, *lines: tuple[str, QRectF | QPointF]) -> None:
        super().__init__()
        self.lines = lines
        self.resize(300, 100)

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        for words, where in self.lines:
            if isinstance(where, QRectF):
                painter.drawText(where, Qt.AlignmentFlag.AlignVCenter, words)
            else:
                painter.drawText(where, words)
        painter.end()
        event.accept()


@pytest.fixture
def write(qtbot) -> Iterator:
    """Return how to have words written and to hear what is wrong with them."""

    def found(*lines: tuple[str, QRectF | QPointF]) -> list[str]:
        widget = Writing(*lines)
        qtbot.addWidget(widget)
        return painted_faults(widget)

    return found


def test_written_words_without_room_are_found(write) -> None:
    assert write(("Sand the seam", QRectF(10, 10, 200, 20))) == []
    (line,) = write(("Sand the seam", QRectF(10, 10, 30, 20)))
    assert "px and has 30" in line
    (line,) = write(("Sand the seam", QRectF(10, 10, 200, 8)))
    assert "of height" in line


def test_written_words_that_leave_the_widget_are_found(write) -> None:
    assert write(("Sand the seam", QPointF(10, 40))) == []
    (line,) = write(("Sand the seam", QPointF(280, 40)))
    assert "reaches out" in line


def test_words_written_over_others_are_found(write) -> None:
    here, below = QRectF(10, 10, 200, 20), QRectF(10, 40, 200, 20)
    assert write(("one line", here), ("another", below)) == []
    (line,) = write(("one line", here), ("another", here.translated(12, 4)))
    assert "overlaps" in line
