"""How the window says times, lengths and reasons.

Every sentence goes through Qt's translator; numbers are put in afterwards.
"""

from __future__ import annotations

from datetime import date, datetime
from functools import lru_cache
from string import Formatter
from typing import Any
from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from planner.values.moment import moment_of
from planner.values.plan import BenchKind
from planner.values.step import Stage, Tool

HOUR, DAY = 60, 1440
FINE_UNTIL, FINE, COARSE = 120, 5, 15  # people get 5 min under two hours, 15 above


def tr(text: str) -> str:
    """Return the translation of a sentence of this module."""
    return QCoreApplication.translate("words", text)


@lru_cache(maxsize=8192)  # a new plan tells mostly the times of the old one
def clock(minute: int, zone: ZoneInfo) -> str:
    """Return the local wall-clock time, "20:15"."""
    return f"{moment_of(minute, zone):%H:%M}"


def day(on: date | datetime, *, long: bool = False) -> str:
    """Return a date, "Thu 5 Mar" or "Thursday 5 March"."""
    form = tr("dddd d MMMM") if long else tr("ddd d MMM")
    return QLocale().toString(QDate(on.year, on.month, on.day), form)


def narrow_day(on: date | datetime) -> str:
    """Return a date where there is little room, "5 Mar"."""
    return QLocale().toString(QDate(on.year, on.month, on.day), tr("d MMM"))


def language_code() -> str:
    """Return the code of the language that is spoken (BCP 47): a translation names its own."""
    return tr("en")


def date_form() -> str:
    """Return how fields show a date, "5 Mar 2026"."""
    return tr("d MMM yyyy")


def day_of(minute: int, zone: ZoneInfo, *, long: bool = False) -> str:
    """Return the local date of a minute."""
    return day(moment_of(minute, zone), long=long)


@lru_cache(maxsize=8192)
def when(minute: int, zone: ZoneInfo, now: int) -> str:
    """Return a time as short as it can be told from ``now``: "20:15", "Thu 20:15", with date."""
    there, here = moment_of(minute, zone), moment_of(now, zone)
    days = (there.date() - here.date()).days
    if days == 0:
        return f"{there:%H:%M}"
    if 0 < days < 6:
        return (
            f"{QLocale().toString(QDate(there.year, there.month, there.day), 'ddd')} {there:%H:%M}"
        )
    return f"{day(there)} {there:%H:%M}"


def today_or_when(minute: int, zone: ZoneInfo, now: int) -> str:
    """Return the same where a bare time would not say that it is today's."""
    told = when(minute, zone, now)
    same = moment_of(minute, zone).date() == moment_of(now, zone).date()
    return tr("today {time}").format(time=told) if same else told


def span(minutes: int) -> str:
    """Return a length of time, "45 min", "2 h 15 min", "3 d 4 h"."""
    if minutes < HOUR:
        return tr("{minutes} min").format(minutes=minutes)
    hours, rest = divmod(minutes, HOUR)
    if hours < 48:
        if not rest:
            return tr("{hours} h").format(hours=hours)
        return tr("{hours} h {minutes} min").format(hours=hours, minutes=rest)
    days, hours = divmod(hours, 24)
    if not hours:
        return tr("{days} days").format(days=days)
    return tr("{days} d {hours} h").format(days=days, hours=hours)


def hours(minutes: int) -> str:
    """Return a length of time at the bench, never in days: "45 min", "48 h", "50 h 15 min"."""
    whole, rest = divmod(minutes, HOUR)
    if not whole:
        return tr("{minutes} min").format(minutes=rest)
    if not rest:
        return tr("{hours} h").format(hours=whole)
    return tr("{hours} h {minutes} min").format(hours=whole, minutes=rest)


def short_span(minutes: int) -> str:
    """Return a length of time for a narrow cell: "45 min", "17 h 45", "3 d 4 h"."""
    hours, rest = divmod(minutes, HOUR)
    if 1 <= hours < 48 and rest:
        return tr("{hours} h {minutes:02d}").format(hours=hours, minutes=rest)
    return span(minutes)


def is_foreign() -> bool:
    """Tell whether numbers and dates are written in another way than the program does."""
    return QLocale().language() not in (QLocale.Language.English, QLocale.Language.C)


def decimal(number: str) -> str:
    """Return a number that is written with a point as the locale writes it."""
    return number.replace(".", QLocale().decimalPoint()) if is_foreign() else number


