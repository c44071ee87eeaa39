"""Fields for a time of day, a date, and both: what is typed into them is what they mean.

Qt's own fields edit section by section, so that "05:00" typed over a whole
time becomes another one; here the text is free, and is read when it is left.
"""

from __future__ import annotations

from PySide6.QtCore import QDate, QDateTime, QEvent, QLocale, QPoint, QSize, Qt, QTime, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractSpinBox,
    QCalendarWidget,
    QMenu,
    QToolButton,
    QToolTip,
    QWidgetAction,
)

from app.window import words
from app.window.forms.moment_reading import read_clock, read_day, read_moment

HOURS = "HH:mm"
ARROW = 24  # width of what opens the calendar [px]
PAGE = 10  # what Page Up and Page Down step by


class _TypedField(QAbstractSpinBox):
    """Shows a moment, and takes another when what was typed can be read.

    Signals
    -------
    moment_changed(QDateTime)
        It shows another moment.
    """

    moment_changed = Signal(QDateTime)

    def __init__(self, form: str, example: str, name: str) -> None:
        super().__init__()
        self._form, self._example = form, example
        self._value = QDateTime(QDate.currentDate(), QTime(0, 0))
        self.setAccessibleName(name)
        self.lineEdit().setText(self._written())
        self.editingFinished.connect(self._take)

    def dateTime(self) -> QDateTime:
        """Return the moment that it shows; what is typed and not read yet is read first."""
        read = self._read(self.lineEdit().text())
        return self._value if read is None else read

    def setDateTime(self, moment: QDateTime) -> None:
        """Show a moment, and tell of it if it is another; what is being typed stays."""
        typing = self.lineEdit().text() != self._written()
        self._put(moment, keep_text=typing)

    def sizeHint(self) -> QSize:
        """Have room for the widest moment, a sign of care and the buttons."""
        hint = super().sizeHint()
        widest = QLocale().toString(QDateTime(QDate(2030, 9, 25), QTime(20, 0)), self._form)
        room = self.fontMetrics().horizontalAdvance(widest + "000")
        hint.setWidth(room + hint.height())
        return hint

    def minimumSizeHint(self) -> QSize:
        """Never cut what is shown."""
        return self.sizeHint()

    def stepEnabled(self) -> QAbstractSpinBox.StepEnabledFlag:
        """Let both arrows step."""
        return self.StepEnabledFlag.StepUpEnabled | self.StepEnabledFlag.StepDownEnabled

    def stepBy(self, steps: int) -> None:
        """Go on by what stands at the cursor."""
        at = self.lineEdit().cursorPosition()
        self._put(self._stepped(self.dateTime(), steps, at))
        self.lineEdit().setCursorPosition(min(at, len(self.lineEdit().text())))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Let Esc bring back what stood here before it was typed over."""
        typed = self.lineEdit().text() != self._written()
        if event.key() == Qt.Key.Key_Escape and typed:
            self.lineEdit().setText(self._written())
            self.selectAll()
            return
        super().keyPressEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Choose all when the field is come to by keys, so that typing replaces it."""
        super().focusInEvent(event)
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            self.selectAll()

    def changeEvent(self, event: QEvent) -> None:
        """Write the moment anew where the locale's words have changed."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.LocaleChange:
            self.lineEdit().setText(self._written())

    def _take(self) -> None:
        typed = self.lineEdit().text()
        read = self._read(typed)
        if read is not None:
            self._put(read)
            return
        self.lineEdit().setText(self._written())
        told = words.tr("“{typed}” cannot be read; write it like {example}")
        below = self.mapToGlobal(QPoint(0, self.height()))
        QToolTip.showText(below, told.format(typed=typed[:40], example=self._example), self)

    def _put(self, moment: QDateTime, *, keep_text: bool = False) -> None:
        changed = moment.isValid() and moment != self._value
        if moment.isValid():
            self._value = moment
        if not keep_text:
            self.lineEdit().setText(self._written())
        if changed:
            self._tell()

    def _written(self) -> str:
        return QLocale().toString(self._value, self._form)

    def _read(self, text: str) -> QDateTime | None:
        return self._value if text == self._written() else self._meant(text)

    def _meant(self, text: str) -> QDateTime | None:
        """Return what a text means, None if it cannot be read."""
        raise NotImplementedError

    def _stepped(self, moment: QDateTime, steps: int, at: int) -> QDateTime:
        """Return a moment some steps on, the cursor being at a letter."""
        raise NotImplementedError

    def _tell(self) -> None:
        self.moment_changed.emit(self._value)


class ClockField(_TypedField):
    """A time of day, "19:30".

    Signals
    -------
    clock_changed(QTime)
        It shows another time.
    """

    clock_changed = Signal(QTime)

    def __init__(self, clock: str, name: str = "") -> None:
        super().__init__(HOURS, "19:30", name)
        self.setTime(QTime.fromString(clock, HOURS))

    def time(self) -> QTime:
        """Return the time that it shows."""
        return self.dateTime().time()

    def setTime(self, time: QTime) -> None:
        """Show a time."""
        if time.isValid():
            self.setDateTime(QDateTime(self._value.date(), time))

    def _meant(self, text: str) -> QDateTime | None:
        clock = read_clock(text)
        return None if clock is None else QDateTime(self._value.date(), clock)

    def _stepped(self, moment: QDateTime, steps: int, at: int) -> QDateTime:
        minutes = steps * (60 if at <= HOURS.index(":") else 1)
        return QDateTime(moment.date(), moment.time().addSecs(60 * minutes))

    def _tell(self) -> None:
        super()._tell()
        self.clock_changed.emit(self._value.time())


class MomentField(_TypedField):
    """A day and a time; a calendar opens by Alt+Down, F4 or its arrow.

    Signals
    -------
    day_changed(QDate)
        It shows another day.
    """

    day_changed = Signal(QDate)

    def __init__(self, form: str = "", name: str = "") -> None:
        super().__init__(form or f"{words.date_form()} {HOURS}", self._like(), name)
        self.setButtonSymbols(self.ButtonSymbols.NoButtons)
        self._arrow = QToolButton(self)
        self._arrow.setArrowType(Qt.ArrowType.DownArrow)
        self._arrow.setAutoRaise(True)
        self._arrow.setFocusPolicy(Qt.FocusPolicy.NoFocus)  # the keys open the calendar, too
        self._arrow.setToolTip(words.tr("Calendar"))
        self._arrow.setAccessibleName(words.tr("Calendar"))
        self._arrow.clicked.connect(self._open_calendar)
        self.lineEdit().setTextMargins(0, 0, ARROW, 0)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the calendar's arrow at the end."""
        super().resizeEvent(event)
        self._arrow.setGeometry(self.width() - ARROW, 0, ARROW, self.height())

    def date(self) -> QDate:
        """Return the day that it shows."""
        return self.dateTime().date()

    def time(self) -> QTime:
        """Return the time that it shows."""
        return self.dateTime().time()

    def setDate(self, day: QDate) -> None:
        """Show another day."""
        if day.isValid():
            self.setDateTime(QDateTime(day, self._value.time()))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Open the calendar by the keys that open a list."""
        down = (
            event.key() == Qt.Key.Key_Down and event.modifiers() & Qt.KeyboardModifier.AltModifier
        )
        if down or event.key() == Qt.Key.Key_F4:
            self._open_calendar()
            return
        super().keyPressEvent(event)

    def _like(self) -> str:
        return f"{QLocale().toString(QDate(2031, 12, 3), words.date_form())} 19:30"

    def _meant(self, text: str) -> QDateTime | None:
        return read_moment(text, self._value)

    def _stepped(self, moment: QDateTime, steps: int, at: int) -> QDateTime:
        if at > len(self.lineEdit().text()) - len(HOURS):
            return moment.addSecs(60 * steps)
        return _days_on(moment, steps)

    def _tell(self) -> None:
        super()._tell()
        self.day_changed.emit(self._value.date())

    def _open_calendar(self) -> None:
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        calendar = QCalendarWidget(menu)
        calendar.setSelectedDate(self.date())

        def take(day: QDate) -> None:
            self._put(QDateTime(day, self.time()))
            self.selectAll()
            menu.close()

        calendar.activated.connect(take)
        calendar.clicked.connect(take)
        holder = QWidgetAction(menu)
        holder.setDefaultWidget(calendar)
        menu.addAction(holder)
        menu.popup(self.mapToGlobal(QPoint(0, self.height())))
        calendar.setFocus()


class DateField(MomentField):
    """A date, "5 Mar 2031"."""

    def __init__(self, name: str = "") -> None:
        super().__init__(words.date_form(), name)

    def _like(self) -> str:
        return QLocale().toString(QDate(2031, 12, 3), words.date_form())

    def _meant(self, text: str) -> QDateTime | None:
        day = read_day(text, self._value.date())
        return None if day is None else QDateTime(day, self._value.time())

    def _stepped(self, moment: QDateTime, steps: int, at: int) -> QDateTime:
        return _days_on(moment, steps)


def _days_on(moment: QDateTime, steps: int) -> QDateTime:
    """Return a moment days on; a page of them is a month."""
    if abs(steps) == PAGE:
        return moment.addMonths(1 if steps > 0 else -1)
    return moment.addDays(steps)
