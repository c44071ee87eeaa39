"""Everything that one person has in one archive: written, and taken in elsewhere."""

from __future__ import annotations

import logging
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QFileDialog, QWidget

from app.window.message_translation import translated
from app.window.session import Session
from app.window.worker import Worker
from planner.values.refusal import Refused

log = logging.getLogger(__name__)

ARCHIVES = "*.zip"
BOOKS = "*.tackfree"


class Archives(QObject):
    """Packs the open book, and makes a book of an archive, in the background."""

    _packed = Signal(str, int, int)
    _unpacked = Signal(str)
    _failed = Signal(object)  # as text it would stay English

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session = session
        self._window = window
        self._worker = Worker()
        self._packed.connect(self._tell_packed)
        self._unpacked.connect(lambda path: session.open_soon(Path(path)))
        self._failed.connect(lambda why: session.troubled.emit(translated(why)))

    def pack(self) -> None:
        """Ask where to, and write everything."""
        path = self._session.path
        if path is None:
            return
        name, _ = QFileDialog.getSaveFileName(
            self._window,
            self.tr("Export everything"),
            str(path.with_suffix(".zip")),
            self.tr("Archives ({pattern})").format(pattern=ARCHIVES),
            options=QFileDialog.Option.DontConfirmOverwrite,
        )
        if name:
            self.pack_to(Path(name))

    def pack_to(self, target: Path) -> None:
        """Write everything of the open book to an archive."""
        path = self._session.path

        def act() -> None:
            from storage.bench_book import BenchBook  # noqa: PLC0415
            from storage.bundle import pack  # noqa: PLC0415

            assert path is not None
            with BenchBook.open(path) as bench:
                photos, missing = pack(bench, target)
                self._packed.emit(str(target), photos, len(missing))

        self._do(act)

    def unpack(self, archive: Path) -> None:
        """Ask where the book of an archive shall lie, make it and open it."""
        name, _ = QFileDialog.getSaveFileName(
            self._window,
            self.tr("Where shall the bench book lie?"),
            str(archive.with_suffix(".tackfree")),
            self.tr("Bench books ({pattern})").format(pattern=BOOKS),
            options=QFileDialog.Option.DontConfirmOverwrite,
        )
        if name:
            self.unpack_to(archive, Path(name))

    def unpack_to(self, archive: Path, target: Path) -> None:
        """Make a book of an archive and open it."""

        def act() -> None:
            from storage.bundle import unpack  # noqa: PLC0415

            unpack(archive, target)
            self._unpacked.emit(str(target))

        self._do(act)

    def wait(self) -> None:
        """Wait until nothing is packed or unpacked any more."""
        self._worker.wait()

    def _do(self, act: Callable[[], None]) -> None:
        def guarded() -> None:
            try:
                act()
            except Refused as problem:
                self._failed.emit(str(problem))

        self._session.troubled.emit(self.tr("Working on the archive…"))
        self._worker.start(guarded)

    def _tell_packed(self, path: str, photos: int, missing: int) -> None:
        told = self.tr("Everything is in {path}: the book with its history, and {n} photos.")
        if missing:
            told += " " + self.tr("{m} photos of the logbook are missing beside the book.")
        self._session.troubled.emit(told.format(path=path, n=photos, m=missing))