class _Local(Formatter):
    """Puts fractions in as the locale writes them."""

    def format_field(self, value: Any, format_spec: str) -> str:
        """Return one value in the form that is asked."""
        told = str(format(value, format_spec))
        return decimal(told) if isinstance(value, float) else told


def fill(text: str, /, **values: object) -> str:
    """Put values into a translated text, fractions as the locale writes them."""
    return _Local().vformat(text, (), values)


def degrees(temperature_c: float) -> str:
    """Return a temperature, "21 °C" or "9.4 °C"."""
    shown = f"{temperature_c:.1f}".removesuffix(".0")
    return tr("{temperature} °C").format(temperature=decimal(shown))


def opening(minute: int, zone: ZoneInfo, now: int) -> str:
    """Return when a film opens as people are told: rounded up, for it is known no better."""
    grain = _grain(minute, now)
    return when(-(-minute // grain) * grain, zone, now)


def closing(minute: int, zone: ZoneInfo, now: int) -> str:
    """Return when a window closes as people are told: rounded down."""
    grain = _grain(minute, now)
    return when(minute // grain * grain, zone, now)


def ring_time(minute: int, zone: ZoneInfo, laid: int) -> str:
    """Return when a film opens, rounded up by how long it took, with the day if it is another."""
    grain = _grain(minute, laid)
    opens = -(-minute // grain) * grain
    there, days = moment_of(opens, zone), 0
    days = (there.date() - moment_of(laid, zone).date()).days
    if 0 < days < 6:
        return when(opens, zone, laid)
    return day(there) if days else clock(opens, zone)


def _grain(minute: int, now: int) -> int:
    return FINE if abs(minute - now) < FINE_UNTIL else COARSE


def count(number: int, name: str, many: str) -> str:
    """Return "1 stretch" or "3 stretches" from two translated forms with {n}."""
    return (name if number == 1 else many).format(n=number)


def capital(text: str) -> str:
    """Return ``text`` with its first letter large."""
    return text[:1].upper() + text[1:]


def stage_word(stage: Stage) -> str:
    """Return the name of a stage."""
    return QCoreApplication.translate("stage", stage.value)


def says_stage(title: str, stage: Stage) -> bool:
    """Tell whether a title says no more than the stage, in the program's language or this."""
    return title.casefold() in (stage.value, stage_word(stage).casefold())


def tool_word(tool: Tool) -> str:
    """Return the name of a tool."""
    return QCoreApplication.translate("tool", tool.value)


def state_word(state: str) -> str:
    """Return the name of a drying state."""
    return QCoreApplication.translate("state", state)


def sequence_word(name: str) -> str:
    """Return the name of a built-in sequence; a person's own stays as it is."""
    return QCoreApplication.translate("sequence", name)


def option_word(text: str) -> str:
    """Return the name, choice or note of an option of a built-in sequence."""
    return QCoreApplication.translate("option", text)


def given_name(text: str) -> str:
    """Return what a thing that the program adds to a book is called there."""
    return QCoreApplication.translate("given name", text)


def part_word(text: str) -> str:
    """Return the name of a part or place as a built-in sequence uses it; another as it is."""
    return QCoreApplication.translate("part", text)


def colour_word(text: str) -> str:
    """Return the name or note of a colour of a built-in sequence."""
    return QCoreApplication.translate("colour", text)


def title_word(text: str) -> str:
    """Return what a step of a built-in sequence is called."""
    return QCoreApplication.translate("step", text)


def family_word(text: str) -> str:
    """Return what a family of coatings is called."""
    return QCoreApplication.translate("family", text)


def change_word(text: str) -> str:
    """Return what a named change of an order is called."""
    return QCoreApplication.translate("change", text)


def reached_word(text: str) -> str:
    """Return how far a model is."""
    return QCoreApplication.translate("reached", text)


def setup_word(kind: BenchKind, coating: str) -> str:
    """Return what is done at the sink: "load sand", "clean the airbrush"."""
    if kind is BenchKind.LOAD:
        return tr("load {coating}").format(coating=coating)
    if kind is BenchKind.CHANGE:
        return tr("change to {coating}").format(coating=coating)
    if kind is BenchKind.CLEAN:
        return tr("clean the airbrush")
    return tr("prepare the film")


def listed(names: tuple[str, ...] | list[str]) -> str:
    """Return names in a row: "hull, wheels and panels"."""
    if len(names) < 2:
        return "".join(names)
    return tr("{some} and {last}").format(some=", ".join(names[:-1]), last=names[-1])
