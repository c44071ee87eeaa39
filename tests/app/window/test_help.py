"""Help: every page and every word of the trade is told, and F1 tells of the page on screen."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog, QLabel
from window_steps import MakeWindow

from app.window import glossary, help_pages
from planner.values.book import Book
from planner.values.coating import State
from planner.values.step import Role, Stage


def words_of(dialog: QDialog) -> str:
    return "\n".join(label.text() for label in dialog.findChildren(QLabel))


@pytest.mark.parametrize(
    ("kinds", "meaning"),
    [
        (Stage, glossary.stage_meaning),
        (State, glossary.state_meaning),
        (Role, glossary.role_meaning),
    ],
)
def test_every_word_has_a_meaning_of_its_own(kinds, meaning) -> None:
    told = [meaning(kind) for kind in kinds]
    assert all(one.endswith(".") for one in told)
    assert len(set(told)) == len(told)


def test_f1_tells_of_the_page_on_screen(
    qtbot, make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    window = make_window(*lamplighter)
    told = set()
    for number, page in enumerate(window.pages):
        window.show_view(number)
        window.commands.page.trigger()
        (dialog,) = [one for one in window.findChildren(QDialog) if one.isVisible()]
        assert dialog.windowTitle() == page.title.replace("&", "")
        told.add(words_of(dialog))
        dialog.close()
        QApplication.sendPostedEvents(None, 52)  # deferred deletion
    assert len(told) == len(window.pages)


def test_the_list_of_keys_has_those_of_every_page_once(
    make_window: MakeWindow, lamplighter: tuple[Book, int]
) -> None:
    window = make_window(*lamplighter)
    lines = help_pages.key_lines()
    assert len(set(lines)) == len(lines)
    dialog = help_pages.keys(window)
    assert "Ctrl+D" in words_of(dialog)
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert not dialog.isVisible()
