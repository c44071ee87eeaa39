"""Tab leads to every control of every page, and each has a name for those who listen."""

from __future__ import annotations

import pytest
from every_dialog import every_dialog
from logged_book import logged_book
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QScrollBar, QTabBar, QWidget
from small_book import NOW
from window_steps import MakeWindow, settle

from app.window.main_window import MainWindow

SIGNS = set("×+−–…↔↶⌫")  # what a button may show, and no voice would read as its purpose


def takers(whole: QWidget) -> list[QWidget]:
    """Return every control on screen that wants to be reached by Tab."""
    return [
        one
        for one in whole.findChildren(QWidget)
        if one.focusPolicy().value & Qt.FocusPolicy.TabFocus.value
        and one.isVisible()
        and one.isEnabled()
        and one.focusProxy() is None
        and not isinstance(one, QScrollBar)
    ]


def said(widget: QWidget) -> str:
    """Return what a screen reader calls a control."""
    told = QAccessible.queryAccessibleInterface(widget)
    return told.text(QAccessible.Text.Name).strip() if told is not None else ""


def mute(whole: QWidget) -> list[str]:
    """Return the controls that have no name, or only a sign."""
    return [
        f"{type(taker).__name__} < {type(taker.parentWidget()).__name__} {said(taker)!r}"
        for taker in takers(whole)
        if not isinstance(taker, QTabBar) and not set(said(taker)) - SIGNS
    ]


@pytest.fixture
def window(make_window: MakeWindow) -> MainWindow:
    made: MainWindow = make_window(logged_book(), NOW)
    return made


def test_tab_reaches_every_control_of_every_page(qapp: QApplication, window: MainWindow) -> None:
    lost = []
    for page in window.pages:
        window.show_page(page.name)
        settle(qapp)
        wanted = set(takers(page.widget))
        for _ in range(3 * len(takers(window))):  # a date has three stops, a time two
            here = qapp.focusWidget()
            assert here is not None, page.name
            wanted.discard(here)
            if not wanted:
                break
            QTest.keyClick(here, Qt.Key.Key_Tab)
        lost += [f"{page.name}: {type(one).__name__} {said(one)!r}" for one in wanted]
    assert lost == []


def test_every_control_has_a_name(qapp: QApplication, window: MainWindow) -> None:
    found = []
    for page in window.pages:
        window.show_page(page.name)
        settle(qapp)
        found += [f"{page.name}: {line}" for line in mute(window)]
    for name, make in every_dialog(window).items():
        dialog = make()
        dialog.show()
        qapp.processEvents()
        found += [f"{name}: {line}" for line in mute(dialog)]
        dialog.close()
        dialog.deleteLater()
    assert found == []
