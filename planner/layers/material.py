"""What the material of a part forbids."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import Moment
from planner.layers.finding import Finding, Scene
from planner.layers.operation_kinds import WASH_STAGES, dries_hard
from planner.layers.overcoat_rules import primer_before, swap_families
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.solvent_strength import SPIRIT, strength_of
from planner.values.coating import GLUES, Family
from planner.values.message import message
from planner.values.model import Material, Part
from planner.values.step import Stage, Tool

SOFT = frozenset({Material.SOFT, Material.VINYL})


def material(scene: Scene) -> Iterator[Finding]:
    """Yield what soft polymer and stressed styrene cannot bear."""
    for moment in scene.moments:
        laid = _coats(scene, moment)
        soft = [
            place for place, name in laid if _stays_tacky(scene, moment, _part(scene, place), name)
        ]
        if soft:
            yield scene.found(
                message("enamel or spray can on soft polymer"),
                LayerVerdict.NEVER,
                moment,
                soft,
                message(
                    "enamel and sprays from a can stay tacky on soft polymer for weeks, or for ever"
                ),
                swap_families(scene, moment, tuple(soft), Family.WATERBORNE_ACRYLIC),
            )
        stiff = [place for place, name in laid if _cracks(scene, moment, place, name)]
        if stiff := [place for place in stiff if place not in soft]:
            yield scene.found(
                message("hard coat on soft polymer"),
                LayerVerdict.NEVER,
                moment,
                stiff,
                message("soft polymer bends, and a hard film on it cracks and flakes"),
                swap_families(scene, moment, tuple(stiff), Family.WATERBORNE_ACRYLIC),
            )
        cracked = [
            place
            for place, name in laid
            if not moment.stack(place)
            and place not in soft
            and _part(scene, place).stressed
            and _part(scene, place).material is Material.STYRENE
            and strength_of(scene.book, name) > SPIRIT
        ]
        if cracked:
            yield scene.found(
                message("strong solvent on stressed styrene"),
                LayerVerdict.NEVER,
                moment,
                cracked,
                message("strong solvent cracks bare styrene that is snapped together under stress"),
                primer_before(scene, moment, tuple(cracked)),
            )


def _coats(scene: Scene, moment: Moment) -> tuple[tuple[str, str], ...]:
    if moment.step.stage is Stage.JOIN:
        return ()
    return tuple(
        (place, name)
        for place, name in moment.laid.items()
        if scene.book.coating(name).family not in GLUES
    )


def _stays_tacky(scene: Scene, moment: Moment, part: Part, name: str) -> bool:
    if part.material not in SOFT:
        return False
    enamel = scene.book.coating(name).family is Family.ALKYD_ENAMEL
    if enamel and moment.step.stage not in WASH_STAGES:
        return True
    solvent = strength_of(scene.book, name) >= SPIRIT
    return moment.step.tool is Tool.CAN and solvent


def _cracks(scene: Scene, moment: Moment, place: str, name: str) -> bool:
    if _part(scene, place).material not in SOFT:
        return False
    return dries_hard(moment.step.stage, scene.book.coating(name).family)


def _part(scene: Scene, place: str) -> Part:
    return scene.model.part(place.partition("/")[0])
