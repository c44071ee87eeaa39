"""The Bench time view: the weeks drawn, told stretch by stretch, and what makes them so."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta

from PySide6.QtCore import Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QPushButton, QSplitter, QTabWidget, QVBoxLayout, QWidget

from app.service import bench_time_edits, edits
from app.service.bench_time_edits import DayHours
from app.window import words
from app.window.bench_time.dialogs import AwayDialog, ExtraDialog, RuleDialog
from app.window.bench_time.drawing import WeeksDrawing
from app.window.bench_time.legend import Legend
from app.window.bench_time.weeks_ahead import Bar, Day, Weeks, monday_of, weeks_of
from app.window.flow_layout import FlowLayout
from app.window.forms.controls import day_name
from app.window.forms.editable_list import Listing
from app.window.forms.rows import Column
from app.window.labels import text
from app.window.palette import Colours
from app.window.plan_snapshot import PlanSnapshot
from app.window.session import Session
from planner.values.bench_time import BenchTime, Extra, Recurring
from planner.values.moment import moment_of
from planner.values.plan import Plan

ROWS = 4


@dataclass(frozen=True)
class BenchTimeLine:
    """A stretch of the weeks shown, or a day away; ``at`` is the day's number."""

    at: int
    day: Day
    bar: Bar | None


