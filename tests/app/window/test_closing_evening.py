"""Closing the evening by keys, from the menu and from the bench."""

from __future__ import annotations

from pathlib import Path

from bench_steps import AtTheBench
from logged_book import png
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QDialogButtonBox
from small_book import CART, NOW, PROJECT, at, key, slow_primer, small_book
from tonight_steps import Tonight
from window_steps import MakeWindow, settle

from app.window.evening.closing_dialog import ClosingDialog
from planner.values.coating import State
from planner.values.project import Event

Key = Qt.Key


def asked(app: QApplication) -> ClosingDialog:
    dialog = app.activeModalWidget()
    assert isinstance(dialog, ClosingDialog)
    return dialog


def test_an_evening_is_closed_by_keys(
    qtbot, qapp: QApplication, make_window: MakeWindow, tmp_path: Path
) -> None:
    here = Tonight(qtbot, qapp, make_window(slow_primer(small_book()), NOW), NOW)
    here.tick(key("prime"))
    here.settle()
    here.now = at("2031-03-06 19:50")
    here.window.session.replan()
    here.settle()
    here.command(Key.Key_C)
    dialog = asked(qapp)
    photo = tmp_path / "cart.png"
    photo.write_bytes(png())
    # it is half done: said to be done with the keys of its list
    box = dialog.work[key("prime")]
    assert box.currentText() == "under way"
    box.setFocus()
    qtbot.keyClick(box, Key.Key_Home)
    assert box.currentText() == "done"
    dialog.take_photo(CART, photo)
    jar = dialog.kept.get("grey primer")
    assert jar is not None
    jar.setFocus()
    jar.selectAll()
    qtbot.keyClicks(jar, "1.5")
    clean = next(iter(dialog.clean.values()))
    clean.setFocus()
    qtbot.keyClick(clean, Key.Key_Space)
    assert dialog.next.text().startswith("Next: ")
    ok = dialog.buttons.button(QDialogButtonBox.StandardButton.Ok)
    ok.setFocus()
    qtbot.keyClick(ok, Key.Key_Return)
    here.settle()
    assert qapp.activeModalWidget() is None
    book = here.window.session.book
    project = book.project(PROJECT)
    (fact,) = project.log
    assert fact.end is not None
    assert len(fact.photos) == 1
    assert [one.ml for one in book.supplies.leftovers] == [1.5]
    assert len(book.cleaned) == 1
    assert project.diary[-1].event is Event.STOPPED
    here.window.session.undo()  # closing is an edit like any other
    here.settle()
    assert here.window.session.book.project(PROJECT).log[0].end is None


def test_the_bench_closes_it_by_f_and_asks_how_the_films_feel(
    qtbot, qapp: QApplication, make_window: MakeWindow
) -> None:
    here = AtTheBench(qtbot, make_window(slow_primer(small_book()), NOW), NOW)
    here.press(Key.Key_Space, Key.Key_S)
    here.now += 10
    here.press(Key.Key_Space)
    here.now += 30
    qtbot.keyClick(here.bench, Key.Key_F)
    settle(qapp)
    dialog = asked(qapp)
    box = dialog.feels[key("prime")]
    box.setFocus()
    qtbot.keyClick(box, Key.Key_End)
    assert box.currentText() == "hard, can be held"
    ok = dialog.buttons.button(QDialogButtonBox.StandardButton.Ok)
    ok.setFocus()
    qtbot.keyClick(ok, Key.Key_Return)
    here.settle()
    (look,) = here.project.observed
    assert (look.step, look.state, look.reached) == ("prime", State.DRY_TO_HANDLE, True)
    assert here.project.diary[-1].event is Event.STOPPED


def test_going_on_closes_nothing(qtbot, qapp: QApplication, make_window: MakeWindow) -> None:
    here = Tonight(qtbot, qapp, make_window(small_book(), NOW), NOW)
    before = here.window.session.book
    here.command(Key.Key_C)
    dialog = asked(qapp)
    qtbot.keyClick(dialog, Key.Key_Escape)
    here.settle()
    assert here.window.session.book == before
