"""When a person is at the bench: weekdays and hours, days off, and stretches beside them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, datetime
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.service import edits
from app.service.bench_time_edits import weekly_days, weekly_rule
from app.service.edits import Edit
from app.window import words
from app.window.emptying import empty
from app.window.forms.controls import (
    UNSET,
    Weekdays,
    clock_of,
    date_edit,
    day_of,
    hours_of,
    set_day,
    tool,
)
from app.window.forms.moment_fields import ClockField
from app.window.labels import MessageLabel, text
from app.window.session import Session
from planner.values.bench_time import Extra, Recurring
from planner.values.book import Book
from planner.values.moment import moment_of
from planner.values.refusal import Refused


class RuleLine(QWidget):
    """One recurring stretch: its weekdays and hours."""

    def __init__(self, rule: Recurring, change: Callable[[Recurring | None], None]) -> None:
        super().__init__()
        self._rule, self._change = rule, change
        self.start = ClockField(rule.start, self.tr("Bench time begins"))
        self.end = ClockField(rule.end, self.tr("Bench time ends"))
        self.message = MessageLabel()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 4)
        column.setSpacing(4)
        chosen = weekly_days(rule)
        self.weekdays = None if chosen is None else Weekdays(chosen)
        self.days = [] if self.weekdays is None else self.weekdays.days
        if self.weekdays is None:
            column.addWidget(text(self.tr("by rule: {rule}").format(rule=rule.rule)))
        else:
            column.addWidget(self.weekdays)
            self.weekdays.toggled.connect(self._apply)
        hours = QHBoxLayout()
        hours.addWidget(self.start)
        hours.addWidget(QLabel("–"))
        hours.addWidget(self.end)
        hours.addStretch(1)
        hours.addWidget(tool("×", self.tr("Remove these evenings"), lambda: self._change(None)))
        column.addLayout(hours)
        column.addWidget(self.message)
        for edit in (self.start, self.end):
            edit.clock_changed.connect(self._apply)

    def _apply(self) -> None:
        rule = self._rule.rule
        if self.weekdays is not None:
            chosen = self.weekdays.chosen()
            if not chosen:
                self.message.say(self.tr("Choose at least one day, or remove the line."))
                return
            rule = weekly_rule(chosen)
        try:
            changed = replace(
                self._rule,
                rule=rule,
                start=hours_of(self.start),
                end=hours_of(self.end),
            )
        except Refused as problem:
            self.message.say(problem.mend)
            return
        self.message.say("")
        self._change(changed)


class EveningsPanel(QWidget):
    """Recurring evenings, days off and added stretches of the open book."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._shown: object = None
        self.rules: list[RuleLine] = []
        self._lines = QVBoxLayout()
        self._off = QVBoxLayout()
        self._extra = QVBoxLayout()
        for lines in (self._lines, self._off, self._extra):
            lines.setSpacing(2)
        self.add = QPushButton(self.tr("Add evenings"))
        self.add.clicked.connect(self._add_rule)
        self.day_off = date_edit(self.tr("Day off"))
        self.skip = QPushButton(self.tr("Skip"))
        self.skip.clicked.connect(self._skip)
        self.extra_day = date_edit(self.tr("Day of the extra session"))
        self.extra_start = ClockField("10:00", self.tr("Extra session begins"))
        self.extra_end = ClockField("12:00", self.tr("Extra session ends"))
        self.people = QSpinBox()
        self.people.setRange(1, 2)
        self.people.setAccessibleName(self.tr("People at the extra session"))
        self.people.setSuffix(self.tr(" at the bench"))
        self.add_extra = QPushButton(self.tr("Add"))
        self.add_extra.clicked.connect(self._add_extra)
        self.message = MessageLabel()
        self._lay_out()

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(text(self.tr("Evenings"), bold=True))
        column.addLayout(self._lines)
        column.addWidget(self.add, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(text(self.tr("Days off"), bold=True))
        column.addLayout(self._off)
        off = QHBoxLayout()
        off.addWidget(self.day_off, 1)
        off.addWidget(self.skip)
        column.addLayout(off)
        column.addWidget(text(self.tr("Extra sessions"), bold=True))
        column.addLayout(self._extra)
        grid = QGridLayout()
        grid.addWidget(self.extra_day, 0, 0, 1, 2)
        hours = QHBoxLayout()
        hours.addWidget(self.extra_start)
        hours.addWidget(QLabel("–"))
        hours.addWidget(self.extra_end)
        hours.addStretch(1)
        grid.addLayout(hours, 1, 0, 1, 2)
        grid.addWidget(self.people, 2, 0)
        grid.addWidget(self.add_extra, 2, 1)
        column.addLayout(grid)
        column.addWidget(self.message)

    def show_book(self) -> None:
        """Show the bench time of the open book."""
        book = self._session.book
        if book is None or book.bench_time == self._shown:
            return
        self._shown = book.bench_time
        today = moment_of(self._session.now, self._session.zone).date()
        for edit in (self.day_off, self.extra_day):
            if edit.date() == UNSET:
                set_day(edit, today)
        self._show_rules(book)
        empty(self._off)
        for day in book.bench_time.skipped:
            self._off.addWidget(
                _removable(
                    words.day(day, long=True),
                    self.tr("Be back on this day"),
                    partial(self._back_on, day),
                )
            )
        empty(self._extra)
        for extra in book.bench_time.extra:
            self._extra.addWidget(
                _removable(
                    _extra_name(extra),
                    self.tr("Remove this session"),
                    partial(self._remove_extra, extra),
                )
            )

    def _show_rules(self, book: Book) -> None:
        rules = book.bench_time.stretches
        if len(rules) == len(self.rules) and all(
            line._rule == rule for line, rule in zip(self.rules, rules, strict=True)
        ):
            return
        focused = self._focused_day()
        empty(self._lines)
        self.rules = []
        for at, rule in enumerate(rules):
            line = RuleLine(rule, partial(self._change_rule, at))
            self.rules.append(line)
            self._lines.addWidget(line)
        if focused is not None and focused[0] < len(self.rules):
            line = self.rules[focused[0]]
            if focused[1] < len(line.days):
                line.days[focused[1]].setFocus()

    def _focused_day(self) -> tuple[int, int] | None:
        for at, line in enumerate(self.rules):
            for day, button in enumerate(line.days):
                if button.hasFocus():
                    return at, day
        return None

    def _change_rule(self, at: int, new: Recurring | None) -> None:
        def changed(book: Book) -> Edit:
            rules = list(book.bench_time.stretches)
            rules[at : at + 1] = [] if new is None else [new]
            return edits.set_stretches(book, rules)

        self._edit(changed)

    def _add_rule(self) -> None:
        today = moment_of(self._session.now, self._session.zone).date()
        rule = Recurring(rule="FREQ=WEEKLY;BYDAY=WE", since=today, start="19:30", end="21:30")
        self._edit(lambda book: edits.set_stretches(book, (*book.bench_time.stretches, rule)))

    def _skip(self) -> None:
        day = day_of(self.day_off)
        self._edit(lambda book: edits.skip_date(book, day))

    def _back_on(self, day: date) -> None:
        self._edit(lambda book: edits.unskip_date(book, day))

    def _remove_extra(self, extra: Extra) -> None:
        self._edit(lambda book: edits.remove_stretch(book, extra))

    def _add_extra(self) -> None:
        zone = self._session.zone
        day = day_of(self.extra_day)
        start = datetime.combine(day, clock_of(self.extra_start), zone)
        end = datetime.combine(day, clock_of(self.extra_end), zone)
        people = self.people.value()
        self._edit(lambda book: edits.add_stretch(book, start, end, people))

    def _edit(self, make: Callable[[Book], Edit]) -> None:
        refused = self._session.attempt(make)
        self.message.say(refused.mend if refused else "")


def _extra_name(extra: Extra) -> str:
    name = words.tr("{day}, {start}–{end}").format(
        day=words.day(extra.start), start=f"{extra.start:%H:%M}", end=f"{extra.end:%H:%M}"
    )
    return words.tr("{name}, two people").format(name=name) if extra.people > 1 else name


def _removable(words_: str, remove: str, act: Callable[[], None]) -> QWidget:
    holder = QWidget()
    line = QHBoxLayout(holder)
    line.setContentsMargins(0, 0, 0, 0)
    line.addWidget(text(words_), 1)
    line.addWidget(tool("×", f"{remove}: {words_}", act))
    return holder
