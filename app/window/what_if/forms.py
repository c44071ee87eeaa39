"""One small form for each kind of change that can be tried."""

from __future__ import annotations

from datetime import date, datetime, time
from typing import Any

from PySide6.QtCore import QDate, QLocale, QSignalBlocker, QTime
from PySide6.QtWidgets import (
    QComboBox,
    QDateEdit,
    QDoubleSpinBox,
    QFormLayout,
    QSpinBox,
    QTimeEdit,
    QWidget,
)

from app.service import what_if
from app.service.what_if import Change
from app.window import words
from planner.values.book import Book
from planner.values.moment import moment_of, zone_named
from planner.values.step import LAYS_NO_FILM, Stage

HOURS = "HH:mm"
FRAME = frozenset({Stage.TURN, Stage.JOIN, Stage.UNMASK, Stage.WIPE, Stage.PRESS})


class Form(QWidget):
    """Fields of one kind of change."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.fields = QFormLayout(self)
        self.fields.setContentsMargins(0, 0, 0, 0)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        raise NotImplementedError

    def show_book(self, book: Book, now: int) -> None:
        """Offer what the book holds; what was chosen stays so where it can."""

    def change(self) -> Change:
        """Return the change that the fields say."""
        raise NotImplementedError

    def name(self) -> str:
        """Return what the journal will call it."""
        raise NotImplementedError

    def box(self, label: str) -> QComboBox:
        """Add a list to choose from."""
        made = QComboBox()
        made.setAccessibleName(label)
        made.setMinimumContentsLength(22)
        made.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.fields.addRow(label, made)
        return made

    def clock(self, label: str, at: str) -> QTimeEdit:
        """Add a time of day."""
        made = QTimeEdit(QTime.fromString(at, HOURS))
        made.setDisplayFormat(HOURS)
        made.setAccessibleName(label)
        self.fields.addRow(label, made)
        return made

    def number(self, label: str, low: int, high: int, value: int) -> QSpinBox:
        """Add a whole number."""
        made = QSpinBox()
        made.setRange(low, high)
        made.setValue(value)
        made.setAccessibleName(label)
        self.fields.addRow(label, made)
        return made

    def air(self) -> tuple[QDoubleSpinBox, QSpinBox]:
        """Add temperature and humidity."""
        warm = QDoubleSpinBox()
        warm.setRange(-10, 60)
        warm.setDecimals(1)
        warm.setSuffix(self.tr(" °C"))
        warm.setAccessibleName(self.tr("Temperature"))
        self.fields.addRow(self.tr("Temperature"), warm)
        damp = self.number(self.tr("Humidity"), 0, 100, 50)
        damp.setSuffix(self.tr(" % RH"))
        return warm, damp


class EveningForm(Form):
    """Bench time on one more weekday."""

    def __init__(self) -> None:
        super().__init__()
        self.day = self.box(self.tr("Weekday"))
        for day in range(7):
            self.day.addItem(QLocale().dayName(day + 1, QLocale.FormatType.LongFormat), day)
        self.start = self.clock(self.tr("From"), "19:30")
        self.end = self.clock(self.tr("To"), "21:30")
        self._since = date(2026, 1, 1)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("One evening more in the week")

    def show_book(self, book: Book, now: int) -> None:
        """Count from today."""
        self._since = moment_of(now, zone_named(book.bench_time.zone)).date()

    def change(self) -> Change:
        """Return the change that the fields say."""
        return what_if.Evening(
            weekday=int(self.day.currentData()),
            start=self.start.time().toString(HOURS),
            end=self.end.time().toString(HOURS),
            since=self._since,
        )

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("bench time every {day} {start}–{end}").format(
            day=self.day.currentText(),
            start=self.start.time().toString(HOURS),
            end=self.end.time().toString(HOURS),
        )


class OnceForm(Form):
    """One stretch beside the rules."""

    def __init__(self) -> None:
        super().__init__()
        self.day = QDateEdit()
        self.day.setCalendarPopup(True)
        self.day.setAccessibleName(self.tr("Date"))
        self.fields.addRow(self.tr("Date"), self.day)
        self.start = self.clock(self.tr("From"), "10:00")
        self.end = self.clock(self.tr("To"), "13:00")
        self._zone = zone_named("UTC")
        self._shown = False

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("One stretch more")

    def show_book(self, book: Book, now: int) -> None:
        """Begin at tomorrow."""
        self._zone = zone_named(book.bench_time.zone)
        if not self._shown:
            self._shown = True
            tomorrow = moment_of(now + 1440, self._zone)
            self.day.setDate(QDate(tomorrow.year, tomorrow.month, tomorrow.day))

    def _moment(self, at: QTime) -> datetime:
        day = self.day.date()
        on = date(day.year(), day.month(), day.day())
        return datetime.combine(on, time(at.hour(), at.minute()), self._zone)

    def change(self) -> Change:
        """Return the change that the fields say."""
        return what_if.Once(self._moment(self.start.time()), self._moment(self.end.time()))

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("bench time on {day} {start}–{end}").format(
            day=words.day(self._moment(self.start.time())),
            start=self.start.time().toString(HOURS),
            end=self.end.time().toString(HOURS),
        )


class _StageForm(Form):
    """A stage of one model or of all of a project."""

    def __init__(self) -> None:
        super().__init__()
        self.models = self.box(self.tr("On"))
        self.stages = self.box(self.tr("Stage"))
        self.models.currentIndexChanged.connect(self._offer)
        self._book: Book | None = None

    def show_book(self, book: Book, now: int) -> None:
        """Offer the models that are planned."""
        self._book = book
        refill(self.models, _models(book, self.tr("all of {project}")))
        self._offer()

    def _offer(self) -> None:
        chosen = self.models.currentData()
        if self._book is None or chosen is None:
            return
        stages = what_if.stages_left(self._book, *chosen)
        offered = [stage for stage in stages if self.may_be(stage)]
        refill(self.stages, [(words.capital(words.stage_word(one)), one) for one in offered])

    def may_be(self, stage: Stage) -> bool:
        """Tell whether a stage is offered."""
        raise NotImplementedError

    def chosen(self) -> tuple[str, str, Stage]:
        """Return project, model ("" for all) and stage."""
        project, model = self.models.currentData() or ("", "")
        return project, model, Stage(self.stages.currentData() or Stage.BASE)


class LeaveOutForm(_StageForm):
    """A stage is left out."""

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("Leave something out")

    def may_be(self, stage: Stage) -> bool:
        """Offer what is done for its own sake."""
        return stage not in FRAME

    def change(self) -> Change:
        """Return the change that the fields say."""
        return what_if.LeaveOut(*self.chosen())

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("without {stage}: {models}").format(
            stage=words.stage_word(self.chosen()[2]), models=self.models.currentText()
        )


class ElsewhereForm(_StageForm):
    """Films of a stage dry in another location, which may be a new warm box."""

    def __init__(self) -> None:
        super().__init__()
        self.where = self.box(self.tr("Dries in"))
        self.warm, self.damp = self.air()
        self.warm.setValue(35)
        self.damp.setValue(25)
        self.room = self.number(self.tr("Room for parts"), 1, 200, 6)
        self.where.currentIndexChanged.connect(self._ask_air)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("Let films dry elsewhere, as in a warm box")

    def show_book(self, book: Book, now: int) -> None:
        """Offer the locations, and a new one."""
        super().show_book(book, now)
        known = [(one.name, one.name) for one in book.room.locations]
        refill(self.where, [(self.tr("a new warm box"), ""), *known])
        self._ask_air()

    def _ask_air(self) -> None:
        for field in (self.warm, self.damp, self.room):
            self.fields.setRowVisible(field, not self.where.currentData())

    def may_be(self, stage: Stage) -> bool:
        """Offer what lays a film."""
        return stage not in LAYS_NO_FILM

    def change(self) -> Change:
        """Return the change that the fields say."""
        known = self.where.currentData()
        if known:
            return what_if.Elsewhere(*self.chosen(), location=str(known))
        return what_if.Elsewhere(
            *self.chosen(),
            location=self._fresh(),
            temperature_c=self.warm.value(),
            humidity_pct=self.damp.value(),
            drying_places=self.room.value(),
        )

    def _fresh(self) -> str:
        taken = [one.name for one in self._book.room.locations] if self._book else []
        name, number = self.tr("warm box"), 1
        while name in taken:
            number += 1
            name = self.tr("warm box {number}").format(number=number)
        return name

    def name(self) -> str:
        """Return what the journal will call it."""
        where = self.where.currentText()
        if not self.where.currentData():
            where = self.tr("a warm box at {degrees}").format(
                degrees=words.degrees(self.warm.value())
            )
        return self.tr("{stage} dries in {where}: {models}").format(
            stage=words.stage_word(self.chosen()[2]),
            where=where,
            models=self.models.currentText(),
        )


class FirstForm(Form):
    """One vehicle first."""

    def __init__(self) -> None:
        super().__init__()
        self.models = self.box(self.tr("First"))

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("One vehicle first")

    def show_book(self, book: Book, now: int) -> None:
        """Offer every model, and none."""
        offered = _models(book, self.tr("none of {project}"))
        refill(self.models, sorted(offered, key=lambda one: not one[1][1]))

    def change(self) -> Change:
        """Return the change that the fields say."""
        project, model = self.models.currentData() or ("", "")
        return what_if.First(project, model)

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("{model} first").format(model=self.models.currentText())


class WeightForm(Form):
    """A project's lateness counts more, or less."""

    def __init__(self) -> None:
        super().__init__()
        self.projects = self.box(self.tr("Project"))
        self.weight = self.number(self.tr("Weight"), 1, 1000, 5)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("Another weight of a project")

    def show_book(self, book: Book, now: int) -> None:
        """Offer the projects that are planned."""
        refill(self.projects, [(one.name, one.name) for one in book.projects if one.active])

    def change(self) -> Change:
        """Return the change that the fields say."""
        return what_if.Weight(str(self.projects.currentData() or ""), self.weight.value())

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("{project}: weight {weight}").format(
            project=self.projects.currentText(), weight=self.weight.value()
        )


