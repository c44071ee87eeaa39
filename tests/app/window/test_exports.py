"""Everything that leaves by the menu, and files that come in by hand or by menu."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from pathlib import Path

import pytest
from logged_book import logged_book, photos_in
from PySide6.QtCore import QLocale, QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtWidgets import QApplication, QFileDialog, QMenu, QWidget
from small_book import NOW, PROJECT, small_book
from window_steps import MakeWindow

from app.service.bench_sheet_file import Paper
from app.service.merging import ItemKind, MergeChoice
from app.window.exports import Exports
from app.window.files import Files
from app.window.import_dialog import ImportDialog
from app.window.session import Session
from planner.values.book import Book
from planner.values.sequence import EVERY, Colour, Sequence, SequenceStep
from planner.values.step import Application, Minutes, Stage, Step
from storage.bench_book import BenchBook
from storage.exchange import Exchange, dump, load
from storage.photos import folder_of

MakeDesk = Callable[[Book], "Desk"]
SAND = (ItemKind.COATING, "sand")


@dataclass
class Desk:
    """A session on a new book with what the File menu does, but without the views."""

    session: Session
    files: Files
    window: QWidget
    said: list[str] = field(default_factory=list)

    @property
    def exports(self) -> Exports:
        return self.files.exports

    def written(self) -> str:
        """Wait until all is written; return what is said of it."""
        self.exports.wait()
        QApplication.processEvents()
        return self.said[-1] if self.said else ""

    @property
    def dialog(self) -> ImportDialog:
        found = self.window.findChild(ImportDialog)
        assert found is not None
        return found


@pytest.fixture
def desk_of(qtbot, tmp_path: Path) -> Iterator[Callable[[Book], Desk]]:
    desks: list[Desk] = []

    def make(book: Book) -> Desk:
        path = tmp_path / f"bench{len(desks)}.tackfree"
        BenchBook.create(path, book).close()
        window = QWidget()
        session = Session(lambda: NOW)
        desk = Desk(session, Files(session, window), window)
        session.troubled.connect(desk.said.append)
        desks.append(desk)
        with qtbot.waitSignal(session.pictured, timeout=20_000):
            session.open(path)
        return desk

    yield make
    for desk in desks:
        desk.exports.wait()
        desk.session.close()
        desk.window.deleteLater()


@pytest.fixture
def saved_as(monkeypatch: pytest.MonkeyPatch) -> Callable[[Path], None]:
    """Answer the question for a file name."""

    def answer(path: Path) -> None:
        monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_a, **_k: (str(path), ""))

    return answer


def with_sequence(book: Book) -> Book:
    step = Step(
        id="prime",
        stage=Stage.PRIME,
        applications=(Application(places=(EVERY,), coating="ground"),),
        minutes=Minutes(fixed=10),
    )
    one = Sequence(name="quick", colours=(Colour(name="ground"),), steps=(SequenceStep(step=step),))
    return replace(book, sequences=(one,))


def test_every_export_writes_its_file_and_says_so(
    desk_of: MakeDesk, tmp_path: Path, saved_as: Callable[[Path], None]
) -> None:
    desk = desk_of(with_sequence(logged_book()))
    assert desk.session.path is not None
    photos_in(folder_of(desk.session.path))
    exports = desk.exports
    begins: dict[str, tuple[Callable[[], None], bytes]] = {
        "a.ics": (exports.calendar, b"BEGIN:VCALENDAR"),
        "b.pdf": (lambda: exports.sheet(Paper.LETTER, tonight=True), b"%PDF"),
        "c.html": (lambda: exports.record(PROJECT), b"<!DOCTYPE html>"),
        "d.md": (lambda: exports.record(""), b"# yard"),
        "e.csv": (exports.plan_table, b"start,end,"),
        "f.csv": (exports.log_table, b"start,end,"),
        "s.csv": (exports.shopping_table, b"what,name,"),
        "g.json": (lambda: exports.project(PROJECT), b"{"),
        "h.json": (lambda: exports.sequence("quick"), b"{"),
    }
    for name, (export, begin) in begins.items():
        path = tmp_path / name
        saved_as(path)
        export()
        said = desk.written()
        assert str(path) in said, said
        assert path.read_bytes().startswith(begin)
    assert b"data:image/png" in (tmp_path / "c.html").read_bytes()
    assert b"cart, prime, Thu 6 Mar 2031<" in (tmp_path / "c.html").read_bytes()
    assert load((tmp_path / "h.json").read_bytes()).book.sequences[0].name == "quick"
    rows = list(csv.DictReader(io.StringIO((tmp_path / "f.csv").read_text("utf-8"))))
    assert [row["step"] for row in rows] == ["prime", "sand", "wash"]
    assert rows[0]["minutes"] == "25"


@pytest.fixture
def german_numbers() -> Iterator[None]:
    before = QLocale()
    QLocale.setDefault(QLocale("de_DE"))
    yield
    QLocale.setDefault(before)


@pytest.mark.usefixtures("german_numbers")
def test_tables_are_written_as_the_language_reads_them(
    desk_of: MakeDesk, tmp_path: Path, saved_as: Callable[[Path], None]
) -> None:
    """A comma before fractions in German: Unicode CLDR, number symbols of "de"."""
    desk = desk_of(logged_book())
    for export in (desk.exports.plan_table, desk.exports.log_table, desk.exports.shopping_table):
        path = tmp_path / "table.csv"
        saved_as(path)
        export()
        desk.written()
        rows = list(csv.reader(io.StringIO(path.read_text("utf-8"), newline=""), delimiter=";"))
        assert len(rows[0]) > 5
        assert {len(row) for row in rows} == {len(rows[0])}
    bought = dict(zip(rows[0], rows[1], strict=True))
    assert "," in bought["needed"]
    assert float(bought["needed"].replace(",", ".")) > 0


def test_a_calendar_written_over_itself_is_brought_up_to_date(
    desk_of: MakeDesk, tmp_path: Path, saved_as: Callable[[Path], None]
) -> None:
    desk = desk_of(small_book())
    saved_as(tmp_path / "a.ics")
    desk.exports.calendar()
    assert "new" in desk.written()
    before = (tmp_path / "a.ics").read_bytes()
    desk.exports.calendar()
    assert "as before" in desk.written()
    assert (tmp_path / "a.ics").read_bytes() == before


def test_what_cannot_be_written_is_named(
    desk_of: MakeDesk, tmp_path: Path, saved_as: Callable[[Path], None]
) -> None:
    desk = desk_of(small_book())
    saved_as(tmp_path / "missing" / "a.csv")
    desk.exports.plan_table()
    said = desk.written()
    assert "a.csv" in said
    assert "cannot be written" in said
    (tmp_path / "b.ics").write_bytes(b"another program's")
    saved_as(tmp_path / "b.ics")
    desk.exports.calendar()
    assert "choose another name" in desk.written()
    assert (tmp_path / "b.ics").read_bytes() == b"another program's"


def test_nothing_is_written_where_no_name_was_given(
    desk_of: MakeDesk, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    desk = desk_of(small_book())
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_a, **_k: ("", ""))
    before = sorted(tmp_path.iterdir())
    desk.exports.plan_table()
    desk.written()
    assert sorted(tmp_path.iterdir()) == before


def test_without_a_plan_that_is_said(desk_of: MakeDesk) -> None:
    desk = desk_of(small_book())
    desk.session._picture = None
    desk.exports.calendar()
    assert "no plan" in desk.said[-1]


def test_the_menu_lists_what_there_is(desk_of: MakeDesk) -> None:
    desk = desk_of(with_sequence(small_book()))
    menu = QMenu()
    desk.exports.fill(menu)
    said = {}
    for action in menu.actions():
        inner = action.menu()
        if isinstance(inner, QMenu):
            inner.aboutToShow.emit()
            said[action.text()] = [action.text() for action in inner.actions()]
    assert said["One pro&ject"] == ["yard…"]
    assert said["One &sequence"] == ["quick…"]
    assert len(said["&Bench sheet"]) == 4
    menu.deleteLater()


def test_the_main_window_has_the_menu(make_window: MakeWindow) -> None:
    window = make_window(small_book(), NOW, wait=False)
    entry = window.menuBar().actions()[0]  # older releases of Qt's binding drop the menu with it
    file = entry.menu()
    assert isinstance(file, QMenu)
    assert "E&xport" in [action.text() for action in file.actions()]


def differing(path: Path) -> Path:
    """Write a file with a project of the same name and another sand."""
    book = small_book(target=None)
    sand = replace(book.coating("sand"), swatch="#d0a060")
    coatings = tuple(sand if coating.name == "sand" else coating for coating in book.coatings)
    path.write_bytes(dump(Exchange(replace(book, coatings=coatings))))
    return path


def test_what_differs_is_shown_side_by_side_and_chosen(
    qtbot, desk_of: MakeDesk, tmp_path: Path
) -> None:
    desk = desk_of(small_book())
    desk.files.import_path(differing(tmp_path / "theirs.json"))
    dialog = desk.dialog
    merge = dialog.merge
    assert merge is not None
    shown = merge.model
    items = [difference.item for difference in shown.rows]
    assert items == [(ItemKind.PROJECT, PROJECT), SAND]
    assert shown.choices == {items[0]: MergeChoice.BESIDE, SAND: MergeChoice.MINE}
    assert dialog.title.text() == "yard (2)"
    merge.list.selectRow(1)
    first = [merge.sides.index(0, column).data() for column in range(4)]
    assert first == ["≠", "swatch", "#c8b482", "#d0a060"]
    assert merge.sides.index(1, 0).data() == ""
    merge.radios[MergeChoice.BESIDE].click()
    assert merge.name.isEnabled()
    merge.name.setFocus()
    merge.name.clear()
    qtbot.keyClicks(merge.name, "gloss clear")
    assert "gloss clear" in dialog.message.text()  # it is taken: said by the field
    assert not dialog._take.isEnabled()
    merge.name.clear()
    qtbot.keyClicks(merge.name, "their sand")
    assert dialog._take.isEnabled()
    assert "their sand" in shown.index(1, 2).data()
    with qtbot.waitSignal(desk.session.pictured, timeout=20_000):
        dialog.accept()
    book = desk.session.book
    assert book is not None
    assert book.coating("sand").swatch == "#c8b482"
    assert book.coating("their sand").swatch == "#d0a060"
    assert [project.name for project in book.projects] == [PROJECT, "yard (2)"]
    desk.session.undo()
    assert desk.session.book == small_book()


def test_taking_the_files_is_one_edit(qtbot, desk_of: MakeDesk, tmp_path: Path) -> None:
    desk = desk_of(small_book())
    desk.files.import_path(differing(tmp_path / "theirs.json"))
    dialog = desk.dialog
    assert dialog.merge is not None
    for row in range(2):
        dialog.merge.list.selectRow(row)
        dialog.merge.radios[MergeChoice.THEIRS].click()
    with qtbot.waitSignal(desk.session.pictured, timeout=20_000):
        dialog.accept()
    theirs = load((tmp_path / "theirs.json").read_bytes()).book
    assert desk.session.book == theirs
    assert desk.session.undo_name() == "import theirs.json"


def drag(*paths: Path) -> QMimeData:
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    return data


def test_files_are_dropped_onto_the_window(qtbot, desk_of: MakeDesk, tmp_path: Path) -> None:
    desk = desk_of(small_book())
    data = drag(differing(tmp_path / "theirs.json"))
    action, button = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
    none = Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(QPoint(5, 5), action, data, button, none)
    QApplication.sendEvent(desk.window, enter)
    assert enter.isAccepted()
    drop = QDropEvent(QPointF(5, 5), action, data, button, none)
    QApplication.sendEvent(desk.window, drop)
    dialog = desk.dialog
    assert "theirs.json" in dialog.windowTitle()
    dialog.reject()
    assert desk.session.book == small_book()


def test_other_files_are_not_taken(desk_of: MakeDesk, tmp_path: Path) -> None:
    desk = desk_of(small_book())
    data = drag(tmp_path / "picture.png")
    enter = QDragEnterEvent(
        QPoint(5, 5),
        Qt.DropAction.CopyAction,
        data,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    enter.ignore()
    QApplication.sendEvent(desk.window, enter)
    assert not enter.isAccepted()
    assert desk.window.findChild(ImportDialog) is None
