"""What was really painted, planned or not: it becomes steps of its models, done in the logbook."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import timedelta

from planner.evening import film_brake
from planner.evening.log_entries import begun, model_of, step_of, written
from planner.evening.out_of_order import as_done
from planner.evening.split_steps import fresh, parted, places_of, split_after, touched
from planner.quantity import planned_use
from planner.values.book import Book
from planner.values.book_changes import with_model_steps
from planner.values.coating import Coating, Family
from planner.values.coating_names import CLEAR_WORDS, named_so
from planner.values.keys import ModelKey
from planner.values.lookup import project_of
from planner.values.message import called, message, titled, within
from planner.values.model import Model
from planner.values.moment import moment_of, zone_named
from planner.values.plan import PassKey
from planner.values.project import Logged, Used
from planner.values.refusal import demand, demand_known
from planner.values.step import Application, Minutes, Stage, Step, Tool

PRIMER_WORDS = ("primer", "grundierung", "surfacer", "filler")
OF_FAMILY = {
    Family.PIGMENT: Stage.PIGMENT,
    Family.FIXER: Stage.PIGMENT,
    Family.GRAPHITE: Stage.DRY_BRUSH,
    Family.DECAL: Stage.DECAL,
    Family.CHIPPING_FLUID: Stage.CHIP_FLUID,
    Family.ARTISTS_OIL: Stage.WEATHER,
    Family.ALCOHOL_INK: Stage.FILTER,
}
"""What is usually done with a kind of coating where nothing else is told: common practice."""


@dataclass(frozen=True)
class PaintedModel:
    """What was painted of one model, as "part/place"."""

    project: str
    model: str
    places: tuple[str, ...]


@dataclass(frozen=True)
class OtherWork:
    """What was really done: one coat of a coating or mix on some models.

    ``stage`` and ``tool`` are as told; None is what is usual for it.
    ``minutes`` are for all of it together, None as usual [min]; ``ml`` is
    what was used in all, None as reckoned.
    """

    coating: str
    on: tuple[PaintedModel, ...]
    stage: Stage | None = None
    tool: Tool | None = None
    minutes: int | None = None
    ml: float | None = None


USUAL_MINUTES = Minutes(fixed=3, per_part=4)  # of a coat that no step tells of: assumed


def noted(book: Book, work: OtherWork, end: int) -> tuple[Book, tuple[PassKey, ...]]:
    """Return the book in which it was done by ``end``, and the passes that it became.

    Where the next coat of a step is just that, its pass is done, or the part
    of it that was painted.  Else a step comes in, on top of all that is
    done on those places and below what is still to come.

    Raises
    ------
    Refused
        If the coating, a model or a place is not there, or nothing is named.
    """
    names = [*(each.name for each in book.coatings), *(mix.name for mix in book.mixes)]
    demand_known(work.coating, names, "coating", "coating")
    demand(bool(work.on), "on", message("name at least one model that was painted"))
    keys: list[PassKey] = []
    for painted in work.on:
        book, key = _pass_of(book, work, painted)
        keys.append(key)
    lengths = _lengths(book, keys, work.minutes)
    start = end - sum(lengths)
    for key, length in zip(keys, lengths, strict=True):
        used = _used(book, key, work, keys)
        book = _done(book, key, start, start + length, used)
        start += length
    return book, tuple(keys)


def _pass_of(book: Book, work: OtherWork, painted: PaintedModel) -> tuple[Book, PassKey]:
    """Return the pass that the work on one model is, put in where none was planned."""
    spot = PassKey(painted.project, painted.model, "")
    model = model_of(book, spot)
    wanted = frozenset(place for name in painted.places for place in model.places(name))
    demand(bool(wanted), "on", message("name what of {model} was painted", model=painted.model))
    planned = _planned(book, spot, work, wanted)
    if planned is None:
        return _put_in(book, spot, work, wanted)
    step = step_of(book, planned)
    if wanted != frozenset(places_of(model, step, planned.coat)):
        book = parted(book, planned, tuple(sorted(wanted))).book
    return book, planned


def _planned(book: Book, spot: PassKey, work: OtherWork, wanted: frozenset[str]) -> PassKey | None:
    """Return the pass that is next on its places and lays just that, at least there."""
    project, model = project_of(book, spot.project), model_of(book, spot)
    met: set[str] = set()
    touching = touched(project, model)
    for step in model.steps:
        logged = {fact.coat for fact in begun(project, model.name, step.id)}
        coat = max(logged, default=0) + 1
        if coat > step.coats:
            continue
        laid = {
            place: application.coating
            for application in step.applications
            if application.coats >= coat
            for name in application.places
            for place in model.places(name)
        }
        under_way = any(fact.end is None for fact in begun(project, model.name, step.id))
        if (
            wanted <= set(laid)
            and {laid[place] for place in wanted} == {work.coating}
            and not wanted & met
            and not under_way
            and work.stage in (None, step.stage)
            and work.tool in (None, step.tool)
        ):
            return spot._replace(step=step.id, coat=coat)
        met |= touching[step.id]
    return None


def _put_in(
    book: Book, spot: PassKey, work: OtherWork, wanted: frozenset[str]
) -> tuple[Book, PassKey]:
    """Put a step in: above what is begun on its places, below what is still to come there."""
    project = project_of(book, spot.project)
    for step in model_of(book, spot).steps:
        facts = begun(project, spot.model, step.id)
        here = set(places_of(model_of(book, spot), step))
        if facts and here & wanted and len(facts) < step.coats:
            book, _ = split_after(book, spot._replace(step=step.id, coat=1))
    model = model_of(book, spot)
    touching = touched(project_of(book, spot.project), model)
    logged = {fact.step for fact in project.log if fact.model == spot.model}
    mine = [at for at, step in enumerate(model.steps) if touching[step.id] & wanted]
    done = [at for at in mine if model.steps[at].id in logged]
    ahead = [at for at in mine if model.steps[at].id not in logged]
    at = done[-1] + 1 if done else (ahead[0] if ahead else len(model.steps))
    step = _step(book, model, work, wanted)
    steps = (*model.steps[:at], step, *model.steps[at:])
    changed = with_model_steps(book, ModelKey(spot.project, spot.model), steps)
    return changed, spot._replace(step=step.id, coat=1)


def _step(book: Book, model: Model, work: OtherWork, wanted: frozenset[str]) -> Step:
    coating = book.coating(work.coating)
    like = _like(book, work)
    stage = work.stage or (like.stage if like else usual_stage(coating, work.tool))
    tool = work.tool or (like.tool if like and work.stage in (None, like.stage) else Tool.BRUSH)
    places = tuple(
        f"{part.name}/{place.name}"
        for part in model.parts
        for place in part.places
        if f"{part.name}/{place.name}" in wanted
    )
    name = re.sub(r"[^a-z0-9]+", "-", f"{stage.value} {work.coating}".lower()).strip("-")
    return Step(
        id=fresh(model, name[:50].rstrip("-") or "coat"),
        stage=stage,
        title=within(200, titled("{coating}, beside the plan", coating=work.coating)),
        applications=(Application(places=_whole(model, places), coating=work.coating),),
        tool=tool,
        minutes=like.minutes if like else USUAL_MINUTES,
    )


def _whole(model: Model, places: tuple[str, ...]) -> tuple[str, ...]:
    """Name a part where all of its places are meant."""
    found: dict[str, None] = {}
    for place in places:
        part = place.partition("/")[0]
        every = model.places(part)
        found[part if set(every) <= set(places) else place] = None
    return tuple(found)


def _like(book: Book, work: OtherWork) -> Step | None:
    """Return a step anywhere that lays the same in the same way."""
    return next(
        (
            step
            for project in book.projects
            for model in project.models
            for step in model.steps
            if {application.coating for application in step.applications} == {work.coating}
            if work.stage in (None, step.stage) and work.tool in (None, step.tool)
        ),
        None,
    )


def usual_stage(coating: Coating, tool: Tool | None = None) -> Stage:
    """Return what is usually done with a coating."""
    if coating.family in OF_FAMILY:
        return OF_FAMILY[coating.family]
    if named_so(coating, CLEAR_WORDS):
        return Stage.VARNISH
    if named_so(coating, PRIMER_WORDS):
        return Stage.PRIME
    return Stage.BASE if tool in (Tool.AIRBRUSH, Tool.CAN) else Stage.DETAIL


def _lengths(book: Book, keys: Iterable[PassKey], minutes: int | None) -> list[int]:
    usual = []
    for key in keys:
        model, step = model_of(book, key), step_of(book, key)
        parts = {place.partition("/")[0] for place in places_of(model, step, key.coat)}
        usual.append(step.minutes.of(len(parts)))
    if minutes is None:
        return usual
    whole = sum(usual)
    shares = [max(1, round(minutes * each / whole)) for each in usual]
    shares[-1] = max(1, minutes - sum(shares[:-1]))
    return shares


def _used(book: Book, key: PassKey, work: OtherWork, keys: list[PassKey]) -> tuple[Used, ...]:
    reckoned = planned_use(book, None, key)
    if work.ml is None:
        return reckoned
    totals = [sum(used.ml for used in planned_use(book, None, one)) for one in keys]
    mine, whole = sum(used.ml for used in reckoned), sum(totals)
    share = work.ml * (mine / whole if whole else 1 / len(keys))
    if not reckoned:
        mix = book.mix(work.coating)
        return () if mix else (Used(coating=work.coating, ml=share),)
    return tuple(
        replace(used, ml=share * (used.ml / mine if mine else 1 / len(reckoned)))
        for used in reckoned
    )


def _done(book: Book, key: PassKey, start: int, end: int, used: tuple[Used, ...]) -> Book:
    zone = zone_named(book.bench_time.zone)
    step = step_of(book, key)
    own = book.gear.airbrushes
    airbrush = own[0].name if step.tool is Tool.AIRBRUSH and len(own) == 1 else ""
    begin = moment_of(start, zone)
    fact = Logged(
        model=key.model,
        step=key.step,
        coat=key.coat,
        start=begin,
        end=begin + timedelta(minutes=end - start),
        minutes=end - start,
        used=used,
        airbrush=airbrush,
    )
    met = film_brake.met(book, key, fact)
    after = film_brake.marked(written(book, key.project, fact), key, begin, met)
    return as_done(after, key)


def name_of_work(work: OtherWork) -> str:
    """Return what an edit that notes it is called."""
    models = ", ".join(painted.model for painted in work.on)
    return called(
        "done beside the plan: {coating} on {models}", coating=work.coating, models=models
    )
