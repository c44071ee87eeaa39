"""How large the window is at its first start, and what it shows on a small screen."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDockWidget, QMainWindow

FIRST = QSize(1280, 800)
AROUND = QSize(4, 32)  # what a desktop draws around a window, seldom more [px]
ROOMY = 1200  # below this the page is narrow beside the dock [px]


def fit_to(available: QSize, window: QMainWindow, dock: QDockWidget) -> None:
    """Give a window its first size, no larger than a screen; put the dock away if that is small.

    Parameters
    ----------
    available
        What the screen leaves to windows, without the bars of the desktop.
    window, dock
        The window, and what stands beside its page: brought back by its key.
    """
    window.resize(FIRST.boundedTo(available - AROUND))
    dock.setVisible(window.width() >= ROOMY)
