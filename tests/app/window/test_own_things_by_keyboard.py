"""Bench time, gear and stock worked in the real window without a mouse."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from small_book import NOW, small_book
from view_steps import back_to, dialog_of
from window_steps import MakeWindow

from app.window.gear.airbrush_dialog import AirbrushDialog
from app.window.main_window import MainWindow
from app.window.stock.coating_dialog import CoatingDialog

MOST_TABS = 12


@pytest.fixture
def window(make_window: MakeWindow) -> MainWindow:
    opened = make_window(replace(small_book(), projects=()), NOW, wait=False)
    opened.activateWindow()
    return opened


def go(window: MainWindow, name: str) -> None:
    """Press the key of a page."""
    number = [page.name for page in window.pages].index(name)
    window.commands.views[number].trigger()
    QApplication.processEvents()


def tab_to(window: MainWindow, wanted: QWidget) -> None:
    """Press Tab until a control has the keys."""
    for _ in range(MOST_TABS):
        if wanted.hasFocus():
            return
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    raise AssertionError(f"{wanted.accessibleName()} is out of reach of {MOST_TABS} Tabs")


def test_a_day_away_by_arrows_and_tab(window: MainWindow) -> None:
    go(window, "bench time")
    view = window.view("bench time")
    assert view.drawing.hasFocus()
    QTest.keyClick(view.drawing, Qt.Key.Key_Down)  # a week after today, which is the 6th
    tab_to(window, view.skip)
    QTest.keyClick(view.skip, Qt.Key.Key_Space)
    assert window.session.book.bench_time.skipped == (date(2031, 3, 13),)


def test_an_airbrush_is_added_and_taken_away_again(window: MainWindow) -> None:
    go(window, "gear")
    view = window.view("gear")
    assert view.airbrushes.table.hasFocus()
    tab_to(window, view.airbrushes.buttons[0])
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Space)
    form = dialog_of(view, AirbrushDialog)
    assert form.controls["name"].hasFocus()
    QTest.keyClicks(form.controls["name"], "second")
    QTest.keyClick(form.controls["name"], Qt.Key.Key_Return)
    assert [airbrush.name for airbrush in window.session.book.gear.airbrushes][1:] == ["second"]
    back_to(window)
    view.airbrushes.table.setFocus()
    QTest.keyClick(view.airbrushes.table, Qt.Key.Key_Down)
    QTest.keyClick(view.airbrushes.table, Qt.Key.Key_Delete)
    assert window.session.book.gear == small_book().gear


def test_a_coating_is_found_changed_and_left_alone(window: MainWindow) -> None:
    go(window, "stock")
    coatings = window.view("stock").coatings
    assert coatings.shelf.hasFocus()
    QTest.keyClick(coatings.shelf, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    QTest.keyClicks(coatings.look, "dark")
    tab_to(window, coatings.shelf)
    assert coatings.chosen().name == "dark oil"
    QTest.keyClick(coatings.shelf, Qt.Key.Key_Return)
    form = dialog_of(coatings, CoatingDialog)
    QTest.keyClicks(form.controls["name"], "soot oil")
    QTest.keyClick(form.controls["name"], Qt.Key.Key_Return)
    assert window.session.book.coatings[3].name == "soot oil"
    back_to(window)
    coatings.look.clear()
    QTest.keyClick(coatings.shelf, Qt.Key.Key_Return)
    form = dialog_of(coatings, CoatingDialog)
    QTest.keyClicks(form.controls["name"], "something else")
    QTest.keyClick(form, Qt.Key.Key_Escape)
    assert not form.isVisible()
    assert window.session.book.coatings[3].name == "soot oil"
