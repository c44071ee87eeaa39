"""What a kind of model usually consists of, and how large the full-sized thing is.

One table.  Everything in it is assumed: it makes amounts right to within what
one fills into a cup, from the first minute on, until somebody types or
measures better.  Shares are of the surface of a box around the full-sized
thing, all round: what stands out, inner faces and both sides of a wing make
it more, a slender thing less.  Clear parts go in after the painting and are
left out.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from planner.values.message import Translate
from planner.values.model import Model, ModelKind, Part, Place, RealSize, Side

BODY, ALL_OVER, BELOW = "body", "all over", "below"


@dataclass(frozen=True)
class UsualPlace:
    """A place, its share of the box of the real size, and which way it faces."""

    name: str
    share: float
    side: Side = Side.TOP


@dataclass(frozen=True)
class UsualModel:
    """The usual size of the full-sized thing, and parts by their names with their places."""

    size: RealSize
    parts: tuple[tuple[str, tuple[UsualPlace, ...]], ...]


def _size(length_m: float, width_m: float, height_m: float) -> RealSize:
    return RealSize(length_m=length_m, width_m=width_m, height_m=height_m)


def _body(outside: float, below: float) -> tuple[str, tuple[UsualPlace, ...]]:
    return BODY, (UsualPlace(ALL_OVER, outside), UsualPlace(BELOW, below, Side.UNDER))


def _whole(name: str, share: float) -> tuple[str, tuple[UsualPlace, ...]]:
    return name, (UsualPlace(ALL_OVER, share),)


USUAL: Mapping[ModelKind, UsualModel] = MappingProxyType(
    {
        ModelKind.WHEELED: UsualModel(  # cab, bed inside and out, six wheels of 1 m
            _size(6.5, 2.4, 2.7), (_body(0.65, 0.15), _whole("wheels", 0.19), _whole("tools", 0.01))
        ),
        ModelKind.TRACKED: UsualModel(  # tracks inside and out
            _size(6.5, 3.0, 2.6),
            (
                _body(0.50, 0.14),
                _whole("running gear", 0.15),
                _whole("tracks", 0.25),
                _whole("tools", 0.02),
            ),
        ),
        ModelKind.CAR: UsualModel(  # four wheels of 0.63 m
            _size(4.2, 1.7, 1.4), (_body(0.55, 0.20), _whole("wheels", 0.13))
        ),
        ModelKind.RAIL: UsualModel(
            _size(10.0, 2.8, 3.6), (_body(0.75, 0.15), _whole("running gear", 0.12))
        ),
        ModelKind.BOAT: UsualModel(  # below: under the water line
            _size(15.0, 4.0, 3.5), (_body(0.60, 0.25), _whole("fittings", 0.05))
        ),
        ModelKind.AIRCRAFT: UsualModel(  # a single-engined one; wings and tail from both sides
            _size(9.0, 10.0, 3.0), (_body(0.17, 0.115), _whole("wheels", 0.01))
        ),
        ModelKind.FIGURE: UsualModel(  # standing; clothes and gear included
            _size(0.4, 0.6, 1.75), (("figure", (UsualPlace(ALL_OVER, 0.55),)),)
        ),
        ModelKind.BUILDING: UsualModel(  # a house of two floors; no floor is painted
            _size(8.0, 6.0, 6.0), (_whole(BODY, 0.60), _whole("roof", 0.25))
        ),
    }
)


def usual_names() -> tuple[str, ...]:
    """Return every name of a part or place in the table, each once."""
    names = [BODY, ALL_OVER]
    for usual in USUAL.values():
        for part, places in usual.parts:
            names += [part, *(place.name for place in places)]
    return tuple(dict.fromkeys(names))


def usual_parts(
    kind: ModelKind, translate: Translate = str, *, holder: str = ""
) -> tuple[Part, ...]:
    """Return the parts that a kind of model usually has; one of one place where it is of no kind.

    ``translate`` names them; they are held by ``holder``.
    """
    usual = USUAL.get(kind)
    if usual is None:
        place = Place(name=translate(ALL_OVER))
        return (Part(name=translate(BODY), places=(place,), holder=holder),)
    return tuple(
        Part(
            name=translate(name),
            places=tuple(
                Place(name=translate(place.name), side=place.side, share=place.share)
                for place in places
            ),
            holder=holder,
        )
        for name, places in usual.parts
    )


def size_of(model: Model) -> RealSize | None:
    """Return the size of the full-sized thing: as typed, else the usual one of its kind."""
    if model.real_size is not None:
        return model.real_size
    usual = USUAL.get(model.kind)
    return usual.size if usual else None
