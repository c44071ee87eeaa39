"""Tables and project files taken in by the window: paints, a logger's air, photos."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QDialogButtonBox
from sequence_books import NOW, bare_book, bare_model
from window_steps import MakeWindow, replan

from app.service.edits import Edit
from app.service.sequences import give_sequence
from app.window.air_log_dialog import AirLogDialog
from app.window.import_dialog import ImportDialog
from app.window.main_window import MainWindow
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.project import Logged
from storage import photos

PICTURE = b"\xff\xd8\xff" + b"a photo of our own" * 40
HEAD = "time;temperature;humidity\n"


@pytest.fixture
def window(make_window: MakeWindow) -> MainWindow:
    """Return the window on a truck that was primed an hour ago."""
    book = give_sequence(bare_book(bare_model()), "table", ["truck"], "quick table-top").book
    end = moment_of(NOW - 60, zone_named(book.bench_time.zone))
    fact = Logged(model="truck", step="prime-airbrush", start=end - timedelta(minutes=10), end=end)
    project = replace(book.projects[0], log=(fact,))
    return make_window(replace(book, projects=(project,)), NOW)


def opened(window: MainWindow) -> Book:
    book = window.session.book
    assert book is not None
    return book


def only(kind: type) -> object:
    QApplication.processEvents()
    (found,) = [
        one for one in QApplication.topLevelWidgets() if type(one) is kind and one.isVisible()
    ]
    return found


def told(window: MainWindow, path: Path) -> str:
    """Return what the foot of the window says once a file was offered."""
    said: list[str] = []
    window.session.troubled.connect(said.append)
    window.files.import_path(path)
    return "\n".join(said)


def test_a_table_of_paints_is_put_on_the_shelf_or_refused_by_line_and_column(
    window: MainWindow, tmp_path: Path
) -> None:
    table = tmp_path / "paints.csv"
    table.write_text("kind;colour;ml\nacrylic;moss;12,5\n", "utf-8")
    assert "1 paints of paints.csv" in told(window, table)
    assert opened(window).coatings[-1].in_stock_ml == 12.5
    table.write_text("kind;colour;ml\nacrylic;moss;much\n", "utf-8")
    assert 'line 2, column "ml"' in told(window, table)
    table.write_bytes(b"\x00\x01")
    assert "zero byte" in told(window, table)


def test_a_loggers_table_is_looked_at_before_it_is_taken(
    qtbot, window: MainWindow, tmp_path: Path
) -> None:
    table = tmp_path / "logger.csv"
    lines = [f"0{day}/03/2031 {hour:02d}:00;12;80\n" for day in (6, 7) for hour in range(24)]
    table.write_text(HEAD + "".join(lines[:30] + lines[36:]), "utf-8")
    before = opened(window)
    window.files.import_path(table)
    asked = only(AirLogDialog)
    assert isinstance(asked, AirLogDialog)
    take = asked.buttons.button(QDialogButtonBox.StandardButton.Save)
    asked.wait()
    QApplication.processEvents()
    assert 'line 2, column "time"' in asked.read.text()
    assert "say which" in asked.read.text()
    assert not take.isEnabled()
    asked.order.setCurrentIndex(1)  # the day comes first
    asked.wait()
    QApplication.processEvents()
    assert "42 moments" in asked.read.text()
    assert "A gap from" in asked.read.text()
    assert "12 °C, 80 % RH" in asked.changes.text()
    assert "dry to handle" in asked.changes.text()
    assert opened(window) is before
    assert take.isEnabled()
    replan(qtbot, window, take.click)
    assert {point.temperature_c for point in opened(window).room.locations[0].workdays} == {12}
    assert opened(window).room.readings
    window.session.undo()
    assert opened(window).room == before.room


def test_a_project_goes_out_with_its_photos_and_comes_back(
    window: MainWindow, tmp_path: Path
) -> None:
    path = window.session.path
    assert path is not None
    name = photos.keep_data(path, PICTURE)
    book = opened(window)
    project = book.projects[0]
    log = (replace(project.log[0], photos=(name,)),)

    window.session.apply(Edit("a photo", replace(book, projects=(replace(project, log=log),))))
    file = tmp_path / "truck.zip"
    window.files.export_to(file)
    photos.path_of(path, name).unlink()
    window.files.import_path(file)
    asked = only(ImportDialog)
    assert isinstance(asked, ImportDialog)
    asked.accept()
    QApplication.processEvents()
    assert photos.path_of(path, name).read_bytes() == PICTURE
    file.write_bytes(file.read_bytes()[:200])
    assert "truck.zip" in told(window, file)
