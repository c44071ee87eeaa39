"""What kind of thing a vehicle is, how far it is, and since when."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import QCoreApplication, QDate, QSignalBlocker, Signal
from PySide6.QtWidgets import QHBoxLayout, QLineEdit, QWidget

from app.service.first_run import kind_told
from app.window import words
from app.window.forms.controls import choice
from app.window.forms.moment_reading import read_day
from app.window.labels import MessageLabel, field_label, fit_words
from planner.values.model import ModelKind
from planner.values.project import StageReached


class VehicleState(QWidget):
    """Kind, stage and day in a line.

    The kind goes by the vehicle's name until somebody chooses one.

    Signals
    -------
    changed()
        Something is other now.
    """

    changed = Signal()

    def __init__(self, number: int) -> None:
        super().__init__()
        tr = self.tr
        self._chosen = False
        self.today = QDate.currentDate()
        self.kinds = choice(
            [(QCoreApplication.translate("kind", one.value), one) for one in ModelKind],
            ModelKind.OTHER,
        )
        self.kinds.setAccessibleName(tr("Vehicle {n}: kind").format(n=number))
        self.kinds.setToolTip(tr("Brings parts and sizes, assumed until you type or measure them"))
        self.stages = choice([(words.reached_word(one.value), one) for one in StageReached])
        self.stages.setAccessibleName(tr("Vehicle {n}: how far it is").format(n=number))
        self.since = QLineEdit()
        self.since.setMaxLength(40)
        self.since.setPlaceholderText(tr("on which day"))
        fit_words(self.since, 110)
        self.since.setAccessibleName(
            tr("Vehicle {n}: day on which the last of it was done; none is a week ago").format(
                n=number
            )
        )
        self.since.setToolTip(self.since.accessibleName())
        self.since.setEnabled(False)
        self.message = MessageLabel()
        self.fields: tuple[QWidget, ...] = (self.kinds, self.stages, self.since)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(field_label(tr("Kind"), self.kinds))
        row.addWidget(self.kinds)
        row.addWidget(field_label(tr("So far"), self.stages))
        row.addWidget(self.stages)
        row.addWidget(self.since)
        row.addWidget(self.message, 1)
        row.addStretch(1)
        self.kinds.activated.connect(self._kind_chosen)
        self.kinds.currentIndexChanged.connect(lambda _at: self.changed.emit())
        self.stages.currentIndexChanged.connect(self._stage_chosen)
        self.since.textChanged.connect(lambda _text: self.changed.emit())

    @property
    def kind(self) -> ModelKind:
        """The kind chosen, or told by the name."""
        return ModelKind(self.kinds.currentData())

    @property
    def reached(self) -> StageReached:
        """How far the vehicle is."""
        return StageReached(self.stages.currentData())

    @property
    def when(self) -> date | None:
        """The day on which the last of it was done; None where nobody says."""
        read = self._day()
        return date(read.year(), read.month(), read.day()) if read is not None else None

    @property
    def unread(self) -> bool:
        """Tell whether a day was typed that cannot be read; the line says so."""
        typed = self.since.isEnabled() and bool(self.since.text().strip())
        bad = typed and self._day() is None
        self.message.say(self.tr("no such day") if bad else "")
        return bad

    def go_by(self, name: str) -> None:
        """Take the kind that a name tells, unless one was chosen."""
        told = kind_told(name)
        if told is not None and not self._chosen:
            self.kinds.setCurrentIndex(self.kinds.findData(told))

    def begin_with(self, kind: ModelKind) -> None:
        """Begin with a kind, as of the line above; tell nobody."""
        blocked = QSignalBlocker(self.kinds)
        self.kinds.setCurrentIndex(self.kinds.findData(kind))
        blocked.unblock()

    def told(self) -> str:
        """Return kind and stage in a few words; "" where nothing was said of them."""
        said = []
        if self.kind is not ModelKind.OTHER:
            said.append(self.kinds.currentText())
        if self.reached is not StageReached.NOTHING:
            said.append(self.stages.currentText())
        return ", ".join(said)

    def _day(self) -> QDate | None:
        text = self.since.text().strip()
        return read_day(text, self.today) if text and self.since.isEnabled() else None

    def _kind_chosen(self, _at: int) -> None:
        self._chosen = True

    def _stage_chosen(self, _at: int) -> None:
        self.since.setEnabled(self.reached is not StageReached.NOTHING)
        self.changed.emit()
