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
from app.window import words
from app.window.archives import ARCHIVES, Archives
from app.window.exports import Exports
from app.window.file_drop import Dropping
from app.window.message_translation import translated
from app.window.session import Session
from planner.values.book import Book
from planner.values.book_changes import with_projects
from planner.values.project import Project
from planner.values.refusal import Refused

if TYPE_CHECKING:
    from app.window.import_dialog import ImportDialog
    from storage.exchange import Exchange
    from storage.project_file import ProjectFile

BOOKS = "*.tackfree"
EXCHANGE = "*.json"
PACKED, TABLES = "*.zip", "*.csv *.tsv"


class Files(QObject):
    """Asks for files and hands them to the session."""

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session = session
        self._window = window
        self.exports = Exports(session, window)
        self.archives = Archives(session, window)
        self._dropping = Dropping(window, self.import_path)
        session.damaged_beside.connect(self._offer_copies)

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
            self.tr("Project files, tables ({pattern});;All files (*)").format(
                pattern=f"{EXCHANGE} {PACKED} {TABLES}"
            ),
        )
        if name:
            self.import_path(Path(name))

    def import_path(self, path: Path) -> None:
        """Take a project file or a table into the open book, asking what is unclear."""
        from app.service.csv_reading import MOST_BYTES, is_table  # noqa: PLC0415
        from app.service.project_files import read_projects  # noqa: PLC0415
        from app.window.import_dialog import ImportDialog  # noqa: PLC0415
        from storage.bounded_read import read_bounded  # noqa: PLC0415

        book = self._session.book
        if book is None:
            return
        try:
            if is_table(read_bounded(path, 200)):
                self._import_table(read_bounded(path, MOST_BYTES), path.name)
                return
            file = read_projects(path)
        except Refused as problem:
            self._say(path.name, problem)
            return
        dialog = ImportDialog(book, file.exchange, path.name, self._window)
        dialog.accepted.connect(lambda: self._take(file, path.name, dialog))
        dialog.open()

    def _import_table(self, data: bytes, name: str) -> None:
        """Put the paints of a table on the shelf, or show what a logger wrote."""
        from app.service.own_paints import are_paints, read_paints, with_paints  # noqa: PLC0415
        from app.window.air_log_dialog import AirLogDialog  # noqa: PLC0415

        if not are_paints(data):
            AirLogDialog(self._session, data, name, self._window).open()
            return
        paints = read_paints(data, words.family_word)
        refused = self._session.attempt(lambda book: with_paints(book, paints))
        if refused is not None:
            raise refused
        told = self.tr("{n} paints of {file} stand on the shelf")
        self._session.troubled.emit(told.format(n=len(paints), file=name))

    def _say(self, name: str, problem: Refused) -> None:
        message = self.tr("{file}: {problem}")
        place = problem.place.partition(": ")[2] if name in problem.place else problem.place
        line = Refused(place, problem.mend).line if place else problem.mend
        self._session.troubled.emit(message.format(file=name, problem=translated(line)))

    def _take(self, file: ProjectFile, name: str, dialog: ImportDialog) -> None:
        from app.service.importing import import_edit, import_file  # noqa: PLC0415
        from app.service.project_files import keep_photos  # noqa: PLC0415

        exchange = file.exchange
        theirs, choices, names = dialog.choices()
        path = self._session.path
        if path is not None:
            try:
                keep_photos(file, path)
            except Refused as problem:
                self._say(name, problem)
                return

        def taken(book: Book) -> Edit:
            imported = import_file(
                book, exchange, theirs=theirs, choices=choices, names=names, now=self._session.now
            )
            return import_edit(name, imported)

        refused = self._session.attempt(taken)
        if refused is not None:
            self._session.troubled.emit(f"{name}: {translated(str(refused))}")

    def export(self) -> None:
        """Ask where to, and write everything as an exchange file."""
        book = self._session.book
        if book is None:
            return
        name, _ = QFileDialog.getSaveFileName(
            self._window,
            self.tr("Export project file"),
            str(self._folder() / "projects.json"),
            self.tr("Project files ({pattern});;With their photos ({packed})").format(
                pattern=EXCHANGE, packed=PACKED
            ),
        )
        if name:
            self.export_to(Path(name))

    def export_to(self, path: Path) -> None:
        """Write the active projects, and what they need, as an exchange file.

        A name that ends with .zip gets their photos as well.
        """
        from app.service.exporting import export  # noqa: PLC0415
        from app.service.project_files import packed  # noqa: PLC0415

        book, home = self._session.book, self._session.path
        if book is None:
            return
        try:
            active = tuple(project.name for project in book.projects if project.active)
            if path.suffix.lower() == ".zip" and home is not None:
                books.write_whole(path, packed(book, active, home).data)
            else:
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
            exchange = brought_up(demos.read(name, words.language_code()), now)
            imported = import_file(book, exchange, theirs=theirs, now=now)
            return import_edit(demos.title(name, words.language_code()), imported)

        refused = self._session.attempt(taken)
        if refused is not None:
            self._session.troubled.emit(translated(str(refused)))

    def _offer_copies(self, why: str) -> None:
        """Offer the copies of a damaged book; the one that is open stays until another comes."""
        from app.window.damaged_book import DamagedBook  # noqa: PLC0415 - seldom needed

        DamagedBook(self._session, self.save_readable, why, self._window).open()

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

    def put_off(project: Project) -> Project:
        return replace(project, target=project.target + later) if project.target else project

    return replace(exchange, book=with_projects(book, put_off))
