"""A word in time: spray one first, rest after two failed tries, look for silvering later."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from planner.air import Advisory, Fitness, fitness, laid_in, step_advice
from planner.cure import Cure
from planner.evening.log_entries import entry_of, model_of, step_of
from planner.evening.split_steps import places_of
from planner.tonight import WorkRow
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.lookup import project_of
from planner.values.moment import minute_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Event
from planner.values.step import Tool

JUDGED_AFTER = 60  # "wait an hour, then the batch": common practice, no source [min]
FAILED_TRIES = 2  # "after two failed tries pause 24 h": common practice, no source
REST = 1440  # see above [min]
SILVERING_SHOWS = (2 * 1440, 14 * 1440)  # "sometimes weeks later": common practice [min]
SPRAYED = frozenset({Tool.AIRBRUSH, Tool.CAN})


@dataclass(frozen=True)
class OneFirst:
    """Spray one vehicle and judge it at ``judge_at``, before the others."""

    first: PassKey
    others: tuple[PassKey, ...]
    judge_at: int
    reasons: tuple[Advisory, ...]


def one_first(
    book: Book, keys: Iterable[PassKey], now: int, *, cure: Cure | None = None
) -> OneFirst | None:
    """Return whether the air asks for one vehicle first, of several that take the same coat.

    ``keys`` are sprayed in this order; passes by hand are left out.  None
    where the air is good, or only one is sprayed.
    """
    sprayed = [key for key in keys if step_of(book, key).tool in SPRAYED]
    models = list(dict.fromkeys((key.project, key.model) for key in sprayed))
    if len(models) < 2:
        return None
    cure = cure or Cure(book.room, zone_named(book.bench_time.zone))
    step = step_of(book, sprayed[0])
    found: dict[Advisory, None] = {}
    for name in dict.fromkeys(application.coating for application in step.applications):
        air = cure.air(laid_in(book.room, step.tool).name).at(now)
        advice = step_advice(step, book.coating(name), air)
        found.update(dict.fromkeys(advice))
    if fitness(found) is Fitness.GO:
        return None
    others = tuple(key for key in sprayed if (key.project, key.model) != models[0])
    return OneFirst(sprayed[0], others, now + JUDGED_AFTER, tuple(found))


@dataclass(frozen=True)
class InAir:
    """What speaks against laying a coating in the air that it meets at ``at``, worst first."""

    at: int
    coating: str
    reasons: tuple[Advisory, ...]


def in_air(book: Book, rows: Iterable[WorkRow], *, cure: Cure | None = None) -> tuple[InAir, ...]:
    """Return of each coating that rows lay what the air speaks against it, told once."""
    cure = cure or Cure(book.room, zone_named(book.bench_time.zone))
    found: dict[tuple[str, frozenset[str]], InAir] = {}
    for row in rows:
        step = step_of(book, row.key)
        air = cure.air(laid_in(book.room, step.tool).name).at(row.start)
        for coat in row.coats:
            reasons = step_advice(step, book.coating(coat.coating), air)
            if reasons:
                told = (coat.coating, frozenset(reason.source for reason in reasons))
                found.setdefault(told, InAir(row.start, coat.coating, reasons))
    return tuple(found.values())


@dataclass(frozen=True)
class RestAdvice:
    """Two tries on the same places have failed: leave them alone until then."""

    until: int
    tries: int
    places: tuple[str, ...]


def rest(book: Book, key: PassKey, now: int) -> RestAdvice | None:
    """Return until when the places of a step should be left alone, after tries that failed.

    A try has failed where the diary says that its step was dropped or
    disliked.  The rest counts from the last of them.
    """
    model = model_of(book, key)
    mine = set(places_of(model, step_of(book, key), key.coat))
    by_id = {step.id: step for step in model.steps}
    failed = []
    for line in project_of(book, key.project).diary:
        step = by_id.get(line.step)
        if line.model != key.model or line.event not in (Event.DROPPED, Event.DISLIKED):
            continue
        if step is not None and mine & set(places_of(model, step)):
            failed.append((minute_of(line.at), mine & set(places_of(model, step))))
    if len(failed) < FAILED_TRIES:
        return None
    until = max(at for at, _ in failed) + REST
    if until <= now:
        return None
    touched = {place for _, places in failed for place in places}
    return RestAdvice(until, len(failed), tuple(sorted(touched)))


@dataclass(frozen=True)
class LaterLook:
    """Decals that should be looked at again: silvery shine may show days later."""

    key: PassKey
    places: tuple[str, ...]
    since: int

    @property
    def shows(self) -> int:
        """The first minute at which a look is worth while."""
        return self.since + SILVERING_SHOWS[0]


def silvering(book: Book, now: int) -> tuple[LaterLook, ...]:
    """Return decals laid between two days and two weeks ago, the oldest first."""
    soonest, latest = SILVERING_SHOWS
    found = []
    for project in book.projects:
        for model in project.models if project.active else ():
            for step in model.steps:
                names = [application.coating for application in step.applications]
                if not any(book.coating(name).family is Family.DECAL for name in names):
                    continue
                key = PassKey(project.name, model.name, step.id)
                entry = entry_of(book, key)
                if entry is None or entry.end is None:
                    continue
                at = minute_of(entry.end)
                if at + soonest <= now <= at + latest:
                    found.append(LaterLook(key, places_of(model, step), at))
    return tuple(sorted(found, key=lambda later_look: (later_look.since, later_look.key)))
