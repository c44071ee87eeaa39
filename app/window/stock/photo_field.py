"""The photo of a sample card: kept with the book, shown small."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from app.window.labels import MessageLabel
from app.window.logbook.thumbnails import SIDE, thumbnail
from planner.values.refusal import Refused
from storage import photos

SUFFIXES = "*.jpg *.jpeg *.png *.webp *.heic *.tif *.tiff *.gif *.bmp"


class PhotoField(QWidget):
    """One photo or none."""

    def __init__(self, book: Path | None, name: str) -> None:
        super().__init__()
        self._book = book
        self.photo = name
        self.picture = QLabel()
        self.picture.setTextFormat(Qt.TextFormat.PlainText)
        self.choose = QPushButton(self.tr("Choose…"))
        self.drop = QPushButton(self.tr("Without"))
        self.message = MessageLabel()
        for button in (self.choose, self.drop):
            button.setAutoDefault(False)
        self.choose.clicked.connect(self._choose)
        self.drop.clicked.connect(lambda: self._take(""))
        line = QHBoxLayout()
        line.addWidget(self.picture)
        line.addWidget(self.choose)
        line.addWidget(self.drop)
        line.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(line)
        column.addWidget(self.message)
        self.setFocusProxy(self.choose)
        self._take(name)

    def keep(self, source: Path) -> None:
        """Keep a copy of a picture with the book, as the photo of this card."""
        if self._book is None:
            return
        try:
            self._take(photos.keep(self._book, source))
        except Refused as problem:
            self.message.say(str(problem))

    def _take(self, name: str) -> None:
        self.photo = name
        self.message.say("")
        small = thumbnail(self._book, name) if name and self._book else None
        if small is not None:
            side = QSize(SIDE // 2, SIDE // 2)
            self.picture.setPixmap(small.scaled(side, Qt.AspectRatioMode.KeepAspectRatio))
        else:
            self.picture.setText(self.tr("missing") if name else self.tr("none"))
        self.picture.setAccessibleName(self.tr("photo") if small else self.picture.text())
        self.drop.setEnabled(bool(name))

    def _choose(self) -> None:
        asked = QFileDialog(self, self.tr("Photo of the card"))
        asked.setFileMode(QFileDialog.FileMode.ExistingFile)
        asked.setNameFilter(self.tr("Pictures ({suffixes})").format(suffixes=SUFFIXES))
        asked.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        asked.fileSelected.connect(lambda name: self.keep(Path(name)))
        asked.open()
