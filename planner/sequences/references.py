"""Places as a sequence names them, and the places of a model that they mean.

Beside "part" and "part/place" a sequence may say

- "*": every part;
- "*/roof": the place "roof" of every part that has one;
- "* but wheels; tracks": every part but those, or "* but */roof".

A part that a model has not is sought among its places: wheels that were
glued on before the painting are a place of the body.

Names are compared without regard to capitals; those that the built-in
sequences use are known in the other languages of the window, too.  A place
called `GLUE_FACES` stays bare until the join: it is meant only where it is
named.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import replace

from planner.passes import WHOLE_UNIT
from planner.values.model import Model
from planner.values.sequence import EVERY
from planner.values.step import Step

GLUE_FACES = "glue faces"
ALSO_CALLED = {
    "wheels": {"räder"},
    "tracks": {"ketten"},
    "running gear": {"laufwerk", "fahrwerk"},
    "tools": {"werkzeug", "werkzeuge"},
    "stowage": {"zuladung", "gepäck"},
    "base": {"sockel"},
    "fittings": {"beschläge"},
    "glazing": {"verglasung", "scheiben"},
    GLUE_FACES: {"klebeflächen"},
}
"""What people who speak another language of the window call parts and places that the built-in
sequences name; without capitals."""
BUT = f"{EVERY} but "


def every_place(model: Model) -> tuple[str, ...]:
    """Return every "part/place" of a model, in its own order."""
    return tuple(f"{part.name}/{place.name}" for part in model.parts for place in part.places)


def meant(model: Model, references: Iterable[str], *, whole: bool = False) -> frozenset[str]:
    """Return the "part/place" names that references mean; what a model lacks is left out.

    Parameters
    ----------
    whole
        Parts are meant with their glue faces, as for turning and joining.
    """
    return frozenset(
        place for reference in references for place in _meant(model, reference, whole=whole)
    )


def _meant(model: Model, reference: str, *, whole: bool) -> Iterable[str]:
    if reference.startswith(BUT):
        left_out = meant(model, _listed(reference.removeprefix(BUT)), whole=True)
        everything = _meant(model, EVERY, whole=whole)
        return [place for place in everything if place not in left_out]
    part, slash, place = reference.partition("/")
    parts = model.parts
    if part != EVERY:
        known = _called(part, [p.name for p in parts])
        if not known and not slash:
            return _glued_on(model, part)
        parts = tuple(other for other in parts if other.name in known)
    found = []
    for other in parts:
        names = [spot.name for spot in other.places]
        if slash:
            wanted = _called(place, names)
        else:
            wanted = {name for name in names if whole or not _same(name, GLUE_FACES)}
        found += [f"{other.name}/{name}" for name in names if name in wanted]
    return found


def _glued_on(model: Model, name: str) -> list[str]:
    """Return the places that are called as a part would be."""
    return [
        f"{part.name}/{place.name}"
        for part in model.parts
        if len(part.places) > 1
        for place in part.places
        if _same(place.name, name)
    ]


def called_so(text: str, name: str) -> bool:
    """Tell whether a name of a part or place is that one, in any language of the window."""
    return _same(text, name)


def _called(name: str, known: Collection[str]) -> set[str]:
    """Return the known name itself, or those that differ in capitals or language alone."""
    if name in known:
        return {name}
    return {text for text in known if _same(text, name)}


def _same(text: str, name: str) -> bool:
    plain = name.casefold()
    return text.casefold() == plain or text.casefold() in ALSO_CALLED.get(plain, ())


def _listed(text: str) -> list[str]:
    return [name.strip() for name in text.split(";") if name.strip()]


def written(model: Model, places: Collection[str], *, whole: bool = False) -> tuple[str, ...]:
    """Return the shortest references to some places: whole parts, else place by place."""
    found: list[str] = []
    for part in model.parts:
        own = [f"{part.name}/{place.name}" for place in part.places]
        wanted = [name for name in own if name in places]
        if wanted and (len(wanted) == len(own) or whole):
            found.append(part.name)
        else:
            found += wanted
    return tuple(found)


def generalised(model: Model, places: Collection[str], *, whole: bool = False) -> tuple[str, ...]:
    """Return references by which a sequence means just these places, on any like model."""
    everything = meant(model, (EVERY,), whole=whole)
    if everything and everything <= set(places):
        return (EVERY, *sorted(set(places) - everything))
    found: list[str] = []
    for part in model.parts:
        usual = meant(model, (part.name,), whole=whole)
        own = [name for name in every_place(model) if name in places and _of(name) == part.name]
        if usual and usual <= set(own):
            found.append(part.name)
            own = [name for name in own if name not in usual]
        found += own
    return tuple(found)


def _of(place: str) -> str:
    return place.partition("/")[0]


def normal(model: Model, step: Step) -> Step:
    """Return a step of a model with the same places in their shortest writing."""
    whole = step.stage in WHOLE_UNIT
    return replace(
        step,
        applications=tuple(
            replace(application, places=written(model, covered(model, application.places)))
            for application in step.applications
        ),
        touches=written(model, covered(model, step.touches), whole=whole),
    )


def covered(model: Model, references: Iterable[str]) -> frozenset[str]:
    """Return the "part/place" names that references of the model itself cover."""
    return frozenset(place for reference in references for place in model.places(reference))
