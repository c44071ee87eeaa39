"""What a person who types a time or a date means by it, in the words of the locale."""

from __future__ import annotations

import re

from PySide6.QtCore import QDate, QDateTime, QLocale, QTime

CLOCK = re.compile(r"(\d{1,2})(?:\s*[:.h]\s*(\d{2})|\s*h)?\s*(am|pm)?", re.IGNORECASE)
FOUR_DIGITS = re.compile(r"(\d{1,2})(\d{2})")
CLOCK_AT_END = re.compile(r"(?:^|[\sT,])(\d{1,2}[:.h]\d{2}\s*(?:am|pm)?)\s*$", re.IGNORECASE)
LEAST_LETTERS = 3  # of a month's name: "Ma" would be two of them
CENTURY = 2000


def read_clock(text: str) -> QTime | None:
    """Return the time of day that a text means: "7:30", "19.30", "0730", "7 pm"; None if none."""
    found = FOUR_DIGITS.fullmatch(text.strip()) or CLOCK.fullmatch(text.strip())
    if found is None:
        return None
    hour, minute = int(found[1]), int(found[2] or 0)
    half = (found[3] or "").lower() if found.re is CLOCK else ""
    if half:
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if half == "pm" else 0)
    time = QTime(hour, minute)
    return time if time.isValid() else None


def read_day(text: str, near: QDate) -> QDate | None:
    """Return the date that a text means; without a year the one nearest to ``near``.

    Numbers go day, month, year, or year first where it has four digits; between
    strokes they go as the locale writes them.  A weekday's name is passed over:
    it goes on standing in a text of which the day alone was changed.
    """
    numbers: list[str] = re.findall(r"\d+", text)
    words: list[str] = re.findall(r"[^\W\d_]+", text)
    months = [month for month in map(_month, words) if month]
    if len(months) > 1 or any(not _month(word) and not _weekday(word) for word in words):
        return None
    year_first = bool(numbers) and len(numbers[0]) == 4
    if months:
        numbers.insert(1, str(months[0]))
    elif "/" in text and not year_first and _month_first():
        numbers[:2] = numbers[1::-1]
    if year_first:
        numbers = [*numbers[2:], *numbers[1:2], *numbers[:1]]
    if not 2 <= len(numbers) <= 3:
        return None
    day, month = int(numbers[0]), int(numbers[1])
    if len(numbers) == 2:
        return _nearest(day, month, near)
    year = int(numbers[2]) + (CENTURY if len(numbers[2]) <= 2 else 0)
    found = QDate(year, month, day)
    return found if found.isValid() else None


def read_moment(text: str, near: QDateTime) -> QDateTime | None:
    """Return the day and time that a text means; what it leaves out is as in ``near``."""
    at_end = CLOCK_AT_END.search(text)
    clock = read_clock(at_end[1]) if at_end else near.time()
    rest = (text[: at_end.start()] if at_end else text).strip(" ,")
    day = read_day(rest, near.date()) if rest else near.date()
    return None if clock is None or day is None else QDateTime(day, clock)


def _nearest(day: int, month: int, near: QDate) -> QDate | None:
    found = [QDate(near.year() + step, month, day) for step in (-1, 0, 1)]
    valid = [date for date in found if date.isValid()]
    return min(valid, key=lambda date: abs(near.daysTo(date))) if valid else None


def _month(word: str) -> int:
    """Return which month a word names or begins, 0 if none."""
    if len(word) < LEAST_LETTERS:
        return 0
    for locale in (QLocale(), QLocale.c()):
        for month in range(1, 13):
            if locale.monthName(month).casefold().startswith(word.casefold()):
                return month
            short = locale.monthName(month, QLocale.FormatType.ShortFormat)
            if short.rstrip(".").casefold() == word.casefold():
                return month
    return 0


def _weekday(word: str) -> bool:
    return any(
        locale.dayName(day).casefold().startswith(word.casefold())
        for locale in (QLocale(), QLocale.c())
        for day in range(1, 8)
    )


def _month_first() -> bool:
    form = QLocale().dateFormat(QLocale.FormatType.ShortFormat)
    return form.find("M") < form.find("d")
