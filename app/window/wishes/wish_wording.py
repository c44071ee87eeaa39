"""Wishes in words."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from PySide6.QtCore import QCoreApplication

from app.service.pins import Wish
from app.window import reasons, words
from planner.values.moment import minute_of
from planner.values.plan import PassKey
from planner.values.project import Pin
from planner.values.wishes import Level


def tr(text: str) -> str:
    """Return the translation of a sentence of this module."""
    return QCoreApplication.translate("wishes", text)


def wish_line(pin: Pin, zone: ZoneInfo, project: str) -> str:
    """Return what is wished, without whose wish it is: "pinned to Thu 5 Mar"."""
    if pin.on is not None:
        return tr("pinned to {day}").format(day=words.day(pin.on))
    if pin.interval is not None:
        start, end = pin.interval.start, pin.interval.end
        return tr("pinned to {day} {start}–{end}").format(
            day=words.day_of(start, zone),
            start=words.clock(start, zone),
            end=words.clock(end, zone),
        )
    if pin.not_before is not None:
        at = minute_of(pin.not_before)
        return tr("not before {day} {time}").format(
            day=words.day_of(at, zone), time=words.clock(at, zone)
        )
    model, _, step = (pin.beside or "").partition("/")
    return tr("together with {work}").format(work=reasons.key_name(PassKey(project, model, step)))


def whose(wish: Wish) -> str:
    """Return which piece of work a wish is about."""
    pin = wish.pin
    work = reasons.key_name(PassKey(wish.project, pin.model, pin.step))
    return work if pin.coat is None else tr("{work}, coat {n}").format(work=work, n=pin.coat)


def kept_word(wish: Wish) -> str:
    """Return whether the plan keeps a wish."""
    if wish.kept is None:
        return tr("not in the plan")
    if wish.kept:
        return tr("kept")
    return tr("no longer possible; now a preference")


def level_name(level: Level) -> str:
    """Return what a level of the cost is, as a person would say it."""
    return {
        Level.LATE: tr("Nothing late for its date"),
        Level.FINISH: tr("All finished soon"),
        Level.STRETCHES: tr("Few evenings at the bench"),
        Level.SETUP: tr("Little loading and cleaning"),
        Level.MOVED: tr("Little moved against the last plan"),
    }[level]
