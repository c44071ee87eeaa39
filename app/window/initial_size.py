"""How large the window is at its first start."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QMainWindow

FIRST = QSize(1280, 800)
AROUND = QSize(4, 32)  # what a desktop draws around a window, seldom more [px]


def fit_to(available: QSize, window: QMainWindow) -> None:
    """Give a window its first size, no larger than a screen.

    Parameters
    ----------
    available
        What the screen leaves to windows, without the bars of the desktop.
    """
    window.resize(FIRST.boundedTo(available - AROUND))
