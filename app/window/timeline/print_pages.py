"""The strip on paper: cut into pages of whole columns of time and whole lanes."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QMarginsF, QRectF
from PySide6.QtGui import QFont, QFontMetricsF, QPageLayout, QPageSize, QPainter, QPdfWriter
from PySide6.QtWidgets import QFileDialog, QWidget

from app.window import words
from app.window.palette import LIGHT
from app.window.plan_snapshot import PlanSnapshot
from app.window.strip_content import Strip
from app.window.timeline import edges, paint
from app.window.timeline.geometry import Scale
from app.window.timeline.labels import label_of
from app.window.timeline.paint import StripScene
from app.window.timeline.spatial_index import along, together
from app.window.timeline.strip_boxes import Sizes
from app.window.timeline.strip_filter import Sieve, sift
from app.window.timeline.strip_layout import arrange

PIXELS_PER_MINUTE = 2.2
DOTS_PER_INCH = 110  # of the drawing's own pixels on paper


def tr(text: str) -> str:
    """Return the translation of a sentence of this module."""
    return QCoreApplication.translate("sheet_of_strip", text)


def paint_strip(
    painter: QPainter,
    rect: QRectF,
    picture: PlanSnapshot,
    *,
    new_page: Callable[[], object],
    sieve: Sieve | None = None,
) -> int:
    """Paint the whole strip into ``rect`` of each page; return the number of pages.

    ``new_page`` is called before every page but the first.  Each has the
    dates and the names of its lanes; a page ends between two columns or two
    lanes where one fits at all.
    """
    strip = sift(picture.strip, sieve or Sieve())
    font = QFont(painter.font())
    scene = _scene(strip, picture, font, rect)
    pages = list(_pages(scene))
    for number, page in enumerate(pages):
        if number:
            new_page()
        painter.save()
        painter.translate(rect.topLeft())
        painter.setClipRect(page.area)
        _paint_page(painter, page)
        painter.restore()
        _foot(painter, rect, picture, number + 1, len(pages))
    return len(pages)


def _scene(strip: Strip, picture: PlanSnapshot, font: QFont, rect: QRectF) -> StripScene:
    small = QFont(font)
    small.setPointSizeF(font.pointSizeF() * 0.86)
    at = arrange(
        strip,
        Scale(strip.columns, PIXELS_PER_MINUTE),
        Sizes(QFontMetricsF(font).height()),
        measure=QFontMetricsF(small).horizontalAdvance,
        name_of=label_of,
        time_of=lambda wedge: words.ring_time(wedge.opens or 0, picture.zone, wedge.start),
    )
    foot = QFontMetricsF(font).height() * 1.6
    area = QRectF(0, 0, rect.width(), rect.height() - foot)
    return StripScene(at, LIGHT, font, picture.zone, picture.now, area, 0, 0)


def _pages(whole: StripScene) -> Iterator[StripScene]:
    """Yield what each page shows: a rectangle of the strip, all time first."""
    lanes = whole.lanes_area
    at = whole.at
    columns = [span.left for span in at.scale.spans if span.column is not None]
    rows = [row.top for row in at.rows]
    for top, bottom in _cuts(rows, at.height, lanes.height()):
        for left, right in _cuts(columns, at.scale.width, lanes.width()):
            area = QRectF(0, 0, whole.left + right - left, whole.top + bottom - top)
            yield replace(whole, area=area, across=left, down=top)


def _cuts(edges_: list[float], end: float, room: float) -> Iterator[tuple[float, float]]:
    """Yield parts of [0, end) no longer than ``room``.

    They end at an edge where that leaves less than half of the room empty.
    """
    start = 0.0
    while start < end:
        most = start + room
        if most >= end:
            yield start, end
            return
        fitting = [edge for edge in edges_ if start + room / 2 < edge <= most]
        stop = fitting[-1] if fitting else most
        yield start, stop
        start = stop


def _paint_page(painter: QPainter, page: StripScene) -> None:
    lanes, index = page.lanes_area, page.at.index
    columns = along(page.across, page.across + lanes.width())
    rows = along(page.down, page.down + lanes.height())
    painter.fillRect(page.area, page.colours.colour("gutter"))
    painter.save()
    painter.setClipRect(lanes)
    items = together(index.at(column, row) for column in columns for row in rows)
    paint.paint_square(painter, page, items)
    painter.restore()
    if page.at.strip.airbrushes:
        painter.save()
        top = page.at.sizes.head
        band = QRectF(page.left, top, lanes.width(), page.top - top)
        painter.setClipRect(band)
        loads = together(index.of_band(column) for column in columns)
        edges.paint_band(painter, page, loads)
        edges.paint_loads(painter, page, loads)
        painter.restore()
    edges.paint_head(painter, page)
    edges.paint_names(painter, page)


def _foot(painter: QPainter, rect: QRectF, picture: PlanSnapshot, page: int, pages: int) -> None:
    told = tr("Tackfree, planned {day} {time} · page {page} of {pages}").format(
        day=words.day_of(picture.now, picture.zone),
        time=words.clock(picture.now, picture.zone),
        page=page,
        pages=pages,
    )
    painter.setPen(LIGHT.colour("soft"))
    height = QFontMetricsF(painter.font()).height()
    foot = QRectF(rect.left(), rect.bottom() - height * 1.3, rect.width(), height * 1.3)
    painter.drawText(foot, edges.LEFT, told)


def write_strip(path: Path, picture: PlanSnapshot, sieve: Sieve | None = None) -> int:
    """Write the strip as a PDF, A4 across; return the number of pages.

    Raises
    ------
    OSError
        If it cannot be written.
    """
    path.touch()
    writer = QPdfWriter(str(path))
    writer.setResolution(DOTS_PER_INCH)
    writer.setTitle(tr("Timeline"))
    writer.setPageLayout(
        QPageLayout(
            QPageSize(QPageSize.PageSizeId.A4),
            QPageLayout.Orientation.Landscape,
            QMarginsF(10, 10, 10, 10),
            QPageLayout.Unit.Millimeter,
        )
    )
    painter = QPainter(writer)
    area = QRectF(0, 0, writer.width(), writer.height())
    pages = paint_strip(painter, area, picture, new_page=writer.newPage, sieve=sieve)
    painter.end()
    return pages


def save_strip(parent: QWidget, picture: PlanSnapshot, sieve: Sieve) -> str:
    """Ask for a file, write the strip to it, and return what to say of it."""
    name, _ = QFileDialog.getSaveFileName(
        parent, tr("Save the timeline"), tr("timeline.pdf"), tr("PDF (*.pdf)")
    )
    if not name:
        return ""
    try:
        pages = write_strip(Path(name), picture, sieve)
    except OSError as problem:
        return tr("{file} cannot be written: {why}").format(file=name, why=problem.strerror)
    text, many = tr("{n} page written to {file}"), tr("{n} pages written to {file}")
    return (text if pages == 1 else many).format(n=pages, file=Path(name).name)
