"""Photos as the faces of models: small, cut to the shape of an outline, read one at a time."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, QRect, QTimer, Signal
from PySide6.QtGui import QPixmap

from app.service.model_outlines import BOX
from app.window.logbook.thumbnails import thumbnail


class FacePhotos(QObject):
    """Small photos that were asked for; the window stays quick while they come.

    Signals
    -------
    came()
        One more can be shown.
    """

    came = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._known: dict[tuple[Path, str], QPixmap | None] = {}
        self._wanted: dict[tuple[Path, str], None] = {}
        self._next = QTimer(self)
        self._next.setSingleShot(True)
        self._next.timeout.connect(self._read)

    def photo(self, book: Path, name: str) -> QPixmap | None:
        """Return a photo of a book; None where it is not read yet, or cannot be."""
        key = (book, name)
        if key not in self._known:
            self._wanted[key] = None
            self._next.start(0)
        return self._known.get(key)

    def _read(self) -> None:
        if not self._wanted:
            return
        key = next(iter(self._wanted))
        del self._wanted[key]
        found = thumbnail(*key)
        self._known[key] = None if found is None else cut(found)
        if self._wanted:
            self._next.start(0)
        self.came.emit()


def cut(photo: QPixmap) -> QPixmap:
    """Return the middle of a photo in the shape of an outline."""
    across, down = BOX
    wide = min(photo.width(), round(photo.height() * across / down))
    tall = min(photo.height(), round(wide * down / across))
    spot = QRect((photo.width() - wide) // 2, (photo.height() - tall) // 2, wide, tall)
    return photo.copy(spot)
