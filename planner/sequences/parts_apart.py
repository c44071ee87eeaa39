"""Wheels, tracks and tools: painted apart and glued on late, or on the model from the start."""

from __future__ import annotations

from dataclasses import replace

from planner.sequences.references import called_so
from planner.values.message import message
from planner.values.model import Model, Part, Place
from planner.values.refusal import Refused

SMALL = ("wheels", "tracks", "running gear", "tools", "stowage", "fittings")
"""What is usually painted apart, as the built-in sequences and the table of kinds call it."""


def apart(model: Model) -> Model:
    """Return the model with a part of its own for each place that is usually painted apart.

    Raises
    ------
    Refused
        If no part has such a place beside others.
    """
    parts: list[Part] = []
    for part in model.parts:
        small = [place for place in part.places if _small(place.name)]
        rest = tuple(place for place in part.places if place not in small)
        if not rest:
            parts.append(part)
            continue
        parts.append(replace(part, places=rest))
        parts += [_alone(part, place, rest[0].name) for place in small]
    if len(parts) == len(model.parts):
        raise Refused(
            "parts", message("no wheels, tracks or tools of it are places of another part")
        )
    return replace(model, parts=tuple(parts))


def together(model: Model) -> Model:
    """Return the model with such parts as places of its first other one.

    Raises
    ------
    Refused
        If it has none, or one is held or made otherwise.
    """
    small = [part for part in model.parts if _small(part.name)]
    home = next((part for part in model.parts if part not in small), None)
    if not small or home is None:
        raise Refused("parts", message("no wheels, tracks or tools of it are parts of their own"))
    for part in small:
        if _manner(part) != _manner(home):
            mend = message('"{part}" is held or made otherwise; it stays apart', part=part.name)
            raise Refused("parts", mend)
    places = (*home.places, *(place for part in small for place in _on_it(part)))
    united = replace(home, places=places)
    parts = (united if part is home else part for part in model.parts if part not in small)
    return replace(model, parts=tuple(parts))


def _small(name: str) -> bool:
    return any(called_so(name, word) for word in SMALL)


def _manner(part: Part) -> tuple[object, ...]:
    return part.holder, part.material, part.stressed


def _alone(part: Part, place: Place, name: str) -> Part:
    return replace(part, name=place.name, places=(replace(place, name=name),), stands=1)


def _on_it(part: Part) -> tuple[Place, ...]:
    if len(part.places) == 1:
        return (replace(part.places[0], name=part.name),)
    return tuple(replace(place, name=f"{part.name} {place.name}") for place in part.places)
