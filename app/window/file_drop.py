"""Exchange files dropped onto the window."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QWidget

SUFFIX = ".json"


class Dropping(QObject):
    """Watches a window for files that are dropped, and hands them on one by one."""

    def __init__(self, window: QWidget, take: Callable[[Path], None]) -> None:
        super().__init__(window)
        self._take = take
        window.setAcceptDrops(True)
        window.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Welcome exchange files, and nothing else."""
        if event.type() in (QEvent.Type.DragEnter, QEvent.Type.Drop):
            assert isinstance(event, QDragEnterEvent | QDropEvent)
            paths = dropped(event)
            if paths:
                event.setDropAction(Qt.DropAction.CopyAction)
                event.accept()
                if event.type() is QEvent.Type.Drop:
                    for path in paths:
                        self._take(path)
                return True
        return super().eventFilter(watched, event)


def dropped(event: QDropEvent) -> list[Path]:
    """Return the exchange files that are carried."""
    paths = [Path(url.toLocalFile()) for url in event.mimeData().urls() if url.isLocalFile()]
    return [path for path in paths if path.suffix.lower() == SUFFIX]
