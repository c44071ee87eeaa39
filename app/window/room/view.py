"""The Room view on screen."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QDate, QDateTime, QSignalBlocker, Qt, QTime
from PySide6.QtWidgets import (
    QHBoxLayout,
    QSplitter,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.chosen_rows import mark_chosen_rows
from app.window.forms.column_stretch import Breadth
from app.window.forms.moment_fields import MomentField
from app.window.forms.rows import LEFT
from app.window.labels import NarrowCombo, field_label, text
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.room.drying_times import coating_times, course
from app.window.room.plot import CoursePlot
from app.window.room.table import TimesModel
from planner.air import dew_point_c
from planner.values.moment import minute_of, moment_of

LEAST_MARGIN_K = 3.0


class RoomView(QWidget):
    """Air, times of every coating, and the course of the chosen one."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._picture: PlanSnapshot | None = None
        self._colours: Colours | None = None
        self._told: tuple[object, ...] = ()
        self.location = NarrowCombo()
        self.laid = MomentField(words.tr("ddd d MMM HH:mm"))
        self.air_line = text("")
        self.margin_line = text("")
        self.model = TimesModel(self)
        self.table = QTableView()
        self.table.setModel(self.model)
        self.table.setAccessibleName(self.tr("How long each coating takes to each state"))
        self.table.setSelectionBehavior(QTableView.SelectionBehavior.SelectRows)
        self.table.setSelectionMode(QTableView.SelectionMode.SingleSelection)
        self.table.setAlternatingRowColors(True)
        self.table.setShowGrid(False)
        self.table.setTabKeyNavigation(False)
        self.table.setFrameShape(QTableView.Shape.NoFrame)
        self.table.verticalHeader().hide()
        self.table.horizontalHeader().setDefaultAlignment(LEFT)
        mark_chosen_rows(self.table)
        self.breadth = Breadth(self.table)
        self.title = text("", bold=True)
        self.plot = CoursePlot()
        lower = QWidget()
        below = QVBoxLayout(lower)
        below.setContentsMargins(18, 10, 8, 6)
        below.addWidget(self.title)
        below.addWidget(self.plot, 1)
        self.splitter = QSplitter(Qt.Orientation.Vertical)
        self.splitter.addWidget(self.table)
        self.splitter.addWidget(lower)
        self.splitter.setSizes([330, 300])
        self.splitter.setChildrenCollapsible(False)
        self.setFocusProxy(self.table)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 14, 0, 0)
        column.setSpacing(8)
        column.addLayout(self._head())
        column.addWidget(self.splitter, 1)
        self.location.currentIndexChanged.connect(self._show)
        self.laid.moment_changed.connect(self._show)
        self.table.selectionModel().currentRowChanged.connect(self._show_course)

    def _head(self) -> QVBoxLayout:
        head = QVBoxLayout()
        head.setContentsMargins(24, 0, 18, 0)
        head.setSpacing(4)
        head.addWidget(text(self.tr("Drying times"), size=1.9, bold=True))
        head.addWidget(self.air_line)
        head.addWidget(self.margin_line)
        line = QHBoxLayout()
        line.setSpacing(8)
        line.addWidget(field_label(self.tr("&Dries at"), self.location))
        line.addWidget(self.location)
        line.addSpacing(12)
        line.addWidget(field_label(self.tr("&Laid by"), self.laid))
        line.addWidget(self.laid)
        line.addStretch(1)
        head.addLayout(line)
        return head

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self._colours = colours
        self.plot.set_colours(colours)
        self._say_air()

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show another book; the chosen coating, place and time stay if they can."""
        first = self._picture is None
        self._picture = picture
        names = [location.name for location in picture.book.room.locations]
        shown = [self.location.itemText(at) for at in range(self.location.count())]
        if names != shown:
            blocked = QSignalBlocker(self.location)
            self.location.clear()
            self.location.addItems(names)
            blocked.unblock()
        if first or self._laid() < picture.now:
            stretch = picture.calendar.next_stretch(picture.now)
            start = stretch.interval.start if stretch else picture.now
            self._set_laid(max(picture.now, start), picture.zone)
        self._show()

    def _set_laid(self, minute: int, zone: ZoneInfo) -> None:
        there = moment_of(minute, zone)
        blocked = QSignalBlocker(self.laid)
        self.laid.setDateTime(
            QDateTime(QDate(there.year, there.month, there.day), QTime(there.hour, there.minute))
        )
        blocked.unblock()

    def _laid(self) -> int:
        assert self._picture is not None
        read = self.laid.dateTime().toPython()
        return minute_of(read.replace(tzinfo=self._picture.zone))  # type: ignore[attr-defined]

    def _show(self) -> None:
        picture = self._picture
        if picture is None:
            return
        location, laid = self.location.currentText(), self._laid()
        book = picture.book
        asked = (location, laid, picture.now, book.coatings, book.room, book.bench_time)
        if asked == self._told:
            return  # a plan changes nothing here
        self._told = asked
        rows = coating_times(picture.book, picture.cure, location, laid)
        self.model.show_times(rows, laid, picture.zone)
        self._say_air()
        if rows and not self.table.currentIndex().isValid():
            self.table.selectRow(0)
        self._show_course()

    def _show_course(self) -> None:
        picture = self._picture
        chosen = self.model.row_at(self.table.currentIndex())
        if picture is None or chosen is None:
            self.plot.show_course(None, ZoneInfo("UTC"))
            self.title.setText("")
            return
        laid = self._laid()
        found = course(
            picture.cure, picture.calendar, chosen.coating, self.location.currentText(), laid
        )
        self.plot.show_course(found, picture.zone)
        self.title.setText(
            self.tr("{coating}, laid by {time}").format(
                coating=words.capital(chosen.coating.name),
                time=words.when(laid, picture.zone, picture.now),
            )
        )

    def _say_air(self) -> None:
        picture = self._picture
        if picture is None:
            return
        laid = self._laid()
        air = picture.cure.air(self.location.currentText()).at(laid)
        self.air_line.setText(
            self.tr("{time}: {temperature}, {humidity:.0f} % RH").format(
                time=words.capital(words.when(laid, picture.zone, picture.now)),
                temperature=words.degrees(air.temperature_c),
                humidity=air.humidity_pct,
            )
        )
        if air.humidity_pct <= 0:
            self.margin_line.setText(self.tr("Bone-dry air has no dew point."))
            return
        margin = air.temperature_c - dew_point_c(air.temperature_c, air.humidity_pct)
        sentence = (
            self.tr(
                "⚠ Only {margin:.1f} °C above the dew point; at least 3 °C is needed: warm "
                "the model, or dry the air."
            )
            if margin < LEAST_MARGIN_K
            else self.tr("{margin:.1f} °C above the dew point; 3 °C is enough.")
        )
        self.margin_line.setText(words.fill(sentence, margin=margin))
