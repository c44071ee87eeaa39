"""What the File menu does: new, open, import, export.

What reads and writes files is imported when one is chosen: a start need not wait for it.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog, QWidget

from app.service import books
from app.service.edits import Edit
from app.window.archives import ARCHIVES, Archives
from app.window.exports import Exports
from app.window.file_drop import Dropping
from app.window.message_translation import translated
from app.window.session import Session
from planner.values.book import Book
from planner.values.refusal import Refused

if TYPE_CHECKING:
    from app.window.import_dialog import ImportDialog
    from storage.exchange import Exchange

BOOKS = "*.tackfree"
EXCHANGE = "*.json"


class Files(QObject):
    """Asks for files and hands them to the session."""

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session = session
        self._window = window
        self.exports = Exports(session, window)
        self.archives = Archives(session, window)
        self._dropping = Dropping(window, self.import_path)

    def new_book(self) -> None:
        """Ask where a new book shall lie, and begin it."""
        name, _ = QFileDialog.getSaveFileName(
            self._window,
            self.tr("New bench book"),
            str(self._folder() / "bench.tackfree"),
            self.tr("Bench books ({pattern})").format(pattern=BOOKS),
            options=QFileDialog.Option.DontConfirmOverwrite,
        )
        if not name:
            return
        path = Path(name) if Path(name).suffix else Path(name).with_suffix(".tackfree")
        if path.exists():
            self._session.troubled.emit(
                self.tr("{path} is there already; open it, or choose another name").format(
                    path=path
                )
            )
            return
        self._session.open_soon(path, create=True)

    def open_book(self) -> None:
        """Ask for a book and open it."""
        name, _ = QFileDialog.getOpenFileName(
            self._window,
            self.tr("Open bench book"),
            str(self._folder()),
            self.tr("Bench books, archives ({pattern});;All files (*)").format(
                pattern=f"{BOOKS} {ARCHIVES}"
            ),
        )
        if name.endswith(".zip"):
            self.archives.unpack(Path(name))
        elif name:
            self._session.open_soon(Path(name))

    def import_project(self) -> None:
        """Ask for an exchange file and take it in."""
        name, _ = QFileDialog.getOpenFileName(
            self._window,
            self.tr("Import project file"),
            str(self._folder()),
            self.tr("Project files ({pattern});;All files (*)").format(pattern=EXCHANGE),
        )
        if name:
            self.import_path(Path(name))

    def import_path(self, path: Path) -> None:
        """Take an exchange file into the open book, asking what is unclear."""
        from app.window.import_dialog import ImportDialog  # noqa: PLC0415
        from storage.bounded_read import read_bounded  # noqa: PLC0415
        from storage.exchange import load  # noqa: PLC0415
        from storage.strict import MOST_BYTES  # noqa: PLC0415

        try:
            exchange = load(read_bounded(path, MOST_BYTES))
        except Refused as problem:
            message = self.tr("{file}: {problem}")
            told = message.format(file=path.name, problem=translated(problem.mend))
            self._session.troubled.emit(told)
            return
        book = self._session.book
        if book is None:
            return
        dialog = ImportDialog(book, exchange, path.name, self._window)
        dialog.accepted.connect(lambda: self._take(exchange, path.name, dialog))
        dialog.open()

    def _take(self, exchange: Exchange, name: str, dialog: ImportDialog) -> None:
        from app.service.importing import import_edit, import_file  # noqa: PLC0415

        theirs, choices, names = dialog.choices()

        def taken(book: Book) -> Edit:
            imported = import_file(
                book, exchange, theirs=theirs, choices=choices, names=names, now=self._session.now
            )
            return import_edit(name, imported)

        refused = self._session.attempt(taken)
        if refused is not None:
            self._session.troubled.emit(f"{name}: {refused}")

    def export(self) -> None:
        """Ask where to, and write everything as an exchange file."""
        book = self._session.book
        if book is None:
            return
        name, _ = QFileDialog.getSaveFileName(
            self._window,
            self.tr("Export project file"),
            str(self._folder() / "projects.json"),
            self.tr("Project files ({pattern})").format(pattern=EXCHANGE),
        )
        if name:
            self.export_to(Path(name))

    def export_to(self, path: Path) -> None:
        """Write the active projects, and what they need, as an exchange file."""
        from app.service.exporting import export  # noqa: PLC0415

        book = self._session.book
        if book is None:
            return
        try:
            active = tuple(project.name for project in book.projects if project.active)
            books.write_whole(path, export(book, active))
        except Refused as problem:
            self._session.troubled.emit(translated(str(problem)))
        else:
            self._session.troubled.emit(self.tr("Exported to {path}").format(path=path))

    def open_demo(self, name: str) -> None:
        """Take a demonstration project into the open book."""
        from app.service import demos  # noqa: PLC0415
        from app.service.importing import Household, import_edit, import_file  # noqa: PLC0415

        now = self._session.now

        def taken(book: Book) -> Edit:
            theirs = frozenset() if book.projects else frozenset(Household)
            exchange = brought_up(demos.read(name), now)
            imported = import_file(book, exchange, theirs=theirs, now=now)
            return import_edit(name.replace("_", " "), imported)

        refused = self._session.attempt(taken)
        if refused is not None:
            self._session.troubled.emit(translated(str(refused)))

    def save_readable(self, path: Path) -> None:
        """Ask where to, and write what can be read of a damaged book as an exchange file."""
        from app.service.book_copies import readable  # noqa: PLC0415

        found = readable(path)
        if found is None:
            self._session.troubled.emit(self.tr("Nothing in it can be read."))
            return
        name, _ = QFileDialog.getSaveFileName(
            self._window,
            self.tr("Save what can be read"),
            str(path.with_suffix(".json")),
            self.tr("Project files ({pattern})").format(pattern=EXCHANGE),
        )
        if name:
            try:
                books.write_whole(Path(name), found[0])
            except Refused as problem:
                self._session.troubled.emit(translated(str(problem)))
            else:
                self._session.troubled.emit(translated(found[1]))

    def _folder(self) -> Path:
        path = self._session.path
        return path.parent if path else Path.home()


def brought_up(exchange: Exchange, now: int) -> Exchange:
    """Return a demonstration whose dates lie as far ahead of ``now`` as of its own first evening.

    Whole weeks are added, so that weekdays stay what they were.
    """
    from app.service import demos  # noqa: PLC0415

    book = exchange.book
    begins = demos.first_evening(book)
    weeks = -(-(now - begins) // (7 * 1440))
    if weeks <= 0 or any(project.log or project.pins for project in book.projects):
        return exchange
    later = timedelta(weeks=weeks)
    projects = tuple(
        replace(project, target=project.target + later) if project.target else project
        for project in book.projects
    )
    return replace(exchange, book=replace(book, projects=projects))