class AirForm(Form):
    """Another air, the same all day."""

    def __init__(self) -> None:
        super().__init__()
        self.where = self.box(self.tr("Where"))
        self.warm, self.damp = self.air()
        self.warm.setValue(23)

    @property
    def title(self) -> str:
        """What the kind of change is called."""
        return self.tr("Another temperature")

    def show_book(self, book: Book, now: int) -> None:
        """Offer the locations."""
        refill(self.where, [(one.name, one.name) for one in book.room.locations])

    def change(self) -> Change:
        """Return the change that the fields say."""
        return what_if.Air(
            str(self.where.currentData() or ""), self.warm.value(), self.damp.value()
        )

    def name(self) -> str:
        """Return what the journal will call it."""
        return self.tr("{where}: {degrees}, {humidity} % all day").format(
            where=self.where.currentText(),
            degrees=words.degrees(self.warm.value()),
            humidity=self.damp.value(),
        )


FORMS: tuple[type[Form], ...] = (
    EveningForm,
    OnceForm,
    LeaveOutForm,
    ElsewhereForm,
    FirstForm,
    WeightForm,
    AirForm,
)


def refill(box: QComboBox, options: list[tuple[str, Any]]) -> None:
    """Offer other things; what was chosen stays so where it is still there."""
    kept = box.currentData()
    values = [value for _, value in options]
    with QSignalBlocker(box):
        box.clear()
        for name, value in options:
            box.addItem(name, value)
        box.setCurrentIndex(values.index(kept) if kept in values else 0)


def _models(book: Book, whole: str) -> list[tuple[str, tuple[str, str]]]:
    """Return every planned project as a whole, each followed by its models."""
    found: list[tuple[str, tuple[str, str]]] = []
    for project in book.projects:
        if project.active:
            found.append((whole.format(project=project.name), (project.name, "")))
            found += [(model.name, (project.name, model.name)) for model in project.models]
    return found
