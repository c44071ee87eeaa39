"""Decals drawn over relief by softening fluid: what lets them pull back.

A softened decal is stretched over rivets and edges and holds only once it
has dried there.  A strong solvent softens it anew, so that it pulls back,
wrinkles or cracks: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import Moment
from planner.layers.finding import Finding, Scene
from planner.layers.overcoat_rules import clear_before
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.solvent_strength import ETHER, strength_of
from planner.values.coating import Family
from planner.values.message import message
from planner.values.step import Role, Stage


def stretched_decals(scene: Scene) -> Iterator[Finding]:
    """Yield strong solvents laid right on decals that softening fluid has stretched."""
    pressed: set[str] = set()
    for moment in scene.moments:
        if moment.step.stage is Stage.PRESS:
            pressed.update(place for place in moment.first.places if _decal(moment, place))
            continue
        struck = [
            place
            for place, name in moment.laid.items()
            if place in pressed and _decal(moment, place)
            if strength_of(scene.book, name) >= ETHER
        ]
        pressed.difference_update(moment.laid)
        if struck:
            yield scene.found(
                message("strong solvent on stretched decals"),
                LayerVerdict.ADVICE,
                moment,
                struck,
                message(
                    "the decals were softened and stretched over the relief; a strong solvent "
                    "lets them pull back and crack. A waterborne clear holds them first, or the "
                    "first passes are mist"
                ),
                clear_before(scene, moment, tuple(struck), Role.SEAL),
            )


def _decal(moment: Moment, place: str) -> bool:
    stack = moment.stack(place)
    return bool(stack) and stack[-1].family is Family.DECAL
