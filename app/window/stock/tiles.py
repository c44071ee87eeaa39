"""One bottle as a tile: how full, what the plan takes, its colour large, and what to mind."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, QSize, Qt
from PySide6.QtGui import QFont, QPainter, QPen, QTextLayout, QTextOption
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from app.window import mark_drawing, words
from app.window.colour_names import short_name
from app.window.palette import LIGHT, Colours
from app.window.stock.bottles import paint_bottle
from app.window.stock.coating_rows import StockRow
from app.window.stock.tree import ml

Index = QModelIndex | QPersistentModelIndex
TILE = 176  # least width of a tile with the room around it [pixels]
APART = 10
PADDING = 10
PICTURE = 64  # height of the bottle, and side of the swatch
NOTES = 2  # lines below the name


class TilePainter(QStyledItemDelegate):
    """Paints bottles as tiles, and the names of families over them."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.colours: Colours = LIGHT
        self.zone = ZoneInfo("UTC")
        self.width = 600  # of the shelf

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Return the size of a tile, or of a heading as wide as the shelf."""
        line = option.fontMetrics.height()
        if isinstance(index.data(Qt.ItemDataRole.UserRole), StockRow):
            in_a_row = max(1, (self.width - 2) // TILE)
            return QSize(
                (self.width - 2) // in_a_row, APART + 2 * PADDING + PICTURE + 8 + (2 + NOTES) * line
            )
        return QSize(max(TILE, self.width - 2), line + 14)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint a tile or a heading."""
        row = index.data(Qt.ItemDataRole.UserRole)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        if isinstance(row, StockRow):
            self._paint_tile(painter, option, row)
        else:
            painter.setFont(_bold(option.font))
            painter.setPen(self.colours.colour("soft"))
            rect = QRectF(option.rect).adjusted(2, 8, 0, 0)
            painter.drawText(rect, Qt.AlignmentFlag.AlignVCenter, str(row))
        painter.restore()

    def _paint_tile(self, painter: QPainter, option: QStyleOptionViewItem, row: StockRow) -> None:
        colours = self.colours
        card = QRectF(option.rect).adjusted(1, 1, -APART, -APART)
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        focused = bool(option.state & QStyle.StateFlag.State_HasFocus)
        edge = "focus" if chosen or focused else "rule"
        painter.setPen(QPen(colours.colour(edge), 2.0 if chosen or focused else 1.0))
        painter.setBrush(colours.colour("sheet"))
        painter.drawRoundedRect(card, 6, 6)
        self._paint_picture(painter, card, row)
        line = option.fontMetrics.height()
        top = card.top() + PADDING + PICTURE + 8
        name = QRectF(card.left() + 3, top - 2, card.width() - 4, 2 * line + 4)
        if chosen:  # the picture is never tinted, only the name
            painter.fillRect(name, colours.colour("stroke"))
            painter.fillRect(
                QRectF(card.left(), card.top() + 4, 3, card.height() - 8), colours.colour("focus")
            )
        painter.setPen(colours.colour("ink"))
        inner = QRectF(card.left() + PADDING, top, card.width() - 2 * PADDING, 2 * line)
        _two_lines(painter, inner, short_name(row.coating), option.font, line)
        self._paint_notes(painter, inner.translated(0, 2 * line + 4), row, option, line)

    def _paint_picture(self, painter: QPainter, card: QRectF, row: StockRow) -> None:
        colours, coating = self.colours, row.coating
        size = max(coating.bottle_ml, 0.1)
        taken = row.line.needed_ml if row.line else 0.0
        spot = QRectF(card.left() + PADDING, card.top() + PADDING, PICTURE * 0.62, PICTURE)
        paint_bottle(
            painter,
            spot,
            coating.swatch,
            min(1.0, row.stock.left_ml / size),
            min(1.0, taken / size),
            old=bool(row.old),
            colours=colours,
        )
        left = spot.right() + 12
        swatch = QRectF(left, spot.top(), card.right() - PADDING - left, PICTURE)
        painter.setPen(mark_drawing.edge_pen(coating.swatch, colours))
        painter.setBrush(mark_drawing.brush_of(coating.swatch, 1.0))
        painter.drawRoundedRect(swatch, 5, 5)

    def _paint_notes(
        self,
        painter: QPainter,
        rect: QRectF,
        row: StockRow,
        option: QStyleOptionViewItem,
        line: int,
    ) -> None:
        """Write what is left and taken, and below it what to mind, with its mark."""
        colours = self.colours
        font = QFont(option.font)
        font.setPointSizeF(font.pointSizeF() * 0.9)
        painter.setFont(font)
        first, second = notes_of(row, self.zone)
        painter.setPen(colours.colour("soft"))
        metrics = painter.fontMetrics()
        cut = Qt.TextElideMode.ElideRight
        place = QRectF(rect.left(), rect.top(), rect.width(), line)
        painter.drawText(
            place, Qt.AlignmentFlag.AlignVCenter, metrics.elidedText(first, cut, int(rect.width()))
        )
        if not second:
            return
        place.translate(0, line)
        inset = 0
        if row.short:
            inset = 14
            middle = place.center().y()
            mark_drawing.paint_bracket(painter, place.left() + 7, middle - 6, middle + 6, colours)
        painter.setPen(colours.colour("closing_word"))
        painter.setFont(_bold(font))
        room = int(rect.width()) - inset
        metrics = painter.fontMetrics()
        if metrics.horizontalAdvance(second) > room:  # the amount says more than the day
            second = second.partition(" · ")[0]
        told = metrics.elidedText(second, cut, room)
        painter.drawText(place.adjusted(inset, 0, 0, 0), Qt.AlignmentFlag.AlignVCenter, told)


def notes_of(row: StockRow, zone: ZoneInfo) -> tuple[str, str]:
    """Return what is left and what the plan takes of it; and what to mind, "" for nothing."""
    first = ml(row.stock.left_ml)
    if row.line is not None and row.line.needed_ml > 0:
        first = words.tr("{left}, plan {needed}").format(left=first, needed=ml(row.line.needed_ml))
    if row.short and row.line is not None:
        short = words.tr("short {amount}").format(amount=ml(row.line.buy_ml))
        if row.line.runs_out is None or row.line.runs_out.at is None:
            return first, short
        day = words.day_of(row.line.runs_out.at, zone)
        return first, words.tr("{short} · {day}").format(short=short, day=day)
    if row.old and row.coating.opened:
        return first, words.tr("opened {year}").format(year=row.coating.opened.year)
    return first, ""


def _bold(font: QFont) -> QFont:
    bold = QFont(font)
    bold.setWeight(QFont.Weight.DemiBold)
    return bold


def _two_lines(painter: QPainter, rect: QRectF, told: str, font: QFont, line: int) -> None:
    """Write a name on two lines at most, cut at the end of the second."""
    layout = QTextLayout(told, font)
    option = QTextOption()
    option.setWrapMode(QTextOption.WrapMode.WrapAtWordBoundaryOrAnywhere)
    layout.setTextOption(option)
    layout.beginLayout()
    first = layout.createLine()
    first.setLineWidth(rect.width())
    layout.endLayout()
    painter.setFont(font)
    upper, rest = told[: first.textLength()].rstrip(), told[first.textLength() :]
    at = Qt.AlignmentFlag.AlignVCenter
    painter.drawText(QRectF(rect.left(), rect.top(), rect.width(), line), at, upper)
    if rest:
        cut = painter.fontMetrics().elidedText(rest, Qt.TextElideMode.ElideRight, int(rect.width()))
        place = QRectF(rect.left(), rect.top() + line, rect.width(), line)
        painter.drawText(place, at, cut)
