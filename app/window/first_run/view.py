"""The questions below each other, what follows from them in a line, and the plan."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import Any

from PySide6.QtCore import QLocale, Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import (
    QCheckBox,
    QDoubleSpinBox,
    QHBoxLayout,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from app.service.build_edits.advice import MOST_AT_ONCE
from app.service.build_edits.names import fresh_name
from app.service.first_run import Answers, FirstHours, begin, told_air, told_hours
from app.window import words
from app.window.first_run.hours import HoursField
from app.window.first_run.shelf import ShelfField
from app.window.first_run.vehicles import VehiclesField
from app.window.labels import MessageLabel, field_label, text
from app.window.session import Session
from planner.sequences.apply_to_book import every_sequence
from planner.values.coating import Coating
from planner.values.moment import moment_of
from planner.values.refusal import Refused


class FirstRun(QWidget):
    """What is on the table, when do you paint, what is the room like, what stands on the shelf.

    What was typed stays whatever happens elsewhere: the book fills in only
    what nobody has touched.

    Signals
    -------
    begun()
        The book holds what was told, and is being planned.
    """

    begun = Signal()

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._known: dict[str, object] = {}
        self._touched: set[str] = set()
        self._filling = False
        self.vehicles, self.hours, self.shelf = VehiclesField(), HoursField(), ShelfField()
        self.temperature, self.humidity = QDoubleSpinBox(), QSpinBox()
        self.warm_box = QCheckBox(self.tr("I have a &warm box"))
        self.airbrush = QCheckBox(self.tr("I have an &airbrush"))
        self.plan = QPushButton(self.tr("Plan &it"))
        self.said, self.message = text("", size=0.95), MessageLabel()
        self._room()
        self._lay_out()
        self._connect()
        self._say()

    def _room(self) -> None:
        tr = self.tr
        self.temperature.setRange(-30, 60)
        self.temperature.setDecimals(1)
        self.temperature.setValue(20)
        self.temperature.setSuffix(tr(" °C"))
        self.humidity.setRange(0, 100)
        self.humidity.setValue(50)
        self.humidity.setSuffix(tr(" % RH"))
        self.airbrush.setChecked(True)
        self.warm_box.setToolTip(
            tr(
                "Oil, enamel and clear coats may dry in it, where the plan gains by it; "
                "at most 40 °C, and try a scrap of the same plastic first"
            )
        )
        self.airbrush.setToolTip(tr("Without one, sequences take brush or spray can instead"))
        self.plan.setToolTip(tr("Ctrl+Enter, from anywhere here"))

    def _lay_out(self) -> None:
        tr = self.tr
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(text(tr("1  What is on the table?"), bold=True, size=1.1))
        column.addWidget(self.vehicles)
        column.addSpacing(8)
        column.addWidget(text(tr("2  When do you paint?"), bold=True, size=1.1))
        column.addWidget(self.hours)
        column.addSpacing(8)
        column.addWidget(text(tr("3  What is the room like?"), bold=True, size=1.1))
        room = QHBoxLayout()
        room.setSpacing(8)
        room.addWidget(field_label(tr("Temperature"), self.temperature))
        room.addWidget(self.temperature)
        room.addWidget(field_label(tr("Humidity"), self.humidity))
        room.addWidget(self.humidity)
        room.addStretch(1)
        column.addLayout(room)
        boxes = QHBoxLayout()
        boxes.setSpacing(18)
        boxes.addWidget(self.warm_box)
        boxes.addWidget(self.airbrush)
        boxes.addStretch(1)
        column.addLayout(boxes)
        column.addSpacing(8)
        column.addWidget(text(tr("4  Which paints do you have?"), bold=True, size=1.1))
        column.addWidget(self.shelf)
        column.addSpacing(8)
        foot = QHBoxLayout()
        foot.addWidget(self.plan)
        foot.addWidget(self.said, 1)
        column.addLayout(foot)
        column.addWidget(self.message)

    def _connect(self) -> None:
        self.vehicles.done.connect(self.hours.begin)
        self.hours.done.connect(self._to_room)
        self.vehicles.changed.connect(self._vehicles_changed)
        self.hours.changed.connect(self._hours_changed)
        self.temperature.valueChanged.connect(lambda _value: self._touch("air"))
        self.humidity.valueChanged.connect(lambda _value: self._touch("air"))
        self.airbrush.toggled.connect(lambda _on: self._touch("airbrush"))
        self.plan.clicked.connect(self.ask_plan)
        inside = Qt.ShortcutContext.WidgetWithChildrenShortcut
        for keys, act in (
            ("Ctrl+Return", self.ask_plan),
            ("Ctrl+Enter", self.ask_plan),
            ("Alt+1", self.vehicles.begin),
            ("Alt+2", self.hours.begin),
            ("Alt+3", self._to_room),
            ("Alt+4", self.shelf.begin),
        ):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(inside)
            shortcut.activated.connect(act)

    def show_book(self) -> None:
        """Offer the sequences of the open book."""
        book = self._session.book
        if book is None:
            return
        self.vehicles.show_orders(every_sequence(book))
        self.vehicles.set_today(self._today())
        self._offer_paints()
        self._filling = True
        self._follow("hours", told_hours(book), self.hours.show_hours)
        self._follow("air", told_air(book), self._show_air)
        self._follow("airbrush", bool(book.gear.airbrushes), self.airbrush.setChecked)
        self._filling = False
        self._say()

    def _follow(self, what: str, told: Any, show: Callable[[Any], object]) -> None:
        """Show what the book says of something, where it says something new and nobody has."""
        if what not in self._touched and self._known.get(what, ...) != told:
            self._known[what] = told
            show(told)

    def _show_air(self, air: tuple[float, float]) -> None:
        self.temperature.setValue(air[0])
        self.humidity.setValue(round(air[1]))

    def _touch(self, what: str) -> None:
        if not self._filling:
            self._touched.add(what)

    def _hours_changed(self) -> None:
        self._touch("hours")
        self._say()

    def _vehicles_changed(self) -> None:
        self._offer_paints()
        self._say()

    def _offer_paints(self) -> None:
        """Offer the paints that the sequences of the lines usually lay."""
        book = self._session.book
        if book is None:
            return
        known = {order.name: order for order in every_sequence(book)}
        chosen = dict.fromkeys(line.sequence.currentData() for line in self.vehicles.lines)
        self.shelf.show_orders([known[name] for name in chosen if name in known])

    def begin(self) -> None:
        """Take the keys where the first answer is typed."""
        self.vehicles.begin()

    def ask_plan(self) -> None:
        """Put all answers into the book, and let it be planned; say what is wrong by its field."""
        said = (self.message, self.vehicles.message, self.hours.message, self.shelf.message)
        for message in said:
            message.say("")
        book = self._session.book
        if book is None:
            return
        name = fresh_name(self.tr("On the table"), [project.name for project in book.projects])
        try:
            hours = self.hours.value()
        except Refused:  # the line says so itself
            self.hours.to_fault()
            return
        try:
            owned = self.shelf.paints()
        except Refused:  # so does this one
            return
        if self.vehicles.to_fault():
            return
        answers = self._answers(name, hours, owned)
        now = self._session.now
        refused = self._session.attempt(
            lambda book: begin(book, answers, self._today(), words.given_name, now=now)
        )
        if refused is not None:
            self._refuse(refused)
            return
        self._touched.clear()
        self.vehicles.clear()
        self.shelf.clear()
        self.begun.emit()

    def _answers(
        self, name: str, hours: tuple[FirstHours, ...], owned: tuple[Coating, ...]
    ) -> Answers:
        return Answers(
            project=name,
            vehicles=self.vehicles.vehicles(),
            hours=hours,
            temperature_c=self.temperature.value(),
            humidity_pct=self.humidity.value(),
            warm_box=self.warm_box.isChecked(),
            airbrush=self.airbrush.isChecked(),
            owned=owned,
        )

    def _refuse(self, refused: Refused) -> None:
        if refused.place.startswith("vehicles"):
            self.vehicles.message.say(refused.mend)
            self.vehicles.begin()
        elif refused.place.startswith("hours"):
            self.hours.message.say(refused.mend)
            self.hours.begin()
        elif refused.place.startswith("paints"):
            self.shelf.message.say(refused.mend)
            self.shelf.begin()
        else:
            self.message.say(str(refused))

    def _today(self) -> date:
        return moment_of(self._session.now, self._session.zone).date()

    def _to_room(self) -> None:
        self.temperature.setFocus()
        self.temperature.selectAll()

    def _say(self) -> None:
        """Say in a line what was told so far."""
        count = len(self.vehicles.vehicles())
        if not count:
            self.said.setText(self.tr("A name is enough; everything can be changed later."))
            return
        told = words.count(count, self.tr("{n} vehicle"), self.tr("{n} vehicles"))
        days = sorted({int(day) for line in self.hours.lines for day in line.days.pressed()})
        short = QLocale.FormatType.ShortFormat
        names = [QLocale().dayName(day + 1, short) for day in days]
        if names:
            told = self.tr("{vehicles}, {days} at the bench").format(
                vehicles=told, days=words.listed(names)
            )
        if count > MOST_AT_ONCE:
            told = self.tr(
                "{told}. More than {n} at once gets dull; Build lets one go first."
            ).format(told=told, n=MOST_AT_ONCE)
        self.said.setText(told)
