"""Tables for spreadsheets that put a comma before fractions."""

from __future__ import annotations

import csv
import io
from dataclasses import replace

import pytest
from logged_book import logged_book
from small_book import NOW, PROJECT

from app.service import csv_export, planning
from planner.values.book import Book

NOTE = "one; two, three\nand 4.5"


@pytest.fixture(scope="module")
def book() -> Book:
    book = logged_book()
    project = book.project(PROJECT)
    first, *rest = project.log
    measured = replace(first, temperature_c=21.5, humidity_pct=48.0, note=NOTE)
    return replace(book, projects=(replace(project, log=(measured, *rest)),))


def _read(data: bytes, separator: str) -> list[list[str]]:
    return list(csv.reader(io.StringIO(data.decode(), newline=""), delimiter=separator))


def test_every_table_says_the_same_in_both_ways(book: Book) -> None:
    """German spreadsheets part cells by ; and fractions by , (common practice, no source)."""
    plan = planning.plan(book, NOW).plan
    makers = (
        lambda marks: csv_export.csv_bytes(plan, book, marks=marks),
        lambda marks: csv_export.log_bytes(book, marks=marks),
        lambda marks: csv_export.shopping_bytes(book, plan, NOW, marks=marks),
    )
    fractions = 0
    for make in makers:
        point, comma = _read(make(csv_export.POINT), ","), _read(make(csv_export.COMMA), ";")
        assert len({len(row) for row in comma}) == 1
        assert len(point) == len(comma) > 1
        for one, other in zip(point, comma, strict=True):
            for cell, there in zip(one, other, strict=True):
                try:
                    float(cell)
                except ValueError:
                    assert there == cell  # a person's text and times are left alone
                else:
                    assert there == cell.replace(".", ",")
                    fractions += "." in cell
    assert fractions > 3


def test_a_gauge_is_written_as_the_spreadsheet_reads_it(book: Book) -> None:
    head, *rows = _read(csv_export.log_bytes(book, marks=csv_export.COMMA), ";")
    cells = [dict(zip(head, row, strict=True)) for row in rows]
    (mine,) = [cell for cell in cells if cell["note"] == NOTE]
    assert mine["temperature_c"] == "21,5"


@pytest.mark.parametrize(("fraction", "marks"), [(".", csv_export.POINT), (",", csv_export.COMMA)])
def test_the_sign_before_fractions_says_what_parts_cells(
    fraction: str, marks: csv_export.Marks
) -> None:
    assert csv_export.marks_for(fraction) == marks
