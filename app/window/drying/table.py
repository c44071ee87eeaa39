"""Openings and closings as a table, the next one first."""

from __future__ import annotations

from dataclasses import replace
from zoneinfo import ZoneInfo

from PySide6.QtCore import QObject, QRectF, QSize
from PySide6.QtGui import QFont, QPainter
from PySide6.QtWidgets import QStyleOptionViewItem

from app.window import mark_drawing, words
from app.window.chosen_rows import ChosenRows
from app.window.drying.event_wording import at_words, film_words, state_words, what
from app.window.film_events import FilmEvent, FilmEventKind, grouped
from app.window.forms.rows import Column, Index, RowsModel
from app.window.palette import LIGHT, Colours
from app.window.wedge_geometry import wedge_outline

WHEN, WHAT, PLANNED, COURSE = range(4)


class MomentsModel(RowsModel[tuple[FilmEvent, ...]]):
    """In each line moments of one film; times are told from the minute that runs."""

    def __init__(self, parent: QObject | None = None) -> None:
        self._swatches: dict[str, str] = {}
        self._zone, self.now = ZoneInfo("UTC"), 0
        told = (
            (self.tr("When"), lambda group: self._when(group[0])),
            (self.tr("What, and by which film"), self._what),
            (self.tr("Planned"), self._planned),
            (self.tr("Course"), lambda _group: ""),
        )
        columns = [Column(name, text, tip=self._tip) for name, text in told]
        columns[WHEN] = replace(columns[WHEN], font=_emphasis)
        columns[WHAT] = replace(
            columns[WHAT], swatch=lambda group: self._swatches.get(group[0].coating, "")
        )
        super().__init__(columns, parent)

    def show_moments(
        self, found: tuple[FilmEvent, ...], swatches: dict[str, str], zone: ZoneInfo, now: int
    ) -> None:
        """Show other moments."""
        rows = grouped(found)
        same = [row[0].name for row in rows] == [row[0].name for row in self.rows]
        self._swatches, self._zone, self.now = swatches, zone, now
        self.show_rows(rows, same=same)

    def set_now(self, now: int) -> None:
        """Follow the clock."""
        if now != self.now:
            self.now = now
            self.tell_changed()

    def moment_at(self, index: Index) -> FilmEvent | None:
        """Return the first moment of a line."""
        group = self.row_at(index)
        return group[0] if group else None

    def line_of(self, name: str) -> int:
        """Return the line of a moment by its name, the first if it is gone."""
        names = [[event.name for event in row] for row in self.rows]
        return next((at for at, some in enumerate(names) if name in some), 0)

    def _what(self, group: tuple[FilmEvent, ...]) -> str:
        row = group[0]
        return self.tr("{what}\n{film}: {state}").format(
            what=what(*group), film=film_words(row), state=state_words(row)
        )

    def _planned(self, group: tuple[FilmEvent, ...]) -> str:
        if group[0].waiting is None:
            return ""
        planned = [event.planned for event in group if event.planned is not None]
        return words.when(min(planned), self._zone, self.now) if planned else self.tr("no place")

    def _tip(self, group: tuple[FilmEvent, ...]) -> str:
        why = group[0].why
        return f"{self._what(group)}\n{words.capital(why)}" if why else self._what(group)

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


def _emphasis(_group: tuple[FilmEvent, ...]) -> QFont:
    font = QFont()
    font.setWeight(QFont.Weight.DemiBold)
    return font


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
