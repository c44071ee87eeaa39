"""Times and dates mean what was typed: by keys, in English and German."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import QDate, QDateTime, QLocale, Qt, QTime
from PySide6.QtWidgets import QApplication, QCalendarWidget, QVBoxLayout, QWidget

from app.window.forms.moment_fields import ClockField, DateField, MomentField
from app.window.forms.moment_reading import read_clock, read_day, read_moment

NEAR = QDate(2026, 3, 10)


@pytest.fixture(params=["en_GB", "en_US", "de_DE"])
def locale(request: pytest.FixtureRequest):
    before = QLocale()
    QLocale.setDefault(QLocale(request.param))
    yield request.param
    QLocale.setDefault(before)


def typed(qtbot, field, text: str) -> None:
    """Choose all that stands in a field, type over it, and press Enter."""
    field.setFocus()
    qtbot.keyClick(field, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)


@pytest.fixture
def held(qtbot):
    """Hold fields in a window that is shown, and give the last one."""
    frame = QWidget()
    qtbot.addWidget(frame)
    column = QVBoxLayout(frame)

    def hold(field):
        column.addWidget(field)
        frame.show()
        qtbot.waitExposed(frame)
        return field

    return hold


CLOCKS = {
    "05:00": (5, 0), "5:00": (5, 0), "5": (5, 0), "07:30": (7, 30), "0730": (7, 30),
    "730": (7, 30), "7.30": (7, 30), "19h30": (19, 30), "7 pm": (19, 0), "12:15 am": (0, 15),
    " 23:59 ": (23, 59), "00:00": (0, 0),
}  # fmt: skip


@pytest.mark.parametrize(("text", "time"), CLOCKS.items())
def test_a_time_means_what_was_typed(text, time):
    assert read_clock(text) == QTime(*time)


@pytest.mark.parametrize("text", ["", "24:00", "7:60", "13 pm", "half past", "7:3", "12345", "-5"])
def test_what_is_no_time_is_not_taken_for_one(text):
    assert read_clock(text) is None


@pytest.mark.parametrize(
    "text",
    ["3 Dec 2026", "3 December 2026", "03.12.2026", "3.12.26", "2026-12-03", "3. Dec 2026",
     "Dec 3, 2026", "Thu 3 Dec 2026"],
)  # fmt: skip
def test_a_date_means_what_was_typed(locale, text):
    assert read_day(text, NEAR) == QDate(2026, 12, 3)


def test_between_strokes_numbers_go_as_the_locale_writes_them(locale):
    meant = {"en_US": QDate(2026, 4, 3)}.get(locale, QDate(2026, 3, 4))
    assert read_day("4/3/2026", NEAR) == meant


def test_months_have_their_names_in_the_language_and_in_english(locale):
    short = QLocale().toString(QDate(2026, 12, 3), "d MMM yyyy")
    whole = QLocale().toString(QDate(2026, 3, 3), "dddd, d. MMMM yyyy")
    assert read_day(short, NEAR) == QDate(2026, 12, 3)
    assert read_day(whole, NEAR) == QDate(2026, 3, 3)


@pytest.mark.parametrize("month", range(1, 13))
@pytest.mark.parametrize("form", ["d MMM yyyy", "ddd d MMM yy", "d. MMMM yyyy"])
def test_what_a_field_writes_is_read_as_the_same_day(locale, month, form):
    day = QDate(2026, month, 27)
    assert read_day(QLocale().toString(day, form), NEAR) == day


@pytest.mark.parametrize(
    ("text", "day"),
    [("3 Dec", QDate(2025, 12, 3)), ("1.6.", QDate(2026, 6, 1)), ("29 Feb", None)],
)
def test_without_a_year_a_date_is_the_nearest(text, day):
    assert read_day(text, NEAR) == day


@pytest.mark.parametrize(
    "text", ["", "soon", "31 Feb 2026", "3", "3 Dec Mar 2026", "2026", "1 2 3 4", "3 foo 2026"]
)
def test_what_is_no_date_is_not_taken_for_one(text):
    assert read_day(text, NEAR) is None


def test_a_moment_keeps_what_was_not_typed():
    near = QDateTime(NEAR, QTime(19, 30))
    assert read_moment("3 Dec 2026 05:00", near) == QDateTime(QDate(2026, 12, 3), QTime(5, 0))
    assert read_moment("05:00", near) == QDateTime(NEAR, QTime(5, 0))
    assert read_moment("3.12.2026", near) == QDateTime(QDate(2026, 12, 3), QTime(19, 30))
    assert read_moment("never 05:00", near) is None


@pytest.mark.parametrize("text", ["05:00", "0500", "5"])
def test_typing_over_a_whole_time_gives_that_time(qtbot, held, text):
    field = held(ClockField("10:00"))
    told = []
    field.clock_changed.connect(told.append)
    typed(qtbot, field, text)
    assert field.time() == QTime(5, 0)
    assert told == [QTime(5, 0)]
    assert field.lineEdit().text() == "05:00"


def test_typing_over_a_whole_date_gives_that_date(qtbot, held, locale):
    field = held(DateField())
    field.setDate(QDate(2026, 12, 30))
    typed(qtbot, field, "3 Dec 2026")
    assert field.date().toPython() == date(2026, 12, 3)


def test_a_time_that_cannot_be_read_is_told_and_the_one_before_stays(qtbot, held):
    field = held(ClockField("10:00"))
    typed(qtbot, field, "soon")
    assert field.time() == QTime(10, 0)
    assert field.lineEdit().text() == "10:00"


def test_what_is_typed_counts_before_the_field_is_left(qtbot, held):
    field = held(MomentField())
    field.setDateTime(QDateTime(NEAR, QTime(19, 30)))
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, "11 Mar 2026 05:00")
    assert field.dateTime() == QDateTime(QDate(2026, 3, 11), QTime(5, 0))


def test_what_is_being_typed_is_not_written_over(qtbot, held):
    field = held(DateField())
    field.setDate(NEAR)
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, "3 Dec")
    field.setDate(QDate(2026, 5, 5))
    assert field.lineEdit().text() == "3 Dec"
    qtbot.keyClick(field, Qt.Key.Key_Escape)
    assert field.date() == QDate(2026, 5, 5)


def test_arrows_step_by_what_stands_at_the_cursor(qtbot, held):
    field = held(ClockField("10:00"))
    field.setFocus()
    field.lineEdit().setCursorPosition(1)
    qtbot.keyClick(field, Qt.Key.Key_Up)
    assert field.time() == QTime(11, 0)
    field.lineEdit().setCursorPosition(5)
    qtbot.keyClick(field, Qt.Key.Key_Down)
    assert field.time() == QTime(10, 59)
    day = held(DateField())
    day.setDate(QDate(2026, 2, 28))
    qtbot.keyClick(day, Qt.Key.Key_Up)
    assert day.date() == QDate(2026, 3, 1)
    qtbot.keyClick(day, Qt.Key.Key_PageUp)
    assert day.date() == QDate(2026, 4, 1)


def test_a_calendar_opens_by_keys_and_gives_its_day(qtbot, held):
    field = held(DateField())
    field.setDate(NEAR)
    qtbot.keyClick(field, Qt.Key.Key_Down, Qt.KeyboardModifier.AltModifier)
    popup = QApplication.activePopupWidget()
    calendar = popup.findChild(QCalendarWidget)
    assert calendar.selectedDate() == NEAR
    calendar.setSelectedDate(NEAR.addDays(7))
    calendar.activated.emit(calendar.selectedDate())
    assert field.date() == NEAR.addDays(7)
    assert QApplication.activePopupWidget() is None
