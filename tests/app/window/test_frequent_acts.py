"""The most frequent acts, done by real keys and by a real pointer, and counted.

"Before" is counted on the window of fourteen flat pages and a dock: its version of 30 November
2026 before the rooms, driven in the same way.  Each act begins at the page that lies last, with the
keys there.  Names and numbers that are typed count nowhere, nor does saying where a file goes.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from itertools import pairwise
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QTabBar, QWidget
from window_steps import MakeWindow, replan

from app.service.books import starter_book
from app.service.first_run import Answers, FirstHours, Vehicle, begin
from app.window import exports
from app.window.bench_time.dialogs import AwayDialog, ExtraDialog
from app.window.evening.closing_dialog import ClosingDialog
from app.window.evening.gaps_dialog import GapsDialog
from app.window.evening.other_work_dialog import OtherWorkDialog
from app.window.main_window import MainWindow
from app.window.model_acts.another_dialog import AnotherDialog
from planner.values.model import ModelKind
from planner.values.moment import minute_of
from planner.values.project import Logged

MONDAY = datetime(2031, 3, 3, 18, 35, tzinfo=UTC)  # its evening runs since five minutes
NOW = minute_of(MONDAY)
Key = Qt.Key
PLAIN = Qt.KeyboardModifier.NoModifier
CTRL = Qt.KeyboardModifier.ControlModifier
BOTH = CTRL | Qt.KeyboardModifier.ShiftModifier
LEFT = Qt.MouseButton.LeftButton


@dataclass
class Hands:
    """Presses keys where they are, clicks where it is told, and counts both."""

    window: MainWindow
    count: int = 0

    def press(self, key: Qt.Key, held: Qt.KeyboardModifier = PLAIN) -> None:
        self.count += 1
        at = QApplication.focusWidget()
        assert at is not None
        QTest.keyClick(at, key, held)
        QApplication.processEvents()

    def click(self, at: QWidget, spot: QPoint | None = None) -> None:
        self.count += 1
        assert at.isVisible()
        QTest.mouseClick(at, LEFT, PLAIN, at.rect().center() if spot is None else spot)
        QApplication.processEvents()

    def room(self, number: int) -> None:
        """Click on the name of a room."""
        self.click(self.window.navigation.buttons[number])

    def leaf(self, bar: QTabBar, title: str) -> None:
        """Click on a word of a bar of leaves."""
        at = [bar.tabText(number) for number in range(bar.count())].index(title)
        self.click(bar, bar.tabRect(at).center())

    @property
    def log(self) -> tuple[Logged, ...]:
        book = self.window.session.book
        assert book is not None
        return tuple(fact for project in book.projects for fact in project.log)

    @property
    def dialog(self) -> QDialog:
        """The dialog on screen."""
        (found,) = [one for one in self.window.findChildren(QDialog) if one.isVisible()]
        return found


@pytest.fixture
def hands(make_window: MakeWindow) -> Iterator[Hands]:
    """Return hands at a window on three lorries, on the last page of all."""
    answers = Answers(
        project="On the table",
        vehicles=tuple(
            Vehicle(name=name, scale="1:72", sequence="quick table-top", kind=ModelKind.WHEELED)
            for name in ("Auk", "Coot", "Dunlin")
        ),
        hours=(FirstHours(days=frozenset({0, 1, 3}), start="19:30", end="21:30"),),
    )
    book = begin(starter_book("Europe/Warsaw", MONDAY.date()), answers, MONDAY.date(), now=NOW)
    window = make_window(book.book, NOW)
    window.show_page("tonight")  # so that all is made, as in a window of some minutes
    away(window)
    yield Hands(window)
    for dialog in window.findChildren(QDialog):
        dialog.close()
        dialog.deleteLater()


def away(window: MainWindow) -> None:
    window.activateWindow()
    window.show_page("gear")
    QApplication.processEvents()


def count(hands: Hands, act: Callable[[], object]) -> int:
    """Return what an act takes from the last page."""
    away(hands.window)
    hands.count = 0
    act()
    return hands.count


def load_of(hands: Hands) -> tuple[int, QWidget]:
    """Return the number of models of the first load, and its mark for all of it."""
    card = hands.window.tonight.cards[0]
    assert card.card is not None
    return len(card.card.rows), card.whole


def noted(qtbot, hands: Hands, act: Callable[[], object]) -> int:
    """Return what an act takes that goes into the logbook and plans anew; then take it back."""
    window = hands.window
    return count(hands, lambda: replan(qtbot, window, act))


def taken_back(qtbot, hands: Hands) -> None:
    replan(qtbot, hands.window, hands.window.acts.take_back)
    assert hands.log == ()


def test_a_place_a_row_and_a_load_are_noted_in_two_acts(qtbot, hands: Hands) -> None:
    window, table = hands.window, lambda: hands.window.tonight.cards[0].tables[0]
    models, _ = load_of(hands)
    assert models > 2
    room, cells = (lambda: hands.press(Key.Key_1, CTRL)), lambda: hands.room(0)

    def cell(column: int) -> None:
        index = table().places.index(0, column)
        hands.click(table().viewport(), table().visualRect(index).center())

    all_of_it = table().places.all_column
    acts: list[tuple[int, int, Callable[[], object]]] = [
        # before: Ctrl+1, Tab three times, Space; or two clicks
        (2, 1, lambda: (room(), hands.press(Key.Key_Space))),
        (2, 1, lambda: (cells(), cell(0))),
        # before: Ctrl+1, Tab twice, Space; or two clicks
        (2, 1, lambda: (room(), hands.press(Key.Key_Return))),
        (2, 1, lambda: (cells(), cell(all_of_it))),
        # before: a click for each model, after one to Tonight
        (1 + models, models, lambda: (room(), hands.press(Key.Key_Return, CTRL))),
        (1 + models, models, lambda: (cells(), hands.click(load_of(hands)[1]))),
    ]
    for before, facts, act in acts:
        assert noted(qtbot, hands, act) == 2 <= before
        assert len(hands.log) == facts
        taken_back(qtbot, hands)
    assert window.tonight.isVisible()


def test_a_load_is_noted_one_model_after_the_other(qtbot, hands: Hands) -> None:
    noted(qtbot, hands, lambda: (hands.press(Key.Key_1, CTRL), hands.press(Key.Key_Return, CTRL)))
    facts = sorted(hands.log, key=lambda fact: fact.start)
    assert all(fact.end is not None for fact in facts)
    for one, after in pairwise(facts):
        assert one.end == after.start
    assert facts[-1].end is not None
    assert facts[-1].end.timestamp() == hands.window.session.now * 60
    assert hands.window.session.latest_name() == f"done: {len(facts)} at once"


PAGES = [
    # page, its key, and how many clicks lead to it (0: none leads there by one or two)
    ("drying", (Key.Key_1, BOTH)),
    ("what if", (Key.Key_2, BOTH)),
    ("wishes", (Key.Key_3, BOTH)),
    ("stack", (Key.Key_4, BOTH)),
    ("sequences", (Key.Key_5, BOTH)),
    ("logbook", (Key.Key_6, BOTH)),
    ("shopping", (Key.Key_7, BOTH)),
    ("room", (Key.Key_8, BOTH)),
    ("tonight", (Key.Key_1, CTRL)),
    ("timeline", (Key.Key_2, CTRL)),
    ("build", (Key.Key_3, CTRL)),
    ("stock", (Key.Key_4, CTRL)),
    ("bench time", (Key.Key_5, CTRL)),
    ("gear", (Key.Key_9, BOTH)),
]


def test_one_key_leads_to_every_page_from_wherever_one_is(hands: Hands) -> None:
    # Before: one key to ten of the pages, one click to the other four.
    window = hands.window
    assert {name for name, _ in PAGES} == {page.name for page in window.pages}
    for start in ("stack",):
        for name, pressed in PAGES:
            window.show_page("logbook" if name == start else start)
            QApplication.processEvents()
            hands.count = 0
            hands.press(*pressed)
            assert window.view(name).isVisible(), (start, name)
            assert hands.count == 1


def test_what_one_comes_for_is_read_after_one_click(hands: Hands) -> None:
    # Before: one click each, on the names at the left.
    window = hands.window
    seen = {
        0: ("tonight",),  # what to do; beside it what dries and what closes
        1: ("timeline",),  # when each model is done
        3: ("stock",),  # what to buy, by when
    }
    for number, names in seen.items():
        taken = count(hands, lambda number=number: hands.room(number))
        assert taken == 1
        assert all(window.view(name).isVisible() for name in names)
    hands.room(0)
    assert window.tonight.aside.isVisible()


def test_commands_for_the_evening_take_one_key(
    qtbot, hands: Hands, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    window = hands.window
    # before: the fields of the dock, one key or click
    assert count(hands, lambda: hands.press(Key.Key_F3)) == 1
    assert window.air.temperature.hasFocus()
    hands.press(Key.Key_F3)
    assert count(hands, lambda: hands.click(window.strip.change)) == 1
    assert window.air.temperature.hasFocus()
    hands.press(Key.Key_F3)
    # before: one key each
    for key, held in ((Key.Key_L, BOTH), (Key.Key_H, CTRL)):
        assert noted(qtbot, hands, lambda key=key, held=held: hands.press(key, held)) == 1
        undone = count(hands, lambda: replan(qtbot, window, lambda: hands.press(Key.Key_Z, CTRL)))
        assert undone == 1
    # before: a click in the dock, and one on its button
    for key, kind in ((Key.Key_O, AwayDialog), (Key.Key_H, ExtraDialog)):
        taken = count(hands, lambda key=key: hands.press(key, BOTH))
        dialog = hands.dialog
        assert isinstance(dialog, kind)
        replan(qtbot, window, lambda: hands.press(Key.Key_Return))
        assert hands.count == taken + 1 == 2
        replan(qtbot, window, window.session.undo)
    # before: by F11 and then O, or not at all
    for key, kind in (
        (Key.Key_D, OtherWorkDialog),
        (Key.Key_G, GapsDialog),
        (Key.Key_C, ClosingDialog),
        (Key.Key_A, AnotherDialog),
    ):
        assert count(hands, lambda key=key: hands.press(key, BOTH)) == 1
        dialog = hands.dialog
        assert isinstance(dialog, kind)
        dialog.reject()
        dialog.deleteLater()
        QApplication.processEvents()
    # before: File, Export, Bench sheet, This evening; or Alt+F, X, B, T
    target = tmp_path / "sheet.pdf"
    monkeypatch.setattr(
        exports.QFileDialog, "getSaveFileName", lambda *_args, **_named: (str(target), "")
    )
    assert count(hands, lambda: hands.press(Key.Key_P, CTRL)) == 1
    window.files.exports.wait()
    assert target.read_bytes().startswith(b"%PDF")


def test_the_bench_and_the_better_plan_take_one_key(
    hands: Hands, monkeypatch: pytest.MonkeyPatch
) -> None:
    window = hands.window
    assert count(hands, lambda: hands.press(Key.Key_F11)) == 1
    assert window.bench.isVisible()
    hands.press(Key.Key_Escape)
    assert not window.bench.isVisible()
    taken: list[int] = []
    monkeypatch.setattr(window.improving, "take", lambda: taken.append(1))
    window.commands.better.setEnabled(True)
    assert count(hands, lambda: hands.press(Key.Key_F6)) == 1
    assert taken == [1]


def test_one_key_leads_back_to_where_one_was(hands: Hands) -> None:
    window = hands.window
    window.show_page("logbook")
    hands.press(Key.Key_1, CTRL)
    hands.press(Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert window.view("logbook").isVisible()
    hands.press(Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert window.tonight.isVisible()
