"""Letters after Alt: none leads to two things at once, on any page, in any menu.

Those of dialogs are read where each is opened, in `test_dialogs_and_drawings_fit`.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from logged_book import logged_book
from PySide6.QtWidgets import QApplication, QMenu, QPushButton, QTabWidget
from shared_letters import letter, on_screen, shared, shared_in_menu, without
from small_book import NOW, small_book
from window_steps import LANGUAGES, MakeWindow, settle

from app.service.edits import Edit
from app.window.main_window import MainWindow
from planner.values.book import Book


def of_pages(app: QApplication, window: MainWindow) -> list[str]:
    """Return what shares a letter on any page, with the bar, the dock and the menus around it."""
    found = []
    for page in window.pages:
        window.show_page(page.name)
        settle(app)
        found += [f"{page.name}: {line}" for line in shared(on_screen(window))]
        for menu in page.widget.findChildren(QMenu):
            found += [f"{page.name}, {line}" for line in (*shared_in_menu(menu), *without(menu))]
    return found


@pytest.mark.parametrize("spoken", LANGUAGES, indirect=True, ids=str)
def test_no_letter_leads_to_two_things(
    spoken: str,
    qapp: QApplication,
    make_window: MakeWindow,
    lamplighter: tuple[Book, int],
) -> None:
    book, now = lamplighter
    window = make_window(book, now)
    found = []
    named = {book.projects[0].name + "…"}
    for title in window.menuBar().actions():
        menu = title.menu()
        assert isinstance(menu, QMenu)
        assert letter(title.text()), title.text()
        found += shared_in_menu(menu)
        found += [line for line in without(menu) if line.rpartition(": ")[2] not in named]
    assert found + of_pages(qapp, window) == []


@pytest.mark.parametrize("spoken", LANGUAGES, indirect=True, ids=str)
def test_no_letter_of_an_entry_or_of_the_first_questions_leads_to_two_things(
    spoken: str, qapp: QApplication, make_window: MakeWindow
) -> None:
    window = make_window(logged_book(), NOW)
    window.show_page("logbook")
    table = window.view("logbook").table
    table.setCurrentIndex(table.model().index(0, 0))
    settle(qapp)
    entry = shared(on_screen(window))
    assert window.view("logbook").form.save.isVisible()
    window.session.apply(Edit("empty", replace(small_book(), projects=())))
    window.show_page("tonight")
    settle(qapp)
    assert window.empty.isVisible()
    assert entry + shared(on_screen(window)) == []


def test_the_measure_finds_a_letter_that_two_share(qtbot) -> None:
    one = QTabWidget()
    qtbot.addWidget(one)
    for words in ("&Keep", "&Kind", "Keep"):
        one.addTab(QPushButton(words.replace("K", "L")), words)
    one.show()
    assert shared(on_screen(one)) == ["K: &Keep / &Kind"]
    menu = QMenu("&Bench", one)
    menu.addMenu("&View").addAction("&Quit")
    menu.addAction("Eve&ning")
    assert shared_in_menu(menu) == []
    menu.addAction("E&vening")
    assert shared_in_menu(menu) == ["&Bench: V: &View / E&vening"]
