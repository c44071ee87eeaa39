"""Where a window was, and what it showed: kept from one start to the next."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray
from PySide6.QtWidgets import QMainWindow

from app.window.initial_size import FIRST
from app.window.shell import Shell

if TYPE_CHECKING:
    from app.window.views import Views


def remember(frame: QMainWindow, shell: Shell, views: Views) -> None:
    """Write down where a window is and what it shows; ``shell`` is the same window."""
    settings = shell.settings
    told: dict[str, object] = {
        "geometry": frame.saveGeometry(),
        "state": frame.saveState(),
        "splitter": shell.splitter.saveState(),
        "view": shell.pages[shell.shown_view].name,
    }
    for name, value in told.items():
        if settings.value(name) != value:  # what has not changed is not written again
            settings.setValue(name, value)
    views.remember()
    settings.sync()


def restore(frame: QMainWindow, shell: Shell) -> None:
    """Put a window where it was; ``shell`` is the same window."""
    frame.resize(FIRST)
    for name, put in (
        ("geometry", frame.restoreGeometry),
        ("state", frame.restoreState),
        ("splitter", shell.splitter.restoreState),
    ):
        saved = shell.settings.value(name)
        if isinstance(saved, QByteArray):
            put(saved)
    names = [page.name for page in shell.pages]
    wanted = str(shell.settings.value("view", ""))
    shell.show_view(names.index(wanted) if wanted in names else 0)
