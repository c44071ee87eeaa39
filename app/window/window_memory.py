"""Where a window was, and what it showed: kept from one start to the next."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray

from app.window.initial_size import FIRST

if TYPE_CHECKING:
    from app.window.main_window import MainWindow


def remember(window: MainWindow) -> None:
    """Write down where a window is and what it shows."""
    settings = window.settings
    settings.setValue("geometry", window.saveGeometry())
    settings.setValue("state", window.saveState())
    settings.setValue("splitter", window.splitter.saveState())
    window.views.remember()
    settings.setValue("view", window.pages[window.shown_view].name)
    settings.sync()


def restore(window: MainWindow) -> None:
    """Put a window where it was."""
    window.resize(FIRST)
    for name, put in (
        ("geometry", window.restoreGeometry),
        ("state", window.restoreState),
        ("splitter", window.splitter.restoreState),
    ):
        saved = window.settings.value(name)
        if isinstance(saved, QByteArray):
            put(saved)
    names = [page.name for page in window.pages]
    wanted = str(window.settings.value("view", ""))
    window.show_view(names.index(wanted) if wanted in names else 0)
