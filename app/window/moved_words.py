"""What moved, evening by evening, in the language of the window."""

from __future__ import annotations

from datetime import date

from app.service.moved_work import Ends, MovedWork, chosen_lines, ends_between, moved_work
from app.window import step_naming, words
from app.window.plan_snapshot import PlanChange
from planner.values.plan import PassKey


def moved_lines(change: PlanChange) -> list[str]:
    """Return at most three lines: what changes first, and when all is finished.

    Nothing is said of swaps within an evening.
    """
    if change.old is None:
        return []
    calendar, old, new = change.new.calendar, change.old.plan, change.new.plan
    lines = [_line(moved) for moved in moved_work(calendar, old, new)]
    return chosen_lines(lines, _end(ends_between(calendar, old, new)))


def _line(moved: MovedWork) -> str:
    works = _works(moved)
    if moved.after is None:
        told = words.tr("{day}: {works}, now without a place.")
    elif moved.before is None:
        told = words.tr("{day}: {works}, without a place before.")
    else:
        told = words.tr("{day}: {works}, now {after}.")
    on = moved.before or moved.after
    after = _day(moved.after) if moved.after else ""
    return told.format(day=_day(on) if on else "", works=works, after=after)


def _works(moved: MovedWork) -> str:
    keys, more = moved.names
    names = [_name(key) for key in keys]
    return ", ".join([*names, words.tr("{n} more").format(n=more)] if more else names)


def _name(key: PassKey) -> str:
    title = step_naming.title_of(key)
    return words.tr("{work} of {model}").format(work=words.title_word(title), model=key.model)


def _end(ends: Ends) -> str:
    if ends.before == ends.after:
        return words.tr("The end stays {day}.").format(day=_day(ends.after))
    return words.tr("The end is {day}; it was {before}.").format(
        day=_day(ends.after), before=_day(ends.before)
    )


def _day(on: date) -> str:
    return words.day(on)
