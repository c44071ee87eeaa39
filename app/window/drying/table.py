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
from PySide6.QtWidgets import QStyleOptionViewItem

from app.window import mark_drawing, words
from app.window.chosen_rows import ChosenRows
from app.window.drying.event_wording import at_words, film_words, state_words, what
from app.window.film_events import FilmEvent, FilmEventKind, grouped
from app.window.labels import swatch_icon
from app.window.palette import LIGHT, Colours
from app.window.wedge_geometry import wedge_outline

Index = QModelIndex | QPersistentModelIndex
NO_INDEX = QModelIndex()
WHEN, WHAT, PLANNED, COURSE = range(4)


class MomentsModel(QAbstractTableModel):
    """In each line moments of one film; times are told from the minute that runs."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._rows: tuple[tuple[FilmEvent, ...], ...] = ()
        self._swatches: dict[str, QIcon] = {}
        self._zone, self.now = ZoneInfo("UTC"), 0

    def show_moments(
        self, found: tuple[FilmEvent, ...], swatches: dict[str, str], zone: ZoneInfo, now: int
    ) -> None:
        """Show other moments."""
        rows = grouped(found)
        same = [row[0].name for row in rows] == [row[0].name for row in self._rows]
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

    def moment_at(self, index: Index) -> FilmEvent | None:
        """Return the first moment of a line."""
        return self._rows[index.row()][0] if index.isValid() else None

    def line_of(self, name: str) -> int:
        """Return the line of a moment by its name, the first if it is gone."""
        names = [[event.name for event in row] for row in self._rows]
        return next((at for at, some in enumerate(names) if name in some), 0)

    def rowCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of moments."""
        return 0 if parent.isValid() else len(self._rows)

    def columnCount(self, parent: Index = NO_INDEX) -> int:
        """Return the number of columns."""
        return 0 if parent.isValid() else COURSE + 1

    def headerData(
        self, section: int, orientation: Qt.Orientation, role: int = Qt.ItemDataRole.DisplayRole
    ) -> Any:
        """Return a column's name."""
        if orientation is not Qt.Orientation.Horizontal or role != Qt.ItemDataRole.DisplayRole:
            return None
        return (
            self.tr("When"),
            self.tr("What, and by which film"),
            self.tr("Planned"),
            self.tr("Course"),
        )[section]

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Return what a cell shows."""
        if not index.isValid():
            return None
        group, column = self._rows[index.row()], index.column()
        row = group[0]
        if role in (Qt.ItemDataRole.DisplayRole, Qt.ItemDataRole.AccessibleTextRole):
            return self._told(group, column)
        if role == Qt.ItemDataRole.ToolTipRole:
            told = self._told(group, WHAT)
            return f"{told}\n{words.capital(row.why)}" if row.why else told
        if role == Qt.ItemDataRole.DecorationRole and column == WHAT:
            return self._swatches.get(row.coating)
        if role == Qt.ItemDataRole.FontRole and column == WHEN:
            font = QFont()
            font.setWeight(QFont.Weight.DemiBold)
            return font
        return None

    def _told(self, group: tuple[FilmEvent, ...], column: int) -> str:
        row = group[0]
        if column == WHEN:
            return self._when(row)
        if column == WHAT:
            return self.tr("{what}\n{film}: {state}").format(
                what=what(*group), film=film_words(row), state=state_words(row)
            )
        if column == PLANNED and row.waiting is not None:
            planned = [event.planned for event in group if event.planned is not None]
            if not planned:
                return self.tr("no place")
            return words.when(min(planned), self._zone, self.now)
        return ""

    def _when(self, row: FilmEvent) -> str:
        told = at_words(row, self._zone, self.now)
        if row.at is None:
            return told
        if row.kind is FilmEventKind.CLOSES:
            form = self.tr("closed {time}") if row.at <= self.now else self.tr("closes {time}")
        elif row.kind is FilmEventKind.LOOK:
            form = self.tr("due since {time}") if row.at <= self.now else self.tr("look {time}")
        elif row.at <= self.now:
            form = self.tr("open since {time}")
        else:
            form = self.tr("opens {time}")
        line = form.format(time=told)
        if row.at <= self.now:
            return line
        return self.tr("{when}\nin {length}").format(
            when=line, length=words.span(row.at - self.now)
        )


class CourseDelegate(ChosenRows):
    """Paints the wedge of a film, the bracket of a window, the ring of a look; past is shaded."""

    def __init__(self, model: MomentsModel, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self.colours: Colours = LIGHT

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """Return a size that shows the thinning."""
        return QSize(150, super().sizeHint(option, index).height())

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
        if row.kind is FilmEventKind.LOOK:
            painter.setPen(colours.colour("soft"))
            painter.drawLine(int(rect.left()), int(middle), int(right), int(middle))
            mark_drawing.paint_past(painter, past, colours)
            mark_drawing.paint_ring(painter, right, middle, colours, 4)
        elif row.kind is FilmEventKind.OPENS:
            end = right if row.at is not None else rect.left() + rect.width() * 8
            corners = wedge_outline(rect.left(), end, middle, rect.height() * 0.7, min(end, right))
            mark_drawing.paint_wedge(painter, corners, colours, strong=True)
            mark_drawing.paint_past(painter, past, colours)
            if row.at is not None:
                mark_drawing.paint_ring(painter, right, middle, colours, 4)
        else:
            painter.setPen(colours.colour("soft"))
            painter.drawLine(int(rect.left()), int(middle), int(right), int(middle))
            mark_drawing.paint_past(painter, past, colours)
            mark_drawing.paint_bracket(painter, right, rect.top(), rect.bottom(), colours)
        painter.restore()
