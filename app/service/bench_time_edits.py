"""Edits of bench time: what comes every week, holidays, quiet and daylight hours."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import replace
from datetime import date, timedelta
from enum import StrEnum

from app.service.edits import WEEKDAYS, Edit
from planner.values.bench_time import BenchTime, Extra, Recurring
from planner.values.book import Book
from planner.values.message import Message, called, message
from planner.values.moment import zone_named
from planner.values.refusal import Refused, demand

LONGEST_HOLIDAY = 366  # days


class DayHours(StrEnum):
    """Which recurring hours; the values are fields of `BenchTime`."""

    BENCH = "stretches"
    QUIET = "quiet"
    DAYLIGHT = "daylight"


ADD = {
    DayHours.BENCH: called("add bench time"),
    DayHours.QUIET: called("add quiet hours"),
    DayHours.DAYLIGHT: called("add daylight hours"),
}
CHANGE = {
    DayHours.BENCH: called("change bench time"),
    DayHours.QUIET: called("change quiet hours"),
    DayHours.DAYLIGHT: called("change daylight hours"),
}
REMOVE = {
    DayHours.BENCH: called("remove bench time"),
    DayHours.QUIET: called("remove quiet hours"),
    DayHours.DAYLIGHT: called("remove daylight hours"),
}


def rules(book: Book, hours: DayHours) -> tuple[Recurring, ...]:
    """Return the recurring hours of one kind."""
    found: tuple[Recurring, ...] = getattr(book.bench_time, hours.value)
    return found


def weekly_rule(days: Collection[int]) -> str:
    """Return the recurrence rule of some weekdays, 0 for Monday.

    Raises
    ------
    Refused
        If no day is named.
    """
    demand(bool(days), "rule", "names no day; choose at least one")
    return "FREQ=WEEKLY;BYDAY=" + ",".join(WEEKDAYS[day] for day in sorted(days))


def weekly_days(rule: Recurring) -> frozenset[int] | None:
    """Return the weekdays (0 = Monday) of a plain weekly rule, None for any other."""
    fields = dict(field.partition("=")[::2] for field in rule.rule.upper().split(";"))
    codes = fields.get("BYDAY", "").split(",")
    if set(fields) != {"FREQ", "BYDAY"} or fields["FREQ"] != "WEEKLY":
        return None
    if not all(code in WEEKDAYS for code in codes):
        return None
    return frozenset(WEEKDAYS.index(code) for code in codes)


def add_rule(book: Book, hours: DayHours, rule: Recurring) -> Edit:
    """Add recurring hours."""
    return _with_rules(book, hours, (*rules(book, hours), rule), ADD)


def change_rule(book: Book, hours: DayHours, old: Recurring, new: Recurring) -> Edit:
    """Put other recurring hours in place of some.

    Raises
    ------
    Refused
        If ``old`` is not there any more.
    """
    at = _index(book, hours, old)
    changed = list(rules(book, hours))
    changed[at] = new
    return _with_rules(book, hours, changed, CHANGE)


def remove_rule(book: Book, hours: DayHours, old: Recurring) -> Edit:
    """Take recurring hours away; `Refused` if they are not there any more."""
    at = _index(book, hours, old)
    left = [rule for index, rule in enumerate(rules(book, hours)) if index != at]
    return _with_rules(book, hours, left, REMOVE)


def skip_dates(book: Book, first: date, last: date) -> Edit:
    """Be away from the first to the last date, both included.

    Raises
    ------
    Refused
        If the last lies before the first, or more than a year after it.
    """
    days = _days(first, last)
    skipped = tuple(sorted({*book.bench_time.skipped, *days}))
    return _with_skipped(
        book,
        called("away on {day}", day=first)
        if first == last
        else called("away {first} to {last}", first=first, last=last),
        skipped,
    )


def days_off(bench_time: BenchTime) -> tuple[date, ...]:
    """Return the dates on which there is no bench time though a rule may name them.

    A date that was skipped because its hours changed has hours of its own, and is none.
    """
    zone = zone_named(bench_time.zone)
    own = {extra.start.astimezone(zone).date() for extra in bench_time.extra}
    return tuple(day for day in bench_time.skipped if day not in own)


def unskip_dates(book: Book, first: date, last: date) -> Edit:
    """Be back on every date of a span; `Refused` as for `skip_dates`."""
    days = set(_days(first, last))
    left = tuple(day for day in book.bench_time.skipped if day not in days)
    return _with_skipped(
        book,
        called("back on {day}", day=first)
        if first == last
        else called("back {first} to {last}", first=first, last=last),
        left,
    )


def put_extra(book: Book, was: Extra | None, extra: Extra) -> Edit:
    """Put one stretch beside the rules in place of ``was``, or beside the others if None."""
    others = [other for other in book.bench_time.extra if other not in (was, extra)]
    everything = tuple(sorted([*others, extra], key=lambda extra: (extra.start, extra.end)))
    name = called(
        "extra bench time {start:%Y-%m-%d %H:%M}–{end:%H:%M}", start=extra.start, end=extra.end
    )
    return Edit(name, replace(book, bench_time=replace(book.bench_time, extra=everything)))


def spans(days: Iterable[date]) -> tuple[tuple[date, date], ...]:
    """Return runs of days that follow each other, each as its first and last."""
    found: list[tuple[date, date]] = []
    for day in sorted(days):
        if found and day - found[-1][1] == timedelta(days=1):
            found[-1] = (found[-1][0], day)
        else:
            found.append((day, day))
    return tuple(found)


def _days(first: date, last: date) -> list[date]:
    demand(first <= last, "last", "lies before the first day; swap the two")
    count = (last - first).days + 1
    demand(
        count <= LONGEST_HOLIDAY,
        "last",
        message(
            "makes {count} days; {most} at a time are the most", count=count, most=LONGEST_HOLIDAY
        ),
    )
    return [first + timedelta(days=after) for after in range(count)]


def _index(book: Book, hours: DayHours, rule: Recurring) -> int:
    try:
        return rules(book, hours).index(rule)
    except ValueError:
        place = f"bench_time.{hours.value}"
        raise Refused(place, "these hours are not there any more; look again") from None


def _with_rules(
    book: Book, hours: DayHours, new: Iterable[Recurring], names: dict[DayHours, Message]
) -> Edit:
    changed = replace(book.bench_time, **{hours.value: tuple(new)})  # type: ignore[arg-type]
    return Edit(names[hours], replace(book, bench_time=changed))


def _with_skipped(book: Book, name: str, skipped: tuple[date, ...]) -> Edit:
    return Edit(name, replace(book, bench_time=replace(book.bench_time, skipped=skipped)))
