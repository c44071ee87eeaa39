"""Openings and closings as a table, the next one first."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from PySide6.QtCore import (
    QAbstractTableModel,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QRectF,
    QSize,
    Qt,
)
from PySide6.QtGui import QFont, QIcon, QPainter
from PySide6.QtWidgets import QStyledItemDelegate, QStyleOptionViewItem

from app.window import strokes, words
from app.window.drying.moments import Kind, Moment
from app.window.drying.wording import at_words, film_words, state_words, what
from app.window.palette import LIGHT, Colours
from app.window.timeline.geometry import wedge_outline
from app.window.timeline.tree import swatch_icon

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
WHEN, LEFT, WHAT, FILM, STATE, PLANNED, COURSE = range(7)
MOMENT_ROLE = Qt.ItemDataRole.UserRole


class MomentsModel(QAbstractTableModel):
    """A moment in each line; times are told from the minute that runs."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[Moment, ...] = ()
        self._swatches: dict[str, QIcon] = {}
        self._zone, self.now = ZoneInfo("UTC"), 0

    def show_moments(
        self, rows: tuple[Moment, ...], swatches: dict[str, str], zone: ZoneInfo, now: int
    ) -> None:
        """Show other moments."""
        same = [row.name for row in rows] == [row.name for row in self._rows]
        if not same:
            self.beginResetModel()
        self._rows, self._zone, self.now = rows, zone, now
        self._swatches = {name: swatch_icon(colour) for name, colour in swatches.items()}
        if not same:
            self.endResetModel()
        elif rows:
            self.dataChanged.emit(self.index(0, 0), self.index(len(rows) - 1, COURSE))

    def set_now(self, now: int) -> None:
        """Follow the clock."""
        if now != self.now and self._rows:
            self.now = now
            self.dataChanged.emit(self.index(0, 0), self.index(len(self._rows) - 1, COURSE))

    def moment_at(self, index: Index) -> Moment | None:
        """Return the moment of a line."""
        return self._rows[index.row()] if index.isValid() else None

    def rowCount(self, parent: Index = NO_INDEX) -> int:  # noqa: N802
        """Return the number of moments."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = NO_INDEX) -> int:  # noqa: N802
        """Return the number of columns."""
        return 0 if parent.isValid() else COURSE + 1

    def headerData(  # noqa: N802
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is not Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        return (
            self.tr("When"),
            self.tr("In"),
            self.tr("What"),
            self.tr("Film"),
            self.tr("State"),
            self.tr("Planned"),
            self.tr("Course"),
        )[section]

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        row = self.moment_at(index)
        if row is None:
            return None
        column = index.column()
        if role == MOMENT_ROLE:
            return row
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return self._told(row, column)
        if role == Qt.ItemDataRole.ToolTipRole:
            return row.why or None
        if role == Qt.ItemDataRole.DecorationRole and column == FILM:
            return self._swatches.get(row.coating)
        if role == Qt.ItemDataRole.FontRole and column == WHEN:
            font = QFont()
            font.setWeight(QFont.Weight.DemiBold)
            return font
        return None

    def _told(self, row: Moment, column: int) -> str:
        if column == WHEN:
            return self._when(row)
        if column == LEFT:
            return "" if row.at is None or row.at <= self.now else words.span(row.at - self.now)
        if column == WHAT:
            return what(row)
        if column == FILM:
            return film_words(row)
        if column == STATE:
            return state_words(row)
        if column == PLANNED:
            if row.waiting is None:
                return ""
            if row.planned is None:
                return self.tr("no place")
            return words.when(row.planned, self._zone, self.now)
        return ""

    def _when(self, row: Moment) -> str:
        told = at_words(row, self._zone, self.now)
        if row.at is None:
            return told
        if row.kind is Kind.CLOSES:
            form = self.tr("closed {time}") if row.at <= self.now else self.tr("closes {time}")
        elif row.at <= self.now:
            form = self.tr("open since {time}")
        else:
            form = self.tr("opens {time}")
        return form.format(time=told)


class CourseDelegate(QStyledItemDelegate):
    """Paints the wedge of a film, or the bracket of a window; what is past is shaded."""

    def __init__(self, model: MomentsModel, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self.colours: Colours = LIGHT

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:  # noqa: N802
        """Return a size that shows the thinning."""
        return QSize(190, super().sizeHint(option, index).height() + 10)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint the course."""
        super().paint(painter, option, index)
        row, now = self._model.moment_at(index), self._model.now
        if row is None:
            return
        rect = QRectF(option.rect).adjusted(8, 4, -12, -4)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours, middle = self.colours, rect.center().y()
        right = rect.right() - 6
        share = 0.0
        if row.at is not None and row.at > row.since:
            share = min(1.0, max(0.0, (now - row.since) / (row.at - row.since)))
        past = QRectF(rect.left(), rect.top(), (right - rect.left()) * share, rect.height())
        if row.kind is Kind.OPENS:
            end = right if row.at is not None else rect.left() + rect.width() * 8
            corners = wedge_outline(rect.left(), end, middle, rect.height() * 0.7, min(end, right))
            strokes.paint_wedge(painter, corners, colours, strong=True)
            strokes.paint_past(painter, past, colours)
            if row.at is not None:
                strokes.paint_ring(painter, right, middle, colours, 4)
        else:
            painter.setPen(colours.colour("soft"))
            painter.drawLine(int(rect.left()), int(middle), int(right), int(middle))
            strokes.paint_past(painter, past, colours)
            strokes.paint_bracket(painter, right, rect.top(), rect.bottom(), colours)
        painter.restore()
