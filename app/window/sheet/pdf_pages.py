"""The bench sheet as PDF pages."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QMarginsF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QGuiApplication, QPageSize, QPainter, QPdfWriter

from app.service.bench_sheet import BenchSheet, bench_sheet
from app.service.bench_sheet_file import Paper
from app.window import words
from app.window.content_from_plan import strip_of
from app.window.message_translation import translated
from app.window.sheet.evening_bands import Fonts, entry_bands, heading_bands, section_bands
from app.window.sheet.page_flow import SOFT, Flow, text_bands
from app.window.sheet.strip_picture import of_evenings, of_main_parts, picture_blocks
from app.window.strip_content import Strip
from planner.bench import BenchCalendar
from planner.cure import Cure
from planner.tonight.replayed_plan import ReplayedPlan
from planner.values.book import Book
from planner.values.plan import Plan
from planner.values.refusal import Refused

MARGIN_MM = 14.0
WHOLE = 6  # lines of one thing to do that stay together
SIZES = {Paper.A4: QPageSize.PageSizeId.A4, Paper.LETTER: QPageSize.PageSizeId.Letter}


def draw_sheet(path: Path, book: Book, plan: Plan, now: int, paper: Paper, *, tonight: bool) -> int:
    """Write the bench sheet to ``path`` and return its number of pages.

    Raises
    ------
    Refused
        If the file cannot be written.
    """
    sheet = bench_sheet(book, plan, now, tonight=tonight, translate=translated)
    calendar = BenchCalendar(book.bench_time)
    strip = strip_of(ReplayedPlan(book, plan, now, calendar, Cure(book.room, calendar.zone)))
    writer = QPdfWriter(str(path))
    # Letters are measured for the screen; a page of the same resolution has them as wide.
    screen = QGuiApplication.primaryScreen()
    writer.setResolution(round(screen.logicalDotsPerInch()))
    writer.setPageSize(QPageSize(SIZES[paper]))
    writer.setPageMargins(QMarginsF(*[MARGIN_MM] * 4), writer.pageLayout().Unit.Millimeter)
    writer.setTitle(sheet.title)
    writer.setCreator("Tackfree")
    base = QFont(QGuiApplication.font())
    fonts = Fonts.of(base)
    footer = fonts.line * 1.6
    flow = _laid_out(sheet, strip, fonts, float(writer.width()), writer.height() - footer)
    painter = QPainter()
    if not painter.begin(writer):
        raise Refused(str(path), "cannot be written")
    _paint(painter, writer, flow, sheet, fonts)
    painter.end()
    return len(flow.pages)


def _laid_out(sheet: BenchSheet, strip: Strip, fonts: Fonts, width: float, height: float) -> Flow:
    flow = Flow(width, height)
    flow.place(text_bands(sheet.title, fonts.title, 0, width, gap=fonts.line * 0.2))
    for line in sheet.lines:
        flow.place(text_bands(line, fonts.body, 0, width, SOFT))
    flow.skip(fonts.line * 0.6)
    shown = of_main_parts(of_evenings(strip, tuple(evening.interval for evening in sheet.evenings)))
    for picture in picture_blocks(shown, fonts.body, width, height, flow.left):
        flow.place(picture)
    if shown.pieces and len(sheet.evenings) > 1:
        flow.place(text_bands(_legend(), fonts.body, 0, width, SOFT))
    for evening in sheet.evenings:
        flow.skip(fonts.line * 0.8)
        heading = heading_bands(evening, fonts, width)
        for entry in evening.entries:
            block = [*heading, *entry_bands(entry, fonts, width)]
            whole = len(block) if entry.brief else WHOLE
            flow.place(block[:whole])  # a long card goes on overleaf, but never after its head
            for band in block[whole:]:
                flow.place([band])
            heading = []
        for block in section_bands(evening, fonts, width):
            flow.place([*heading, *block])
            heading = []
        flow.place(heading)
    return flow


def _legend() -> str:
    return words.tr(
        "A wedge thins while a film dries, and ends in a ring where it is ready. "
        "A bracket marks a window that closes."
    )


def _paint(
    painter: QPainter, writer: QPdfWriter, flow: Flow, sheet: BenchSheet, fonts: Fonts
) -> None:
    small = QFont(fonts.body)
    small.setPointSizeF(9)
    metrics = QFontMetricsF(small)
    for number, page in enumerate(flow.pages, start=1):
        if number > 1:
            writer.newPage()
        for top, band in page:
            band.draw(painter, top)
        foot = f"{number} / {len(flow.pages)}"
        room = flow.width - metrics.horizontalAdvance(foot) - 20
        name = metrics.elidedText(sheet.title, Qt.TextElideMode.ElideRight, room)
        _foot(name, 0, small, painter, writer)
        _foot(foot, flow.width - metrics.horizontalAdvance(foot), small, painter, writer)


def _foot(text: str, left: float, font: QFont, painter: QPainter, writer: QPdfWriter) -> None:
    (band, *_) = text_bands(text, font, left, 10_000, SOFT)
    band.draw(painter, writer.height() - band.height)
