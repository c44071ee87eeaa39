"""What the menu "Export" writes: asked for a name, done in the background, told when done.

What makes a file is imported when one is made: a start need not wait for it.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from PySide6.QtCore import QLocale, QObject, Signal
from PySide6.QtWidgets import QFileDialog, QMenu, QWidget

from app.service.bench_sheet_file import Paper, sheet_bytes
from app.service.books import write_whole
from app.window import words
from app.window.message_translation import translated
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from app.window.worker import Worker
from planner.values.book import Book
from planner.values.refusal import Refused

log = logging.getLogger(__name__)

Make = Callable[[Path], tuple[bytes, str]]  # what to write, and a word about it


class _Said(QObject):
    done = Signal(str, str)
    failed = Signal(str)


class _Writing:
    def __init__(self, path: Path, make: Make, said: _Said) -> None:
        self._path, self._make, self._said = path, make, said

    def run(self) -> None:
        """Make the file and write it whole."""
        try:
            data, told = self._make(self._path)
            write_whole(self._path, data)
        except Refused as problem:
            self._said.failed.emit(f"{self._path.name}: {problem}")
        except Exception:
            # A fault of the program must not end it.
            log.exception("export failed")
            told = words.tr("{file}: the program's log says what went wrong")
            self._said.failed.emit(told.format(file=self._path.name))
        else:
            self._said.done.emit(str(self._path), told)


@dataclass(frozen=True)
class _Promise:
    """That somebody is told of the evenings of a plan, or of the first alone (definition 27b)."""

    told_by: str
    first_only: bool = False

    def keep(self, session: Session, picture: PlanSnapshot) -> None:
        from app.service.shown_plans import evenings_of  # noqa: PLC0415

        times = evenings_of(picture.calendar, picture.plan, picture.now, first_only=self.first_only)
        session.promise(self.told_by, times)


class Exports(QObject):
    """Every export of the window."""

    def __init__(self, session: Session, window: QWidget) -> None:
        super().__init__(window)
        self._session, self._window = session, window
        self._worker = Worker()
        self._said = _Said()
        self._said.done.connect(self._done)
        self._said.failed.connect(session.troubled)
        self._promises: dict[str, Callable[[], None]] = {}  # once the file is there

    def wait(self) -> None:
        """Wait until all that was begun is written."""
        self._worker.wait()

    def fill(self, menu: QMenu) -> None:
        """Put an entry for each export into a menu; those of one thing list what there is."""
        act = menu.addAction
        act(self.tr("Evenings as &calendar…")).triggered.connect(self.calendar)
        sheets = menu.addMenu(self.tr("&Bench sheet"))
        for paper in Paper:
            tonight, whole = self.tr("This evening, {paper}…"), self.tr("All evenings, {paper}…")
            for at, (name, alone) in enumerate(((tonight, True), (whole, False))):
                marked = f"{paper.value[:at]}&{paper.value[at:]}"  # the key: A, 4, L, E
                action = sheets.addAction(name.format(paper=marked))
                action.triggered.connect(partial(self._sheet, paper, alone))
        act(self.tr("&Tonight as a page for the phone…")).triggered.connect(self.tonight_page)
        self._listed(menu, self.tr("Build &record"), self._records)
        menu.addSeparator()
        act(self.tr("&Plan as table…")).triggered.connect(self.plan_table)
        act(self.tr("&Logbook as table…")).triggered.connect(self.log_table)
        act(self.tr("S&hopping as table…")).triggered.connect(self.shopping_table)
        menu.addSeparator()
        self._listed(menu, self.tr("One pro&ject"), self._projects)
        self._listed(menu, self.tr("One &sequence"), self._sequences)

    def _listed(self, menu: QMenu, name: str, fill: Callable[[QMenu, Book], None]) -> None:
        inner = menu.addMenu(name)

        def show() -> None:
            inner.clear()
            book = self._session.book
            if book is not None:
                fill(inner, book)
            if inner.isEmpty():
                inner.addAction(self.tr("there is none")).setEnabled(False)

        inner.aboutToShow.connect(show)
        show()

    def _records(self, menu: QMenu, book: Book) -> None:
        for project in book.projects:
            self._entry(menu, project.name, partial(self.record, project.name))
        if len(book.projects) > 1:
            menu.addAction(self.tr("All projects…")).triggered.connect(lambda: self.record(""))

    def _projects(self, menu: QMenu, book: Book) -> None:
        for project in book.projects:
            self._entry(menu, project.name, partial(self.project, project.name))

    def _sequences(self, menu: QMenu, book: Book) -> None:
        for sequence in book.sequences:
            self._entry(menu, sequence.name, partial(self.sequence, sequence.name))

    def _entry(self, menu: QMenu, name: str, act: Callable[[], None]) -> None:
        action = menu.addAction(name.replace("&", "&&") + "…")
        action.triggered.connect(lambda _on=False: act())

    def calendar(self) -> None:
        """Write the evenings ahead; written over itself, a calendar is brought up to date."""

        def make(picture: PlanSnapshot, origin: Path, path: Path) -> tuple[bytes, str]:
            from app.service.calendar_file import calendar_bytes  # noqa: PLC0415

            last = path.read_bytes() if path.exists() else b""
            made = calendar_bytes(
                picture.book, picture.plan, picture.now, origin, last, translate=translated
            )
            return made.data, translated(made.told())

        promise = _Promise("calendar")
        self._write_plan(self.tr("Calendar"), "evenings.ics", make, over=True, promise=promise)

    def _sheet(self, paper: Paper, tonight: bool, _on: bool = False) -> None:
        self.sheet(paper, tonight=tonight)

    def sheet(self, paper: Paper, *, tonight: bool) -> None:
        """Draw the bench sheet of the evening, or of all."""

        def make(picture: PlanSnapshot, _origin: Path, _path: Path) -> tuple[bytes, str]:
            return sheet_bytes(
                picture.book,
                picture.plan,
                paper,
                tonight=tonight,
                language=words.language_code(),
                translate=translated,
            ), ""

        promise = _Promise("sheet", first_only=tonight)
        self._write_plan(self.tr("Bench sheet"), "bench sheet.pdf", make, promise=promise)

    def print_tonight(self) -> None:
        """Draw the bench sheet of the evening on the paper that is usual here."""
        inches = QLocale().measurementSystem() is QLocale.MeasurementSystem.ImperialUSSystem
        self.sheet(Paper.LETTER if inches else Paper.A4, tonight=True)

    def tonight_page(self) -> None:
        """Write the evening as a page for a phone."""

        def make(picture: PlanSnapshot, _origin: Path, _path: Path) -> tuple[bytes, str]:
            from app.service.tonight_page import tonight_page  # noqa: PLC0415

            return tonight_page(
                picture.book,
                picture.plan,
                picture.now,
                language=words.language_code(),
                translate=translated,
            ), ""

        promise = _Promise("sheet", first_only=True)
        self._write_plan(self.tr("Page for the phone"), "tonight.html", make, promise=promise)

    def plan_table(self) -> None:
        """Write the plan as comma-separated values."""

        def make(picture: PlanSnapshot, _origin: Path, _path: Path) -> tuple[bytes, str]:
            from app.service import csv_export  # noqa: PLC0415

            return csv_export.csv_bytes(
                picture.plan,
                picture.book,
                translate=translated,
                marks=csv_export.marks_for(words.decimal(".")),
            ), ""

        self._write_plan(self.tr("Table"), "plan.csv", make)

    def log_table(self) -> None:
        """Write the logbook as comma-separated values."""

        def make(book: Book, _path: Path) -> bytes:
            from app.service import csv_export  # noqa: PLC0415

            return csv_export.log_bytes(
                book, translate=translated, marks=csv_export.marks_for(words.decimal("."))
            )

        self._write_book(self.tr("Table"), "logbook.csv", make)

    def shopping_table(self) -> None:
        """Write what is needed and to be bought as comma-separated values."""

        def make(picture: PlanSnapshot, _origin: Path, _path: Path) -> tuple[bytes, str]:
            from app.service import csv_export  # noqa: PLC0415

            book, plan, now = picture.book, picture.plan, picture.now
            return csv_export.shopping_bytes(
                book,
                plan,
                now,
                translate=translated,
                marks=csv_export.marks_for(words.decimal(".")),
            ), ""

        self._write_plan(self.tr("Table"), "shopping.csv", make)

    def record(self, project: str) -> None:
        """Write the build record of a project, or of all for ""."""
        now, origin = self._session.now, self._session.path or Path()

        def make(book: Book, path: Path) -> bytes:
            from app.service.build_record import build_record  # noqa: PLC0415
            from app.service.document import translated_document  # noqa: PLC0415
            from app.service.document_html import html_of  # noqa: PLC0415
            from app.service.document_markdown import markdown_of  # noqa: PLC0415
            from storage import photos  # noqa: PLC0415

            plain = build_record(book, now, photos.folder_of(origin), only=project)
            record = translated_document(plain, translated)
            if path.suffix.lower() == ".md":
                return markdown_of(record)
            return html_of(record, words.language_code())

        title = self.tr("Build record, as HTML or, named *.md, as Markdown")
        self._write_book(title, f"{_file_name(project or 'record')}.html", make, also="*.md")

    def project(self, name: str) -> None:
        """Write one project as an exchange file."""

        def make(book: Book, _path: Path) -> bytes:
            from app.service.exporting import export  # noqa: PLC0415

            return export(book, (name,))

        self._write_book(self.tr("Project file"), f"{_file_name(name)}.json", make)

    def sequence(self, name: str) -> None:
        """Write one sequence as an exchange file."""

        def make(book: Book, _path: Path) -> bytes:
            from app.service.exporting import export_sequence  # noqa: PLC0415

            return export_sequence(book, name)

        self._write_book(self.tr("Sequence file"), f"{_file_name(name)}.json", make)

    def _write_plan(
        self,
        title: str,
        name: str,
        make: Callable[[PlanSnapshot, Path, Path], tuple[bytes, str]],
        *,
        over: bool = False,
        promise: _Promise | None = None,
    ) -> None:
        picture, origin = self._session.picture, self._session.path
        if picture is None or origin is None:
            self._session.troubled.emit(self.tr("There is no plan to write yet."))
            return
        path = self._write(title, name, partial(make, picture, origin), over=over)
        if path is not None and promise is not None:
            self._promises[str(path)] = partial(promise.keep, self._session, picture)

    def _write_book(
        self, title: str, name: str, make: Callable[[Book, Path], bytes], also: str = ""
    ) -> None:
        book = self._session.book
        if book is not None:
            self._write(title, name, lambda path: (make(book, path), ""), also=also)

    def _write(
        self, title: str, name: str, make: Make, *, over: bool = False, also: str = ""
    ) -> Path | None:
        """Ask for a file name, and write in the background; return where to, if at all."""
        folder = self._session.path.parent if self._session.path else Path.home()
        suffix = Path(name).suffix
        filters = self.tr("{title} ({pattern})").format(
            title=title.partition(",")[0], pattern=f"*{suffix} {also}".strip()
        )
        none = QFileDialog.Option(0)
        chosen, _ = QFileDialog.getSaveFileName(
            self._window,
            title,
            str(folder / name),
            filters,
            options=QFileDialog.Option.DontConfirmOverwrite if over else none,
        )
        if not chosen:
            return None
        path = Path(chosen)
        if not path.suffix:
            path = path.with_suffix(suffix)
        self._session.troubled.emit(self.tr("Writing {path} …").format(path=path.name))
        self._worker.start(_Writing(path, make, self._said).run)
        return path

    def _done(self, path: str, told: str) -> None:
        promise = self._promises.pop(path, None)
        if promise is not None:
            promise()
        message = self.tr("Exported to {path}").format(path=path)
        self._session.troubled.emit(f"{message}: {told}" if told else message)


def _file_name(name: str) -> str:
    """Return a name that every platform takes for a file."""
    kept = "".join(sign if sign.isalnum() or sign in " -_." else "-" for sign in name)
    return kept.strip(" .")[:80] or "export"
