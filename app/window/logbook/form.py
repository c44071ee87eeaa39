"""The form on which an entry of the logbook is corrected."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from zoneinfo import ZoneInfo

from PySide6.QtCore import QDate, QDateTime, Qt, QTime, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDoubleSpinBox,
    QFormLayout,
    QHBoxLayout,
    QPlainTextEdit,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.window import words
from app.window.forms.moment_fields import MomentField
from app.window.labels import MessageLabel, NarrowCombo, field_label, text
from app.window.logbook.lines import LogbookLine
from app.window.logbook.table import what
from planner.values.book import Book
from planner.values.project import Logged, Used
from planner.values.refusal import Refused
from planner.values.step import Tool

TIMES = ("start", "end")  # fields of an entry that say when
UNREAD_C, UNREAD_PCT = -31.0, -1.0  # what a gauge that was not read stands at


class EntryForm(QWidget):
    """Start, end, minutes, air, airbrush, what was used, and the note of one entry.

    Signals
    -------
    corrected(PassKey, Logged)
        The entry as it is to be.
    taken_back(PassKey)
        The entry is to go.
    """

    corrected = Signal(object, object)
    taken_back = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self._line: LogbookLine | None = None
        self._zone = ZoneInfo("UTC")
        self._as_shown: Logged | None = None
        self.title = text("", size=1.2, bold=True)
        self.start, self.end = _moment(), _moment()
        self.ended = QCheckBox(self.tr("Ended"))
        self.minutes = QSpinBox()
        self.minutes.setRange(0, 14_400)
        self.minutes.setSuffix(self.tr(" min"))
        self.minutes.setSpecialValueText(self.tr("from start to end"))
        self.temperature = _gauge(UNREAD_C, 60, self.tr(" °C"), self.tr("not read"))
        self.humidity = _gauge(UNREAD_PCT, 100, self.tr(" % RH"), self.tr("not read"))
        self.airbrush = NarrowCombo()
        self.used: dict[str, QDoubleSpinBox] = {}
        self.note = QPlainTextEdit()
        self.note.setTabChangesFocus(True)
        self.note.setFixedHeight(74)
        self.note.setAccessibleName(self.tr("Note"))
        self.message, self.time_message = MessageLabel(), MessageLabel()
        self.save = QPushButton(self.tr("&Save"))
        self.back = QPushButton(self.tr("Ta&ke back"))
        self.back.setToolTip(self.tr("It never happened: the work is planned again"))
        self._rows = QFormLayout()
        self._uses = QFormLayout()
        for each in (self._rows, self._uses):
            each.setRowWrapPolicy(QFormLayout.RowWrapPolicy.WrapLongRows)
        self._lay_out()
        self.ended.toggled.connect(self.end.setEnabled)
        self.save.clicked.connect(self._save)
        self.back.clicked.connect(self._take_back)

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.title)
        ending = QHBoxLayout()
        ending.addWidget(self.ended)
        ending.addWidget(self.end, 1)
        air = QHBoxLayout()
        air.addWidget(self.temperature, 1)
        air.addWidget(self.humidity, 1)
        self.temperature.setAccessibleName(self.tr("Temperature"))
        self.humidity.setAccessibleName(self.tr("Humidity"))
        self.end.setAccessibleName(self.tr("End"))
        rows = self._rows
        rows.addRow(field_label(self.tr("Be&gun"), self.start), self.start)
        rows.addRow("", ending)
        rows.addRow("", self.time_message)
        rows.addRow(field_label(self.tr("&Minutes of work"), self.minutes), self.minutes)
        rows.addRow(field_label(self.tr("&Air"), self.temperature), air)
        rows.addRow(field_label(self.tr("Airbr&ush"), self.airbrush), self.airbrush)
        column.addLayout(rows)
        column.addLayout(self._uses)
        column.addWidget(field_label(self.tr("No&te"), self.note))
        column.addWidget(self.note)
        column.addWidget(self.message)
        line = QHBoxLayout()
        line.addWidget(self.save)
        line.addWidget(self.back)
        line.addStretch(1)
        column.addLayout(line)

    def show_entry(self, line: LogbookLine, book: Book, zone: ZoneInfo) -> None:
        """Show an entry; what was typed for it stays while the entry is the same."""
        assert line.fact is not None
        same = self._line is not None and self._line.key == line.key
        if same and self._as_shown == line.fact:
            return
        self._line, self._zone, self._as_shown = line, zone, line.fact
        fact = line.fact
        self.title.setText(what(line))
        _set(self.start, fact.start, zone)
        self.ended.setChecked(fact.end is not None)
        self.end.setEnabled(fact.end is not None)
        _set(self.end, fact.end or fact.start, zone)
        self.minutes.setValue(fact.minutes or 0)
        self.temperature.setValue(UNREAD_C if fact.temperature_c is None else fact.temperature_c)
        self.humidity.setValue(UNREAD_PCT if fact.humidity_pct is None else fact.humidity_pct)
        self._show_airbrush(line, book)
        self._show_used(line, book)
        self.note.setPlainText(fact.note)
        self.say("")

    def _show_airbrush(self, line: LogbookLine, book: Book) -> None:
        """Offer the airbrushes where it was sprayed."""
        assert line.fact is not None
        used = line.fact.airbrush
        names = dict.fromkeys(["", *(airbrush.name for airbrush in book.gear.airbrushes), used])
        self.airbrush.clear()
        for name in names:
            self.airbrush.addItem(name or self.tr("not noted"), name)
        self.airbrush.setCurrentIndex(self.airbrush.findData(used))
        sprayed = line.step is not None and line.step.tool is Tool.AIRBRUSH
        self._rows.setRowVisible(self.airbrush, sprayed or bool(used))

    def _show_used(self, line: LogbookLine, book: Book) -> None:
        while self._uses.rowCount():
            self._uses.removeRow(0)
        self.used.clear()
        assert line.fact is not None
        known = {used.coating: used.ml for used in line.fact.used}
        for name in dict.fromkeys((*_coatings(line, book), *known)):
            spin = QDoubleSpinBox()
            spin.setRange(0, 100_000)
            spin.setDecimals(2)
            spin.setSingleStep(0.1)
            spin.setSuffix(self.tr(" ml"))
            spin.setSpecialValueText(self.tr("not noted"))
            spin.setValue(known.get(name, 0))
            self.used[name] = spin
            self._uses.addRow(
                field_label(self.tr("Used of {coating}").format(coating=name), spin), spin
            )

    def say(self, message: str) -> None:
        """Say what is wrong with what was typed, "" for nothing."""
        self.time_message.say("")
        self.message.say(message)

    def refuse(self, problem: Refused) -> None:
        """Say what is wrong, by the moments where it is one of those."""
        field = problem.place.rpartition(".")[2]
        if field not in TIMES:
            self.say(problem.line)
            return
        self.say("")
        self.time_message.say(problem.mend)
        moment = self.start if field == "start" or not self.ended.isChecked() else self.end
        moment.setFocus(Qt.FocusReason.OtherFocusReason)

    def fact(self) -> Logged:
        """Return the entry as the form shows it; raise `Refused` where it cannot be.

        Seconds and offsets of times that were not touched stay as they are.
        """
        old = self._as_shown
        assert old is not None
        start = _read(self.start, old.start, self._zone)
        end = _read(self.end, old.end or old.start, self._zone) if self.ended.isChecked() else None
        used = tuple(
            Used(coating=name, ml=round(spin.value(), 2))
            for name, spin in self.used.items()
            if spin.value() > 0
        )
        read_c, read_pct = self.temperature.value(), self.humidity.value()
        return replace(
            old,
            start=start,
            end=end,
            minutes=self.minutes.value() or None,
            temperature_c=None if read_c <= UNREAD_C else round(read_c, 1),
            humidity_pct=None if read_pct <= UNREAD_PCT else round(read_pct, 1),
            used=used,
            airbrush=self.airbrush.currentData() or "",
            note=self.note.toPlainText(),
        )

    def _save(self) -> None:
        if self._line is None or self._line.key is None:
            return
        try:
            fact = self.fact()
        except Refused as problem:
            self.refuse(problem)
            return
        self.say("")
        self.corrected.emit(self._line.key, fact)

    def _take_back(self) -> None:
        if self._line is not None:
            self.taken_back.emit(self._line.key)


def _coatings(line: LogbookLine, book: Book) -> list[str]:
    """Return the bottles that a step takes from."""
    names: list[str] = []
    for application in line.step.applications if line.step else ():
        mix = book.mix(application.coating)
        names += [portion.coating for portion in mix.portions] if mix else [application.coating]
    return list(dict.fromkeys(names))


def _moment() -> MomentField:
    return MomentField(words.tr("ddd d MMM yy HH:mm"))


def _gauge(least: float, most: float, suffix: str, unread: str) -> QDoubleSpinBox:
    spin = QDoubleSpinBox()
    spin.setRange(least, most)
    spin.setDecimals(1)
    spin.setSuffix(suffix)
    spin.setSpecialValueText(unread)
    return spin


def _set(edit: MomentField, moment: datetime, zone: ZoneInfo) -> None:
    local = moment.astimezone(zone)
    edit.setDateTime(
        QDateTime(
            QDate(local.year, local.month, local.day), QTime(local.hour, local.minute, local.second)
        )
    )


def _read(edit: MomentField, old: datetime, zone: ZoneInfo) -> datetime:
    """Return the moment shown; ``old`` where that shows the same, so that it stays exact."""
    date_, time_ = edit.date(), edit.time()
    shown = datetime(  # noqa: DTZ001 - the zone comes next
        date_.year(), date_.month(), date_.day(), time_.hour(), time_.minute()
    )
    local = old.astimezone(zone)
    if shown == local.replace(second=0, microsecond=0, tzinfo=None):
        return old
    return shown.replace(tzinfo=zone)
