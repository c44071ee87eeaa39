"""The photos of an entry as a row of small pictures."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSize, Qt, QUrl
from PySide6.QtGui import QDesktopServices, QIcon
from PySide6.QtWidgets import QListWidget, QListWidgetItem

from app.window.logbook.thumbnails import SIDE, thumbnail
from storage import photos


class PhotoStrip(QListWidget):
    """Small pictures; Enter or a double click opens the photo itself."""

    def __init__(self) -> None:
        super().__init__()
        self._book: Path | None = None
        self.setViewMode(QListWidget.ViewMode.IconMode)
        self.setFlow(QListWidget.Flow.LeftToRight)
        self.setWrapping(False)
        self.setIconSize(QSize(SIDE // 2, SIDE // 2))
        self.setMovement(QListWidget.Movement.Static)
        self.setFrameShape(QListWidget.Shape.NoFrame)
        self.setAccessibleName(self.tr("Photos"))
        self.setFixedHeight(SIDE // 2 + 34)
        self.itemActivated.connect(self._open)

    def show_photos(self, book: Path, names: tuple[str, ...]) -> None:
        """Show the photos of an entry."""
        self._book = book
        self.clear()
        for number, name in enumerate(names, start=1):
            small = thumbnail(book, name)
            told = self.tr("photo {n}") if small else self.tr("photo {n} is missing")
            item = QListWidgetItem(told.format(n=number))
            if small is not None:
                item.setIcon(QIcon(small))
            item.setData(Qt.ItemDataRole.UserRole, name)
            self.addItem(item)
        self.setVisible(bool(names))

    def _open(self, item: QListWidgetItem) -> None:
        if self._book is not None and not item.icon().isNull():
            path = photos.path_of(self._book, str(item.data(Qt.ItemDataRole.UserRole)))
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))
