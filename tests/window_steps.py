"""Steps that tests of the window share."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QApplication

from app.window.main_window import MainWindow

MakeWindow = Callable[..., MainWindow]


def replan(qtbot, window: MainWindow, act: Callable[[], object]) -> None:
    """Do something that plans anew, and wait until all rules were tried."""
    ended = window.session.planning
    with qtbot.waitSignal(ended, timeout=20_000, check_params_cb=lambda busy: not busy):
        act()
    QApplication.processEvents()
