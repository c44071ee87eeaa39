"""Letters after Alt that two things share: the keys then choose neither, or the wrong one."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import (
    QAbstractButton,
    QGroupBox,
    QLabel,
    QMenu,
    QMenuBar,
    QTabBar,
    QWidget,
)


def letter(words: str) -> str:
    """Return the letter that is pressed with Alt for these words, or ""."""
    return QKeySequence.mnemonic(words).toString().rpartition("+")[2]


def shared(named: Iterable[str]) -> list[str]:
    """Return a line for each letter that more than one of these words is reached by."""
    by: dict[str, list[str]] = {}
    for words in named:
        by.setdefault(letter(words), []).append(words)
    return [f"{key}: {' / '.join(every)}" for key, every in by.items() if key and len(every) > 1]


def shared_in_menu(menu: QMenu) -> list[str]:
    """Return what shares a letter in a menu, or in a menu below it."""
    found = [
        f"{menu.title()}: {line}"
        for line in shared(act.text() for act in menu.actions() if act.isVisible())
    ]
    for act in menu.actions():
        below = act.menu()
        if isinstance(below, QMenu):
            found += shared_in_menu(below)
    return found


def without(menu: QMenu) -> list[str]:
    """Return the entries of a menu, and of those below it, that no letter leads to.

    What cannot be chosen needs none, nor what a person named.
    """
    found = []
    for act in menu.actions():
        below = act.menu()
        if isinstance(below, QMenu):
            found += without(below)
        if not act.isSeparator() and act.isEnabled() and not letter(act.text()):
            found.append(f"{menu.title()}: {act.text()}")
    return found


def on_screen(whole: QWidget) -> list[str]:
    """Return every text on screen behind which Alt and a letter leads somewhere."""
    named = []
    for one in whole.findChildren(QWidget):
        if not one.isVisible():
            continue
        if isinstance(one, QMenuBar):
            named += [act.text() for act in one.actions()]
        elif isinstance(one, QTabBar):
            named += [one.tabText(at) for at in range(one.count())]
        elif isinstance(one, QGroupBox):
            named.append(one.title())
        elif isinstance(one, QAbstractButton) or (
            isinstance(one, QLabel) and one.buddy() is not None and one.buddy().isEnabled()
        ):
            named.append(one.text())
    return named
