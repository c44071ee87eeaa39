"""What a model looks like now, and how far it is: colours for an outline, stages for a ribbon.

Plain values off the book and its logbook; no Qt and no plan.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache

from app.service.starter_stock import swatch_of
from planner.values.book import Book
from planner.values.lookup import model_named, project_of
from planner.values.model import Model, ModelKind
from planner.values.project import Logged
from planner.values.step import Stage, Step

HIDES = frozenset({Stage.PRIME, Stage.BASE, Stage.CAMO, Stage.DETAIL})
"""Stages whose coat is what one sees of a place; what follows them only tints it."""
OTHERS = 4
"""Areas of an outline that take the places without a name of their own, in their order."""
WORDS = {
    "tyres": ("tyre", "track", "link", "reifen", "kette"),
    "running": ("wheel", "hub", "running gear", "bogie", "roller", "räder", "lauf", "fahrwerk"),
    "roof": ("roof", "dach"),
    "lower": (
        "chassis",
        "frame",
        "below",
        "bottom",
        "floor",
        "plinth",
        "rahmen",
        "unten",
        "sockel",
    ),
}
"""Words in the name of a part or place by which it takes a certain area of an outline."""
SMALL = ("glue", "stub", "seat", "pin", "kleb")
"""Words of places that nobody sees, or hardly."""


class StageProgress(StrEnum):
    """How far a step has come."""

    DONE = "done"
    BEGUN = "begun"
    AHEAD = "to come"


@dataclass(frozen=True)
class StageMark:
    """One step in the ribbon of a model; ``swatch`` is "" where it lays nothing."""

    title: str
    swatch: str
    progress: StageProgress


@dataclass(frozen=True)
class Face:
    """A model's kind, the colours of the areas of its outline, "" for bare, and its ribbon.

    ``photo`` is the newest photo in its logbook, "" where there is none.
    """

    kind: ModelKind
    others: tuple[str, ...] = ("",)
    tyres: str = ""
    running: str = ""
    roof: str | None = None
    lower: str | None = None
    ribbon: tuple[StageMark, ...] = ()
    photo: str = ""

    def colour(self, area: str) -> str:
        """Return the swatch of an area: "0" to "3", "tyres", "running", "roof" or "lower"."""
        if area.isdigit():
            return self.others[min(int(area), len(self.others) - 1)]
        found: str | None = getattr(self, area)
        return self.others[0] if found is None else found

    @property
    def done(self) -> int:
        """How many of its steps are done."""
        return sum(mark.progress is StageProgress.DONE for mark in self.ribbon)


def face_of(book: Book, project: str, model: str) -> Face:
    """Return the face of a model as it is by the logbook; `KeyError` or refused if unknown."""
    found = project_of(book, project)
    log = tuple(entry for entry in found.log if entry.model == model)
    return _face(model_named(found, model), log, _Swatches(book))


class _Swatches:
    """The colours of a book, compared by what they depend on so that faces can be kept."""

    def __init__(self, book: Book) -> None:
        self._book = book

    def __call__(self, name: str) -> str:
        return swatch_of(self._book, name)

    def __eq__(self, other: object) -> bool:
        return (
            isinstance(other, _Swatches)
            and other._book.coatings is self._book.coatings
            and other._book.mixes is self._book.mixes
        )

    def __hash__(self) -> int:
        return hash((id(self._book.coatings), id(self._book.mixes)))


@lru_cache(maxsize=512)
def _face(model: Model, log: tuple[Logged, ...], swatches: _Swatches) -> Face:
    coats = _present(model, log, swatches)
    areas: dict[str, str] = {}
    others: list[str] = []
    for place, swatch in coats.items():
        area = _area(place)
        if area is None:
            continue
        if area:
            areas[area] = areas.get(area) or swatch
        elif len(others) < OTHERS:
            others.append(swatch)
    running = areas.get("running", areas.get("tyres", ""))
    return Face(
        kind=model.kind,
        others=tuple(others) or ("",),
        tyres=areas.get("tyres", running),
        running=running,
        roof=areas.get("roof"),
        lower=areas.get("lower"),
        ribbon=tuple(_mark(step, log, swatches) for step in model.steps),
        photo=next((entry.photos[-1] for entry in reversed(log) if entry.photos), ""),
    )


def _area(place: str) -> str | None:
    """Return which area a place takes, "" for the next free one, None for none."""
    told = place.casefold()
    if any(word in told for word in SMALL):
        return None
    return next((area for area, names in WORDS.items() if any(n in told for n in names)), "")


def _present(model: Model, log: tuple[Logged, ...], swatches: _Swatches) -> dict[str, str]:
    """Return the swatch of the topmost hiding coat of every place, "" where there is none."""
    coats = {f"{part.name}/{place.name}": "" for part in model.parts for place in part.places}
    entries: dict[str, list[Logged]] = {}
    for entry in log:
        entries.setdefault(entry.step, []).append(entry)
    for step in model.steps:
        if step.stage not in HIDES or step.id not in entries:
            continue
        begun = entries[step.id]
        whole = any(entry.end is not None for entry in begun)
        ticked = {place for entry in begun for place in entry.ticked}
        for application in step.applications:
            swatch = swatches(application.coating)
            for place in _places(model, application.places):
                if swatch and (whole or place in ticked):
                    coats[place] = swatch
    return coats


def _places(model: Model, references: Iterable[str]) -> Iterable[str]:
    for reference in references:
        yield from model.places(reference)


def _mark(step: Step, log: tuple[Logged, ...], swatches: _Swatches) -> StageMark:
    mine = [entry for entry in log if entry.step == step.id]
    coats = max((application.coats for application in step.applications), default=1)
    ended = sum(entry.end is not None for entry in mine)
    progress = (
        StageProgress.DONE
        if ended >= coats
        else StageProgress.BEGUN
        if mine
        else StageProgress.AHEAD
    )
    first = step.applications[0].coating if step.applications else ""
    return StageMark(step.title or step.stage.value, swatches(first) if first else "", progress)
