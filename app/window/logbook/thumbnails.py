"""Small pictures of photos, made once and kept beside them."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QImage, QImageReader, QPixmap

from planner.values.refusal import Refused
from storage import photos

SIDE = 160  # longest side of a small picture [pixels]
SMALL = "small"


def thumbnail(book: Path, name: str) -> QPixmap | None:
    """Return the small picture of a photo, made if need be; None if the photo is unreadable."""
    folder = photos.folder_of(book) / SMALL
    small = folder / f"{Path(name).name}.png"
    image = QImage(str(small)) if small.exists() else QImage()
    if image.isNull():
        try:
            image = read_small(photos.path_of(book, name))
        except Refused:
            return None  # a name that some file brought; nothing of ours
        if image.isNull():
            return None
        try:
            folder.mkdir(exist_ok=True)
            image.save(str(small), "PNG")  # type: ignore[call-overload]
        except OSError:
            pass  # it is made again next time
    return QPixmap.fromImage(image)


def read_small(path: Path) -> QImage:
    """Return a picture no larger than a small one; a null image for what cannot be read."""
    reader = QImageReader(str(path))
    reader.setAutoTransform(True)
    size = reader.size()
    if size.isValid():
        reader.setScaledSize(size.scaled(QSize(SIDE, SIDE), Qt.AspectRatioMode.KeepAspectRatio))
    return reader.read()
