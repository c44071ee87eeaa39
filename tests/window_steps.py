"""Steps that tests of the window share."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication

from app.window import language
from app.window.main_window import MainWindow

MakeWindow = Callable[..., MainWindow]
LANGUAGES = [language.Language.ENGLISH, language.Language.GERMAN]


def settle(app: QApplication) -> None:
    """Let layouts follow and what was taken away go."""
    for _ in range(8):  # a table that got a scroll bar asks those around it, one by one
        app.processEvents()
        app.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def replan(qtbot, window: MainWindow, act: Callable[[], object]) -> None:
    """Do something that plans anew, and wait until all rules were tried."""
    ended = window.session.planning
    with qtbot.waitSignal(ended, timeout=20_000, check_params_cb=lambda busy: not busy):
        act()
    QApplication.processEvents()
