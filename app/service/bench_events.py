"""What happens at the bench, as edits: one each, with its line in the diary."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace
from datetime import date, datetime, timedelta

from app.service import edits, logbook
from app.service.edits import Edit
from planner.bench import calendar_of
from planner.evening import log_entries
from planner.evening.missed_closings import Missed, Remedy, missed, remedied
from planner.evening.out_of_order import OutOfOrder, out_of_order
from planner.evening.repairs import Repair, outline, repaired, repairs_for
from planner.evening.skipped_steps import skipped
from planner.values.book import Book
from planner.values.book_changes import with_project, with_projects
from planner.values.coating import State
from planner.values.message import called, message, row, told
from planner.values.moment import minute_of, moment_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Event, Happened, Observed, Project
from planner.values.refusal import Refused, demand, unknown

__all__ = [
    "Missed",
    "OutOfOrder",
    "Remedy",
    "Repair",
    "missed",
    "out_of_order",
    "outline",
    "repairs_for",
]


def skip(book: Book, key: PassKey, now: int, reason: str) -> Edit:
    """Leave a step out, with what only serves it; the diary keeps that it was there.

    Raises
    ------
    Refused
        If it is done, or under way.
    """
    made = skipped(book, key)
    others = [name for name in made.gone if name != key.step]
    text = reason.strip() or called("left out")
    if others:
        text = called("{reason} (with {others})", reason=text, others=", ".join(others))
    return _told(
        made.book, key, now, Event.SKIPPED, text, called("skipped: {work}", work=_name(key))
    )


def looked(book: Book, key: PassKey, now: int, state: State, *, reached: bool) -> Edit:
    """Note that a film was looked at, and whether it had come so far.

    Raises
    ------
    Refused
        If nothing was laid by that pass yet.
    """
    entry = log_entries.entry_of(book, key)
    step = log_entries.step_of(book, key)
    demand(
        entry is not None and entry.end is not None and bool(step.applications),
        "step",
        message('"{step}" coat {coat} has laid no film yet', step=key.step, coat=key.coat),
    )
    assert entry is not None
    demand(minute_of(entry.start) <= now, "at", "lies before the film was laid")
    seen = Observed(
        model=key.model,
        step=key.step,
        coat=key.coat,
        at=_moment(book, now),
        state=state,
        reached=reached,
    )

    def with_look(old: Project) -> Project:
        return replace(old, observed=(*old.observed, seen))

    changed = with_project(book, key.project, with_look)
    work = _name(key)
    if reached:
        return Edit(called("{state}: {work}", state=state, work=work), changed)
    return Edit(called("not {state} yet: {work}", state=state, work=work), changed)


def tacky(book: Book, key: PassKey, now: int, state: State = State.TACK_FREE) -> Edit:
    """Note that a film is still tacky; its remaining time is reckoned anew from that.

    Raises
    ------
    Refused
        If nothing was laid by that pass yet.
    """
    seen = looked(book, key, now, state, reached=False)
    return _told(
        seen.book, key, now, Event.TACKY, called("not {state} yet", state=state), seen.name
    )


def repair(
    book: Book,
    key: PassKey,
    now: int,
    kind: Repair,
    event: Event,
    places: Collection[str] = (),
    text: str = "",
) -> Edit:
    """Put in the steps that mend what was dropped or is disliked.

    Work of the pass that is under way ends with it.

    Raises
    ------
    Refused
        If nothing was done there, or the repair does not fit what lies there.
    """
    allowed = (Event.DROPPED, Event.DISLIKED)
    demand(event in allowed, "event", message("must be one of {remedies}", remedies=row(allowed)))
    entry = log_entries.entry_of(book, key)
    if entry is not None and entry.end is None:
        book = logbook.finish(book, key, now).book
    after = repaired(book, key, kind, places)
    done: str = kind.told
    if places:
        done = called("{word} ({places})", word=kind.told, places=", ".join(places))
    said = row((word for word in (text.strip(), done) if word), "; ")
    return _told(
        after, key, now, event, said, called("{word}: {work}", word=kind.told, work=_name(key))
    )


def redo(book: Book, key: PassKey, now: int, text: str = "") -> Edit:
    """Lay a coat once more; see `repair`."""
    return repair(book, key, now, Repair.AGAIN, Event.DISLIKED, text=text)


def remedy(book: Book, missed: Missed, choice: Remedy, now: int) -> Edit:
    """Do what must be done now that a window has closed.

    Raises
    ------
    Refused
        If that is none of its remedies.
    """
    after = remedied(book, missed, choice)
    name = called("{word}: {work}", word=told(choice.value), work=_name(missed.key))
    return _told(after, missed.key, now, Event.MISSED, choice.value, name)


def ran_out(
    book: Book, key: PassKey, now: int, coating: str, done_places: Collection[str] = ()
) -> Edit:
    """Note that a bottle is empty; what the pass has not covered becomes a step of its own.

    ``coating`` is the bottle, or a mix, of which the film-forming bottle is
    meant.  Where nothing is covered yet, the pass stays as it is.

    Raises
    ------
    Refused
        If there is no such coating.
    """
    try:
        bottle = book.coating(coating).name
    except KeyError:
        known = [coating.name for coating in book.coatings]
        raise Refused("coating", unknown("coating", coating, known)) from None
    after = book
    if done_places:
        after = logbook.split(book, key, done_places, now).book
    at = _moment(book, now)
    stock = tuple(
        replace(coating, in_stock_ml=0.0, counted=at) if coating.name == bottle else coating
        for coating in after.coatings
    )
    after = replace(after, coatings=stock)
    return _told(after, key, now, Event.RAN_OUT, bottle, called("ran out: {bottle}", bottle=bottle))


def ran_out_advice(book: Book, coating: str, now: int) -> tuple[str, ...]:
    """Return what may serve instead of an empty bottle: leftovers of it, else a new bottle."""
    bottle = book.coating(coating)
    at = _moment(book, now)
    found = [
        called(
            "leftover mix {name}: {ml:g} ml, made {made:%Y-%m-%d}",
            name=leftover.name,
            ml=leftover.ml,
            made=leftover.made,
        )
        for leftover in book.supplies.leftovers
        if any(portion.coating == bottle.name for portion in leftover.portions)
        and at <= leftover.made + timedelta(days=leftover.keeps_days)
    ]
    return (
        *found,
        called(
            "buy {bottle} ({bottle_ml:g} ml a bottle)",
            bottle=bottle.name,
            bottle_ml=bottle.bottle_ml,
        ),
    )


def stop(book: Book, now: int) -> Edit:
    """End the stretch that runs, for tonight.

    Raises
    ------
    Refused
        If there is no bench time now.
    """
    demand(
        calendar_of(book.bench_time).stretch_at(now) is not None,
        "now",
        "is no bench time; there is nothing to stop",
    )
    ended = edits.ended_at(book.bench_time, now)
    return _told_all(
        replace(book, bench_time=ended),
        now,
        Event.STOPPED,
        called("stopped for tonight"),
        called("stopped for tonight"),
    )


def evening_over(book: Book, now: int) -> Edit:
    """Say that the evening is over, where its bench time has ended already."""
    told = called("stopped for tonight")
    return _told_all(book, now, Event.STOPPED, told, told)


def longer(book: Book, now: int, minutes: int) -> Edit:
    """Make the stretch that runs so much longer, or begin one now [min].

    Raises
    ------
    Refused
        If that makes it longer than a day.
    """
    return edits.minutes_more(book, now, minutes)


def lost(book: Book, on: date) -> Edit:
    """Be away on a date after all: no stretch begins then, added ones included."""
    zone = zone_named(book.bench_time.zone)
    away = edits.skip_date(book, on)
    extra = tuple(
        extra for extra in book.bench_time.extra if extra.start.astimezone(zone).date() != on
    )
    bench_time = replace(away.book.bench_time, extra=extra)
    return Edit(called("evening lost: {on}", on=on), replace(away.book, bench_time=bench_time))


def note(book: Book, now: int, text: str, key: PassKey | None = None) -> Edit:
    """Write a line into the diary, about a step or about the evening.

    Raises
    ------
    Refused
        If it is empty.
    """
    demand(bool(text.strip()), "text", "is empty; write something")
    if key is None:
        return _told_all(book, now, Event.NOTE, text.strip(), "note")
    log_entries.step_of(book, key)
    return _told(book, key, now, Event.NOTE, text.strip(), called("note: {work}", work=_name(key)))


def seen(book: Book, key: PassKey, now: int, text: str = "") -> Edit:
    """Note that somebody had the look that a step asks for, and what was to be seen."""
    log_entries.step_of(book, key)
    told = text.strip() or called("looked at, as it should be")
    return _told(book, key, now, Event.NOTE, told, called("looked at: {work}", work=_name(key)))


def _moment(book: Book, now: int) -> datetime:
    return moment_of(now, zone_named(book.bench_time.zone))


def _name(key: PassKey) -> str:
    if key.coat > 1:
        return called("{step} coat {coat}, {model}", step=key.step, coat=key.coat, model=key.model)
    return f"{key.step}, {key.model}"


def _told(book: Book, key: PassKey, now: int, event: Event, text: str, name: str) -> Edit:
    line = Happened(
        at=_moment(book, now), event=event, model=key.model, step=key.step, text=text[:2000]
    )

    def with_line(old: Project) -> Project:
        return replace(old, diary=(*old.diary, line))

    return Edit(name, with_project(book, key.project, with_line))


def _told_all(book: Book, now: int, event: Event, text: str, name: str) -> Edit:
    """Write a line about the evening itself, into the diary of every project that is planned."""
    line = Happened(at=_moment(book, now), event=event, text=text[:2000])

    def with_line(old: Project) -> Project:
        return replace(old, diary=(*old.diary, line)) if old.active else old

    return Edit(name, with_projects(book, with_line))
