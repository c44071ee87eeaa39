"""The closing check: what to look at before the light goes out.  No Qt."""

from __future__ import annotations

from dataclasses import dataclass

from app.window import reasons, words
from app.window.picture import Picture
from planner.cautions import cautions_of
from planner.evening.advice import silvering
from planner.evening.films import laid
from planner.values.coating import Family
from planner.values.moment import minute_of
from planner.values.step import Stage

OILS = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL})
CLOSINGS_TOLD = 2
FILMS_TOLD = 4


@dataclass(frozen=True)
class Look:
    """One thing to look at; ``name`` stays the same in every language."""

    name: str
    told: str
    of: str = ""


def looks(picture: Picture, now: int, cups: dict[str, str]) -> tuple[Look, ...]:
    """Return what to look at: wet parts, loose parts, airbrushes, bottles, rags."""
    found: list[Look] = []
    for model, parts in _wet_parts(picture, now).items():
        told = words.tr("Wet, safe under a cover: {parts}").format(parts=words.listed(parts))
        found.append(Look(f"wet {model}", told, model))
    found.append(Look("loose", words.tr("Loose parts are back in their box")))
    for airbrush, coating in sorted(cups.items()):
        told = words.tr("{airbrush} is clean; it held {coating}")
        name = words.capital(airbrush)
        found.append(Look(f"clean {airbrush}", told.format(airbrush=name, coating=coating)))
    found.append(Look("lids", words.tr("Bottles are closed, brushes rinsed")))
    if _oily(picture, now):
        told = words.tr("Oily rags lie flat outdoors, or under water in a closed metal can")
        found.append(Look("rags", told))
    return tuple(found)


def closing_before_next(picture: Picture, now: int) -> list[str]:
    """Return the windows that close before there is bench time again."""
    sheet, zone = picture.sheet, picture.zone
    after = picture.calendar.next_stretch(max(now, sheet.interval.end))
    until = after.interval.start if after else now
    told = []
    for one in sheet.closing[:CLOSINGS_TOLD]:
        if one.closes <= until:
            at = words.closing(one.closes, zone, now)
            told.append(
                words.tr("{work} closes {time}, before the next bench time").format(
                    work=words.capital(reasons.key_name(one.waiting)), time=at
                )
            )
    return told


def nothing_left(picture: Picture, now: int) -> list[str]:
    """Return what to say where no job is left: what dries, and what may be looked at again."""
    sheet, zone = picture.sheet, picture.zone
    if sheet.interval.start > now:
        at = words.when(sheet.interval.start, zone, now)
        return [words.tr("The next bench time begins {time}.").format(time=at)]
    told = []
    for film in sheet.drying_now[:FILMS_TOLD]:
        at = (
            words.tr("never in this air")
            if film.opens is None
            else words.opening(film.opens, zone, now)
        )
        told.append(
            words.tr("{work} dries until {time}").format(
                work=words.capital(reasons.key_name(film.key)), time=at
            )
        )
    told += [
        words.tr("Look for silvering: {work}").format(work=reasons.key_name(look.key))
        for look in silvering(picture.book, now)[:FILMS_TOLD]
    ]
    return told


def _wet_parts(picture: Picture, now: int) -> dict[str, list[str]]:
    """Return the parts with a film that may not be handled yet, by model."""
    found: dict[str, dict[str, None]] = {}
    for (_, model, place), until in laid(picture.book, now, picture.cure).wet.items():
        if until > now:
            found.setdefault(model, {})[place.partition("/")[0]] = None
    return {model: list(parts) for model, parts in found.items()}


def _oily(picture: Picture, now: int) -> bool:
    """Tell whether oil was wiped or brushed in this stretch."""
    since = picture.sheet.interval.start
    for project in picture.book.projects:
        for entry in project.log:
            if not since <= minute_of(entry.start, up=False) <= now:
                continue
            steps = [one for one in project.model(entry.model).steps if one.id == entry.step]
            for step in steps:
                families = {picture.book.coating(one.coating).family for one in step.applications}
                wiped = step.stage is Stage.WIPE and "oil" in " ".join(
                    caution.text for caution in cautions_of(picture.book, step)
                )
                if families & OILS or wiped:
                    return True
    return False