class BenchTimeView(QWidget):
    """Weeks as a drawing and as a table, and everything that they come from."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._monday: date | None = None
        self._weeks = Weeks((), (0, 1440))
        self._told: tuple[object, ...] = ()
        self.summary = text("")
        self.drawing = WeeksDrawing()
        self.drawing.setAccessibleName(self.tr("Weeks of bench time"))
        self.legend = Legend()
        self.stretches = self._make_stretches()
        self.rules = {hours: self._make_rules(hours) for hours in DayHours}
        self.away = self._make_away()
        self.extra = self._make_extra()
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.tabs.setUsesScrollButtons(True)
        self.tabs.addTab(self.stretches, self.tr("Sessions"))
        self.tabs.addTab(self.rules[DayHours.BENCH], self.tr("Every week"))
        self.tabs.addTab(self.away, self.tr("Away"))
        self.tabs.addTab(self.extra, self.tr("Extra"))
        self.tabs.addTab(self.rules[DayHours.QUIET], self.tr("Quiet hours"))
        self.tabs.addTab(self.rules[DayHours.DAYLIGHT], self.tr("Daylight"))
        self._lay_out()
        self.setFocusProxy(self.drawing)
        self.drawing.day_chosen.connect(self._day_chosen)
        self.drawing.moved.connect(self.go)

    def _lay_out(self) -> None:
        self.upper = upper = QWidget()
        column = QVBoxLayout(upper)
        column.setContentsMargins(0, 0, 0, 4)
        column.setSpacing(6)
        column.addWidget(self.drawing, 1)
        column.addWidget(self.legend)
        column.addLayout(self._buttons())
        self.splitter = QSplitter(Qt.Orientation.Vertical)
        self.splitter.addWidget(upper)
        self.splitter.addWidget(self.tabs)
        self.splitter.setSizes([400, 260])
        self.splitter.setChildrenCollapsible(False)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(24, 14, 18, 6)
        outer.setSpacing(6)
        outer.addWidget(text(self.tr("Bench time"), size=1.9, bold=True))
        outer.addWidget(self.summary)
        outer.addWidget(self.splitter, 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep room for the weeks where legend and buttons take two lines."""
        super().resizeEvent(event)
        self._fit()

    def _fit(self) -> None:
        layout = self.upper.layout()
        if layout is not None:
            self.upper.setMinimumHeight(layout.minimumHeightForWidth(self.splitter.width()))

    def _buttons(self) -> FlowLayout:
        line = FlowLayout(across=6, down=4)
        self.earlier = _button(self.tr("Earlier"), lambda: self.go(-ROWS))
        self.this_week = _button(self.tr("This week"), self.go_home)
        self.later = _button(self.tr("Later"), lambda: self.go(ROWS))
        self.skip = _button(self.tr("Away on this day"), self._skip)
        self.more = _button(self.tr("One more session…"), lambda: self._ask_extra(None))
        for button in (self.earlier, self.this_week, self.later, self.skip, self.more):
            line.addWidget(button)
        return line

    def _make_stretches(self) -> Listing[BenchTimeLine]:
        tr = self.tr
        listing: Listing[BenchTimeLine] = Listing(
            tr("Sessions of the weeks shown"),
            tr("No bench time in these weeks."),
            (
                Column(tr("Day"), lambda line: words.day(line.day.on)),
                Column(tr("Hours"), _hours),
                Column(
                    tr("Length"),
                    lambda line: _minutes(line, lambda bar: bar.interval.minutes),
                    True,
                ),
                Column(tr("Planned"), lambda line: _minutes(line, lambda bar: bar.planned), True),
                Column(tr("Free"), lambda line: _minutes(line, lambda bar: bar.free), True),
                Column(tr("Quiet"), lambda line: _minutes(line, lambda bar: bar.quiet), True),
                Column(tr("Note"), _note),
            ),
        )
        listing.table.selectionModel().currentRowChanged.connect(self._line_chosen)
        return listing

    def _make_rules(self, hours: DayHours) -> Listing[Recurring]:
        tr = self.tr
        empties = {
            DayHours.BENCH: tr("No bench time comes every week."),
            DayHours.QUIET: tr("No quiet hours: the compressor may run at any time."),
            DayHours.DAYLIGHT: tr("No daylight given: a spray can outdoors is never held up."),
        }
        names = {
            DayHours.BENCH: tr("Bench time every week"),
            DayHours.QUIET: tr("Quiet hours"),
            DayHours.DAYLIGHT: tr("Daylight hours"),
        }
        columns = [
            Column(tr("On"), rule_days),
            Column(tr("From"), lambda rule: rule.start),
            Column(tr("Until"), lambda rule: rule.end),
            Column(tr("Beginning on"), lambda rule: words.day(rule.since)),
        ]
        if hours is DayHours.BENCH:
            columns.append(Column(tr("People"), lambda rule: str(rule.people), True))
        listing: Listing[Recurring] = Listing(names[hours], empties[hours], columns)
        listing.add_button(tr("Add…"), lambda: self._ask_rule(hours, None))
        listing.row_button(tr("Change…"), lambda rule: self._ask_rule(hours, rule), enter=True)
        listing.row_button(
            tr("Remove"),
            lambda rule: listing.say(
                self._session.attempt(lambda book: bench_time_edits.remove_rule(book, hours, rule))
            ),
            delete=True,
        )
        return listing

    def _make_away(self) -> Listing[tuple[date, date]]:
        tr = self.tr
        listing: Listing[tuple[date, date]] = Listing(
            tr("Days away"),
            tr("No day away. What comes every week begins on none of the days named here."),
            (
                Column(tr("First day"), lambda span: words.day(span[0], long=True)),
                Column(tr("Last day"), lambda span: words.day(span[1], long=True)),
                Column(tr("Days"), lambda span: str((span[1] - span[0]).days + 1), True),
            ),
        )
        listing.add_button(tr("Add holidays…"), self._ask_away)
        listing.row_button(
            tr("Be back"),
            lambda span: listing.say(
                self._session.attempt(lambda book: bench_time_edits.unskip_dates(book, *span))
            ),
            delete=True,
        )
        return listing

    def _make_extra(self) -> Listing[Extra]:
        tr = self.tr
        listing: Listing[Extra] = Listing(
            tr("Extra sessions"),
            tr("No extra session."),
            (
                Column(tr("Day"), lambda extra: words.day(self._local(extra)[0], long=True)),
                Column(tr("From"), lambda extra: f"{self._local(extra)[0]:%H:%M}"),
                Column(tr("Until"), lambda extra: f"{self._local(extra)[1]:%H:%M}"),
                Column(tr("People"), lambda extra: str(extra.people), True),
            ),
        )
        listing.add_button(tr("Add…"), lambda: self._ask_extra(None))
        listing.row_button(tr("Change…"), self._ask_extra, enter=True)
        listing.row_button(
            tr("Remove"),
            lambda extra: listing.say(
                self._session.attempt(lambda book: edits.remove_stretch(book, extra))
            ),
            delete=True,
        )
        return listing

    def _local(self, extra: Extra) -> tuple[date, date]:
        zone = self._session.zone
        return extra.start.astimezone(zone), extra.end.astimezone(zone)

    def set_colours(self, colours: Colours) -> None:
        """Paint in other colours."""
        self.drawing.set_colours(colours)
        self.legend.set_colours(colours)

    def show_picture(self, picture: PlanSnapshot) -> None:
        """Show what is planned in the bench time, which may be newer than the plan."""
        book = self._session.book or picture.book
        self._show(book.bench_time, picture.plan)

    def show_book(self) -> None:
        """Show the bench time of the open book, with what was planned last."""
        book, picture = self._session.book, self._session.picture
        if book is not None:
            self._show(book.bench_time, picture.plan if picture else None)

    def go(self, weeks: int) -> None:
        """Show so many weeks later, or earlier."""
        if self._monday is None:
            return
        moved = self._monday + timedelta(weeks=weeks)
        if date(1972, 1, 1) <= moved <= date(2190, 1, 1):
            self._monday = moved
            self.show_book()

    def go_home(self) -> None:
        """Show this week first, and choose today."""
        today = self._today()
        self._monday = monday_of(today)
        self.show_book()
        self.drawing.choose(today.weekday())
        self._day_chosen(today.weekday())

    def _today(self) -> date:
        return moment_of(self._session.now, self._session.zone).date()

    def _show(self, bench_time: BenchTime, plan: Plan | None) -> None:
        told = (bench_time, id(plan), self._monday, self._session.now)
        if told == self._told:
            return
        if self._monday is None:
            self._monday = monday_of(self._today())
            self.drawing.choose(self._today().weekday())
        self._told = (bench_time, id(plan), self._monday, self._session.now)
        self._weeks = weeks_of(bench_time, plan, self._monday, ROWS, self._session.book)
        self.drawing.show_weeks(self._weeks, self._session.now)
        self._fit()
        lines = [
            BenchTimeLine(at, day, bar)
            for at, day in enumerate(self._weeks.days)
            for bar in (day.bars or ((None,) if day.away else ()))
        ]
        self.stretches.show_rows(lines)
        for hours, listing in self.rules.items():
            listing.show_rows(getattr(bench_time, hours.value))
        self.away.show_rows(bench_time_edits.spans(bench_time_edits.days_off(bench_time)))
        self.extra.show_rows(bench_time.extra)
        self.summary.setText(self._sum())
        self._name_skip()

    def _sum(self) -> str:
        bars = [bar for day in self._weeks.days for bar in day.bars]
        if not bars:
            return self.tr("No bench time in these four weeks.")
        first, last = self._weeks.days[0].on, self._weeks.days[-1].on
        return self.tr("{first} to {last}: {count}, {length} in all, {planned} planned").format(
            first=words.day(first),
            last=words.day(last),
            count=words.count(len(bars), self.tr("1 session"), self.tr("{n} sessions")),
            length=words.hours(sum(bar.interval.minutes for bar in bars)),
            planned=words.hours(sum(bar.planned for bar in bars)),
        )

    def _day(self) -> Day | None:
        at = self.drawing.chosen
        return self._weeks.days[at] if at < len(self._weeks.days) else None

    def _day_chosen(self, at: int) -> None:
        self._name_skip()
        for row, line in enumerate(self.stretches.model.rows):
            if line.at == at:
                self.stretches.choose(row)
                return

    def _line_chosen(self) -> None:
        line = self.stretches.chosen()
        if line is not None and self.stretches.table.hasFocus():
            self.drawing.choose(line.at)
            self._name_skip()

    def _name_skip(self) -> None:
        day = self._day()
        if day is None:
            return
        self.skip.setText(
            self.tr("Be back on this day") if day.away else self.tr("Away on this day")
        )
        self.skip.setAccessibleDescription(words.day(day.on, long=True))
        self.skip.setToolTip(words.day(day.on, long=True))

    def _skip(self) -> None:
        day = self._day()
        if day is None:
            return
        change = bench_time_edits.unskip_dates if day.away else bench_time_edits.skip_dates
        self.stretches.say(self._session.attempt(lambda book: change(book, day.on, day.on)))

    def _ask_rule(self, hours: DayHours, rule: Recurring | None) -> None:
        RuleDialog(self._session, hours, rule, self._today(), self).open()

    def _ask_away(self) -> None:
        day = self._day()
        AwayDialog(self._session, day.on if day else self._today(), self).open()

    def _ask_extra(self, extra: Extra | None) -> None:
        day = self._day()
        ExtraDialog(self._session, extra, day.on if day else self._today(), self).open()


def rule_days(rule: Recurring) -> str:
    """Return the weekdays of a rule, or the rule itself."""
    days = bench_time_edits.weekly_days(rule)
    if days is None:
        return rule.rule
    if len(days) == 7:
        return words.tr("every day")
    return ", ".join(day_name(day) for day in sorted(days))


def _hours(line: BenchTimeLine) -> str:
    if line.bar is None:
        return ""
    zone, interval = line.day.zone, line.bar.interval
    return f"{words.clock(interval.start, zone)}–{words.clock(interval.end, zone)}"


def _minutes(line: BenchTimeLine, of: Callable[[Bar], int]) -> str:
    return "" if line.bar is None else words.tr("{minutes} min").format(minutes=of(line.bar))


def _note(line: BenchTimeLine) -> str:
    told = []
    if line.day.away:
        told.append(words.tr("away"))
    if line.bar is not None and line.bar.extra:
        told.append(words.tr("extra"))
    if line.bar is not None and line.bar.people > 1:
        told.append(words.tr("two people"))
    return ", ".join(told)


def _button(name: str, act: Callable[[], object]) -> QPushButton:
    button = QPushButton(name)
    button.clicked.connect(lambda _on=False: act())
    return button
