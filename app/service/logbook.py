"""The logbook: what was begun, done and left, noted as it happens and corrected afterwards.

An edit that changes nothing but logs is journalled as a fact: the ordinary
undo passes over it, and taking it back is an edit of its own.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace

from app.service.edits import Edit
from planner.bench import calendar_of
from planner.evening import film_brake, log_entries
from planner.evening.log_entries import entry_of, knows
from planner.evening.out_of_order import as_done
from planner.evening.split_steps import parted, places_of
from planner.quantity import planned_use
from planner.schedule.cups_at_start import HeldCoating, left_in_cups
from planner.values.book import Book
from planner.values.gear import Cleaned
from planner.values.lookup import project_of
from planner.values.message import called, message, told
from planner.values.moment import minute_of, moment_of, zone_named
from planner.values.plan import PassKey, Plan
from planner.values.plausible_dates import just_told
from planner.values.project import Logged, Used
from planner.values.refusal import Refused, demand, demand_known
from planner.values.step import Tool

__all__ = ["entry_of", "knows"]


@dataclass(frozen=True)
class LogLine:
    """One entry of the logbook, with what its step is called."""

    key: PassKey
    fact: Logged
    title: str


def entries(book: Book) -> tuple[LogLine, ...]:
    """Return every entry of every project, the newest first."""
    found = [
        LogLine(
            log_entries.key_of(project.name, fact),
            fact,
            titles.get((fact.model, fact.step), fact.step),
        )
        for project in book.projects
        for titles in [
            {(m.name, s.id): s.title or s.id for m in project.models for s in m.steps},
        ]
        for fact in project.log
    ]
    return tuple(sorted(found, key=lambda line: (line.fact.start, line.key), reverse=True))


def planned_minutes(book: Book, plan: Plan | None, key: PassKey) -> int:
    """Return the attended minutes of a pass, as planned or else as its step says [min]."""
    placed = plan.placement(key) if plan else None
    if placed is not None and not placed.logged:
        return sum(piece.minutes for piece in placed.pieces)
    model, step = log_entries.model_of(book, key), log_entries.step_of(book, key)
    here = places_of(model, step, key.coat)
    colours = {
        application.coating for application in step.applications if application.coats >= key.coat
    }
    return step.minutes.of(len({place.partition("/")[0] for place in here}), len(colours))


def usual_airbrush(book: Book, key: PassKey, plan: Plan | None = None) -> str:
    """Return with which airbrush a pass is sprayed: as planned, or the only one; "" if unknown."""
    if log_entries.step_of(book, key).tool is not Tool.AIRBRUSH:
        return ""
    placed = plan.placement(key) if plan else None
    if placed is not None and placed.airbrush:
        return placed.airbrush
    own = book.gear.airbrushes
    return own[0].name if len(own) == 1 else ""


def write(book: Book, project: str, fact: Logged) -> Edit:
    """Note a fact; one that is under way may be ended by it.

    A step that was not due yet moves to where it was done, so that what lies
    below what stays true; `app.service.bench_events.out_of_order` says, asked
    beforehand, what that does to the order of coats.  What met a film that was
    not ready, or after its window, is marked so in the diary.

    Raises
    ------
    Refused
        If that coat is done already, there is no such coat, or the one
        before it is not begun.
    """
    begun = [
        fact.coat for fact in log_entries.begun(project_of(book, project), fact.model, fact.step)
    ]
    before = max([0, *(coat for coat in begun if coat < fact.coat)])
    demand(
        fact.coat == before + 1,
        "coat",
        message(
            'is {coat}, but coat {before} of "{step}" is not begun; log that first',
            coat=fact.coat,
            before=before + 1,
            step=fact.step,
        ),
    )
    word = told("begun" if fact.end is None else "done")
    name = called(
        "{word}: {project}/{model}/{step}#{coat}",
        word=word,
        project=project,
        model=fact.model,
        step=fact.step,
        coat=fact.coat,
    )
    key = log_entries.key_of(project, fact)
    met = film_brake.met(book, key, fact)
    noted = film_brake.marked(log_entries.written(book, project, fact), key, fact.start, met)
    return Edit(name, as_done(noted, key))


def begin(
    book: Book,
    key: PassKey,
    now: int,
    planned: int | None = None,
    *,
    airbrush: str | None = None,
) -> Edit:
    """Note that a pass is begun now.

    Absent, ``airbrush`` is the only one there is, where it is sprayed.

    Raises
    ------
    Refused
        If it stands in the logbook already.
    """
    log_entries.step_of(book, key)
    known = entry_of(book, key)
    demand(
        known is None,
        "log",
        message('"{step}" coat {coat} is already logged', step=key.step, coat=key.coat),
    )
    return write(book, key.project, _begun(book, key, now, planned, airbrush))


def finish(
    book: Book,
    key: PassKey,
    now: int,
    minutes: int | None = None,
    planned: int | None = None,
    *,
    used: Iterable[Used] = (),
    air: tuple[float, float] | None = None,
    note: str = "",
    airbrush: str | None = None,
) -> Edit:
    """Note that a pass is done now.

    Parameters
    ----------
    minutes
        Minutes of work; it was begun so long ago where no beginning was
        noted.  Absent, the time since the beginning, or what was planned [min].
    planned
        Minutes as the plan had them; absent, as its step says [min].
    used
        What was taken from which bottle.
    air
        What the gauge showed: temperature and humidity [°C], [% RH].
    airbrush
        What it was sprayed with; absent, as at its beginning, or the only one.

    Raises
    ------
    Refused
        If it is done already, or there is no such coat.
    """
    log_entries.step_of(book, key)
    known = entry_of(book, key)
    planned = planned or planned_minutes(book, None, key)
    if known is None:
        known = _begun(book, key, now - (minutes or planned), planned, airbrush)
    end = max(now, minute_of(known.start, up=False) + 1)
    worked = minutes or end - minute_of(known.start, up=False)
    done = replace(
        known,
        end=moment_of(end, zone_named(book.bench_time.zone)),
        minutes=worked,
        planned=known.planned or planned,
        used=tuple(used) or known.used,
        temperature_c=air[0] if air else known.temperature_c,
        humidity_pct=air[1] if air else known.humidity_pct,
        note=_longer(known.note, note),
        airbrush=airbrush or known.airbrush,
    )
    return write(book, key.project, done)


def tick(
    book: Book,
    key: PassKey,
    place: str,
    now: int,
    *,
    on: bool,
    planned: int | None = None,
    airbrush: str | None = None,
) -> Edit:
    """Tick a place off, or not after all; the first tick begins the pass.

    Raises
    ------
    Refused
        If the pass is done already.
    """
    log_entries.step_of(book, key)
    known = entry_of(book, key) or _begun(book, key, now, planned, airbrush)
    others = tuple(name for name in known.ticked if name != place)
    made = write(book, key.project, replace(known, ticked=(*others, place) if on else others))
    word = told("ticked" if on else "not ticked")
    return Edit(
        called(
            "{word}: {model}/{step}, {place}",
            word=word,
            model=key.model,
            step=key.step,
            place=place,
        ),
        made.book,
    )


def correct(book: Book, key: PassKey, fact: Logged, now: int | None = None) -> Edit:
    """Correct an entry afterwards: any field but what it is about.

    With ``now``, times that it gets must lie within reach of it.

    Raises
    ------
    Refused
        If nothing is logged of that coat, ``fact`` is about another, or a
        year is mistyped.
    """
    same = log_entries.key_of(key.project, fact) == key
    demand(same, "log", "an entry stays with its coat; take it back and log the other")
    old = entry_of(book, key)
    for name in ("start", "end"):
        moment = getattr(fact, name)
        if now is not None and moment is not None and moment != getattr(old, name, None):
            just_told(minute_of(moment), now, name)
    name = called(
        "logbook corrected: {model}/{step}#{coat}", model=key.model, step=key.step, coat=key.coat
    )
    return Edit(name, log_entries.corrected(book, key.project, fact))


def annotate(
    book: Book, key: PassKey, *, note: str | None = None, photo: str | None = None
) -> Edit:
    """Add a line of note, or a photo that is kept with the book, to an entry.

    Raises
    ------
    Refused
        If nothing is logged of that coat.
    """
    known = entry_of(book, key)
    if known is None:
        raise Refused(
            "log",
            message('nothing is logged of "{step}" coat {coat}', step=key.step, coat=key.coat),
        )
    photos = dict.fromkeys((*known.photos, *([photo] if photo else [])))
    fact = replace(known, note=_longer(known.note, note or ""), photos=tuple(photos))
    word = told("photo" if photo else "note")
    return Edit(
        called("{word}: {model}/{step}", word=word, model=key.model, step=key.step),
        correct(book, key, fact).book,
    )


def take_back(book: Book, key: PassKey) -> Edit:
    """Take an entry back: it never happened.

    Raises
    ------
    Refused
        If nothing is logged of that coat.
    """
    name = called(
        "taken back: {project}/{model}/{step}#{coat}",
        project=key.project,
        model=key.model,
        step=key.step,
        coat=key.coat,
    )
    return Edit(name, log_entries.without(book, key))


def split(
    book: Book,
    key: PassKey,
    done_places: Collection[str],
    now: int,
    planned: int | None = None,
    *,
    minutes: int | None = None,
    used: Iterable[Used] | None = None,
    air: tuple[float, float] | None = None,
    note: str = "",
    airbrush: str | None = None,
) -> Edit:
    """Note that a pass is done on some of its places; what is left becomes a step of its own.

    Absent, ``planned`` and ``used`` are what is reckoned for those places;
    for the rest see `finish`.

    Raises
    ------
    Refused
        If nothing of it is done, or all of it.
    """
    known = entry_of(book, key)
    demand(
        known is None or known.end is None,
        "log",
        message('"{step}" is done already', step=key.step),
    )
    made = parted(book, key, done_places)
    here = places_of(
        log_entries.model_of(made.book, key), log_entries.step_of(made.book, key), key.coat
    )
    if known is not None:
        ticked = tuple(place for place in known.ticked if place in here)
        fewer = replace(known, ticked=ticked)
        made = replace(made, book=log_entries.corrected(made.book, key.project, fewer))
    share = planned_minutes(made.book, None, key) if planned is None else planned
    takes = usual_use(made.book, key) if used is None else used
    done = finish(
        made.book, key, now, minutes, share, used=takes, air=air, note=note, airbrush=airbrush
    )
    return Edit(called("partly done: {model}/{step}", model=key.model, step=key.step), done.book)


def usual_use(book: Book, key: PassKey, plan: Plan | None = None) -> tuple[Used, ...]:
    """Return what a pass is reckoned to use of each bottle, to be offered to the logbook.

    With the plan in which it is still ahead, its part of what stays in the
    cup is counted too.
    """
    log_entries.step_of(book, key)
    return planned_use(book, plan, key)


def cleaned(book: Book, airbrush: str, now: int) -> Edit:
    """Note that an airbrush was cleaned by now: its cup is empty.

    Raises
    ------
    Refused
        If there is none of that name.
    """
    demand_known(
        airbrush, [airbrush.name for airbrush in book.gear.airbrushes], "airbrush", "airbrush"
    )
    fact = Cleaned(airbrush=airbrush, at=moment_of(now, zone_named(book.bench_time.zone)))
    name = called("cleaned: {airbrush}", airbrush=airbrush)
    return Edit(name, replace(book, cleaned=(*book.cleaned, fact)))


def not_cleaned(book: Book, fact: Cleaned) -> Edit:
    """Take a cleaning back: it never happened.

    Raises
    ------
    Refused
        If it does not stand in the logbook.
    """
    known = list(book.cleaned)
    demand(fact in known, "log", "no such cleaning is logged")
    known.remove(fact)
    name = called("taken back: cleaning of {airbrush}", airbrush=fact.airbrush)
    return Edit(name, replace(book, cleaned=tuple(known)))


def cups_now(book: Book, now: int) -> dict[str, HeldCoating]:
    """Return what each airbrush holds by the logbook, as a plan made now takes it to be."""
    return left_in_cups(book, calendar_of(book.bench_time), now)


def _begun(book: Book, key: PassKey, now: int, planned: int | None, airbrush: str | None) -> Logged:
    return Logged(
        model=key.model,
        step=key.step,
        coat=key.coat,
        start=moment_of(now, zone_named(book.bench_time.zone)),
        planned=planned,
        airbrush=usual_airbrush(book, key) if airbrush is None else airbrush,
    )


def _longer(note: str, more: str) -> str:
    return "\n".join(line for line in (note, more.strip()) if line)
